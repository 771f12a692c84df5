/**
 * What is compared: main as it is, and main as it would be after the merge.
 *
 * The base is the tip of the main branch. The head is the result of merging the branch into it, so that neither
 * what others merged meanwhile nor what the branch never touched is laid at its door. What cannot be told for
 * sure (a conflict, a history cut short, objects that are not here) is a problem, never a guess.
 */

import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import type { Commit } from './commit.ts';
import { isObjectId, missingObject } from './object-store.ts';
import { gitFailed, gitSaid, shellWord } from './process.ts';
import type { GitRepository } from './repository.ts';
import { pieces, shown, type Tree } from './tree.ts';

export interface RevisionRequest {
  /** The main branch; found out when left out. */
  readonly base?: string | undefined;
  /** The branch to judge; HEAD when left out. */
  readonly head?: string | undefined;
  /** Judge the uncommitted files instead of a branch. */
  readonly worktree?: boolean | undefined;
}

/**
 * How the head came about: `same`, the branch adds nothing to the base; `merge-result`, of base and branch, or the
 * branch itself where it already holds the base; `merge-commit`, a merge that somebody made before; `worktree`.
 */
export type How = 'same' | 'merge-result' | 'merge-commit' | 'worktree';

export interface RevisionPair {
  readonly how: How;
  readonly base: Tree;
  readonly head: Tree;
  readonly baseCommit: string;
  /** The branch's own tip, or the commit the work tree stands on. */
  readonly headCommit: string;
  readonly baseTree: string;
  /** Tree id of the head; uncommitted files have none. */
  readonly headTree?: string;
  /** Where the branch left the main branch; only asked for when there is something to merge. */
  readonly mergeBase?: string;
  /** As the person, or the search for the main branch, named them. */
  readonly baseRef: string;
  readonly headRef: string;
}

/** A commit, what it is called, and what it says. */
interface Named {
  readonly ref: string;
  readonly commit: Commit;
}

export async function resolveRevisions(
  repo: GitRepository,
  what: RevisionRequest,
): Promise<Outcome<RevisionPair>> {
  if (what.worktree && what.head !== undefined) {
    return err({ message: '--head and --worktree were both given', advice: 'Give one of them.' });
  }
  if (await nothingCommitted(repo)) {
    return err({ message: 'nothing is committed yet', advice: 'Commit to main first.' });
  }
  const head = await named(repo, what.head ?? 'HEAD', '--head');
  const base = await baseOf(repo, what, head);
  if (!head.ok || !base.ok) {
    return err(...(base.ok ? [] : base.problems), ...(head.ok ? [] : head.problems));
  }
  if (what.worktree) return overWorkTree(repo, base.value, head.value);
  return afterMerge(repo, base.value, head.value);
}

/** Whether HEAD waits for the first commit of all, as after `git init`. */
async function nothingCommitted(repo: GitRepository): Promise<boolean> {
  if ((await repo.commitAt('HEAD')) !== undefined) return false;
  const refs = await repo.inRepository(['for-each-ref', '--count=1']);
  return refs.ok && refs.value.code === 0 && refs.value.stdout.length === 0;
}

async function named(
  repo: GitRepository,
  ref: string,
  option: '--base' | '--head' = '--base',
): Promise<Outcome<Named>> {
  const id = await repo.resolveCommit(ref);
  if (!id.ok) return (await onlyOnRemote(repo, ref, option)) ?? id;
  const commit = await repo.commit(id.value);
  return commit.ok ? ok({ ref, commit: commit.value }) : commit;
}

/** A branch that a clone knows only by its remote's name: it was never checked out here. */
async function onlyOnRemote(
  repo: GitRepository,
  ref: string,
  option: '--base' | '--head',
): Promise<Outcome<never> | undefined> {
  if (!/^\w[\w./-]*$/.test(ref) || ref.includes('..') || (await repo.commitAt(ref)) !== undefined)
    return undefined;
  if ((await repo.commitAt(`refs/remotes/origin/${ref}`)) === undefined) return undefined;
  return err({
    message: `there is no branch ${shown(ref)} in this clone, but there is origin/${shown(ref)}`,
    advice: `Name it so: \`${option} origin/${shown(ref)}\`.`,
  });
}

/**
 * How many files in some folders differ on the disk from a commit: what somebody who judges the commit may believe
 * to be judged. Told from the bytes, since `git status` runs the filters that a repository configures. Line ends
 * that git converts are no difference.
 */
export async function uncommittedFiles(
  repo: GitRepository,
  commit: string,
  folders: readonly string[],
): Promise<number> {
  const [disk, said] = await Promise.all([repo.workTree(), repo.commit(commit)]);
  if (!disk.ok || !said.ok) return 0;
  const committed = repo.tree(said.value.tree, { revision: commit, name: commit });
  const [there, here] = await Promise.all([committed.list(...folders), disk.value.list(...folders)]);
  const before = new Map(there.files.map((file) => [file.path, file]));
  const after = new Set(here.files.map(({ path }) => path));
  const changed = await Promise.all(
    here.files.map(async (file) => {
      const old = before.get(file.path);
      if (old?.blob === file.blob) return false;
      if (old === undefined) return true;
      const [was, is] = await Promise.all([committed.read(old), disk.value.read(file)]);
      return !was.ok || !is.ok || !withoutReturns(was.value).equals(withoutReturns(is.value));
    }),
  );
  const gone = there.files.filter(({ path }) => !after.has(path)).length;
  return gone + changed.filter((differs) => differs).length;
}

