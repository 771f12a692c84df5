/**
 * The judgement: two revisions held against a policy. Pure: the same revisions, policy and day give the same
 * judgement, whatever the machine. There is one way through for the gate, which judges one change, and for the audit,
 * which judges one after another and hands the evaluation on.
 */

import { err, type Outcome, ok, type Problem, problemKey } from '../base/problem.ts';
import { counted } from '../base/wording.ts';
import { headroomOf } from '../capacity/headroom.ts';
import { adoptedIn } from '../change/adoption.ts';
import { questionOf } from '../change/question.ts';
import { holdsOn } from '../estate/dates.ts';
import { subjectKey } from '../estate/estate.ts';
import { sumsBy } from '../price/cost.ts';
import { type CostDelta, costDelta } from '../price/delta.ts';
import { type Money, noMoney, sumMoney } from '../price/money.ts';
import { ruleOf } from '../rules/registry.ts';
import type { Violation } from '../rules/rule.ts';
import { spendsUnder, unlimitedSpends, unlimitedSumming } from '../rules/spend-limit.ts';
import type { ChangeView, PolicyChange, View } from '../rules/view.ts';
import type { Step } from '../runbook/step.ts';
import { type Approvals, heldTo, isMeant, succeed, withStanding } from './approval.ts';
import { slotChanges } from './changes/slots.ts';
import { dearerBy } from './dearer.ts';
import { type Difference, differenceOf } from './difference.ts';
import { comparePolicies } from './direction.ts';
import {
  type Counts,
  type Evaluation,
  evaluate,
  updateEvaluation,
  type ViolationEdit,
  violationKey,
} from './evaluation.ts';
import {
  carriedFindings,
  carriedOn,
  changeFindings,
  editFinding,
  findingTerms,
  waivedAmongCarried,
  worstFirst,
} from './findings.ts';
import {
  type Finding,
  type Judged,
  type Judgement,
  type LimitUse,
  notJudged,
  type Proposed,
  type RoomChange,
} from './judgement.ts';
import { leftScopeFindings } from './left-scope.ts';
import { otherWriting } from './other-writing.ts';
import type { Policy, Waiver } from './policy.ts';
import { type OwnPrices, priced, pricedByOwn } from './priced.ts';
import type { Sides } from './revision.ts';
import { roomChanges } from './rooms.ts';
import { scopeOf } from './scope.ts';
import { runbookIn, stepsOf } from './steps.ts';
import { waiverUse } from './waiver.ts';

export interface JudgeOptions {
  /** The day of the judgement, RFC 3339 full-date. */
  readonly on: string;
  /** The level from which a finding fails; `error` where left out. */
  readonly failOn?: 'error' | 'warning';
}

/** What a change comes to: everything that its own files, and what they touch, account for. */
export interface ChangeEvaluation extends Difference {
  readonly sides: Sides;
  /** The base under the judging policy, and what that says which the evaluation before did not, or no longer. */
  readonly before: Evaluation;
  readonly between: readonly ViolationEdit[];
  /** The head under the judging policy, for a change that follows. */
  readonly after: Evaluation;
  readonly edits: readonly ViolationEdit[];
  /** About what was touched, about sums, and about the changes themselves; worst first. */
  readonly findings: readonly Finding[];
  /** What is said of things that the change did not touch, before and after. */
  readonly carried: Carried;
  readonly policyChanges: readonly PolicyChange[];
  /** What the waivers of the base are known to have covered there. */
  readonly approvals: Approvals;
  readonly cost: CostDelta;
  readonly afterAtJudgingPrices: Money | undefined;
  /** The steps that carry it out, where a rule has asked for them. */
  readonly steps: readonly Step[] | undefined;
}

export interface Carried {
  readonly counts: Counts;
  /** Those of them that a waiver lets stand. */
  readonly waived: readonly Finding[];
}

/**
 * Evaluates a change. With an evaluation of its base, the work grows with what the change touched, not with the estate.
 *
 * @param approvals what is known of the base's waivers; undefined where nothing is
 * @param previous an evaluation that may be of the base
 */
