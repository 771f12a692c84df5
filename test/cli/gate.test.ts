import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildDemo, demoDay, proposals } from '../demo/gannet-point.ts';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

const estate = `team: imagery
site: north-quay
servers:
  plate-scanner: { power: running, boot: plate-scanner-root, guest: linux-lvm }
volumes:
  plate-scanner-root: { size: 20 GiB, tier: steady }
  plates-1: { size: 50 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
`;

const office: Files = {
  'ullage.yaml': 'currency: EUR\n',
  'storage/imagery.yaml': estate,
  'prices/2026.yaml':
    'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n  steady: { rate: "0.10", per: GiB-month }\n',
  'policies/storage.yaml':
    'use: [starter]\nrules:\n  - { name: imagery-limit, rule: max-monthly-spend, where: { teams: [imagery] }, limit: "4.25" }\n',
};

/** Main as it is, and a branch that writes some files over it. */
function proposing(files: Files, main: Files = office): TestRepository {
  const repository = makeRepository({ files: main, message: 'the estate' });
  repository.branch('proposal');
  repository.write(files);
  repository.commit('the proposal');
  return repository;
}

const gate = (repository: TestRepository, ...more: readonly string[]) =>
  ullage('gate', '--repo', repository.dir, '--base', 'main', '--now', demoDay, ...more);

interface Report {
  readonly verdict: string;
  readonly reasons: readonly string[];
  readonly cost: { readonly before: string; readonly after: string; readonly difference: string } | null;
  readonly proposed: { readonly verdict: string } | null;
  readonly problems: readonly {
    readonly message: string;
    readonly place: { readonly file: string; readonly line: number } | null;
  }[];
  readonly findings: readonly {
    readonly rule: string;
    readonly entry: string;
    readonly baselineState: string;
    readonly fails: boolean;
    readonly message: string;
    readonly place: { readonly revision: string; readonly file: string; readonly line: number };
  }[];
}

async function judged(
  repository: TestRepository,
  ...more: readonly string[]
): Promise<{ code: number; report: Report }> {
  const { code, out } = await gate(repository, '--format', 'json', ...more);
  const report: Report = JSON.parse(out);
  return { code, report };
}

const spending = ({ findings }: Report) =>
  findings
    .filter(({ entry }) => entry === 'imagery-limit')
    .map(({ baselineState, fails }) => [baselineState, fails]);

const inEstate = (from: string, to: string): Files => ({ 'storage/imagery.yaml': estate.replace(from, to) });

afterAll(removeRepositories);

