/** Ullage itself fails, or cannot say what it found: neither is ever a verdict. */
import { spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { RevisionTree } from '../../src/git/revision-tree.ts';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

const folder = mkdtempSync(join(tmpdir(), 'ullage-test-fault-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  removeRepositories();
});

const office = (size: string): Files => ({
  'ullage.yaml': 'currency: EUR\n',
  'storage/imagery.yaml': `team: imagery\nvolumes:\n  plates-1: { size: ${size}, tier: bulk }\n`,
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
  'policies/storage.yaml': 'rules:\n  - { rule: no-shrink }\n',
});

function grown(): TestRepository {
  const repository = makeRepository({ files: office('40 GiB') });
  repository.branch('grow');
  repository.write(office('50 GiB'));
  repository.commit('grow');
  return repository;
}

describe('a fault of Ullage’s own', () => {
  afterEach(() => vi.restoreAllMocks());

  /** Reading one revision throws. */
  function faultAt(commit: string): void {
    const { list, read } = RevisionTree.prototype;
    const mayFail = ({ label }: RevisionTree): void => {
      if (label.revision === commit) throw new TypeError('a fault that was put in');
    };
    vi.spyOn(RevisionTree.prototype, 'list').mockImplementation(async function (
      this: RevisionTree,
      ...folders
    ) {
      mayFail(this);
      return list.apply(this, folders);
    });
    vi.spyOn(RevisionTree.prototype, 'read').mockImplementation(async function (this: RevisionTree, file) {
      mayFail(this);
      return read.call(this, file);
    });
  }

  it('leaves a report that says not judged, in the place of one from an earlier run', async () => {
    const repository = grown();
    const json = join(repository.dir, '.git', 'gate.json');
    const sarif = join(repository.dir, '.git', 'gate.sarif');
    const judge = () =>
      ullage(
        ...['gate', '--repo', repository.dir, '--base', 'main', '--head', 'grow', '--now', '2026-11-20'],
        ...['--report', `json=${json}`, '--report', `sarif=${sarif}`],
      );
    expect((await judge()).code).toBe(0);
    faultAt(repository.git('rev-parse', 'grow'));
    const { code, err } = await judge();
    expect([code, err]).toEqual([2, 'not judged: Ullage itself failed: a fault that was put in\n']);
    expect(JSON.parse(readFileSync(json, 'utf8'))).toMatchObject({ verdict: 'not judged', on: '2026-11-20' });
    expect(JSON.parse(readFileSync(sarif, 'utf8'))).toMatchObject({
      runs: [{ invocations: [{ executionSuccessful: false }] }],
    });
  });

  it('takes one commit out of an audit, and no other', async () => {
    const repository = makeRepository({ files: office('40 GiB') });
    const ids = [repository.git('rev-parse', 'main')];
    for (const size of ['50 GiB', '45 GiB', '60 GiB']) {
      repository.write(office(size));
      ids.push(repository.commit(size));
    }
    const cache = join(folder, 'records');
    const audit = async (): Promise<readonly unknown[]> => {
      const { code, out } = await ullage(
        ...['audit', '--repo', repository.dir, '--format', 'ndjson', '--cache', cache],
      );
      expect(code).toBe(0);
      return out
        .trim()
        .split('\n')
        .map((line): unknown => JSON.parse(line));
    };
    faultAt(ids[1] ?? '');
    const faulty = await audit();
    expect(faulty).toMatchObject([
      { verdict: 'pass' },
      { verdict: 'not judged', reasons: ['Ullage itself failed: a fault that was put in'] },
      { verdict: 'not judged' },
      { verdict: 'pass' },
    ]);
    // What a fault took away is no record to keep: once it is mended, the same cache says all.
    vi.restoreAllMocks();
    expect(await audit()).toMatchObject([
      { verdict: 'pass' },
      { verdict: 'pass' },
      { verdict: 'fail' },
      { verdict: 'pass' },
    ]);
  });
});

describe('the command as a process', () => {
  const program = join(folder, 'ullage.mjs');
  beforeAll(async () => {
    await build({
      absWorkingDir: join(import.meta.dirname, '../..'),
      entryPoints: ['src/cli/ullage.ts'],
      outfile: program,
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      logLevel: 'warning',
      banner: {
        js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
      },
    });
  }, 60_000);

  const gate = (repository: TestRepository): readonly string[] => [
    ...['gate', '--repo', repository.dir, '--base', 'main', '--head', 'grow', '--now', '2026-11-20'],
  ];

  it.each(['text', 'json', 'sarif'])('whose standard output is full gives no verdict as %s', (format) => {
    const full = openSync('/dev/full', 'w');
    const { status, stderr } = spawnSync(process.execPath, [program, ...gate(grown()), '--format', format], {
      stdio: ['ignore', full, 'pipe'],
      encoding: 'utf8',
    });
    expect(status).toBe(2);
    expect(stderr).toMatch(/^not judged: standard output cannot be written to: .*\n$/);
  });

  it.each([[['rules']], [['help']], [['audit', '--format', 'ndjson']]])(
    'whose reader has gone gives no verdict, and neither does %j',
    (other) => {
      const repository = grown();
      for (const args of [gate(repository), other]) {
        const words = [process.execPath, program, ...args].map((word) => `'${word}'`).join(' ');
        // The reader ends before anything is written: the writer waits for its end.
        const script = `exec 3>&1; { sleep 0.3; ${words}; echo "$?" >&3; } | true`;
        const { stdout, stderr } = spawnSync('sh', ['-c', script], { cwd: repository.dir, encoding: 'utf8' });
        expect([args[0], stdout]).toEqual([args[0], '2\n']);
        expect(stderr).toMatch(/^not judged: standard output cannot be written to: .*\n$/);
      }
    },
  );

  it('that fails where nobody catches it ends with the code for not judged, and one line', () => {
    // As soon as the program is there to catch it.
    const fault = `process.on('newListener', (name) => {
      if (name === 'uncaughtException') setTimeout(() => { throw new Error('put in'); });
    });`;
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [`--import=data:text/javascript,${encodeURIComponent(fault)}`, program, ...gate(grown())],
      { encoding: 'utf8' },
    );
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(/^not judged: Ullage itself failed: put in\. .*\n$/);
  });

  it('writes no report over another, however the file is spelled, and none to a dash', () => {
    const repository = grown();
    const at = (name: string): string => join(repository.dir, '.git', name);
    writeFileSync(at('old.json'), '');
    symlinkSync(at('old.json'), at('link.json'));
    const run = (...reports: readonly string[]) =>
      spawnSync(
        process.execPath,
        [program, ...gate(repository), ...reports.flatMap((each) => ['--report', each])],
        { encoding: 'utf8', timeout: 20_000 },
      );
    for (const [one, other] of [
      ['a', 'a'],
      ['a', '../.git/a'],
      ['a', 'A'],
      ['old.json', 'link.json'],
    ] as const) {
      const { status, stdout } = run(`json=${at(one)}`, `html=${join(repository.dir, '.git')}/${other}`);
      expect([one, other, status]).toEqual([one, other, 2]);
      expect(stdout.replaceAll(/\s+/g, ' ')).toMatch(
        /is given for 2 reports|are one file, and each is given for a report/,
      );
      expect([at('a'), at('A')].filter(existsSync)).toEqual([]);
      expect(readFileSync(at('old.json'), 'utf8')).toBe('');
    }
    const attested = spawnSync(
      process.execPath,
      [program, ...gate(repository), '--report', `json=${at('a')}`, '--attest', at('a')],
      { encoding: 'utf8' },
    );
    expect([attested.status, existsSync(at('a'))]).toEqual([2, false]);
    const dash = run('html=-');
    expect([dash.status, dash.stdout]).toEqual([
      2,
      expect.stringContaining('- names no file to write a report to'),
    ]);
    expect(run('json=/dev/null', 'sarif=/dev/null').status).not.toBe(2);
    // Folders that both lack are made once.
    for (const each of ['one', 'other', 'third'])
      expect(run(`json=${at(`${each}/r/s/gate.json`)}`, `sarif=${at(`${each}/gate.sarif`)}`).status).not.toBe(
        2,
      );
  });

  it('ends at once where a report cannot be written, and says which', () => {
    const repository = grown();
    const at = (name: string): string => join(repository.dir, '.git', name);
    const pipe = at('pipe');
    spawnSync('mkfifo', [pipe]);
    mkdirSync(at('folder'));
    for (const path of [pipe, at('folder'), at('HEAD/below')]) {
      const { status, stdout, stderr } = spawnSync(
        process.execPath,
        [program, ...gate(repository), '--report', `json=${at('first.json')}`, '--report', `sarif=${path}`],
        { encoding: 'utf8', timeout: 20_000 },
      );
      expect([path, status]).toEqual([path, 2]);
      expect(stderr).toContain(`not judged: the report ${path} cannot be written`);
      expect(stdout).not.toContain('pass');
      // Nothing was judged, so there is no other report either.
      expect(existsSync(at('first.json'))).toBe(false);
    }
    const full = spawnSync(process.execPath, [program, ...gate(repository), '--report', 'json=/dev/full'], {
      encoding: 'utf8',
    });
    expect([full.status, full.stderr]).toEqual([
      2,
      expect.stringContaining('the report /dev/full cannot be written: no space is left on the disk'),
    ]);
  });
});
