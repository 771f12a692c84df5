/** The library's own ways in; that it works as it is packed is in package.test.ts. */
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { judgeFiles, judgeRepository, readFiles, reportJson } from '../src/index.ts';
import { ullage } from './cli/run.ts';
import { makeRepository, removeRepositories } from './repository.ts';

afterAll(removeRepositories);

const digestOf = (text: string): string => createHash('sha256').update(text).digest('hex');

const on = '2026-11-20';
const policy = {
  'ullage.yaml': 'currency: EUR\n',
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
  'policies/storage.yaml': 'use: [starter]\n',
};
const plates = (size: string, file = 'storage/a.yaml') => ({
  ...policy,
  [file]: `volumes:\n  plates-1: { size: ${size}, tier: bulk, retain-until: 2030-01-01, reason: kept }\n`,
});

function office() {
  const repository = makeRepository({ files: plates('50 GiB') });
  repository.branch('smaller');
  repository.write(plates('40 GiB'));
  repository.commit('smaller');
  return repository;
}

describe('judgeRepository', () => {
  it('says what the gate says, to the byte', async () => {
    const { dir } = office();
    const judgement = await judgeRepository(dir, { base: 'main', head: 'smaller', on });
    const gate = ['gate', '--repo', dir, '--base', 'main', '--head', 'smaller', '--now', on];
    expect(reportJson(judgement)).toBe((await ullage(...gate, '--format', 'json')).out);
    expect(judgement.verdict).toBe('fail');
  });

  it('is as strict as it is told to be', async () => {
    const warned = { 'policies/storage.yaml': 'rules:\n  - { rule: no-shrink, level: warning }\n' };
    const repository = makeRepository({ files: { ...plates('50 GiB'), ...warned } });
    repository.branch('smaller');
    repository.write({ ...plates('40 GiB'), ...warned });
    repository.commit('smaller');
    const judged = (failOn: 'error' | 'warning') =>
      judgeRepository(repository.dir, { base: 'main', head: 'smaller', on, failOn });
    expect([(await judged('error')).verdict, (await judged('warning')).verdict]).toEqual(['pass', 'fail']);
  });

  it('tries rules that a branch alters on what main let through, as the gate does', async () => {
    const repository = office();
    repository.checkout('main');
    repository.branch('rules');
    repository.write({ 'policies/storage.yaml': 'use: [strict]\n' });
    repository.commit('stricter');
    const judgement = await judgeRepository(repository.dir, { base: 'main', head: 'rules', on });
    expect(judgement).toMatchObject({ proposed: { onPast: { changes: expect.any(Number) } } });
  });

  it('passes nothing that it cannot judge, and does not throw', async () => {
    const { dir } = office();
    for (const judged of [
      judgeRepository(`${dir}/nowhere`, { on }),
      judgeRepository(dir, { base: 'nowhere', on }),
      judgeRepository(dir, { base: 'main', head: '--upload-pack=x', on }),
      judgeRepository(dir, { head: 'smaller', worktree: true, on }),
      judgeRepository(dir, { on: '2026-02-30' }),
      judgeRepository(dir, { on: '' }),
    ]) {
      const judgement = await judged;
      expect(judgement.verdict).toBe('not judged');
      expect(judgement).toMatchObject({ problems: [{ message: expect.any(String) }] });
    }
  });
});

