import { describe, expect, it } from 'vitest';
import { onlyFinding, underRule } from '../estate/builder.ts';

const rule = 'rule: deletion-prepared';
const guarded = `${rule}, backup-within: 30`;
const volume = (rest = ''): string => `volumes:\n  plates-0: { size: 40 GiB, tier: bulk${rest} }\n`;
const attached = `servers: { scanner: {} }\n${volume()}attachments: [ { volume: plates-0, server: scanner } ]\n`;
const retired = (backup = ''): string =>
  `retired:\n  - { volume: plates-0, on: 2026-11-25, reason: superseded by plates-1${backup} }\n`;
const backedUp = (day: string): string => retired(`, backup: vault/plates-0, backed-up: ${day}`);

describe('a deletion', () => {
  it('of a detached volume with its reason and a recent backup on record is prepared', async () => {
    expect((await underRule(guarded, volume(), backedUp('2026-11-20'))).verdict).toBe('pass');
  });

  it('without a record is refused where it stood on main, with the cautions', async () => {
    const { message, place, advice } = onlyFinding(await underRule(rule, volume(), ''));
    expect(message).toBe(
      'volume plates-0 (40 GiB) would be deleted for good, and no line under retired: says why',
    );
    expect(place).toMatchObject({ revision: 'base', file: 'storage/imagery.yaml', line: 2 });
    expect(advice).toContain('unmounted and quiesced');
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

  it('holds with a backup as old as is allowed, and not a day older', async () => {
    expect((await underRule(guarded, volume(), backedUp('2026-10-26'))).verdict).toBe('pass');
    expect(onlyFinding(await underRule(guarded, volume(), backedUp('2026-10-25'))).message).toContain(
      'its backup is 31 days old, where 30 days are allowed',
    );
  });

  it('with a record that names no backup, or one still to come, is refused where a backup is asked for', async () => {
    expect(onlyFinding(await underRule(guarded, volume(), retired())).message).toContain(
      'its record names no backup',
    );
    expect(onlyFinding(await underRule(guarded, volume(), backedUp('2026-11-26'))).message).toContain(
      'still to come',
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
