/** The audit's answers, each as one table: for a terminal, as Markdown, as CSV or as lines of JSON. */

import { stringify } from 'csv-stringify/sync';
import type { BackTest } from '../audit/back-test.ts';
import type { EvidenceFinding, HeldEvidence } from '../audit/evidence.ts';
import {
  loosenings,
  mergedAnyway,
  type Stood,
  spendByTeam,
  standing,
  type Turn,
  waiversUsed,
} from '../audit/questions.ts';
import type { AuditRecord } from '../audit/record.ts';
import { counted } from '../base/wording.ts';
import { holdsOn } from '../estate/dates.ts';
import { showSize } from '../estate/size.ts';
import type { Revision } from '../policy/revision.ts';
import { money } from '../price/money.ts';
import { listInForce } from '../price/price-list.ts';
import { showAmount, showDifference } from './amounts.ts';
import { atLeast, drawHeadline, type Screen } from './draw.ts';
import { markdownText, visible } from './escape.ts';
import { jsonLine } from './json-text.ts';
import { markdownTable, textTable, wrapped } from './table.ts';

export type AuditFormat = 'text' | 'ndjson' | 'csv' | 'markdown';

export type AuditQuestion = 'records' | 'merged-anyway' | 'loosenings' | 'spend' | 'standing' | 'waivers';

type Cell = string | number | null;

interface AuditColumn {
  /** The name in CSV and JSON. */
  readonly key: string;
  readonly title: string;
  readonly align: 'left' | 'right';
}

/** One answer. Cells are plain text, and may come from input. */
export interface AuditTable {
  readonly headline: string;
  readonly notes: readonly string[];
  readonly columns: readonly AuditColumn[];
  readonly rows: readonly (readonly Cell[])[];
}

const column = (key: string, title: string, align: AuditColumn['align'] = 'left'): AuditColumn => ({
  key,
  title,
  align,
});

const short = (commit: string): string => commit.slice(0, 12);

const day = column('on', 'day');
const commitColumn = column('commit', 'commit');
const who = [column('by', 'by'), column('reviewed', 'trailers')];
const subjectColumn = column('subject', 'message');

/** Whom the trailers name: `Reviewed-by: Robin Knot`. */
const trailersOf = ({ trailers }: AuditRecord): string =>
  trailers
    .filter(({ key }) => /-by$/i.test(key))
    .map(({ key, value }) => `${key}: ${value}`)
    .join('; ');

const changedCost = ({ cost }: AuditRecord): string =>
  cost === null ? '' : showDifference(money(cost.difference), cost.currency);

const count = ({ findings }: AuditRecord, ...states: readonly string[]): number =>
  findings.filter(({ baselineState }) => states.includes(baselineState)).length;

