/** What surveys show of the steps against their ticks. */
import type { SurveyedTick } from '../../runbook/surveyed-ticks.ts';
import { entries, sentence } from './blocks.ts';
import type { Section } from './model.ts';

export const surveyedSection = (surveyed: readonly SurveyedTick[]): readonly Section[] =>
  surveyed.length === 0
    ? []
    : [
        {
          title: `Surveys against the ticks (${surveyed.length})`,
          blocks: [
            sentence(
              'Settle these first. A survey that was taken before a step was done shows nothing of it: then take another, or write behind the id of the step the day on which it was done.',
            ),
            entries(surveyed.map((each) => ({ number: each.number, text: surveyedWords(each), fields: [] }))),
          ],
        },
      ];

function surveyedWords({ kind, on, shown: { server, message } }: SurveyedTick): string {
  const by = `${server === undefined ? "the provider's list" : `the survey of ${server}`} (${on})`;
  switch (kind) {
    case 'ticked and not so':
      return `It is ticked, and by ${by} it is not done: ${message}.`;
    case 'neither as before nor as after':
      return `It is not ticked, and by ${by} it can neither be as it was nor be done: ${message}.`;
    case 'so and not ticked':
      return `It is not ticked, and by ${by} it is done: beside main before it, ${message}.`;
  }
}
