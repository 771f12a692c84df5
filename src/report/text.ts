/** A judgement for a terminal. */
import type { Judgement } from '../policy/judgement.ts';
import { atLeast, drawFields, drawHeadline, drawSections, type Screen } from './draw.ts';
import { reportModel } from './sections.ts';

export { summaryLine } from './sections.ts';

/** The same judgement, width and choice of colour give the same bytes. No line is wider than the width, from 40 columns on. */
export function reportText(judgement: Judgement, screen: Screen): string {
  const wide = atLeast(screen);
  const { tone, headline, fields, sections } = reportModel(judgement);
  return `${[
    ...drawHeadline(headline, tone, wide),
    ...drawFields(fields, 2, wide),
    ...drawSections(sections, wide),
  ].join('\n')}\n`;
}