const withoutReturns = (content: Uint8Array): Buffer =>
  Buffer.from(Buffer.from(content).toString('latin1').replaceAll('\r\n', '\n'), 'latin1');

async function baseOf(
  repo: GitRepository,
  what: RevisionRequest,
  head: Outcome<Named>,
): Promise<Outcome<Named>> {
  if (what.base !== undefined) return named(repo, what.base);
  const merged =
    what.head === undefined || what.head === 'HEAD' ? await hostMadeMerge(repo, head) : undefined;
  if (merged !== undefined && !what.worktree) return merged;
  const main = await mainBranch(repo);
  if (main !== undefined) return named(repo, main);
  return err({
    message: 'the main branch is not known in this clone',
    advice: [
      repo.shallow.size > 0
        ? 'Fetch it with `git fetch --unshallow origin main:refs/remotes/origin/main`, in CI with fetch depth 0, or name it with --base REF'
        : 'Name it with --base REF, or tell git with `git remote set-head origin --auto`',
      ...(head.ok && head.value.commit.parents.length > 1
        ? ['; for a merge commit that the CI made, that is --base HEAD^1']
        : []),
      '.',
    ].join(''),
  });
}

/**
 * A host that merges a proposal for a CI run checks the merge commit out, detached, under a ref of its own. Only
 * such a ref makes the first parent the base. Anybody can make a merge commit and choose its first parent: were
 * that enough, a branch that has merged main into itself would be judged against itself.
 */
async function hostMadeMerge(repo: GitRepository, head: Outcome<Named>): Promise<Outcome<Named> | undefined> {
  if (!head.ok || head.value.commit.parents.length < 2) return undefined;
  const attached = await repo.inRepository(['symbolic-ref', '--quiet', 'HEAD']);
  if (!attached.ok || attached.value.code === 0) return undefined;
  const refs = await repo.inRepository([
    'for-each-ref',
    '--format=%(refname)',
    `--points-at=${head.value.commit.id}`,
  ]);
  if (!refs.ok) return undefined;
  const mergeRef = /^refs\/(?:remotes\/)?(?:pull|merge-requests)\/\d+\/merge$/m;
  if (!mergeRef.test(refs.value.stdout.toString('utf8'))) return undefined;
  const first = head.value.commit.parents[0] ?? '';
  if (!(await repo.holds(first))) {
    return err({
      message:
        'this clone holds the merge commit and not its first parent, so there is nothing to judge it against',
      advice: 'Fetch it with `git fetch --unshallow origin`; in CI, check out with fetch depth 2 or more.',
    });
  }
  const commit = await repo.commit(first);
  return commit.ok ? ok({ ref: 'HEAD^1', commit: commit.value }) : commit;
}

/** The main branch as far as the clone knows it. Full names, so that no tag can pose as a branch. */
export async function mainBranch(repo: GitRepository): Promise<string | undefined> {
  const remote = await repo.inRepository(['symbolic-ref', '--quiet', 'refs/remotes/origin/HEAD']);
  const target = remote.ok && remote.value.code === 0 ? remote.value.stdout.toString('utf8').trim() : '';
  const usual = [
    ...(target.startsWith('refs/remotes/origin/') ? [target] : []),
    'refs/remotes/origin/main',
    'refs/remotes/origin/master',
    'refs/heads/main',
    'refs/heads/master',
  ];
  for (const ref of usual) if ((await repo.commitAt(ref)) !== undefined) return ref;
  const run = await repo.inRepository(['config', '--get', 'init.defaultBranch']);
  const name = run.ok && run.value.code === 0 ? run.value.stdout.toString('utf8').trim() : '';
  const ref = `refs/heads/${name}`;
  return name !== '' && (await repo.commitAt(ref)) !== undefined ? ref : undefined;
}

