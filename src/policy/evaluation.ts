/**
 * How an estate fares under a policy on a day: what it costs, and what every rule about its state has to say. The
 * first evaluation looks at all of it. One that follows is told from the one before, and only what changed is priced
 * and checked again.
 */

import { err, type Outcome, ok } from '../base/problem.ts';
import { emptySelection, type Selection, selectionOf, type Touched, wholeEstate } from '../change/touched.ts';
import { type Estate, type Subject, subjectKey } from '../estate/estate.ts';
import { layered } from '../estate/layered.ts';
import { priceEstate, repriceEstate, withSums } from '../price/cost.ts';
import { byTeam } from '../price/delta.ts';
import { hoursAMonth } from '../price/line.ts';
import { listInForce } from '../price/price-list.ts';
import type { Summing } from '../price/sums.ts';
import { ruleOf } from '../rules/registry.ts';
import { type Level, levels, type Violation } from '../rules/rule.ts';
import { type SetLimit, setLimit, spendSumming, unlimitedSumming } from '../rules/spend-limit.ts';
import type { View } from '../rules/view.ts';
import { otherwiseMeasured } from './otherwise-measured.ts';
import {
  noPriceList,
  type Policy,
  type PolicyRule,
  stateRules,
  usesReadings,
  usesSurveys,
} from './policy.ts';
import { scopeOf } from './scope.ts';

/** What one rule entry says of an estate: by the subject it is about, and of sums over the estate. */
export interface EntryEvaluation {
  readonly bySubject: ReadonlyMap<string, readonly Violation[]>;
  readonly ofSums: readonly Violation[];
  /** How many there are by subject, at each level. */
  readonly counts: Counts;
}

export type Counts = Readonly<Record<Level, number>>;

export interface Evaluation {
  readonly policy: Policy;
  readonly view: View;
  /** By the name of the entry; only entries whose rule is about a state. */
  readonly entries: ReadonlyMap<string, EntryEvaluation>;
}

/** One thing that an entry said before or says now; not both absent. */
export interface ViolationEdit {
  readonly entry: PolicyRule;
  readonly was: Violation | undefined;
  readonly now: Violation | undefined;
}

/** An evaluation that follows another. */
export interface EvaluationUpdate {
  readonly evaluation: Evaluation;
  readonly edits: readonly ViolationEdit[];
  /** How much was said of what was not looked at again, and still is. */
  readonly carried: Counts;
}

const nothingCounted: Counts = { error: 0, warning: 0, note: 0 };

const nothingSaid: EntryEvaluation = { bySubject: new Map(), ofSums: [], counts: nothingCounted };

const addCounts = (a: Counts, b: Counts, sign: 1 | -1 = 1): Counts => ({
  error: a.error + sign * b.error,
  warning: a.warning + sign * b.warning,
  note: a.note + sign * b.note,
});

function countLevels(entry: PolicyRule, lists: Iterable<readonly Violation[]>): Counts {
  const counts = { ...nothingCounted };
  for (const list of lists) for (const violation of list) counts[levelOf(entry, violation)]++;
  return counts;
}

/** The entry's level, or less where the violation is but a warning on the way to one. */
export function levelOf({ level }: PolicyRule, { atMost = 'error' }: Violation): Level {
  return levels.indexOf(atMost) <= levels.indexOf(level) ? level : atMost;
}

/** What tells one violation of an entry from another. */
export const violationKey = ({ subject, facet }: Pick<Violation, 'subject' | 'facet'>): string =>
  `${subjectKey(subject)} ${facet ?? ''}`;

/**
 * Evaluates an estate under a policy on a day.
 *
 * @param before an evaluation of the same estate, or of another; of the same one under the same settings and prices
 *   only the rules that changed are asked again, and of the others only what a day, or readings, can change
 * @returns with what is said that was not said before, or no longer is; no such edits where there is no `before`
 */
export function evaluate(
  estate: Estate,
  policy: Policy,
  on: string,
  before?: Evaluation,
): Outcome<EvaluationUpdate> {
  if (before === undefined || !sameGrounds(before, estate, policy, on)) {
    const evaluation = evaluateWhole(estate, policy, on);
    if (!evaluation.ok) return evaluation;
    return ok({
      evaluation: evaluation.value,
      edits: before === undefined ? [] : cameOrWent(before, evaluation.value),
      carried: nothingCounted,
    });
  }
  const { usage: _, surveys: __, measured: ___, ...was } = before.view;
  const sameRules = policy.rules === before.policy.rules;
  const spendLimits = sameRules ? was.spendLimits : limitsIn(policy);
  const summings = summingsOf(policy, spendLimits, on);
  const cost = summings.every(({ name }) => was.cost.sums.has(name))
    ? was.cost
    : withSums(was.cost, summings);
  const view: View = { ...was, cost, on, revision: 'base', spendLimits, ...evidenceIn(policy) };
  const known = new Map(before.policy.rules.map((entry) => [entry.name, entry]));
  const edits: ViolationEdit[] = [];
  const entries = new Map<string, EntryEvaluation>();
  for (const entry of stateRules(policy)) {
    const former = known.get(entry.name);
    const said = before.entries.get(entry.name) ?? nothingSaid;
    if (former === undefined || !sameRule(former, entry)) {
      entries.set(entry.name, checked(entry, view));
      continue;
    }
    const selection = changing(entry, before.view, view);
    if (selection === undefined) {
      entries.set(entry.name, said);
      continue;
    }
    const keys = new Set(selectionKeys(selection));
    const again = recheck(entry, said, { ...view, selection }, keys, violationKey);
    for (const edit of again.edits) if (edit.was === undefined || edit.now === undefined) edits.push(edit);
    entries.set(entry.name, again.said);
  }
  const evaluation = { policy, view, entries };
  // Other rules may say more or less than those before them; there is no telling it entry by entry.
  return ok({
    evaluation,
    edits: sameRules ? edits : cameOrWent(before, evaluation),
    carried: nothingCounted,
  });
}

