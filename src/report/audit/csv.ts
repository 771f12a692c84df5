/** Rows as CSV (RFC 4180). */
import { stringify } from 'csv-stringify/sync';

const decimal = /^-?[0-9]+(\.[0-9]+)?$/;

/** A cell that a spreadsheet would take for a formula is written as text; a number is none. */
export const csv = (rows: readonly (readonly (string | number | null)[])[]): string =>
  stringify(
    rows.map((row) => [...row]),
    {
      escape_formulas: true,
      record_delimiter: '\r\n',
      cast: {
        string: (value) => (decimal.test(value) ? { value, escape_formulas: false } : value),
        number: (value) => ({ value: String(value), escape_formulas: false }),
      },
    },
  );
