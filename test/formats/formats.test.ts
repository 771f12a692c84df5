import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { readJson } from '../../src/read/json.ts';
import { type Format, validate } from '../../src/read/validate.ts';
import { readGathered } from '../../src/survey/gathered.ts';
import { version } from '../../src/version.ts';
import { ullage } from '../cli/run.ts';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';

afterAll(removeRepositories);

const top = join(import.meta.dirname, '../..');
const read = (path: string): string => readFileSync(join(top, path), 'utf8');

/** Each format that says its version, with the version that its schema has. */
const versioned = readdirSync(join(top, 'schema'))
  .filter((file) => file.endsWith('.json'))
  .flatMap((file) => {
    const { properties } = JSON.parse(read(`schema/${file}`));
    const { const: only, enum: some = [only] } = properties?.format ?? {};
    return typeof some[0] === 'string' ? [{ format: file.replace('.json', ''), newest: some[0] }] : [];
  });

const kept = [
  'test/survey/fixtures/util-linux-2.38.1-lvm2-2.03.16.json',
  'test/formats/ullage-files-1/surveys/sounder-1.json',
  'test/formats/ullage-files-1/surveys/provider.json',
  ...['judgement', 'steps', 'survey-comparison', 'audit-record'].map(
    (name) => `test/formats/ullage-${name}-1.json`,
  ),
];

/** The repository as somebody kept it, and a branch that grows the plates. */
function estate(more: Files = {}): TestRepository {
  const folder = join(import.meta.dirname, 'ullage-files-1');
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /\.(?:yaml|json|csv)$/.test(path));
  const files = Object.fromEntries(paths.map((path) => [path, readFileSync(join(folder, path), 'utf8')]));
  const repository = makeRepository({ files: { ...files, ...more } });
  repository.branch('grow');
  const imagery = files['storage/imagery.yaml'] ?? '';
  repository.write({
    'storage/imagery.yaml': imagery
      .replace(/(plates-[123]): \{ size: 40 GiB/g, '$1: { size: 50 GiB')
      .replace('size: 100 GiB, type: xfs', 'size: 120 GiB, type: xfs'),
  });
  repository.commit('grow the plates');
  return repository;
}

const on = (command: string, { dir }: TestRepository, ...more: readonly string[]) =>
  ullage(command, '--repo', dir, '--base', 'main', '--head', 'grow', '--now', '2026-11-20', ...more);

describe('a format that says its version', () => {
  it('has a file of that version here, and every file here is of a version that is read', () => {
    const formats = kept.map((path) => JSON.parse(read(path)).format);
    expect(['ullage-files-1', ...formats].sort()).toEqual(versioned.map(({ newest }) => newest).sort());
  });

  it('is listed with it among the versions of formats', () => {
    const [, section = ''] =
      /## The versions of formats\n([\s\S]*?)\n## /.exec(read('schema/README.md')) ?? [];
    const listed = [...section.matchAll(/\| `(ullage-[a-z-]+-\d+)` \|/g)].map(([, name]) => name);
    expect(listed.sort()).toEqual(versioned.map(({ newest }) => newest).sort());
  });

  it.each(kept)('has in %s no key that a program can no longer rely on', (path) => {
    const kept = JSON.parse(read(path));
    const schema = versioned.find(({ newest }) => newest === kept.format)?.format ?? '';
    // Keys may have been added since: none of them can be there.
    const lenient = (text: string) =>
      JSON.parse(text, (key, value: unknown) => (key === 'required' && Array.isArray(value) ? [] : value));
    const ajv = new Ajv2020({
      allowUnionTypes: true,
      strict: false,
      schemas: [lenient(read('schema/common.json'))],
    });
    for (const name of ['judgement', 'estate', 'survey'])
      if (name !== schema) ajv.addSchema(lenient(read(`schema/${name}.json`)));
    const check = ajv.compile(lenient(read(`schema/${schema}.json`)));
    check(kept);
    expect(check.errors).toBeNull();
  });
});

describe('what an older version wrote', () => {
  it('is judged: settings, estate, prices, rules, waivers, procedures and surveys', async () => {
    const { code, out } = await on('gate', estate(), '--format', 'json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      verdict: 'pass',
      problems: [],
      cost: { before: '238.92', after: '240.27' },
    });
  });

  it('is read by what it is for: readings, surveys and the provider’s list', async () => {
    const { dir } = estate();
    const headroom = await ullage('headroom', '--repo', dir, '--now', '2026-11-20', '--format', 'json');
    expect([headroom.code, headroom.out]).toEqual([0, expect.stringContaining('2026-11-17T06:00:00Z')]);
    const compared = await ullage(
      'survey',
      'compare',
      '--repo',
      dir,
      '--now',
      '2026-11-20',
      '--format',
      'json',
    );
    const surveys: readonly { readonly server: string | null }[] = JSON.parse(compared.out).surveys;
    expect(surveys.map(({ server }) => server)).toEqual(expect.arrayContaining(['sounder-1', null]));
  });

  it('still ticks off the steps of the same change', async () => {
    const repository = estate();
    for (const name of ['ullage-steps-1.md', 'ullage-steps-1.json']) {
      const list = join(import.meta.dirname, name);
      // The kept list of the provider is older than the ticks, which is told.
      const { code, out } = await on('steps', repository, '--done', list, '--format', 'json');
      expect([code, JSON.parse(out).done]).toEqual([1, ['e9000da857', '3aaa56e840']]);
    }
  });
});

describe('what a newer version wrote', () => {
  const numbers = fc.integer({ min: 2, max: 1_000_000 });

  it('is refused in one plain sentence at its place, whatever else is in it', () => {
    const readBack = versioned.filter(
      ({ format }) => !['judgement', 'steps', 'survey-comparison'].includes(format),
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...readBack),
        numbers,
        fc.dictionary(fc.string(), fc.jsonValue()),
        (of, number, more) => {
          const format = of.newest.replace(/1$/, String(number));
          const document = readJson(JSON.stringify({ ...more, format }, null, 2), 'kept.json');
          if (!document.ok) return;
          const result = validate(of.format as Format, document.value);
          expect(result.ok ? [] : result.problems).toMatchObject([
            {
              message: `this is of the format ${format}, and Ullage ${version} reads ${of.newest}`,
              place: { file: 'kept.json' },
            },
          ]);
        },
      ),
    );
  });

  it('keeps a branch from being judged', async () => {
    const settings = read('test/formats/ullage-files-1/ullage.yaml').replace(
      'ullage-files-1',
      'ullage-files-2',
    );
    const { code, out, err } = await on('gate', estate({ 'ullage.yaml': settings }));
    expect(code).toBe(2);
    expect(out + err).toContain(
      `ullage.yaml:1:9: this is of the format ullage-files-2, and Ullage ${version} reads`,
    );
  });

  it('is told of ticks and of what a survey’s script prints', async () => {
    const repository = estate();
    const newer = read('test/formats/ullage-steps-1.json').replace('ullage-steps-1', 'ullage-steps-2');
    repository.write({ 'newer.json': newer });
    const { code, err, out } = await on('steps', repository, '--done', join(repository.dir, 'newer.json'));
    expect(code).toBe(2);
    expect(out + err).toContain('this is of the format ullage-steps-2');
    const gathered = readGathered(new TextEncoder().encode('{"format": "ullage-gathered-2"}'), 'files.json');
    expect(gathered.ok).toBe(false);
  });
});
