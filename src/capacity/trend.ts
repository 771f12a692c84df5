/**
 * The slope of all readings together, two ways, to stand beside a forecast.
 *
 * The robust slope is Theil and Sen's: the median of the slopes between all pairs of readings, which up to 29 % of wild
 * readings cannot carry away. Its interval is Sen's, from the ranks of Kendall's S (P. K. Sen, Estimates of the
 * regression coefficient based on Kendall's tau, Journal of the American Statistical Association 63 (1968),
 * 1379-1389), which takes the readings to be independent. After a clean-up the use is lower but grows as before; so
 * pairs with a clean-up between them are left out and the variances of S on either side added, as R. M. Hirsch,
 * J. R. Slack and R. A. Smith do for seasons (Techniques of trend analysis for monthly water quality data, Water
 * Resources Research 18 (1982), 107-121).
 */
import { linearRegression, medianSorted, probit } from 'simple-statistics';
import { byDay, habit, stepsOf, type UseAt } from './daily-use.ts';
import { usualForecast } from './forecast-options.ts';

/** Bytes a day. */
export interface Slopes {
  /** By Theil and Sen. */
  readonly robust: number;
  /** The interval of that slope. */
  readonly interval: { readonly low: number; readonly high: number };
  /** By ordinary least squares over the same readings. */
  readonly leastSquares: number;
}

/** The slope of the highest readings of the days that a forecast rests on; it takes two days or more. */
export function slopesOf(
  readings: readonly UseAt[],
  { confidence = usualForecast.confidence, latestDays = usualForecast.latestDays } = {},
): Slopes {
  const points = byDay(readings)
    .slice(0, latestDays)
    .reverse()
    .map(({ ago, use }): Point => ({ x: -ago, y: use }));
  const { falls } = stepsOf(points.map(({ y }) => y));
  // A habit of cleaning up is part of the slope: what counts is what is left after each time.
  const cuts = falls.length < habit ? falls.map(({ day }) => day) : [];
  const stretches = [0, ...cuts].map((from, index) => points.slice(from, cuts[index]));
  const { slope, low, high } = robustSlope(stretches, confidence);
  return { robust: slope, interval: { low, high }, leastSquares: leastSquares(points).slope };
}

/** Days and bytes. */
export interface Point {
  readonly x: number;
  readonly y: number;
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
