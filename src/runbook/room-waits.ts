/**
 * Which acts wait for others that give room back: attachment slots of a server, a site's quota, what a volume group can
 * hold. An order is looked for in which no room is ever overfull; what is then said to wait keeps every other order of
 * the same waits within the rooms, too.
 */

/** A part of a room that an act takes, or gives back. */
export interface Share {
  readonly room: string;
  /** Counted where the room is; else of no account. */
  readonly amount: bigint;
}

/** What a room has left, where it is counted; else whether all fits in it once those acts are done. */
export type Room = bigint | ((done: ReadonlySet<string>) => boolean);

export interface Sharing {
  readonly key: string;
  readonly takes: readonly Share[];
  readonly gives: readonly Share[];
}

export interface RoomWaits {
  /** By the act that waits. */
  readonly waits: ReadonlyMap<string, readonly string[]>;
  /** Whether the rooms are kept by them: an order was found. */
  readonly fits: boolean;
}

/** @param acts in an order that keeps their waits */
export function roomWaits<T extends Sharing>(
  acts: readonly T[],
  waitsOf: (key: string) => readonly string[],
  rooms: ReadonlyMap<string, Room>,
): RoomWaits {
  const tight = tightRooms(acts, rooms);
  if (tight.size === 0) return { waits: new Map(), fits: true };
  if (overfull(acts, tight).size === 0) return { waits: waitsIn(acts, waitsOf, tight), fits: true };
  const search = new Search(acts, waitsOf, tight);
  const order = search.run();
  return { waits: waitsIn(order, waitsOf, search.rooms), fits: !search.isRaised };
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
        const isOver = typeof all === 'bigint' ? (left.get(room) ?? 0n) < 0n : !all(done);
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
      const isEnough = typeof room === 'bigint' ? (wanted.get(name) ?? 0n) <= room : room(new Set(keys));
      return isEnough ? [] : [[name, room] as const];
    }),
  );
}

/**
 * Of a counted room, each act that takes has its part from particular ones that give: from those that it waits for
 * anyway, from what was free, and only then from others. Of any other room it waits for all that gave before it.
 */
