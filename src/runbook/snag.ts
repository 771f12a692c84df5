/** Why no order of the steps carries a change out, in words, and what to do about it. */
import { listed } from '../base/wording.ts';
import type { Snag, Step } from './step.ts';

/** A step that no order brings about. */
export interface SnaggedStep {
  readonly step: Step;
  readonly snag: Snag;
  /** The steps of its circle, the one that is snagged first; that alone where there is none. */
  readonly circle: readonly Step[];
}

export function snaggedSteps(steps: readonly Step[]): readonly SnaggedStep[] {
  return steps.flatMap((step) => {
    const { snag } = step;
    return snag === undefined ? [] : [{ step, snag, circle: [step, ...others(steps, step, snag)] }];
  });
}

/** The steps by which those that it should wait for wait for it. */
function others(steps: readonly Step[], step: Step, snag: Snag): readonly Step[] {
  if (snag.kind !== 'circle') return [];
  const waiting = new Set([step.number]);
  for (const { number, after } of steps)
    if (number > step.number && after.some((each) => waiting.has(each))) waiting.add(number);
  // Of all that waits for it, what it should wait for, near or far.
  const wanted = new Set(snag.steps);
  for (const { number, after } of steps.toReversed())
    if (wanted.has(number)) for (const each of after) if (waiting.has(each)) wanted.add(each);
  return steps.filter(({ number }) => number !== step.number && wanted.has(number));
}

/** What to do about it, one sentence. */
export function wayOut(snag: Snag): string {
  switch (snag.kind) {
    case 'circle':
      return 'Settle by hand which goes first, or change it in two branches, with a spare volume or slot between.';
    case 'apart':
      return 'Settle by hand how its contents come there, or change the members in one branch and the site in another.';
    case 'no-slot':
      return 'Free one first, or detach something meanwhile.';
    case 'no-quota':
      return 'Ask the provider for more quota for the time being, or change it in two merges, the first of which frees enough.';
  }
}

/** As it is said of the step itself, by the numbers of others. */
export function snagOfStep(snag: Snag): string {
  switch (snag.kind) {
    case 'circle':
      return `It should wait for step ${listed(snag.steps.map(String))}, which waits for this one.`;
    case 'apart':
      return `The other members of volume group ${snag.group} are at another site then, where this cannot be done.`;
    case 'no-slot':
      return `All attachment slots of ${snag.server} are taken by then, and none can be freed before.`;
    case 'no-quota':
      return `It goes beyond the ${quotaWords(snag)} by then, and not enough can be freed before.`;
  }
}

/** `quota of north-quay for the size of volumes`. */
export const quotaWords = ({ site, of }: Extract<Snag, { kind: 'no-quota' }>): string =>
  `quota of ${site} for the ${of === 'size' ? 'size' : 'number'} of volumes`;
