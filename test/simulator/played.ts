/** One random branch, read and played. */
import { assembled, type Files } from '../estate/builder.ts';
import type { Spare } from './begin.ts';
import { type Simulated, simulate } from './simulate.ts';

/** Undefined where the two contradict each other, and are not judged. */
export function played([before, after]: readonly [Files, Files], spare: Spare): Simulated | undefined {
  const [base, head] = [assembled(before), assembled(after)];
  return base.ok && head.ok ? simulate(base.value, head.value, spare) : undefined;
}
