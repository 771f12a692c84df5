/** Every form a judgement can be written in, by name. */
import type { Judgement } from '../policy/judgement.ts';
import { reportJson } from './json.ts';
import { reportJunit } from './junit.ts';
import { reportMarkdown } from './markdown.ts';
import { reportSarif } from './sarif.ts';
import { reportText } from './text.ts';

export const reportFormats = ['text', 'markdown', 'json', 'sarif', 'junit'] as const;

export type ReportFormat = (typeof reportFormats)[number];

/** Writes a judgement in one form. Width and colour matter to text alone. */
export function report(
  format: ReportFormat,
  judgement: Judgement,
  terminal: { width: number; colour: boolean },
): string {
  switch (format) {
    case 'text':
      return reportText(judgement, terminal);
    case 'markdown':
      return reportMarkdown(judgement);
    case 'json':
      return reportJson(judgement);
    case 'sarif':
      return reportSarif(judgement);
    case 'junit':
      return reportJunit(judgement);
  }
}
