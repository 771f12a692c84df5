/** The quick reader held against the exact one: on what it reads, both must say the same. */
import { isDeepStrictEqual } from 'node:util';
import { readExactly } from '../../src/read/exact.ts';
import { Lines } from '../../src/read/lines.ts';
import { readQuickly } from '../../src/read/quick.ts';
import type { Construction, PlainValue } from '../../src/read/value.ts';
import { pick, random, slipped } from '../fuzz/slips.ts';

/** What the two say of one text. */
type Comparison =
  | { readonly kind: 'left to the exact reader' }
  | { readonly kind: 'the same' }
  | { readonly kind: 'different'; readonly how: string };

export function compared(text: string): Comparison {
  const quick = readQuickly(text);
  if (quick === undefined) return { kind: 'left to the exact reader' };
  const exact = readExactly(text, new Lines(text, 'a.yaml'));
  if (!exact.ok) {
    return { kind: 'different', how: `read, and refused: ${exact.problems.map(({ message }) => message)}` };
  }
  const [one, other] = [partsOf(quick), partsOf(exact.value)];
  return isDeepStrictEqual(one, other)
    ? { kind: 'the same' }
    : { kind: 'different', how: `${JSON.stringify(one)} and ${JSON.stringify(other)}` };
}

/** Every part of a value in the order of its keys, and where it begins. */
function partsOf({ value, offsets }: Construction): readonly unknown[] {
  const walk = (part: PlainValue): readonly unknown[] => {
    if (typeof part !== 'object' || part === null) return [part];
    const begin = offsets.get(part);
    return Object.entries(part).flatMap(([key, below]) => [
      Array.isArray(part) ? 'list' : 'mapping',
      key,
      begin?.[key],
      ...walk(below),
    ]);
  };
  return walk(value);
}

export interface Differences {
  /** Texts that both read alike. */
  readonly same: number;
  readonly different: readonly string[];
}

/**
 * Compares the two readers on texts that come of the given ones by slips of the hand.
 *
 * @param texts what estates hold; pieces of them are taken, so that a slip meets a short text
 * @param odd further texts, taken whole
 */
export function differences(
  texts: readonly string[],
  odd: readonly string[],
  count: number,
  seed: number,
): Differences {
  const below = random(seed);
  const all = [...texts, ...odd];
  const piece = (): string => {
    const lines = pick(texts, below).split('\n');
    const from = below(lines.length);
    return lines.slice(from, from + 1 + below(30)).join('\n');
  };
  const different: string[] = [];
  let same = 0;
  for (let made = 0; made < count; made++) {
    const text = slipped(below(3) > 0 ? piece() : pick(all, below), all, below);
    const comparison = compared(text);
    if (comparison.kind === 'the same') same++;
    else if (comparison.kind === 'different') different.push(`${JSON.stringify(text)}: ${comparison.how}`);
  }
  return { same, different };
}
