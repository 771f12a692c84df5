import { expect, it } from 'vitest';
import { onlyFinding, standing, underRule } from '../estate/builder.ts';

const rule = 'rule: no-stale-rename, level: error';
const volume = (name: string, formerly = ''): string =>
  `volumes:\n  ${name}: { size: 40 GiB, tier: bulk${formerly === '' ? '' : `, formerly: ${formerly}`} }\n`;

it('a rename of something that main has is one', async () => {
  expect((await underRule(rule, volume('plates-1'), volume('master', 'plates-1'))).findings).toEqual([]);
});

it('an old name with a slip in it would delete a volume and create one; the nearest is offered', async () => {
  const judgement = await underRule(rule, volume('plates-1'), volume('master', 'plates-2'));
  const { level, message, advice, place } = onlyFinding(judgement);
  expect([level, message, advice]).toEqual([
    'error',
    'volume master says formerly: plates-2, and main has no volume plates-2, so that it is taken for a new one',
    'Did you mean plates-1? Correct the old name, or delete the line.',
  ]);
  expect(place).toMatchObject({ revision: 'head', line: 2 });
});

it('a line that is left on main after its rename says nothing more', async () => {
  const carried = volume('master', 'plates-1');
  expect((await underRule(rule, carried, carried.replace('40 GiB', '50 GiB'))).findings).toEqual([]);
});

it('an old name that another thing has by now stands on main, and does not fail what leaves it', async () => {
  const both = `${volume('master', 'plates-1')}  plates-1: { size: 1 GiB, tier: bulk }\n`;
  expect(standing(await underRule(rule, both, `# tidied\n${both}`))).toEqual([
    'stands: error unchanged volume plates-1',
  ]);
});

it('taking up the old name of something makes it so', async () => {
  const carried = volume('master', 'plates-1');
  const taken = `${carried}  plates-1: { size: 1 GiB, tier: bulk }\n`;
  expect(standing(await underRule(rule, carried, taken))).toEqual(['fails: error new volume plates-1']);
});
