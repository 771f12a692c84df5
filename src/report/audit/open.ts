/** How long each violation was open. */
import { type OpenViolation, openViolations, type Turn } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { countedOrNo } from '../../base/wording.ts';
import { type AuditTable, column, short, subjectOf } from './table.ts';

const turn = ({ on, commit, by }: Turn): string =>
  by === 'commit'
    ? `${on} ${short(commit)}`
    : by === 'before'
      ? `before ${on}`
      : `by ${on}, without a commit`;

function atItsEnd(all: number, open: number): string {
  if (all === 0) return '';
  if (all === 1) return open === 1 ? ', and still was at its end' : ', and no longer was at its end';
  return `, ${open === 0 ? 'none' : open} of them at its end`;
}

export function openTable(records: readonly AuditRecord[]): AuditTable {
  const violations = openViolations(records);
  const open = violations.filter(({ closed }) => closed === undefined).length;
  return {
    headline: `${countedOrNo(violations.length, 'violation was', 'violations were')} open in this period${atItsEnd(violations.length, open)}`,
    notes: [
      'A violation that was opened or closed without a commit depends on the date, the policy, the prices or the readings.',
    ],
    columns: [
      column('opened', 'opened'),
      column('closed', 'closed'),
      column('days', 'days', 'right'),
      column('level', 'level'),
      column('entry', 'rule'),
      column('subject', 'subject'),
      column('message', 'what was wrong when it was opened'),
    ],
    rows: violations.map(({ opened, closed, days, level, entry, subject, message }: OpenViolation) => [
      turn(opened),
      closed === undefined ? 'still open' : turn(closed),
      days,
      level,
      entry,
      subjectOf(subject),
      message,
    ]),
  };
}
