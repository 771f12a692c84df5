/** A read document held against the JSON Schema of its format; what ajv objects to, in the reader's words. */
import type { ReadDocument, Step } from './document.ts';
import type { AuditRecord } from './generated/audit-record.ts';
import type { EstateFile } from './generated/estate.ts';
import type { PriceListFile } from './generated/price-list.ts';
import type { RulePackFile } from './generated/rule-pack.ts';
import type { SettingsFile } from './generated/settings.ts';
import { validators } from './generated/validators.js';
import type { WaiversFile } from './generated/waivers.ts';
import { offer, quoted } from './nearest.ts';
import { byPlace, found, type Outcome, type Place, type Problem, refused } from './problem.ts';

/** Every format, and the type that a file of it has once it is valid. */
export interface Formats {
  'audit-record': AuditRecord;
  estate: EstateFile;
  'price-list': PriceListFile;
  'rule-pack': RulePackFile;
  settings: SettingsFile;
  waivers: WaiversFile;
}

export type Format = keyof Formats;

/** What each format's file is called when it is talked about. */
const called: { readonly [F in Format]: string } = {
  'audit-record': 'a record of the audit',
  estate: 'an estate file',
  'price-list': 'a price list',
  'rule-pack': 'a rule pack',
  settings: 'the settings',
  waivers: 'a waivers file',
};

/** What ajv says of one failure; only what is used here. */
export interface SchemaError {
  readonly keyword: string;
  readonly schemaPath: string;
  readonly instancePath: string;
  readonly params: Readonly<Record<string, unknown>>;
  readonly parentSchema?: Readonly<Record<string, unknown>>;
  readonly data?: unknown;
  readonly propertyName?: string;
  readonly message?: string;
}

/** The value as its format's type, or every problem the schema finds in it. An empty file is an empty mapping. */
export function validate<F extends Format>(format: F, document: ReadDocument): Outcome<Formats[F]> {
  const value = document.value ?? Object.create(null);
  const check = validators[format];
  if (check(value)) return found(value);
  return refused(...inWords(check.errors ?? [], document, called[format]));
}

export const pathOf = (instancePath: string): Step[] =>
  instancePath
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));

/** Schema errors as problems: one for each thing to put right, in the order of the file. */
export function inWords(
  errors: readonly SchemaError[],
  document: ReadDocument,
  format: string,
): readonly Problem[] {
  const problems: Problem[] = [];
  const seen = new Set<string>();
  // A bad name is reported by propertyNames and again by the pattern beneath it; a bad branch of a choice is
  // reported by each branch. The outer error alone says what to do.
  for (const error of errors) {
    if (error.propertyName !== undefined && error.keyword !== 'propertyNames') continue;
    if (errors.some((outer) => saysMore(outer, error))) continue;
    const { place, message, advice } = problemOf(error, document, format, errors);
    const key = `${place.line}:${place.column}:${message}`;
    if (seen.has(key)) continue;
    seen.add(key);
    problems.push({ place, message, advice, excerpt: document.excerpt(place) });
  }
  return problems.sort(byPlace);
}

/** Whether an outer error about the same value makes an inner one redundant. */
function saysMore(outer: SchemaError, inner: SchemaError): boolean {
  if (outer === inner || outer.instancePath !== inner.instancePath) return false;
  if (outer.keyword === 'oneOf') return inner.schemaPath.startsWith(`${outer.schemaPath}/`);
  return outer.keyword === 'discriminator' && inner.keyword === 'required';
}

interface Words {
  readonly place: Place;
  readonly message: string;
  readonly advice: string;
}

