/** The audit's answers, each as one table: for a terminal, as Markdown, as CSV or as lines of JSON. */
import type { AuditRecord } from '../../audit/record.ts';
import { visible } from '../../base/visible.ts';
import { showMoney } from '../../price/money.ts';
import { atLeast, drawHeadline, type Screen } from '../draw.ts';
import { jsonLine } from '../json-text.ts';
import { markdownText } from '../markdown-text.ts';
import { showAmount, showDifference } from '../model/amounts.ts';
import { drawPage } from '../page/document.ts';
import { markdownTable, textTable, wrapped } from '../table.ts';
import { csv } from './csv.ts';
import { looseningsTable } from './loosenings.ts';
import { mergedTable } from './merged-anyway.ts';
import { openTable } from './open.ts';
import { auditModel, tableModel } from './page.ts';
import { recordsTable } from './records.ts';
import { spendTable } from './spend.ts';
import type { AuditTable, Cell } from './table.ts';
import { waiversTable } from './waivers.ts';

export { backTestTable } from './back-test.ts';
export { evidenceTable } from './evidence.ts';
export { policyTable } from './policy.ts';
export { recordCsv, recordLine, recordsCsvHead } from './records.ts';
export type { AuditTable } from './table.ts';

export type AuditFormat = 'text' | 'ndjson' | 'csv' | 'markdown' | 'html';

export type AuditQuestion = 'records' | 'merged-anyway' | 'loosenings' | 'spend' | 'open' | 'waivers';

/** @param passed by `loosenedKey`: the commits that passed only by it; asked for the loosenings alone */
export function answer(
  question: AuditQuestion,
  records: readonly AuditRecord[],
  passed: ReadonlyMap<string, readonly string[]>,
): AuditTable {
  switch (question) {
    case 'records':
      return recordsTable(records);
    case 'merged-anyway':
      return mergedTable(records);
    case 'loosenings':
      return looseningsTable(records, passed);
    case 'spend':
      return spendTable(records);
    case 'open':
      return openTable(records);
    case 'waivers':
      return waiversTable(records);
  }
}

function text(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell !== 'object') return String(cell);
  const { kind, amount, currency } = cell;
  return kind === 'difference' ? showDifference(amount, currency) : showAmount(amount, currency);
}

const whole = 'ullage audit --format ndjson';

/** Every answer on one page, with pictures. */
export const reportAuditPage = (
  records: readonly AuditRecord[],
  passed: ReadonlyMap<string, readonly string[]>,
): string => drawPage(auditModel(records, passed), whole);

/** For programs: an amount is a bare decimal, with as many digits as its currency has. */
const bare = (cell: Cell): string | number | null =>
  cell === null || typeof cell !== 'object' ? cell : showMoney(cell.amount, cell.currency);

export function reportTable(table: AuditTable, format: AuditFormat, screen: Screen): string {
  const { headline, notes, columns, rows } = table;
  const cells = {
    columns: columns.filter(({ shown }) => shown),
    rows: rows.map((row) => row.flatMap((cell, index) => (columns[index]?.shown ? text(cell) : []))),
  };
  switch (format) {
    case 'ndjson':
      return rows
        .map((row) =>
          jsonLine(Object.fromEntries(columns.map(({ key }, index) => [key, bare(row[index] ?? null)]))),
        )
        .join('');
    case 'csv':
      return csv([columns.map(({ title }) => title), ...rows.map((row) => row.map(bare))]);
    case 'html':
      return drawPage(tableModel(table), whole);
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
