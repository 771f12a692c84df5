/** What is said of a judgement, and every form it can be written in, by name. */
import type { Judgement } from '../policy/judgement.ts';
import type { Screen } from './draw.ts';
import { reportJson } from './json.ts';
import { reportMarkdown } from './markdown.ts';
import type { Besides } from './page/judgement.ts';
import { reportText } from './text.ts';

export { reportJson } from './json.ts';
export { type MarkdownOptions, reportMarkdown } from './markdown.ts';
export { keysOf } from './model/estate.ts';
export { reportModel } from './model/judgement.ts';
export type * from './model/model.ts';
export { unreadSentence } from './model/unread-main.ts';
export { summaryLine } from './model/verdict.ts';
export type { Besides } from './page/judgement.ts';
export { reportProblems, reportText } from './text.ts';
export type { Screen };

export const reportFormats = ['text', 'markdown', 'json', 'sarif', 'junit', 'html'] as const;

export type ReportFormat = (typeof reportFormats)[number];

/**
 * Writes a judgement in one form. Width and colour matter to text alone, whether all is wanted to text, JSON and SARIF,
 * and what is beside the judgement to a page. The forms that few ask for are loaded when asked for: an XML library
 * takes longer to load than a small estate to judge.
 */
export async function report(
  format: ReportFormat,
  judgement: Judgement,
  terminal: Screen,
  besides?: Besides,
): Promise<string> {
  switch (format) {
    case 'text':
      return reportText(judgement, terminal);
    case 'markdown':
      return reportMarkdown(judgement);
    case 'json':
      return reportJson(judgement, terminal);
    case 'sarif':
      return (await import('./sarif.ts')).reportSarif(judgement, { all: terminal.all ?? false });
    case 'junit':
      return (await import('./junit.ts')).reportJunit(judgement);
    case 'html':
      return (await import('./page/judgement.ts')).judgementPageWith(judgement, besides ?? {});
  }
}
