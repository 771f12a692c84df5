/** `ullage reading add`: takes what `df -P` prints on a server into the readings. */
import { createReadStream } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { text as wholeText } from 'node:stream/consumers';
import { offer, quoted } from '../base/nearest.ts';
import { err, type Outcome, ok } from '../base/problem.ts';
import { type DfRow, readDf } from '../capacity/df.ts';
import { type Appendable, isAlike, rowsToAppend } from '../capacity/new-readings.ts';
import { type Reading, readingsAsCsv, readingsHeader, readingTime } from '../capacity/readings.ts';
import { type ReadingsSummary, summariseReadings } from '../capacity/use-summary.ts';
import { type Estate, serversOfFileSystem } from '../estate/estate.ts';
import { type Bytes, showSize } from '../estate/size.ts';
import { reportReadings } from '../report/readings.ts';
import { reportProblems } from '../report/report.ts';
import { takenAs } from './alike.ts';
import { appendSafely } from './append.ts';
import { type Finished, type ReportFlags, reasonOf, terminal } from './edge.ts';
import { withFilesOnDisk } from './repository.ts';

export interface AddFlags extends ReportFlags {
  readonly repo: string;
  readonly server: string;
  readonly at?: string;
  readonly mount?: readonly string[];
  /** Take sizes that are far from the declared ones. */
  readonly anySize?: boolean;
}

export async function runReadingAdd(
  file: string,
  flags: AddFlags,
  clock: () => Date = () => new Date(),
): Promise<Finished> {
  const added = await add(file, flags, clock);
  if (!added.ok) {
    return { output: reportProblems(added.problems, terminal(flags)), code: 2, reason: 'nothing was added' };
  }
  return { output: `${told(added.value).join('\n')}\n`, code: 0 };
}

export interface Added {
  readonly path: string;
  readonly appendable: Appendable;
  /** Declared sizes of the server's file systems, by mount point. */
  readonly declared: ReadonlyMap<string, Bytes>;
}

async function add(
  file: string,
  { repo, server, at, mount, anySize = false }: AddFlags,
  clock: () => Date,
): Promise<Outcome<Added>> {
  const now = clock().toISOString();
  const time = readingTime(at ?? now);
  if (time === undefined) {
    return err({
      message: `--at ${at} is not a time`,
      advice: 'Write it as in RFC 3339, such as 2026-11-20T06:00:00Z.',
    });
  }
  const given = await dfText(file);
  if (!given.ok) return given;
  const rows = readDf(given.value, file === '-' ? '<standard input>' : file);
  if (!rows.ok) return rows;
  return addRows(rows.value, {
    repo,
    server,
    anySize,
    at: time,
    now,
    ...(mount === undefined ? {} : { mount }),
  });
}

/** Lines of df, and what is to be thought of them. */
export interface Rows {
  readonly repo: string;
  readonly server: string;
  /** When df ran, as `readingTime` gives it. */
  readonly at: string;
  readonly now: string;
  readonly mount?: readonly string[];
  readonly anySize: boolean;
}

/** Adds lines of df to the readings of a server, all or none. */
export async function addRows(
  rows: readonly DfRow[],
  { repo, server, at, now, mount, anySize }: Rows,
): Promise<Outcome<Added>> {
  const estate = await declaredNow(repo);
  if (!estate.ok) return estate;
  const { folder, declared } = estate.value;
  if (!declared.has(server)) {
    const servers = [...declared.keys()];
    return err({
      message: `there is no server ${quoted(server)}`,
      advice: `${offer(server, servers)}${servers.length === 0 ? 'Declare it under storage/ first.' : serversAre(servers)}`,
    });
  }
  // One file a server: two servers that report at once do not wait for each other.
  const path = join(folder, (await takenAs(folder, `${server}.csv`)) ?? `${server}.csv`);
  let appendable: Appendable | undefined;
  const appended = await appendSafely(path, { header: readingsHeader }, async () => {
    const newest = await newestReadings(folder, server);
    if (!newest.ok) return newest;
    const wanted = rowsToAppend({
      server,
      at,
      now,
      rows,
      declared,
      newest: newest.value,
      anySize,
      ...(mount === undefined ? {} : { only: mount }),
    });
    if (!wanted.ok) return wanted;
    appendable = wanted.value;
    return ok(readingsAsCsv(wanted.value.readings));
  });
  if (!appended.ok) return appended;
  return appendable === undefined
    ? err({ message: 'nothing was decided about the readings', advice: 'Run it again.' })
    : ok({ path, appendable, declared: declared.get(server) ?? new Map() });
}

