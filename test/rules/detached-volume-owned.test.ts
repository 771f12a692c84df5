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

describe('a volume parked on a server that is off and costs nothing', () => {
  const parked = (server: string, rest = ''): string =>
    `servers: { scanner: { ${server} } }\n${volume(rest)}attachments: [ { volume: master-plates, server: scanner } ]\n`;

  it('is forgotten as easily as one that is detached', async () => {
    const judgement = await underRule(rule, attached, parked('power: stopped'));
    expect(judgement.verdict).toBe('fail');
    expect(onlyFinding(judgement).message).toBe(
      'volume master-plates is attached only to scanner, which is stopped and costs nothing; the volume itself is still billed, at 4.50 EUR a month, and has no team or owner and gives no reason and has no retention date',
    );
  });

  it('is nothing to tell of where the server runs, or is paid for while it is off', async () => {
    expect((await underRule(rule, '', parked('power: running'))).findings).toEqual([]);
    expect((await underRule(rule, '', parked('power: stopped, type: small'))).findings).toEqual([]);
  });

  it('is told of on the day after it was to be kept, though nothing else changed', async () => {
    const text = parked('power: stopped', ', team: imagery, reason: travels, retain-until: 2026-11-25');
    const on = async (day: string) => (await underRule(rule, '', text, { on: day })).verdict;
    expect([await on('2026-11-25'), await on('2026-11-26')]).toEqual(['pass', 'fail']);
  });
});

it('kept too long ahead and kept past its date are two faults: mending one does not excuse the other', async () => {
  const judgement = await underRule(`${rule}, at-most: 30`, kept('2027-12-31'), kept('2026-11-20'));
  expect([judgement.verdict, ...standing(judgement)]).toEqual([
    'fail',
    'fails: error new volume master-plates',
  ]);
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
