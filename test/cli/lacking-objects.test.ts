/** A clone that lacks objects, whichever: it says no more than a whole one, and never something else. */
import { createHash } from 'node:crypto';
import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, expect, it } from 'vitest';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories, 60_000);

const volumes = (size: string): Files => ({
  'storage/imagery.yaml': `volumes:\n  plates-1: { size: ${size}, tier: bulk }\n`,
});

const rules = (limit: string): string =>
  `rules:\n  - { rule: max-monthly-spend, limit: "${limit}" }\n  - { rule: growth-step, level: error, by: 10 GiB }\n`;

const strict = rules('9.00');

/** Main takes its rules from another repository, has been unreadable, and has let a growth through by a waiver. */
function story(): TestRepository {
  const fleet = makeRepository({ files: { 'policies/fleet.yaml': strict } });
  const held = {
    repository: `file://${fleet.dir}`,
    commit: fleet.git('rev-parse', 'HEAD'),
    path: 'policies/fleet.yaml',
    sha256: createHash('sha256').update(strict).digest('hex'),
  };
  const repository = makeRepository({
    files: {
      'ullage.yaml': 'currency: EUR\n',
      'prices/2026.yaml':
        'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.10", per: GiB-month }\n',
      'policies/storage.yaml': rules('9000.00'),
      ...volumes('10 GiB'),
    },
  });
  repository.git('fetch', '--quiet', held.repository, `${held.commit}:refs/ullage/fleet`);
  const then = (files: Files, message: string): void => {
    repository.write(files);
    repository.commit(message);
  };
  then(
    {
      'ullage.yaml': `currency: EUR\npacks: { fleet: ${JSON.stringify(held)} }\n`,
      'policies/storage.yaml': 'use: [fleet]\n',
    },
    'the rules of all',
  );
  then(
    {
      'waivers/a.yaml':
        'waivers:\n  - { rule: growth-step, subject: plates-1, reason: survey, approved-by: head of imagery, from: 2025-01-01, until: 2027-12-31 }\n',
    },
    'waived',
  );
  then(volumes('30 GiB'), 'grown');
  then(volumes('10 GiB'), 'and back');
  return repository;
}

const branches: Readonly<Record<string, (main: TestRepository) => void>> = {
  'that grows beyond what was waived': (main) => main.write(volumes('60 GiB')),
  'that brings looser rules of its own': (main) =>
    main.write({
      ...volumes('95 GiB'),
      'ullage.yaml': 'currency: EUR\n',
      'policies/storage.yaml': rules('9000.00'),
    }),
  'off a main that does not read': (main) => {
    main.write({ 'storage/imagery.yaml': 'volumes: [\n' });
    main.commit('a slip');
    main.write({ ...volumes('95 GiB'), 'policies/storage.yaml': 'rules: []\n' });
  },
};

async function verdictOn(repository: TestRepository): Promise<string> {
  const { out } = await ullage(
    ...['gate', '--repo', repository.dir, '--base', 'main', '--head', 'proposal', '--now', '2026-11-20'],
    ...['--format', 'json', '--back-test', '0'],
  );
  return JSON.parse(out).verdict;
}

it.each(Object.entries(branches))(
  'a branch %s fails, or is not judged',
  async (_, write) => {
    const whole = story();
    write(whole);
    whole.git('stash', '--quiet');
    whole.git('checkout', '--quiet', '-b', 'proposal');
    whole.git('stash', 'pop', '--quiet');
    whole.commit('the proposal');
    expect(await verdictOn(whole)).toBe('fail');
    const objects = [
      ...new Set(
        whole
          .git('rev-list', '--objects', '--all')
          .split('\n')
          .map((line) => line.slice(0, 40)),
      ),
    ];
    const files = objects.map((id) => join('.git/objects', id.slice(0, 2), id.slice(2)));
    expect(files.filter((file) => !existsSync(join(whole.dir, file)))).toEqual([]);
    const some = fc.oneof(
      fc.constantFrom(...files).map((file) => [file]),
      fc.subarray(files, { minLength: 1, maxLength: 6 }),
    );
    await fc.assert(
      fc.asyncProperty(some, async (lacking) => {
        const clone = whole.copy();
        for (const file of lacking) rmSync(join(clone.dir, file));
        const verdict = await verdictOn(clone);
        clone.cleanup();
        expect(['fail', 'not judged']).toContain(verdict);
      }),
      { numRuns: 25 },
    );
  },
  60_000,
);
