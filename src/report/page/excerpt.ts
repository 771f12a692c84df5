/** The line of a file that an entry is about, with what is meant marked in it. */
import type { Place } from '../../base/problem.ts';
import { type Html, html } from './html.ts';

/** A line may be a file long: so much of it is shown to either side. */
const reach = 120;

/** A key with its value, or either alone, as it is written: up to a comma or a bracket. */
const written = /^(?:[\w-]+: +[^\s,{}[\]][^,{}[\]]*|"[^"]*"|'[^']*'|[^\s,{}[\]]+|.)/u;

/** @param place its column counts UTF-16 units from 1 */
export function excerpt(source: string, { line, column }: Place): Html {
  const at = Math.min(Math.max(0, column - 1), source.length);
  const from = Math.max(0, at - reach);
  const rest = source.slice(at, at + reach);
  const [meant = ''] = written.exec(rest) ?? [];
  const before = `${from > 0 ? '…' : ''}${source.slice(from, at)}`;
  const after = `${rest.slice(meant.length)}${at + reach < source.length ? '…' : ''}`;
  return html`<p class="excerpt"><span class="number">${line}</span> <code>${before}<mark>${meant}</mark>${after}</code></p>`;
}
