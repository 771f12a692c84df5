/** Finds the two commits of an event in the checkout, and fetches what it lacks of them. */

import { err, type Outcome, ok } from '../base/problem.ts';
import { resolveRevisions } from '../git/compare.ts';
import { isObjectId } from '../git/object-store.ts';
import { GitRepository } from '../git/repository.ts';
import { type EventRequest, type HeadIs, type HostMerge, type Point, rewritten } from './events.ts';
import { type Depth, fetchInto, type Remote, remoteTip, wholeHistory } from './fetch.ts';

export interface ToJudge {
  readonly base: string;
  readonly head: string;
  /** What the reader should know about how the two were found. */
  readonly notes: readonly string[];
}

/** The checkout, opened again after each fetch: what a repository holds of its history is told when it is opened. */
class Checkout {
  readonly remote: Remote;
  #opened: GitRepository | undefined;

  constructor(remote: Remote) {
    this.remote = remote;
  }

  async ask<T>(question: (repository: GitRepository) => Promise<Outcome<T>>): Promise<Outcome<T>> {
    if (this.#opened === undefined) {
      const opened = await GitRepository.open(this.remote.dir, { environment: this.remote.environment });
      if (!opened.ok) return opened;
      this.#opened = opened.value;
    }
    return question(this.#opened);
  }

  async fetch(wanted: readonly string[], depth: Depth): Promise<Outcome<string>> {
    await this.close();
    return fetchInto(this.remote, wanted, depth);
  }

  async close(): Promise<void> {
    await this.#opened?.close();
    this.#opened = undefined;
  }
}

/** The commits to judge, in a checkout that holds all that judging them takes. */
export async function toJudge(remote: Remote, request: EventRequest): Promise<Outcome<ToJudge>> {
  const checkout = new Checkout(remote);
  try {
    return await toJudgeIn(checkout, request);
  } finally {
    await checkout.close();
  }
}

async function toJudgeIn(checkout: Checkout, request: EventRequest): Promise<Outcome<ToJudge>> {
  const merged =
    request.merge === undefined
      ? { kind: 'of no use' as const, notes: [] }
      : await byHostMerge(checkout, request.merge, request.base);
  if (merged.kind === 'found') return ok(merged.toJudge);
  const base = await commitOf(checkout, request.base);
  const head = await commitOf(checkout, request.head);
  if (!base.ok || !head.ok) return err(...(base.ok ? [] : base.problems), ...(head.ok ? [] : head.problems));
  const pair = { base: base.value, head: head.value };
  const deep = await deepEnough(checkout, pair, request.headIs);
  if (!deep.ok) return deep;
  return ok({ ...pair, notes: merged.notes });
}

/** An event names a commit in full; a short id in a sentence is enough. */
const short = (id: string): string => id.slice(0, 12);

type HostMergeFound =
  | { readonly kind: 'found'; readonly toJudge: ToJudge }
  | { readonly kind: 'of no use'; readonly notes: readonly string[] };

const ofNoUse = (why: string): HostMergeFound => ({
  kind: 'of no use',
  notes: [`${why}; the merge was made here instead.`],
});

/**
 * The merge that the host made of a pull request: its second parent has to be the tip that the event names, and then
 * its first parent is the main branch as the host last merged into it. The base in the payload can be behind it.
 */
async function byHostMerge(checkout: Checkout, merge: HostMerge, base: Point): Promise<HostMergeFound> {
  const here = await obtained(checkout, merge.commit, merge.ref);
  if (!here.ok) return ofNoUse(`The host's merge commit ${short(merge.commit)} could not be fetched`);
  const parents = await checkout.ask(async (repository) => {
    const commit = await repository.commit(merge.commit);
    return commit.ok ? ok(commit.value.parents) : commit;
  });
  const [first, second, ...more] = parents.ok ? parents.value : [];
  if (first === undefined || second !== merge.second || more.length > 0) {
    return ofNoUse(
      `The commit ${short(merge.commit)} is not a merge of the pull request's tip ${short(merge.second)}`,
    );
  }
  const branch = base.kind === 'tip' ? base.ref : undefined;
  if (!(await obtained(checkout, first, branch)).ok) {
    return ofNoUse(`The base ${short(first)} of the host's merge commit could not be fetched`);
  }
  const tip = branch === undefined ? undefined : await trackedTip(checkout, branch);
  const behind = `The base is ${short(first)}, which the host merged the pull request into; the event names ${short(merge.statedBase)}, from before main moved on.`;
  const since =
    tip === undefined
      ? ''
      : `The base is ${short(first)}; main has moved on to ${short(tip)} since. Run the job again to judge against that.`;
  return {
    kind: 'found',
    toJudge: {
      base: first,
      head: merge.commit,
      notes: [
        ...(first === merge.statedBase ? [] : [behind]),
        ...(tip === undefined || tip === first ? [] : [since]),
      ],
    },
  };
}

const holds = async (checkout: Checkout, commit: string): Promise<boolean> => {
  const held = await checkout.ask(async (repository) => ok(await repository.holds(commit)));
  return held.ok && held.value;
};

const isShallow = async (checkout: Checkout): Promise<boolean> => {
  const shallow = await checkout.ask(async (repository) => ok(repository.shallow.size > 0));
  return shallow.ok && shallow.value;
};

/** The tip of a remote branch as the checkout knows it. */
async function trackedTip(checkout: Checkout, ref: string): Promise<string | undefined> {
  const tracked = ref.replace(/^refs\/heads\//, 'refs/remotes/origin/');
  const tip = await checkout.ask(async (repository) => ok(await repository.commitAt(tracked)));
  return tip.ok ? tip.value : undefined;
}

/** Sees that the checkout holds a commit: as it is, by its id, or by the ref the remote keeps it under. */
async function obtained(
  checkout: Checkout,
  commit: string,
  ref: string | undefined,
): Promise<Outcome<string>> {
  const opened = await checkout.ask(async (repository) => ok(await repository.holds(commit)));
  if (!opened.ok) return opened;
  if (opened.value) return ok(commit);
  // A depth given in a whole clone would cut its history off.
  const depth: Depth = (await isShallow(checkout)) ? 1 : 'what is missing';
  const byId = await checkout.fetch([commit], depth);
  if (byId.ok && (await holds(checkout, commit))) return ok(commit);
  // A remote that gives only what its refs point at (an old protocol, a setting) still gives the ref.
  if (ref !== undefined && (await checkout.fetch([ref], depth)).ok && (await holds(checkout, commit))) {
    return ok(commit);
  }
  return err({
    message: `this checkout does not have the commit ${commit}, and it cannot be fetched`,
    advice: wholeHistory,
  });
}

async function commitOf(checkout: Checkout, point: Point): Promise<Outcome<string>> {
  switch (point.kind) {
    case 'commit':
      return obtained(checkout, point.commit, point.ref);
    case 'tip': {
      const tip =
        (await trackedTip(checkout, point.ref)) ??
        (await remoteTip(checkout.remote, point.ref)) ??
        point.otherwise;
      if (tip !== undefined) return obtained(checkout, tip, point.ref);
      return err({
        message: `this checkout does not have ${JSON.stringify(point.ref)}, and the remote does not say what it is`,
        advice: wholeHistory,
      });
    }
    case 'name':
      return commitByName(checkout, point.name);
  }
}

/** A revision as the workflow writes it: what the checkout knows by that name, or else a branch of the remote. */
async function commitByName(checkout: Checkout, name: string): Promise<Outcome<string>> {
  if (isObjectId(name)) return obtained(checkout, name, undefined);
  const local = await checkout.ask((repository) => repository.resolveCommit(name));
  if (local.ok) return local;
  // Whatever else a revision may be, a branch's name is plain; nothing that could be an option goes on.
  if (!/^[\w.][\w./-]*$/.test(name)) return local;
  const ref = name.startsWith('refs/') ? name : `refs/heads/${name.replace(/^origin\//, '')}`;
  const tip = (await trackedTip(checkout, ref)) ?? (await remoteTip(checkout.remote, ref));
  return tip === undefined ? local : obtained(checkout, tip, ref);
}

/** Commits of history that are fetched before the whole of it is: ours. */
export const depths: readonly Depth[] = [50, 500, 'all'];

export interface Pair {
  readonly base: string;
  readonly head: string;
}

/** Fetches history until it can be told how the two commits stand to one another. */
async function deepEnough(checkout: Checkout, pair: Pair, headIs: HeadIs): Promise<Outcome<true>> {
  for (const depth of depths) {
    const [known, shallow] = [await isKnown(checkout, pair, headIs), await isShallow(checkout)];
    if (known || !shallow) break;
    const fetched = await checkout.fetch([pair.base, pair.head], depth);
    if (!fetched.ok) {
      return err({
        message: 'this checkout is shallow, and its history ends before the branch and main meet',
        advice: wholeHistory,
      });
    }
  }
  if (headIs === 'the same branch' && !(await isKnown(checkout, pair, headIs)))
    return err(rewritten(pair.base, pair.head));
  return ok(true);
}

/** Fetches so much of the history of two commits; whether the remote gave it. */
export const fetchHistory = async (remote: Remote, { base, head }: Pair, depth: Depth): Promise<boolean> =>
  (await fetchInto(remote, [base, head], depth)).ok;

async function isKnown(checkout: Checkout, { base, head }: Pair, headIs: HeadIs): Promise<boolean> {
  const known = await checkout.ask(async (repository) => {
    if (headIs === 'another branch') return ok((await resolveRevisions(repository, { base, head })).ok);
    const commit = await repository.commit(head);
    const parents = commit.ok ? commit.value.parents : [];
    // A merge names its base itself; anything else takes a walk, which a history cut short would end too soon.
    const named = parents.length > 1 && parents[0] === base;
    return ok(named || (await isAncestor(repository, base, head)));
  });
  return known.ok && known.value;
}

async function isAncestor(repository: GitRepository, older: string, newer: string): Promise<boolean> {
  const run = await repository.inObjects(['merge-base', '--is-ancestor', older, newer]);
  return run.ok && run.value.code === 0;
}
