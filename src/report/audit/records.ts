/** The records themselves: a line for each commit, for people, or in full for programs. */
import type { AuditRecord } from '../../audit/record.ts';
import { counted } from '../../base/wording.ts';
import { jsonLine } from '../json-text.ts';
import { csv } from './csv.ts';
import {
  type AuditTable,
  changedCost,
  column,
  commitColumn,
  count,
  currencyColumn,
  day,
  short,
  subjectColumn,
} from './table.ts';

/** The audit itself: a line for each commit. */
export function recordsTable(records: readonly AuditRecord[]): AuditTable {
  const of = (verdict: AuditRecord['verdict']): number =>
    records.filter((record) => record.verdict === verdict).length;
  return {
    headline: `${counted(records.length, 'commit')} changed storage, prices, policies, waivers or settings: ${of('pass')} passed, ${of('fail')} failed, ${counted(of('not judged'), 'was', 'were')} not judged`,
    notes: [...whyNotJudged(records), ...overUnread(records)],
    columns: [
      day,
      commitColumn,
      column('verdict', 'verdict'),
      column('difference', 'monthly cost', 'right'),
      currencyColumn(),
      column('new', 'new', 'right'),
      column('fixed', 'fixed', 'right'),
      column('by', 'by'),
      subjectColumn,
    ],
    rows: records.map((record) => [
      record.on,
      short(record.commit),
      record.verdict,
      ...changedCost(record),
      count(record, 'new', 'updated'),
      count(record, 'absent'),
      record.author.name,
      record.subject,
    ]),
  };
}

/** So many are explained above the table; the records tell of all. */
const explainedAtMost = 5;

function whyNotJudged(records: readonly AuditRecord[]): readonly string[] {
  const unjudged = records.filter(({ verdict }) => verdict === 'not judged');
  const more = unjudged.length - explainedAtMost;
  return [
    ...unjudged
      .slice(0, explainedAtMost)
      .map(({ commit, reasons }) => `Not judged: ${short(commit)}, ${reasons.join('; ')}`),
    ...(more > 0
      ? [
          `And ${more} more ${more === 1 ? 'was' : 'were'} not judged; --format ndjson says why for each, and what to do.`,
        ]
      : []),
  ];
}

/** Commits that follow one that does not read: with what they were compared. */
const overUnread = (records: readonly AuditRecord[]): readonly string[] =>
  records.flatMap(({ commit, unreadMain }): readonly string[] => {
    if (unreadMain === null) return [];
    const { comparedWith, commits } = unreadMain;
    const before = commits === 1 ? 'the commit before it does' : `the ${commits} commits before it do`;
    return [
      comparedWith === null
        ? `${short(commit)} was judged alone, as a first adoption: no commit before it reads.`
        : `${short(commit)} was compared with ${short(comparedWith)}: ${before} not read.`,
    ];
  });

/** Under the names that the screen has, where it has them; amounts are exact. */
const csvColumns: readonly (readonly [string, (record: AuditRecord) => string | number | null])[] = [
  ['commit', ({ commit }) => commit],
  ['base', ({ base }) => base],
  ['compared with', ({ base, unreadMain }) => (unreadMain === null ? base : unreadMain.comparedWith)],
  ['day', ({ on }) => on],
  ['committed', ({ committed }) => committed],
  ['by', ({ author }) => author.name],
  ['by (address)', ({ author }) => author.email],
  ['committer', ({ committer }) => committer.name],
  ['committer (address)', ({ committer }) => committer.email],
  ['signature', ({ signature }) => signature],
  ['trailers', ({ trailers }) => trailers.map(({ key, value }) => `${key}: ${value}`).join('; ')],
  ['message', ({ subject }) => subject],
  ['touched', ({ touched }) => touched.join(' ')],
  ['verdict', ({ verdict }) => verdict],
  ['reasons', ({ reasons }) => reasons.join('; ')],
  ['new', (record) => count(record, 'new')],
  ['updated', (record) => count(record, 'updated')],
  ['fixed', (record) => count(record, 'absent')],
  ['failing', ({ findings }) => findings.filter(({ fails }) => fails).length],
  ['open errors', (record) => record.open?.error ?? null],
  ['waivers used', ({ waivers }) => waivers.filter(({ state }) => state === 'used').length],
  ['currency', ({ cost }) => cost?.currency ?? null],
  ['monthly cost before', ({ cost }) => cost?.before ?? null],
  ['monthly cost after', ({ cost }) => cost?.after ?? null],
  ['looser', ({ policyChanges }) => policyChanges.filter(({ direction }) => direction === 'looser').length],
  ['tried', ({ tried }) => tried?.verdict ?? null],
];

/** What stands above the records as CSV. */
export const recordsCsvHead = (): string => csv([csvColumns.map(([key]) => key)]);

export const recordCsv = (record: AuditRecord): string => csv([csvColumns.map(([, cell]) => cell(record))]);

export const recordLine = (record: AuditRecord): string => jsonLine(record);
