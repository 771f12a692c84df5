/**
 * Plays as many random runbooks as are wanted: `npm run simulate -- --count 1000000 [--seed 7]`. Ends with 1 where a
 * step was refused, an end was not the head, or content was lost that no change declares lost.
 */
import { parseArgs } from 'node:util';
import fc from 'fast-check';
import { pairs } from './estates.ts';
import { played } from './played.ts';

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '20000' },
    seed: { type: 'string', default: '20261120' },
    show: { type: 'string', default: '5' },
  },
});
const [count, seed, show] = [Number(values.count), Number(values.seed), Number(values.show)];

const faults = new Map<string, { times: number; example: string }>();
let [tried, steps] = [0, 0];
const batch = 1_000;
for (let done = 0; done < count; done += batch) {
  for (const [before, after] of fc.sample(pairs, {
    seed: seed + done / batch,
    numRuns: Math.min(batch, count - done),
  })) {
    const outcome = played(before, after);
    if (outcome === undefined) continue;
    tried += 1;
    steps += outcome.steps;
    for (const fault of outcome.faults) {
      const kind = fault.replace(/\b[svg][0-9](-new|-renamed)?\b/g, 'N').replace(/[0-9]+/g, '0');
      const known = faults.get(kind);
      const example = `${fault}\n  base: ${before['storage/all.yaml']}\n  head: ${after['storage/all.yaml']}`;
      if (known === undefined) faults.set(kind, { times: 1, example });
      else {
        known.times += 1;
        if (example.length < known.example.length) known.example = example;
      }
    }
  }
}
const byTimes = [...faults.values()].sort((a, b) => b.times - a.times);
for (const { times, example } of byTimes.slice(0, show)) console.log(`${times} times, such as: ${example}\n`);
console.log(`${tried} branches played in ${steps} steps, ${faults.size} kinds of fault`);
process.exitCode = faults.size > 0 ? 1 : 0;
