import { describe, expect, it } from 'vitest';
import { judgedBranch, said } from '../estate/builder.ts';

const rule = '{ rule: spend-under-a-limit }';
const limited = '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "120.00" }';
const volume = (name: string, size: string, team: string): string =>
  `  ${name}: { size: ${size}, tier: steady, ${team} }\n`;
const estate = (...volumes: readonly string[]): string => `volumes:\n${volumes.join('')}`;
const covered = volume('plates-1', '40 GiB', 'team: imagery');

const judgedUnder = (
  main: string,
  branch: string,
  entries: readonly string[] = [rule, limited],
  on?: string,
) => judgedBranch({ main, branch, entries, ...(on === undefined ? {} : { on }) });

describe('cost that no limit covers', () => {
  it('is refused where a slip in the name of the team takes a volume out of every limit', async () => {
    const judgement = await judgedUnder(
      estate(covered),
      estate(covered, volume('b', '100 GiB', 'team: imagry')),
    );
    expect(judgement.verdict).toBe('fail');
    expect(said(judgement)).toEqual([
      'error new imagry: team imagry would cost 10.00 EUR a month that no spend limit covers, b among it',
    ]);
    expect([judgement.unlimited.before.toFixed(), judgement.unlimited.after.toFixed()]).toEqual(['0', '10']);
  });

  it('is refused where a volume belongs to nobody', async () => {
    const judgement = await judgedUnder(
      estate(covered),
      estate(covered, volume('b', '100 GiB', 'site: south-quay')),
    );
    expect(said(judgement)).toEqual([
      'error new (none): what has no team would cost 10.00 EUR a month that no spend limit covers, b among it',
    ]);
  });

  it('lets pass what a limit for each team, or for the estate, covers', async () => {
    const branch = estate(
      covered,
      volume('b', '100 GiB', 'team: imagry'),
      volume('c', '1 GiB', 'site: south-quay'),
    );
    for (const limit of [
      '{ rule: max-monthly-spend, each: team, limit: "120.00" }',
      '{ rule: max-monthly-spend, limit: "120.00" }',
    ])
      expect((await judgedUnder(estate(covered), branch, [rule, limit])).verdict).toBe('pass');
  });

  it('already so on main stands, fails where more comes to it, and goes where less does', async () => {
    const outside = (size: string) => estate(covered, volume('b', size, 'team: ledger'));
    const state = async (size: string) => {
      const judgement = await judgedUnder(outside('100 GiB'), outside(size));
      return [judgement.verdict, ...judgement.findings.map(({ baselineState }) => baselineState)];
    };
    expect(await state('100 GiB')).toEqual(['pass', 'unchanged']);
    expect(await state('101 GiB')).toEqual(['fail', 'updated']);
    expect(await state('99 GiB')).toEqual(['pass', 'unchanged']);
  });

  it('counts a limit on its days alone: on the last it covers, on the day after it does not', async () => {
    const dated = limited.replace('limit:', 'until: 2026-11-30, limit:');
    const branch = estate(covered, volume('b', '1 GiB', 'team: imagery'));
    const on = async (day: string) =>
      (await judgedUnder(estate(covered), branch, [rule, dated], day)).verdict;
    expect([await on('2026-11-30'), await on('2026-12-01')]).toEqual(['pass', 'fail']);
  });

  it('needs no limit where it costs nothing', async () => {
    const prices = noTypes.replace('tiers:', 'server-types:\n  free: { running: "0", stopped: "0" }\ntiers:');
    const branch = `${estate(covered)}servers:\n  free: { team: ledger, type: free }\n`;
    expect((await judgedWith(prices, estate(covered), branch)).findings).toEqual([]);
  });
});

/** A price list that has no server types. */
const noTypes = `from: 2026-01-01
currency: EUR
tiers:
  steady: { rate: "0.10", per: GiB-month }
`;

const judgedWith = (prices: string, main: string, branch: string) =>
  judgedBranch({ main, branch, entries: [rule, limited], prices });

describe('a server whose type was left out', () => {
  const server = (keys: string): string =>
    `${estate(covered)}servers:\n  scanner: { team: imagery${keys} }\n`;
  const untyped =
    'scanner: server scanner names no type, so that what it costs is not known and counts towards no limit';

  it('is refused, whether it is new or had a type on main', async () => {
    for (const main of [estate(covered), server(', type: small')]) {
      const judgement = await judgedUnder(main, server(''));
      expect([judgement.verdict, said(judgement)]).toEqual(['fail', [`error new ${untyped}`]]);
    }
  });

  it('stands where main has it so, also where more is changed of it', async () => {
    for (const branch of [server(''), server(', power: stopped')]) {
      const judgement = await judgedUnder(server(''), branch);
      expect([judgement.verdict, said(judgement)]).toEqual(['pass', [`error unchanged ${untyped}`]]);
    }
  });

  it('is fixed by its type', async () => {
    const judgement = await judgedUnder(server(''), server(', type: small'));
    expect([judgement.verdict, said(judgement)]).toEqual(['pass', [`error absent ${untyped}`]]);
  });

  it('is nothing to be told where no server type has a price', async () => {
    expect((await judgedWith(noTypes, estate(covered), server(''))).findings).toEqual([]);
  });
});
