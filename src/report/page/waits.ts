/** Which step waits for which: each row of the drawing waits for nothing that stands in it or below. */
import { linkVertical } from 'd3-shape';
import type { Picture, WaitingStep } from '../model/picture.ts';
import type { Drawing } from './drawing.ts';
import { type Html, html } from './html.ts';

/** So many stand side by side in the narrowest page. */
const across = 6;
const gap = 48;
const radius = 15;
const width = across * gap;

/** More than that is a thicket; the steps themselves say what they wait for. */
const most = 150;

export function waitsFigure({ steps }: Extract<Picture, { readonly kind: 'waits' }>, drawing: Drawing): Html {
  if (steps.length > most) {
    return html`<p class="left-out">${steps.length} steps are too many to draw what waits for what. <code>${drawing.whole}</code> has it of each.</p>`;
  }
  const direct = withoutDetours(steps);
  return html`<figure class="waits"><figcaption>What waits for what, from top to bottom</figcaption>
${graph(steps, direct)}
<details><summary>The same as a table</summary><table><thead><tr><th scope="col">Step</th><th scope="col">Waits for</th></tr></thead><tbody>${steps.map(
    ({ number, after }) =>
      html`<tr><th scope="row">${number}</th><td data-title="Waits for">${after.length === 0 ? 'nothing' : after.join(', ')}</td></tr>`,
  )}</tbody></table></details></figure>
`;
}

/** What each step waits for but by way of another that it waits for as well. */
function withoutDetours(steps: readonly WaitingStep[]): ReadonlyMap<number, readonly number[]> {
  const all = new Map<number, ReadonlySet<number>>();
  const direct = new Map<number, readonly number[]>();
  for (const { number, after } of steps) {
    const beyond = new Set(after.flatMap((each) => [...(all.get(each) ?? [])]));
    all.set(number, new Set([...after, ...beyond]));
    direct.set(
      number,
      after.filter((each) => !beyond.has(each)),
    );
  }
  return direct;
}

/** Steps in rows: each as high up as what it waits for lets it be, beneath the middle of that. */
function placed(steps: readonly WaitingStep[], direct: ReadonlyMap<number, readonly number[]>) {
  const levels = new Map<number, number>();
  const rows: WaitingStep[][] = [];
  for (const step of steps) {
    const level = Math.max(-1, ...(direct.get(step.number) ?? []).map((each) => levels.get(each) ?? 0)) + 1;
    levels.set(step.number, level);
    const row = rows[level] ?? [];
    rows[level] = [...row, step];
  }
  const at = new Map<number, readonly [x: number, y: number]>();
  let y = radius + 2;
  for (const row of rows) {
    const middle = (number: number): number => {
      const above = (direct.get(number) ?? []).flatMap((each) => at.get(each)?.[0] ?? []);
      return above.length === 0 ? width / 2 : above.reduce((sum, x) => sum + x, 0) / above.length;
    };
    const ordered = row
      .map(({ number }) => ({ number, middle: middle(number) }))
      .sort((a, b) => a.middle - b.middle || a.number - b.number);
    for (let from = 0; from < ordered.length; from += across) {
      const line = ordered.slice(from, from + across);
      const left = (width - (line.length - 1) * gap) / 2;
      for (const [index, { number }] of line.entries()) at.set(number, [left + index * gap, y]);
      y += gap + 8;
    }
  }
  return { at, height: y - gap - 8 + radius + 2 };
}

type Point = readonly [x: number, y: number];

const link = linkVertical<unknown, Point>()
  .x(([x]) => x)
  .y(([, y]) => y);

const straight = (source: Point, target: Point): string | null =>
  link({ source: [source[0], source[1] + radius], target: [target[0], target[1] - radius] });

/** Past the rows between the two, by the side that is nearer: a line behind another step would seem to be that one's. */
function bowed([fromX, fromY]: Point, [toX, toY]: Point): string {
  const side = fromX + toX < width ? -1 : 1;
  const outer = side < 0 ? Math.min(fromX, toX) : Math.max(fromX, toX);
  const past = outer + side * (gap / 2);
  const [leave, arrive] = [fromY + gap, toY - gap];
  const between = gap / 2;
  return `M${fromX},${fromY + radius}C${fromX},${leave},${past},${fromY + between},${past},${leave}L${past},${arrive}C${past},${toY - between},${toX},${arrive},${toX},${toY - radius}`;
}

function graph(steps: readonly WaitingStep[], direct: ReadonlyMap<number, readonly number[]>): Html {
  const { at, height } = placed(steps, direct);
  const lines = steps.flatMap(({ number }) =>
    (direct.get(number) ?? []).flatMap((each) => {
      const [source, target] = [at.get(each), at.get(number)];
      if (source === undefined || target === undefined) return [];
      const path = target[1] - source[1] > 2 * gap ? bowed(source, target) : straight(source, target);
      return path === null ? [] : [html`<path d="${path}"/>`];
    }),
  );
  return html`<svg class="graph" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-label="Steps from top to bottom, each joined to those it waits for; the table below says the same.">
<g class="links">${lines}</g>
${steps.map(({ number }) => {
  const [x, y] = at.get(number) ?? [0, 0];
  return html`<g><circle cx="${x}" cy="${y}" r="${radius}"/><text x="${x}" y="${y + 4}">${number}</text></g>`;
})}</svg>`;
}
