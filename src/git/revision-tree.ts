/** A tree of the object database. Its folders and its files are both read through the object store. */

import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { parseCommit } from './commit.ts';
import { isMissing, type ObjectStore } from './object-store.ts';
import { tooManyFiles } from './process.ts';
import {
  type FileAt,
  folderPath,
  type Listing,
  ListingBuilder,
  noFile,
  noFolder,
  problemAt,
  shown,
  type Tree,
  type TreeFile,
  type TreeLabel,
} from './tree.ts';
import { entriesOf, type TreeEntry } from './tree-object.ts';

/**
 * What a listing may come to, in paths and in their bytes together. Folders that stand in one another many times over
 * make a listing without end out of a few objects.
 */
const mostPaths = 500_000;
const mostBytes = 256 * 1024 * 1024;

/** An entry with its path from the top; the path's bytes need be no text. */
interface Found {
  readonly entry: TreeEntry;
  readonly path: Buffer;
}

/** A folder's path, with its slash, and its ids in two trees. */
interface Pair {
  readonly path: string;
  readonly before: string | undefined;
  readonly after: string;
}

type Step = Outcome<readonly Found[]>;

const slash = Buffer.from('/');

export class RevisionTree implements Tree {
  readonly label: TreeLabel;
  readonly #tree: string;
  readonly #objects: ObjectStore;
  /** By id: a folder is read once, however many paths lead through it. */
  readonly #folders = new Map<string, Promise<Outcome<readonly TreeEntry[]>>>();

  constructor(tree: string, label: TreeLabel, objects: ObjectStore) {
    this.label = label;
    this.#tree = tree;
    this.#objects = objects;
  }

