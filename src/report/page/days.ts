/** Days and stretches of days, one row for each thing they are of. */
import type { Picture } from '../model/picture.ts';
import { type BarRow, barsFigure, type Mark } from './bars.ts';
import { type Html, html } from './html.ts';
import { domainOf, timeAxis, timeOf } from './time.ts';

export function daysFigure({
  caption,
  columns,
  span,
  rows,
}: Extract<Picture, { readonly kind: 'days' }>): Html {
  const domain = domainOf(span);
  return barsFigure({
    caption: `${caption}, from ${span.from} to ${span.until}`,
    columns,
    domain,
    height: 20,
    axis: timeAxis(domain),
    rows: rows.map(({ name, days, stretches, figure, toldAt = [] }): BarRow => {
      const marks = [
        ...stretches.map(
          ({ from, until, as }): Mark => ({
            as: as === 'standing' ? 'now' : 'was',
            from: timeOf(from),
            to: timeOf(until),
            top: 4,
            height: 12,
            ...(from >= until ? { wide: 3 } : {}),
          }),
        ),
        ...days.map(
          (day): Mark => ({ as: 'now', from: timeOf(day), to: timeOf(day), top: 3, height: 14, wide: 3 }),
        ),
      ];
      const links = toldAt.map(({ text, row }) => html` <a href="#${row}">${text}</a>`);
      return { name, marks, figure: html`${figure}${links}` };
    }),
    key: rows.some(({ stretches }) => stretches.length > 0)
      ? [
          { as: 'now', text: 'still so at the end' },
          { as: 'was', text: 'over by then' },
        ]
      : [],
  });
}
