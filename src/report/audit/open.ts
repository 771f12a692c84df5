/** How long each violation was open. */
import { type OpenViolation, openViolations, type Turn } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { counted } from '../../base/wording.ts';
import { type AuditTable, column, short } from './table.ts';

const turn = ({ on, commit, by }: Turn): string =>
  by === 'commit'
    ? `${on} ${short(commit)}`
    : by === 'before'
      ? `before ${on}`
      : `by ${on}, without a commit`;

export function openTable(records: readonly AuditRecord[]): AuditTable {
  const violations = openViolations(records);
  const open = violations.filter(({ closed }) => closed === undefined).length;
  return {
    headline: `${counted(violations.length, 'violation was', 'violations were')} open in this period, ${open} of them at its end`,
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
      `${subject.kind} ${subject.name}`,
      message,
    ]),
  };
}
