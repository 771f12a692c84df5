/** A tree of the object database: listed by one `git ls-tree`, read through the object store. */

import type { Outcome } from '../base/problem.ts';
import type { ObjectStore } from './object-store.ts';
import { type GitRun, gitFailed } from './process.ts';
import {
  folderPath,
  type Listing,
  ListingBuilder,
  noFile,
  noFolder,
  pieces,
  problemAt,
  shown,
  type Tree,
  type TreeFile,
  type TreeLabel,
} from './tree.ts';

type Run = (args: readonly string[]) => Promise<Outcome<GitRun>>;

interface Entry {
  readonly mode: string;
  readonly id: string;
  readonly name: Buffer;
}

export class RevisionTree implements Tree {
  readonly label: TreeLabel;
  readonly #tree: string;
  readonly #objects: ObjectStore;
  readonly #run: Run;

  constructor(tree: string, label: TreeLabel, objects: ObjectStore, run: Run) {
    this.label = label;
    this.#tree = tree;
    this.#objects = objects;
    this.#run = run;
  }

  async list(...folders: readonly string[]): Promise<Listing> {
    const listing = new ListingBuilder();
    const paths: string[] = [];
    for (const folder of folders) {
      const path = folderPath(folder);
      if (path === undefined) listing.problem(noFolder(folder));
      else paths.push(path);
    }
    if (paths.length === 0) return listing.finish();
    const entries = await this.#entries(['-r'], paths, listing);
    for (const entry of entries) {
      const path = listing.name(entry.name);
      if (path === undefined) continue;
      if (entry.mode === '120000') listing.problem(noFile(path, 'symbolic link'));
      else if (entry.mode === '160000') listing.problem(noFile(path, 'submodule'));
      else listing.file({ path, blob: entry.id });
    }
    for (const path of paths) await this.#refuseLinkAbove(path, entries, listing);
    return listing.finish();
  }

  async read(file: TreeFile): Promise<Outcome<Uint8Array>> {
    const content = await this.#objects.read(file.blob, 'blob', shown(file.path));
    if (content.ok) return content;
    return { ok: false, problems: content.problems.map((problem) => problemAt(file.path, problem)) };
  }

  /** A folder beneath a symbolic link lists as empty; an estate must not vanish that way. */
  async #refuseLinkAbove(path: string, listed: readonly Entry[], listing: ListingBuilder): Promise<void> {
    const steps = path.split('/');
    if (steps.length < 2) return;
    const start = Buffer.from(path);
    if (listed.some(({ name }) => name.subarray(0, start.length).equals(start))) return;
    for (let depth = 1; depth < steps.length; depth += 1) {
      const above = steps.slice(0, depth).join('/');
      const [entry] = await this.#entries([], [above], listing);
      if (entry?.mode === '040000') continue;
      if (entry?.mode === '120000') listing.problem(noFile(above, 'symbolic link'));
      if (entry?.mode === '160000') listing.problem(noFile(above, 'submodule'));
      return;
    }
  }

  async #entries(
    flags: readonly string[],
    paths: readonly string[],
    listing: ListingBuilder,
  ): Promise<readonly Entry[]> {
    const chosen = paths.includes('') ? [] : paths;
    const run = await this.#run(['ls-tree', ...flags, '-z', '--full-tree', this.#tree, '--', ...chosen]);
    if (!run.ok || run.value.code !== 0) {
      for (const problem of run.ok
        ? [gitFailed(`list the files of ${this.label.name}`, run.value)]
        : run.problems) {
        listing.problem(problem);
      }
      return [];
    }
    const entries: Entry[] = [];
    for (const piece of pieces(run.value.stdout)) {
      const tab = piece.indexOf(0x09);
      const [mode = '', , id = ''] = piece.toString('latin1', 0, tab).split(' ');
      entries.push({ mode, id, name: piece.subarray(tab + 1) });
    }
    return entries;
  }
}
