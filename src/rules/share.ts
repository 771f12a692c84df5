/** Shares, such as 0.1, as exact ratios: what is written in decimals is held in whole numbers. */
import { Decimal } from 'decimal.js';

/** `of` in so many: 0.125 is 125 in 1,000. */
export interface Ratio {
  readonly of: bigint;
  readonly in: bigint;
}

const known = new Map<number, Ratio>();

/** The ratio of a share as it is written; asked for once a volume or group, so it is kept. */
export function ratioOf(share: number): Ratio {
  const before = known.get(share);
  if (before !== undefined) return before;
  const decimal = new Decimal(share);
  const parts = 10n ** BigInt(decimal.decimalPlaces());
  const ratio = { of: BigInt(decimal.times(parts.toString()).toFixed(0)), in: parts };
  known.set(share, ratio);
  return ratio;
}