function waitsIn(
  order: readonly Sharing[],
  waitsOf: (key: string) => readonly string[],
  rooms: ReadonlyMap<string, Room>,
): ReadonlyMap<string, readonly string[]> {
  const waits = new Map<string, string[]>();
  const before = (key: string): ReadonlySet<string> => {
    const seen = new Set<string>();
    const ahead = [key];
    for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
      for (const each of [...waitsOf(next), ...(waits.get(next) ?? [])]) {
        if (seen.has(each)) continue;
        seen.add(each);
        ahead.push(each);
      }
    }
    return seen;
  };
  const given = new Map<string, { readonly key: string; left: bigint }[]>();
  const free = new Map<string, bigint>();
  for (const { key, takes, gives } of order) {
    for (const { room: name, amount } of takes) {
      const room = rooms.get(name);
      const givers = given.get(name) ?? [];
      if (room === undefined) continue;
      const known = givers.length === 0 ? new Set<string>() : before(key);
      const add = (giver: string): unknown =>
        known.has(giver) || waits.set(key, [...(waits.get(key) ?? []), giver]);
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

/** How many acts are done and undone in search of an order: enough for all orders of a small branch. */
const mostEffort = 100_000;

/**
 * Acts that take nothing are done as soon as they can be, since they take room from nobody; what is left to choose is
 * which of those that take comes next. One after which its rooms have no less than before is as good as any.
 */
class Search {
  readonly rooms = new Map<string, Room>();
  isRaised = false;
  readonly #acts: readonly Sharing[];
  readonly #takers: readonly Sharing[];
  readonly #byKey: ReadonlyMap<string, Sharing>;
  readonly #waiting = new Map<string, string[]>();
  /** How many that each waits for are not done. */
  readonly #missing = new Map<string, number>();
  readonly #left = new Map<string, bigint>();
  /** What is still to be taken of a counted room. */
  readonly #wanted = new Map<string, bigint>();
  readonly #excused = new Set<string>();
  readonly #done = new Set<string>();
  readonly #order: Sharing[] = [];
  #effort = 0;

  constructor(
    acts: readonly Sharing[],
    waitsOf: (key: string) => readonly string[],
    rooms: ReadonlyMap<string, Room>,
  ) {
    this.#acts = acts;
    this.#byKey = new Map(acts.map((act) => [act.key, act]));
    for (const { key } of acts) {
      const waits = new Set(waitsOf(key));
      this.#missing.set(key, waits.size);
      for (const each of waits) {
        const others = this.#waiting.get(each);
        if (others === undefined) this.#waiting.set(each, [key]);
        else others.push(key);
      }
    }
    for (const [name, room] of rooms) {
      this.rooms.set(name, room);
      if (typeof room === 'bigint') this.#left.set(name, room);
    }
    this.#takers = acts.filter((act) => this.#takes(act));
    for (const { takes } of acts)
      for (const { room, amount } of takes) this.#wanted.set(room, (this.#wanted.get(room) ?? 0n) + amount);
  }

  /** An order of all; where there is none within the rooms, one for which they were raised. */
  run(): readonly Sharing[] {
    this.#raiseForTheEnd();
    for (;;) {
      this.#begin();
      if (this.#effort < mostEffort && this.#solve(new Set())) return this.#order;
      this.#undo(0);
      this.#begin();
      const stuck = this.#goOn();
      if (stuck === undefined) return this.#order;
      this.#raise(stuck);
      this.#undo(0);
    }
  }

  #takes({ takes }: Sharing): boolean {
    return takes.some(({ room }) => this.rooms.has(room));
  }

  #begin(): void {
    for (const act of this.#acts)
      if (this.#missing.get(act.key) === 0 && !this.#done.has(act.key) && !this.#takes(act)) this.#do(act);
  }

  /** With all that takes nothing and waited for it. */
  #do(first: Sharing): void {
    const ready = [first];
    for (let act = ready.shift(); act !== undefined; act = ready.shift()) {
      this.#effort += 1;
      this.#done.add(act.key);
      this.#order.push(act);
      this.#count(act, 1n);
      for (const key of this.#waiting.get(act.key) ?? []) {
        const missing = (this.#missing.get(key) ?? 0) - 1;
        this.#missing.set(key, missing);
        const next = this.#byKey.get(key);
        if (missing === 0 && next !== undefined && !this.#takes(next)) ready.push(next);
      }
    }
  }

  #undo(mark: number): void {
    for (let act = this.#last(mark); act !== undefined; act = this.#last(mark)) {
      this.#done.delete(act.key);
      this.#count(act, -1n);
      for (const key of this.#waiting.get(act.key) ?? [])
        this.#missing.set(key, (this.#missing.get(key) ?? 0) + 1);
    }
  }

  #last(mark: number): Sharing | undefined {
    return this.#order.length > mark ? this.#order.pop() : undefined;
  }

  #count({ takes, gives }: Sharing, sign: bigint): void {
    const add = (to: Map<string, bigint>, room: string, amount: bigint): void => {
      const was = to.get(room);
      if (was !== undefined) to.set(room, was + amount);
    };
    for (const { room, amount } of gives) add(this.#left, room, sign * amount);
    for (const { room, amount } of takes) {
      add(this.#left, room, -sign * amount);
      add(this.#wanted, room, -sign * amount);
    }
  }

  #isReady({ key }: Sharing): boolean {
    return !this.#done.has(key) && this.#missing.get(key) === 0;
  }

  #lacks({ key, takes }: Sharing): Share | undefined {
    const lacking = takes.filter(({ room, amount }) => {
      const all = this.rooms.get(room);
      if (all === undefined) return false;
      if (typeof all === 'bigint') return (this.#left.get(room) ?? all) < amount;
      return !this.#excused.has(key) && !all(new Set([...this.#done, key]));
    });
    return lacking.find(({ room }) => this.#left.has(room)) ?? lacking[0];
  }

  /** Whether all that still takes of a room can. */
  #isEasy(name: string): boolean {
    const room = this.rooms.get(name);
    if (room === undefined) return true;
    if (typeof room === 'bigint') return (this.#left.get(name) ?? room) >= (this.#wanted.get(name) ?? 0n);
    const rest = this.#takers.filter(({ takes }) => takes.some((each) => each.room === name));
    return room(new Set([...this.#done, ...rest.map(({ key }) => key)]));
  }

  /** Does it, unless others may then lack what it took. */
  #didSafely(act: Sharing): boolean {
    const mark = this.#order.length;
    const before = new Map(this.#left);
    this.#do(act);
    const isSafe = act.takes.every(({ room }) => {
      const [was, is] = [before.get(room), this.#left.get(room)];
      return this.#isEasy(room) || (was !== undefined && is !== undefined && is >= was);
    });
    if (!isSafe) this.#undo(mark);
    return isSafe;
  }

  #solve(known: Set<string>): boolean {
    for (;;) {
      if (this.#order.length === this.#acts.length) return true;
      const free = this.#takers.filter((act) => this.#isReady(act) && this.#lacks(act) === undefined);
      if (free.some((act) => this.#didSafely(act))) continue;
      const state = this.#takers.flatMap(({ key }, index) => (this.#done.has(key) ? index : [])).join();
      if (known.has(state)) return false;
      known.add(state);
      return free.some((act) => {
        if (this.#effort > mostEffort) return false;
        const mark = this.#order.length;
        this.#do(act);
        if (this.#solve(known)) return true;
        this.#undo(mark);
        return false;
      });
    }
  }

  /** Whatever comes first; the first that lacks room where nothing else is left to do. */
  #goOn(): Sharing | undefined {
    for (;;) {
      const ready = this.#takers.filter((act) => this.#isReady(act));
      if (ready.length === 0) return undefined;
      const free = ready.filter((act) => this.#lacks(act) === undefined);
      const [first] = free;
      if (first === undefined)
        return ready.find((act) => this.#left.has(this.#lacks(act)?.room ?? '')) ?? ready[0];
      if (!free.some((act) => this.#didSafely(act))) this.#do(first);
    }
  }

  #raise(act: Sharing): void {
    const lacking = this.#lacks(act);
    if (lacking === undefined) return;
    const { room, amount } = lacking;
    const left = this.#left.get(room);
    if (left === undefined) {
      this.#excused.add(act.key);
      this.isRaised = true;
    } else this.#raiseBy(room, amount - left);
  }

  #raiseForTheEnd(): void {
    for (const [room, left] of [...this.#left]) {
      const given = this.#acts.reduce(
        (sum, { gives }) => gives.reduce((all, each) => (each.room === room ? all + each.amount : all), sum),
        0n,
      );
      const short = (this.#wanted.get(room) ?? 0n) - left - given;
      if (short > 0n) this.#raiseBy(room, short);
    }
  }

  #raiseBy(name: string, amount: bigint): void {
    const room = this.rooms.get(name);
    if (typeof room !== 'bigint') return;
    this.rooms.set(name, room + amount);
    this.#left.set(name, (this.#left.get(name) ?? room) + amount);
    this.isRaised = true;
  }
}
