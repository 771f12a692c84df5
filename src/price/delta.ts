/** The difference between two costs, taken apart into its causes. */

import type { Adopted } from '../change/adoption.ts';
import { baseName, type Renames, type RenamesOfKind } from '../change/renames.ts';
import type { Touched } from '../change/touched.ts';
import type { Estate } from '../estate/estate.ts';
import { type EstateCost, sumsBy } from './cost.ts';
import { type CostLine, capacityPrice, ownerOf } from './line.ts';
import { type Money, noMoney, subtractMoney, sumMoney, timesMoney } from './money.ts';
import type { PriceList } from './price-list.ts';
import type { Summing } from './sums.ts';

/**
 * Why a cost changed: more or less of something, something that is there already and is only declared now, another tier
 * or server type, another price for the same, another length of the month for prices by the hour, or another currency.
 */
export type CauseKind =
  | 'quantity'
  | 'adoption'
  | 'tier-move'
  | 'price-change'
  | 'month-change'
  | 'currency-change';

const causeKinds = ['quantity', 'adoption', 'tier-move', 'price-change', 'month-change'] as const;

export interface Cause {
  readonly cause: CauseKind;
  /** `undefined` where before and after are in two currencies. */
  readonly difference: Money | undefined;
}

export interface TeamDelta {
  /** `''` for what belongs to no team. */
  readonly team: string;
  readonly before: Money;
  readonly after: Money;
}

export interface CostDelta {
  /** Of `before`, by team as well. */
  readonly currencyBefore: string;
  readonly currency: string;
  readonly before: Money;
  readonly after: Money;
  /** `undefined` where the two are in two currencies: nothing tells what one is worth in the other. */
  readonly difference: Money | undefined;
  /** Every kind of cause, in one order; they add up to the difference exactly. */
  readonly causes: readonly Cause[];
  /** What of `after` is being paid already, for what the branch only declares. */
  readonly adopted: Money;
  readonly teams: readonly TeamDelta[];
  /** What volumes that no server holds cost after the change. */
  readonly detached: Money;
}

/** What a cost changed by, where that can be told. */
export const changeOfCost = (
  { currencyBefore, currency }: Pick<CostDelta, 'currencyBefore' | 'currency'>,
  { before, after }: { readonly before: Money; readonly after: Money },
): Money | undefined => (currencyBefore === currency ? subtractMoney(after, before) : undefined);

/** The head as it is priced on the way from the base's prices to its own. */
export interface HeadCosts {
  /** At the base's prices; left out where it changes none. */
  readonly atBasePrices?: EstateCost | undefined;
  /** At its own prices, with the base's length of a month; left out where it changes none. */
  readonly inBaseMonth?: EstateCost | undefined;
}

/** One revision as it is priced: its estate, at one price list. */
export interface Priced {
  readonly estate: Estate;
  readonly list: PriceList;
  readonly cost: EstateCost;
}

/**
 * Takes the difference apart, thing by thing. With q for quantity, t for tier and p for the price list:
 * quantity is price(t0, p0, q1) - price(t0, p0, q0), and adoption the same for what is only declared now; the tier move is price(t1, p0, q1) - price(t0, p0, q1); the
 * price change is price(t1, p1, q1) - price(t1, p0, q1). The month change is the same at another length of
 * the month. They telescope, so they add up exactly. Whatever
 * the old list does not price counts as quantity in whole. Servers follow the same rule: their power is their
 * quantity (hours at another rate), their server type is their tier.
 *
 * @param touched what can differ between the two estates; the rest costs what it did
 * @param adopted what is there already and is only declared now, or declared as it is
 */