/** Prices and checks a whole estate. */
function evaluateWhole(estate: Estate, policy: Policy, on: string): Outcome<Evaluation> {
  const prices = listInForce(policy.priceLists, on);
  if (prices === undefined) return err(noPriceList(policy, on));
  const { settings } = policy;
  const cost = priceEstate(estate, prices, settings, on);
  if (!cost.ok) return cost;
  const spendLimits = limitsIn(policy);
  const view: View = {
    estate,
    selection: wholeEstate(estate),
    settings,
    prices,
    cost: withSums(cost.value, summingsOf(policy, spendLimits, on)),
    spendLimits,
    on,
    revision: 'base',
    ...evidenceIn(policy),
  };
  const entries = stateRules(policy).map((entry) => [entry.name, checked(entry, view)] as const);
  return ok({ policy, view, entries: new Map(entries) });
}

/** Every spend limit that a policy sets. */
const limitsIn = ({ rules }: Policy): readonly SetLimit[] =>
  rules.flatMap(({ entry }) => {
    const limit = ruleOf(entry).spendLimit?.(entry);
    return limit === undefined ? [] : [setLimit(entry, limit, scopeOf(entry))];
  });

/** The sums that the policy's limits are held against, what no limit covers, and by which a difference is told. */
const summingsOf = ({ rules }: Policy, limits: readonly SetLimit[], on: string): readonly Summing[] => [
  byTeam,
  unlimitedSumming(limits, on),
  ...rules.flatMap(({ entry }) => {
    const limit = ruleOf(entry).spendLimit?.(entry);
    return limit === undefined ? [] : [spendSumming(entry, limit, scopeOf(entry))];
  }),
];

/** What is measured and what is surveyed, as far as a rule asks. */
const evidenceIn = ({ usage, surveys, measured }: Policy): Pick<View, 'usage' | 'surveys' | 'measured'> => ({
  ...(usage === undefined ? {} : { usage }),
  ...(surveys === undefined ? {} : { surveys }),
  ...(measured === undefined ? {} : { measured }),
});

/**
 * The evaluation of the next revision, under the same policy and day.
 *
 * @param touched the subjects that the change can have touched
 * @param keyBefore names a violation of the earlier revision as the later one names its subject
 */
export function updateEvaluation(
  { policy, view: was, entries: before }: Evaluation,
  estate: Estate,
  touched: Touched,
  keyBefore: (violation: Violation) => string,
): Outcome<EvaluationUpdate> {
  const { prices: list, settings, on: day } = was;
  const cost = repriceEstate(was.cost, estate, touched, { list, settings, day });
  if (!cost.ok) return cost;
  const view: View = {
    ...was,
    estate,
    selection: selectionOf(estate, touched),
    cost: cost.value,
    revision: 'head',
  };
  const keys = new Set(touchedKeys(touched));
  const edits: ViolationEdit[] = [];
  const entries = new Map<string, EntryEvaluation>();
  let carried = nothingCounted;
  for (const entry of stateRules(policy)) {
    const again = recheck(entry, before.get(entry.name) ?? nothingSaid, view, keys, keyBefore);
    for (const edit of again.edits) edits.push(edit);
    carried = addCounts(carried, again.carried);
    entries.set(entry.name, again.said);
  }
  // The whole of the next estate is what a later revision will select a part of.
  const evaluation = { policy, view: { ...view, selection: wholeEstate(estate) }, entries };
  return ok({ evaluation, edits, carried });
}

/** Asks one entry about everything that the view selects. */
function checked(policyRule: PolicyRule, view: View): EntryEvaluation {
  const bySubject = new Map<string, Violation[]>();
  const ofSums: Violation[] = [];
  for (const violation of policyRule.checks.ofState?.(view) ?? []) {
    if (isSum(violation.subject)) {
      ofSums.push(violation);
      continue;
    }
    const key = subjectKey(violation.subject);
    const list = bySubject.get(key);
    if (list === undefined) bySubject.set(key, [violation]);
    else list.push(violation);
  }
  return { bySubject, ofSums, counts: countLevels(policyRule, bySubject.values()) };
}

