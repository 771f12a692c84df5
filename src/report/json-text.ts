/** JSON as text that any program reads and no terminal, log or reviewer is deceived by. */

/**
 * What can steer a terminal, reorder text or hide. A line break left in the text is one between two values: those
 * within strings are spelt out already.
 */
const unseen = /(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Default_Ignorable_Code_Point}]/gu;

const unit = (text: string, index: number): string =>
  `\\u${text.charCodeAt(index).toString(16).padStart(4, '0')}`;

const spelt = (character: string): string =>
  Array.from({ length: character.length }, (_, index) => unit(character, index)).join('');

/**
 * Indented by two spaces, with a line break at its end. Strings hold exactly what they held, spelt out (RFC 8259,
 * 7) where it could not be seen. A CI host takes `##[` anywhere in a printed line for a command of its own (from
 * memory), so that is spelt out too.
 */
export const jsonText = (value: unknown): string => `${seen(JSON.stringify(value, undefined, 2))}\n`;

/** As `jsonText`, on one line. */
export const jsonLine = (value: unknown): string => `${seen(JSON.stringify(value))}\n`;

const seen = (json: string): string => json.replace(unseen, spelt).replace(/(?<=#)#(?=\[)/g, '\\u0023');
