/** Text as Markdown that shows just that text, whatever it holds. */
import { visible } from '../base/visible.ts';

/** Where Markdown text stands: in a table's cell a bar has to be escaped, even within code. */
export type MarkdownPlace = 'line' | 'cell';

/**
 * Words that mean nothing to Markdown, to a link finder or to a code host: letters, digits, inner hyphens and
 * apostrophes, plain figures, and the punctuation of a sentence around them.
 */
const plainWord =
  /^\(?(?:[\p{L}\p{N}][\p{L}\p{M}\p{N}]*(?:[-'’][\p{L}\p{N}][\p{L}\p{M}\p{N}]*)*|[-+]?≈?\d[\d,]*(?:\.\d+)?|%|=)\)?[.,;:?]?\)?$/u;

/** `GH-12` and a commit's id are references to a code host. */
const reference = /^\W*(?:gh-\d+|[0-9a-f]{7,40})\W*$/i;

/** The beginning of an ordered list, or of a heading's underline. */
const opensBlock = /^(?:\d{1,9}[.)]+|=)$/;

const isPlain = (word: string, first: boolean): boolean =>
  plainWord.test(word) && !reference.test(word) && !(first && opensBlock.test(word));

/** What stands around a word without being of it. */
const around = /^(\(*)(:.*:|.*?)([.,;:?)]*)$/su;

/** A bracket that the word itself opens, as `lsblk(8)` does, closes within it. */
function closed(core: string, after: string): readonly [core: string, after: string] {
  const open = core.split('(').length - core.split(')').length;
  const closing = /^\)*/.exec(after)?.[0].length ?? 0;
  const own = Math.max(0, Math.min(open, closing));
  return [core + after.slice(0, own), after.slice(own)];
}

/**
 * Text as Markdown that shows exactly `visible(text)`. A word that could mean anything (emphasis, a link, HTML, a
 * mention, an issue, an emoji, a table's bar) is put in a code span: hosts look for mentions and references
 * after Markdown is done, where a backslash is long gone, but not within code.
 */
export function markdownText(text: string, place: MarkdownPlace = 'line'): string {
  const shown = visible(text);
  if (shown === '' || spacesCount.test(shown)) return markdownCode(shown, place);
  return shown
    .split(' ')
    .map((word, index) => markdownWord(word, index === 0, place))
    .join(' ');
}

/** Spaces at an end or in a row would be lost outside of code. */
const spacesCount = /^ | $| {2}/;

function markdownWord(word: string, first: boolean, place: MarkdownPlace): string {
  if (isPlain(word, first)) return word;
  const [, before = '', inner = word, rest = ''] = around.exec(word) ?? [];
  const [core, after] = closed(inner, rest);
  return core === '' ? markdownCode(word, place) : `${before}${markdownCode(core, place)}${after}`;
}

/** A word, or what advice writes between backticks: a command or a key. */
const adviceWord = /(\(*)`([^`]+)`([.,;:)]*)(?= |$)|[^ ]+/g;

/** Advice as Markdown: what it writes between backticks is shown as code. */
export function markdownAdvice(text: string): string {
  const shown = visible(text);
  if (shown === '' || spacesCount.test(shown)) return markdownCode(shown);
  return [...shown.matchAll(adviceWord)]
    .map(([word, before = '', code, after = ''], index) =>
      code === undefined ? markdownWord(word, index === 0, 'line') : `${before}${markdownCode(code)}${after}`,
    )
    .join(' ');
}

/** A code span around any text: fenced by a run of backticks that the text does not hold (CommonMark 0.31, 6.1). */
export function markdownCode(text: string, place: MarkdownPlace = 'line'): string {
  const shown = visible(text);
  // There is no empty code span.
  if (shown === '') return '';
  const runs = new Set([...shown.matchAll(/`+/g)].map(([run]) => run.length));
  let length = 1;
  while (runs.has(length)) length += 1;
  const fence = '`'.repeat(length);
  const pad = /^`|`$|^ .*[^ ].* $/.test(shown) ? ' ' : '';
  const inside = place === 'cell' ? shown.replaceAll('|', '\\|') : shown;
  return `${fence}${pad}${inside}${pad}${fence}`;
}

/** A fenced block of lines that are visible text already. */
export function markdownBlock(lines: readonly string[]): string {
  const longest = Math.max(
    2,
    ...lines.flatMap((line) => [...line.matchAll(/`+/g)].map(([run]) => run.length)),
  );
  const fence = '`'.repeat(longest + 1);
  return [fence, ...lines, fence].join('\n');
}
