/** Readings of many file systems, summed up as they stream by. */
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { CsvError, parse as parseStream } from 'csv-parse';
import type { Problem } from '../base/problem.ts';
import {
  type CheckedRow,
  parserOptions,
  type Reading,
  readingOf,
  sameFigures,
  twoAtOnce,
} from './readings.ts';

/** What is kept of one file system's readings. */
export interface UseSummary {
  readonly server: string;
  readonly mount: string;
  /** Rows read, repeated ones included. */
  readonly count: number;
  readonly first: Reading;
  readonly last: Reading;
  /**
   * The highest reading of each half of the latest days (in UTC), in the order of time. Halves, because readings taken
   * at midnight, give or take some seconds, fall on either side of it.
   */
  readonly highest: readonly Reading[];
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
  readonly byHalf: Map<string, CheckedRow>;
  oldestHalf: string;
}

/** The half of a day that a time lies in, such as `2026-11-20a`; later halves sort later. */
const halfOf = (at: string): string => `${at.slice(0, 10)}${at.slice(11, 13) < '12' ? 'a' : 'b'}`;

/**
 * Summarises files of readings, however long, holding per file system no more than its first and last reading and two
 * a day for the latest `days` days that have any. Which readings are kept depends on their times alone, not on their order.
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
        const half = halfOf(row.at);
        tallies.set(key, {
          count: 1,
          first: row,
          last: row,
          byHalf: new Map([[half, row]]),
          oldestHalf: half,
        });
      } else if (!take(tally, row, 2 * days)) {
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
function take(tally: Tally, row: CheckedRow, halves: number): boolean {
  tally.count += 1;
  const half = halfOf(row.at);
  const held = tally.byHalf.get(half);
  for (const known of [held, tally.first, tally.last]) {
    if (known?.at === row.at) return sameFigures(known, row);
  }
  if (row.at < tally.first.at) tally.first = row;
  if (row.at > tally.last.at) tally.last = row;
  if (held !== undefined) {
    if (isHigher(row, held)) tally.byHalf.set(half, row);
    return true;
  }
  if (tally.byHalf.size >= halves) {
    if (half < tally.oldestHalf) return true;
    tally.byHalf.delete(tally.oldestHalf);
    tally.oldestHalf = half;
    for (const kept of tally.byHalf.keys()) if (kept < tally.oldestHalf) tally.oldestHalf = kept;
  } else if (half < tally.oldestHalf) {
    tally.oldestHalf = half;
  }
  tally.byHalf.set(half, row);
  return true;
}

/** Of two as high, the later. Figures are digits without a sign, and mostly as many. */
function isHigher(row: CheckedRow, held: CheckedRow): boolean {
  const [one, other] = [BigInt(row.used), BigInt(held.used)];
  return one > other || (one === other && row.at > held.at);
}

const summaryOf = ({ count, first, last, byHalf }: Tally): UseSummary => ({
  server: first.server,
  mount: first.mount,
  count,
  first: readingOf(first),
  last: readingOf(last),
  highest: [...byHalf.values()].sort((a, b) => (a.at < b.at ? -1 : 1)).map(readingOf),
});
