/**
 * Plays the runbook of one branch from its base to its end, and says what went wrong: a step that was refused, an end
 * that is not the head, or content lost that no change declares lost.
 */
import { type Comparison, compareEstates } from '../../src/change/compare.ts';
import type { Estate } from '../../src/estate/estate.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Snag, Step } from '../../src/runbook/step.ts';
import { attempt, whenUp } from './attempt.ts';
import { quotaOf, type Spare, slotsOf, worldOf } from './begin.ts';
import { wrongAtEnd } from './end.ts';
import { otherOrders } from './orders.ts';
import { anyOrder } from './search.ts';

export interface Simulated {
  readonly steps: readonly Step[];
  /** What went wrong, one sentence each; nothing where nothing did. */
  readonly faults: readonly string[];
  /** Why the planner says of itself that no order carries the branch out. */
  readonly snag: Snag | undefined;
  /** Whether there are too many orders to try them all. */
  readonly isUntold: boolean;
}

/** Undefined where the two contradict each other, and are not judged. */
export function simulate(base: Estate, head: Estate, spare: Spare): Simulated | undefined {
  const comparison = compareEstates(base, head);
  if (comparison.contradictions.length > 0) return undefined;
  const steps = runbookOf(comparison, base, head, {
    slots: ({ name }) => slotsOf(base, head, comparison.renames, name, spare.slots),
    quota: (site) => quotaOf(base, head, site, spare.quota),
  });
  const snag = steps.find((step) => step.snag !== undefined)?.snag;
  const faults = playAll(comparison, base, head, steps, spare);
  if (snag === undefined) {
    const others = (faults.length > 0 ? [] : otherOrders(steps)).flatMap((order) =>
      playAll(comparison, base, head, order, spare).map((each) => `in another order: ${each}`),
    );
    return { steps, faults: [...faults, ...others], snag, isUntold: false };
  }
  // What is said to be impossible has to be refused, in whatever order.
  const searched = faults.length > 0 ? anyOrder(comparison, base, head, spare, mostTried) : steps;
  const carriedOut = typeof searched === 'string' ? [] : [searched.map(({ key }) => key).join(', ')];
  return {
    steps,
    faults: carriedOut.map(
      (order) => `it can be carried out, and is said not to be: ${snag.kind}\n  order: ${order}`,
    ),
    snag,
    isUntold: searched === 'untold',
  };
}

/** Enough for nearly all that is drawn. */
const mostTried = 2_000;

function playAll(
  comparison: Comparison,
  base: Estate,
  head: Estate,
  steps: readonly Step[],
  spare: Spare,
): readonly string[] {
  const world = worldOf(base, head, comparison.renames, spare);
  const before = world.holdings();
  const later: Step[] = [];
  for (const step of steps) {
    const refused = attempt(world, step, head, later);
    if (refused !== undefined) return [`step ${step.number}, ${step.does} ${refused}`];
  }
  for (const step of later) {
    const refused = whenUp(world, step);
    if (refused !== undefined) return [`when it next runs, ${step.does} ${refused}`];
  }
  return wrongAtEnd(comparison, base, head, before, world);
}
