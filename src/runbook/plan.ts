/** Acts and what each must wait for, put in order. */
import { reach } from '../base/reach.ts';
import type { Room, Sharing } from './room-search.ts';
import { overfull, roomWaits } from './room-waits.ts';

const turns = ['check', 'ahead', 'act', 'delete'] as const;

export interface Act<T> extends Sharing {
  readonly act: T;
  /** Which acts are begun first wherever nothing else is said: `ahead` are those that take nothing out of use. */
  readonly turn: (typeof turns)[number];
}

export interface Placed<T> {
  readonly key: string;
  readonly act: T;
  /** The keys of the acts that it waits for. */
  readonly after: readonly string[];
  /** Waits that could not be kept, because the other waits for this one. */
  readonly atOdds: readonly string[];
  /** A room that has no more for it in any order; of one that is not counted, what gives it more and comes only later. */
  readonly overfills: Overfilled | undefined;
}

interface Overfilled {
  readonly room: string;
  readonly late: readonly string[];
  /** Whether every order was tried. */
  readonly isSure: boolean;
}

/** Gathers acts by key. One that is wanted twice is there once; a wait for one that nobody wants is no wait. */
export class Plan<T> {
  readonly #acts = new Map<string, Act<T>>();
  readonly #waits = new Map<string, Set<string>>();
  readonly #preferred = new Map<string, readonly string[]>();

  has(key: string): boolean {
    return this.#acts.has(key);
  }

  /** @returns the key */
  want(
    key: string,
    act: T,
    after: readonly string[] = [],
    { turn = 'act', takes = [], gives = [] }: Partial<Omit<Act<T>, 'key' | 'act'>> = {},
  ): string {
    if (!this.#acts.has(key)) this.#acts.set(key, { key, act, turn, takes, gives });
    this.wait(key, after);
    return key;
  }

  /** Says that one act waits for others, whether they are wanted yet or not. */
  wait(key: string, after: readonly string[]): void {
    const waits = this.#waits.get(key);
    if (waits === undefined) this.#waits.set(key, new Set(after));
    else for (const each of after) waits.add(each);
  }

  *wanted(): Iterable<readonly [string, T]> {
    for (const [key, { act }] of this.#acts) yield [key, act];
  }

  /** What an act waits for, near or far, of what is wanted. */
  allBefore(key: string): ReadonlySet<string> {
    return reach((each) => this.#waitsOf(each).filter((other) => this.#acts.has(other)), key);
  }

  /** Says what one act waits for where that can be: what gives it room. It can do without where there is enough. */
  prefer(key: string, after: readonly string[]): void {
    this.#preferred.set(key, after);
  }

  /**
   * Depth first, so that what belongs together stays together and nothing is out of use longer than need be. The
   * order depends on the order of wanting alone, and on the room that there is.
   *
   * @param roomOf by its name; nothing for one that is not kept count of
   */
  inOrder(roomOf: (name: string) => Room | undefined = () => undefined): readonly Placed<T>[] {
    const rooms = new Map<string, Room>();
    for (const { takes } of this.#acts.values()) {
      for (const { room: name } of takes) {
        const room = roomOf(name);
        if (room !== undefined) rooms.set(name, room);
      }
    }
    const counted = new Map([...rooms].filter(([, room]) => typeof room === 'bigint'));
    const usual = this.#within(counted, (key) => [
      ...this.#waitsOf(key),
      ...(this.#preferred.get(key) ?? []),
    ]);
    const isCarriedOut = usual.every(
      ({ atOdds, overfills }) => atOdds.length === 0 && overfills === undefined,
    );
    return isCarriedOut ? usual : this.#within(rooms, (key) => this.#waitsOf(key));
  }

  #waitsOf(key: string): readonly string[] {
    return [...(this.#waits.get(key) ?? [])];
  }

  #within(
    rooms: ReadonlyMap<string, Room>,
    waitsOf: (key: string) => readonly string[],
  ): readonly Placed<T>[] {
    const plain = this.#depthFirst(waitsOf);
    const known = new Map(plain.map((each) => [each.key, each]));
    const waited = (key: string): readonly string[] => known.get(key)?.after ?? [];
    const { waits, fits } = roomWaits(this.#actsOf(plain), waited, rooms);
    const placed =
      waits.size === 0
        ? plain
        : this.#depthFirst((key) => [...waited(key), ...(waits.get(key) ?? [])]).map((each) => ({
            ...each,
            atOdds: known.get(each.key)?.atOdds ?? [],
          }));
    if (fits === 'yes') return placed;
    const over = overfull(this.#actsOf(placed), rooms);
    return placed.map((each, index) => {
      const room = over.get(each.key);
      if (room === undefined) return each;
      const gives = ({ key }: Placed<T>): boolean =>
        this.#acts.get(key)?.gives.some((share) => share.room === room) ?? false;
      const late = typeof rooms.get(room) === 'bigint' ? [] : placed.slice(index).filter(gives);
      return { ...each, overfills: { room, late: late.map(({ key }) => key), isSure: fits === 'no' } };
    });
  }

  #actsOf(placed: readonly Placed<T>[]): readonly Act<T>[] {
    return placed.flatMap(({ key }) => this.#acts.get(key) ?? []);
  }

  #depthFirst(waitsOf: (key: string) => readonly string[]): readonly Placed<T>[] {
    const placed = new Map<string, Placed<T>>();
    const begun = new Set<string>();
    const place = ({ key, act }: Act<T>): void => {
      if (begun.has(key)) return;
      begun.add(key);
      const waits = waitsOf(key).flatMap((each) => this.#acts.get(each) ?? []);
      for (const each of waits) place(each);
      const known = waits.map((each) => each.key);
      placed.set(key, {
        key,
        act,
        after: known.filter((each) => placed.has(each)),
        atOdds: known.filter((each) => !placed.has(each)),
        overfills: undefined,
      });
    };
    for (const turn of turns) {
      for (const act of this.#acts.values()) if (act.turn === turn) place(act);
    }
    return [...placed.values()];
  }
}
