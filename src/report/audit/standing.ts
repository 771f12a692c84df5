/** How long each violation was open. */
import { type Stood, standing, type Turn } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { counted } from '../../base/wording.ts';
import { type AuditTable, column, short } from './table.ts';

const turn = ({ on, commit, by }: Turn): string =>
  by === 'commit' ? `${on} ${short(commit)}` : by === 'before' ? `before ${on}` : `by ${on}, of itself`;

export function standingTable(records: readonly AuditRecord[]): AuditTable {
  const stood = standing(records);
  const open = stood.filter(({ closed }) => closed === undefined).length;
  return {
    headline: `${counted(stood.length, 'violation')} stood in this span, ${open} of them to its end`,
    notes: [
      'What came or went of itself did so as a day passed, or with the policy, the prices or the readings.',
    ],
    columns: [
      column('opened', 'came'),
      column('closed', 'went'),
      column('days', 'days', 'right'),
      column('level', 'level'),
      column('entry', 'rule'),
      column('subject', 'subject'),
      column('message', 'what was wrong when it came'),
    ],
    rows: stood.map(({ opened, closed, days, level, entry, subject, message }: Stood) => [
      turn(opened),
      closed === undefined ? 'still stands' : turn(closed),
      days,
      level,
      entry,
      `${subject.kind} ${subject.name}`,
      message,
    ]),
  };
}
