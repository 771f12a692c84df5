/** Every block of a report as HTML. */
import { createHash } from 'node:crypto';
import { counted } from '../../base/wording.ts';
import { cellText } from '../cells.ts';
import type { Bar, Block, Cell, Entry, Field, PartOfCapacity, Table, Tone } from '../model/model.ts';
import { type Drawing, leftOut, taken } from './drawing.ts';
import { excerpt } from './excerpt.ts';
import { type Html, html, nothing } from './html.ts';
import { drawPicture } from './pictures.ts';

export function drawBlock(block: Block, drawing: Drawing): Html {
  switch (block.kind) {
    case 'sentence':
      return html`<p>${block.text}</p>`;
    case 'entries':
      return drawEntries(block, drawing);
    case 'table':
      return drawTable(block.table, drawing);
    case 'legend':
      return html`<p class="legend">${block.parts.map(({ part, text }, index) => html`${index === 0 ? '' : ', '}<svg class="swatch" width="18" height="12" aria-hidden="true" focusable="false"><rect class="${partClasses[part]}" width="18" height="12"/></svg> ${text}`)}.</p>`;
    case 'picture':
      return drawPicture(block.picture, drawing);
  }
}

export const drawField = (field: Field): Html =>
  html`<div><dt>${field.label}</dt><dd>${fieldText(field)}</dd></div>`;

function fieldText(field: Field): Html {
  switch (field.form) {
    case 'text':
      return html`${field.text}`;
    case 'advice':
      return withCommands(field.text);
    case 'example':
      return html`<code class="command">${field.command}</code> <span class="source">(${field.source})</span>`;
    case 'place': {
      const { file, line, column } = field.place;
      return html`<code>${file}:${line}:${column}</code>${field.note === '' ? undefined : ` ${field.note}`}`;
    }
  }
}

