/**
 * The files on the disk, as they would be committed: tracked files as they stand now, and new ones that are not
 * ignored. No filter and no line-end conversion is applied, since a filter is a program.
 */
import { createHash } from 'node:crypto';
import { constants } from 'node:fs';
import { type FileHandle, lstat, open } from 'node:fs/promises';
import { join } from 'node:path';
import { err, type Outcome, ok } from '../base/problem.ts';
import { tooLarge } from './object-store.ts';
import { type GitRun, gitFailed } from './process.ts';
import {
  folderPath,
  type Listing,
  ListingBuilder,
  type NoFile,
  noFile,
  noFolder,
  pieces,
  problemAt,
  shown,
  type Tree,
  type TreeFile,
} from './tree.ts';

/** How many files are open at a time; a process may have only so many. */
const openAtOnce = 64;

/** The most files outside of an estate's folders that are looked at. */
const lookedAtMost = 1_000;

/** What was on the disk when it was listed. */
type OnDisk =
  | { readonly kind: 'content'; readonly blob: string; readonly bytes: Uint8Array }
  | { readonly kind: 'too-large'; readonly blob: string; readonly size: number }
  | { readonly kind: 'gone' }
  | { readonly kind: 'no-file'; readonly what: NoFile }
  | { readonly kind: 'unreadable'; readonly why: string };

export class WorkTree implements Tree {
  readonly label = { revision: 'worktree', name: 'the work tree' };
  readonly #top: string;
  readonly #hash: string;
  readonly #limit: number;
  readonly #run: (args: readonly string[]) => Promise<Outcome<GitRun>>;
  readonly fileAt: NonNullable<Tree['fileAt']>;
  /** What was listed, so that what is read is what was named, though somebody goes on editing. */
  readonly #listed = new Map<string, OnDisk>();
  readonly #folders = new Map<string, Promise<NoFile | 'gone' | undefined>>();
  /** Every path that git knows; asked for once, however many folders are listed one after the other. */
  #all: Promise<Outcome<GitRun>> | undefined;

  constructor(
    top: string,
    hash: string,
    limit: number,
    run: (args: readonly string[]) => Promise<Outcome<GitRun>>,
    fileAt: NonNullable<Tree['fileAt']>,
  ) {
    this.#top = top;
    this.#hash = hash;
    this.#limit = limit;
    this.#run = run;
    this.fileAt = fileAt;
  }

