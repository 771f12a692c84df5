/** A judgement, or what stood in the way of one, for a terminal: whole where that is asked for, else its first part. */
import type { Problem } from '../base/problem.ts';
import type { Judgement } from '../policy/judgement.ts';
import { drawReport, type Screen } from './draw.ts';
import { folded } from './fold.ts';
import { reportModel } from './model/judgement.ts';
import type { ReportModel } from './model/model.ts';
import { problemsModel } from './model/problems.ts';

export const reportText = (judgement: Judgement, screen: Screen): string =>
  drawReport(shownOn(reportModel(judgement), screen), screen);

/** What could not be read, each at its place with a pointer under the very character. */
export const reportProblems = (problems: readonly Problem[], screen: Screen): string =>
  drawReport(shownOn(problemsModel(problems), screen), screen);

const shownOn = (model: ReportModel, { all = false }: Screen): ReportModel => (all ? model : folded(model));
