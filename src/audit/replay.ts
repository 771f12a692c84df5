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
import type { Evaluation } from '../policy/evaluation.ts';
import { type FileKind, kindsOf, type PathNow } from '../policy/files.ts';
import { type ChangeEvaluation, evaluateChange, type JudgeOptions, verdictIn } from '../policy/judge.ts';
import { notJudged } from '../policy/judgement.ts';
import { evaluateReadable } from '../policy/pair.ts';
import type { PolicyRule } from '../policy/policy.ts';
import { emptyReading, pathsOf, problemsIn, type Reading, readNext } from '../policy/reader.ts';
import type { Sides } from '../policy/revision.ts';
import { type ChangeOutcome, dayOfCommit, judgedOf, type Opinion, type Replayed } from './record.ts';

export interface ReplayOptions {
  readonly failOn: 'error' | 'warning';
  /** Rules to try in place of each parent's own. */
  readonly tried?: readonly PolicyRule[] | undefined;
  /** Every choice of folders that the history made. */
  readonly paths: readonly Paths[];
}

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
  know(entry: HistoryEntry, outcome: ChangeOutcome['kind']): void {
    if (outcome === 'judged') {
      for (const earlier of this.#known) this.#pass(earlier);
      this.#known = [];
    }
    this.#known.push(entry);
  }

  /** Judges a commit; undefined where it touched nothing that a judgement goes by. */
  async judge(entry: HistoryEntry): Promise<Replayed | undefined> {
    const [last, ...after] = this.#known;
    this.#known = [];
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
    if (isFirst) this.#forget();
    const after = await this.#read(this.#repository.tree(commit.tree, label));
    const isSound = problemsIn(before).length === 0 && problemsIn(after).length === 0;
    // What does not read does not say where its files are, either.
    const paths = isSound ? [pathsOf(before), pathsOf(after)] : this.#options.paths;
    const touched = kindsTouched(changed, paths);
    if (touched.length === 0) return undefined;
    const pair = { base: before, head: after };
    const options = { on, failOn };
    const ancestors = () => firstParentAncestors(this.#repository, base.value.label.revision);
    const { change, sides } = await evaluateReadable(pair, options, ancestors, this.#evaluation);
    const outcome = outcomeOf(change, options, this.#evaluation === undefined ? 'first' : 'next');
    if (change.ok) this.#evaluation = change.value.after;
    const tried =
      sides !== undefined
        ? this.#try(sides, options, change)
        : this.#untried('one of the two revisions has contradictions');
    return { commit, on, touched, failOn, outcome, tried };
  }

  /** What the rules that are tried would have said; all else is the parent's. */
  #try(sides: Sides, options: Options, judged: Outcome<ChangeEvaluation>): Opinion | undefined {
    const { tried: rules } = this.#options;
    if (rules === undefined) return undefined;
    if (sides.policy.settings === bareSettings)
      return this.#untried(`there is no ${settingsFile} at the top of the repository`);
    const tried = evaluateChange(
      { ...sides, policy: { ...sides.base.policy, rules }, policyFrom: 'base' },
      options,
      this.#triedEvaluation,
      judged.ok ? judged.value : undefined,
    );
    if (tried.ok) this.#triedEvaluation = tried.value.after;
    return verdictIn(tried, options);
  }

  #untried(reason: string): Opinion | undefined {
    return this.#options.tried === undefined ? undefined : { verdict: 'not judged', reasons: [reason] };
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
    if (last !== undefined && this.#pending.size === 0) return last;
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
  }
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
