/** What an estate costs a month: each volume and each server, and sums of them. Exact throughout. */

import { offer } from '../base/nearest.ts';
import { byText } from '../base/order.ts';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { hoursOfMonth } from '../estate/dates.ts';
import type { Belonging, Estate, Server, Volume } from '../estate/estate.ts';
import { isDetached } from '../estate/estate.ts';
import { layered } from '../estate/layered.ts';
import type { Settings } from '../estate/settings.ts';
import { type Bytes, bytes } from '../estate/size.ts';
import { addMoney, type Money, money, noMoney, subtractMoney, timesMoney } from './money.ts';
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

export interface EstateCost {
  readonly currency: string;
  readonly total: Money;
  readonly volumes: ReadonlyMap<string, CostLine>;
  readonly servers: ReadonlyMap<string, CostLine>;
  /** Sums that have been asked for; a cost that follows this one carries them on. Only `sumsBy` reads it. */
  readonly sums: Map<string, Summing>;
}

/** One way of summing, and the sums. */
interface Summing {
  readonly keyOf: KeyOf;
  readonly sums: Sums;
}

/** What a line counts under; `undefined` where it does not count. */
export type KeyOf = (line: CostLine) => string | undefined;

/** A sum of lines, and the dearest among them. */
export interface Sum {
  readonly monthly: Money;
  readonly dearest: CostLine;
}

export type Sums = ReadonlyMap<string, Sum>;

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

/**
 * Prices a whole estate by one price list.
 *
 * @param list the list in force on `day`
 * @param day decides the length of a calendar month
 * @returns the cost, or a problem for every tier and server type that the list does not price
 */
export function priceEstate(
  estate: Estate,
  list: PriceList,
  settings: Settings,
  day: string,
): Outcome<EstateCost> {
  const pricing = new Pricing(estate, list, settings, day);
  const volumes = new Map<string, CostLine>();
  const servers = new Map<string, CostLine>();
  const total = new Tally();
  for (const volume of estate.volumes.values()) {
    const line = pricing.volume(volume);
    if (line === undefined) continue;
    volumes.set(volume.name, line);
    total.count(line.monthly, 1);
  }
  for (const server of estate.servers.values()) {
    const line = pricing.server(server);
    if (line === undefined) continue;
    servers.set(server.name, line);
    total.count(line.monthly, 1);
  }
  return pricing.problems.length > 0
    ? err(...pricing.problems)
    : ok({ currency: list.currency, total: total.addedTo(noMoney), volumes, servers, sums: new Map() });
}

/**
 * Prices an estate that differs from one already priced, by the same list, settings and length of month: only what
 * was touched is priced again. Exact decimals add and take away without a trace, so the result is the same.
 */
export function repriceEstate(
  before: EstateCost,
  estate: Estate,
  touched: { readonly volumes: ReadonlySet<string>; readonly servers: ReadonlySet<string> },
  list: PriceList,
  settings: Settings,
  day: string,
): Outcome<EstateCost> {
  const pricing = new Pricing(estate, list, settings, day);
  const edits: LineEdit[] = [];
  const edit = <T>(
    names: ReadonlySet<string>,
    lines: ReadonlyMap<string, CostLine>,
    among: ReadonlyMap<string, T>,
    price: (thing: T) => CostLine | undefined,
  ): ReadonlyMap<string, CostLine> => {
    const set = new Map<string, CostLine>();
    const deleted = new Set<string>();
    for (const name of names) {
      const thing = among.get(name);
      const was = lines.get(name);
      const now = thing === undefined ? undefined : price(thing);
      if (now !== undefined) set.set(name, now);
      else if (was !== undefined) deleted.add(name);
      if (was !== undefined || now !== undefined) edits.push({ was, now });
    }
    return layered(lines, { set, deleted });
  };
  const volumes = edit(touched.volumes, before.volumes, estate.volumes, (volume) => pricing.volume(volume));
  const servers = edit(touched.servers, before.servers, estate.servers, (server) => pricing.server(server));
  if (pricing.problems.length > 0) return err(...pricing.problems);
  let total = before.total;
  for (const { was, now } of edits) {
    if (was !== undefined) total = subtractMoney(total, was.monthly);
    if (now !== undefined) total = addMoney(total, now.monthly);
  }
  const cost: EstateCost = { currency: before.currency, total, volumes, servers, sums: new Map() };
  for (const [name, { keyOf, sums }] of before.sums) {
    cost.sums.set(name, { keyOf, sums: editedSums(sums, edits, keyOf, cost) });
  }
  return ok(cost);
}

interface LineEdit {
  readonly was: CostLine | undefined;
  readonly now: CostLine | undefined;
}

/** Prices one thing after another, and gathers what the list does not price. */
class Pricing {
  readonly problems: Problem[] = [];
  readonly #estate: Estate;
  readonly #list: PriceList;
  readonly #settings: Settings;
  readonly #day: string;
  readonly #prices = new Map<string, Money>();

  constructor(estate: Estate, list: PriceList, settings: Settings, day: string) {
    this.#estate = estate;
    this.#list = list;
    this.#settings = settings;
    this.#day = day;
  }