export function costDelta(
  base: Priced,
  head: Priced,
  { atBasePrices, inBaseMonth }: HeadCosts,
  renames: Renames,
  touched: Pick<Touched, 'volumes' | 'servers'>,
  adopted: Pick<Adopted, 'volumes' | 'servers' | 'corrected'>,
): CostDelta {
  const inMonth = inBaseMonth ?? head.cost;
  const middle = atBasePrices ?? inMonth;
  const moves = [
    ...movesOf(touched.volumes, base.cost.volumes, middle.volumes, renames.volumes),
    ...movesOf(touched.servers, base.cost.servers, middle.servers, renames.servers),
  ].map((move) => ({ ...move, unmoved: unmoved(move, base.list) }));
  const isAdopted = ({ after }: Move): boolean =>
    after !== undefined &&
    (after.kind === 'volume'
      ? adopted.volumes.has(after.volume.name) || adopted.corrected.has(after.volume.name)
      : adopted.servers.has(after.server.name));
  const grown = (these: typeof moves): Money =>
    sumMoney(these.map(({ before, unmoved }) => subtractMoney(unmoved, monthlyOf(before))));
  const sums: { readonly [K in (typeof causeKinds)[number]]: Money } = {
    quantity: grown(moves.filter((move) => !isAdopted(move))),
    adoption: grown(moves.filter(isAdopted)),
    'tier-move': sumMoney(moves.map(({ after, unmoved }) => subtractMoney(monthlyOf(after), unmoved))),
    'price-change': subtractMoney(inMonth.total, middle.total),
    'month-change': subtractMoney(head.cost.total, inMonth.total),
  };
  const currencies = { currencyBefore: base.cost.currency, currency: head.cost.currency };
  const ends = { before: base.cost.total, after: head.cost.total };
  return {
    ...currencies,
    ...ends,
    difference: changeOfCost(currencies, ends),
    causes:
      currencies.currencyBefore === currencies.currency
        ? causeKinds.map((cause) => ({ cause, difference: sums[cause] }))
        : [{ cause: 'currency-change', difference: undefined }],
    adopted: sumMoney([
      ...[...adopted.volumes].flatMap((name) => head.cost.volumes.get(name)?.monthly ?? []),
      ...[...adopted.servers].flatMap((name) => head.cost.servers.get(name)?.monthly ?? []),
    ]),
    teams: teamDeltas(base.cost, head.cost),
    detached: detachedCost(head.cost, head.estate),
  };
}

/** One thing before and after, both at the old prices; `undefined` where it was not there, or not billed. */
export interface Move {
  readonly before: CostLine | undefined;
  readonly after: CostLine | undefined;
}

export function movesOf(
  touched: Iterable<string>,
  before: EstateCost['volumes'],
  after: EstateCost['volumes'],
  renames: RenamesOfKind,
): readonly Move[] {
  const carriedOn = new Set<string>();
  const moves: Move[] = [];
  for (const name of touched) {
    const line = after.get(name);
    if (line === undefined) continue;
    const was = baseName(renames, name);
    carriedOn.add(was);
    moves.push({ before: before.get(was), after: line });
  }
  for (const name of touched) {
    const line = before.get(name);
    if (line !== undefined && !carriedOn.has(name)) moves.push({ before: line, after: undefined });
  }
  return moves;
}

/** What a thing costs after the change if it keeps its tier or server type. */
function unmoved({ before, after }: Move, list: PriceList): Money {
  if (before?.kind === 'volume' && after?.kind === 'volume' && before.tier !== after.tier) {
    const tier = list.tiers.get(before.tier);
    return tier === undefined ? before.monthly : capacityPrice(tier, after.volume.size);
  }
  if (before?.kind === 'server' && after?.kind === 'server' && before.serverType !== after.serverType) {
    const type = list.serverTypes.get(before.serverType);
    return type === undefined ? before.monthly : timesMoney(type[after.server.power], after.hours);
  }
  return monthlyOf(after);
}

const monthlyOf = (line: CostLine | undefined): Money => line?.monthly ?? noMoney;

/** A cost by team; `''` for what belongs to none. */
export const byTeam: Summing = { name: 'team', keyOf: (line) => ownerOf(line).team ?? '' };

function teamDeltas(before: EstateCost, after: EstateCost): readonly TeamDelta[] {
  const old = sumsBy(before, byTeam);
  const now = sumsBy(after, byTeam);
  return [...new Set([...old.keys(), ...now.keys()])].sort().map((team) => ({
    team,
    before: old.get(team)?.monthly ?? noMoney,
    after: now.get(team)?.monthly ?? noMoney,
  }));
}

/** What the volumes that no server holds cost a month. */
export const detachedCost = (cost: EstateCost, { detached }: Estate): Money =>
  sumMoney([...detached.keys()].flatMap((name) => cost.volumes.get(name)?.monthly ?? []));
