import { afterAll, describe, expect, it } from 'vitest';
import type { Problem } from '../../src/base/problem.ts';
import { parseCommit } from '../../src/git/commit.ts';
import { firstParentHistory, type HistoryEntry, type HistoryRange } from '../../src/git/history.ts';
import { GitRepository } from '../../src/git/repository.ts';
import { makeRepository, removeRepositories } from '../repository.ts';

afterAll(removeRepositories);

async function history(dir: string, range: HistoryRange) {
  const repo = await GitRepository.open(dir);
  if (!repo.ok) throw new Error(JSON.stringify(repo.problems));
  const entries: HistoryEntry[] = [];
  const problems: Problem[] = [];
  for await (const entry of firstParentHistory(repo.value, range)) {
    if (entry.ok) entries.push(entry.value);
    else problems.push(...entry.problems);
  }
  await repo.value.close();
  return { entries, problems };
}

describe('the history of main', () => {
  it('has each merge once, as it changed main, with who, when and why', async () => {
    const repo = makeRepository({
      files: { 'storage/a.yaml': '1', 'README.md': 'r', 'storage/gone.yaml': 'g' },
    });
    const first = repo.git('rev-parse', 'HEAD');
    repo.branch('grow');
    repo.write({ 'storage/a.yaml': '2' });
    repo.commit('step');
    repo.write({ 'storage/a.yaml': '3', 'storage/b.yaml': 'b', 'README.md': 'R' });
    repo.remove('storage/gone.yaml');
    repo.commit('step on');
    repo.checkout('main');
    repo.write({ 'README.md': 'x\n', 'docs/x.md': 'x' });
    repo.git('checkout', '--quiet', 'HEAD', '--', 'README.md');
    repo.commit('docs only');
    const merge = repo.merge('grow', {
      message: 'grow a\n\nbecause of the survey\n\nApproved-by: Avery\n',
      date: '2026-05-04T10:20:30+02:00',
      author: 'Ines Plöver <ines@gannet-point.example>',
    });
    const { entries, problems } = await history(repo.dir, { to: merge, folders: ['storage'] });
    expect(problems).toEqual([]);
    expect(entries.map(({ commit }) => commit.id)).toEqual([merge, first]);
    const [newest, oldest] = entries;
    expect(newest?.commit).toMatchObject({
      author: { name: 'Ines Plöver', email: 'ines@gannet-point.example', date: '2026-05-04T10:20:30+02:00' },
      committer: { name: 'Avery Tern' },
      signature: 'absent',
      message: 'grow a\n\nbecause of the survey\n\nApproved-by: Avery\n',
      tree: repo.git('rev-parse', 'main^{tree}'),
      parents: [repo.git('rev-parse', 'main^1'), repo.git('rev-parse', 'main^2')],
    });
    expect(newest?.changed.map(({ path, how }) => [path, how])).toEqual([
      ['storage/a.yaml', 'modified'],
      ['storage/b.yaml', 'added'],
      ['storage/gone.yaml', 'deleted'],
    ]);
    expect(newest?.changed[0]?.after).toEqual({
      mode: '100644',
      blob: repo.git('rev-parse', 'main:storage/a.yaml'),
    });
    expect(oldest?.changed.map(({ how }) => how)).toEqual(['added', 'added']);
    const all = await history(repo.dir, { to: merge, from: first });
    expect(all.entries.map(({ commit }) => commit.message.split('\n')[0])).toEqual(['grow a', 'docs only']);
  });

  it('says where a shallow clone cuts it short', async () => {
    const repo = makeRepository({ files: { 'storage/a.yaml': '1' } });
    for (const n of [2, 3, 4]) {
      repo.write({ 'storage/a.yaml': `${n}` });
      repo.commit(`to ${n}`);
    }
    const clone = repo.clone('--depth=2');
    const { entries } = await history(clone.dir, {
      to: clone.git('rev-parse', 'HEAD'),
      folders: ['storage'],
    });
    expect(entries.map(({ cutShort }) => cutShort)).toEqual([false, true]);
    expect(entries[1]?.commit.parents).toHaveLength(1);
  });

  it('odd names, empty commits and hundreds of commits are no trouble', async () => {
    const repo = makeRepository({ files: { 'storage/:a\nb': '1' } });
    repo.commit('empty');
    const tree = repo.git('rev-parse', 'HEAD^{tree}');
    let tip = repo.git('rev-parse', 'HEAD');
    for (let n = 0; n < 200; n += 1) tip = repo.git('commit-tree', tree, '-p', tip, '-m', `n ${n}`);
    const { entries, problems } = await history(repo.dir, { to: tip });
    expect(problems).toEqual([]);
    expect(entries).toHaveLength(202);
    expect(entries.at(-1)?.changed[0]?.path).toBe('storage/:a\nb');
    expect(entries[0]?.commit.message).toBe('n 199\n');
  });

  it('can be left early, and a commit that is not there is a problem', async () => {
    const repo = makeRepository({ files: { 'storage/a.yaml': '1' } });
    const at = await GitRepository.open(repo.dir);
    if (!at.ok) throw new Error('not opened');
    for await (const entry of firstParentHistory(at.value, { to: repo.git('rev-parse', 'HEAD') })) {
      expect(entry.ok).toBe(true);
      break;
    }
    await at.value.close();
    const { problems } = await history(repo.dir, { to: '1'.repeat(40) });
    expect(problems).toHaveLength(1);
  });
});

