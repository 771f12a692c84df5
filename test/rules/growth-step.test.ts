import { describe, expect, it } from 'vitest';
import { onlyFinding, underRule } from '../estate/builder.ts';

const volume = (size: string): string => `volumes:\n  plates-1: { tier: bulk, size: ${size} }\n`;
const verdict = async (entry: string, before: string, after: string): Promise<string> =>
  (await underRule(`rule: growth-step, ${entry}`, volume(before), volume(after))).verdict;

describe('a slip of the hand on a size', () => {
  it('500 for 50 is ten times as much, month after month', async () => {
    const judgement = await underRule('rule: growth-step, times: 4', volume('50 GiB'), volume('500 GiB'));
    expect(judgement.verdict).toBe('fail');
    expect(onlyFinding(judgement).message).toBe(
      'volume plates-1 would grow from 50 GiB to 500 GiB in one change: 10 times its size, and at most 4 times is allowed',
    );
  });

  it('TiB for GiB', async () => {
    expect(await verdict('times: 10', '50 GiB', '60 TiB')).toBe('fail');
  });
});

describe('the bound', () => {
  it('holds at so many times the size, and breaks one byte above', async () => {
    expect(await verdict('times: 4', '10 GiB', '40 GiB')).toBe('pass');
    expect(await verdict('times: 1.5', '10 GiB', '15 GiB')).toBe('pass');
    expect(await verdict('times: 4', '1 kB', '4.001 kB')).toBe('fail');
    expect(await verdict('times: 1.1', '10 kB', '11.001 kB')).toBe('fail');
  });

  it('is exact beyond what twenty digits can tell', async () => {
    expect(await verdict('times: 3', '100000000000000 PB', '300000000000000.000000000000001 PB')).toBe(
      'fail',
    );
    expect(await verdict('times: 3', '100000000000000 PB', '300000000000000 PB')).toBe('pass');
  });

  it('never reads like the bound itself where it is broken', async () => {
    const judgement = await underRule('rule: growth-step, times: 4', volume('1 MB'), volume('4.000001 MB'));
    expect(onlyFinding(judgement).message).toContain('4.01 times its size, and at most 4 times is allowed');
  });

  it('in bytes holds at the size, and breaks one byte above', async () => {
    expect(await verdict('by: 1 GiB', '1 GiB', '2 GiB')).toBe('pass');
    expect(await verdict('by: 1 kB', '1 kB', '2.001 kB')).toBe('fail');
  });
});

it('a new volume of any size is no growth, and a shrink is none', async () => {
  expect((await underRule('rule: growth-step, times: 2', '', volume('900 TiB'))).verdict).toBe('pass');
  expect(await verdict('times: 2', '50 GiB', '1 GiB')).toBe('pass');
});

it('a volume deleted and created larger in its seat has grown', async () => {
  const member = (name: string, size: string): string =>
    `volumes:\n  ${name}: { size: ${size}, tier: bulk }\nvolume-groups:\n  plates: { members: [${name}] }\n`;
  expect(
    (await underRule('rule: growth-step, times: 2', member('a', '1 GiB'), member('b', '5 GiB'))).verdict,
  ).toBe('fail');
});

it('large on main already is none of this change', async () => {
  expect(await verdict('by: 1 GiB', '900 TiB', '900 TiB')).toBe('pass');
});
