/**
 * The files of a revision: which there are, and what each was read as. Both are told from the revision before it and
 * the paths that differ, so that a file of the same path and content is read once and is the same object after.
 */

import { ok, type PartialOutcome, type Problem } from '../base/problem.ts';
import { layered } from '../estate/layered.ts';
import { type Paths, settingsFile } from '../estate/settings.ts';
import { alike, ListingBuilder, type Tree, type TreeFile } from '../git/tree.ts';
import { type ReadDocument, readDocument } from '../read/document.ts';
import { decodeText } from '../read/text.ts';

/** What a file is to a judgement. */
export type FileKind = keyof Paths | 'settings';

/** What lies at a path after a change: mode and blob id as Git writes them, all zeros where nothing does. */
export interface PathNow {
  readonly mode: string;
  readonly blob: string;
}

/** The paths that differ from an earlier revision. */
export type ChangedPaths = ReadonlyMap<string, PathNow>;

/** Every file in the folders but those of readings. */
export interface FileList {
  /** By the path as a disk that tells neither case nor accents apart sees it. */
  readonly files: ReadonlyMap<string, TreeFile>;
  /** What lies there and is no file that can be read. */
  readonly problems: readonly Problem[];
}

/** How the files of a revision are told: all of them, or those that came, changed and went. */
export type FileChange =
  | { readonly kind: 'all'; readonly coming: readonly TreeFile[] }
  | { readonly kind: 'some'; readonly coming: readonly TreeFile[]; readonly leaving: readonly string[] };

/** What one file was read as. */
export interface Piece<T> {
  readonly blob: string;
  readonly outcome: PartialOutcome<T>;
  /** What it was read from, of a format that is read again by what differs. */
  readonly text: string | undefined;
}

/** How the files of one format are read. */
export interface FormatReader<T> {
  readonly whole: (document: ReadDocument) => PartialOutcome<T>;
  /** By what differs from an earlier text; undefined where the text has to be read whole. */
  readonly again?: (earlier: { readonly text: string; readonly part: T }, text: string) => T | undefined;
}

/** By path. */
export type Pieces<T> = ReadonlyMap<string, Piece<T>>;

const folders = ['storage', 'prices', 'policies', 'waivers', 'procedures'] as const;

export const within = (folder: string, path: string): boolean => path.startsWith(`${folder}/`);

export const isYaml = (path: string): boolean => /\.ya?ml$/i.test(path);

/** What a path is to a judgement under these paths; nothing where it is none of its business. */
export const kindsOf = (path: string, paths: Paths): readonly FileKind[] =>
  path === settingsFile
    ? ['settings']
    : ([...folders, 'readings'] as const).filter((kind) => within(paths[kind], path));

/**
 * The files of a revision, and how they differ from those of the one before it.
 *
 * @param changed the paths that differ; where left out, or where they do not tell it for sure, the tree is listed
 */
export async function listFiles(
  before: FileList,
  tree: Tree,
  paths: Paths,
  changed: ChangedPaths | undefined,
): Promise<{ readonly list: FileList; readonly change: FileChange }> {
  const told =
    changed === undefined || before.problems.length > 0 ? undefined : filesAfter(before, changed, paths);
  if (told !== undefined) return told;
  const { files, problems } = await tree.list(...folders.map((kind) => paths[kind]));
  return {
    list: { files: new Map(files.map((file) => [alike(file.path), file])), problems },
    change: { kind: 'all', coming: files },
  };
}

const regular: readonly string[] = ['100644', '100755', '100664'];

const isGone = (blob: string): boolean => /^0+$/.test(blob);

