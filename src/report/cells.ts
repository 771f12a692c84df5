/** The values of a table in words: the same on a terminal, in Markdown and wherever else a table is text. */

import {
  showAmount,
  showDifference,
  showFreeShare,
  showMeasure,
  showRemaining,
  showUsedShare,
} from './model/amounts.ts';
import type { Bar, Cell, PartOfCapacity, Table } from './model/model.ts';
import type { TextTable } from './table.ts';

export const shownTable = ({ columns, rows }: Table): TextTable => ({
  columns: columns.map(({ title, holds }) => ({ title, align: holds === 'figures' ? 'right' : 'left' })),
  rows: rows.map((row) => row.map(cellText)),
});

export function cellText(cell: Cell): string {
  if (typeof cell === 'string') return cell;
  switch (cell.kind) {
    case 'amount':
      return showAmount(cell.amount, cell.currency);
    case 'difference':
      return showDifference(cell.amount, cell.currency);
    case 'remaining':
      return showRemaining(cell.limit, cell.spent, cell.currency);
    case 'measure':
      return showMeasure(cell.measure, cell.amount);
    case 'free share':
      return showFreeShare(cell.of);
    case 'used share':
      return showUsedShare(cell.of);
    case 'bar':
      return barText(cell);
  }
}

/** Each part has a mark of its own, so that a bar needs no colour. */
export const marks: Readonly<Record<PartOfCapacity, string>> = {
  used: '█',
  usable: '█',
  reserved: '▒',
  overhead: '░',
  undetermined: '?',
  free: '·',
};

/** A bar of one part beside what is free needs less width than one that tells several parts apart. */
const widthOf = ({ parts }: Bar): number => (parts.length > 2 ? 40 : 20);

/** A mark for each so many of the whole, rounded so that the parts together keep their total. */
function barText(bar: Bar): string {
  const width = widthOf(bar);
  const { whole, parts, over } = bar;
  if (over) return `${marks.used.repeat(width)} over`;
  let sum = 0n;
  let drawn = 0;
  return parts
    .map(({ part, amount }) => {
      sum += amount;
      const end = whole <= 0n ? width : Number((sum * BigInt(width) * 2n + whole) / (whole * 2n));
      const length = Math.max(0, Math.min(width, end) - drawn);
      drawn += length;
      return marks[part].repeat(length);
    })
    .join('');
}
