/** A read document held against the JSON Schema of its format; what ajv objects to, in the reader's words. */

import { nearestWord, nearestWords, offer, quoted } from '../base/nearest.ts';
import { stepsOfPointer } from '../base/pointer.ts';
import { byPlace, err, type Outcome, ok, type Place, type Problem } from '../base/problem.ts';
import { version } from '../version.ts';
import { canBeLeftOut, exampleAt, whereItBelongs } from './belongs.ts';
import type { PlainValue, ReadDocument, Step } from './document.ts';
import type { Formats, SchemaError } from './format.ts';
import type { AuditRecord } from './generated/audit-record.ts';
import { validators } from './generated/validators.js';
import { howToWrite, wordOf, writtenAt } from './how-to-write.ts';
import { misindented } from './indentation.ts';
import { Mends, mended } from './mend.ts';
import { runTogether } from './run-together.ts';
import { choicesOf, isRecord, parameterOf, propertiesOf } from './schema-error.ts';
import { Bare } from './value.ts';

export type Format = keyof Formats;

/** What each format's file is called when it is talked about. */
const called: { readonly [F in Format]: string } = {
  'audit-record': 'a record of the audit',
  estate: 'an estate file',
  gathered: 'what the survey script prints',
  'price-list': 'a price list',
  procedure: 'a file of procedures',
  'provider-survey': "a survey of the provider's list",
  'rule-pack': 'a rule pack',
  settings: 'the settings',
  survey: 'a survey',
  waivers: 'a waivers file',
};

/** A document as its format's type: whole, or mended, and then good only for finding what else is wrong with it. */
export interface Checked<F extends Format> {
  readonly value: Formats[F];
  /** The document that `value` is of. */
  readonly document: ReadDocument;
  /** What the schema finds in it. */
  readonly problems: readonly Problem[];
  /** What of `value` is not what was written. */
  readonly mends: Mends;
}

const nothingMended = new Mends();

/** The value as its format's type, and every problem the schema finds in it. An empty file is an empty mapping. */
export function validate<F extends Format>(format: F, document: ReadDocument): Outcome<Checked<F>> {
  const check = validators[format];
  const value = document.value ?? new Bare<PlainValue>();
  if (check(value)) return ok({ value, document, problems: [], mends: nothingMended });
  const otherVersion = ofOtherVersion(check.errors ?? [], document);
  if (otherVersion !== undefined) return err(otherVersion);
  const problems = inWords(check.errors ?? [], document, format);
  const mending = mended({ ...document, value }, (each) => (check(each) ? [] : (check.errors ?? [])));
  return mending !== undefined && check(mending.document.value)
    ? ok({ ...mending, value: mending.document.value, problems })
    : err(...problems);
}

/** What a file says of its own format's version, where that is another one. What its keys mean there is not known. */
function ofOtherVersion(errors: readonly SchemaError[], document: ReadDocument): Problem | undefined {
  const error = errors.find(({ instancePath }) => instancePath === '/format');
  const { allowedValue, allowedValues = [allowedValue] } = error?.params ?? {};
  const [known] = Array.isArray(allowedValues) ? allowedValues : [];
  return error && otherFormat(error.data, known, document.placeOfValue(['format']));
}

/** That a file is of another version of a format than the known one; nothing where it is not of that format at all. */
export function otherFormat(written: unknown, known: unknown, place: Place): Problem | undefined {
  if (typeof written !== 'string' || typeof known !== 'string' || written === known) return undefined;
  const name = known.replace(/[0-9]+$/, '');
  if (!written.startsWith(name) || !/^[0-9]+$/.test(written.slice(name.length))) return undefined;
  return {
    place,
    message: `this is of the format ${written}, and Ullage ${version} reads ${known}`,
    advice: 'Use a version of Ullage that reads it, or have it written anew by this one.',
  };
}

/** Whether a value that was read back is a record of the audit. */
export const isAuditRecord = (value: unknown): value is AuditRecord => validators['audit-record'](value);

/** Each slip is held against every error: of so many errors at most is it asked whether they are one. */
const mostErrors = 200;

