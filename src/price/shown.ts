/** Amounts as they are shown: whether what stands beside each other on a screen can be added up there. */
import { type Money, minorUnit, money, noMoney, showMoney, subtractMoney, sumMoney } from './money.ts';

/** An amount as its currency shows it. */
export const asShown = (amount: Money, currency: string): Money => money(showMoney(amount, currency));

/** Whether parts, each as it is shown, come to their sum as it is shown. */
export const addsUp = (parts: readonly Money[], sum: Money, currency: string): boolean =>
  sumMoney(parts.map((part) => asShown(part, currency))).eq(asShown(sum, currency));

/** Said once where shown amounts do not add up as they stand. */
export const roundedNote = (currency: string): string =>
  `Each amount is rounded to ${showMoney(money(`1e-${minorUnit(currency)}`), currency)} ${currency} by itself, so sums may differ from their parts in the last digit.`;

/** What is left of a limit, or what is over it. */
export type Left =
  | { readonly kind: 'none' }
  /** `shown` is what the limit as shown and what is spent as shown leave between them. */
  | { readonly kind: 'left' | 'over'; readonly shown: Money }
  /** So little that both are shown alike. */
  | { readonly kind: 'left' | 'over'; readonly shown: 'under the least' };

/** So that a limit, what is spent of it and what is left of it never contradict one another where they are shown. */
export function leftOf(limit: Money, spent: Money, currency: string): Left {
  const exact = subtractMoney(limit, spent);
  if (exact.isZero()) return { kind: 'none' };
  const kind = exact.lt(0) ? 'over' : 'left';
  const shown = subtractMoney(asShown(limit, currency), asShown(spent, currency));
  const amount = shown.lt(0) ? subtractMoney(noMoney, shown) : shown;
  return { kind, shown: amount.isZero() ? 'under the least' : amount };
}

/** The least amount that can be shown: 0.01 EUR, 1 JPY. */
export const leastShown = (currency: string): string =>
  `${showMoney(money(`1e-${minorUnit(currency)}`), currency)} ${currency}`;
