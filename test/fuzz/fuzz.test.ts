/** A few of the cases that `npm run fuzz` tries many of, the same ones at every run. */
import { expect, it } from 'vitest';
import { fuzzDocuments } from './documents.ts';
import { fuzzJudgements } from './judgements.ts';

const seed = 20261120;

it('whatever is written into a file of any format is read or refused with its place', () => {
  const { accepted, faults } = fuzzDocuments(3_000, seed);
  expect(faults).toEqual([]);
  expect(accepted).toBeGreaterThan(300);
});

it('whatever an estate becomes, it is judged or not judged, and nothing live gets into a report', async () => {
  const { tried, accepted, faults } = await fuzzJudgements(300, seed);
  expect(faults).toEqual([]);
  // So that reports of judged estates are tried, too.
  expect(accepted).toBeGreaterThanOrEqual(tried / 3);
});