/** The audit itself: a line for each commit. */
export function recordsTable(records: readonly AuditRecord[]): AuditTable {
  const of = (verdict: AuditRecord['verdict']): number =>
    records.filter((record) => record.verdict === verdict).length;
  return {
    headline: `${counted(records.length, 'commit')} touched storage, prices, policies, waivers or settings: ${of('pass')} pass, ${of('fail')} fail, ${of('not judged')} not judged`,
    notes: whyNotJudged(records),
    columns: [
      day,
      commitColumn,
      column('verdict', 'verdict'),
      column('difference', 'cost a month', 'right'),
      column('came', 'came', 'right'),
      column('went', 'went', 'right'),
      column('by', 'by'),
      subjectColumn,
    ],
    rows: records.map((record) => [
      record.on,
      short(record.commit),
      record.verdict,
      changedCost(record),
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
      ? [`And ${more} more were not judged; --format ndjson says why, and what to do, of each.`]
      : []),
  ];
}

const csvColumns: readonly (readonly [string, (record: AuditRecord) => Cell])[] = [
  ['commit', ({ commit }) => commit],
  ['base', ({ base }) => base],
  ['on', ({ on }) => on],
  ['committed', ({ committed }) => committed],
  ['author', ({ author }) => author.name],
  ['author_email', ({ author }) => author.email],
  ['committer', ({ committer }) => committer.name],
  ['committer_email', ({ committer }) => committer.email],
  ['signature', ({ signature }) => signature],
  ['trailers', ({ trailers }) => trailers.map(({ key, value }) => `${key}: ${value}`).join('; ')],
  ['subject', ({ subject }) => subject],
  ['touched', ({ touched }) => touched.join(' ')],
  ['verdict', ({ verdict }) => verdict],
  ['reasons', ({ reasons }) => reasons.join('; ')],
  ['new', (record) => count(record, 'new')],
  ['updated', (record) => count(record, 'updated')],
  ['absent', (record) => count(record, 'absent')],
  ['failing', ({ findings }) => findings.filter(({ fails }) => fails).length],
  ['standing_errors', (record) => record.standing?.error ?? null],
  ['waivers_used', ({ waivers }) => waivers.filter(({ state }) => state === 'used').length],
  ['currency', ({ cost }) => cost?.currency ?? null],
  ['cost_before', ({ cost }) => cost?.before ?? null],
  ['cost_after', ({ cost }) => cost?.after ?? null],
  ['looser', ({ policyChanges }) => policyChanges.filter(({ direction }) => direction === 'looser').length],
  ['tried', ({ tried }) => tried?.verdict ?? null],
];

/** A cell that a spreadsheet would take for a formula is written as text. */
const csv = (rows: readonly (readonly Cell[])[]): string =>
  stringify(
    rows.map((row) => [...row]),
    { escape_formulas: true, record_delimiter: '\r\n' },
  );

/** What stands above the records as CSV. */
export const recordsCsvHead = (): string => csv([csvColumns.map(([key]) => key)]);

export const recordCsv = (record: AuditRecord): string => csv([csvColumns.map(([, cell]) => cell(record))]);

export const recordLine = (record: AuditRecord): string => jsonLine(record);

export function answer(question: AuditQuestion, records: readonly AuditRecord[]): AuditTable {
  switch (question) {
    case 'records':
      return recordsTable(records);
    case 'merged-anyway':
      return mergedTable(records);
    case 'loosenings':
      return looseningsTable(records);
    case 'spend':
      return spendTable(records);
    case 'standing':
      return standingTable(records);
    case 'waivers':
      return waiversTable(records);
  }
}

function mergedTable(records: readonly AuditRecord[]): AuditTable {
  const merged = mergedAnyway(records);
  return {
    headline: `${counted(merged.length, 'failing change was', 'failing changes were')} merged anyway, of ${records.length}`,
    notes: [],
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
          `${subject.kind} ${subject.name}`,
          message,
        ]),
    ),
  };
}

