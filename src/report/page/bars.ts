/** Rows of bars on one scale: names and figures are HTML, so that nothing drawn can hide or cut a word. */
import { scaleLinear } from 'd3-scale';
import { type Html, html, nothing } from './html.ts';

export interface Mark {
  /** What it is drawn as: `was` and `less` are patterned, `now` and `more` are solid, `step` is pale, `whole` an outline, `limit` a line. */
  readonly as: 'was' | 'now' | 'more' | 'less' | 'whole' | 'step' | 'limit';
  readonly from: number;
  readonly to: number;
  /** In pixels from the top of the row's drawing. */
  readonly top: number;
  readonly height: number;
  /** Drawn so wide in pixels, where it is a point in time. */
  readonly wide?: number;
}

export interface BarRow {
  readonly name: string;
  readonly marks: readonly Mark[];
  /** Where a line stands across the row: a limit. */
  readonly line?: number | undefined;
  /** Figures in words, beside the bar. */
  readonly figure: Html;
}

export interface Bars {
  readonly caption: string;
  readonly columns: readonly [name: string, figure: string];
  readonly rows: readonly BarRow[];
  readonly domain: readonly [number, number];
  readonly height: number;
  /** What stands where beneath the bars. */
  readonly axis?: Html | undefined;
  /** What the shapes mean. */
  readonly key: readonly { readonly as: Mark['as'] | 'line'; readonly text: string }[];
}

/** More rows than a reader compares; the table has them all. */
const most = 40;

export function barsFigure({ caption, columns, rows, domain, height, axis, key }: Bars): Html {
  const scale = scaleLinear([...domain], [0, 100]).clamp(true);
  const at = (value: number): string => `${scale(value).toFixed(3)}%`;
  const mark = ({ as, from, to, top, height: tall, wide }: Mark): Html => {
    const [low, high] = from <= to ? [from, to] : [to, from];
    return html`<rect class="${as}" x="${at(low)}" width="${wide ?? `${(scale(high) - scale(low)).toFixed(3)}%`}" y="${top}" height="${tall}"/>`;
  };
  const drawn = (row: BarRow): Html =>
    html`<tr><th scope="row">${row.name}</th><td class="drawn"><svg class="bar" width="100%" height="${height}" aria-hidden="true" focusable="false">${row.marks.map(mark)}${
      row.line === undefined
        ? undefined
        : html`<line class="limit" x1="${at(row.line)}" x2="${at(row.line)}" y1="0" y2="${height}"/>`
    }</svg></td><td class="figure">${row.figure}</td></tr>
`;
  if (rows.length === 0) return nothing;
  const rest = rows.length - most;
  return html`<figure class="bars"><figcaption>${caption}</figcaption>
<table><thead><tr><th scope="col">${columns[0]}</th><td></td><th scope="col" class="figure">${columns[1]}</th></tr></thead><tbody>${rows.slice(0, most).map(drawn)}</tbody>${axis === undefined ? undefined : html`<tfoot><tr><td></td><td class="drawn">${axis}</td><td></td></tr></tfoot>`}</table>
${key.length === 0 ? undefined : html`<p class="key">${key.map(({ as, text }) => html`<span><svg class="swatch" width="18" height="12" aria-hidden="true" focusable="false">${as === 'line' ? html`<line class="limit" x1="9" x2="9" y1="0" y2="12"/>` : html`<rect class="${as}" x="0.5" y="0.5" width="17" height="11"/>`}</svg> ${text}</span> `)}</p>`}
${rest > 0 ? html`<p class="left-out">${rest} more are in the table.</p>` : undefined}</figure>
`;
}
