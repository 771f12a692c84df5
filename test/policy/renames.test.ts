/** A rename is told from two revisions: what main has carried out renames nothing, and the old name is free again. */
import { describe, expect, it } from 'vitest';
import { gannetPoint, judged, line, said, unjudgedFiles } from '../estate/builder.ts';

const file = 'storage/imagery.yaml';
const volumes = (...each: readonly string[]): string =>
  `volumes:\n${each.map((one) => `  ${one}\n`).join('')}`;
const volume = (name: string, more = ''): string => `${name}: { size: 1 GiB, tier: bulk${more} }`;
const stale = { 'policies/storage.yaml': 'rules:\n  - { rule: no-stale-rename }\n' };

const unjudged = async (base: string, head: string): Promise<readonly string[]> => {
  const judgement = await unjudgedFiles({ ...gannetPoint, [file]: base }, { ...gannetPoint, [file]: head });
  return judgement.problems.map(line);
};

describe('an old name that comes to a new thing', () => {
  const renamed = volume('new', ', formerly: old');

  it('is a finding at the line that is to go, and no dead end', async () => {
    const head = { [file]: volumes(renamed), 'storage/more.yaml': volumes(volume('old')) };
    const judgement = await judged({ ...stale, [file]: volumes(renamed) }, head);
    expect(judgement.verdict).toBe('pass');
    expect(said(judgement)).toEqual([expect.stringMatching(/^warning new old: volume old has the name/)]);
    expect(judgement.findings[0]?.place).toMatchObject({ file, line: 2 });
    expect(judgement.changes.map(({ kind }) => kind)).toEqual(['volume-created']);
  });

  it('is mended by taking the line away', async () => {
    const other = { 'storage/more.yaml': volumes(volume('old')) };
    const judgement = await judged(
      { ...stale, ...other, [file]: volumes(renamed) },
      { [file]: volumes(volume('new')) },
    );
    expect(said(judgement)).toEqual([expect.stringMatching(/^warning absent old/)]);
  });

  it('may be carried on by another in its turn', async () => {
    const judgement = await judged(
      { ...stale, [file]: volumes(renamed, volume('old')) },
      { [file]: volumes(renamed, volume('newer', ', formerly: old')) },
    );
    expect(judgement.changes.map(({ kind }) => kind)).toEqual(['volume-renamed']);
  });
});

describe('a contradiction stays a problem', () => {
  it('where the old name is still there', async () => {
    const head = volumes(volume('old'), volume('new', ', formerly: old'));
    expect(await unjudged(volumes(volume('old')), head)).toEqual([
      expect.stringContaining('new has formerly: old, but old is still declared at storage/imagery.yaml:2'),
    ]);
  });

  it('where two carry it on', async () => {
    const head = volumes(volume('a', ', formerly: old'), volume('b', ', formerly: old'));
    expect(await unjudged(volumes(volume('old')), head)).toEqual([
      expect.stringContaining('b and a (storage/imagery.yaml:2) both have formerly: old'),
    ]);
  });
});
