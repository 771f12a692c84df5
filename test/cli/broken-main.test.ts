/** Main itself does not read: what a branch is compared with then, by whose policy, and that all of it is said. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { type Run, ullage } from './run.ts';

afterAll(removeRepositories);

const list = (types: string, bulk = '0.10'): string =>
  `from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "${bulk}", per: GiB-month }\n${types}`;

const small = 'server-types:\n  small: { running: "0.031", stopped: "0.004" }\n';

const pack = (limit: string): string =>
  `rules:\n  - { rule: no-shrink }\n  - { name: limit, rule: max-monthly-spend, limit: "${limit}" }\n`;

const volumes = (team: string, ...declared: readonly string[]): string =>
  `team: ${team}\nvolumes:\n${declared.map((each) => `  ${each}\n`).join('')}`;

const office: Files = {
  'ullage.yaml': 'currency: EUR\n',
  'storage/imagery.yaml': volumes('imagery', 'plates-1: { size: 40 GiB, tier: bulk }'),
  'prices/2026.yaml': list(''),
  'policies/storage.yaml': pack('10.00'),
};

const ledger = (name: string, size = '10 GiB'): Files => ({
  'storage/ledger.yaml': volumes('ledger', `${name}: { size: ${size}, tier: bulk }`),
});

/** Two branches that both pass, and declare one name: merged, they leave a main that does not read. */
function collided(size = '10 GiB'): TestRepository {
  const repository = makeRepository({ files: office });
  repository.branch('soundings');
  repository.write({
    'storage/soundings.yaml': volumes('soundings', 'spare: { size: 10 GiB, tier: bulk }'),
  });
  repository.commit('a spare for the soundings');
  repository.branch('ledger', 'main');
  repository.write(ledger('spare', size));
  repository.commit('a spare for the ledger');
  repository.checkout('main');
  repository.merge('soundings');
  repository.merge('ledger');
  return repository;
}

function proposing(repository: TestRepository, files: Files, name = 'proposal'): TestRepository {
  repository.branch(name, 'main');
  repository.write(files);
  repository.commit('the proposal');
  return repository;
}

const gate = (repository: TestRepository, ...more: readonly string[]): Promise<Run> =>
  ullage('gate', '--repo', repository.dir, '--base', 'main', '--now', '2026-11-20', ...more);

interface Report {
  readonly verdict: string;
  readonly reasons: readonly string[];
  readonly policyFrom: string;
  readonly base: { readonly commit: string } | null;
  readonly cost: { readonly before: string; readonly after: string };
  readonly changes: readonly { readonly kind: string; readonly subject: { readonly name: string } }[];
  readonly problems: readonly { readonly message: string; readonly place: { readonly revision: string } }[];
  readonly unreadMain: {
    readonly comparedWith: string | null;
    readonly commits: number;
    readonly problem: { readonly message: string; readonly place: { readonly file: string } };
    readonly policy: Readonly<Record<string, string>>;
    readonly pricedByBranch: readonly string[];
  } | null;
}

async function judged(repository: TestRepository, ...more: readonly string[]): Promise<Report> {
  const { out } = await gate(repository, '--format', 'json', ...more);
  const report: Report = JSON.parse(out);
  return report;
}

