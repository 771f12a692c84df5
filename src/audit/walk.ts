/** Which commits the audit looks at: the main branch's first-parent history, oldest first. */

import { err, type Outcome, ok } from '../base/problem.ts';
import { type Paths, readSettings, settingsFile, usualPaths } from '../estate/settings.ts';
import { firstParentHistory, type HistoryEntry } from '../git/history.ts';
import type { GitRepository } from '../git/repository.ts';
import { readFile } from '../policy/files.ts';

/** Commits by id. `from` itself is not of the span; all history up to `to` where it is left out. */
export interface Span {
  readonly from?: string | undefined;
  readonly to: string;
}

/**
 * Every choice of folders that the settings ever made, up to a commit. `ullage.yaml` may move a folder at any commit,
 * so what is listed has to hold all of them from the beginning.
 */
export async function pathsInHistory(
  repository: GitRepository,
  to: string,
): Promise<Outcome<readonly Paths[]>> {
  const blobs = new Set<string>();
  for await (const entry of firstParentHistory(repository, { to, folders: [settingsFile] })) {
    if (!entry.ok) return entry;
    for (const { path, after } of entry.value.changed) if (path === settingsFile) blobs.add(after.blob);
  }
  const commit = await repository.commit(to);
  if (!commit.ok) return commit;
  const tree = repository.tree(commit.value.tree, { revision: to, name: to });
  const choices = new Map([[JSON.stringify(usualPaths), usualPaths]]);
  for (const blob of blobs) {
    if (/^0+$/.test(blob)) continue;
    // Settings that do not read choose nothing; that revision is not judged.
    const settings = await readFile(tree, { path: settingsFile, blob }, readSettings);
    if (settings.ok) choices.set(JSON.stringify(settings.value.paths), settings.value.paths);
  }
  return ok([...choices.values()]);
}

/** What to list for these choices: the top folder of each, so that what takes its place is seen as well. */
export const foldersOf = (choices: readonly Paths[]): readonly string[] => [
  ...new Set([
    settingsFile,
    ...choices.flatMap((paths) => Object.values(paths).map((folder) => folder.split('/')[0] ?? folder)),
  ]),
];

/** The commits of a span that changed anything in the folders, oldest first. */
export const walk = (
  repository: GitRepository,
  { from, to }: Span,
  choices: readonly Paths[],
): AsyncIterable<Outcome<HistoryEntry>> =>
  firstParentHistory(repository, { from, to, folders: foldersOf(choices), oldestFirst: true });

/** How many there are, for a look ahead; undefined where it cannot be told. */
export async function countWalk(
  repository: GitRepository,
  { from, to }: Span,
  choices: readonly Paths[],
): Promise<number | undefined> {
  const run = await repository.inObjects([
    'rev-list',
    '--count',
    '--first-parent',
    '--end-of-options',
    to,
    ...(from === undefined ? [] : [`^${from}`]),
    '--',
    ...foldersOf(choices),
  ]);
  const count =
    run.ok && run.value.code === 0 ? Number(run.value.stdout.toString('latin1').trim()) : Number.NaN;
  return Number.isSafeInteger(count) ? count : undefined;
}

/** The newest commit of the first-parent history that was committed on a day or before it. */
export async function commitOn(
  repository: GitRepository,
  to: string,
  day: string,
): Promise<Outcome<HistoryEntry['commit']>> {
  for await (const entry of firstParentHistory(repository, { to })) {
    if (!entry.ok) return entry;
    const { commit } = entry.value;
    if (new Date(commit.committer.date).toISOString().slice(0, 10) <= day) return ok(commit);
  }
  return err({
    message: `there is no commit of ${day} or before it`,
    advice: 'Name a later day; `git log --first-parent` shows the first.',
  });
}
