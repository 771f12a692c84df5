/**
 * The provider's own list of volumes and servers: CSV (RFC 4180), JSON or NDJSON, whose fields the settings name. Only
 * what they name is kept.
 */
import { Decimal } from 'decimal.js';
import { offer, quoted } from '../base/nearest.ts';
import { byText } from '../base/order.ts';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import type { Settings } from '../estate/settings.ts';
import { unitBytes } from '../estate/size.ts';
import type { ProviderSurveyFile } from '../read/generated/provider-survey.ts';
import type { ProviderListSettings } from '../read/generated/settings.ts';
import { type ListDocument, type Row, readListDocument } from './provider-rows.ts';
import { providerSurveyFormat } from './provider-survey.ts';

/** Some provider's words that the settings do not translate, with how often each was met. */
export type UnknownWords = ReadonlyMap<string, number>;

export interface ProviderList {
  readonly survey: ProviderSurveyFile;
  readonly unknown: UnknownWords;
  /** Fields that the settings name and no row has a value for. */
  readonly absent: readonly string[];
  /** Pointers that the settings name and at which the file has no list, by kind; perhaps it is elsewhere in it. */
  readonly astray: ReadonlyMap<Kind, { readonly at: string; readonly perhaps: string | undefined }>;
  /** That the file may be cut off; a sentence. */
  readonly cut: string | undefined;
}

type Kind = ProviderSurveyFile['lists'][number];
type VolumeRow = ProviderSurveyFile['volumes'][number];
type ServerRow = ProviderSurveyFile['servers'][number];

/** @param at when the list was taken: RFC 3339, UTC, whole seconds */
export function readProviderList(
  text: string,
  file: string,
  settings: ProviderListSettings,
  at: string,
): Outcome<ProviderList> {
  const problems: Problem[] = [];
  const unknown = new Map<string, number>();
  const translated = (
    what: string,
    table: Readonly<Record<string, string>> | undefined,
    word: string | undefined,
  ) => {
    if (word === undefined || table === undefined) return word;
    if (Object.hasOwn(table, word)) return table[word];
    const key = `${what} ${quoted(word)}`;
    unknown.set(key, (unknown.get(key) ?? 0) + 1);
    return word;
  };
  const { volumes, servers, tiers, sites, types, power } = settings;
  const document = readListDocument(text, file);
  if (!document.ok) return document;
  const listed = listsIn(document.value, file, settings);
  if (!listed.ok) return listed;
  const kept: { volumes: VolumeRow[]; servers: ServerRow[] } = { volumes: [], servers: [] };
  if (volumes !== undefined) {
    const rows = listed.value.get('volumes') ?? [];
    // A row of JSON without the field is held by nothing; where no row has it, its name may be a slip.
    const saysServers = rows.some(({ fields }) => fields(volumes.server) !== undefined);
    for (const { problem, field, fields } of rows) {
      const figure = field(volumes.size.field);
      const size = figure === undefined ? undefined : bytesOf(figure, volumes.size.unit);
      if (size === undefined) {
        problems.push(
          problem(
            `${quoted(volumes.size.field)} is ${figure === undefined ? 'empty' : quoted(figure)}, and no size`,
            'Correct the list, or the field in ullage.yaml.',
          ),
        );
        continue;
      }
      const boot = field(volumes.boot);
      const [id, name] = [field(volumes.id), field(volumes.name)];
      const holders = [...new Set(fields(volumes.server))].sort(byText);
      const tier = translated('tier', tiers, field(volumes.tier));
      const site = translated('site', sites, field(volumes.site));
      kept.volumes.push({
        ...(id === undefined ? {} : { id }),
        ...(name === undefined ? {} : { name }),
        size,
        ...(tier === undefined ? {} : { tier }),
        ...(site === undefined ? {} : { site }),
        ...(saysServers ? { servers: holders } : {}),
        ...(boot === undefined ? {} : { boot: /^(?:true|yes|1)$/i.test(boot) }),
      });
    }
  }
  if (servers !== undefined) {
    for (const { problem, field } of listed.value.get('servers') ?? []) {
      const word = field(servers.power);
      const state = word === undefined ? undefined : translatedPower(power, word);
      const isPower = state === 'running' || state === 'stopped';
      if (state !== undefined && !isPower)
        problems.push(
          problem(
            `${quoted(word ?? '')} says neither that a server runs nor that it is stopped`,
            'Say what it means under provider-list: power: in ullage.yaml.',
          ),
        );
      const [id, name, boot] = [field(servers.id), field(servers.name), field(servers.boot)];
      if (id === undefined && name === undefined)
        problems.push(
          problem(
            `the server has neither an identifier nor a name that can be told: ${[servers.id, servers.name].map(quoted).join(', ')}`,
            'Correct the list, or the fields in ullage.yaml.',
          ),
        );
      const site = translated('site', sites, field(servers.site));
      const type = translated('server type', types, field(servers.type));
      kept.servers.push({
        ...(id === undefined ? {} : { id }),
        ...(name === undefined ? {} : { name }),
        ...(site === undefined ? {} : { site }),
        ...(type === undefined ? {} : { type }),
        ...(isPower ? { power: state } : {}),
        ...(boot === undefined ? {} : { boot }),
      });
    }
  }
  if (problems.length > 0) return err(...problems);
  const { unended } = document.value;
  const lists = [...listed.value.keys()];
  return ok({
    survey: {
      format: providerSurveyFormat,
      at,
      lists,
      volumes: kept.volumes.sort(inOrder),
      servers: kept.servers.sort(inOrder),
    },
    unknown,
    absent: lists.flatMap((kind) =>
      namesOf(settings, kind).filter(
        (name) => !listed.value.get(kind)?.some(({ fields }) => (fields(name) ?? []).length > 0),
      ),
    ),
    astray: astrayIn(document.value, settings),
    cut:
      unended === undefined
        ? undefined
        : `${file} ends without a line break, after ${quoted(unended.column)} ${quoted(unended.value)}: if it was cut off, that may be half of it, and more rows may be missing.`,
  });
}

