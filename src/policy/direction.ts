/**
 * Two policies -> what differs, and whether each difference is tighter or looser. A difference is called tighter
 * where every change of an estate that keeps to both policies is refused by the new one if the old one refuses it.
 * Where main breaks the new policy already, what it breaks stands, and a change that makes it no worse passes: a
 * tighter rule does not reach back.
 */
import type { Estate } from '../estate/estate.ts';
import { priceDifferences } from '../price/difference.ts';
import { ruleOf } from '../rules/registry.ts';
import type { PolicyChange } from '../rules/view.ts';
import { priceListChanges } from './changes/prices.ts';
import { procedureChanges } from './changes/procedures.ts';
import { readingChanges } from './changes/readings.ts';
import { ruleChanges } from './changes/rules.ts';
import { settingsChanges } from './changes/settings.ts';
import { surveyChanges } from './changes/surveys.ts';
import { waiverChanges } from './changes/waivers.ts';
import { type Policy, usesReadings, usesSurveys } from './policy.ts';

/** @param estate what the base declares: other prices are told by what they come to for it */
export function comparePolicies(
  base: Policy,
  head: Policy,
  on: string,
  estate: Estate,
): readonly PolicyChange[] {
  const uses = new Set([...base.rules, ...head.rules].flatMap(({ entry }) => ruleOf(entry).usesPrices ?? []));
  // Where no rule asks, no reading is read.
  const asked = head.rules.some(({ entry }) => usesReadings(entry));
  const surveyed = [base, head].every(({ rules }) => rules.some(({ entry }) => usesSurveys(entry)));
  return [
    ...ruleChanges(base.rules, head.rules),
    ...waiverChanges(base.waivers, head.waivers, { on, rules: head.rules }),
    ...priceListChanges(base.priceLists, head.priceLists, {
      uses,
      monthlyBy: (was, now) => priceDifferences(estate, was, now, { settings: base.settings, day: on }),
    }),
    ...settingsChanges(base.settings, head.settings),
    ...procedureChanges(base.procedures, head.procedures),
    ...(asked ? readingChanges(base.usage?.summaries ?? new Map(), head.usage?.summaries ?? new Map()) : []),
    ...(surveyed ? surveyChanges(base.surveys, head.surveys, on) : []),
  ];
}
