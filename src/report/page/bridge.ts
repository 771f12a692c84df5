/** The causes of a difference, as the way from what it costs on main to what it will cost. */
import { addMoney } from '../../price/money.ts';
import { showAmount, showDifference } from '../model/amounts.ts';
import type { Picture } from '../model/picture.ts';
import { type BarRow, barsFigure } from './bars.ts';
import { type Html, html } from './html.ts';

export function bridgeFigure({
  currency,
  before,
  after,
  causes,
}: Extract<Picture, { readonly kind: 'bridge' }>): Html {
  let level = before;
  const levels = [Number(before), Number(after)];
  const moves = causes.map(({ name, difference }): BarRow => {
    const from = level;
    level = addMoney(level, difference);
    levels.push(Number(level));
    return {
      name,
      marks: [
        { as: difference.gt(0) ? 'more' : 'less', from: Number(from), to: Number(level), top: 3, height: 14 },
      ],
      figure: html`<data value="${difference.toFixed()}">${showDifference(difference, currency)}</data>`,
    };
  });
  const lowest = Math.min(...levels);
  const highest = Math.max(...levels);
  // A small difference of a large sum could not be seen from nothing on.
  const begin = lowest > (highest - lowest) * 4 ? lowest - (highest - lowest) : 0;
  const end = (name: string, amount: typeof before, as: 'was' | 'now'): BarRow => ({
    name,
    marks: [{ as, from: begin, to: Number(amount), top: 3, height: 14 }],
    figure: html`<data value="${amount.toFixed()}">${showAmount(amount, currency)}</data>`,
  });
  return barsFigure({
    caption: `Where the difference in monthly cost comes from${begin > 0 ? `, drawn from ${begin.toFixed(0)} ${currency} on` : ''}`,
    columns: ['Cause', 'Monthly cost'],
    domain: [begin, highest === begin ? begin + 1 : highest],
    height: 20,
    rows: [end('on main', before, 'was'), ...moves, end('after the merge', after, 'now')],
    key: [
      ...(causes.some(({ difference }) => difference.gt(0)) ? [{ as: 'more', text: 'more' } as const] : []),
      ...(causes.some(({ difference }) => difference.lt(0)) ? [{ as: 'less', text: 'less' } as const] : []),
    ],
  });
}
