/**
 * Where the logical volumes of a group lie: what the allocator of the open-source Linux volume manager does when it
 * is told a size and a layout and left to choose, one volume after another.
 *
 * It follows lvm2 2.03.16 (lib/metadata/lv_manip.c and pv_map.c) at its defaults: the policy `normal`, reached by way
 * of `contiguous` and `cling`, with `maximise_cling`, and no tags. Its choices are neither the best nor steady, and
 * some follow from the order in which it happens to keep free areas; that order is kept here, too. Held against the
 * real program in test/capacity/placement.test.ts, extent by extent.
 */
import type { Layout } from '../estate/estate.ts';
import { membersWanted } from './extents.ts';

/** Extents one after another on one member; `member` counts from 0, in the order of the group. */
export interface Run {
  readonly member: number;
  readonly start: bigint;
  readonly length: bigint;
}

/**
 * Where one logical volume lies: a lane for each stripe or image, all of one length. A linear volume has one lane.
 */
export interface Placement {
  readonly lanes: readonly (readonly Run[])[];
  /** The extent that each image of a mirrored volume keeps for its own metadata. */
  readonly metadata: readonly Run[];
  /** The extents of the group that it asks for and finds no place for; the volume manager then makes none of it. */
  readonly missing: bigint;
}

/** A logical volume as it is asked for; `extents` without copies or metadata, as a multiple of the stripes. */
export interface Wanted {
  readonly name: string;
  readonly extents: bigint;
  /** Where it lies already; it is grown or cut from there. */
  readonly lies?: Placement | undefined;
}

export interface FilledGroup {
  readonly placed: ReadonlyMap<string, Placement>;
  /** What all of them together find no place for, in extents of the group. */
  readonly missing: bigint;
  /** The extents of the largest further volume of the layout, copies and metadata not counted. */
  readonly left: bigint;
}

/**
 * Places volumes in a group, one by one: first what lies there is kept, then what grows is extended, in the order
 * given, then what is new is made, in the order given.
 *
 * @param extentsOf the extents of each member, in the order in which the group took them in
 */
export function fillGroup(
  extentsOf: readonly bigint[],
  layout: Layout,
  wanted: readonly Wanted[],
): FilledGroup {
  const placed = new Map<string, Placement>();
  for (const { name, extents, lies } of wanted)
    if (lies !== undefined) placed.set(name, cutTo(lies, laneLength(layout, extents)));
  const inTurn = [
    ...wanted.filter(({ lies }) => lies !== undefined),
    ...wanted.filter(({ lies }) => lies === undefined),
  ];
  let missing = 0n;
  for (const { name, extents } of inTurn) {
    const before = placed.get(name);
    const more = laneLength(layout, extents) - (before === undefined ? 0n : lengthOf(before));
    const after = more > 0n ? allocate(freeAreas(extentsOf, placed.values()), layout, before, more) : before;
    if (after === undefined) continue;
    placed.set(name, after);
    missing += after.missing;
  }
  return { placed, missing, left: leftFor(freeAreas(extentsOf, placed.values()), layout) };
}

/** The extents on each stripe or image. */
const laneLength = (layout: Layout, extents: bigint): bigint =>
  layout.kind === 'striped' ? extents / BigInt(layout.stripes) : extents;

const lengthOf = ({ lanes: [lane = []] }: Placement): bigint =>
  lane.reduce((sum, { length }) => sum + length, 0n);

/** A volume made smaller gives back the ends of its lanes. */
function cutTo({ lanes, metadata, missing }: Placement, length: bigint): Placement {
  return {
    lanes: lanes.map((lane) => {
      let left = length;
      return lane.flatMap((run) => {
        const kept = smaller(run.length, left);
        left -= kept;
        return kept > 0n ? [{ ...run, length: kept }] : [];
      });
    }),
    metadata,
    missing,
  };
}

// --- free areas -------------------------------------------------------------------------------------------

/** Free extents one after another on one member. `unreserved` is what the choice being made has not set aside. */
interface Area {
  readonly member: number;
  start: bigint;
  count: bigint;
  unreserved: bigint;
}

/** The free areas of each member, the largest first; of equal ones the first that came. */
type Areas = readonly Area[][];

