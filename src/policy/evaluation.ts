/**
 * How an estate stands under a policy on a day: what it costs, and what every rule about its state has to say.
 * Where another revision follows, only what the change touched is priced and checked again.
 */

import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { emptySelection, type Selection, selectionOf, type Touched, wholeEstate } from '../change/touched.ts';
import { type Estate, type Subject, subjectKey } from '../estate/estate.ts';
import { layered } from '../estate/layered.ts';
import { hoursAMonth, priceEstate, repriceEstate } from '../price/cost.ts';
import { costByTeam } from '../price/delta.ts';
import { listInForce } from '../price/price-list.ts';
import { ruleOf } from '../rules/registry.ts';
import { type Level, levels, type RuleEntry, type Violation } from '../rules/rule.ts';
import type { View } from '../rules/view.ts';
import type { Policy, PolicyRule } from './policy.ts';

/** What one rule entry says of an estate: by the subject it is about, and of sums over the estate. */
export interface EntryEvaluation {
  readonly bySubject: ReadonlyMap<string, readonly Violation[]>;
  readonly ofSums: readonly Violation[];
  /** How many there are by subject, at each level. */
  readonly counts: Counts;
}

export type Counts = Readonly<Record<Level, number>>;

const nothingCounted: Counts = { error: 0, warning: 0, note: 0 };

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

function checked(policyRule: PolicyRule, view: View): EntryEvaluation {
  const bySubject = new Map<string, Violation[]>();
  const ofSums: Violation[] = [];
  for (const violation of policyRule.checks.ofState?.(view) ?? []) {
    if (isSum(violation.subject)) ofSums.push(violation);
    else {
      const key = subjectKey(violation.subject);
      const list = bySubject.get(key);
      if (list === undefined) bySubject.set(key, [violation]);
      else list.push(violation);
    }
  }
  return { bySubject, ofSums, counts: countLevels(policyRule, bySubject.values()) };
}

const stateRules = ({ rules: entries }: Policy): readonly PolicyRule[] =>
  entries.filter(({ checks }) => checks.ofState !== undefined);

/** Prices and checks a whole estate. */
export function evaluate(estate: Estate, policy: Policy, on: string): Outcome<Evaluation> {
  const prices = listInForce(policy.priceLists, on);
  if (prices === undefined) return err(noPriceList(policy, on));
  const { settings } = policy;
  const cost = priceEstate(estate, prices, settings, on);
  if (!cost.ok) return cost;
  // Asked for here, so that the costs that follow carry the sums on instead of summing anew.
  costByTeam(cost.value);
  const view: View = {
    estate,
    selection: wholeEstate(estate),
    settings,
    prices,
    cost: cost.value,
    on,
    revision: 'base',
    ...(policy.usage === undefined ? {} : { usage: policy.usage }),
  };
  return ok({
    policy,
    view,
    entries: new Map(stateRules(policy).map((entry) => [entry.name, checked(entry, view)])),
  });
}

const nothingSaid: EntryEvaluation = { bySubject: new Map(), ofSums: [], counts: nothingCounted };

export interface Advance {
  readonly standing: Evaluation;
  /** What was said of the touched and of sums, before and after. */
  readonly edits: readonly ViolationEdit[];
  /** How much was said of what was not touched, and still is. */
  readonly carried: Counts;
}

/**
 * Follows a standing to the next revision, under the same policy and day.
 *
 * @param keyBefore names a violation of the earlier revision as the later one names its subject
 */
export function updateEvaluation(
  before: Evaluation,
  estate: Estate,
  touched: Touched,
  keyBefore: (violation: Violation) => string,
): Outcome<Advance> {
  const { policy, view: was } = before;
  const cost = repriceEstate(was.cost, estate, touched, was.prices, was.settings, was.on);
  if (!cost.ok) return cost;
  const view: View = {
    ...was,
    estate,
    selection: selectionOf(estate, touched),
    cost: cost.value,
    revision: 'head',
  };
  const gone = new Set(touchedKeys(touched));
  const edits: ViolationEdit[] = [];
  const entries = new Map<string, EntryEvaluation>();
  let carried = nothingCounted;
  for (const entry of stateRules(policy)) {
    const again = recheck(entry, before.entries.get(entry.name) ?? nothingSaid, view, gone, keyBefore);
    for (const edit of again.edits) edits.push(edit);
    carried = addCounts(carried, again.carried);
    entries.set(entry.name, again.standing);
  }
  // The whole of the next estate is what a later revision will select a part of.
  return ok({
    standing: { policy, view: { ...view, selection: wholeEstate(estate) }, entries },
    edits,
    carried,
  });
}

interface Recheck {
  readonly standing: EntryEvaluation;
  readonly edits: readonly ViolationEdit[];
  readonly carried: Counts;
}

/**
 * Asks one entry again about some subjects, and about sums.
 *
 * @param gone the keys of those subjects; the view looks at them
 */
function recheck(
  entry: PolicyRule,
  before: EntryEvaluation,
  view: View,
  gone: ReadonlySet<string>,
  keyBefore: (violation: Violation) => string,
): Recheck {
  const now = checked(entry, view);
  const edits: ViolationEdit[] = [];
  const old = new Map<string, Violation>();
  const deleted = new Map<string, readonly Violation[]>();
  for (const key of gone) {
    const list = before.bySubject.get(key);
    if (list === undefined) continue;
    deleted.set(key, list);
    for (const violation of list) old.set(keyBefore(violation), violation);
  }
  for (const violation of before.ofSums) old.set(keyBefore(violation), violation);
  // A rule may say more than it was asked; what it says of the untouched it has said before.
  const set = new Map([...now.bySubject].filter(([key]) => gone.has(key)));
  for (const violation of [...[...set.values()].flat(), ...now.ofSums]) {
    const key = violationKey(violation);
    edits.push({ entry, was: old.get(key), now: violation });
    old.delete(key);
  }
  for (const violation of old.values()) edits.push({ entry, was: violation, now: undefined });
  const carried = addCounts(before.counts, countLevels(entry, deleted.values()), -1);
  return {
    standing: {
      bySubject: layered(before.bySubject, { set, deleted: new Set(deleted.keys()) }),
      ofSums: now.ofSums,
      counts: addCounts(carried, countLevels(entry, set.values())),
    },
    edits,
    carried,
  };
}

