/** HTML that cannot be put together but by escaping: the one place where text becomes part of a page. */
import { visible } from '../../base/visible.ts';

/** HTML as it stands in a page. Only the tag `html` makes one, so that no text is taken for it. */
class Html {
  readonly #text: string;
  constructor(text: string) {
    this.#text = text;
  }
  toString(): string {
    return this.#text;
  }
}

export type { Html };

type Piece = string | number | Html | undefined | readonly Piece[];

const references: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as it can stand between tags and within a quoted attribute, with all that hides spelt out. */
const escaped = (text: string): string =>
  visible(text).replace(/[&<>"']/g, (character) => references[character] ?? '');

/** A day, with or without its time: broken at its hyphens it is hard to read. */
const day = /(?<![\w-])\d{4}-\d\d-\d\d(?:T[\d:.]+Z)?(?![\w-])/g;

function written(piece: Piece, isProse: () => boolean): string {
  if (piece === undefined) return '';
  if (typeof piece === 'number') return String(piece);
  if (typeof piece !== 'string')
    return piece instanceof Html ? piece.toString() : piece.map((each) => written(each, isProse)).join('');
  const text = escaped(piece);
  return text.search(day) !== -1 && isProse() ? text.replace(day, '<span class="day">$&</span>') : text;
}

/** Where text takes no element within it: in a tag, in a title, in a drawing. */
const noProse = /<[^>]*$|<(?:text|title|tspan)[^<>]*>[^<]*$/;

/** A template of HTML: what is put in is text, unless it is HTML already; `undefined` is nothing. */
export const html = (parts: TemplateStringsArray, ...pieces: readonly Piece[]): Html =>
  new Html(
    parts
      .map((part, index) => {
        const isProse = (): boolean => !noProse.test(parts.slice(0, index + 1).join(''));
        return `${part}${written(pieces[index], isProse)}`;
      })
      .join(''),
  );

export const nothing: Html = html``;

/** The program's own style sheet or script, which holds no input; within its element nothing is escaped. */
export const own = (name: 'style' | 'script', text: string): Html => new Html(`<${name}>${text}</${name}>`);