/** Advice writes commands between backticks. */
const withCommands = (text: string): Html =>
  html`${text.split(/(`[^`]+`)/).map((piece) => (/^`[^`]+`$/.test(piece) ? html`<code>${piece.slice(1, -1)}</code>` : piece))}`;

/** How many stand open; the rest are folded by so many. */
const open = 50;
const folded = 200;

type Entries = Extract<Block, { readonly kind: 'entries' }>;

function drawEntries({ entries, checklist }: Entries, drawing: Drawing): Html {
  const ticked = checklist === undefined ? undefined : fingerprint(checklist);
  const drawn: Html[] = [];
  for (const entry of entries) {
    const item = drawEntry(entry, ticked !== undefined);
    if (!taken(item, drawing)) break;
    drawn.push(item);
  }
  const parts: Html[] = [drawn.slice(0, open)].map((those) => list(those, ticked));
  for (let from = open; from < drawn.length; from += folded) {
    const those = drawn.slice(from, from + folded);
    parts.push(
      html`<details><summary>${from + 1} to ${from + those.length} of ${entries.length}</summary>${list(those, ticked)}</details>`,
    );
  }
  return html`<div class="entries"${entries.length > 10 ? html` data-filter="${counted(entries.length, 'entry', 'entries')}"` : undefined}>${parts}${leftOut(entries.length - drawn.length, drawing)}</div>`;
}

const fingerprint = (text: string): string => createHash('sha256').update(text).digest('hex').slice(0, 32);

const list = (items: readonly Html[], ticked: string | undefined): Html =>
  items.length === 0
    ? nothing
    : html`<ol class="list${ticked === undefined ? '' : ' steps'}"${ticked === undefined ? undefined : html` data-checklist="${ticked}"`}>${items}</ol>`;

function drawEntry({ number, tag, text, excerpt: source, fields }: Entry, ticked: boolean): Html {
  const lead = number === undefined ? undefined : html`<span class="number">${number}</span> `;
  const word = tag === undefined ? undefined : html`<span class="tag ${tones[tag.tone]}">${tag.word}</span> `;
  const said = html`${lead}${word}<span>${text}</span>`;
  return html`<li${number === undefined ? undefined : html` id="step-${number}"`}>${
    ticked && number !== undefined
      ? html`<label><input type="checkbox" value="${number}"> ${said}</label>`
      : html`<p>${said}</p>`
  }${source === undefined ? undefined : excerpt(source)}${
    fields.length === 0 ? undefined : html`<dl>${fields.map(drawField)}</dl>`
  }</li>
`;
}

const tones: Readonly<Record<Tone, string>> = {
  'loses data': 'loses',
  fails: 'fails',
  caution: 'caution',
  plain: 'plain',
};

/** A longer table's rows are folded, so many at a time. */
const rowsOpen = 100;
const rowsFolded = 500;

function drawTable(table: Table, drawing: Drawing): Html {
  const rows: Html[] = [];
  for (const [index, row] of table.rows.entries()) {
    const drawn = drawRow(table, row, table.rowNames?.[index]);
    if (!taken(drawn, drawing)) break;
    rows.push(drawn);
  }
  const parts = [tableOf(table, rows.slice(0, rowsOpen))];
  for (let from = rowsOpen; from < rows.length; from += rowsFolded) {
    const those = rows.slice(from, from + rowsFolded);
    parts.push(
      html`<details><summary>Rows ${from + 1} to ${from + those.length} of ${table.rows.length}</summary>${tableOf(table, those)}</details>`,
    );
  }
  return html`<div class="table"${table.rows.length > 10 ? html` data-filter="${counted(table.rows.length, 'row')}"` : undefined}>${parts}${leftOut(table.rows.length - rows.length, drawing)}</div>`;
}

const tableOf = ({ columns }: Table, rows: readonly Html[]): Html =>
  html`<table class="${columns.length > 9 ? 'many' : columns.length > 6 ? 'several' : 'few'}"><thead><tr>${columns.map(({ title, holds }) => (title === '' ? html`<td></td>` : html`<th scope="col"${classList([...(holds === 'figures' ? ['figure'] : []), ...widthOf(title)])}>${title}</th>`))}</tr></thead><tbody>${rows}</tbody></table>`;

const drawRow = ({ columns }: Table, row: readonly Cell[], name: string | undefined): Html =>
  html`<tr${name === undefined ? undefined : html` id="${name}"`}>${row.map((cell, index) => {
    const column = columns[index];
    const classes = [
      ...(column?.holds === 'figures' ? ['figure'] : []),
      ...(typeof cell === 'string' ? widthOf(cell) : []),
    ];
    const attributes = html`${classList(classes)}${column === undefined || column.title === '' ? undefined : html` data-title="${column.title}"`}`;
    return index === 0
      ? html`<th scope="row"${attributes}>${drawCell(cell)}</th>`
      : html`<td${attributes}>${drawCell(cell)}</td>`;
  })}</tr>
`;

const classList = (classes: readonly string[]): Html | undefined =>
  classes.length === 0 ? undefined : html` class="${classes.join(' ')}"`;

/** What is short stays on its line; a word that is too long for a column may be broken anywhere. */
const widthOf = (text: string): readonly string[] =>
  text.length <= 12 && !text.includes(' ') ? ['short'] : /\S{20}/.test(text) ? ['long'] : [];

/** The words that every report has, and the exact value beside them, for whoever sorts or copies. */
function drawCell(cell: Cell): Html {
  if (typeof cell === 'string') return html`${cell}`;
  const value = (exact: string): Html => html`<data value="${exact}">${cellText(cell)}</data>`;
  switch (cell.kind) {
    case 'amount':
    case 'difference':
      return value(cell.amount.toFixed());
    case 'remaining':
      return value(cell.limit.minus(cell.spent).toFixed());
    case 'measure':
      return value(cell.amount.toString());
    case 'free share':
    case 'used share':
      return html`${cellText(cell)}`;
    case 'bar':
      return drawBar(cell);
  }
}

const partClasses: Readonly<Record<PartOfCapacity, string>> = {
  used: 'used',
  usable: 'used',
  reserved: 'reserved',
  overhead: 'overhead',
  undetermined: 'undetermined',
  free: 'free',
};

/** The same figures stand in the row or in a table of the section, so that the bar itself says nothing to listeners. */
function drawBar({ whole, parts, over }: Bar): Html {
  if (over) return html`over`;
  let from = 0;
  return html`<svg class="bar" width="100%" height="14" aria-hidden="true" focusable="false">${parts.map(
    ({ part, amount }) => {
      const width = whole <= 0n ? 0 : Number((amount * 1_000_000n) / whole) / 10_000;
      const x = from;
      from += width;
      return html`<rect class="${partClasses[part]}" x="${x.toFixed(3)}%" width="${Math.max(0, width).toFixed(3)}%" height="14"/>`;
    },
  )}</svg>`;
}
