/** Two revisions read one after the other, and judged; or everything that stands in the way of either, together. */

import { err, type Outcome, type Problem, problemKey } from '../base/problem.ts';
import type { Tree } from '../git/tree.ts';
import { type Approvals, foundOut, succeed } from './approval.ts';
import { isOfThisClone } from './elsewhere.ts';
import type { Evaluation } from './evaluation.ts';
import { withExcerpts } from './excerpts.ts';
import {
  type ChangeEvaluation,
  evaluateChange,
  inQuestion,
  type JudgeOptions,
  judgementOf,
} from './judge.ts';
import { type Judgement, notJudged } from './judgement.ts';
import { filesNotRead } from './not-read.ts';
import type { Waiver } from './policy.ts';
import { priced } from './priced.ts';
import { emptyReading, problemsIn, type Reading, readNext } from './reader.ts';
import { nothingToJudgeBy, policyOf, type Sides, sidesOf } from './revision.ts';
import { lackedBy, readsOn, sidesInstead } from './stand-in.ts';

export interface ReadingPair {
  readonly base: Reading;
  readonly head: Reading;
}

/** Reads two trees; the second costs what it differs from the first. */
export async function readPair(base: Tree, head: Tree): Promise<ReadingPair> {
  const before = await readNext(emptyReading, base);
  return { base: before, head: await readNext(before, head) };
}

/**
 * Evaluates what the head of a pair would change.
 *
 * @param approvals what is known of the base's waivers; undefined where nothing is
 * @param previous an evaluation that may be of the base
 */
function evaluatePair(
  { base, head }: ReadingPair,
  options: JudgeOptions,
  approvals: Approvals | undefined,
  previous?: Evaluation,
): Outcome<ChangeEvaluation> {
  const isSound = [base, head].every((reading) => problemsIn(reading).length === 0);
  if (!isSound) return err(...problemsOfBoth(base, head, options.on));
  const lacking = nothingToJudgeBy(base.revision, head.revision);
  if (lacking !== undefined) return err(lacking);
  const change = evaluateChange(sidesOf(base.revision, head.revision), options, approvals, previous);
  if (change.ok || change.problems.every(({ place }) => place === undefined)) return change;
  // An evaluation tells no revision apart; what each of the two lacks by itself can be told.
  const known = problemsOfBoth(base, head, options.on);
  const keys = new Set(known.map(problemKey));
  return err(...known, ...change.problems.filter((problem) => !keys.has(problemKey(problem))));
}

/** The first-parent ancestors of main, nearest first; walked only where main does not read. */
export type Ancestors = () => AsyncIterable<Outcome<Tree>>;

/** What some waivers without a ceiling have covered on main, up to the base. */
export type AskApprovals = (waivers: readonly Waiver[]) => Promise<Outcome<Approvals>>;

/** What can be asked of main's history; each only where a judgement hangs on it. */
export interface History {
  readonly ancestors: Ancestors;
  readonly approvals?: AskApprovals;
  /** What is known of the base's waivers already. */
  readonly known?: Approvals | undefined;
}

/**
 * Evaluates, and once more with what history says of the waivers, where the verdict hangs on that. What history does
 * not tell is never a pass.
 */
export async function evaluateAsking(
  evaluate: (approvals: Approvals | undefined) => Outcome<ChangeEvaluation>,
  options: JudgeOptions,
  known: Approvals | undefined,
  ask: AskApprovals | undefined,
): Promise<Outcome<ChangeEvaluation>> {
  const change = evaluate(known);
  if (!change.ok || ask === undefined) return change;
  const asked = inQuestion(change.value, options);
  if (asked.length === 0) return change;
  const found = await ask(asked);
  if (found.ok) return evaluate(foundOut(change.value.approvals, found.value));
  const hangs = change.value.findings.some(({ held }) => held?.kind === 'unknown');
  return hangs ? found : change;
}

/** What a pair of revisions came to, and which sides were held against each other where it could be told. */
export interface PairEvaluation {
  readonly change: Outcome<ChangeEvaluation>;
  /** Undefined where one of the two does not read, or the two lack something. */
  readonly sides: Sides | undefined;
}

/**
 * Evaluates what the head of a pair would change. Where the base does not read and the head does, the head is held
 * against the nearest ancestor of the base that reads.
 */
