/**
 * What an event of the CI host asks to be judged: from its payload alone, before the checkout is looked at.
 *
 * Whoever writes the workflow may choose base, head and day only where a person starts it by hand. On every other
 * event the host's payload says what is judged, so that a branch which edits the inputs cannot choose another base
 * or another day for itself.
 */

import { err, type Outcome, ok } from '../base/problem.ts';
import { isObjectId } from '../git/object-store.ts';

/** A revision as an event or a person names it. Refs are those of the remote, in full. */
export type Point =
  | { readonly kind: 'commit'; readonly commit: string; readonly ref: string | undefined }
  /** The tip of a branch of the remote; `otherwise` is the commit that stands in where it cannot be told. */
  | { readonly kind: 'tip'; readonly ref: string; readonly otherwise: string | undefined }
  | { readonly kind: 'name'; readonly name: string };

export interface PullRequest {
  /** `owner/name` of the repository it was opened in. */
  readonly repository: string;
  readonly number: number;
  readonly fromFork: boolean;
}

export type HeadIs = 'the same branch' | 'another branch';

export interface EventRequest {
  readonly base: Point;
  readonly head: Point;
  /** The merge of head into base that the host made, should there be one. */
  readonly merge: HostMerge | undefined;
  /** What the head is: what the base's branch became, which has to hold the base, or a branch of its own. */
  readonly headIs: HeadIs;
  readonly pullRequest: PullRequest | undefined;
  /** Inputs that were given and do not count on this event. */
  readonly ignored: readonly string[];
  /** The day of the judgement; the clock's where it is left out. */
  readonly now: string | undefined;
}

export interface HostMerge {
  readonly commit: string;
  /** Where the remote keeps it. */
  readonly ref: string;
  /** The tip of the pull request: has to be its second parent. */
  readonly second: string;
  /** The base as the event names it, which may be behind the one that was merged into. */
  readonly statedBase: string;
}

export interface EventContext {
  readonly name: string;
  readonly payload: unknown;
  /** The commit that the host runs the workflow for. */
  readonly sha: string;
}

export interface ChosenByHand {
  readonly base: string | undefined;
  readonly head: string | undefined;
  readonly now: string | undefined;
}

const knownEvents = [
  'pull_request',
  'pull_request_target',
  'merge_group',
  'push',
  'workflow_dispatch',
] as const;

export function requestOf(event: EventContext, chosen: ChosenByHand): Outcome<EventRequest> {
  switch (event.name) {
    case 'pull_request':
    case 'pull_request_target':
      return ofPullRequest(event, chosen);
    case 'merge_group':
      return ofMergeGroup(event, chosen);
    case 'push':
      return ofPush(event, chosen);
    case 'workflow_dispatch':
      return ofDispatch(event, chosen);
    default: // whatever else a host sends
      return err({
        message: `the event ${JSON.stringify(event.name)} names no change to judge`,
        advice: `Run the action on ${knownEvents.join(', ')}.`,
      });
  }
}

function ofPullRequest({ name, payload, sha }: EventContext, chosen: ChosenByHand): Outcome<EventRequest> {
  const base = textAt(payload, 'pull_request', 'base', 'sha');
  const branch = textAt(payload, 'pull_request', 'base', 'ref');
  const head = textAt(payload, 'pull_request', 'head', 'sha');
  const number = at(payload, 'pull_request', 'number');
  const repository = textAt(payload, 'repository', 'full_name');
  if (!isObjectId(base) || !isObjectId(head) || branch === '' || typeof number !== 'number') {
    return err(incomplete(name, 'pull_request.base, pull_request.head and pull_request.number'));
  }
  return ok({
    base: { kind: 'tip', ref: `refs/heads/${branch}`, otherwise: base },
    head: { kind: 'commit', commit: head, ref: `refs/pull/${number}/head` },
    merge:
      name === 'pull_request' && isObjectId(sha)
        ? { commit: sha, ref: `refs/pull/${number}/merge`, second: head, statedBase: base }
        : undefined,
    headIs: 'another branch',
    pullRequest: {
      repository,
      number,
      fromFork: textAt(payload, 'pull_request', 'head', 'repo', 'full_name') !== repository,
    },
    ...theEventDecides(chosen),
  });
}

