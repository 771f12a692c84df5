/** The steps that carry a judged branch out, as a section of its report. */

import { cautions } from '../base/wording.ts';
import { destroys } from '../change/kinds.ts';
import type { Judged } from '../policy/judgement.ts';
import type { Step } from '../runbook/step.ts';
import type { Block, Entry, Field, Section } from './sections.ts';

/** Nothing where there is nothing to do. */
export function runbookSection({ verdict, changes, runbook }: Judged): readonly Section[] {
  if (runbook.length === 0) return [];
  return [
    {
      title: `Order of steps (${runbook.length})`,
      blocks: [
        ...openingWords(verdict, runbook, changes.some(destroys)),
        { kind: 'entries', entries: stepEntries(runbook) },
      ],
    },
  ];
}

/** @param cautioned whether the cautions stand in a section of their own */
function openingWords(
  verdict: Judged['verdict'],
  runbook: readonly Step[],
  cautioned: boolean,
): readonly Block[] {
  const sentences = [
    verdict === 'fail'
      ? 'The verdict is fail: do none of this now. It is what would have to be done once the verdict is pass.'
      : "To be done after the merge. What is done at the provider is in the provider's documentation.",
    ...(runbook.some((step) => step.examples.length > 0)
      ? [
          'Commands are examples: what stands in capitals is to be filled in, and the manual of the version at hand counts.',
        ]
      : []),
    ...(!cautioned && runbook.some((step) => step.cautions.includes(cautions))
      ? [`The cautions, for the steps that name them: ${cautions}`]
      : []),
  ];
  return sentences.map((text) => ({ kind: 'sentence', text }));
}

const line = (label: string, text: string): Field => ({ label, form: 'text', text });

/**
 * Three volumes grown take the same three steps each: what their steps have in common is said at the first of them.
 * A step that destroys says all of it again.
 */
function stepEntries(runbook: readonly Step[]): readonly Entry[] {
  const saidAt = new Map<string, number>();
  return runbook.map((step) => {
    const { number, after } = step;
    const why = step.why === undefined ? [] : [line('why', step.why)];
    const more = moreFields(step);
    const all = JSON.stringify([why, more]);
    const said = step.destroys || why.length + more.length === 0 ? undefined : saidAt.get(all);
    if (said === undefined) saidAt.set(all, number);
    // Most steps follow the one before them; that needs no saying.
    const waits = after.every((each) => each === number - 1)
      ? []
      : [line('after', `step ${after.join(', ')}`)];
    return {
      lead: {
        word: step.destroys ? `${number}, destroys` : `${number}`,
        tone: step.destroys ? 'grave' : 'plain',
      },
      text: `${whereOf(step)}: ${step.does}`,
      excerpt: undefined,
      fields: said === undefined ? [...why, ...waits, ...more] : [...waits, line('as in', `step ${said}`)],
    };
  });
}

const moreFields = (step: Step): readonly Field[] => [
  ...step.cautions.map((text) => line('caution', text === cautions ? 'See the cautions above.' : text)),
  ...step.examples.map(
    ({ command, source }): Field => ({ label: 'example', form: 'example', command, source }),
  ),
];

function whereOf({ at, server }: Step): string {
  switch (at) {
    case 'provider':
      return 'at the provider';
    case 'guest':
      return server === undefined ? 'in the guest' : `in the guest of ${server}`;
    case 'check':
      return 'make sure';
  }
}
