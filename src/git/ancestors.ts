/**
 * The first-parent ancestors of a commit, nearest first: what a branch's tip was before each commit or merge. They come
 * from the object store one by one, so a walk that ends soon costs next to nothing, and none starts a process.
 */
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import type { GitRepository } from './repository.ts';
import type { Tree } from './tree.ts';

/** The first refusal ends it; the first commit of all ends it as well. */
export async function* firstParentAncestors(
  repo: GitRepository,
  commit: string,
): AsyncGenerator<Outcome<Tree>, void, undefined> {
  let here = await repo.commit(commit);
  while (here.ok) {
    const [parent] = here.value.parents;
    if (parent === undefined) return;
    if (repo.shallow.has(here.value.id)) return yield err(endsTooSoon);
    here = await repo.commit(parent);
    if (here.ok) yield ok(repo.tree(here.value.tree, { revision: parent, name: parent.slice(0, 12) }));
  }
  yield here;
}

/** What is said where a shallow clone holds too little of main's history. */
export const endsTooSoon: Problem = {
  message:
    'main has no policy that can be read, and this shallow clone ends before a commit of main that may',
  advice: 'Fetch the rest with `git fetch --unshallow origin`; in CI, check out with fetch depth 0.',
};
