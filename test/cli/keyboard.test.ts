/** What somebody at a keyboard has: words completed, files linked, a sign of life, a hook before each commit. */
import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, describe, expect, it } from 'vitest';
import { stillWorking } from '../../src/cli/edge.ts';
import { reportProblems } from '../../src/report/report.ts';
import { ruleNames } from '../../src/rules/registry.ts';
import { gannetPoint } from '../estate/builder.ts';
import {
  isolatedEnvironment,
  makeRepository,
  removeRepositories,
  type TestRepository,
} from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories, 60_000);

const program = join(import.meta.dirname, '../../dist/ullage.cjs');

/** A folder with the built command under its own name, for a shell to find. */
function onPath(repository: TestRepository): NodeJS.ProcessEnv {
  const bin = join(repository.dir, '.git/bin');
  mkdirSync(bin, { recursive: true });
  writeFileSync(join(bin, 'ullage'), `#!/bin/sh\nexec "${process.execPath}" "${program}" "$@"\n`);
  chmodSync(join(bin, 'ullage'), 0o755);
  const { PATH = '', ...rest } = isolatedEnvironment();
  return { ...rest, PATH: `${bin}:${PATH}` };
}

const has = (shell: string): boolean => spawnSync(shell, ['-c', 'true']).status === 0;

describe('completion', () => {
  const words = async (...line: readonly string[]): Promise<readonly string[]> =>
    (await ullage('complete', '--', ...line)).out
      .split('\n')
      .filter((each) => each !== '' && !each.startsWith(':'))
      .map((each) => each.split('\t')[0] ?? '');

  it('knows commands, options, the words an option takes, and every rule', async () => {
    expect(await words('')).toEqual(expect.arrayContaining(['gate', 'cost', 'survey', 'completion']));
    expect(await words('gate', '--f')).toEqual(['--format', '--fail-on']);
    expect(await words('gate', '--format', '')).toEqual(expect.arrayContaining(['text', 'sarif']));
    expect([...(await words('rules', ''))].sort()).toEqual([...ruleNames].sort());
    expect(await words('completion', '')).toEqual(expect.arrayContaining(['bash', 'zsh', 'fish']));
    expect(await words('completion', '')).not.toContain('powershell');
  });

  const typed = {
    bash: (script: string, line: readonly string[]) =>
      `source ${script}; COMP_WORDS=(${line.join(' ')}); COMP_CWORD=${line.length - 1}; _ullage; printf '%s\\n' "\${COMPREPLY[@]}"`,
    zsh: (script: string, line: readonly string[]) =>
      `compdef() { : }; source ${script}; _describe() { print -l -- "\${(@P)2}" }; _files() { : }; words=(${line.join(' ')}); CURRENT=${line.length}; _ullage`,
    fish: (script: string, line: readonly string[]) => `source ${script}; complete -C "${line.join(' ')}"`,
  } as const;

  it.each(['bash', 'zsh', 'fish'] as const)(
    'works in %s, and runs nothing of what is being typed',
    async (shell) => {
      if (!has(shell)) {
        console.info(`Completion is not tried in ${shell}: it is not installed.`);
        return;
      }
      const repository = makeRepository({ files: { 'README.md': 'words' }, message: 'a' });
      const script = join(repository.dir, '.git/script');
      writeFileSync(script, (await ullage('completion', shell)).out);
      const run = (line: readonly string[]): string =>
        execFileSync(shell, ['-c', typed[shell](script, line)], {
          cwd: repository.dir,
          env: onPath(repository),
          encoding: 'utf8',
        });
      const found = run(['ullage', 'gate', '--f']);
      expect(found).toMatch(/--format/);
      expect(found).toMatch(/--fail-on/);
      expect(found).not.toMatch(/--head/);
      expect(run(['ullage', 'rules', 'no-s'])).toMatch(/no-shrink/);
      const quoted = shell === 'fish' ? "'(touch pwned)'" : "'$(touch pwned)'";
      run(['ullage', 'gate', quoted, '--f']);
      expect(existsSync(join(repository.dir, 'pwned'))).toBe(false);
    },
  );
});

