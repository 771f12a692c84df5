/**
 * Judges one commit of the main branch after another, each as the gate would have judged it: against its first
 * parent (the nearest ancestor that reads, where that does not), by that parent's policy, as of the committer's day.
 *
 * It is the gate's own way, with what was read and evaluated handed on from commit to commit: only what a commit
 * touched is looked at again. A revision that does not read is no exception; what it shares with the next is read.
 */

import { err, type Outcome, ok, ownFault } from '../base/problem.ts';
import { bareSettings, type Paths, settingsFile } from '../estate/settings.ts';
import { firstParentAncestors } from '../git/ancestors.ts';
import type { Commit } from '../git/commit.ts';
import type { ChangedPath, HistoryEntry } from '../git/history.ts';
import type { GitRepository } from '../git/repository.ts';
import { emptyTree, type Tree } from '../git/tree.ts';
import { type Approvals, type Seen, succeed, withChange } from '../policy/approval.ts';
import { isOfThisClone } from '../policy/elsewhere.ts';
import type { Evaluation } from '../policy/evaluation.ts';
import { type FileKind, kindsOf, type PathNow } from '../policy/files.ts';
import { type ChangeEvaluation, evaluateChange, type JudgeOptions, verdictIn } from '../policy/judge.ts';
import { notJudged } from '../policy/judgement.ts';
import { type AskApprovals, evaluateAsking, evaluateReadable } from '../policy/pair.ts';
import type { PolicyRule, Waiver } from '../policy/policy.ts';
import { emptyReading, pathsOf, problemsIn, type Reading, readNext } from '../policy/reader.ts';
import type { Sides } from '../policy/revision.ts';
import { waiversThatRead } from '../policy/stand-in.ts';
import { type ChangeOutcome, dayOfCommit, judgedOf, type Opinion, type Replayed } from './record.ts';
import type { Undone } from './undone.ts';

export interface ReplayOptions {
  readonly failOn: 'error' | 'warning';
  /** Rules to try in place of each parent's own. */
  readonly tried?: readonly PolicyRule[] | undefined;
  /** Every choice of folders that the history made. */
  readonly paths: readonly Paths[];
  /** Told of each change that was judged. */
  readonly undone?: Undone | undefined;
  /** Asked where what a waiver covers hangs on commits before those that were judged here. */
  readonly ask?: AskHistory | undefined;
}

/** What waivers without a ceiling are known to have covered, by the rules in force and by those that are tried. */
export interface Known {
  readonly own: Approvals | undefined;
  readonly tried: Approvals | undefined;
}

/** @param base the commit up to which history is asked */
export type AskHistory = (base: string, waivers: readonly Waiver[]) => Promise<Outcome<Known>>;

type Options = Required<JudgeOptions>;

/** Where a replay has come to. */
export class Replay {
  readonly #repository: GitRepository;
  readonly #options: ReplayOptions;
  /** The last revision that was read, and the paths that commits have changed since. */
  #reading: Reading | undefined;
  readonly #pending = new Map<string, PathNow>();
  /** The last head that was evaluated, under the judging policy and under the one that is tried. */
  #evaluation: Evaluation | undefined;
  #triedEvaluation: Evaluation | undefined;
  /** What the waivers have covered up to the last commit; undefined where that is not known of any. */
  #known: Known = nothingKnown;
  /** The last commit that is known to have been judged and those after it, kept until one must be judged on top. */
  #waiting: HistoryEntry[] = [];

  constructor(repository: GitRepository, options: ReplayOptions) {
    this.#repository = repository;
    this.#options = options;
  }

  /** Passes over a commit that comes before what is asked for. */
  pass(entry: HistoryEntry): void {
    // What is known and waits comes before it.
    if (this.#waiting.length > 0) this.#waiting.push(entry);
    else this.#pass(entry);
  }

  #pass({ changed, cutShort }: HistoryEntry): void {
    this.#known = nothingKnown;
    if (cutShort) this.#forget();
    else this.#note(changed);
  }

  /** What the waivers of the last commit have covered up to it. */
  get known(): Known {
    return this.#known;
  }

