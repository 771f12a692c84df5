/** The difference between two costs, taken apart into its causes. */

import { baseName, type Renames } from '../change/renames.ts';
import type { Touched } from '../change/touched.ts';
import type { Estate } from '../estate/estate.ts';
import { type CostLine, capacityPrice, type EstateCost, ownerOf, type Sums, sumsBy } from './cost.ts';
import { addMoney, type Money, noMoney, subtractMoney, sumMoney } from './money.ts';
import type { PriceList } from './price-list.ts';

/** Why a cost changed: more or less of something, another tier or server type, or another price for the same. */
export type CauseKind = 'quantity' | 'tier-move' | 'price-change';

export const causeKinds: readonly CauseKind[] = ['quantity', 'tier-move', 'price-change'];

export interface Cause {
  readonly cause: CauseKind;
  readonly difference: Money;
}

export interface TeamDelta {
  /** `''` for what belongs to no team. */
  readonly team: string;
  readonly before: Money;
  readonly after: Money;
}

export interface CostDelta {
  readonly currency: string;
  readonly before: Money;
  readonly after: Money;
  readonly difference: Money;
  /** Every kind of cause, in one order; they add up to the difference exactly. */
  readonly causes: readonly Cause[];
  readonly teams: readonly TeamDelta[];
  /** What volumes that no server holds cost after the change. */
  readonly detached: Money;
}

/** One revision as it is priced: its estate, at one price list. */
export interface Priced {
  readonly estate: Estate;
  readonly list: PriceList;
  readonly cost: EstateCost;
}

/**
 * Takes the difference apart, thing by thing. With q for quantity, t for tier and p for the price list:
 * quantity is price(t0, p0, q1) - price(t0, p0, q0); the tier move is price(t1, p0, q1) - price(t0, p0, q1); the
 * price change is price(t1, p1, q1) - price(t1, p0, q1). The three telescope, so they add up exactly. Whatever
 * the old list does not price counts as quantity in whole. A server's power counts as quantity (hours at another
 * rate), its server type as a tier move.
 *
 * @param touched what can differ between the two estates; the rest costs what it did
 */
export function costDelta(
  base: Priced,
  head: Priced,
  headAtBasePrices: EstateCost | undefined,
  renames: Renames,
  touched: Pick<Touched, 'volumes' | 'servers'>,
): CostDelta {
  const sums: Record<CauseKind, Money> = { quantity: noMoney, 'tier-move': noMoney, 'price-change': noMoney };
  const add = (cause: CauseKind, difference: Money): void => {
    sums[cause] = addMoney(sums[cause], difference);
  };
  const middle = headAtBasePrices ?? head.cost;
  const seenVolumes = new Set<string>();
  for (const name of touched.volumes) {
    const after = middle.volumes.get(name);
    if (after === undefined) continue;
    const former = baseName(renames.volumes, name);
    seenVolumes.add(former);
    const before = base.cost.volumes.get(former);
    if (before === undefined) add('quantity', after.monthly);
    else if (sameTier(before, after)) add('quantity', subtractMoney(after.monthly, before.monthly));
    else if (before.kind === 'volume' && after.kind === 'volume') {
      const tier = base.list.tiers.get(before.tier);
      const sameTierAfter = tier === undefined ? before.monthly : capacityPrice(tier, after.volume.size);
      add('quantity', subtractMoney(sameTierAfter, before.monthly));
      add('tier-move', subtractMoney(after.monthly, sameTierAfter));
    }
  }
  for (const name of touched.volumes) {
    const before = base.cost.volumes.get(name);
    if (before !== undefined && !seenVolumes.has(name))
      add('quantity', subtractMoney(noMoney, before.monthly));
  }
  const seenServers = new Set<string>();
  for (const name of touched.servers) {
    const after = middle.servers.get(name);
    if (after === undefined) continue;
    const former = baseName(renames.servers, name);
    seenServers.add(former);
    const before = base.cost.servers.get(former);
    if (before === undefined) add('quantity', after.monthly);
    else
      add(sameTier(before, after) ? 'quantity' : 'tier-move', subtractMoney(after.monthly, before.monthly));
  }
  for (const name of touched.servers) {
    const before = base.cost.servers.get(name);
    if (before !== undefined && !seenServers.has(name))
      add('quantity', subtractMoney(noMoney, before.monthly));
  }
  add('price-change', subtractMoney(head.cost.total, middle.total));
  return {
    currency: head.cost.currency,
    before: base.cost.total,
    after: head.cost.total,
    difference: subtractMoney(head.cost.total, base.cost.total),
    causes: causeKinds.map((cause) => ({ cause, difference: sums[cause] })),
    teams: teamDeltas(base.cost, head.cost),
    detached: detachedCost(head.cost, head.estate),
  };
}

function sameTier(before: CostLine, after: CostLine): boolean {
  if (before.kind === 'volume') return after.kind === 'volume' && before.tier === after.tier;
  return after.kind === 'server' && before.serverType === after.serverType;
}

const teamOf = (line: CostLine): string => ownerOf(line).team ?? '';

/** A cost by team; `''` for what belongs to none. Asked for once, it is carried on to the costs that follow. */
export const costByTeam = (cost: EstateCost): Sums => sumsBy(cost, 'team', teamOf);

function teamDeltas(before: EstateCost, after: EstateCost): readonly TeamDelta[] {
  const old = costByTeam(before);
  const now = costByTeam(after);
  return [...new Set([...old.keys(), ...now.keys()])].sort().map((team) => ({
    team,
    before: old.get(team)?.monthly ?? noMoney,
    after: now.get(team)?.monthly ?? noMoney,
  }));
}

/** What the volumes that no server holds cost a month. */
export const detachedCost = (cost: EstateCost, { detached }: Estate): Money =>
  sumMoney([...detached.keys()].flatMap((name) => cost.volumes.get(name)?.monthly ?? []));
