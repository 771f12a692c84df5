/** Sums of cost lines by a key, and how they follow from earlier ones when some lines change. */

import { type CostLine, nameOf } from './line.ts';
import { addMoney, type Money, noMoney, timesMoney } from './money.ts';

/** What a line counts under; `undefined` where it does not count. */
export type KeyOf = (line: CostLine) => string | undefined;

/** One way of summing. Two of one name have the same `keyOf`. */
export interface Summing {
  readonly name: string;
  readonly keyOf: KeyOf;
}

/** A sum of lines, and the dearest among them. */
export interface Sum {
  readonly monthly: Money;
  readonly dearest: CostLine;
}

export type Sums = ReadonlyMap<string, Sum>;

/** One line before and after; absent from one where it came or went. */
export interface LineEdit {
  readonly was: CostLine | undefined;
  readonly now: CostLine | undefined;
}

/**
 * Adds up amounts by counting how often each comes. Lines of one tier and size share one amount, so that an estate of
 * many volumes takes few exact additions.
 */
export class Tally {
  readonly #times = new Map<Money, number>();

  count(amount: Money, sign: 1 | -1): void {
    this.#times.set(amount, (this.#times.get(amount) ?? 0) + sign);
  }

  addedTo(start: Money): Money {
    let total = start;
    for (const [amount, times] of this.#times)
      if (times !== 0) total = addMoney(total, timesMoney(amount, times));
    return total;
  }
}

/**
 * Sums after some lines have come, gone or changed.
 *
 * @param lines all there are now; walked once, where the dearest of a sum left it
 */
export function editedSums(
  before: Sums,
  edits: Iterable<LineEdit>,
  keyOf: KeyOf,
  lines: Iterable<CostLine>,
): Sums {
  const sums = new Map<string, { readonly tally: Tally; dearest: CostLine | undefined }>();
  const of = (key: string) => {
    const known = sums.get(key);
    if (known !== undefined) return known;
    const sum = { tally: new Tally(), dearest: before.get(key)?.dearest };
    sums.set(key, sum);
    return sum;
  };
  const lost = new Map<string, CostLine>();
  for (const { was, now } of edits) {
    const left = was === undefined ? undefined : keyOf(was);
    const came = now === undefined ? undefined : keyOf(now);
    if (was !== undefined && left !== undefined) {
      const sum = of(left);
      sum.tally.count(was.monthly, -1);
      if (before.get(left)?.dearest === was) lost.set(left, was);
    }
    if (now !== undefined && came !== undefined) {
      const sum = of(came);
      sum.tally.count(now.monthly, 1);
      if (sum.dearest === undefined || isDearer(now, sum.dearest)) sum.dearest = now;
    }
  }
  // Where the dearest itself left, or was priced anew, and what came is cheaper, only a look at all lines tells the
  // next.
  const came = new Map<string, CostLine>();
  if (lost.size > 0) {
    for (const { now } of edits) {
      const key = now === undefined ? undefined : keyOf(now);
      if (now === undefined || key === undefined || !lost.has(key)) continue;
      const dearest = came.get(key);
      if (dearest === undefined || isDearer(now, dearest)) came.set(key, now);
    }
  }
  for (const [key, was] of lost) {
    const candidate = came.get(key);
    const surpassed = candidate !== undefined && !isDearer(was, candidate);
    of(key).dearest = surpassed ? candidate : undefined;
    if (surpassed) lost.delete(key);
  }
  if (lost.size > 0) {
    for (const line of lines) {
      const key = keyOf(line);
      if (key === undefined || !lost.has(key)) continue;
      const sum = of(key);
      if (sum.dearest === undefined || isDearer(line, sum.dearest)) sum.dearest = line;
    }
  }
  const next = new Map(before);
  for (const [key, { tally, dearest }] of sums) {
    if (dearest === undefined) next.delete(key);
    else next.set(key, { monthly: tally.addedTo(before.get(key)?.monthly ?? noMoney), dearest });
  }
  return next;
}

/** Of two that cost the same the first by name counts as the dearer, so that the order of files does not matter. */
const isDearer = (a: CostLine, b: CostLine): boolean => {
  // Lines of one tier and size share one amount, and comparing names costs less than comparing decimals.
  const order = a.monthly === b.monthly ? 0 : a.monthly.comparedTo(b.monthly);
  return order > 0 || (order === 0 && nameOf(a) < nameOf(b));
};
