/** What is declared beside the provider's list. */

import { byText } from '../base/order.ts';
import { listed } from '../base/wording.ts';
import type { DeclaredThings, Server, Volume } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import { capacityPrice } from '../price/line.ts';
import type { PriceList } from '../price/price-list.ts';
import { type Difference, difference } from './difference.ts';
import type { Matches } from './match.ts';
import { type ServersOf, serversOfRows } from './match-rows.ts';
import type { ProviderServer, ProviderSurvey, ProviderVolume } from './provider-survey.ts';

export interface ProviderComparison {
  readonly differences: readonly Difference[];
  /** By volume: the holders that the list names, where it cannot be told whether they are those that are declared. */
  readonly untoldHolders: ReadonlyMap<string, readonly string[]>;
}

/** @param list the prices by which what is not declared is said to cost */
export function compareProvider(
  estate: DeclaredThings,
  provider: ProviderSurvey | undefined,
  matches: Matches,
  list: PriceList | undefined,
): ProviderComparison {
  if (provider === undefined) return { differences: [], untoldHolders: new Map() };
  const servers = serversByRow(estate, provider);
  const otherVolume = otherThan(provider, matches);
  // What is left may still be a volume that is declared in another size, or on another server.
  const isUnsure =
    matches.undeclaredRows.length > 0 && [...estate.volumes.keys()].some((name) => !matches.rows.has(name));
  const meaning = isUnsure
    ? 'A volume that is declared without its id, and is called otherwise there, looks like this, too: declare ids, and delete nothing before that is settled.'
    : undefined;
  const held = [...matches.rows].flatMap(([name, row]) => {
    const volume = estate.volumes.get(name);
    return volume === undefined ? [] : [{ volume, row, holding: holdingOf(estate, volume, row, servers) }];
  });
  return {
    differences: [
      ...held.flatMap(({ volume, row, holding }) => [
        ...compareRow(volume, row),
        ...compareHolders(volume, holding),
        ...compareStart(estate, volume, row),
      ]),
      ...[...servers.rows].flatMap(([row, server]) => compareServer(server, row, otherVolume)),
      ...undeclaredRows(matches, list, meaning),
      ...(provider.lists.includes('volumes') ? notListed(estate, matches, meaning) : []),
    ],
    untoldHolders: new Map(
      held.flatMap(({ volume: { name }, holding: { kind, held: holders } }) =>
        kind === 'untold' ? [[name, holders] as const] : [],
      ),
    ),
  };
}

/** Which row of the list is which server, and which rows a volume's row can name as its holder. */
interface ServersByRow {
  readonly rows: ReadonlyMap<ProviderServer, Server>;
  readonly listed: ReadonlySet<Server>;
  readonly rowsNamed: ReadonlyMap<string, readonly ProviderServer[]>;
  readonly serversOf: ServersOf;
}

/** By the identifier; by the name only where one of them has none. */
function serversByRow(estate: DeclaredThings, provider: ProviderSurvey): ServersByRow {
  const byId = new Map(
    [...estate.servers.values()].flatMap((server) => (server.id === undefined ? [] : [[server.id, server]])),
  );
  const rows = new Map<ProviderServer, Server>();
  const rowsNamed = new Map<string, ProviderServer[]>();
  for (const row of provider.servers) {
    const named = estate.servers.get(row.name ?? '');
    const server =
      byId.get(row.id ?? '') ?? (named?.id === undefined || row.id === undefined ? named : undefined);
    if (server !== undefined) rows.set(row, server);
    for (const key of new Set([row.id, row.name]))
      if (key !== undefined) rowsNamed.set(key, [...(rowsNamed.get(key) ?? []), row]);
  }
  return { rows, listed: new Set(rows.values()), rowsNamed, serversOf: serversOfRows(estate, provider) };
}

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

/** Who holds a volume at the provider, beside who is declared to. */
interface Holding {
  /** `untold` where the list does not say, or names somebody who may be one of those that are declared. */
  readonly kind: 'same' | 'other' | 'untold';
  /** By the estate's names, as far as it has any for them. */
  readonly held: readonly string[];
  readonly declared: readonly string[];
}

function holdingOf(
  estate: DeclaredThings,
  { name }: Volume,
  row: ProviderVolume,
  servers: ServersByRow,
): Holding {
  const declared = [...new Set((estate.holders.get(name) ?? []).map(({ server }) => server))].sort(byText);
  const there = servers.serversOf(row);
  if (there === undefined) return { kind: 'untold', held: [], declared };
  const held = [...new Set(there)].sort(byText);
  // Called otherwise there, a server that is declared without its id looks like one that is not declared.
  const unknown = held.filter((server) => !estate.servers.has(server));
  const missing = declared.filter((server) => !held.includes(server));
  const isHeldBesides = held.some((server) => estate.servers.has(server) && !declared.includes(server));
  if (isHeldBesides || missing.length !== unknown.length) return { kind: 'other', held, declared };
  const likeness = unknown.map((holder) =>
    missing.flatMap((server) => {
      const known = estate.servers.get(server);
      return known === undefined ? [] : [likenessOf(known, holder, servers)];
    }),
  );
  const isAmong = (kind: Likeness): boolean => likeness.every((those) => those.includes(kind));
  if (isAmong('same')) return { kind: 'same', held, declared };
  const isNone = likeness.some((those) => those.every((kind) => kind === 'another'));
  return { kind: isNone ? 'other' : 'untold', held, declared };
}

type Likeness = 'same' | 'another' | 'untold';

/** Whether a holder of whom the estate has no name is a server that is declared, and called otherwise there. */
function likenessOf(
  server: Server,
  holder: string,
  { rows, listed: known, rowsNamed }: ServersByRow,
): Likeness {
  const named = rowsNamed.get(holder) ?? [];
  if (named.some((row) => rows.get(row) === server)) return named.length === 1 ? 'same' : 'untold';
  if (named.length === 0) return 'untold';
  const isTold = server.id !== undefined && named.every(({ id }) => id !== undefined && id !== server.id);
  return known.has(server) || isTold || named.every((row) => rows.has(row)) ? 'another' : 'untold';
}

/** What is declared as unattached and is held by a server looks like what nobody needs any more. */
function compareHolders({ name }: Volume, { kind, held, declared }: Holding): readonly Difference[] {
  const attached = (servers: readonly string[]): string =>
    servers.length === 0 ? 'unattached' : `attached to ${listed(servers)}`;
  if (kind !== 'other') return [];
  const missing = declared.filter((server) => !held.includes(server));
  return [
    difference({
      layer: 'provider',
      about: 'attachment',
      subject: { kind: 'volume', name },
      message: `${name} is ${attached(held)} at the provider, and declared as ${attached(declared)}`,
      meaning:
        missing.length < held.filter((server) => !declared.includes(server)).length
          ? 'A server may be writing to it.'
          : undefined,
      declared: attached(declared),
      surveyed: attached(held),
    }),
  ];
}

function compareStart(
  estate: DeclaredThings,
  { name }: Volume,
  { boot }: ProviderVolume,
): readonly Difference[] {
  const starts = (estate.holders.get(name) ?? []).find(
    ({ server }) => estate.servers.get(server)?.boot === name,
  )?.server;
  if (boot === undefined || boot === (starts !== undefined)) return [];
  return [
    difference({
      layer: 'provider',
      subject: { kind: 'volume', name },
      about: 'boot',
      message: boot
        ? `a server starts from ${name} at the provider, and none is declared to`
        : `${starts} is declared to start from ${name}, and at the provider it does not`,
    }),
  ];
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
  estate: DeclaredThings,
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
