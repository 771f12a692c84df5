/** Amounts as people read them. */
import type { Room } from '../capacity/headroom.ts';
import { measured } from '../capacity/measure.ts';
import { type Money, minorUnit, money, noMoney, showMoney, subtractMoney } from '../price/money.ts';

/** `130.00 EUR` */
export const showAmount = (amount: Money, currency: string): string =>
  `${showMoney(amount, currency)} ${currency}`;

/** The least amount that can be shown: 0.01 EUR, 1 JPY. */
const leastShown = (currency: string): string => showAmount(money(`1e-${minorUnit(currency)}`), currency);

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

/** What is left of a limit, or by how much it is broken. A limit holds at equality. */
export function showLeft(limit: Money, spent: Money, currency: string): string {
  const left = subtractMoney(limit, spent);
  if (left.isZero()) return 'nothing left';
  const over = left.lt(0);
  const amount = over ? subtractMoney(noMoney, left) : left;
  const shown = isUnseen(amount, currency) ? `under ${leastShown(currency)}` : showAmount(amount, currency);
  return over ? `over by ${shown}` : `${shown} left`;
}

/** So much of what a room is measured in: `1.5 TiB`, `3 volumes`, `12 slots`; below nothing, `20 GiB short`. */
export const showMeasure = (measure: Room['measure'], amount: bigint): string =>
  amount < 0n ? `${measured(measure, -amount)} short` : measured(measure, amount);

/** The free share of a room in per cent, cut down, so that 99.99 % is not called all: `9.5 %`. Nothing of nothing is none. */
export function showShare({ capacity, free }: Room): string {
  if (capacity === 0n) return 'none';
  const tenths = (free * 1000n) / capacity;
  const whole = tenths / 10n;
  const tenth = tenths < 0n ? -(tenths % 10n) : tenths % 10n;
  return `${tenths < 0n && whole === 0n ? '-' : ''}${whole}${tenth === 0n ? '' : `.${tenth}`} %`;
}