/** Undefined where a listing would find more than files, or two that could take each other's place on a disk. */
function filesAfter({ files }: FileList, changed: ChangedPaths, paths: Paths) {
  if ([...changed].some((change) => isOdd(change, paths))) return undefined;
  const ours = [...changed].filter(([path]) => folders.some((kind) => within(paths[kind], path)));
  const leaving = ours.flatMap(([path, { blob }]) => (isGone(blob) ? [path] : []));
  const deleted = new Set(leaving.map(alike).filter((key, index) => files.get(key)?.path === leaving[index]));
  const set = new Map<string, TreeFile>();
  for (const [path, { blob }] of ours) {
    if (isGone(blob)) continue;
    const key = alike(path);
    const other = set.get(key) ?? (deleted.has(key) ? undefined : files.get(key));
    if (other !== undefined && other.path !== path) return undefined;
    set.set(key, { path, blob });
  }
  return {
    list: { files: layered(files, { set, deleted }), problems: [] },
    change: { kind: 'some', coming: [...set.values()], leaving },
  } as const;
}

/** Whether a path holds what is no file, or has a name that a listing refuses, or that Git could not tell exactly. */
function isOdd([path, { mode, blob }]: readonly [string, PathNow], paths: Paths): boolean {
  const above = Object.values(paths).some((folder) => folder === path || folder.startsWith(`${path}/`));
  if (!above && kindsOf(path, paths).length === 0) return false;
  if (path.includes('\uFFFD')) return true;
  if (isGone(blob)) return false;
  return !regular.includes(mode) || (!above && new ListingBuilder().name(Buffer.from(path)) === undefined);
}

/** What the files of one folder were read as, where only what came or changed is read. */
export async function readPieces<T>(
  before: Pieces<T>,
  change: FileChange,
  folder: string,
  tree: Tree,
  reader: FormatReader<T>,
): Promise<Pieces<T>> {
  const coming = change.coming.filter(({ path }) => isYaml(path) && within(folder, path));
  const there = change.kind === 'all' ? new Set(coming.map(({ path }) => path)) : undefined;
  const leaving =
    change.kind === 'some'
      ? change.leaving.filter((path) => before.has(path))
      : [...before.keys()].filter((path) => there?.has(path) !== true);
  const read = coming
    .filter(({ path, blob }) => before.get(path)?.blob !== blob)
    .map(async (file) => {
      const piece = await readPiece(tree, file, reader, before.get(file.path));
      return [file.path, piece] as const;
    });
  return layered(before, { set: new Map(await Promise.all(read)), deleted: new Set(leaving) });
}

async function readPiece<T>(
  tree: Tree,
  { path, blob }: TreeFile,
  { whole, again }: FormatReader<T>,
  before: Piece<T> | undefined,
): Promise<Piece<T>> {
  const content = await tree.read({ path, blob });
  const text = content.ok ? decodeText(content.value, path) : content;
  if (!text.ok) return { blob, outcome: text, text: undefined };
  const part =
    before?.outcome.ok && before.text !== undefined
      ? again?.({ text: before.text, part: before.outcome.value }, text.value)
      : undefined;
  const outcome = part === undefined ? readText(text.value, path, whole) : ok(part);
  return { blob, outcome, text: again === undefined ? undefined : text.value };
}

/** Reads one file as one format. */
export async function readFile<T>(
  tree: Tree,
  file: TreeFile,
  reader: (document: ReadDocument) => PartialOutcome<T>,
): Promise<PartialOutcome<T>> {
  const content = await tree.read(file);
  return content.ok ? readContent(content.value, file.path, reader) : content;
}

/** Reads a file's bytes as one format. */
export function readContent<T>(
  content: Uint8Array,
  path: string,
  reader: (document: ReadDocument) => PartialOutcome<T>,
): PartialOutcome<T> {
  const text = decodeText(content, path);
  return text.ok ? readText(text.value, path, reader) : text;
}

function readText<T>(
  text: string,
  path: string,
  reader: (document: ReadDocument) => PartialOutcome<T>,
): PartialOutcome<T> {
  const document = readDocument(text, path);
  return document.ok ? reader(document.value) : document;
}

/** In byte order of the path, as Git lists them. */
export function inOrder<T>(pieces: Pieces<T>): readonly PartialOutcome<T>[] {
  const bytes = [...pieces].map(([path, { outcome }]) => ({ bytes: Buffer.from(path), outcome }));
  return bytes.sort((a, b) => Buffer.compare(a.bytes, b.bytes)).map(({ outcome }) => outcome);
}
