import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { judgeFiles } from '../../src/policy/judge-files.ts';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

const estate = `team: imagery
volumes:
  plates-1: { size: 50 GiB, tier: bulk, retain-until: 2030-01-01, reason: kept }
`;

const office: Files = {
  'ullage.yaml': 'currency: EUR\n',
  'storage/imagery.yaml': estate,
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
  'policies/storage.yaml': 'use: [starter]\n',
};

const more = estate.replace('plates-1', 'plates-2');

function proposing(files: Files, main: Files = office): TestRepository {
  const repository = makeRepository({ files: main });
  repository.branch('proposal');
  repository.write(files);
  repository.commit('the proposal');
  return repository;
}

const gate = ({ dir }: TestRepository, ...flags: readonly string[]) =>
  ullage('gate', '--repo', dir, '--base', 'main', '--now', '2026-11-20', ...flags);

async function notRead(repository: TestRepository, ...flags: readonly string[]): Promise<unknown> {
  return JSON.parse((await gate(repository, '--format', 'json', ...flags)).out).notRead;
}

describe('a file that looks like an estate file and is not read', () => {
  it.each(['estate/imagery.yaml', 'imagery.yml', 'storage/more.json', 'storage/more.yaml.txt'])(
    'is told where it is %s, and where such files are looked for',
    async (path) => {
      const repository = proposing({
        [path]: path.endsWith('.json')
          ? JSON.stringify({ volumes: { 'plates-2': { size: '1 GiB', tier: 'bulk' } } })
          : more,
      });
      const { code, out } = await gate(repository);
      expect(code).toBe(0);
      expect(out).toContain('pass: nothing changes; 1 file was not read');
      expect(out.replace(/\s+/g, ' ')).toContain(
        `${path} looks like an estate file and is not read: estate files are the files in storage/ whose names end in .yaml or .yml.`,
      );
      expect(await notRead(repository)).toEqual([{ file: path, format: 'estate', folder: 'storage' }]);
    },
  );

  it('is told again by each branch that alters it, and by no other', async () => {
    const main = { ...office, 'estate/more.yaml': more };
    expect(await notRead(proposing({ 'estate/more.yaml': `${more}# kept\n` }, main))).toHaveLength(1);
    expect(await notRead(proposing({ 'README.md': 'The storage of Gannet Point.\n' }, main))).toEqual([]);
  });

  it('is told where another file names what is declared in it', async () => {
    const group = 'volume-groups: { plates: { members: [plates-2] } }\n';
    const repository = proposing({ 'storage/groups.yaml': group, 'estate/more.yaml': more });
    const { code, out } = await gate(repository);
    expect(code).toBe(2);
    expect(out).toContain('Not read  estate/more.yaml looks like an estate file');
  });

  it('is told of the work tree: new, or altered and tracked', async () => {
    const repository = makeRepository({ files: { ...office, 'estate/old.yaml': more } });
    expect(await notRead(repository, '--worktree')).toEqual([]);
    repository.write({ 'estate/new.yaml': more, 'estate/old.yaml': `${more}# kept\n` });
    expect(await notRead(repository, '--worktree')).toMatchObject([
      { file: 'estate/new.yaml' },
      { file: 'estate/old.yaml' },
    ]);
  });

  it('is looked for where the settings of the branch say', async () => {
    const main = { ...office, 'ullage.yaml': 'currency: EUR\npaths: { storage: estate }\n' };
    expect(await notRead(proposing({ 'storage/more.yaml': more, 'estate/more.yaml': more }, main))).toEqual([
      { file: 'storage/more.yaml', format: 'estate', folder: 'estate' },
    ]);
  });

  it('is told by the library and in SARIF, at its line', async () => {
    const judgement = await judgeFiles(office, { ...office, 'more.yaml': more }, { on: '2026-11-20' });
    expect(judgement.notRead).toEqual([{ file: 'more.yaml', format: 'estate', folder: 'storage' }]);
    const { out } = await gate(proposing({ 'more.yaml': more }), '--format', 'sarif');
    const [{ tool, invocations }] = JSON.parse(out).runs;
    const [notification] = invocations[0].toolExecutionNotifications;
    expect(tool.driver.notifications[notification.descriptor.index].id).toBe(notification.descriptor.id);
    expect(notification.locations[0].physicalLocation.artifactLocation.uri).toBe('more.yaml');
  });
});