describe('two branches that are fine alone and leave a main that does not read', () => {
  it('each pass, and main does not', async () => {
    const repository = collided();
    for (const branch of ['soundings', 'ledger']) {
      const { code } = await ullage(
        ...['gate', '--repo', repository.dir, '--now', '2026-11-20'],
        ...['--base', 'main~2', '--head', branch],
      );
      expect([branch, code]).toEqual([branch, 0]);
    }
    expect((await judged(repository, '--head', 'main')).verdict).toBe('not judged');
  });

  it('let the branch pass that mends it, held against the last commit that reads', async () => {
    const repository = proposing(collided(), ledger('ledger-spare'));
    const report = await judged(repository);
    expect(report).toMatchObject({
      verdict: 'pass',
      policyFrom: 'base',
      base: { commit: repository.git('rev-parse', 'main') },
      // 50 GiB and then 60 GiB at 0.10: the soundings' spare is there already, the ledger's is not.
      cost: { before: '5.00', after: '6.00' },
      unreadMain: {
        comparedWith: repository.git('rev-parse', 'main~1'),
        commits: 1,
        policy: { settings: 'main', prices: 'main', rules: 'main', waivers: 'main' },
        pricedByBranch: [],
      },
    });
    expect(report.unreadMain?.problem.place.file).toMatch(/^storage\/(ledger|soundings)\.yaml$/);
    expect(report.changes).toEqual([
      expect.objectContaining({ subject: { kind: 'volume', name: 'ledger-spare' } }),
    ]);
  });

  it('say so first, on standard error and in every report, and by how many commits', async () => {
    const repository = collided();
    repository.write({ 'README.md': 'The storage of Gannet Point.\n' });
    repository.commit('only words');
    proposing(repository, ledger('ledger-spare'));
    const at = (name: string): string => join(repository.dir, '.git', name);
    const { code, out, err } = await gate(
      repository,
      ...['--report', `sarif=${at('sarif')}`, '--report', `junit=${at('junit')}`],
      ...['--report', `markdown=${at('markdown')}`],
    );
    expect(code).toBe(0);
    const sound = repository.git('rev-parse', 'main~2').slice(0, 12);
    const said = new RegExp(`Main cannot be read .*as it was at ${sound} ?, before its last 2 commits`);
    expect(err).toMatch(said);
    expect(out.split('\n')[1]).toMatch(/^ {2}Main +Main cannot be read/);
    for (const name of ['sarif', 'junit', 'markdown']) {
      expect(readFileSync(at(name), 'utf8').replaceAll(/[\s`]+/g, ' ')).toMatch(said);
    }
    expect(JSON.parse(readFileSync(at('sarif'), 'utf8'))).toMatchObject({
      runs: [{ properties: { unreadMain: { commits: 2 } } }],
    });
  });

  it('do not let a branch pass that leaves it as it is', async () => {
    const repository = proposing(collided(), {
      'storage/imagery.yaml': volumes('imagery', 'plates-1: { size: 41 GiB, tier: bulk }'),
    });
    const report = await judged(repository);
    expect([report.verdict, report.unreadMain]).toEqual(['not judged', null]);
    expect(report.problems.map(({ place }) => place.revision)).toContain('base');
  });

  it('let nothing more pass that is mended in passing', async () => {
    const shrunk = volumes('imagery', 'plates-1: { size: 20 GiB, tier: bulk }');
    const repository = proposing(collided(), { ...ledger('ledger-spare'), 'storage/imagery.yaml': shrunk });
    const report = await judged(repository);
    expect(report.verdict).toBe('fail');
    expect(report.reasons.join()).toMatch(/no-shrink.*plates-1/);
  });

  it('have all since judged as one change: what came with the slip is not on main already', async () => {
    // 90 GiB of the ledger's spare came unseen with the commit that does not read; the limit is 10.00.
    const repository = proposing(collided('90 GiB'), ledger('ledger-spare', '90 GiB'));
    const report = await judged(repository);
    expect([report.verdict, report.cost]).toMatchObject(['fail', { before: '5.00', after: '14.00' }]);
  });

  it('have the policy of main, also what came to it since', async () => {
    const repository = collided();
    repository.write({ 'policies/storage.yaml': pack('5.50') });
    repository.commit('a lower limit');
    proposing(repository, { ...ledger('ledger-spare'), 'policies/storage.yaml': pack('100.00') });
    const report = await judged(repository);
    expect([report.verdict, report.unreadMain?.commits]).toEqual(['fail', 2]);
  });

  it('are mended in the work tree, which lists what is wrong until then', async () => {
    const repository = collided();
    const broken = await gate(repository, '--worktree');
    expect(broken.code).toBe(2);
    expect(broken.out).toContain('storage/');
    repository.write(ledger('ledger-spare'));
    expect((await gate(repository, '--worktree')).code).toBe(0);
  });

  it('are no reason to guess in a clone that is cut short', async () => {
    const origin = collided();
    origin.write({ 'README.md': 'The storage of Gannet Point.\n' });
    origin.commit('only words');
    proposing(origin, ledger('ledger-spare'));
    const clone = origin.clone('--depth=2', '--no-single-branch');
    const { code, out } = await ullage(
      ...['gate', '--repo', clone.dir, '--base', 'origin/main', '--head', 'origin/proposal'],
    );
    expect(code).toBe(2);
    expect(out).toContain('git fetch --unshallow origin');
  });
});

describe('a pack on main that does not read', () => {
  it('is no part of what an attestation says was judged by; that of the ancestor is', async () => {
    const repository = makeRepository({ files: office });
    repository.write({ 'policies/storage.yaml': `${pack('10.00')}  - { rule: no-such-rule }\n` });
    repository.commit('a rule that nobody has');
    proposing(repository, { 'policies/storage.yaml': pack('9.00') });
    const file = join(repository.dir, '.git', 'attestation.json');
    expect((await gate(repository, '--attest', file)).code).toBe(0);
    const { predicate } = JSON.parse(readFileSync(file, 'utf8'));
    expect(predicate.policy.annotations.files).toContainEqual({
      name: 'policies/storage.yaml',
      digest: { gitBlob: repository.git('rev-parse', 'main~1:policies/storage.yaml') },
    });
    expect(predicate.policy.annotations.files).toHaveLength(3);
  });

  it('is stood in for by that of the ancestor, and not by the branch’s', async () => {
    const repository = makeRepository({ files: office });
    repository.write({ 'policies/storage.yaml': `${pack('10.00')}  - { rule: no-such-rule }\n` });
    repository.commit('a rule that nobody has');
    proposing(repository, {
      'policies/storage.yaml': 'rules: []\n',
      'storage/imagery.yaml': volumes('imagery', 'plates-1: { size: 20 GiB, tier: bulk }'),
    });
    const report = await judged(repository);
    expect(report).toMatchObject({
      verdict: 'fail',
      policyFrom: 'base',
      unreadMain: {
        commits: 1,
        policy: { settings: 'main', prices: 'main', rules: 'ancestor', waivers: 'main' },
      },
    });
    expect(report.reasons.join()).toContain('no-shrink');
  });
});

describe('a newcomer’s first commit with a slip', () => {
  const slipped = (more: Files = {}): TestRepository =>
    makeRepository({
      files: {
        ...office,
        'storage/imagery.yaml': volumes('imagery', 'plates-1: { size: 40, tier: bulk }'),
        ...more,
      },
    });

  it('is mended by a branch that is judged alone, as a first adoption, by the policy on main', async () => {
    const repository = proposing(slipped(), { 'storage/imagery.yaml': office['storage/imagery.yaml'] ?? '' });
    const report = await judged(repository);
    expect(report).toMatchObject({
      verdict: 'pass',
      policyFrom: 'base',
      cost: { before: '0.00', after: '4.00' },
      unreadMain: { comparedWith: null, commits: 1, policy: { rules: 'main', prices: 'main' } },
    });
    const { err } = await gate(repository);
    expect(err).toContain('the branch is judged alone, as a first adoption');
    const dear = volumes('imagery', 'plates-1: { size: 400 GiB, tier: bulk }');
    proposing(repository, { 'storage/imagery.yaml': dear, 'policies/storage.yaml': 'rules: []\n' }, 'dear');
    expect((await judged(repository)).verdict).toBe('fail');
  });

  it('in the pack is mended by a branch that is judged by its own, and that is said', async () => {
    const repository = proposing(slipped({ 'policies/storage.yaml': 'rulez: []\n' }), office);
    expect(await judged(repository)).toMatchObject({
      verdict: 'pass',
      policyFrom: 'head',
      unreadMain: { comparedWith: null, policy: { rules: 'branch' } },
    });
    expect((await gate(repository)).out.replaceAll(/\s+/g, ' ')).toContain(
      'because main has none that reads',
    );
  });

  it('after a commit without an estate is held against that', async () => {
    const repository = makeRepository({ files: { 'README.md': 'none yet\n' } });
    repository.write({ ...office, 'ullage.yaml': 'currency: EUR\nmonth: 730\n' });
    repository.commit('the estate');
    proposing(repository, office);
    expect(await judged(repository)).toMatchObject({
      verdict: 'pass',
      unreadMain: { comparedWith: repository.git('rev-parse', 'main~1'), commits: 1 },
    });
  });
});

describe('a price that goes before the server type that needs it', () => {
  const server = (type: string): string =>
    `${volumes('imagery', 'plates-1: { size: 40 GiB, tier: bulk }')}servers:\n  plate-scanner: { type: ${type} }\n`;
  const small2 = `${small}  large: { running: "0.001", stopped: "0.001" }\n`;
  const before: Files = {
    ...office,
    'policies/storage.yaml': pack('40.00'),
    'prices/2026.yaml': list(small),
    'storage/imagery.yaml': server('small'),
  };

  function withoutThePrice(): TestRepository {
    const repository = makeRepository({ files: before });
    repository.write({ 'prices/2026.yaml': list('') });
    repository.commit('small servers are no longer sold');
    return repository;
  }

  it('is mended by putting it back, and by doing without the type', async () => {
    const back = await judged(proposing(withoutThePrice(), { 'prices/2026.yaml': list(small) }));
    expect(back).toMatchObject({
      verdict: 'pass',
      unreadMain: { commits: 1, policy: { settings: 'main', prices: 'ancestor', rules: 'main' } },
    });
    const without = await judged(
      proposing(withoutThePrice(), { 'storage/imagery.yaml': office['storage/imagery.yaml'] ?? '' }),
    );
    expect([without.verdict, without.unreadMain?.commits]).toEqual(['pass', 1]);
  });

  it('and was gone when the server came is mended, and no other price is the branch’s to choose', async () => {
    const repository = makeRepository({ files: { ...office, 'policies/storage.yaml': pack('30.00') } });
    // Branched while the type was sold; main dropped it meanwhile.
    repository.write({ 'storage/imagery.yaml': server('small') });
    repository.commit('a server of a type that is not sold');
    proposing(repository, { 'prices/2026.yaml': list(small) });
    const mended = await judged(repository);
    // 40 GiB at 0.10, and 730 h at 0.031: 4.00 + 22.63.
    expect(mended).toMatchObject({
      verdict: 'pass',
      cost: { before: '4.00', after: '26.63' },
      unreadMain: { commits: 1, pricedByBranch: ['small'] },
    });
    const grown = server('small').replace('40 GiB', '400 GiB');
    proposing(
      repository,
      { 'prices/2026.yaml': list(small, '0.001'), 'storage/imagery.yaml': grown },
      'cheaper',
    );
    expect((await judged(repository)).verdict).toBe('fail');
    const more = `${server('small')}  second: { type: large }\n`;
    proposing(repository, { 'prices/2026.yaml': list(small2), 'storage/imagery.yaml': more }, 'more');
    expect((await judged(repository)).verdict).toBe('not judged');
  });
});

describe('the work tree before the first commit', () => {
  it('is judged, and its problems are listed', async () => {
    const repository = makeRepository();
    repository.write(office);
    const worktree = (...more: readonly string[]): Promise<Run> =>
      ullage('gate', '--repo', repository.dir, '--worktree', '--now', '2026-11-20', ...more);
    const { code, out, err } = await worktree();
    expect([code, err]).toEqual([0, '']);
    expect(out.replaceAll(/\s+/g, ' ')).toContain('the work tree against a main branch without a commit');
    const report: Report = JSON.parse((await worktree('--format', 'json')).out);
    expect(report).toMatchObject({ policyFrom: 'head', cost: { before: '0.00', after: '4.00' } });
    repository.write(ledger('plates-1', '10'));
    const broken = await worktree();
    expect(broken.code).toBe(2);
    expect(broken.out).toContain('storage/ledger.yaml:3:');
  });
});

describe('the audit', () => {
  it('holds the commit after one that does not read against the last that did', async () => {
    const repository = collided('90 GiB');
    repository.write(ledger('ledger-spare', '90 GiB'));
    repository.commit('mended');
    repository.write(ledger('ledger-spare', '91 GiB'));
    repository.commit('and on');
    const { code, out } = await ullage('audit', '--repo', repository.dir, '--format', 'ndjson');
    expect(code).toBe(0);
    const records = out
      .trim()
      .split('\n')
      .map((each): { verdict: string; unreadMain: unknown; cost: unknown } => JSON.parse(each));
    expect(records.map(({ verdict }) => verdict)).toEqual(['pass', 'pass', 'not judged', 'fail', 'fail']);
    expect(records[3]).toMatchObject({
      unreadMain: { comparedWith: repository.git('rev-parse', 'main~3'), commits: 1 },
      cost: { before: '5', after: '14' },
    });
    const { out: text } = await ullage('audit', '--repo', repository.dir);
    expect(text.replaceAll(/\s+/g, ' ')).toMatch(
      /was compared with \w+: the commit before it does not read\./,
    );
    expect(records[4]).toMatchObject({ unreadMain: null, cost: { before: '14' } });
  });
});
