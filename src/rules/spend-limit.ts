/** Limits on monthly cost: what an entry allows, and what falls under it. */
import type { Place } from '../base/problem.ts';
import type { RevisionPlace } from '../change/place.ts';
import { holdsOn, type Span } from '../estate/dates.ts';
import type { Subject } from '../estate/estate.ts';
import { type EstateCost, sumsBy } from '../price/cost.ts';
import { type CostLine, ownerOf } from '../price/line.ts';
import { type Money, noMoney } from '../price/money.ts';
import type { Sum, Summing, Sums } from '../price/sums.ts';
import type { RuleEntry } from '../read/generated/rule-pack.ts';
import type { Scope, Scoped } from './scope.ts';

/** The most that an entry lets its scope cost a month, on the days of its span. */
export interface SpendLimit extends Span {
  readonly amount: Money;
  /** Applies the limit to each team, or each site, in scope separately instead of to their total. */
  readonly each: 'team' | 'site' | undefined;
}

/** What one limit is held against. */
export interface Spend {
  readonly subject: Subject;
  readonly monthly: Money;
  readonly dearest: CostLine | undefined;
}

/** Stands for what names no team, or no site: one sum of its own, so that leaving the name out is no way out. */
const nobody = '(none)';

/** Who a spend is of, at the beginning of a sentence's subject. */
export function spender({ kind, name }: Subject): string {
  if (kind === 'estate') return 'the estate';
  return name === nobody ? `what has no ${kind}` : `${kind} ${name}`;
}

/** A limit that a policy sets, and whom it is for. */
export interface SetLimit {
  readonly limit: SpendLimit;
  readonly scope: Scope;
  /** Tells its scope from another's. */
  readonly where: string;
}

export const setLimit = (entry: RuleEntry, limit: SpendLimit, scope: Scope): SetLimit => ({
  limit,
  scope,
  where: JSON.stringify(entry.where ?? {}),
});

/** How what no limit covers on a day is summed, by team. */
export function unlimitedSumming(limits: readonly SetLimit[], on: string): Summing {
  const inForce = limits.filter(({ limit }) => holdsOn(limit, on));
  return {
    name: `unlimited ${inForce.map(({ where }) => where).join(' ')}`,
    keyOf: (line) => {
      const owner = ownerOf(line);
      return inForce.some(({ scope }) => scope.includes(owner)) ? undefined : (owner.team ?? nobody);
    },
  };
}

/** What no limit covers, team by team; what costs nothing needs no limit. */
export const unlimitedSpends = (sums: Sums): readonly (Spend & Pick<Sum, 'dearest'>)[] =>
  [...sums]
    .filter(([, { monthly }]) => monthly.gt(noMoney))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, sum]) => ({ subject: { kind: 'team', name }, ...sum }));

/** A sum has no line of its own; its dearest part is where somebody would begin to look. */
export function placeOfSum(
  dearest: CostLine | undefined,
  {
    revision,
    settings,
  }: { readonly revision: 'base' | 'head'; readonly settings: { readonly place: Place } },
): RevisionPlace {
  if (dearest === undefined) return { revision, ...settings.place };
  const declared = dearest.kind === 'volume' ? dearest.volume : dearest.server;
  return { revision, ...declared.place };
}

/**
 * Under which of an entry's sums the cost of a thing falls: the one for its whole scope (`''`), or that of its team or
 * site; under none where it is out of scope.
 */
export const spendKey = ({ each }: SpendLimit, scope: Scope, thing: Scoped): string | undefined => {
  if (!scope.includes(thing)) return undefined;
  return each === undefined ? '' : (thing[each] ?? nobody);
};

/** How what falls under an entry's limit is summed. */
export const spendSumming = (entry: RuleEntry, limit: SpendLimit, scope: Scope): Summing => ({
  name: `spend ${limit.each ?? ''} ${JSON.stringify(entry.where ?? {})}`,
  keyOf: (line) => spendKey(limit, scope, ownerOf(line)),
});

/** What falls under an entry's limit. */
export function spendsUnder(
  entry: RuleEntry,
  limit: SpendLimit,
  cost: EstateCost,
  scope: Scope,
): readonly Spend[] {
  const sums = sumsBy(cost, spendSumming(entry, limit, scope));
  const { each } = limit;
  if (each === undefined) {
    const sum = sums.get('');
    return [{ subject: subjectOf(entry), monthly: sum?.monthly ?? noMoney, dearest: sum?.dearest }];
  }
  return [...sums]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, { monthly, dearest }]) => ({ subject: { kind: each, name }, monthly, dearest }));
}

/** The one thing that the entry's scope names, or the estate, or the scope as a whole. */
function subjectOf({ where, name, rule }: RuleEntry): Subject {
  const { teams = [], sites = [], tiers = [], labels = {} } = where ?? {};
  const chosen = [
    ...teams.map((team): Subject => ({ kind: 'team', name: team })),
    ...sites.map((site): Subject => ({ kind: 'site', name: site })),
    ...Object.entries(labels).map(
      ([label, value]): Subject => ({
        kind: 'label',
        name: `${label}=${typeof value === 'string' ? value : value.join('|')}`,
      }),
    ),
  ];
  const [only] = chosen;
  if (only === undefined && tiers.length === 0) return { kind: 'estate', name: 'estate' };
  return chosen.length === 1 && only !== undefined && tiers.length === 0
    ? only
    : { kind: 'scope', name: name ?? rule };
}
