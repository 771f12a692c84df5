/** Waivers: reading them, and which finding each lets stand. */

import { outcomeOf, type PartialOutcome, type Problem } from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import type { Subject } from '../estate/estate.ts';
import type { ReadDocument, Step } from '../read/document.ts';
import { validate } from '../read/validate.ts';
import { ruleNames } from '../rules/registry.ts';
import type { PolicyRule, Waiver } from './policy.ts';

export function readWaivers(text: ReadDocument): PartialOutcome<readonly Waiver[]> {
  const valid = validate('waivers', text);
  if (!valid.ok) return valid;
  const { document, mends } = valid.value;
  const { waivers } = valid.value.value;
  const problems: Problem[] = [...valid.value.problems];
  const refuse = (path: readonly Step[], message: string, advice: string): void => {
    // What does not read is told of already.
    if (mends.in(path)) return;
    const place = document.placeOfValue(path);
    problems.push({ place, message, advice, excerpt: document.excerpt(place) });
  };
  const read = waivers.map((declared, index): Waiver => {
    for (const key of ['from', 'until'] as const) {
      if (!isDay(declared[key]))
        refuse(
          ['waivers', index, key],
          `${declared[key]} is not a day in the calendar`,
          'Write a full date such as 2026-05-01.',
        );
    }
    if (declared.until < declared.from && !mends.at(['waivers', index, 'from'])) {
      refuse(
        ['waivers', index, 'until'],
        `the waiver ends on ${declared.until}, before it begins on ${declared.from}`,
        'Correct the two dates.',
      );
    }
    return {
      rule: declared.rule,
      subject: declared.subject,
      kind: declared.kind,
      reason: declared.reason,
      approvedBy: declared['approved-by'],
      from: declared.from,
      until: declared.until,
      place: document.placeIn(waivers, index),
    };
  });
  return outcomeOf(read, problems);
}

/** Whether a waiver is for what a rule says of a subject; the dates are asked for apart. */
export const isFor = (
  waiver: Waiver,
  rule: { readonly name: string; readonly entry: { readonly rule: string } },
  subject: Subject,
): boolean =>
  (waiver.rule === rule.name || waiver.rule === rule.entry.rule) &&
  waiver.subject === subject.name &&
  (waiver.kind === undefined || waiver.kind === subject.kind);

/** What became of a waiver in a judgement. */
export interface WaiverUse {
  readonly waiver: Waiver;
  readonly state: 'used' | 'unused' | 'expired' | 'not yet' | 'unknown rule';
}

export function waiverUse(
  waiver: Waiver,
  rules: readonly PolicyRule[],
  used: ReadonlySet<Waiver>,
  day: string,
): WaiverUse {
  const known = ruleNames.includes(waiver.rule) || rules.some(({ name }) => name === waiver.rule);
  if (!known) return { waiver, state: 'unknown rule' };
  if (day > waiver.until) return { waiver, state: 'expired' };
  if (day < waiver.from) return { waiver, state: 'not yet' };
  return { waiver, state: used.has(waiver) ? 'used' : 'unused' };
}
