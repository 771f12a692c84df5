import { describe, expect, it } from 'vitest';
import { lossSentence } from '../../src/report/model/changes.ts';
import { judgedBranch, said } from '../estate/builder.ts';

const at = (most: number, where = ''): readonly string[] => [
  `{ rule: destructive-changes-few, at-most: ${most}${where} }`,
];

const master = (numbers: readonly number[], rest = ''): string =>
  `team: imagery\nvolumes:\n  root: { size: 50 GiB, tier: bulk }\n${numbers.map((number) => `  master-${number}: { size: 50 GiB, tier: bulk${rest} }\n`).join('')}`;

const found = async (main: string, branch: string, entries: readonly string[]) =>
  said(await judgedBranch({ main, branch, entries }));

describe('many changes that cannot be undone, in one branch', () => {
  it('lets a branch pass that deletes nothing, however much it adds', async () => {
    expect(await found(master([]), master([1, 2, 3, 4]), at(0))).toEqual([]);
  });

  it('lets exactly so many pass, and fails one more', async () => {
    expect(await found(master([1, 2, 3]), master([3]), at(2))).toEqual([]);
    expect(await found(master([1, 2, 3]), master([]), at(2))).toEqual([
      'error new head: the branch makes 3 changes that cannot be undone, and at most 2 are allowed: volume master-1 is deleted (50 GiB); volume master-2 is deleted (50 GiB); volume master-3 is deleted (50 GiB)',
    ]);
  });

  it('names five of a folder lost, and counts the rest', async () => {
    const all = Array.from({ length: 40 }, (_each, index) => index + 1);
    const [message = ''] = await found(master(all), master([]), at(3));
    expect(message.match(/is deleted/g)).toHaveLength(5);
    expect(message).toMatch(/; and 35 more$/);
  });

  it('counts a file system that goes with its volume once', async () => {
    const carrying = master([1, 2], ', file-system: { mount: /m, type: ext4 }');
    expect(await found(carrying, master([]), at(2))).toEqual([]);
    expect(await found(carrying, master([]), at(1))).toHaveLength(1);
  });

  it('counts a shrunk volume and the file system on it once', async () => {
    const sized = (size: string): string =>
      `volumes:\n  plates-1: { size: ${size}, tier: bulk, file-system: { mount: /m, type: ext4 } }\n`;
    expect((await found(sized('50 GiB'), sized('40 GiB'), at(0)))[0]).toContain('makes 1 change that');
  });

  it('counts the members of a dissolved group that go with it, and not the group and its file systems besides', async () => {
    const grouped = `${master([1, 2])}volume-groups:\n  masters:\n    members: [master-1, master-2]\n    file-systems:\n      /m: { size: 20 GiB, type: xfs }\n      /n: { size: 20 GiB, type: xfs }\n`;
    expect((await found(grouped, master([]), at(0)))[0]).toContain('makes 2 changes');
  });

  it('counts a group that is dissolved while its volumes stay, with all on it, as one', async () => {
    const grouped = `${master([1, 2])}volume-groups:\n  masters:\n    members: [master-1, master-2]\n    file-systems:\n      /m: { size: 20 GiB, type: xfs }\n`;
    expect((await found(grouped, master([1, 2]), at(0)))[0]).toContain(
      'makes 1 change that cannot be undone',
    );
  });

  const one = (rest: string, more = ''): string =>
    `volumes:\n  root: { size: 50 GiB, tier: bulk }\n  plates-1: { size: 50 GiB, tier: bulk${rest} }\n${more}`;
  const onIt = ', file-system: { mount: /m, type: ext4 }';
  const grouped = 'volume-groups:\n  plates: { members: [plates-1] }\n';

  it.each([
    ['deleted, and the volume taken into a group', one(onIt), one('', grouped)],
    ['deleted, and another made on the volume', one(onIt), one(', file-system: { mount: /n, type: xfs }')],
    [
      'lost with a move to another site, and the volume made smaller',
      one(`${onIt}, site: north-quay`),
      one(`${onIt}, site: south-quay`).replace('plates-1: { size: 50', 'plates-1: { size: 40'),
    ],
    [
      'lost with its group, and the volume written over',
      one(
        '',
        'volume-groups:\n  plates: { members: [plates-1], file-systems: { /m: { size: 20 GiB, type: xfs } } }\n',
      ),
      one(onIt),
    ],
    [
      'lost with its group, which is laid out otherwise',
      one(
        '',
        'volume-groups:\n  plates: { members: [root, plates-1], file-systems: { /m: { size: 20 GiB, type: xfs } } }\n',
      ),
      one('', 'volume-groups:\n  plates: { members: [root, plates-1], layout: striped }\n'),
    ],
  ])('counts one file system once that is %s', async (_what, main, branch) => {
    const judged = await judgedBranch({ main, branch, entries: at(0) });
    expect(said(judged)[0]).toContain('makes 1 change that cannot be undone');
    expect(lossSentence(judged.changes)).toBe('1 change loses data that only a backup can restore');
  });

  it('counts each of two that are lost apart', async () => {
    const main = one(onIt).replace(
      'root: { size: 50 GiB, tier: bulk',
      `root: { size: 50 GiB, tier: bulk${onIt.replace('/m', '/')}`,
    );
    expect((await found(main, one('', grouped), at(0)))[0]).toContain('makes 2 changes');
  });

  it('counts a rename as no loss', async () => {
    expect(await found(master([1]), master([2], ', formerly: master-1'), at(0))).toEqual([]);
  });

  it('counts only what is in its scope', async () => {
    expect(await found(master([1, 2]), master([]), at(0, ', where: { teams: [ledger] }'))).toEqual([]);
    expect(await found(master([1, 2]), master([]), at(0, ', where: { teams: [imagery] }'))).toHaveLength(1);
  });

  it('holds nothing of what main has lost before against a later branch', async () => {
    expect(await found(master([]), master([]), at(0))).toEqual([]);
  });

  it('is not got round by deleting in two kinds: more losses are refused as before', async () => {
    const main = `${master([1])}  plates-1: { size: 50 GiB, tier: bulk, file-system: { mount: /p, type: ext4 } }\n`;
    const branch = `${master([])}  plates-1: { size: 50 GiB, tier: bulk, file-system: { mount: /p, type: xfs } }\n`;
    expect((await found(main, branch, at(1)))[0]).toContain('/p on plates-1 is reformatted from ext4 to xfs');
  });
});