  volume(volume: Volume): CostLine | undefined {
    const line = priceVolume(volume, this.#list, isDetached(this.#estate, volume), this.#prices);
    if (line === undefined) {
      const place = volume.fields.of('tier') ?? volume.place;
      this.problems.push(
        unpriced('tier', volume.tier, `the volume ${volume.name}`, this.#list, this.#list.tiers, place),
      );
    }
    return line;
  }

  server(server: Server): CostLine | undefined {
    const line = priceServer(server, this.#list, this.#settings, this.#day);
    if (line === 'not billed') return undefined;
    if (line === undefined) {
      const place = server.fields.of('type') ?? server.place;
      this.problems.push(
        unpriced(
          'server type',
          server.type ?? '',
          `the server ${server.name}`,
          this.#list,
          this.#list.serverTypes,
          place,
        ),
      );
    }
    return line;
  }
}

/**
 * Sums a cost by a key of each line.
 *
 * @param name names this way of summing: the same name always comes with the same `keyOf`
 */
export function sumsBy(cost: EstateCost, name: string, keyOf: KeyOf): Sums {
  const known = cost.sums.get(name);
  if (known !== undefined) return known.sums;
  const sums = editedSums(new Map(), addedLines(cost), keyOf, cost);
  cost.sums.set(name, { keyOf, sums });
  return sums;
}

function* addedLines(cost: EstateCost): Iterable<LineEdit> {
  for (const now of costLines(cost)) yield { was: undefined, now };
}

/**
 * Adds up amounts by counting how often each comes. Lines of one tier and size share one amount, so that an estate of
 * many volumes takes few exact additions.
 */
class Tally {
  readonly #times = new Map<Money, number>();

  count(amount: Money, sign: 1 | -1): void {
    this.#times.set(amount, (this.#times.get(amount) ?? 0) + sign);
  }

  addedTo(start: Money): Money {
    let total = start;
    for (const [amount, times] of this.#times)
      if (times !== 0) total = addMoney(total, timesMoney(amount, times));
    return total;
  }
}

/** Sums after some lines have come, gone or changed. */
function editedSums(before: Sums, edits: Iterable<LineEdit>, keyOf: KeyOf, cost: EstateCost): Sums {
  const sums = new Map<string, { readonly tally: Tally; dearest: CostLine | undefined }>();
  const of = (key: string) => {
    const known = sums.get(key);
    if (known !== undefined) return known;
    const sum = { tally: new Tally(), dearest: before.get(key)?.dearest };
    sums.set(key, sum);
    return sum;
  };
  const lost = new Map<string, CostLine>();
  for (const { was, now } of edits) {
    const left = was === undefined ? undefined : keyOf(was);
    const came = now === undefined ? undefined : keyOf(now);
    if (was !== undefined && left !== undefined) {
      const sum = of(left);
      sum.tally.count(was.monthly, -1);
      if (before.get(left)?.dearest === was) lost.set(left, was);
    }
    if (now !== undefined && came !== undefined) {
      const sum = of(came);
      sum.tally.count(now.monthly, 1);
      if (sum.dearest === undefined || isDearer(now, sum.dearest)) sum.dearest = now;
    }
  }
  // Where the dearest itself left, or was priced anew, and what came is cheaper, only a look at all lines tells the
  // next.
  const came = new Map<string, CostLine>();
  if (lost.size > 0) {
    for (const { now } of edits) {
      const key = now === undefined ? undefined : keyOf(now);
      if (now === undefined || key === undefined || !lost.has(key)) continue;
      const dearest = came.get(key);
      if (dearest === undefined || isDearer(now, dearest)) came.set(key, now);
    }
  }
  for (const [key, was] of lost) {
    const candidate = came.get(key);
    const surpassed = candidate !== undefined && !isDearer(was, candidate);
    of(key).dearest = surpassed ? candidate : undefined;
    if (surpassed) lost.delete(key);
  }
  if (lost.size > 0) {
    for (const line of costLines(cost)) {
      const key = keyOf(line);
      if (key === undefined || !lost.has(key)) continue;
      const sum = of(key);
      if (sum.dearest === undefined || isDearer(line, sum.dearest)) sum.dearest = line;
    }
  }
  const next = new Map(before);
  for (const [key, { tally, dearest }] of sums) {
    if (dearest === undefined) next.delete(key);
    else next.set(key, { monthly: tally.addedTo(before.get(key)?.monthly ?? noMoney), dearest });
  }
  return next;
}

/** Of two that cost the same the first by name counts as the dearer, so that the order of files does not matter. */
const isDearer = (a: CostLine, b: CostLine): boolean => {
  // Lines of one tier and size share one amount, and comparing names costs less than comparing decimals.
  const order = a.monthly === b.monthly ? 0 : a.monthly.comparedTo(b.monthly);
  return order > 0 || (order === 0 && nameOf(a) < nameOf(b));
};

function unpriced(
  kind: 'tier' | 'server type',
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
  return new Map([...sums].sort(([a], [b]) => byText(a, b)));
}

/** What a line counts under: see `costBy`. */
export function groupKey(line: CostLine, estate: Estate, grouping: Grouping): string {
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
