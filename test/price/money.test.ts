import currencyCodes from 'currency-codes';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMoney, minorUnit, money, showMoney, subtractMoney, sumMoney } from '../../src/price/money.ts';

/** Bullion, fund units and the codes for tests and for none: ISO 4217 gives no minor unit, the library writes 0. */
const withoutMinorUnit = 'XAG XAU XBA XBB XBC XBD XDR XPD XPT XSU XTS XUA XXX'.split(' ');

describe('the minor unit of a currency', () => {
  /** Source: ISO 4217 list one, published 2024-06-25, as the npm package currency-codes 2.2.0 carries it. */
  it('is that of ISO 4217, for every currency in it', () => {
    const codes = currencyCodes.codes().filter((code) => !withoutMinorUnit.includes(code));
    expect(codes.length).toBeGreaterThan(150);
    expect(codes.filter((code) => minorUnit(code) !== currencyCodes.code(code)?.digits)).toEqual([]);
  });

  /**
   * Source: CLDR, through the runtime's `Intl`. It gives the digits of everyday cash, which are fewer for some: a bill
   * in forints has its fillér on paper, and ISO 4217 is what invoices go by. Where the two differ CLDR says none.
   */
  it('differs from the cash digits of CLDR only where CLDR leaves the minor unit out', () => {
    const cash = (code: string): number | undefined =>
      new Intl.NumberFormat('en', { style: 'currency', currency: code }).resolvedOptions()
        .maximumFractionDigits;
    const differing = currencyCodes
      .codes()
      .filter((code) => !withoutMinorUnit.includes(code) && cash(code) !== minorUnit(code));
    expect(differing.filter((code) => cash(code) !== 0)).toEqual([]);
    expect(
      ['EUR', 'JPY', 'KWD', 'CLF', 'GBP', 'CHF'].filter((code) => cash(code) !== minorUnit(code)),
    ).toEqual([]);
  });
});

describe('an amount is rounded only when it is shown', () => {
  it.each([
    ['130', 'EUR', '130.00'],
    ['0.005', 'EUR', '0.01'],
    ['0.0049999999999999999999', 'EUR', '0.00'],
    ['1.5', 'JPY', '2'],
    ['1.0005', 'KWD', '1.001'],
    ['-0.005', 'EUR', '-0.01'],
    ['-0.0049', 'EUR', '0.00'],
    ['0.1', 'CLF', '0.1000'],
    ['1000000000000000000000', 'EUR', '1000000000000000000000.00'],
  ])('%s %s is shown as %s', (amount, currency, shown) => {
    expect(showMoney(money(amount), currency)).toBe(shown);
  });

  const amounts = fc
    .tuple(fc.bigInt(-(10n ** 15n), 10n ** 15n), fc.nat({ max: 30 }))
    .map(([digits, decimals]) => money(`${digits}e-${decimals}`));

  it('sums are the same in any order, and what is added can be taken away without a trace', () => {
    fc.assert(
      fc.property(fc.array(amounts), amounts, (list, one) => {
        const total = sumMoney(list);
        expect(sumMoney([...list].reverse()).eq(total)).toBe(true);
        expect(subtractMoney(addMoney(total, one), one).eq(total)).toBe(true);
      }),
    );
  });
});
