/**
 * Whether any order of the steps carries a branch out, tried in the model: each that the waits allow which are there
 * for another reason than room. So what is said to have no slot, no quota or no room in a group is held against all.
 */
import type { Comparison } from '../../src/change/compare.ts';
import type { Estate } from '../../src/estate/estate.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { attempt, whenUp } from './attempt.ts';
import { type Spare, worldOf } from './begin.ts';
import { wrongAtEnd } from './end.ts';
import type { World } from './world.ts';

/** An order that the model plays to the end; `none` where there is none, `untold` where not all were tried. */
export type Searched = readonly Step[] | 'none' | 'untold';

/** What takes a slot, a part of a quota or extents of a group: which of these comes first is all that is chosen. */
const takes =
  /^(attach|create-(volume|smaller|server)|grow-volume|copy-across|leave-group|replace-member|fill-smaller|put-smaller-in-place)/;

/** Waits for room alone. */
const isForRoom = (step: Step, other: Step): boolean =>
  /^(leave|replaced|fill|copy-across) /.test(step.key) && /^(join|grow-member) /.test(other.key);

interface State {
  readonly world: World;
  readonly later: readonly Step[];
  readonly done: ReadonlySet<number>;
  readonly order: readonly Step[];
}

/** @param most how many steps are tried, all in all */
export function anyOrder(
  comparison: Comparison,
  base: Estate,
  head: Estate,
  spare: Spare,
  most: number,
): Searched {
  const steps = runbookOf(comparison, base, head, { slots: () => undefined });
  const byNumber = new Map(steps.map((step) => [step.number, step]));
  const waits = new Map(
    steps.map((step) => [
      step,
      step.after.filter((each) => {
        const other = byNumber.get(each);
        return other !== undefined && !isForRoom(step, other);
      }),
    ]),
  );
  const begun = worldOf(base, head, comparison.renames, spare);
  const before = begun.holdings();
  const known = new Set<string>();
  let tried = 0;
  const after = ({ world, later, done, order }: State, step: Step): State | undefined => {
    tried += 1;
    const next = { world: world.copy(), later: [...later] };
    return attempt(next.world, step, head, next.later) === undefined
      ? { ...next, done: new Set([...done, step.number]), order: [...order, step] }
      : undefined;
  };
  const isEnd = ({ world, later }: State): boolean => {
    const last = world.copy();
    return (
      later.every((step) => whenUp(last, step) === undefined) &&
      wrongAtEnd(comparison, base, head, before, last).length === 0
    );
  };
  const from = (state: State): readonly Step[] | undefined => {
    let at = state;
    for (let next: State | undefined = at; next !== undefined; ) {
      at = next;
      next = undefined;
      for (const step of free(at)) {
        if (takes.test(step.procedure) || tried > most) continue;
        next = after(at, step);
        if (next !== undefined) break;
      }
    }
    if (at.done.size === steps.length) return isEnd(at) ? at.order : undefined;
    const key = [...at.done].sort((a, b) => a - b).join();
    if (known.has(key)) return undefined;
    known.add(key);
    for (const step of free(at)) {
      if (!takes.test(step.procedure)) continue;
      if (tried > most) return undefined;
      const next = after(at, step);
      const found = next === undefined ? undefined : from(next);
      if (found !== undefined) return found;
    }
    return undefined;
  };
  const free = ({ done }: State): readonly Step[] =>
    steps.filter((step) => !done.has(step.number) && (waits.get(step) ?? []).every((each) => done.has(each)));
  return from({ world: begun, later: [], done: new Set(), order: [] }) ?? (tried > most ? 'untold' : 'none');
}
