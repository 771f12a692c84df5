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
import { parseCommitName, type Refs, spellings } from './refs.ts';
import type { GitRepository } from './repository.ts';
import type { RevisionRequest } from './request.ts';
import { emptyTree, pieces, shown, type Tree } from './tree.ts';

/**
 * How the head came about: `same`, the branch adds nothing to the base; `merge-result`, of base and branch, or the
 * branch itself where it already holds the base; `merge-commit`, a merge that somebody made before; `worktree`.
 */
export type How = 'same' | 'merge-result' | 'merge-commit' | 'worktree';

export interface RevisionPair {
  readonly how: How;
  readonly base: Tree;
  readonly head: Tree;
  /** Empty before the first commit of all, as the other ids are then. */
  readonly baseCommit: string;
  /** The branch's own tip, or the commit the work tree stands on. */
  readonly headCommit: string;
  readonly baseTree: string;
  /** Tree id of the head; uncommitted files have none. */
  readonly headTree?: string;
  /** As the person, or the search for the main branch, named it. */
  readonly baseRef: string;
  /** Only where nobody named the base, and the clone's own branch of its name has commits that it does not have. */
  readonly notPushed?: NotPushed;
}

/** A branch of this clone, and how many of its commits the remote's branch of that name did not have when last fetched. */
export interface NotPushed {
  readonly branch: string;
  readonly commits: number;
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
  if (repo.head === undefined && (await nothingCommitted(repo))) {
    if (what.worktree && what.base === undefined) return beforeTheFirst(repo);
    return err({
      message: 'nothing is committed yet',
      advice: 'Commit to main first, or judge the files as they are with `--worktree`.',
    });
  }
  const refs = await repo.refs(refsToAsk(what));
  if (!refs.ok) return refs;
  const asked: Asked = { repo, refs: refs.value };
  const head = await named(asked, what.head ?? 'HEAD', '--head');
  const base = await baseOf(asked, what, head);
  if (!head.ok || !base.ok) {
    return err(...(base.ok ? [] : base.problems), ...(head.ok ? [] : head.problems));
  }
  const pair = what.worktree
    ? await overWorkTree(repo, base.value, head.value)
    : await afterMerge(repo, base.value, head.value);
  if (!pair.ok || what.base !== undefined) return pair;
  const own = await notPushed(asked, base.value, head.value);
  return own === undefined ? pair : ok({ ...pair.value, notPushed: own });
}

/** Nothing is said of a branch that is only behind, nor of one that is itself what is judged. */
async function notPushed({ repo, refs }: Asked, base: Named, head: Named): Promise<NotPushed | undefined> {
  const branch = /^refs\/remotes\/origin\/(.+)$/.exec(base.ref)?.[1];
  const own = refs.get(`refs/heads/${branch}`)?.id;
  if (branch === undefined || own === undefined || [base.commit.id, head.commit.id].includes(own))
    return undefined;
  const run = await repo.inObjects(['rev-list', '--count', own, `^${base.commit.id}`]);
  const commits = run.ok && run.value.code === 0 ? Number(run.value.stdout.toString('latin1').trim()) : 0;
  return commits > 0 ? { branch, commits } : undefined;
}

/** A repository, and all of its refs that can matter here, asked for at once. */
interface Asked {
  readonly repo: GitRepository;
  readonly refs: Refs;
}

function refsToAsk({ base, head }: RevisionRequest): readonly string[] {
  const names = [base, head].flatMap((ref) => {
    const name = ref === undefined ? undefined : parseCommitName(ref);
    return name?.ok ? [...spellings(name.value.start), onOrigin(name.value.start)] : [];
  });
  return [...names, ...(base === undefined ? [originHead, ...usualMains, ...mergeRefs] : [])];
}

const onOrigin = (name: string): string => `refs/remotes/origin/${name}`;

/** Whether HEAD waits for the first commit of all, as after `git init`. */
async function nothingCommitted(repo: GitRepository): Promise<boolean> {
  const refs = await repo.inRepository(['for-each-ref', '--count=1']);
  return refs.ok && refs.value.code === 0 && refs.value.stdout.length === 0;
}

