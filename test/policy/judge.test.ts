import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Files,
  gannetPoint,
  judged,
  judgeFiles,
  line,
  onlyFinding,
  pack,
  standing,
} from '../estate/builder.ts';
import { change, filesOf } from '../estate/random.ts';

const storage = 'storage/imagery.yaml';
const volume = (size: string, more = ''): Files => ({
  [storage]: `team: imagery\nvolumes:\n  plates-1: { size: ${size}, tier: steady${more} }\n`,
});
const limit = (amount: string): string =>
  `name: imagery-limit, rule: max-monthly-spend, where: { teams: [imagery] }, limit: "${amount}"`;

describe('the policy comes from main', () => {
  it('a branch that raises its own limit and spends it is refused, and told what its own policy would have said', async () => {
    const judgement = await judged(
      { ...pack(limit('10.00')), ...volume('100 GiB') },
      { ...pack(limit('100.00')), ...volume('500 GiB') },
    );
    expect(judgement.verdict).toBe('fail');
    expect(judgement.policyFrom).toBe('base');
    expect(judgement.proposed).toEqual({ verdict: 'pass', reasons: ['no rule objects to 1 change'] });
    expect(judgement.policyChanges.map(({ direction, key }) => [direction, key])).toEqual([
      ['looser', 'limit'],
    ]);
  });

  it('a branch that draws its limit tighter is told that it would not pass its own policy', async () => {
    const judgement = await judged(
      { ...pack(limit('10.00')), ...volume('10 GiB') },
      { ...pack(limit('5.00')), ...volume('90 GiB') },
    );
    expect(judgement.verdict).toBe('pass');
    expect(judgement.proposed?.verdict).toBe('fail');
  });

  it('a branch that leaves the policy alone is told of none', async () => {
    const judgement = await judged({ ...pack(limit('10.00')), ...volume('10 GiB') }, volume('20 GiB'));
    expect(judgement.proposed).toBeUndefined();
    expect(judgement.policyChanges).toEqual([]);
  });

  it('where main has no pack at all, the one that comes judges, and the judgement says whose it was', async () => {
    const { 'policies/storage.yaml': _none, ...bare } = { ...gannetPoint, ...volume('100 GiB') };
    const adopted = await judgeFiles(bare, { ...bare, ...pack(limit('5.00')), ...volume('110 GiB') });
    expect(adopted.verdict).toBe('fail');
    if (adopted.verdict === 'not judged') throw new Error('it was to be judged');
    expect(adopted.policyFrom).toBe('head');
    expect(adopted.policyChanges).toEqual([]);
    expect(standing(adopted)).toEqual(['fails: error updated team imagery']);
  });

  it('an empty pack on main is a policy: nothing that the branch brings along judges it', async () => {
    const judgement = await judged(
      { 'policies/storage.yaml': 'rules: []\n', ...volume('1 GiB') },
      { ...pack(limit('0.01')), ...volume('100 GiB') },
    );
    expect([judgement.verdict, judgement.policyFrom]).toEqual(['pass', 'base']);
  });

  it('a quota is that of main, too', async () => {
    const settings = (size: string): Files => ({
      'ullage.yaml': `currency: EUR\nsites:\n  north-quay: { quota: { size: ${size} } }\n`,
    });
    const sited = (size: string): Files => volume(size, ', site: north-quay');
    const judgement = await judged(
      { ...pack('rule: minimum-headroom, of: quota'), ...settings('50 GiB'), ...sited('10 GiB') },
      { ...settings('500 GiB'), ...sited('100 GiB') },
    );
    expect(judgement.verdict).toBe('fail');
    expect(judgement.proposed?.verdict).toBe('pass');
  });
});