export interface Reevaluation {
  readonly standing: Evaluation;
  /** What is said that was not, or is no longer said; nothing where there was no earlier standing. */
  readonly edits: readonly ViolationEdit[];
}

/**
 * How an estate stands under a policy on a day, where it is known how one stood before: the same as `standingOf`.
 * Of the same estate under the same settings and prices, only the rules that changed are asked again, and of the
 * others only what a day, or readings, can change.
 */
export function reevaluate(
  before: Evaluation | undefined,
  estate: Estate,
  policy: Policy,
  on: string,
): Outcome<Reevaluation> {
  if (before === undefined || !sameGrounds(before, estate, policy, on)) {
    const standing = evaluate(estate, policy, on);
    if (!standing.ok) return standing;
    const edits = before === undefined ? [] : cameOrWent(before, standing.value);
    return ok({ standing: standing.value, edits });
  }
  const { usage: measured, ...rest } = before.view;
  const view: View = {
    ...rest,
    on,
    revision: 'base',
    ...(policy.usage === undefined ? {} : { usage: policy.usage }),
  };
  const edits: ViolationEdit[] = [];
  const entries = new Map<string, EntryEvaluation>();
  const known = new Map(before.policy.rules.map((entry) => [entry.name, entry]));
  for (const entry of stateRules(policy)) {
    const former = known.get(entry.name);
    const standing = before.entries.get(entry.name) ?? nothingSaid;
    if (former === undefined || !sameRule(former, entry)) {
      entries.set(entry.name, checked(entry, view));
      continue;
    }
    entries.set(entry.name, standing);
    const selection = changing(entry, estate, on !== before.view.on, measured !== policy.usage);
    if (selection === undefined) continue;
    const again = recheck(
      entry,
      standing,
      { ...view, selection },
      new Set(selectionKeys(selection)),
      violationKey,
    );
    for (const edit of again.edits) if (edit.was === undefined || edit.now === undefined) edits.push(edit);
    entries.set(entry.name, again.standing);
  }
  const standing = { policy, view, entries };
  // Other rules may say more or less than those before them; there is no telling it entry by entry.
  return ok({
    standing,
    edits: policy.rules === before.policy.rules ? edits : cameOrWent(before, standing),
  });
}

/** Whether two entries ask the same. Where one stands in its file does not matter. */
const sameRule = (a: PolicyRule, b: PolicyRule): boolean =>
  a.level === b.level && (a.entry === b.entry || JSON.stringify(a.entry) === JSON.stringify(b.entry));

function sameGrounds({ policy, view }: Evaluation, estate: Estate, next: Policy, on: string): boolean {
  return (
    view.estate === estate &&
    policy.settings === next.settings &&
    view.prices === listInForce(next.priceLists, on) &&
    hoursAMonth(next.settings, view.on) === hoursAMonth(next.settings, on)
  );
}

/** What an entry may speak of differently on another day, or with other readings. */
function changing(
  { entry }: PolicyRule,
  estate: Estate,
  otherDay: boolean,
  otherUse: boolean,
): Selection | undefined {
  if (otherUse && usesReadings(entry))
    return { ...emptySelection, fileSystems: [...estate.fileSystems.values()] };
  const rule = ruleOf(entry);
  return otherDay && rule.about === 'state' ? rule.dated?.(entry, estate) : undefined;
}

/** Whether an entry goes by measured use. */
export const usesReadings = (entry: RuleEntry): boolean => ruleOf(entry).usesReadings?.(entry) === true;

/** What one of two standings says and the other does not. */
function cameOrWent(before: Evaluation, after: Evaluation): readonly ViolationEdit[] {
  const said = ({ policy, entries }: Evaluation) =>
    new Map(
      stateRules(policy).flatMap((entry) => {
        const { bySubject = new Map(), ofSums = [] } = entries.get(entry.name) ?? {};
        return [...[...bySubject.values()].flat(), ...ofSums].map(
          (violation) => [`${entry.name} ${violationKey(violation)}`, { entry, violation }] as const,
        );
      }),
    );
  const old = said(before);
  const now = said(after);
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

/** What tells one violation of an entry from another. */
export const violationKey = ({ subject, facet }: Violation): string =>
  `${subjectKey(subject)} ${facet ?? ''}`;

export function* touchedKeys({ servers, volumes, groups, fileSystems }: Touched): Iterable<string> {
  for (const name of servers) yield subjectKey({ kind: 'server', name });
  for (const name of volumes) yield subjectKey({ kind: 'volume', name });
  for (const name of groups) yield subjectKey({ kind: 'volume-group', name });
  for (const name of fileSystems) yield subjectKey({ kind: 'file-system', name });
}

export function noPriceList({ priceLists, settings }: Policy, on: string): Problem {
  const next = priceLists.at(-1);
  return next === undefined
    ? {
        message: `there is no price list in ${settings.paths.prices}/`,
        advice: 'Write one; `ullage new` shows how one looks.',
      }
    : {
        place: next.place,
        message: `no price list is in force on ${on}; the earliest holds from ${next.from}`,
        advice: 'Add the list that was in force on that day, or judge as of a later one with --now.',
      };
}