async function named(
  { repo, refs }: Asked,
  ref: string,
  option: '--base' | '--head' = '--base',
): Promise<Outcome<Named>> {
  const id = await repo.resolveCommit(ref, refs);
  if (!id.ok) return onlyOnRemote(refs, ref, option) ?? id;
  const commit = await repo.commit(id.value);
  return commit.ok ? ok({ ref, commit: commit.value }) : commit;
}

/** A branch that a clone knows only by its remote's name: it was never checked out here. */
function onlyOnRemote(refs: Refs, ref: string, option: '--base' | '--head'): Outcome<never> | undefined {
  const known = spellings(ref).some((spelling) => refs.has(spelling));
  if (known || !/^\w[\w./-]*$/.test(ref) || ref.includes('..') || !refs.has(onOrigin(ref))) return undefined;
  return err({
    message: `there is no branch ${shown(ref)} in this clone, but there is origin/${shown(ref)}`,
    advice: `Use that: \`${option} origin/${shown(ref)}\`.`,
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

async function baseOf(asked: Asked, what: RevisionRequest, head: Outcome<Named>): Promise<Outcome<Named>> {
  if (what.base !== undefined) return named(asked, what.base);
  const { repo } = asked;
  const merged =
    what.head === undefined || what.head === 'HEAD' ? await hostMadeMerge(asked, head) : undefined;
  if (merged !== undefined && !what.worktree) return merged;
  const main = await mainAmong(asked);
  if (main !== undefined) return named(asked, main);
  return err({
    message: 'the main branch is not known in this clone',
    advice: [
      repo.shallow.size > 0
        ? 'Fetch it with `git fetch --unshallow origin main:refs/remotes/origin/main`, in CI with fetch depth 0, or name it with --base REF'
        : 'Name it with --base REF, or tell git with `git remote set-head origin --auto`; where main has no commit yet, commit there first, since a branch is judged against what main has',
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
async function hostMadeMerge(
  { repo, refs }: Asked,
  head: Outcome<Named>,
): Promise<Outcome<Named> | undefined> {
  if (!head.ok || head.value.commit.parents.length < 2 || repo.head?.on !== 'commit') return undefined;
  const { id } = head.value.commit;
  if (![...refs].some(([name, ref]) => ref.id === id && mergeRef.test(name))) return undefined;
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

const mergeRef = /^refs\/(?:remotes\/)?(?:pull|merge-requests)\/\d+\/merge$/;

const mergeRefs = ['pull', 'remotes/pull', 'merge-requests', 'remotes/merge-requests'].map(
  (place) => `refs/${place}/*/merge`,
);

const originHead = 'refs/remotes/origin/HEAD';

/** Full names, so that no tag can pose as a branch. */
const usualMains: readonly string[] = [
  'refs/remotes/origin/main',
  'refs/remotes/origin/master',
  'refs/heads/main',
  'refs/heads/master',
];

/** The main branch as far as the clone knows it. */
export async function mainBranch(repo: GitRepository): Promise<string | undefined> {
  const refs = await repo.refs([originHead, ...usualMains]);
  return refs.ok ? mainAmong({ repo, refs: refs.value }) : undefined;
}

async function mainAmong({ repo, refs }: Asked): Promise<string | undefined> {
  const target = refs.get(originHead)?.target;
  if (target?.startsWith('refs/remotes/origin/')) return target;
  const usual = usualMains.find((name) => refs.has(name));
  if (usual !== undefined) return usual;
  const run = await repo.inRepository(['config', '--get', 'init.defaultBranch']);
  const name = run.ok && run.value.code === 0 ? run.value.stdout.toString('utf8').trim() : '';
  const ref = `refs/heads/${name}`;
  return name !== '' && (await repo.commitAt(ref)) !== undefined ? ref : undefined;
}

/** `refs/remotes/origin/main` as it is spoken of. */
const short = (ref: string): string => ref.replace(/^refs\/(?:remotes|heads|tags)\//, '');

async function afterMerge(repo: GitRepository, base: Named, head: Named): Promise<Outcome<RevisionPair>> {
  const made = (how: How, headTree: string): Outcome<RevisionPair> =>
    ok({
      ...sidesOf(repo, base, head),
      how,
      head: repo.tree(headTree, { revision: head.commit.id, name: short(head.ref) }),
      headTree,
    });
  const same = () => made('same', base.commit.tree);
  const asItIs = () => made('merge-result', head.commit.tree);
  if (head.commit.tree === base.commit.tree) return same();
  if (head.commit.parents.length > 1 && head.commit.parents[0] === base.commit.id) {
    return made('merge-commit', head.commit.tree);
  }
  if (repo.shallow.size > 0) {
    const apart = await commitsApart(repo, base, head);
    if (!apart.ok) return apart;
    const { onlyInBase, onlyInHead } = apart.value;
    // What can be walked in a shallow clone is true history, so an ancestor found there is one.
    if (onlyInBase.length === 0) return asItIs();
    if (onlyInHead.length === 0) return same();
    // Where either side's history is cut off before they meet, they may have met later than can be seen, and the
    // merge would be another one.
    if ([...onlyInBase, ...onlyInHead].some((id) => repo.shallow.has(id))) return err(cutShort(base, head));
  }
  // Git merges a branch that holds main already, or is held by it, into what it then has to be.
  const merged = await mergeTree(repo, base, head);
  if (!merged.ok) return (await isAncestor(repo, base, head)) ? asItIs() : merged;
  return merged.value === base.commit.tree ? same() : made('merge-result', merged.value);
}

const sidesOf = (repo: GitRepository, base: Named, head: Named) => ({
  base: repo.tree(base.commit.tree, { revision: base.commit.id, name: short(base.ref) }),
  baseCommit: base.commit.id,
  headCommit: head.commit.id,
  baseTree: base.commit.tree,
  baseRef: short(base.ref),
});

const isAncestor = (repo: GitRepository, older: Named, newer: Named): Promise<boolean> =>
  holdsCommit(repo, older.commit.id, newer.commit.id);

/** Whether one commit is the other, or leads to it; no where this clone has not both. */
export async function holdsCommit(repo: GitRepository, older: string, newer: string): Promise<boolean> {
  const run = await repo.inObjects(['merge-base', '--is-ancestor', older, newer]);
  return run.ok && run.value.code === 0;
}

/** Whether one commit leads to the other, and none on the way alters anything in the folders. */
export async function isUntouched(
  repo: GitRepository,
  older: string,
  newer: string,
  folders: readonly string[],
): Promise<boolean> {
  if (!(await holdsCommit(repo, older, newer))) return false;
  const range = ['rev-list', '--full-history', '--max-count=1', `${older}..${newer}`];
  const run = await repo.inObjects([...range, '--', ...folders]);
  return run.ok && run.value.code === 0 && run.value.stdout.length === 0;
}

/** Commits that only one of the two leads to, as far as a shallow clone tells. */
async function commitsApart(repo: GitRepository, base: Named, head: Named) {
  const run = await repo.inObjects(['rev-list', '--left-right', `${base.commit.id}...${head.commit.id}`]);
  if (!run.ok) return run;
  if (run.value.code !== 0) return err(cutShort(base, head));
  const lines = run.value.stdout.toString('latin1').split('\n');
  const marked = (mark: string) =>
    lines.filter((line) => line.startsWith(mark)).map((line) => line.slice(mark.length));
  return ok({ onlyInBase: marked('<'), onlyInHead: marked('>') });
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
  if (/unrelated histories/.test(run.value.stderr)) {
    return err({
      message: `${shown(short(head.ref))} and ${shown(short(base.ref))} have no commit in common, so one cannot be merged into the other`,
      advice: `Start the branch from main: \`git switch -c NAME ${shellWord(shown(short(base.ref)))}\`, and bring the changes over.`,
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
      message: `${shown(short(base.ref))} has changes that this work tree does not have, and they would appear to be undone`,
      advice: `Bring it up to date first: commit, then \`git merge ${shellWord(shown(short(base.ref)))}\`.`,
    });
  }
  return ok({ ...sidesOf(repo, base, head), how: 'worktree', head: files.value });
}

/** Before the first commit there is nothing to hold the files against, and all of them are new. */
async function beforeTheFirst(repo: GitRepository): Promise<Outcome<RevisionPair>> {
  const files = await repo.workTree();
  if (!files.ok) return files;
  const none = { baseCommit: '', headCommit: '', baseTree: '', baseRef: 'nothing' };
  return ok({ ...none, how: 'worktree', base: emptyTree, head: files.value });
}
