/** `ullage survey compare`: what is there beside what is declared. */
import { ok } from '../base/problem.ts';
import { readSurveys } from '../policy/surveys.ts';
import { listInForce } from '../price/price-list.ts';
import { outcomeOfSurvey, reportSurvey, type SurveyFormat } from '../report/survey.ts';
import { compareSurveys } from '../survey/compare.ts';
import { type Finished, type ReportFlags, terminal } from './edge.ts';
import { notTold } from './not-told.ts';
import { shownOn, withRepository } from './repository.ts';

export interface SurveyCompareFlags extends ReportFlags {
  readonly repo: string;
  readonly at?: string;
  readonly now?: string;
  readonly format: SurveyFormat;
}

export async function runSurveyCompare(flags: SurveyCompareFlags): Promise<Finished> {
  const overview = await withRepository(flags.repo, async (repository) => {
    const shown = await shownOn(repository, flags);
    if (!shown.ok) return shown;
    const { on, tree, settings, revision } = shown.value;
    const surveys = await readSurveys(tree, settings.paths.surveys);
    if (!surveys.ok) return surveys;
    const list = listInForce(revision.priceLists, on);
    const comparison = compareSurveys(revision.estate, surveys.value, list);
    return ok({
      on,
      currency: list === undefined ? undefined : settings.currency,
      surveys: surveys.value,
      comparison,
      estate: revision.estate,
    });
  });
  if (!overview.ok) {
    return notTold(overview.problems, flags, 'it could not be told: the estate or a survey cannot be read');
  }
  const output = reportSurvey(overview.value, flags.format, terminal(flags));
  switch (outcomeOfSurvey(overview.value)) {
    case 'same':
      return { output, code: 0 };
    case 'different':
      return { output, code: 1, reason: 'what is there differs from what is declared' };
    case 'undetermined':
      return { output, code: 2, reason: 'it could not be told whether what is there is as declared' };
  }
}
