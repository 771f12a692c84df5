/** One random branch, read and played. */
import { assembled, type Files } from '../estate/builder.ts';
import { type Simulated, simulate } from './simulate.ts';

/** Undefined where the two contradict each other, and are not judged. */
export function played([before, after]: readonly [Files, Files], spareSlots: number): Simulated | undefined {
  const [base, head] = [assembled(before), assembled(after)];
  return base.ok && head.ok ? simulate(base.value, head.value, { spareSlots }) : undefined;
}
