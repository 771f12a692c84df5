/**
 * Writes `fixtures/manual-pages.json`: of every program that a shipped command runs, the options that its manual page
 * documents, with the Debian package and the version that the page came in.
 *
 *     npx tsx test/runbook/manual-pages.ts [PACKAGE.deb ...]
 *
 * Pages are read as they are installed; those that are not, from the packages named (`apt-get download` fetches them).
 * An option is what begins a line of the page, as options are listed there, or stands in its synopsis.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { shippedProcedures } from '../../src/runbook/generated/shipped.ts';
import { elsewhere, type ManualPage, pageOf } from './tools.ts';

const run = (program: string, ...args: readonly string[]): string =>
  execFileSync(program, args, {
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C', MANWIDTH: '100', MAN_KEEP_FORMATTING: '' },
    stdio: ['ignore', 'pipe', 'ignore'],
  });

interface Package {
  readonly name: string;
  readonly version: string;
  /** Of several packages that are built from one source. */
  readonly source: string;
}

/** `e2fsprogs 1.47.0-2+b2`: the source's name without the version that dpkg may put after it. */
const packageOf = (name: string, version: string, source: string): Package => ({
  name,
  version,
  source: source.split(' ')[0] || name,
});

interface Found {
  readonly file: string;
  readonly package: Package;
}

function installed(name: string, section: string): Found | undefined {
  const [file] =
    attempt(() => run('man', '--path', section, name))
      ?.trim()
      .split('\n') ?? [];
  if (file === undefined || file === '') return undefined;
  const owner = run('dpkg', '-S', file).split(':')[0] ?? '';
  const status = run('dpkg-query', '--status', owner);
  const field = (name: string): string => new RegExp(`^${name}: (.*)$`, 'm').exec(status)?.[1] ?? '';
  return { file, package: packageOf(owner, field('Version'), field('Source')) };
}

function attempt<T>(act: () => T): T | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}

const folder = mkdtempSync(join(tmpdir(), 'ullage-manual-'));
const unpacked = process.argv.slice(2).map((deb, index) => {
  const at = join(folder, `${index}`);
  run('dpkg-deb', '--extract', deb, at);
  const field = (name: string): string => run('dpkg-deb', '--field', deb, name).trim();
  return { at, package: packageOf(field('Package'), field('Version'), field('Source')) };
});

function inPackage(name: string, section: string): Found | undefined {
  for (const { at, package: its } of unpacked) {
    const file = join(at, 'usr/share/man', `man${section}`, `${name}.${section}.gz`);
    if (existsSync(file)) return { file, package: its };
  }
  return undefined;
}

function read(program: string, page: string): ManualPage {
  const [, name = '', section = ''] = /^(.+)\((\d)\)$/.exec(page) ?? [];
  const found = installed(name, section) ?? inPackage(name, section);
  if (found === undefined) throw new Error(`${page} of ${program} is not installed; name its package`);
  const text = run('man', '--no-hyphenation', '--no-justification', '--local-file', found.file);
  const listed = text.split('\n').filter((line) => /^\s*\[?-/.test(line));
  const synopsis = /\nSYNOPSIS\n([\s\S]*?)\n(?=[A-Z])/.exec(text)?.[1] ?? '';
  const all = (part: string, pattern: RegExp): readonly string[] =>
    [...part.matchAll(pattern)].flatMap(([, option]) => option ?? []);
  const options = [synopsis, ...listed].flatMap((part) => all(part, /(?<![\w-])(--?[A-Za-z][\w-]*)/g));
  return {
    page,
    package: found.package.name,
    version: found.package.version,
    source: found.package.source,
    options: [...new Set(options)].sort(),
    /** What is set within an option, as in `-m rmapbt=1`. */
    settings: [...new Set(all(text, /(?<![\w-])([a-z]\w+)=/g))].sort(),
  };
}

const pages = new Map<string, string>();
for (const { actions } of shippedProcedures)
  for (const procedure of Object.values(actions))
    for (const command of procedure.commands ?? [])
      if ('run' in command && !elsewhere.includes(`${command.run[0]}`)) pages.set(...pageOf(command));

const fixture = Object.fromEntries(
  [...pages].sort().map(([program, page]) => [program, read(program, page)]),
);
rmSync(folder, { recursive: true });
writeFileSync(
  join(import.meta.dirname, 'fixtures/manual-pages.json'),
  `${JSON.stringify(fixture, null, 1).replace(/\n {3}(?=["\]])/g, ' ')}\n`,
);
console.log(`${pages.size} manual pages`);
