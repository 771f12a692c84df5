/** Packs that are kept in other repositories, on random branches: files and objects are in memory. */
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FileAt, Tree } from '../../src/git/tree.ts';
import { judgePair, readPair } from '../../src/policy/pair.ts';
import { type Files, treeOf } from '../estate/builder.ts';

const path = 'policies/fleet.yaml';

/** What lies in the object store, by commit and path. */
type Objects = Readonly<Record<string, string>>;

const treeBeside = (files: Files, revision: string, objects: Objects): Tree => ({
  ...treeOf(files, revision),
  fileAt: async (commit, file): Promise<FileAt> => {
    const content = objects[`${commit}:${file}`];
    return content === undefined
      ? { kind: 'missing', what: 'commit' }
      : { kind: 'found', content: Buffer.from(content) };
  },
});

const digestOf = (text: string): string => createHash('sha256').update(text).digest('hex');

interface Held {
  readonly commit: string;
  readonly path: string;
  readonly sha256: string;
}

const listed = (packs: Readonly<Record<string, Held>>): string =>
  `currency: EUR\npacks: ${JSON.stringify(
    Object.fromEntries(
      Object.entries(packs).map(([name, pack]) => [
        name,
        { repository: 'https://git.example.org/fleet.git', ...pack },
      ]),
    ),
  )}\n`;

const volumes = (size: string): string =>
  `volumes:\n  plates-1: { size: ${size}, tier: bulk, retain-until: 2027-03-31, reason: kept }\n`;

const office: Files = {
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.10", per: GiB-month }\n',
  'storage/imagery.yaml': volumes('40 GiB'),
};

const tripled: Files = { 'storage/imagery.yaml': volumes('120 GiB') };

const packOf = (use: readonly string[], entries: readonly string[]): string =>
  `use: [${use.join(', ')}]\nrules: [${entries.join(', ')}]\n`;

const judged = async (base: Files, head: Files, objects: Objects) =>
  judgePair(
    await readPair(
      treeBeside({ ...office, ...base }, 'base', objects),
      treeBeside({ ...office, ...head }, 'head', objects),
    ),
    { on: '2026-11-20' },
    { ancestors: async function* () {} },
  );

const entries = [
  '{ rule: growth-step, level: error, times: 2 }',
  '{ rule: growth-step, level: error, times: 100 }',
  '{ rule: growth-step, enabled: false }',
  '{ name: small, rule: growth-step, level: error, by: 10 GiB }',
  '{ rule: no-shrink, level: warning }',
  '{ rule: max-monthly-spend, level: error, limit: "9.00" }',
  '{ rule: max-monthly-spend, level: error, limit: "900.00" }',
];

const someEntries = fc
  .subarray(entries)
  .map((some) => some.filter((entry, at) => some.findIndex((each) => nameIn(each) === nameIn(entry)) === at));

const nameIn = (entry: string): string | undefined =>
  (/name: ([a-z-]+)/.exec(entry) ?? /rule: ([a-z-]+)/.exec(entry))?.[1];

