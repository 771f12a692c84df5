/**
 * Walks through "Adding a rule in ten minutes" of DEVELOPERS.md on a copy of the sources: one file, one entry of the
 * registry, `npm run generate`. Nothing else may be needed for the rule to be asked for, explained and judged by.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { makeRepository, removeRepositories } from '../repository.ts';

const project = join(import.meta.dirname, '../..');
const copy = mkdtempSync(join(tmpdir(), 'ullage-rule-'));
afterAll(() => rmSync(copy, { recursive: true, force: true }));
afterAll(removeRepositories);

const inCopy = (command: string, ...args: readonly string[]): string =>
  execFileSync(process.execPath, [join(project, 'node_modules', command), ...args], {
    cwd: copy,
    encoding: 'utf8',
  });

const ullage = (...args: readonly string[]) =>
  spawnSync(process.execPath, ['--import', 'tsx', 'src/cli/ullage.ts', ...args], {
    cwd: copy,
    encoding: 'utf8',
  });

const edit = (file: string, ...changes: readonly (readonly [string, string])[]): string =>
  changes.reduce(
    (text, [from, to]) => {
      expect(text).toContain(from);
      return text.replaceAll(from, to);
    },
    readFileSync(join(copy, file), 'utf8'),
  );

/** A site is to a volume what a team is, so the rule nearest to the new one is its model in every line. */
function addRule(): void {
  for (const each of ['src', 'schema', 'policies', 'package.json', 'tsconfig.json'])
    cpSync(join(project, each), join(copy, each), { recursive: true });
  symlinkSync(join(project, 'node_modules'), join(copy, 'node_modules'), 'dir');
  writeFileSync(
    join(copy, 'src/rules/same-team.ts'),
    edit(
      'src/rules/same-site.ts',
      ['sameSite', 'sameTeam'],
      ['same-site', 'same-team'],
      ['.site', '.team'],
      ['north-quay', 'imagery'],
      ['south-quay', 'ledger'],
      [' site: ', ' team: '],
      ['at another site', 'of another team'],
    ),
  );
  writeFileSync(
    join(copy, 'src/rules/registry.ts'),
    edit(
      'src/rules/registry.ts',
      ["import { shape } from './shape.ts';", "import { sameTeam } from './same-team.ts';\n$&"],
      ["  'same-site': sameSite,", "$&\n  'same-team': sameTeam,"],
    ),
  );
}

describe('a rule added by its file and one entry of the registry', { timeout: 120_000 }, () => {
  it('is typed, explained, asked for in a pack and judged by', () => {
    addRule();
    inCopy('tsx/dist/cli.mjs', 'schema/generate.ts');
    writeFileSync(
      join(copy, 'tsconfig.json'),
      edit('tsconfig.json', ['"test", "bench"', '"src"'], ['".ci", ', '']),
    );
    // What it prints is what is wrong.
    expect(inCopy('typescript/bin/tsc')).toBe('');

    expect(ullage('rules', 'same-team').stdout).toContain('A volume attached to a server of another team.');

    const estate = (team: string): string => `servers:
  plate-scanner: { team: imagery }
volumes:
  plates-1: { size: 40 GiB, tier: bulk, team: ${team} }
attachments:
  - { volume: plates-1, server: plate-scanner }
`;
    const { dir, write, commit, branch } = makeRepository({
      files: {
        'ullage.yaml': 'currency: EUR\n',
        'prices/2026.yaml':
          'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
        'policies/storage.yaml': 'rules:\n  - { rule: same-team }\n',
        'storage/imagery.yaml': estate('imagery'),
      },
    });
    commit('Start');
    branch('another-team');
    write({ 'storage/imagery.yaml': estate('ledger') });
    commit('Hand the volume to another team');
    const judged = ullage('gate', '--repo', dir, '--base', 'main', '--now', '2026-11-20');
    expect(judged.stderr).toContain('same-team: volume plates-1 is at ledger and attached to plate-scanner');
    expect(judged.status).toBe(1);
  });
});
