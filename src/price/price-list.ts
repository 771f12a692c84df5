/** Price lists: what a tier and a server type cost, from a date on. */

import {
  err,
  type Outcome,
  ok,
  outcomeOf,
  type PartialOutcome,
  type Place,
  type Problem,
} from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import type { Settings } from '../estate/settings.ts';
import { type Bytes, bytes, parseSize } from '../estate/size.ts';
import type { ReadDocument, Step } from '../read/document.ts';
import type { TierDeclaration } from '../read/generated/price-list.ts';
import { validate } from '../read/validate.ts';
import { type Money, money, noMoney } from './money.ts';

/** A stretch of capacity at one rate; the last may be open-ended. */
/** What a declaration written from a survey has where only a person can know, and no price list prices: the gate asks there. */
export const unknownTier = 'which-tier';

export interface Band {
  readonly upTo: Bytes | undefined;
  readonly rate: Money;
}

export interface Tier {
  readonly name: string;
  /** The bytes of the unit that rates are for: 2^30 or 10^9. */
  readonly unit: Bytes;
  readonly unitName: 'GiB-month' | 'GB-month';
  readonly bands: readonly Band[];
  readonly flat: Money;
  readonly minimumBilled: Bytes | undefined;
  readonly minimum: Bytes | undefined;
  readonly maximum: Bytes | undefined;
  readonly step: Bytes | undefined;
  readonly iopsPerGib: number | undefined;
  readonly iopsMaximum: number | undefined;
  readonly serversAVolume: number | undefined;
  readonly place: Place;
}

/** A server type's price by the hour. */
export interface ServerType {
  readonly name: string;
  readonly running: Money;
  readonly stopped: Money;
  readonly place: Place;
}

export interface PriceList {
  /** The first day on which it applies. */
  readonly from: string;
  readonly currency: string;
  readonly tiers: ReadonlyMap<string, Tier>;
  readonly serverTypes: ReadonlyMap<string, ServerType>;
  readonly place: Place;
}

const gib = bytes(1n << 30n);
const gb = bytes(10n ** 9n);

export function readPriceList(text: ReadDocument): PartialOutcome<PriceList> {
  const valid = validate('price-list', text);
  if (!valid.ok) return valid;
  const { document, mends } = valid.value;
  const { from, currency, tiers = {}, 'server-types': serverTypes = {} } = valid.value.value;
  const problems: Problem[] = [...valid.value.problems];
  const refuse = (path: readonly Step[], message: string, advice: string): void => {
    // What does not read is told of already; and what is said of one band goes by those beside it.
    if (mends.in(path[2] === 'bands' ? path.slice(0, 3) : path)) return;
    const place = document.placeOfValue(path);
    problems.push({ place, message, advice, excerpt: document.excerpt(place) });
  };
  if (!isDay(from))
    refuse(['from'], `${from} is not a day in the calendar`, 'Write a full date such as 2026-01-01.');
  const list: PriceList = {
    from: mends.at(['from']) ? '' : from,
    currency: mends.at(['currency']) ? '' : currency,
    tiers: new Map(
      Object.entries(tiers).map(([name, tier]) => [
        name,
        readTier(name, tier, document.placeIn(tiers, name), refuse),
      ]),
    ),
    serverTypes: new Map(
      Object.entries(serverTypes).map(([name, { running, stopped }]) => [
        name,
        {
          name,
          running: money(running),
          stopped: stopped === undefined ? noMoney : money(stopped),
          place: document.placeIn(serverTypes, name),
        },
      ]),
    ),
    place: document.placeOfKey([]),
  };
  return outcomeOf(list, problems);
}