export function evaluateChange(
  sides: Sides,
  { on, failOn = 'error' }: JudgeOptions,
  approvals: Approvals | undefined,
  previous?: Evaluation,
  difference = differenceOf(sides, on),
): Outcome<ChangeEvaluation> {
  const { base, head, policy, policyFrom } = sides;
  const { comparison, touched } = difference;
  if (comparison.contradictions.length > 0) return err(...comparison.contradictions);
  const evaluated = evaluate(base.estate, policy, on, previous);
  if (!evaluated.ok) {
    // What is wrong with the head is said in the same breath, so that nobody mends one only to meet the other.
    const after = priced(head.estate, policy, on);
    return err(...together(evaluated.problems, after.ok ? [] : after.problems));
  }
  const { evaluation: before, edits: between } = evaluated.value;
  const updated = updateEvaluation(before, head.estate, touched, (violation) =>
    violationKey(carriedOn(violation, comparison.renames)),
  );
  if (!updated.ok) return updated;
  const { evaluation: after, edits, carried: counts } = updated.value;
  const own = pricedByOwn(head, policy, after.view);
  if (!own.ok) return own;
  const policyChanges =
    policyFrom === 'head'
      ? []
      : [
          ...(base.policy === head.policy ? [] : comparePolicies(base.policy, head.policy, on, base.estate)),
          ...slotChanges(comparison.changes, policy.settings),
        ];
  const known = withStanding(approvals ?? succeed(undefined, base.policy.waivers), before, {
    commit: base.label.commit,
    on,
    currency: before.view.prices.currency,
  });
  const judging = policyFrom === 'base' ? known : succeed(known, policy.waivers);
  const terms = findingTerms(policy, on, { failOn, held: heldTo(judging, before.view.prices.currency) });
  const steps = policy.rules.some(({ entry }) => ruleOf(entry).usesSteps)
    ? runbookIn(sides, comparison)
    : undefined;
  const changeView: ChangeView = {
    base: before.view,
    head: after.view,
    ...comparison,
    allChanges: comparison.changes,
    on,
    policyChanges,
    ...(steps === undefined ? {} : { steps }),
  };
  const byBranch = dearerBy({ before: before.view, after: after.view, renames: comparison.renames, touched });
  const proposed: OwnPrices = own.value ?? { list: after.view.prices, cost: after.view.cost };
  return ok({
    ...difference,
    sides,
    before,
    between,
    after,
    edits,
    findings: [
      ...edits.map((edit) => editFinding(edit, comparison.renames, terms, byBranch)),
      ...policy.rules.flatMap((entry) => changeFindings(entry, changeView, terms)),
      ...leftScopeFindings({ before, after, comparison, touched, terms }),
    ].sort(worstFirst),
    carried: { counts, waived: waivedAmongCarried(before, touched, terms) },
    policyChanges,
    approvals: known,
    cost: costDelta(
      { estate: base.estate, list: before.view.prices, cost: before.view.cost },
      { estate: head.estate, list: proposed.list, cost: proposed.cost },
      {
        atBasePrices: own.value === undefined ? undefined : after.view.cost,
        inBaseMonth: proposed.inBaseMonth,
      },
      comparison.renames,
      touched,
      adoptedIn(comparison.changes),
    ),
    afterAtJudgingPrices: own.value === undefined ? undefined : after.view.cost.total,
    steps,
  });
}

/**
 * Whether a finding that is gone is mended: what is as bad as it was, and only out of the rule's sight, is not. The
 * audit's records keep it as gone all the same, since it stands no longer on main.
 */
function isMended({ findings, comparison }: ChangeEvaluation): (finding: Finding) => boolean {
  const named = (each: Finding, violation = plain(each)): string =>
    `${each.entry} ${violationKey(violation)}`;
  const left = findings.filter(
    ({ about, baselineState }) => about === 'change' && baselineState !== 'absent',
  );
  const still = new Set(left.map((each) => named(each)));
  return (each) =>
    each.baselineState !== 'absent' || !still.has(named(each, carriedOn(plain(each), comparison.renames)));
}

