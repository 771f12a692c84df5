/**
 * Readings: measured use, one row a reading, in CSV files that only grow.
 *
 * A file's first row is `server,mount,at,size,used,available`. Times are RFC 3339 in UTC with whole seconds, so that
 * they compare rightly as text; sizes are whole bytes. The rows of one file system need not be in the order of time:
 * two branches that both added readings may be merged line by line.
 *
 * In one file, since what is written, read and summed up is one format.
 */

import type { Options } from 'csv-parse';
import { parse as parseWhole } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import { quoted } from '../base/nearest.ts';
import type { Problem } from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import { type Bytes, bytes } from '../estate/size.ts';

/** One measurement of a file system's size and use, at one time. */
export interface Reading {
  readonly server: string;
  readonly mount: string;
  /** RFC 3339, UTC, whole seconds: `2026-11-20T06:00:00Z`. */
  readonly at: string;
  readonly size: Bytes;
  readonly used: Bytes;
  /** For unprivileged users: without the reserve, and negative once that is being eaten. */
  readonly available: Bytes;
}

const columns = ['server', 'mount', 'at', 'size', 'used', 'available'] as const;

/** The first row of a file of readings, with its end of line. */
export const readingsHeader = `${columns.join(',')}\n`;

/** Rows of CSV, each with its end of line, without the header. */
export const readingsAsCsv = (readings: readonly Reading[]): string =>
  stringify(
    readings.map(({ server, mount, at, size, used, available }) => [
      server,
      mount,
      at,
      `${size}`,
      `${used}`,
      `${available}`,
    ]),
  );

/** What may fill up: for unprivileged users a file system is full when this much is used. */
export const fillableBytes = ({ used, available }: Pick<Reading, 'used' | 'available'>): Bytes =>
  bytes(used + available);

/** A reading as it stands in the file, checked and not yet counted with. */
export interface CheckedRow {
  readonly server: string;
  readonly mount: string;
  readonly at: string;
  readonly size: string;
  readonly used: string;
  readonly available: string;
}

export const readingOf = (row: CheckedRow): Reading => ({
  server: row.server,
  mount: row.mount,
  at: row.at,
  size: bytes(BigInt(row.size)),
  used: bytes(BigInt(row.used)),
  available: bytes(BigInt(row.available)),
});

const wholeSecond = /^([0-9]{4}-[0-9]{2}-[0-9]{2})T(?:[01][0-9]|2[0-3]):[0-5][0-9]:[0-5][0-9]Z$/;
const anyTime =
  /^([0-9]{4}-[0-9]{2}-[0-9]{2})[Tt ]((?:[01][0-9]|2[0-3]):[0-5][0-9]:[0-5][0-9])(?:\.[0-9]{1,9})?([Zz]|[+-](?:[01][0-9]|2[0-3]):[0-5][0-9])$/;
const byteCount = /^[0-9]{1,19}$/;
const signedByteCount = /^-?[0-9]{1,19}$/;
const controlCharacter = /\p{Cc}/u;

/** Any RFC 3339 time as a reading holds it: in UTC, with the fraction of a second left out. Undefined if it is none. */
export function readingTime(text: string): string | undefined {
  const [, day = '', time = '', zone = ''] = anyTime.exec(text) ?? [];
  if (!isDay(day)) return undefined;
  const utc = new Date(`${day}T${time}${zone.toUpperCase()}`).toISOString();
  // An offset may carry the first or the last hours of RFC 3339's years out of them.
  return /^[0-9]{4}-/.test(utc) ? `${utc.slice(0, 19)}Z` : undefined;
}

type Check = (
  fields: readonly string[],
) => CheckedRow | { readonly column: number; readonly why: string; readonly advice: string };

