/**
 * Surveys that a branch takes away or alters. They are evidence: a newer one takes the place of an older, and one that is
 * edited, or goes, says less of what is there.
 */
import type { PolicyChange } from '../../rules/view.ts';
import type { Surveys } from '../../survey/compare.ts';
import { allNames, policyChange } from './change.ts';

interface Taken {
  readonly at: string;
  readonly text: string;
}

const taken = (surveys: Surveys | undefined): ReadonlyMap<string, Taken> => {
  const all = [
    ...(surveys?.servers ?? []).map((survey) => [survey.server, survey] as const),
    ...(surveys?.provider === undefined ? [] : [["the provider's list", surveys.provider] as const]),
  ];
  return new Map(
    all.map(([name, { place: _, ...survey }]) => [
      name,
      {
        at: survey.at,
        text: JSON.stringify(survey, (_key, value: unknown) =>
          typeof value === 'bigint' ? `${value}` : value,
        ),
      },
    ]),
  );
};

export function surveyChanges(base: Surveys | undefined, head: Surveys | undefined): readonly PolicyChange[] {
  if (base === head) return [];
  const [before, after] = [taken(base), taken(head)];
  return allNames(before, after).flatMap((name): readonly PolicyChange[] => {
    const [was, now] = [before.get(name), after.get(name)];
    if (was?.text === now?.text) return [];
    const isNewer = now !== undefined && (was === undefined || now.at > was.at);
    return [
      policyChange({
        direction: isNewer ? 'neither' : 'looser',
        of: 'surveys',
        name,
        from: was?.at,
        to: now?.at,
      }),
    ];
  });
}