  async list(...folders: readonly string[]): Promise<Listing> {
    const listing = new ListingBuilder();
    const chosen: string[] = [];
    for (const folder of folders) {
      const path = folderPath(folder);
      if (path === undefined) {
        listing.problem(noFolder(folder));
        continue;
      }
      // Git lists nothing beneath a symbolic link, and says so only where the index knows the link.
      const link = path === '' ? undefined : await this.#linkAbove(path);
      if (link === undefined) chosen.push(path);
      else listing.problem(noFile(link.path, link.what));
    }
    if (chosen.length === 0) return listing.finish();
    const paths = await this.#paths(chosen.includes('') ? [] : chosen, listing);
    for (let start = 0; start < paths.length; start += openAtOnce) {
      const some = paths.slice(start, start + openAtOnce);
      const onDisk = await Promise.all(some.map((path) => this.#look(path)));
      onDisk.forEach((seen, index) => {
        const path = some[index] ?? '';
        switch (seen.kind) {
          case 'content':
          case 'too-large':
            this.#listed.set(path, seen);
            listing.file({ path, blob: seen.blob });
            break;
          case 'no-file':
            listing.problem(noFile(path, seen.what));
            break;
          case 'unreadable':
            listing.problem(
              problemAt(path, {
                message: `${shown(path)} cannot be read (${seen.why})`,
                advice: 'Check that you have permission to read it.',
              }),
            );
            break;
          case 'gone':
            break;
        }
      });
    }
    return listing.finish();
  }

  async read(file: TreeFile): Promise<Outcome<Uint8Array>> {
    const seen = this.#listed.get(file.path);
    if (seen?.kind === 'content') return ok(seen.bytes);
    if (seen?.kind === 'too-large')
      return err(problemAt(file.path, tooLarge(shown(file.path), seen.size, this.#limit)));
    return err(
      problemAt(file.path, {
        message: `${shown(file.path)} was not listed`,
        advice: 'List its folder first.',
      }),
    );
  }

  /** Every file has to be looked at to tell whether it has changed, so of many none is. */
  async changedFrom(base: Tree, isWanted: (path: string) => boolean): Promise<readonly TreeFile[]> {
    const wanted = (await this.#paths([], new ListingBuilder())).filter(isWanted);
    if (wanted.length === 0 || wanted.length > lookedAtMost) return [];
    const { files: before } = await base.list(...wanted);
    const known = new Map(before.map(({ path, blob }) => [path, blob]));
    const { files: after } = await this.list(...wanted);
    return after.filter(({ path, blob }) => known.get(path) !== blob && isWanted(path));
  }

  /** What the index tracks and what is new in some folders, each path once. */
  async #paths(chosen: readonly string[], listing: ListingBuilder): Promise<readonly string[]> {
    this.#all ??= this.#run(['ls-files', '-z', '-t', '--cached', '--others', '--exclude-standard']);
    const run = await this.#all;
    if (!run.ok || run.value.code !== 0) {
      for (const problem of run.ok
        ? [gitFailed('list the files of the work tree', run.value)]
        : run.problems) {
        listing.problem(problem);
      }
      return [];
    }
    const isChosen = chosen.length === 0 ? () => true : within(chosen);
    const seen = new Set<string>();
    const paths: string[] = [];
    for (const piece of pieces(run.value.stdout)) {
      const state = piece.toString('latin1', 0, 1);
      const name = piece.subarray(2);
      const key = name.toString('latin1');
      if (!isChosen(key)) continue;
      // A file with an unsettled conflict is listed once for each side.
      if (seen.has(key)) continue;
      seen.add(key);
      const nested = name.at(-1) === 0x2f;
      const path = listing.name(nested ? name.subarray(0, -1) : name);
      if (path === undefined) continue;
      if (nested) listing.problem(noFile(path, 'nested repository'));
      else if (state === 'M') {
        listing.problem(
          problemAt(path, {
            message: `${shown(path)} still has a merge conflict`,
            advice: 'Resolve it, then `git add` the file.',
          }),
        );
      } else if (state === 'S') {
        listing.problem(
          problemAt(path, {
            message: `${shown(path)} is left out of this sparse checkout, so it looks the same as a deleted one`,
            advice: 'Check out everything with `git sparse-checkout disable`.',
          }),
        );
      } else paths.push(path);
    }
    return paths;
  }

  async #look(path: string): Promise<OnDisk> {
    const above = await this.#linkAbove(path);
    if (above !== undefined) return { kind: 'no-file', what: above.what };
    const full = join(this.#top, path);
    let handle: FileHandle | undefined;
    try {
      const seen = await lstat(full);
      const what = noFileOf(seen);
      if (what !== undefined) return { kind: 'no-file', what };
      // Should a link or a pipe take the file's place just now, opening it must neither follow nor wait.
      handle = await open(
        full,
        constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0) | (constants.O_NONBLOCK ?? 0),
      );
      const opened = await handle.stat();
      if (!opened.isFile()) return { kind: 'no-file', what: noFileOf(opened) ?? 'device' };
      if (opened.size > this.#limit) {
        return { kind: 'too-large', blob: await this.#blobOf(handle, opened.size), size: opened.size };
      }
      const bytes = await handle.readFile();
      const blob = createHash(this.#hash).update(`blob ${bytes.length}\0`).update(bytes).digest('hex');
      return { kind: 'content', blob, bytes };
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
      if (code === 'ENOENT' || code === 'ENOTDIR') return { kind: 'gone' };
      if (code === 'ELOOP') return { kind: 'no-file', what: 'symbolic link' };
      return { kind: 'unreadable', why: code };
    } finally {
      await handle?.close();
    }
  }

  /** The blob id of a file that is too large to hold. */
  async #blobOf(handle: FileHandle, size: number): Promise<string> {
    const hash = createHash(this.#hash).update(`blob ${size}\0`);
    for await (const chunk of handle.createReadStream({ autoClose: false })) hash.update(chunk);
    return hash.digest('hex');
  }

  /** The first folder on the way to a path that is no folder of this tree. */
  async #linkAbove(path: string): Promise<{ readonly path: string; readonly what: NoFile } | undefined> {
    const steps = path.split('/');
    for (let depth = 1; depth < steps.length; depth += 1) {
      const above = steps.slice(0, depth).join('/');
      let known = this.#folders.get(above);
      if (known === undefined) {
        known = lstat(join(this.#top, above)).then(
          (seen) => (seen.isDirectory() ? undefined : (noFileOf(seen) ?? 'gone')),
          () => 'gone' as const,
        );
        this.#folders.set(above, known);
      }
      const what = await known;
      if (what === 'gone') return undefined;
      if (what !== undefined) return { path: above, what };
    }
    return undefined;
  }
}

/**
 * Whether a path as git lists it, its bytes as Latin-1, is a folder's, the folder (or file) itself, or a repository that
 * holds the folder. One look-up for each step of the path, however many folders are chosen.
 */
function within(chosen: readonly string[]): (key: string) => boolean {
  const folders = new Set(chosen.map((path) => Buffer.from(path).toString('latin1')));
  return (key) => {
    for (let end = key.length; end !== -1; end = key.lastIndexOf('/', end - 1)) {
      if (folders.has(key.slice(0, end))) return true;
      if (end === 0) break;
    }
    return key.endsWith('/') && [...folders].some((folder) => folder.startsWith(key));
  };
}

interface Kind {
  isFile(): boolean;
  isSymbolicLink(): boolean;
  isDirectory(): boolean;
}

/** A tracked path that is a folder on the disk is a submodule. */
const noFileOf = (seen: Kind): NoFile | undefined =>
  seen.isFile()
    ? undefined
    : seen.isSymbolicLink()
      ? 'symbolic link'
      : seen.isDirectory()
        ? 'submodule'
        : 'device';
