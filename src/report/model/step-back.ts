/** How a change that is carried out in part is stepped back, as far as there is a way. */

import { cautions } from '../../base/wording.ts';
import { isFinal } from '../../runbook/returning.ts';
import type { Step } from '../../runbook/step.ts';
import type { Done } from '../../runbook/ticks.ts';
import { entries, line, sentence } from './blocks.ts';
import type { Section } from './model.ts';
import { stepsWords, whereOf } from './steps.ts';

/** Nothing where nothing is done, or all of it. @param done the numbers of the steps that are done */
export function stepBackSection(runbook: readonly Step[], done: Done): readonly Section[] {
  const carriedOut = runbook.filter(({ number }) => done.has(number));
  if (carriedOut.length === 0 || carriedOut.length === runbook.length) return [];
  const finals = carriedOut.filter(isFinal).map(({ number }) => number);
  const undone = carriedOut.filter((step) => step.back !== undefined && !isFinal(step)).reverse();
  return [
    {
      title: 'To step back instead',
      blocks: [
        sentence(
          finals.length === 0
            ? 'Nothing that is done is past the point of no return.'
            : `Nothing takes back ${stepsWords(finals)}: what can still be undone leaves that as it is, and to go on may be the shorter way.`,
        ),
        ...(undone.length === 0
          ? []
          : [
              sentence(
                'Undo these one by one, the last first; what waits for one of them must be undone before it.',
              ),
              sentence(cautions),
              entries(
                undone.map((step) => ({
                  number: step.number,
                  text: `${whereOf(step)}${step.does}`,
                  fields: [line('to step back', step.back ?? '')],
                })),
              ),
            ]),
      ],
    },
  ];
}