/** A check of rows. It remembers the last day it saw, since one day's rows stand together. */
function rowCheck(): Check {
  let knownDay = '';
  return (fields) => {
    const wrong = (column: number, why: string, advice: string) => ({ column, why, advice });
    const [server = '', mount = '', at = '', size = '', used = '', available = ''] = fields;
    if (fields.length !== columns.length) {
      return wrong(
        0,
        `a reading has ${columns.length} fields, and this row has ${fields.length}`,
        `Write ${columns.join(', ')}.`,
      );
    }
    if (server === '' || controlCharacter.test(server))
      return wrong(0, 'the server has no name', 'Name the server as the estate does.');
    if (!mount.startsWith('/') || controlCharacter.test(mount)) {
      return wrong(
        1,
        `${quoted(mount)} is not a mount point`,
        'Write the mount point from the root, such as /plates.',
      );
    }
    const day = wholeSecond.exec(at)?.[1];
    if (day === undefined || (day !== knownDay && !isDay(day))) {
      return wrong(
        2,
        `${quoted(at)} is not a time in UTC with whole seconds`,
        'Write a time such as 2026-11-20T06:00:00Z.',
      );
    }
    knownDay = day;
    if (!byteCount.test(size))
      return wrong(
        3,
        `the size ${quoted(size)} is not a whole number of bytes`,
        'Write bytes, with no unit.',
      );
    if (!byteCount.test(used))
      return wrong(
        4,
        `the used size ${quoted(used)} is not a whole number of bytes`,
        'Write bytes, with no unit.',
      );
    if (!signedByteCount.test(available)) {
      return wrong(
        5,
        `the available size ${quoted(available)} is not a whole number of bytes`,
        'Write bytes, with no unit.',
      );
    }
    return { server, mount, at, size, used, available };
  };
}

/** No row comes near this; it keeps a quote that is never closed from swallowing the file into memory. */
const longestRow = 64 * 1024;

/** The settings of the CSV parser. No record is kept: each goes to `onRow`, what is wrong with one to `onProblem`. */
export function parserOptions(
  file: string,
  onRow: (row: CheckedRow, line: number) => void,
  onProblem: (problem: Problem) => void,
): Options {
  const check = rowCheck();
  let headed = false;
  /** The line up to which rows have been read. */
  let done = 0;
  return {
    bom: true,
    record_delimiter: ['\r\n', '\n'],
    relax_column_count: true,
    skip_empty_lines: true,
    skip_records_with_error: true,
    max_record_size: longestRow,
    on_skip: (error) => {
      const line = typeof error?.lines === 'number' ? error.lines : done + 1;
      const open = error?.code === 'CSV_QUOTE_NOT_CLOSED' || error?.code === 'CSV_MAX_RECORD_SIZE';
      onProblem({
        // The parser knows where it gave up; what the person wants is where the mark was opened.
        place: { file, line: open ? done + 1 : line, column: 1 },
        message: open
          ? 'a quotation mark is opened here and not closed'
          : 'a quotation mark is inside a field',
        advice: 'Put quotation marks around the whole field, and double those inside it.',
      });
      done = line;
      return undefined;
    },
    on_record: (fields: string[], context) => {
      done = context.lines;
      if (!headed) {
        headed = true;
        if (fields.join(',') === columns.join(',')) return null;
        onProblem({
          place: { file, line: context.lines, column: 1 },
          message: 'the first row does not name the columns of a file of readings',
          advice: `Write ${columns.join(',')} as the first row.`,
        });
        return null;
      }
      const row = check(fields);
      if ('why' in row) {
        onProblem({
          place: { file, line: context.lines, column: columnOf(fields, row.column) },
          message: row.why,
          advice: row.advice,
        });
      } else {
        onRow(row, context.lines);
      }
      return null;
    },
  };
}

/** Where a field begins in its line, taking quotation marks to stand where they are needed. */
function columnOf(fields: readonly string[], index: number): number {
  if (index === 0) return 1;
  // The fields before it as they are written, with a comma for the end of line.
  return stringify([fields.slice(0, index)]).length + 1;
}

/**
 * Reads a small file of readings whole.
 *
 * @returns the readings in the order of the file, and a problem for every row that is none, also where two readings of
 *   a file system give one time different figures. A row repeated with the same figures counts once.
 */
export function readReadings(
  text: string,
  file: string,
): { readonly readings: readonly Reading[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const rows = new Map<string, CheckedRow>();
  parseWhole(
    text,
    parserOptions(
      file,
      (row, line) => {
        const key = JSON.stringify([row.server, row.mount, row.at]);
        const held = rows.get(key);
        if (held === undefined) rows.set(key, row);
        else if (!sameFigures(held, row)) problems.push(twoAtOnce(file, line, row));
      },
      (problem) => problems.push(problem),
    ),
  );
  return { readings: [...rows.values()].map(readingOf), problems };
}

export const sameFigures = (a: CheckedRow, b: CheckedRow): boolean =>
  a.size === b.size && a.used === b.used && a.available === b.available;

export const twoAtOnce = (file: string, line: number, row: CheckedRow): Problem => ({
  place: { file, line, column: 1 },
  message: `${row.server}:${row.mount} has two readings for ${row.at}, and they differ`,
  advice: 'Keep the one that was measured, and delete the other.',
});
