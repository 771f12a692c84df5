/** What one volume, or one server, costs a month. Exact throughout. */

import { hoursOfMonth } from '../estate/dates.ts';
import type { Server, Volume } from '../estate/estate.ts';
import type { Settings } from '../estate/settings.ts';
import { type Bytes, bytes } from '../estate/size.ts';
import { addMoney, type Money, money, noMoney, timesMoney } from './money.ts';
import type { PriceList, Tier } from './price-list.ts';

/** What one thing costs a month. */
export type CostLine =
  | {
      readonly kind: 'volume';
      readonly volume: Volume;
      readonly tier: string;
      /** What is billed: the size, or the tier's least where that is more. */
      readonly billed: Bytes;
      readonly detached: boolean;
      readonly monthly: Money;
    }
  | {
      readonly kind: 'server';
      readonly server: Server;
      readonly serverType: string;
      /** The hours of the month that it is billed for. */
      readonly hours: number;
      readonly monthly: Money;
    };

export const ownerOf = (line: CostLine): Server | Volume =>
  line.kind === 'volume' ? line.volume : line.server;

export const nameOf = (line: CostLine): string =>
  line.kind === 'volume' ? line.volume.name : line.server.name;

/** 8,760 hours a year over 12: common practice among those who rent by the hour. */
const commonHours = 730;

/**
 * The monthly price of so much capacity in a tier: each band's rate for what falls into it, and the flat fee.
 * A volume of nothing costs nothing, not even the fee.
 */
export function capacityPrice(tier: Tier, size: Bytes): Money {
  if (size <= 0n) return noMoney;
  const billed = billedSize(tier, size);
  let below = bytes(0n);
  let price = tier.flat;
  for (const [index, { upTo, rate }] of tier.bands.entries()) {
    // Beyond the end of a closed last band its rate goes on: no capacity is free because a list ends.
    const last = index === tier.bands.length - 1;
    const end = last || upTo === undefined || billed < upTo ? billed : upTo;
    if (end > below) {
      price = addMoney(price, rateFor(rate, bytes(end - below), tier.unit));
      below = end;
    }
  }
  return price;
}

/** rate x size / unit, multiplied before it is divided, so that every division ends. */
const rateFor = (rate: Money, size: Bytes, unit: Bytes): Money =>
  money(timesMoney(rate, size).div(unit.toString()));

const billedSize = (tier: Tier, size: Bytes): Bytes =>
  tier.minimumBilled !== undefined && size < tier.minimumBilled ? tier.minimumBilled : size;

/** How many hours a month has for prices by the hour. */
export const hoursAMonth = (settings: Settings, day: string): number =>
  settings.month === 'calendar' ? hoursOfMonth(day) : commonHours;

/**
 * Prices one volume. `undefined` where the list has no such tier.
 *
 * @param prices what a tier and a size came to before, by this list: an estate has few sizes and many volumes
 */
export function priceVolume(
  volume: Volume,
  list: PriceList,
  held: 'attached' | 'detached',
  prices = new Map<string, Money>(),
): CostLine | undefined {
  const tier = list.tiers.get(volume.tier);
  if (tier === undefined) return undefined;
  const key = `${tier.name} ${volume.size}`;
  const monthly = prices.get(key) ?? capacityPrice(tier, volume.size);
  prices.set(key, monthly);
  return {
    kind: 'volume',
    volume,
    tier: tier.name,
    billed: billedSize(tier, volume.size),
    detached: held === 'detached',
    monthly,
  };
}

/** Prices one server: nothing where it names no type. `undefined` where the list has no such server type. */
export function priceServer(
  server: Server,
  list: PriceList,
  settings: Settings,
  day: string,
): CostLine | 'not billed' | undefined {
  if (server.type === undefined) return 'not billed';
  const serverType = list.serverTypes.get(server.type);
  if (serverType === undefined) return undefined;
  const hours = hoursAMonth(settings, day);
  return {
    kind: 'server',
    server,
    serverType: serverType.name,
    hours,
    monthly: timesMoney(serverType[server.power], hours),
  };
}
