/** What can be drawn of a cost: before and after beside the limits, and the way from the one to the other. */
import type { CauseKind, CostDelta } from '../../price/delta.ts';
import type { Block } from './model.ts';
import type { AmountRow } from './picture.ts';

export const causeWords: Readonly<Record<CauseKind, string>> = {
  quantity: 'changes in quantity',
  adoption: 'what is there already and is only declared now',
  'tier-move': 'changes of tier or server type',
  'price-change': 'price changes',
  'month-change': 'another length of the month',
  'currency-change': 'another currency',
};

/** Nothing where the two are in two currencies: nothing tells what one is worth in the other. */
export function costPictures(
  { currencyBefore, currency, before, after, difference, causes }: CostDelta,
  rows: readonly AmountRow[],
): readonly Block[] {
  if (currencyBefore !== currency || difference === undefined) return [];
  const moved = causes.flatMap((each) =>
    each.difference === undefined || each.difference.isZero()
      ? []
      : [{ name: causeWords[each.cause], difference: each.difference }],
  );
  return [
    { kind: 'picture', picture: { kind: 'amounts', currency, rows } },
    ...(moved.length === 0
      ? []
      : [{ kind: 'picture', picture: { kind: 'bridge', currency, before, after, causes: moved } } as const]),
  ];
}
