/** How a value that does not fit is most likely meant to be written: what was written, in the form that is taken. */
import type { Place } from '../base/problem.ts';
import type { ReadDocument } from './document.ts';
import type { Step } from './value.ts';

type Schema = Readonly<Record<string, unknown>>;

/**
 * @param example how the key is written with a value, where one is known
 * @param written a number as its file has it
 * @returns what to do; undefined where it cannot be told
 */
export function howToWrite(
  schema: Schema,
  value: unknown,
  path: readonly Step[],
  { example, written }: { readonly example: string | undefined; readonly written: string | undefined },
): string | undefined {
  const text = typeof value === 'number' ? (written ?? `${value}`) : wordOf(value);
  switch (schema.type) {
    case 'array':
      return text === undefined || example === undefined ? undefined : asList(text, example);
    case 'boolean':
      return text === undefined ? undefined : asTruth(text);
    case 'number':
      return text === undefined || schema.maximum !== 1 ? undefined : asShare(text);
    case 'string':
      return text === undefined ? oneForEach(value, path) : asText(schema, text, value);
    default: // what else a schema may ask for
      return undefined;
  }
}

/** A word, or several with commas, where a list of words is wanted. */
export function asList(text: string, example: string): string | undefined {
  const [, key] = /^`([^:`]+): \[ [^{}]+ \]`$/.exec(example) ?? [];
  const words = text.split(/[\s,;]+/).filter((word) => word !== '');
  return key === undefined ||
    words.length === 0 ||
    !words.every((word) => /^[\p{L}\p{N}][\p{L}\p{N}._-]*$/u.test(word))
    ? undefined
    : `Write \`${key}: [ ${words.join(', ')} ]\`.`;
}

function asTruth(text: string): string | undefined {
  if (/^(?:yes|y|on|true|1)$/i.test(text)) return 'Write true.';
  return /^(?:no|n|off|false|0)$/i.test(text) ? 'Write false.' : undefined;
}

/** A percentage, where a share of 1 is wanted. */
function asShare(text: string): string | undefined {
  const [, count] = /^([0-9]{1,3}(?:\.[0-9]{1,6})?)\s*%?$/.exec(text) ?? [];
  if (count === undefined || Number(count) > 100) return undefined;
  return `It is a share of 1: for ${count} %, write ${Number((Number(count) / 100).toFixed(8))}.`;
}

/** A list of words where one is wanted, in an entry of which there may be several. */
function oneForEach(value: unknown, path: readonly Step[]): string | undefined {
  const list = path.at(-3);
  const isOfEntry = Array.isArray(value) && typeof list === 'string' && /^[0-9]+$/.test(`${path.at(-2)}`);
  return isOfEntry ? `Write one here, and another entry of \`${list}:\` for each of the others.` : undefined;
}

function asText(schema: Schema, text: string, value: unknown): string | undefined {
  if (schema.title === 'Size') return sizeToWrite(text);
  if (schema.title === 'Date') return dayToWrite(text);
  if (typeof value !== 'number' && typeof value !== 'boolean') return undefined;
  return fits(schema, text) ? `Write it in quotes: "${text}".` : undefined;
}

const fits = ({ pattern }: Schema, text: string): boolean =>
  typeof pattern !== 'string' || new RegExp(pattern, 'u').test(text);

/** A size needs a unit of a standard; `G` and `gib` could be either of two. */
function sizeToWrite(text: string): string | undefined {
  const whole = text.replace(grouping, '');
  const [, count, prefix] = /^([0-9]{1,15}(?:\.[0-9]{1,15})?)\s*(?:([kmgtp])i?b?)?$/i.exec(whole) ?? [];
  if (count === undefined) return undefined;
  if (prefix === undefined) return `Write ${count} GiB or ${count} GB.`;
  const [, unit] = /\s*((?:[KMGTP]i|[kMGTP])B)$/.exec(whole) ?? [];
  if (whole !== text && unit !== undefined)
    return `Write ${count} ${unit}, without anything between the digits.`;
  const binary = prefix.toUpperCase();
  const decimal = binary === 'K' ? 'k' : binary;
  return `Did you mean ${count} ${binary}iB or ${count} ${decimal}B?`;
}

/** What sets thousands apart; a comma or an apostrophe with other than three digits behind it may be a decimal one. */
const grouping = /(?<=[0-9])[,'’ _](?=[0-9]{3}(?![0-9]))/g;

/** The days in use beside that of RFC 3339, where the order of day and month is plain. */
function dayToWrite(text: string): string | undefined {
  const [, year, month, day] = /^([0-9]{4})[/.]?([0-9]{1,2})[/.]?([0-9]{1,2})$/.exec(text) ?? [];
  const [, d, m, y] = /^([0-9]{1,2})\.\s?([0-9]{1,2})\.\s?([0-9]{4})$/.exec(text) ?? [];
  const parts = [y ?? year, m ?? month, d ?? day];
  if (parts.some((part) => part === undefined)) return undefined;
  const written = parts.map((part = '') => part.padStart(2, '0')).join('-');
  return Number.isNaN(Date.parse(written)) ? undefined : `Write ${written}.`;
}

/** A value that is one word or number, as text. A mapping or a list is none, and cannot be made text of. */
export const wordOf = (value: unknown): string | undefined =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'
    ? `${value}`
    : undefined;

/** A number as its file writes it: read as a number, 120.00 has lost its cents. */
export const writtenAt = (document: ReadDocument, place: Place): string | undefined =>
  /^[0-9]+(?:\.[0-9]+)?(?![\w.])/.exec(document.excerpt(place).slice(place.column - 1))?.[0];