/** What a finding is about, as a violation has it. */
const plain = ({ subject, facet }: Finding): Pick<Violation, 'subject' | 'facet'> => ({
  subject,
  ...(facet === undefined ? {} : { facet }),
});

const together = (...lists: readonly (readonly Problem[])[]): readonly Problem[] => [
  ...new Map(lists.flat().map((problem) => [problemKey(problem), problem])).values(),
];

/**
 * Judges what the head would change, by the policy in `sides`; where that has no rule, nothing is refused. There is no
 * history here: the waivers are taken to have come with the base.
 *
 * @param sides what `sidesOf` gives
 * @returns the judgement; `not judged` where one of the two cannot be priced, or they contradict each other
 * @example
 * ```js
 * import { judge, readFiles, sidesOf } from 'ullage';
 * const read = await readFiles({ 'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\n' }, 'main');
 * if (read.ok) console.log(judge(sidesOf(read.value, read.value), { on: '2026-11-20' }).reasons[0]); // nothing changes
 * ```
 */
export function judge(sides: Sides, options: JudgeOptions): Judgement {
  const change = evaluateChange(sides, options, succeed(new Map(), sides.base.policy.waivers));
  return change.ok
    ? judgementOf(change.value, options)
    : notJudged(change.problems, options.on, { base: sides.base.label, head: sides.head.label });
}

/** The whole judgement of a change, with what stands on either side beside it. */
export function judgementOf(change: ChangeEvaluation, options: JudgeOptions): Judged {
  const { on, failOn = 'error' } = options;
  const { sides, before, after, comparison, touched, policyChanges } = change;
  const { base, head, policy, policyFrom, unreadMain } = sides;
  const carried = carriedFindings(
    before,
    touched,
    findingTerms(policy, on, { failOn, held: heldTo(change.approvals, before.view.prices.currency) }),
  );
  const findings = [...change.findings.filter(isMended(change)), ...carried].sort(worstFirst);
  const question = questionOf(base.estate, head.estate, comparison.changes);
  const uses = {
    used: new Set(findings.flatMap(({ waiver }) => waiver ?? [])),
    outgrown: new Set(findings.flatMap(({ outgrown }) => outgrown ?? [])),
  };
  const uncovered = findings.filter(({ fails, baselineState }) => fails && baselineState !== 'absent');
  return {
    ...verdictOf(change),
    base: base.label,
    head: head.label,
    ...(unreadMain === undefined ? {} : { unreadMain }),
    on,
    policyFrom,
    failOn,
    rules: policy.rules,
    cost: change.cost,
    afterAtJudgingPrices: change.afterAtJudgingPrices,
    limits: limitUses(policy, before.view, after.view),
    unlimited: { before: unlimitedIn(before.view), after: unlimitedIn(after.view) },
    findings,
    changes: comparison.changes,
    ...(question === undefined ? {} : { question }),
    ...stepsOf(sides, change, { before: before.view.cost, after: after.view.cost }),
    headroom: headroomChanges(change),
    policyChanges,
    proposed: propose(change, options),
    waivers: policy.waivers.map((waiver) => {
      const use = waiverUse(waiver, policy.rules, uses, on);
      const covers = use.state === 'used' || use.state === 'outgrown';
      return covers ? use : { ...use, written: otherWriting(waiver, uncovered, comparison.renames) };
    }),
  };
}

/** What the branch's own policy would say of the same change. Its looseness is not held against it here. */
export function propose(change: ChangeEvaluation, options: JudgeOptions): Proposed | undefined {
  const proposed = evaluateProposed(change, options);
  return proposed === undefined ? undefined : verdictIn(proposed, options);
}

/** The same change under the branch's own policy; undefined where it alters none. */
function evaluateProposed(
  { sides, before, comparison, touched, policyChanges, approvals }: ChangeEvaluation,
  options: JudgeOptions,
): Outcome<ChangeEvaluation> | undefined {
  if (policyChanges.length === 0) return undefined;
  const proposed: Sides = { ...sides, policy: sides.head.policy, policyFrom: 'head' };
  return evaluateChange(proposed, options, approvals, before, { comparison, touched });
}