describe('a waiver', () => {
  const step = 'rule: growth-step, times: 2';
  const waiver = (dates: string, { rule = 'growth-step', subject = 'plates-1', more = '' } = {}): Files => ({
    'waivers/a.yaml': `waivers:\n  - { rule: ${rule}, subject: ${subject}, reason: spring survey, approved-by: head of imagery, ${dates}${more} }\n`,
  });
  const may = 'from: 2026-05-01, until: 2026-05-31';
  const grow = (files: Files, on: string) =>
    judged({ ...pack(step), ...volume('10 GiB'), ...files }, volume('100 GiB'), { on });

  it('lets its one finding stand, and the finding says by whose leave', async () => {
    const judgement = await grow(waiver(may), '2026-05-15');
    expect(judgement.verdict).toBe('pass');
    expect(onlyFinding(judgement)).toMatchObject({ fails: false, waiver: { approvedBy: 'head of imagery' } });
    expect(judgement.waivers.map(({ state }) => state)).toEqual(['used']);
    expect(judgement.reasons).toContain('1 finding waived');
  });

  it.each([
    ['2026-04-30', 'fail', 'not yet'],
    ['2026-05-01', 'pass', 'used'],
    ['2026-05-31', 'pass', 'used'],
    ['2026-06-01', 'fail', 'expired'],
  ])('on %s the verdict is %s: it is %s', async (on, verdict, state) => {
    const judgement = await grow(waiver(may), on);
    expect([judgement.verdict, judgement.waivers[0]?.state]).toEqual([verdict, state]);
  });

  it.each([
    ['for another subject is not used', { subject: 'plates-2' }, 'waiting'],
    ['for another rule is not used', { rule: 'no-shrink' }, 'waiting'],
    ['for a rule that is not there is said so', { rule: 'growth-stop' }, 'unknown rule'],
    ['for a subject of another kind is not used', { more: ', kind: server' }, 'waiting'],
  ])('%s', async (_what, other, state) => {
    const judgement = await grow(waiver(may, other), '2026-05-15');
    expect([judgement.verdict, judgement.waivers[0]?.state]).toEqual(['fail', state]);
  });

  it('that the branch brings along does not serve it', async () => {
    const judgement = await judged(
      { ...pack(step), ...volume('10 GiB') },
      { ...volume('100 GiB'), ...waiver(may) },
      { on: '2026-05-15' },
    );
    expect(judgement.verdict).toBe('fail');
    expect(judgement.waivers).toEqual([]);
    expect(judgement.proposed?.verdict).toBe('pass');
  });

  it('may name the entry instead of the rule', async () => {
    const named = { ...pack(`name: small-steps, ${step}`), ...waiver(may, { rule: 'small-steps' }) };
    expect((await grow(named, '2026-05-15')).verdict).toBe('pass');
  });
});

describe('packs', () => {
  const names = async (text: string): Promise<readonly string[]> =>
    (await judged({ 'policies/storage.yaml': text, ...volume('1 GiB') }, {})).rules.map(({ name }) => name);
  const bound = async (text: string) =>
    (await judged({ 'policies/storage.yaml': text, ...volume('1 GiB') }, {})).rules.find(
      ({ name }) => name === 'growth-step',
    )?.entry;

  it('of the repository override those that ship, entry by entry and by name', async () => {
    expect(await bound('use: [starter]\n')).toMatchObject({ times: 8 });
    expect(await bound('use: [starter]\nrules: [ { rule: growth-step, by: 1 GiB } ]\n')).toEqual(
      expect.not.objectContaining({ times: 8 }),
    );
  });

  it('may switch an entry off, and nothing else', async () => {
    const starter = await names('use: [starter]\n');
    const without = await names(
      'use: [starter]\nrules: [ { rule: growth-step, times: 9, enabled: false } ]\n',
    );
    expect(starter.filter((name) => !without.includes(name))).toEqual(['growth-step']);
  });

  it('strict builds on starter, in whichever order the two are named', async () => {
    const strict = await bound('use: [strict]\n');
    expect(strict).toMatchObject({ times: 4, by: '2 TiB' });
    expect(await bound('use: [starter, strict]\n')).toEqual(strict);
    expect(await bound('use: [strict, starter]\n')).toEqual(strict);
    expect(await names('use: [strict]\n')).toEqual(
      expect.arrayContaining([...(await names('use: [starter]\n'))]),
    );
  });

  it('that nobody ships, and entries of one name, are refused where they stand', async () => {
    const refused = async (text: string): Promise<readonly string[]> => {
      const judgement = await judgeFiles({ ...gannetPoint, 'policies/storage.yaml': text }, gannetPoint);
      return judgement.verdict === 'not judged' ? judgement.problems.map(line) : [];
    };
    expect(await refused('use: [strickt]\n')).toEqual([
      'policies/storage.yaml:1:7: no pack named strickt ships with Ullage or is listed in ullage.yaml',
    ]);
    expect(await refused('rules:\n  - { rule: no-shrink }\n  - { rule: no-shrink, level: note }\n')).toEqual([
      'policies/storage.yaml:3:5: the rule entry no-shrink is there twice: here and at policies/storage.yaml:2',
    ]);
  });
});

