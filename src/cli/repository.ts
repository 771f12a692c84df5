/** Opens the repository a command works on, and one revision of it. */

import { err, type Outcome, ok } from '../base/problem.ts';
import { bareSettings, type Paths, type Settings } from '../estate/settings.ts';
import { GitRepository } from '../git/repository.ts';
import type { Tree } from '../git/tree.ts';
import { readRevision } from '../policy/reader.ts';
import type { Revision } from '../policy/revision.ts';
import { dayOf } from './edge.ts';

/** Runs some work on an open repository, and closes it whatever comes. */
export async function withRepository<T>(
  dir: string,
  work: (repository: GitRepository) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  const opened = await GitRepository.open(dir);
  if (!opened.ok) return opened;
  try {
    return await work(opened.value);
  } finally {
    await opened.value.close();
  }
}

/** A revision by name, or the files on the disk where none is named. */
export async function treeAt(repository: GitRepository, ref: string | undefined): Promise<Outcome<Tree>> {
  if (ref === undefined) return repository.workTree();
  const id = await repository.resolveCommit(ref);
  if (!id.ok) return id;
  const commit = await repository.commit(id.value);
  if (!commit.ok) return commit;
  return ok(repository.tree(commit.value.tree, { revision: id.value, name: ref }));
}

/** The files as they are on the disk, read whole: what the commands that add to a repository begin with. */
export interface OnDisk {
  /** The top of the work tree, from wherever in it the command is run. */
  readonly top: string;
  readonly tree: Tree;
  readonly revision: Revision;
  /** As the settings have them; the usual ones where there are no settings. */
  readonly paths: Paths;
}

/** Runs some work on the files as they are on the disk. */
export const withFilesOnDisk = <T>(
  dir: string,
  work: (files: OnDisk) => Promise<Outcome<T>>,
): Promise<Outcome<T>> =>
  withRepository(dir, async (repository) => {
    const top = await repository.top();
    if (!top.ok) return top;
    const tree = await treeAt(repository, undefined);
    if (!tree.ok) return tree;
    const revision = await readRevision(tree.value);
    if (!revision.ok) return revision;
    const paths = (revision.value.settings ?? bareSettings).paths;
    return work({ top: top.value, tree: tree.value, revision: revision.value, paths });
  });

/** One revision, read whole, on a day: what the commands that show an estate begin with. */
export interface Shown {
  readonly on: string;
  readonly tree: Tree;
  readonly revision: Revision;
  readonly settings: Settings;
}

/** What is shown is nobody's decision yet where no revision is named. */
export const readFromHere = (at: string | undefined): readonly string[] =>
  at === undefined
    ? ['Read from the files as they are here, merged or not; `--at main` reads what is on main.']
    : [];

/**
 * Reads the revision that a command is to show.
 *
 * @param at the revision by name; the files on the disk where left out
 * @param now the day; the clock's where left out
 */
export async function shownOn(
  repository: GitRepository,
  { at, now }: { readonly at?: string; readonly now?: string },
): Promise<Outcome<Shown>> {
  const day = dayOf(now);
  const tree = await treeAt(repository, at);
  if (!day.ok || !tree.ok) {
    return err(...(day.ok ? [] : day.problems), ...(tree.ok ? [] : tree.problems));
  }
  const revision = await readRevision(tree.value);
  if (!revision.ok) return revision;
  const { settings } = revision.value;
  if (settings === undefined) {
    return err({
      message: 'there is no ullage.yaml at the top of the repository',
      advice: '`ullage new` writes one to start from.',
    });
  }
  return ok({ on: day.value, tree: tree.value, revision: revision.value, settings });
}
