/** A branch is judged alike whether the head is read by what differs from main, or whole. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { stringify } from 'yaml';
import { readAgain } from '../../src/estate/again.ts';
import { readEstatePart } from '../../src/estate/part.ts';
import { judgePair, readPair } from '../../src/policy/pair.ts';
import { emptyReading, readNext } from '../../src/policy/reader.ts';
import { reportJson } from '../../src/report/json.ts';
import { documentOf, type Files, gannetPoint, today, treeOf } from '../estate/builder.ts';
import { change, filesOf, type Model, type Spread } from '../estate/random.ts';

const path = 'storage/all.yaml';

/** What main and branch have in common besides. */
const common = Array.from({ length: 10 }, (_each, index) => `k${index}`);

/** All that a model declares in one file behind what is common, each thing on lines of its own. */
function inOneFile(model: Model, spread: Spread): Files {
  const [text = '{}'] = Object.values(filesOf(model, { ...spread, to: () => 0 }));
  const declared = JSON.parse(text);
  const idle = { team: 'ledger', site: 'north-quay', power: 'stopped' };
  const servers = { ...Object.fromEntries(common.map((name) => [name, idle])), ...declared.servers };
  return {
    ...gannetPoint,
    'policies/storage.yaml': 'use: [strict]\n',
    [path]: stringify({ ...declared, servers }, { aliasDuplicateObjects: false }),
  };
}

it('whatever a branch alters in one file', async () => {
  const names = fc.subarray(['v1', 'v2', 's1', 'g0'], { maxLength: 1 });
  let again = 0;
  await fc.assert(
    fc.asyncProperty(change, names, async ([before, after], renamed) => {
      const [main, branch] = [inOneFile(before, {}), inOneFile(after, { renamed: new Set(renamed) })];
      const [base, head] = [treeOf(main, 'base'), treeOf(branch, 'head')];
      const options = { on: today, failOn: 'error' } as const;
      const pair = await readPair(base, head);
      // The same prices and rules, over an estate of nothing.
      const alone = await readNext({ ...pair.base, estate: emptyReading.estate }, head);
      const part = readEstatePart(documentOf(main[path] ?? '', path));
      if (part.ok && readAgain({ text: main[path] ?? '', part: part.value }, branch[path] ?? '')) again++;
      const [one, other] = [
        await judgePair(pair, options),
        await judgePair({ base: pair.base, head: alone }, options),
      ];
      expect(reportJson(one)).toEqual(reportJson(other));
    }),
    { numRuns: 150 },
  );
  expect(again).toBeGreaterThan(20);
});
