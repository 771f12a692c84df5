/**
 * How an estate stands under a policy on a day: what it costs, and what every rule about its state has to say.
 * Where another revision follows, only what the change touched is priced and checked again.
 */
import { sightOf, type Touched, wholeEstate } from '../change/touched.ts';
import { type Estate, type Subject, subjectKey } from '../estate/estate.ts';
import { layered } from '../estate/layered.ts';
import { priceEstate, repriceEstate } from '../price/cost.ts';
import { listInForce } from '../price/price-list.ts';
import { found, type Outcome, type Problem, refused } from '../read/problem.ts';
import { rules } from '../rules/registry.ts';
import type { Rule, View, Violation } from '../rules/rule.ts';
import type { Policy, PolicyRule } from './policy.ts';
import { scopeOf } from './scope.ts';

/** What one rule entry says of an estate: by the subject it is about, and of sums over the estate. */
export interface EntryStanding {
  readonly bySubject: ReadonlyMap<string, readonly Violation[]>;
  readonly ofSums: readonly Violation[];
}

export interface Standing {
  readonly policy: Policy;
  readonly view: View;
  /** By the name of the entry; only entries whose rule is about a state. */
  readonly entries: ReadonlyMap<string, EntryStanding>;
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

function checked({ entry }: PolicyRule, view: View): EntryStanding {
  const rule: Rule = rules[entry.rule];
  const bySubject = new Map<string, Violation[]>();
  const ofSums: Violation[] = [];
  if (rule.about === 'state') {
    for (const violation of rule.check(entry, view, scopeOf(entry))) {
      if (isSum(violation.subject)) ofSums.push(violation);
      else {
        const key = subjectKey(violation.subject);
        const list = bySubject.get(key);
        if (list === undefined) bySubject.set(key, [violation]);
        else list.push(violation);
      }
    }
  }
  return { bySubject, ofSums };
}

const stateRules = ({ rules: entries }: Policy): readonly PolicyRule[] =>
  entries.filter(({ entry }) => rules[entry.rule].about === 'state');

/** Prices and checks a whole estate. */
export function standingOf(estate: Estate, policy: Policy, on: string): Outcome<Standing> {
  const prices = listInForce(policy.priceLists, on);
  if (prices === undefined) return refused(noPriceList(policy, on));
  const { settings } = policy;
  const cost = priceEstate(estate, prices, settings, on);
  if (!cost.ok) return cost;
  const view: View = {
    estate,
    look: wholeEstate(estate),
    settings,
    prices,
    cost: cost.value,
    on,
    revision: 'base',
    ...(policy.usage === undefined ? {} : { usage: policy.usage }),
  };
  return found({
    policy,
    view,
    entries: new Map(stateRules(policy).map((entry) => [entry.name, checked(entry, view)])),
  });
}

const nothingSaid: EntryStanding = { bySubject: new Map(), ofSums: [] };

export interface Advance {
  readonly standing: Standing;
  /** What was said of the touched and of sums, before and after. */
  readonly edits: readonly ViolationEdit[];
}

/**
 * Follows a standing to the next revision, under the same policy and day.
 *
 * @param keyBefore names a violation of the earlier revision as the later one names its subject
 */
export function advance(
  before: Standing,
  estate: Estate,
  touched: Touched,
  keyBefore: (violation: Violation) => string,
): Outcome<Advance> {
  const { policy, view: was } = before;
  const cost = repriceEstate(was.cost, estate, touched, was.prices, was.settings, was.on);
  if (!cost.ok) return cost;
  const view: View = { ...was, estate, look: sightOf(estate, touched), cost: cost.value, revision: 'head' };
  const gone = new Set(touchedKeys(touched));
  const edits: ViolationEdit[] = [];
  const entries = new Map<string, EntryStanding>();
  for (const entry of stateRules(policy)) {
    const standing = before.entries.get(entry.name) ?? nothingSaid;
    const now = checked(entry, view);
    const old = new Map<string, Violation>();
    const deleted = new Set<string>();
    for (const key of gone) {
      const list = standing.bySubject.get(key);
      if (list === undefined) continue;
      deleted.add(key);
      for (const violation of list) old.set(keyBefore(violation), violation);
    }
    for (const violation of standing.ofSums) old.set(keyBefore(violation), violation);
    // A rule may say more than it was asked; what it says of the untouched it has said before.
    const set = new Map([...now.bySubject].filter(([key]) => gone.has(key)));
    for (const violation of [...[...set.values()].flat(), ...now.ofSums]) {
      const key = violationKey(violation);
      edits.push({ entry, was: old.get(key), now: violation });
      old.delete(key);
    }
    for (const violation of old.values()) edits.push({ entry, was: violation, now: undefined });
    entries.set(entry.name, { bySubject: layered(standing.bySubject, { set, deleted }), ofSums: now.ofSums });
  }
  // The whole of the next estate is what a later revision will look at a part of.
  return found({ standing: { policy, view: { ...view, look: wholeEstate(estate) }, entries }, edits });
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
