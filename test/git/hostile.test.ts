import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { nodeVersionProblem } from '../../src/cli/node-version.ts';
import { resolveRevisions } from '../../src/git/compare.ts';
import { gitVersionProblem } from '../../src/git/process.ts';
import { GitRepository, type OpenOptions } from '../../src/git/repository.ts';
import type { Tree } from '../../src/git/tree.ts';
import {
  isolatedEnvironment,
  makeRepository,
  removeRepositories,
  type TestRepository,
} from '../repository.ts';

const outside = mkdtempSync(join(tmpdir(), 'ullage-test-outside-'));
const marker = join(outside, 'a-program-ran');
afterAll(() => {
  removeRepositories();
  rmSync(outside, { recursive: true });
});

const opened: GitRepository[] = [];
afterEach(async () => {
  for (const repo of opened.splice(0)) await repo.close();
  rmSync(marker, { force: true });
});

async function open(dir: string, options: OpenOptions = {}): Promise<GitRepository> {
  const repo = await GitRepository.open(dir, options);
  if (!repo.ok) throw new Error(JSON.stringify(repo.problems));
  opened.push(repo.value);
  return repo.value;
}

async function whyNot(dir: string, options: OpenOptions = {}) {
  const repo = await GitRepository.open(dir, options);
  if (!repo.ok) return repo.problems[0];
  await repo.value.close();
  return undefined;
}

async function headOf(repository: TestRepository, options: OpenOptions = {}): Promise<Tree> {
  const repo = await open(repository.dir, options);
  const commit = await repo.commit(repository.git('rev-parse', 'HEAD'));
  if (!commit.ok) throw new Error(JSON.stringify(commit.problems));
  return repo.tree(commit.value.tree, { revision: commit.value.id, name: 'HEAD' });
}

const text = async (tree: Tree, path: string): Promise<string> => {
  const file = (await tree.list(path)).files[0];
  const content = file === undefined ? undefined : await tree.read(file);
  return content?.ok ? Buffer.from(content.value).toString() : 'unreadable';
};

/** Both sides have changed the same file in different lines, so that a merge has to look into it. */
function bothChanged(files: Record<string, string> = {}) {
  const repo = makeRepository({ files: { 'storage/a.yaml': 'a\nb\nc\nd\ne\n', ...files } });
  repo.branch('grow');
  repo.write({ 'storage/a.yaml': 'A\nb\nc\nd\ne\n' });
  repo.commit('grow');
  repo.checkout('main');
  repo.write({ 'storage/a.yaml': 'a\nb\nc\nd\nE\n' });
  repo.commit('other');
  repo.checkout('grow');
  return repo;
}

describe('no setting of the repository runs a program', () => {
  it('not a merge driver, a hook, a file-system monitor, a filter, a text conversion, an external diff or a signature check', async () => {
    const repo = bothChanged({
      '.gitattributes': 'storage/** merge=evil diff=evil filter=evil\n',
    });
    const program = join(outside, 'program');
    writeFileSync(program, `#!/bin/sh\necho "$0 $@" >> '${marker}'\n`);
    chmodSync(program, 0o755);
    const hooks = join(outside, 'hooks');
    mkdirSync(hooks, { recursive: true });
    for (const hook of ['post-index-change', 'reference-transaction', 'fsmonitor-watchman', 'post-merge']) {
      writeFileSync(join(hooks, hook), `#!/bin/sh\ntouch '${marker}'\n`);
      chmodSync(join(hooks, hook), 0o755);
    }
    for (const [key, value] of [
      ['merge.evil.driver', `${program} %O %A %B`],
      ['merge.default', 'evil'],
      ['diff.evil.textconv', program],
      ['diff.evil.command', program],
      ['diff.external', program],
      ['core.attributesFile', join(repo.dir, '.gitattributes')],
      ['gpg.program', program],
      ['log.showSignature', 'true'],
      ['core.pager', program],
      ['core.hooksPath', hooks],
      ['core.fsmonitor', program],
      ['filter.evil.clean', program],
      ['filter.evil.smudge', program],
      ['filter.evil.process', program],
      ['core.sshCommand', program],
      ['alias.ls-files', `!${program}`],
    ] as const) {
      repo.git('config', key, value);
    }
    // The trap works: git itself, asked for the same merge, runs it.
    try {
      repo.git('merge-tree', '--write-tree', 'main', 'grow');
    } catch {}
    expect(existsSync(marker)).toBe(true);
    rmSync(marker);

    const at = await open(repo.dir);
    const it = await resolveRevisions(at, {});
    if (!it.ok) throw new Error(JSON.stringify(it.problems));
    expect(await text(it.value.head, 'storage/a.yaml')).toBe('A\nb\nc\nd\nE\n');
    const files = await resolveRevisions(at, { worktree: true, base: 'grow' });
    if (!files.ok) throw new Error(JSON.stringify(files.problems));
    repo.write({ 'storage/a.yaml': 'changed\n' });
    expect(await text(files.value.head, 'storage/a.yaml')).toBe('changed\n');
    expect(existsSync(marker)).toBe(false);
  });
});