  /** Passes over a commit whose record is known. */
  know(entry: HistoryEntry, outcome: ChangeOutcome['kind']): void {
    if (outcome === 'judged') {
      for (const earlier of this.#waiting) this.#pass(earlier);
      this.#waiting = [];
    }
    this.#waiting.push(entry);
  }

  /** Judges a commit; undefined where it touched nothing that a judgement goes by. */
  async judge(entry: HistoryEntry): Promise<Replayed | undefined> {
    const [last, ...after] = this.#waiting;
    this.#waiting = [];
    if (last !== undefined) await this.#judgeOrFail(last);
    for (const known of after) this.#pass(known);
    return this.#judgeOrFail(entry);
  }

  /** A fault of Ullage's own takes one commit away, not the whole audit; what was read up to then is not relied on. */
  async #judgeOrFail(entry: HistoryEntry): Promise<Replayed | undefined> {
    try {
      return await this.#judge(entry);
    } catch (error) {
      this.#forget();
      return faulted(entry, error, this.#options);
    }
  }

  async #judge({ commit, changed, cutShort }: HistoryEntry): Promise<Replayed | undefined> {
    const on = dayOfCommit(commit);
    const { failOn } = this.#options;
    const base = cutShort ? cutShortHere : await this.#baseTree(commit);
    if (!base.ok) {
      this.#forget();
      return { commit, on, touched: [], failOn, outcome: outcomeOf(base, { on, failOn }), tried: undefined };
    }
    const isFirst = commit.parents.length === 0;
    const before = isFirst ? emptyReading : await this.#read(base.value);
    this.#note(changed);
    const label = { revision: commit.id, name: commit.id.slice(0, 12) };
    if (isFirst) {
      this.#forget();
      this.#known = { own: new Map(), tried: new Map() };
    }
    const after = await this.#read(this.#repository.tree(commit.tree, label));
    const isSound = problemsIn(before).length === 0 && problemsIn(after).length === 0;
    // What does not read does not say where its files are, either.
    const paths = isSound ? [pathsOf(before), pathsOf(after)] : this.#options.paths;
    const touched = kindsTouched(changed, paths);
    if (touched.length === 0) return undefined;
    const pair = { base: before, head: after };
    const options = { on, failOn };
    const { revision } = base.value.label;
    const asking = this.#asking(revision);
    this.#beginKnowing(before);
    const history = {
      ancestors: () => firstParentAncestors(this.#repository, revision),
      ...(asking === undefined ? {} : { approvals: asking('own') }),
      known: this.#known.own,
    };
    const { change, sides } = await evaluateReadable(pair, options, history, this.#evaluation);
    const outcome = outcomeOf(change, options, this.#evaluation === undefined ? 'first' : 'next');
    if (change.ok) this.#evaluation = change.value.after;
    if (change.ok) this.#options.undone?.next(commit.id, change.value, options, change.value.approvals);
    const tried = await this.#try(sides, options, change, asking?.('tried'));
    const waivers = waiversThatRead(after);
    const next = (judged: Outcome<ChangeEvaluation> | undefined, known: Approvals | undefined) =>
      approvalsAfter(judged, known, waivers, { commit: commit.id, on });
    // What a waiver let through where this clone lacks something is not known, and must not count as nothing.
    const isUntold = !isSound && [before, after].some((each) => problemsIn(each).some(isOfThisClone));
    this.#known = isUntold
      ? nothingKnown
      : { own: next(change, this.#known.own), tried: next(tried?.change, this.#known.tried) };
    return { commit, on, touched, failOn, outcome, tried: tried?.opinion };
  }

  /** Of the waivers of the first revision nothing is known yet; of any that come after it all will be. */
  #beginKnowing(before: Reading): void {
    const waivers = this.#known.own === undefined ? waiversThatRead(before) : undefined;
    if (waivers === undefined) return;
    const none = succeed(undefined, waivers);
    this.#known = { own: none, tried: none };
  }

  #asking(base: string): ((whose: keyof Known) => AskApprovals) | undefined {
    const { ask } = this.#options;
    if (ask === undefined) return undefined;
    return (whose) => async (waivers) => {
      const found = await ask(base, waivers);
      return found.ok ? ok(found.value[whose] ?? new Map()) : found;
    };
  }

  /** What the rules that are tried would have said; all else is the parent's. */
  async #try(
    sides: Sides | undefined,
    options: Options,
    judged: Outcome<ChangeEvaluation>,
    ask: AskApprovals | undefined,
  ): Promise<Tried | undefined> {
    const { tried: rules } = this.#options;
    if (rules === undefined) return undefined;
    if (sides === undefined) {
      const lacked = judged.ok ? undefined : judged.problems.find(isOfThisClone);
      return untried(lacked?.message ?? 'one of the two revisions has contradictions');
    }
    if (sides.policy.settings === bareSettings)
      return untried(`there is no ${settingsFile} at the top of the repository`);
    const change = await evaluateAsking(
      (approvals) =>
        evaluateChange(
          { ...sides, policy: { ...sides.base.policy, rules }, policyFrom: 'base' },
          options,
          approvals,
          this.#triedEvaluation,
          judged.ok ? judged.value : undefined,
        ),
      options,
      this.#known.tried,
      ask,
    );
    if (change.ok) this.#triedEvaluation = change.value.after;
    return { change, opinion: verdictIn(change, options) };
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
  async #read(tree: Tree): Promise<Reading> {
    const last = this.#reading;
    // The same files under another commit: whatever is said of a revision names that one.
    if (last !== undefined && this.#pending.size === 0)
      return { ...last, tree, revision: { ...last.revision, label: { commit: tree.label.revision } } };
    this.#reading = await readNext(
      last ?? emptyReading,
      tree,
      last === undefined ? undefined : this.#pending,
    );
    this.#pending.clear();
    return this.#reading;
  }

  #note(changed: readonly ChangedPath[]): void {
    // Before anything is read there is nothing to put changes over.
    if (this.#reading === undefined) return;
    for (const { path, after } of changed) this.#pending.set(path, after);
  }

  #forget(): void {
    this.#reading = undefined;
    this.#pending.clear();
    this.#evaluation = undefined;
    this.#triedEvaluation = undefined;
    this.#known = nothingKnown;
  }
}

const nothingKnown: Known = { own: undefined, tried: undefined };

/** What the tried rules came to, and the verdict on it. */
interface Tried {
  readonly change?: Outcome<ChangeEvaluation>;
  readonly opinion: Opinion;
}

const untried = (reason: string): Tried => ({ opinion: { verdict: 'not judged', reasons: [reason] } });

/**
 * What is known of the waivers of a commit. One that could not be judged lets nothing be seen, and of waivers that do
 * not read nothing can be told to be gone.
 */
function approvalsAfter(
  judged: Outcome<ChangeEvaluation> | undefined,
  before: Approvals | undefined,
  waivers: readonly Waiver[] | undefined,
  { commit, on }: Omit<Seen, 'currency'>,
): Approvals | undefined {
  if (judged?.ok !== true) return waivers === undefined ? before : succeed(before, waivers);
  const { approvals, findings, comparison, after } = judged.value;
  const seen = { commit, on, currency: after.view.prices.currency };
  const covered = withChange(approvals, findings, comparison.renames, seen);
  return succeed(covered, waivers ?? [], { evaluation: after, seen });
}

/** The record of a commit that Ullage itself failed on; undefined where it touched nothing that is judged. */
export function faulted(
  { commit, changed }: HistoryEntry,
  error: unknown,
  { failOn, tried, paths }: ReplayOptions,
): Replayed | undefined {
  const on = dayOfCommit(commit);
  const touched = kindsTouched(changed, paths);
  if (touched.length === 0) return undefined;
  const outcome = outcomeOf(err(ownFault(error)), { on, failOn });
  const opinion: Opinion = { verdict: 'not judged', reasons: ['Ullage itself failed'] };
  return { commit, on, touched, failOn, outcome, tried: tried === undefined ? undefined : opinion };
}

function outcomeOf(
  change: Outcome<ChangeEvaluation>,
  options: Options,
  place: 'first' | 'next' = 'next',
): ChangeOutcome {
  if (change.ok) return { kind: 'judged', judged: judgedOf(change.value, options, place) };
  const { reasons, problems } = notJudged(change.problems, options.on);
  return { kind: 'not judged', reasons, problems };
}

const cutShortHere: Outcome<never> = err({
  message: 'this clone is shallow and begins with this commit, so what the commit changed is not known',
  advice: 'Fetch the rest with `git fetch --unshallow origin`; in CI, check out with fetch depth 0.',
});

/** What kinds of files a commit changed, by the paths of either side. Readings alone make no change. */
function kindsTouched(changed: readonly ChangedPath[], choices: readonly Paths[]): readonly FileKind[] {
  const kinds = new Set(changed.flatMap(({ path }) => choices.flatMap((paths) => kindsOf(path, paths))));
  kinds.delete('readings');
  return [...kinds].sort();
}
