/**
 * Readings as one figure a day, with what happened once taken out: a wild reading, a clean-up, a sudden load.
 *
 * Bytes become floating-point numbers here, for statistics only. They are exact up to 2^53 bytes, 8 PiB; above that
 * they are off by less than one part in 10^15.
 */
import { medianSorted } from 'simple-statistics';
import type { Bytes } from '../estate/size.ts';

/** What the forecast wants of a reading. */
export interface UseAt {
  /** When, RFC 3339 in UTC with whole seconds. */
  readonly at: string;
  readonly used: Bytes;
  /** For unprivileged users; 0 or less where it was full. */
  readonly available?: Bytes;
}

const millisecondsADay = 86_400_000;

/** The highest reading of a day. */
interface Day {
  /** Days before the last reading. */
  readonly ago: number;
  readonly use: number;
  readonly full: boolean;
}

/**
 * The highest reading of each day, since a peak fills; the last day first. Days are counted back from the last reading,
 * half a day to either side, so that a few seconds, or a midnight between, make no day longer or shorter.
 *
 * @param readings in any order
 */
export function byDay(readings: readonly UseAt[]): readonly Day[] {
  const times = readings.map(({ at }) => Date.parse(at));
  const last = times.reduce((latest, each) => Math.max(latest, each), Number.NEGATIVE_INFINITY);
  const days = new Map<number, Day>();
  for (const [index, { used, available }] of readings.entries()) {
    const ago = Math.round((last - (times[index] ?? last)) / millisecondsADay);
    const use = Number(used);
    const held = days.get(ago);
    if (held === undefined || use > held.use) {
      days.set(ago, { ago, use, full: available !== undefined && available <= 0n });
    }
  }
  return [...days.values()].sort((a, b) => a.ago - b.ago);
}

/** The use day by day, without gaps; the last is that of the last reading. */
export interface DailyUse {
  /** Bytes, one a day. */
  readonly use: readonly number[];
  /** Days with a reading. */
  readonly readings: number;
  /** Days from the first of them to the last. */
  readonly spanDays: number;
}

/** Nothing is taken from before so many days. */
const longestReach = 400;

/**
 * Puts days without a reading on the line between their neighbours.
 *
 * @param latestDays only so many of the latest days with a reading count
 */
export function dayByDay(days: readonly Day[], latestDays: number): DailyUse {
  const within = days.slice(0, latestDays).filter(({ ago }) => ago <= longestReach);
  const use: number[] = [];
  let before: Day | undefined;
  for (const day of [...within].reverse()) {
    if (before?.full === true && day.full) {
      // A day that began full and ended full tells nothing of how it would have grown.
      use[use.length - 1] = day.use;
    } else {
      const gap = before === undefined ? 1 : before.ago - day.ago;
      const from = before?.use ?? day.use;
      for (let step = 1; step <= gap; step += 1) use.push(from + ((day.use - from) * step) / gap);
    }
    before = day;
  }
  return { use, readings: within.length, spanDays: (within.at(-1)?.ago ?? 0) - (within[0]?.ago ?? 0) };
}

/** A change of level that is no growth, on the day after it. */
export interface Step {
  readonly day: number;
  /** Bytes; below 0 is a fall. */
  readonly height: number;
}

export interface Steps {
  /** The use without wild readings. */
  readonly agreed: readonly number[];
  readonly falls: readonly Step[];
  readonly rises: readonly Step[];
}

/** From this many on, falls are a habit, such as a weekly rotation, and so are lone peaks. */
export const habit = 3;
/** A change this many robust standard deviations off the usual is no noise. Common practice, with no source. */
const deviationsOfAStep = 5;
/** Nor is a step lower than this many days of usual growth worth a word. Common practice, with no source. */
const daysOfGrowthInAStep = 3;
/** The median absolute deviation times this is the standard deviation of normal noise. */
const normalScale = 1.4826;

export const median = (values: readonly number[]): number =>
  values.length === 0 ? 0 : medianSorted([...Float64Array.from(values).sort()]);

/**
 * Finds where the level changed at a stroke: where the two days before agree that the use was lower, or higher, than
 * the two after say. One wild reading, however high or low, never has a second that agrees with it, and is put on the
 * line between its neighbours; unless there are so many that they are how the file system is used.
 */
export function stepsOf(use: readonly number[]): Steps {
  const changes = use.slice(1).map((each, index) => each - (use[index] ?? each));
  const usual = median(changes);
  const apart = changes.map((change) => Math.abs(change - usual));
  const noise = Math.max(
    normalScale * median(apart),
    // Where most days are alike to the byte, the others still have a measure.
    (apart.reduce((sum, each) => sum + each, 0) / Math.max(1, apart.length)) * 0.2,
  );
  const least = Math.max(deviationsOfAStep * noise, daysOfGrowthInAStep * Math.abs(usual));
  const agreed = withoutWild(use, usual, least);
  const falls: Step[] = [];
  const rises: Step[] = [];
  let stretch = 0;
  for (let day = 2; day < agreed.length - 1; day += 1) {
    const [before2 = 0, before = 0, now = 0, after = 0] = agreed.slice(day - 2, day + 2);
    stretch += 1;
    if (stretch < 2 && day > 2) continue;
    if (Math.min(before2, before) - Math.max(now, after) > least) {
      falls.push({ day, height: heightOf(before2, before, now, after, usual) });
      stretch = 0;
    } else if (Math.min(now, after) - Math.max(before2, before) > least) {
      rises.push({ day, height: heightOf(before2, before, now, after, usual) });
      stretch = 0;
    }
  }
  return { agreed, falls, rises };
}

/** The two days after beside the two before, less the growth between. */
const heightOf = (before2: number, before: number, now: number, after: number, usual: number): number =>
  (now + after - before - before2) / 2 - 2 * usual;

function withoutWild(use: readonly number[], usual: number, least: number): readonly number[] {
  const lone = use.flatMap((now, day) => {
    const [before, after] = [use[day - 1], use[day + 1]];
    return before !== undefined && after !== undefined && isLone(now, before, after, least)
      ? [{ day, instead: (before + after) / 2, high: now > before }]
      : [];
  });
  const rare = [true, false].filter((high) => lone.filter((each) => each.high === high).length < habit);
  const calm = [...use];
  for (const { day, instead, high } of lone) if (rare.includes(high)) calm[day] = instead;
  // The first and the last have one neighbour; where the line through it and the next leads to them, they are no strays.
  for (const [end, next, further, growth] of [
    [0, 1, 2, -usual],
    [use.length - 1, use.length - 2, use.length - 3, usual],
  ] as const) {
    const [now = 0, beside = 0, beyond = 0] = [calm[end], calm[next], calm[further]];
    const expected = beside + growth;
    const onLine = Math.abs(now - 2 * beside + beyond) <= least;
    if (!onLine && isLone(now, expected, expected, least) && rare.includes(now > expected))
      calm[end] = expected;
  }
  return calm;
}

/** Whether one day is far off both its neighbours, to one side, while they agree. */
function isLone(now: number, before: number, after: number, least: number): boolean {
  const off = Math.min(Math.abs(now - before), Math.abs(now - after));
  return off > least && now > before === now > after && Math.abs(after - before) <= off / 2;
}
