/** What differs between the two sides of a change, and what that can have touched. */
import { type Comparison, compareEstates } from '../change/compare.ts';
import { nothingShown } from '../change/corrected.ts';
import { type Touched, touchedBy } from '../change/touched.ts';
import { shownBy, sizesShownBy } from '../survey/shown.ts';
import type { Sides } from './revision.ts';

/** What differs between two estates, and what that can have touched. */
export interface Difference {
  readonly comparison: Comparison;
  readonly touched: Touched;
}

/** Of a first estate what the branch's own surveys show is there already: main has none to bend. */
export function differenceOf(sides: Sides, on: string): Difference {
  const { estate: base, policy: own } = sides.base;
  const { estate: head, policy } = sides.head;
  const { surveys } = own;
  const isFirst = base.servers.size === 0 && base.volumes.size === 0 && policy.surveys !== undefined;
  const comparison = compareEstates(base, head, {
    there: isFirst && policy.surveys !== undefined ? shownBy(head, policy.surveys) : nothingShown.there,
    hasSize: surveys === undefined ? nothingShown.hasSize : sizesShownBy(base, surveys, on),
  });
  return { comparison, touched: touchedBy(base, head, comparison.files) };
}
