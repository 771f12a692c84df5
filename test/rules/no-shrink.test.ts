import { describe, expect, it } from 'vitest';
import { judged, onlyFinding, pack, standing, underRule } from '../estate/builder.ts';

const rule = 'rule: no-shrink';
const volume = (rest: string): string => `volumes:\n  plates-1: { tier: bulk, ${rest} }\n`;

describe('a volume', () => {
  it('may grow from 20 GiB to 50 GiB', async () => {
    const judgement = await underRule(rule, volume('size: 20 GiB'), volume('size: 50 GiB'));
    expect(judgement.verdict).toBe('pass');
    expect(judgement.findings).toEqual([]);
  });

  it('of 50 GiB rewritten as 50 GB is a shrink of exactly 3,687,091,200 bytes', async () => {
    const judgement = await underRule(rule, volume('size: 50 GiB'), volume('size: 50 GB'));
    const { message, advice, fails, place } = onlyFinding(judgement);
    expect(judgement.verdict).toBe('fail');
    expect(fails).toBe(true);
    expect(message).toBe('volume plates-1 would shrink from 50 GiB to 50 GB: 3,687,091,200 bytes fewer');
    expect(advice).toContain('a backup that you have restored from');
    expect(place).toMatchObject({ revision: 'head', file: 'storage/imagery.yaml', line: 2, column: 27 });
  });

  it('holds at equality across units, and is refused one kibibyte below', async () => {
    expect((await underRule(rule, volume('size: 1 TiB'), volume('size: 1024 GiB'))).verdict).toBe('pass');
    expect((await underRule(rule, volume('size: 1 MiB'), volume('size: 1023 KiB'))).verdict).toBe('fail');
  });

  it('does not shrink unseen behind a rename', async () => {
    const renamed = 'volumes:\n  p1: { tier: bulk, size: 39 GiB, formerly: plates-1 }\n';
    expect(standing(await underRule(rule, volume('size: 40 GiB'), renamed))).toEqual([
      'fails: error new volume p1',
    ]);
  });

  it('does not shrink unseen behind a deletion and a creation in its seat', async () => {
    const member = (name: string, size: string): string =>
      `volumes:\n  ${name}: { size: ${size}, tier: bulk }\nvolume-groups:\n  plates: { members: [${name}] }\n`;
    const smaller = await underRule(rule, member('plates-1', '40 GiB'), member('plates-9', '20 GiB'));
    expect(standing(smaller)).toContain('fails: error new volume plates-1');
    expect(smaller.reasons.join()).toContain(
      'replaced by the smaller plates-9 (20 GiB), as a member of the volume group plates',
    );
    expect((await underRule(rule, member('plates-1', '40 GiB'), member('plates-9', '40 GiB'))).verdict).toBe(
      'pass',
    );
  });

  it('that was small on main already is none of this change', async () => {
    expect(
      (await underRule(rule, volume('size: 1 GiB'), volume('size: 1 GiB, reason: kept'))).findings,
    ).toEqual([]);
  });
});

describe('a volume group', () => {
  const group = (members: string): string =>
    `volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\n  c: { size: 39 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [${members}] }\n`;

  it('that loses a member is smaller', async () => {
    const { message } = onlyFinding(await underRule(rule, group('a, b'), group('a')));
    expect(message).toContain('volume group plates would shrink with b leaving: 42,949,672,960 bytes fewer');
  });

  it('may change one member for another of its size, and not for a smaller one', async () => {
    expect((await underRule(rule, group('a'), group('b'))).verdict).toBe('pass');
    expect((await underRule(rule, group('a'), group('c'))).verdict).toBe('fail');
  });
});

describe('a file system', () => {
  const system = (size: string, type: string): string =>
    `volumes:\n  a: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a], file-systems: { /plates: { size: ${size}, type: ${type} } } }\n`;

  it('of a type that cannot be made smaller is refused, and the message says that it cannot', async () => {
    const { message } = onlyFinding(await underRule(rule, system('90 GiB', 'xfs'), system('80 GiB', 'xfs')));
    expect(message).toContain('xfs cannot be made smaller');
  });

  it('of a type that its pack allows may be made smaller; another type may not', async () => {
    const allowing = `${rule}, allow-file-systems: [ext4]`;
    expect((await underRule(allowing, system('90 GiB', 'ext4'), system('80 GiB', 'ext4'))).verdict).toBe(
      'pass',
    );
    expect((await underRule(allowing, system('90 GiB', 'xfs'), system('80 GiB', 'xfs'))).verdict).toBe(
      'fail',
    );
    expect((await underRule(rule, system('90 GiB', 'ext4'), system('80 GiB', 'ext4'))).verdict).toBe('fail');
  });
});

it('is for those in its scope', async () => {
  const both = (size: string): string =>
    `volumes:\n  a: { size: ${size}, tier: bulk, team: imagery }\n  b: { size: ${size}, tier: bulk, team: ledger }\n`;
  const judgement = await judged(
    { ...pack('rule: no-shrink, where: { teams: [imagery] }'), 'storage/a.yaml': both('2 GiB') },
    { 'storage/a.yaml': both('1 GiB') },
  );
  expect(standing(judgement)).toEqual(['fails: error new volume a']);
});
