import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AuditRecord } from '../../src/audit/record.ts';
import { progressOn } from '../../src/cli/audit.ts';
import { GitRepository } from '../../src/git/repository.ts';
import { ullage } from '../cli/run.ts';
import { valueIn } from '../estate/builder.ts';
import { removeRepositories, type TestRepository } from '../repository.ts';
import { historyOf, mainOf, type Step } from './history.ts';

const plates = (gib: number, master: 'attached' | 'detached', more = ''): string => `team: imagery
site: north-quay
servers:
  plate-scanner: {}
volumes:
  plates-1: { size: ${gib} GiB, tier: bulk }
  master-plates: { size: 100 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
${master === 'attached' ? '  - { volume: master-plates, server: plate-scanner }\n' : ''}${more}`;

const pack = (limit: string): string =>
  `rules:\n  - { rule: no-shrink }\n  - { rule: detached-volume-owned }\n  - { name: imagery-limit, rule: max-monthly-spend, where: { teams: [imagery] }, limit: "${limit}" }\n`;

const at = (day: string): string => `${day}T15:00:00Z`;

/** A spring at the survey office. */
const spring: readonly Step[] = [
  {
    date: at('2026-01-05'),
    message: 'begin',
    edits: {
      'ullage.yaml': 'currency: EUR\n',
      'prices/2026.yaml':
        'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.10", per: GiB-month }\n',
      'policies/storage.yaml': pack('20.00'),
      'storage/imagery.yaml': plates(40, 'attached'),
    },
  },
  {
    date: at('2026-01-12'),
    message:
      'Grow the plates\n\nThe survey of the harbour.\n\nReviewed-by: Robin Knot <robin@gannet-point.example>\nRequest: 17\n',
    edits: { 'storage/imagery.yaml': plates(80, 'attached') },
  },
  { date: at('2026-01-15'), message: 'Only words', edits: { 'README.md': 'nothing to judge\n' } },
  {
    date: at('2026-01-20'),
    message: '=HYPERLINK("https://gannet-point.example")',
    author: 'Bo Skua <bo@gannet-point.example>',
    edits: { 'storage/imagery.yaml': plates(60, 'attached') },
  },
  { date: at('2026-02-01'), message: 'A higher limit', edits: { 'policies/storage.yaml': pack('30.00') } },
  {
    date: at('2026-02-10'),
    message: 'Detach the master',
    edits: { 'storage/imagery.yaml': plates(60, 'detached') },
  },
  {
    date: at('2026-02-20'),
    message: 'Let it lie',
    edits: {
      'waivers/2026.yaml':
        'waivers:\n  - { rule: detached-volume-owned, subject: master-plates, reason: on its way, approved-by: head of imagery, from: 2026-02-20, until: 2026-03-01 }\n',
    },
  },
  { date: at('2026-02-25'), message: 'Grow', edits: { 'storage/imagery.yaml': plates(70, 'detached') } },
  {
    date: at('2026-03-10'),
    message: 'Grow again',
    edits: { 'storage/imagery.yaml': plates(75, 'detached') },
  },
  { date: at('2026-03-12'), message: 'A slip', edits: { 'storage/imagery.yaml': 'team: [imagery\n' } },
  { date: at('2026-03-13'), message: 'Mended', edits: { 'storage/imagery.yaml': plates(75, 'detached') } },
  {
    date: at('2026-03-20'),
    message: 'The master is back',
    edits: { 'storage/imagery.yaml': plates(75, 'attached') },
  },
];

let office: TestRepository;
let cache: string;

beforeAll(() => {
  office = historyOf(spring);
  cache = mkdtempSync(join(tmpdir(), 'ullage-cache-'));
});

afterAll(() => {
  removeRepositories();
  rmSync(cache, { recursive: true, force: true });
});

const audit = (...args: readonly string[]) => ullage('audit', '--repo', office.dir, ...args);

const linesOf = (text: string): readonly Record<string, unknown>[] =>
  text
    .trimEnd()
    .split('\n')
    .filter((line) => line !== '')
    .map((line): Record<string, unknown> => JSON.parse(line));

async function records(...args: readonly string[]): Promise<readonly AuditRecord[]> {
  const { code, out, err } = await audit('--format', 'ndjson', ...args);
  expect(err).toBe('');
  expect(code).toBe(0);
  return out
    .trimEnd()
    .split('\n')
    .map((line): AuditRecord => JSON.parse(line));
}

const rows = async (...args: readonly string[]) => linesOf((await audit('--format', 'ndjson', ...args)).out);