/** `refs/remotes/origin/main` as it is spoken of. */
const short = (ref: string): string => ref.replace(/^refs\/(?:remotes|heads|tags)\//, '');

async function afterMerge(repo: GitRepository, base: Named, head: Named): Promise<Outcome<RevisionPair>> {
  const made = (how: How, headTree: string, mergeBase?: string): Outcome<RevisionPair> =>
    ok({
      ...sidesOf(repo, base, head),
      how,
      head: repo.tree(headTree, { revision: head.commit.id, name: short(head.ref) }),
      headTree,
      ...(mergeBase === undefined ? {} : { mergeBase }),
    });
  if (head.commit.tree === base.commit.tree) return made('same', head.commit.tree);
  if (head.commit.parents.length > 1 && head.commit.parents[0] === base.commit.id) {
    return made('merge-commit', head.commit.tree, base.commit.id);
  }
  // What can be walked in a shallow clone is true history, so an ancestor found there is one.
  if (await isAncestor(repo, base, head)) return made('merge-result', head.commit.tree, base.commit.id);
  if (await isAncestor(repo, head, base)) return made('same', base.commit.tree, head.commit.id);
  const mergeBase = await mergeBaseOf(repo, base, head);
  if (!mergeBase.ok) return mergeBase;
  const merged = await mergeTree(repo, base, head);
  if (!merged.ok) return merged;
  return made(merged.value === base.commit.tree ? 'same' : 'merge-result', merged.value, mergeBase.value);
}

const sidesOf = (repo: GitRepository, base: Named, head: Named) => ({
  base: repo.tree(base.commit.tree, { revision: base.commit.id, name: short(base.ref) }),
  baseCommit: base.commit.id,
  headCommit: head.commit.id,
  baseTree: base.commit.tree,
  baseRef: short(base.ref),
  headRef: short(head.ref),
});

async function isAncestor(repo: GitRepository, older: Named, newer: Named): Promise<boolean> {
  const run = await repo.inObjects(['merge-base', '--is-ancestor', older.commit.id, newer.commit.id]);
  return run.ok && run.value.code === 0;
}

async function mergeBaseOf(repo: GitRepository, base: Named, head: Named): Promise<Outcome<string>> {
  if (repo.shallow.size > 0) {
    // Where either side's history is cut off before they meet, they may have met later than can be seen, and the
    // merge would be another one.
    const apart = await repo.inObjects(['rev-list', `${base.commit.id}...${head.commit.id}`]);
    if (!apart.ok) return apart;
    const commits = apart.value.stdout.toString('latin1').split('\n');
    if (apart.value.code !== 0 || commits.some((id) => repo.shallow.has(id)))
      return err(cutShort(base, head));
  }
  const run = await repo.inObjects(['merge-base', base.commit.id, head.commit.id]);
  if (!run.ok) return run;
  const id = run.value.stdout.toString('latin1').trim();
  if (run.value.code === 0 && isObjectId(id)) return ok(id);
  if (run.value.code !== 1) return err(gitFailed('find where the branches parted', run.value));
  return err({
    message: `${shown(short(head.ref))} and ${shown(short(base.ref))} have no commit in common, so one cannot be merged into the other`,
    advice: `Start the branch from main: \`git switch -c NAME ${shellWord(shown(short(base.ref)))}\`, and bring the changes over.`,
  });
}

const cutShort = (base: Named, head: Named): Problem => ({
  message: `this clone is shallow, and its history ends before ${shown(short(head.ref))} and ${shown(short(base.ref))} meet`,
  advice: 'Fetch the rest with `git fetch --unshallow origin`; in CI, check out with fetch depth 0.',
});

/** The most conflicting files that a message names. */
const namedAtMost = 10;

/** The tree that merging the branch into the base gives. */
async function mergeTree(repo: GitRepository, base: Named, head: Named): Promise<Outcome<string>> {
  const run = await repo.inObjects([
    'merge-tree',
    '--write-tree',
    '-z',
    '--name-only',
    '--no-messages',
    base.commit.id,
    head.commit.id,
  ]);
  if (!run.ok) return run;
  const [tree, ...conflicts] = [...pieces(run.value.stdout)].map((piece) => piece.toString('utf8'));
  if (run.value.code === 0 && tree !== undefined && isObjectId(tree)) return ok(tree);
  if (run.value.code === 1) {
    const files = conflicts.slice(0, namedAtMost).map(shown).join(', ');
    const more = conflicts.length > namedAtMost ? ` and ${conflicts.length - namedAtMost} more` : '';
    return err({
      message: `${shown(short(head.ref))} cannot be merged into ${shown(short(base.ref))}: there are conflicts in ${files || 'its files'}${more}`,
      advice: `Merge main into the branch and settle them: \`git merge ${shellWord(shown(short(base.ref)))}\`.`,
    });
  }
  if (/unable to read|missing|could not|not found/i.test(run.value.stderr)) {
    return err({
      ...missingObject('what the merge needs'),
      message: `the merge cannot be made: ${gitSaid(run.value.stderr)}`,
    });
  }
  return err(gitFailed('merge the branch into main', run.value));
}

/**
 * The files on the disk are judged as they lie there. On a branch that main has moved on from, what others merged
 * would look undone, so such a work tree is not judged until main has been merged into it.
 */
async function overWorkTree(repo: GitRepository, base: Named, head: Named): Promise<Outcome<RevisionPair>> {
  const files = await repo.workTree();
  if (!files.ok) return files;
  if (base.commit.id !== head.commit.id && !(await isAncestor(repo, base, head))) {
    if (repo.shallow.size > 0) return err(cutShort(base, head));
    return err({
      message: `${shown(short(base.ref))} has changes that this work tree does not have, and they would look undone`,
      advice: `Bring it up to date first: commit, then \`git merge ${shellWord(shown(short(base.ref)))}\`.`,
    });
  }
  return ok({ ...sidesOf(repo, base, head), how: 'worktree', head: files.value });
}
