/**
 * What is otherwise on Windows and macOS, as far as it can be tried anywhere: line ends, backslashes, names that differ
 * only in case. That Git for Windows turns line ends on checkout is core.autocrlf of git-config(1).
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { judgeFiles, judgeRepository, readFiles } from '../../src/index.ts';
import { ullage } from '../cli/run.ts';
import { samples } from '../fuzz/samples.ts';
import { makeRepository, removeRepositories } from '../repository.ts';

afterAll(removeRepositories);

const on = '2026-11-20';
const demo = join(import.meta.dirname, '../demo/main');
const office: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(demo, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /\.(?:ya?ml|json|csv)$/.test(path))
    .map((path) => [path, readFileSync(join(demo, path), 'utf8')]),
);

const withReturns = (text: string): string => text.replaceAll('\n', '\r\n');
const saved = (change: (text: string) => string) =>
  Object.fromEntries(Object.entries(office).map(([path, text]) => [path, change(text)]));

describe('files that an editor on Windows saved', () => {
  it('say what they said, line for line', async () => {
    for (const [before, after] of [
      [office, saved(withReturns)],
      [saved(withReturns), office],
    ] as const) {
      const judgement = await judgeFiles(before, after, { on });
      expect(judgement).toMatchObject({ verdict: 'pass', changes: [], policyChanges: [] });
    }
  });

  it('say so whichever of their lines an editor has touched', async () => {
    await fc.assert(
      fc.asyncProperty(fc.infiniteStream(fc.boolean()), async (draws) => {
        const some = saved((text) =>
          text.replaceAll('\n', () => (draws.next().value === true ? '\r\n' : '\n')),
        );
        const judgement = await judgeFiles(office, some, { on });
        expect(judgement).toMatchObject({ verdict: 'pass', changes: [], policyChanges: [] });
      }),
      { numRuns: 20 },
    );
  });

  it('are told of at the same places, by the same words, when they are wrong', async () => {
    const wrong = fc.tuple(
      fc.constantFrom(...samples),
      fc.nat(),
      fc.constantFrom('zz: 1', '-', 'size: 4', '"'),
    );
    await fc.assert(
      fc.asyncProperty(wrong, async ([{ path, text }, at, slip]) => {
        const lines = text.split('\n');
        lines.splice(at % lines.length, 0, slip);
        const unix = await readFiles({ [path]: lines.join('\n') }, 'draft');
        const windows = await readFiles({ [path]: lines.join('\r\n') }, 'draft');
        const said = (read: typeof unix) =>
          read.ok ? [] : read.problems.map(({ excerpt: _, ...rest }) => rest);
        expect(said(windows)).toEqual(said(unix));
      }),
      { numRuns: 300 },
    );
  });
});

describe('a clone whose Git turns line ends', () => {
  const turning = (value: string) => {
    const clone = makeRepository({ files: office }).clone('-c', `core.autocrlf=${value}`);
    return clone;
  };

  it('has nothing to judge where nobody has changed anything', async () => {
    const clone = turning('true');
    expect(readFileSync(join(clone.dir, 'ullage.yaml'), 'latin1')).toContain('\r\n');
    const judgement = await judgeRepository(clone.dir, { base: 'main', worktree: true, on });
    expect(judgement).toMatchObject({ verdict: 'pass', changes: [], policyChanges: [] });
    const { out, err } = await ullage('gate', '--repo', clone.dir, '--base', 'main', '--now', on);
    expect(out + err).not.toContain('changed and not committed');
  });

  it('keeps CRLF in the readings that it has with CRLF, and LF in those with LF', async () => {
    for (const [value, end] of [
      ['true', '\r\n'],
      ['false', '\n'],
    ] as const) {
      const clone = turning(value);
      const header = ['server,mount,at,size,used,available', ''].join(end);
      const path = join(clone.dir, 'readings/plate-scanner.csv');
      clone.write({ 'readings/plate-scanner.csv': header });
      const df = 'Filesystem 1024-blocks Used Available Capacity Mounted on\n/dev/x 100 10 90 10% /plates\n';
      writeFileSync(join(clone.dir, 'df.txt'), df);
      const added = ['reading', 'add', join(clone.dir, 'df.txt'), '--server', 'plate-scanner', '--any-size'];
      const { out, code } = await ullage(...added, '--repo', clone.dir, '--at', '2026-11-20T06:00:00Z');
      expect([code, out]).toEqual([0, expect.stringContaining('Added')]);
      const text = readFileSync(path, 'latin1');
      expect(text.split('\n').length).toBe(3);
      expect(
        text
          .split('\n')
          .slice(0, -1)
          .every((line) => line.endsWith('\r') === (end === '\r\n')),
      ).toBe(true);
    }
  });
});

describe('paths', () => {
  it('in ullage.yaml are refused with backslashes: a folder that is not there would declare nothing', async () => {
    const settings = 'currency: EUR\npaths: { storage: estates\\storage }\n';
    const read = await readFiles({ ...office, 'ullage.yaml': settings }, 'draft');
    expect(read).toMatchObject({
      ok: false,
      problems: [
        {
          place: { file: 'ullage.yaml', line: 2 },
          message: 'storage of paths is estates\\storage, which is not a folder',
          advice: expect.any(String),
        },
      ],
    });
  });

  it('that differ only in case are refused, in a revision and on the disk: one would take the other’s place', async () => {
    const repository = makeRepository({ files: office });
    repository.branch('twins');
    repository.write({ 'storage/Imagery.yaml': 'volumes: {}\n' });
    repository.commit('twins');
    for (const head of [{ head: 'twins' }, { worktree: true }]) {
      const judgement = await judgeRepository(repository.dir, { base: 'main', ...head, on });
      expect(judgement).toMatchObject({
        verdict: 'not judged',
        problems: [{ message: expect.stringContaining('only in case') }],
      });
    }
  });

  it('that differ only in case are never made by a command that writes a file', async () => {
    const { 'surveys/sounder-1.json': survey = '', ...others } = office;
    const repository = makeRepository({
      files: {
        ...others,
        'surveys/SOUNDER-1.json': survey,
        'readings/Sounder-1.csv': 'server,mount,at,size,used,available\n',
        'storage/sounder-1.YAML': '# ours\n',
      },
    });
    const { dir } = repository;
    const fixture = join(import.meta.dirname, '../survey/fixtures/util-linux-2.38.1-lvm2-2.03.16.json');
    const added = await ullage('survey', 'add', fixture, '--server', 'sounder-1', '--repo', dir);
    expect(added.code).toBe(2);
    expect(added.out.replaceAll(/\s+/g, ' ')).toContain('some disks do not tell');
    expect(readFileSync(join(dir, 'surveys/SOUNDER-1.json'), 'utf8')).toBe(survey);

    const rows = join(dir, '.git/df');
    writeFileSync(
      rows,
      'Filesystem 1024-blocks Used Available Capacity Mounted on\n/dev/vdb 366870528 1024 366869504 1% /srv/depths\n',
    );
    const df = [
      'reading',
      'add',
      rows,
      '--server',
      'sounder-1',
      '--at',
      '2026-11-19T06:00:00Z',
      '--any-size',
      '--mount',
      '/srv/depths',
    ];
    expect((await ullage(...df, '--repo', dir)).code).toBe(0);
    expect(readFileSync(join(dir, 'readings/Sounder-1.csv'), 'utf8')).toContain(
      'sounder-1,/srv/depths,2026-11-19',
    );

    const declared = await ullage('survey', 'declare', '--into', 'storage', '--repo', dir);
    expect(declared.code).toBe(0);
    expect(readdirSync(join(dir, 'storage')).length).toBeGreaterThan(
      Object.keys(office).filter((path) => path.startsWith('storage/')).length,
    );
    for (const folder of ['surveys', 'readings', 'storage']) {
      const names = readdirSync(join(dir, folder)).map((name) => name.toLowerCase());
      expect(new Set(names).size).toBe(names.length);
    }
  });

  it('to a repository may have dots and a slash too many', async () => {
    const { dir } = makeRepository({ files: office });
    const plain = await ullage('cost', '--repo', dir, '--now', on);
    for (const written of [`${dir}/`, `${dir}/storage/..`, `${dir}/./`]) {
      expect((await ullage('cost', '--repo', written, '--now', on)).out).toBe(plain.out);
    }
  });
});