  async list(...folders: readonly string[]): Promise<Listing> {
    const listing = new ListingBuilder();
    const paths = new Set<string>();
    for (const folder of folders) {
      const path = folderPath(folder);
      if (path === undefined) listing.problem(noFolder(folder));
      else paths.add(path);
    }
    let found: readonly Found[] = [];
    const walk = new Walk((id) => this.#folder(id));
    for (const path of paths) {
      if (isBeneathAnother(path, paths)) continue;
      const under = await walk.at(this.#tree, path);
      for (const problem of under.ok ? [] : under.problems) listing.problem(problem);
      if (under.ok) found = [...found, ...under.value];
    }
    const inOrder = found.toSorted((a, b) => Buffer.compare(a.path, b.path));
    for (const { entry, path: bytes } of inOrder) {
      const path = listing.name(bytes);
      if (path === undefined) continue;
      if (entry.kind === 'file') listing.file({ path, blob: entry.id });
      else listing.problem(noFile(path, entry.kind));
    }
    for (const problem of walk.linksAbove) listing.problem(problem);
    return listing.finish();
  }

  async read(file: TreeFile): Promise<Outcome<Uint8Array>> {
    const content = await this.#objects.read(file.blob, 'blob', shown(file.path));
    if (content.ok) return content;
    return { ok: false, problems: content.problems.map((problem) => problemAt(file.path, problem)) };
  }

  /** Two folders with one id hold the same, so only those on the way to what differs are read. */
  async changedFrom(base: Tree, isWanted: (path: string) => boolean): Promise<readonly TreeFile[]> {
    const changed: TreeFile[] = [];
    let level: readonly Pair[] = [
      { path: '', before: base instanceof RevisionTree ? base.#tree : undefined, after: this.#tree },
    ];
    for (let looked = 0; level.length > 0 && looked < mostPaths; ) {
      const next: Pair[] = [];
      for (const { path: above, was, is } of await Promise.all(level.map((pair) => this.#entriesOf(pair)))) {
        looked += is.length;
        const known = new Map(was.map((entry) => [entry.name.toString('latin1'), entry]));
        for (const { kind, name, id } of is) {
          const old = known.get(name.toString('latin1'));
          if (old?.id === id) continue;
          const path = `${above}${name.toString('utf8')}`;
          if (kind === 'folder')
            next.push({ path: `${path}/`, before: old?.kind === 'folder' ? old.id : undefined, after: id });
          else if (kind === 'file' && isWanted(path)) changed.push({ path, blob: id });
        }
      }
      level = next;
    }
    return changed;
  }

  async #entriesOf({ path, before, after }: Pair) {
    const [was, is] = await Promise.all([
      before === undefined ? ok([]) : this.#folder(before),
      this.#folder(after),
    ]);
    return { path, was: was.ok ? was.value : [], is: is.ok && was.ok ? is.value : [] };
  }

  fileAt(commit: string, path: string): Promise<FileAt> {
    return fileIn(this.#objects, commit, path);
  }

  #folder(id: string): Promise<Outcome<readonly TreeEntry[]>> {
    const known = this.#folders.get(id);
    if (known !== undefined) return known;
    const reading = this.#readFolder(id);
    this.#folders.set(id, reading);
    return reading;
  }

  async #readFolder(id: string): Promise<Outcome<readonly TreeEntry[]>> {
    const content = await this.#objects.read(id, 'tree', `a folder of ${this.label.name}`);
    if (!content.ok) return content;
    const entries = entriesOf(content.value, id.length / 2);
    if (entries !== undefined) return ok(entries);
    return err({
      message: `a folder of ${this.label.name} cannot be read: ${id} is not a tree`,
      advice: 'Run `git fsck` in the repository and repair what it reports, or clone again.',
    });
  }
}

/** The file at a path of a commit, wherever the commit comes from. */
export async function fileIn(objects: ObjectStore, commit: string, path: string): Promise<FileAt> {
  const read = await objects.read(commit, 'commit', `the commit ${commit}`);
  const said = read.ok ? parseCommit(commit, read.value) : read;
  if (!said.ok) return noFileFor(said.problems, 'commit');
  const tree = new RevisionTree(said.value.tree, { revision: commit, name: commit }, objects);
  const { files, problems } = await tree.list(path);
  const [first] = files;
  if (first !== undefined && first.path !== path) return noFileFor([noFile(path, 'folder')]);
  if (problems.length > 0) return noFileFor(problems);
  if (first === undefined) return { kind: 'no file', why: `there is no file ${shown(path)}` };
  const content = await tree.read(first);
  return content.ok ? { kind: 'found', content: content.value } : noFileFor(content.problems);
}

function noFileFor(problems: readonly Problem[], what: 'commit' | 'part' = 'part'): FileAt {
  if (problems.some(isMissing)) return { kind: 'missing', what };
  return { kind: 'no file', why: problems[0]?.message ?? 'nothing can be read' };
}

const isBeneathAnother = (path: string, paths: ReadonlySet<string>): boolean =>
  (path !== '' && paths.has('')) ||
  path.split('/').some((_, depth, steps) => depth > 0 && paths.has(steps.slice(0, depth).join('/')));

/** One way through a tree's folders, within bounds. */
class Walk {
  /** A folder beneath a symbolic link holds nothing; an estate must not vanish that way. */
  readonly linksAbove: Problem[] = [];
  readonly #folder: (id: string) => Promise<Outcome<readonly TreeEntry[]>>;
  #paths = 0;
  #bytes = 0;

  constructor(folder: (id: string) => Promise<Outcome<readonly TreeEntry[]>>) {
    this.#folder = folder;
  }

  /** Whatever is no folder, at a path or beneath it. What is not there is nothing. */
  async at(tree: string, path: string): Promise<Step> {
    const steps = path === '' ? [] : path.split('/');
    let here: readonly string[] = [tree];
    for (const [depth, step] of steps.entries()) {
      const entries = await this.#inAll(here);
      if (!entries.ok) return entries;
      const wanted = Buffer.from(step);
      const named = entries.value.filter(({ name }) => name.equals(wanted));
      const above = steps.slice(0, depth + 1).join('/');
      if (depth === steps.length - 1)
        return this.#beneath(named.map((entry) => ({ entry, path: Buffer.from(above) })));
      for (const { kind } of named) {
        if (kind === 'symbolic link' || kind === 'submodule') this.linksAbove.push(noFile(above, kind));
      }
      here = named.filter(({ kind }) => kind === 'folder').map(({ id }) => id);
    }
    const entries = await this.#inAll(here);
    return entries.ok ? this.#beneath(entries.value.map((entry) => ({ entry, path: entry.name }))) : entries;
  }

  async #inAll(folders: readonly string[]): Promise<Outcome<readonly TreeEntry[]>> {
    const all = await Promise.all(folders.map((id) => this.#folder(id)));
    return allOf(all);
  }

  /** Goes down level by level, and asks for all the folders of one at once. */
  async #beneath(found: readonly Found[]): Promise<Step> {
    const files: Found[] = [];
    for (let level = found; level.length > 0; ) {
      const folders = level.filter(({ entry }) => entry.kind === 'folder');
      for (const each of level) if (each.entry.kind !== 'folder') files.push(each);
      const ids = [...new Set(folders.map(({ entry }) => entry.id))];
      const read = allOf(await Promise.all(ids.map(async (id) => asOne(id, await this.#folder(id)))));
      if (!read.ok) return read;
      const entriesOfId = new Map(read.value);
      const next: Found[] = [];
      for (const { entry, path } of folders) {
        const lead = Buffer.concat([path, slash]);
        for (const below of entriesOfId.get(entry.id) ?? []) {
          next.push({ entry: below, path: Buffer.concat([lead, below.name]) });
          this.#paths += 1;
          this.#bytes += lead.length + below.name.length;
          if (this.#paths > mostPaths || this.#bytes > mostBytes) return err(tooManyFiles);
        }
      }
      level = next;
    }
    return ok(files);
  }
}

const asOne = <T>(id: string, outcome: Outcome<T>): Outcome<readonly (readonly [string, T])[]> =>
  outcome.ok ? ok([[id, outcome.value]]) : outcome;

function allOf<T>(outcomes: readonly Outcome<readonly T[]>[]): Outcome<readonly T[]> {
  const problems = outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  return problems.length > 0 ? err(...problems) : ok(outcomes.flatMap((each) => (each.ok ? each.value : [])));
}
