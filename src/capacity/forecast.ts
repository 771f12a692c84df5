/**
 * When a file system will be full, if it goes on as it went.
 *
 * The slope is Theil and Sen's: the median of the slopes between all pairs of readings, which up to 29 % of wild
 * readings cannot carry away. Its interval is Sen's, from the ranks of Kendall's S (P. K. Sen, Estimates of the
 * regression coefficient based on Kendall's tau, Journal of the American Statistical Association 63 (1968),
 * 1379-1389). After a clean-up the use is lower but grows as before; so pairs with a clean-up between them are left
 * out and the variances of S on either side added, as R. M. Hirsch, J. R. Slack and R. A. Smith do for seasons
 * (Techniques of trend analysis for monthly water quality data, Water Resources Research 18 (1982), 107-121).
 * The least-squares slope stands beside it, so that a reader sees where the two part.
 *
 * The interval takes the readings to be independent. Use from day to day is not quite, so it is a little narrow. It
 * is an interval of the growth; the level of use is taken as known.
 *
 * Bytes become floating-point numbers here, for statistics only. They are exact up to 2^53 bytes, 8 PiB; above that
 * they are off by less than one part in 10^15.
 */
import { linearRegression, medianSorted, probit } from 'simple-statistics';
import type { Bytes } from '../estate/size.ts';

/** What the forecast wants of a reading. */
export interface UseAt {
  /** When, RFC 3339 in UTC with whole seconds. */
  readonly at: string;
  readonly used: Bytes;
}

export interface ForecastOptions {
  /** How sure the interval is, between 0 and 1. */
  readonly confidence: number;
  /** The fewest days with a reading. */
  readonly fewestDays: number;
  /** The shortest time from the first reading to the last, in days. */
  readonly shortestSpan: number;
  /** Only so many of the latest days with a reading count: what was last year's growth is not this month's. */
  readonly latestDays: number;
}

/** Common practice, with no source: a week at least, so that every day of the week is seen; a quarter at most. */
export const usualForecast: ForecastOptions = {
  confidence: 0.9,
  fewestDays: 5,
  shortestSpan: 7,
  latestDays: 90,
};

