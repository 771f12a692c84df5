/**
 * Shapes that the use of a file system takes, each drawn as often as wanted with its own future: what was read, what
 * it can hold, and the true day on which it is full. All of them invented; the seeds are fixed.
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { UseAt } from '../../src/capacity/daily-use.ts';
import type { Forecast } from '../../src/capacity/forecast.ts';
import { type Bytes, bytes } from '../../src/estate/size.ts';

const GiB = 2 ** 30;
const millisecondsADay = 86_400_000;
const start = Date.parse('2026-01-05T06:00:00Z');

/** One file system: its past as it was read, and when its own future fills it. */
export interface Drawn {
  readonly readings: readonly UseAt[];
  readonly capacity: Bytes;
  /** Days from the last reading until the use reaches the capacity, going evenly from one day to the next. */
  readonly trueDay: number;
}

/** Numbers that look like chance and are the same every time. */
export interface Chance {
  /** Evenly between the two. */
  between(low: number, high: number): number;
  /** Whole, both ends included. */
  whole(low: number, high: number): number;
  /** Around 0, with the deviation 1. */
  normal(): number;
}

export function chanceOf(seed: number): Chance {
  const source = xoroshiro128plus(seed);
  const next = (): number => uniformFloat64(source);
  return {
    between: (low, high) => low + (high - low) * next(),
    whole: (low, high) => low + Math.floor((high - low + 1) * next()),
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
  };
}

/** The use in GiB on day 0, 1, 2 and so on, without end. */
type Course = Generator<number, never>;

interface Shape {
  readonly days: number;
  readonly course: Course;
  /** How far off the capacity is, in GiB above the last reading. */
  readonly room: number;
}

const far = 4000;

function drawn({ days, course, room }: Shape): Drawn | undefined {
  const uses: number[] = [];
  for (let day = 0; day < days; day += 1) uses.push(Math.max(0, course.next().value));
  const capacity = (uses.at(-1) ?? 0) + room;
  if (Math.max(...uses.slice(-2)) >= capacity) return undefined;
  let before = uses.at(-1) ?? 0;
  for (let day = 1; day < far; day += 1) {
    const use = course.next().value;
    if (use >= capacity) {
      return {
        readings: uses.map((each, index) => ({
          at: `${new Date(start + index * millisecondsADay).toISOString().slice(0, 19)}Z`,
          used: bytes(BigInt(Math.round(each * GiB))),
        })),
        capacity: bytes(BigInt(Math.round(capacity * GiB))),
        trueDay: day - (use - capacity) / (use - before),
      };
    }
    before = use;
  }
  return undefined;
}

/** What is left lasts so many days at a pace. */
const roomFor = (chance: Chance, pace: number): number => pace * chance.between(7, 90);

function* lineWithNoise(chance: Chance, from: number, pace: number, noise: number): Course {
  for (let day = 0; ; day += 1) yield from + pace * day + noise * chance.normal();
}

function* plus(course: Course, more: (day: number) => number): Course {
  for (let day = 0; ; day += 1) yield course.next().value + more(day);
}

function* sumOf(from: number, change: () => number): Course {
  for (let use = from; ; use += change()) yield use;
}