function readTier(
  name: string,
  declared: TierDeclaration,
  place: Place,
  refuse: (path: readonly Step[], message: string, advice: string) => void,
): Tier {
  const size = (text: string | undefined, ...path: readonly Step[]): Bytes | undefined => {
    if (text === undefined) return undefined;
    const parsed = parseSize(text);
    if (typeof parsed === 'bigint') return parsed;
    refuse(['tiers', name, ...path], parsed.why, 'Write a whole number of bytes in a unit, such as 1 GiB.');
    return undefined;
  };
  const written = declared.bands ?? (declared.rate === undefined ? [] : [{ rate: declared.rate }]);
  const bands = written.map((band, index): Band => {
    const upTo = size(band['up-to'], 'bands', index, 'up-to');
    if (band['up-to'] === undefined && index < written.length - 1) {
      refuse(
        ['tiers', name, 'bands', index],
        `band ${index + 1} of the tier ${name} has no end`,
        'Only the last band may be without up-to.',
      );
    }
    return { upTo, rate: money(band.rate) };
  });
  for (const [index, band] of bands.entries()) {
    const previous = bands[index - 1]?.upTo;
    if (previous !== undefined && band.upTo !== undefined && band.upTo <= previous) {
      refuse(
        ['tiers', name, 'bands', index, 'up-to'],
        `band ${index + 1} of the tier ${name} ends before the one above it`,
        'List the bands from the smallest up-to to the largest.',
      );
    }
  }
  const step = size(declared.step, 'step');
  if (step === 0n)
    refuse(
      ['tiers', name, 'step'],
      'a step cannot be zero',
      'Write the step the provider sells in, such as 1 GiB.',
    );
  return {
    name,
    unit: declared.per === 'GiB-month' ? gib : gb,
    unitName: declared.per,
    bands,
    flat: declared.flat === undefined ? noMoney : money(declared.flat),
    minimumBilled: size(declared['minimum-billed'], 'minimum-billed'),
    minimum: size(declared.minimum, 'minimum'),
    maximum: size(declared.maximum, 'maximum'),
    step,
    iopsPerGib: declared['iops-per-gib'],
    iopsMaximum: declared['iops-maximum'],
    serversAVolume: declared['servers-a-volume'],
    place,
  };
}

/** Price lists that may stand beside each other: one currency, and one list a date. Newest first. */
export function gatherPriceLists(
  lists: readonly PriceList[],
  settings: Settings,
): Outcome<readonly PriceList[]> {
  const problems: Problem[] = [];
  const sorted = [...lists].sort((a, b) => (a.from < b.from ? 1 : a.from > b.from ? -1 : 0));
  for (const [index, list] of sorted.entries()) {
    if (list.currency !== settings.currency && list.currency !== '' && settings.currency !== '') {
      problems.push({
        place: list.place,
        message: `this price list is in ${list.currency}, and the estate's currency is ${settings.currency}`,
        advice: `Give the prices in ${settings.currency}; Ullage does not convert.`,
      });
    }
    const earlier = sorted[index - 1];
    if (earlier?.from === list.from && list.from !== '') {
      problems.push({
        place: list.place,
        message: `two price lists apply from ${list.from}: this one and ${earlier.place.file}`,
        advice: 'Keep one of them, or give the newer one a date of its own.',
      });
    }
  }
  return problems.length > 0 ? err(...problems) : ok(sorted);
}

/**
 * The list in force on a day: the newest that has begun.
 *
 * @param newestFirst as a revision has them
 * @param day an RFC 3339 full-date
 * @returns undefined before the first list begins
 *
 * @example
 * ```js
 * import { listInForce, readFiles } from 'ullage';
 *
 * const list = (from) => `from: ${from}\ncurrency: EUR\ntiers: { bulk: { rate: "0.045", per: GiB-month } }\n`;
 * const read = await readFiles({ 'prices/2026.yaml': list('2026-01-01'), 'prices/2027.yaml': list('2027-01-01') }, 'main');
 * if (read.ok) console.log(listInForce(read.value.priceLists, '2026-11-20').from); // 2026-01-01
 * ```
 */
export const listInForce = (newestFirst: readonly PriceList[], day: string): PriceList | undefined =>
  newestFirst.find(({ from }) => from <= day);
