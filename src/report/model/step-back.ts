/** How a change that is carried out in part is stepped back, as far as there is a way. */

import { cautions } from '../../base/wording.ts';
import { isFinal, undoable } from '../../runbook/returning.ts';
import type { Step } from '../../runbook/step.ts';
import type { Done } from '../../runbook/ticks.ts';
import { entries, line, sentence } from './blocks.ts';
import type { Block, Section } from './model.ts';
import { stepsWords, whereOf } from './steps.ts';

/**
 * Nothing where nothing is done, or all of it.
 *
 * @param done the numbers of the steps that are done
 * @param isSettled whether nothing speaks against the ticks: a step that is done and not known to be may have ended
 * the way back of others
 */
export function stepBackSection(
  runbook: readonly Step[],
  done: Done,
  isSettled: boolean,
): readonly Section[] {
  const carriedOut = runbook.filter(({ number }) => done.has(number));
  if (carriedOut.length === 0 || carriedOut.length === runbook.length) return [];
  return [
    {
      title: 'To step back instead',
      blocks: isSettled
        ? wayBack(carriedOut)
        : [sentence('What can be undone hangs on what is done: settle first how each step stands.')],
    },
  ];
}

function wayBack(carriedOut: readonly Step[]): readonly Block[] {
  const finals = carriedOut.filter(isFinal);
  const undone = undoable(carriedOut).filter(({ back }) => back !== undefined);
  const lost = carriedOut.filter(
    (step) => step.back !== undefined && !finals.includes(step) && !undone.includes(step),
  );
  const either = lost.length === 0 ? '' : `, and after that ${stepsOf(lost)} cannot be undone either`;
  return [
    sentence(
      finals.length === 0
        ? 'Nothing that is done is past the point of no return.'
        : `Nothing takes back ${stepsOf(finals)}${either}. ${
            undone.length === 0
              ? 'There is nothing else to undo: the way is to go on.'
              : 'What can still be undone leaves that as it is, and to go on may be the shorter way.'
          }`,
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
  ];
}

const stepsOf = (steps: readonly Step[]): string => stepsWords(steps.map(({ number }) => number));