describe('the gate, from the command line', () => {
  it('lets 20 GiB grow to 50 GiB', async () => {
    const limit = { 'policies/storage.yaml': 'use: [starter]\n' };
    const repository = proposing(inEstate('root: { size: 20 GiB', 'root: { size: 50 GiB'), {
      ...office,
      ...limit,
    });
    const { code, report } = await judged(repository);
    expect([code, report.verdict]).toEqual([0, 'pass']);
    expect(report.cost).toMatchObject({ before: '4.25', after: '7.25', difference: '3.00' });
  });

  it('sees the shrink of exactly 3,687,091,200 bytes in 50 GB for 50 GiB', async () => {
    const { code, report } = await judged(
      proposing(inEstate('plates-1: { size: 50 GiB', 'plates-1: { size: 50 GB')),
    );
    expect(code).toBe(1);
    expect(report.findings.filter(({ fails }) => fails).map(({ rule }) => rule)).toEqual(['no-shrink']);
    expect(report.reasons.join()).toContain('3,687,091,200 bytes');
  });

  it('refuses a branch that raises its own limit and spends it, and says what the new limit would have said', async () => {
    const policy = String(office['policies/storage.yaml']).replace('4.25', '400.00');
    const { code, report } = await judged(
      proposing({
        'policies/storage.yaml': policy,
        ...inEstate('plates-1: { size: 50 GiB', 'plates-1: { size: 90 GiB'),
      }),
    );
    expect(code).toBe(1);
    expect(
      report.findings
        .filter(({ fails }) => fails)
        .map(({ entry }) => entry)
        .sort(),
    ).toEqual(['imagery-limit', 'policy-apart']);
    expect(report.proposed?.verdict).toBe('pass');
  });

  it('lets an overspent team get cheaper, and not dearer by one cent', async () => {
    const overspent = {
      ...office,
      'policies/storage.yaml': String(office['policies/storage.yaml']).replace('4.25', '4.00'),
    };
    const prices = (rate: string): Files => ({
      ...overspent,
      'prices/2026.yaml': `from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "${rate}", per: GiB-month }\n  steady: { rate: "0.10", per: GiB-month }\n`,
    });
    const overspending = proposing(
      inEstate('plates-1: { size: 50 GiB, tier: bulk', 'plates-1: { size: 60 GiB, tier: bulk'),
      prices('0.045'),
    );
    expect((await judged(overspending)).code).toBe(1);
    const archived = proposing(
      inEstate('plates-1: { size: 50 GiB, tier: bulk', 'plates-1: { size: 50 GiB, tier: steady'),
      prices('0.101'),
    );
    const { code, report } = await judged(archived);
    expect([code, spending(report)]).toEqual([0, [['unchanged', false]]]);
    // 1 GiB at 0.01 is one cent.
    const oneCent = proposing(
      inEstate('plates-1: { size: 50 GiB', 'plates-1: { size: 51 GiB'),
      prices('0.01'),
    );
    const overspentAt001 = await judged(oneCent);
    expect(overspentAt001.report.cost?.difference).toBe('0.01');
    expect(overspentAt001.code).toBe(0);
    const dearer = proposing(inEstate('plates-1: { size: 50 GiB', 'plates-1: { size: 51 GiB'), {
      ...prices('0.01'),
      'policies/storage.yaml': String(office['policies/storage.yaml']).replace('4.25', '2.00'),
    });
    const { code: worse, report: why } = await judged(dearer);
    expect([worse, spending(why)]).toEqual([1, [['updated', true]]]);
  });

  it('points at main for what the branch deletes', async () => {
    const without = estate
      .replace('  plates-1: { size: 50 GiB, tier: bulk }\n', '')
      .replace(/attachments:\n.*\n/, '');
    const { code, report } = await judged(proposing({ 'storage/imagery.yaml': without }));
    expect(code).toBe(1);
    const deletion = report.findings.find(({ rule }) => rule === 'deletion-prepared');
    expect(deletion?.place).toMatchObject({ revision: 'base', file: 'storage/imagery.yaml', line: 7 });
  });

  it('is made stricter by --fail-on warning, and by nothing from inside the branch', async () => {
    const warned = {
      ...office,
      'policies/storage.yaml':
        'use: [starter]\nrules:\n  - { rule: detached-volume-owned, level: warning }\n',
    };
    const repository = proposing(
      inEstate('attachments:\n  - { volume: plates-1, server: plate-scanner }\n', ''),
      warned,
    );
    expect((await judged(repository)).code).toBe(0);
    expect((await judged(repository, '--fail-on', 'warning')).code).toBe(1);
  });

  it('reports every fault of several files in one run, each at its place, and none as a stack trace', async () => {
    const repository = proposing({
      'storage/broken.yaml': 'volumes:\n  x: { size: 1 GiB, tier: bulk\n',
      'storage/more.yaml': [
        'volumes:',
        '  plates-1: { size: 1 GiB, tier: bulk }',
        '  spare: { size: 10, tier: bulk }',
      ].join('\n'),
      'storage/other.yaml':
        'volumes:\n  plates-1: { size: 1 GiB, tier: bulk }\n  odd: { size: 1 GiB, tier: bulky }\nattachments:\n  - { volume: plates-9, server: plate-scanner }\n',
    });
    const { code, report } = await judged(repository);
    expect([code, report.verdict]).toEqual([2, 'not judged']);
    const said = report.problems.map(({ message, place }) => `${place?.file}:${place?.line} ${message}`);
    expect(said).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^storage\/broken\.yaml:\d+ the YAML is not valid/),
        expect.stringMatching(/^storage\/more\.yaml:3 size of spare is 10/),
        expect.stringMatching(/^storage\/other\.yaml:2 .*declared twice/),
        expect.stringMatching(/^storage\/other\.yaml:3 .*tier bulky/),
      ]),
    );
    const { out, err } = await gate(repository);
    expect(out + err).not.toMatch(/\n\s+at .+[/\\].+\.(ts|js):\d+:\d+/);
  });

  it('does not judge without a price list', async () => {
    const { 'prices/2026.yaml': _gone, ...unpriced } = office;
    const { code, report } = await judged(proposing(inEstate('50 GiB', '60 GiB'), unpriced));
    expect([code, report.problems[0]?.message]).toEqual([2, 'there is no price list in prices/']);
  });

  it('judges a first adoption by its own policy, and says so', async () => {
    const repository = proposing(office, { 'README.md': 'nothing yet\n' });
    const { code, out } = await gate(repository, '--format', 'json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ verdict: 'pass', policyFrom: 'head' });
  });

  it('takes bad usage for not judged', async () => {
    const repository = proposing(inEstate('50 GiB', '60 GiB'));
    for (const args of [
      ['--base', 'nowhere'],
      ['--now', 'soon'],
      ['--format', 'poem'],
      ['--report', 'json'],
    ]) {
      const { code, err, out } = await ullage('gate', '--repo', repository.dir, ...args);
      expect([args, code]).toEqual([args, 2]);
      expect((err + out).trim()).not.toBe('');
    }
    expect((await ullage('gaet')).code).toBe(2);
    expect((await ullage('gate', '--help')).code).toBe(0);
  });

  it('writes several reports in one run, and says the same bytes twice in every format', async () => {
    const repository = proposing(inEstate('plates-1: { size: 50 GiB', 'plates-1: { size: 50 GB'));
    const formats = ['text', 'markdown', 'json', 'sarif', 'junit', 'html'];
    const reports = (round: string) =>
      formats.map((format) => [format, join(repository.dir, '.git', `${round}.${format}`)] as const);
    for (const round of ['first', 'second']) {
      const { code } = await gate(
        repository,
        ...reports(round).flatMap(([format, path]) => ['--report', `${format}=${path}`]),
      );
      expect(code).toBe(1);
    }
    const bytes = (round: string) => reports(round).map(([, path]) => readFileSync(path, 'utf8'));
    expect(bytes('first')).toEqual(bytes('second'));
    expect(bytes('first').every((text) => text.includes('3,687,091,200'))).toBe(true);
  });

  it('judges uncommitted files', async () => {
    const repository = proposing({ 'README.md': 'no storage change\n' });
    repository.write(inEstate('plates-1: { size: 50 GiB', 'plates-1: { size: 5 GiB'));
    const { code, report } = await judged(repository, '--worktree');
    expect([code, report.verdict]).toEqual([1, 'fail']);
  });
});

