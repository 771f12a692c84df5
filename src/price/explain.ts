/** How a price comes about, as arithmetic that a reader can redo. */
import type { Settings } from '../estate/settings.ts';
import { type Bytes, bytes, showSize, unitBytes } from '../estate/size.ts';
import { type CostLine, hoursAMonth } from './line.ts';
import type { PriceList, Tier } from './price-list.ts';

/** Such as `1.50 + 200 GiB × 0.25`, or `730 h × 0.031, running`. */
export function explainCost(line: CostLine, list: PriceList, settings: Settings, day: string): string {
  if (line.kind === 'server') {
    const serverType = list.serverTypes.get(line.serverType);
    const { power } = line.server;
    return `${hoursAMonth(settings, day)} h × ${serverType?.[power] ?? 0}, ${power}`;
  }
  const tier = list.tiers.get(line.tier);
  if (tier === undefined) return '';
  const terms = [...(tier.flat.isZero() ? [] : [tier.flat.toString()]), ...bandTerms(tier, line.billed)];
  const note = line.billed === line.volume.size ? '' : `, billed as ${showIn(tier, line.billed)}`;
  return `${terms.join(' + ')}${note}${line.detached ? ', unattached' : ''}`;
}

function bandTerms(tier: Tier, billed: Bytes): readonly string[] {
  let below = bytes(0n);
  return tier.bands.flatMap(({ upTo, rate }, index) => {
    const last = index === tier.bands.length - 1;
    const end = last || upTo === undefined || billed < upTo ? billed : upTo;
    if (end <= below) return [];
    const term = `${showIn(tier, bytes(end - below))} × ${rate}`;
    below = end;
    return [term];
  });
}

/** A size in the unit that the rate is for, so that the product can be redone. */
function showIn({ unitName }: Tier, size: Bytes): string {
  if (unitName === 'GiB-month')
    return `${quotient(size, unitBytes.GiB) ?? showSize(size)} GiB`.replace(/ ([A-Za-z]+) GiB$/, ' $1');
  return `${quotient(size, unitBytes.GB) ?? showSize(size)} GB`.replace(/ ([A-Za-z]+) GB$/, ' $1');
}

/** The exact quotient with at most three decimals, or nothing. */
function quotient(size: Bytes, unit: bigint): string | undefined {
  const thousandths = size * 1000n;
  if (thousandths % unit !== 0n) return undefined;
  const whole = thousandths / unit;
  const fraction = (whole % 1000n).toString().padStart(3, '0').replace(/0+$/, '');
  return `${whole / 1000n}${fraction === '' ? '' : `.${fraction}`}`;
}
