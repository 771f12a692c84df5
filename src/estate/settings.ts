/** `ullage.yaml`, typed. */

import { outcomeOf, type PartialOutcome, type Place, type Problem } from '../base/problem.ts';
import type { ReadDocument, Step } from '../read/document.ts';
import type { ProviderListSettings } from '../read/generated/settings.ts';
import { validate } from '../read/validate.ts';
import { type Bytes, parseSize } from './size.ts';

export const settingsFile = 'ullage.yaml';

export interface Paths {
  readonly storage: string;
  readonly prices: string;
  readonly policies: string;
  readonly waivers: string;
  readonly readings: string;
  readonly surveys: string;
  readonly procedures: string;
}

export interface Site {
  readonly name: string;
  readonly quota: { readonly volumes: number | undefined; readonly size: Bytes | undefined };
  readonly attachmentSlots: number | undefined;
  readonly place: Place;
}

/** A rule pack that is kept in another repository, as the settings hold it. */
export interface ListedPack {
  readonly name: string;
  readonly repository: string;
  readonly commit: string;
  readonly path: string;
  /** Of the file's content, in lower-case hexadecimal. */
  readonly sha256: string;
  readonly place: Place;
}

export interface Settings {
  /** Empty where none could be read. */
  readonly currency: string;
  readonly month: '730 h' | 'calendar';
  readonly paths: Paths;
  /** Empty where the settings list no sites; then any site may be named, and none need be. */
  readonly sites: ReadonlyMap<string, Site>;
  /** Empty where the settings list no teams; then any team may be named, and none need be. */
  readonly teams: readonly string[];
  /** Where it lists them; undefined where it does not. */
  readonly listed: { readonly sites: Place | undefined; readonly teams: Place | undefined };
  /** Rule packs that are kept in other repositories, by name; undefined where one is listed, or all, and does not read. */
  readonly packs: ReadonlyMap<string, ListedPack | undefined> | undefined;
  /** Which field of the provider's list is which; undefined where the settings do not say. @internal */
  readonly providerList: ProviderListSettings | undefined;
  /** Where they say at which pointer its rows are. */
  readonly providerRows: Readonly<Record<'volumes' | 'servers', Place>>;
  readonly place: Place;
}

export const usualPaths: Paths = {
  storage: 'storage',
  prices: 'prices',
  policies: 'policies',
  waivers: 'waivers',
  readings: 'readings',
  surveys: 'surveys',
  procedures: 'procedures',
};

const top: Place = { file: settingsFile, line: 1, column: 1 };

/** Settings that stand in where a revision has none: the usual places, no sites, no currency of its own. */
export const bareSettings: Settings = {
  currency: '',
  month: '730 h',
  paths: usualPaths,
  sites: new Map(),
  teams: [],
  listed: { sites: undefined, teams: undefined },
  packs: new Map(),
  providerList: undefined,
  providerRows: { volumes: top, servers: top },
  place: top,
};

export function readSettings(text: ReadDocument): PartialOutcome<Settings> {
  const valid = validate('settings', text);
  if (!valid.ok) return valid;
  const { document, mends } = valid.value;
  const { currency, month = '730 h', paths = {}, sites = {}, teams = [], packs = {} } = valid.value.value;
  const { 'provider-list': providerList } = valid.value.value;
  const problems: Problem[] = [...valid.value.problems];
  const refuse = (path: readonly Step[], message: string, advice: string): void => {
    const place = document.placeOfValue(path);
    problems.push({ place, message, advice, excerpt: document.excerpt(place) });
  };
  const isRead = !mends.at(['currency']);
  if (isRead && !isCurrency(currency)) {
    refuse(['currency'], `${currency} is not a currency in use`, 'Write an ISO 4217 code such as EUR.');
  }
  const listed = Object.keys(packs).length;
  if (listed > mostPacks) {
    refuse(
      ['packs'],
      `${listed} packs of other repositories are listed, and ${mostPacks} is the most`,
      'Put several of them into one file.',
    );
  }
  const quotaSize = (name: string, text: string | undefined): Bytes | undefined => {
    if (text === undefined || mends.at(['sites', name, 'quota', 'size'])) return undefined;
    const size = parseSize(text);
    if (typeof size === 'bigint') return size;
    // A quota that cannot be read must not become no quota.
    refuse(
      ['sites', name, 'quota', 'size'],
      size.why,
      'Write a whole number of bytes in a unit, such as 40 TiB.',
    );
    return undefined;
  };
  const settings: Settings = {
    currency: isRead ? currency : '',
    month,
    paths: { ...usualPaths, ...paths },
    sites: new Map(
      Object.entries(sites).map(([name, site]) => [
        name,
        {
          name,
          quota: { volumes: site.quota?.volumes, size: quotaSize(name, site.quota?.size) },
          attachmentSlots: site['attachment-slots'],
          place: document.placeIn(sites, name),
        },
      ]),
    ),
    // Held against half a list, whoever stands in the other half would be called unknown.
    teams: mends.in(['teams']) ? [] : teams,
    listed: {
      sites: 'sites' in valid.value.value ? document.placeOfKey(['sites']) : undefined,
      teams: 'teams' in valid.value.value ? document.placeOfKey(['teams']) : undefined,
    },
    packs: mends.at(['packs'])
      ? undefined
      : new Map(
          Object.entries(packs).map(([name, pack]) => [
            name,
            mends.in(['packs', name]) ? undefined : { name, ...pack, place: document.placeIn(packs, name) },
          ]),
        ),
    providerList,
    providerRows: {
      volumes: document.placeOfValue(['provider-list', 'volumes', 'rows']),
      servers: document.placeOfValue(['provider-list', 'servers', 'rows']),
    },
    place: document.placeOfKey([]),
  };
  return outcomeOf(settings, problems);
}

/** Each is read, and may be fetched, whoever lists it. */
const mostPacks = 50;

const currencies: ReadonlySet<string> = new Set(Intl.supportedValuesOf('currency'));

/** Whether CLDR, after ISO 4217, knows the code. */
const isCurrency = (code: string): boolean => currencies.has(code);
