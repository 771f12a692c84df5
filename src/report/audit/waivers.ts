/** Which waivers were used, and which would have been after their date. */
import { waiversUsed } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { counted } from '../../base/wording.ts';
import { type AuditTable, type Cell, column, short } from './table.ts';

export function waiversTable(records: readonly AuditRecord[]): AuditTable {
  const uses = waiversUsed(records);
  const late = uses.filter(({ lapsed }) => lapsed.length > 0).length;
  const last = (among: readonly AuditRecord[]): Cell => {
    const record = among.at(-1);
    return record === undefined ? null : `${record.on} ${short(record.commit)}`;
  };
  return {
    headline: `${counted(uses.length, 'waiver was', 'waivers were')} used or wanted; ${late} after their date`,
    notes: [],
    columns: [
      column('rule', 'rule'),
      column('subject', 'subject'),
      column('approved_by', 'approved by'),
      column('from', 'from'),
      column('until', 'until'),
      column('used', 'used in', 'right'),
      column('last_used', 'last used'),
      column('after_its_date', 'wanted after its date in', 'right'),
      column('last_wanted', 'last wanted'),
      column('place', 'at'),
    ],
    rows: uses.map(({ waiver, used, lapsed }) => [
      waiver.rule,
      waiver.subject,
      waiver.approvedBy,
      waiver.from,
      waiver.until,
      used.length,
      last(used),
      lapsed.length,
      last(lapsed),
      `${waiver.file}:${waiver.line}`,
    ]),
  };
}
