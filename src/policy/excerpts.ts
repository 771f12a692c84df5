/** The source lines that problems point at. */

import type { Problem } from '../base/problem.ts';
import type { RevisionPlace } from '../change/place.ts';
import type { Tree } from '../git/tree.ts';
import { decodeText } from '../read/text.ts';

/**
 * Gives problems the source line that they point at. What is wrong between files is found when their text is gone,
 * so it is read again, and only then.
 *
 * @param treeOf the tree that a problem's place is in
 */
export async function withExcerpts(
  problems: readonly Problem[],
  treeOf: (problem: Problem) => Tree,
): Promise<readonly Problem[]> {
  const wanting = new Map<Tree, Set<string>>();
  for (const problem of problems) {
    if (problem.place === undefined || problem.excerpt !== undefined) continue;
    const files = wanting.get(treeOf(problem)) ?? new Set();
    wanting.set(treeOf(problem), files.add(problem.place.file));
  }
  const lines = new Map<Tree, ReadonlyMap<string, readonly string[]>>();
  for (const [tree, files] of wanting) lines.set(tree, await linesOf(tree, files));
  return problems.map((problem) => {
    const { place } = problem;
    if (place === undefined || problem.excerpt !== undefined) return problem;
    const excerpt = lines.get(treeOf(problem))?.get(place.file)?.[place.line - 1];
    return excerpt === undefined ? problem : { ...problem, excerpt };
  });
}

/** The lines of some files. A place may name what is no file of the tree, or no text; it has no line to show. */
async function linesOf(
  tree: Tree,
  paths: ReadonlySet<string>,
): Promise<ReadonlyMap<string, readonly string[]>> {
  const { files } = await tree.list(...paths);
  const read = await Promise.all(
    files
      .filter(({ path }) => paths.has(path))
      .map(async (file) => {
        const content = await tree.read(file);
        const text = content.ok ? decodeText(content.value, file.path) : content;
        return text.ok ? ([[file.path, text.value.split(/\r?\n/)]] as const) : [];
      }),
  );
  return new Map(read.flat());
}

/** The source lines at places of two revisions, read at once, for whoever asks by place. */
export async function linesAt(
  places: readonly RevisionPlace[],
  trees: Readonly<Record<RevisionPlace['revision'], Tree>>,
): Promise<(place: RevisionPlace) => string | undefined> {
  const lines = { base: none, head: none };
  for (const revision of ['base', 'head'] as const) {
    const wanted = new Set(places.flatMap((place) => (place.revision === revision ? [place.file] : [])));
    if (wanted.size > 0) lines[revision] = await linesOf(trees[revision], wanted);
  }
  return ({ revision, file, line }) => lines[revision].get(file)?.[line - 1];
}

const none: ReadonlyMap<string, readonly string[]> = new Map();
