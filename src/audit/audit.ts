/** The audit: a record of every commit of a span, from the cache where it is there, replayed where it is not. */

import { type Outcome, ok } from '../base/problem.ts';
import type { HistoryEntry } from '../git/history.ts';
import type { GitRepository } from '../git/repository.ts';
import { lacksHistory } from '../policy/approval.ts';
import { isOfThisClone } from '../policy/elsewhere.ts';
import type { PolicyRule } from '../policy/policy.ts';
import { approvalsUpTo } from './approvals.ts';
import { type AuditRecord, dayOfCommit, recordOf } from './record.ts';
import { faulted, Replay, type ReplayOptions } from './replay.ts';
import type { Undone } from './undone.ts';
import { pathsInHistory, type Span, walk } from './walk.ts';

/**
 * Where records are kept between runs. What is damaged or was written by another program must read as not there.
 * `null` says that a commit is known to have touched nothing that a judgement goes by.
 */
export interface RecordStore {
  get(key: string): Promise<AuditRecord | null | undefined>;
  put(key: string, record: AuditRecord | null): Promise<void>;
}

export interface AuditOptions {
  readonly span: Span;
  /** The first and the last day of what is recorded. */
  readonly since?: string | undefined;
  readonly until?: string | undefined;
  readonly failOn: 'error' | 'warning';
  readonly tried?: readonly PolicyRule[] | undefined;
  /** Told of each change as it is judged; no record is then taken from the store. */
  readonly undone?: Undone | undefined;
  readonly store?: RecordStore | undefined;
  /** Called after each commit that was looked at. */
  readonly onCommit?: (() => void) | undefined;
}

/** Oldest first. The first refusal ends it; a commit that cannot be judged is a record, and does not. */
export async function* auditRecords(
  repository: GitRepository,
  options: AuditOptions,
): AsyncGenerator<Outcome<AuditRecord>, void, undefined> {
  const { span, since = '', until = '9999-12-31', failOn, tried, undone, onCommit } = options;
  const store = undone === undefined ? options.store : undefined;
  const choices = await pathsInHistory(repository, span.to);
  if (!choices.ok) return yield choices;
  const replay = new Replay(repository, {
    ...{ failOn, tried, undone, paths: choices.value },
    ask: (base, waivers) => approvalsUpTo(repository, { base, waivers, tried }),
  });
  let previous: string | undefined;
  for await (const step of walk(repository, span, choices.value)) {
    if (!step.ok) return yield step;
    const entry = step.value;
    const day = dayOfCommit(entry.commit);
    if (day < since || day > until) replay.pass(entry);
    else {
      const key = keyOf(entry, previous, options);
      const known = await store?.get(key);
      const value = known ?? (await recordFor(entry, replay, { failOn, tried, paths: choices.value }));
      const wasJudged = value !== null && value.verdict !== 'not judged';
      if (known !== undefined) replay.know(entry, wasJudged ? 'judged' : 'not judged');
      else if (isLasting(value)) await store?.put(key, value);
      if (wasJudged) previous = entry.commit.id;
      if (value !== null) yield ok(value);
    }
    onCommit?.();
  }
}

/** A commit's record, whatever comes; `null` where it touched nothing that a judgement goes by. */
async function recordFor(
  entry: HistoryEntry,
  replay: Replay,
  options: ReplayOptions,
): Promise<AuditRecord | null> {
  const replayed = await replay.judge(entry);
  if (replayed === undefined) return null;
  try {
    return recordOf(replayed);
  } catch (error) {
    const fault = faulted(entry, error, options);
    return fault === undefined ? null : recordOf(fault);
  }
}

/** A record speaks of the commit, of the one before it that was judged, and of what judged it. */
const keyOf = (
  { commit, cutShort }: HistoryEntry,
  previous: string | undefined,
  { failOn, tried }: AuditOptions,
): string =>
  JSON.stringify([
    commit.id,
    commit.parents[0] ?? null,
    previous ?? null,
    cutShort,
    failOn,
    tried?.map(({ name, level, entry }) => [name, level, entry]) ?? null,
  ]);

/** Whether another run would say the same: not where this clone lacks something that the next may hold. */
const isLasting = (record: AuditRecord | null): boolean =>
  record === null ||
  (record.tried?.reasons.some((reason) => lacksHistory({ message: reason })) !== true &&
    (record.verdict !== 'not judged' ||
      record.problems.every((problem) => problem.place !== null && !isOfThisClone(problem))));
