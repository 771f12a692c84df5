import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readInputs } from '../../src/action/inputs.ts';

const top = join(import.meta.dirname, '../..');
const read = (path: string): string => readFileSync(join(top, path), 'utf8');
const workflows = readdirSync(join(top, '.github/workflows')).map((name) => `.github/workflows/${name}`);

const action: {
  readonly inputs: Readonly<Record<string, { readonly description: string; readonly default: string }>>;
  readonly outputs: Readonly<Record<string, { readonly description: string }>>;
  readonly runs: { readonly using: string; readonly main: string };
} = parse(read('action.yml'));

describe('action.yml', () => {
  it('describes every input that the action reads, and no other', () => {
    const asked: string[] = [];
    readInputs((name) => {
      asked.push(name);
      return '';
    });
    expect([...new Set(asked)].sort()).toEqual(Object.keys(action.inputs).sort());
    for (const { description } of Object.values(action.inputs))
      expect(description.length).toBeGreaterThan(20);
  });

  it('has defaults that mean what leaving the input out means', () => {
    const token = (name: string, text: string): string => (name === 'token' ? '' : text);
    const given = readInputs((name) => token(name, action.inputs[name]?.default ?? ''));
    expect(given).toEqual(readInputs(() => ''));
    expect(given.ok).toBe(true);
  });

  it('sets every output that it describes, and no other', () => {
    const source = read('src/action/main.ts');
    for (const name of Object.keys(action.outputs))
      expect(source).toMatch(new RegExp(`'${name}'|\\{level\\}s`));
    expect(Object.keys(action.outputs).sort()).toEqual(
      [
        'after',
        'before',
        'currency',
        'difference',
        'errors',
        'notes',
        'reports',
        'verdict',
        'warnings',
      ].sort(),
    );
  });
});

describe('the inputs', () => {
  const inputs = (given: Readonly<Record<string, string>>) => readInputs((name) => given[name] ?? '');

  it('can make the gate stricter, and not weaker', () => {
    expect(inputs({ 'fail-on': 'warning' })).toMatchObject({ ok: true, value: { failOn: 'warning' } });
    for (const weaker of ['note', 'none', 'never', 'fatal', 'ERROR']) {
      expect(inputs({ 'fail-on': weaker }).ok).toBe(false);
    }
  });

  it('are refused together where several are wrong', () => {
    const refused = inputs({
      'fail-on': 'x',
      comment: 'yes',
      annotations: '11',
      reports: 'json=a.json\nsarif\nhtml=b.html\n=c\njson=',
    });
    expect(refused.ok ? [] : refused.problems.map(({ message }) => message)).toEqual([
      'the input reports has the line "sarif"',
      'the input reports has the line "html=b.html"',
      'the input reports has the line "=c"',
      'the input reports has the line "json="',
      'the input annotations is "11"',
      'the input fail-on is "x"',
      'the input comment is "yes"',
    ]);
  });

  it('take several reports, and paths that hold an equals sign', () => {
    expect(inputs({ reports: '\n  json=out/a=b.json \n\n sarif=out/c.sarif\n' })).toMatchObject({
      ok: true,
      value: {
        reports: [
          { format: 'json', path: 'out/a=b.json' },
          { format: 'sarif', path: 'out/c.sarif' },
        ],
      },
    });
  });
});

describe.each(workflows)('%s', (path) => {
  const text = read(path);
  const workflow: {
    readonly permissions: unknown;
    readonly on: unknown;
    readonly jobs: Record<string, { permissions?: unknown }>;
  } = parse(text);

  it('pins every action it uses by commit, with its version in a comment', () => {
    const uses = [...text.matchAll(/^\s*-?\s*uses:\s*(.+)$/gm)].map(([, what = '']) => what);
    expect(uses.length).toBeGreaterThan(0);
    for (const what of uses) expect(what).toMatch(/^(?:\.\/|[\w./-]+@[0-9a-f]{40} # v\d+\.\d+\.\d+)$/);
  });

  it('may read the repository and nothing more', () => {
    expect(workflow.permissions).toEqual({ contents: 'read' });
    for (const job of Object.values(workflow.jobs)) expect(job.permissions).toBeUndefined();
  });

  it('puts nothing of an event into a shell, and never runs with secrets for a fork', () => {
    expect(text).not.toMatch(/run:.*\$\{\{/);
    expect(text).not.toContain('pull_request_target');
    expect(text).not.toContain('secrets.');
  });
});

describe('the repository’s own ullage.yaml', () => {
  it('says of the demo what the demo says of itself', () => {
    const { paths, ...settings } = parse(read('ullage.yaml'));
    expect(settings).toEqual(parse(read('test/demo/main/ullage.yaml')));
    expect(Object.values(paths).every((each) => String(each).startsWith('test/demo/main/'))).toBe(true);
  });
});