describe('no environment variable steers git', () => {
  it('not to another repository, another index, other objects, other settings or a program', async () => {
    const repo = bothChanged();
    const other = makeRepository({ files: { 'storage/a.yaml': 'other\n' } });
    const plain = await resolveRevisions(await open(repo.dir), {});
    const steered = await open(repo.dir, {
      environment: {
        ...isolatedEnvironment(),
        GIT_DIR: join(other.dir, '.git'),
        GIT_WORK_TREE: other.dir,
        GIT_COMMON_DIR: join(other.dir, '.git'),
        GIT_INDEX_FILE: join(other.dir, '.git/index'),
        GIT_OBJECT_DIRECTORY: join(other.dir, '.git/objects'),
        GIT_ALTERNATE_OBJECT_DIRECTORIES: join(other.dir, '.git/objects'),
        GIT_NAMESPACE: 'elsewhere',
        GIT_CONFIG_COUNT: '2',
        GIT_CONFIG_KEY_0: 'core.worktree',
        GIT_CONFIG_VALUE_0: other.dir,
        GIT_CONFIG_KEY_1: 'core.fsmonitor',
        GIT_CONFIG_VALUE_1: `touch ${marker}`,
        GIT_CONFIG_PARAMETERS: `'core.fsmonitor'='touch ${marker}'`,
        GIT_EXTERNAL_DIFF: `touch ${marker}`,
        GIT_PAGER: `touch ${marker}`,
        GIT_EXEC_PATH: outside,
        GIT_TRACE: join(outside, 'trace'),
        GIT_REPLACE_REF_BASE: 'refs/evil',
        GIT_SHALLOW_FILE: join(outside, 'shallow'),
        GIT_CEILING_DIRECTORIES: '/',
        GIT_DEFAULT_HASH: 'sha256',
      },
    });
    const it = await resolveRevisions(steered, {});
    if (!it.ok || !plain.ok) throw new Error(JSON.stringify([it, plain]));
    expect(it.value.headTree).toBe(plain.value.headTree);
    expect(it.value.baseCommit).toBe(plain.value.baseCommit);
    const files = await resolveRevisions(steered, { worktree: true, base: 'grow' });
    if (!files.ok) throw new Error(JSON.stringify(files.problems));
    expect(await text(files.value.head, 'storage/a.yaml')).toBe('A\nb\nc\nd\ne\n');
    expect(existsSync(marker)).toBe(false);
    expect(existsSync(join(outside, 'trace'))).toBe(false);
  });
});

describe('history is what the commits say', () => {
  it('a replaced commit or file is read as it was before', async () => {
    const repo = makeRepository({ files: { 'storage/a.yaml': 'limit: 1\n' } });
    repo.branch('grow');
    repo.write({ 'storage/a.yaml': 'limit: 9\n' });
    repo.commit('grow');
    const blob = repo.git('rev-parse', 'main:storage/a.yaml');
    repo.git('replace', blob, repo.git('rev-parse', 'grow:storage/a.yaml'));
    repo.git('replace', 'main', 'grow');
    expect(repo.git('cat-file', 'blob', blob)).toBe('limit: 9');
    const it = await resolveRevisions(await open(repo.dir), { base: 'main', head: 'grow' });
    if (!it.ok) throw new Error(JSON.stringify(it.problems));
    expect(await text(it.value.base, 'storage/a.yaml')).toBe('limit: 1\n');
    expect(await text(it.value.head, 'storage/a.yaml')).toBe('limit: 9\n');
  });

  it('a grafted parent is not believed', async () => {
    const repo = bothChanged();
    const plain = await resolveRevisions(await open(repo.dir), {});
    const [main, grow] = ['main', 'grow'].map((ref) => repo.git('rev-parse', ref));
    mkdirSync(join(repo.dir, '.git/info'), { recursive: true });
    writeFileSync(join(repo.dir, '.git/info/grafts'), `${grow} ${main}\n`);
    expect(repo.git('merge-base', 'main', 'grow')).toBe(main);
    const it = await resolveRevisions(await open(repo.dir), {});
    if (!it.ok || !plain.ok) throw new Error(JSON.stringify([it, plain]));
    expect(it.value).toMatchObject({ how: 'merge-result', headTree: plain.value.headTree });
    // Believed, the graft would have made the merge the branch itself.
    expect(it.value.headTree).not.toBe(repo.git('rev-parse', 'grow^{tree}'));
  });
});

