import { describe, expect, it } from 'vitest';
import type { Judged } from '../../src/policy/judgement.ts';
import { judged, onlyFinding, underRule } from '../estate/builder.ts';

const rule = 'rule: deletion-prepared';
const guarded = `${rule}, backup-within: 30`;
const volume = (rest = ''): string => `volumes:\n  plates-0: { size: 40 GiB, tier: bulk${rest} }\n`;
const attached = `servers: { scanner: {} }\n${volume()}attachments: [ { volume: plates-0, server: scanner } ]\n`;
const called = (name: string, rest = ''): string => volume(rest).replace('plates-0', name);
const attachedTo = (name: string, rest = ''): string =>
  `servers: { scanner: {} }\n${called(name, rest)}attachments: [ { volume: ${name}, server: scanner } ]\n`;
const retired = (backup = ''): string =>
  `retired:\n  - { volume: plates-0, on: 2026-11-25, reason: superseded by plates-1${backup} }\n`;
const backedUp = (day: string): string => retired(`, backup: vault/plates-0, backed-up: ${day}`);

describe('a deletion', () => {
  it('of a detached volume with its reason and a recent backup on record is prepared', async () => {
    expect((await underRule(guarded, volume(), backedUp('2026-11-20'))).verdict).toBe('pass');
  });

  it('beside something new of its size is told of formerly first: the same disk under another name is not deleted', async () => {
    const other = volume().replace('plates-0', 'master');
    expect(onlyFinding(await underRule(rule, volume(), other)).advice).toMatch(
      /^If master is the same volume under another name, write formerly: plates-0 on it; nothing is deleted then\. Add an entry/,
    );
    const larger = other.replace('40 GiB', '41 GiB');
    expect(onlyFinding(await underRule(rule, volume(), larger)).advice).not.toContain('formerly');
  });

  it.each([
    [
      'the mount point',
      (name: string) => `${attachedTo(name, ', file-system: { mount: /plates, type: xfs }')}`,
    ],
    ['the group', (name: string) => `${attachedTo(name)}volume-groups: { all: { members: [${name}] } }\n`],
    ['the boot volume', (name: string) => `servers: { scanner: { boot: ${name} } }\n${called(name)}`],
    ['an attachment', (name: string) => attachedTo(name)],
  ])(
    'of a volume that has another name in its place, as %s, is told of formerly before it is detached',
    async (_seat, estate) => {
      expect(onlyFinding(await underRule(rule, estate('plates-0'), estate('master'))).advice).toMatch(
        /^If master is the same volume under another name, write formerly: plates-0 on it; nothing is deleted then\. In an earlier change, detach/,
      );
    },
  );

  it('without a record is refused where it stood on main, with the cautions', async () => {
    const { message, place, advice } = onlyFinding(await underRule(rule, volume(), ''));
    expect(message).toBe(
      'volume plates-0 (40 GiB) would be deleted for good, and no entry under retired: gives a reason',
    );
    expect(place).toMatchObject({ revision: 'base', file: 'storage/imagery.yaml', line: 2 });
    expect(advice).toContain('unmounted and quiesced');
    expect(advice).not.toContain('existing: true');
  });

  it.each(['plate-0', 'plates0', 'platse-0', 'archive'])(
    'with its record under %s, which main does not have, is told of that entry',
    async (name) => {
      const { message, advice } = onlyFinding(
        await underRule(rule, volume(), retired().replace('plates-0', name)),
      );
      expect(message).toMatch(
        new RegExp(
          `and no entry under retired: gives a reason: the one for ${name}, at storage/imagery.yaml:2, is for nothing that main has$`,
        ),
      );
      expect(advice).toMatch(
        /^If that entry is meant for plates-0, correct the name in it; otherwise add one/,
      );
    },
  );

  it('beside the records of others, which main had, is told to have one of its own', async () => {
    const other = retired().replace('plates-0', 'plate-0');
    const { message } = onlyFinding(await underRule(rule, volume() + other, other));
    expect(message).toMatch(/gives a reason$/);
  });

  it('before the day until which it is to be kept: the way that is advised goes through, under the strict pack too', async () => {
    const dated = (day: string): string =>
      `team: imagery\n${volume(`, reason: master copy${day === '' ? '' : `, retain-until: ${day}`}`)}`;
    const gone = `team: imagery\n${backedUp('2026-11-24')}`;
    const strictly = async (main: string, branch: string, on: string) =>
      judged(
        { 'policies/storage.yaml': 'use: [strict]\n', 'storage/imagery.yaml': main },
        { 'storage/imagery.yaml': branch },
        { on },
      );
    const asked = (each: Judged) =>
      each.findings.filter(({ rule: of, fails }) => fails && /deletion|detached/.test(of));
    const early = asked(await strictly(dated('2027-03-31'), gone, '2026-11-25'));
    expect(early.map(({ advice }) => advice)).toEqual([
      expect.stringMatching(
        /^In an earlier change, bring the retention date of plates-0 forward to the day of that change, if it need not be kept until 2027-03-31\. That day is still a day of keeping: the deletion may follow from the next day on\. Before/,
      ),
    ]);
    // A date that is removed, as one from before today, is refused: brought forward it is not.
    expect(asked(await strictly(dated('2027-03-31'), dated(''), '2026-11-25'))).toHaveLength(1);
    expect(asked(await strictly(dated('2027-03-31'), dated('2026-11-25'), '2026-11-25'))).toEqual([]);
    const sameDay = asked(await strictly(dated('2026-11-25'), gone, '2026-11-25'));
    expect(sameDay.map(({ advice }) => advice)).toEqual([
      expect.stringMatching(
        /^That day is still a day of keeping: merge the deletion from 2026-11-26 on\. Before/,
      ),
    ]);
    expect(asked(await strictly(dated('2026-11-25'), gone, '2026-11-26'))).toEqual([]);
  });

  it('of a volume that main still attaches is refused; it is detached first, in a change of its own', async () => {
    const { message } = onlyFinding(
      await underRule(rule, attached, `servers: { scanner: {} }\n${retired()}`),
    );
    expect(message).toContain('main still attaches it to scanner');
    const allowed = await underRule(
      `${rule}, attached-allowed: true`,
      attached,
      `servers: { scanner: {} }\n${retired()}`,
    );
    expect(allowed.verdict).toBe('pass');
  });

  it('of a protected volume is refused, also where the same change would have lifted the protection', async () => {
    expect(onlyFinding(await underRule(rule, volume(', protected: true'), retired())).message).toContain(
      'it is protected',
    );
  });

  describe('advises what is still to be done, and nothing that is done', () => {
    const detach = 'detach plates-0 from scanner';
    const unprotect = 'remove the protection of plates-0';
    const keep =
      'bring the retention date of plates-0 forward to the day of that change, if it need not be kept until';
    const add = 'Add an entry under retired: for plates-0, with on, reason, backup and backed-up.';
    const server = 'servers: { scanner: {} }\n';
    const whole = attached.replace(' }\nattach', ', protected: true, retain-until: 2027-01-01 }\nattach');
    const spoken = [detach, unprotect, keep, add, 'Add backup and backed-up', 'Make a new backup'];

    it.each([
      ['nothing', whole, server, [detach, unprotect, keep, add]],
      ['the record', whole, server + backedUp('2026-11-20'), [detach, unprotect, keep]],
      ['the detaching', volume(), '', [add]],
      ['all but the backup', volume(), retired(), ['Add backup and backed-up']],
      ['all, with an old backup', volume(), backedUp('2026-08-01'), ['Make a new backup']],
      ['all but the detaching', attached, server + backedUp('2026-11-20'), [detach]],
    ])('where %s is done', async (_, main, branch, left) => {
      const { advice } = onlyFinding(await underRule(guarded, main, branch));
      expect(spoken.filter((each) => advice.includes(each))).toEqual(left);
      // The cautions are said whatever is done.
      expect(advice).toContain('unmounted and quiesced');
      expect(advice.includes('In an earlier change')).toBe(left.includes(detach));
    });
  });

  it('holds with a backup as old as is allowed, and not a day older', async () => {
    expect((await underRule(guarded, volume(), backedUp('2026-10-26'))).verdict).toBe('pass');
    expect(onlyFinding(await underRule(guarded, volume(), backedUp('2026-10-25'))).message).toContain(
      'its backup is 31 days old, and at most 30 days are allowed',
    );
  });

  it('with a record that names no backup, or one still to come, is refused where a backup is asked for', async () => {
    expect(onlyFinding(await underRule(guarded, volume(), retired())).message).toContain(
      'its record names no backup',
    );
    expect(onlyFinding(await underRule(guarded, volume(), backedUp('2026-11-26'))).message).toContain(
      'in the future',
    );
    expect((await underRule(rule, volume(), retired())).verdict).toBe('pass');
  });

  it('of one volume with another created in its seat is a deletion all the same', async () => {
    const member = (name: string): string =>
      `volumes:\n  ${name}: { size: 40 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [${name}] }\n`;
    expect((await underRule(rule, member('plates-0'), member('plates-9'))).verdict).toBe('fail');
  });

  it('is not what a rename is', async () => {
    const renamed = 'volumes:\n  p0: { size: 40 GiB, tier: bulk, formerly: plates-0 }\n';
    expect((await underRule(guarded, volume(', protected: true'), renamed)).findings).toEqual([]);
  });

  it('that main has carried out long ago is none of this change', async () => {
    expect((await underRule(guarded, '', volume())).findings).toEqual([]);
  });
});

