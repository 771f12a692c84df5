/** "Already on main and not made worse" is said of what it is true of. */
import { describe, expect, it } from 'vitest';
import { judgedBranch } from '../estate/builder.ts';

const shape = (schema: string): string => `{ rule: shape, of: volume, schema: ${schema} }`;

const volume = (rest: string, size = '40 GiB'): string =>
  `volumes:\n  plates-1: { size: ${size}, tier: bulk${rest} }\n`;

const at = (volumeSite: string, serverSite: string): string =>
  `servers:\n  scanner: { site: ${serverSite} }\nvolumes:\n  plates-1: { size: 40 GiB, tier: bulk, site: ${volumeSite} }\nattachments: [ { volume: plates-1, server: scanner } ]\n`;

const idle = (tier: string): string =>
  `servers:\n  scanner: {}\nvolumes:\n  plates-1: { size: 40 GiB, tier: ${tier} }\nattachments: [ { volume: plates-1, server: scanner } ]\n`;

const labels = (count: number): string =>
  `, labels: { ${Array.from({ length: count }, (_each, index) => `l${index}: x`).join(', ')} }`;

type Case = readonly [what: string, entry: string, main: string, branch: string];

const worse: readonly Case[] = [
  [
    'a size further beyond the maximum of a shape',
    shape('{ properties: { size-gib: { maximum: 30 } } }'),
    volume(''),
    volume('', '400 GiB'),
  ],
  [
    'a size further below the minimum of a shape',
    shape('{ properties: { size-gib: { minimum: 50 } } }'),
    volume(''),
    volume('', '20 GiB'),
  ],
  [
    'a size beyond an exclusive bound',
    shape('{ properties: { size-gib: { exclusiveMaximum: 40 } } }'),
    volume(''),
    volume('', '41 GiB'),
  ],
  [
    'a longer text than the one that was too long',
    shape('{ properties: { reason: { maxLength: 3 } } }'),
    volume(', reason: kept'),
    volume(', reason: kept on'),
  ],
  [
    'more keys than there were too many',
    shape('{ properties: { labels: { maxProperties: 1 } } }'),
    volume(labels(2)),
    volume(labels(3)),
  ],
  [
    'one bound made worse while another is mended',
    shape('{ properties: { size-gib: { maximum: 30 }, labels: { maxProperties: 1 } } }'),
    volume(labels(2)),
    volume('', '50 GiB'),
  ],
  [
    'another pair of sites',
    '{ rule: same-site }',
    at('north-quay', 'south-quay'),
    at('east-quay', 'south-quay'),
  ],
  [
    'another name that breaks the pattern',
    "{ rule: naming, volume: '[a-z]+' }",
    volume(''),
    'volumes:\n  PLATES_1: { size: 40 GiB, tier: bulk, formerly: plates-1 }\n',
  ],
  ['another size off the step', '{ rule: tier-bounds }', volume('', '41 GB'), volume('', '81 GB')],
  [
    'a volume that nobody answers for, grown sixteen times',
    '{ rule: detached-volume-owned }',
    volume(''),
    volume('', '640 GiB'),
  ],
  [
    'room that nobody uses, moved to a dearer tier',
    '{ rule: growth-followed-through, level: error }',
    idle('bulk'),
    idle('brisk'),
  ],
];

const asBad: readonly Case[] = [
  [
    'a size beyond a maximum, left so',
    shape('{ properties: { size-gib: { maximum: 30 } } }'),
    volume(''),
    volume(', reason: kept'),
  ],
  [
    'a size nearer to the maximum',
    shape('{ properties: { size-gib: { maximum: 30 } } }'),
    volume(''),
    volume('', '35 GiB'),
  ],
  [
    'an attachment across sites, edited',
    '{ rule: same-site }',
    at('north-quay', 'south-quay'),
    at('north-quay', 'south-quay').replace('40', '50'),
  ],
  [
    'a volume that nobody answers for, made cheaper',
    '{ rule: detached-volume-owned }',
    volume(''),
    volume('', '30 GiB'),
  ],
  [
    'a name that breaks the pattern, kept',
    "{ rule: naming, volume: '[a-z]+' }",
    volume(''),
    volume('', '50 GiB'),
  ],
];

const stateAfter = async ([, entry, main, branch]: Case): Promise<readonly string[]> => {
  const { verdict, findings } = await judgedBranch({ main, branch, entries: [entry] });
  const standing = findings.filter(({ baselineState }) => baselineState !== 'absent');
  return [verdict, ...standing.map(({ baselineState }) => baselineState)];
};

describe('a finding that is on main already', () => {
  it.each(worse)('fails where it is made worse: %s', async (...told) => {
    expect(await stateAfter(told)).toEqual(['fail', 'updated']);
  });

  it.each(asBad)('stands where it is not: %s', async (...told) => {
    expect(await stateAfter(told)).toEqual(['pass', 'unchanged']);
  });

  it('as a warning is new as an error', async () => {
    const { verdict, findings } = await judgedBranch({
      main: volume('', '90 GiB'),
      branch: volume('', '101 GiB'),
      entries: ['{ rule: max-monthly-spend, limit: "4.50", warn-from: 0.8 }'],
    });
    expect(verdict).toBe('fail');
    expect(findings.map(({ level, baselineState }) => `${level} ${baselineState}`)).toEqual(['error new']);
  });

  it('as a warning, further beyond, stays a warning that is made worse', async () => {
    const { verdict, findings } = await judgedBranch({
      main: volume('', '85 GiB'),
      branch: volume('', '95 GiB'),
      entries: ['{ rule: max-monthly-spend, limit: "4.50", warn-from: 0.8 }'],
    });
    expect(verdict).toBe('pass');
    expect(findings.map(({ level, baselineState }) => `${level} ${baselineState}`)).toEqual([
      'warning updated',
    ]);
  });
});