/** Subjects that are sums: a change anywhere can move them, and they are few. */
const isSum = ({ kind }: Subject): boolean => {
  switch (kind) {
    case 'estate':
    case 'site':
    case 'team':
    case 'label':
    case 'scope':
    case 'branch':
      return true;
    case 'server':
    case 'volume':
    case 'volume-group':
    case 'file-system':
      return false;
  }
};

/**
 * Asks one entry again about some subjects, and about sums.
 *
 * @param keys of those subjects; the view selects them
 */
function recheck(
  entry: PolicyRule,
  before: EntryEvaluation,
  view: View,
  keys: ReadonlySet<string>,
  keyBefore: (violation: Violation) => string,
) {
  const now = checked(entry, view);
  const edits: ViolationEdit[] = [];
  const old = new Map<string, Violation>();
  const deleted = new Map<string, readonly Violation[]>();
  for (const key of before.bySubject.size === 0 ? [] : keys) {
    const list = before.bySubject.get(key);
    if (list === undefined) continue;
    deleted.set(key, list);
    for (const violation of list) old.set(keyBefore(violation), violation);
  }
  for (const violation of before.ofSums) old.set(keyBefore(violation), violation);
  // A rule may say more than it was asked; what it says of the untouched it has said before.
  const set = new Map([...now.bySubject].filter(([key]) => keys.has(key)));
  for (const violation of [...[...set.values()].flat(), ...now.ofSums]) {
    const key = violationKey(violation);
    edits.push({ entry, was: old.get(key), now: violation });
    old.delete(key);
  }
  for (const violation of old.values()) edits.push({ entry, was: violation, now: undefined });
  const carried = addCounts(before.counts, countLevels(entry, deleted.values()), -1);
  const said: EntryEvaluation = {
    bySubject: layered(before.bySubject, { set, deleted: new Set(deleted.keys()) }),
    ofSums: now.ofSums,
    counts: addCounts(carried, countLevels(entry, set.values())),
  };
  return { said, edits, carried };
}

/** Whether two entries ask the same. Where one stands in its file does not matter. */
const sameRule = (a: PolicyRule, b: PolicyRule): boolean =>
  a.level === b.level && (a.entry === b.entry || JSON.stringify(a.entry) === JSON.stringify(b.entry));

const sameGrounds = ({ policy, view }: Evaluation, estate: Estate, next: Policy, on: string): boolean =>
  view.estate === estate &&
  policy.settings === next.settings &&
  view.prices === listInForce(next.priceLists, on) &&
  hoursAMonth(next.settings, view.on) === hoursAMonth(next.settings, on);

/** What an entry may speak of differently on another day, or with other readings. */
function changing({ entry }: PolicyRule, was: View, now: View): Selection | undefined {
  if (was.usage !== now.usage && usesReadings(entry))
    return { ...emptySelection, fileSystems: [...now.estate.fileSystems.values()] };
  const rule = ruleOf(entry);
  if (was.spendLimits !== now.spendLimits && rule.comparesLimits) return emptySelection;
  const dated = was.on !== now.on && rule.about === 'state' ? rule.dated?.(entry, now.estate) : undefined;
  // What a day can change is all that the rule looks at, and takes in what is measured otherwise.
  return (
    dated ?? (usesSurveys(entry) ? otherwiseMeasured(now.estate, was.measured, now.measured) : undefined)
  );
}

/** Everything that an evaluation says, with the entry that says it. */
export const allSaid = ({ policy, entries }: Evaluation) =>
  stateRules(policy).flatMap((entry) => {
    const { bySubject, ofSums } = entries.get(entry.name) ?? nothingSaid;
    return [...[...bySubject.values()].flat(), ...ofSums].map((violation) => ({ entry, violation }));
  });

/** What one of two evaluations says and the other does not. */
function cameOrWent(before: Evaluation, after: Evaluation): readonly ViolationEdit[] {
  const byKey = (evaluation: Evaluation) =>
    new Map(
      allSaid(evaluation).map(
        (said) => [`${said.entry.name} ${violationKey(said.violation)}`, said] as const,
      ),
    );
  const old = byKey(before);
  const now = byKey(after);
  return [
    ...[...old].flatMap(([key, { entry, violation }]): readonly ViolationEdit[] =>
      now.has(key) ? [] : [{ entry, was: violation, now: undefined }],
    ),
    ...[...now].flatMap(([key, { entry, violation }]): readonly ViolationEdit[] =>
      old.has(key) ? [] : [{ entry, was: undefined, now: violation }],
    ),
  ];
}

function* selectionKeys({ servers, volumes, groups, fileSystems }: Selection): Iterable<string> {
  for (const things of [servers, volumes, groups, fileSystems])
    for (const { kind, name } of things) yield subjectKey({ kind, name });
}

export function* touchedKeys({ servers, volumes, groups, fileSystems }: Touched): Iterable<string> {
  for (const name of servers) yield subjectKey({ kind: 'server', name });
  for (const name of volumes) yield subjectKey({ kind: 'volume', name });
  for (const name of groups) yield subjectKey({ kind: 'volume-group', name });
  for (const name of fileSystems) yield subjectKey({ kind: 'file-system', name });
}
