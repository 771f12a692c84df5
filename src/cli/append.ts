/**
 * Adds rows to a file so that a reader never sees half of them: the whole new file takes the place of the old one. A
 * lock file lets one process at a time decide and write.
 */
import { type FileHandle, open, readFile, realpath, rm, stat } from 'node:fs/promises';
import { hostname } from 'node:os';
import { dirname } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { err, type Outcome, ok } from '../base/problem.ts';
import { reasonOf } from './edge.ts';
import { makeFolder } from './make-folder.ts';
import { replaceFile } from './replace-file.ts';

export interface Appending {
  /** What a new file begins with. */
  readonly header: string;
  /** How long to wait for another process that is adding to the file. */
  readonly patienceMs?: number;
}

/**
 * Adds text to the end of a file, which is made with its header where it is not there yet. A last line without an end
 * is given one first.
 *
 * @param decide gives the text, whole lines, or refuses. It runs while no other process can add to the file, so what
 *   it reads there stays true. Nothing is written for an empty text.
 * @returns what was added
 */
export async function appendSafely(
  path: string,
  { header, patienceMs = 5000 }: Appending,
  decide: () => Promise<Outcome<string>>,
): Promise<Outcome<string>> {
  try {
    await makeFolder(dirname(path));
    // Through a symbolic link the file it names is replaced, not the link.
    const file = await realpath(path).catch(() => path);
    const lock = await locked(`${file}.lock`, patienceMs);
    if (!lock.ok) return lock;
    try {
      const text = await decide();
      if (text.ok && text.value !== '') await replaceWithMore(file, header, text.value);
      return text;
    } finally {
      await rm(lock.value, { force: true });
    }
  } catch (error) {
    return err({
      message: `nothing was added to ${path}: ${reasonOf(error)}`,
      advice: 'Check the disk and the folder, and add it again.',
    });
  }
}

async function replaceWithMore(file: string, header: string, text: string): Promise<void> {
  // One name serves, since only the holder of the lock writes it; what a killed process left is written over. The
  // ending keeps it from being read as a file of readings.
  const draft = `${file}.new`;
  await rm(draft, { force: true });
  const old = await stat(file).then(
    () => file,
    () => undefined,
  );
  await replaceFile(file, { draft, copyOf: old }, async (handle) => {
    const { size } = await handle.stat();
    const end = size === 0 ? '' : await endOf(handle, size);
    const lead = size === 0 ? header : end.endsWith('\n') ? '' : '\n';
    const more = lead + text;
    // One kind of line end in a file: the one that it has.
    const returns = end.endsWith('\n') ? end === '\r\n' : size > 0 && (await hasReturns(handle));
    const content = Buffer.from(returns ? more.replaceAll(/\r?\n/g, '\r\n') : more);
    let written = 0;
    while (written < content.length) {
      written += (await handle.write(content, written, content.length - written, size + written))
        .bytesWritten;
    }
  });
}

async function endOf(handle: FileHandle, size: number): Promise<string> {
  const { buffer, bytesRead } = await handle.read(Buffer.alloc(2), 0, 2, Math.max(0, size - 2));
  return buffer.toString('latin1', 0, bytesRead);
}

/** Whether the first line of a file ends in CRLF, as editors on Windows save it. */
async function hasReturns(handle: FileHandle): Promise<boolean> {
  const { buffer, bytesRead } = await handle.read(Buffer.alloc(longestFirstLine), 0, longestFirstLine, 0);
  const end = buffer.subarray(0, bytesRead).indexOf('\n');
  return end > 0 && buffer[end - 1] === 0x0d;
}

const longestFirstLine = 64 * 1024;

/** Makes the lock file, waiting for another process to be done with it. It is never taken from one that may live. */
async function locked(lock: string, patienceMs: number): Promise<Outcome<string>> {
  const until = Date.now() + patienceMs;
  for (;;) {
    const handle = await open(lock, 'wx').catch((error: unknown) => {
      if (isExisting(error)) return undefined;
      throw error;
    });
    if (handle !== undefined) {
      // Who holds it is for the reader of a message only; on a full disk the lock holds without it.
      await handle.writeFile(`${process.pid} ${hostname()}\n`).catch(() => undefined);
      await handle.close();
      return ok(lock);
    }
    if (Date.now() >= until) return err(await whyLocked(lock));
    await pause(50);
  }
}

async function whyLocked(lock: string) {
  const [pid = '', host = ''] = (await readFile(lock, 'utf8').catch(() => '')).trim().split(' ');
  const gone = host === hostname() && /^[1-9][0-9]*$/.test(pid) && !isRunning(Number(pid));
  return {
    message: gone
      ? `process ${pid} was adding readings, holds ${lock} and is no longer running`
      : `another process is adding readings and holds ${lock}`,
    advice: gone
      ? `Delete ${lock}; the readings beside it are complete.`
      : `Try again; if nothing is adding, delete ${lock}.`,
  };
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

const isExisting = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'EEXIST';
