/** Chance with a fixed seed: the same every time. */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

const seed = 20_261_120;

export interface Chance {
  /** From 0 up to 1. */
  even(): number;
  /** Around 0, with the deviation 1. */
  normal(): number;
  /** One of them. */
  oneOf<T>(some: readonly T[]): T | undefined;
}

export function chanceOf(): Chance {
  const source = xoroshiro128plus(seed);
  const even = (): number => uniformFloat64(source);
  return {
    even,
    // Box and Muller's way.
    normal: () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even()),
    oneOf: (some) => some[Math.floor(even() * some.length)],
  };
}
