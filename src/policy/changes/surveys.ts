/**
 * Surveys that a branch takes away, alters or brings. They are evidence: a newer one takes the place of an older, and one
 * that is edited, or goes, says less of what is there. So does a newer one that leaves out what the older told; and one of
 * a day to come would stand before all that are still to be taken.
 */
import { isToCome } from '../../estate/dates.ts';
import type { PolicyChange } from '../../rules/view.ts';
import type { Surveys } from '../../survey/compare.ts';
import { coverageOf, isCovered } from '../../survey/coverage.ts';
import type { ProviderSurvey } from '../../survey/provider-survey.ts';
import type { Survey } from '../../survey/survey.ts';
import { allNames, type Direction, policyChange } from './change.ts';

type Taken = Survey | ProviderSurvey;

const taken = (surveys: Surveys | undefined): ReadonlyMap<string, Taken> =>
  new Map<string, Taken>([
    ...(surveys?.servers ?? []).map((survey) => [survey.server, survey] as const),
    ...(surveys?.provider === undefined ? [] : [["the provider's list", surveys.provider] as const]),
  ]);

/** @param on the day of the judgement */
export function surveyChanges(
  base: Surveys | undefined,
  head: Surveys | undefined,
  on: string,
): readonly PolicyChange[] {
  if (base === head) return [];
  const [before, after] = [taken(base), taken(head)];
  return allNames(before, after).flatMap((name): readonly PolicyChange[] => {
    const [was, now] = [before.get(name), after.get(name)];
    if (was === now || textOf(was) === textOf(now)) return [];
    const direction = directionOf(was, now, on);
    return [policyChange({ direction, of: 'surveys', name, from: was?.at, to: now?.at })];
  });
}

function directionOf(was: Taken | undefined, now: Taken | undefined, on: string): Direction {
  if (now === undefined || (was !== undefined && now.at <= was.at)) return 'looser';
  if (isToCome(now.at.slice(0, 10), on)) return 'unknown';
  return was === undefined || isCovered(coverageOf(was), coverageOf(now)) ? 'neither' : 'unknown';
}

const textOf = (survey: Taken | undefined): string | undefined => {
  if (survey === undefined) return undefined;
  const { place: _, ...rest } = survey;
  return JSON.stringify(rest, (_key, value: unknown) => (typeof value === 'bigint' ? `${value}` : value));
};