/** Schema errors as problems: one for each thing to put right, in the order of the file. */
function inWords(errors: readonly SchemaError[], document: ReadDocument, format: Format): readonly Problem[] {
  const problems: Problem[] = [];
  const seen = new Set<string>();
  // A bad name is reported by propertyNames and again by the pattern beneath it; a bad branch of a choice is
  // reported by each branch. The outer error alone says what to do.
  const beside = new Map<string, SchemaError[]>();
  for (const error of errors) {
    const others = beside.get(error.instancePath);
    if (others === undefined) beside.set(error.instancePath, [error]);
    else others.push(error);
  }
  const here = (path: readonly Step[]): string => whereIn(path, document.value, called[format]);
  const first = errors.slice(0, mostErrors);
  const slips = [
    ...misindented(first, document, format, here),
    ...runTogether(first, document, format, here),
  ];
  for (const { place, message, advice } of slips)
    problems.push({ place, message, advice, excerpt: document.excerpt(place) });
  for (const error of errors) {
    if (error.propertyName !== undefined && error.keyword !== 'propertyNames') continue;
    if (slips.some(({ explains }) => explains(error))) continue;
    const others = beside.get(error.instancePath) ?? [];
    if (others.some((outer) => saysMore(outer, error) || spellingExplains(outer, error, others))) continue;
    const { place, message, advice } = problemOf(error, document, format, others);
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
  // What it can be says what kind it is, too.
  if (outer.keyword === 'enum') return inner.keyword === 'type';
  return outer.keyword === 'discriminator' && inner.keyword === 'required';
}

const isUnknownKey = ({ keyword }: SchemaError): boolean =>
  keyword === 'additionalProperties' || keyword === 'unevaluatedProperties';

/** The key that an unknown one was most likely meant to be; one that is missing sooner than another as near. */
function meantKey(unknown: SchemaError, all: readonly SchemaError[]): string | undefined {
  const known = Object.keys(propertiesOf(unknown.parentSchema ?? {}));
  const missing = all
    .filter((error) => error.keyword === 'required' && error.instancePath === unknown.instancePath)
    .map((error) => parameterOf(error))
    .filter((key) => known.includes(key));
  return nearestWord(parameterOf(unknown), [...missing, ...known]);
}

/** One word as one and as many. */
const isOtherNumber = (a: string, b: string): boolean => `${a}s` === b || a === `${b}s`;

/** Whether something is missing only because its key is misspelt: to put the spelling right is all there is to do. */
function spellingExplains(unknown: SchemaError, error: SchemaError, all: readonly SchemaError[]): boolean {
  if (!isUnknownKey(unknown) || unknown.instancePath !== error.instancePath) return false;
  switch (error.keyword) {
    case 'required':
      return parameterOf(error) === meantKey(unknown, all);
    case 'oneOf': {
      const choices = choicesOf(error.parentSchema ?? {});
      const meant = meantKey(unknown, all);
      const given = isRecord(error.data) ? Object.keys(error.data) : [];
      return meant !== undefined && choices.includes(meant) && !choices.some((key) => given.includes(key));
    }
    default: // ajv's other keywords
      return false;
  }
}

interface Words {
  readonly place: Place;
  readonly message: string;
  readonly advice: string;
}

function problemOf(
  error: SchemaError,
  document: ReadDocument,
  format: Format,
  all: readonly SchemaError[],
): Words {
  const path = stepsOfPointer(error.instancePath);
  const here = whereIn(path, document.value, called[format]);
  const schema = error.parentSchema ?? {};
  const key = parameterOf(error);
  switch (error.keyword) {
    case 'additionalProperties':
    case 'unevaluatedProperties': {
      const known = Object.keys(propertiesOf(schema));
      const meant = meantKey(error, all);
      const value = isRecord(error.data) && Object.hasOwn(error.data, key) ? error.data[key] : undefined;
      const belongs = whereItBelongs({ format, path, key, value });
      const isMissing = all.some((each) => each.keyword === 'required' && parameterOf(each) === meant);
      const isOffered = meant !== undefined && (isMissing || belongs?.here !== true);
      // `volume:` with volumes beneath it is meant for `volumes:`, though elsewhere there is a key of that name.
      if (meant !== undefined && isOtherNumber(key, meant) && typeof value === 'object') {
        const example = exampleAt(format, [...path, meant]);
        return {
          place: document.placeOfKey([...path, key]),
          message: `${quoted(key)} is not a key of ${here}`,
          advice: `Did you mean ${meant}?${example === undefined ? '' : ` Write it as in ${example}.`}`,
        };
      }
      return {
        place: document.placeOfKey([...path, key]),
        message: `${quoted(key)} is not a key of ${here}`,
        advice: [
          ...(isOffered ? [`Did you mean ${meant}?`] : []),
          belongs?.words ?? keysHere(key, known),
        ].join(' '),
      };
    }
    case 'required':
      return {
        place: document.placeOfKey(path),
        message: `${here} has no ${quoted(key)}`,
        advice: addKey(key, propertiesOf(schema)[key]),
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
        advice: `${offerFor(error.data, allowed)}It is one of ${allowed.join(', ')}.`,
      };
    }
    case 'discriminator': {
      const value = error.params.tagValue;
      const known = rulesOf(schema);
      if (value === undefined) {
        return {
          place: document.placeOfKey(path),
          message: `${here} names no rule`,
          advice: 'Add rule: and the name of the rule; `ullage rules` lists them.',
        };
      }
      return wordOf(value) === undefined
        ? {
            place: document.placeOfValue([...path, 'rule']),
            message: `rule of ${here} is ${quoted(value)}, which is not the name of a rule`,
            advice: 'Write the name of one; `ullage rules` lists them.',
          }
        : {
            place: document.placeOfValue([...path, 'rule']),
            message: `there is no rule ${quoted(value)}`,
            advice: `${offerFor(value, known)}\`ullage rules\` lists them.`,
          };
    }
    case 'uniqueItems': {
      const index = typeof error.params.i === 'number' ? error.params.i : 0;
      const twin: unknown = Array.isArray(error.data) ? error.data[index] : undefined;
      return {
        place: document.placeOfValue([...path, index]),
        message: `${here} names ${quoted(twin)} twice`,
        advice: 'Keep one of the two.',
      };
    }
    case 'oneOf':
      return {
        place: document.placeOfKey(path),
        message: `${here} does not have exactly one of ${choicesOf(schema).join(', ')}`,
        advice: 'Keep one of them.',
      };
    default: {
      // Every other keyword is said by what the schema asks for.
      const place = document.placeOfValue(path);
      const isBare = error.data === null || error.data === '';
      const isEmpty = isBare || (/^min(?:Items|Properties)$/.test(error.keyword) && error.params.limit === 1);
      const example = error.keyword === 'type' || isEmpty ? exampleAt(format, path) : undefined;
      if (isEmpty && path.length > 0) {
        const leaveOut = canBeLeftOut(format, path) ? ' Or remove the key, which can be left out.' : '';
        return {
          place: error.data === null ? document.placeOfKey(path) : place,
          message: `${here} ${isBare ? 'has no value' : 'is empty'}`,
          advice: `${example === undefined ? (describe(schema) ?? 'Write one.') : `Write it as in ${example}.`}${leaveOut}`,
        };
      }
      return {
        place,
        message: `${here} is ${quoted(error.data)}, which ${misfit(error, schema)}`,
        advice:
          howToWrite(schema, error.data, path, { example, written: writtenAt(document, place) }) ??
          (example === undefined ? undefined : `Write it as in ${example}.`) ??
          describe(schema) ??
          'See the schema of the format.',
      };
    }
  }
}

