/** What a screen is spared, and what nobody is. */
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../src/base/problem.ts';
import { notJudged } from '../../src/policy/judgement.ts';
import { mostFindings, mostProblems } from '../../src/report/fold.ts';
import { reportJson, reportMarkdown, reportProblems, reportText } from '../../src/report/report.ts';
import { reportSarif } from '../../src/report/sarif.ts';
import { gannetPoint, judgedFiles, today } from '../estate/builder.ts';

const screen = { width: 100, colour: false };

const problem = (index: number): Problem => ({
  place: { file: `storage/${index % 3}.yaml`, line: index + 1, column: 3 },
  message: `wrong number ${index}.`,
  advice: 'Correct it.',
});

const problems = (count: number): readonly Problem[] =>
  Array.from({ length: count }, (_, index) => problem(index));

const countOf = (text: string, word: RegExp): number => text.match(word)?.length ?? 0;

describe('many problems', () => {
  it('fill one screen: the first, then how many more there are and how to see them', () => {
    const text = reportProblems(problems(30), screen);
    expect(countOf(text, /wrong number/g)).toBe(mostProblems);
    expect(text).toContain('30 problems');
    expect(text).toContain(
      `${30 - mostProblems} more problems are not shown in 3 files: \`--all\` shows all, and JSON always`,
    );
    expect(text.split('\n').length).toBeLessThan(50);
  });

  it('as many as fit are all shown, and all of them where all are asked for', () => {
    expect(reportProblems(problems(mostProblems), screen)).not.toContain('not shown');
    expect(countOf(reportProblems(problems(30), { ...screen, all: true }), /wrong number/g)).toBe(30);
  });

  it('are whole in every other form', () => {
    const judgement = notJudged(problems(30), today);
    for (const text of [reportJson(judgement), reportSarif(judgement), reportMarkdown(judgement)]) {
      const told = problems(30).filter(({ message }) => text.includes(message));
      expect(told).toHaveLength(30);
    }
    expect(countOf(reportText(judgement, screen), /wrong number/g)).toBe(mostProblems);
  });
});

const volumes = (count: number, size: string): string =>
  `volumes:\n${Array.from({ length: count }, (_, index) => `  v-${index}: { size: ${size}, tier: bulk }\n`).join('')}`;

describe('many findings', () => {
  const shrunk = (count: number) =>
    judgedFiles(
      {
        ...gannetPoint,
        'policies/storage.yaml': 'rules: [ { rule: no-shrink } ]\n',
        'storage/a.yaml': volumes(count, '2 GiB'),
      },
      {
        ...gannetPoint,
        'policies/storage.yaml': 'rules: [ { rule: no-shrink } ]\n',
        'storage/a.yaml': volumes(count, '1 GiB'),
      },
    );

  it('are folded after the stated number on a screen, and never in JSON or SARIF', async () => {
    const judgement = await shrunk(mostFindings + 10);
    const text = reportText(judgement, screen);
    expect(countOf(text, /^ +error +no-shrink: /gm)).toBe(mostFindings);
    expect(text).toContain('10 more findings are not shown: `--all` shows all');
    expect(text).toContain(`${mostFindings + 10} failing`);
    expect(countOf(reportText(judgement, { ...screen, all: true }), /^ +error +no-shrink: /gm)).toBe(
      mostFindings + 10,
    );
    expect(countOf(reportJson(judgement), /"fails": true/g)).toBe(mostFindings + 10);
    expect(countOf(reportSarif(judgement), /"fails": true/g)).toBe(mostFindings + 10);
  });

  it('at the stated number nothing is folded', async () => {
    expect(reportText(await shrunk(mostFindings), screen)).not.toContain('not shown');
  });
});

describe('JSON', () => {
  const sites =
    'currency: EUR\nsites: { north: { quota: { volumes: 9 } }, south: { quota: { volumes: 9 } } }\n';
  const estate = (more: string): string =>
    `volumes:\n  a: { size: 1 GiB, tier: bulk, site: north, team: imagery }\n  b: { size: 1 GiB, tier: bulk, site: south, team: ledger }\n${more}`;
  const report = async (all: boolean) => {
    const judgement = await judgedFiles(
      { ...gannetPoint, 'ullage.yaml': sites, 'storage/a.yaml': estate('') },
      {
        ...gannetPoint,
        'ullage.yaml': sites,
        'storage/a.yaml': estate('  c: { size: 1 GiB, tier: bulk, site: north, team: imagery }\n'),
      },
    );
    return JSON.parse(reportJson(judgement, { all }));
  };

  it('leaves out the layers and teams that nothing changed, and says how many', async () => {
    const { headroom, cost, unchanged } = await report(false);
    expect(headroom.map(({ subject }: { subject: { name: string } }) => subject.name)).toEqual(['north']);
    expect(cost.teams.map(({ team }: { team: string }) => team)).toEqual(['imagery']);
    expect(unchanged).toEqual({ headroom: 1, teams: 1, limits: 0 });
  });

  it('has them all with --all', async () => {
    const { headroom, cost, unchanged } = await report(true);
    expect(headroom).toHaveLength(2);
    expect(cost.teams).toHaveLength(2);
    expect(unchanged).toEqual({ headroom: 0, teams: 0, limits: 0 });
  });
});
