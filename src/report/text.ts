/** A judgement, or what stood in the way of one, for a terminal. */
import type { Problem } from '../base/problem.ts';
import type { Judgement } from '../policy/judgement.ts';
import { drawReport, type Screen } from './draw.ts';
import { reportModel } from './model/judgement.ts';
import { problemsModel } from './model/problems.ts';

export const reportText = (judgement: Judgement, screen: Screen): string =>
  drawReport(reportModel(judgement), screen);

/** What could not be read, each at its place with a pointer under the very character. */
export const reportProblems = (problems: readonly Problem[], screen: Screen): string =>
  drawReport(problemsModel(problems), screen);
