/** What an estate costs a month: each volume and each server, and sums of them. Exact throughout. */

import { offer } from '../base/nearest.ts';
import { byText } from '../base/order.ts';
import { err, type Outcome, ok, type Place, type Problem } from '../base/problem.ts';
import { type Estate, isDetached, type Server, unreadName, type Volume } from '../estate/estate.ts';
import { layered } from '../estate/layered.ts';
import type { Settings } from '../estate/settings.ts';
import { type CostLine, ownerOf, priceServer, priceVolume } from './line.ts';
import { addMoney, type Money, noMoney } from './money.ts';
import { type PriceList, unknownTier } from './price-list.ts';
import { editedSums, type KeyOf, type LineEdit, type Summing, type Sums, Tally } from './sums.ts';

export interface EstateCost {
  readonly currency: string;
  readonly total: Money;
  readonly volumes: ReadonlyMap<string, CostLine>;
  readonly servers: ReadonlyMap<string, CostLine>;
  /** Sums that are kept beside the lines, by their names; a cost that follows this one has them too. @internal */
  readonly sums: ReadonlyMap<string, KeptSums>;
}

interface KeptSums {
  readonly keyOf: KeyOf;
  readonly sums: Sums;
}

/** What prices an estate. */
export interface PriceBasis {
  /** The list in force on `day`. */
  readonly list: PriceList;
  readonly settings: Settings;
  /** Decides the length of a calendar month. */
  readonly day: string;
}

/**
 * Prices a whole estate by one price list, exactly.
 *
 * @param list the list in force on `day`
 * @param settings of the same revision: a month is 730 hours (8,760 / 12, common practice), or as long as the calendar's
 * @param day an RFC 3339 full-date; it decides the length of a calendar month
 * @returns the monthly cost, or a problem for every tier and server type that the list does not price
 *
 * @example
 * ```js
 * import { listInForce, priceEstate, readFiles } from 'ullage';
 *
 * const files = (size) => ({
 *   'ullage.yaml': 'currency: EUR\n',
 *   'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers: { bulk: { rate: "0.045", per: GiB-month } }\n',
 *   'policies/storage.yaml': 'use: [starter]\n',
 *   'storage/a.yaml': `volumes: { plates-1: { size: ${size}, tier: bulk, retain-until: 2027-03-31, reason: kept } }\n`,
 * });
 * const read = await readFiles(files('40 GiB'), 'main');
 * if (read.ok) {
 *   const { estate, priceLists, settings } = read.value;
 *   const cost = priceEstate(estate, listInForce(priceLists, '2026-11-20'), settings, '2026-11-20');
 *   if (cost.ok) console.log(String(cost.value.total), cost.value.currency); // 1.8 EUR
 * }
 * ```
 */
export function priceEstate(
  estate: Estate,
  list: PriceList,
  settings: Settings,
  day: string,
): Outcome<EstateCost> {
  const pricing = new Pricing(estate, { list, settings, day });
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
  basis: PriceBasis,
): Outcome<EstateCost> {
  const pricing = new Pricing(estate, basis);
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
  const difference = new Tally();
  for (const { was, now } of edits) {
    if (was !== undefined) difference.count(was.monthly, -1);
    if (now !== undefined) difference.count(now.monthly, 1);
  }
  const lines = { [Symbol.iterator]: () => costLines({ volumes, servers })[Symbol.iterator]() };
  const sums = [...before.sums].map(([name, kept]) => {
    return [name, { ...kept, sums: editedSums(kept.sums, edits, kept.keyOf, lines) }] as const;
  });
  const total = difference.addedTo(before.total);
  return ok({ currency: before.currency, total, volumes, servers, sums: new Map(sums) });
}

/** The same cost with just these sums beside it. Those that it has are kept. */
export const withSums = (cost: EstateCost, summings: readonly Summing[]): EstateCost => ({
  ...cost,
  sums: new Map(
    summings.map((summing) => [summing.name, { keyOf: summing.keyOf, sums: sumsBy(cost, summing) }]),
  ),
});

/** A cost summed up: as it is kept beside the lines, or summed now where it is not. */
export function sumsBy(cost: EstateCost, { name, keyOf }: Summing): Sums {
  const known = cost.sums.get(name);
  if (known !== undefined) return known.sums;
  const lines = [...costLines(cost)];
  return editedSums(
    new Map(),
    lines.map((now) => ({ was: undefined, now })),
    keyOf,
    lines,
  );
}

/** Prices one thing after another, and gathers what the list does not price. */
class Pricing {
  readonly problems: Problem[] = [];
  readonly #estate: Estate;
  readonly #basis: PriceBasis;
  readonly #prices = new Map<string, Money>();

  constructor(estate: Estate, basis: PriceBasis) {
    this.#estate = estate;
    this.#basis = basis;
  }

  volume(volume: Volume): CostLine | undefined {
    const { list } = this.#basis;
    const held = isDetached(this.#estate, volume) ? 'detached' : 'attached';
    const line = priceVolume(volume, list, held, this.#prices);
    if (line !== undefined || volume.tier === unreadName) return line;
    const place = volume.fields.of('tier') ?? volume.place;
    this.problems.push(unpriced(`the volume ${volume.name}`, 'tier', volume.tier, { list, place }));
    return undefined;
  }

  server(server: Server): CostLine | undefined {
    const { list, settings, day } = this.#basis;
    const line = priceServer(server, list, settings, day);
    if (line === 'not billed') return undefined;
    if (line !== undefined) return line;
    const place = server.fields.of('type') ?? server.place;
    const type = server.type ?? '';
    this.problems.push(unpriced(`the server ${server.name}`, 'server type', type, { list, place }));
    return undefined;
  }
}

function unpriced(
  from: string,
  kind: 'tier' | 'server type',
  name: string,
  { list, place }: { readonly list: PriceList; readonly place: Place },
): Problem {
  const known = kind === 'tier' ? list.tiers : list.serverTypes;
  return {
    place,
    message: `${from} names the ${kind} ${name}, which the price list in force (${list.place.file}) does not price`,
    advice:
      name === unknownTier
        ? `Say which tier it is: ${[...known.keys()].join(', ')}.`
        : `${offer(name, [...known.keys()])}Correct the name, or first merge a price list that has the ${kind}.`,
  };
}

export function* costLines({
  volumes,
  servers,
}: Pick<EstateCost, 'volumes' | 'servers'>): Iterable<CostLine> {
  yield* volumes.values();
  yield* servers.values();
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