function freeAreas(extentsOf: readonly bigint[], placements: Iterable<Placement>): Areas {
  const taken = [...placements].flatMap(({ lanes, metadata }) => [...lanes.flat(), ...metadata]);
  return extentsOf.map((extents, member) => {
    const areas: Area[] = [];
    let next = 0n;
    const runs = taken.filter((run) => run.member === member).sort((a, b) => (a.start < b.start ? -1 : 1));
    for (const { start, length } of [...runs, { start: extents, length: 0n }]) {
      const count = start - next;
      if (count > 0n) insert(areas, { member, start: next, count, unreserved: count }, count);
      next = start + length;
    }
    return areas;
  });
}

/** Puts an area before the first that has fewer extents than `size`. */
function insert(areas: Area[], area: Area, size: bigint): void {
  const at = areas.findIndex(({ count }) => size > count);
  areas.splice(at === -1 ? areas.length : at, 0, area);
}

function remove(areas: Area[], area: Area): void {
  areas.splice(areas.indexOf(area), 1);
}

/** Takes extents from the front of an area. */
function consume(areas: Area[], area: Area, count: bigint): void {
  remove(areas, area);
  if (count === area.count) return;
  area.start += count;
  area.count -= count;
  area.unreserved = area.count;
  insert(areas, area, area.count);
}

function resetReserves(all: Areas): void {
  for (const areas of all) {
    for (let at = 0; at < areas.length; at++) {
      const area = areas[at];
      if (area === undefined || area.unreserved === area.count) continue;
      area.unreserved = area.count;
      remove(areas, area);
      insert(areas, area, area.count);
      at = areas.indexOf(area);
    }
  }
}

// --- allocation -------------------------------------------------------------------------------------------

/** An area chosen for a lane, and how much of it. */
interface Choice {
  readonly area: Area;
  readonly used: bigint;
}

type Policy = 'contiguous' | 'cling' | 'normal';

interface Attempt {
  readonly policy: Policy;
  /** Further extents must follow those on the volume's end (contiguous) or lie on its members (cling). */
  readonly near: 'end' | 'members' | undefined;
  /** Each lane is filled by its own match; otherwise what matches is sorted and taken from the largest. */
  positional: boolean;
  /** Further extents must lie where this allocation already put some. */
  onAllocated: boolean;
}

/** What one command asks for, and what it has been given so far. */
interface Handle {
  readonly areas: Areas;
  readonly width: number;
  readonly before: readonly (readonly Run[])[] | undefined;
  readonly lanes: Run[][];
  readonly metadata: Run[];
  /** An image's metadata is split off the first extents it is given. */
  metadataWanted: bigint;
  stillNeeded: bigint;
}

/** Gives a volume `more` extents on each lane. */
function allocate(areas: Areas, layout: Layout, before: Placement | undefined, more: bigint): Placement {
  const width = membersWanted(layout);
  const metadataWanted = layout.kind === 'mirrored' && before === undefined ? 1n : 0n;
  const handle: Handle = {
    areas,
    width,
    before: before?.lanes,
    lanes: Array.from({ length: width }, () => []),
    metadata: [],
    metadataWanted,
    stillNeeded: more + metadataWanted,
  };
  for (const policy of ['contiguous', 'cling', 'normal'] as const) {
    if (handle.stillNeeded > 0n) tryPolicy(handle, policy);
  }
  return {
    lanes: handle.lanes.map((lane, index) => [...(before?.lanes[index] ?? []), ...lane]),
    metadata: [...(before?.metadata ?? []), ...handle.metadata],
    missing: (before?.missing ?? 0n) + handle.stillNeeded * BigInt(width),
  };
}

/** What a request for everything that is free is given: `lvcreate --extents 100%FREE`. */
function leftFor(areas: Areas, layout: Layout): bigint {
  const width = BigInt(membersWanted(layout));
  const free = areas.flat().reduce((sum, { count }) => sum + count, 0n);
  if (free < width) return 0n;
  const given = lengthOf(allocate(areas, layout, undefined, free / width));
  return layout.kind === 'striped' ? given * width : given;
}

function tryPolicy(handle: Handle, policy: Policy): void {
  // Only where the lanes are as many can what is new lie near what is old.
  const grows = handle.before !== undefined && handle.before.length === handle.width;
  const attempt: Attempt = {
    policy,
    near: !grows || policy === 'normal' ? undefined : policy === 'contiguous' ? 'end' : 'members',
    positional: policy === 'cling' || (policy === 'contiguous' && grows),
    onAllocated: policy === 'normal' || (policy === 'cling' && !grows),
  };
  do {
    if (allocateOnce(handle, attempt)) {
      if (policy === 'normal') attempt.onAllocated = true;
    } else if (attempt.near === 'members' && attempt.positional) attempt.positional = false;
    else if (policy === 'normal' && attempt.onAllocated) attempt.onAllocated = false;
    else return;
  } while (policy !== 'contiguous' && handle.stillNeeded > 0n);
}

