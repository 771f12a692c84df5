/** What is declared beside the provider's list. */

import { byText } from '../base/order.ts';
import { listed } from '../base/wording.ts';
import type { Estate, Server, Volume } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import { capacityPrice } from '../price/line.ts';
import type { PriceList } from '../price/price-list.ts';
import { type Difference, difference } from './difference.ts';
import type { Matches } from './match.ts';
import { serversOfRows } from './match-rows.ts';
import type { ProviderServer, ProviderSurvey, ProviderVolume } from './provider-survey.ts';

/** @param list the prices by which what is not declared is said to cost */
export function compareProvider(
  estate: Estate,
  provider: ProviderSurvey | undefined,
  matches: Matches,
  list: PriceList | undefined,
): readonly Difference[] {
  if (provider === undefined) return [];
  const serversOf = serversOfRows(estate, provider);
  const otherVolume = otherThan(provider, matches);
  // What is left may still be a volume that is declared in another size, or on another server.
  const isUnsure =
    matches.undeclaredRows.length > 0 && [...estate.volumes.keys()].some((name) => !matches.rows.has(name));
  const meaning = isUnsure
    ? 'A volume that is declared without its id, and is called otherwise there, looks like this, too: declare ids, and delete nothing before that is settled.'
    : undefined;
  return [
    ...[...matches.rows].flatMap(([name, row]) => {
      const volume = estate.volumes.get(name);
      return volume === undefined
        ? []
        : [
            ...compareRow(volume, row),
            ...compareHolders(estate, volume, row, serversOf(row), provider.servers),
          ];
    }),
    ...provider.servers.flatMap((row) => {
      const server = [...estate.servers.values()].find((each) => isRowOf(row, each));
      return server === undefined ? [] : compareServer(server, row, otherVolume);
    }),
    ...undeclaredRows(matches, list, meaning),
    ...(provider.lists.includes('volumes') ? notListed(estate, matches, meaning) : []),
  ];
}

/** By the identifier; by the name only where one of them has none. */
const isRowOf = (row: ProviderServer, { id, name }: Server): boolean =>
  id !== undefined && row.id !== undefined ? id === row.id : name === row.name;

type Other = (
  what: string,
  declared: string,
  surveyed: string,
  more?: Partial<Pick<Difference, 'about' | 'meaning'>>,
) => Difference;

const otherOf =
  (subject: Difference['subject']): Other =>
  (what, declared, surveyed, more) =>
    difference({
      layer: 'provider',
      subject,
      message: `the ${what} of ${subject.name} is ${surveyed} at the provider, and declared ${declared}`,
      declared,
      surveyed,
      ...more,
    });

function compareRow(volume: Volume, row: ProviderVolume): readonly Difference[] {
  const other = otherOf({ kind: 'volume', name: volume.name });
  const billed = { meaning: 'What is billed is what is at the provider.' };
  return [
    ...(row.size === volume.size ? [] : [other('size', exactSize(volume.size), exactSize(row.size), billed)]),
    ...(row.tier === undefined || row.tier === volume.tier ? [] : [other('tier', volume.tier, row.tier)]),
    ...(row.site === undefined || volume.site === undefined || row.site === volume.site
      ? []
      : [other('site', volume.site, row.site)]),
  ];
}

/**
 * Who holds a volume, and who starts from it. What is declared as unattached and is held by a server looks like what
 * nobody needs any more.
 */
function compareHolders(
  estate: Estate,
  { name }: Volume,
  row: ProviderVolume,
  there: readonly string[] | undefined,
  rows: readonly ProviderServer[],
): readonly Difference[] {
  const here = [...new Set((estate.holders.get(name) ?? []).map(({ server }) => server))].sort(byText);
  const held = [...new Set(there ?? here)].sort(byText);
  // Called otherwise there, a server that is declared without its id looks like one that is not declared.
  const unknown = held.filter((server) => !estate.servers.has(server));
  const missing = here.filter((server) => !held.includes(server));
  const isOther =
    held.some((server) => estate.servers.has(server) && !here.includes(server)) ||
    missing.length !== unknown.length ||
    unknown.some((holder) => !missing.some((server) => couldBe(estate.servers.get(server), holder, rows)));
  const attached = (servers: readonly string[]): string =>
    servers.length === 0 ? 'unattached' : `attached to ${listed(servers)}`;
  const common = { layer: 'provider', subject: { kind: 'volume', name } } as const;
  const starts = here.find((server) => estate.servers.get(server)?.boot === name);
  return [
    ...(!isOther
      ? []
      : [
          difference({
            ...common,
            about: 'attachment',
            message: `${name} is ${attached(held)} at the provider, and declared as ${attached(here)}`,
            meaning:
              missing.length < held.filter((server) => !here.includes(server)).length
                ? 'A server may be writing to it.'
                : undefined,
            declared: attached(here),
            surveyed: attached(held),
          }),
        ]),
    ...(row.boot === undefined || row.boot === (starts !== undefined)
      ? []
      : [
          difference({
            ...common,
            about: 'boot',
            message: row.boot
              ? `a server starts from ${name} at the provider, and none is declared to`
              : `${starts} is declared to start from ${name}, and at the provider it does not`,
          }),
        ]),
  ];
}

