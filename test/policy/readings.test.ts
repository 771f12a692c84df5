import { afterAll, describe, expect, it } from 'vitest';
import { GitRepository } from '../../src/git/repository.ts';
import type { Tree } from '../../src/git/tree.ts';
import { judgePair, readPair } from '../../src/policy/pair.ts';
import { type Files, makeRepository, removeRepositories } from '../repository.ts';

afterAll(removeRepositories);

const gib = (count: number): number => count * 2 ** 30;

const readings = (used: number): string =>
  `server,mount,at,size,used,available\nplate-scanner,/plates,2026-11-19T06:00:00Z,${gib(100)},${gib(used)},${gib(100 - used)}\n`;

const main: Files = {
  'ullage.yaml': 'currency: EUR\n',
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
  'policies/storage.yaml': 'rules:\n  - { rule: minimum-headroom, of: file-system, share: 0.2 }\n',
  'storage/imagery.yaml': `servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 100 GiB, tier: bulk, file-system: { mount: /plates, type: btrfs } }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
  'readings/2026.csv': readings(90),
};

async function judgedBranch(base: Files, branch: Files, remove: readonly string[] = []) {
  const repository = makeRepository({ files: base });
  const first = repository.commit('main as it is');
  repository.write(branch);
  if (remove.length > 0) repository.remove(...remove);
  const second = repository.commit('the branch');
  const opened = await GitRepository.open(repository.dir);
  if (!opened.ok) throw new Error('the repository does not open');
  const treeOf = async (id: string): Promise<Tree> => {
    const commit = await opened.value.commit(id);
    if (!commit.ok) throw new Error(`${id} does not read`);
    return opened.value.tree(commit.value.tree, { revision: id, name: id });
  };
  try {
    return await judgePair(await readPair(await treeOf(first), await treeOf(second)), { on: '2026-11-20' });
  } finally {
    await opened.value.close();
  }
}

const said = (judgement: Awaited<ReturnType<typeof judgedBranch>>): readonly string[] =>
  judgement.verdict === 'not judged'
    ? [judgement.verdict, ...judgement.reasons]
    : judgement.findings.map(({ baselineState, message }) => `${baselineState}: ${message}`);

describe('readings', () => {
  it('on main are what a file system is held against', async () => {
    expect(said(await judgedBranch(main, { 'NOTES.md': 'nothing to see\n' }))).toEqual([
      'unchanged: file system plates-1:/plates has 10 GiB free (90 GiB of 100 GiB used), and 20 GiB must stay free: 10 GiB short',
    ]);
  });

  it('that the branch brings or takes away change nothing in its own judgement', async () => {
    const short = await judgedBranch(main, { 'NOTES.md': 'nothing to see\n' });
    expect(said(await judgedBranch(main, { 'readings/2026.csv': readings(10) }))).toEqual(said(short));
    expect(said(await judgedBranch(main, {}, ['readings/2026.csv']))).toEqual(said(short));
  });

  it('that do not read stand in the way of a judgement that needs them', async () => {
    const broken = { ...main, 'readings/2026.csv': `${readings(90)}plate-scanner,/plates,yesterday,1,1,1\n` };
    const [verdict, reason] = said(await judgedBranch(broken, { 'NOTES.md': 'x\n' }));
    expect(verdict).toBe('not judged');
    expect(reason).toMatch(/^readings\/2026.csv:3:/);
  });

  it('are not so much as looked at where no rule asks for them', async () => {
    const indifferent = {
      ...main,
      'policies/storage.yaml': 'rules:\n  - { rule: no-shrink }\n',
      'readings/2026.csv': 'no readings at all\n',
    };
    expect(said(await judgedBranch(indifferent, { 'NOTES.md': 'x\n' }))).toEqual([]);
  });

  it('in a file that is no .csv are passed over', async () => {
    const noted = { ...main, 'readings/README.md': 'how to read these\n' };
    expect((await judgedBranch(noted, { 'NOTES.md': 'x\n' })).verdict).toBe('pass');
  });
});

describe('readings that a branch alters', () => {
  const rows = (...used: readonly number[]): string =>
    `server,mount,at,size,used,available\n${used
      .map(
        (each, day) =>
          `plate-scanner,/plates,2026-11-${10 + day}T06:00:00Z,${gib(100)},${gib(each)},${gib(100 - each)}\n`,
      )
      .join('')}`;
  const told = async (after: string) => {
    const judgement = await judgedBranch(
      { ...main, 'readings/2026.csv': rows(60, 70, 90) },
      { 'readings/2026.csv': after },
    );
    if (judgement.verdict === 'not judged') throw new Error(judgement.reasons.join());
    return judgement.policyChanges.map(
      ({ direction, of, name, from, to }) => `${direction} ${of} ${name}: ${from} to ${to}`,
    );
  };

  it('are a loosening where they are removed or made smaller: a forecast is as good as its evidence', async () => {
    expect(await told(rows(60, 70))).toEqual([
      'looser readings /plates on plate-scanner: 3 days to 2 of them as they were',
    ]);
    expect(await told(rows(60, 70, 20))).toEqual([
      'looser readings /plates on plate-scanner: 3 days to 2 of them as they were',
    ]);
  });

  it('are none where rows are added', async () => {
    expect(await told(rows(60, 70, 90, 91))).toEqual([]);
  });
});
