/**
 * Hostile text made harmless. Names, reasons, file names and source lines come from whoever proposed the branch;
 * every string that reaches a person goes through here, ours as well, so that none is forgotten.
 */

/**
 * What steers a terminal, breaks a line, reorders text or cannot be seen: controls (C0, C1, ESC), format characters
 * (bidirectional controls, zero-width ones), line and paragraph separators, halves of surrogate pairs, whatever
 * Unicode calls ignorable, and every space but the plain one.
 */
const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Default_Ignorable_Code_Point}]|(?! )\p{Zs}/gu;

const shortNames: Readonly<Record<string, string>> = { '\n': '\\n', '\r': '\\r', '\t': '\\t' };

const spelt = (character: string): string =>
  shortNames[character] ?? `\\u{${(character.codePointAt(0) ?? 0).toString(16).toUpperCase()}}`;

/**
 * Text in which everything can be seen, on one line: `\n`, `\u{202E}`. A CI host takes a printed line that begins
 * with `::` or holds `##[` for a command of its own, so the second character of either is spelt out too.
 * (That the older `##[` counts anywhere in a line is from memory.)
 */
export const visible = (text: string): string =>
  text
    .replace(unseen, spelt)
    .replace(/(?<=:):/g, '\\u{3A}')
    .replace(/(?<=#)#(?=\[)/g, '\\u{23}');

/** Visible text of at most so many characters, the rest left out with a mark. */
export function clipped(text: string, most: number): string {
  const characters = [...visible(text.length > most * 2 ? text.slice(0, most * 2) : text)];
  const whole = characters.length <= most && text.length <= most * 2;
  return whole ? characters.join('') : `${characters.slice(0, most - 1).join('')}…`;
}
