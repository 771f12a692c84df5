/**
 * Measures how often the forecast holds the true day, shape by shape, and whether what must hold holds. How many of
 * each shape and which seed may follow: `npx tsx bench/forecast.ts 1000 3`.
 */
import { forecast } from '../src/capacity/forecast.ts';
import { coverageOf, type ShapeName, shapeNames } from '../test/capacity/shapes.ts';

const [count = '200', seed = '1'] = process.argv.slice(2);
const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** Where the range must hold the true day about as often as it says. */
const covered: readonly ShapeName[] = ['line with noise', 'sum of changes', 'jump'];
const [leastHeld, mostHeld, mostTwiceTooLate] = [0.8, 0.98, 0.05];

console.log(
  '| shape of use | true day in the range | earlier than it | later than it | middle more than twice too late | middle / true day |',
);
console.log('| --- | --- | --- | --- | --- | --- |');
const missed: string[] = [];
for (const name of shapeNames) {
  const { held, earlier, later, twiceTooLate, middle } = coverageOf(
    forecast,
    name,
    Number(count),
    Number(seed),
  );
  console.log(
    `| ${[name, ...[held, earlier, later, twiceTooLate].map(percent), middle.toFixed(2)].join(' | ')} |`,
  );
  if (covered.includes(name) && (held < leastHeld || held > mostHeld))
    missed.push(`${name}: ${percent(held)} in the range`);
  if (twiceTooLate > mostTwiceTooLate)
    missed.push(`${name}: ${percent(twiceTooLate)} more than twice too late`);
}
if (missed.length > 0) {
  console.error(`Missed: ${missed.join('; ')}.`);
  process.exitCode = 1;
}
