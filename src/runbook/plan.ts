/** Acts and what each must wait for, put in order. */

const turns = ['check', 'ahead', 'act', 'delete'] as const;

export interface Act<T> {
  readonly key: string;
  readonly act: T;
  /** Which acts are begun first wherever nothing else is said: `ahead` are those that take nothing out of use. */
  readonly turn: (typeof turns)[number];
  /** Where one place is taken, or given back, with it: only as many can be taken there as are free. */
  readonly takes?: string | undefined;
  readonly gives?: string | undefined;
}

export interface Placed<T> {
  readonly key: string;
  readonly act: T;
  /** The keys of the acts that it waits for. */
  readonly after: readonly string[];
  /** Waits that could not be kept, because the other waits for this one. */
  readonly atOdds: readonly string[];
  /** Where no place was free for it, and none could be given back before. */
  readonly noPlaceAt: string | undefined;
}

/** One room: the places left, and who takes and gives them. */
interface Room<T> {
  left: number;
  readonly isTight: boolean;
  readonly takers: Set<Act<T>>;
  readonly givers: readonly Act<T>[];
  readonly given: string[];
}

/** Gathers acts by key. One that is wanted twice is there once; a wait for one that nobody wants is no wait. */
export class Plan<T> {
  readonly #acts = new Map<string, Act<T>>();
  readonly #waits = new Map<string, Set<string>>();

  has(key: string): boolean {
    return this.#acts.has(key);
  }

  /** @returns the key */
  want(
    key: string,
    act: T,
    after: readonly string[] = [],
    { turn = 'act', takes, gives }: Partial<Pick<Act<T>, 'turn' | 'takes' | 'gives'>> = {},
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

  /**
   * Depth first, so that what belongs together stays together and nothing is out of use longer than need be. The
   * order depends on the order of wanting alone, and on the places that are free.
   *
   * @param free by where they are; nothing for where they are not counted
   */
  inOrder(free: (room: string) => number | undefined = () => undefined): readonly Placed<T>[] {
    const placed = new Map<string, Placed<T>>();
    const begun = new Set<string>();
    const rooms = this.#rooms(free);
    const waitsOf = (key: string) =>
      [...(this.#waits.get(key) ?? [])].flatMap((each) => this.#acts.get(each) ?? []);
    /** Whether nothing that it waits for, near or far, is begun and not done. */
    const canBePlaced = (act: Act<T>): boolean => {
      const seen = new Set<string>();
      const left = [act];
      for (let next = left.pop(); next !== undefined; next = left.pop()) {
        if (seen.has(next.key) || placed.has(next.key)) continue;
        if (begun.has(next.key)) return false;
        seen.add(next.key);
        left.push(...waitsOf(next.key));
      }
      return true;
    };
    /** Gives places back until one is left for it and for all that cannot do without. */
    const makePlace = (act: Act<T>, room: Room<T>): void => {
      for (const giver of room.givers) {
        if (room.left >= room.takers.size) return;
        if (!begun.has(giver.key) && canBePlaced(giver)) place(giver);
      }
      room.takers.delete(act);
      room.left -= 1;
    };
    const place = (wanted: Act<T>): void => {
      const { key, act, takes, gives } = wanted;
      if (begun.has(key)) return;
      begun.add(key);
      const waits = waitsOf(key);
      for (const each of waits) place(each);
      const room = rooms.get(takes ?? '');
      if (room !== undefined) makePlace(wanted, room);
      const known = waits.map((each) => each.key);
      const given = room?.isTight === true ? room.given.filter((each) => !known.includes(each)) : [];
      placed.set(key, {
        key,
        act,
        after: [...known.filter((each) => placed.has(each)), ...given],
        atOdds: known.filter((each) => !placed.has(each)),
        noPlaceAt: room !== undefined && room.left < 0 ? takes : undefined,
      });
      const back = rooms.get(gives ?? '');
      if (back === undefined) return;
      back.left += 1;
      back.given.push(key);
    };
    for (const turn of turns) {
      for (const act of this.#acts.values()) if (act.turn === turn) place(act);
    }
    return [...placed.values()];
  }

  #rooms(free: (room: string) => number | undefined): ReadonlyMap<string, Room<T>> {
    const acts = [...this.#acts.values()];
    const rooms = new Map<string, Room<T>>();
    for (const name of new Set(acts.flatMap(({ takes }) => takes ?? []))) {
      const left = free(name);
      if (left === undefined) continue;
      const takers = new Set(acts.filter(({ takes }) => takes === name));
      const givers = acts.filter(({ gives }) => gives === name);
      rooms.set(name, { left, isTight: takers.size > left, takers, givers, given: [] });
    }
    return rooms;
  }
}
