/** Draws sections for a terminal. The only escapes in what comes out are these few of our own. */
import { visible } from './escape.ts';
import { pointedAt } from './excerpt.ts';
import type { Block, Entry, Field, Section, Tone } from './sections.ts';
import { hung, textTable, wrapped } from './table.ts';

export interface Screen {
  /** In columns. Tables that do not fit are stacked; text is wrapped. */
  readonly width: number;
  readonly colour: boolean;
}

/** Select Graphic Rendition (ECMA-48, 8.3.117): on and off. */
const sgr = {
  bold: ['\u001b[1m', '\u001b[22m'],
  grave: ['\u001b[31m', '\u001b[39m'],
  caution: ['\u001b[33m', '\u001b[39m'],
} as const;

const narrowest = 20;

/** No line is drawn for less than this, however narrow the screen says it is. */
export const atLeast = ({ width, colour }: Screen): Screen => ({ width: Math.max(narrowest, width), colour });

const paint = (text: string, style: keyof typeof sgr, { colour }: Screen): string =>
  colour && text !== '' ? `${sgr[style][0]}${text}${sgr[style][1]}` : text;

const accent = (text: string, tone: Tone, screen: Screen): string =>
  tone === 'plain' ? text : paint(text, tone, screen);

/** The first line or lines: bold, and with the verdict's accent. */
export const drawHeadline = (headline: string, tone: Tone, screen: Screen): readonly string[] =>
  wrapped(visible(headline), screen.width).map((line) => paint(accent(line, tone, screen), 'bold', screen));

/** Labelled lines, their text in one column. */
export function drawFields(fields: readonly Field[], indent: number, screen: Screen): readonly string[] {
  const widest = Math.max(0, ...fields.map(({ label }) => label.length));
  return fields.flatMap((field) => {
    const lead = `${' '.repeat(indent)}${field.label.padEnd(widest)}  `;
    return hung(lead, visible(fieldText(field)), screen.width);
  });
}

function fieldText(field: Field): string {
  switch (field.form) {
    case 'text':
    case 'advice':
      return field.text;
    case 'example':
      return field.command;
    case 'place': {
      const { file, line, column } = field.place;
      return `${file}:${line}:${column}${field.note === '' ? '' : ` ${field.note}`}`;
    }
  }
}

export const drawSections = (sections: readonly Section[], screen: Screen): readonly string[] =>
  sections.flatMap(({ title, blocks }) => [
    '',
    ...wrapped(visible(title), screen.width).map((line) => paint(line, 'bold', screen)),
    ...blocks.flatMap((block) => drawBlock(block, screen)),
  ]);

function drawBlock(block: Block, screen: Screen): readonly string[] {
  switch (block.kind) {
    case 'sentence':
      return hung('  ', visible(block.text), screen.width);
    case 'entries':
      return block.entries.flatMap((entry) => drawEntry(entry, screen));
    case 'table':
      return textTable(block.table, screen.width - 2).map((line) => `  ${line}`);
  }
}

function drawEntry({ lead, text, excerpt, fields }: Entry, screen: Screen): readonly string[] {
  const word = lead === undefined ? '' : `${lead.word}  `;
  const [first = '', ...others] = hung(`  ${word}`, visible(text), screen.width);
  const head =
    lead === undefined
      ? first
      : `  ${accent(lead.word, lead.tone, screen)}${first.slice(2 + lead.word.length)}`;
  return [
    head,
    ...others,
    ...(excerpt === undefined
      ? []
      : excerptLines(excerpt.source, excerpt.place, screen.width - 4).map((line) => `    ${line}`)),
    ...drawFields(fields, 4, screen),
  ];
}

/** The source line behind its number, and the pointer beneath. */
export function excerptLines(
  source: string,
  { line, column }: { readonly line: number; readonly column: number },
  width: number,
): readonly [string, string] {
  const gutter = `${line}: `;
  const [shown, pointer] = pointedAt(source, column, width - gutter.length);
  return [`${gutter}${shown}`.trimEnd(), `${' '.repeat(gutter.length)}${pointer}`];
}
