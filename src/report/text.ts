/** A judgement, or what stood in the way of one, for a terminal: whole where that is asked for, else its first part. */
import type { Problem } from '../base/problem.ts';
import type { Judgement } from '../policy/judgement.ts';
import { drawReport, type Screen } from './draw.ts';
import { folded } from './fold.ts';
import { reportModel } from './model/judgement.ts';
import type { ReportModel } from './model/model.ts';
import { problemsModel } from './model/problems.ts';

/**
 * Writes a judgement as text for a terminal: what fails and why, what it costs, the changes, the steps.
 *
 * @param screen its width in columns, and whether to colour; 100 without colour where left out
 * @returns lines, each ended by a line feed
 *
 * @example
 * ```js
 * import { judgeFiles, reportText } from 'ullage';
 *
 * const judgement = await judgeFiles({}, {}, { on: '2026-11-20' });
 * console.log(reportText(judgement).startsWith('not judged: there is no rule pack')); // true
 * ```
 */
export const reportText = (judgement: Judgement, screen: Screen = plainScreen): string =>
  drawReport(shownOn(reportModel(judgement), screen), screen);

const plainScreen: Screen = { width: 100, colour: false };

/** What could not be read, each at its place with a pointer under the very character. */
export const reportProblems = (problems: readonly Problem[], screen: Screen): string =>
  drawReport(shownOn(problemsModel(problems), screen), screen);

const shownOn = (model: ReportModel, { all = false }: Screen): ReportModel => (all ? model : folded(model));
