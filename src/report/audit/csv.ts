/** Rows as CSV (RFC 4180). */
import { stringify } from 'csv-stringify/sync';
import type { Cell } from './table.ts';

/** A cell that a spreadsheet would take for a formula is written as text. */
export const csv = (rows: readonly (readonly Cell[])[]): string =>
  stringify(
    rows.map((row) => [...row]),
    { escape_formulas: true, record_delimiter: '\r\n' },
  );
