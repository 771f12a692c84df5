import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { ullage } from '../cli/run.ts';
import { judgeFiles } from '../estate/builder.ts';
import { makeRepository, removeRepositories } from '../repository.ts';
import { historyOf, mainOf, type Step } from './history.ts';

afterAll(removeRepositories);

const settings = {
  'ullage.yaml': 'currency: EUR\n',
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.10", per: GiB-month }\n',
};
const plates = (gib: number): string =>
  `team: imagery\nvolumes:\n  plates-1: { size: ${gib} GiB, tier: bulk, reason: kept, owner: imagery }\n`;
const pack = (limit: number): string =>
  `rules:\n  - { name: imagery-limit, rule: max-monthly-spend, where: { teams: [imagery] }, limit: "${limit}.00" }\n  - { rule: growth-step, times: 3 }\n`;
const day = (number: number): string => `2026-02-${String(number).padStart(2, '0')}`;
const step = (number: number, edits: Step['edits']): Step => ({ date: `${day(number)}T12:00:00Z`, edits });

const storage = (gib: number) => ({ 'storage/imagery.yaml': plates(gib) });
const policy = (limit: number) => ({ 'policies/storage.yaml': pack(limit) });

const rowsOf = async (
  dir: string,
  ...args: readonly string[]
): Promise<readonly Record<string, unknown>[]> => {
  const { code, out, err } = await ullage('audit', '--repo', dir, '--format', 'ndjson', ...args);
  expect([code, err]).toEqual([0, '']);
  return out
    .trimEnd()
    .split('\n')
    .filter((line) => line !== '')
    .map((line): Record<string, unknown> => JSON.parse(line));
};

describe('a limit that was raised', () => {
  const history = [
    step(1, { ...settings, ...policy(20), ...storage(150) }),
    step(2, policy(30)),
    step(3, storage(250)),
    step(4, storage(240)),
    step(5, storage(260)),
    step(6, policy(26)),
    step(7, storage(250)),
    step(8, storage(255)),
  ];

  it('names the merged changes that passed only by it, and what they cost', async () => {
    const office = historyOf(history);
    const commits = mainOf(office);
    const [raised, ...others] = await rowsOf(office.dir, '--show', 'loosenings');
    expect(others).toEqual([]);
    // That which made it cheaper would have passed under the old limit, too; what came after 26.00 passed by that.
    expect(raised).toMatchObject({
      on: day(2),
      name: 'imagery-limit',
      passed_only_by_it: 2,
      changes: `${day(3)} ${commits[2]?.slice(0, 12)}; ${day(5)} ${commits[4]?.slice(0, 12)}`,
      difference: '12.00',
      currency: 'EUR',
    });
    const { out } = await ullage('audit', '--repo', office.dir, '--show', 'loosenings');
    expect(out).toMatch(
      /^1 policy change loosened the policy, or may have; merged changes passed only by it/,
    );
    expect(out).toContain('+12.00 EUR');
  });

  it('is a table of bare decimals, with the currency in a column of its own', async () => {
    const office = historyOf(history);
    const csv = (await ullage('audit', '--repo', office.dir, '--show', 'loosenings', '--format', 'csv')).out;
    const [row]: readonly Record<string, string>[] = parse(csv, { columns: true });
    expect(row).toMatchObject({
      day: day(2),
      'passed only by it': '2',
      'monthly cost': '12.00',
      currency: 'EUR',
    });
    const spend = (await ullage('audit', '--repo', office.dir, '--show', 'spend', '--format', 'csv')).out;
    const [, second]: readonly Record<string, string>[] = parse(spend, { columns: true });
    expect(second).toMatchObject({
      before: '15.00',
      'currency before': 'EUR',
      after: '25.00',
      currency: 'EUR',
    });
    const back = await ullage('audit', '--repo', office.dir, '--format', 'csv');
    const records: readonly Record<string, string>[] = parse(back.out, { columns: true });
    expect(records[3]).toMatchObject({
      'monthly cost before': '25',
      'monthly cost after': '24',
      currency: 'EUR',
    });
    const cost = (
      await ullage('cost', '--repo', office.dir, '--at', 'main', '--format', 'csv', '--now', day(9))
    ).out;
    expect(parse(cost, { columns: true })).toMatchObject([{ 'monthly cost': '25.5', currency: 'EUR' }]);
  });
});

it('a cost that falls is a number in a spreadsheet, not text', async () => {
  const office = historyOf([
    step(1, { ...settings, ...policy(20), ...storage(150) }),
    step(2, storage(100)),
    step(3, { 'policies/storage.yaml': pack(30) }),
    step(4, storage(250)),
    step(5, storage(220)),
  ]);
  const { out } = await ullage(
    'audit',
    '--repo',
    office.dir,
    '--try',
    mainOf(office)[0] ?? '',
    '--format',
    'csv',
  );
  expect(parse(out, { columns: true })).toMatchObject([{ 'monthly cost': '15.00' }]);
});