describe('what is said to whoever named nothing', () => {
  const bare = (repository: TestRepository, ...more: readonly string[]) =>
    ullage('gate', '--repo', repository.dir, '--now', demoDay, ...more);

  it('how many files are changed and not committed, where HEAD is judged because nothing was named', async () => {
    const repository = proposing({ 'README.md': 'no storage change\n' });
    const committed = await bare(repository);
    expect([committed.code, committed.err]).toEqual([0, '']);
    repository.write({
      ...inEstate('plates-1: { size: 50 GiB', 'plates-1: { size: 60 GiB'),
      'storage/new.yaml': 'volumes: {}\n',
      'waivers/new.yaml': 'waivers: []\n',
    });
    const kept = join(repository.dir, '.git', 'kept.txt');
    const dirty = await bare(repository, '--report', `text=${kept}`);
    expect([dirty.code, dirty.err]).toEqual([0, '']);
    expect(dirty.out.split('\n')[0]).toMatch(
      /^pass: .*; 3 files are changed and not committed, and were not judged$/,
    );
    expect(dirty.out).toContain(
      'Not judged  3 files that are changed and not committed; `ullage gate --worktree`',
    );
    // A report that is kept is the same bytes for the same revisions.
    expect(readFileSync(kept, 'utf8')).toBe(committed.out);
    for (const args of [
      ['--head', 'proposal'],
      ['--worktree'],
      ['--format', 'json'],
      ['--format', 'markdown'],
    ]) {
      const { out, err } = await bare(repository, ...args);
      expect(out + err).not.toContain('not committed');
    }
    repository.write(inEstate('plates-1: { size: 50 GiB', 'plates-1: { size: 50 G'));
    repository.commit('a slip');
    repository.write(inEstate('plates-1: { size: 50 GiB', 'plates-1: { size: 60 GiB'));
    const mended = await bare(repository);
    expect([mended.code, mended.out]).toEqual([
      2,
      expect.stringContaining('Not judged  1 file that is changed'),
    ]);
  });

  it('that HEAD is main itself, or adds nothing to it', async () => {
    const repository = proposing(inEstate('50 GiB', '60 GiB'));
    expect((await bare(repository)).err).not.toContain('nothing to judge');
    repository.checkout('main');
    expect((await bare(repository)).err).toBe('HEAD is the same as main; there is nothing to judge.\n');
    repository.commit('an empty commit');
    repository.branch('behind', 'main~1');
    expect((await bare(repository)).err).toBe('HEAD adds nothing to main; there is nothing to judge.\n');
  });

  it('that nothing is committed yet, right after the starter layout was written', async () => {
    const repository = makeRepository();
    await ullage('new', '--repo', repository.dir, '--now', demoDay);
    const { code, out, err } = await bare(repository);
    expect([code, err]).toEqual([2, 'not judged: nothing is committed yet\n']);
    expect(out).toContain('Commit to main first, or');
    expect(out).not.toContain('remote');
  });
});

describe('the Gannet Point demo', () => {
  let demo = '';
  beforeAll(() => {
    demo = buildDemo();
  });
  afterAll(() => rmSync(demo, { recursive: true }));

  it.each(proposals)('$branch: $verdict', async ({ branch, verdict, refusedBy }) => {
    const { code, out } = await ullage(
      'gate',
      '--repo',
      demo,
      '--base',
      'main',
      '--head',
      branch,
      '--now',
      demoDay,
      '--format',
      'json',
    );
    const report: Report = JSON.parse(out);
    expect([report.verdict, code]).toEqual([verdict, { pass: 0, fail: 1, 'not judged': 2 }[verdict]]);
    const failing = report.findings.filter(({ fails }) => fails).map(({ entry }) => entry);
    const refusing = report.verdict === 'not judged' ? ['not judged'] : [...new Set(failing)].sort();
    expect(refusing).toEqual([...refusedBy].sort());
  });
});
