/** Acts and what each must wait for, put in order. */

const turns = ['check', 'ahead', 'act', 'delete'] as const;

export interface Act<T> {
  readonly key: string;
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
}

/** Gathers acts by key. One that is wanted twice is there once; a wait for one that nobody wants is no wait. */
export class Plan<T> {
  readonly #acts = new Map<string, Act<T>>();
  readonly #waits = new Map<string, Set<string>>();

  has(key: string): boolean {
    return this.#acts.has(key);
  }

  /** @returns the key */
  want(key: string, act: T, after: readonly string[] = [], turn: Act<T>['turn'] = 'act'): string {
    if (!this.#acts.has(key)) this.#acts.set(key, { key, act, turn });
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
   * order depends on the order of wanting alone.
   */
  inOrder(): readonly Placed<T>[] {
    const placed = new Map<string, Placed<T>>();
    const begun = new Set<string>();
    const place = ({ key, act }: Act<T>): void => {
      if (begun.has(key)) return;
      begun.add(key);
      const waits = [...(this.#waits.get(key) ?? [])].flatMap((each) => this.#acts.get(each) ?? []);
      for (const each of waits) place(each);
      placed.set(key, {
        key,
        act,
        after: waits.filter((each) => placed.has(each.key)).map((each) => each.key),
        atOdds: waits.filter((each) => !placed.has(each.key)).map((each) => each.key),
      });
    };
    for (const turn of turns) {
      for (const act of this.#acts.values()) if (act.turn === turn) place(act);
    }
    return [...placed.values()];
  }
}
