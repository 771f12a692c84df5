/**
 * The judgement: two revisions held against a policy. Pure: the same revisions, policy and day give the same
 * judgement, whatever the machine.
 */

import { byText } from '../base/order.ts';
import { err, type Outcome, ok, type Problem, problemKey } from '../base/problem.ts';
import { counted } from '../base/wording.ts';
import { headroomOf, type Room } from '../capacity/headroom.ts';
import { type Comparison, compareEstates } from '../change/compare.ts';
import { headSubject } from '../change/renames.ts';
import { type Touched, touchedBy } from '../change/touched.ts';
import { holdsOn } from '../estate/dates.ts';
import { type Estate, type Subject, subjectKey } from '../estate/estate.ts';
import { type EstateCost, priceEstate } from '../price/cost.ts';
import { type CostDelta, costDelta } from '../price/delta.ts';
import { type Money, noMoney } from '../price/money.ts';
import { listInForce, type PriceList } from '../price/price-list.ts';
import { ruleOf } from '../rules/registry.ts';
import { type Excess, type Level, levels, type Violation } from '../rules/rule.ts';
import { spendsUnder } from '../rules/spend-limit.ts';
import { renameRefs } from '../rules/subject-ref.ts';
import type { ChangeView, PolicyChange, View } from '../rules/view.ts';
import { runbookOf } from '../runbook/runbook.ts';
import { comparePolicies } from './direction.ts';
import {
  type Counts,
  type Evaluation,
  evaluate,
  levelOf,
  noPriceList,
  reevaluate,
  touchedKeys,
  updateEvaluation,
  type ViolationEdit,
  violationKey,
} from './evaluation.ts';
import {
  type BaselineState,
  type Finding,
  type Judged,
  type Judgement,
  type LimitUse,
  notJudged,
  type Proposed,
  type RevisionLabel,
  type RoomChange,
} from './judgement.ts';
import type { Policy, PolicyRule, Waiver } from './policy.ts';
import { changesInScope, scopeOf } from './scope.ts';
import { isFor, waiverUse } from './waiver.ts';

/** One side of a comparison: what it declares, and the policy it carries. */
export interface Side {
  readonly label: RevisionLabel;
  readonly estate: Estate;
  /** The policy in the same revision, of which only the judging side's counts. */
  readonly policy: Policy;
}

export interface JudgeOptions {
  /** The day of the judgement, RFC 3339 full-date. */
  readonly on: string;
  /** The level from which a finding fails; `error` where left out. */
  readonly failOn?: 'error' | 'warning';
  /** Whose policy `policy` is; `base` where left out. */
  readonly policyFrom?: 'base' | 'head';
}

/** Judges what the head would change, by a policy. */
export function judge(base: Side, head: Side, policy: Policy, options: JudgeOptions): Judgement {
  const labels = { base: base.label, head: head.label };
  const standing = evaluate(base.estate, policy, options.on);
  if (!standing.ok) {
    // What is wrong with the head is said in the same breath, so that nobody mends one only to meet the other.
    const after = evaluate(head.estate, policy, options.on);
    return notJudged(together(standing.problems, after.ok ? [] : after.problems), options.on, labels);
  }
  const weighed = evaluateChange(standing.value, base, head, options);
  if (!weighed.ok) return notJudged(weighed.problems, options.on, labels);
  const { comparison, touched, after } = weighed.value;
  const { on, failOn = 'error', policyFrom = 'base' } = options;
  const carried = carriedOver(standing.value, touched, policy.waivers, on, failOn);
  const findings = [...weighed.value.findings, ...carried].sort(worstFirst);
  const { policyChanges, cost, afterAtJudgingPrices } = weighed.value;
  const used = new Set(findings.flatMap(({ waiver }) => waiver ?? []));
  return {
    ...verdictOf(weighed.value),
    ...labels,
    on,
    policyFrom,
    failOn,
    rules: policy.rules,
    cost,
    afterAtJudgingPrices,
    limits: limitUses(policy, standing.value.view, after.view),
    findings,
    changes: comparison.changes,
    runbook: runbookOf(comparison, base.estate, head.estate),
    headroom: roomChanges(headroomOf(base.estate, policy.settings), headroomOf(head.estate, policy.settings)),
    policyChanges,
    proposed:
      policyChanges.length === 0 ? undefined : propose(standing.value, base, head, comparison, options),
    waivers: policy.waivers.map((waiver) => waiverUse(waiver, policy.rules, used, on)),
  } satisfies Judged;
}

/** What a change weighs: everything that its own files, and what they touch, account for. */
export interface ChangeEvaluation {
  readonly comparison: Comparison;
  readonly touched: Touched;
  readonly edits: readonly ViolationEdit[];
  /** About what was touched, about sums, and about the changes themselves; worst first. */
  readonly findings: readonly Finding[];
  readonly carried: Carried;
  readonly policyChanges: readonly PolicyChange[];
  readonly cost: CostDelta;
  readonly afterAtJudgingPrices: Money | undefined;
  /** The head under the judging policy, for a change that follows. */
  readonly after: Evaluation;
}

