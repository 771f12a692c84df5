/** What other prices come to for the same estate. */
import type { Estate } from '../estate/estate.ts';
import { isDetached } from '../estate/estate.ts';
import type { Settings } from '../estate/settings.ts';
import { type CostLine, priceServer, priceVolume } from './line.ts';
import { addMoney, type Money, noMoney, subtractMoney } from './money.ts';
import type { PriceList } from './price-list.ts';

export interface MonthlyDifference {
  readonly currency: string;
  readonly difference: Money;
}

/**
 * How much more an estate costs a month by another list, tier by tier and server type by server type, under names such
 * as `tier bulk`. What one of the lists does not price is left out, and so is what costs the same. Nothing can be told
 * between two currencies.
 */
export function priceDifferences(
  estate: Estate,
  was: PriceList,
  now: PriceList,
  { settings, day }: { readonly settings: Settings; readonly day: string },
): ReadonlyMap<string, MonthlyDifference> {
  const sums = new Map<string, Money>();
  const add = (name: string, before: CostLine | undefined, after: CostLine | undefined): void => {
    if (before === undefined || after === undefined) return;
    const difference = subtractMoney(after.monthly, before.monthly);
    if (!difference.isZero()) sums.set(name, addMoney(sums.get(name) ?? noMoney, difference));
  };
  if (was.currency !== now.currency) return new Map();
  for (const volume of estate.volumes.values()) {
    if (was.tiers.get(volume.tier) === now.tiers.get(volume.tier)) continue;
    const held = isDetached(estate, volume) ? 'detached' : 'attached';
    add(`tier ${volume.tier}`, priceVolume(volume, was, held), priceVolume(volume, now, held));
  }
  for (const server of estate.servers.values()) {
    const [before, after] = [was, now].map((list) => {
      const line = priceServer(server, list, settings, day);
      return line === 'not billed' ? undefined : line;
    });
    add(`server type ${server.type}`, before, after);
  }
  return new Map([...sums].map(([name, difference]) => [name, { currency: now.currency, difference }]));
}
