/**
 * Finds the smallest random branch whose simulation goes wrong in a given way, and prints it with its changes and its
 * steps: `npx tsx test/simulator/find.ts 'is mounted' [COUNT [SPARE]]`, where the first is a regular expression, and the
 * last is what servers and sites have to spare, as `many.ts` has it.
 */
import fc from 'fast-check';
import { compareEstates } from '../../src/change/compare.ts';
import { describeChange } from '../../src/change/kinds.ts';
import { assembled, type Files } from '../estate/builder.ts';
import { pairs } from './estates.ts';
import { spareOf } from './many.ts';
import { played } from './played.ts';

const [pattern = '', count = '3000', index = '2'] = process.argv.slice(2);
const spare = spareOf(Number(index));
const wrong = new RegExp(pattern);
const isWrong = (pair: readonly [Files, Files]): boolean =>
  played(pair, spare)?.faults.some((fault) => wrong.test(fault)) ?? false;

const outcome = fc.check(
  fc.property(pairs, (pair) => !isWrong(pair)),
  { seed: 20261120, numRuns: Number(count) },
);
const found = outcome.counterexample?.[0];
if (found === undefined) console.log(`None of ${count} branches.`);
else show(found);

function show([before, after]: readonly [Files, Files]): void {
  for (const files of [before, after]) {
    const file: Record<string, Record<string, unknown>> = JSON.parse(files['storage/all.yaml'] ?? '{}');
    for (const [kind, things] of Object.entries(file)) {
      for (const [name, thing] of Object.entries(things)) console.log(kind, name, JSON.stringify(thing));
    }
    console.log('');
  }
  const [base, head] = [assembled(before), assembled(after)];
  if (!base.ok || !head.ok) return;
  const comparison = compareEstates(base.value, head.value);
  for (const change of comparison.changes) console.log(describeChange(change));
  const outcome = played([before, after], spare);
  for (const { number, does, after: first } of outcome?.steps ?? [])
    console.log(`${number}. ${does.slice(0, 140)} (after ${first.join(', ')})`);
  console.log(outcome?.faults.join('\n'));
}
