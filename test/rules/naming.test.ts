import { describe, expect, it } from 'vitest';
import { judgedBranch, refusedFor, said } from '../estate/builder.ts';

const entry = "{ rule: naming, volume: '[a-z]+-[0-9]+', server: '[a-z-]+', mount: '/[a-z/]*' }";

const volume = (name: string, rest = ''): string =>
  `volumes:\n  ${name}: { size: 50 GiB, tier: bulk${rest} }\n`;

const found = async (branch: string, main?: string, by = entry) =>
  said(await judgedBranch({ ...(main === undefined ? {} : { main }), branch, entries: [by] }));

describe('names that break the pattern', () => {
  it('passes a name that follows it', async () => {
    expect(await found(volume('plates-1'))).toEqual([]);
  });

  it('fails one that does not, with the pattern', async () => {
    expect(await found(volume('Plates_1'))).toEqual([
      'error new Plates_1: the volume name Plates_1 does not match the pattern [a-z]+-[0-9]+',
    ]);
  });

  it('matches from end to end: one letter too many at either end fails', async () => {
    expect(await found(volume('plates-1b'))).toHaveLength(1);
    expect(await found(volume('0plates-1'))).toHaveLength(1);
  });

  it('lets an old name on main stand, and finds the same fault in a new one', async () => {
    const before = volume('OLD');
    expect(await found(before, before)).toEqual([
      'error unchanged OLD: the volume name OLD does not match the pattern [a-z]+-[0-9]+',
    ]);
    const [fresh = ''] = await found(`${before}  OLD2: { size: 50 GiB, tier: bulk }\n`, before);
    expect(fresh).toMatch(/^error new OLD2/);
  });

  it('is mended by a rename that keeps the volume', async () => {
    expect((await found(volume('plates-9', ', formerly: OLD'), volume('OLD')))[0]).toMatch(/^error absent/);
  });

  it('looks at servers and mount points by their own patterns, and at groups by none here', async () => {
    const all = `servers:\n  S1: {}\nvolumes:\n  plates-1: { size: 50 GiB, tier: bulk }\nvolume-groups:\n  G_1:\n    members: [plates-1]\n    file-systems:\n      /Plates: { size: 10 GiB, type: xfs }\n`;
    expect(await found(all)).toEqual([
      'error new G_1:/Plates: the mount point /Plates does not match the pattern /[a-z/]*',
      'error new S1: the server name S1 does not match the pattern [a-z-]+',
    ]);
  });

  it('leaves out what is not in scope', async () => {
    expect(
      await found(
        volume('X', ', team: ledger'),
        undefined,
        entry.replace(' }', ', where: { teams: [imagery] } }'),
      ),
    ).toEqual([]);
  });
});

describe('patterns', () => {
  it('that do not compile are refused at their place, when the pack is read', () => {
    expect(refusedFor("{ rule: naming, volume: '[a-z', server: 'ok' }")).toEqual([
      '2:29 [a-z is not a valid pattern: missing closing ]: `[a-z`',
    ]);
  });

  it('with look-ahead or back references are refused, since no linear engine has them', () => {
    expect(refusedFor("{ rule: naming, volume: '(?=a)b' }")).toHaveLength(1);
    expect(refusedFor("{ rule: naming, volume: '(a)\\1' }")).toHaveLength(1);
    expect(refusedFor(`{ rule: naming, volume: '${'a'.repeat(1001)}' }`).join()).toContain(
      'longer than 1000',
    );
  });

  it('that would double a backtracking engine with each letter are done at once', async () => {
    const mount = `/${'a'.repeat(2000)}!`;
    const branch = `volumes:\n  v: { size: 50 GiB, tier: bulk, file-system: { mount: "${mount}", type: xfs } }\n`;
    // A backtracking engine needs 2^2000 steps for it: that it ends is the check.
    const findings = await found(branch, undefined, "{ rule: naming, mount: '/(a+)+' }");
    expect(findings).toHaveLength(1);
  });
});
