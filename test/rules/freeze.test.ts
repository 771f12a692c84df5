import { describe, expect, it } from 'vitest';
import { judgedBranch, refusedFor, said } from '../estate/builder.ts';

const yearEnd = '{ rule: freeze, from: 2026-12-18, until: 2027-01-04, reason: the books are closed }';

const main =
  'team: ledger\nvolumes:\n  books: { size: 50 GiB, tier: bulk }\n  old: { size: 20 GiB, tier: bulk }\n';
const deleted = 'team: ledger\nvolumes:\n  books: { size: 50 GiB, tier: bulk }\n';
const grown = main.replace('50 GiB', '60 GiB');

const on = async (day: string, branch: string, entry = yearEnd, base = main) =>
  said(await judgedBranch({ main: base, branch, entries: [entry], on: day }));

describe('a freeze', () => {
  it('lets a deletion pass on the day before and the day after', async () => {
    expect(await on('2026-12-17', deleted)).toEqual([]);
    expect(await on('2027-01-05', deleted)).toEqual([]);
  });

  it('refuses it on the first and on the last day, and says why', async () => {
    const message =
      'error new old: volume old is deleted (20 GiB) during the freeze from 2026-12-18 to 2027-01-04 (the books are closed)';
    expect(await on('2026-12-18', deleted)).toEqual([message]);
    expect(await on('2027-01-04', deleted)).toEqual([message]);
  });

  it('lets growth pass, which harms nobody, unless it is for all changes', async () => {
    expect(await on('2026-12-24', grown)).toEqual([]);
    expect(
      await on('2026-12-24', grown, yearEnd.replace('freeze,', 'freeze, all-changes: true,')),
    ).toHaveLength(1);
  });

  it('refuses every deletion there is, each by itself, so that a waiver can be for one', async () => {
    expect(await on('2026-12-24', 'team: ledger\nvolumes: {}\n')).toHaveLength(2);
  });

  it('leaves alone what was deleted before the freeze began', async () => {
    expect(await on('2026-12-24', deleted, yearEnd, deleted)).toEqual([]);
  });

  it('holds with no end where none is given', async () => {
    expect(await on('2031-01-01', deleted, '{ rule: freeze, from: 2026-12-18 }')).toHaveLength(1);
    expect(await on('2026-12-17', deleted, '{ rule: freeze, from: 2026-12-18 }')).toEqual([]);
    expect((await on('2026-02-01', deleted, '{ rule: freeze, until: 2026-12-18 }'))[0]).toContain(
      'the freeze until 2026-12-18',
    );
  });

  it('is for its own team alone', async () => {
    expect(await on('2026-12-24', deleted, yearEnd.replace(' }', ', where: { teams: [imagery] } }'))).toEqual(
      [],
    );
  });

  it('is not got round by moving the volume to another team as it shrinks', async () => {
    const moved = deleted.replace('team: ledger', 'team: imagery').replace('50 GiB', '40 GiB');
    const findings = await on('2026-12-24', moved, yearEnd.replace(' }', ', where: { teams: [ledger] } }'));
    expect(findings.some((each) => each.includes('books shrinks'))).toBe(true);
  });

  it('that ends before it begins is refused when the pack is read, at its place', () => {
    expect(refusedFor('{ rule: freeze, from: 2026-12-18, until: 2026-01-04 }')).toEqual([
      '2:46 the freeze ends on 2026-01-04, before it begins on 2026-12-18',
    ]);
  });

  it('with no dates at all is refused, too', () => {
    expect(refusedFor('{ rule: freeze }')).toHaveLength(1);
    expect(refusedFor('{ rule: freeze, all-changes: true }').join()).toContain(
      'has none of the parameters it needs',
    );
  });
});
