import { afterAll, describe, expect, it } from 'vitest';
import { ullage } from '../cli/run.ts';
import { copyOf, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';

afterAll(removeRepositories);

const estate = (size: number) => ({
  'storage/a.yaml': `volumes:\n  plates-1: { size: ${size} GiB, tier: bulk, retain-until: 2030-01-01, reason: kept }\n`,
});

const pack = (limit: string) => ({
  'policies/storage.yaml': `rules:\n  - { name: limit, rule: max-monthly-spend, limit: "${limit}" }\n  - { rule: no-shrink }\n`,
});

/** An estate that is over its limit for a while, which is raised; a volume shrinks, and a waiver lets the next go. */
const office = (): TestRepository =>
  copyOf('an office over its limit', () => {
    const repository = makeRepository({
      files: {
        ...estate(40),
        ...pack('2.00'),
        'ullage.yaml': 'currency: EUR\n',
        'prices/2026.yaml':
          'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.05", per: GiB-month }\n',
      },
    });
    for (const files of [
      estate(60),
      pack('3.00'),
      estate(50),
      {
        'waivers/a.yaml':
          'waivers:\n  - { rule: no-shrink, subject: plates-1, reason: moved, approved-by: head of imagery, from: 2026-01-01, until: 2026-02-01 }\n',
      },
      estate(45),
      estate(70),
    ]) {
      repository.write(files);
      repository.commit('onward');
    }
    return repository;
  });

const questions = ['records', 'merged-anyway', 'loosenings', 'open', 'waivers', 'spend'] as const;

const asked = async (question: string, ...more: readonly string[]): Promise<string> =>
  (await ullage('audit', ...more, '--repo', office().dir, '--show', question)).out;

describe('an answer of the audit', () => {
  it('names the estate once', async () => {
    expect(await asked('merged-anyway')).toMatch(/subject +the estate$/m);
    expect(await asked('open')).toMatch(/subject +the estate$/m);
  });

  it.each([
    ['merged-anyway', /^3 failing changes were merged, of 7 changes\n/],
    ['open', /^\d violations were open in this period, 1 of them at its end\n/],
    [
      'loosenings',
      /^\d policy changes loosened the policy, or may have; merged changes passed only by \d of them\n/,
    ],
    ['waivers', /^1 waiver was used or needed, within its dates\n/],
  ])('to %s begins with a sentence', async (question, sentence) => {
    expect(await asked(question)).toMatch(sentence);
  });

  it('reads as a sentence for however many there are', async () => {
    const commits = office().git('rev-list', '--first-parent', '--reverse', 'main').split('\n');
    for (const question of questions) {
      for (const [index, from] of commits.entries()) {
        for (const to of commits.slice(index, index + 3)) {
          const out = await asked(question, `${from}..${to}`);
          expect(out).not.toMatch(/\b1 (?:\w+ ){0,2}(?:changes|commits|violations|waivers)\b|\bof 1 of\b/);
          expect(out).not.toMatch(
            /\b0 (?:of them|violations?|waivers?|policy|failing)\b|\b1 (?:\w+ )+were\b/,
          );
        }
      }
    }
  });
});
