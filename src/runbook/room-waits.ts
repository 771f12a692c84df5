/**
 * Which acts wait for others that give room back: attachment slots of a server, a site's quota, what a volume group can
 * hold. An order is looked for in which no room is ever overfull; what is then said to wait keeps every other order of
 * the same waits within the rooms, too.
 */

import { reach } from '../base/reach.ts';
import { mostEffort, type Room, Search, type Sharing } from './room-search.ts';

export interface RoomWaits {
  /** By the act that waits. */
  readonly waits: ReadonlyMap<string, readonly string[]>;
  /**
   * Whether the rooms are kept by them: an order was found, or there is none; or none was found among those that were
   * tried, which were not all.
   */
  readonly fits: 'yes' | 'no' | 'none found';
}

/** @param acts in an order that keeps their waits */
export function roomWaits(
  acts: readonly Sharing[],
  waitsOf: (key: string) => readonly string[],
  rooms: ReadonlyMap<string, Room>,
  most = mostEffort,
): RoomWaits {
  const tight = tightRooms(acts, rooms);
  if (tight.size === 0) return { waits: new Map(), fits: 'yes' };
  const effort = { left: most };
  const parts = partsOf(acts, waitsOf, tight).map((part) => {
    if (overfull(part, tight).size === 0) return { waits: waitsIn(part, waitsOf, tight), fits: true };
    const search = new Search(part, waitsOf, tight, effort);
    const order = search.run();
    return { waits: waitsIn(order, waitsOf, search.rooms), fits: !search.isRaised };
  });
  return {
    waits: new Map(parts.flatMap(({ waits }) => [...waits])),
    fits: parts.every(({ fits }) => fits) ? 'yes' : effort.left > 0 ? 'no' : 'none found',
  };
}

/** Acts that have to do with each other, by a wait or by a room, each part in the order given. */
function partsOf(
  acts: readonly Sharing[],
  waitsOf: (key: string) => readonly string[],
  rooms: ReadonlyMap<string, Room>,
): readonly (readonly Sharing[])[] {
  const links = new Map<string, string[]>();
  const link = (one: string, other: string): void => {
    for (const [from, to] of [
      [one, other],
      [other, one],
    ] as const) {
      const known = links.get(from);
      if (known === undefined) links.set(from, [to]);
      else known.push(to);
    }
  };
  for (const { key, takes, gives } of acts) {
    for (const each of waitsOf(key)) link(`act ${key}`, `act ${each}`);
    for (const { room } of [...takes, ...gives]) if (rooms.has(room)) link(`act ${key}`, `room ${room}`);
  }
  const partOf = new Map<string, number>();
  const parts: Sharing[][] = [];
  for (const act of acts) {
    const known = partOf.get(`act ${act.key}`);
    const part = known ?? parts.push([]) - 1;
    const near = known === undefined ? [`act ${act.key}`] : [];
    for (let next = near.pop(); next !== undefined; next = near.pop()) {
      if (partOf.has(next)) continue;
      partOf.set(next, part);
      near.push(...(links.get(next) ?? []));
    }
    parts[part]?.push(act);
  }
  return parts;
}

/** The acts, in this order, after which a room is overfull, and which: the counted one where it is several. */
export function overfull(
  acts: readonly Sharing[],
  rooms: ReadonlyMap<string, Room>,
): ReadonlyMap<string, string> {
  const left = new Map<string, bigint>();
  const done = new Set<string>();
  const found = new Map<string, string>();
  for (const { key, takes, gives } of acts) {
    done.add(key);
    for (const [shares, sign] of [
      [gives, 1n],
      [takes, -1n],
    ] as const) {
      for (const { room, amount } of shares) {
        const all = rooms.get(room);
        if (all === undefined) continue;
        if (typeof all === 'bigint') left.set(room, (left.get(room) ?? all) + sign * amount);
        const isOver = typeof all === 'bigint' ? (left.get(room) ?? 0n) < 0n : !all((each) => done.has(each));
        if (sign < 0n && isOver && typeof rooms.get(found.get(key) ?? '') !== 'bigint') found.set(key, room);
      }
    }
  }
  return found;
}

/** Those that cannot give all that is taken of them at once. */
function tightRooms(acts: readonly Sharing[], rooms: ReadonlyMap<string, Room>): ReadonlyMap<string, Room> {
  const takers = new Map<string, string[]>();
  const wanted = new Map<string, bigint>();
  for (const { key, takes } of acts) {
    for (const { room, amount } of takes) {
      if (!rooms.has(room)) continue;
      wanted.set(room, (wanted.get(room) ?? 0n) + amount);
      const others = takers.get(room);
      if (others === undefined) takers.set(room, [key]);
      else others.push(key);
    }
  }
  return new Map(
    [...takers].flatMap(([name, keys]) => {
      const room = rooms.get(name);
      if (room === undefined) return [];
      const isEnough =
        typeof room === 'bigint' ? (wanted.get(name) ?? 0n) <= room : room((key) => keys.includes(key));
      return isEnough ? [] : [[name, room] as const];
    }),
  );
}

/**
 * Of a counted room, each act that takes has its part from particular ones that give: from those that it waits for
 * anyway, from what was free, and only then from others. Where there is less than nothing free, all that take wait for
 * those that make up for it. Of any other room an act waits for all that gave before it.
 */
function waitsIn(
  order: readonly Sharing[],
  waitsOf: (key: string) => readonly string[],
  rooms: ReadonlyMap<string, Room>,
): ReadonlyMap<string, readonly string[]> {
  const waits = new Map<string, string[]>();
  const before = (key: string): ReadonlySet<string> =>
    reach((each) => [...waitsOf(each), ...(waits.get(each) ?? [])], key);
  const given = new Map<string, { readonly key: string; left: bigint }[]>();
  const free = new Map<string, bigint>();
  const madeUpBy = new Map<string, readonly string[]>();
  for (const { key, takes, gives } of order) {
    for (const { room: name, amount } of takes) {
      const room = rooms.get(name);
      const givers = given.get(name) ?? [];
      if (room === undefined) continue;
      const known = givers.length === 0 ? new Set<string>() : before(key);
      const add = (giver: string): unknown =>
        known.has(giver) || waits.set(key, [...new Set([...(waits.get(key) ?? []), giver])]);
      if (typeof room !== 'bigint') {
        for (const giver of givers) add(giver.key);
        continue;
      }
      let needs = amount;
      const draw = (from: { left: bigint }): boolean => {
        const isEnough = from.left >= needs;
        const part = isEnough ? needs : from.left;
        from.left -= part;
        needs -= part;
        return part > 0n;
      };
      const unused = { left: free.get(name) ?? room };
      if (unused.left < 0n) {
        needs = -unused.left;
        unused.left = 0n;
        const knownFirst = [...givers].sort((a, b) => Number(known.has(b.key)) - Number(known.has(a.key)));
        madeUpBy.set(
          name,
          knownFirst.flatMap((giver) => (draw(giver) ? giver.key : [])),
        );
        needs = amount;
      }
      for (const giver of madeUpBy.get(name) ?? []) add(giver);
      for (const giver of givers) if (known.has(giver.key)) draw(giver);
      draw(unused);
      free.set(name, unused.left);
      for (const giver of givers) if (draw(giver)) add(giver.key);
    }
    for (const { room, amount } of gives) {
      const others = given.get(room);
      if (others === undefined) given.set(room, [{ key, left: amount }]);
      else others.push({ key, left: amount });
    }
  }
  return waits;
}