describe('what a volume holds, lost without the volume', () => {
  const books = (rest: string, more = ''): string =>
    `volumes:\n  books: { size: 80 GiB, tier: bulk${more}${rest} }\n`;
  const ext4 = ', file-system: { mount: /books, type: ext4 }';
  const xfs = ', file-system: { mount: /books, type: xfs }';
  const record = (key: string): string =>
    `retired:\n  - { ${key}, on: 2026-11-25, reason: moved to the archive, backup: vault/books, backed-up: 2026-11-20 }\n`;

  it('by a file system made over is refused without a record, and on a protected volume with one, too', async () => {
    expect(onlyFinding(await underRule(guarded, books(ext4), books(xfs))).message).toBe(
      'file system /books on books would be reformatted from ext4 to xfs, without what it holds, and no entry under retired: gives a reason',
    );
    const recorded = books(xfs) + record('file-system: "books:/books"');
    expect((await underRule(guarded, books(ext4), recorded)).verdict).toBe('pass');
    const guardedBooks = books(ext4, ', protected: true');
    const both = books(xfs, ', protected: true') + record('file-system: "books:/books"');
    expect(onlyFinding(await underRule(guarded, guardedBooks, both)).message).toContain(
      'its volume books is protected',
    );
  });

  it('by a file system deleted, or its group dissolved, is refused', async () => {
    expect((await underRule(guarded, books(ext4), books(''))).verdict).toBe('fail');
    const group = (rest: string): string => `volumes:\n  a: { size: 40 GiB, tier: bulk }\n${rest}`;
    const plates =
      'volume-groups:\n  plates: { members: [a], file-systems: { /plates: { size: 30 GiB, type: xfs } } }\n';
    expect(onlyFinding(await underRule(guarded, group(plates), group(''))).message).toContain(
      'volume group plates would be dissolved, without what /plates holds',
    );
    const renamed = plates.replace('plates: {', 'charts: { formerly: plates,');
    expect((await underRule(guarded, group(plates), group(renamed))).verdict).toBe('pass');
  });

  it('by a move to another site is refused, under a new name, too', async () => {
    const at = (site: string, name = 'books', rest = ''): string =>
      `site: ${site}\nvolumes:\n  ${name}: { size: 80 GiB, tier: bulk${rest} }\n`;
    expect((await underRule(guarded, at('north-quay'), at('south-quay'))).verdict).toBe('fail');
    const grab = at('south-quay', 'ledgers', ', formerly: books');
    expect(onlyFinding(await underRule(guarded, at('north-quay'), grab)).message).toContain(
      'created again at site south-quay',
    );
  });

  it('up to and on the day until which it is to be kept is refused; on the day after it is not', async () => {
    const kept = (day: string): string => books('', `, retain-until: ${day}`);
    const gone = record('volume: books');
    expect(onlyFinding(await underRule(guarded, kept('2026-11-26'), gone)).message).toContain(
      'it is to be kept until 2026-11-26',
    );
    expect((await underRule(guarded, kept('2026-11-25'), gone)).verdict).toBe('fail');
    expect((await underRule(guarded, kept('2026-11-24'), gone)).verdict).toBe('pass');
  });

  it('is announced by a retention date that is brought forward or taken away', async () => {
    const kept = (rest: string): string => books('', rest);
    const main = kept(', retain-until: 2027-03-31');
    for (const after of [kept(''), kept(', retain-until: 2026-12-31')]) {
      const { level, message } = onlyFinding(await underRule(guarded, main, after));
      expect([level, message]).toEqual([
        'warning',
        expect.stringContaining('was to be kept until 2027-03-31'),
      ]);
    }
    expect((await underRule(guarded, main, kept(', retain-until: 2027-12-31'))).findings).toEqual([]);
    expect((await underRule(guarded, kept(', retain-until: 2026-01-01'), kept(''))).findings).toEqual([]);
  });

  it('by being taken into a group, or given a first file system, is warned of, and refused where it is protected', async () => {
    const plain = books('');
    const grouped = `${books('')}volume-groups:\n  ledger: { members: [books] }\n`;
    for (const after of [grouped, books(ext4)]) {
      const { level, message } = onlyFinding(await underRule(guarded, plain, after));
      expect([level, message]).toEqual([
        'warning',
        expect.stringContaining('would overwrite any data on it'),
      ]);
    }
    const guardedVolume = books('', ', protected: true');
    expect((await underRule(guarded, guardedVolume, books(ext4, ', protected: true'))).verdict).toBe('fail');
    const declared = ext4.replace('ext4 }', 'ext4, existing: true }');
    expect((await underRule(guarded, plain, books(declared))).findings).toEqual([]);
  });
});