describe('what `ullage new` writes', () => {
  it('names its schema to editors, and the schema is there and knows every rule', async () => {
    const repository = makeRepository();
    await ullage('new', '--repo', repository.dir, '--now', '2026-11-20');
    const files = ['ullage.yaml', 'storage/example.yaml', 'prices/2026.yaml', 'policies/storage.yaml'];
    for (const file of files) {
      const [first = ''] = readFileSync(join(repository.dir, file), 'utf8').split('\n');
      // Source of the form: the README of the YAML language server, "Using inlined schema".
      const [, schema = ''] = /^# yaml-language-server: \$schema=(\S+)$/.exec(first) ?? [];
      const path = join(repository.dir, file, '..', schema);
      const { properties } = JSON.parse(readFileSync(path, 'utf8'));
      expect(Object.keys(properties).length).toBeGreaterThan(1);
    }
    const pack = JSON.parse(readFileSync(join(repository.dir, '.ullage/schema/rule-pack.json'), 'utf8'));
    const named = pack.$defs.entry.oneOf.map(
      (each: { properties: { rule: { const: string } } }) => each.properties.rule.const,
    );
    expect([...named].sort()).toEqual([...ruleNames].sort());
    // An editor offers of a choice only what fits already: the list beside it has them all.
    expect([...pack.$defs.entry.properties.rule.enum].sort()).toEqual([...ruleNames].sort());
    // Whatever one schema refers to in another file is beside it.
    for (const name of ['estate', 'settings', 'price-list', 'rule-pack', 'waivers', 'procedure']) {
      const text = readFileSync(join(repository.dir, `.ullage/schema/${name}.json`), 'utf8');
      for (const [, file = ''] of text.matchAll(/"\$ref": ?"([^"#]+)#/g)) {
        expect(existsSync(join(repository.dir, '.ullage/schema', file))).toBe(true);
      }
    }
  });
});

describe('the schemas for editors', () => {
  const path = '.ullage/schema/estate.json';
  const started = async () => {
    const repository = makeRepository();
    await ullage('new', '--repo', repository.dir, '--now', '2026-11-20');
    repository.commit('the layout');
    return repository;
  };
  const said = async (...args: readonly string[]) => (await ullage(...args)).err;
  const stale = 'are of another version of Ullage';

  it('that are of another version are remarked, and written anew when that is asked for', async () => {
    const { dir } = await started();
    const whole = readFileSync(join(dir, path), 'utf8');
    const commands = [
      ['gate', '--base', 'main', '--repo', dir],
      ['policy', 'check', '--repo', dir],
    ];
    for (const command of commands) expect(await said(...command)).not.toContain(stale);
    // Git may check out other ends of line.
    writeFileSync(join(dir, path), whole.replaceAll('\n', '\r\n'));
    for (const command of commands) expect(await said(...command)).not.toContain(stale);
    writeFileSync(join(dir, path), whole.replace('shareable', 'shared'));
    writeFileSync(join(dir, 'storage/example.yaml'), '# ours\n');
    for (const command of commands) expect(await said(...command)).toContain(stale);
    expect((await ullage('new', '--schemas', '--repo', dir)).code).toBe(0);
    expect(readFileSync(join(dir, path), 'utf8')).toBe(whole);
    expect(readFileSync(join(dir, 'storage/example.yaml'), 'utf8')).toBe('# ours\n');
  });

  it('are nowhere missed by who has none', async () => {
    const repository = await started();
    repository.remove('.ullage');
    repository.commit('no schemas');
    expect(await said('policy', 'check', '--repo', repository.dir)).toBe('');
  });

  it('are never written through a link that a branch brought', async () => {
    const repository = await started();
    const elsewhere = join(repository.dir, '.git/elsewhere');
    mkdirSync(elsewhere);
    writeFileSync(join(elsewhere, 'kept'), 'kept');
    repository.remove(path);
    symlinkSync(join(elsewhere, 'kept'), join(repository.dir, path));
    expect((await ullage('new', '--schemas', '--repo', repository.dir)).code).toBe(0);
    expect(readFileSync(join(elsewhere, 'kept'), 'utf8')).toBe('kept');
    repository.remove('.ullage/schema');
    symlinkSync(elsewhere, join(repository.dir, '.ullage/schema'));
    const { code, err } = await ullage('new', '--schemas', '--repo', repository.dir);
    expect([code, err]).toEqual([2, expect.stringContaining('.ullage/schema is a link to elsewhere')]);
    expect(readdirSync(elsewhere)).toEqual(['kept']);
  });
});

describe('a place', () => {
  const problem = {
    place: { file: 'storage/a b.yaml', line: 7, column: 3 },
    message: 'tire is not a key of a volume',
    advice: 'Did you mean tier?',
  };

  it('is a link to its file where the terminal follows links, and shows the same otherwise', () => {
    const screen = { width: 80, colour: false };
    const plain = reportProblems([problem], screen);
    const linked = reportProblems([problem], { ...screen, links: 'file:///srv/estate/' });
    expect(linked).toContain(
      '\u001b]8;;file:///srv/estate/storage/a%20b.yaml\u001b\\storage/a b.yaml:7:3\u001b]8;;\u001b\\',
    );
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the escapes are what is looked for.
    expect(linked.replace(/\u001b\]8;;.*?\u001b\\/g, '')).toBe(plain);
  });

  it('that names a hostile file ends no link early', () => {
    const file = 'a\u001b\\\u0007\n\ud800.yaml';
    const linked = reportProblems([{ ...problem, place: { ...problem.place, file } }], {
      width: 120,
      colour: false,
      links: 'file:///srv/',
    });
    expect(linked.split('\u001b').length - 1).toBe(4);
    expect(linked).not.toContain('\u0007');
  });
});

