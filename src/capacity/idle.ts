/** Idle capacity, layer by layer: bought, billed every month, and given to no file system. */

import type { Place } from '../base/problem.ts';
import { type Selection, wholeEstate } from '../change/touched.ts';
import type { Belonging, Estate, Subject, Volume } from '../estate/estate.ts';
import { type Bytes, bytes, noBytes, sumBytes } from '../estate/size.ts';
import { capacityPrice } from '../price/line.ts';
import { type Money, money, noMoney, sumMoney, timesMoney } from '../price/money.ts';
import type { PriceList } from '../price/price-list.ts';
import { extentsFor } from './extents.ts';
import { fillOf, type GroupAt } from './group.ts';
import { type MeasuredCapacity, measuredMember, measuredSystem } from './measured.ts';

/**
 * Where growth was not followed through: a `volume-group` whose file systems leave some of it; an attached `volume`
 * in no group and with no file system; a `file-system` that is smaller than the volume it has to itself.
 */
const idleLayers = ['volume-group', 'volume', 'file-system'] as const;

export type IdleLayer = (typeof idleLayers)[number];

export interface Idle {
  readonly layer: IdleLayer;
  readonly subject: Subject;
  readonly belonging: Belonging;
  /** The tier, where all of it is of one. */
  readonly tier: string | undefined;
  readonly place: Place;
  /** What is paid for at this place. */
  readonly bought: Bytes;
  /** What of it no file system has; more than nothing, and not more than `bought`. */
  readonly idle: Bytes;
  /** When it was surveyed that other things take a part of `bought`; undefined where nothing shows such. */
  readonly surveyed: string | undefined;
  /** What the idle part costs a month: its share, by size, of what all of it costs. Worked out when asked for. */
  monthly(): Money;
}

/**
 * Every idle place, in order of layer and name. What a group's own metadata takes counts as idle: it is paid for and
 * holds no file. A boot volume is never idle (the server starts from it, whether or not its file system is written
 * down), nor is a detached one counted here: what it holds is not declared. What surveys show that other partitions
 * take, or that a group cannot have of its members, is not idle either.
 *
 * @param prices what capacity costs; a tier that it does not price costs nothing here
 * @param look what to look at; all of the estate where left out
 */
export function idleOf(
  estate: Estate,
  prices: PriceList,
  look: Selection = wholeEstate(estate),
  measured?: MeasuredCapacity,
): readonly Idle[] {
  const places: Idle[] = [];
  for (const group of look.groups) places.push(groupIdle({ estate, group, measured }, prices));
  for (const volume of look.volumes) {
    const place =
      volume.fileSystem === undefined
        ? volumeIdle(estate, volume, prices)
        : fileSystemIdle(estate, volume, prices, measured);
    if (place !== undefined) places.push(place);
  }
  return places.filter(({ idle }) => idle > noBytes).sort(inOrder);
}

const inOrder = (a: Idle, b: Idle): number =>
  idleLayers.indexOf(a.layer) - idleLayers.indexOf(b.layer) || (a.subject.name < b.subject.name ? -1 : 1);

function groupIdle({ estate, group, measured }: GroupAt, prices: PriceList): Idle {
  const members = group.members.flatMap((name) => estate.volumes.get(name) ?? []);
  const bought = sumBytes(members.map(({ size }) => size));
  const lost = members.reduce((sum, member) => sum + (measuredMember(member, measured)?.lost ?? 0n), 0n);
  const given = group.fileSystems.reduce(
    (sum, { size }) => sum + extentsFor(size, group.extent, group.layout) * group.extent,
    0n,
  );
  // A group may be asked for more than it has; then nothing of it is idle.
  const { idle, isShown } = idleBeside(bought, given, lost);
  const [tier, ...others] = new Set(members.map((member) => member.tier));
  return {
    layer: 'volume-group',
    subject: { kind: 'volume-group', name: group.name },
    belonging: group,
    tier: others.length === 0 ? tier : undefined,
    place: group.place,
    bought,
    idle,
    surveyed: isShown ? fillOf({ estate, group, measured }).surveyed : undefined,
    monthly: () => shareOf(sumMoney(members.map((member) => priceOf(member, prices))), idle, bought),
  };
}

function volumeIdle(estate: Estate, volume: Volume, prices: PriceList): Idle | undefined {
  const holders = estate.holders.get(volume.name) ?? [];
  if (holders.length === 0 || holders.some(({ boot }) => boot) || estate.groupOf.has(volume.name))
    return undefined;
  return {
    layer: 'volume',
    subject: { kind: 'volume', name: volume.name },
    belonging: volume,
    tier: volume.tier,
    place: volume.place,
    bought: volume.size,
    idle: volume.size,
    surveyed: undefined,
    monthly: () => priceOf(volume, prices),
  };
}

function fileSystemIdle(
  estate: Estate,
  volume: Volume,
  prices: PriceList,
  measured: MeasuredCapacity | undefined,
): Idle | undefined {
  const system = volume.fileSystem;
  if (system === undefined || system.size >= volume.size) return undefined;
  const known = measuredSystem(system, estate, measured);
  const { idle, isShown } = idleBeside(volume.size, system.size, known?.elsewhere ?? noBytes);
  return {
    layer: 'file-system',
    subject: { kind: 'file-system', name: system.name },
    belonging: system,
    tier: volume.tier,
    place: system.fields.of('size') ?? system.place,
    bought: volume.size,
    idle,
    surveyed: isShown ? known?.at : undefined,
    monthly: () => shareOf(priceOf(volume, prices), idle, volume.size),
  };
}

/** @param lost what other things take; below nothing where the group has more than was estimated, which is not bought */
function idleBeside(bought: Bytes, given: bigint, lost: bigint) {
  const left = bought - given - (lost > 0n ? lost : 0n);
  return { idle: left > 0n ? bytes(left) : noBytes, isShown: lost > 0n };
}

function priceOf({ tier: name, size }: Volume, prices: PriceList): Money {
  const tier = prices.tiers.get(name);
  return tier === undefined ? noMoney : capacityPrice(tier, size);
}

const shareOf = (monthly: Money, part: Bytes, whole: Bytes): Money =>
  whole === noBytes ? noMoney : money(timesMoney(monthly, part).div(whole.toString()));