describe('the records', () => {
  it('are one for each commit that touched what is judged, oldest first, with the verdict of its time', async () => {
    expect((await records()).map(({ on, verdict }) => `${on} ${verdict}`)).toEqual([
      '2026-01-05 pass',
      '2026-01-12 pass',
      '2026-01-20 fail',
      '2026-02-01 pass',
      '2026-02-10 fail',
      '2026-02-20 pass',
      '2026-02-25 pass',
      '2026-03-10 pass',
      '2026-03-12 not judged',
      '2026-03-13 pass',
      '2026-03-20 pass',
    ]);
  });

  it('fit the schema that is published', async () => {
    const read = (name: string): object =>
      JSON.parse(readFileSync(join(import.meta.dirname, '../../schema', name), 'utf8'));
    const check = new Ajv2020({ strict: false })
      .addSchema(read('common.json'), 'common.json')
      .compile(read('audit-record.json'));
    for (const record of await records()) expect(check(record), JSON.stringify(check.errors)).toBe(true);
  });

  it('say who, when, with whose review, and what it cost', async () => {
    const [, grown] = await records();
    expect(grown).toMatchObject({
      author: { name: 'Avery Tern', email: 'avery@gannet-point.example' },
      committed: '2026-01-12T15:00:00Z',
      subject: 'Grow the plates',
      trailers: [
        { key: 'Reviewed-by', value: 'Robin Knot <robin@gannet-point.example>' },
        { key: 'Request', value: '17' },
      ],
      signature: 'absent',
      touched: ['storage'],
      cost: {
        currency: 'EUR',
        before: '14',
        after: '18',
        difference: '4',
        teams: [{ team: 'imagery', before: '14', after: '18' }],
      },
    });
  });

  it('say of a file that does not read where it is wrong, and of the commit that mends it with which it was compared', async () => {
    const all = await records();
    const at = all.findIndex(({ verdict }) => verdict === 'not judged');
    expect(all[at]?.problems[0]?.place).toMatchObject({ file: 'storage/imagery.yaml', revision: 'head' });
    expect(all[at + 1]).toMatchObject({
      problems: [],
      unreadMain: {
        comparedWith: all[at - 1]?.commit,
        commits: 1,
        problem: { place: { file: 'storage/imagery.yaml', revision: 'base' } },
      },
    });
  });

  it('are a table that opens in a spreadsheet, where no message becomes a formula', async () => {
    const { out } = await audit('--format', 'csv');
    const table: readonly Record<string, string>[] = parse(out, { columns: true });
    expect(table).toHaveLength(11);
    expect(table[2]).toMatchObject({
      verdict: 'fail',
      by: 'Bo Skua',
      message: `'=HYPERLINK("https://gannet-point.example")`,
      currency: 'EUR',
      'monthly cost before': '18',
      'monthly cost after': '16',
    });
  });

  it('are a Markdown table, too, and text for a terminal', async () => {
    expect((await audit('--format', 'markdown')).out).toContain('| 2026-01-20 |');
    const { out, code } = await audit();
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, ' ')).toMatch(/^11 commits changed .*: 8 passed, 2 failed, 1 was not judged /);
  });

  it('are those of a span of commits, or of days', async () => {
    const commits = mainOf(office);
    const days = async (...args: readonly string[]) => (await records(...args)).map(({ on }) => on);
    expect(await days(`${commits[4]}..${commits[7]}`)).toEqual(['2026-02-10', '2026-02-20', '2026-02-25']);
    expect(await days('--since', '2026-02-01', '--until', '2026-02-10')).toEqual([
      '2026-02-01',
      '2026-02-10',
    ]);
    const wrong = await audit('--since', '2026-02-30');
    expect([wrong.code, wrong.out]).toEqual([2, expect.stringContaining('--since 2026-02-30 is not a day')]);
  });
});