/** Of the kinds whose rows are to be at a pointer, those that are not, each with the list that has most of its fields. */
function astrayIn(document: ListDocument, settings: ProviderListSettings): ProviderList['astray'] {
  const astray = new Map<Kind, { at: string; perhaps: string | undefined }>();
  if (document.isOneList) return astray;
  const named = new Set([settings.volumes?.rows, settings.servers?.rows]);
  for (const kind of ['volumes', 'servers'] as const) {
    const at = settings[kind]?.rows;
    if (at === undefined || document.rows(at) !== undefined) continue;
    const names = namesOf(settings, kind);
    const looksLike = (pointer: string): boolean => {
      const rows = document.rows(pointer) ?? [];
      const has = (name: string): boolean => rows.some(({ field }) => field(name) !== undefined);
      return keysOf(settings, kind).some(has) && 2 * names.filter(has).length > names.length;
    };
    const perhaps = document.lists().find((pointer) => !named.has(pointer) && looksLike(pointer));
    astray.set(kind, { at, perhaps });
  }
  return astray;
}

/**
 * What pointers of the settings led nowhere in all of the lists together: a problem where a list that nothing names looks
 * like what is missed, a sentence otherwise, since a list of one kind alone is a list.
 */
export function ledNowhere(
  lists: readonly ProviderList[],
  places: Settings['providerRows'],
): { readonly problems: readonly Problem[]; readonly said: readonly string[] } {
  const problems: Problem[] = [];
  const said: string[] = [];
  for (const kind of ['volumes', 'servers'] as const) {
    const astray = lists.flatMap((list) => list.astray.get(kind) ?? []);
    const [first] = astray;
    if (first === undefined || lists.some(({ survey }) => survey.lists.includes(kind))) continue;
    const perhaps = astray.find((each) => each.perhaps !== undefined)?.perhaps;
    if (perhaps === undefined) said.push(`There is no list at ${quoted(first.at)}, so no ${kind} were read.`);
    else
      problems.push({
        place: places[kind],
        message: `there is no list of ${kind} at ${quoted(first.at)}, and one at ${quoted(perhaps)} looks like it`,
        advice: `Write rows: ${perhaps} if it is.`,
      });
  }
  return { problems, said };
}

const translatedPower = (power: ProviderListSettings['power'], word: string): string =>
  (power !== undefined && Object.hasOwn(power, word) ? power[word] : undefined) ?? word;

const inOrder = (a: VolumeRow | ServerRow, b: VolumeRow | ServerRow): number =>
  byText(a.id ?? '', b.id ?? '') ||
  byText(a.name ?? '', b.name ?? '') ||
  byText(JSON.stringify(a), JSON.stringify(b));

const isSomething = (name: string | undefined): name is string => name !== undefined;

/** The fields that the settings name for a kind. */
function namesOf({ volumes, servers }: ProviderListSettings, kind: Kind): readonly string[] {
  const [v, s] = [volumes, servers];
  return kind === 'volumes'
    ? [v?.id, v?.name, v?.size.field, v?.tier, v?.site, v?.server, v?.boot].filter(isSomething)
    : [s?.id, s?.name, s?.site, s?.type, s?.power, s?.boot].filter(isSomething);
}

/** By which fields a row of JSON is known for one of its kind. */
const keysOf = ({ volumes, servers }: ProviderListSettings, kind: Kind): readonly string[] =>
  (kind === 'volumes' ? [volumes?.size.field] : [servers?.id, servers?.name]).filter(isSomething);

