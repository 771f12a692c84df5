/** What each team's storage cost a month, change by change. */
import { spendByTeam } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { money } from '../../price/money.ts';
import { showAmount } from '../model/amounts.ts';
import { type AuditTable, column, commitColumn, day, short } from './table.ts';

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
      column('after', 'after', 'right'),
      column('by', 'by'),
    ],
    rows: steps.map(({ record, team, before, after, currencyBefore, currency }) => [
      record.on,
      short(record.commit),
      team ?? 'no team',
      showAmount(money(before), currencyBefore),
      showAmount(money(after), currency),
      record.author.name,
    ]),
  };
}