describe('a random branch', () => {
  const strict = packOf(['starter'], ['{ rule: growth-step, level: error, times: 2 }']);
  const loose = packOf([], ['{ rule: growth-step, level: warning }']);
  const [first, second, third] = ['1'.repeat(40), '2'.repeat(40), '3'.repeat(40)] as const;
  const atHand: Objects = {
    [`${first}:${path}`]: strict,
    [`${second}:${path}`]: loose,
    [`${first}:other.yaml`]: loose,
  };
  const onMain: Held = { commit: first, path, sha256: digestOf(strict) };
  const main: Files = {
    'ullage.yaml': listed({ fleet: onMain }),
    'policies/storage.yaml': packOf(['fleet'], []),
  };
  const held = fc.oneof(
    fc.constantFrom<Held>(
      onMain,
      { commit: second, path, sha256: digestOf(loose) },
      { commit: first, path: 'other.yaml', sha256: digestOf(loose) },
    ),
    fc.record({
      commit: fc.constantFrom(first, second, third),
      path: fc.constantFrom(path, 'other.yaml', 'none.yaml'),
      sha256: fc.constantFrom(digestOf(strict), digestOf(loose), 'f'.repeat(64)),
    }),
  );
  const branch = fc.record({
    packs: fc.oneof(
      fc.record({ fleet: held }),
      fc.dictionary(fc.constantFrom('fleet', 'coast', 'starter', 'constructor'), held, { maxKeys: 3 }),
    ),
    use: fc.oneof(
      fc.constantFrom(['fleet'], ['starter'], []),
      fc.subarray(['fleet', 'coast', 'starter', 'strict', 'constructor', 'no-such']),
    ),
    own: someEntries,
  });

  it('is refused what the pack on main refuses, or not judged, whatever it says of packs', async () => {
    let failed = 0;
    await fc.assert(
      fc.asyncProperty(branch, async ({ packs, use, own }) => {
        const head: Files = {
          'ullage.yaml': listed(packs),
          'policies/storage.yaml': packOf(use, own),
          ...tripled,
        };
        const judgement = await judged(main, head, atHand);
        expect(['fail', 'not judged']).toContain(judgement.verdict);
        if (judgement.verdict !== 'fail') return;
        failed += 1;
        expect(judgement.reasons[0]).toMatch(/^growth-step: .*at most 2 times/);
      }),
      { numRuns: 200 },
    );
    expect(failed).toBeGreaterThan(20);
  });

  it('is not judged where the pack on main is not at hand, or another is in its place', async () => {
    const instead = fc.constantFrom<Objects>(
      {},
      { [`${second}:${path}`]: loose },
      { [`${first}:${path}`]: loose },
      { [`${first}:${path}`]: `${strict}\n` },
      { [`${first}:other.yaml`]: strict },
    );
    await fc.assert(
      fc.asyncProperty(branch, instead, async ({ packs, use, own }, objects) => {
        const head: Files = { 'ullage.yaml': listed(packs), 'policies/storage.yaml': packOf(use, own) };
        for (const files of [head, { ...head, ...tripled }, main, { ...main, ...tripled }])
          expect((await judged(main, files, objects)).verdict).toBe('not judged');
      }),
      { numRuns: 100 },
    );
  });
});

describe('rules that are kept elsewhere', () => {
  it('judge as the same rules at home do, and a change of them goes the same way', async () => {
    const size = fc.constantFrom('30 GiB', '45 GiB', '80 GiB', '120 GiB');
    await fc.assert(
      fc.asyncProperty(someEntries, someEntries, size, async (before, after, to) => {
        const [was, is] = [packOf(['starter'], before), packOf(['starter'], after)];
        const storage = { 'storage/imagery.yaml': volumes(to) };
        const home = await judged(
          { 'ullage.yaml': 'currency: EUR\n', 'policies/storage.yaml': was },
          { 'ullage.yaml': 'currency: EUR\n', 'policies/storage.yaml': is, ...storage },
          {},
        );
        const [old, now] = ['a'.repeat(40), 'b'.repeat(40)];
        const use = { 'policies/storage.yaml': 'use: [fleet]\n' };
        const elsewhere = await judged(
          { ...use, 'ullage.yaml': listed({ fleet: { commit: old, path, sha256: digestOf(was) } }) },
          {
            ...use,
            'ullage.yaml': listed({ fleet: { commit: now, path, sha256: digestOf(is) } }),
            ...storage,
          },
          { [`${old}:${path}`]: was, [`${now}:${path}`]: is },
        );
        if (home.verdict === 'not judged' || elsewhere.verdict === 'not judged')
          throw new Error('both are judged');
        const said = ({ verdict, reasons, findings, policyChanges }: typeof home) => ({
          verdict,
          reasons: reasons.filter((reason) => !reason.startsWith('no ')),
          findings: findings.map(({ entry, level, message }) => [entry, level, message]),
          changes: policyChanges
            .filter(({ of }) => of !== 'settings')
            .map(({ name, key, direction, from, to }) => [name, key, direction, from, to]),
        });
        expect(said(elsewhere)).toEqual(said(home));
      }),
      { numRuns: 100 },
    );
  });
});

it('another repository for the same pack cannot be told, and does not go beside storage', async () => {
  const strict = 'rules: [ { rule: policy-apart } ]\n';
  const commit = 'c'.repeat(40);
  const at = (repository: string): Files => ({
    'ullage.yaml': `currency: EUR\npacks: { fleet: { repository: ${repository}, commit: ${commit}, path: ${path}, sha256: ${digestOf(strict)} } }\n`,
    'policies/storage.yaml': 'use: [fleet]\n',
  });
  const main = at('https://git.example.org/fleet.git');
  const elsewhere = at('https://git.example.com/fleet.git');
  const objects = { [`${commit}:${path}`]: strict };
  const alone = await judged(main, elsewhere, objects);
  expect(alone).toMatchObject({
    verdict: 'pass',
    policyChanges: [{ key: 'packs.fleet.repository', direction: 'unknown' }],
  });
  expect((await judged(main, { ...elsewhere, ...tripled }, objects)).verdict).toBe('fail');
});