it('names exactly what fails when it is judged whole with the loosening undone, on any history', async () => {
  const moves = fc.array(
    fc.oneof(
      fc.record({ limit: fc.constantFrom(15, 20, 30) }),
      fc.record({ gib: fc.constantFrom(100, 180, 220, 280) }),
    ),
    { minLength: 4, maxLength: 10 },
  );
  let named = 0;
  await fc.assert(
    fc.asyncProperty(moves, async (drawn) => {
      const steps = [
        step(1, { ...settings, ...policy(20), ...storage(150) }),
        ...drawn.map((move, index) =>
          step(index + 2, 'limit' in move ? policy(move.limit) : storage(move.gib)),
        ),
      ];
      const office = historyOf(steps);
      const commits = mainOf(office);
      const rows = await rowsOf(office.dir, '--show', 'loosenings');
      let [limit, gib] = [20, 150];
      const expected: string[][] = [];
      let held: { readonly was: number; readonly passed: string[] } | undefined;
      for (const [index, move] of drawn.entries()) {
        const files = { ...settings, ...policy(limit), ...storage(gib) };
        const after =
          'limit' in move ? { ...files, ...policy(move.limit) } : { ...files, ...storage(move.gib) };
        const on = day(index + 2);
        if (held !== undefined) {
          const own = await judgeFiles(files, after, { on });
          const undone = await judgeFiles({ ...files, ...policy(held.was) }, after, { on });
          if (own.verdict === 'pass' && undone.verdict === 'fail')
            held.passed.push(`${on} ${commits[index + 1]?.slice(0, 12)}`);
        }
        if ('gib' in move) gib = move.gib;
        else if (move.limit !== limit) {
          held = move.limit > limit ? { was: limit, passed: [] } : undefined;
          if (held !== undefined) expected.push(held.passed);
          limit = move.limit;
        }
      }
      expect(rows.map(({ changes }) => changes)).toEqual(expected.map((passed) => passed.join('; ')));
      named += expected.flat().length;
    }),
    { numRuns: 40 },
  );
  expect(named).toBeGreaterThan(2);
}, 120_000);

describe('a policy that is tried', () => {
  const office = () =>
    historyOf([
      step(1, { ...settings, ...policy(20), ...storage(150) }),
      step(2, policy(40)),
      step(3, storage(250)),
      step(4, policy(50)),
      step(5, storage(260)),
    ]);

  it('may be that which the main branch had at a revision or on a day', async () => {
    const { dir, git } = office();
    git('tag', 'spring', mainOf({ dir, git } as ReturnType<typeof office>)[0] ?? '');
    const stopped = async (named: string) =>
      (await rowsOf(dir, '--try', named)).map(({ on, what }) => [on, what]);
    const both = [
      [day(3), 'would have been stopped'],
      [day(5), 'would have been stopped'],
    ];
    expect(await stopped('spring')).toEqual(both);
    expect(await stopped(day(1))).toEqual(both);
    expect(await stopped(day(2))).toEqual([]);
  });

  it('is not guessed at where the name could be two things, or is none', async () => {
    const { dir, git } = office();
    const here = process.cwd();
    const elsewhere = makeRepository();
    writeFileSync(join(elsewhere.dir, 'main'), pack(10));
    try {
      process.chdir(elsewhere.dir);
      const { code, out } = await ullage('audit', '--repo', dir, '--try', 'main');
      expect([code, out]).toEqual([2, expect.stringContaining('both a file and a revision')]);
      expect((await rowsOf(dir, '--try', './main')).length).toBeGreaterThan(0);
    } finally {
      process.chdir(here);
    }
    const none = await ullage('audit', '--repo', dir, '--try', 'autumn');
    expect([none.code, none.out]).toEqual([2, expect.stringContaining('no file, no day and no revision')]);
    git('branch', 'beside', 'main~1');
    const tree = git('rev-parse', 'main^{tree}');
    const aside = git('commit-tree', tree, '-p', 'main~2', '-m', 'beside main');
    const foreign = await ullage('audit', '--repo', dir, '--try', aside);
    expect([foreign.code, foreign.out]).toEqual([
      2,
      expect.stringContaining('no commit that the main branch has been at'),
    ]);
    expect((await ullage('audit', '--repo', dir, '--try', 'beside')).code).toBe(0);
  });
});

it('a repository without a commit has no history to audit', async () => {
  const { dir } = makeRepository();
  const { code, out, err } = await ullage('audit', '--repo', dir);
  expect([code, `${out}${err}`]).toEqual([2, expect.stringContaining('has no commit yet')]);
});
