/** What a policy that is tried would have done. */
import type { BackTest } from '../../audit/back-test.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { counted, countedOrNo } from '../../base/wording.ts';
import { showDifference } from '../model/amounts.ts';
import {
  type AuditTable,
  changedCost,
  column,
  commitColumn,
  currencyColumn,
  day,
  short,
  subjectColumn,
} from './table.ts';

const orNone = (changes: readonly AuditRecord[]): number | 'none' =>
  changes.length === 0 ? 'none' : changes.length;

/** What a tried policy would have done, change by change. */
export function backTestTable(test: BackTest): AuditTable {
  const { stopped, letThrough, judged, notJudged, failBoth, currency } = test;
  const teams = [...test.teams].map(
    ([team, difference]) => `${team ?? 'no team'} ${showDifference(difference, currency ?? '')}`,
  );
  const rows = (records: readonly AuditRecord[], what: string) =>
    records.map((record) => [
      record.on,
      short(record.commit),
      what,
      record.author.name,
      ...changedCost(record),
      (what === 'would have been stopped' ? (record.tried?.reasons ?? []) : record.reasons).join('; '),
      record.subject,
    ]);
  return {
    headline: `Of ${counted(judged, 'merged change')}, the policy would have stopped ${orNone(stopped)} that passed, and let through ${orNone(letThrough)} that failed`,
    notes: [
      `${countedOrNo(failBoth, 'change fails', 'changes fail')} under both.`,
      ...(notJudged > 0 ? [`${counted(notJudged, 'change')} could not be judged by one or the other.`] : []),
      ...(teams.length > 0 ? [`Monthly cost of what it would have stopped: ${teams.join(', ')}.`] : []),
    ],
    columns: [
      day,
      commitColumn,
      column('what', 'what'),
      column('by', 'by'),
      column('difference', 'monthly cost', 'right'),
      currencyColumn(),
      column('why', 'why it fails'),
      subjectColumn,
    ],
    rows: [...rows(stopped, 'would have been stopped'), ...rows(letThrough, 'would have passed')],
  };
}
