/** The lines of a file that an entry is about, with what is meant marked in them. */
import type { Excerpt } from '../model/model.ts';
import { type Html, html } from './html.ts';

/** A line may be a file long: so much of it is shown to either side. */
const reach = 120;

/** A key with its value, or either alone, as it is written: up to a comma or a bracket. */
const written = /^(?:[\w-]+: +[^\s,{}[\]][^,{}[\]]*|"[^"]*"|'[^']*'|[^\s,{}[\]]+|.)/u;

/** The place's column counts UTF-16 units from 1. */
export function excerpt({ source, place: { line, column }, before = [], after = [] }: Excerpt): Html {
  const digits = String(line + after.length).length;
  const about = (text: string, number: number): Html =>
    html`${numbered(number, digits)}<code>${text.length > reach ? `${text.slice(0, reach)}…` : text}</code>
`;
  return html`<div class="excerpt">${before.map((text, index) => about(text, line - before.length + index))}<span class="meant">${numbered(line, digits)}<code>${marked(source, column)}</code></span>
${after.map((text, index) => about(text, line + 1 + index))}</div>`;
}

const numbered = (number: number, digits: number): Html =>
  html`<span class="number">${String(number).padStart(digits)}</span> `;

function marked(source: string, column: number): Html {
  const at = Math.min(Math.max(0, column - 1), source.length);
  const from = Math.max(0, at - reach);
  const rest = source.slice(at, at + reach);
  const [meant = ''] = written.exec(rest) ?? [];
  const before = `${from > 0 ? '…' : ''}${source.slice(from, at)}`;
  const after = `${rest.slice(meant.length)}${at + reach < source.length ? '…' : ''}`;
  return html`${before}<mark>${meant}</mark>${after}`;
}
