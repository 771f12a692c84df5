/** What each team's storage cost a month, change by change. */
import { spendByTeam } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { type AuditTable, amountCell, column, commitColumn, currencyColumn, day, short } from './table.ts';

export function spendTable(records: readonly AuditRecord[]): AuditTable {
  const steps = spendByTeam(records);
  return {
    headline: `The monthly cost of each team's storage, change by change`,
    notes: [],
    columns: [
      day,
      commitColumn,
      column('team', 'team'),
      column('before', 'before', 'right'),
      currencyColumn('currency_before', 'currency before'),
      column('after', 'after', 'right'),
      currencyColumn(),
      column('by', 'by'),
    ],
    rows: steps.map(({ record, team, before, after, currencyBefore, currency }) => [
      record.on,
      short(record.commit),
      team ?? 'no team',
      amountCell(before, currencyBefore),
      currencyBefore,
      amountCell(after, currency),
      currency,
      record.author.name,
    ]),
  };
}
