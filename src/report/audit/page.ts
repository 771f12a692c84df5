/** The audit's answers as a report with pictures: spend and verdicts over time, and how long things stood. */
import { openViolations, waiversUsed } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { counted } from '../../base/wording.ts';
import { sentence } from '../model/blocks.ts';
import type { Block, ReportModel, Section } from '../model/model.ts';
import type { DaySpan, DaysRow, Picture } from '../model/picture.ts';
import { subjectWords } from '../model/subjects.ts';
import { looseningsTable } from './loosenings.ts';
import { mergedTable } from './merged-anyway.ts';
import { openTable } from './open.ts';
import { recordsTable } from './records.ts';
import { spendTable } from './spend.ts';
import { spendPictures } from './spend-pictures.ts';
import type { AuditTable } from './table.ts';
import { waiversTable } from './waivers.ts';

/** @param passed by `loosenedKey`: the commits that passed only by it */
export function auditModel(
  records: readonly AuditRecord[],
  passed: ReadonlyMap<string, readonly string[]>,
): ReportModel {
  const days = records.map(({ on }) => on).sort();
  const span: DaySpan = { from: days[0] ?? '', until: days.at(-1) ?? '' };
  const judged = recordsTable(records);
  const loosened = looseningsTable(records, passed);
  const names = loosened.rows.map((_, index) => `loosening-${index + 1}`);
  const pictures = records.length > 0;
  const section = (
    title: string,
    table: AuditTable,
    drawn: readonly Picture[],
    rowNames?: readonly string[],
  ): Section => ({
    title,
    blocks: [
      sentence(`${table.headline}.`),
      ...table.notes.map(sentence),
      ...(pictures ? drawn.map((picture): Block => ({ kind: 'picture', picture })) : []),
      ...(table.rows.length === 0 ? [] : [tableBlock(table, rowNames)]),
    ],
  });
  return {
    tone: 'plain',
    headline:
      records.length === 0
        ? 'Nothing was changed in this period'
        : `The changes of main from ${span.from} to ${span.until}`,
    fields: [],
    sections: [
      section('Verdicts', judged, [verdicts(records, span, loosened, names)], records.map(changeName)),
      section('Monthly cost by team', spendTable(records), spendPictures(records, span)),
      section('Loosenings of the policy', loosened, [], names),
      section('Failing changes that were merged', mergedTable(records), []),
      section('How long violations stood', openTable(records), [violations(records, span)]),
      section('Waivers', waiversTable(records), [waivers(records, span)]),
    ],
  };
}

/** Any one answer, with no picture. */
export const tableModel = (table: AuditTable): ReportModel => ({
  tone: 'plain',
  headline: table.headline,
  fields: [],
  sections: [
    {
      title: '',
      blocks: [...table.notes.map(sentence), ...(table.rows.length === 0 ? [] : [tableBlock(table)])],
    },
  ],
});

const tableBlock = ({ columns, rows }: AuditTable, rowNames?: readonly string[]): Block => ({
  kind: 'table',
  table: {
    columns: columns.flatMap(({ title, align, shown }) =>
      shown ? [{ title, holds: align === 'right' ? 'figures' : 'words' }] : [],
    ),
    rows: rows.map((row) =>
      row.flatMap((cell, index) =>
        columns[index]?.shown !== true ? [] : [typeof cell === 'number' ? String(cell) : (cell ?? '')],
      ),
    ),
    rowNames,
  },
});

/** As many as can be told apart in a line of a row. */
const mostLinks = 12;

/** What the row of a change is linked to by. */
const changeName = (_: AuditRecord, index: number): string => `change-${index + 1}`;

/** How many there are, and where the first of them are told. */
const told = (count: string, links: readonly Link[]): Pick<DaysRow, 'figure' | 'toldAt'> => ({
  figure: `${count}${links.length === 0 ? '' : links.length > mostLinks ? `; the first ${mostLinks}:` : ':'}`,
  toldAt: links.slice(0, mostLinks),
});

type Link = NonNullable<DaysRow['toldAt']>[number];

function verdicts(
  records: readonly AuditRecord[],
  span: DaySpan,
  loosened: AuditTable,
  names: readonly string[],
): Picture {
  const row = (verdict: AuditRecord['verdict']): DaysRow => {
    const those = records.flatMap((record, index) =>
      record.verdict === verdict
        ? [{ on: record.on, text: String(index + 1), row: changeName(record, index) }]
        : [],
    );
    const days = those.map(({ on }) => on);
    return { name: verdict, days, stretches: [], ...told(counted(days.length, 'change'), those) };
  };
  const days = loosened.rows.map(([on]) => String(on));
  const loosening: DaysRow = {
    name: 'policy loosened',
    days,
    stretches: [],
    ...told(
      counted(days.length, 'time'),
      names.map((row, index) => ({ text: String(index + 1), row })),
    ),
  };
  return {
    kind: 'days',
    caption: 'Each merged change on its day, by its verdict',
    columns: ['Verdict', 'How many'],
    span,
    rows: [row('pass'), row('fail'), row('not judged'), loosening],
  };
}

/** The longest first: those are what a reader looks for. */
function violations(records: readonly AuditRecord[], span: DaySpan): Picture {
  const all = openViolations(records).toSorted((a, b) => b.days - a.days);
  return {
    kind: 'days',
    caption: 'How long each violation stood, the longest first',
    columns: ['Violation', 'Stood for'],
    span,
    rows: all.map(
      ({ entry, subject, opened, closed, days }): DaysRow => ({
        name: `${entry}: ${subjectWords(subject)}`,
        days: [],
        stretches: [
          {
            from: opened.on,
            until: closed?.on ?? span.until,
            as: closed === undefined ? 'standing' : 'over',
          },
        ],
        figure: counted(days, 'day'),
      }),
    ),
  };
}

function waivers(records: readonly AuditRecord[], span: DaySpan): Picture {
  return {
    kind: 'days',
    caption: 'When each waiver that was used or needed holds',
    columns: ['Waiver', 'Used'],
    span,
    rows: waiversUsed(records).map(
      ({ waiver, used }): DaysRow => ({
        name: `${waiver.rule}: ${waiver.subject}`,
        days: [],
        stretches: [
          { from: waiver.from, until: waiver.until, as: waiver.until >= span.until ? 'standing' : 'over' },
        ],
        figure: counted(used.length, 'time'),
      }),
    ),
  };
}
