/** Why a waiver cannot have the effect that it is written for, whatever comes. */

import { offer } from '../base/nearest.ts';
import { rules } from '../rules/registry.ts';
import type { Measure, RuleName } from '../rules/rule.ts';
import type { Ceiling, PolicyRule, Waiver } from './policy.ts';

export interface WithoutEffect {
  readonly message: string;
  readonly advice: string;
}

/** @param policy its rules */
export function withoutEffect(waiver: Waiver, policy: readonly PolicyRule[]): readonly WithoutEffect[] {
  const ofRule = policy.filter(({ name, entry }) => name === waiver.rule || entry.rule === waiver.rule);
  if (ofRule.length === 0) {
    return [
      {
        message: `the waiver is for ${waiver.rule}, which no pack here contains`,
        advice: 'Delete it, or name the entry that it is for.',
      },
    ];
  }
  const meant = ofRule.filter(({ name }) => waiver.name === undefined || waiver.name === name);
  return meant.length === 0 ? [misnamed(waiver, ofRule, policy)] : unmeasured(waiver, meant);
}

function misnamed(
  { name = '', rule }: Waiver,
  ofRule: readonly PolicyRule[],
  policy: readonly PolicyRule[],
): WithoutEffect {
  const other = policy.find((each) => each.name === name);
  const names = ofRule.map((each) => each.name);
  return {
    message:
      other === undefined
        ? `the waiver names the entry ${name}, and no entry has that name`
        : `the waiver is for ${rule} and names the entry ${name}, which is of the rule ${other.entry.rule}`,
    advice: `${offer(name, names)}Correct the name, or leave it out: the waiver is then for every entry of ${rule}.`,
  };
}

export const figures: Readonly<Record<Measure, string>> = {
  size: 'a size',
  amount: 'an amount of money',
  number: 'a number',
};

/** A ceiling in a measure that none of the entries has: it covers nothing. */
const unmeasured = ({ upTo, rule }: Waiver, meant: readonly PolicyRule[]): readonly WithoutEffect[] =>
  upTo === undefined
    ? []
    : ceilingWithoutEffect(
        upTo,
        rule,
        meant.map(({ entry }) => entry.rule),
      );

/** @param called the rule or the entry, as the waiver has it */
export function ceilingWithoutEffect(
  upTo: Ceiling,
  called: string,
  of: readonly RuleName[],
): readonly WithoutEffect[] {
  const measures = of.map((rule) => rules[rule].measures ?? {});
  if (measures.some((each) => each[upTo.measure] !== undefined)) return [];
  const known = (['size', 'amount', 'number'] as const).flatMap((measure) => {
    const what = measures.flatMap((each) => each[measure] ?? [])[0];
    return what === undefined ? [] : [`${figures[measure]} (${what})`];
  });
  return [
    known.length === 0
      ? {
          message: `the waiver has the ceiling ${upTo.written}, and ${called} measures nothing, so that it covers nothing`,
          advice: 'Leave up-to out.',
        }
      : {
          message: `the ceiling ${upTo.written} of the waiver is ${figures[upTo.measure]}, in which ${called} measures nothing, so that it covers nothing`,
          advice: `Write ${known.join(' or ')}.`,
        },
  ];
}
