import { existsSync, rmSync } from 'node:fs';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import type { Outcome, Problem } from '../../src/base/problem.ts';
import { type RevisionPair, resolveRevisions, uncommittedFiles } from '../../src/git/compare.ts';
import { GitRepository } from '../../src/git/repository.ts';
import type { RevisionRequest } from '../../src/git/request.ts';
import type { Tree } from '../../src/git/tree.ts';
import { makeRepository, removeRepositories } from '../repository.ts';

afterAll(removeRepositories);

const opened: GitRepository[] = [];
afterEach(async () => {
  for (const repo of opened.splice(0)) await repo.close();
});

async function open(dir: string): Promise<GitRepository> {
  const repo = await GitRepository.open(dir);
  if (!repo.ok) throw new Error(JSON.stringify(repo.problems));
  opened.push(repo.value);
  return repo.value;
}

const compare = async (dir: string, what: RevisionRequest = {}): Promise<Outcome<RevisionPair>> =>
  resolveRevisions(await open(dir), what);

async function compared(dir: string, what: RevisionRequest = {}): Promise<RevisionPair> {
  const outcome = await compare(dir, what);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

async function problems(dir: string, what: RevisionRequest = {}): Promise<readonly Problem[]> {
  const outcome = await compare(dir, what);
  return outcome.ok ? [] : outcome.problems;
}

/** Path -> text of every file in `storage`. */
async function files(tree: Tree): Promise<Record<string, string>> {
  const listing = await tree.list('storage');
  expect(listing.problems).toEqual([]);
  const contents = await Promise.all(listing.files.map((file) => tree.read(file)));
  return Object.fromEntries(
    listing.files.map(({ path }, index) => {
      const content = contents[index];
      return [path, content?.ok ? Buffer.from(content.value).toString() : 'unreadable'];
    }),
  );
}

/** main and the branch `grow` have each gone on by one commit, in different files. */
function forked() {
  const repo = makeRepository({ files: { 'storage/a.yaml': 'a: 1\n', 'storage/b.yaml': 'b: 1\n' } });
  repo.branch('grow');
  repo.write({ 'storage/a.yaml': 'a: 2\n' });
  const head = repo.commit('grow a');
  repo.checkout('main');
  repo.write({ 'storage/b.yaml': 'b: 2\n' });
  const base = repo.commit('grow b');
  repo.checkout('grow');
  return { repo, base, head };
}

describe('a branch is judged as main would be after the merge', () => {
  it('what others merged meanwhile is in both, and not laid at its door', async () => {
    const { repo, base, head } = forked();
    const it = await compared(repo.dir);
    expect(it).toMatchObject({ how: 'merge-result', baseCommit: base, headCommit: head, baseRef: 'main' });
    expect(await files(it.base)).toEqual({ 'storage/a.yaml': 'a: 1\n', 'storage/b.yaml': 'b: 2\n' });
    expect(await files(it.head)).toEqual({ 'storage/a.yaml': 'a: 2\n', 'storage/b.yaml': 'b: 2\n' });
  });

  it('the merge result is the tree that git merge then makes', async () => {
    const { repo } = forked();
    const { headTree } = await compared(repo.dir, { base: 'main', head: 'grow' });
    repo.checkout('main');
    repo.merge('grow');
    expect(headTree).toBe(repo.git('rev-parse', 'HEAD^{tree}'));
  });

  it('leaves no object, ref, index change or temporary folder behind', async () => {
    const { repo } = forked();
    const state = () => [
      repo.git('count-objects', '-v'),
      repo.git('for-each-ref'),
      repo.git('status', '--porcelain'),
      repo.git('rev-parse', 'HEAD'),
    ];
    const before = state();
    const outcome = await compare(repo.dir);
    expect(outcome.ok).toBe(true);
    expect(state()).toEqual(before);
  });

  it('a branch that already holds main is judged as it is', async () => {
    const repo = makeRepository({ files: { 'storage/a.yaml': 'a: 1\n' } });
    repo.branch('grow');
    repo.write({ 'storage/a.yaml': 'a: 2\n' });
    repo.commit('grow');
    const it = await compared(repo.dir);
    expect(it.how).toBe('merge-result');
    expect(it.headTree).toBe(repo.git('rev-parse', 'grow^{tree}'));
  });

  it('main against itself, and a branch merged long ago, change nothing', async () => {
    const { repo } = forked();
    expect((await compared(repo.dir, { head: 'main' })).how).toBe('same');
    repo.checkout('main');
    repo.merge('grow');
    const it = await compared(repo.dir, { head: 'grow' });
    expect(it.how).toBe('same');
    expect(it.headTree).toBe(repo.git('rev-parse', 'main^{tree}'));
  });

  it('a conflict is not judged, and its files are named', async () => {
    const repo = makeRepository({ files: { 'storage/a.yaml': 'a: 1\n', 'storage/b.yaml': 'b: 1\n' } });
    repo.branch('grow');
    repo.write({ 'storage/a.yaml': 'a: 2\n' });
    repo.commit('grow');
    repo.checkout('main');
    repo.write({ 'storage/a.yaml': 'a: 3\n' });
    repo.commit('grow otherwise');
    const [problem] = await problems(repo.dir, { head: 'grow' });
    expect(problem?.message).toContain('conflicts in storage/a.yaml');
    expect(problem?.message).not.toContain('storage/b.yaml');
    expect(problem?.advice).toContain('git merge main');
  });

  it('histories with no commit in common are not judged', async () => {
    const { repo } = forked();
    repo.git('checkout', '--quiet', '--orphan', 'stranger');
    repo.write({ 'storage/c.yaml': 'c: 1\n' });
    repo.commit('elsewhere');
    expect((await problems(repo.dir))[0]?.message).toContain('no commit in common');
  });

  it('works in a SHA-256 repository', async () => {
    const repo = makeRepository({
      objectFormat: 'sha256',
      files: { 'storage/a.yaml': 'a: 1\n', 'storage/b.yaml': 'b' },
    });
    repo.branch('grow');
    repo.write({ 'storage/a.yaml': 'a: 2\n' });
    repo.commit('grow');
    repo.checkout('main');
    repo.write({ 'storage/b.yaml': 'c' });
    repo.commit('other');
    const it = await compared(repo.dir, { head: 'grow' });
    expect(it.headTree).toMatch(/^[0-9a-f]{64}$/);
    expect(await files(it.head)).toEqual({ 'storage/a.yaml': 'a: 2\n', 'storage/b.yaml': 'c' });
  });

  it('works in a linked work tree and from a folder inside it, whose path has a quote and a space', async () => {
    const { repo, base } = forked();
    const linked = `${repo.dir}/li "nk`;
    repo.git('worktree', 'add', '--quiet', '--detach', linked, 'grow');
    expect(await compared(`${linked}/storage`)).toMatchObject({ how: 'merge-result', baseCommit: base });
  });
});

describe('which commit is the base', () => {
  it('the default branch of origin comes before a stale local main', async () => {
    const { repo, base } = forked();
    repo.checkout('main');
    const clone = repo.clone();
    clone.git('reset', '--quiet', '--hard', 'HEAD~1');
    clone.git('checkout', '--quiet', '-b', 'work', 'origin/grow');
    const it = await compared(clone.dir);
    expect(it).toMatchObject({ baseRef: 'origin/main', baseCommit: base });
  });

  it('a tag that poses as main is not taken for it', async () => {
    const { repo, base } = forked();
    repo.git('tag', 'main', 'grow');
    expect((await compared(repo.dir)).baseCommit).toBe(base);
    const [problem] = await problems(repo.dir, { base: 'main' });
    expect(problem?.message).toBe('main is ambiguous here');
    expect(problem?.advice).toContain('refs/heads/main or refs/tags/main'.split(' or ')[0]);
    expect((await compared(repo.dir, { base: 'refs/heads/main' })).baseCommit).toBe(base);
  });

  it('a merge commit made by the CI host, in a clone of depth 2 with no branch at all', async () => {
    const { repo, base, head } = forked();
    repo.git('checkout', '--quiet', '--detach', 'main');
    const merge = repo.merge('grow');
    repo.git('update-ref', 'refs/pull/7/merge', merge);
    repo.checkout('main');
    const clone = makeRepository();
    const fetch = (depth: string) => {
      clone.git(
        'fetch',
        '--quiet',
        depth,
        `file://${repo.dir}`,
        '+refs/pull/7/merge:refs/remotes/pull/7/merge',
      );
      clone.git('checkout', '--quiet', '--detach', 'refs/remotes/pull/7/merge');
    };
    fetch('--depth=1');
    const [problem] = await problems(clone.dir);
    expect(problem?.message).toContain('not its first parent');
    expect(problem?.advice).toContain('depth 2');
    fetch('--depth=2');
    const it = await compared(clone.dir);
    expect(it).toMatchObject({ how: 'merge-commit', baseCommit: base, headCommit: merge });
    expect(await files(it.head)).toEqual({ 'storage/a.yaml': 'a: 2\n', 'storage/b.yaml': 'b: 2\n' });
    // The same with the base named.
    expect(await compared(clone.dir, { base })).toMatchObject({ how: 'merge-commit', baseCommit: base });
    expect(head).not.toBe(base);
  });

  it('a branch that merged main into itself cannot make its own past the base', async () => {
    const { repo, base } = forked();
    const merge = repo.merge('main');
    repo.git('checkout', '--quiet', '--detach');
    expect(await compared(repo.dir)).toMatchObject({ baseCommit: base, headCommit: merge });
    // Nor where no main branch is known.
    repo.git('branch', '--quiet', '-D', 'main', 'grow');
    const [problem] = await problems(repo.dir);
    expect(problem?.message).toContain('main branch is not known');
    expect(problem?.advice).toContain('--base HEAD^1');
  });

  it('a base that is not there is not judged, with the command that fetches it', async () => {
    const { repo } = forked();
    const [problem] = await problems(repo.dir, { base: 'origin/trunk' });
    expect(problem?.message).toBe('there is no commit origin/trunk in this clone');
    expect(problem?.advice).toContain('git fetch origin trunk:refs/remotes/origin/trunk');
  });

  it('an empty repository has nothing to judge, and no remote is to blame', async () => {
    for (const what of [{}, { base: 'main' }, { base: 'main', worktree: true }]) {
      expect(await problems(makeRepository().dir, what)).toEqual([
        {
          message: 'nothing is committed yet',
          advice: 'Commit to main first, or judge the files as they are with `--worktree`.',
        },
      ]);
    }
  });

  it('a branch that a clone has under its remote’s name only is offered under that name', async () => {
    const { repo } = forked();
    repo.checkout('main');
    const clone = repo.clone();
    const [head, ...others] = await problems(clone.dir, { head: 'grow' });
    expect(others).toEqual([]);
    expect(head?.message).toBe('there is no branch grow in this clone, but there is origin/grow');
    expect(head?.advice).toContain('`--head origin/grow`');
    expect((await problems(clone.dir, { base: 'grow' }))[0]?.advice).toContain('`--base origin/grow`');
    expect(await compared(clone.dir, { head: 'origin/grow' })).toMatchObject({ how: 'merge-result' });
    expect((await problems(clone.dir, { head: 'shrink' }))[0]?.message).toBe(
      'there is no commit shrink in this clone',
    );
  });
});

describe('a clone without all of its history or objects', () => {
  it('a shallow clone whose sides do not meet is not judged, with the command that mends it', async () => {
    const { repo } = forked();
    const clone = repo.clone('--depth=1', '--no-single-branch');
    const [problem] = await problems(clone.dir, { base: 'origin/main', head: 'origin/grow' });
    expect(problem?.message).toContain('shallow');
    expect(problem?.advice).toContain('git fetch --unshallow origin');
    clone.git('fetch', '--quiet', '--unshallow', 'origin');
    expect((await compared(clone.dir, { base: 'origin/main', head: 'origin/grow' })).how).toBe(
      'merge-result',
    );
  });

  it('a shallow clone that reaches the fork is judged like a whole one', async () => {
    const { repo } = forked();
    const whole = await compared(repo.dir, { base: 'main', head: 'grow' });
    const clone = repo.clone('--depth=2', '--no-single-branch');
    const it = await compared(clone.dir, { base: 'origin/main', head: 'origin/grow' });
    expect(it.headTree).toBe(whole.headTree);
  });

  it('a partial clone is reported, and nothing is fetched', async () => {
    const { repo } = forked();
    repo.git('config', 'uploadpack.allowFilter', 'true');
    const clone = repo.clone('--filter=blob:none', '--no-checkout');
    const objects = clone.git('count-objects', '-v');
    const outcome = await compared(clone.dir, { base: 'origin/main', head: 'origin/main' });
    const [file] = (await outcome.base.list('storage')).files;
    if (file === undefined) throw new Error('nothing listed');
    const read = await outcome.base.read(file);
    expect(read).toMatchObject({ ok: false });
    expect(JSON.stringify(read)).toContain('git fetch --refetch --no-filter origin');
    expect(clone.git('count-objects', '-v')).toBe(objects);
  });
});

describe('uncommitted files', () => {
  it('are judged with new ones, without ignored and deleted ones', async () => {
    const { repo } = forked();
    repo.merge('main');
    repo.write({
      '.gitignore': '*.bak\n',
      'storage/a.yaml': 'a: 3\n',
      'storage/new.yaml': 'n: 1\n',
      'storage/old.bak': 'x',
      'elsewhere/z.yaml': 'z',
    });
    repo.remove('storage/b.yaml');
    const it = await compared(repo.dir, { worktree: true });
    expect(it).toMatchObject({ how: 'worktree', baseRef: 'main' });
    expect(it.headTree).toBeUndefined();
    expect(it.head.label.revision).toBe('worktree');
    expect(await files(it.head)).toEqual({ 'storage/a.yaml': 'a: 3\n', 'storage/new.yaml': 'n: 1\n' });
    const listed = (await it.head.list('storage')).files;
    expect(listed.map(({ blob }) => blob)).toEqual(listed.map(({ path }) => repo.git('hash-object', path)));
  });

  it('on a branch that main has moved on from are not judged', async () => {
    const { repo } = forked();
    const [problem] = await problems(repo.dir, { worktree: true });
    expect(problem?.message).toContain('they would appear to be undone');
    expect(problem?.advice).toContain('git merge main');
  });

  it('in a bare repository there are none', async () => {
    const { repo } = forked();
    const bare = repo.clone('--bare');
    expect((await problems(bare.dir, { worktree: true }))[0]?.message).toContain('no work tree');
    expect((await compared(bare.dir, { base: 'main', head: 'grow' })).how).toBe('merge-result');
  });
});

it('the temporary folder is gone after closing', async () => {
  const { repo } = forked();
  const outcome = await GitRepository.open(repo.dir);
  if (!outcome.ok) throw new Error('not opened');
  const run = await outcome.value.inObjects(['rev-parse', '--absolute-git-dir']);
  const scratch = run.ok ? run.value.stdout.toString().trim() : '';
  expect(existsSync(scratch)).toBe(true);
  await outcome.value.close();
  expect(existsSync(scratch)).toBe(false);
  rmSync(repo.dir, { recursive: true });
});

describe('files that are changed and not committed', () => {
  it('are counted where they lie in the folders asked for: altered, new and gone', async () => {
    const { repo, head } = forked();
    const count = async () => uncommittedFiles(await open(repo.dir), head, ['ullage.yaml', 'storage']);
    expect(await count()).toBe(0);
    repo.write({ 'storage/a.yaml': 'a: 3\n', 'storage/new.yaml': 'c: 1\n', 'elsewhere.txt': 'x\n' });
    expect(await count()).toBe(2);
    repo.remove('storage/b.yaml');
    repo.write({ 'ullage.yaml': 'currency: EUR\n' });
    expect(await count()).toBe(4);
  });

  it('are none where only the line ends differ, as a checkout on Windows has them', async () => {
    const { repo, head } = forked();
    repo.write({ 'storage/a.yaml': 'a: 2\r\n' });
    expect(await uncommittedFiles(await open(repo.dir), head, ['storage'])).toBe(0);
  });

  it('are told without running a filter that the repository configures', async () => {
    const { repo, head } = forked();
    repo.git('config', 'filter.spy.clean', `touch ${repo.dir}/ran; cat`);
    repo.write({ '.gitattributes': '*.yaml filter=spy\n', 'storage/a.yaml': 'a: 9\n' });
    expect(await uncommittedFiles(await open(repo.dir), head, ['storage'])).toBe(1);
    expect(existsSync(`${repo.dir}/ran`)).toBe(false);
  });
});
