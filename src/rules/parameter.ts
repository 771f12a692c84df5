/**
 * Parameters as a check uses them: sizes in bytes, shares as exact ratios, and decimals wide enough that a size times
 * a parameter is exact. A limit holds at equality and breaks one byte above.
 */
import { Decimal } from 'decimal.js';
import { type Bytes, parseSize } from '../estate/size.ts';

export const ExactDecimal = Decimal.clone({ precision: 100 });

/** A size parameter. A pack is refused when it is read for any other text. */
export function sizeOf(text: string): Bytes {
  const size = parseSize(text);
  if (typeof size !== 'bigint') throw new Error(`${text} is no size: ${size.why}`);
  return size;
}

/** `of` in so many: 0.125 is 125 in 1,000. */
export interface Ratio {
  readonly of: bigint;
  readonly in: bigint;
}

/** The ratio of a share as it is written, in whole numbers. */
export function ratioOf(share: number): Ratio {
  const decimal = new Decimal(share);
  const parts = 10n ** BigInt(decimal.decimalPlaces());
  return { of: BigInt(decimal.times(parts.toString()).toFixed(0)), in: parts };
}
