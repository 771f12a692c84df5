/** Draws a report for a terminal. The only escapes in what comes out are these few of our own. */
import type { Place } from '../base/problem.ts';
import { uriOf } from '../base/uri.ts';
import { visible } from '../base/visible.ts';
import { marks, shownTable } from './cells.ts';
import { excerptLines } from './excerpt.ts';
import type { Block, Entry, Field, ReportModel, Section, Tone } from './model/model.ts';
import { hung, textTable, wrapped } from './table.ts';

/** What a text is drawn for. */
export interface Screen {
  /** In columns. Tables that do not fit are stacked; text is wrapped. */
  readonly width: number;
  readonly colour: boolean;
  /** Whether every problem and finding is wanted, however many there are. */
  readonly all?: boolean;
  /** The folder that places are in, as a `file:` URL that ends in `/`, where the terminal can follow links. */
  readonly links?: string;
}

/** Select Graphic Rendition (ECMA-48, 8.3.117): on and off. */
const sgr = {
  bold: ['\u001b[1m', '\u001b[22m'],
  red: ['\u001b[31m', '\u001b[39m'],
  yellow: ['\u001b[33m', '\u001b[39m'],
} as const;

const narrowest = 20;

/** No line is drawn for less than this, however narrow the screen says it is. */
export const atLeast = (screen: Screen): Screen => ({
  ...screen,
  width: Math.max(narrowest, screen.width),
});

const paint = (text: string, style: keyof typeof sgr, { colour }: Screen): string =>
  colour && text !== '' ? `${sgr[style][0]}${text}${sgr[style][1]}` : text;

function accent(text: string, tone: Tone, screen: Screen): string {
  switch (tone) {
    case 'loses data':
    case 'fails':
      return paint(text, 'red', screen);
    case 'caution':
      return paint(text, 'yellow', screen);
    case 'plain':
      return text;
  }
}

/**
 * The whole report. The same model, width and choice of colour give the same bytes; no line is wider than the width,
 * from 40 columns on.
 */
export function drawReport({ tone, headline, fields, sections }: ReportModel, screen: Screen): string {
  const wide = atLeast(screen);
  return `${[
    ...drawHeadline(headline, tone, wide),
    ...drawFields(fields, 2, wide),
    ...drawSections(sections, wide),
  ].join('\n')}\n`;
}

/** The first line or lines: bold, and with the verdict's accent. */
export const drawHeadline = (headline: string, tone: Tone, screen: Screen): readonly string[] =>
  wrapped(visible(headline), screen.width).map((line) => paint(accent(line, tone, screen), 'bold', screen));

/** Labelled lines, their text in one column. */
function drawFields(fields: readonly Field[], indent: number, screen: Screen): readonly string[] {
  const widest = Math.max(0, ...fields.map(({ label }) => label.length));
  return fields.flatMap((field) => {
    const lead = `${' '.repeat(indent)}${field.label.padEnd(widest)}  `;
    const lines = hung(lead, visible(fieldText(field)), screen.width);
    return field.form === 'place' ? linked(lines, field.place, screen) : lines;
  });
}

/** A place as a link to its file (OSC 8, after ECMA-48's operating system commands), where it stands in one line. */
function linked(lines: readonly string[], place: Place, { links }: Screen): readonly string[] {
  const text = visible(placeText(place));
  if (links === undefined || text === '') return lines;
  return lines.map((line) =>
    line.endsWith(text) || line.includes(`${text} `)
      ? line.replace(text, () => `\u001b]8;;${links}${uriOf(place.file)}\u001b\\${text}\u001b]8;;\u001b\\`)
      : line,
  );
}

const placeText = ({ file, line, column }: Place): string => `${file}:${line}:${column}`;

function fieldText(field: Field): string {
  switch (field.form) {
    case 'text':
    case 'advice':
      return field.text;
    case 'example':
      return field.command;
    case 'place': {
      return `${placeText(field.place)}${field.note === '' ? '' : ` ${field.note}`}`;
    }
  }
}

const drawSections = (sections: readonly Section[], screen: Screen): readonly string[] =>
  sections.flatMap(({ title, blocks }) => [
    ...(title === ''
      ? []
      : ['', ...wrapped(visible(title), screen.width).map((line) => paint(line, 'bold', screen))]),
    ...blocks.flatMap((block) => drawBlock(block, screen)),
  ]);

function drawBlock(block: Block, screen: Screen): readonly string[] {
  switch (block.kind) {
    case 'sentence':
      return hung('  ', visible(block.text), screen.width);
    case 'entries':
      return block.entries.flatMap((entry) => drawEntry(entry, screen));
    case 'table':
      return textTable(shownTable(block.table), screen.width - 2).map((line) => `  ${line}`);
    case 'picture':
      return [];
    case 'legend':
      return hung(
        '  ',
        `${block.parts.map(({ part, text }) => `${marks[part]} ${visible(text)}`).join(', ')}.`,
        screen.width,
      );
  }
}

function drawEntry({ number, tag, text, excerpt, fields }: Entry, screen: Screen): readonly string[] {
  const before = number === undefined ? '' : `${number}  `;
  const word = tag === undefined ? '' : `${tag.word}  `;
  const [first = '', ...others] = hung(`  ${before}${word}`, visible(text), screen.width);
  const lead = 2 + before.length;
  const head =
    tag === undefined
      ? first
      : `${first.slice(0, lead)}${accent(tag.word, tag.tone, screen)}${first.slice(lead + tag.word.length)}`;
  return [
    head,
    ...others,
    ...(excerpt === undefined
      ? []
      : excerptLines(excerpt.source, excerpt.place, screen.width - 4).map((line) => `    ${line}`)),
    ...drawFields(fields, 4, screen),
  ];
}
