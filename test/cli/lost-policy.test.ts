/** Main has lost what it was judged by, through branches that each took away what another still had. */
import { afterAll, describe, expect, it } from 'vitest';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

const prices = (rate: string): string =>
  `from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "${rate}", per: GiB-month }\n`;

const volumes = (size: string): string => `volumes:\n  plates-1: { size: ${size}, tier: bulk }\n`;

const limit = (amount: string): string => `rules:\n  - { rule: max-monthly-spend, limit: "${amount}" }\n`;

const office: Files = {
  'ullage.yaml': 'currency: EUR\n',
  'storage/imagery.yaml': volumes('40 GiB'),
  'prices/2026.yaml': prices('0.10'),
  'prices/2026-a.yaml': prices('0.10').replace('2026-01-01', '2026-02-01'),
  'policies/limits.yaml': limit('5.00'),
  'policies/sizes.yaml': 'rules:\n  - { rule: no-shrink }\n',
};

/** Two branches off main, each of which takes one path away; both are merged. */
function without(...paths: readonly [string, string]): TestRepository {
  const repository = makeRepository({ files: office });
  for (const [index, path] of paths.entries()) {
    repository.branch(`without-${index}`, 'main');
    repository.remove(path);
    repository.commit(`without ${path}`);
  }
  repository.checkout('main');
  repository.merge('without-0');
  repository.merge('without-1');
  return repository;
}

function proposing(repository: TestRepository, files: Files): TestRepository {
  repository.branch('proposal', 'main');
  repository.write(files);
  repository.commit('the proposal');
  return repository;
}

const gate = (repository: TestRepository, ...more: readonly string[]) =>
  ullage('gate', '--repo', repository.dir, '--base', 'main', '--now', '2026-11-20', ...more);

async function judged(repository: TestRepository) {
  const { out, code } = await gate(repository, '--format', 'json');
  const { verdict, policyFrom, unreadMain, reasons } = JSON.parse(out);
  return { code, verdict, policyFrom, unreadMain, reasons };
}

describe('two branches that each take one of two rule packs away', () => {
  const lost = () => without('policies/limits.yaml', 'policies/sizes.yaml');

  it('do not make the next branch a first adoption: the last pack that main had judges', async () => {
    const repository = proposing(lost(), {
      'policies/storage.yaml': limit('500.00'),
      'storage/imagery.yaml': volumes('30 GiB'),
    });
    expect(await judged(repository)).toMatchObject({
      verdict: 'fail',
      policyFrom: 'base',
      reasons: [expect.stringContaining('no-shrink: ')],
      unreadMain: {
        comparedWith: repository.git('rev-parse', 'main~1'),
        commits: 1,
        policy: { rules: 'ancestor', settings: 'main', prices: 'main' },
        problem: { message: 'there is no rule pack left in policies/' },
      },
    });
  });

  it('say so first, in the report and on standard error', async () => {
    const { out, err } = await gate(proposing(lost(), { 'policies/storage.yaml': limit('500.00') }));
    expect(out).toContain('there is no rule pack left in policies/');
    expect(err).toContain('there is no rule pack left in policies/');
    expect(out).not.toContain('none yet');
  });

  it('are found out however many commits came between', async () => {
    const repository = lost();
    for (const word of ['one', 'two', 'three']) {
      repository.write({ 'README.md': `${word}\n` });
      repository.commit(word);
    }
    const branch = proposing(repository, { 'policies/storage.yaml': limit('500.00') });
    const report = await judged(branch);
    expect([report.policyFrom, report.unreadMain?.commits]).toEqual(['base', 4]);
  });

  it('let the branch pass that puts a pack back', async () => {
    const branch = proposing(lost(), { 'policies/sizes.yaml': office['policies/sizes.yaml'] ?? '' });
    expect(await judged(branch)).toMatchObject({ code: 0, verdict: 'pass', policyFrom: 'base' });
  });

  it('are no pass where the next branch brings none either', async () => {
    const branch = proposing(lost(), { 'storage/imagery.yaml': volumes('30 GiB') });
    expect(await judged(branch)).toMatchObject({ code: 2, verdict: 'not judged' });
  });
});

describe('two branches that together take away', () => {
  it('the last price list leave the last that main had to price by', async () => {
    const repository = proposing(without('prices/2026.yaml', 'prices/2026-a.yaml'), {
      'prices/2026.yaml': prices('0.001'),
      'storage/imagery.yaml': volumes('60 GiB'),
    });
    expect(await judged(repository)).toMatchObject({
      verdict: 'fail',
      unreadMain: { problem: { message: 'there is no price list left in prices/' } },
    });
  });
});

describe('main whose settings are gone', () => {
  it('is judged by those of its last commit that had them', async () => {
    const repository = makeRepository({
      files: { ...office, 'ullage.yaml': 'currency: EUR\nmonth: calendar\n' },
    });
    repository.remove('ullage.yaml');
    repository.commit('merged past the gate');
    const branch = proposing(repository, { 'ullage.yaml': 'currency: EUR\n' });
    expect(await judged(branch)).toMatchObject({
      policyFrom: 'base',
      unreadMain: { policy: { settings: 'ancestor' } },
    });
  });
});

describe('a main that never had a policy', () => {
  it('is a first adoption, however long its history', async () => {
    const repository = makeRepository({ files: { 'README.md': 'zero\n' } });
    repository.write({ 'README.md': 'one\n', 'storage/imagery.yaml': volumes('40 GiB') });
    repository.commit('one');
    expect(await judged(proposing(repository, office))).toMatchObject({
      code: 0,
      policyFrom: 'head',
      unreadMain: null,
    });
  });
});

describe('a clone that lacks a file of main', () => {
  const loosened = { 'policies/limits.yaml': limit('500.00'), 'storage/imagery.yaml': volumes('80 GiB') };

  it('made with a filter has the branch judged by no other policy than that of main', async () => {
    const origin = proposing(makeRepository({ files: office }), loosened);
    origin.git('config', 'uploadpack.allowFilter', 'true');
    expect(await judged(origin)).toMatchObject({ verdict: 'fail' });
    const clone = origin.clone('--filter=blob:none', '--branch=proposal');
    expect(await judged(clone)).toMatchObject({ verdict: 'not judged', code: 2 });
    const { out } = await gate(clone, '--base', 'origin/main');
    expect(out.replaceAll(/\s+/g, ' ')).toContain('git fetch --refetch --no-filter origin');
  });
});