describe('the questions', () => {
  it('tell which failing changes were merged anyway', async () => {
    expect(await rows('--show', 'merged-anyway')).toMatchObject([
      { on: '2026-01-20', by: 'Bo Skua', entry: 'no-shrink' },
      { on: '2026-02-10', by: 'Avery Tern', entry: 'detached-volume-owned' },
    ]);
  });

  it('tell every loosening, with from, to and by whom', async () => {
    expect(await rows('--show', 'loosenings')).toMatchObject([
      { on: '2026-02-01', by: 'Avery Tern', name: 'imagery-limit', key: 'limit', from: '20.00', to: '30.00' },
      {
        on: '2026-02-20',
        of: 'waiver',
        to: '2026-02-20 to 2026-03-01, approved by head of imagery: on its way',
      },
    ]);
  });

  it("tell what each team's storage cost, from each change on", async () => {
    expect((await rows('--show', 'spend')).map(({ on, before, after }) => [on, before, after])).toEqual([
      ['2026-01-05', '0.00', '14.00'],
      ['2026-01-12', '14.00', '18.00'],
      ['2026-01-20', '18.00', '16.00'],
      ['2026-02-25', '16.00', '17.00'],
      ['2026-03-10', '17.00', '17.50'],
    ]);
  });

  it('tell how long each violation stood', async () => {
    const [stood, ...others] = await rows('--show', 'open');
    expect(others).toEqual([]);
    expect(stood).toMatchObject({ days: 38, subject: 'volume master-plates' });
    expect([stood?.opened, stood?.closed]).toEqual([
      expect.stringMatching(/^2026-02-10 /),
      expect.stringMatching(/^2026-03-20 /),
    ]);
    // A span that begins in the middle knows that it stood already, and not since when.
    const commits = mainOf(office);
    expect(await rows(`${commits[6]}..main`, '--show', 'open')).toMatchObject([
      { opened: 'before 2026-02-25', subject: 'volume master-plates' },
    ]);
  });

  it('tell which waivers were used, and which were wanted after their date', async () => {
    expect(await rows('--show', 'waivers')).toMatchObject([
      {
        subject: 'master-plates',
        used: 1,
        expired: 2,
        last_needed: expect.stringMatching(/^2026-03-13 /),
      },
    ]);
  });

  it('tell what the policy was on a day', async () => {
    const limit = async (day: string) =>
      (await rows('--policy-on', day)).find(({ name }) => name === 'imagery-limit')?.parameters;
    expect(await limit('2026-01-31')).toContain('limit: 20.00');
    expect(await limit('2026-02-01')).toContain('limit: 30.00');
    expect((await rows('--policy-on', '2026-02-20')).filter(({ kind }) => kind === 'waiver')).toHaveLength(1);
    expect((await rows('--policy-on', '2026-03-02')).filter(({ kind }) => kind === 'waiver')).toEqual([]);
    expect((await audit('--policy-on', '2025-12-31')).out).toContain('there is no commit of 2025-12-31');
  });
});

describe('a back-test', () => {
  const tryPack = (text: string) => {
    const path = join(cache, 'proposed.yaml');
    writeFileSync(path, text);
    return path;
  };

  it('tells what a policy would have stopped and what it would have let through', async () => {
    const path = tryPack('rules:\n  - { name: a-lower-limit, rule: max-monthly-spend, limit: "15.00" }\n');
    const table = await rows('--try', path);
    expect(table.map(({ on, what }) => `${on} ${what}`)).toEqual([
      '2026-01-12 would have been stopped',
      '2026-02-25 would have been stopped',
      '2026-03-10 would have been stopped',
      '2026-01-20 would have passed',
      '2026-02-10 would have passed',
    ]);
    const { out } = await audit('--try', path);
    expect(out).toContain('would have stopped 3 that passed, and let through 2 that failed');
    expect(out.replace(/\s+/g, ' ')).toContain('imagery +5.50 EUR');
  });

  it('says so where the policy does not read', async () => {
    const { code, out } = await audit('--try', tryPack('rules:\n  - { rule: no-such-rule }\n'));
    expect(code).toBe(2);
    expect(out).toContain('proposed.yaml');
  });
});

describe('the cache', () => {
  const filesIn = (folder: string): readonly string[] =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.json'))
      .map((name) => join(folder, name));

  it('gives the same records, from the second run on and after a run that was interrupted', async () => {
    const folder = join(cache, 'whole');
    const plain = await records();
    expect(await records('--cache', folder)).toEqual(plain);
    expect(await records('--cache', folder)).toEqual(plain);
    // Every other record lost: the audit stands on what is left, and judges the rest anew.
    for (const path of filesIn(folder).filter((_path, index) => index % 2 === 0)) rmSync(path);
    expect(await records('--cache', folder)).toEqual(plain);
  });

  it('is believed in nothing that is damaged', async () => {
    const folder = join(cache, 'damaged');
    const plain = await records('--cache', folder);
    const paths = filesIn(folder);
    expect(paths.length).toBeGreaterThan(9);
    for (const [index, path] of paths.entries()) {
      const text = readFileSync(path, 'utf8');
      // A verdict turned round, a file cut short, an empty one, another record's.
      const harms = [
        text.replaceAll('"fail"', '"pass"').replaceAll('"pass"', '"fail"'),
        text.slice(0, text.length / 2),
        '',
        readFileSync(paths[(index + 1) % paths.length] ?? '', 'utf8'),
      ];
      writeFileSync(path, harms[index % harms.length] ?? '');
    }
    expect(await records('--cache', folder)).toEqual(plain);
  });

  it('may be used by two runs at once', async () => {
    const folder = join(cache, 'shared');
    const [one, other] = await Promise.all([records('--cache', folder), records('--cache', folder)]);
    expect(one).toEqual(other);
    expect(await records('--cache', folder)).toEqual(one);
  });
});

