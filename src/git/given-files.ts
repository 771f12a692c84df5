/** Files that a program holds, as a tree: for what is judged without a repository. */
import { createHash } from 'node:crypto';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import type { Files } from './request.ts';
import {
  type FileAt,
  folderPath,
  type Listing,
  ListingBuilder,
  noFolder,
  problemAt,
  shown,
  type Tree,
  type TreeFile,
} from './tree.ts';

/** A path that is written otherwise would be in no folder, and what it declares would not be judged. */
const misnamed = (path: string): Problem => ({
  message: `${shown(path) || 'an empty name'} is not a path from the top of the repository`,
  advice: 'Write it as Git does, with / between folders and nothing before the first: storage/imagery.yaml.',
});

/**
 * The files as a tree, or every path of them that is none.
 *
 * @param packs files of commits of other repositories, as Git names them: `COMMIT:PATH`
 */
export function treeOfFiles(files: Files, name: string, packs: Files = {}): Outcome<Tree> {
  const wrong = Object.keys(files).filter((path) => path.includes('\\') || folderPath(path) !== path);
  if (wrong.length > 0) return err(...wrong.map(misnamed));
  const contents = new Map(
    Object.entries(files).map(([path, content]) => [
      path,
      typeof content === 'string' ? Buffer.from(content) : content,
    ]),
  );
  return ok({
    label: { revision: name, name },
    list: async (...folders) => listing(contents, folders),
    read: async ({ path }) => contentOf(contents, path),
    changedFrom: async (base, isWanted) => {
      const { files: before } = await base.list('.');
      const known = new Map(before.map(({ path, blob }) => [path, blob]));
      const { files: after } = listing(contents, ['.']);
      return after.filter(({ path, blob }) => known.get(path) !== blob && isWanted(path));
    },
    fileAt: async (commit, path) => packIn(packs, `${commit}:${path}`),
  });
}

function packIn(packs: Files, name: string): FileAt {
  const content = Object.hasOwn(packs, name) ? packs[name] : undefined;
  if (content === undefined) return { kind: 'missing', what: 'commit' };
  return { kind: 'found', content: typeof content === 'string' ? Buffer.from(content) : content };
}

const blobOf = (bytes: Uint8Array): string =>
  createHash('sha1').update(`blob ${bytes.length}\0`).update(bytes).digest('hex');

function listing(contents: ReadonlyMap<string, Uint8Array>, folders: readonly string[]): Listing {
  const builder = new ListingBuilder();
  const wanted = folders.flatMap((folder) => {
    const path = folderPath(folder);
    if (path === undefined) builder.problem(noFolder(folder));
    return path ?? [];
  });
  const isIn = (path: string): boolean =>
    wanted.some((folder) => folder === '' || path === folder || path.startsWith(`${folder}/`));
  for (const [path, bytes] of contents) {
    if (isIn(path) && builder.name(Buffer.from(path)) !== undefined)
      builder.file({ path, blob: blobOf(bytes) } satisfies TreeFile);
  }
  return builder.finish();
}

function contentOf(contents: ReadonlyMap<string, Uint8Array>, path: string): Outcome<Uint8Array> {
  const bytes = contents.get(path);
  const missing = { message: `${shown(path)} was not listed`, advice: 'List its folder first.' };
  return bytes === undefined ? err(problemAt(path, missing)) : ok(bytes);
}
