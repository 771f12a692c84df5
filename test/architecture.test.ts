import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ruleNames } from '../src/rules/registry.ts';
import { version } from '../src/version.ts';

const source = join(import.meta.dirname, '../src');

/** The pipeline, left to right. */
const pipeline = [
  'base',
  'git',
  'read',
  'estate',
  'change',
  'price',
  'capacity',
  'rules',
  'runbook',
  'policy',
  'audit',
  'report',
  'cli',
  'action',
];

/** What does input and output, reads the clock or the environment; the rest is pure. */
const edges = [
  /^git\/(repository|scratch|process|object-store|revision-tree|worktree|compare|history)\.ts$/,
  /^cli\//,
  /^action\//,
];

const files = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => file.endsWith('.ts') && file.includes('/') && !file.includes('generated/'));

const text = (file: string): string => readFileSync(join(source, file), 'utf8');

const imports = (file: string): readonly string[] =>
  [...text(file).matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/g)].flatMap(([, name]) => name ?? []);

const folderOf = (file: string): string => file.split('/')[0] ?? '';

describe('the pipeline', () => {
  it('knows every folder', () => {
    expect(pipeline).toEqual(expect.arrayContaining([...new Set(files.map(folderOf))]));
  });

  it.each(files)('%s imports only from its own folder and from those to its left', (file) => {
    const reach = pipeline.indexOf(folderOf(file));
    const wrong = imports(file)
      .filter((name) => name.startsWith('../'))
      .map((name) => name.replace('../', '').split('/')[0] ?? '')
      .filter((folder) => pipeline.indexOf(folder) > reach);
    expect(wrong).toEqual([]);
  });

  it.each(files.filter((file) => !edges.some((edge) => edge.test(file))))(
    '%s does no input or output, and asks no clock',
    (file) => {
      const systems = imports(file).filter((name) =>
        /^node:(fs|child_process|net|http|https|os|process|worker_threads)/.test(name),
      );
      expect(systems).toEqual([]);
      expect(text(file)).not.toMatch(/\bprocess\.|new Date\(\)|Date\.now\(|Math\.random\(/);
    },
  );

  it.each(files)('%s holds no any, no non-null assertion and no default export', (file) => {
    const code = text(file).replace(/\/\*[\s\S]*?\*\/|\/\/.*|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g, '');
    expect(code).not.toMatch(/:\s*any\b|<any>|\bas any\b|export default/);
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
  const parsed: unknown = JSON.parse(readFileSync(join(source, '../package.json'), 'utf8'));
  expect(parsed).toMatchObject({ version });
});
