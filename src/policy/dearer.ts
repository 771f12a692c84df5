/** A finding about a sum of costs points at what the branch made dearer most, not at what cost most all along. */
import type { Renames } from '../change/renames.ts';
import type { Touched } from '../change/touched.ts';
import { movesOf } from '../price/delta.ts';
import { type CostLine, nameOf } from '../price/line.ts';
import { type Money, noMoney, showMoney, subtractMoney } from '../price/money.ts';
import { ruleOf } from '../rules/registry.ts';
import type { Violation } from '../rules/rule.ts';
import { placeOfSum } from '../rules/spend-limit.ts';
import type { View } from '../rules/view.ts';
import type { PolicyRule } from './policy.ts';
import { scopeOf } from './scope.ts';

export interface Dearer {
  readonly before: View;
  readonly after: View;
  readonly renames: Renames;
  readonly touched: Pick<Touched, 'volumes' | 'servers'>;
}

/** A violation as it is told where it is new or worse; as it is where it is of no sum, or the branch adds nothing to it. */
export function dearerBy({ before, after, renames, touched }: Dearer) {
  return ({ entry }: PolicyRule, violation: Violation): Violation => {
    const rule = ruleOf(entry);
    const spends = rule.about === 'state' ? rule.spends?.(entry, scopeOf(entry), after) : undefined;
    const key = spends?.keyFor(violation.subject);
    if (spends === undefined || key === undefined) return violation;
    const inSum = (line: CostLine | undefined): Money =>
      line !== undefined && spends.keyOf(line) === key ? line.monthly : noMoney;
    let most: { readonly line: CostLine; readonly more: Money } | undefined;
    for (const { before: was, after: line } of [
      ...movesOf(touched.volumes, before.cost.volumes, after.cost.volumes, renames.volumes),
      ...movesOf(touched.servers, before.cost.servers, after.cost.servers, renames.servers),
    ]) {
      if (line === undefined) continue;
      const more = subtractMoney(inSum(line), inSum(was));
      if (
        more.gt(most?.more ?? noMoney) ||
        (most !== undefined && more.eq(most.more) && nameOf(line) < nameOf(most.line))
      )
        most = { line, more };
    }
    if (most === undefined) return violation;
    const { line, more } = most;
    const { currency } = after.cost;
    return {
      ...violation,
      place: placeOfSum(line, after),
      advice: `The branch adds most with ${nameOf(line)}: ${showMoney(more, currency)} ${currency} a month. ${spends.advice(violation)}`,
    };
  };
}
