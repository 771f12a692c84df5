import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ruleNames } from '../src/rules/registry.ts';
import { version } from '../src/version.ts';
import {
  files,
  filesFrom,
  folderOf,
  foldersFrom,
  guideWithMap,
  imports,
  pipeline,
  source,
  text,
} from './map.ts';

const top = join(import.meta.dirname, '..');

/** What does input and output, reads the clock or the environment; the rest is pure. */
const edges = ['git', 'cli', 'action'];

describe('the pipeline', () => {
  it('knows every folder', () => {
    expect(pipeline).toEqual(expect.arrayContaining([...new Set(files.map(folderOf))]));
  });

  it.each(files)('%s imports only from its own folder and from those to its left', (file) => {
    const reach = pipeline.indexOf(folderOf(file));
    expect(foldersFrom(file).filter((folder) => pipeline.indexOf(folder) > reach)).toEqual([]);
  });

  it.each(files.filter((file) => !edges.includes(folderOf(file))))(
    '%s does no input or output, and asks no clock',
    (file) => {
      const systems = imports(file).filter((name) =>
        /^node:(fs|child_process|net|http|https|os|process|worker_threads)/.test(name),
      );
      expect(systems).toEqual([]);
      expect(text(file)).not.toMatch(/\bprocess\.|new Date\(\)|Date\.now\(|Math\.random\(/);
    },
  );

  it('has no two files that import each other, by whatever way round', () => {
    const done = new Set<string>();
    const circles: string[] = [];
    const follow = (file: string, path: readonly string[]): void => {
      if (path.includes(file)) circles.push([...path.slice(path.indexOf(file)), file].join(' -> '));
      if (done.has(file) || !existsSync(join(source, file))) return;
      done.add(file);
      for (const next of filesFrom(file)) follow(next, [...path, file]);
    };
    for (const file of files) follow(file, []);
    expect(circles).toEqual([]);
    expect(done.size).toBeGreaterThanOrEqual(files.length);
  });

  it('is what the map in DEVELOPERS.md shows (npm run map draws it anew)', () => {
    const { is, wanted } = guideWithMap();
    expect(is).toBe(wanted);
  });
});

describe('the style', () => {
  it('refuses a non-null assertion, any, a default export and an enum', () => {
    const folder = mkdtempSync(join(tmpdir(), 'ullage-style-'));
    const code =
      'export const a = (b?: string, c?: any) => b!.length + c;\nexport enum A { B }\nexport default a;\n';
    writeFileSync(join(folder, 'a.ts'), code);
    const biome = join(top, 'node_modules/@biomejs/biome/bin/biome');
    const args = [biome, 'lint', `--config-path=${top}`, '--reporter=summary', folder];
    const { stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
    rmSync(folder, { recursive: true });
    const refused = (stdout + stderr).match(/\blint\/\S+/g) ?? [];
    expect(refused).toEqual(
      expect.arrayContaining([
        'lint/style/noNonNullAssertion',
        'lint/suspicious/noExplicitAny',
        'lint/style/noDefaultExport',
        'lint/style/noEnum',
      ]),
    );
  });

  it('is switched off nowhere in the source but for control characters in a pattern', () => {
    const ignored = files.flatMap((file) => text(file).match(/biome-ignore\S* [^\s:]+/g) ?? []);
    expect(ignored.filter((each) => !each.endsWith('/noControlCharactersInRegex'))).toEqual([]);
  });
});

describe('a file', () => {
  it.each(files)('%s has at most 400 lines, or says at its head why it has more', (file) => {
    const [head = ''] = /^\/\*\*[\s\S]*?\*\//.exec(text(file)) ?? [];
    if (text(file).trimEnd().split('\n').length > 400) expect(head).toContain('In one file, since');
  });

  it.each(files)('%s says why, where a switch has a default: a union is told by its cases', (file) => {
    const bare = text(file).match(/^ *default:(?: \{)?\n(?! *\/\/).*/gm) ?? [];
    expect(bare).toEqual([]);
  });
});

describe('a rule is its file', () => {
  const quoted = new RegExp(`(['"\`])(?:${ruleNames.join('|')})\\1`, 'g');

  it.each(files.filter((file) => folderOf(file) !== 'rules'))('and %s asks for none by its name', (file) => {
    expect(text(file).match(quoted) ?? []).toEqual([]);
  });

  it('whose name its file has', () => {
    for (const name of ruleNames) expect(files).toContain(`rules/${name}.ts`);
  });
});

it('says the version that package.json gives', () => {
  const parsed: unknown = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8'));
  expect(parsed).toMatchObject({ version });
});
