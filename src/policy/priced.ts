/** What the two sides of a change cost, by the prices that judge and by those that the branch proposes. */
import { err, type Outcome, ok } from '../base/problem.ts';
import type { Estate } from '../estate/estate.ts';
import { type EstateCost, priceEstate } from '../price/cost.ts';
import { hoursAMonth } from '../price/line.ts';
import { listInForce, type PriceList } from '../price/price-list.ts';
import type { View } from '../rules/view.ts';
import { noPriceList, type Policy } from './policy.ts';
import type { Side } from './revision.ts';

/** What an estate costs by a policy's prices on a day. */
export function priced(
  estate: Estate,
  policy: Policy,
  on: string,
): Outcome<{ readonly list: PriceList; readonly cost: EstateCost }> {
  const list = listInForce(policy.priceLists, on);
  if (list === undefined) return err(noPriceList(policy, on));
  const cost = priceEstate(estate, list, policy.settings, on);
  return cost.ok ? ok({ list, cost: cost.value }) : cost;
}

export interface OwnPrices {
  readonly list: PriceList;
  readonly cost: EstateCost;
  /** With the length of the month that the base has, where the head has another. */
  readonly inBaseMonth?: EstateCost;
}

/** The head at the prices and in the month that it proposes; `undefined` where those are the ones that judge. */
export function pricedByOwn(
  head: Side,
  policy: Policy,
  { prices, on }: View,
): Outcome<OwnPrices | undefined> {
  const list = listInForce(head.policy.priceLists, on);
  const own = head.policy.settings;
  const isSameMonth = hoursAMonth(own, on) === hoursAMonth(policy.settings, on);
  if (isSameMonth && (list === prices || (list === undefined && head.policy === policy)))
    return ok(undefined);
  const now = priced(head.estate, head.policy, on);
  if (!now.ok || isSameMonth) return now;
  const inBaseMonth = priced(
    head.estate,
    { ...head.policy, settings: { ...own, month: policy.settings.month } },
    on,
  );
  return inBaseMonth.ok ? ok({ ...now.value, inBaseMonth: inBaseMonth.value.cost }) : inBaseMonth;
}
