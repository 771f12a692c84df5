/** One answer of the audit: a table with a name for each column, and what is common to several of them. */
import type { AuditRecord } from '../../audit/record.ts';
import { money } from '../../price/money.ts';
import { showDifference } from '../model/amounts.ts';

export type Cell = string | number | null;

export interface AuditColumn {
  /** The name in CSV and JSON. */
  readonly key: string;
  readonly title: string;
  readonly align: 'left' | 'right';
}

/** One answer. Cells are plain text, and may come from input. */
export interface AuditTable {
  readonly headline: string;
  readonly notes: readonly string[];
  readonly columns: readonly AuditColumn[];
  readonly rows: readonly (readonly Cell[])[];
}

export const column = (key: string, title: string, align: AuditColumn['align'] = 'left'): AuditColumn => ({
  key,
  title,
  align,
});

export const short = (commit: string): string => commit.slice(0, 12);

export const day = column('on', 'day');
export const commitColumn = column('commit', 'commit');
export const who = [column('by', 'by'), column('reviewed', 'trailers')];
export const subjectColumn = column('subject', 'message');

/** Whom the trailers name: `Reviewed-by: Robin Knot`. */
export const trailersOf = ({ trailers }: AuditRecord): string =>
  trailers
    .filter(({ key }) => /-by$/i.test(key))
    .map(({ key, value }) => `${key}: ${value}`)
    .join('; ');

export const changedCost = ({ cost }: AuditRecord): string =>
  cost?.difference == null ? '' : showDifference(money(cost.difference), cost.currency);

export const count = ({ findings }: AuditRecord, ...states: readonly string[]): number =>
  findings.filter(({ baselineState }) => states.includes(baselineState)).length;