/** What stood on the base about things that the change did not touch, and stands still. */
export interface Carried {
  readonly counts: Counts;
  /** Those of them that a waiver lets stand. */
  readonly waived: readonly Finding[];
}

/** The verdict on a change, and why. */
export function verdictOf({
  findings,
  carried,
  comparison,
  policyChanges,
}: Pick<ChangeEvaluation, 'findings' | 'carried' | 'comparison' | 'policyChanges'>): Pick<
  Judged,
  'verdict' | 'reasons'
> {
  const verdict = findings.some(({ fails }) => fails) ? 'fail' : 'pass';
  return { verdict, reasons: reasonsFor(verdict, findings, carried, comparison, policyChanges) };
}

/**
 * Weighs a change against how its base stands. The work grows with what the change touched, not with the estate.
 *
 * @param before the base under the judging policy, on the day
 */
export function evaluateChange(
  before: Evaluation,
  base: Side,
  head: Side,
  options: JudgeOptions,
): Outcome<ChangeEvaluation> {
  const { on, failOn = 'error', policyFrom = 'base' } = options;
  const { policy } = before;
  const comparison = compareEstates(base.estate, head.estate);
  const touched = touchedBy(base.estate, head.estate, comparison.files);
  const keyBefore = (violation: Violation): string => violationKey(carriedOn(violation, comparison));
  const advanced = updateEvaluation(before, head.estate, touched, keyBefore);
  if (!advanced.ok) return advanced;
  const { standing: after, edits } = advanced.value;
  const own = priceAtOwn(head, policy, after.view, on);
  if (!own.ok) return own;
  const policyChanges =
    policyFrom === 'head' || base.policy === head.policy ? [] : comparePolicies(base.policy, head.policy, on);
  const stateFindings = edits.map(({ entry, was, now }) =>
    editFinding(entry, was, now, comparison, policy.waivers, on, failOn),
  );
  const changeView: ChangeView = { base: before.view, head: after.view, ...comparison, on, policyChanges };
  const changeFindings = policy.rules.flatMap((entry) =>
    findingsOfChange(entry, changeView, policy.waivers, failOn),
  );
  const { list, cost } = own.value ?? { list: after.view.prices, cost: after.view.cost };
  return ok({
    comparison,
    touched,
    edits,
    findings: [...stateFindings, ...changeFindings].sort(worstFirst),
    carried: {
      counts: advanced.value.carried,
      waived: waivedAmongCarried(
        before,
        touched,
        policy.waivers.filter((waiver) => holdsOn(waiver, on)),
        failOn,
      ),
    },
    policyChanges,
    cost: costDelta(
      { estate: base.estate, list: before.view.prices, cost: before.view.cost },
      { estate: head.estate, list, cost },
      own.value === undefined ? undefined : after.view.cost,
      comparison.renames,
      touched,
    ),
    afterAtJudgingPrices: own.value === undefined ? undefined : after.view.cost.total,
    after,
  });
}

function together(...lists: readonly (readonly Problem[])[]): readonly Problem[] {
  return [...new Map(lists.flat().map((problem) => [problemKey(problem), problem])).values()];
}

/** The head at the price list it proposes; `undefined` where that is the one that judges. */
function priceAtOwn(
  head: Side,
  policy: Policy,
  after: View,
  on: string,
): Outcome<{ readonly list: PriceList; readonly cost: EstateCost } | undefined> {
  const list = listInForce(head.policy.priceLists, on);
  if (list === undefined) {
    return head.policy === policy ? ok(undefined) : err(noPriceList(head.policy, on));
  }
  if (list === after.prices) return ok(undefined);
  const cost = priceEstate(head.estate, list, policy.settings, on);
  return cost.ok ? ok({ list, cost: cost.value }) : cost;
}

type FailOn = 'error' | 'warning';

/** What one entry says of the touched, or no longer says. */
function editFinding(
  entry: PolicyRule,
  was: Violation | undefined,
  now: Violation | undefined,
  comparison: Comparison,
  waivers: readonly Waiver[],
  on: string,
  failOn: FailOn,
): Finding {
  if (now !== undefined) {
    const waiver = waiverFor(waivers, entry, now.subject, on);
    return finding(
      entry,
      { ...now, place: { ...now.place, revision: 'head' } },
      baselineState(was === undefined ? undefined : carriedOn(was, comparison), now),
      waiver,
      failOn,
    );
  }
  if (was === undefined) throw new Error(`${entry.name} says nothing, before or now`);
  return finding(entry, { ...was, place: { ...was.place, revision: 'base' } }, 'absent', undefined, failOn);
}