describe("a file that is another program's", () => {
  it.each([
    ['.github/workflows/storage.yml', 'name: storage\non: { pull_request: }\njobs: {}\n'],
    ['compose.yaml', 'services: { web: { image: x } }\nvolumes: { kept: { size: 1 } }\n'],
    ['volumes.yaml', 'volumes: { kept: { driver: local }, other: }\n'],
    ['rules.yaml', 'rules: [{ name: x, level: error }]\n'],
    ['notes/volumes.md', estate],
    ['provider/volumes.json', '{ "volumes": [{ "id": "1", "sizes": 3 }] }'],
    ['storage/README.md', 'What is in here.\n\n    volumes: { plates-1: { size: 50 GiB } }\n'],
    ['surveys/old/more.yaml', more],
    ['broken.yaml', 'volumes: { plates-2: { size: 1 GiB\n'],
  ])('is not told of: %s', async (path, text) => {
    expect(await notRead(proposing({ [path]: text }))).toEqual([]);
  });
});

it.each([
  ['waivers.yaml', 'waivers: [{ rule: growth-step, subject: plates-1 }]\n', 'waivers', 'waivers'],
  ['rules/limits.yaml', 'use: [starter]\nrules: [{ rule: no-shrink }]\n', 'rule-pack', 'policies'],
  [
    '2027.yaml',
    'from: 2027-01-01\ncurrency: EUR\ntiers: { bulk: { rate: "1", per: GiB-month } }\n',
    'price-list',
    'prices',
  ],
  ['ullage.yml', 'currency: EUR\n', 'settings', ''],
])('a file %s is told as what it looks like', async (file, text, format, folder) => {
  expect(await notRead(proposing({ [file]: text }))).toEqual([{ file, format, folder }]);
});

describe('whatever is written by hand', () => {
  const kept = join(import.meta.dirname, '../formats/ullage-files-1');
  const written = readdirSync(kept, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /^(?:storage|prices|policies|waivers)\/.*\.yaml$/.test(path));

  it.each(written)('is known for it anywhere else: %s', async (path) => {
    const text = readFileSync(join(kept, path), 'utf8');
    expect(await notRead(proposing({ [`elsewhere/${path}`]: text }))).toHaveLength(1);
  });
});

it('what is looked at is what git lists as different', async () => {
  const name = fc.constantFrom('a', 'b', 'c.yaml', 'd');
  const path = fc.array(name, { minLength: 1, maxLength: 3 }).map((steps) => steps.join('/'));
  const side = fc.array(fc.tuple(path, fc.boolean()), { minLength: 1, maxLength: 8 });
  await fc.assert(
    fc.asyncProperty(side, side, async (before, after) => {
      const repository = makeRepository({ files: office });
      const commit = (side: readonly (readonly [string, boolean])[]) => {
        repository.git('rm', '-r', '-q', '--ignore-unmatch', '--', 'in');
        const taken: string[] = [];
        for (const [each, grown] of side) {
          const whole = `in/${each}.yaml`;
          if (taken.some((other) => other.startsWith(`${whole}/`) || whole.startsWith(`${other}/`))) continue;
          taken.push(whole);
          repository.write({ [whole]: grown ? more : estate });
        }
        repository.commit('x');
      };
      commit(before);
      repository.branch('proposal');
      commit(after);
      const told = JSON.parse((await gate(repository, '--format', 'json')).out).notRead;
      const differ = repository.git(
        'diff',
        '--name-only',
        '--no-renames',
        '--diff-filter=d',
        'main',
        'proposal',
      );
      repository.cleanup();
      expect(told.map(({ file }: { readonly file: string }) => file)).toEqual(
        differ === '' ? [] : differ.split('\n'),
      );
    }),
    { numRuns: 15 },
  );
});
