/** One random branch, read and played. */
import { compareEstates } from '../../src/change/compare.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import { assembled, type Files } from '../estate/builder.ts';
import { simulate } from './simulate.ts';

export interface Played {
  readonly steps: number;
  readonly faults: readonly string[];
}

/** Undefined where the two contradict each other, and are not judged. */
export function played(before: Files, after: Files, spareSlots = 2): Played | undefined {
  const [base, head] = [assembled(before), assembled(after)];
  if (!base.ok || !head.ok) return undefined;
  const comparison = compareEstates(base.value, head.value);
  if (comparison.contradictions.length > 0) return undefined;
  const steps = runbookOf(comparison, base.value, head.value).length;
  return { steps, faults: simulate(base.value, head.value, { spareSlots }) };
}
