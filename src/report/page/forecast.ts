/** Readings of one file system, and the days by which its futures are full, up to the line of its capacity. */
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { showMeasure } from '../model/amounts.ts';
import type { ForecastPicture } from '../model/picture.ts';
import { type Html, html } from './html.ts';
import { oneDay, timeAxis, timeOf } from './time.ts';

/** Drawn in these units and stretched to the page; what is drawn of lines keeps its thickness. */
const [width, height] = [1000, 160];

/** Later than that, a day claims more than a pace can know. */
const farOff = 3650;

const dayAfter = (day: string, days: number): string =>
  new Date(timeOf(day) + Math.floor(days) * oneDay).toISOString().slice(0, 10);

export function forecastFigure({
  name,
  capacity,
  readings,
  resized,
  outlook,
  declared,
  declaredSince,
}: ForecastPicture): Html {
  const first = readings[0];
  const last = readings.at(-1);
  if (first === undefined || last === undefined) return html``;
  const [begin, now] = [timeOf(first.at), timeOf(last.at)];
  const shown = (days: number | undefined): number | undefined =>
    days === undefined || days > farOff ? undefined : now + days * oneDay;
  const [earliest, middle, latest] = [outlook?.earliest, outlook?.middle, outlook?.latest].map(shown);
  // So far ahead at most that the readings themselves stay legible.
  const ahead = Math.max(now - begin, 30 * oneDay) * 3;
  const marks = [...new Set((declared ?? []).map(({ on }) => Math.max(begin, timeOf(on))))];
  const end = Math.max(
    Math.min(Math.max(now + oneDay, ...[earliest, middle, latest].map((time) => time ?? 0)), now + ahead),
    ...marks,
  );
  const most = Math.max(Number(capacity), ...readings.map(({ used }) => Number(used)));
  const x = scaleLinear([begin, end], [0, width]);
  const y = scaleLinear([0, most * 1.05 || 1], [height, 0]);
  const top = y(Number(capacity));
  const path = line<{ readonly at: string; readonly used: bigint }>(
    ({ at }) => x(timeOf(at)),
    ({ used }) => y(Number(used)),
  )([...readings]);
  const from = `${x(now).toFixed(1)},${y(Number(last.used)).toFixed(1)}`;
  const until = latest ?? end * 2;
  const band =
    earliest === undefined
      ? undefined
      : html`<path class="reach" d="M${from}L${x(earliest).toFixed(1)},${top.toFixed(1)}L${x(until).toFixed(1)},${top.toFixed(1)}Z"/>`;
  const way =
    middle === undefined
      ? undefined
      : html`<path class="way" d="M${from}L${x(middle).toFixed(1)},${top.toFixed(1)}"/>`;
  const day = (label: string, days: number | undefined): Html =>
    html`<div><dt>${label}</dt><dd>${days === undefined || days > farOff ? 'not within ten years' : dayAfter(last.at.slice(0, 10), days)}</dd></div>`;
  return html`<figure class="forecast"><figcaption>${name}</figcaption>
<svg class="plot" width="100%" height="${height}" viewBox="0 0 ${width} ${height}" preserveAspectRatio="none" aria-hidden="true" focusable="false">${band}${way}<path class="readings" d="${path ?? undefined}"/><line class="capacity" x1="0" x2="${width}" y1="${top.toFixed(1)}" y2="${top.toFixed(1)}"/>${
    middle === undefined || middle > end
      ? undefined
      : html`<line class="full" x1="${x(middle).toFixed(1)}" x2="${x(middle).toFixed(1)}" y1="${top.toFixed(1)}" y2="${height}"/>`
  }${resized.map((at) => html`<line class="resized" x1="${x(timeOf(at)).toFixed(1)}" x2="${x(timeOf(at)).toFixed(1)}" y1="0" y2="${height}"/>`)}${marks.map((time) => html`<line class="declared" x1="${x(time).toFixed(1)}" x2="${x(time).toFixed(1)}" y1="0" y2="${height}"/>`)}</svg>
${timeAxis([begin, end])}
<dl><div><dt>Capacity</dt><dd><data value="${String(capacity)}">${showMeasure('bytes', capacity)}</data></dd></div><div><dt>Used</dt><dd><data value="${String(last.used)}">${showMeasure('bytes', last.used)}</data> on ${last.at.slice(0, 10)}; ${readings.length} readings drawn since ${first.at.slice(0, 10)}</dd></div>${
    outlook === undefined
      ? undefined
      : html`${day('Full on', outlook.middle)}${day('Earliest', outlook.earliest)}${day('Latest', outlook.latest)}`
  }${resized.length === 0 ? undefined : html`<div><dt>Resized</dt><dd>${resized.map((at) => at.slice(0, 10)).join(', ')}</dd></div>`}${declaredOtherwise(declared, declaredSince)}</dl></figure>
`;
}

function declaredOtherwise(
  declared: ForecastPicture['declared'],
  since: ForecastPicture['declaredSince'],
): Html {
  const size = (bytes: bigint): Html =>
    html`<data value="${String(bytes)}">${showMeasure('bytes', bytes)}</data>`;
  const unknown =
    declared === undefined
      ? 'what commits declared in the span is not known'
      : since === undefined
        ? undefined
        : `what was declared before ${since} is not known, for this clone begins there`;
  if (unknown === undefined && declared?.length === 0) return html``;
  const told = (declared ?? []).map(
    ({ on, of, from, to }, index) =>
      html`${index === 0 ? '' : '; '}${on}: the ${of} from ${size(from)} to ${size(to)}`,
  );
  return html`<div><dt>Declared</dt><dd>${told}${told.length > 0 && unknown !== undefined ? '; ' : ''}${unknown}</dd></div>`;
}
