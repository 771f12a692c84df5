/** A judgement as Markdown: CommonMark with GFM tables, no HTML, within a host's limit where there is one. */

import { clipped } from '../base/visible.ts';
import { counted } from '../base/wording.ts';
import type { Judgement } from '../policy/judgement.ts';
import { marks, shownTable } from './cells.ts';
import { excerptLines } from './excerpt.ts';
import { markdownAdvice, markdownBlock, markdownCode, markdownText } from './markdown-text.ts';
import { reportModel } from './model/judgement.ts';
import type { Block, Entry, Field, ReportModel, Section } from './model/model.ts';
import { summaryLine } from './model/verdict.ts';
import { markdownTable } from './table.ts';

export interface MarkdownOptions {
  /** The most bytes of UTF-8 that it may take; no character takes less than one, so it keeps a limit of characters too. */
  readonly limit?: number;
  /** Where the whole report is: an https address, a path, or the name of an artefact. */
  readonly fullReport?: string;
}

const excerptWidth = 100;

/** Any report, whole. */
export function drawMarkdown({ headline, fields, sections }: ReportModel): string {
  const head = [
    `## ${markdownText(headline)}`,
    ...(fields.length === 0 ? [] : [fields.map(fieldItem).join('\n')]),
  ];
  return wholeWithin(head, sections.map(sectionParts), Number.POSITIVE_INFINITY) ?? '';
}

/**
 * Writes a judgement as Markdown: CommonMark with GFM tables, no HTML. Names cannot write markup of their own.
 *
 * @param options a limit in bytes, as hosts have for comments, and where the whole is; whole where left out
 * @returns at most so many bytes of UTF-8; what is left out is counted in it
 *
 * @example
 * ```js
 * import { judgeRepository, reportMarkdown } from 'ullage';
 *
 * const judgement = await judgeRepository('.', { base: 'main', head: 'smaller-plates', on: '2026-11-20' });
 * console.log(Buffer.byteLength(reportMarkdown(judgement, { limit: 1000 })) <= 1000); // true
 * ```
 */
export function reportMarkdown(judgement: Judgement, { limit, fullReport }: MarkdownOptions = {}): string {
  const { headline, fields, sections } = reportModel(judgement);
  const head = [`## ${markdownText(headline)}`, fields.map(fieldItem).join('\n')];
  const parts = sections.map((section) =>
    sectionParts({ ...section, blocks: section.brief ?? section.blocks }),
  );
  const most = limit ?? Number.POSITIVE_INFINITY;
  return wholeWithin(head, parts, most) ?? cut(judgement, head, parts, most, pointer(fullReport));
}

/** The whole report; undefined as soon as it is known to be over the limit, and nothing more is written then. */
function wholeWithin(
  head: readonly string[],
  parts: readonly SectionParts[],
  limit: number,
): string | undefined {
  const written: string[] = [head.join('\n\n')];
  let size = bytesOf(written[0] ?? '') + 1;
  const write = (text: string): boolean => {
    written.push(text);
    size += bytesOf(text);
    return size <= limit;
  };
  for (const { title, blocks } of parts) {
    if (title !== '' && !write(`\n\n${title}`)) return undefined;
    for (const { head: top, between, pieces } of blocks) {
      if (!write(top === undefined ? '\n\n' : `\n\n${top}${between}`)) return undefined;
      for (const [index, piece] of pieces.entries()) {
        if (!write(`${index === 0 ? '' : between}${piece()}`)) return undefined;
      }
    }
  }
  return size <= limit ? `${written.join('')}\n` : undefined;
}

const bytesOf = (text: string): number => Buffer.byteLength(text);

/** A block as pieces that can be left out one by one, written when asked for; the head comes with the first. */
interface Pieces {
  readonly head: string | undefined;
  readonly between: string;
  readonly pieces: readonly (() => string)[];
}

interface SectionParts {
  readonly title: string;
  readonly name: string;
  readonly blocks: readonly Pieces[];
}

const sectionParts = ({ title, blocks }: Section): SectionParts => ({
  title: title === '' ? '' : `### ${markdownText(title)}`,
  name: clipped(title, 60),
  blocks: blocks.map(blockPieces).filter(({ head, pieces }) => head !== undefined || pieces.length > 0),
});

function blockPieces(block: Block): Pieces {
  switch (block.kind) {
    case 'sentence':
      return { head: undefined, between: '', pieces: [() => markdownAdvice(block.text)] };
    case 'entries':
      return { head: undefined, between: '\n', pieces: block.entries.map((entry) => () => entryItem(entry)) };
    case 'table': {
      const { head, rows } = markdownTable(shownTable(block.table));
      return { head, between: '\n', pieces: rows.map((row) => () => row) };
    }
    case 'picture':
      return { head: undefined, between: '', pieces: [] };
    case 'legend': {
      const said = block.parts.map(({ part, text }) => `${markdownCode(marks[part])} ${markdownText(text)}`);
      return { head: undefined, between: '', pieces: [() => `${said.join(', ')}.`] };
    }
  }
}

