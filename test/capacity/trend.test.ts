import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { TheilSenRegression } from 'ml-regression-theil-sen';
import { describe, expect, it } from 'vitest';
import { leastSquares, robustSlope, slopesOf } from '../../src/capacity/trend.ts';
import { bytes } from '../../src/estate/size.ts';
import { chanceOf } from './shapes.ts';

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
    const { between } = chanceOf(12345);
    let holds = 0;
    for (let series = 0; series < 400; series += 1) {
      const points = Array.from({ length: 30 }, (_, x) => ({ x, y: 3 * x + between(0, 10) }));
      const { low, high } = robustSlope([points], 0.9);
      if (low <= 3 && 3 <= high) holds += 1;
    }
    expect(holds / 400).toBeGreaterThan(0.84);
    expect(holds / 400).toBeLessThan(0.96);
  });

  it('are those of the highest reading of each day, whatever came between, and cut at a clean-up', () => {
    const at = (hours: number) => `${new Date(Date.UTC(2026, 0, 5, hours)).toISOString().slice(0, 19)}Z`;
    const readings = Array.from({ length: 40 }, (_, day) => [
      { at: at(day * 24 + 6), used: bytes(BigInt(1000 + 10 * day - (day >= 20 ? 300 : 0))) },
      { at: at(day * 24 + 2), used: bytes(1n) },
    ]).flat();
    const slopes = slopesOf(readings);
    expect(slopes.robust).toBeCloseTo(10, 9);
    expect(slopes.leastSquares).toBeLessThan(0);
    expect(slopesOf([...readings].reverse())).toEqual(slopes);
  });
});