describe('a volume that main itself says holds something', () => {
  const two = 'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\n';
  const groups = (x: string, y: string): string =>
    `${two}volume-groups:\n  x: { members: [${x}], file-systems: { /x: { size: 30 GiB, type: ext4 } } }\n  y: { members: [${y}], file-systems: { /y: { size: 30 GiB, type: ext4 } } }\n`;

  it('is not traded between two groups, each writing over what the other had on it', async () => {
    const judgement = await underRule(guarded, groups('a', 'b'), groups('b', 'a'));
    expect(judgement.findings.map(({ level, fails, message }) => [level, fails, message])).toEqual([
      ['error', true, expect.stringContaining('b is a member of the volume group y and holds part of /y')],
      ['error', true, expect.stringContaining('a is a member of the volume group x and holds part of /x')],
    ]);
  });

  it('is not taken into a group from under the server that starts from it, even where it declares no file system', async () => {
    const booting = `servers:\n  scanner: { boot: a, power: stopped }\n${two}`;
    const { level, message } = onlyFinding(
      await underRule(guarded, booting, `${booting}volume-groups:\n  x: { members: [a] }\n`),
    );
    expect([level, message]).toEqual(['error', expect.stringContaining('scanner starts from a')]);
  });

  it('goes with a record of a recent backup, like any other', async () => {
    const record = (name: string): string =>
      `  - { volume: ${name}, on: 2026-11-25, reason: laid out anew, backup: vault/${name}, backed-up: 2026-11-24 }\n`;
    const recorded = `${groups('b', 'a')}retired:\n${record('a')}${record('b')}`;
    expect((await underRule(guarded, groups('a', 'b'), recorded)).verdict).toBe('pass');
  });
});

