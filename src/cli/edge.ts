/** The edge of the command line: where input, output, the clock and the environment come in. */
import { existsSync } from 'node:fs';
import { access, constants, open, stat, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { createSupportsHyperlinks } from 'supports-hyperlinks';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import { makeFolder } from './make-folder.ts';

/** What a command does when it has run: what to print, and the exit code. */
export interface Finished {
  readonly output: string;
  /** 0 pass or done, 1 fail, 2 not judged. */
  readonly code: 0 | 1 | 2;
  /** One line for standard error, where the code is not 0. */
  readonly reason?: string;
  /** Lines for standard error that are about how it was run, and belong in no report. */
  readonly remarks?: readonly string[];
}

/** How wide and in what colours the terminal shows text. */
export interface Terminal {
  readonly width: number;
  readonly colour: boolean;
  readonly all: boolean;
  /** The top of the repository as a URL, where the terminal can follow links to files. */
  readonly links?: string;
}

/** What every command that reads a repository can be told of its report. */
export interface ReportFlags {
  /** Every problem and finding, however many. */
  readonly all?: boolean;
}

const narrowest = 40;
const usualWidth = 100;

/** Reads the terminal that standard output is; a pipe or a file is plain and of the usual width. */
export function terminal(
  { all = false, repo }: ReportFlags & { readonly repo?: string } = {},
  environment: NodeJS.ProcessEnv = process.env,
): Terminal {
  const columns = process.stdout.columns ?? Number(environment.COLUMNS);
  // no-color.org: set and not empty, whatever its value, means no colour.
  const isPlain = !process.stdout.isTTY || Boolean(environment.NO_COLOR) || environment.TERM === 'dumb';
  const canLink = !isPlain && repo !== undefined && createSupportsHyperlinks(process.stdout);
  return {
    width: Math.max(narrowest, Number.isFinite(columns) && columns > 0 ? columns : usualWidth),
    colour: !isPlain,
    all,
    ...(canLink ? { links: `${pathToFileURL(topOf(resolve(repo))).href}/` } : {}),
  };
}

/** The nearest folder above that a repository begins in, which places are told from; the folder itself where there is none. */
function topOf(dir: string): string {
  for (let here = dir; ; here = dirname(here)) {
    if (existsSync(join(here, '.git'))) return here;
    if (here === dirname(here)) return dir;
  }
}

const longWork = 2_000;

/** Says on a terminal that work goes on, once it has gone on for two seconds; and takes the line back at the end. */
export function stillWorking(
  what: string,
  stream: NodeJS.WritableStream & { readonly isTTY?: boolean } = process.stderr,
  environment: NodeJS.ProcessEnv = process.env,
): { stop(): void } {
  if (!stream.isTTY || environment.TERM === 'dumb') return { stop: () => {} };
  const begun = Date.now();
  let isShown = false;
  const show = (): void => {
    isShown = true;
    stream.write(`\r${what}: working for ${Math.round((Date.now() - begun) / 1000)} s\u001b[K`);
  };
  let every: NodeJS.Timeout | undefined;
  const first = setTimeout(() => {
    show();
    every = setInterval(show, 1_000);
    every.unref();
  }, longWork);
  first.unref();
  return {
    stop: () => {
      clearTimeout(first);
      clearInterval(every);
      // Erased from its beginning on (ECMA-48, EL): the next line begins where it was.
      if (isShown) stream.write('\r\u001b[K');
      isShown = false;
    },
  };
}

/** The day of the judgement: as given, or the clock's day in UTC. */
export function dayOf(now: string | undefined, clock: () => Date = () => new Date()): Outcome<string> {
  if (now === undefined) return ok(clock().toISOString().slice(0, 10));
  // A whole RFC 3339 timestamp is taken for its day in UTC.
  const day = /^[0-9]{4}-[0-9]{2}-[0-9]{2}T/.test(now) ? dayOfTime(now) : now;
  return isDay(day)
    ? ok(day)
    : err({
        message: `--now ${now} is not a day in the calendar`,
        advice: 'Write a date such as 2026-11-20.',
      });
}

function dayOfTime(time: string): string {
  const parsed = Date.parse(time);
  return Number.isNaN(parsed) ? time : new Date(parsed).toISOString().slice(0, 10);
}

const cannotWrite = (path: string, error: unknown): Problem => ({
  message: `the report ${path} cannot be written: ${reasonOf(error)}`,
  advice: 'Name a path that can be written to.',
});

/** Whether a report could be written, before the work is done that it is to tell of. Makes its folder. */
export async function reportProblem(path: string): Promise<Problem | undefined> {
  try {
    await makeFolder(dirname(path));
    const isThere = (await stat(path).catch(() => undefined)) !== undefined;
    if (!isThere) await access(dirname(path), constants.W_OK | constants.X_OK);
    // Without waiting: a named pipe that nobody reads from would be waited for without end.
    else await (await open(path, constants.O_WRONLY | constants.O_NONBLOCK)).close();
    return undefined;
  } catch (error) {
    return cannotWrite(path, error);
  }
}

/** Writes a file whole, making its folder. */
export async function writeReport(path: string, text: () => Promise<string>): Promise<Problem | undefined> {
  try {
    await makeFolder(dirname(path));
    await writeFile(path, await text());
    return undefined;
  } catch (error) {
    return cannotWrite(path, error);
  }
}

/** What the system said, without its stack. */
export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code: unknown = 'code' in error ? error.code : undefined;
  return (typeof code === 'string' ? reasons.get(code) : undefined) ?? error.message;
}

/** What the operating system says most often, in words: errno.h of POSIX. */
const reasons: ReadonlyMap<string, string> = new Map([
  ['ENOENT', 'there is no such file or folder'],
  ['EACCES', 'permission is denied'],
  ['EPERM', 'permission is denied'],
  ['EISDIR', 'it is a folder'],
  ['ENOTDIR', 'part of its path is no folder'],
  ['ENOSPC', 'no space is left on the disk'],
  ['EROFS', 'it lies on a file system that is read-only'],
]);
