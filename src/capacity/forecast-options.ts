/** What a forecast looks at. */

export interface ForecastOptions {
  /** The share of the futures that the interval holds, between 0 and 1. */
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
