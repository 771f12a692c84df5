/** Fetches the rule packs of other repositories before the gate, which fetches nothing itself. */

import { err, ok } from '../base/problem.ts';
import { fetchPacks, type PackFetched, packProtocols, packsWanted } from '../cli/fetch-packs.ts';
import { treeAt, withRepository } from '../cli/repository.ts';
import type { Pair } from './checkout.ts';
import { type Remote, runSignedIn } from './fetch.ts';

/** What the reader should know about it; what is not at hand after all the gate tells, and judges nothing. */
export async function packNotes(remote: Remote, { base, head }: Pair): Promise<readonly string[]> {
  const wanted = await withRepository(remote.dir, async (repository) => {
    const [before, after] = [await treeAt(repository, base), await treeAt(repository, head)];
    return before.ok && after.ok ? ok(await packsWanted(before.value, after.value, [])) : err();
  });
  if (!wanted.ok) return [];
  const fetched = await fetchPacks(remote.dir, wanted.value, (args) =>
    runSignedIn(remote, args, packProtocols),
  );
  if (!fetched.ok) return [];
  return fetched.value.flatMap(noteOf);
}

function noteOf({ listing: { name, commit, repository }, state }: PackFetched): readonly string[] {
  switch (state.kind) {
    case 'here already':
      return [];
    case 'fetched':
      return [`The pack ${name} was fetched: the commit ${commit.slice(0, 12)} of ${repository}.`];
    case 'not at hand':
      return [`${state.problem.message}. ${state.problem.advice}`];
  }
}
