/** What is published: packed in a copy of the sources that nothing was built in, and used in an empty folder. */
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { builtinModules } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ullage } from './cli/run.ts';
import { makeRepository, removeRepositories } from './repository.ts';

const top = join(import.meta.dirname, '..');
const folder = mkdtempSync(join(tmpdir(), 'ullage-test-package-'));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  removeRepositories();
});

interface PackageJson {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly bin: Readonly<Record<string, string>>;
}

const declared: PackageJson = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8'));
const installed = join(folder, 'site/node_modules/ullage');

const run = (program: string, args: readonly string[], cwd: string): string =>
  execFileSync(program, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

beforeAll(() => {
  // As a fresh clone has it: every file that git would keep, and none that a build has made.
  const clone = join(folder, 'clone');
  const files = run('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], top).split('\0');
  for (const file of files.filter((each) => each !== '' && !/^\.github\/action\/(?!README)/.test(each))) {
    mkdirSync(dirname(join(clone, file)), { recursive: true });
    try {
      cpSync(join(top, file), join(clone, file));
    } catch {
      // Deleted, and not committed yet.
    }
  }
  symlinkSync(join(top, 'node_modules'), join(clone, 'node_modules'));
  run('npm', ['pack', '--pack-destination', folder], clone);
  const [packed = ''] = readdirSync(folder).filter((name) => name.endsWith('.tgz'));
  mkdirSync(installed, { recursive: true });
  run('tar', ['-xzf', join(folder, packed), '--strip-components=1', '-C', installed], folder);
  // As a package manager would, with nothing but what is declared, and without going to the network for it.
  for (const name of Object.keys(declared.dependencies)) {
    const at = join(folder, 'site/node_modules', name);
    mkdirSync(dirname(at), { recursive: true });
    symlinkSync(join(top, 'node_modules', name), at);
  }
  writeFileSync(join(folder, 'site/package.json'), '{ "type": "module" }\n');
  // What the examples are run in.
  const { pack, small, large } = strict;
  const plates = makeRepository({
    files: { ...pack, 'policies/storage.yaml': 'use: [starter]\n', 'storage/a.yaml': large },
  });
  plates.branch('smaller-plates');
  plates.write({ 'storage/a.yaml': small });
  plates.commit('smaller');
  cpSync(plates.dir, join(folder, 'site/plates'), { recursive: true });
}, 60_000);

const office = `
import { judge, readFiles, sidesOf } from 'ullage';

const files = (size) => ({
  'ullage.yaml': 'currency: EUR\\n',
  'storage/a.yaml': \`volumes:\\n  plates-1: { size: \${size}, tier: bulk, retain-until: 2030-01-01, reason: kept }\\n\`,
  'prices/2026.yaml': 'from: 2026-01-01\\ncurrency: EUR\\ntiers:\\n  bulk: { rate: "0.045", per: GiB-month }\\n',
  'policies/storage.yaml': 'use: [starter]\\n',
});
const revision = async (size) => {
  const read = await readFiles(files(size), size);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
};
for (const [before, after] of [['40 GiB', '50 GiB'], ['50 GiB', '40 GiB']]) {
  const { verdict, cost } = judge(sidesOf(await revision(before), await revision(after)), { on: '2026-11-20' });
  console.log(verdict, String(cost.before), String(cost.after));
}
`;

/** A policy with a schema and a pattern, an estate with wide names, and readings. */
const strict = {
  pack: {
    'ullage.yaml': 'currency: EUR\n',
    'prices/2026.yaml':
      'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
    'policies/storage.yaml': `use: [starter]
rules:
  - { rule: naming, volume: "[a-z]+-[0-9]+" }
  - rule: shape
    of: volume
    message: a volume says what it is for
    schema: { required: [labels], properties: { labels: { required: [purpose] } } }
`,
    'readings/2026.csv':
      'server,mount,at,size,used,available\nplate-scanner,/plates,2026-11-18T06:00:00Z,100,10,90\n',
  },
  small: 'volumes:\n  plates-1: { size: 40 GiB, tier: bulk, retain-until: 2030-01-01, reason: 測量局 }\n',
  large: 'volumes:\n  plates-1: { size: 50 GiB, tier: bulk, retain-until: 2030-01-01, reason: 測量局 }\n',
};

describe('the packed package', () => {
  it('has every page and file that its pages link to', () => {
    const pages = readdirSync(installed, { recursive: true, encoding: 'utf8' }).filter((path) =>
      path.endsWith('.md'),
    );
    expect(pages).toContain('README.md');
    const dead = pages.flatMap((page) =>
      [...readFileSync(join(installed, page), 'utf8').matchAll(/\]\(([^)\s#]+)(?:#[^)\s]*)?\)/g)]
        .map(([, target = '']) => target)
        .filter((target) => !/^[a-z]+:/.test(target) && !existsSync(join(installed, dirname(page), target)))
        .map((target) => `${page}: ${target}`),
    );
    expect(dead).toEqual([]);
  });

  it('judges estates as a library', () => {
    writeFileSync(join(folder, 'site/office.js'), office);
    // A volume grows, and one shrinks: 40 and 50 GiB at 0.045 each a month.
    expect(run(process.execPath, ['office.js'], join(folder, 'site'))).toBe('pass 1.8 2.25\nfail 2.25 1.8\n');
  });

  // Without Node's types and without passing over what declarations say: as strict as anybody may be.
  it.each([
    ['node16', 'node16'],
    ['nodenext', 'nodenext'],
    ['esnext', 'bundler'],
  ])('declares its types for the modules %s, resolved as %s', (module, resolution) => {
    const source = `import { judgeFiles, judgeRepository, readFiles, reportJson, type Finding, type Judgement } from 'ullage';
      import * as ullage from 'ullage';
      export const failing = (judgement: Judgement): readonly Finding[] =>
        judgement.verdict === 'not judged' ? [] : judgement.findings.filter(({ fails }) => fails);
      export const text = async (): Promise<string> =>
        reportJson(await judgeFiles({ 'ullage.yaml': 'currency: EUR' }, {}, { on: '2026-11-20' }));
      export async function size(): Promise<bigint | undefined> {
        const read = await readFiles({}, 'draft');
        return read.ok ? read.value.estate.volumes.get('plates-1')?.size : undefined;
      }
      // @ts-expect-error: a judgement is never any.
      export const wrong: Promise<number> = judgeRepository('.', { on: '2026-11-20' });
      // @ts-expect-error: how files are read is our own business.
      export const inner = ullage.readDocument;\n`;
    const file = `typed-${resolution}.ts`;
    writeFileSync(join(folder, 'site', file), source);
    const options = '--noEmit --strict --skipLibCheck false --target es2023 --types';
    const args = [...options.split(' '), '', '--module', module, '--moduleResolution', resolution, file];
    const { stdout, status } = spawnSync(
      process.execPath,
      [join(top, 'node_modules/typescript/bin/tsc'), ...args],
      { cwd: join(folder, 'site'), encoding: 'utf8' },
    );
    expect([status, stdout]).toEqual([0, '']);
  });

  describe('has an example for each function of the library, which', () => {
    const declarations = readFileSync(join(top, 'dist/index.d.ts'), 'utf8');
    const functions = [
      ...declarations.matchAll(
        /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\n(?:export )?declare (?:function|const) (\w+)/g,
      ),
    ].flatMap(([, comment = '', name = '']) => {
      const example = /@example\s+\* ```js\n([\s\S]*?)\* ```/.exec(comment)?.[1];
      return example === undefined ? [] : [[name, example.replaceAll(/^ \* ?/gm, '').trimEnd()] as const];
    });

    it('is none short', () => {
      const code = "console.log(Object.keys(await import('ullage')).join(' '))";
      const exported = run(process.execPath, ['--input-type=module', '-e', code], join(folder, 'site'));
      expect(functions.map(([name]) => name).sort()).toEqual(exported.trim().split(' ').sort());
    });

    it.each(functions)('does as it says: %s', (name, example) => {
      writeFileSync(join(folder, `site/example-${name}.js`), example);
      const says = [...example.matchAll(/console\.log\(.*\); \/\/ (.*)$/gm)].map(([, said]) => said);
      expect(says.length).toBeGreaterThan(0);
      const cwd = join(folder, 'site/plates');
      const printed = run(process.execPath, [join('..', `example-${name}.js`)], cwd);
      expect(printed).toBe(`${says.join('\n')}\n`);
    });
  });

  it('needs the packages that it declares, all of them and no others', () => {
    const library = readdirSync(join(installed, 'dist'), { recursive: true, encoding: 'utf8' }).filter(
      (file) => file.endsWith('.js'),
    );
    const imported = library.flatMap((file) =>
      [
        ...readFileSync(join(installed, 'dist', file), 'utf8').matchAll(
          /(?:^|[;\n])(?:import|export)(?:[\s\w*{}$,]*from)?\s*"([^".][^"]*)"/g,
        ),
      ].flatMap(([, name = '']) => /^(?:@[^/]+\/)?[^/]+/.exec(name)?.[0] ?? []),
    );
    const packages = new Set(
      imported.filter((name) => !name.startsWith('node:') && !builtinModules.includes(name)),
    );
    expect([...packages].sort()).toEqual(Object.keys(declared.dependencies).sort());
  });

  it('names the licence of everything in its bundles, and lists it in its bill of materials', () => {
    const notices = readFileSync(join(installed, 'dist/THIRD-PARTY-NOTICES.txt'), 'utf8');
    const named = [...notices.matchAll(/^(\S+) (\d\S*) \((.+)\)$/gm)].map(
      ([, name, version]) => `${name}@${version}`,
    );
    const bom: {
      readonly bomFormat: string;
      readonly metadata: { readonly component: { readonly name: string } };
      readonly components: readonly {
        readonly 'bom-ref': string;
        readonly scope: string;
        readonly hashes: readonly unknown[];
        readonly licenses: readonly unknown[];
      }[];
    } = JSON.parse(readFileSync(join(installed, 'dist/sbom.cdx.json'), 'utf8'));
    expect([bom.bomFormat, bom.metadata.component.name]).toEqual(['CycloneDX', 'ullage']);
    expect([...new Set(bom.components.map((each) => each['bom-ref']))].sort()).toEqual(
      [...new Set(named)].sort(),
    );
    for (const { scope, hashes, licenses } of bom.components) {
      expect([scope, hashes.length > 0, licenses.length > 0]).toEqual(['required', true, true]);
    }
    // What a reader would look for: the words of the licences themselves, once a package.
    const terms = notices.match(
      /Permission is hereby granted|Permission to use, copy, modify|Redistribution and use|Apache License/g,
    );
    expect(terms?.length).toBeGreaterThanOrEqual(named.length);
    expect(named.length).toBeGreaterThan(20);
  });

  it('runs its command', () => {
    const command = join(installed, declared.bin.ullage ?? '');
    expect(run(process.execPath, [command, 'new', '--repo', join(folder, 'new')], folder)).toContain(
      'ullage.yaml',
    );
    run('git', ['init', '--quiet', '--initial-branch=main', join(folder, 'new')], folder);
    expect(run(process.execPath, [command, 'cost', '--repo', join(folder, 'new')], folder)).toContain('EUR');
  });

  it('is installed and run by the plain shell of the documentation, where there is nothing but Node and Git', () => {
    const page = readFileSync(join(top, '.github/action/README.md'), 'utf8');
    const [, script = ''] = /```sh\n(#!\/bin\/sh\n# storage-gate\.sh\n[\s\S]*?)```/.exec(page) ?? [];
    const { pack, small, large } = strict;
    // The rules are kept in a repository of their own, which the script fetches.
    const rules = 'use: [starter]\n';
    const fleet = makeRepository({ files: { 'policies/fleet.yaml': rules } });
    const held = {
      repository: `file://${fleet.dir}`,
      commit: fleet.git('rev-parse', 'HEAD'),
      path: 'policies/fleet.yaml',
      sha256: createHash('sha256').update(rules).digest('hex'),
    };
    const plain = {
      ...pack,
      'ullage.yaml': `${pack['ullage.yaml']}packs: { fleet: ${JSON.stringify(held)} }\n`,
      'policies/storage.yaml': 'use: [fleet]\n',
    };
    const origin = makeRepository({ files: { ...plain, 'storage/a.yaml': large } });
    origin.branch('smaller');
    origin.write({ 'storage/a.yaml': small });
    origin.commit('smaller');
    const [packed = ''] = readdirSync(folder).filter((name) => name.endsWith('.tgz'));
    const home = join(folder, 'empty-home');
    mkdirSync(home);
    const gate = (branch: string) => {
      const checkout = join(folder, `checkout-${branch}`);
      run('git', ['clone', '--quiet', '--branch', branch, origin.dir, checkout], folder);
      writeFileSync(join(home, 'storage-gate.sh'), script);
      const { status } = spawnSync('sh', [join(home, 'storage-gate.sh')], {
        cwd: checkout,
        // What npm itself is told, so that it asks the registry that this machine uses, and only for what it lacks.
        env: {
          PATH: process.env.PATH,
          HOME: home,
          ULLAGE: join(folder, packed),
          npm_config_prefer_offline: 'true',
          npm_config_cache: run('npm', ['config', 'get', 'cache'], folder).trim(),
          ...(process.env.NODE_EXTRA_CA_CERTS
            ? { NODE_EXTRA_CA_CERTS: process.env.NODE_EXTRA_CA_CERTS }
            : {}),
          npm_config_registry: run('npm', ['config', 'get', 'registry'], folder).trim(),
        },
      });
      return { status, written: readdirSync(join(checkout, 'out')).sort(), checkout };
    };
    const written = ['gate.json', 'gate.md', 'gate.sarif', 'gate.xml'];
    expect(gate('main')).toMatchObject({ status: 0, written });
    const smaller = gate('smaller');
    expect(smaller).toMatchObject({ status: 1, written });
    expect(readFileSync(join(smaller.checkout, 'out/gate.md'), 'utf8')).toContain('no-shrink');
  }, 120_000);

  it('says what its sources say, with all that is loaded when it is used', async () => {
    const { pack, small, large } = strict;
    const repository = makeRepository({ files: { ...pack, 'storage/a.yaml': small } });
    repository.branch('grow');
    repository.write({ 'storage/a.yaml': large });
    repository.commit('grow');
    const command = join(installed, declared.bin.ullage ?? '');
    const gate = ['gate', '--repo', repository.dir, '--base', 'main', '--now', '2026-11-20'];
    for (const args of [
      ...['text', 'markdown', 'json', 'sarif', 'junit', 'html'].map((format) => [
        ...gate,
        '--format',
        format,
      ]),
      ['cost', '--repo', repository.dir, '--now', '2026-11-20', '--format', 'csv'],
      ['reading', 'summary', '--repo', repository.dir],
      ['audit', '--repo', repository.dir],
      [...gate, '--worktree'],
    ]) {
      const { status, stdout } = spawnSync(process.execPath, [command, ...args], { encoding: 'utf8' });
      const { code, out } = await ullage(...args);
      expect([args, status, stdout]).toEqual([args, code, out]);
      expect([args, code]).not.toEqual([args, 2]);
    }
  });

  it('loads no part of its command to print help', async () => {
    const alone = join(folder, 'alone.cjs');
    cpSync(join(installed, declared.bin.ullage ?? ''), alone);
    for (const args of [['--help'], ['gate', '--help'], ['help', 'audit'], ['--version']]) {
      expect(run(process.execPath, [alone, ...args], folder)).toBe((await ullage(...args)).out);
    }
    // What runs needs its part, and says so when it is not there; it does not pass.
    const { status, stderr } = spawnSync(process.execPath, [alone, 'rules'], { encoding: 'utf8' });
    expect([status, stderr]).toEqual([2, expect.stringContaining('parts/rules')]);
  });
});

it('nothing that is installed asks for a newer Node than this does', () => {
  const { packages }: { packages: Readonly<Record<string, { engines?: { node?: string } }>> } = JSON.parse(
    readFileSync(join(top, 'package-lock.json'), 'utf8'),
  );
  const oldest = Number(/[0-9]+/.exec(packages['']?.engines?.node ?? '')?.[0]);
  expect(oldest).toBe(20);
  // One of the alternatives of a range takes it, by its major version.
  const takes = (range: string): boolean =>
    range.split('||').some((each) => {
      const [, from, major] = /^\s*(>=|\^|~|>)?\s*v?([0-9]+|\*)/.exec(each) ?? [];
      return (
        major === '*' || (from === '>=' || from === '>' ? Number(major) <= oldest : Number(major) === oldest)
      );
    });
  const refusing = Object.entries(packages).flatMap(([name, { engines }]) =>
    engines?.node === undefined || takes(engines.node) ? [] : [`${name}: ${engines.node}`],
  );
  expect(refusing).toEqual([]);
});
