/** Each server as rows of what lies on what, all to one scale, with the same in words beneath; folded by site. */
import { counted } from '../../base/wording.ts';
import { showMeasure } from '../model/amounts.ts';
import type { DrawnThing, EstateServer, EstateSite, PartOfThing, Picture } from '../model/picture.ts';
import { type Drawing, leftOut, taken } from './drawing.ts';
import { type Html, html } from './html.ts';

const rowHeight = 16;
const gap = 4;

/** So many servers stand open at once; more are folded. */
const open = 30;
const folded = 100;

const classes: Readonly<Record<PartOfThing, string>> = {
  given: 'step',
  used: 'used',
  usable: 'step',
  free: 'free',
  kept: 'overhead',
  idle: 'reserved',
  undetermined: 'undetermined',
};

const key: readonly { readonly as: string; readonly text: string }[] = [
  { as: 'step', text: 'given to what lies on it, or usable and not measured' },
  { as: 'used', text: 'used' },
  { as: 'free', text: 'free in a file system' },
  { as: 'overhead', text: 'kept: metadata and reserved blocks' },
  { as: 'reserved', text: 'idle: paid for and in no file system' },
  { as: 'undetermined', text: 'undetermined' },
  { as: 'touched', text: 'changed by the branch' },
  { as: 'disputed', text: 'a survey shows otherwise' },
];

export function estateFigure(
  { sites }: Extract<Picture, { readonly kind: 'estate' }>,
  drawing: Drawing,
): Html {
  const servers = sites.reduce((sum, site) => sum + site.servers.length, 0);
  const [largest = 0n] = sites
    .flatMap(({ servers: held, unattached }) => (unattached === undefined ? held : [...held, unattached]))
    .map(({ size }) => size)
    .sort((one, other) => (one < other ? 1 : -1));
  return html`<figure class="estate"><figcaption>${counted(servers, 'server')} at ${counted(sites.length, 'site')}, all drawn to one scale: the whole width is ${showMeasure('bytes', largest)}</figcaption>
<p class="key">${key.map(({ as, text }) => html`<span><svg class="swatch" width="18" height="12" aria-hidden="true" focusable="false"><rect class="${as}" x="1" y="1" width="16" height="10"/></svg> ${text}</span> `)}</p>
<div${servers > 10 ? html` data-filter="${counted(servers, 'server')}"` : undefined}>${sites.map((site) => drawSite(site, { largest, open: servers <= open }, drawing))}</div></figure>
`;
}

interface Scale {
  readonly largest: bigint;
  readonly open: boolean;
}

function drawSite({ name, servers: held, unattached }: EstateSite, scale: Scale, drawing: Drawing): Html {
  const servers = unattached === undefined ? held : [...held, unattached];
  const size = servers.reduce((sum, server) => sum + server.size, 0n);
  const drawn: Html[] = [];
  for (const server of servers) {
    const row = drawServer(server, scale.largest);
    if (!taken(row, drawing)) break;
    drawn.push(row);
  }
  const parts: Html[] = [];
  for (let from = 0; from < drawn.length; from += folded)
    parts.push(table(drawn.slice(from, from + folded), from));
  const [first, ...others] = parts;
  return html`<details${scale.open ? html` open` : undefined}><summary>${name}: ${counted(held.length, 'server')}, ${showMeasure('bytes', size)}</summary>${first}${others.map((part, index) => html`<details><summary>${(index + 1) * folded + 1} to ${Math.min(drawn.length, (index + 2) * folded)} of ${servers.length}, by size</summary>${part}</details>`)}${leftOut(servers.length - drawn.length, drawing)}</details>
`;
}

const table = (rows: readonly Html[], from: number): Html =>
  html`<table><thead><tr><th scope="col">Server${from === 0 ? '' : ' (more)'}</th><th scope="col">What it holds</th><th scope="col" class="figure">Provisioned</th></tr></thead><tbody>${rows}</tbody></table>`;

const share = (amount: bigint, whole: bigint): string =>
  (whole === 0n ? 0 : Number((amount * 1_000_000n) / whole) / 10_000).toFixed(2).replace(/\.?0+$/, '');

function drawServer({ name, note, size, rows, touched, disputed }: EstateServer, largest: bigint): Html {
  const at = (amount: bigint): string => share(amount, size);
  const rect = (as: string, from: bigint, amount: bigint): Html =>
    html`<rect class="${as}" x="${at(from)}%" width="${at(amount)}%"/>`;
  const thing = ({ from, size: own, parts, ...marks }: DrawnThing): Html => {
    let begin = from;
    const inside = parts.map(({ part, amount }) => {
      const x = begin;
      begin += amount;
      return rect(classes[part], x, amount);
    });
    return html`${inside}${rect(marks.touched ? 'touched' : marks.disputed ? 'disputed' : 'thing', from, own)}`;
  };
  const used = rows.filter((row) => row.length > 0);
  const height = used.length * (rowHeight + gap);
  const marks = marksOf({ touched, disputed });
  return html`<tr><th scope="row">${name}${marks}${note === '' ? undefined : html` <span class="source">${note}</span>`}</th><td class="drawn">${
    used.length === 0
      ? 'nothing'
      : html`<svg class="bar" width="${share(size, largest)}%" height="${height}" aria-hidden="true" focusable="false">${used.map((row, index) => html`<g transform="translate(0 ${1 + index * (rowHeight + gap)})">${row.map(thing)}</g>`)}</svg>`
  }${used.map((row) => html`<p>${row.map((each, index) => html`${index === 0 ? '' : '; '}<b>${each.name}</b> ${each.words}${marksOf(each)}`)}</p>`)}</td><td class="figure"><data value="${String(size)}">${showMeasure('bytes', size)}</data></td></tr>
`;
}

const marksOf = ({ touched, disputed }: Pick<DrawnThing, 'touched' | 'disputed'>): Html | undefined =>
  touched || disputed
    ? html` <em>(${[touched ? 'changed' : '', disputed ? 'a survey shows otherwise' : ''].filter((each) => each !== '').join('; ')})</em>`
    : undefined;
