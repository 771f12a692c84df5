/** Why a waiver cannot have the effect that it is written for, whatever comes: told when a policy is checked. */

import { offer } from '../base/nearest.ts';
import { ruleOf } from '../rules/registry.ts';
import type { Measure } from '../rules/rule.ts';
import type { PolicyRule, Waiver } from './policy.ts';

export interface WithoutEffect {
  readonly message: string;
  readonly advice: string;
}

/** @param rules of the policy */
export function withoutEffect(waiver: Waiver, rules: readonly PolicyRule[]): readonly WithoutEffect[] {
  const ofRule = rules.filter(({ name, entry }) => name === waiver.rule || entry.rule === waiver.rule);
  if (ofRule.length === 0) {
    return [
      {
        message: `the waiver is for ${waiver.rule}, which no pack here contains`,
        advice: 'Delete it, or name the entry that it is for.',
      },
    ];
  }
  const meant = ofRule.filter(({ name }) => waiver.name === undefined || waiver.name === name);
  return meant.length === 0 ? [misnamed(waiver, ofRule, rules)] : unmeasured(waiver, meant);
}

function misnamed(
  { name = '', rule }: Waiver,
  ofRule: readonly PolicyRule[],
  rules: readonly PolicyRule[],
): WithoutEffect {
  const other = rules.find((each) => each.name === name);
  const names = ofRule.map((each) => each.name);
  return {
    message:
      other === undefined
        ? `the waiver names the entry ${name}, and no entry has that name`
        : `the waiver is for ${rule} and names the entry ${name}, which is of the rule ${other.entry.rule}`,
    advice: `${offer(name, names)}Correct the name, or leave it out: the waiver is then for every entry of ${rule}.`,
  };
}

const figures: Readonly<Record<Measure, string>> = {
  size: 'a size',
  amount: 'an amount of money',
  number: 'a number',
};

/** A ceiling in a measure that none of the entries has: it covers nothing. */
function unmeasured({ upTo, rule }: Waiver, meant: readonly PolicyRule[]): readonly WithoutEffect[] {
  if (upTo === undefined) return [];
  const measures = meant.map(({ entry }) => ruleOf(entry).measures ?? {});
  if (measures.some((each) => each[upTo.measure] !== undefined)) return [];
  const known = (['size', 'amount', 'number'] as const).flatMap((measure) => {
    const what = measures.flatMap((each) => each[measure] ?? [])[0];
    return what === undefined ? [] : [`${figures[measure]} (${what})`];
  });
  return [
    known.length === 0
      ? {
          message: `the waiver has the ceiling ${upTo.written}, and ${rule} measures nothing, so that it covers nothing`,
          advice: 'Leave up-to out.',
        }
      : {
          message: `the ceiling ${upTo.written} of the waiver is ${figures[upTo.measure]}, in which ${rule} measures nothing, so that it covers nothing`,
          advice: `Write ${known.join(' or ')}.`,
        },
  ];
}
