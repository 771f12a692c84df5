/** What the tools' JSON holds: some versions write a number as text, some as a number, and nothing as null or as ''. */
import { isRecord } from '../read/schema-error.ts';

export type Fields = Readonly<Record<string, unknown>>;

/** What cannot be a name: controls, and what stands for bytes that were no text. */
const unfit = /[\p{Cc}\u{FFFD}]/u;

const longestName = 255;

/** A name that a survey can keep; undefined where there is none, or one that it cannot. */
export function nameIn(fields: Fields, key: string): string | undefined {
  const text = textIn(fields, key);
  return text === undefined || unfit.test(text) || text.length > longestName ? undefined : text;
}

/** The text, without the spaces around it; undefined where there is none. */
export function textIn(fields: Fields, key: string): string | undefined {
  const value = Object.hasOwn(fields, key) ? fields[key] : undefined;
  const text = typeof value === 'string' ? value.trim() : typeof value === 'number' ? `${value}` : '';
  return text === '' ? undefined : text;
}

/** A count of bytes, as a survey writes it; a unit of bytes behind it is passed over. */
export function bytesIn(fields: Fields, key: string): string | undefined {
  const [, digits] = /^0*([0-9]{1,19})B?$/.exec(textIn(fields, key) ?? '') ?? [];
  return digits;
}

export function countIn(fields: Fields, key: string): number | undefined {
  const text = textIn(fields, key) ?? '';
  return /^[0-9]{1,15}$/.test(text) ? Number(text) : undefined;
}

/** The records of a list that a tool gives, whatever else is in it. */
export const recordsIn = (list: unknown): readonly Fields[] =>
  Array.isArray(list) ? list.filter((each: unknown) => isRecord(each)) : [];

/** A path as a survey keeps it; undefined where it is none. */
export const pathOf = (text: string | undefined): string | undefined =>
  text?.startsWith('/') === true && !unfit.test(text) && text.length <= 4096 ? text : undefined;
