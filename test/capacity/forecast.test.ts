import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { TheilSenRegression } from 'ml-regression-theil-sen';
import { describe, expect, it } from 'vitest';
import {
  type Forecast,
  forecast,
  leastSquares,
  robustSlope,
  type UseAt,
} from '../../src/capacity/forecast.ts';
import { bytes } from '../../src/estate/size.ts';

const GiB = 2 ** 30;
const day = 86_400_000;
const start = Date.parse('2026-01-05T06:00:00Z');
const timeAt = (days: number): string => `${new Date(start + days * day).toISOString().slice(0, 19)}Z`;
const gib = (count: number) => bytes(BigInt(Math.round(count * GiB)));

/** One reading a day, of so many GiB. */
const daily = (uses: readonly number[]): UseAt[] =>
  uses.map((use, index) => ({ at: timeAt(index), used: gib(use) }));
const line = (days: number, from: number, slope: number): number[] =>
  Array.from({ length: days }, (_, index) => from + slope * index);

function filling(result: Forecast): Extract<Forecast, { kind: 'fills' }> {
  if (result.kind !== 'fills') throw new Error(`it is ${result.kind}`);
  return result;
}

/** Numbers between 0 and 1 that look like chance and are the same every time. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
const draw = chance(7);
const drawn = Array.from({ length: 400 }, () => draw() - 0.5);
const noise = (index: number): number => drawn[index % drawn.length] ?? 0;

describe('the statistics, held against outside values', () => {
  it('least squares gives the certified values of NIST StRD Norris', () => {
    // Source: see the file. Of the StRD linear sets it alone is a straight line with an intercept.
    const { x, y, certified } = JSON.parse(
      readFileSync(new URL('fixtures/nist-norris.json', import.meta.url), 'utf8'),
    ) as { x: number[]; y: number[]; certified: Record<'intercept' | 'slope' | 'residualDeviation', number> };
    expect([x.length, y.length]).toEqual([36, 36]);
    const fit = leastSquares(x.map((each, index) => ({ x: each, y: y[index] ?? Number.NaN })));
    for (const name of ['intercept', 'slope', 'residualDeviation'] as const) {
      expect(Math.abs(fit[name] / certified[name] - 1), name).toBeLessThan(1e-9);
    }
  });

  it("the robust slope and its interval are those of Sen's own example", () => {
    // Sen (1968), the example, as the test suites of SciPy (stats.theilslopes, alpha 0.07: 4, 3.71 to 4.38) and of the
    // R package deming (thielsen, conf 0.93: 4, 26/7 to 35/8) carry it.
    const x = [1, 2, 3, 4, 10, 12, 18];
    const y = [9, 15, 19, 20, 45, 55, 78];
    const { slope, low, high } = robustSlope(
      [x.map((each, index) => ({ x: each, y: y[index] ?? Number.NaN }))],
      0.93,
    );
    expect(slope).toBeCloseTo(4, 12);
    expect(low).toBeCloseTo(26 / 7, 12);
    expect(high).toBeCloseTo(35 / 8, 12);
  });

  it('the robust slope is that of an independent library', () => {
    const points = fc.uniqueArray(
      fc.record({ x: fc.integer({ min: 0, max: 1000 }), y: fc.integer({ min: 0, max: 10 ** 9 }) }),
      {
        minLength: 2,
        maxLength: 40,
        selector: ({ x }) => x,
      },
    );
    fc.assert(
      fc.property(points, (some) => {
        // Where the number of pairs is even, theirs takes the lower of the middle slopes; Sen takes their mean.
        fc.pre(((some.length * (some.length - 1)) / 2) % 2 === 1);
        const theirs = new TheilSenRegression(
          some.map(({ x }) => x),
          some.map(({ y }) => y),
        ).slope;
        expect(robustSlope([some], 0.9).slope).toBeCloseTo(theirs, 6);
      }),
    );
  });

  it('the interval holds the true slope about as often as it says', () => {
    // 90 % stated; 400 series of 30 days with uniform noise, the same every time. By the binomial distribution fewer
    // than 84 % or more than 96 % would come by chance less than once in a thousand times.
    const random = chance(12345);
    let holds = 0;
    for (let series = 0; series < 400; series += 1) {
      const points = Array.from({ length: 30 }, (_, x) => ({ x, y: 3 * x + 10 * random() }));
      const { low, high } = robustSlope([points], 0.9);
      if (low <= 3 && 3 <= high) holds += 1;
    }
    expect(holds / 400).toBeGreaterThan(0.84);
    expect(holds / 400).toBeLessThan(0.96);
  });
});

describe('when a file system will be full', () => {
  it('a steady growth of 1 GiB a day fills 100 GiB from 50 in 50 days', () => {
    const result = filling(forecast(daily(line(31, 20, 1)), gib(100)));
    expect(result.slopePerDay / GiB).toBeCloseTo(1, 9);
    expect(result.leastSquaresPerDay / GiB).toBeCloseTo(1, 9);
    expect(result.daysUntilFull).toBeCloseTo(50, 6);
    expect(result.interval.earliest).toBeCloseTo(50, 6);
    expect(result.interval.latest).toBeCloseTo(50, 6);
    expect([result.readings, result.spanDays, result.from]).toEqual([31, 30, timeAt(30)]);
  });

  it('noise widens the interval, which holds the answer', () => {
    const result = filling(
      forecast(daily(line(60, 20, 0.2).map((use, index) => use + 4 * noise(index))), gib(100)),
    );
    expect(result.interval.earliest).toBeLessThan(result.daysUntilFull);
    expect(result.interval.latest).toBeGreaterThan(result.daysUntilFull);
    expect(result.slopeInterval.low).toBeLessThan(0.2 * GiB);
    expect(result.slopeInterval.high).toBeGreaterThan(0.2 * GiB);
  });

  it('growth too faint to tell from noise may never fill it', () => {
    const result = forecast(
      daily(line(20, 20, 0.001).map((use, index) => use + 4 * noise(index * 13))),
      gib(100),
    );
    expect(result).toMatchObject({ interval: { latest: null } });
  });

  it('a file system that shrinks or stands still is not said to fill', () => {
    expect(forecast(daily(line(30, 60, -1)), gib(100))).toMatchObject({
      kind: 'steady or shrinking',
      interval: { earliest: null, latest: null },
    });
    expect(forecast(daily(line(30, 60, 0)), gib(100))).toMatchObject({
      kind: 'steady or shrinking',
      slopePerDay: 0,
    });
  });

  it('a file system that is full is full, however few the readings', () => {
    expect(forecast(daily([100]), gib(100))).toEqual({ kind: 'full', from: timeAt(0) });
    expect(forecast(daily(line(30, 71, 1)), gib(100)).kind).toBe('full');
  });

  it('too few readings are said to be too few, and how many it wants', () => {
    expect(forecast([], gib(100))).toMatchObject({ kind: 'too few', have: { readings: 0, spanDays: 0 } });
    expect(forecast(daily([1, 2, 3, 4]), gib(100))).toMatchObject({
      kind: 'too few',
      have: { readings: 4, spanDays: 3 },
      want: { readings: 5, spanDays: 7 },
      why: 'a trend wants readings on 5 days or more; there are 4',
    });
    expect(forecast(daily([1, 2, 3, 4, 5, 6, 7]), gib(100))).toMatchObject({
      kind: 'too few',
      have: { readings: 7 },
    });
    expect(forecast(daily([1, 2, 3, 4, 5, 6, 7, 8]), gib(100)).kind).toBe('fills');
    // A hundred readings of one afternoon are no trend.
    const afternoon = Array.from({ length: 100 }, (_, index) => ({
      at: timeAt(index / 1000),
      used: gib(index),
    }));
    expect(forecast(afternoon, gib(1000))).toMatchObject({ kind: 'too few', have: { readings: 1 } });
  });

  it('only the last reading of a day counts, and the order of the readings does not', () => {
    const calm = daily(line(20, 10, 1));
    const busy = calm.flatMap((reading, index) => [reading, { at: timeAt(index - 0.1), used: gib(90) }]);
    expect(forecast([...busy].reverse(), gib(100))).toEqual(forecast(calm, gib(100)));
  });

  it('last year’s growth does not count once there is a quarter of later readings', () => {
    const result = filling(forecast(daily([...line(300, 0, 0.1), ...line(90, 30, 0.5)]), gib(100)));
    expect(result.slopePerDay / GiB).toBeCloseTo(0.5, 9);
    expect(result.readings).toBe(90);
  });

  it('sizes past 8 PiB are still told within a millionth', () => {
    const huge = 2 ** 24;
    const result = filling(forecast(daily(line(30, huge, 1024)), gib(2 * huge)));
    expect(result.slopePerDay / GiB / 1024).toBeCloseTo(1, 6);
  });
});

const growth = fc.record({
  days: fc.integer({ min: 14, max: 90 }),
  from: fc.integer({ min: 20, max: 100 }),
  slope: fc.integer({ min: 1, max: 50 }).map((tenth) => tenth / 10),
  noisy: fc.boolean(),
});
const usesOf = ({
  days,
  from,
  slope,
  noisy,
}: {
  days: number;
  from: number;
  slope: number;
  noisy: boolean;
}): number[] => line(days, from, slope).map((use, index) => use + (noisy ? noise(index) * slope : 0));

describe('what must not fool it', () => {
  it('one reading ten times too high, or one of nothing, on whatever day', () => {
    fc.assert(
      fc.property(growth, fc.nat(89), fc.constantFrom(10, 0), (how, which, times) => {
        const uses = usesOf(how);
        const wild = which % how.days;
        // So little room that the level counts, and so much that ten times the use is below it.
        const capacity = gib(12 * Math.max(...uses));
        const honest = filling(forecast(daily(uses), capacity));
        const spoilt = uses.map((use, index) => (index === wild ? use * times : use));
        const result = filling(forecast(daily(spoilt), capacity));
        expect(Math.abs(result.slopePerDay / honest.slopePerDay - 1)).toBeLessThan(0.1);
        expect(Math.abs(result.daysUntilFull / honest.daysUntilFull - 1)).toBeLessThan(0.12);
      }),
      { numRuns: 500 },
    );
  });

  it('where the wild reading comes late, least squares is fooled and stands beside it', () => {
    const uses = line(30, 20, 1);
    uses[28] = 480;
    const result = filling(forecast(daily(uses), gib(1000)));
    expect(result.slopePerDay / GiB).toBeCloseTo(1, 1);
    expect(result.leastSquaresPerDay / GiB).toBeGreaterThan(3);
  });

  it('one clean-up, on whatever day: the growth goes on, from where the use is now', () => {
    fc.assert(
      fc.property(growth, fc.nat(89), fc.integer({ min: 8, max: 18 }), (how, which, depth) => {
        const uses = usesOf(how);
        // Two readings on either side make it a clean-up; a single one may as well be a wild reading.
        const on = 2 + (which % (how.days - 3));
        const fall = depth * how.slope;
        const cleaned = uses.map((use, index) => (index >= on ? Math.max(0, use - fall) : use));
        fc.pre(cleaned.every((use) => use > 0));
        const result = filling(forecast(daily(cleaned), gib(1000)));
        expect(result.cleanUps).toBe(1);
        expect(Math.abs(result.slopePerDay / GiB / how.slope - 1)).toBeLessThan(0.1);
        const days = (1000 - (how.from + how.slope * (how.days - 1) - fall)) / how.slope;
        expect(Math.abs(result.daysUntilFull / days - 1)).toBeLessThan(0.1);
      }),
      { numRuns: 500 },
    );
  });

  it('one clean-up, where least squares says that it shrinks', () => {
    const uses = [...line(20, 60, 1), ...line(20, 30, 1)];
    const result = filling(forecast(daily(uses), gib(100)));
    expect(result.slopePerDay / GiB).toBeCloseTo(1, 9);
    expect(result.leastSquaresPerDay).toBeLessThan(0);
    expect(result.daysUntilFull).toBeCloseTo(51, 6);
  });

  it('a weekly rotation is no clean-up: what is left after each time is the growth', () => {
    const uses = Array.from({ length: 84 }, (_, index) => 20 + Math.floor(index / 7) * 0.7 + (index % 7) * 3);
    const result = filling(forecast(daily(uses), gib(100)));
    expect(result.cleanUps).toBeGreaterThanOrEqual(3);
    expect(result.slopePerDay / GiB).toBeGreaterThan(0.05);
    expect(result.slopePerDay / GiB).toBeLessThan(0.2);
  });

  it('the estimate always lies in its interval', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 999 }), { minLength: 8, maxLength: 60 }), (uses) => {
        const result = forecast(daily(uses), gib(1000));
        if (result.kind !== 'fills' && result.kind !== 'steady or shrinking') throw new Error(result.kind);
        expect(result.slopeInterval.low).toBeLessThanOrEqual(result.slopePerDay);
        expect(result.slopeInterval.high).toBeGreaterThanOrEqual(result.slopePerDay);
        if (result.kind === 'fills') {
          expect(result.interval.earliest).toBeLessThanOrEqual(result.daysUntilFull);
          expect(result.interval.latest ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(
            result.daysUntilFull,
          );
        }
      }),
    );
  });
});
