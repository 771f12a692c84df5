import { describe, expect, it } from 'vitest';
import { gannetPoint, judged, onlyFinding, pack, standing, underRule } from '../estate/builder.ts';

/** At 0.10 EUR a GiB and month, ten GiB are one euro. */
const volume = (size: string, more = ''): string =>
  `team: imagery\nvolumes:\n  plates-1: { size: ${size}, tier: steady${more} }\n`;
const limit = 'rule: max-monthly-spend, where: { teams: [imagery] }, limit: "10.00"';

describe('a limit', () => {
  it('holds at equality, and breaks one minor unit above', async () => {
    expect((await underRule(limit, volume('1 GiB'), volume('100 GiB'))).verdict).toBe('pass');
    const { message } = onlyFinding(await underRule(limit, volume('1 GiB'), volume('100.125 GiB')));
    expect(message).toBe('team imagery would cost 10.01 EUR a month, 0.01 EUR over the limit of 10.00 EUR');
  });

  it('breaks 10^-20 above, where a float would not see it, and the message does not say 0.00', async () => {
    const fine = {
      files: {
        'prices/2026.yaml':
          'from: 2026-01-01\ncurrency: EUR\ntiers:\n  fine: { per: GB-month, flat: "10.00", rate: "0.000000000000001" }\n  free: { per: GB-month, flat: "10.00", rate: "0" }\n',
      },
    };
    const at = (tier: string): string =>
      `team: imagery\nvolumes:\n  plates-1: { size: 10 kB, tier: ${tier} }\n`;
    expect((await underRule(limit, at('free'), at('free'), fine)).verdict).toBe('pass');
    const { message } = onlyFinding(await underRule(limit, at('free'), at('fine'), fine));
    expect(message).toContain('less than 0.01 EUR over the limit');
  });

  it('is for what is in its scope together', async () => {
    const two = (team: string): string =>
      `volumes:\n  a: { size: 60 GiB, tier: steady, team: imagery }\n  b: { size: 60 GiB, tier: steady, team: ${team} }\n`;
    expect((await underRule(limit, two('ledger'), two('imagery'))).verdict).toBe('fail');
    expect((await underRule(limit, two('ledger'), `# tidied\n${two('ledger')}`)).findings).toEqual([]);
  });

  it('counts servers with their storage', async () => {
    const server = 'team: imagery\nservers:\n  scanner: { type: small }\n';
    expect((await underRule(limit, '', server)).reasons.join()).toContain('22.63 EUR a month');
  });

  it('holds from its first day to its last', async () => {
    const dated = `${limit}, from: 2026-12-01, until: 2026-12-31`;
    const on = async (day: string) =>
      (await underRule(dated, volume('1 GiB'), volume('200 GiB'), { on: day })).verdict;
    expect(await Promise.all(['2026-11-30', '2026-12-01', '2026-12-31', '2027-01-01'].map(on))).toEqual([
      'pass',
      'fail',
      'fail',
      'pass',
    ]);
  });

  it('may be one for each team, and names the team that is over', async () => {
    const each = 'rule: max-monthly-spend, each: team, limit: "10.00"';
    const two = (size: string): string =>
      `volumes:\n  a: { size: 90 GiB, tier: steady, team: ledger }\n  b: { size: ${size}, tier: steady, team: imagery }\n`;
    expect(standing(await underRule(each, two('90 GiB'), two('101 GiB')))).toEqual([
      'fails: error new team imagery',
    ]);
  });

  it('for each team counts what names none as one bucket: leaving the team out is no way out', async () => {
    const each = 'rule: max-monthly-spend, each: team, limit: "10.00"';
    const volume = (team: string) => `volumes:\n  plates-1: { size: 101 GiB, tier: steady${team} }\n`;
    const judgement = await underRule(each, 'volumes: {}\n', volume(''));
    expect(onlyFinding(judgement).message).toBe(
      'what has no team would cost 10.10 EUR a month, 0.10 EUR over the limit of 10.00 EUR',
    );
    expect((await underRule(each, volume(', team: imagery'), volume(''))).verdict).toBe('fail');
  });

  it.each([
    ['sites: [north-quay]', 'site north-quay'],
    ['labels: { survey: spring }', 'label survey=spring'],
    ['teams: [imagery], sites: [north-quay]', 'scope max-monthly-spend'],
    ['tiers: [steady]', 'scope max-monthly-spend'],
  ])('for %s is about %s', async (where, subject) => {
    const entry = `rule: max-monthly-spend, where: { ${where} }, limit: "10.00"`;
    const at = (size: string): string => volume(size, ', site: north-quay, labels: { survey: spring }');
    expect(standing(await underRule(entry, at('1 GiB'), at('200 GiB')))).toEqual([
      `fails: error new ${subject}`,
    ]);
  });

  it('without a scope is for the whole estate', async () => {
    expect(
      standing(await underRule('rule: max-monthly-spend, limit: "10.00"', '', volume('200 GiB'))),
    ).toEqual(['fails: error new estate estate']);
  });
});