describe('the progress', () => {
  const shownOn = async (terminal: boolean): Promise<string> => {
    const stream = Object.assign(new PassThrough(), { isTTY: terminal, columns: 80 });
    const opened = valueIn(await GitRepository.open(office.dir));
    const progress = await progressOn(opened, { to: mainOf(office).at(-1) ?? '' }, stream);
    for (let each = 0; each < 11; each++) progress.step();
    progress.stop();
    await opened.close();
    return String(stream.read() ?? '');
  };

  it('is shown on a terminal, with a rate and the time left, and nowhere else', async () => {
    expect(await shownOn(true)).toMatch(/11 of 11 commits, \d+ a second, \S+ left/);
    expect(await shownOn(false)).toBe('');
  });
});

describe('odd history', () => {
  const file = 'storage/imagery.yaml';
  const verdicts = async (made: TestRepository) => {
    const { out, err } = await ullage('audit', '--repo', made.dir, '--format', 'ndjson');
    expect(err).toBe('');
    return linesOf(out).map(({ verdict }) => verdict);
  };
  const first = spring[0] ?? { date: '', edits: {} };

  it('judges a merge against the main branch, not against what was merged', async () => {
    const made = historyOf([
      first,
      { date: at('2026-01-06'), edits: { [file]: plates(80, 'attached') } },
      { date: at('2026-01-07'), edits: { [file]: plates(60, 'attached') }, merges: [0] },
      { date: at('2026-01-08'), edits: { [file]: plates(61, 'attached') }, merges: [0, 1] },
    ]);
    expect(await verdicts(made)).toEqual(['pass', 'pass', 'fail', 'pass']);
  });

  it('says of a shallow clone where it begins, and judges on from there', async () => {
    const clone = office.clone('--depth', '3', '--branch', 'main');
    const { out, code } = await ullage('audit', '--repo', clone.dir, '--format', 'ndjson');
    expect(code).toBe(0);
    const [cut, ...others] = linesOf(out);
    expect(JSON.stringify(cut?.problems)).toContain('git fetch --unshallow origin');
    expect(others.map(({ verdict }) => verdict)).toEqual(['not judged', 'pass']);
  });

  it('says of a partial clone what it lacks, and fetches nothing', async () => {
    office.git('config', 'uploadpack.allowFilter', 'true');
    const clone = office.clone('--filter=blob:none', '--no-checkout', '--branch', 'main');
    const { out, code } = await ullage('audit', '--repo', clone.dir, '--format', 'ndjson');
    expect(code).toBe(0);
    expect(new Set(linesOf(out).map(({ verdict }) => verdict))).toEqual(new Set(['not judged']));
    expect(out).toContain('git fetch --refetch --no-filter origin');
  });

  it('takes the move of a whole folder for what it is, and a revert too', async () => {
    const made = historyOf([
      first,
      {
        date: at('2026-01-06'),
        edits: {
          [file]: null,
          'estates/storage/imagery.yaml': plates(40, 'attached'),
          'ullage.yaml': 'currency: EUR\npaths: { storage: estates/storage }\n',
        },
      },
      { date: at('2026-01-07'), edits: { 'estates/storage/imagery.yaml': plates(80, 'attached') } },
      { date: at('2026-01-08'), edits: { 'estates/storage/imagery.yaml': plates(40, 'attached') } },
    ]);
    expect(await verdicts(made)).toEqual(['pass', 'pass', 'pass', 'fail']);
  });

  it('judges a file of a format that it does not know as the gate does: not at all', async () => {
    const made = historyOf([
      { ...first, edits: { ...first.edits, [file]: 'disks:\n  - plates-1\n' } },
      { date: at('2026-01-06'), edits: { [file]: plates(40, 'attached') } },
      { date: at('2026-01-07'), edits: { [file]: plates(41, 'attached') } },
    ]);
    expect(await verdicts(made)).toEqual(['not judged', 'pass', 'pass']);
  });

  it('writes and runs nothing that a history names', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ullage-outside-'));
    const mark = join(folder, 'mark');
    const made = historyOf([
      first,
      {
        date: at('2026-01-06'),
        message: `../../${mark}\n\nReviewed-by: $(touch ${mark})\n`,
        author: `$(touch ${mark}) <\`touch ${mark}\`>`,
        edits: {
          '.gitattributes': '* diff=evil merge=evil filter=evil\n',
          'storage/$(touch mark).yaml': 'volumes:\n  spare-1: { size: 1 GiB, tier: bulk }\n',
          'storage/link.yaml': { link: mark },
        },
      },
    ]);
    for (const [key, value] of [
      ['diff.evil.command', `touch ${mark}`],
      ['diff.evil.textconv', `touch ${mark}`],
      ['filter.evil.smudge', `touch ${mark}`],
      ['core.fsmonitor', `touch ${mark}`],
      ['core.pager', `touch ${mark}`],
      ['gpg.program', `touch ${mark}`],
      ['log.showSignature', 'true'],
    ]) {
      made.git('config', key ?? '', value ?? '');
    }
    const files = () => readdirSync(made.dir, { recursive: true, encoding: 'utf8' }).sort();
    const before = files();
    const { out } = await ullage('audit', '--repo', made.dir, '--cache', join(folder, 'cache'));
    expect(out).toContain('not judged');
    expect(existsSync(mark)).toBe(false);
    expect(readdirSync(folder)).toEqual(['cache']);
    expect(files()).toEqual(before);
    rmSync(folder, { recursive: true });
  });
});