/** What a rule about changes says is new, as the change is. */
function findingsOfChange(
  policyRule: PolicyRule,
  view: ChangeView,
  waivers: readonly Waiver[],
  failOn: FailOn,
): readonly Finding[] {
  const { entry, checks } = policyRule;
  if (checks.ofChanges === undefined) return [];
  const said = checks.ofChanges({ ...view, changes: changesInScope(entry, view) });
  return [...said].map((violation) => {
    const waiver = waiverFor(waivers, policyRule, violation.subject, view.on);
    return { ...finding(policyRule, violation, 'new', waiver, failOn), about: 'change' };
  });
}

/**
 * What stood and stands still that some waivers are for, whatever their dates. Found from the waivers, which are few,
 * and not from the findings, of which there may be many.
 */
export function waivedAmongCarried(
  { policy, entries }: Evaluation,
  touched: Touched,
  waivers: readonly Waiver[],
  failOn: FailOn,
): readonly Finding[] {
  if (waivers.length === 0) return [];
  const gone = new Set(touchedKeys(touched));
  return policy.rules.flatMap((entry) => {
    const bySubject = entries.get(entry.name)?.bySubject;
    if (bySubject === undefined || bySubject.size === 0) return [];
    const waived = new Map<string, Waiver>();
    for (const waiver of waivers) {
      for (const kind of things) {
        const subject: Subject = { kind, name: waiver.subject };
        const key = subjectKey(subject);
        if (isFor(waiver, entry, subject) && !gone.has(key) && !waived.has(key)) waived.set(key, waiver);
      }
    }
    return [...waived].flatMap(([key, waiver]) =>
      (bySubject.get(key) ?? []).map((violation) =>
        finding(
          entry,
          { ...violation, place: { ...violation.place, revision: 'head' } },
          'unchanged',
          waiver,
          failOn,
        ),
      ),
    );
  });
}

const things = ['server', 'volume', 'volume-group', 'file-system'] as const;

/** What stood on the base about things that the change did not touch, and stands still. */
function carriedOver(
  { policy, entries }: Evaluation,
  touched: Touched,
  waivers: readonly Waiver[],
  on: string,
  failOn: FailOn,
): readonly Finding[] {
  const gone = new Set(touchedKeys(touched));
  return policy.rules.flatMap((entry) =>
    [...(entries.get(entry.name)?.bySubject ?? [])]
      .filter(([key]) => !gone.has(key))
      .flatMap(([, violations]) =>
        violations.map((violation) =>
          finding(
            entry,
            { ...violation, place: { ...violation.place, revision: 'head' } },
            'unchanged',
            waiverFor(waivers, entry, violation.subject, on),
            failOn,
          ),
        ),
      ),
  );
}

/** A violation of the base under the names that its subject, and what that is tied to, have on the head. */
function carriedOn(violation: Violation, comparison: Comparison): Violation {
  const { subject, facet, excess } = violation;
  const follow = (text: string): string => renameRefs(text, (each) => headSubject(comparison.renames, each));
  return {
    ...violation,
    subject: headSubject(comparison.renames, subject),
    ...(facet === undefined ? {} : { facet: follow(facet) }),
    ...(excess instanceof Set ? { excess: new Set([...excess].map(follow)) } : {}),
  };
}

function baselineState(was: Violation | undefined, now: Violation): BaselineState {
  if (was === undefined) return 'new';
  if (levels.indexOf(now.atMost ?? 'error') < levels.indexOf(was.atMost ?? 'error')) return 'updated';
  return isWorse(was.excess, now.excess) ? 'updated' : 'unchanged';
}

/** Whether an excess is beyond another of the same rule. */
export function isWorse(was: Excess | undefined, now: Excess | undefined): boolean {
  if (was === undefined || now === undefined) return false;
  if (typeof now === 'bigint') return typeof was === 'bigint' && now > was;
  if (now instanceof Set) return was instanceof Set && [...now].some((each) => !was.has(each));
  if (typeof was === 'bigint' || was instanceof Set) return false;
  return 'gt' in now && 'gt' in was && now.gt(was);
}

const waiverFor = (
  waivers: readonly Waiver[],
  rule: PolicyRule,
  subject: Subject,
  on: string,
): Waiver | undefined => waivers.find((waiver) => holdsOn(waiver, on) && isFor(waiver, rule, subject));

function finding(
  policyRule: PolicyRule,
  violation: Violation,
  state: BaselineState,
  waiver: Waiver | undefined,
  failOn: 'error' | 'warning',
): Finding {
  const { name, entry } = policyRule;
  const capped = levelOf(policyRule, violation);
  return {
    rule: entry.rule,
    entry: name,
    level: capped,
    about: 'state',
    baselineState: state,
    subject: violation.subject,
    facet: violation.facet,
    message: violation.message,
    advice: violation.advice ?? ruleOf(entry).advice,
    place: violation.place,
    waiver,
    fails: (state === 'new' || state === 'updated') && waiver === undefined && worseOrEqual(capped, failOn),
  };
}

