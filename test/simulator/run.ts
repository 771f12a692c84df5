/**
 * Plays as many random runbooks as are wanted: `npm run simulate -- --count 1000000 [--seed 7]`. Ends with 1 where a
 * step was refused, an end was not the head, or content was lost that no change declares lost.
 */
import { parseArgs } from 'node:util';
import { type Found, playMany } from './many.ts';

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '20000' },
    seed: { type: 'string', default: '20261120' },
    show: { type: 'string', default: '5' },
  },
});
const [count, seed, show] = [Number(values.count), Number(values.seed), Number(values.show)];

const { tried, steps, faults, snags, untold } = playMany({ count, seed });
const byTimes = (found: ReadonlyMap<string, Found>): readonly Found[] =>
  [...found.values()].sort((a, b) => b.times - a.times);
for (const { times, example } of byTimes(faults).slice(0, show))
  console.log(`${times} times, such as: ${example}\n`);
for (const [kind, { times }] of snags)
  console.log(`${times} branches that no order carries out, as the planner says: ${kind}`);
if (untold > 0) console.log(`${untold} of them have more orders than were tried`);
console.log(`${tried} branches played in ${steps} steps, ${faults.size} kinds of fault`);
process.exitCode = faults.size > 0 ? 1 : 0;
