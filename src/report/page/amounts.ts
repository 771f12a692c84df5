/** Monthly cost before and after, one row a team or limit, with its limit as a line. */
import { showAmount } from '../model/amounts.ts';
import type { Picture } from '../model/picture.ts';
import { type BarRow, barsFigure } from './bars.ts';
import { type Html, html } from './html.ts';

export function amountsFigure({ currency, rows }: Extract<Picture, { readonly kind: 'amounts' }>): Html {
  const most = Math.max(
    ...rows.flatMap(({ before, after, limit }) => [before, after, limit ?? 0].map(Number)),
    0,
  );
  const limited = rows.some(({ limit }) => limit !== undefined);
  return barsFigure({
    caption: 'Monthly cost on main and after the merge',
    columns: ['Team or limit', 'After'],
    domain: [0, most === 0 ? 1 : most * 1.02],
    height: 30,
    rows: rows.map(
      ({ name, before, after, limit }): BarRow => ({
        name,
        marks: [
          { as: 'was', from: 0, to: Number(before), top: 3, height: 10 },
          { as: 'now', from: 0, to: Number(after), top: 16, height: 11 },
        ],
        line: limit === undefined ? undefined : Number(limit),
        figure: html`<data value="${after.toFixed()}">${showAmount(after, currency)}</data>`,
      }),
    ),
    key: [
      { as: 'was', text: 'on main' },
      { as: 'now', text: 'after' },
      ...(limited ? [{ as: 'line', text: 'limit' } as const] : []),
    ],
  });
}

export const sumsFigure = ({ currency, by, rows }: Extract<Picture, { readonly kind: 'sums' }>): Html =>
  barsFigure({
    caption: `Monthly cost by ${by}, the most expensive first`,
    columns: [by, 'Monthly cost'],
    domain: [0, rows.reduce((most, { amount }) => Math.max(most, Number(amount)), 0) || 1],
    height: 20,
    rows: rows.map(
      ({ name, amount }): BarRow => ({
        name,
        marks: [{ as: 'now', from: 0, to: Number(amount), top: 3, height: 14 }],
        figure: html`<data value="${amount.toFixed()}">${showAmount(amount, currency)}</data>`,
      }),
    ),
    key: [],
  });
