/** The steps that carry a judged branch out. */
import { cautions } from '../../base/wording.ts';
import { destroys } from '../../change/kinds.ts';
import type { Judged } from '../../policy/judgement.ts';
import { courseOf } from '../../runbook/course.ts';
import type { Step } from '../../runbook/step.ts';
import { line, sentence } from './blocks.ts';
import { losesData } from './changes.ts';
import type { Block, Entry, Field, Section } from './model.ts';
import { stepsQuestion } from './question.ts';

/** So many steps are read at once; of more, a screen and a comment show only what must not be missed. */
const fewSteps = 5;

/** Nothing where there is nothing to do. */
export function stepSection(judged: Judged): readonly Section[] {
  const { verdict, changes, runbook, question } = judged;
  if (runbook.length === 0) return [];
  const cautioned = changes.some(destroys) ? 'in a section of their own' : 'nowhere yet';
  const asked = question === undefined ? [] : [sentence(stepsQuestion(question))];
  return [
    {
      title: `Steps, in order (${runbook.length})`,
      blocks: [
        ...asked,
        ...opening(verdict, runbook, cautioned),
        { kind: 'entries', entries: stepEntries(runbook), checklist: checklistOf(judged) },
        ...waitsOf(runbook),
      ],
      ...(runbook.length <= fewSteps ? {} : { brief: [...asked, ...briefly(judged, cautioned)] }),
    },
  ];
}

export const waitsOf = (steps: readonly Step[]): readonly Block[] =>
  steps.some(({ after }) => after.length > 0) ? [{ kind: 'picture', picture: { kind: 'waits', steps } }] : [];

/** How many there are, which servers stand still, and what destroys. */
function briefly({ verdict, runbook, base, head }: Judged, cautioned: Cautioned): readonly Block[] {
  const [how, likewise] = head.commit === 'worktree' ? [' --worktree', '--base'] : ['', '--base and --head'];
  const grave = runbook.filter((step) => step.destroys);
  return [
    ...opening(verdict, grave, cautioned),
    ...courseSentences(runbook).map(sentence),
    ...(grave.length === 0
      ? [sentence('None of them loses data.')]
      : [{ kind: 'entries', entries: stepEntries(grave) } as const]),
    sentence(
      `\`ullage steps${how}\`, with the same ${likewise}, prints them all, as a check-list too. After the merge, \`ullage steps --base ${base.commit.slice(0, 12)} --head main\` does.`,
    ),
  ];
}

function chainSentence(longest: number, steps: number): string {
  if (longest === 1) return `The ${steps} steps can be done in any order, and beside one another.`;
  return longest === steps
    ? `Each of the ${steps} steps waits for the one before it.`
    : `Of the ${steps} steps, the longest chain in which each waits for the one before it is ${longest} long; the others can be done beside it.`;
}

/** How long it takes at the least, and who has to do without what meanwhile. */
export function courseSentences(steps: readonly Step[]): readonly string[] {
  const { longest, standing } = courseOf(steps);
  return [
    ...(steps.length < 2 ? [] : [chainSentence(longest.length, steps.length)]),
    ...standing.map(({ server, from, to }) =>
      to === undefined
        ? `${server} is shut down in step ${from}, and is not started again.`
        : `${server} stands still from step ${from} to step ${to}.`,
    ),
  ];
}

/** Steps are ticked off as those of this branch on this main, and only once they may be carried out. */
export const checklistOf = ({ verdict, base, head, runbook }: Judged): string | undefined =>
  verdict === 'fail'
    ? undefined
    : JSON.stringify([base.commit, head.commit, ...runbook.map(({ key, does }) => [key, does])]);

/** Where the report has shown the cautions by now. */
type Cautioned = 'in a section of their own' | 'nowhere yet';

/** What is said before the steps that are shown. */
export function opening(
  verdict: Judged['verdict'],
  runbook: readonly Step[],
  cautioned: Cautioned,
): readonly Block[] {
  return [
    sentence(
      verdict === 'fail'
        ? 'The verdict is fail: do not carry out any of these steps now. They are what would be needed once the verdict is pass.'
        : "Carry these steps out after the merge. For what is done at the provider, see the provider's documentation.",
    ),
    ...(runbook.some((step) => step.examples.length > 0)
      ? [
          sentence(
            'Commands are examples: replace what is in capitals, and check the manual of the version that is installed.',
          ),
        ]
      : []),
    ...(cautioned === 'nowhere yet' && runbook.some((step) => step.cautions.includes(cautions))
      ? [sentence(`The cautions, for the steps that refer to them: ${cautions}`)]
      : []),
  ];
}

/**
 * Three volumes grown take the same three steps each: what their steps have in common is said at the first of them.
 * A step that loses data says all of it again.
 */
export function stepEntries(runbook: readonly Step[]): readonly Entry[] {
  const saidAt = new Map<string, number>();
  return runbook.map((step) => {
    const { number, after } = step;
    const why = step.why === undefined ? [] : [line('why', step.why)];
    const more = moreFields(step);
    const all = JSON.stringify([why, more]);
    const said = step.destroys || why.length + more.length === 0 ? undefined : saidAt.get(all);
    if (said === undefined) saidAt.set(all, number);
    // Most steps follow the one before them; that needs no saying.
    const waits = after.every((each) => each === number - 1) ? [] : [line('after', stepsWords(after))];
    return {
      number,
      tag: step.destroys ? losesData : undefined,
      text: `${whereOf(step)}${step.does}`,
      fields: said === undefined ? [...why, ...waits, ...more] : [...waits, line('as in', `step ${said}`)],
    };
  });
}

/** The cautions of a step, and its commands. */
export const moreFields = (step: Step): readonly Field[] => [
  ...step.cautions.map((text) => line('caution', text === cautions ? 'See the cautions above.' : text)),
  ...step.examples.map(
    ({ command, source }): Field => ({ label: 'example', form: 'example', command, source }),
  ),
];

/** `step 3`, `steps 3, 4`. */
export const stepsWords = (numbers: readonly number[]): string =>
  `${numbers.length === 1 ? 'step' : 'steps'} ${numbers.join(', ')}`;

export function whereOf({ at, server }: Step): string {
  switch (at) {
    case 'provider':
      return 'at the provider: ';
    case 'guest':
      return server === undefined ? 'in the guest: ' : `in the guest of ${server}: `;
    case 'check':
      // Its own words say that it is one.
      return '';
  }
}