describe('refs', () => {
  it.each([
    '--upload-pack=touch x',
    '-',
    '--all',
    'main..grow',
    'main...grow',
    'HEAD@{1}',
    'HEAD:storage',
    ':/grow',
    '^main',
    'HEAD^{/grow}',
    'HEAD^@',
    'HEAD^!',
    'ma in',
    'main\n',
    'main\0',
    '',
    'ma*n',
    '\u202emain',
  ])('%j is refused', async (ref) => {
    const repo = await open(makeRepository({ files: { a: 'a' } }).dir);
    const outcome = await repo.resolveCommit(ref);
    expect(outcome).toMatchObject({ ok: false });
    expect(JSON.stringify(outcome)).toContain('names no single commit');
    expect(JSON.stringify(outcome)).not.toMatch(/\u202e/);
  });

  it('branches, tags, ids, parents and names with a slash are found', async () => {
    const repository = makeRepository({ files: { a: 'a' } });
    const first = repository.git('rev-parse', 'HEAD');
    repository.git('tag', '-a', '-m', 'x', 'v1');
    repository.branch('team/grow');
    repository.write({ a: 'b' });
    const second = repository.commit('second');
    const repo = await open(repository.dir);
    const ids = await Promise.all(
      ['main', 'v1', first, 'refs/heads/main', 'HEAD~1', 'team/grow^', 'team/grow', second.slice(0, 12)].map(
        (ref) => repo.resolveCommit(ref),
      ),
    );
    expect(ids.map((id) => (id.ok ? id.value : id.problems))).toEqual([
      first,
      first,
      first,
      first,
      first,
      first,
      second,
      second,
    ]);
  });

  it('a file is no commit', async () => {
    const repository = makeRepository({ files: { a: 'a' } });
    const repo = await open(repository.dir);
    expect(await repo.resolveCommit(repository.git('rev-parse', 'HEAD:a'))).toMatchObject({ ok: false });
  });

  it('a branch whose name is a shell command is quoted in the command that fetches it', async () => {
    const repo = await open(makeRepository({ files: { a: 'a' } }).dir);
    const outcome = await repo.resolveCommit('origin/$(reboot);x');
    expect(JSON.stringify(outcome)).toContain("'$(reboot);x:refs/remotes/origin/$(reboot);x'");
  });
});

