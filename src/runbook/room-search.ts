/** Looks for an order of acts in which no room is ever overfull: which rooms there are is none of its. */

/** A part of a room that an act takes, or gives back. */
export interface Share {
  readonly room: string;
  /** Counted where the room is; else of no account. */
  readonly amount: bigint;
}

/** What a room has left, where it is counted; else whether all fits in it once those acts are done. */
export type Room = bigint | ((isDone: (key: string) => boolean) => boolean);

export interface Sharing {
  readonly key: string;
  readonly takes: readonly Share[];
  readonly gives: readonly Share[];
}

/** How often an act is tried in search of an order: enough for all orders of a small branch. */
export const mostEffort = 200_000;

/**
 * Acts that take nothing are done as soon as they can be, since they take room from nobody; what is left to choose is
 * which of those that take comes next. One after which its rooms have no less than before is as good as any.
 */
export class Search {
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
  /** By room: what takes of it or gives it any. */
  readonly #sharing = new Map<string, readonly string[]>();
  readonly #held = new Map<string, boolean>();
  readonly #done = new Set<string>();
  readonly #order: Sharing[] = [];
  readonly #effort: { left: number };

  constructor(
    acts: readonly Sharing[],
    waitsOf: (key: string) => readonly string[],
    rooms: ReadonlyMap<string, Room>,
    effort: { left: number },
  ) {
    this.#acts = acts;
    this.#effort = effort;
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
      else this.#sharing.set(name, sharingIn(acts, name));
    }
    this.#takers = acts.filter((act) => this.#takes(act));
    for (const { takes } of acts)
      for (const { room, amount } of takes) this.#wanted.set(room, (this.#wanted.get(room) ?? 0n) + amount);
  }

  /** An order of all; where there is none within the rooms, one for which they were raised. */
  run(): readonly Sharing[] {
    this.#raiseForTheEnd();
    for (;;) {
      this.#undo(0);
      this.#begin();
      if (this.#solve(new Set())) return this.#order;
      this.#undo(0);
      this.#begin();
      for (let stuck = this.#goOn(); ; stuck = this.#goOn()) {
        if (stuck === undefined) return this.#order;
        this.#raise(stuck);
        // With so much more room, there may be an order that needs no more.
        if (this.#effort.left > 0) break;
      }
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
      this.#effort.left -= 1;
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
    this.#effort.left -= 1;
    const lacking = takes.filter(({ room, amount }) => {
      const all = this.rooms.get(room);
      if (all === undefined) return false;
      if (typeof all === 'bigint') return (this.#left.get(room) ?? all) < amount;
      return !this.#excused.has(key) && !this.#holds(room, all, (each) => each === key);
    });
    return lacking.find(({ room }) => this.#left.has(room)) ?? lacking[0];
  }

  /** Asked once for the same acts of the room. */
  #holds(name: string, room: Exclude<Room, bigint>, isNext: (key: string) => boolean): boolean {
    const isDone = (key: string): boolean => isNext(key) || this.#done.has(key);
    const state = `${name}: ${(this.#sharing.get(name) ?? []).filter(isDone).join()}`;
    const known = this.#held.get(state) ?? room(isDone);
    this.#held.set(state, known);
    return known;
  }

  /** Whether all that still takes of a room can. */
  #isEasy(name: string): boolean {
    const room = this.rooms.get(name);
    if (room === undefined) return true;
    if (typeof room === 'bigint') return (this.#left.get(name) ?? room) >= (this.#wanted.get(name) ?? 0n);
    const rest = new Set(
      this.#takers.flatMap(({ key, takes }) => (takes.some((each) => each.room === name) ? key : [])),
    );
    return this.#holds(name, room, (key) => rest.has(key));
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
        if (this.#effort.left <= 0) return false;
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

const sharingIn = (acts: readonly Sharing[], name: string): readonly string[] =>
  acts.flatMap(({ key, takes, gives }) =>
    [...takes, ...gives].some(({ room }) => room === name) ? key : [],
  );
