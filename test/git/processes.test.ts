import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { resolveRevisions } from '../../src/git/compare.ts';
import { GitRepository } from '../../src/git/repository.ts';
import type { Listing } from '../../src/git/tree.ts';
import { ullage } from '../cli/run.ts';
import { makeRepository, removeRepositories, type TestRepository } from '../repository.ts';

const outside = mkdtempSync(join(tmpdir(), 'ullage-test-programs-'));
afterAll(() => {
  removeRepositories();
  rmSync(outside, { recursive: true });
});

const realGit = execFileSync('sh', ['-c', 'command -v git'], { encoding: 'utf8' }).trim();

/** A folder with a program `git` in it: a shell script, which may go on with the machine's own. */
function gitThat(does: string): string {
  const bin = mkdtempSync(join(outside, 'bin-'));
  writeFileSync(join(bin, 'git'), `#!/bin/sh\n${does}\nexec '${realGit}' "$@"\n`);
  chmodSync(join(bin, 'git'), 0o755);
  return bin;
}

const machinePath = process.env.PATH;
afterEach(() => {
  process.env.PATH = machinePath;
});

const estate = (size: string) => ({
  'ullage.yaml': 'currency: EUR\n',
  'storage/a.yaml': `volumes:\n  plates-1: { size: ${size}, tier: bulk, retain-until: 2030-01-01, reason: kept }\n`,
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
  'policies/storage.yaml': 'use: [starter]\n',
});

/** A branch that grows a volume; main may have gone on meanwhile. */
function grown({ mainGoesOn }: { readonly mainGoesOn: boolean }): TestRepository {
  const repo = makeRepository({ files: estate('40 GiB') });
  repo.branch('grow');
  repo.write(estate('50 GiB'));
  repo.commit('grow');
  if (mainGoesOn) {
    repo.checkout('main');
    repo.write({ 'README.md': 'The storage of Gannet Point.\n' });
    repo.commit('say what it is');
    repo.checkout('grow');
  }
  return repo;
}