describe('a branch that alters rules', () => {
  it('is tried on past changes of main, on so many as are asked for', async () => {
    const made = historyOf(spring);
    made.git('checkout', '--quiet', '-b', 'lower', 'main');
    made.write({ 'policies/storage.yaml': pack('15.00') });
    made.commit('A lower limit');
    const gate = (...args: readonly string[]) =>
      ullage('gate', '--repo', made.dir, '--base', 'main', '--head', 'lower', '--now', '2026-03-21', ...args);
    const words = async (...args: readonly string[]) => (await gate(...args)).out.replace(/\s+/g, ' ');
    expect(await words()).toContain(
      'Tried on the last 11 changes of main, the proposed rules would have stopped 3 that passed, and let through none that failed.',
    );
    expect(await words()).toContain('of 2026-01-12 (Grow the plates)');
    expect(await words('--back-test', '4')).toContain('Tried on the last 4 changes of main');
    expect(await words('--back-test', '0')).not.toContain('Tried on');
    const { out } = await gate('--format', 'json');
    expect(JSON.parse(out)).toMatchObject({ proposed: { backTest: { changes: 11, stopped: [{}, {}, {}] } } });
    expect((await gate('--back-test', 'all')).code).toBe(2);
  });
});

describe('evidence', () => {
  it('is held against the replay: what agrees, what is missing, what says otherwise', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ullage-evidence-'));
    const made = historyOf(spring.slice(0, 2));
    made.git('checkout', '--quiet', '-b', 'grow', 'main');
    made.write({ 'storage/imagery.yaml': plates(90, 'attached') });
    made.commit('Grow the plates again', { date: at('2026-01-13') });
    const path = join(folder, '1.intoto.json');
    const gate = await ullage(
      ...[
        'gate',
        '--repo',
        made.dir,
        '--base',
        'main',
        '--head',
        'grow',
        '--now',
        '2026-01-13',
        '--attest',
        path,
      ],
    );
    expect(gate.code).toBe(0);
    made.checkout('main');
    made.merge('grow', { date: at('2026-01-14') });
    const held = (...args: readonly string[]) =>
      ullage('audit', '--repo', made.dir, '--evidence', folder, '--format', 'ndjson', ...args);
    expect(await held('main~1..main')).toEqual({ code: 0, out: '', err: '' });
    const whole = await held();
    expect(whole.code).toBe(1);
    expect(linesOf(whole.out)).toMatchObject([
      { kind: 'missing', on: '2026-01-05' },
      { kind: 'missing', on: '2026-01-12' },
    ]);
    writeFileSync(path, readFileSync(path, 'utf8').replaceAll('PASSED', 'FAILED'));
    const altered = await held('main~1..main');
    expect(altered.code).toBe(1);
    expect((await held('--show', 'spend')).err).toContain('--evidence was given with another question');
    rmSync(folder, { recursive: true });
  });
});