function ofMergeGroup({ name, payload }: EventContext, chosen: ChosenByHand): Outcome<EventRequest> {
  const base = textAt(payload, 'merge_group', 'base_sha');
  const head = textAt(payload, 'merge_group', 'head_sha');
  if (!isObjectId(base) || !isObjectId(head)) {
    return err(incomplete(name, 'merge_group.base_sha and merge_group.head_sha'));
  }
  return ok({
    base: { kind: 'commit', commit: base, ref: textAt(payload, 'merge_group', 'base_ref') || undefined },
    head: { kind: 'commit', commit: head, ref: textAt(payload, 'merge_group', 'head_ref') || undefined },
    merge: undefined,
    headIs: 'the same branch',
    pullRequest: undefined,
    ...theEventDecides(chosen),
  });
}

function ofPush({ name, payload }: EventContext, chosen: ChosenByHand): Outcome<EventRequest> {
  const ref = textAt(payload, 'ref');
  const before = textAt(payload, 'before');
  const after = textAt(payload, 'after');
  const main = textAt(payload, 'repository', 'default_branch');
  if (!isObjectId(before) || !isObjectId(after) || ref === '' || main === '') {
    return err(incomplete(name, 'ref, before, after and repository.default_branch'));
  }
  if (isZero(after)) {
    return err({
      message: `the push deleted ${ref}, so there is nothing to judge`,
      advice: `Run the action on pushes to ${main} only.`,
    });
  }
  if (!ref.startsWith('refs/heads/')) {
    return err({
      message: `the push is to ${ref}, which is not a branch`,
      advice: `Run the action on pushes to ${main} only: \`on: { push: { branches: [${main}] } }\`.`,
    });
  }
  const head: Point = { kind: 'commit', commit: after, ref };
  if (ref !== `refs/heads/${main}`) {
    return ok({
      base: { kind: 'tip', ref: `refs/heads/${main}`, otherwise: undefined },
      head,
      merge: undefined,
      headIs: 'another branch',
      pullRequest: undefined,
      ...theEventDecides(chosen),
    });
  }
  if (isZero(before)) {
    return err({
      message: `${main} is new, so there is nothing to compare it with`,
      advice:
        'The next change to it can be judged; `ullage cost` and `ullage headroom` show the estate as it is.',
    });
  }
  if (at(payload, 'forced') === true) return err(rewritten(before, after));
  return ok({
    base: { kind: 'commit', commit: before, ref: undefined },
    head,
    merge: undefined,
    headIs: 'the same branch',
    pullRequest: undefined,
    ...theEventDecides(chosen),
  });
}

function ofDispatch({ name, payload, sha }: EventContext, chosen: ChosenByHand): Outcome<EventRequest> {
  const main = textAt(payload, 'repository', 'default_branch');
  if ((chosen.base === undefined && main === '') || (chosen.head === undefined && !isObjectId(sha))) {
    return err(incomplete(name, 'repository.default_branch and a commit to judge'));
  }
  const ref = textAt(payload, 'ref');
  return ok({
    base:
      chosen.base === undefined
        ? { kind: 'tip', ref: `refs/heads/${main}`, otherwise: undefined }
        : { kind: 'name', name: chosen.base },
    head:
      chosen.head === undefined
        ? { kind: 'commit', commit: sha, ref: ref || undefined }
        : { kind: 'name', name: chosen.head },
    merge: undefined,
    headIs: 'another branch',
    pullRequest: undefined,
    ignored: [],
    now: chosen.now,
  });
}

const theEventDecides = (chosen: ChosenByHand): Pick<EventRequest, 'ignored' | 'now'> => ({
  ignored: (['base', 'head', 'now'] as const).filter((name) => chosen[name] !== undefined),
  now: undefined,
});

/** A branch that was rewritten is no merge of anything: judged as one, it would seem to change nothing. */
export const rewritten = (before: string, after: string) => ({
  message: `the branch was rewritten: ${after} does not contain ${before}, which was its tip`,
  advice: 'Judge such a change on a pull request, and protect the branch from forced pushes.',
});

const incomplete = (name: string, parts: string) => ({
  message: `the payload of the event ${name} does not hold ${parts}`,
  advice: 'Run the action from a workflow of the CI host, which writes the payload itself.',
});

const isZero = (id: string): boolean => /^0+$/.test(id);

/** What a payload holds at a path; undefined where it ends before. */
function at(payload: unknown, ...path: readonly string[]): unknown {
  let here = payload;
  for (const key of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = Object.getOwnPropertyDescriptor(here, key)?.value;
  }
  return here;
}

function textAt(payload: unknown, ...path: readonly string[]): string {
  const value = at(payload, ...path);
  return typeof value === 'string' ? value : '';
}
