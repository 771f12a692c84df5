import { describe, expect, it } from 'vitest';
import { ok, type Problem } from '../../src/base/problem.ts';
import type { Tree } from '../../src/git/tree.ts';
import { readRevision } from '../../src/policy/reader.ts';
import { type Files, gannetPoint, judgeFiles, line, problemsOf, treeOf } from '../estate/builder.ts';

const storage = 'storage/imagery.yaml';

const sound: Files = { ...gannetPoint, [storage]: 'volumes:\n  plates-1: { size: 40 GiB, tier: bulk }\n' };

/** What stands in the way of judging a branch, and the very character that each place points at. */
async function problemsIn(base: Files, head: Files): Promise<readonly Problem[]> {
  const judgement = await judgeFiles(base, head);
  return judgement.verdict === 'not judged' ? judgement.problems : [];
}

const pointedAt = ({ place, excerpt }: Problem): string | undefined =>
  excerpt?.slice((place?.column ?? 1) - 1);

describe('a problem shows the line it is on, also where only the whole estate shows it', () => {
  it.each([
    [
      'a name that two files declare',
      { 'storage/more.yaml': 'volumes:\n  plates-1: { size: 1 GiB, tier: bulk }\n' },
      'plates-1: { size: 1 GiB, tier: bulk }',
    ],
    [
      'a tier that no price list has',
      { 'storage/more.yaml': 'volumes:\n  spare: { size: 1 GiB, tier: bulky }\n' },
      'tier: bulky }',
    ],
    [
      'a reference to what is not declared',
      { 'storage/more.yaml': 'servers:\n  a: {}\nattachments:\n  - { volume: plates-9, server: a }\n' },
      '{ volume: plates-9, server: a }',
    ],
    [
      'a member that has a file system of its own',
      {
        'storage/more.yaml':
          'volumes:\n  own: { size: 1 GiB, tier: bulk, file-system: { mount: /own, type: xfs } }\nvolume-groups:\n  plates: { members: [own] }\n',
      },
      undefined,
    ],
  ])('%s', async (_what, files, source) => {
    const problems = await problemsIn(sound, { ...sound, ...files });
    expect(problems.length).toBeGreaterThan(0);
    for (const problem of problems) {
      const all: Files = { ...sound, ...files };
      const text = all[problem.place?.file ?? ''] ?? '';
      expect(problem.excerpt).toBe(text.split('\n')[(problem.place?.line ?? 0) - 1]);
      expect(problem.excerpt?.trim()).not.toBe('');
    }
    if (source !== undefined) expect(problems.map(pointedAt)).toContain(source);
  });

  it('from the revision that the problem is in', async () => {
    const unpriced = { ...sound, [storage]: 'volumes:\n  plates-1: { size: 40 GiB, tier: bulky }\n' };
    const mended = {
      ...sound,
      [storage]: '# moved down\nvolumes:\n  plates-1: { size: 40 GiB, tier: bulk }\n',
    };
    const [onMain, ...others] = await problemsIn(unpriced, mended);
    expect(others).toEqual([]);
    expect(onMain).toMatchObject({ revision: 'base', excerpt: '  plates-1: { size: 40 GiB, tier: bulky }' });
    const [onBranch] = await problemsIn(sound, unpriced);
    expect(onBranch).toMatchObject({
      revision: 'head',
      excerpt: '  plates-1: { size: 40 GiB, tier: bulky }',
    });
  });

  it('for a tier that only the branch’s own price list has', async () => {
    const priced = {
      ...sound,
      'prices/2026.yaml': `${gannetPoint['prices/2026.yaml']}`.replace(
        'tiers:\n',
        'tiers:\n  new: { rate: "1", per: GiB-month }\n',
      ),
      [storage]: 'volumes:\n  plates-1: { size: 40 GiB, tier: new }\n',
    };
    const [problem] = await problemsIn(sound, priced);
    expect(problem && line(problem)).toMatch(/^storage\/imagery\.yaml:2:\d+: .*tier new/);
    expect(problem && pointedAt(problem)).toBe('tier: new }');
  });

  it('for a revision read by itself, in files that end their lines as Windows does', async () => {
    const files = {
      ...sound,
      'storage/more.yaml': 'volumes:\r\n  plates-1: { size: 1 GiB, tier: bulk }\r\n',
    };
    const [problem] = problemsOf(await readRevision(treeOf(files, 'head')));
    expect(problem?.excerpt).toBe('  plates-1: { size: 1 GiB, tier: bulk }');
  });

  it('and no file is read a second time where nothing is wrong', async () => {
    let reads = 0;
    const tree = treeOf(sound, 'head');
    const counting: Tree = {
      ...tree,
      read: async (file) => {
        reads++;
        return tree.read(file);
      },
    };
    await readRevision(counting);
    expect(reads).toBe(Object.keys(sound).length);
  });

  it('and what is no text has no line', async () => {
    const tree = treeOf(sound, 'head');
    const binary: Tree = { ...tree, read: async () => ok(Uint8Array.of(0x61, 0xff)) };
    const problems = problemsOf(await readRevision(binary));
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.map(({ excerpt }) => excerpt).filter((excerpt) => excerpt !== undefined)).toEqual([]);
  });
});