/** How the use goes, whether up or down. */
export interface Trend {
  /** Bytes a day, by Theil and Sen. */
  readonly slopePerDay: number;
  /** The interval of that slope, bytes a day. */
  readonly slopeInterval: { readonly low: number; readonly high: number };
  /** Bytes a day by ordinary least squares over the same readings, for comparison. */
  readonly leastSquaresPerDay: number;
  /** Days with a reading that the slope rests on. */
  readonly readings: number;
  /** Days from the first of them to the last. */
  readonly spanDays: number;
  /** Falls taken for clean-ups. With three or more they are part of how the file system is used, and not taken out. */
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
  /** `earliest` is when it would be full at the upper end of the interval; null where that does not grow either. */
  | (Trend & {
      readonly kind: 'steady or shrinking';
      readonly interval: { readonly earliest: number | null; readonly latest: null };
    })
  /** Days from the last reading. `latest` is null where, at the lower end of the interval, it never fills. */
  | (Trend & {
      readonly kind: 'fills';
      readonly daysUntilFull: number;
      readonly interval: { readonly earliest: number; readonly latest: number | null };
    });

/** Days and bytes. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

const millisecondsADay = 86_400_000;
/** From this many clean-ups on they are a habit, such as a weekly rotation. */
const habit = 3;
/** A fall this many robust standard deviations of the daily change is no noise. Common practice, with no source. */
const deviationsOfACleanUp = 5;
/** Nor is a fall shorter than this many days of usual growth worth a cut. Common practice, with no source. */
const daysOfGrowthInACleanUp = 3;
/** The median absolute deviation times this is the standard deviation of normal noise. */
const normalScale = 1.4826;

/**
 * Forecasts from the last reading of each day when the use reaches the capacity.
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
  const daily = lastOfEachDay(readings).slice(-latestDays);
  const [first, last] = [daily.at(0), daily.at(-1)];
  if (last !== undefined && last.used >= capacity) return { kind: 'full', from: last.at };
  const spanDays = first === undefined || last === undefined ? 0 : daysFrom(first.at, last.at);
  if (first === undefined || last === undefined || daily.length < fewestDays || spanDays < shortestSpan) {
    return {
      kind: 'too few',
      have: { readings: daily.length, spanDays },
      want: { readings: fewestDays, spanDays: shortestSpan },
      why:
        daily.length < fewestDays
          ? `a trend wants readings on ${fewestDays} days or more; there are ${daily.length}`
          : `a trend wants readings over ${shortestSpan} days or more; these span ${spanDays.toFixed(1)}`,
    };
  }

  const points = daily.map(({ at, used }): Point => ({ x: daysFrom(first.at, at), y: Number(used) }));
  const stretches = betweenCleanUps(points);
  const cleanUps = stretches.length - 1;
  // A habit of cleaning up is part of the trend: what counts is what is left after each time.
  const kept = cleanUps >= habit ? [points] : stretches;
  const { slope, low, high } = robustSlope(kept, confidence);
  const left = Number(capacity) - levelAtEnd(kept.at(-1) ?? points, slope);
  // A clean-up or a wild reading may leave the level above the capacity though the last reading is below it.
  const daysAt = (growth: number): number => Math.max(0, left) / growth;
  const trend: Trend = {
    slopePerDay: slope,
    slopeInterval: { low, high },
    leastSquaresPerDay: leastSquares(points).slope,
    readings: points.length,
    spanDays,
    cleanUps,
    confidence,
    from: last.at,
  };
  return slope > 0
    ? {
        ...trend,
        kind: 'fills',
        daysUntilFull: daysAt(slope),
        interval: { earliest: daysAt(high), latest: low > 0 ? daysAt(low) : null },
      }
    : {
        ...trend,
        kind: 'steady or shrinking',
        interval: { earliest: high > 0 ? daysAt(high) : null, latest: null },
      };
}

const daysFrom = (from: string, to: string): number => (Date.parse(to) - Date.parse(from)) / millisecondsADay;

/** The last reading of each day in UTC, in the order of time: enough for a trend, and the same whatever came between. */
function lastOfEachDay(readings: readonly UseAt[]): readonly UseAt[] {
  const byDay = new Map<string, UseAt>();
  for (const reading of readings) {
    const day = reading.at.slice(0, 10);
    const held = byDay.get(day);
    if (held === undefined || reading.at >= held.at) byDay.set(day, reading);
  }
  return [...byDay.values()].sort((a, b) => (a.at < b.at ? -1 : 1));
}

/**
 * Cuts the readings where somebody cleaned up: where the two readings before agree that the use was higher than the
 * two after say. One wild reading, however high or low, never has a second that agrees with it.
 */
function betweenCleanUps(points: readonly Point[]): readonly (readonly Point[])[] {
  const changes = points.slice(1).map((point, index) => point.y - (points[index]?.y ?? point.y));
  const usual = median(changes);
  const noise = normalScale * median(changes.map((change) => Math.abs(change - usual)));
  const least = Math.max(deviationsOfACleanUp * noise, daysOfGrowthInACleanUp * Math.abs(usual));
  const stretches: Point[][] = [];
  let stretch: Point[] = [];
  for (const [index, point] of points.entries()) {
    const [before2, before, after] = [points[index - 2], points[index - 1], points[index + 1]];
    if (before2 !== undefined && before !== undefined && after !== undefined && stretch.length >= 2) {
      if (Math.min(before2.y, before.y) - Math.max(point.y, after.y) > least) {
        stretches.push(stretch);
        stretch = [];
      }
    }
    stretch.push(point);
  }
  return [...stretches, stretch];
}

/**
 * Theil and Sen's slope and its interval, over pairs that lie in one stretch. The interval is not narrowed for equal
 * values of y, which errs towards a wider one.
 */
export function robustSlope(
  stretches: readonly (readonly Point[])[],
  confidence: number,
): { readonly slope: number; readonly low: number; readonly high: number } {
  const slopes: number[] = [];
  let variance = 0;
  for (const points of stretches) {
    for (const [index, from] of points.entries()) {
      for (const to of points.slice(index + 1))
        if (to.x !== from.x) slopes.push((to.y - from.y) / (to.x - from.x));
    }
    // The variance of Kendall's S for n readings without ties.
    variance += (points.length * (points.length - 1) * (2 * points.length + 5)) / 18;
  }
  const sorted = Float64Array.from(slopes).sort();
  const reach = probit((1 + confidence) / 2) * Math.sqrt(variance);
  const rank = (which: number): number =>
    sorted[Math.min(sorted.length - 1, Math.max(0, which))] ?? Number.NaN;
  return {
    slope: medianSorted([...sorted]),
    low: rank(Math.round((sorted.length - reach) / 2) - 1),
    high: rank(Math.round((sorted.length + reach) / 2)),
  };
}

/** Where the use stands at the last reading of the stretch, going by all of it: one wild last reading does not count. */
function levelAtEnd(points: readonly Point[], slope: number): number {
  const end = points.at(-1)?.x ?? 0;
  return median(points.map(({ x, y }) => y + slope * (end - x)));
}

const median = (values: readonly number[]): number =>
  values.length === 0 ? 0 : medianSorted([...Float64Array.from(values).sort()]);

/** Ordinary least squares: `y = intercept + slope x`, and the standard deviation of the residuals (n - 2 degrees). */
export function leastSquares(points: readonly Point[]): {
  readonly slope: number;
  readonly intercept: number;
  readonly residualDeviation: number;
} {
  const { m: slope, b: intercept } = linearRegression(points.map(({ x, y }) => [x, y]));
  const squares = points.reduce((total, { x, y }) => total + (y - intercept - slope * x) ** 2, 0);
  return { slope, intercept, residualDeviation: Math.sqrt(squares / (points.length - 2)) };
}
