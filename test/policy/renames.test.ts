/** A rename is told from two revisions: what main has carried out renames nothing, and the old name is free again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gannetPoint, judged, judgeFiles, line, said, unjudgedFiles } from '../estate/builder.ts';

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

  it('where main has both names, and the branch deletes the old one, or neither', async () => {
    const main = volumes(volume('a'), volume('b'));
    for (const rest of [[], [volume('b')]])
      expect(await unjudged(main, volumes(volume('a', ', formerly: b'), ...rest))).toEqual([
        expect.stringContaining('a has formerly: b, but main has a volume a beside b'),
      ]);
  });

  it('where two swap their names', async () => {
    const head = volumes(volume('a', ', formerly: b'), volume('b', ', formerly: a'));
    expect(await unjudged(volumes(volume('a'), volume('b')), head)).toEqual([
      expect.stringContaining('a has formerly: b, but main has a volume a beside b'),
      expect.stringContaining('b has formerly: a, but main has a volume b beside a'),
    ]);
  });

  it('where the ids say which is meant, and that is not said twice', async () => {
    const main = volumes(volume('a', ', id: vol-1'), volume('b', ', id: vol-2'));
    expect(await unjudged(main, volumes(volume('a', ', id: vol-2, formerly: b')))).toEqual([
      expect.stringContaining('a has formerly: b, but main has a volume a beside b'),
    ]);
  });

  it('whatever is renamed to whatever, nothing is paired otherwise than its line says', async () => {
    const names = ['a', 'b', 'c'] as const;
    const name = fc.constantFrom(...names);
    const estate = fc.uniqueArray(fc.record({ name, formerly: fc.option(name, { nil: undefined }) }), {
      selector: (each) => each.name,
      maxLength: 3,
    });
    let judgedOnes = 0;
    await fc.assert(
      fc.asyncProperty(fc.uniqueArray(name, { maxLength: 3 }), estate, async (before, after) => {
        const written = after.map((each) =>
          volume(each.name, each.formerly === undefined ? '' : `, formerly: ${each.formerly}`),
        );
        const judgement = await judgeFiles(
          { ...gannetPoint, [file]: volumes(volume('x'), ...before.map((each) => volume(each))) },
          { ...gannetPoint, [file]: volumes(volume('x'), ...written) },
        );
        if (judgement.verdict === 'not judged') return;
        judgedOnes += 1;
        // A line that names what main has counts, or its volume is what main has under its own name.
        const renamed = new Map(
          judgement.changes.flatMap((change) =>
            change.kind === 'volume-renamed' ? [[change.after.name, change.before.name] as const] : [],
          ),
        );
        for (const { name: now, formerly } of after)
          if (formerly !== undefined && formerly !== now && before.includes(formerly))
            expect(renamed.get(now)).toBe(formerly);
      }),
      { numRuns: 300 },
    );
    expect(judgedOnes).toBeGreaterThan(50);
  });
});