describe('what is not judged', () => {
  const problems = async (files: Files, base: Files = {}): Promise<readonly string[]> => {
    const judgement = await judgeFiles({ ...gannetPoint, ...base }, { ...gannetPoint, ...files });
    return judgement.verdict === 'not judged'
      ? judgement.problems.map(line)
      : [`judged: ${judgement.verdict}`];
  };

  it('a broken file, an unknown tier, a dangling reference and a name twice, all in one run', async () => {
    const found = await problems({
      'storage/a.yaml': 'volumes: [\n',
      'storage/b.yaml': 'attachments: [ { volume: gone, server: nowhere } ]\n',
      'storage/c.yaml': 'servers: { scanner: {} }\n',
      'storage/d.yaml': 'servers: { scanner: {} }\n',
      'prices/2026.yaml': 'from: 2026-01-01\ncurrency: USD\n',
      'waivers/a.yaml': 'waivers: [ {} ]\n',
    });
    for (const file of ['storage/a.yaml', 'storage/d.yaml', 'prices/2026.yaml', 'waivers/a.yaml']) {
      expect(found.filter((each) => each.startsWith(file)).length).toBeGreaterThan(0);
    }
  });

  it('no price list, or none in force on the day', async () => {
    const { 'prices/2026.yaml': _none, ...bare } = gannetPoint;
    const judgement = await judgeFiles({ ...bare, ...volume('1 GiB') }, { ...bare, ...volume('2 GiB') });
    expect(judgement.verdict).toBe('not judged');
    const early = await judgeFiles({ ...gannetPoint }, { ...gannetPoint }, { on: '2025-06-01' });
    expect(early.reasons.join()).toContain(
      'no price list is in force on 2025-06-01; the earliest applies from 2026-01-01',
    );
  });

  it('a tier that the price list does not know', async () => {
    expect(await problems(volume('1 GiB', ''), {})).toEqual(['judged: pass']);
    const found = await problems({ [storage]: 'volumes:\n  a: { size: 1 GiB, tier: steadi }\n' });
    expect(found.join()).toContain('names the tier steadi');
  });

  it('a branch that takes a tier out of the list which is still in use', async () => {
    const base = volume('1 GiB');
    const cheaper = {
      'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers: { bulk: { rate: "1", per: GiB-month } }\n',
    };
    expect((await problems({ ...base, ...cheaper }, base)).join()).toContain('names the tier steady');
  });
});

describe('only a new or worse finding at the level error fails', () => {
  const shrink = async (level: string, failOn: 'error' | 'warning' = 'error') =>
    (
      await judged({ ...pack(`rule: no-shrink, level: ${level}`), ...volume('2 GiB') }, volume('1 GiB'), {
        failOn,
      })
    ).verdict;

  it('a warning and a note do not; --fail-on warning makes it stricter', async () => {
    expect(await shrink('error')).toBe('fail');
    expect(await shrink('warning')).toBe('pass');
    expect(await shrink('note', 'warning')).toBe('pass');
    expect(await shrink('warning', 'warning')).toBe('fail');
  });
});

describe('the work that is spared does not show', () => {
  const policy = pack(
    'rule: exclusive-attachment',
    'rule: group-travels-whole',
    'rule: same-site',
    'rule: detached-volume-owned',
    'rule: boot-volume-stays',
    'rule: no-shrink',
    'rule: deletion-prepared',
    'rule: growth-step, times: 2',
    'name: each-team, rule: max-monthly-spend, each: team, limit: "200.00", warn-from: 0.5',
    'name: all, rule: max-monthly-spend, limit: "500.00"',
    'name: group-room, rule: minimum-headroom, of: volume-group, share: 0.1',
    'name: slot-room, rule: minimum-headroom, of: attachment-slots, count: 31',
    'name: quota-room, rule: minimum-headroom, of: quota, share: 0.99',
  );

  /** One file is looked at whole; of many, only what differs and what it is tied to. */
  it('a change in few of many files is judged as the same change in one file', async () => {
    const names = fc.uniqueArray(fc.constantFrom('s0', 's1', 'v0', 'v1', 'v2', 'g0'));
    await fc.assert(
      fc.asyncProperty(change, names, async ([before, after], renamed) => {
        const spread = { renamed: new Set(renamed) };
        const to = (): number => 0;
        const many = await judged({ ...policy, ...filesOf(before) }, filesOf(after, spread));
        const one = await judged(
          { ...policy, ...filesOf(before, { to }) },
          filesOf(after, { ...spread, to }),
        );
        const said = ({ verdict, findings, cost }: typeof many) => ({
          verdict,
          after: cost.after.toFixed(),
          findings: findings.map(({ entry, level, baselineState, subject, message, fails, facet }) =>
            JSON.stringify({ entry, level, baselineState, subject, message, fails, facet }),
          ),
        });
        expect(said(many)).toEqual(said(one));
      }),
      { numRuns: 40 },
    );
  });

  it('an estate judged against itself never fails, whatever is wrong with it', async () => {
    await fc.assert(
      fc.asyncProperty(change, async ([model]) => {
        const judgement = await judged({ ...policy, ...filesOf(model) }, filesOf(model, { backwards: true }));
        expect(judgement.verdict).toBe('pass');
        expect(judgement.changes).toEqual([]);
        expect(judgement.findings.filter(({ baselineState }) => baselineState !== 'unchanged')).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('renaming everything is no worse than leaving it', async () => {
    const all = new Set(['s0', 's1', 's2', 'v0', 'v1', 'v2', 'v3', 'v4', 'v5', 'g0', 'g1']);
    await fc.assert(
      fc.asyncProperty(change, async ([model]) => {
        const judgement = await judged({ ...policy, ...filesOf(model) }, filesOf(model, { renamed: all }));
        expect(
          judgement.findings
            .filter(({ baselineState }) => baselineState !== 'unchanged')
            .map(({ message }) => message),
        ).toEqual([]);
        expect(judgement.verdict).toBe('pass');
      }),
      { numRuns: 40 },
    );
  });
});