describe('judgeFiles', () => {
  it('takes packs of other repositories as they are given, by their digest alone', async () => {
    const pack = 'use: [starter]\n';
    const listed = { commit: 'a'.repeat(40), path: 'fleet.yaml', sha256: digestOf(pack) };
    const repository = 'https://git.example.org/fleet.git';
    const using = (size: string) => ({
      ...plates(size),
      'ullage.yaml': `currency: EUR\npacks: { fleet: ${JSON.stringify({ repository, ...listed })} }\n`,
      'policies/storage.yaml': 'use: [fleet]\n',
    });
    const judged = async (packs?: Readonly<Record<string, string>>) =>
      (await judgeFiles(using('50 GiB'), using('40 GiB'), { on, ...(packs === undefined ? {} : { packs }) }))
        .verdict;
    const at = `${listed.commit}:${listed.path}`;
    expect(await judged({ [at]: pack })).toBe('fail');
    expect(await judged({ [at]: `${pack}rules: []\n` })).toBe('not judged');
    expect(await judged()).toBe('not judged');
    expect((await readFiles(using('50 GiB'), 'main', { [at]: pack })).ok).toBe(true);
    expect((await readFiles(using('50 GiB'), 'main')).ok).toBe(false);
  });

  it('says of files what judgeRepository says of the same files committed', async () => {
    const { dir } = office();
    const ofFiles = await judgeFiles(plates('50 GiB'), plates('40 GiB'), { on });
    const committed = await judgeRepository(dir, { base: 'main', head: 'smaller', on });
    const named = { base: { commit: 'before' }, head: { commit: 'after' } };
    expect(reportJson(ofFiles)).toBe(reportJson({ ...committed, ...named }));
  });

  it('judges a first adoption by the policy that comes with it', async () => {
    const judgement = await judgeFiles({}, plates('40 GiB'), { on });
    expect(judgement).toMatchObject({ verdict: 'pass', policyFrom: 'head' });
  });

  it('takes bytes, and refuses what is no UTF-8', async () => {
    const bytes = (text: string) => new TextEncoder().encode(text);
    const files = { ...plates('40 GiB'), 'ullage.yaml': bytes('\ufeffcurrency: EUR\r\n') };
    expect((await judgeFiles(files, files, { on })).verdict).toBe('pass');
    const latin = { ...files, 'storage/b.yaml': new Uint8Array([0x23, 0xe9]) };
    expect(await judgeFiles(files, latin, { on })).toMatchObject({ verdict: 'not judged' });
  });

  // A path that lies in no folder would take what it declares out of the judgement without a word.
  it.each([
    'storage\\a.yaml',
    './storage/a.yaml',
    '/storage/a.yaml',
    'storage//a.yaml',
    'storage/../storage/a.yaml',
    'storage/a.yaml/',
    'storage/a\n.yaml',
    '',
  ])('refuses the path %j', async (path) => {
    const judgement = await judgeFiles(plates('50 GiB'), plates('40 GiB', path), { on });
    expect(judgement.verdict).toBe('not judged');
  });

  it('refuses two paths that a disk may not tell apart', async () => {
    const both = { ...plates('50 GiB'), 'storage/A.yaml': 'volumes: {}\n' };
    const judgement = await judgeFiles(policy, both, { on });
    expect(judgement).toMatchObject({
      verdict: 'not judged',
      problems: [{ message: expect.stringContaining('differs from storage/a.yaml only in case') }],
    });
  });

  it('never throws, and never passes a shrink, whatever lies beside it', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.dictionary(
          fc.oneof(
            fc.string(),
            fc.constantFrom('__proto__', 'storage/__proto__', 'storage/z.yaml', 'prices/z.yaml', 'storage'),
          ),
          fc.oneof(fc.string(), fc.uint8Array()),
          { maxKeys: 3 },
        ),
        async (others) => {
          const judgement = await judgeFiles(plates('50 GiB'), { ...others, ...plates('40 GiB') }, { on });
          expect(judgement.verdict).not.toBe('pass');
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('readFiles', () => {
  it('says everything that is wrong, each at its place', async () => {
    const read = await readFiles({ 'storage/a.yaml': 'volumes: { a: { size: 4 } }\n', 'x\\y': '' }, 'draft');
    expect(read).toMatchObject({ ok: false });
    const wrong = await readFiles({ 'storage/a.yaml': 'volumes:\n  a: { size: 4, tier: bulk }\n' }, 'draft');
    expect(wrong).toMatchObject({
      ok: false,
      problems: [{ place: { file: 'storage/a.yaml', line: 2, column: 14 } }],
    });
  });
});
