import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
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
      reports: 'json=a.json\nsarif\npdf=b.pdf\n=c\njson=\nhtml=./A.json',
    });
    expect(refused.ok ? [] : refused.problems.map(({ message }) => message)).toEqual([
      'the input reports cannot have the line "sarif"',
      'the input reports cannot have the line "pdf=b.pdf"',
      'the input reports cannot have the line "=c"',
      'the input reports cannot have the line "json="',
      'the input reports names the file "./A.json" for several reports',
      'the input annotations cannot be "11"',
      'the input fail-on cannot be "x"',
      'the input comment cannot be "yes"',
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

interface Job {
  readonly permissions?: unknown;
  readonly needs?: string;
  readonly strategy?: {
    readonly matrix: { readonly node: readonly number[]; readonly system?: readonly string[] };
  };
  readonly steps: readonly {
    readonly run?: string;
    readonly with?: Readonly<Record<string, unknown>>;
  }[];
}

describe.each(workflows)('%s', (path) => {
  const text = read(path);
  const workflow: {
    readonly permissions: unknown;
    readonly on: unknown;
    readonly jobs: Readonly<Record<string, Job>>;
  } = parse(text);

  it('pins every action it uses by commit, with its version in a comment', () => {
    const uses = [...text.matchAll(/^\s*-?\s*uses:\s*(.+)$/gm)].map(([, what = '']) => what);
    expect(uses.length).toBeGreaterThan(0);
    for (const what of uses) expect(what).toMatch(/^(?:\.\/|[\w./-]+@[0-9a-f]{40} # v\d+\.\d+\.\d+)$/);
  });

  it('may read the repository and nothing more, but for the two jobs that release', () => {
    expect(workflow.permissions).toEqual({ contents: 'read' });
    const more = Object.entries(workflow.jobs).filter(([, { permissions }]) => permissions !== undefined);
    expect(Object.fromEntries(more.map(([name, { permissions }]) => [name, permissions]))).toEqual(
      path.endsWith('/release.yml')
        ? { publish: { contents: 'read', 'id-token': 'write' }, tag: { contents: 'write' } }
        : {},
    );
  });

  it('runs only scripts and files that are there', () => {
    const { scripts }: { readonly scripts: Readonly<Record<string, string>> } = JSON.parse(
      read('package.json'),
    );
    const steps = Object.values(workflow.jobs).flatMap(({ steps: each }) => each);
    const commands = steps.flatMap(({ run = '' }) => run.split('\n'));
    const named = commands.flatMap((command) => /^npm run (?:-\S+ )*([\w:-]+)/.exec(command)?.[1] ?? []);
    expect(named.filter((name) => scripts[name] === undefined)).toEqual([]);
    const files = commands.flatMap((command) => command.match(/(?<![\w./-])(?:\.ci|test)\/[\w./-]+/g) ?? []);
    expect(files.filter((file) => !existsSync(join(top, file)))).toEqual([]);
    const shells = commands.filter((command) => command.startsWith('.ci/'));
    for (const file of shells.map((command) => command.split(' ')[0] ?? ''))
      expect(statSync(join(top, file)).mode & 0o111).not.toBe(0);
  });

  it('runs on no Node.js that is not supported', () => {
    const { engines }: { readonly engines: { readonly node: string } } = JSON.parse(read('package.json'));
    const oldest = Number(/^>=(\d+)$/.exec(engines.node)?.[1]);
    expect(oldest).toBeGreaterThan(0);
    const nodes = Object.values(workflow.jobs).flatMap(({ strategy, steps }) => [
      ...(strategy?.matrix.node ?? []),
      ...steps
        .flatMap((step) => step.with?.['node-version'] ?? [])
        .filter((each) => typeof each === 'number'),
    ]);
    expect(nodes.filter((node) => node < oldest)).toEqual([]);
    for (const { strategy } of Object.values(workflow.jobs))
      if (strategy !== undefined) expect(strategy.matrix.node).toEqual([oldest, 22, 24]);
  });

  it('puts nothing of an event into a shell, and never runs with secrets for a fork', () => {
    expect(text).not.toMatch(/run:.*\$\{\{/);
    expect(text).not.toContain('pull_request_target');
    expect(text).not.toContain('secrets.');
  });
});

describe('the release', () => {
  const { on, jobs }: { readonly on: unknown; readonly jobs: Readonly<Record<string, Job>> } = parse(
    read('.github/workflows/release.yml'),
  );

  it('begins with a version’s tag alone, and each job with the one before it', () => {
    expect(on).toEqual({ push: { tags: ['v[0-9]+.[0-9]+.[0-9]+'] } });
    expect(Object.entries(jobs).map(([name, { needs }]) => [name, needs])).toEqual([
      ['check', undefined],
      ['publish', 'check'],
      ['tag', 'publish'],
    ]);
  });

  it('is refused for a tag that is not the package’s version, or that the changelog does not tell of', () => {
    const release = (...args: readonly string[]) =>
      spawnSync(process.execPath, ['--import', 'tsx', join(top, '.ci/release.ts'), ...args], {
        cwd: top,
        encoding: 'utf8',
      });
    const { status, stderr } = release('check', 'v99.0.0');
    expect([status, stderr]).toEqual([1, expect.stringContaining('the tag is v99.0.0')]);
    expect(stderr).toContain('CHANGELOG.md says nothing of v99.0.0');
    expect(release('v0.1.0').status).toBe(1);
  });
});

describe('CI', () => {
  it('runs on Linux, macOS and Windows', () => {
    const { jobs }: { readonly jobs: Readonly<Record<string, Job & { readonly 'runs-on': string }>> } = parse(
      read('.github/workflows/ci.yml'),
    );
    expect(jobs.check?.['runs-on']).toBe('ubuntu-latest');
    expect(jobs.elsewhere?.strategy?.matrix.system).toEqual(['macos-latest', 'windows-latest']);
  });

  it('has updates of packages and actions proposed', () => {
    const { updates }: { readonly updates: readonly { readonly 'package-ecosystem': string }[] } = parse(
      read('.github/dependabot.yml'),
    );
    expect(updates.map((each) => each['package-ecosystem'])).toEqual(['npm', 'github-actions']);
  });
});

describe('the repository’s own ullage.yaml', () => {
  it('says of the demo what the demo says of itself', () => {
    const { paths, ...settings } = parse(read('ullage.yaml'));
    expect(settings).toEqual(parse(read('test/demo/main/ullage.yaml')));
    expect(Object.values(paths).every((each) => String(each).startsWith('test/demo/main/'))).toBe(true);
  });
});
