/** The steps that carry a judged branch out, as a section of its report. */
import { destroys } from '../change/change.ts';
import type { Judged } from '../policy/judgement.ts';
import { cautions } from '../rules/rule.ts';
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
        { kind: 'entries', entries: runbook.map(stepEntry) },
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

function stepEntry(step: Step): Entry {
  const { number, does, why, examples, after } = step;
  return {
    lead: {
      word: step.destroys ? `${number}, destroys` : `${number}`,
      tone: step.destroys ? 'grave' : 'plain',
    },
    text: `${whereOf(step)}: ${does}`,
    excerpt: undefined,
    fields: [
      ...(why === undefined ? [] : [line('why', why)]),
      // Most steps follow the one before them; that needs no saying.
      ...(after.every((each) => each === number - 1) ? [] : [line('after', `step ${after.join(', ')}`)]),
      ...step.cautions.map((text) => line('caution', text === cautions ? 'See the cautions above.' : text)),
      ...examples.map(
        ({ command, source }): Field => ({
          label: 'example',
          form: 'advice',
          text: `\`${command}\` (${source})`,
        }),
      ),
    ],
  };
}

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
