/**
 * What waivers without a ceiling have covered on main, found out where it is asked: main is gone back along first
 * parents to where they came, by the files alone that hold waivers, and replayed from there.
 */

import { err, type Outcome, ok } from '../base/problem.ts';
import type { Paths } from '../estate/settings.ts';
import { firstParentHistory, type HistoryEntry } from '../git/history.ts';
import type { GitRepository } from '../git/repository.ts';
import { emptyTree } from '../git/tree.ts';
import { beforeItCame, coveredUnseen, goesOnFrom, isKnown, untold } from '../policy/approval.ts';
import { isOfThisClone } from '../policy/elsewhere.ts';
import { kindsOf } from '../policy/files.ts';
import type { PolicyRule, Waiver } from '../policy/policy.ts';
import { readOnlyWaivers } from '../policy/reader.ts';
import { waiversThatRead } from '../policy/stand-in.ts';
import { type Known, Replay } from './replay.ts';
import { foldersOf, pathsInHistory } from './walk.ts';

export interface Asked {
  /** The commit of main up to which history is asked. */
  readonly base: string;
  readonly waivers: readonly Waiver[];
  readonly tried?: readonly PolicyRule[] | undefined;
}

export async function approvalsUpTo(
  repository: GitRepository,
  { base, waivers, tried }: Asked,
): Promise<Outcome<Known>> {
  const paths = await pathsInHistory(repository, base);
  if (!paths.ok) return paths;
  const entries = await sinceTheyCame(repository, base, waivers, paths.value);
  if (!entries.ok) return entries;
  const replay = new Replay(repository, { failOn: 'error', tried, paths: paths.value });
  for (const entry of entries.value) {
    const outcome = (await replay.judge(entry))?.outcome;
    const lacked = outcome?.kind === 'not judged' ? outcome.problems.find(isOfThisClone) : undefined;
    if (lacked !== undefined) return err(coveredUnseen(waivers, entry.commit.id, lacked));
  }
  const { known } = replay;
  const lacking = waivers.find((waiver) => !isKnown(known.own, waiver));
  return lacking === undefined ? ok(known) : err(untold(lacking));
}

/** The commits from the one that brought the first of some waivers, oldest first. */
async function sinceTheyCame(
  repository: GitRepository,
  to: string,
  waivers: readonly Waiver[],
  paths: readonly Paths[],
): Promise<Outcome<readonly HistoryEntry[]>> {
  const entries: HistoryEntry[] = [];
  for await (const entry of firstParentHistory(repository, { to, folders: foldersOf(paths) })) {
    if (!entry.ok) return entry;
    const { commit, changed, cutShort } = entry.value;
    if (cutShort) return err(beforeItCame(waivers));
    entries.push(entry.value);
    const touchesThem = changed.some(({ path }) =>
      paths.some((each) => kindsOf(path, each).some((kind) => kind === 'waivers' || kind === 'settings')),
    );
    if (!touchesThem) continue;
    const earlier = await waiversOf(repository, commit.parents[0]);
    if (!earlier.ok) return earlier;
    // Where waivers do not read, none can be told to be missing.
    const before = earlier.value;
    if (before !== undefined && !waivers.some((each) => before.some((other) => goesOnFrom(each, other))))
      break;
  }
  return ok(entries.reverse());
}

async function waiversOf(
  repository: GitRepository,
  id: string | undefined,
): Promise<Outcome<readonly Waiver[] | undefined>> {
  const commit = id === undefined ? undefined : await repository.commit(id);
  if (commit !== undefined && !commit.ok) return commit;
  const tree =
    commit === undefined
      ? emptyTree
      : repository.tree(commit.value.tree, { revision: commit.value.id, name: commit.value.id.slice(0, 12) });
  return ok(waiversThatRead(await readOnlyWaivers(tree)));
}