describe('a commit as it is stored', () => {
  const raw = (...lines: string[]) => Buffer.from(lines.join('\n'), 'latin1');
  const tree = `tree ${'a'.repeat(40)}`;
  const who = 'Ines <ines@gannet-point.example> 1777882830';

  it('with a signature, which is seen and not verified', () => {
    const it = parseCommit(
      'x',
      raw(
        tree,
        `author ${who} -0330`,
        `committer ${who} +0000`,
        'gpgsig -----BEGIN',
        ' author Evil <e@x> 1 +0000',
        ' -----END',
        '',
        'why\n',
      ),
    );
    expect(it).toMatchObject({
      ok: true,
      value: {
        signature: 'present',
        author: { name: 'Ines', date: '2026-05-04T04:50:30-03:30' },
        committer: { date: '2026-05-04T08:20:30Z' },
      },
    });
  });

  it('in another encoding, and in one nobody knows', () => {
    const name = 'In\xe9s <i@x> 0 +0000';
    const latin = parseCommit(
      'x',
      raw(tree, `author ${name}`, `committer ${name}`, 'encoding ISO-8859-1', '', 'caf\xe9'),
    );
    expect(latin).toMatchObject({ ok: true, value: { author: { name: 'Inés' }, message: 'café' } });
    const unknown = parseCommit(
      'x',
      raw(tree, `author ${name}`, `committer ${name}`, 'encoding klingon', '', 'cafe'),
    );
    expect(unknown).toMatchObject({ ok: true, value: { message: 'cafe' } });
  });

  it('without a name is read; without a date, a date nobody lives to see, or a tree is refused', () => {
    const good = '<> 0 +0000';
    expect(parseCommit('x', raw(tree, `author ${good}`, `committer ${good}`, '', ''))).toMatchObject({
      ok: true,
    });
    for (const author of ['Ines <i@x>', 'Ines <i@x> 999999999999 +0000', 'Ines <i@x> 0 +9999', '']) {
      expect(parseCommit('x', raw(tree, `author ${author}`, `committer ${good}`, '', ''))).toMatchObject({
        ok: false,
      });
    }
    expect(parseCommit('x', raw(`author ${good}`, `committer ${good}`, '', ''))).toMatchObject({ ok: false });
    expect(parseCommit('x', raw(''))).toMatchObject({ ok: false });
  });
});
