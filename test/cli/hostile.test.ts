/**
 * A branch that shrinks a volume, and brings something hostile along. Whatever it brings, it never passes: it fails as
 * it would have failed without, or it is not judged.
 */
import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { readEstatePart } from '../../src/estate/part.ts';
import { deepest, readDocument } from '../../src/read/document.ts';
import { demoDay } from '../demo/gannet-point.ts';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

const volumes = (size: string): string => `volumes:\n  plates-1: { size: ${size}, tier: bulk }\n`;

const main: Files = {
  'ullage.yaml': 'currency: EUR\n',
  'storage/imagery.yaml': volumes('50 GiB'),
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
  'policies/storage.yaml': 'rules:\n  - { rule: no-shrink }\n',
};

/** The branch: the shrink, and what comes with it. */
function shrinking(files: Files, more: (repository: TestRepository) => void = () => {}): TestRepository {
  const repository = makeRepository({ files: main, message: 'the estate' });
  repository.branch('proposal');
  repository.write({ 'storage/imagery.yaml': volumes('40 GiB'), ...files });
  more(repository);
  repository.commit('a shrink, and more');
  return repository;
}

const gate = (repository: TestRepository) =>
  ullage('gate', '--repo', repository.dir, '--base', 'main', '--now', demoDay, '--format', 'json');

const bomb = [
  'a: &a [x, x, x, x, x, x, x, x, x, x]',
  ...['b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j'].map((name, index) => {
    const above = String.fromCharCode('a'.charCodeAt(0) + index);
    return `${name}: &${name} [${Array.from({ length: 10 }, () => `*${above}`).join(', ')}]`;
  }),
].join('\n');

