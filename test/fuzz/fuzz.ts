/**
 * Tries as many random cases as are wanted: `npm run fuzz -- --count 200000 [--seed 7]`. So many documents are read, a
 * tenth of that many estates judged, and the two readers of YAML compared on as many texts. Ends with 1 where anything
 * was found; what is printed holds the text it was found with.
 */
import { parseArgs } from 'node:util';
import { differences } from '../read/differences.ts';
import { fixtures, suiteTexts } from '../read/texts.ts';
import { fuzzDocuments } from './documents.ts';
import { fuzzJudgements } from './judgements.ts';

const { values } = parseArgs({
  options: { count: { type: 'string', default: '10000' }, seed: { type: 'string', default: '20261120' } },
});
const [count, seed] = [Number(values.count), Number(values.seed)];
if (!Number.isSafeInteger(count) || count < 1 || !Number.isSafeInteger(seed))
  throw new RangeError('--count takes a whole number from 1 on, and --seed a whole number');

/** So many at a time, each with a seed of its own, that a case can be found again without all before it. */
const batch = 2_000;

async function inBatches(
  what: string,
  total: number,
  run: (
    count: number,
    seed: number,
  ) => Promise<{ readonly good: number; readonly faults: readonly string[] }>,
): Promise<number> {
  let [good, faults] = [0, 0];
  for (let done = 0; done < total; done += batch) {
    const of = { count: Math.min(batch, total - done), seed: seed + done / batch };
    const found = await run(of.count, of.seed);
    good += found.good;
    faults += found.faults.length;
    for (const fault of found.faults) console.log(`${what}, seed ${of.seed}: ${fault.slice(0, 10_000)}`);
  }
  console.log(`${what}: ${total} tried, ${good} accepted, ${faults} at fault`);
  return faults;
}

const found = [
  await inBatches('documents read', count, async (...of) => {
    const { accepted, faults } = fuzzDocuments(...of);
    return { good: accepted, faults };
  }),
  await inBatches('estates judged', Math.ceil(count / 10), async (...of) => {
    const { accepted, faults } = await fuzzJudgements(...of);
    return { good: accepted, faults };
  }),
  await inBatches('texts read by both readers', count, async (...of) => {
    const { same, different } = differences(fixtures, suiteTexts, ...of);
    return { good: same, faults: different };
  }),
];
process.exitCode = found.some((faults) => faults > 0) ? 1 : 0;
