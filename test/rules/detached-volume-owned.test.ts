import { describe, expect, it } from 'vitest';
import { onlyFinding, standing, underRule } from '../estate/builder.ts';

const rule = 'rule: detached-volume-owned';
const volume = (rest: string): string => `volumes:\n  master-plates: { size: 100 GiB, tier: bulk${rest} }\n`;
const kept = (until: string, more = ''): string =>
  volume(`, team: imagery, reason: travels between servers, retain-until: ${until}${more}`);
const attached = `servers: { scanner: {} }\n${volume('')}attachments: [ { volume: master-plates, server: scanner } ]\n`;

describe('a detached volume', () => {
  it('with an owner, a reason and a date is in order', async () => {
    expect((await underRule(rule, '', kept('2027-03-31'))).findings).toEqual([]);
    expect((await underRule(rule, '', kept('2027-03-31').replace('team:', 'owner:'))).findings).toEqual([]);
  });

  it('with none of them is paid for by everybody and deleted by nobody', async () => {
    const judgement = await underRule(rule, attached, volume(''));
    expect(judgement.verdict).toBe('fail');
    expect(onlyFinding(judgement).message).toBe(
      'volume master-plates is unattached and still billed, at 4.50 EUR a month, and has no team or owner and gives no reason and has no retention date',
    );
  });

  it('attached needs none of them', async () => {
    expect((await underRule(rule, '', attached)).findings).toEqual([]);
  });

  it('may be kept on its last day, and not on the next', async () => {
    const on = async (day: string) => (await underRule(rule, '', kept('2026-11-25'), { on: day })).verdict;
    expect(await on('2026-11-25')).toBe('pass');
    expect(await on('2026-11-26')).toBe('fail');
  });

  it('has the grace that its pack gives', async () => {
    const on = async (day: string) =>
      (await underRule(`${rule}, grace: 7`, '', kept('2026-11-25'), { on: day })).verdict;
    expect(await on('2026-12-02')).toBe('pass');
    expect(await on('2026-12-03')).toBe('fail');
  });

  it('is not kept further ahead than its pack allows', async () => {
    const until = async (day: string) => (await underRule(`${rule}, at-most: 30`, '', kept(day))).verdict;
    expect(await until('2026-12-25')).toBe('pass');
    expect(await until('2026-12-26')).toBe('fail');
  });
});

describe('already out of order on main', () => {
  it('does not fail a change that leaves it be, or that mends a part', async () => {
    expect(standing(await underRule(rule, volume(''), `# tidied\n${volume('')}`))).toEqual([
      'stands: error unchanged volume master-plates',
    ]);
    expect((await underRule(rule, volume(''), volume(', team: imagery'))).verdict).toBe('pass');
  });

  it('fails a change that gives a reason and takes the owner away', async () => {
    const after = volume(', reason: kept, retain-until: 2027-01-01');
    expect((await underRule(rule, volume(', team: imagery, retain-until: 2027-01-01'), after)).verdict).toBe(
      'fail',
    );
  });

  it('fails a change that puts a date further off which is too far already', async () => {
    const entry = `${rule}, at-most: 30`;
    expect((await underRule(entry, kept('2027-06-01'), kept('2028-06-01'))).verdict).toBe('fail');
    expect((await underRule(entry, kept('2028-06-01'), kept('2027-06-01'))).verdict).toBe('pass');
  });

  it('is gone once the volume is attached', async () => {
    expect(
      (await underRule(rule, volume(''), attached)).findings.map(({ baselineState }) => baselineState),
    ).toEqual(['absent']);
  });
});
