/**
 * When a file system will be full, if it goes on as it went: two hundred futures are drawn from its readings, and the
 * days by which 5, 50 and 95 of a hundred of them are full are told.
 *
 * What happened once is kept apart from the pace: a wild reading, a clean-up, a load that came at once. A clean-up that
 * happened once or twice is not counted on to come again; from the third on, clean-ups are a habit, and futures are
 * drawn round by round. Where several ways to go on explain the readings, each has its share of the futures. Where
 * there is doubt the forecast errs early: `bench/forecast.ts` measures how far.
 */
import { medianSorted } from 'simple-statistics';
import type { Bytes } from '../estate/size.ts';
import { byDay, dayByDay, habit, type Step, stepsOf, type UseAt } from './daily-use.ts';
import { type ForecastOptions, usualForecast } from './forecast-options.ts';
import { type DaysUntilFull, futures, futuresOf } from './futures.ts';
import { type Fit, fitsOf } from './pace.ts';
import { type Rotation, rotationFutures, rotationOf } from './rotation.ts';
import { ceilingsUnder, weeklyWave, withoutWave } from './weekly-wave.ts';

/** What a forecast rests on. */
export interface Outlook {
  /** Bytes a day as it goes now, whether up or down; where it grows by a share, what that makes at the last level. */
  readonly pacePerDay: number;
  /** Days with a reading that it rests on. */
  readonly readings: number;
  /** Days from the first of them to the last. */
  readonly spanDays: number;
  /** Falls taken for clean-ups. */
  readonly cleanUps: number;
  readonly confidence: number;
  /** The time of the last reading, from which days are counted. */
  readonly from: string;
}

export type Forecast =
  /** The last reading says that nothing is left. This is a measurement, no forecast. */
  | { readonly kind: 'full'; readonly from: string }
  | {
      readonly kind: 'too few';
      readonly have: { readonly readings: number; readonly spanDays: number };
      readonly want: { readonly readings: number; readonly spanDays: number };
      readonly why: string;
    }
  /** Half of the futures or more never fill it. `earliest` is null where hardly any does. */
  | (Outlook & {
      readonly kind: 'steady or shrinking';
      readonly interval: { readonly earliest: number | null; readonly latest: null };
    })
  /** Days from the last reading: the middle of the futures, and between which days nine in ten of them lie. */
  | (Outlook & {
      readonly kind: 'fills';
      readonly daysUntilFull: number;
      readonly interval: { readonly earliest: number; readonly latest: number | null };
    });

/** Rounds of clean-ups are looked for so many times as far back as a pace. */
const fartherForRounds = 2;
/** A load stands out when it is so many times higher than any other change of a day. Common practice, no source. */
const timesToStandOut = 3;
/** Readings are of whole blocks, mostly of 1 KiB, and a fit that is closer than a part of a day's change is no better. */
const block = 1024;
const partOfAChange = 1e-4;
/** Days from which on it is never full: a century, in which no pace lasts. */
const never = 36_500;

/**
 * Forecasts from the highest reading of each day when the use reaches the capacity.
 *
 * @param readings in any order
 * @param capacity what can be used: for unprivileged users a reading's `used + available`, which leaves out the reserve
 */
export function forecast(
  readings: readonly UseAt[],
  capacity: Bytes,
  options: Partial<ForecastOptions> = {},
): Forecast {
  const { confidence, fewestDays, shortestSpan, latestDays } = { ...usualForecast, ...options };
  const last = readings.reduce<UseAt | undefined>(
    (latest, each) => (latest === undefined || each.at >= latest.at ? each : latest),
    undefined,
  );
  if (last !== undefined && last.used >= capacity) return { kind: 'full', from: last.at };
  const days = byDay(readings);
  const { use, readings: count, spanDays } = dayByDay(days, latestDays);
  if (last === undefined || use.length < fewestDays || count < fewestDays || spanDays < shortestSpan) {
    return {
      kind: 'too few',
      have: { readings: count, spanDays },
      want: { readings: fewestDays, spanDays: shortestSpan },
      why:
        count < fewestDays || spanDays >= shortestSpan
          ? `a trend needs readings on at least ${fewestDays} days; there are ${count}`
          : `a trend needs readings over at least ${shortestSpan} days; these span ${spanDays}`,
    };
  }

  const course = courseOf(use);
  const long = courseOf(dayByDay(days, fartherForRounds * latestDays).use);
  const rotation = long.falls.length < habit ? undefined : rotationOf(long.agreed, long.falls);
  const { untilFull, pace } = drawnFutures(course, rotation, Number(capacity));
  const at = (share: number): number => {
    const day = untilFull[Math.min(untilFull.length - 1, Math.floor(share * untilFull.length))] ?? never;
    return day < never ? day : Number.POSITIVE_INFINITY;
  };
  const middle = at(0.5);
  const earliest = finite(at((1 - confidence) / 2));
  const outlook: Outlook = {
    pacePerDay: pace,
    readings: count,
    spanDays,
    cleanUps: (rotation === undefined ? course : long).falls.length,
    confidence,
    from: last.at,
  };
  return Number.isFinite(middle) && earliest !== null
    ? {
        ...outlook,
        kind: 'fills',
        daysUntilFull: middle,
        interval: { earliest, latest: finite(at((1 + confidence) / 2)) },
      }
    : { ...outlook, kind: 'steady or shrinking', interval: { earliest, latest: null } };
}