function problemOf(
  error: SchemaError,
  document: ReadDocument,
  format: string,
  all: readonly SchemaError[],
): Words {
  const path = pathOf(error.instancePath);
  const here = whereIn(path, document.value, format);
  const schema = error.parentSchema ?? {};
  const key = String(error.params[keyParameter[error.keyword] ?? ''] ?? '');
  switch (error.keyword) {
    case 'additionalProperties':
    case 'unevaluatedProperties': {
      const known = Object.keys(propertiesOf(schema));
      return {
        place: document.placeOfKey([...path, key]),
        message: `${quoted(key)} is not a key of ${here}`,
        advice: `${offer(key, known)}The keys here are ${known.join(', ')}.`,
      };
    }
    case 'required':
      return {
        place: document.placeOfKey(path),
        message: `${here} has no ${quoted(key)}`,
        advice: describe(propertiesOf(schema)[key]) ?? `Add ${quoted(key)}.`,
      };
    case 'propertyNames': {
      const pattern = all.find(
        (each) => each.propertyName === key && each.instancePath === error.instancePath,
      );
      return {
        place: document.placeOfKey([...path, key]),
        message: `${quoted(key)} cannot be a name in ${here}`,
        advice: describe(pattern?.parentSchema) ?? 'Choose another name.',
      };
    }
    case 'enum': {
      const allowed = Array.isArray(schema.enum) ? schema.enum.map(String) : [];
      return {
        place: document.placeOfValue(path),
        message: `${here} cannot be ${quoted(error.data)}`,
        advice: `${offer(String(error.data), allowed)}It is one of ${allowed.join(', ')}.`,
      };
    }
    case 'discriminator': {
      const value = error.params.tagValue;
      const known = rulesOf(schema);
      return value === undefined
        ? {
            place: document.placeOfKey(path),
            message: `${here} names no rule`,
            advice: 'Add rule: and the name of the rule; `ullage rules` lists them.',
          }
        : {
            place: document.placeOfValue([...path, 'rule']),
            message: `there is no rule ${quoted(value)}`,
            advice: `${offer(String(value), known)}\`ullage rules\` lists them.`,
          };
    }
    case 'oneOf':
      return {
        place: document.placeOfKey(path),
        message: `${here} does not have exactly one of ${choicesOf(schema).join(', ')}`,
        advice: 'Keep one of them.',
      };
    default:
      return {
        place: document.placeOfValue(path),
        message: `${here} is ${quoted(error.data)}, which ${misfit(error, schema)}`,
        advice: `${meantAsText(schema, error.data)}${describe(schema) ?? 'See the schema of the format.'}`,
      };
  }
}

const keyParameter: Readonly<Record<string, string>> = {
  additionalProperties: 'additionalProperty',
  unevaluatedProperties: 'unevaluatedProperty',
  required: 'missingProperty',
  propertyNames: 'propertyName',
};

function misfit(error: SchemaError, schema: Readonly<Record<string, unknown>>): string {
  const title =
    typeof schema.title === 'string' && schema.type === 'string' ? schema.title.toLowerCase() : undefined;
  if (title !== undefined && (error.keyword === 'pattern' || error.keyword === 'type')) {
    return `is not ${/^[aeiou]/.test(title) ? 'an' : 'a'} ${title}`;
  }
  if (error.keyword === 'type') return `is not ${kindWord(error.params.type)}`;
  if (error.keyword === 'minItems') return 'is too short a list';
  return error.message ?? 'does not fit';
}

const kindWords: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  integer: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a mapping',
  null: 'nothing',
};

const kindWord = (type: unknown): string => kindWords[String(type)] ?? String(type);

/** A number where text is wanted is most often a value somebody forgot to put in quotes. */
const meantAsText = (schema: Readonly<Record<string, unknown>>, value: unknown): string =>
  schema.type === 'string' && (typeof value === 'number' || typeof value === 'boolean')
    ? `Text that looks like a number goes in quotes. `
    : '';

/** The end of a path in words: `size of plates-1`, `item 2 of members`. A name may be all digits; an item is one of a list. */
function whereIn(path: readonly Step[], top: unknown, format: string): string {
  let container = top;
  const words = path.map((step) => {
    const word = Array.isArray(container) ? `item ${Number(step) + 1}` : String(step);
    container =
      typeof container === 'object' && container !== null ? Reflect.get(container, step) : undefined;
    return word;
  });
  const [above, last] = [words.at(-2), words.at(-1)];
  if (last === undefined) return format;
  return above === undefined ? quoted(last) : `${quoted(last)} of ${quoted(above)}`;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const propertiesOf = (schema: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> =>
  isRecord(schema.properties) ? schema.properties : {};

const describe = (schema: unknown): string | undefined =>
  isRecord(schema) && typeof schema.description === 'string' ? schema.description : undefined;

const choicesOf = (schema: Readonly<Record<string, unknown>>): readonly string[] =>
  Array.isArray(schema.oneOf)
    ? schema.oneOf.flatMap((branch: unknown) =>
        isRecord(branch) && Array.isArray(branch.required) ? branch.required.map(String) : [],
      )
    : [];

const rulesOf = (schema: Readonly<Record<string, unknown>>): readonly string[] =>
  Array.isArray(schema.oneOf)
    ? schema.oneOf.flatMap((branch: unknown) => {
        const rule = isRecord(branch) ? propertiesOf(branch).rule : undefined;
        return isRecord(rule) && typeof rule.const === 'string' ? [rule.const] : [];
      })
    : [];
