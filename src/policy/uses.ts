/** The readings of a revision, summarised; the same files are summarised once. */

import type { Problem } from '../base/problem.ts';
import { summariseReadings, type UseSummary } from '../capacity/use-summary.ts';
import type { Tree } from '../git/tree.ts';
import { type ChangedPaths, within } from './files.ts';

/** By server and mount point. */
export type Uses = ReadonlyMap<string, UseSummary>;

export interface UsesRead {
  readonly value: Uses;
  readonly problems: readonly Problem[];
  /** Names the files that were summarised; `undefined` where nobody asked. */
  readonly key: string | undefined;
}

const isCsv = (path: string): boolean => /\.csv$/i.test(path);

/** A row that does not read stands in the way, as half a trend is none. */
export async function usesAfter(
  before: UsesRead,
  tree: Tree,
  folder: string,
  changed: ChangedPaths | undefined,
): Promise<UsesRead> {
  const isTold = changed !== undefined && ![...changed.keys()].some((path) => within(folder, path));
  if (isTold && before.key !== undefined) return before;
  const none = { value: new Map(), key: undefined };
  const listing = await tree.list(folder);
  if (listing.problems.length > 0) return { ...none, problems: listing.problems };
  const files = listing.files.filter(({ path }) => isCsv(path) && within(folder, path));
  const key = files.map(({ blob, path }) => `${blob} ${path}`).join('\n');
  if (key === before.key) return before;
  const contents = await Promise.all(files.map((file) => tree.read(file)));
  const problems = contents.flatMap((content) => (content.ok ? [] : content.problems));
  if (problems.length > 0) return { ...none, problems };
  const { fileSystems, problems: rows } = await summariseReadings(
    contents.flatMap((content, index) => {
      const file = files[index]?.path ?? '';
      return content.ok ? [{ file, chunks: [content.value] }] : [];
    }),
  );
  return rows.length > 0 ? { ...none, problems: rows } : { value: fileSystems, problems: [], key };
}
