/** What a command ends with where problems stood in its way: in the format that was asked for, so that a program that
 * reads one is never given another. */
import type { Problem } from '../base/problem.ts';
import { notJudged } from '../policy/judgement.ts';
import { report, reportProblems } from '../report/report.ts';
import { type Finished, type ReportFlags, terminal } from './edge.ts';

type Format = 'text' | 'markdown' | 'json' | 'html' | 'csv' | 'ndjson';

/**
 * JSON, Markdown and a page are those of a judgement that is not judged, with every problem. Rows and lines hold what
 * was asked for and nothing else: there the one line on standard error names the first problem.
 *
 * @param reason that line, where the output has the problems
 */
export async function notTold(
  problems: readonly Problem[],
  flags: ReportFlags & { readonly repo: string; readonly format: Format },
  reason: string,
): Promise<Finished> {
  const screen = terminal(flags);
  switch (flags.format) {
    case 'text':
      return { output: reportProblems(problems, screen), code: 2, reason };
    case 'markdown':
    case 'json':
    case 'html':
      return { output: await report(flags.format, notJudged(problems, ''), screen), code: 2, reason };
    case 'csv':
    case 'ndjson': {
      const [first] = problems;
      const { file, line, column } = first?.place ?? {};
      const where = file === undefined ? '' : `${file}:${line}:${column}: `;
      return { output: '', code: 2, reason: `not judged: ${where}${first?.message}. ${first?.advice}` };
    }
  }
}
