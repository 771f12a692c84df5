/** How far one can step back: what nothing takes back, and which steps come before it. */
import { fileSystemFacts, fileSystemTypes } from '../estate/file-system-facts.ts';
import type { Step } from './step.ts';

export interface Returning {
  /**
   * The first step, this one included, with which the way back from this one ends; undefined where it never does.
   * What a step stands on is what it waits for, so only steps that wait for this one can end its way back.
   */
  readonly until: number | undefined;
  /** Whether something that it waits for cannot be taken back any more. */
  readonly past: boolean;
}

/** Whether nothing takes a step back: it destroys, or what it makes larger cannot be made smaller. */
export function isFinal({ destroys, procedure, words }: Step): boolean {
  if (destroys) return true;
  switch (procedure) {
    case 'grow-volume':
    case 'delete-server':
      return true;
    case 'grow-mounted':
    case 'grow-unmounted':
      return !canShrink(words.type);
    default: // the other actions can be taken back
      return false;
  }
}

function canShrink(type: string | undefined): boolean {
  const known = fileSystemTypes.find((each) => each === type);
  if (known === undefined) return false;
  const { online, offline } = fileSystemFacts(known).shrink;
  return online || offline;
}

/**
 * By number.
 *
 * @param steps in order, as `runbookOf` gives them
 */
export function returningOf(steps: readonly Step[]): ReadonlyMap<number, Returning> {
  const until = new Map<number, number>();
  for (const step of steps.toReversed()) {
    const { number, after } = step;
    if (isFinal(step)) until.set(number, number);
    const ends = until.get(number);
    if (ends === undefined) continue;
    for (const each of after) until.set(each, Math.min(ends, until.get(each) ?? ends));
  }
  const final = new Set<number>();
  const past = new Map<number, Returning>();
  for (const step of steps) {
    const isPast = step.after.some((each) => final.has(each));
    if (isPast || isFinal(step)) final.add(step.number);
    past.set(step.number, { until: until.get(step.number), past: isPast });
  }
  return past;
}

/**
 * Of the steps that are done, those that can still be taken back, the last first. What one stands on that nothing takes
 * back stands as long as that does: a volume whose old one is deleted is not to be given up for it.
 *
 * @param carriedOut in order, each with all that it waits for
 */
export function undoable(carriedOut: readonly Step[]): readonly Step[] {
  const ways = returningOf(carriedOut);
  return carriedOut.filter(({ number }) => ways.get(number)?.until === undefined).reverse();
}