export async function evaluateReadable(
  pair: ReadingPair,
  options: JudgeOptions,
  history: History | undefined,
  previous?: Evaluation,
): Promise<PairEvaluation> {
  const { base, head } = pair;
  const { on } = options;
  // Where there is no history, the waivers are taken to have come with the base.
  const known = history === undefined ? succeed(new Map(), base.revision.waivers) : history.known;
  const asking = (evaluate: (approvals: Approvals | undefined) => Outcome<ChangeEvaluation>) =>
    evaluateAsking(evaluate, options, known, history?.approvals);
  // Main is not known here in full, though nothing is wrong with it: nothing else may stand in for it.
  if (problemsIn(base).some(isOfThisClone))
    return { change: err(...problemsOfBoth(base, head, on)), sides: undefined };
  const lacked = history === undefined ? undefined : lackedBy(base, head);
  if (history !== undefined && lacked !== undefined) {
    const instead = await sidesInstead(base, head, history.ancestors(), on, lacked);
    if (!instead.ok) return { change: instead, sides: undefined };
    if (instead.value !== undefined) return evaluateInstead(instead.value);
  }
  const change = await asking((approvals) => evaluatePair(pair, options, approvals, previous));
  if (change.ok) return { change, sides: change.value.sides };
  if (history === undefined || readsOn(base, on) || !readsOn(head, on)) {
    const isSound = [base, head].every((reading) => problemsIn(reading).length === 0);
    return { change, sides: isSound ? sidesOf(base.revision, head.revision) : undefined };
  }
  const instead = await sidesInstead(base, head, history.ancestors(), on);
  // What is wrong with main is said along with what stands in the way of going back further.
  if (!instead.ok) return { change: err(...instead.problems, ...change.problems), sides: undefined };
  return instead.value === undefined ? { change, sides: undefined } : evaluateInstead(instead.value);

  async function evaluateInstead(sides: Sides): Promise<PairEvaluation> {
    const evaluated = await asking((approvals) => evaluateChange(sides, options, approvals, previous));
    return { change: evaluated.ok ? evaluated : err(...evaluated.problems.map(inHead)), sides };
  }
}

const inHead = (problem: Problem): Problem => ({ ...problem, revision: 'head' });

/**
 * Judges a pair as the gate does.
 *
 * @param history of the base; left out where there is none, and a base that does not read is not judged
 */
export async function judgePair(
  pair: ReadingPair,
  options: JudgeOptions,
  history?: History,
): Promise<Judgement> {
  const { base, head } = pair;
  const found = await filesNotRead(base, head);
  const notRead = found.length === 0 ? {} : { notRead: found };
  const { change } = await evaluateReadable(pair, options, history);
  if (change.ok) return { ...judgementOf(change.value, options), ...notRead };
  const shownIn = ({ revision }: Problem): Tree => (revision === 'base' ? base : head).tree;
  const labels = { base: base.revision.label, head: head.revision.label };
  return { ...notJudged(await withExcerpts(change.problems, shownIn), options.on, labels), ...notRead };
}

/** The head's problems, then the base's own; what both have is the base's, and is said to be there already. */
function problemsOfBoth(base: Reading, head: Reading, on: string): readonly Problem[] {
  const onBase = [...problemsIn(base), ...unpricedIn(base, head, on)].map(
    (problem): Problem => ({
      ...problem,
      revision: 'base',
      advice: isOfThisClone(problem)
        ? problem.advice
        : `${problem.advice} Main has this already: correct it there first, in a branch of its own, or in this one.`,
    }),
  );
  const known = new Set(onBase.map(problemKey));
  const onHead = [...problemsIn(head), ...unpricedIn(head, base, on)]
    .filter((problem) => !known.has(problemKey(problem)))
    .map((problem): Problem => ({ ...problem, revision: 'head' }));
  return [...onHead, ...onBase];
}

/** What no price list prices, of a revision that has other problems too: they are to be mended in one go. */
function unpricedIn({ revision }: Reading, { revision: other }: Reading, on: string): readonly Problem[] {
  const policy = policyOf(revision, other);
  // Lists that are there and do not read are a problem already.
  if (policy.priceLists.length === 0 && (revision.hasPriceLists || other.hasPriceLists)) return [];
  const cost = priced(revision.estate, policy, on);
  return cost.ok ? [] : cost.problems;
}
