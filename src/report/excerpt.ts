/** A source line, and a pointer under the very character that is meant. */
import stringWidth from 'string-width';
import { visible } from '../base/visible.ts';

const tabStop = 4;

/** A line is read this far to either side of the pointer: no terminal is wider, and a line may be a file long. */
const reach = 500;

interface Cell {
  readonly text: string;
  readonly width: number;
}

/** Characters as they are seen; one that hides something is taken apart, since what is spelt out may be long. */
const segmentsOf = (source: string): readonly string[] =>
  [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(source)].flatMap(({ segment }) =>
    visible(segment) === segment ? [segment] : [...segment],
  );

/** What a stretch of the source looks like: tabs as spaces up to the next stop, whatever else hides spelt out. */
function cellsOf(segments: readonly string[]): readonly Cell[] {
  let at = 0;
  return segments.map((segment, index) => {
    const text =
      segment === '\t'
        ? ' '.repeat(tabStop - (at % tabStop))
        : visibleBetween(segments[index - 1], segment, segments[index + 1]);
    const width = stringWidth(text);
    at += width;
    return { text, width };
  });
}

/** A character made visible as it is within its line, where its neighbours may make a CI host's command of it. */
function visibleBetween(before = '', segment: string, after = ''): string {
  const last = before.slice(-1);
  const next = after.startsWith('[') ? '[' : '';
  const shown = visible(`${last}${segment}${next}`);
  return shown.slice(visible(last).length, shown.length - next.length);
}

const widthOf = (cells: readonly Cell[]): number => cells.reduce((sum, { width }) => sum + width, 0);

const textOf = (cells: readonly Cell[]): string => cells.map(({ text }) => text).join('');

/**
 * The line as it can be shown within a width, and the line beneath it with the pointer.
 *
 * @param column counts UTF-16 units from 1; beyond the end it points behind the last character
 */
export function pointedAt(
  excerpt: string,
  column: number,
  width: number,
): readonly [line: string, pointer: string] {
  const source = excerpt.replace(/[\r\n]+$/, '');
  const index = startOfCharacter(source, Math.min(Math.max(0, column - 1), source.length));
  const leading = segmentsOf(source.slice(Math.max(0, index - reach), index));
  const cells = cellsOf([...leading, ...segmentsOf(source.slice(index, index + reach))]);
  const before = cells.slice(0, leading.length);
  const after = cells.slice(leading.length);
  const widthBefore = widthOf(before);
  const widthAfter = widthOf(after);
  const fits = widthBefore + widthAfter <= width && index <= reach && source.length <= index + reach;
  if (fits) return drawn('', before, after, '');
  // What is meant comes first: up to two thirds of the width for it and what follows, the rest for what leads to it.
  const roomAfter = Math.max(Math.floor((width * 2) / 3), width - widthBefore) - 2;
  const keptAfter = kept(after, roomAfter, 1);
  const keptBefore = kept(before.toReversed(), width - 2 - widthOf(keptAfter), 0).toReversed();
  return drawn(
    index <= reach && keptBefore.length === before.length ? '' : '…',
    keptBefore,
    keptAfter,
    source.length <= index + reach && keptAfter.length === after.length ? '' : '…',
  );
}

/** As many cells as fit into a width, and at least so many. */
function kept(cells: readonly Cell[], room: number, atLeast: 0 | 1): readonly Cell[] {
  let sum = 0;
  const end = cells.findIndex(({ width }) => {
    sum += width;
    return sum > room;
  });
  return end === -1 ? cells : cells.slice(0, Math.max(atLeast, end));
}

function drawn(
  cutBefore: string,
  before: readonly Cell[],
  after: readonly Cell[],
  cutAfter: string,
): readonly [string, string] {
  const lead = `${cutBefore}${textOf(before)}`;
  return [`${lead}${textOf(after)}${cutAfter}`, `${' '.repeat(stringWidth(lead))}^`];
}

/** Never between the halves of a surrogate pair. */
const startOfCharacter = (source: string, index: number): number =>
  index > 0 && isLow(source.charCodeAt(index)) && isHigh(source.charCodeAt(index - 1)) ? index - 1 : index;

const isHigh = (unit: number): boolean => unit >= 0xd800 && unit <= 0xdbff;
const isLow = (unit: number): boolean => unit >= 0xdc00 && unit <= 0xdfff;

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
