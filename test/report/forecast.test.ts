import { describe, expect, it } from 'vitest';
import type { Forecast } from '../../src/capacity/forecast.ts';
import { forecastFacts, showForecast } from '../../src/report/model/forecast.ts';

const GiB = 2 ** 30;
const outlook = {
  pacePerDay: GiB,
  readings: 60,
  spanDays: 59,
  cleanUps: 0,
  confidence: 0.9,
  from: '2026-11-20T06:00:00Z',
};
const slopes = () => ({ robust: GiB / 2, interval: { low: 0.4, high: 0.6 }, leastSquares: -1024.3 });
const rates = '1 GiB a day now; over all readings 512 MiB a day, -1 KiB by least squares';
const fills = (earliest: number, daysUntilFull: number, latest: number | null): Forecast => ({
  ...outlook,
  kind: 'fills',
  daysUntilFull,
  interval: { earliest, latest },
});
const steady = (earliest: number | null): Forecast => ({
  ...outlook,
  kind: 'steady or shrinking',
  interval: { earliest, latest: null },
});

describe('a forecast in words', () => {
  it.each([
    [fills(25.7, 40.2, 90.2), 'on 2026-12-30, 40 days after the last reading (range 25 to 91)'],
    [fills(39.97, 39.98, 40.03), 'on 2026-12-30, 40 days after the last reading (range 40 to 40)'],
    [fills(25, 40, null), 'on 2026-12-30, 40 days after the last reading (range 25 to never)'],
    [fills(25, 40, 4000), 'on 2026-12-30, 40 days after the last reading (range 25 to more than ten years)'],
    [fills(300, 4000, null), 'not within ten years, though at the earliest 300 days after the last reading'],
    [fills(4000, 5000, null), 'not within ten years'],
    [steady(null), 'not at the present rate'],
    [steady(34.9), 'not at the present rate, though at the earliest 34 days after the last reading'],
  ])('%j', (forecast, words) => {
    expect(showForecast(forecast, slopes)).toBe(`${words}: ${rates}`);
  });

  it('gives JSON days to a tenth and bytes whole', () => {
    expect(forecastFacts(fills(25.71, 40.24, null), slopes)).toMatchObject({
      daysUntilFull: 40.2,
      interval: { earliest: 25.7, latest: null },
      slopePerDay: GiB / 2,
      leastSquaresPerDay: -1024,
    });
  });
});