/** Finds one area for each lane and takes as much of them as the smallest has. Says whether it took anything. */
function allocateOnce(handle: Handle, attempt: Attempt): boolean {
  resetReserves(handle.areas);
  const slots = new Array<Choice | undefined>(handle.width).fill(undefined);
  const found: Choice[] = [];
  for (const areas of handle.areas) {
    if (attempt.positional && slots.every((slot) => slot !== undefined)) break;
    chooseOn(areas, handle, attempt, slots, found);
  }
  found.sort((a, b) => (a.used < b.used ? 1 : a.used > b.used ? -1 : 0));
  const choices = attempt.positional ? slots : found.slice(0, handle.width);
  const chosen = choices.flatMap((choice) => choice ?? []);
  if (chosen.length < handle.width) return false;
  return take(handle, chosen);
}

/** Looks at one member: puts an area of it into a slot, or adds the one it offers to those found. */
function chooseOn(
  areas: Area[],
  handle: Handle,
  attempt: Attempt,
  slots: (Choice | undefined)[],
  found: Choice[],
): void {
  let offered = false;
  for (let at = 0; at < areas.length; at++) {
    const area = areas[at];
    if (area === undefined || area.unreserved === 0n) continue;
    if (attempt.near !== undefined || attempt.onAllocated || attempt.positional) {
      const lane = laneNear(handle, attempt, area, slots);
      if (lane === undefined) {
        if (attempt.near === 'end') continue;
        return;
      }
      if (attempt.positional) {
        slots[lane] = { area, used: area.count };
        return;
      }
    } else if (offered && area.unreserved < handle.stillNeeded) return;
    // A smaller area that is still large enough takes the place of a larger one.
    if (offered) found.pop();
    offered = true;
    found.push({ area, used: reserve(areas, area, handle.stillNeeded) });
    at = areas.indexOf(area);
  }
}

/** Sets aside what is needed of an area, which then stands among the others by what is left of it. */
function reserve(areas: Area[], area: Area, needed: bigint): bigint {
  if (needed >= area.unreserved) {
    const used = area.unreserved;
    area.unreserved = 0n;
    return used;
  }
  area.unreserved -= needed;
  remove(areas, area);
  insert(areas, area, area.unreserved);
  return needed;
}

/** The lane that an area follows or lies beside, as the attempt asks; `undefined` where there is none. */
function laneNear(
  { before, lanes, width }: Handle,
  { policy, near, positional, onAllocated }: Attempt,
  area: Area,
  slots: readonly (Choice | undefined)[],
): number | undefined {
  const laneWhere = (is: (lane: number) => boolean): number | undefined => {
    for (let lane = 0; lane < width; lane++) {
      if (!(positional && slots[lane] !== undefined) && is(lane)) return lane;
    }
    return undefined;
  };
  const grows = before !== undefined && before.length === width;
  const follows = (lane: number): boolean => {
    const last = before?.[lane]?.at(-1);
    return last?.member === area.member && last.start + last.length === area.start;
  };
  // Of a volume in several pieces only the first is looked at.
  const beside = (lane: number): boolean => before?.[lane]?.[0]?.member === area.member;
  const end = grows ? laneWhere(follows) : undefined;
  if (end !== undefined || near === 'end') return end;
  const old = grows && (near === 'members' || policy === 'normal') ? laneWhere(beside) : undefined;
  if (old !== undefined || !onAllocated) return old;
  return laneWhere((lane) => lanes[lane]?.some(({ member }) => member === area.member) ?? false);
}

function take(handle: Handle, chosen: readonly Choice[]): boolean {
  let length = handle.stillNeeded;
  for (const { used } of chosen) length = smaller(length, used);
  if (length === 0n) return false;
  const metadata = handle.metadataWanted;
  for (const [lane, { area }] of chosen.entries()) {
    const areas = handle.areas[area.member] ?? [];
    if (metadata > 0n) {
      handle.metadata.push({ member: area.member, start: area.start, length: metadata });
      consume(areas, area, metadata);
    }
    if (length === metadata) continue;
    handle.lanes[lane]?.push({ member: area.member, start: area.start, length: length - metadata });
    consume(areas, area, length - metadata);
  }
  handle.metadataWanted = 0n;
  handle.stillNeeded -= length;
  return true;
}

const smaller = (a: bigint, b: bigint): bigint => (a < b ? a : b);
