/** A forecast in words, and as facts for JSON. */

import type { EstateChanges } from '../../audit/estate-changes.ts';
import { counted } from '../../base/wording.ts';
import { declaredSizes } from '../../capacity/declared-sizes.ts';
import { type Forecast, wholeDays } from '../../capacity/forecast.ts';
import { futures } from '../../capacity/futures.ts';
import { fillableBytes } from '../../capacity/readings.ts';
import type { Slopes } from '../../capacity/trend.ts';
import type { Usage } from '../../capacity/usage.ts';
import { addDays } from '../../estate/dates.ts';
import type { Estate, FileSystem } from '../../estate/estate.ts';
import { showMeasure } from './amounts.ts';
import type { Block } from './model.ts';

/** Beyond so many days a date would claim more than a pace can know. */
const farOff = 3650;

/** What stands below a table of forecasts. */
export const howForecast = `A forecast draws ${futures} futures from the readings: half of them are full by the day given, and 9 in 10 become full within the range. The slope of all readings together is given beside it, as the median of the slopes between all pairs of days (Theil and Sen) and by least squares.`;

/** Such as `on 2027-01-04, 40 days after the last reading (range 25 to 90): 1 GiB a day now; ...`. */
export function showForecast(forecast: Forecast, slopes: () => Slopes): string {
  switch (forecast.kind) {
    case 'full':
      return `full since ${forecast.from.slice(0, 10)}`;
    case 'too few':
      return `not enough readings: ${forecast.why}`;
    case 'steady or shrinking': {
      const { earliest } = forecast.interval;
      const may =
        earliest === null || earliest > farOff
          ? ''
          : `, though at the earliest ${counted(wholeDays(earliest), 'day')} after the last reading`;
      return `not at the present rate${may}: ${rates(forecast.pacePerDay, slopes())}`;
    }
    case 'fills': {
      const { daysUntilFull, interval, from } = forecast;
      const days = wholeDays(daysUntilFull);
      const first = wholeDays(interval.earliest);
      if (first > farOff) return `not within ten years: ${rates(forecast.pacePerDay, slopes())}`;
      const { latest } = interval;
      const last = latest === null ? 'never' : latest > farOff ? 'more than ten years' : lastDay(latest);
      return days > farOff
        ? `not within ten years, though at the earliest ${counted(first, 'day')} after the last reading: ${rates(forecast.pacePerDay, slopes())}`
        : `on ${addDays(from.slice(0, 10), days)}, ${counted(days, 'day')} after the last reading (range ${first} to ${last}): ${rates(forecast.pacePerDay, slopes())}`;
    }
  }
}

/** The readings and what is forecast of them, to be drawn, with the changes that were declared meanwhile. */
export function forecastPicture(
  { system, estate }: { readonly system: FileSystem; readonly estate: Estate },
  { forecastFor, summary, last }: Usage,
  history: EstateChanges | undefined,
): Block {
  const capacity = fillableBytes(last);
  const forecast = forecastFor(capacity);
  const { highest } = summary;
  const readings = highest.at(-1)?.at === last.at ? highest : [...highest, last];
  const resized = readings.flatMap(({ at, size }, index) => {
    const before = readings[index - 1];
    return before === undefined || before.size === size ? [] : [at];
  });
  const days = (
    interval: { readonly earliest: number; readonly latest: number | null },
    middle?: number,
  ) => ({
    earliest: wholeDays(interval.earliest),
    middle: middle === undefined ? undefined : wholeDays(middle),
    latest: interval.latest === null ? undefined : lastDay(interval.latest),
  });
  const { kind } = forecast;
  const { earliest = null } = kind === 'steady or shrinking' ? forecast.interval : {};
  const outlook =
    kind === 'fills'
      ? days(forecast.interval, forecast.daysUntilFull)
      : earliest === null
        ? undefined
        : days({ earliest, latest: null });
  const first = readings[0]?.at.slice(0, 10) ?? '';
  const declared = history === undefined ? undefined : declaredSizes(system, estate, history.changes);
  return {
    kind: 'picture',
    picture: {
      ...{ kind: 'forecast', name: system.name, capacity, readings, resized, outlook },
      declared: declared?.filter(({ on }) => on >= first),
      declaredSince: history?.cutShort,
    },
  };
}

/** The latest day is rounded up, as the earliest is rounded down. */
const lastDay = (days: number): number => Math.ceil(days - 0.05);

/** To a whole KiB: no rate is known better. */
const perDay = (slope: number): string =>
  `${slope < 0 ? '-' : ''}${showMeasure('bytes', BigInt(Math.round(Math.abs(slope) / 1024)) * 1024n)}`;

const rates = (pace: number, { robust, leastSquares }: Slopes): string =>
  `${perDay(pace)} a day now; over all readings ${perDay(robust)} a day, ${perDay(leastSquares)} by least squares`;

/** Days to a tenth, bytes whole. */
export function forecastFacts(forecast: Forecast, slopes: () => Slopes) {
  switch (forecast.kind) {
    case 'full':
    case 'too few':
      return forecast;
    case 'steady or shrinking':
    case 'fills': {
      const { earliest, latest } = forecast.interval;
      const { robust, interval, leastSquares } = slopes();
      return {
        ...forecast,
        ...(forecast.kind === 'fills' ? { daysUntilFull: tenths(forecast.daysUntilFull) } : {}),
        interval: {
          earliest: earliest === null ? null : tenths(earliest),
          latest: latest === null ? null : tenths(latest),
        },
        pacePerDay: Math.round(forecast.pacePerDay),
        slopePerDay: Math.round(robust),
        slopeInterval: { low: Math.round(interval.low), high: Math.round(interval.high) },
        leastSquaresPerDay: Math.round(leastSquares),
      };
    }
  }
}

const tenths = (days: number): number => Math.round(days * 10) / 10;
