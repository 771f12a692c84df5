/** What made the policy looser, or may have, and by whom. */
import { loosenings } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { counted } from '../../base/wording.ts';
import { type AuditTable, column, commitColumn, day, short, trailersOf, who } from './table.ts';

export function looseningsTable(records: readonly AuditRecord[]): AuditTable {
  const loosened = loosenings(records);
  return {
    headline: `${counted(loosened.length, 'policy change')} loosened the policy, or may have`,
    notes: [],
    columns: [
      day,
      commitColumn,
      ...who,
      column('direction', 'direction'),
      column('of', 'kind'),
      column('name', 'name'),
      column('key', 'key'),
      column('from', 'from'),
      column('to', 'to'),
    ],
    rows: loosened.map(({ record, change }) => [
      record.on,
      short(record.commit),
      record.author.name,
      trailersOf(record),
      change.direction,
      change.of,
      change.name,
      change.key,
      change.from,
      change.to,
    ]),
  };
}
