/** Failing changes that were merged all the same. */
import { mergedAnyway } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { counted, countedOrNo } from '../../base/wording.ts';
import {
  type AuditTable,
  column,
  commitColumn,
  day,
  short,
  subjectOf,
  trailersOf,
  unjudgedNote,
  who,
} from './table.ts';

export function mergedTable(records: readonly AuditRecord[]): AuditTable {
  const merged = mergedAnyway(records);
  return {
    headline: `${countedOrNo(merged.length, 'failing change was', 'failing changes were')} merged, of ${counted(records.length, 'change')}`,
    notes: unjudgedNote(records),
    columns: [
      day,
      commitColumn,
      ...who,
      column('entry', 'rule'),
      column('subject', 'subject'),
      column('why', 'why'),
    ],
    rows: merged.flatMap((record) =>
      record.findings
        .filter(({ fails }) => fails)
        .map(({ entry, subject, message }) => [
          record.on,
          short(record.commit),
          record.author.name,
          trailersOf(record),
          entry,
          subjectOf(subject),
          message,
        ]),
    ),
  };
}
