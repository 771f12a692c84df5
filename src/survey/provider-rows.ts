/** The rows of a provider's list: CSV (RFC 4180), JSON, or a JSON value in each line, each field asked for by its name. */
import { parse } from 'csv-parse/sync';
import { quoted } from '../base/nearest.ts';
import { stepsOfPointer } from '../base/pointer.ts';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';

export interface Row {
  /** A problem of this row; where it has no line of its own, the message names the item. */
  readonly problem: (message: string, advice: string) => Problem;
  /** The value of a field as text; undefined where there is none, or none is named. */
  readonly field: (name: string | undefined) => string | undefined;
  /** The values of a field that may be a list, as texts; undefined where there is none. */
  readonly fields: (name: string | undefined) => readonly string[] | undefined;
}

export interface ListDocument {
  /** The columns of CSV, each once; undefined where every row names its own fields. */
  readonly columns: readonly string[] | undefined;
  /** Whether the file is one list, as CSV and NDJSON are; JSON may hold several. */
  readonly isOneList: boolean;
  /** The rows at a JSON Pointer, or of the whole document; undefined where there is no list. */
  readonly rows: (at: string | undefined) => readonly Row[] | undefined;
  /** The JSON Pointers of every list of objects in it. */
  readonly lists: () => readonly string[];
  /**
   * The last field of CSV that ends without a line break, with its column. RFC 4180 (2.2) lets it, and a file that was
   * cut off looks the same. A field in quotes is whole.
   */
  readonly unended: { readonly column: string; readonly value: string | undefined } | undefined;
}

/** A document that begins with a bracket is JSON, or NDJSON where each line is a value. */
export function readListDocument(text: string, file: string): Outcome<ListDocument> {
  const begins = text.trimStart()[0];
  if (begins !== '{' && begins !== '[') return csvDocument(text, file);
  let whole: unknown;
  try {
    whole = JSON.parse(text);
  } catch {
    return ndjsonDocument(text, file);
  }
  return ok({
    columns: undefined,
    isOneList: false,
    rows: (at) => {
      const found = at === undefined ? whole : valueAt(whole, at);
      const items = Array.isArray(found) ? found : at === undefined ? [found] : undefined;
      return items?.map((item, index) =>
        jsonRow(item, (message, advice) => ({
          message: `${file}, item ${index + 1}${at === undefined ? '' : ` of ${quoted(at)}`}: ${message}`,
          advice,
        })),
      );
    },
    lists: () => listsBelow(whole, ''),
    unended: undefined,
  });
}

/** Lists are looked for so deep, and not within one another. */
const deepest = 4;

function listsBelow(value: unknown, pointer: string, depth = 0): readonly string[] {
  if (typeof value !== 'object' || value === null || depth > deepest) return [];
  if (Array.isArray(value))
    return value.some((item) => typeof item === 'object' && item !== null) ? [pointer] : [];
  return Object.entries(value).flatMap(([key, below]) =>
    listsBelow(below, `${pointer}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`, depth + 1),
  );
}

function ndjsonDocument(text: string, file: string): Outcome<ListDocument> {
  const rows: Row[] = [];
  for (const [index, each] of text.split(/\r?\n/).entries()) {
    if (each.trim() === '') continue;
    const place = { file, line: index + 1, column: 1 };
    try {
      rows.push(jsonRow(JSON.parse(each), (message, advice) => ({ place, message, advice })));
    } catch {
      return err({
        place,
        message: 'the list is neither JSON nor a JSON value in each line, from here on',
        advice: 'Export it again; perhaps it was cut off.',
      });
    }
  }
  return ok({ columns: undefined, isOneList: true, rows: () => rows, lists: () => [], unended: undefined });
}

function csvDocument(text: string, file: string): Outcome<ListDocument> {
  const problems: Problem[] = [];
  const refuse = (line: number, message: string): void => {
    problems.push({
      place: { file, line, column: 1 },
      message,
      advice: 'Export it again, as CSV, JSON or a JSON value in each line; perhaps it was cut off.',
    });
  };
  const lines: number[] = [];
  let records: string[][] = [];
  try {
    records = parse(text, {
      bom: true,
      relax_column_count: true,
      skip_empty_lines: true,
      on_record: (record: string[], context) => {
        lines.push(context.lines);
        return record;
      },
    });
  } catch (error) {
    refuse(1, `the list does not read as CSV: ${error instanceof Error ? error.message : String(error)}`);
  }
  const [head = [], ...others] = records;
  const columns = head.map((name) => name.trim());
  const rows = others.map((record, index): Row => {
    const line = lines[index + 1] ?? 1;
    // Each line has the same number of fields (RFC 4180, 2.4); one that is cut short may have half a figure.
    if (record.length !== columns.length)
      refuse(line, `the row has ${record.length} fields, and the list ${columns.length} columns`);
    const field = (name: string | undefined) =>
      name === undefined ? undefined : plainText(record[columns.indexOf(name)]);
    return {
      problem: (message, advice) => ({ place: { file, line, column: 1 }, message, advice }),
      field,
      // A column that is there and empty says that there is nothing.
      fields: (name) => (name === undefined ? undefined : [field(name)].flatMap((each) => each ?? [])),
    };
  });
  if (problems.length > 0) return err(...problems);
  return ok({
    // What is there twice cannot be asked for by its name.
    columns: columns.filter((name) => columns.indexOf(name) === columns.lastIndexOf(name)),
    isOneList: true,
    rows: () => rows,
    lists: () => [],
    unended: /[\r\n"]$/.test(text)
      ? undefined
      : { column: columns.at(-1) ?? '', value: plainText(records.at(-1)?.at(-1)) },
  });
}

const jsonRow = (item: unknown, problem: Row['problem']): Row => ({
  problem,
  field: (name) => (name === undefined ? undefined : plainText(valueAt(item, name))),
  fields: (name) => {
    const value = name === undefined ? undefined : valueAt(item, name);
    const texts = (Array.isArray(value) ? value : [value]).flatMap((each) => plainText(each) ?? []);
    return Array.isArray(value) || texts.length > 0 ? texts : undefined;
  },
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

/** Without what steers a terminal; nothing where there is nothing, or a number that JSON has not read exactly. */
function plainText(value: unknown): string | undefined {
  if (typeof value === 'number' && Math.abs(value) > Number.MAX_SAFE_INTEGER) return undefined;
  if (typeof value !== 'string' && typeof value !== 'number' && typeof value !== 'boolean') return undefined;
  const text = [
    ...String(value)
      .replaceAll(/\p{Cc}/gu, '')
      .trim(),
  ]
    .slice(0, 255)
    .join('');
  return text === '' ? undefined : text;
}