describe('what is no plain file is never passed over in silence', () => {
  it('symbolic links and submodules, in a revision', async () => {
    const repo = makeRepository({ files: { 'storage/a.yaml': 'a', 'other/b.yaml': 'b' } });
    symlinkSync('/etc/passwd', join(repo.dir, 'storage/link.yaml'));
    symlinkSync('../other', join(repo.dir, 'storage/folder'));
    symlinkSync('other', join(repo.dir, 'policies'));
    repo.commit('links');
    repo.git('update-index', '--add', '--cacheinfo', `160000,${repo.git('rev-parse', 'HEAD')},storage/sub`);
    repo.git('commit', '--quiet', '--message', 'submodule');
    const tree = await headOf(repo);
    const { files, problems } = await tree.list('storage', 'policies');
    expect(files.map(({ path }) => path)).toEqual(['storage/a.yaml']);
    expect(problems.map(({ message }) => message).sort()).toEqual([
      'policies is a symbolic link, which is not followed',
      'storage/folder is a symbolic link, which is not followed',
      'storage/link.yaml is a symbolic link, which is not followed',
      'storage/sub is a submodule, which is not followed',
    ]);
    expect((await tree.list('policies/deep')).problems).toHaveLength(1);
    expect((await tree.list('storage/sub/deep')).problems).toHaveLength(1);
    expect(await tree.list('storage/nowhere/deep')).toEqual({ files: [], problems: [] });
  });

  it('the same on the disk, also where a tracked folder has become a link, and a pipe', async () => {
    const repo = makeRepository({
      files: { 'storage/a.yaml': 'a', 'storage/deep/b.yaml': 'b', 'storage/pipe.yaml': 'p' },
    });
    symlinkSync('/etc/passwd', join(repo.dir, 'storage/link.yaml'));
    repo.remove('storage/deep', 'storage/pipe.yaml');
    mkdirSync(join(outside, 'deep'), { recursive: true });
    writeFileSync(join(outside, 'deep/b.yaml'), 'secret');
    symlinkSync(join(outside, 'deep'), join(repo.dir, 'storage/deep'));
    symlinkSync(outside, join(repo.dir, 'policies'));
    execFileSync('mkfifo', [join(repo.dir, 'storage/pipe.yaml')]);
    mkdirSync(join(repo.dir, 'storage/nested'));
    repo.git('init', '--quiet', 'storage/nested');
    writeFileSync(join(repo.dir, 'storage/nested/x.yaml'), 'x');
    const tree = await (await open(repo.dir)).workTree();
    if (!tree.ok) throw new Error(JSON.stringify(tree.problems));
    const { files, problems } = await tree.value.list('storage', 'policies/deep');
    expect(files.map(({ path }) => path)).toEqual(['storage/a.yaml']);
    expect(problems.map(({ message }) => message).sort()).toEqual([
      'policies is a symbolic link, which is not followed',
      'storage/deep is a symbolic link, which is not followed',
      'storage/deep/b.yaml is a symbolic link, which is not followed',
      'storage/link.yaml is a symbolic link, which is not followed',
      'storage/nested is a nested repository, which is not followed',
      'storage/pipe.yaml is a device, which is not followed',
    ]);
  });

  it('names with line feeds, tabs, escapes, reordering, invalid UTF-8, and names alike but for case', async () => {
    const repo = makeRepository({ files: { 'storage/é "x" | <b>.yaml': 'plain enough' } });
    const blob = repo.git('rev-parse', 'HEAD:storage/é "x" | <b>.yaml');
    const names = [
      'a\nb.yaml',
      'a\tb.yaml',
      '\u001b[2Jb.yaml',
      '\u202eb.yaml',
      'Same.yaml',
      'same.yaml',
      'e\u0301 "x" | <b>.yaml',
    ];
    const rows = [...names.map((name) => Buffer.from(name)), Buffer.from([0xff, 0x2e, 0x79])].map((name) =>
      Buffer.concat([Buffer.from(`100644 ${blob}\tstorage/`), name, Buffer.from([0])]),
    );
    execFileSync('git', ['-C', repo.dir, 'update-index', '-z', '--index-info'], {
      input: Buffer.concat(rows),
      env: isolatedEnvironment(),
    });
    repo.git('commit', '--quiet', '--message', 'odd names');
    const { files, problems } = await (await headOf(repo)).list('storage');
    // Of two that are alike the first is listed and the second refused: 8 + 1 names, 2 files, 7 problems.
    expect(files).toHaveLength(2);
    expect(problems).toHaveLength(7);
    const messages = problems.map(({ message }) => message).join('\n');
    expect(messages).toContain('storage/a\\u{a}b.yaml holds control characters');
    expect(messages).toContain('is not valid UTF-8');
    expect(messages).toContain('differs from storage/Same.yaml only in case');
    expect(JSON.stringify(problems)).not.toMatch(/\\n|\\t|\\u001b|\u202e/);
    expect(problems.every(({ place }) => place !== undefined)).toBe(true);
  });

  it.each(['../storage', '/etc', 'a/../b', 'a\nb', '', 'a//b'])('%j is no folder', async (folder) => {
    const tree = await headOf(makeRepository({ files: { 'storage/a.yaml': 'a' } }));
    const { files, problems } = await tree.list(folder);
    expect(files).toEqual([]);
    expect(problems).toHaveLength(1);
  });

  it('a folder that looks like a pathspec or an option is only a folder', async () => {
    const tree = await headOf(
      makeRepository({ files: { ':(top)storage/a.yaml': 'a', '--help/b.yaml': 'b', 'storage/c.yaml': 'c' } }),
    );
    expect((await tree.list(':(top)storage', '--help', 'stor*')).files.map(({ path }) => path)).toEqual([
      '--help/b.yaml',
      ':(top)storage/a.yaml',
    ]);
    expect((await tree.list('.')).files).toHaveLength(3);
    expect((await tree.list('./storage/')).files).toHaveLength(1);
  });

  it('paths are in byte order, each once, however the folders overlap', async () => {
    const tree = await headOf(
      makeRepository({
        files: { 's/a/b': '1', 's/a.c': '2', 's/a0': '3', 's/Y': '4', 's/é': '5', 's/z': '6' },
      }),
    );
    expect((await tree.list('s', 's/a')).files.map(({ path }) => path)).toEqual([
      's/Y',
      's/a.c',
      's/a/b',
      's/a0',
      's/z',
      's/é',
    ]);
  });
});

