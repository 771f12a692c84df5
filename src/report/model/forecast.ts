/** A forecast in words, and as facts for JSON. */

import { counted } from '../../base/wording.ts';
import type { Forecast } from '../../capacity/forecast.ts';
import { addDays } from '../../estate/dates.ts';
import { showMeasure } from './amounts.ts';

/** Beyond so many days a date would claim more than a slope can know. */
const farOff = 3650;

/** Such as `on 2027-01-04, 40 days after the last reading (range 25 to 90): 1 GiB a day, 1.1 GiB a day by least squares`. */
export function showForecast(forecast: Forecast): string {
  switch (forecast.kind) {
    case 'full':
      return `full since ${forecast.from.slice(0, 10)}`;
    case 'too few':
      return `not enough readings: ${forecast.why}`;
    case 'steady or shrinking':
      return `not at the present rate: ${rates(forecast)}`;
    case 'fills': {
      const { daysUntilFull, interval, from } = forecast;
      if (daysUntilFull > farOff) return `not within ten years: ${rates(forecast)}`;
      const days = Math.max(0, Math.floor(daysUntilFull));
      const earliest = Math.max(0, Math.floor(interval.earliest));
      const latest = interval.latest === null ? 'never' : String(Math.floor(interval.latest));
      return `on ${addDays(from.slice(0, 10), days)}, ${counted(days, 'day')} after the last reading (range ${earliest} to ${latest}): ${rates(forecast)}`;
    }
  }
}

const perDay = (slope: number): string =>
  `${slope < 0 ? '-' : ''}${showMeasure('bytes', BigInt(Math.round(Math.abs(slope))))}`;

const rates = ({
  slopePerDay,
  leastSquaresPerDay,
}: {
  slopePerDay: number;
  leastSquaresPerDay: number;
}): string => `${perDay(slopePerDay)} a day, ${perDay(leastSquaresPerDay)} a day by least squares`;

export const forecastFacts = (forecast: Forecast) => {
  switch (forecast.kind) {
    case 'full':
    case 'too few':
      return forecast;
    case 'steady or shrinking':
    case 'fills':
      return {
        ...forecast,
        slopePerDay: Math.round(forecast.slopePerDay),
        leastSquaresPerDay: Math.round(forecast.leastSquaresPerDay),
        slopeInterval: {
          low: Math.round(forecast.slopeInterval.low),
          high: Math.round(forecast.slopeInterval.high),
        },
      };
  }
};
