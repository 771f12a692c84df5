/** Idle capacity, layer by layer: bought, billed every month, and given to no file system. */

import type { Place } from '../base/problem.ts';
import { type Selection, wholeEstate } from '../change/touched.ts';
import type { Belonging, Estate, Subject, Volume, VolumeGroup } from '../estate/estate.ts';
import { type Bytes, bytes, differenceOfBytes, noBytes } from '../estate/size.ts';
import { capacityPrice } from '../price/line.ts';
import { type Money, money, noMoney, sumMoney, timesMoney } from '../price/money.ts';
import type { PriceList } from '../price/price-list.ts';
import { extentsFor } from './extents.ts';
import { fillOf } from './group.ts';

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
  /** What the idle part costs a month: its share, by size, of what all of it costs. Worked out when asked for. */
  monthly(): Money;
}

/**
 * Every idle place, in order of layer and name. What a group's own metadata takes counts as idle: it is paid for and
 * holds no file. A boot volume is never idle (the server starts from it, whether or not its file system is written
 * down), nor is a detached one counted here: what it holds is not declared.
 *
 * @param prices what capacity costs; a tier that it does not price costs nothing here
 * @param look what to look at; all of the estate where left out
 */
export function idleOf(
  estate: Estate,
  prices: PriceList,
  look: Selection = wholeEstate(estate),
): readonly Idle[] {
  const places: Idle[] = [];
  for (const group of look.groups) places.push(groupIdle(estate, group, prices));
  for (const volume of look.volumes) {
    const place =
      volume.fileSystem === undefined ? volumeIdle(estate, volume, prices) : fileSystemIdle(volume, prices);
    if (place !== undefined) places.push(place);
  }
  return places.filter(({ idle }) => idle > noBytes).sort(inOrder);
}

const inOrder = (a: Idle, b: Idle): number =>
  idleLayers.indexOf(a.layer) - idleLayers.indexOf(b.layer) || (a.subject.name < b.subject.name ? -1 : 1);

function groupIdle(estate: Estate, group: VolumeGroup, prices: PriceList): Idle {
  const { bought } = fillOf({ estate, group });
  const given = group.fileSystems.reduce(
    (sum, { size }) => sum + extentsFor(size, group.extent, group.layout) * group.extent,
    0n,
  );
  // A group may be asked for more than it has; then nothing of it is idle.
  const idle = given < bought ? bytes(bought - given) : noBytes;
  const members = group.members.flatMap((name) => estate.volumes.get(name) ?? []);
  const [tier, ...others] = new Set(members.map((member) => member.tier));
  return {
    layer: 'volume-group',
    subject: { kind: 'volume-group', name: group.name },
    belonging: group,
    tier: others.length === 0 ? tier : undefined,
    place: group.place,
    bought,
    idle,
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
    monthly: () => priceOf(volume, prices),
  };
}

function fileSystemIdle(volume: Volume, prices: PriceList): Idle | undefined {
  const system = volume.fileSystem;
  if (system === undefined || system.size >= volume.size) return undefined;
  const idle = differenceOfBytes(volume.size, system.size);
  return {
    layer: 'file-system',
    subject: { kind: 'file-system', name: system.name },
    belonging: system,
    tier: volume.tier,
    place: system.fields.of('size') ?? system.place,
    bought: volume.size,
    idle,
    monthly: () => shareOf(priceOf(volume, prices), idle, volume.size),
  };
}

function priceOf({ tier: name, size }: Volume, prices: PriceList): Money {
  const tier = prices.tiers.get(name);
  return tier === undefined ? noMoney : capacityPrice(tier, size);
}

const shareOf = (monthly: Money, part: Bytes, whole: Bytes): Money =>
  whole === noBytes ? noMoney : money(timesMoney(monthly, part).div(whole.toString()));
