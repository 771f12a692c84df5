/**
 * Judges one commit of the main branch after another, each as the gate would have judged it: against its first
 * parent, by that parent's policy, as of the committer's day.
 *
 * The estate, its cost and everything that the rules say of it are carried from commit to commit, and only what a
 * commit touched is looked at again. Where that cannot be done (a revision that does not read, a tier that nobody
 * prices), the commit is judged by the very function that the gate calls.
 */

import { type Outcome, ok } from '../base/problem.ts';
import { subjectKey } from '../estate/estate.ts';
import { type Paths, settingsFile } from '../estate/settings.ts';
import type { Commit } from '../git/commit.ts';
import type { ChangedPath, HistoryEntry } from '../git/history.ts';
import type { GitRepository } from '../git/repository.ts';
import type { Tree } from '../git/tree.ts';
import { type Evaluation, reevaluate, violationKey } from '../policy/evaluation.ts';
import {
  evaluateChange,
  type JudgeOptions,
  propose,
  verdictOf,
  waivedAmongCarried,
} from '../policy/judge.ts';
import { type Judgement, notJudged } from '../policy/judgement.ts';
import type { Policy, PolicyRule } from '../policy/policy.ts';
import { judgeTrees, nothingToJudgeBy, ParsedFiles, sidesOf } from '../policy/revision.ts';
import {
  changesOf,
  emptySnapshot,
  emptyTree,
  follow,
  isUntold,
  type PathNow,
  pathsOf,
  readWhole,
  type Snapshot,
  type Touching,
  touching,
} from './follow.ts';
import {
  betweenRecord,
  type ChangeJudged,
  type ChangeOutcome,
  dayOfCommit,
  fromJudged,
  type Opinion,
  type Replayed,
  waiverUses,
} from './record.ts';

export interface ReplayOptions {
  readonly failOn: 'error' | 'warning';
  /** Rules to try in place of each parent's own. */
  readonly tried?: readonly PolicyRule[] | undefined;
  /** Every choice of folders that the history made. */
  readonly paths: readonly Paths[];
}

/** How an estate stood after the last commit that was judged, under one policy. */
type Stood = Evaluation | undefined;

export class Replay {
  readonly #repository: GitRepository;
  readonly #options: ReplayOptions;
  /** The last revision that held together, and the paths that commits have changed since. */
  #snapshot: Snapshot | undefined;
  readonly #pending = new Map<string, PathNow>();
  /** Names were met that the history cannot tell apart; from then on each tree is listed. */
  #untold = false;
  #stood: Stood;
  #triedStood: Stood;
  /** The last commit that is known to have been judged and those after it, kept until one must be judged on top. */
  #known: HistoryEntry[] = [];

  constructor(repository: GitRepository, options: ReplayOptions) {
    this.#repository = repository;
    this.#options = options;
  }

  /** Passes over a commit that comes before what is asked for. */
  pass(entry: HistoryEntry): void {
    // What is known and waits comes before it.
    if (this.#known.length > 0) this.#known.push(entry);
    else this.#pass(entry);
  }

  #pass({ changed, cutShort }: HistoryEntry): void {
    if (cutShort) this.#forget();
    else this.#note(changed);
  }