function misfit(error: SchemaError, schema: Readonly<Record<string, unknown>>): string {
  const title =
    typeof schema.title === 'string' && schema.type === 'string' ? asSpoken(schema.title) : undefined;
  if (title !== undefined && (error.keyword === 'pattern' || error.keyword === 'type')) {
    return `is not ${/^[aeiou]/.test(title) ? 'an' : 'a'} ${title}`;
  }
  const limit = String(error.params.limit);
  switch (error.keyword) {
    case 'type':
      return `is not ${kindWord(error.params.type)}`;
    case 'minimum':
      return `is less than ${limit}`;
    case 'maximum':
      return `is more than ${limit}`;
    case 'exclusiveMinimum':
      return `is not more than ${limit}`;
    case 'minItems':
    case 'minLength':
    case 'minProperties':
      return 'is too short';
    case 'maxLength':
      return `is longer than ${limit} characters`;
    case 'pattern':
      return 'is not written as it has to be';
    default: // ajv's other keywords
      return 'does not fit';
  }
}

/** The name of a type as people say it: `MountPoint` is a mount point. */
const asSpoken = (title: string): string => title.replaceAll(/(?<=[a-z])(?=[A-Z])/g, ' ').toLowerCase();

const mostKeys = 20;

/** Where there are many, only those that look most like it. */
const keysHere = (key: string, known: readonly string[]): string =>
  known.length <= mostKeys
    ? `The keys here are ${known.join(', ')}.`
    : `Of the ${known.length} keys here the nearest are ${nearestWords(key, known, 6).join(', ')}.`;

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

/** What to do about a key that is missing: the key to write, what it can be, and what it is for. */
function addKey(key: string, schema: unknown): string {
  const choices = isRecord(schema) && Array.isArray(schema.enum) ? `, one of ${schema.enum.join(', ')}` : '';
  const meaning = describe(schema);
  return `Add \`${quoted(key)}: …\`${choices}.${meaning === undefined ? '' : ` ${meaning}`}`;
}

const offerFor = (value: unknown, known: readonly string[]): string => offer(wordOf(value) ?? '', known);

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

const describe = (schema: unknown): string | undefined =>
  isRecord(schema) && typeof schema.description === 'string' ? schema.description : undefined;

const rulesOf = (schema: Readonly<Record<string, unknown>>): readonly string[] =>
  Array.isArray(schema.oneOf)
    ? schema.oneOf.flatMap((branch: unknown) => {
        const rule = isRecord(branch) ? propertiesOf(branch).rule : undefined;
        return isRecord(rule) && typeof rule.const === 'string' ? [rule.const] : [];
      })
    : [];
