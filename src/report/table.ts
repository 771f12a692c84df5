/** Tables of text: one shape, drawn for a terminal or as GFM. */
import stringWidth from 'string-width';
import { visible } from '../base/visible.ts';
import { markdownText } from './markdown-text.ts';

export interface TextColumn {
  readonly title: string;
  readonly align: 'left' | 'right';
}

/** Cells are plain text, as many in each row as there are columns; they may come from input. */
export interface TextTable {
  readonly columns: readonly TextColumn[];
  readonly rows: readonly (readonly string[])[];
}

/** A table within a width; where it does not fit, each row is stacked, its first cell on top. */
export function textTable({ columns, rows }: TextTable, width: number): readonly string[] {
  const shown = rows.map((row) => row.map(visible));
  const natural = columns.map(({ title }, index) =>
    shown.reduce((most, row) => Math.max(most, widthOf(row[index] ?? '')), widthOf(title)),
  );
  // Asked before anything is padded: one cell as long as a file would widen every row.
  const whole = natural.reduce((sum, each) => sum + each, 0) + 2 * (columns.length - 1);
  if (whole > width) return shown.flatMap((row) => stacked(columns, row, width));
  const line = (cells: readonly string[]): string =>
    columns
      .map(({ align }, index) => {
        const cell = cells[index] ?? '';
        const space = ' '.repeat((natural[index] ?? 0) - widthOf(cell));
        return align === 'right' ? `${space}${cell}` : `${cell}${space}`;
      })
      .join('  ')
      .trimEnd();
  return [columns.map(({ title }) => title), ...shown].map(line);
}

function stacked(
  columns: readonly TextColumn[],
  [first = '', ...cells]: readonly string[],
  width: number,
): readonly string[] {
  const titles = columns.slice(1).map(({ title }) => title);
  const widest = Math.max(0, ...titles.map((title) => widthOf(title)));
  return [
    ...wrapped(first, width),
    ...cells.flatMap((cell, index) => {
      if (cell === '') return [];
      const title = titles[index] ?? '';
      return hung(`  ${title}${' '.repeat(widest - widthOf(title))}  `, cell, width);
    }),
  ];
}

/** Characters as they are seen. The first segmenter of a process takes its time to make, and most reports need none. */
const charactersOf = (text: string): readonly string[] =>
  [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text)].map(({ segment }) => segment);

/** Plain ASCII and the signs of our own, which is nearly everything, is one column a character. */
const isOneColumnEach = (text: string): boolean => /^[ -~≈×·…’█▒░]*$/.test(text);

/** Finding characters takes time by the square of a text's length (measured on Node 20), so long text goes in parts. */
const partLength = 500;

function partsOf(text: string): readonly string[] {
  if (text.length <= partLength) return [text];
  const parts: string[] = [];
  for (let start = 0; start < text.length; start += partLength)
    parts.push(text.slice(start, start + partLength));
  return parts;
}

/** How many columns of a screen text takes. */
export const widthOf = (text: string): number =>
  isOneColumnEach(text) ? text.length : partsOf(text).reduce((sum, part) => sum + stringWidth(part), 0);

/**
 * Breaks visible text into lines of a width, within a word where one is too long. Written here because the text holds
 * no escapes and a judgement may hold ten thousand findings, or one name as long as a file: the libraries that wrap
 * around escapes take seconds for either, and change how accents are encoded.
 */
export function wrapped(text: string, width: number): readonly string[] {
  const most = Math.max(8, width);
  const lines: string[] = [];
  let line: string[] = [];
  let used = 0;
  const finish = (): void => {
    lines.push(line.join(' '));
    line = [];
    used = 0;
  };
  for (const word of text.split(' ')) {
    const wide = widthOf(word);
    if (line.length > 0 && used + 1 + wide > most) finish();
    if (wide <= most) {
      used += wide + (line.length > 0 ? 1 : 0);
      line.push(word);
    } else {
      const broken = pieces(word, most);
      const last = broken.pop() ?? '';
      for (const piece of broken) lines.push(piece);
      line = [last];
      used = widthOf(last);
    }
  }
  finish();
  return lines;
}

/** A word in pieces no wider than a line, never within a character. */
function pieces(word: string, most: number): string[] {
  const found: string[] = [];
  let piece = '';
  let used = 0;
  const widths = new Map<string, number>();
  for (const part of partsOf(word)) {
    const characters = isOneColumnEach(part) ? part : charactersOf(part);
    for (const character of characters) {
      const wide = widths.get(character) ?? widthOf(character);
      widths.set(character, wide);
      if (used + wide > most) {
        found.push(piece);
        piece = '';
        used = 0;
      }
      piece += character;
      used += wide;
    }
  }
  return [...found, piece];
}

/** Text that hangs from a lead: what does not fit on the lead's line goes on beneath its beginning. */
export function hung(lead: string, text: string, width: number): readonly string[] {
  const indent = widthOf(lead);
  return wrapped(text, width - indent).map((line, index) =>
    `${index === 0 ? lead : ' '.repeat(indent)}${line}`.trimEnd(),
  );
}

/** A GFM table: its head, which every row needs, and its rows. */
export function markdownTable({ columns, rows }: TextTable): {
  readonly head: string;
  readonly rows: readonly string[];
} {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return {
    head: [
      line(columns.map(({ title }) => title)),
      line(columns.map(({ align }) => (align === 'right' ? '---:' : '---'))),
    ].join('\n'),
    rows: rows.map((row) => line(row.map((cell) => markdownText(cell, 'cell')))),
  };
}