function looseningsTable(records: readonly AuditRecord[]): AuditTable {
  const loosened = loosenings(records);
  return {
    headline: `${counted(loosened.length, 'alteration')} of the policy let more through, or may have`,
    notes: [],
    columns: [
      day,
      commitColumn,
      ...who,
      column('direction', 'direction'),
      column('of', 'of'),
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

function spendTable(records: readonly AuditRecord[]): AuditTable {
  const steps = spendByTeam(records);
  return {
    headline: `What each team's storage cost a month, from each change on`,
    notes: [],
    columns: [
      day,
      commitColumn,
      column('team', 'team'),
      column('before', 'before', 'right'),
      column('after', 'after', 'right'),
      column('by', 'by'),
    ],
    rows: steps.map(({ record, team, before, after, currency }) => [
      record.on,
      short(record.commit),
      team ?? 'no team',
      showAmount(money(before), currency),
      showAmount(money(after), currency),
      record.author.name,
    ]),
  };
}

const turn = ({ on, commit, by }: Turn): string =>
  by === 'commit' ? `${on} ${short(commit)}` : by === 'before' ? `before ${on}` : `by ${on}, of itself`;

function standingTable(records: readonly AuditRecord[]): AuditTable {
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

function waiversTable(records: readonly AuditRecord[]): AuditTable {
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
      changedCost(record),
      (what === 'would have been stopped' ? (record.tried?.reasons ?? []) : record.reasons).join('; '),
      record.subject,
    ]);
  return {
    headline: `Of ${counted(judged, 'merged change')}, the policy would have stopped ${stopped.length} that passed, and let through ${letThrough.length} that failed`,
    notes: [
      `${counted(failBoth, 'change fails', 'changes fail')} under both.`,
      ...(notJudged > 0 ? [`${counted(notJudged, 'change')} could not be judged by one or the other.`] : []),
      ...(teams.length > 0 ? [`What it would have stopped came to, a month: ${teams.join(', ')}.`] : []),
    ],
    columns: [
      day,
      commitColumn,
      column('what', 'what'),
      column('by', 'by'),
      column('difference', 'cost a month', 'right'),
      column('why', 'why it fails'),
      subjectColumn,
    ],
    rows: [...rows(stopped, 'would have been stopped'), ...rows(letThrough, 'would have passed')],
  };
}

/** What recorded verdicts say otherwise than the replay, or do not say at all. */
export function evidenceTable({ findings, agreeing, elsewhere }: HeldEvidence, records: number): AuditTable {
  const of = (kind: EvidenceFinding['kind']): number => findings.filter((each) => each.kind === kind).length;
  return {
    headline: `Of ${counted(records, 'record')}, ${agreeing} have evidence that agrees: ${of('missing')} missing, ${of('altered')} altered, ${of('contradicting')} contradicting`,
    notes:
      elsewhere.length === 0
        ? []
        : [
            `${counted(elsewhere.length, 'attestation is', 'attestations are')} for commits that are not in this span.`,
          ],
    columns: [column('kind', 'what'), day, commitColumn, column('file', 'file'), column('message', 'why')],
    rows: findings.map((finding) => [
      finding.kind,
      finding.kind === 'altered' ? null : (finding.record.on ?? null),
      finding.kind === 'altered' ? null : short(finding.record.commit),
      finding.kind === 'missing' ? null : finding.file,
      finding.message,
    ]),
  };
}

/** The policy as one revision held it, on a day. */
export function policyTable(
  { settings, rules, waivers, priceLists }: Revision,
  commit: string,
  on: string,
): AuditTable {
  const list = listInForce(priceLists, on);
  const inForce = waivers.filter((waiver) => holdsOn(waiver, on));
  const at = ({ file, line }: { readonly file: string; readonly line: number }): string => `${file}:${line}`;
  return {
    headline: `On ${on} the policy was that of ${short(commit)}: ${counted(rules.length, 'rule')}, ${counted(inForce.length, 'waiver')} in force`,
    notes: [
      list === undefined
        ? 'No price list was in force.'
        : `The price list in force held from ${list.from} (${at(list.place)}).`,
      ...[...(settings?.sites.values() ?? [])].flatMap(({ name, quota, attachmentSlots }) => {
        const limits = [
          ...(quota.volumes === undefined ? [] : [`${quota.volumes} volumes`]),
          ...(quota.size === undefined ? [] : [showSize(quota.size)]),
          ...(attachmentSlots === undefined ? [] : [`${attachmentSlots} attachment slots a server`]),
        ];
        return limits.length === 0 ? [] : [`The site ${name} had ${limits.join(', ')}.`];
      }),
    ],
    columns: [
      column('kind', 'kind'),
      column('name', 'name'),
      column('rule', 'rule'),
      column('level', 'level'),
      column('parameters', 'parameters'),
      column('place', 'at'),
    ],
    rows: [
      ...rules.map(({ name, entry, level, place, shippedIn }) => {
        const { rule, name: _name, level: _level, enabled: _enabled, ...parameters } = entry;
        return [
          'rule',
          name,
          rule,
          level,
          Object.entries(parameters)
            .map(([key, value]) => `${key}: ${typeof value === 'string' ? value : JSON.stringify(value)}`)
            .join(', '),
          shippedIn === undefined ? at(place) : `the pack ${shippedIn}`,
        ];
      }),
      ...inForce.map((waiver) => [
        'waiver',
        waiver.subject,
        waiver.rule,
        null,
        `${waiver.from} to ${waiver.until}, approved by ${waiver.approvedBy}: ${waiver.reason}`,
        at(waiver.place),
      ]),
    ],
  };
}

const text = (cell: Cell): string => (cell === null ? '' : String(cell));

export function reportTable(table: AuditTable, format: AuditFormat, screen: Screen): string {
  const { headline, notes, columns, rows } = table;
  const cells = { columns, rows: rows.map((row) => row.map(text)) };
  switch (format) {
    case 'ndjson':
      return rows
        .map((row) =>
          jsonLine(Object.fromEntries(columns.map(({ key }, index) => [key, row[index] ?? null]))),
        )
        .join('');
    case 'csv':
      return csv([columns.map(({ key }) => key), ...rows]);
    case 'markdown': {
      const { head, rows: lines } = markdownTable(cells);
      return [
        `## ${markdownText(headline)}`,
        ...notes.map((note) => `\n${markdownText(note)}`),
        ...(rows.length === 0 ? [] : ['', head, ...lines]),
        '',
      ].join('\n');
    }
    case 'text': {
      const wide = atLeast(screen);
      return `${[
        ...drawHeadline(headline, 'plain', wide),
        ...notes.flatMap((note) => wrapped(visible(note), wide.width - 2).map((line) => `  ${line}`)),
        ...(rows.length === 0 ? [] : ['', ...textTable(cells, wide.width - 2).map((line) => `  ${line}`)]),
      ].join('\n')}\n`;
    }
  }
}
