/** The job's summary and the comment's body: the report in Markdown, within what the host takes. */
import type { Judgement } from '../policy/judgement.ts';
import { markdownAdvice } from '../report/markdown-text.ts';
import { reportMarkdown } from '../report/report.ts';

export interface SummaryOptions {
  /** The most bytes. */
  readonly limit: number;
  /** What the reader should know about this run, each one sentence. */
  readonly notes: readonly string[];
  /** Where the whole report is, if anywhere. */
  readonly fullReport: string | undefined;
}

/** The report, then the notes; what the limit has no room for is left out of the report, with its count. */
export function summaryOf(judgement: Judgement, { limit, notes, fullReport }: SummaryOptions): string {
  const closing =
    notes.length === 0
      ? ''
      : `\n### About this run\n\n${notes.map((note) => `- ${markdownAdvice(note)}`).join('\n')}\n`;
  const report = reportMarkdown(judgement, {
    limit: limit - Buffer.byteLength(closing),
    ...(fullReport === undefined ? {} : { fullReport }),
  });
  return `${report}${closing}`;
}
