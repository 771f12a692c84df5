import type { Step } from '../../src/runbook/step.ts';

/** The numbers of all other steps that one waits for, near or far. */
export function waitsFor(steps: readonly Step[], { number, after }: Step): ReadonlySet<number> {
  const found = new Set<number>();
  const open = [...after];
  for (let each = open.pop(); each !== undefined; each = open.pop()) {
    if (found.has(each)) continue;
    found.add(each);
    open.push(...(steps[each - 1]?.after ?? []));
  }
  found.delete(number);
  return found;
}
