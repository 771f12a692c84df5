/** Waivers: reading them, and which finding each lets stand. */

import { outcomeOf, type PartialOutcome, type Problem } from '../base/problem.ts';
import { daysBetween, isDay } from '../estate/dates.ts';
import type { Subject } from '../estate/estate.ts';
import { parseSize } from '../estate/size.ts';
import type { ReadDocument, Step } from '../read/document.ts';
import { validate } from '../read/validate.ts';
import { ExactDecimal } from '../rules/parameter.ts';
import { ruleNames } from '../rules/registry.ts';
import type { Violation } from '../rules/rule.ts';
import type { Ceiling, PolicyRule, Waiver } from './policy.ts';

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
    const upTo = declared['up-to'] === undefined ? undefined : ceilingOf(declared['up-to']);
    if (upTo !== undefined && 'why' in upTo) {
      refuse(
        ['waivers', index, 'up-to'],
        upTo.why,
        'Write a size with its unit, an amount in quotes or a number.',
      );
    }
    return {
      rule: declared.rule,
      ...(declared.name === undefined ? {} : { name: declared.name }),
      ...(upTo === undefined || 'why' in upTo ? {} : { upTo }),
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

/** A text with a unit is a size, one without an amount of money; a bare number is a number. */
function ceilingOf(written: string | number): Ceiling | { readonly why: string } {
  if (typeof written === 'number')
    return { measure: 'number', amount: new ExactDecimal(written), written: `${written}` };
  if (/^[0-9.]+$/.test(written)) return { measure: 'amount', amount: new ExactDecimal(written), written };
  const size = parseSize(written);
  return typeof size === 'bigint'
    ? { measure: 'size', amount: new ExactDecimal(size.toString()), written }
    : size;
}

/** Whether a waiver has no ceiling: history says what it covers. */
export const isOpen = ({ upTo }: Waiver): boolean => upTo === undefined;

/**
 * Whether a waiver covers so much. Its ceiling holds at equality; what is not measured as the ceiling is given is
 * covered by none.
 */
export function covers({ upTo }: Waiver, { measured }: Pick<Violation, 'measured'>): boolean {
  if (upTo === undefined) return true;
  const amount = measured?.[upTo.measure];
  return amount !== undefined && upTo.amount.gte(amount.toString());
}

/** Whether a waiver is for what a rule says of a subject; the dates are asked for apart. */
export const isFor = (
  waiver: Waiver,
  rule: { readonly name: string; readonly entry: { readonly rule: string } },
  subject: Subject,
): boolean =>
  (waiver.rule === rule.name || waiver.rule === rule.entry.rule) &&
  (waiver.name === undefined || waiver.name === rule.name) &&
  waiver.subject === subject.name &&
  (waiver.kind === undefined || waiver.kind === subject.kind);

/** What became of a waiver in a judgement. */
export interface WaiverUse {
  readonly waiver: Waiver;
  /** `waiting` for what it permits, which is merged after it; `unused` only where there is little time left for that. */
  readonly state: 'used' | 'outgrown' | 'waiting' | 'unused' | 'expired' | 'not yet' | 'unknown rule';
  /** What it would have to be like to be for a finding of this judgement, where its writing alone keeps it from that. */
  readonly written?: { readonly subject: Subject; readonly line: string } | undefined;
}

/** A waiver that ends within so many days, and has nothing to let stand, is looked at: ours. */
const soon = 14;

export function waiverUse(
  waiver: Waiver,
  rules: readonly PolicyRule[],
  { used, outgrown }: { readonly used: ReadonlySet<Waiver>; readonly outgrown: ReadonlySet<Waiver> },
  day: string,
): WaiverUse {
  const known = ruleNames.includes(waiver.rule) || rules.some(({ name }) => name === waiver.rule);
  if (!known) return { waiver, state: 'unknown rule' };
  if (day > waiver.until) return { waiver, state: 'expired' };
  if (day < waiver.from) return { waiver, state: 'not yet' };
  // What it lets stand elsewhere does not make up for what it no longer covers.
  if (outgrown.has(waiver)) return { waiver, state: 'outgrown' };
  if (used.has(waiver)) return { waiver, state: 'used' };
  return { waiver, state: daysBetween(day, waiver.until) > soon ? 'waiting' : 'unused' };
}