describe('one gate', () => {
  it.each([
    ['of a branch that holds main', false, ['--base', 'main', '--head', 'grow']],
    ['of a branch that main has moved on from', true, ['--base', 'main', '--head', 'grow']],
    ['that is told nothing', true, []],
    ['of uncommitted files', false, ['--worktree']],
  ] as const)('%s starts git five times at most', async (_, mainGoesOn, flags) => {
    const repo = grown({ mainGoesOn });
    const calls = join(mkdtempSync(join(outside, 'calls-')), 'calls');
    process.env.PATH = `${gitThat(`echo "$*" >> '${calls}'`)}:${machinePath}`;
    const { code, out, err } = await ullage('gate', '--repo', repo.dir, '--now', '2026-11-20', ...flags);
    expect([code, code === 0 ? '' : out + err]).toEqual([0, '']);
    const lines = readFileSync(calls, 'utf8').trim().split('\n');
    expect(lines.length, lines.join('\n')).toBeLessThanOrEqual(5);
  });

  it('by a pack of another repository starts it no more often', async () => {
    const pack = 'use: [starter]\n';
    const fleet = makeRepository({ files: { 'fleet.yaml': pack } });
    const held = {
      repository: `file://${fleet.dir}`,
      commit: fleet.git('rev-parse', 'HEAD'),
      path: 'fleet.yaml',
      sha256: createHash('sha256').update(pack).digest('hex'),
    };
    const repo = makeRepository({
      files: {
        ...estate('40 GiB'),
        'ullage.yaml': `currency: EUR\npacks: { fleet: ${JSON.stringify(held)} }\n`,
        'policies/storage.yaml': 'use: [fleet]\n',
      },
    });
    repo.git('fetch', '--quiet', held.repository, held.commit);
    repo.branch('grow');
    repo.write({ 'storage/a.yaml': estate('50 GiB')['storage/a.yaml'] });
    repo.commit('grow');
    const calls = join(mkdtempSync(join(outside, 'calls-')), 'calls');
    process.env.PATH = `${gitThat(`echo "$*" >> '${calls}'`)}:${machinePath}`;
    const { code, out, err } = await ullage(
      ...['gate', '--repo', repo.dir, '--now', '2026-11-20', '--base', 'main', '--head', 'grow'],
    );
    expect([code, code === 0 ? '' : out + err]).toEqual([0, '']);
    const lines = readFileSync(calls, 'utf8').trim().split('\n');
    expect(lines.length, lines.join('\n')).toBeLessThanOrEqual(5);
  });

  it('that hangs on what a waiver without a ceiling has covered starts it twice more', async () => {
    const repo = makeRepository({
      files: {
        ...estate('40 GiB'),
        'policies/storage.yaml': 'rules:\n  - { rule: growth-step, by: 1 GiB }\n',
      },
    });
    repo.write({
      'waivers/a.yaml':
        'waivers:\n  - { rule: growth-step, subject: plates-1, reason: survey, approved-by: head of imagery, from: 2026-01-01, until: 2026-12-31 }\n',
    });
    repo.commit('waived');
    for (const size of [45, 50, 55]) {
      repo.write({ 'storage/a.yaml': estate(`${size} GiB`)['storage/a.yaml'] });
      repo.commit(`${size} GiB`);
    }
    repo.branch('grow');
    repo.write({ 'storage/a.yaml': estate('60 GiB')['storage/a.yaml'] });
    repo.commit('grow');
    const calls = join(mkdtempSync(join(outside, 'calls-')), 'calls');
    process.env.PATH = `${gitThat(`echo "$*" >> '${calls}'`)}:${machinePath}`;
    const { code, out, err } = await ullage(
      ...['gate', '--repo', repo.dir, '--now', '2026-11-20', '--base', 'main', '--head', 'grow'],
    );
    expect([code, code === 0 ? '' : out + err]).toEqual([0, '']);
    const lines = readFileSync(calls, 'utf8').trim().split('\n');
    expect(lines.length, lines.join('\n')).toBeLessThanOrEqual(7);
  });

  it('by a git that is too old says so, whichever call finds it out', async () => {
    const repo = grown({ mainGoesOn: true });
    // Git 2.37 knows no `cat-file -z`: "Operating modes like "--batch" of "git cat-file" command learned to take
    // NUL-terminated input" is in the release notes of 2.38 (from memory).
    process.env.PATH = `${gitThat(
      'for word in "$@"; do case "$word" in version) echo git version 2.37.9; exit 0;; -z) echo "error: unknown switch z" >&2; exit 129;; esac; done',
    )}:${machinePath}`;
    const { code, out } = await ullage('gate', '--repo', repo.dir, '--base', 'main', '--head', 'grow');
    expect(code).toBe(2);
    expect(out).toContain('this is Git 2.37, and Git 2.38 or newer is needed');
  });
});

describe('a ref', () => {
  it('that poses as the full name of the main branch is not taken for it', async () => {
    const repo = grown({ mainGoesOn: false });
    // Git itself takes the tag for what it calls itself.
    repo.git('tag', 'refs/remotes/origin/main', 'grow');
    expect(repo.git('rev-parse', 'refs/remotes/origin/main')).toBe(repo.git('rev-parse', 'grow'));
    const opened = await GitRepository.open(repo.dir);
    if (!opened.ok) throw new Error('not opened');
    const compared = await resolveRevisions(opened.value, { head: 'grow' });
    await opened.value.close();
    expect(compared).toMatchObject({ ok: true, value: { baseCommit: repo.git('rev-parse', 'main') } });
  });

  it.each(['', '~1', '^', '^0', '~1^0'])('followed by %j leads where git says', async (steps) => {
    const repo = grown({ mainGoesOn: true });
    repo.git('tag', '-a', '-m', 'x', 'v1');
    const opened = await GitRepository.open(repo.dir);
    if (!opened.ok) throw new Error('not opened');
    const id = repo.git('rev-parse', 'grow');
    for (const start of ['grow', 'v1', 'heads/grow', 'refs/heads/grow', 'HEAD', '@', id, id.slice(0, 9)]) {
      expect([start, await opened.value.resolveCommit(`${start}${steps}`)]).toEqual([
        start,
        { ok: true, value: repo.git('rev-parse', `${start}${steps}^{commit}`) },
      ]);
    }
    await opened.value.close();
  });
});