describe('a protected volume that a group takes in', () => {
  const before = volume(', protected: true');
  const taken = (name: string, rest = ''): string =>
    `volumes:\n  ${name}: { size: 40 GiB, tier: bulk, protected: true${rest} }\nvolume-groups:\n  plates: { members: [${name}] }\n`;

  it.each([
    ['under its own name', taken('plates-0')],
    ['under another name, given in the same branch', taken('plates-1', ', formerly: plates-0')],
  ])('is refused %s', async (_story, after) => {
    const { level, message } = onlyFinding(await underRule(rule, before, after));
    expect([level, message]).toEqual(['error', expect.stringMatching(/plates-[01] is protected/)]);
  });
});

describe('a record counts for the life of the volume that ended with it', () => {
  const there = 'volumes:\n  plates-0: { size: 40 GiB, tier: bulk }\n';
  const lines = (...days: readonly string[]): string =>
    `retired:\n${days.map((day) => `  - { volume: plates-0, on: ${day}, reason: gone by ${day} }\n`).join('')}`;

  it.each([
    [
      'the record of an earlier one, on main while it is there',
      lines('2026-01-10'),
      lines('2026-01-10'),
      'an earlier one',
    ],
    [
      'that record, worded anew',
      lines('2026-01-10'),
      lines('2026-01-10').replace('gone by', 'went by'),
      'an earlier one',
    ],
    [
      'a record dated before an earlier one went',
      lines('2026-01-10'),
      lines('2026-01-10', '2025-12-01'),
      'gone by 2026-01-10',
    ],
    ['a record dated after the day of the judgement', '', lines('2026-11-26'), 'which is in the future'],
    [
      'a record that comes with the branch and is dated long back',
      '',
      lines('2026-08-26'),
      'more than 90 days ago, and main still has plates-0',
    ],
  ])('so not: %s', async (_what, before, after, why) => {
    const { verdict, reasons } = await underRule(rule, there + before, after);
    expect(verdict).toBe('fail');
    expect(reasons.join()).toContain(why);
  });

  it.each([
    ['a record of its own beside the earlier one', lines('2026-01-10'), lines('2026-01-10', '2026-11-25')],
    [
      'a record of the day on which it came again and went',
      lines('2026-11-20'),
      lines('2026-11-20', '2026-11-20').replace('gone by', 'and again by'),
    ],
    [
      'a record that an earlier one, dated later by a slip, would shadow',
      lines('2036-01-10'),
      lines('2036-01-10', '2026-11-25'),
    ],
    ['a record of a branch that lay open for a season', '', lines('2026-08-27')],
    ['a record in place of the earlier one', lines('2026-01-10'), lines('2026-11-25')],
  ])('and so: %s', async (_what, before, after) => {
    expect((await underRule(rule, there + before, after)).verdict).toBe('pass');
  });
});