/** A twentieth of a day is nothing: days are given in whole ones. */
export const wholeDays = (days: number): number => Math.max(0, Math.floor(days + 0.05));

/** Days of readings from which on they show how it goes. */
const enoughToShow = 28;
/** What a span of days may bring, beside the most that one brought: growth by a share, a new pace, chance. */
const mostBeside = 4;

/**
 * Whether a file system is so far from full that no forecast would have it full within so many days: what is left is
 * several times the most that so many days ever brought. Thousands are told so at little cost.
 */
export function isFarFromFull(readings: readonly UseAt[], capacity: Bytes, days: number): boolean {
  const { use } = dayByDay(byDay(readings), usualForecast.latestDays);
  if (use.length < enoughToShow) return false;
  const span = Math.min(days, Math.floor(use.length / 2));
  let most = 0;
  for (let day = 1; day < use.length; day += 1) {
    const now = use[day] ?? 0;
    for (let from = Math.max(0, day - span); from < day; from += 1)
      most = Math.max(most, now - (use[from] ?? now));
  }
  const left = Number(capacity) - Math.max(...use.slice(-span));
  return left > mostBeside * most * Math.max(1, days / span) && left > mostBeside * block * days;
}

const finite = (days: number): number | null => (Number.isFinite(days) ? days : null);

/** The use day by day, and what is kept apart from its pace. */
interface Course {
  readonly agreed: readonly number[];
  readonly falls: readonly Step[];
  readonly rises: readonly Step[];
  /** By so much the last reading is higher than what others agree on. */
  readonly unconfirmed: number;
}

function courseOf(use: readonly number[]): Course {
  const { agreed, falls, rises } = stepsOf(use);
  // Where it rises at a stroke as often as it falls, neither is a clean-up nor a load: that is how it is used.
  const upAndDown = rises.length >= habit && 2 * rises.length > falls.length;
  return {
    agreed,
    falls: upAndDown ? [] : falls,
    rises: rises.length < habit ? rises : [],
    unconfirmed: Math.max(0, (use.at(-1) ?? 0) - (agreed.at(-1) ?? 0)),
  };
}

function drawnFutures(
  { agreed, falls, rises, unconfirmed }: Course,
  rotation: Rotation | undefined,
  capacity: number,
): { readonly untilFull: DaysUntilFull; readonly pace: number } {
  if (rotation?.regular === true) {
    return { untilFull: rotationFutures(rotation, capacity), pace: rotation.pace };
  }
  const withWave = withoutSteps(agreed, [...falls, ...rises]);
  const wave = weeklyWave(withWave);
  const level = withoutWave(withWave, wave);
  const changes = level.slice(1).map((each, index) => Math.abs(each - (level[index] ?? each)));
  const usual = changes.reduce((sum, each) => sum + each, 0) / changes.length;
  const fits = fitsOf(level, Math.max(block, partOfAChange * usual), futures);
  const others = Float64Array.from(changes).sort();
  const lowestRise = rises.reduce((least, { height }) => Math.min(least, height), Number.POSITIVE_INFINITY);
  const standOut = lowestRise > timesToStandOut * (others.at(-1) ?? 0);
  const growing = futuresOf(fits, ceilingsUnder(capacity, wave), { rises, standOut }, unconfirmed);
  const untilFull =
    rotation === undefined
      ? growing
      : // Clean-ups without a rule may come again or not; more of the futures do without, to err early.
        Float64Array.from([...growing, ...growing, ...rotationFutures(rotation, capacity)]).sort();
  return { untilFull, pace: paceOf(fits, level.at(-1) ?? 0) };
}

/** The middle of the paces of all futures. */
function paceOf(fits: readonly Fit[], level: number): number {
  const paces = fits.flatMap(({ growsBy, pace, times }) =>
    Array.from({ length: times }, () => (growsBy === 'share' ? pace * level : pace)),
  );
  return medianSorted([...Float64Array.from(paces).sort()]);
}

/** The use as if it had always been at the level it has now. */
const withoutSteps = (use: readonly number[], steps: readonly Step[]): readonly number[] =>
  use.map((each, day) => steps.reduce((sum, step) => (day < step.day ? sum + step.height : sum), each));
