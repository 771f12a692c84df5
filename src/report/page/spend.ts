/** What each of some things cost a month, as steps on one scale, with its limit as a line. */
import { scaleLinear } from 'd3-scale';
import type { Money } from '../../price/money.ts';
import { showAmount } from '../model/amounts.ts';
import type { Picture, SpendRow } from '../model/picture.ts';
import { type BarRow, barsFigure, type Mark } from './bars.ts';
import { type Html, html } from './html.ts';
import { domainOf, timeAxis, timeOf } from './time.ts';

const height = 44;

export function spendFigure({
  caption,
  of,
  spent,
  currency,
  span,
  rows,
}: Extract<Picture, { readonly kind: 'spend' }>): Html {
  const amounts = rows.flatMap(({ steps, limits }) =>
    [...steps, ...limits].map(({ amount }) => Number(amount ?? 0)),
  );
  const most = Math.max(0, ...amounts);
  const scale = scaleLinear([0, most === 0 ? 1 : most], [0, height - 3]);
  const domain = domainOf(span);
  return barsFigure({
    caption: `${caption}, from ${span.from} to ${span.until}, all on one scale up to ${most.toFixed(2)} ${currency}`,
    columns: [of, 'At the end'],
    domain,
    height,
    axis: timeAxis(domain),
    rows: rows.map((row) => spendRow(row, domain[1], scale, currency)),
    key: [
      { as: 'step', text: spent },
      ...(rows.some(({ limits }) => limits.length > 0)
        ? [{ as: 'limit', text: 'limit that each change was held to' } as const]
        : []),
    ],
  });
}

function spendRow(
  { name, steps, limits }: SpendRow,
  end: number,
  scale: (amount: number) => number,
  currency: string,
): BarRow {
  const marks = <T extends { readonly on: string; readonly amount: Money | undefined }>(
    those: readonly T[],
    mark: (tall: number) => Pick<Mark, 'as' | 'top' | 'height'>,
  ): readonly Mark[] =>
    those.flatMap(({ on, amount }, index) => {
      const next = those[index + 1];
      const to = next === undefined ? end : timeOf(next.on);
      return amount === undefined ? [] : [{ ...mark(scale(Number(amount))), from: timeOf(on), to }];
    });
  const last = steps.at(-1)?.amount;
  const limit = limits.at(-1)?.amount;
  return {
    name,
    marks: [
      ...marks(steps, (tall) => ({ as: 'step', top: height - tall, height: tall })),
      ...marks(limits, (tall) => ({ as: 'limit', top: height - tall - 1, height: 2 })),
    ],
    figure: html`${last === undefined ? (steps.length > 0 ? 'no such limit by then' : undefined) : html`<data value="${last.toFixed()}">${showAmount(last, currency)}</data>`}${limit === undefined ? undefined : html`${last === undefined ? '' : ' '}<span class="source">of <data value="${limit.toFixed()}">${showAmount(limit, currency)}</data></span>`}`,
  };
}