/** What a file lists. Of CSV every column that the settings name is asked for, so that none is missed by a slip. */
function listsIn(
  document: ListDocument,
  file: string,
  settings: ProviderListSettings,
): Outcome<ReadonlyMap<Kind, readonly Row[]>> {
  const { columns } = document;
  // A file that is one list has no places in it.
  const at = (kind: Kind) => (document.isOneList ? undefined : settings[kind]?.rows);
  const named = (['volumes', 'servers'] as const).filter((kind) => settings[kind] !== undefined);
  const lacking = (kind: Kind) => namesOf(settings, kind).filter((name) => !columns?.includes(name));
  const found = new Map<Kind, readonly Row[]>();
  for (const kind of named) {
    const rows = document.rows(at(kind)) ?? [];
    const isKind =
      columns === undefined
        ? at(kind) !== undefined ||
          keysOf(settings, kind).some((name) => rows.some(({ field }) => field(name) !== undefined))
        : lacking(kind).length === 0;
    if (isKind && rows.length > 0) found.set(kind, rows);
  }
  const place = { file, line: 1, column: 1 };
  if (found.size === 2 && at('volumes') === at('servers')) {
    // The same rows cannot be both: they are of the kind that has all the fields of the other, and more.
    const has = (kind: Kind) =>
      new Set(
        namesOf(settings, kind).filter((name) =>
          columns === undefined
            ? found.get(kind)?.some(({ field }) => field(name) !== undefined)
            : columns.includes(name),
        ),
      );
    const [v, s] = [has('volumes'), has('servers')];
    if ([...s].every((name) => v.has(name)) && v.size > s.size) found.delete('servers');
    else if ([...v].every((name) => s.has(name)) && s.size > v.size) found.delete('volumes');
    else {
      return err({
        place,
        message: 'the list reads as one of volumes and as one of servers',
        advice: 'Name a field that only one of them has, under provider-list: in ullage.yaml.',
      });
    }
  }
  if (found.size > 0) return ok(found);
  const [nearest] = named.map((kind) => lacking(kind)).sort((a, b) => a.length - b.length);
  if (columns !== undefined && nearest !== undefined && nearest.length > 0) {
    return err(
      ...nearest.map((name) => ({
        place,
        message: `the list has no column ${quoted(name)}, or has it twice; its columns are ${columns.map(quoted).join(', ')}`,
        advice: `${offer(name, columns)}Name the columns under provider-list: in ullage.yaml.`,
      })),
    );
  }
  return err({
    place,
    message: 'nothing in it is a list of volumes or servers as the settings tell',
    advice: 'See provider-list: in ullage.yaml.',
  });
}

/**
 * What lists of several files say together. A row of one identifier that is there twice is one, and a volume that is there
 * once for each server that holds it is held by them all. A row without an identifier is a thing of its own, however much
 * another is like it: each is billed.
 */
export function together(lists: readonly ProviderSurveyFile[], at: string): Outcome<ProviderSurveyFile> {
  const problems: Problem[] = [];
  const once = <T extends VolumeRow | ServerRow>(
    what: string,
    rows: readonly T[],
    joined: (one: T, another: T) => T | undefined,
  ): T[] => {
    const byKey = new Map<unknown, T>();
    for (const row of rows) {
      const key = row.id ?? row;
      const other = byKey.get(key);
      if (other === undefined) byKey.set(key, row);
      else if (JSON.stringify(other) !== JSON.stringify(row)) {
        const both = joined(other, row);
        if (both !== undefined) byKey.set(key, both);
        else
          problems.push({
            message: `the ${what} ${quoted(row.id)} is listed twice, and differently`,
            advice: 'Export the lists again, at one time.',
          });
      }
    }
    return [...byKey.values()].sort(inOrder);
  };
  const volumes = once(
    'volume',
    lists.flatMap((list) => list.volumes),
    heldByBoth,
  );
  const servers = once(
    'server',
    lists.flatMap((list) => list.servers),
    () => undefined,
  );
  if (problems.length > 0) return err(...problems);
  const listed = new Set(lists.flatMap((list) => list.lists));
  return ok({
    format: providerSurveyFormat,
    at,
    lists: (['volumes', 'servers'] as const).filter((kind) => listed.has(kind)),
    volumes,
    servers,
  });
}

/** Of rows that differ in who holds the volume only. One that nothing holds has no second row. */
function heldByBoth({ servers: one, ...row }: VolumeRow, another: VolumeRow): VolumeRow | undefined {
  const { servers: more, ...others } = another;
  if (JSON.stringify(row) !== JSON.stringify(others) || one === undefined || more === undefined)
    return undefined;
  if (one.length === 0 || more.length === 0) return undefined;
  return { ...row, servers: [...new Set([...one, ...more])].sort(byText) };
}

/** As many digits as a figure and its unit can have together. */
const ExactDecimal = Decimal.clone({ precision: 60 });

/** As many bytes as a signed 64-bit count has. */
const mostBytes = `${2n ** 63n - 1n}`;

/** Exactly; undefined where that is no whole number of bytes. */
function bytesOf(figure: string, unit: string): string | undefined {
  const plain = figure.trim();
  if (!/^[0-9]{1,19}(?:\.[0-9]{1,15})?$/.test(plain)) return undefined;
  const known: Readonly<Record<string, bigint>> = { B: 1n, ...unitBytes };
  const size = new ExactDecimal(plain).times(`${known[unit] ?? 1n}`);
  return size.isInteger() && size.lte(mostBytes) ? size.toFixed() : undefined;
}
