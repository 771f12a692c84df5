/** Amounts as people read them. */
import type { Room } from '../../capacity/headroom.ts';
import { measured } from '../../capacity/measure.ts';
import { type Money, money, showMoney } from '../../price/money.ts';
import { leastShown, leftOf } from '../../price/shown.ts';

/** `130.00 EUR` */
export const showAmount = (amount: Money, currency: string): string =>
  `${showMoney(amount, currency)} ${currency}`;

/** Whether there is an amount that its currency cannot show. */
const isUnseen = (amount: Money, currency: string): boolean =>
  !amount.isZero() && money(showMoney(amount, currency)).isZero();

/** A difference with its sign: `+30.00 EUR`, `-12.50 EUR`, `0.00 EUR`. What rounds to nothing is not called nothing. */
export function showDifference(difference: Money, currency: string): string {
  if (isUnseen(difference, currency)) {
    return `under ${leastShown(currency)} ${difference.gt(0) ? 'more' : 'less'}`;
  }
  return `${difference.gt(0) ? '+' : ''}${showAmount(difference, currency)}`;
}

/** What a limit leaves, or by how much it is exceeded. A limit holds at equality. */
export function showRemaining(limit: Money, spent: Money, currency: string): string {
  const left = leftOf(limit, spent, currency);
  if (left.kind === 'none') return 'none';
  const shown =
    left.shown === 'under the least' ? `under ${leastShown(currency)}` : showAmount(left.shown, currency);
  return left.kind === 'over' ? `over by ${shown}` : shown;
}

/** So much of what a layer is measured in: `1.5 TiB`, `3 volumes`, `12 slots`; below nothing, `20 GiB short`. */
export const showMeasure = (measure: Room['measure'], amount: bigint): string =>
  amount < 0n ? `${measured(measure, -amount)} short` : measured(measure, amount);

/** Per cent with one decimal, where there is one. */
function perCent(tenths: bigint): string {
  const whole = tenths / 10n;
  const tenth = tenths < 0n ? -(tenths % 10n) : tenths % 10n;
  return `${tenths < 0n && whole === 0n ? '-' : ''}${whole}${tenth === 0n ? '' : `.${tenth}`} %`;
}

/** The free share in per cent, cut down, so that 99.99 % is not called all: `9.5 %`. Nothing of nothing is none. */
export const showFreeShare = ({ capacity, free }: Room): string =>
  capacity === 0n ? 'none' : perCent((free * 1000n) / capacity);

/** The used share, the rest of the free one: `90.5 %`. A little is not called nothing, nor nearly all called all. */
export function showUsedShare({ capacity, taken, free }: Room): string {
  if (capacity === 0n) return 'none';
  const tenths = 1000n - (free * 1000n) / capacity;
  return perCent(tenths === 1000n && free > 0n ? 999n : tenths === 0n && taken > 0n ? 1n : tenths);
}