/** The waivers without a ceiling of which history has to be asked before it can be told what they cover. */
export function inQuestion(change: ChangeEvaluation, options: JudgeOptions): readonly Waiver[] {
  const { approvals } = change;
  const unknown = [...approvals.values()].filter(
    ({ waiver, covered }) => covered === undefined && holdsOn(waiver, options.on),
  );
  if (unknown.length === 0) return [];
  const proposed = evaluateProposed(change, options);
  const asking = [...change.findings, ...(proposed?.ok === true ? proposed.value.findings : [])].filter(
    ({ held }) => held?.kind === 'unknown',
  );
  return asking.length === 0
    ? []
    : unknown
        .map(({ waiver }) => waiver)
        .filter((waiver) => asking.some((finding) => isMeant(waiver, finding)));
}

/** The verdict on a change that could perhaps not be evaluated. */
export const verdictIn = (change: Outcome<ChangeEvaluation>, { on }: JudgeOptions): Proposed =>
  change.ok
    ? verdictOf(change.value)
    : { verdict: 'not judged', reasons: notJudged(change.problems, on).reasons };

/** The verdict on a change, and why. */
export function verdictOf({
  findings,
  carried,
  comparison: { changes },
  policyChanges,
}: ChangeEvaluation): Pick<Judged, 'verdict' | 'reasons'> {
  const failing = findings.filter(({ fails }) => fails);
  if (failing.length > 0)
    return { verdict: 'fail', reasons: failing.map(({ entry, message }) => `${entry}: ${message}`) };
  const reasons: string[] = [];
  if (changes.length > 0) reasons.push(`no rule objects to ${counted(changes.length, 'change')}`);
  else reasons.push(policyChanges.length === 0 ? 'nothing changes' : 'no storage changes');
  const looser = policyChanges.filter(({ direction }) => direction === 'looser').length;
  if (looser > 0) reasons.push(`the policy is made looser in ${counted(looser, 'place')}`);
  const ofHead = findings.filter(({ baselineState }) => baselineState !== 'absent');
  const waived = carried.waived.length + ofHead.filter(({ waiver }) => waiver !== undefined).length;
  const onMain =
    carried.counts.error -
    carried.waived.filter(({ level }) => level === 'error').length +
    ofHead.filter(
      ({ level, baselineState, waiver }) =>
        level === 'error' && baselineState === 'unchanged' && waiver === undefined,
    ).length;
  if (waived > 0) reasons.push(`${counted(waived, 'finding')} waived`);
  if (onMain > 0) reasons.push(`${counted(onMain, 'error')} already on main, not made worse`);
  return { verdict: 'pass', reasons };
}

/** Every spend limit that holds on the day, with what falls under it on both sides. */
export function limitUses(policy: Policy, before: View, after: View): readonly LimitUse[] {
  return policy.rules.flatMap(({ name, entry }): readonly LimitUse[] => {
    const limit = ruleOf(entry).spendLimit?.(entry);
    if (limit === undefined || !holdsOn(limit, after.on)) return [];
    const scope = scopeOf(entry);
    const spends = spendsUnder(entry, limit, before.cost, scope);
    const old = new Map(spends.map(({ subject, monthly }) => [subjectKey(subject), monthly]));
    return spendsUnder(entry, limit, after.cost, scope).map(({ subject, monthly }) => ({
      entry: name,
      subject,
      limit: limit.amount,
      before: old.get(subjectKey(subject)) ?? noMoney,
      after: monthly,
    }));
  });
}

/** What no spend limit covers, a month. */
const unlimitedIn = ({ cost, spendLimits, on }: View): Money =>
  sumMoney(unlimitedSpends(sumsBy(cost, unlimitedSumming(spendLimits, on))).map(({ monthly }) => monthly));

function headroomChanges({
  sides: { base, head, policy },
  comparison,
}: ChangeEvaluation): readonly RoomChange[] {
  const { settings, measured } = policy;
  const before = headroomOf(base.estate, settings, undefined, measured);
  return roomChanges(
    before.rooms,
    headroomOf(head.estate, settings, before, measured).rooms,
    comparison.renames,
  );
}