/** As many names as a line takes. */
const namedAtMost = 10;

function serversAre(servers: readonly string[]): string {
  const more = servers.length - namedAtMost;
  return `The servers are ${servers.slice(0, namedAtMost).join(', ')}${more > 0 ? ` and ${more} more` : ''}.`;
}

export interface SummaryFlags extends ReportFlags {
  readonly repo: string;
}

/** Summarises the readings on the disk as they stream by: their number does not matter. */
export async function runReadingSummary(flags: SummaryFlags): Promise<Finished> {
  const now = await declaredNow(flags.repo);
  const summary = now.ok ? await summarised(now.value.folder) : now;
  if (!summary.ok) {
    return {
      output: reportProblems(summary.problems, terminal(flags)),
      code: 2,
      reason: 'the readings cannot be summarised',
    };
  }
  return { output: reportReadings(summary.value, terminal(flags)), code: 0 };
}

async function summarised(
  folder: string,
  options: { readonly days?: number } = {},
): Promise<Outcome<ReadingsSummary>> {
  const names = (await readdir(folder).catch(() => [])).filter((name) => name.endsWith('.csv')).sort();
  const summary = await summariseReadings(
    names.map((name) => ({ file: join(folder, name), chunks: createReadStream(join(folder, name)) })),
    options,
  );
  return summary.problems.length > 0 ? err(...summary.problems) : ok(summary);
}

/** What df printed: a file's text, or standard input. */
async function dfText(file: string): Promise<Outcome<string>> {
  try {
    return ok(file === '-' ? await wholeText(process.stdin) : await readFile(file, 'utf8'));
  } catch (error) {
    return err({
      message: `${file} cannot be read: ${reasonOf(error)}`,
      advice: 'Name a file that holds what `df -P` printed, or - for standard input.',
    });
  }
}

interface DeclaredNow {
  /** Where readings are kept, from wherever in the repository the command is run. */
  readonly folder: string;
  /** Server -> mount point -> the size that is declared. */
  readonly declared: ReadonlyMap<string, ReadonlyMap<string, Bytes>>;
}

/** The file systems that the files as they are declare, by server, and where readings are kept. */
async function declaredNow(repo: string): Promise<Outcome<DeclaredNow>> {
  return withFilesOnDisk(repo, async ({ top, revision: { estate }, paths }) =>
    ok({ folder: shortest(join(top, paths.readings)), declared: declaredByServer(estate) }),
  );
}

/** As somebody who stands in the repository writes it. */
export function shortest(path: string): string {
  const fromHere = relative('.', path);
  return fromHere.length < path.length ? fromHere : path;
}

function declaredByServer(estate: Estate): ReadonlyMap<string, ReadonlyMap<string, Bytes>> {
  const declared = new Map<string, Map<string, Bytes>>(
    [...estate.servers.keys()].map((name) => [name, new Map()]),
  );
  for (const system of estate.fileSystems.values()) {
    for (const server of serversOfFileSystem(estate, system)) {
      declared.get(server)?.set(system.mount, system.size);
    }
  }
  return declared;
}

/** The newest reading of each of a server's mount points, over every file in the folder. */
async function newestReadings(
  folder: string,
  server: string,
): Promise<Outcome<ReadonlyMap<string, Reading>>> {
  const summary = await summarised(folder, { days: 1 });
  if (!summary.ok) return summary;
  const uses = [...summary.value.fileSystems.values()].filter((use) => use.server === server);
  return ok(new Map(uses.map(({ mount, last }) => [mount, last])));
}

/** What became of the lines of df, in lines. */
export function told({ path, appendable, declared }: Added): readonly string[] {
  const { readings, leftOut, notShown } = appendable;
  return [
    `Added to ${path}:`,
    ...readings.flatMap(({ server, mount, at, size }) => {
      const said = declared.get(mount);
      return [
        `  ${server} ${mount} at ${at}`,
        ...(said !== undefined && !isAlike(said, size)
          ? [`    measured ${showSize(size, 0)}, declared ${showSize(said)}`]
          : []),
      ];
    }),
    ...(leftOut.length === 0 ? [] : ['Left out:', ...leftOut.map(({ mount, why }) => `  ${mount}: ${why}`)]),
    ...(notShown.length === 0
      ? []
      : ['Declared, and not in this df:', ...notShown.map((mount) => `  ${mount}`)]),
  ];
}
