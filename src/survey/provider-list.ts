/**
 * The provider's own list of volumes and servers: CSV (RFC 4180), JSON or NDJSON, whose fields the settings name. Only
 * what they name is kept.
 */
import { parse } from 'csv-parse/sync';
import { Decimal } from 'decimal.js';
import { quoted } from '../base/nearest.ts';
import { byText } from '../base/order.ts';
import { stepsOfPointer } from '../base/pointer.ts';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { unitBytes } from '../estate/size.ts';
import type { ProviderSurveyFile } from '../read/generated/provider-survey.ts';
import type { ProviderListSettings } from '../read/generated/settings.ts';
import { providerSurveyFormat } from './provider-survey.ts';

/** Some provider's words that the settings do not translate, with how often each was met. */
export type UnknownWords = ReadonlyMap<string, number>;

export interface ProviderList {
  readonly survey: ProviderSurveyFile;
  readonly unknown: UnknownWords;
}

interface Row {
  /** Where it is, for a message: a line of CSV or NDJSON, or an item of JSON. */
  readonly line: number;
  /** The value of a field as text; undefined where there is none, or none is named. */
  readonly field: (name: string | undefined) => string | undefined;
}

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
  const refuse = (line: number, message: string, advice: string): void => {
    problems.push({ place: { file, line, column: 1 }, message, advice });
  };
  const { volumes, servers, tiers, sites, types, power } = settings;
  const lists: ProviderSurveyFile['lists'] = [];
  const kept: { volumes: VolumeRow[]; servers: ServerRow[] } = { volumes: [], servers: [] };
  if (volumes !== undefined) {
    const rows = rowsIn(text, file, volumes.rows, volumes.size.field);
    if (!rows.ok) return rows;
    if (rows.value.length > 0) lists.push('volumes');
    for (const { line, field } of rows.value) {
      const figure = field(volumes.size.field);
      const size = figure === undefined ? undefined : bytesOf(figure, volumes.size.unit);
      if (size === undefined) {
        refuse(
          line,
          `${quoted(volumes.size.field)} is ${figure === undefined ? 'empty' : quoted(figure)}, and no size`,
          'Correct the list, or the field in ullage.yaml.',
        );
        continue;
      }
      const boot = field(volumes.boot);
      const [id, name, server] = [field(volumes.id), field(volumes.name), field(volumes.server)];
      const tier = translated('tier', tiers, field(volumes.tier));
      const site = translated('site', sites, field(volumes.site));
      kept.volumes.push({
        ...(id === undefined ? {} : { id }),
        ...(name === undefined ? {} : { name }),
        size,
        ...(tier === undefined ? {} : { tier }),
        ...(site === undefined ? {} : { site }),
        ...(server === undefined ? {} : { server }),
        ...(boot === undefined ? {} : { boot: /^(?:true|yes|1)$/i.test(boot) }),
      });
    }
  }
  if (servers !== undefined) {
    const told = servers.id ?? servers.name ?? '';
    const rows = rowsIn(text, file, servers.rows, told);
    if (!rows.ok && volumes === undefined) return rows;
    const all = rows.ok ? rows.value : [];
    if (all.length > 0) lists.push('servers');
    for (const { field, line } of all) {
      const word = field(servers.power);
      const state = word === undefined ? undefined : (power?.[word] ?? word);
      const isPower = state === 'running' || state === 'stopped';
      if (state !== undefined && !isPower)
        refuse(
          line,
          `${quoted(word ?? '')} says neither that a server runs nor that it is stopped`,
          'Say what it means under provider-list: power: in ullage.yaml.',
        );
      const [id, name, boot] = [field(servers.id), field(servers.name), field(servers.boot)];
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
  if (lists.length === 0)
    refuse(
      1,
      'nothing in it is a list of volumes or servers as the settings tell',
      'See provider-list: in ullage.yaml.',
    );
  if (problems.length > 0) return err(...problems);
  const order = (a: VolumeRow | ServerRow, b: VolumeRow | ServerRow): number =>
    byText(a.id ?? '', b.id ?? '') ||
    byText(a.name ?? '', b.name ?? '') ||
    byText(JSON.stringify(a), JSON.stringify(b));
  return ok({
    survey: {
      format: providerSurveyFormat,
      at,
      lists,
      volumes: kept.volumes.sort(order),
      servers: kept.servers.sort(order),
    },
    unknown,
  });
}

/** What lists of several files say together; what two lists both hold is the later one's. */
export function together(lists: readonly ProviderSurveyFile[], at: string): ProviderSurveyFile {
  const last = <K extends 'volumes' | 'servers'>(kind: K): ProviderSurveyFile[K] =>
    [...lists].reverse().find((list) => list.lists.includes(kind))?.[kind] ?? [];
  return {
    format: providerSurveyFormat,
    at,
    lists: (['volumes', 'servers'] as const).filter((kind) =>
      lists.some((list) => list.lists.includes(kind)),
    ),
    volumes: last('volumes'),
    servers: last('servers'),
  };
}

/** As many digits as a figure and its unit can have together. */
const ExactDecimal = Decimal.clone({ precision: 60 });

/** Exactly; undefined where that is no whole number of bytes. */
function bytesOf(figure: string, unit: string): string | undefined {
  const plain = figure.trim();
  if (!/^[0-9]{1,15}(?:\.[0-9]{1,15})?$/.test(plain)) return undefined;
  const known: Readonly<Record<string, bigint>> = { B: 1n, ...unitBytes };
  const size = new ExactDecimal(plain).times(`${known[unit] ?? 1n}`);
  return size.isInteger() ? size.toFixed() : undefined;
}

/** The rows of one kind: a document that begins with a bracket is JSON, or NDJSON where each line is one. */
function rowsIn(text: string, file: string, at: string | undefined, wanted: string): Outcome<readonly Row[]> {
  const begins = text.trimStart()[0];
  if (begins !== '{' && begins !== '[') return csvRows(text, file, wanted);
  try {
    const whole: unknown = JSON.parse(text);
    const found = at === undefined ? whole : valueAt(whole, at);
    if (Array.isArray(found)) return ok(found.map((item, index) => jsonRow(item, index + 1)));
    return ok(at === undefined ? [jsonRow(found, 1)] : []);
  } catch {
    return ndjsonRows(text, file);
  }
}

function ndjsonRows(text: string, file: string): Outcome<readonly Row[]> {
  const rows: Row[] = [];
  for (const [index, each] of text.split(/\r?\n/).entries()) {
    if (each.trim() === '') continue;
    try {
      rows.push(jsonRow(JSON.parse(each), index + 1));
    } catch {
      return err({
        place: { file, line: index + 1, column: 1 },
        message: 'the list is neither JSON nor a JSON value in each line, from here on',
        advice: 'Export it again; perhaps it was cut off.',
      });
    }
  }
  return ok(rows);
}

function csvRows(text: string, file: string, wanted: string): Outcome<readonly Row[]> {
  try {
    const lines: number[] = [];
    const [head = [], ...others] = parse(text, {
      bom: true,
      relax_column_count: true,
      skip_empty_lines: true,
      on_record: (record: string[], context) => {
        lines.push(context.lines);
        return record;
      },
    });
    if (!head.includes(wanted)) {
      return err({
        place: { file, line: 1, column: 1 },
        message: `the list has no column ${quoted(wanted)}; its columns are ${head.map((name) => quoted(name)).join(', ')}`,
        advice: 'Name the columns under provider-list: in ullage.yaml.',
      });
    }
    const columns = new Map(head.map((name, index) => [name, index]));
    return ok(
      others.map((record, index) => ({
        line: lines[index + 1] ?? 1,
        field: (name) => (name === undefined ? undefined : shownText(record[columns.get(name) ?? -1])),
      })),
    );
  } catch (error) {
    return err({
      place: { file, line: 1, column: 1 },
      message: `the list does not read as CSV: ${error instanceof Error ? error.message : String(error)}`,
      advice: 'Export it again, as CSV, JSON or a JSON value in each line.',
    });
  }
}

const jsonRow = (item: unknown, line: number): Row => ({
  line,
  field: (name) => (name === undefined ? undefined : shownText(valueAt(item, name))),
});

/** By a JSON Pointer, or a key of the item itself. */
function valueAt(item: unknown, name: string): unknown {
  const steps = name.startsWith('/') ? stepsOfPointer(name) : [name];
  return steps.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? Reflect.get(value, step)
        : undefined,
    item,
  );
}

/** Without what steers a terminal; nothing where there is nothing. */
function shownText(value: unknown): string | undefined {
  if (typeof value !== 'string' && typeof value !== 'number' && typeof value !== 'boolean') return undefined;
  const text = String(value)
    .replaceAll(/\p{Cc}/gu, '')
    .trim()
    .slice(0, 255);
  return text === '' ? undefined : text;
}
