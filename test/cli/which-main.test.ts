import { afterAll, describe, expect, it } from 'vitest';
import { makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

const estate = (size: string) => ({
  'ullage.yaml': 'currency: EUR\n',
  'storage/a.yaml': `volumes:\n  plates-1: { size: ${size}, tier: bulk, retain-until: 2030-01-01, reason: kept }\n`,
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
  'policies/storage.yaml': 'use: [starter]\n',
});

/** A clone, and a branch in it that grows a volume. */
function cloned(onMain: (clone: TestRepository) => void): TestRepository {
  const clone = makeRepository({ files: estate('40 GiB') }).clone();
  onMain(clone);
  clone.branch('grow');
  clone.write(estate('60 GiB'));
  clone.commit('grow');
  return clone;
}

const commits = (count: number) => (clone: TestRepository) => {
  for (let nth = 1; nth <= count; nth += 1) {
    clone.write(estate(`${40 + nth} GiB`));
    clone.commit(`grow by ${nth} GiB`);
  }
};

const run = (command: string, { dir }: TestRepository, ...more: readonly string[]) =>
  ullage(command, '--repo', dir, '--now', '2026-11-20', ...more);

describe('main that is not pushed', () => {
  it.each(['gate', 'steps'])('is told by %s, which judges by what was fetched', async (command) => {
    const { err } = await run(command, cloned(commits(1)));
    expect(err).toContain(
      'Judged against origin/main, which is main as it was last fetched. The branch main of this clone has 1 commit that is not on it: push it, or give `--base main`.',
    );
    const { err: two } = await run(command, cloned(commits(2)), '--format', 'json');
    expect(two).toContain('has 2 commits that are not on it: push them,');
  });

  it('is told of the work tree, too', async () => {
    expect((await run('gate', cloned(commits(1)), '--worktree')).err).toContain('Judged against origin/main');
  });

  it('is not told where the base was named, or there is none', async () => {
    expect((await run('gate', cloned(commits(1)), '--base', 'main')).err).not.toContain('last fetched');
    expect((await run('gate', cloned(commits(0)))).err).not.toContain('last fetched');
  });

  it('is not told where it is what is judged, or behind what was fetched', async () => {
    const clone = cloned(commits(1));
    expect((await run('gate', clone, '--head', 'main')).err).not.toContain('last fetched');
    clone.git('update-ref', 'refs/remotes/origin/main', 'grow');
    expect((await run('gate', clone, '--head', 'grow')).err).not.toContain('last fetched');
  });
});

describe('a slip in the name of a branch', () => {
  it.each([
    ['--base', 'mian', 'main'],
    ['--head', 'grwo', 'grow'],
    ['--base', 'orign/main', 'origin/main'],
  ])('is met with the nearest: %s %s', async (option, name, nearest) => {
    const { code, out } = await run('gate', cloned(commits(0)), option, name);
    expect(code).toBe(2);
    expect(out).toContain(`there is no commit ${name} in this clone`);
    expect(out).toContain(`Did you mean ${nearest}? Check the name`);
  });

  it('is met with none where none is near', async () => {
    expect((await run('gate', cloned(commits(0)), '--base', 'winter-freeze')).out).not.toContain(
      'Did you mean',
    );
  });
});
