/** How steps run beside one another: what goes side by side, the longest chain, and which servers stand still. */
import type { Step } from './step.ts';

/** A server that is shut down on the way. Numbers are those of steps. */
export interface Standstill {
  readonly server: string;
  /** The step that shuts it down. */
  readonly from: number;
  /** The step that starts it again; none where it stays down, or is deleted. */
  readonly to: number | undefined;
}

export interface Course {
  /**
   * The numbers of steps of which each waits for the one before it, as many as there are turns: however many people
   * work at once, they are done one after the other. The first such chain, where there are several.
   */
  readonly longest: readonly number[];
  /** The numbers of the steps, turn by turn: those of one turn wait for none of each other, and go side by side. */
  readonly turns: readonly (readonly number[])[];
  /** In the order in which they are shut down. */
  readonly standing: readonly Standstill[];
}

/**
 * How steps run beside one another.
 *
 * @param steps in order, as `runbookOf` gives them
 *
 * @example
 * ```js
 * import { judgeRepository, courseOf } from 'ullage';
 *
 * const judgement = await judgeRepository('.', { base: 'main', head: 'smaller-plates', on: '2026-11-20' });
 * console.log(courseOf(judgement.runbook).longest.join(' ')); // 1 3 4 5
 * ```
 */
export function courseOf(steps: readonly Step[]): Course {
  const before = new Map<number, number | undefined>();
  const turnOf = new Map<number, number>();
  const turns: number[][] = [];
  for (const { number, after } of steps) {
    const last = after.reduce<number | undefined>(
      (latest, each) =>
        latest === undefined || (turnOf.get(each) ?? -1) > (turnOf.get(latest) ?? -1) ? each : latest,
      undefined,
    );
    const turn = last === undefined ? 0 : (turnOf.get(last) ?? -1) + 1;
    before.set(number, last);
    turnOf.set(number, turn);
    const beside = turns[turn];
    if (beside === undefined) turns[turn] = [number];
    else beside.push(number);
  }
  const longest: number[] = [];
  for (let at = turns.at(-1)?.[0]; at !== undefined; at = before.get(at)) longest.unshift(at);
  return { longest, turns, standing: standing(steps) };
}

function standing(steps: readonly Step[]): readonly Standstill[] {
  return steps.flatMap(({ procedure, server, number }) => {
    if (procedure !== 'stop-server' || server === undefined) return [];
    const start = steps.find(
      (each) => each.procedure === 'start-server' && each.server === server && each.number > number,
    );
    return [{ server, from: number, to: start?.number }];
  });
}
