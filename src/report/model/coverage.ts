/** What a waiver covers, in words. */
import { visible } from '../../base/visible.ts';
import { bytes, exactSize } from '../../estate/size.ts';
import type { Covered, Finding } from '../../policy/judgement.ts';
import type { Waiver } from '../../policy/policy.ts';
import { ceilingWithoutEffect, figures as figureWords } from '../../policy/waiver-effect.ts';
import { money, showMoney } from '../../price/money.ts';
import type { Amount, Measure } from '../../rules/rule.ts';
import { shortCommit } from './subjects.ts';

/** What the waiver that lets a finding stand covers of it; nothing to add where its ceiling says so. */
export function leaveWords({ waiver, held }: Finding): string | undefined {
  if (waiver === undefined || held === undefined) return undefined;
  switch (held.kind) {
    case 'nothing yet':
      return 'The waiver has no ceiling: it covers what this branch does, and no more than that afterwards.';
    case 'as much':
      return `The waiver has no ceiling, and covers no more than it first covered: ${firstWords(held.covered)}.`;
    case 'less':
    case 'something else':
    case 'unknown':
      return undefined;
  }
}

/** Why a waiver that is for a finding does not cover it. */
export function outgrownWords(outgrown: Waiver, finding: Finding): string {
  const { place, upTo, rule } = outgrown;
  const { held } = finding;
  const there = `${visible(place.file)}:${place.line}`;
  const the = `The waiver at ${there}`;
  if (upTo !== undefined && isUnmeasured(outgrown, finding)) {
    const [of] = ceilingWithoutEffect(upTo, rule, [finding.rule]);
    return of === undefined
      ? `${the} covers nothing of this: its ceiling ${upTo.written} is ${figureWords[upTo.measure]}, in which this is not measured.`
      : `At ${there}, ${of.message}. ${of.advice}`;
  }
  switch (held?.kind) {
    case undefined:
      return `${the} covers no more than ${upTo?.written ?? 'it did'}.`;
    case 'less':
    case 'as much':
      return `${the} has no ceiling, and covers no more than it first covered: ${firstWords(held.covered)}. For more, have a ceiling (up-to) approved.`;
    case 'something else':
      return `${the} has no ceiling, and what it first covered was something else: ${held.covered.message} (${seenWords(held.covered)}). For this, have another waiver approved.`;
    case 'nothing yet':
    case 'unknown':
      return `${the} has no ceiling, and what it has covered cannot be told.`;
  }
}

/** Whether a ceiling is in a measure that a finding does not have, so that it covers nothing of it, however little that is. */
export const isUnmeasured = ({ upTo }: Waiver, { measured }: Finding): boolean =>
  upTo !== undefined && measured?.[upTo.measure] === undefined;

const firstWords = (covered: Covered): string => [...figures(covered), seenWords(covered)].join(', ');

const seenWords = ({ commit, on }: Covered): string => `at ${shortCommit(commit)} on ${on}`;

const measures = ['size', 'amount', 'number'] as const;

const figures = ({ measured, currency }: Covered): readonly string[] =>
  measures.flatMap((measure) => {
    const amount = measured?.[measure];
    return amount === undefined ? [] : [figure(measure, amount, currency)];
  });

function figure(measure: Measure, amount: Amount, currency: string): string {
  switch (measure) {
    case 'size':
      return typeof amount === 'bigint' ? exactSize(bytes(amount)) : amount.toFixed();
    case 'amount':
      return `${showMoney(money(amount), currency)} ${currency}`;
    case 'number':
      return `${amount}`;
  }
}
