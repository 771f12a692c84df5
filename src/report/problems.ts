/** Problems for a terminal: what could not be read, each at its place with a pointer under the very character. */
import type { Problem } from '../base/problem.ts';
import { counted } from '../base/wording.ts';
import { atLeast, drawHeadline, drawSections, type Screen } from './draw.ts';
import { problemSections } from './sections.ts';

export function reportProblems(problems: readonly Problem[], screen: Screen): string {
  const wide = atLeast(screen);
  return `${[
    ...drawHeadline(`${counted(problems.length, 'problem')} to put right`, 'caution', wide),
    ...drawSections(problemSections(problems), wide),
  ].join('\n')}\n`;
}