describe('large files', () => {
  it('a file at the limit is read, one above it is refused by name, and those beside it are read', async () => {
    const repo = makeRepository({
      files: {
        'storage/a.yaml': 'a'.repeat(1000),
        'storage/b.yaml': 'b'.repeat(1001),
        'storage/c.yaml': '',
        'storage/d.yaml': 'd\n\n',
      },
    });
    const at = await open(repo.dir, { largestFile: 1000 });
    const onDisk = await at.workTree();
    if (!onDisk.ok) throw new Error('no work tree');
    for (const tree of [await headOf(repo, { largestFile: 1000 }), onDisk.value]) {
      const { files } = await tree.list('storage');
      const read = await Promise.all(files.map((file) => tree.read(file)));
      expect(
        read.map((content) => (content.ok ? content.value.length : content.problems[0]?.message)),
      ).toEqual([1000, 'storage/b.yaml has 1001 bytes, and a file of more than 1000 is not read', 0, 3]);
      expect(files.map(({ blob }) => blob)).toEqual(files.map(({ path }) => repo.git('hash-object', path)));
    }
  });

  it('a file of 100 MiB takes no memory', async () => {
    const repo = makeRepository({ files: { 'storage/huge.yaml': Buffer.alloc(100 * 1024 * 1024, 0x61) } });
    const tree = await headOf(repo);
    const onDisk = await (await open(repo.dir)).workTree();
    if (!onDisk.ok) throw new Error('no work tree');
    const before = process.memoryUsage();
    for (const each of [tree, onDisk.value]) {
      const [file] = (await each.list('storage')).files;
      expect(file === undefined ? undefined : await each.read(file)).toMatchObject({ ok: false });
    }
    const after = process.memoryUsage();
    expect(after.arrayBuffers + after.external - before.arrayBuffers - before.external).toBeLessThan(
      50 * 1024 * 1024,
    );
  });

  it('hundreds of files of all sizes, read at once, each come back as their own', async () => {
    const contents = Array.from({ length: 400 }, (_, n) => `${n}\n`.repeat((n * 37) % 3000));
    const repo = makeRepository({
      files: Object.fromEntries(
        contents.map((content, n) => [`storage/${String(n).padStart(4, '0')}`, content]),
      ),
    });
    const tree = await headOf(repo);
    const { files } = await tree.list('storage');
    const read = await Promise.all(files.map((file) => tree.read(file)));
    expect(
      read.map((content) => (content.ok ? Buffer.from(content.value).toString() : content.problems)),
    ).toEqual(contents);
  });

  it('what git cannot read any more is a problem, and does not hang', async () => {
    const repo = makeRepository({ files: { 'storage/a.yaml': 'a', 'storage/b.yaml': 'b' } });
    const blob = repo.git('rev-parse', 'HEAD:storage/a.yaml');
    const path = join(repo.dir, '.git/objects', blob.slice(0, 2), blob.slice(2));
    chmodSync(path, 0o644);
    writeFileSync(path, 'not an object');
    const tree = await headOf(repo);
    const { files } = await tree.list('storage');
    const read = await Promise.all(files.map((file) => tree.read(file)));
    expect(read[0]).toMatchObject({ ok: false });
  });

  it('reading after closing is a problem', async () => {
    const repository = makeRepository({ files: { 'storage/a.yaml': 'a' } });
    const repo = await GitRepository.open(repository.dir);
    if (!repo.ok) throw new Error('not opened');
    const id = repository.git('rev-parse', 'HEAD');
    const asked = repo.value.commit(id);
    await repo.value.close();
    expect(await asked).toMatchObject({ ok: false });
    expect(await repo.value.commit(id)).toMatchObject({ ok: false });
  });
});

