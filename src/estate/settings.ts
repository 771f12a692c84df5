/** `ullage.yaml`, typed. */
import type { ReadDocument } from '../read/document.ts';
import type { Outcome, Place } from '../read/problem.ts';
import { found, refused } from '../read/problem.ts';
import { validate } from '../read/validate.ts';
import { type Bytes, parseSize } from './size.ts';

export const settingsFile = 'ullage.yaml';

export interface Paths {
  readonly storage: string;
  readonly prices: string;
  readonly policies: string;
  readonly waivers: string;
  readonly readings: string;
}

export interface Site {
  readonly name: string;
  readonly quota: { readonly volumes: number | undefined; readonly size: Bytes | undefined };
  readonly attachmentSlots: number | undefined;
  readonly place: Place;
}

export interface Settings {
  readonly currency: string;
  readonly month: '730 h' | 'calendar';
  readonly paths: Paths;
  /** Empty where the settings list no sites; then any site may be named. */
  readonly sites: ReadonlyMap<string, Site>;
  readonly place: Place;
}

export const usualPaths: Paths = {
  storage: 'storage',
  prices: 'prices',
  policies: 'policies',
  waivers: 'waivers',
  readings: 'readings',
};

export function readSettings(document: ReadDocument): Outcome<Settings> {
  const valid = validate('settings', document);
  if (!valid.ok) return valid;
  const { currency, month = '730 h', paths = {}, sites = {} } = valid.value;
  if (!isCurrency(currency)) {
    const place = document.placeOfValue(['currency']);
    return refused({
      place,
      message: `${currency} is not a currency in use`,
      advice: 'Write an ISO 4217 code such as EUR.',
      excerpt: document.excerpt(place),
    });
  }
  return found({
    currency,
    month,
    paths: { ...usualPaths, ...paths },
    sites: new Map(
      Object.entries(sites).map(([name, site]) => {
        const size = site.quota?.size === undefined ? undefined : parseSize(site.quota.size);
        return [
          name,
          {
            name,
            quota: { volumes: site.quota?.volumes, size: typeof size === 'bigint' ? size : undefined },
            attachmentSlots: site['attachment-slots'],
            place: document.placeIn(sites, name),
          },
        ];
      }),
    ),
    place: document.placeOfKey([]),
  });
}

const currencies: ReadonlySet<string> = new Set(Intl.supportedValuesOf('currency'));

/** Whether CLDR, after ISO 4217, knows the code. */
export const isCurrency = (code: string): boolean => currencies.has(code);
