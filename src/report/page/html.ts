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

function written(piece: Piece): string {
  if (piece === undefined) return '';
  if (typeof piece === 'string') return escaped(piece);
  if (typeof piece === 'number') return String(piece);
  return piece instanceof Html ? piece.toString() : piece.map(written).join('');
}

/** A template of HTML: what is put in is text, unless it is HTML already; `undefined` is nothing. */
export const html = (parts: TemplateStringsArray, ...pieces: readonly Piece[]): Html =>
  new Html(parts.map((part, index) => `${part}${written(pieces[index])}`).join(''));

export const nothing: Html = html``;

/** The program's own style sheet or script, which holds no input; within its element nothing is escaped. */
export const own = (name: 'style' | 'script', text: string): Html => new Html(`<${name}>${text}</${name}>`);
