/**
 * Readings: measured use, one row a reading, in CSV files that only grow.
 *
 * A file's first row is `server,mount,at,size,used,available`. Times are RFC 3339 in UTC with whole seconds, so that
 * they compare rightly as text; sizes are whole bytes. The rows of one file system need not be in the order of time:
 * two branches that both added readings may be merged line by line.
 */

import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { CsvError, type Options, parse as parseStream } from 'csv-parse';
import { parse as parseWhole } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import { offer, quoted } from '../base/nearest.ts';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import { type Bytes, bytes } from '../estate/size.ts';
import type { DfRow } from './df.ts';

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
interface CheckedRow {
  readonly server: string;
  readonly mount: string;
  readonly at: string;
  readonly size: string;
  readonly used: string;
  readonly available: string;
}

const readingOf = (row: CheckedRow): Reading => ({
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
        `${quoted(mount)} is no mount point`,
        'Write the mount point from the root, such as /plates.',
      );
    }
    const day = wholeSecond.exec(at)?.[1];
    if (day === undefined || (day !== knownDay && !isDay(day))) {
      return wrong(
        2,
        `${quoted(at)} is no time in UTC with whole seconds`,
        'Write a time such as 2026-11-20T06:00:00Z.',
      );
    }
    knownDay = day;
    if (!byteCount.test(size))
      return wrong(3, `the size ${quoted(size)} is no whole number of bytes`, 'Write bytes, with no unit.');
    if (!byteCount.test(used))
      return wrong(4, `the use ${quoted(used)} is no whole number of bytes`, 'Write bytes, with no unit.');
    if (!signedByteCount.test(available)) {
      return wrong(
        5,
        `what is available, ${quoted(available)}, is no whole number of bytes`,
        'Write bytes, with no unit.',
      );
    }
    return { server, mount, at, size, used, available };
  };
}

/** No row comes near this; it keeps a quote that is never closed from swallowing the file into memory. */
const longestRow = 64 * 1024;

