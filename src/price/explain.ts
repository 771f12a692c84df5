/** How a price comes about, as arithmetic that a reader can redo. */
import type { Settings } from '../estate/settings.ts';
import { type Bytes, bytes } from '../estate/size.ts';
import { type CostLine, hoursAMonth } from './line.ts';
import { addMoney, type Money, money, noMoney, timesMoney } from './money.ts';
import type { PriceList, Tier } from './price-list.ts';
import { asShown } from './shown.ts';

/**
 * Such as `1.50 + 200 GiB × 0.25`, or `730 h × 0.031, running`. A quantity is in the unit of its rate, with as many
 * digits as make the result come out as it is shown; one that is cut is marked with `≈`.
 */
export function explainCost(line: CostLine, list: PriceList, settings: Settings, day: string): string {
  if (line.kind === 'server') {
    const serverType = list.serverTypes.get(line.serverType);
    const { power } = line.server;
    return `${hoursAMonth(settings, day)} h × ${plain(serverType?.[power] ?? noMoney)}, ${power}`;
  }
  const tier = list.tiers.get(line.tier);
  if (tier === undefined) return '';
  const bands = bandsOf(tier, line.billed);
  const digits = digitsFor(tier, bands, asShown(line.monthly, list.currency), list.currency);
  const terms = [
    ...(tier.flat.isZero() ? [] : [plain(tier.flat)]),
    ...bands.map(({ size, rate }) => `${quantity(size, tier, digits).text} × ${plain(rate)}`),
  ];
  const note =
    line.billed === line.volume.size ? '' : `, billed as ${quantity(line.billed, tier, digits).text}`;
  return `${terms.join(' + ')}${note}${line.detached ? ', unattached' : ''}`;
}

/** A plain decimal, however small. */
const plain = (amount: Money): string => amount.toFixed();

interface BandPart {
  readonly size: Bytes;
  readonly rate: Money;
}

function bandsOf(tier: Tier, billed: Bytes): readonly BandPart[] {
  let below = bytes(0n);
  return tier.bands.flatMap(({ upTo, rate }, index) => {
    const last = index === tier.bands.length - 1;
    const end = last || upTo === undefined || billed < upTo ? billed : upTo;
    if (end <= below) return [];
    const size = bytes(end - below);
    below = end;
    return [{ size, rate }];
  });
}

/** A byte is so many decimals of a GiB; with that many every quantity is exact. */
const mostDigits = 30;

/** Up to this many digits a quantity is written out, whether or not the result wants them. */
const usualDigits = 3;

function digitsFor(tier: Tier, bands: readonly BandPart[], shown: Money, currency: string): number {
  const exactly = bands.every(({ size }) => quantity(size, tier, usualDigits).exact);
  for (let digits = exactly ? usualDigits : 0; digits < mostDigits; digits++) {
    const result = bands.reduce(
      (sum, { size, rate }) => addMoney(sum, timesMoney(rate, quantity(size, tier, digits).number)),
      tier.flat,
    );
    if (asShown(result, currency).eq(shown)) return digits;
  }
  return mostDigits;
}

/** A size in the unit that the rate is for. */
function quantity(
  size: Bytes,
  { unit, unitName }: Tier,
  digits: number,
): { readonly text: string; readonly number: Money; readonly exact: boolean } {
  const number = money(money(size).div(unit.toString()).toDecimalPlaces(digits));
  const exact = number.times(unit.toString()).eq(size.toString());
  return {
    text: `${exact ? '' : '≈'}${plain(number)} ${unitName === 'GiB-month' ? 'GiB' : 'GB'}`,
    number,
    exact,
  };
}
