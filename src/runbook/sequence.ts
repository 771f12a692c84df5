/** Which acts are done before which, by whomever and however many at once. */

import { reach } from '../base/reach.ts';
import type { Placed } from './plan.ts';

export class Sequence {
  readonly #before = new Map<string, readonly string[]>();
  readonly #after = new Map<string, string[]>();
  readonly #known = {
    before: new Map<string, ReadonlySet<string>>(),
    after: new Map<string, ReadonlySet<string>>(),
  };

  constructor(placed: readonly Pick<Placed<unknown>, 'key' | 'after'>[]) {
    for (const { key, after } of placed) {
      this.#before.set(key, after);
      for (const each of after) {
        const waiting = this.#after.get(each);
        if (waiting === undefined) this.#after.set(each, [key]);
        else waiting.push(key);
      }
    }
  }

  has(key: string): boolean {
    return this.#before.has(key);
  }

  /** Whether one waits for another, near or far. */
  waits(key: string, other: string): boolean {
    return nearAndFar(this.#after, other, this.#known.after).has(key);
  }

  /** Whether one is waited for by another, near or far. */
  isBefore(key: string, other: string): boolean {
    return nearAndFar(this.#before, other, this.#known.before).has(key);
  }
}

/** All that an act leads to by one link after another, without itself. */
function nearAndFar(
  links: ReadonlyMap<string, readonly string[]>,
  from: string,
  known: Map<string, ReadonlySet<string>>,
): ReadonlySet<string> {
  const found = known.get(from) ?? reach((key) => links.get(key) ?? [], from);
  known.set(from, found);
  return found;
}
