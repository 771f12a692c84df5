/** Money: exact decimals, never floating point; rounded only when shown. */
import { Decimal } from 'decimal.js';

/**
 * One hundred significant digits: every rate, size and band of a price list multiplies and adds exactly in
 * that (dividing by a power of two ends after as many decimals as the power), so a sum is the same in any order.
 */
const Exact = Decimal.clone({ precision: 100, rounding: Decimal.ROUND_HALF_UP });

declare const moneyBrand: unique symbol;

/** An exact amount in the estate's one currency. */
export type Money = Decimal & { readonly [moneyBrand]: 'money' };

/** Marks a decimal as an amount of money; a string must be a plain decimal such as `120.00`. */
export const money = (amount: Decimal | string | bigint | number): Money =>
  new Exact(typeof amount === 'bigint' ? amount.toString() : amount) as Money;

export const noMoney: Money = money('0');

export const addMoney = (a: Money, b: Money): Money => a.plus(b) as Money;

export const subtractMoney = (a: Money, b: Money): Money => a.minus(b) as Money;

export const timesMoney = (amount: Money, factor: Decimal | string | bigint | number): Money =>
  amount.times(typeof factor === 'bigint' ? factor.toString() : factor) as Money;

export const sumMoney = (amounts: Iterable<Money>): Money => {
  let total = noMoney;
  for (const amount of amounts) total = addMoney(total, amount);
  return total;
};

export const compareMoney = (a: Money, b: Money): number => a.comparedTo(b);

const minorUnits = new Map<string, number>();

/** How many decimals the currency's minor unit has: 2 for EUR, 0 for JPY, 3 for KWD (CLDR, after ISO 4217). */
export function minorUnit(currency: string): number {
  const known = minorUnits.get(currency);
  if (known !== undefined) return known;
  const digits =
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;
  minorUnits.set(currency, digits);
  return digits;
}

/** The amount rounded half up to the currency's minor unit, as a plain decimal string such as `130.00`. */
export const showMoney = (amount: Money, currency: string): string => {
  const digits = minorUnit(currency);
  const shown = amount.toFixed(digits);
  return /^-0(?:\.0*)?$/.test(shown) ? shown.slice(1) : shown;
};
