/** Steps with all that is to be known of each: for whoever carries them out. */

import type { Judged } from '../../policy/judgement.ts';
import type { Billing } from '../../runbook/billing.ts';
import { isFinal, type Returning, returningOf } from '../../runbook/returning.ts';
import type { Step } from '../../runbook/step.ts';
import type { Done } from '../../runbook/ticks.ts';
import { showAmount } from './amounts.ts';
import { advice, line } from './blocks.ts';
import { losesData } from './changes.ts';
import type { Entry, Field, Tag } from './model.ts';
import { moreFields, stepsWords, whereOf } from './steps.ts';

const ticked = (on: string | undefined): Tag => ({
  word: on === undefined ? 'done' : `done on ${on}`,
  tone: 'plain',
});

/**
 * Of a step that is known to be done there is only what can still matter: how to step back from it, as long as others
 * are left.
 *
 * @param shown those of the judged steps that are wanted
 * @param isSettled whether nothing speaks against what is ticked
 */
export function fullStepEntries(
  { verdict, runbook, billing, cost }: Pick<Judged, 'verdict' | 'runbook' | 'billing' | 'cost'>,
  shown: readonly Step[],
  done: Done,
  isSettled: boolean,
): readonly Entry[] {
  const returning = returningOf(runbook);
  // What a step that is done has ended the way back of is not to be offered beside it.
  const ended = returningOf(isSettled ? runbook.filter(({ number }) => done.has(number)) : []);
  const isOver = isSettled && runbook.every(({ number }) => done.has(number));
  return shown.map((step) => {
    const billed = billing.get(step.number);
    return {
      number: step.number,
      // What is not to be carried out is not to be ticked off.
      ...(verdict === 'fail'
        ? {}
        : { id: step.id, done: done.has(step.number), doneOn: done.get(step.number) }),
      tag: done.has(step.number) ? ticked(done.get(step.number)) : step.destroys ? losesData : undefined,
      text: `${whereOf(step)}${step.does}`,
      fields: isOver
        ? []
        : [
            ...(isSettled && done.has(step.number)
              ? []
              : [
                  ...(step.why === undefined ? [] : [line('why', step.why)]),
                  ...(step.after.length === 0
                    ? []
                    : [line('first', `${stepsWords(step.after)} must be done.`)]),
                  ...moreFields(step),
                  ...(step.seen === undefined ? [] : [advice('then', step.seen)]),
                ]),
            ...backFields(step, returning.get(step.number), ended.get(step.number)?.until),
            ...(billed === undefined ? [] : [line('billing', billingWords(billed, cost.currencyBefore))]),
          ],
    };
  });
}

/** How to step back, and until when. @param ended the step that is done and has ended it */
function backFields(
  step: Step,
  returning: Returning | undefined,
  ended: number | undefined,
): readonly Field[] {
  if (ended !== undefined && !isFinal(step))
    return [advice('to step back', `No longer: step ${ended} is done, which nothing takes back.`)];
  const { until, past = false } = returning ?? {};
  const limits = [
    ...(isFinal(step)
      ? ['This is a point of no return.']
      : until === undefined
        ? []
        : [`Only until step ${until}, which nothing takes back.`]),
    ...(past && !isFinal(step)
      ? ['It comes after a point of no return: what was done there stays done.']
      : []),
  ];
  const said = [...(step.back === undefined ? [] : [step.back]), ...limits].join(' ');
  return said === '' ? [] : [advice('to step back', said)];
}

function billingWords(billing: Billing, currency: string): string {
  const { name } = billing;
  const monthly = `${showAmount(billing.monthly, currency)} a month`;
  switch (billing.kind) {
    case 'begins':
      return `From here on ${name} is billed, at ${monthly}.`;
    case 'changes':
      return `From here on ${name} costs ${monthly}; until now it is ${showAmount(billing.from, currency)}.`;
    case 'ends':
      return `From here on ${name} is no longer billed; it costs ${monthly} until now.`;
    case 'goes on':
      return `${name} is billed further while it is unattached, at ${monthly}.`;
  }
}