const worseOrEqual = (a: Level, b: Level): boolean => levels.indexOf(a) <= levels.indexOf(b);

const stateOrder: readonly BaselineState[] = ['new', 'updated', 'unchanged', 'absent'];

/** Those that fail first, then by level, state, rule and subject. */
export const worstFirst = (a: Finding, b: Finding): number =>
  Number(b.fails) - Number(a.fails) ||
  Number(a.baselineState === 'absent') - Number(b.baselineState === 'absent') ||
  levels.indexOf(a.level) - levels.indexOf(b.level) ||
  stateOrder.indexOf(a.baselineState) - stateOrder.indexOf(b.baselineState) ||
  byText(a.entry, b.entry) ||
  byText(subjectKey(a.subject), subjectKey(b.subject)) ||
  byText(a.facet ?? '', b.facet ?? '');

function reasonsFor(
  verdict: 'pass' | 'fail',
  findings: readonly Finding[],
  carried: Carried,
  { changes }: Comparison,
  policyChanges: readonly PolicyChange[],
): readonly string[] {
  if (verdict === 'fail') {
    return findings.filter(({ fails }) => fails).map(({ entry, message }) => `${entry}: ${message}`);
  }
  const reasons: string[] = [];
  if (changes.length === 0)
    reasons.push(policyChanges.length === 0 ? 'nothing changes' : 'no storage changes');
  else reasons.push(`no rule objects to ${counted(changes.length, 'change')}`);
  const waived =
    carried.waived.length +
    findings.filter(({ waiver, baselineState: state }) => waiver !== undefined && state !== 'absent').length;
  const standing =
    carried.counts.error -
    carried.waived.filter(({ level }) => level === 'error').length +
    findings.filter(
      ({ level, baselineState: state, waiver }) =>
        level === 'error' && state === 'unchanged' && waiver === undefined,
    ).length;
  if (waived > 0) reasons.push(`${counted(waived, 'finding')} let stand by waiver`);
  if (standing > 0) reasons.push(`${counted(standing, 'error')} already on main and not made worse`);
  return reasons;
}

/** Every spend limit that holds on the day, with what falls under it on both sides. */
function limitUses(policy: Policy, before: View, after: View): readonly LimitUse[] {
  return policy.rules.flatMap(({ name, entry }): readonly LimitUse[] => {
    const limit = ruleOf(entry).spendLimit?.(entry);
    if (limit === undefined || !holdsOn(limit, after.on)) return [];
    const scope = scopeOf(entry);
    const old = new Map(
      spendsUnder(entry, limit, before.cost, scope).map((spend) => [
        subjectKey(spend.subject),
        spend.monthly,
      ]),
    );
    return spendsUnder(entry, limit, after.cost, scope).map(({ subject, monthly }) => ({
      entry: name,
      subject,
      limit: limit.amount,
      before: old.get(subjectKey(subject)) ?? noMoney,
      after: monthly,
    }));
  });
}

function roomChanges(before: readonly Room[], after: readonly Room[]): readonly RoomChange[] {
  const same = (a: Room, b: Room | undefined): boolean =>
    a.layer === b?.layer && a.measure === b.measure && a.subject.name === b.subject.name;
  // Most changes neither add rooms nor take any away: then the two lists, in one order, pair off as they stand.
  if (before.length === after.length && after.every((room, index) => same(room, before[index]))) {
    return after.map((room, index) => ({ before: before[index], after: room }));
  }
  const key = ({ layer, subject, measure }: Room): string => `${layer} ${subjectKey(subject)} ${measure}`;
  const old = new Map(before.map((room) => [key(room), room]));
  const now = new Set(after.map(key));
  return [
    ...after.map((room) => ({ before: old.get(key(room)), after: room })),
    ...before.filter((room) => !now.has(key(room))).map((room) => ({ before: room, after: undefined })),
  ];
}

/** What the branch's own policy would say of the same change. Its looseness is not held against it here. */
export function propose(
  standing: Evaluation,
  base: Side,
  head: Side,
  comparison: Comparison,
  options: JudgeOptions,
): Proposed {
  const before = reevaluate(standing, base.estate, head.policy, options.on);
  const weighed = before.ok
    ? evaluateChange(before.value.standing, base, head, { ...options, policyFrom: 'head' })
    : before;
  if (!weighed.ok) return { verdict: 'not judged', reasons: notJudged(weighed.problems, options.on).reasons };
  return verdictOf({ ...weighed.value, comparison });
}
