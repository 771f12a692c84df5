/** README's recipes, played as they are written, in repositories that `ullage new` began. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ullage } from './cli/run.ts';
import { pageText } from './demo/pages.ts';
import { type Files, makeRepository, removeRepositories, type TestRepository } from './repository.ts';

afterAll(removeRepositories);

const readme = pageText('README.md');

/** A file that the page shows, by the path on its first line. */
function shown(path: string): string {
  for (const [, text = ''] of readme.matchAll(/```yaml\n([\s\S]*?)```/g))
    if (text.startsWith(`# ${path}\n`)) return text;
  throw new Error(`README.md shows no ${path}`);
}

const ours = shown('storage/ours.yaml');

/** A repository whose main has what README's first verdict ends with, and these files. */
async function adopted(more: Files = {}): Promise<TestRepository> {
  const repository = makeRepository();
  expect((await ullage('new', '--repo', repository.dir, '--now', '2026-11-20')).code).toBe(0);
  repository.write({ 'storage/ours.yaml': ours, ...more });
  repository.commit('What we have');
  return repository;
}

interface Report {
  readonly verdict: string;
  readonly findings: readonly { readonly entry: string; readonly fails: boolean }[];
  readonly cost: { readonly after: string };
  readonly problems: readonly { readonly message: string }[];
}

async function gate({ dir }: TestRepository, now = '2026-11-20'): Promise<Report> {
  const { out } = await ullage('gate', '--repo', dir, '--base', 'main', '--now', now, '--format', 'json');
  return JSON.parse(out);
}

/** What a branch of main comes to that writes these files. */
async function proposed(repository: TestRepository, files: Files, now?: string): Promise<Report> {
  const branch = `b${repository.commit('main goes on')}`;
  repository.branch(branch);
  repository.write(files);
  repository.commit('a change');
  const report = await gate(repository, now);
  repository.checkout('main');
  return report;
}

const failing = ({ findings }: Report): readonly string[] =>
  findings.filter(({ fails }) => fails).map(({ entry }) => entry);

const papers = (size: string) => ({ 'storage/ours.yaml': ours.replace('size: 60 GiB', `size: ${size}`) });

describe('the recipe', () => {
  it('“First adoption”: nothing can fail while nothing is declared, and what is wrong is named on the branch', async () => {
    const repository = makeRepository();
    await ullage('new', '--repo', repository.dir, '--now', '2026-11-20');
    repository.commit('How our storage is judged');
    expect((await gate(repository)).verdict).toBe('pass');
    const report = await proposed(repository, { 'storage/ours.yaml': ours });
    expect([report.verdict, report.cost.after]).toEqual(['pass', '9.00']);
  });

  it('“A spend limit for each team”: exactly the limit is allowed, a cent more is not, and nothing is paid for outside', async () => {
    const limits = { 'policies/limits.yaml': shown('policies/limits.yaml') };
    const repository = await adopted(limits);
    // 30 GiB and 120 GiB at 0.10 EUR are 15.00 EUR.
    const exactly = await proposed(repository, papers('120 GiB'));
    expect([exactly.cost.after, failing(exactly)]).toEqual(['15.00', []]);
    expect(failing(await proposed(repository, papers('121 GiB')))).toContain('ours-limit');
    const untyped = {
      'storage/more.yaml':
        'team: ours\nservers:\n  scans: { boot: scans-root }\nvolumes:\n  scans-root: { size: 1 GiB, tier: standard }\n',
    };
    expect(failing(await proposed(repository, untyped))).toEqual(['spend-under-a-limit']);
    const nobody = 'volumes:\n  scans: { size: 2001 GiB, tier: standard }\n';
    expect(failing(await proposed(repository, { 'storage/more.yaml': nobody }))).toContain('limit-each');
    const theirs = 'team: theirs\nvolumes:\n  scans: { size: 2001 GiB, tier: standard }\n';
    expect(failing(await proposed(repository, { 'storage/theirs.yaml': theirs }))).toContain('limit-each');
  });

  it('“A spend limit for each team”: a slip in a team’s name is refused once the teams are listed', async () => {
    const repository = await adopted();
    const settings = `${readFileSync(join(repository.dir, 'ullage.yaml'), 'utf8')}\nteams: [ours, theirs]\n`;
    repository.write({ 'ullage.yaml': settings });
    const slip = await proposed(repository, {
      'storage/ours.yaml': ours.replace('team: ours', 'team: uors'),
    });
    expect(slip.verdict).toBe('not judged');
    expect(slip.problems[0]?.message).toContain('uors');
  });

  it('“A freeze”: both days count, growth is allowed, and it ends by itself', async () => {
    const repository = await adopted({ 'policies/freeze.yaml': shown('policies/freeze.yaml') });
    const deletion = {
      'storage/ours.yaml': ours.replace(/ {2}papers: .*\n/, '').replace(/attachments:\n.*\n/, ''),
    };
    for (const [day, refused] of [
      ['2026-12-17', false],
      ['2026-12-18', true],
      ['2027-01-04', true],
      ['2027-01-05', false],
    ] as const)
      expect([day, failing(await proposed(repository, deletion, day)).includes('year-end')]).toEqual([
        day,
        refused,
      ]);
    expect(failing(await proposed(repository, papers('70 GiB'), '2026-12-20'))).toEqual([]);
  });

  it('“A new tier”: volumes may name it once it is on main, and not before', async () => {
    const repository = await adopted();
    const brisk = {
      'storage/ours.yaml': ours.replace('size: 60 GiB, tier: standard', 'size: 60 GiB, tier: brisk'),
    };
    expect((await proposed(repository, brisk)).verdict).not.toBe('pass');
    repository.write({ 'prices/2026-tiers.yaml': shown('prices/2026-tiers.yaml') });
    // 30 GiB at 0.10 EUR, and 60 GiB at 0.25 EUR.
    expect((await proposed(repository, brisk)).cost.after).toBe('18.00');
    expect((await proposed(repository, {})).cost.after).toBe('9.00');
  });

  it('“What did we let through?”: each question is answered of main’s history', async () => {
    const repository = await adopted();
    repository.write(papers('50 GiB'));
    repository.commit('a shrink, merged all the same');
    repository.write({ 'policies/proposed.yaml': 'rules:\n  - { rule: no-shrink }\n' });
    const lines = [...readme.matchAll(/^ullage (audit [^#\n]*?)\s*#/gm)].map(([, line = '']) =>
      line.split(' '),
    );
    expect(lines.length).toBe(4);
    for (const words of lines) {
      const at = words.map((word) => (word.startsWith('policies/') ? `${repository.dir}/${word}` : word));
      const { code, out, err } = await ullage(...at, '--repo', repository.dir);
      expect([words, code, code === 2 ? out + err : '']).toEqual([words, expect.any(Number), '']);
      if (words.includes('merged-anyway')) expect(out).toContain('no-shrink');
    }
  });
});