/** Whether a holder may be a server that is declared, and called otherwise there: not where both have ids, which differ. */
function couldBe(server: Server | undefined, holder: string, rows: readonly ProviderServer[]): boolean {
  if (server?.id === undefined) return true;
  const named = rows.filter(({ id, name }) => id === holder || name === holder);
  return named.every(({ id }) => id === undefined || id === server.id);
}

/**
 * What a server's row names by an id or a name, if that is another volume than the one that is declared; undefined where
 * it is that one, or cannot be told.
 */
function otherThan(
  provider: ProviderSurvey,
  { rows }: Matches,
): (volume: string, named: string) => string | undefined {
  const names = new Map([...rows].map(([name, row]) => [row, name]));
  return (volume, named) => {
    const meant = provider.volumes.filter(({ id, name }) => id === named || name === named);
    const [row, another] = meant;
    if (row === undefined || another !== undefined) return undefined;
    const name = names.get(row);
    // What no declared volume is known to be may be this one, unless that is known to be another.
    if (name === undefined) return rows.has(volume) ? named : undefined;
    return name === volume ? undefined : name;
  };
}

function compareServer(
  server: Server,
  row: ProviderServer,
  otherVolume: (volume: string, named: string) => string | undefined,
): readonly Difference[] {
  const subject = { kind: 'server', name: server.name } as const;
  const other = otherOf(subject);
  const boot =
    row.boot === undefined || server.boot === undefined ? undefined : otherVolume(server.boot, row.boot);
  return [
    ...(row.power === undefined || row.power === server.power
      ? []
      : [
          difference({
            layer: 'provider',
            about: 'power',
            subject,
            message: `${server.name} is ${row.power} at the provider, and declared ${server.power}`,
            declared: server.power,
            surveyed: row.power,
          }),
        ]),
    ...(row.type === undefined || server.type === undefined || row.type === server.type
      ? []
      : [
          other('type', server.type, row.type, {
            meaning: 'What is billed is what is at the provider.',
          }),
        ]),
    ...(row.site === undefined || server.site === undefined || row.site === server.site
      ? []
      : [other('site', server.site, row.site)]),
    ...(boot === undefined || server.boot === undefined
      ? []
      : [other('boot volume', server.boot, boot, { about: 'boot' })]),
  ];
}

function undeclaredRows(
  { undeclaredRows: rows, rowCandidates }: Matches,
  list: PriceList | undefined,
  meaning: string | undefined,
): readonly Difference[] {
  const candidates = new Set([...rowCandidates.values()].flat());
  return rows
    .filter((row) => !candidates.has(row))
    .map((row) => {
      const tier = row.tier === undefined ? undefined : list?.tiers.get(row.tier);
      const name = row.name ?? row.id ?? 'without a name';
      return difference({
        layer: 'provider',
        kind: 'not declared',
        subject: { kind: 'volume', name },
        message: `the provider lists a volume ${name} of ${exactSize(row.size)}, and no such volume is declared`,
        meaning,
        surveyed: exactSize(row.size),
        monthly: tier === undefined ? undefined : capacityPrice(tier, row.size),
      });
    });
}

const notListed = (
  estate: Estate,
  { rows, rowCandidates }: Matches,
  meaning: string | undefined,
): readonly Difference[] =>
  [...estate.volumes.keys()]
    .filter((name) => !rows.has(name) && !rowCandidates.has(name))
    .map((name) =>
      difference({
        layer: 'provider',
        kind: 'not there',
        subject: { kind: 'volume', name },
        message: `${name} is declared, and the provider does not list it`,
        meaning,
      }),
    );
