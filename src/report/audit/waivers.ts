/** Which waivers were used, and which would have been after their date. */
import { waiversUsed } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { countedOrNo } from '../../base/wording.ts';
import { type AuditTable, type Cell, column, short } from './table.ts';

function lateWords(all: number, late: number): string {
  if (all === 0) return '';
  if (all === 1) return late === 1 ? ', and after its date' : ', within its dates';
  if (late === 0) return ', none of them after its date';
  return `, ${late} of them after ${late === 1 ? 'its date' : 'their dates'}`;
}

export function waiversTable(records: readonly AuditRecord[]): AuditTable {
  const uses = waiversUsed(records);
  const late = uses.filter(({ expired }) => expired.length > 0).length;
  const last = (among: readonly AuditRecord[]): Cell => {
    const record = among.at(-1);
    return record === undefined ? null : `${record.on} ${short(record.commit)}`;
  };
  return {
    headline: `${countedOrNo(uses.length, 'waiver was', 'waivers were')} used or needed${lateWords(uses.length, late)}`,
    notes: [],
    columns: [
      column('rule', 'rule'),
      column('subject', 'subject'),
      column('approved_by', 'approved by'),
      column('up_to', 'up to'),
      column('from', 'from'),
      column('until', 'until'),
      column('used', 'times used', 'right'),
      column('last_used', 'last used'),
      column('outgrown', 'times outgrown', 'right'),
      column('last_outgrown', 'last outgrown'),
      column('expired', 'times needed after its date', 'right'),
      column('last_needed', 'last needed'),
      column('written', 'times kept from use by its writing', 'right'),
      column('write_instead', 'write instead'),
      column('place', 'at'),
    ],
    rows: uses.map(({ waiver, used, outgrown, expired, written, writeInstead }) => [
      waiver.rule,
      waiver.subject,
      waiver.approvedBy,
      waiver.upTo,
      waiver.from,
      waiver.until,
      used.length,
      last(used),
      outgrown.length,
      last(outgrown),
      expired.length,
      last(expired),
      written.length,
      writeInstead,
      `${waiver.file}:${waiver.line}`,
    ]),
  };
}
