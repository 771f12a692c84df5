/** One answer of the audit: a table with a name for each column, and what is common to several of them. */
import type { AuditRecord } from '../../audit/record.ts';
import { type Money, money } from '../../price/money.ts';

/** An amount in its currency: on the screen both stand together, and for programs in a column each. */
export interface AmountCell {
  readonly kind: 'amount' | 'difference';
  readonly amount: Money;
  readonly currency: string;
}

export type Cell = string | number | AmountCell | null;

export interface AuditColumn {
  /** The name in lines of JSON. */
  readonly key: string;
  /** The heading on the screen and in CSV. */
  readonly title: string;
  readonly align: 'left' | 'right';
  /** Whether people see it, too: what is in another column for them is in one of its own for programs. */
  readonly shown: boolean;
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
  shown: true,
});

/** The currency of the amounts before it. */
export const currencyColumn = (key = 'currency', title = 'currency'): AuditColumn => ({
  ...column(key, title),
  shown: false,
});

export const amountCell = (amount: string, currency: string): AmountCell => ({
  kind: 'amount',
  amount: money(amount),
  currency,
});

export const differenceCell = (amount: Money, currency: string): AmountCell => ({
  kind: 'difference',
  amount,
  currency,
});

export const short = (commit: string): string => commit.slice(0, 12);

/** What a finding is about, in two words at most. */
export const subjectOf = ({ kind, name }: { readonly kind: string; readonly name: string }): string =>
  kind === 'estate' || kind === 'branch' ? `the ${kind}` : `${kind.replace('-', ' ')} ${name}`;

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

/** What it costs more or less a month, and in which currency. */
export const changedCost = ({ cost }: AuditRecord): readonly [AmountCell | null, string | null] =>
  cost?.difference == null
    ? [null, null]
    : [differenceCell(money(cost.difference), cost.currency), cost.currency];

export const count = ({ findings }: AuditRecord, ...states: readonly string[]): number =>
  findings.filter(({ baselineState }) => states.includes(baselineState)).length;

/** Of commits that could not be judged nothing is known, and nothing can be counted. */
export function unjudgedNote(records: readonly AuditRecord[]): readonly string[] {
  const unjudged = records.filter(({ verdict }) => verdict === 'not judged');
  return unjudged.length === 0
    ? []
    : [
        `${unjudged.length === 1 ? 'One commit was' : `${unjudged.length} commits were`} not judged, and what ${unjudged.length === 1 ? 'it' : 'they'} altered is not told here: ${unjudged.map(({ on, commit }) => `${on} ${short(commit)}`).join(', ')}.`,
      ];
}
