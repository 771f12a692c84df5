/** The steps as other people may do them: whatever waits for nothing that is left may come next. */
import type { Step } from '../../src/runbook/step.ts';

/** What is printed first as late as it can come, so that a wait that is missed shows; and an order by lot. */
export function otherOrders(steps: readonly Step[]): readonly (readonly Step[])[] {
  const lot = lotsOf(steps);
  return [
    inOrder(steps, (free) => free.length - 1),
    inOrder(steps, (free) => Math.floor(lot() * free.length)),
  ];
}

function inOrder(steps: readonly Step[], choose: (free: readonly Step[]) => number): readonly Step[] {
  const done = new Set<number>();
  const order: Step[] = [];
  for (;;) {
    const free = steps.filter(
      ({ number, after }) => !done.has(number) && after.every((each) => done.has(each)),
    );
    const next = free[choose(free)];
    if (next === undefined) return order;
    done.add(next.number);
    order.push(next);
  }
}

/** The same for the same steps, so that a branch that goes wrong does so again: a linear congruential generator. */
function lotsOf(steps: readonly Step[]): () => number {
  const next = (state: number, added: number): number => (Math.imul(state, 1_664_525) + added) >>> 0;
  let state = [...steps.map(({ key }) => key).join()].reduce(
    (all, letter) => next(all, letter.charCodeAt(0)),
    steps.length,
  );
  return () => {
    state = next(state, 1_013_904_223);
    return state / 2 ** 32;
  };
}