/** Lists folders of the tree at HEAD. */
async function listing(repo: TestRepository, tree: string, ...folders: readonly string[]): Promise<Listing> {
  const opened = await GitRepository.open(repo.dir);
  if (!opened.ok) throw new Error('not opened');
  try {
    return await opened.value.tree(tree, { revision: tree, name: 'HEAD' }).list(...folders);
  } finally {
    await opened.value.close();
  }
}

describe('the files of a revision', () => {
  const name = fc.constantFrom('a', 'b', 'a.c', 'a0', 'ab', 'é');
  const path = fc.array(name, { minLength: 1, maxLength: 4 }).map((steps) => steps.join('/'));

  it('are those that git lists, in its order', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(path, { minLength: 1, maxLength: 12 }),
        fc.array(path, { minLength: 1, maxLength: 3 }),
        async (paths, folders) => {
          const repo = makeRepository();
          const blob = repo.git('hash-object', '-w', '--stdin');
          for (const each of paths) {
            try {
              repo.git('update-index', '--add', '--cacheinfo', `100644,${blob},${each}`);
            } catch {
              // A file stands where this path has a folder, or the other way round.
            }
          }
          const tree = repo.git('write-tree');
          // -c core.quotePath: names as they are, in UTF-8.
          const said = repo.git(
            '-c',
            'core.quotePath=off',
            'ls-tree',
            '-r',
            '--name-only',
            tree,
            '--',
            ...folders,
          );
          const { files, problems } = await listing(repo, tree, ...folders);
          repo.cleanup();
          expect(problems).toEqual([]);
          expect(files.map((file) => file.path)).toEqual(said === '' ? [] : said.split('\n'));
        },
      ),
      { numRuns: 15 },
    );
  });

  it('are the same on the disk as in the commit, whichever folders are chosen', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(path, { minLength: 1, maxLength: 12 }),
        fc.array(path, { minLength: 1, maxLength: 4 }),
        async (paths, folders) => {
          const repo = makeRepository();
          for (const each of paths) {
            try {
              repo.write({ [each]: 'x\n' });
            } catch {
              // A file stands where this path has a folder, or the other way round.
            }
          }
          repo.commit('files');
          const committed = await listing(repo, repo.git('rev-parse', 'HEAD^{tree}'), ...folders);
          const opened = await GitRepository.open(repo.dir);
          const disk = opened.ok ? await opened.value.workTree() : opened;
          if (!opened.ok || !disk.ok) throw new Error('not opened');
          expect(await disk.value.list(...folders)).toEqual(committed);
          await opened.value.close();
          repo.cleanup();
        },
      ),
      { numRuns: 15 },
    );
  });

  it('that come to ten thousand millions are refused, from ten objects', async () => {
    const repo = makeRepository();
    let entry = `100644 blob ${repo.git('hash-object', '-w', '--stdin')}`;
    let tree = '';
    for (let level = 0; level < 10; level += 1) {
      const lines = Array.from({ length: 10 }, (_, index) => `${entry}\t${index}\n`).join('');
      tree = execFileSync('git', ['mktree'], { cwd: repo.dir, input: lines, encoding: 'utf8' }).trim();
      entry = `040000 tree ${tree}`;
    }
    const { files, problems } = await listing(repo, tree, '.');
    expect(files).toEqual([]);
    expect(problems.map(({ message }) => message)).toEqual(['git lists more files than can be judged']);
  });
});
