/** The audit's answers, each as one table: for a terminal, as Markdown, as CSV or as lines of JSON. */
import type { AuditRecord } from '../../audit/record.ts';
import { visible } from '../../base/visible.ts';
import { atLeast, drawHeadline, type Screen } from '../draw.ts';
import { jsonLine } from '../json-text.ts';
import { markdownText } from '../markdown-text.ts';
import { markdownTable, textTable, wrapped } from '../table.ts';
import { csv } from './csv.ts';
import { looseningsTable } from './loosenings.ts';
import { mergedTable } from './merged-anyway.ts';
import { openTable } from './open.ts';
import { recordsTable } from './records.ts';
import { spendTable } from './spend.ts';
import type { AuditTable, Cell } from './table.ts';
import { waiversTable } from './waivers.ts';

export { backTestTable } from './back-test.ts';
export { evidenceTable } from './evidence.ts';
export { policyTable } from './policy.ts';
export { recordCsv, recordLine, recordsCsvHead } from './records.ts';
export type { AuditTable } from './table.ts';

export type AuditFormat = 'text' | 'ndjson' | 'csv' | 'markdown';

export type AuditQuestion = 'records' | 'merged-anyway' | 'loosenings' | 'spend' | 'open' | 'waivers';

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
    case 'open':
      return openTable(records);
    case 'waivers':
      return waiversTable(records);
  }
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
