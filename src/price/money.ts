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

/**
 * Marks a decimal as an amount of money; its currency is said beside it.
 *
 * @param amount a string must be a plain decimal such as `120.00`
 * @throws where a string is no number
 *
 * @example
 * ```js
 * import { money, showMoney } from 'ullage';
 *
 * console.log(showMoney(money('0.045'), 'EUR')); // 0.05
 * ```
 */
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

/**
 * The decimals of each currency's minor unit, where they are not two: ISO 4217, list one of 2024-06-25. CLDR's
 * figures, which the runtime would give, are those of everyday cash (none for HUF or IDR) and differ from one
 * version of it to the next.
 */
const minorUnits: ReadonlyMap<string, number> = new Map([
  ...'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'.split(' ').map(decimals(0)),
  ...'BHD IQD JOD KWD LYD OMR TND'.split(' ').map(decimals(3)),
  ...'CLF UYW'.split(' ').map(decimals(4)),
]);

function decimals(count: number): (code: string) => readonly [string, number] {
  return (code) => [code, count];
}

/** How many decimals the currency's minor unit has: 2 for EUR, 0 for JPY, 3 for KWD (ISO 4217). */
export const minorUnit = (currency: string): number => minorUnits.get(currency) ?? 2;

/**
 * The amount rounded half up to the currency's minor unit, as a plain decimal string such as `130.00`.
 *
 * @param currency a code of ISO 4217, whose minor units these are; one that it does not have is shown with two decimals
 *
 * @example
 * ```js
 * import { money, showMoney } from 'ullage';
 *
 * console.log(showMoney(money('1234.5'), 'EUR'), showMoney(money('1234.5'), 'JPY')); // 1234.50 1235
 * ```
 */
export const showMoney = (amount: Money, currency: string): string => {
  const digits = minorUnit(currency);
  const shown = amount.toFixed(digits);
  return /^-0(?:\.0*)?$/.test(shown) ? shown.slice(1) : shown;
};