describe('a sign of life', () => {
  const stream = (isTTY: boolean) => {
    const written: string[] = [];
    // As much of a terminal as is written to.
    const fake = Object.assign(Object.create(process.stderr), {
      isTTY,
      write: (text: string) => written.push(text) > 0,
    });
    return { written, fake };
  };

  it('is written to a terminal after two seconds, and taken back', async () => {
    const { written, fake } = stream(true);
    const working = stillWorking('ullage gate', fake, {});
    await sleep(2_300);
    working.stop();
    expect(written[0]).toBe('\rullage gate: working for 2 s\u001b[K');
    expect(written.at(-1)).toBe('\r\u001b[K');
  });

  it('is nothing where the work is short, where there is no terminal, and where it is a dumb one', async () => {
    const [short, pipe, dumb] = [stream(true), stream(false), stream(true)];
    stillWorking('ullage gate', short.fake, {}).stop();
    const others = [stillWorking('a', pipe.fake, {}), stillWorking('a', dumb.fake, { TERM: 'dumb' })];
    await sleep(2_300);
    for (const each of others) each.stop();
    expect([short.written, pipe.written, dumb.written]).toEqual([[], [], []]);
  });
});

describe('a hook before each commit', () => {
  it('as the documentation has it stops a commit that fails or cannot be judged, and lets another be made', async () => {
    const documentation = readFileSync(join(import.meta.dirname, '../../src/cli/README.md'), 'utf8');
    const [, hook = ''] =
      /```sh\n(#!\/bin\/sh\n# \.git\/hooks\/pre-commit\n[\s\S]*?)```/.exec(documentation) ?? [];
    expect(hook).toContain('--worktree');
    const estate = (size: string): string => `volumes:\n  plates-1: { size: ${size}, tier: bulk }\n`;
    const repository = makeRepository({
      files: { ...gannetPoint, 'storage/a.yaml': estate('40 GiB') },
      message: 'the estate',
    });
    mkdirSync(join(repository.dir, '.git/hooks'), { recursive: true });
    writeFileSync(join(repository.dir, '.git/hooks/pre-commit'), hook);
    chmodSync(join(repository.dir, '.git/hooks/pre-commit'), 0o755);
    const env = onPath(repository);
    const commit = (size: string) => {
      repository.write({ 'storage/a.yaml': estate(size) });
      const ran = spawnSync('git', ['commit', '--all', '--message', size], {
        cwd: repository.dir,
        env,
        encoding: 'utf8',
      });
      return { code: ran.status, said: `${ran.stdout}${ran.stderr}` };
    };
    repository.branch('proposal');
    expect(commit('39 GiB')).toMatchObject({ code: 1, said: expect.stringContaining('no-shrink') });
    expect(commit('39')).toMatchObject({ code: 1, said: expect.stringContaining('not judged') });
    expect(commit('41 GiB').code).toBe(0);
    expect(repository.git('log', '-1', '--format=%s')).toBe('41 GiB');
  });
});