describe('the machine', () => {
  it.each([
    ['git version 2.38.0', true],
    ['git version 2.39.5 (Apple Git-154)', true],
    ['git version 2.45.1.windows.1', true],
    ['git version 2.50.GIT', true],
    ['git version 3.0.0-rc1', true],
    ['git version 2.37.9', false],
    ['git version 1.99.0', false],
    ['git version unknown', false],
    ['', false],
  ])('%j', (said, good) => {
    expect(gitVersionProblem(said) === undefined).toBe(good);
  });

  it.each([
    ['20.0.0', true],
    ['24.1.0', true],
    ['18.20.4', false],
  ])('Node.js %s', (version, good) => {
    expect(nodeVersionProblem(version) === undefined).toBe(good);
  });

  it('an older git, and no git, are named with the version wanted', async () => {
    const repo = makeRepository({ files: { a: 'a' } });
    const bin = mkdtempSync(join(outside, 'bin-'));
    writeFileSync(join(bin, 'git'), '#!/bin/sh\necho git version 2.30.2\n');
    chmodSync(join(bin, 'git'), 0o755);
    expect((await whyNot(repo.dir, { environment: { PATH: bin } }))?.message).toBe(
      'this is Git 2.30, and Git 2.38 or newer is needed',
    );
    const none = await whyNot(repo.dir, { environment: { PATH: mkdtempSync(join(outside, 'none-')) } });
    expect(none?.message).toContain('not installed');
    expect(none?.advice).toContain('2.38');
  });

  it('a folder that is not there, and one that is no repository', async () => {
    expect((await whyNot(join(outside, 'nowhere')))?.message).toContain('there is no folder');
    expect((await whyNot(outside))?.message).toContain('is not in a Git repository');
  });

  it.skipIf(process.getuid?.() !== 0)(
    "another user's repository is refused, with the setting that trusts it",
    async () => {
      const repo = makeRepository({ files: { a: 'a' } });
      chownSync(repo.dir, 65534, 65534);
      chownSync(join(repo.dir, '.git'), 65534, 65534);
      const problem = await whyNot(repo.dir, { environment: { PATH: process.env.PATH, HOME: outside } });
      expect(problem?.message).toContain('belongs to another user');
      expect(problem?.advice).toContain('git config --global --add safe.directory');
    },
  );

  it('a work tree that a setting moves elsewhere is refused', async () => {
    const repo = makeRepository({ files: { a: 'a' } });
    repo.git('config', 'core.worktree', outside);
    expect(await (await open(repo.dir)).workTree()).toMatchObject({ ok: false });
  });
});

describe('work trees that are not whole', () => {
  it('an unsettled conflict and a sparse checkout are problems', async () => {
    const repo = makeRepository({ files: { 'storage/a.yaml': '1', 'far/b.yaml': 'b' } });
    repo.branch('grow');
    repo.write({ 'storage/a.yaml': '2' });
    repo.commit('grow');
    repo.checkout('main');
    repo.write({ 'storage/a.yaml': '3' });
    repo.commit('other');
    expect(() => repo.merge('grow')).toThrow();
    const conflicted = await (await open(repo.dir)).workTree();
    if (!conflicted.ok) throw new Error('no work tree');
    expect((await conflicted.value.list('storage')).problems.map(({ message }) => message)).toEqual([
      'storage/a.yaml still has a merge conflict',
    ]);
    repo.git('merge', '--abort');
    repo.git('sparse-checkout', 'set', 'storage');
    const sparse = await (await open(repo.dir)).workTree();
    if (!sparse.ok) throw new Error('no work tree');
    expect((await sparse.value.list('far', 'storage')).problems.map(({ message }) => message)).toEqual([
      'far/b.yaml is left out of this sparse checkout, so it looks the same as a deleted one',
    ]);
  });
});