/** What a file may hold, and whether the whole is still judged (and then fails) or is not judged. */
const documents: readonly (readonly [string, string | Uint8Array, 1 | 2])[] = [
  ['an alias bomb', bomb, 2],
  ['a merge key', 'volumes:\n  x: &x { size: 1 GiB, tier: bulk }\n  y: { <<: *x }\n', 2],
  ['a merge key that merges nothing named', 'volumes:\n  <<: { x: { size: 1 GiB, tier: bulk } }\n', 2],
  ['lists nested past every limit', '['.repeat(100_000), 2],
  [
    'mappings nested past every limit',
    Array.from({ length: deepest + 10 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n'),
    2,
  ],
  ['__proto__ at the top', '__proto__:\n  volumes: {}\n', 2],
  ['__proto__ as the name of a volume', 'volumes:\n  __proto__: { size: 1 GiB, tier: bulk }\n', 2],
  [
    'constructor as the name of a volume, which is a name like any other',
    'volumes:\n  constructor: { size: 1 GiB, tier: bulk }\n',
    1,
  ],
  ['toString as a tier', 'volumes:\n  x: { size: 1 GiB, tier: toString }\n', 2],
  ['a tag that would run code elsewhere', 'volumes: !!js/function "() => {}"\n', 2],
  ['a tag that changes a type', 'team: !!binary aGk=\n', 2],
  ['one key twice', 'team: a\nteam: b\n', 2],
  ['one volume twice in one file', `${volumes('1 GiB')}  plates-1: { size: 50 GiB, tier: bulk }\n`, 2],
  ['the shrunk volume again, as it was', volumes('50 GiB'), 2],
  ['a NUL byte', 'team: a\0b\n', 2],
  ['invalid UTF-8', new Uint8Array([0x74, 0x65, 0x61, 0x6d, 0x3a, 0x20, 0xff, 0xfe, 0x0a]), 2],
  ['UTF-16', new Uint8Array(Buffer.from('\ufeffteam: a\n', 'utf16le')), 2],
  ['a byte-order mark before good UTF-8', '\ufeffteam: imagery\n', 1],
  ['two documents', 'team: a\n---\nteam: b\n', 2],
  ['a directive of a YAML that never was', '%YAML 9.9\n---\nteam: a\n', 2],
  ['nothing but a comment', '# nothing\n', 1],
  ['a number of a million digits', `volumes:\n  x: { size: ${'9'.repeat(1_000_000)} GiB, tier: bulk }\n`, 2],
  ['a key of a million letters', `${'k'.repeat(1_000_000)}: 1\n`, 2],
  ['a size below nothing', volumes('-50 GiB').replace('plates-1', 'x'), 2],
  ['a size in exponents', volumes('5e1 GiB').replace('plates-1', 'x'), 2],
  ['not-a-number', 'volumes:\n  x: { size: .nan, tier: bulk }\n', 2],
  ['an infinite need', 'servers:\n  x: { iops: .inf }\n', 2],
  ['a list where a mapping is wanted', '- volumes\n', 2],
  ['plain text', 'nothing to see here\n', 2],
  ['a tab for an indent', 'volumes:\n\tx: 1\n', 2],
  ['nine MiB of blanks', ' '.repeat(9 * 1024 * 1024), 2],
];

describe('a hostile estate file', () => {
  it.each(documents)('%s makes no pass out of a fail', async (_what, content, code) => {
    const run = await gate(shrinking({ 'storage/hostile.yaml': content }));
    expect([run.code, run.err.includes('    at ')]).toEqual([code, false]);
    expect(JSON.parse(run.out)).toMatchObject({ verdict: code === 1 ? 'fail' : 'not judged' });
  });

  it('a symbolic link out of the tree is not followed', async () => {
    const repository = shrinking({}, ({ dir }) =>
      symlinkSync('/etc/hostname', join(dir, 'storage/link.yaml')),
    );
    expect((await gate(repository)).code).toBe(2);
  });

  it('a symbolic link in place of the folder of rule packs takes no rule away', async () => {
    const repository = shrinking({}, (made) => {
      made.remove('policies');
      made.git('rm', '-r', '--quiet', '--cached', 'policies');
      symlinkSync('storage', join(made.dir, 'policies'));
    });
    expect((await gate(repository)).code).not.toBe(0);
  });

  it('a submodule in the folder is not passed over', async () => {
    const repository = shrinking({});
    const id = repository.git('rev-parse', 'HEAD');
    repository.git('update-index', '--add', '--cacheinfo', `160000,${id},storage/module`);
    repository.git('commit', '--quiet', '--message', 'a submodule');
    expect((await gate(repository)).code).toBe(2);
  });

  it('any text at all is read, or refused with a place, and never throws', () => {
    const pieces = fc.constantFrom(
      'volumes:',
      '\n',
      '  ',
      '- ',
      '{',
      '}',
      '[',
      ']',
      ': ',
      '&a',
      '*a',
      '!t',
      '"',
      "'",
      '|',
      '>',
      '#',
      '\t',
      '__proto__',
      '? ',
      '---',
      '%',
      'x',
      '50 GiB',
      '\u0085',
      '\ud800',
      '\u202e',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ maxLength: 200 }),
          fc.array(pieces, { maxLength: 60 }).map((all) => all.join('')),
        ),
        (text) => {
          const document = readDocument(text, 'storage/any.yaml');
          const read = document.ok ? readEstatePart(document.value) : document;
          if (read.ok) return;
          expect(read.problems.length).toBeGreaterThan(0);
          for (const { place, message, advice } of read.problems) {
            expect(place?.line).toBeGreaterThan(0);
            expect([message, advice].every((words) => words !== '')).toBe(true);
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('a hostile policy', () => {
  const attempts: readonly (readonly [string, Files])[] = [
    ['deletes the rule', { 'policies/storage.yaml': 'rules: []\n' }],
    [
      'switches the rule off',
      { 'policies/storage.yaml': 'rules:\n  - { rule: no-shrink, enabled: false }\n' },
    ],
    ['makes the rule a note', { 'policies/storage.yaml': 'rules:\n  - { rule: no-shrink, level: note }\n' }],
    [
      'overrides the rule from a second pack',
      { 'policies/a.yaml': 'rules:\n  - { name: other, rule: no-shrink, level: note }\n' },
    ],
    [
      'moves the packs elsewhere',
      { 'ullage.yaml': 'currency: EUR\npaths: { policies: rules }\n', 'rules/none.yaml': 'rules: []\n' },
    ],
    [
      'moves the estate elsewhere, where nothing shrinks',
      { 'ullage.yaml': 'currency: EUR\npaths: { storage: estates }\n', 'estates/a.yaml': volumes('30 GiB') },
    ],
    [
      'brings its own waiver',
      {
        'waivers/own.yaml':
          'waivers:\n  - { rule: no-shrink, subject: plates-1, reason: because, approved-by: me, from: 2020-01-01, until: 2099-12-31 }\n',
      },
    ],
    ['removes the settings', { 'ullage.yaml': '' }],
    ['empties the price list', { 'prices/2026.yaml': '' }],
    [
      'changes the prices',
      {
        'prices/2026.yaml':
          'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0", per: GiB-month }\n',
      },
    ],
  ];

  it.each(attempts)('a branch that %s does not pass', async (_what, files) => {
    expect((await gate(shrinking(files))).code).not.toBe(0);
  });

  it.each(['ullage.yaml', 'prices', 'policies'])(
    'a branch that takes %s away, and nothing else, does not pass',
    async (path) => {
      const repository = makeRepository({ files: main, message: 'the estate' });
      repository.branch('proposal');
      repository.remove(path);
      repository.commit('nothing to judge by');
      expect((await gate(repository)).code).toBe(2);
    },
  );
});
