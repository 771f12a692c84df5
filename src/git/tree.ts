/** One revision's files, wherever they lie: in Git objects or on the disk. */
import type { Outcome, Problem } from '../base/problem.ts';

export interface TreeFile {
  /** From the top of the repository, with `/` between folders. */
  readonly path: string;
  /** The Git blob id of the content; two files with the same one are the same, byte for byte. */
  readonly blob: string;
}

export interface TreeLabel {
  /** The commit's id, or `worktree`. */
  readonly revision: string;
  /** What the person calls it: `origin/main`, `HEAD`, `the work tree`. */
  readonly name: string;
}

export interface Listing {
  /** Sorted by path, in byte order; each path once. */
  readonly files: readonly TreeFile[];
  /** What lies in the folders and is no file that can be read: symbolic links, submodules, impossible names. */
  readonly problems: readonly Problem[];
}

/** What is at a path of a commit. */
export type FileAt =
  | { readonly kind: 'found'; readonly content: Uint8Array }
  /** The commit is not at hand, or not all that it leads to. */
  | { readonly kind: 'missing'; readonly what: 'commit' | 'part' }
  /** What is there is no file that can be read. */
  | { readonly kind: 'no file'; readonly why: string };

export interface Tree {
  readonly label: TreeLabel;
  /**
   * Every regular file in the folders, at any depth. A folder may also be the path of one file; what is not there
   * gives no file and no problem. `.` is the whole tree.
   */
  list(...folders: readonly string[]): Promise<Listing>;
  /** A file's bytes. Ask for many at once: the requests are pipelined. */
  read(file: TreeFile): Promise<Outcome<Uint8Array>>;
  /**
   * The files that are not in `base`, or are otherwise there, as far as they can be told without a look at everything:
   * what cannot be read, or is too much, is left out. They can be read, too.
   */
  changedFrom(base: Tree, isWanted: (path: string) => boolean): Promise<readonly TreeFile[]>;
  /**
   * A file of any commit, be it of another repository, whose objects lie beside this revision's own. Left out where
   * there are none beside it.
   */
  readonly fileAt?: (commit: string, path: string) => Promise<FileAt>;
}

/** Nothing at all: what the first commit of all is held against. */
export const emptyTree: Tree = {
  label: { revision: 'nothing', name: 'nothing' },
  list: async () => ({ files: [], problems: [] }),
  read: async () => ({ ok: false, problems: [] }),
  changedFrom: async () => [],
};

/** A path as it can be shown on one line of a message: what would steer a terminal or hide itself is spelt out. */
export const shown = (path: string): string =>
  path.replace(unfit, (character) => `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`);

/** Controls, line and paragraph separators, what reorders text, and halves of surrogate pairs. */
const unfit = /[\p{Cc}\p{Cs}\u2028\u2029\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

const atTop = (path: string) => ({ file: shown(path), line: 1, column: 1 });

/** What stands where a file should be. */
export type NoFile = 'symbolic link' | 'submodule' | 'nested repository' | 'folder' | 'device';

export const noFile = (path: string, what: NoFile): Problem => ({
  place: atTop(path),
  message: `${shown(path)} is a ${what}, which is not followed`,
  advice:
    'Keep the files themselves in this repository, or move this out of the folders that ullage.yaml names.',
});

export const problemAt = (path: string, problem: Problem): Problem => ({ ...problem, place: atTop(path) });

const strictUtf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** A folder as a user wrote it -> the path git knows it by; undefined when it is no path inside the repository. */
export function folderPath(folder: string): string | undefined {
  const steps = folder
    .replace(/\/+$/, '')
    .split('/')
    .filter((step) => step !== '.');
  if (folder === '' || folder.startsWith('/') || folder.search(unfit) !== -1) return undefined;
  return steps.some((step) => step === '' || step === '..') && steps.length > 0 ? undefined : steps.join('/');
}

export const noFolder = (folder: string): Problem => ({
  message: `${shown(folder) || 'an empty name'} is not a folder of the repository`,
  advice: 'Name a folder by its path from the top of the repository, such as storage or estates/storage.',
});

/** The same for names that a disk without case, or with accents of its own, may take for one. */
export const alike = (path: string): string => path.normalize('NFC').toLowerCase();

/** Gathers a listing, and refuses names that could be mistaken for other ones. */
export class ListingBuilder {
  readonly #files: TreeFile[] = [];
  readonly #problems: Problem[] = [];
  readonly #alike = new Map<string, string>();

  /** The path that these bytes name, or undefined once it has been refused. */
  name(bytes: Buffer): string | undefined {
    let path: string;
    try {
      path = strictUtf8.decode(bytes);
    } catch {
      const readable = shown(bytes.toString('utf8'));
      this.#refuseName(readable, 'is not valid UTF-8');
      return undefined;
    }
    if (path.search(unfit) !== -1) return this.#refuseName(path, 'holds control characters');
    if (path.split('/').some((step) => step === '' || step === '.' || step === '..')) {
      return this.#refuseName(path, 'points out of its folder');
    }
    // On a disk that does not tell these two apart one would take the other's place, and what is judged would not
    // be what is carried out.
    const key = alike(path);
    const other = this.#alike.get(key);
    this.#alike.set(key, path);
    if (other === undefined) return path;
    return this.#refuseName(
      path,
      other === path ? 'is there twice in its folder' : `differs from ${other} only in case or accents`,
    );
  }

  file(file: TreeFile): void {
    this.#files.push(file);
  }

  problem(problem: Problem): void {
    this.#problems.push(problem);
  }

  finish(): Listing {
    const sorted = this.#files
      .map((file) => ({ file, bytes: Buffer.from(file.path) }))
      .sort((a, b) => Buffer.compare(a.bytes, b.bytes))
      .map(({ file }) => file);
    return { files: sorted, problems: this.#problems };
  }

  #refuseName(path: string, why: string): undefined {
    this.#problems.push({
      place: atTop(path),
      message: `the file name ${shown(path)} ${why}`,
      advice: 'Rename it.',
    });
  }
}

/** The pieces between NUL bytes; what follows the last NUL is left out, since git ends each piece with one. */
export function* pieces(output: Buffer): Generator<Buffer> {
  let start = 0;
  for (let end = output.indexOf(0); end !== -1; end = output.indexOf(0, start)) {
    yield output.subarray(start, end);
    start = end + 1;
  }
}