const joined = (head: string | undefined, between: string, pieces: readonly string[]): string =>
  [...(head === undefined ? [] : [head]), ...pieces].join(between);

const fieldItem = (field: Field): string => `- **${field.label}:** ${fieldText(field)}`;

function fieldText(field: Field): string {
  switch (field.form) {
    case 'text':
      return markdownText(field.text);
    case 'advice':
      return markdownAdvice(field.text);
    case 'example':
      return `${markdownCode(field.command)} (${markdownText(field.source)})`;
    case 'place': {
      const { file, line, column } = field.place;
      return `${markdownCode(`${file}:${line}:${column}`)}${field.note === '' ? '' : ` ${markdownText(field.note)}`}`;
    }
  }
}

function entryItem({ number, id, done = false, doneOn, tag, text, excerpt, fields }: Entry): string {
  const lead = [...(number === undefined ? [] : [String(number)]), ...(tag === undefined ? [] : [tag.word])];
  const box = id === undefined ? '' : `[${done ? 'x' : ' '}] `;
  const said = `- ${box}${lead.length === 0 ? '' : `**${lead.join(', ')}** `}${markdownText(text)}${id === undefined ? '' : ` #${markdownCode(id)}`}${doneOn === undefined ? '' : ` ${doneOn}`}`;
  const source =
    excerpt === undefined
      ? []
      : [indented(markdownBlock(excerptLines(excerpt.source, excerpt.place, excerptWidth)))];
  return [said, ...source, ...fields.map((field) => `  - ${field.label}: ${fieldText(field)}`)].join('\n');
}

const indented = (text: string): string => text.replace(/^/gm, '  ');

function pointer(fullReport: string | undefined): string {
  if (fullReport === undefined) return '`ullage gate --format markdown` prints the whole report.';
  // Only what cannot end a link's destination, or begin anything else, becomes one.
  return /^https:\/\/[\w.~:/?#@!$&'*+,;=%-]+$/.test(fullReport)
    ? `[The whole report](<${fullReport}>)`
    : `The whole report is in ${markdownCode(fullReport)}.`;
}

/**
 * As much of each section, in order, as fits whole; then what was left out, by count. The first lines always stand,
 * unless they alone are over the limit.
 */
function cut(
  judgement: Judgement,
  head: readonly string[],
  parts: readonly SectionParts[],
  limit: number,
  fullReport: string,
): string {
  // Room for the closing lines is set aside as if every section were left out.
  const closing = (left: readonly string[]): string =>
    ['### Left out here', left.join('\n'), fullReport].join('\n\n');
  const leftLine = (name: string, count: number): string =>
    `- ${markdownText(`${name}: ${counted(count, 'line')}`)}`;
  const sizeOf = ({ blocks }: SectionParts): number =>
    blocks.reduce((sum, { pieces }) => sum + pieces.length, 0);
  const reserve = bytesOf(`\n\n${closing(parts.map((part) => leftLine(part.name, sizeOf(part))))}\n`);
  let room = limit - reserve - bytesOf(head.join('\n\n'));
  if (room < 0) return shortest(judgement, limit, fullReport);
  const kept: string[] = [...head];
  const left: string[] = [];
  for (const part of parts) {
    let taken = 0;
    const blocks: string[] = [];
    let opening = bytesOf(`\n\n${part.title}`);
    for (const { head: top, between, pieces } of part.blocks) {
      const begin = opening + 2 + (top === undefined ? 0 : bytesOf(top) + bytesOf(between));
      const fitting: string[] = [];
      let cost = begin;
      for (const each of pieces) {
        const piece = each();
        const more = bytesOf(piece) + (fitting.length === 0 ? 0 : bytesOf(between));
        if (cost + more > room) break;
        cost += more;
        fitting.push(piece);
      }
      if (fitting.length > 0) {
        blocks.push(joined(top, between, fitting));
        taken += fitting.length;
        room -= cost;
        opening = 0;
      }
    }
    if (blocks.length > 0) kept.push(part.title, ...blocks);
    if (taken < sizeOf(part)) left.push(leftLine(part.name, sizeOf(part) - taken));
  }
  return `${[...kept, closing(left)].join('\n\n')}\n`;
}

/** The verdict and the pointer, or as much as the limit has room for: the verdict comes first in any case. */
function shortest(judgement: Judgement, limit: number, fullReport: string): string {
  const texts = [
    `## ${markdownText(clipped(summaryLine(judgement), 120))}\n\n${fullReport}\n`,
    `## ${judgement.verdict}\n\n${fullReport}\n`,
    `## ${judgement.verdict}\n`,
  ];
  return texts.find((text) => bytesOf(text) <= limit) ?? judgement.verdict;
}