  /** Passes over a commit whose record is known. */
  know(entry: HistoryEntry, wasJudged: boolean): void {
    if (wasJudged) {
      for (const earlier of this.#known) this.#pass(earlier);
      this.#known = [];
    }
    this.#known.push(entry);
  }

  /** Judges a commit; undefined where it touched nothing that a judgement goes by. */
  async judge(entry: HistoryEntry): Promise<Outcome<Replayed | undefined>> {
    const [last, ...after] = this.#known;
    this.#known = [];
    if (last !== undefined) {
      const again = await this.#judge(last);
      if (!again.ok) return again;
    }
    for (const known of after) this.#pass(known);
    return this.#judge(entry);
  }

  async #judge({ commit, changed, cutShort }: HistoryEntry): Promise<Outcome<Replayed | undefined>> {
    const on = dayOfCommit(commit);
    const { failOn } = this.#options;
    const head = this.#repository.tree(commit.tree, { revision: commit.id, name: commit.id.slice(0, 12) });
    if (cutShort) {
      this.#forget();
      return ok({ commit, on, touched: [], failOn, outcome: cutShortOutcome, tried: undefined });
    }
    const base = await this.#baseTree(commit);
    if (!base.ok) {
      this.#forget();
      const outcome = outcomeOf(notJudged(base.problems, on));
      return ok({ commit, on, touched: [], failOn, outcome, tried: undefined });
    }
    const before = commit.parents.length === 0 ? emptySnapshot : await this.#at(base.value);
    this.#note(changed);
    const after = commit.parents.length === 0 ? await this.#whole(head) : await this.#at(head);
    // What does not hold together does not say where its files are, either.
    const paths =
      before === undefined || after === undefined ? this.#options.paths : [pathsOf(before), pathsOf(after)];
    const touched = kindsTouched(changed, paths);
    if (touched.length === 0) return ok(undefined);
    const options = { on, failOn };
    const weighed =
      before === undefined || after === undefined ? undefined : this.#weigh(before, after, options);
    // What is wrong is said by the gate's own way of reading.
    const outcome =
      weighed ?? outcomeOf(await judgeTrees(base.value, head, parsedIn(before, after), options));
    return ok({ commit, on, touched, failOn, outcome, tried: this.#try(before, after, options) });
  }

  /** Judges two revisions that hold together; undefined where something else stands in the way. */
  #weigh(before: Snapshot, after: Snapshot, options: Options): ChangeOutcome | undefined {
    const lacking = nothingToJudgeBy(before.revision, after.revision);
    if (lacking !== undefined) return outcomeOf(notJudged([lacking], options.on));
    const sides = sidesOf(before.revision, after.revision);
    const { policy, policyFrom } = sides;
    const stood = reevaluate(this.#stood, sides.base.estate, policy, options.on);
    if (!stood.ok) return undefined;
    const judging = { ...options, policyFrom };
    const weighed = evaluateChange(stood.value.standing, sides.base, sides.head, judging);
    if (!weighed.ok) return undefined;
    const began = this.#stood === undefined;
    this.#stood = weighed.value.after;
    const { findings, carried, policyChanges, cost, edits, touched, comparison } = weighed.value;
    const standing = { ...carried.counts };
    for (const finding of findings) {
      if (finding.baselineState !== 'absent' && finding.about === 'state') standing[finding.level]++;
    }
    const lapsed = policy.waivers.filter(({ until }) => until < options.on);
    const key = ({ entry, subject, facet }: (typeof findings)[number]): string =>
      `${entry} ${subjectKey(subject)} ${facet ?? ''}`;
    const waived = new Set(carried.waived.map(key));
    const wanted = waivedAmongCarried(stood.value.standing, touched, lapsed, options.failOn)
      .filter((finding) => !waived.has(key(finding)))
      .map((finding) => ({ ...finding, waiver: undefined }));
    const judged: ChangeJudged = {
      ...verdictOf(weighed.value),
      policyFrom,
      rules: policy.rules,
      findings,
      standing,
      renamed: edits.filter(
        ({ was, now }) => was !== undefined && now !== undefined && violationKey(was) !== violationKey(now),
      ),
      between: betweenRecord(began, began ? allOf(stood.value.standing) : stood.value.edits),
      waivers: waiverUses(policy.waivers, [...findings, ...carried.waived, ...wanted], options.on),
      cost,
      policyChanges,
      proposed:
        policyChanges.length === 0
          ? undefined
          : propose(stood.value.standing, sides.base, sides.head, comparison, options),
    };
    return { kind: 'judged', judged };
  }

  /** What the rules that are tried would have said; all else is the parent's. */
  #try(before: Snapshot | undefined, after: Snapshot | undefined, options: Options): Opinion | undefined {
    const { tried } = this.#options;
    if (tried === undefined) return undefined;
    if (before === undefined || after === undefined) {
      return { verdict: 'not judged', reasons: ['one of the two revisions does not hold together'] };
    }
    if (before.revision.settings === undefined && after.revision.settings === undefined) {
      return { verdict: 'not judged', reasons: [`there is no ${settingsFile} at the top of the repository`] };
    }
    const sides = sidesOf(before.revision, after.revision);
    const policy: Policy = { ...sides.base.policy, rules: tried };
    const stood = reevaluate(this.#triedStood, sides.base.estate, policy, options.on);
    const weighed = stood.ok
      ? evaluateChange(stood.value.standing, sides.base, sides.head, { ...options, policyFrom: 'base' })
      : stood;
    if (!weighed.ok) {
      return { verdict: 'not judged', reasons: notJudged(weighed.problems, options.on).reasons };
    }
    this.#triedStood = weighed.value.after;
    return verdictOf(weighed.value);
  }

  async #baseTree({ parents }: Commit): Promise<Outcome<Tree>> {
    const [parent] = parents;
    if (parent === undefined) return ok(emptyTree);
    const commit = await this.#repository.commit(parent);
    return commit.ok
      ? ok(this.#repository.tree(commit.value.tree, { revision: parent, name: parent.slice(0, 12) }))
      : commit;
  }

  /** The revision that all noted changes lead to. */
  async #at(tree: Tree): Promise<Snapshot | undefined> {
    if (this.#snapshot === undefined || this.#untold) return this.#whole(tree);
    if (this.#pending.size === 0) return this.#snapshot;
    const next = await follow(this.#snapshot, this.#pending, tree);
    if (next === undefined) return undefined;
    return this.#keep(next);
  }

  async #whole(tree: Tree): Promise<Snapshot | undefined> {
    const whole = await readWhole(tree, this.#snapshot);
    return whole === undefined ? undefined : this.#keep(whole);
  }

  #keep(snapshot: Snapshot): Snapshot {
    this.#snapshot = snapshot;
    this.#pending.clear();
    return snapshot;
  }

  #note(changed: readonly ChangedPath[]): void {
    if (changed.some(({ path }) => isUntold(path))) this.#untold = true;
    // Before anything is read there is nothing to put changes over.
    if (this.#snapshot === undefined) return;
    for (const [path, now] of changesOf(changed)) this.#pending.set(path, now);
  }

  #forget(): void {
    this.#snapshot = undefined;
    this.#pending.clear();
    this.#stood = undefined;
    this.#triedStood = undefined;
  }
}

/** What is parsed already, so that a broken revision costs no more than a whole look at its list. */
function parsedIn(...snapshots: readonly (Snapshot | undefined)[]): ParsedFiles {
  const parsed = new ParsedFiles();
  for (const snapshot of snapshots) {
    for (const file of snapshot?.files.values() ?? []) {
      const part = snapshot?.revision.estate.parts.get(file.path);
      if (part !== undefined) parsed.know(file, 'storage', part);
    }
  }
  return parsed;
}

type Options = Required<Pick<JudgeOptions, 'on' | 'failOn'>>;

const outcomeOf = (judgement: Judgement): ChangeOutcome =>
  judgement.verdict === 'not judged'
    ? { kind: 'not judged', reasons: judgement.reasons, problems: judgement.problems }
    : { kind: 'judged', judged: fromJudged(judgement) };

const cutShortOutcome = outcomeOf(
  notJudged(
    [
      {
        message: 'this clone is shallow and begins with this commit, so what the commit changed is not known',
        advice: 'Fetch the rest with `git fetch --unshallow origin`; in CI, check out with fetch depth 0.',
      },
    ],
    '',
  ),
);

/** Everything that stands, as if it had come at once. */
const allOf = ({ policy, entries }: Evaluation) =>
  policy.rules.flatMap((entry) => {
    const { bySubject = new Map(), ofSums = [] } = entries.get(entry.name) ?? {};
    return [...[...bySubject.values()].flat(), ...ofSums].map((now) => ({ entry, was: undefined, now }));
  });

/** What kinds of files a commit changed, by the paths of either side. Readings alone make no change. */
function kindsTouched(changed: readonly ChangedPath[], choices: readonly Paths[]): readonly Touching[] {
  const kinds = new Set(changed.flatMap(({ path }) => choices.flatMap((paths) => touching(path, paths))));
  kinds.delete('readings');
  return [...kinds].sort();
}