describe('on the way to a limit', () => {
  const warned = `${limit}, warn-from: 0.8`;

  it('a warning comes at the share, and not before; it does not fail', async () => {
    expect((await underRule(warned, volume('1 GiB'), volume('79.875 GiB'))).findings).toEqual([]);
    const judgement = await underRule(warned, volume('1 GiB'), volume('80 GiB'));
    expect(standing(judgement)).toEqual(['stands: warning new team imagery']);
    expect(onlyFinding(judgement).message).toContain('8.00 EUR a month, 80 % of the limit of 10.00 EUR');
  });

  it('is stricter where the gate is asked to fail on warnings', async () => {
    const base = { ...pack(warned), 'storage/imagery.yaml': volume('1 GiB') };
    const head = { 'storage/imagery.yaml': volume('80 GiB') };
    expect((await judged(base, head, { failOn: 'warning' })).verdict).toBe('fail');
  });

  it('from the warning to the breach is new as an error', async () => {
    expect(standing(await underRule(warned, volume('80 GiB'), volume('101 GiB')))).toEqual([
      'fails: error new team imagery',
    ]);
  });
});

describe('overspent on main already', () => {
  it('passes a change that makes the team cheaper, though it is still over', async () => {
    const judgement = await underRule(
      limit,
      volume('200 GiB'),
      volume('200 GiB').replace('steady', 'bulk').replace('200', '300'),
    );
    expect(judgement.verdict).toBe('pass');
    expect(standing(judgement)).toEqual(['stands: error unchanged team imagery']);
    expect(judgement.reasons).toContain('1 error already on main, not made worse');
  });

  it('fails a change that makes it dearer by one minor unit', async () => {
    const judgement = await underRule(limit, volume('200 GiB'), volume('200.125 GiB'));
    expect(standing(judgement)).toEqual(['fails: error updated team imagery']);
  });

  it('is gone once the team is within its limit', async () => {
    const judgement = await underRule(limit, volume('200 GiB'), volume('100 GiB'));
    expect(judgement.findings.map(({ baselineState }) => baselineState)).toEqual(['absent']);
  });
});

it('is held against the prices on main: a branch that halves them pays in full', async () => {
  const halved = (gannetPoint['prices/2026.yaml'] ?? '').replace('"0.10"', '"0.05"');
  const judgement = await judged(
    { ...pack(limit), 'storage/imagery.yaml': volume('1 GiB') },
    { 'storage/imagery.yaml': volume('150 GiB'), 'prices/2026.yaml': halved },
  );
  expect(judgement.verdict).toBe('fail');
  expect(judgement.cost.after.toFixed()).toBe('7.5');
  expect(judgement.afterAtJudgingPrices?.toFixed()).toBe('15');
});