/** The settings of the CSV parser. No record is kept: each goes to `onRow`, what is wrong with one to `onProblem`. */
function parserOptions(
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
          : 'a quotation mark stands inside a field',
        advice: 'Put quotation marks round a whole field, and write one that belongs to it twice.',
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

const sameFigures = (a: CheckedRow, b: CheckedRow): boolean =>
  a.size === b.size && a.used === b.used && a.available === b.available;

const twoAtOnce = (file: string, line: number, row: CheckedRow): Problem => ({
  place: { file, line, column: 1 },
  message: `${row.server}:${row.mount} has two readings for ${row.at}, and they differ`,
  advice: 'Keep the one that was measured, and delete the other.',
});

/** What is kept of one file system's readings. */
export interface UseSummary {
  readonly server: string;
  readonly mount: string;
  /** Rows read, repeated ones included. */
  readonly count: number;
  readonly first: Reading;
  readonly last: Reading;
  /** The last reading of each of the latest days (in UTC) that have one, in the order of time. */
  readonly daily: readonly Reading[];
}

export interface ReadingsSummary {
  /** By `useKey`, in the order of their first rows. */
  readonly fileSystems: ReadonlyMap<string, UseSummary>;
  readonly rows: number;
  /** The first problems, and how many more there were. */
  readonly problems: readonly Problem[];
  readonly problemsLeftOut: number;
}

/** The key of a file system in a summary. */
export const useKey = (server: string, mount: string): string => `${server}:${mount}`;

export interface SummaryOptions {
  /** Days kept of each file system; more than a year, so that a forecast may look back over one. */
  readonly days: number;
  /** Problems kept. */
  readonly problems: number;
}

const usualSummary: SummaryOptions = { days: 400, problems: 100 };

/** One file system while its rows go by. */
interface Tally {
  count: number;
  first: CheckedRow;
  last: CheckedRow;
  readonly byDay: Map<string, CheckedRow>;
  oldestDay: string;
}

/**
 * Summarises files of readings, however long, holding per file system no more than its first and last reading and one
 * a day for the latest `days` days. Which readings are kept depends on their times alone, not on their order.
 *
 * @param files each with its chunks, read one after the other
 * @throws what reading the chunks throws
 */
export async function summariseReadings(
  files: Iterable<{
    readonly file: string;
    readonly chunks: AsyncIterable<string | Uint8Array> | Iterable<string | Uint8Array>;
  }>,
  options: Partial<SummaryOptions> = {},
): Promise<ReadingsSummary> {
  const { days, problems: mostProblems } = { ...usualSummary, ...options };
  const tallies = new Map<string, Tally>();
  const problems: Problem[] = [];
  let rows = 0;
  let problemsLeftOut = 0;
  const onProblem = (problem: Problem): void => {
    if (problems.length < mostProblems) problems.push(problem);
    else problemsLeftOut += 1;
  };
  for (const { file, chunks } of files) {
    const onRow = (row: CheckedRow, line: number): void => {
      rows += 1;
      const key = useKey(row.server, row.mount);
      const tally = tallies.get(key);
      if (tally === undefined) {
        const day = row.at.slice(0, 10);
        tallies.set(key, { count: 1, first: row, last: row, byDay: new Map([[day, row]]), oldestDay: day });
      } else if (!take(tally, row, days)) {
        onProblem(twoAtOnce(file, line, row));
      }
    };
    const parser = parseStream(parserOptions(file, onRow, onProblem));
    // Nothing comes out of it: every record is taken as it is read.
    parser.resume();
    try {
      await pipeline(Readable.from(chunks), parser);
    } catch (error) {
      if (!(error instanceof CsvError)) throw error;
      onProblem({
        place: { file, line: typeof error.lines === 'number' ? error.lines : 1, column: 1 },
        message: 'from here on the file is not readable as CSV',
        advice: 'Save it as comma-separated values in UTF-8.',
      });
    }
  }
  const fileSystems = new Map([...tallies].map(([key, tally]) => [key, summaryOf(tally)]));
  return { fileSystems, rows, problems, problemsLeftOut };
}

/** Takes a further row of a file system; false where it gives a kept time different figures. */
function take(tally: Tally, row: CheckedRow, days: number): boolean {
  tally.count += 1;
  const day = row.at.slice(0, 10);
  const held = tally.byDay.get(day);
  if (held?.at === row.at) return sameFigures(held, row);
  if (row.at < tally.first.at) tally.first = row;
  if (row.at > tally.last.at) tally.last = row;
  if (held !== undefined) {
    if (row.at > held.at) tally.byDay.set(day, row);
    return true;
  }
  if (tally.byDay.size >= days) {
    if (day < tally.oldestDay) return true;
    tally.byDay.delete(tally.oldestDay);
    tally.oldestDay = day;
    for (const kept of tally.byDay.keys()) if (kept < tally.oldestDay) tally.oldestDay = kept;
  } else if (day < tally.oldestDay) {
    tally.oldestDay = day;
  }
  tally.byDay.set(day, row);
  return true;
}

const summaryOf = ({ count, first, last, byDay }: Tally): UseSummary => ({
  server: first.server,
  mount: first.mount,
  count,
  first: readingOf(first),
  last: readingOf(last),
  daily: [...byDay.values()].sort((a, b) => (a.at < b.at ? -1 : 1)).map(readingOf),
});

/** What is to be added, and against what it is held. */
export interface NewReadings {
  readonly server: string;
  /** When df ran, as `readingTime` gives it. */
  readonly at: string;
  readonly now: string;
  readonly rows: readonly DfRow[];
  /** The mount points the estate declares, by server. */
  readonly declared: ReadonlyMap<string, readonly string[]>;
  /** The time of the newest reading there is, by mount point of this server. */
  readonly newest: ReadonlyMap<string, string>;
  /** The mount points asked for by name; none means every declared one that df shows. */
  readonly only?: readonly string[];
}

/** A file system of df that is not taken, and why. */
export interface LeftOut {
  readonly mount: string;
  readonly device: string;
  readonly why: 'not declared' | 'not asked for' | 'not measured';
}

export interface Appendable {
  readonly readings: readonly Reading[];
  readonly leftOut: readonly LeftOut[];
  /** Declared on this server and not in df's output: not mounted, perhaps. */
  readonly notShown: readonly string[];
}

const dayInMilliseconds = 86_400_000;

/**
 * Decides which lines of df become readings. df shows every mounted file system, memory and device trees among them;
 * those that the estate does not declare are left out and listed. It is refused, all or nothing, when the server is
 * not declared, when no line belongs to a declared file system, when a mount point asked for is not declared or not
 * measured, and when the time is not later than the newest reading's or lies in the future.
 */
export function rowsToAppend(wanted: NewReadings): Outcome<Appendable> {
  const { server, at, now, rows, declared, newest, only } = wanted;
  const mounts = declared.get(server);
  if (mounts === undefined || mounts.length === 0) {
    const withMounts = [...declared].filter(([, each]) => each.length > 0).map(([name]) => name);
    return err({
      message: `no file system is declared on a server ${quoted(server)}`,
      advice: `${offer(server, withMounts)}Declare its file systems under storage/ first.`,
    });
  }
  if (Date.parse(at) > Date.parse(now) + dayInMilliseconds) {
    // It would stand in the way of every reading until then.
    return err({ message: `${at} has not come yet`, advice: 'Give the time at which df ran.' });
  }
  const shown = new Map(rows.map((row) => [row.mount, row]));
  const problems: Problem[] = [];
  const declaredAre = `Declared on ${server}: ${mounts.join(', ')}.`;
  for (const mount of only ?? []) {
    if (!mounts.includes(mount)) {
      problems.push({
        message: `no file system ${quoted(mount)} is declared on ${server}`,
        advice: `${offer(mount, mounts)}${declaredAre}`,
      });
    } else if (shown.get(mount)?.use === undefined) {
      problems.push({
        message: shown.has(mount) ? `df could not measure ${mount}` : `df does not show ${mount}`,
        advice: `See on ${server} whether it is mounted.`,
      });
    }
  }
  const readings: Reading[] = [];
  const leftOut: LeftOut[] = [];
  for (const { mount, device, use } of shown.values()) {
    const why = !mounts.includes(mount)
      ? 'not declared'
      : only !== undefined && !only.includes(mount)
        ? 'not asked for'
        : use === undefined
          ? 'not measured'
          : undefined;
    const latest = newest.get(mount);
    if (why !== undefined || use === undefined) {
      leftOut.push({ mount, device, why: why ?? 'not measured' });
    } else if (latest !== undefined && at <= latest) {
      problems.push({
        message:
          at === latest
            ? `${server}:${mount} has a reading for ${at} already`
            : `${at} is older than the newest reading of ${server}:${mount}, ${latest}`,
        advice: 'Add readings in the order in which they were taken.',
      });
    } else {
      readings.push({ server, mount, at, ...use });
    }
  }
  if (problems.length === 0 && readings.length === 0) {
    const undeclared = leftOut.filter(({ why }) => why === 'not declared').map(({ mount }) => mount);
    const offers = [...new Set(undeclared.map((mount) => offer(mount, mounts)))].filter(
      (text) => text !== '',
    );
    problems.push({
      message: `none of the ${rows.length} file systems that df shows is a declared one of ${server} with figures`,
      advice: `${offers.slice(0, 3).join('')}${declaredAre} See whether they are mounted, and whether this df ran on ${server}.`,
    });
  }
  if (problems.length > 0) return err(...problems);
  return ok({ readings, leftOut, notShown: mounts.filter((mount) => !shown.has(mount)) });
}
