/** What an estate costs a month: each volume and each server, and sums of them. Exact throughout. */
import { hoursOfMonth } from '../estate/dates.ts';
import type { Belonging, Estate, Server, Volume } from '../estate/estate.ts';
import { isDetached } from '../estate/estate.ts';
import type { Settings } from '../estate/settings.ts';
import { type Bytes, bytes } from '../estate/size.ts';
import { offer } from '../read/nearest.ts';
import { found, type Outcome, type Problem, refused } from '../read/problem.ts';
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
  | { readonly kind: 'server'; readonly server: Server; readonly machine: string; readonly monthly: Money };

export interface EstateCost {
  readonly currency: string;
  readonly total: Money;
  readonly volumes: ReadonlyMap<string, CostLine>;
  readonly servers: ReadonlyMap<string, CostLine>;
}

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

export const billedSize = (tier: Tier, size: Bytes): Bytes =>
  tier.minimumBilled !== undefined && size < tier.minimumBilled ? tier.minimumBilled : size;

const hoursAMonth = (settings: Settings, day: string): number =>
  settings.month === 'calendar' ? hoursOfMonth(day) : commonHours;

/**
 * Prices one volume. `undefined` where the list has no such tier.
 *
 * @param prices what a tier and a size came to before, by this list: an estate has few sizes and many volumes
 */
export function priceVolume(
  volume: Volume,
  list: PriceList,
  detached: boolean,
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
    detached,
    monthly,
  };
}

/** Prices one server: nothing where it names no machine. `undefined` where the list has no such machine. */
export function priceServer(
  server: Server,
  list: PriceList,
  settings: Settings,
  day: string,
): CostLine | 'not billed' | undefined {
  if (server.machine === undefined) return 'not billed';
  const machine = list.machines.get(server.machine);
  if (machine === undefined) return undefined;
  const hourly = server.power === 'running' ? machine.running : machine.stopped;
  return {
    kind: 'server',
    server,
    machine: machine.name,
    monthly: timesMoney(hourly, hoursAMonth(settings, day)),
  };
}

/**
 * Prices a whole estate by one price list.
 *
 * @param list the list in force on `day`
 * @param day decides the length of a calendar month
 * @returns the cost, or a problem for every tier and machine that the list does not price
 */
export function priceEstate(
  estate: Estate,
  list: PriceList,
  settings: Settings,
  day: string,
): Outcome<EstateCost> {
  const problems: Problem[] = [];
  const volumes = new Map<string, CostLine>();
  const servers = new Map<string, CostLine>();
  const prices = new Map<string, Money>();
  let total = noMoney;
  for (const volume of estate.volumes.values()) {
    const line = priceVolume(volume, list, isDetached(estate, volume), prices);
    if (line === undefined) {
      problems.push(
        unpriced(
          'tier',
          volume.tier,
          `the volume ${volume.name}`,
          list,
          list.tiers,
          volume.fields.tier ?? volume.place,
        ),
      );
    } else {
      volumes.set(volume.name, line);
      total = addMoney(total, line.monthly);
    }
  }
  for (const server of estate.servers.values()) {
    const line = priceServer(server, list, settings, day);
    if (line === 'not billed') continue;
    if (line === undefined) {
      const place = server.fields.machine ?? server.place;
      problems.push(
        unpriced('machine', server.machine ?? '', `the server ${server.name}`, list, list.machines, place),
      );
    } else {
      servers.set(server.name, line);
      total = addMoney(total, line.monthly);
    }
  }
  return problems.length > 0
    ? refused(...problems)
    : found({ currency: list.currency, total, volumes, servers });
}

function unpriced(
  kind: 'tier' | 'machine',
  name: string,
  from: string,
  list: PriceList,
  known: ReadonlyMap<string, unknown>,
  place: Problem['place'],
): Problem {
  return {
    place,
    message: `${from} names the ${kind} ${name}, which the price list in force (${list.place.file}) does not price`,
    advice: `${offer(name, [...known.keys()])}Put the name right, or merge a price list that has the ${kind} first.`,
  };
}

export const ownerOf = (line: CostLine): Belonging => (line.kind === 'volume' ? line.volume : line.server);

export const nameOf = (line: CostLine): string =>
  line.kind === 'volume' ? line.volume.name : line.server.name;

export function* costLines(cost: EstateCost): Iterable<CostLine> {
  yield* cost.volumes.values();
  yield* cost.servers.values();
}

export type Grouping = 'team' | 'site' | 'tier' | 'server' | 'volume';

/**
 * Sums a cost by one thing, in order of name. What belongs to none is under `''`.
 * By server, a volume counts with the server that holds it; one held by several counts with the first by name.
 */
export function costBy(cost: EstateCost, estate: Estate, grouping: Grouping): ReadonlyMap<string, Money> {
  const sums = new Map<string, Money>();
  for (const line of costLines(cost)) {
    const key = groupKey(line, estate, grouping);
    sums.set(key, addMoney(sums.get(key) ?? noMoney, line.monthly));
  }
  return new Map([...sums].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)));
}

function groupKey(line: CostLine, estate: Estate, grouping: Grouping): string {
  switch (grouping) {
    case 'team':
      return ownerOf(line).team ?? '';
    case 'site':
      return ownerOf(line).site ?? '';
    case 'tier':
      return line.kind === 'volume' ? line.tier : '';
    case 'volume':
      return line.kind === 'volume' ? line.volume.name : '';
    case 'server':
      return line.kind === 'server'
        ? line.server.name
        : ((estate.holders.get(line.volume.name) ?? []).map(({ server }) => server).sort()[0] ?? '');
  }
}