const shapesByName = {
  'line with noise': (chance) => {
    const pace = chance.between(0.2, 5);
    return {
      days: chance.whole(30, 90),
      course: lineWithNoise(chance, chance.between(50, 300), pace, pace * chance.between(0.3, 4)),
      room: roomFor(chance, pace),
    };
  },
  'sum of changes': (chance) => {
    const pace = chance.between(0.2, 5);
    const spread = pace * chance.between(0.5, 4);
    // Half of them go up and down, half only up, mostly by little and now and then by much.
    const change =
      chance.between(0, 1) < 0.5
        ? () => pace + spread * chance.normal()
        : () => -pace * Math.log(1 - chance.between(0, 1));
    return {
      days: chance.whole(30, 90),
      course: sumOf(chance.between(100, 300), change),
      room: roomFor(chance, pace),
    };
  },
  jump: (chance) => {
    const pace = chance.between(0.2, 5);
    const days = chance.whole(30, 90);
    const on = chance.whole(2, days - 2);
    const height = pace * chance.between(15, 200);
    return {
      days,
      course: plus(
        lineWithNoise(chance, chance.between(50, 300), pace, pace * chance.between(0.1, 2)),
        (day) => (day >= on ? height : 0),
      ),
      room: roomFor(chance, pace),
    };
  },
  hinge: (chance) => {
    const pace = chance.between(0.5, 5);
    const before = pace * chance.between(0, 0.3);
    const days = chance.whole(40, 90);
    const on = days - chance.whole(8, 30);
    return {
      days,
      course: plus(
        lineWithNoise(chance, chance.between(50, 300), before, pace * chance.between(0, 1)),
        (day) => (pace - before) * Math.max(0, day - on),
      ),
      room: roomFor(chance, pace),
    };
  },
  'growth by a share': (chance) => {
    const from = chance.between(50, 300);
    const share = chance.between(0.003, 0.02);
    const days = chance.whole(40, 90);
    const end = from * Math.exp(share * days);
    return {
      days,
      course: plus(
        lineWithNoise(chance, 0, 0, from * share * chance.between(0, 2)),
        (day) => from * Math.exp(share * day),
      ),
      room: end * (Math.exp(share * chance.between(7, 90)) - 1),
    };
  },
  'weekly saw-tooth': (chance) => {
    const pace = chance.between(0.1, 1);
    const rise = pace * chance.between(3, 15);
    const phase = chance.whole(0, 6);
    return {
      days: chance.whole(30, 90),
      course: plus(
        lineWithNoise(chance, chance.between(50, 300), pace, pace * chance.between(0, 2)),
        (day) => rise * ((day + phase) % 7),
      ),
      room: 7 * rise + roomFor(chance, pace),
    };
  },
  'monthly saw-tooth': (chance) => {
    const pace = chance.between(0.1, 1);
    const rise = pace * chance.between(1, 6);
    const phase = chance.whole(0, 29);
    return {
      days: chance.whole(30, 120),
      course: plus(
        lineWithNoise(chance, chance.between(50, 300), pace, pace * chance.between(0, 2)),
        (day) => rise * ((day + phase) % 30),
      ),
      room: 30 * rise + roomFor(chance, pace),
    };
  },
  'clean-up': (chance) => {
    const pace = chance.between(0.5, 5);
    const days = chance.whole(30, 90);
    const times = Array.from({ length: chance.whole(1, 2) }, () => chance.whole(2, days - 2));
    const depth = pace * chance.between(8, 40);
    return {
      days,
      course: plus(
        lineWithNoise(chance, chance.between(150, 400), pace, pace * chance.between(0, 1.5)),
        (day) => -depth * times.filter((on) => day >= on).length,
      ),
      room: roomFor(chance, pace),
    };
  },
  'a resize in between': (chance) => {
    const pace = chance.between(0.5, 5);
    const days = chance.whole(40, 90);
    const on = chance.whole(15, days - 10);
    // It stood full for some days until it was grown.
    const stood = chance.whole(0, 7);
    return {
      days,
      course: plus(
        lineWithNoise(chance, chance.between(50, 300), pace, pace * chance.between(0, 1)),
        (day) => -pace * Math.min(stood, Math.max(0, day - on)),
      ),
      room: roomFor(chance, pace),
    };
  },
} satisfies Record<string, (chance: Chance) => Shape>;

export type ShapeName = keyof typeof shapesByName;

export const shapeNames = Object.keys(shapesByName) as readonly ShapeName[];

/** So many file systems of one shape; one that would not be full in ten years is drawn anew. */
export function drawnOf(name: ShapeName, count: number, seed = 1): readonly Drawn[] {
  const found: Drawn[] = [];
  for (let number = 0; found.length < count; number += 1) {
    const one = drawn(shapesByName[name](chanceOf(seed * 1_000_003 + number * 7919)));
    if (one !== undefined) found.push(one);
  }
  return found;
}

export interface Coverage {
  /** The share of the intervals, 5 to 95 of 100, that hold the true day. */
  readonly held: number;
  /** The share of the true days that come before the interval, and after it. */
  readonly earlier: number;
  readonly later: number;
  /** The share of the middle forecasts that are more than twice too late. */
  readonly twiceTooLate: number;
  /** The median of the middle forecasts, as parts of the true days. */
  readonly middle: number;
}

/** How a forecast fares on so many file systems of a shape. */
export function coverageOf(
  forecast: (readings: readonly UseAt[], capacity: Bytes) => Forecast,
  name: ShapeName,
  count: number,
  seed = 1,
): Coverage {
  const never = Number.POSITIVE_INFINITY;
  let [held, earlier, later, twice] = [0, 0, 0, 0];
  const middles: number[] = [];
  for (const { readings, capacity, trueDay } of drawnOf(name, count, seed)) {
    const result = forecast(readings, capacity);
    const [first, middle, last] =
      result.kind === 'full'
        ? [0, 0, 0]
        : result.kind === 'too few'
          ? [never, never, never]
          : [
              result.interval.earliest ?? never,
              result.kind === 'fills' ? result.daysUntilFull : never,
              result.interval.latest ?? never,
            ];
    if (trueDay < first) earlier += 1;
    else if (trueDay > last) later += 1;
    else held += 1;
    if (middle > 2 * trueDay) twice += 1;
    middles.push(middle / trueDay);
  }
  return {
    held: held / count,
    earlier: earlier / count,
    later: later / count,
    twiceTooLate: twice / count,
    middle: middles.sort((a, b) => a - b)[Math.floor(count / 2)] ?? Number.NaN,
  };
}
