/**
 * Real Git repositories in temporary folders, for tests.
 *
 * Nothing of the machine's own Git settings reaches them, and dates are fixed, so that the same story makes the
 * same commit ids on every machine.
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** Path from the top of the work tree -> what the file holds. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

export interface CommitOptions {
  /** RFC 3339; one minute after the commit before it if left out. */
  readonly date?: string;
  /** `Name <address>`. */
  readonly author?: string;
}

export interface TestRepository {
  /** The top of the work tree. */
  readonly dir: string;
  /** Runs git in the repository; its output without the last line feed. Throws when git fails. */
  git(...args: readonly string[]): string;
  /** Writes files to the work tree; nothing is committed. */
  write(files: Files): void;
  /** Removes files or folders from the work tree. */
  remove(...paths: readonly string[]): void;
  /** Commits all that is in the work tree, or an empty commit where nothing changed; the commit's id. */
  commit(message: string, options?: CommitOptions): string;
  /** Makes a branch here (or at `start`) and checks it out. */
  branch(name: string, start?: string): void;
  checkout(ref: string): void;
  /** Merges a branch into the one checked out, always with a merge commit; the commit's id. */
  merge(ref: string, options?: CommitOptions & { readonly message?: string }): string;
  /** The same again in another folder, work tree, branches and all. */
  copy(): TestRepository;
  /** A clone beside it; `args` go to `git clone`. */
  clone(...args: readonly string[]): TestRepository;
  cleanup(): void;
}

const made = new Set<string>();

/** Removes every repository that is left; for `afterAll(removeRepositories)`. */
export function removeRepositories(): void {
  for (const dir of made) rmSync(dir, { recursive: true, force: true, maxRetries: 3 });
  made.clear();
}

/** What each story left, by what it was told: built once in a process, and copied for whoever asks again. */
const models = new Map<string, TestRepository>();
process.once('exit', () => {
  for (const { dir } of models.values()) rmSync(dir, { recursive: true, force: true, maxRetries: 3 });
});

/** A repository of a story: `build` tells it the first time, and a copy of what it left serves from then on. */
export function copyOf(story: unknown, build: () => TestRepository): TestRepository {
  const key = createHash('sha256').update(JSON.stringify(story)).digest('hex');
  let model = models.get(key);
  if (model === undefined) {
    model = build();
    made.delete(model.dir);
    models.set(key, model);
  }
  return model.copy();
}

/** The machine's environment without what steers git, and with settings that are the same everywhere. */
export function isolatedEnvironment(): NodeJS.ProcessEnv {
  const kept = Object.entries(process.env).filter(([name]) => !name.startsWith('GIT_'));
  return {
    ...Object.fromEntries(kept),
    GIT_CONFIG_GLOBAL: '/dev/null',
    GIT_CONFIG_NOSYSTEM: '1',
    GIT_TERMINAL_PROMPT: '0',
    GIT_AUTHOR_NAME: 'Avery Tern',
    GIT_AUTHOR_EMAIL: 'avery@gannet-point.example',
    GIT_COMMITTER_NAME: 'Avery Tern',
    GIT_COMMITTER_EMAIL: 'avery@gannet-point.example',
    LC_ALL: 'C',
    TZ: 'UTC',
  };
}

function temporaryFolder(): string {
  const dir = mkdtempSync(join(tmpdir(), 'ullage-test-'));
  made.add(dir);
  return dir;
}

interface Beginning {
  readonly objectFormat?: 'sha1' | 'sha256';
  /** Committed first, where they are given. */
  readonly files?: Files;
  readonly message?: string;
}

/** A new repository with the branch `main`, and one commit where it begins with files. */
export function makeRepository(beginning: Beginning = {}): TestRepository {
  const { objectFormat = 'sha1', files, message = 'first' } = beginning;
  if (files === undefined) return copyOf(objectFormat, () => emptyRepository(objectFormat));
  const committed = (): TestRepository => {
    const repository = makeRepository({ objectFormat });
    repository.write(files);
    repository.commit(message);
    return repository;
  };
  // Bytes are some test's own, and may be many.
  const isText = Object.values(files).every((content) => typeof content === 'string');
  return isText ? copyOf(beginning, committed) : committed();
}

function emptyRepository(objectFormat: string): TestRepository {
  const repository = repositoryAt(temporaryFolder());
  const format = `--object-format=${objectFormat}`;
  repository.git('init', '--quiet', '--template=', '--initial-branch=main', format);
  return repository;
}

/** The commit that is checked out, as git's own files have it: no process is needed to read it. */
function headOf(dir: string): string {
  const read = (name: string): string => readFileSync(join(dir, '.git', name), 'utf8').trim();
  const head = read('HEAD');
  return head.startsWith('ref: ') ? read(head.slice('ref: '.length)) : head;
}

function repositoryAt(dir: string, begun = Date.parse('2026-01-01T09:00:00Z')): TestRepository {
  const settings = [
    '-c',
    'commit.gpgSign=false',
    '-c',
    'gc.auto=0',
    '-c',
    'protocol.file.allow=always',
    '-c',
    'maintenance.auto=false',
  ];
  let clock = begun;
  const run = (args: readonly string[], extra: NodeJS.ProcessEnv = {}): string =>
    execFileSync('git', [...settings, ...args], {
      cwd: dir,
      env: { ...isolatedEnvironment(), ...extra },
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
      maxBuffer: 64 * 1024 * 1024,
    }).replace(/\n$/, '');
  const dated = ({ date, author }: CommitOptions): NodeJS.ProcessEnv => {
    clock = date === undefined ? clock + 60_000 : Date.parse(date);
    const at = date ?? new Date(clock).toISOString();
    const named = author === undefined ? null : /^(.*?) *<(.*)>$/.exec(author);
    return {
      GIT_AUTHOR_DATE: at,
      GIT_COMMITTER_DATE: at,
      ...(named === null ? {} : { GIT_AUTHOR_NAME: named[1], GIT_AUTHOR_EMAIL: named[2] }),
    };
  };
  return {
    dir,
    git: (...args) => run(args),
    write(files) {
      for (const [path, content] of Object.entries(files)) {
        mkdirSync(dirname(join(dir, path)), { recursive: true });
        writeFileSync(join(dir, path), content);
      }
    },
    remove(...paths) {
      for (const path of paths) rmSync(join(dir, path), { recursive: true });
    },
    commit(message, options = {}) {
      run(['add', '--all']);
      run(['commit', '--quiet', '--allow-empty', '--message', message], dated(options));
      return headOf(dir);
    },
    branch: (name, start) => {
      run(['checkout', '--quiet', '-b', name, ...(start === undefined ? [] : [start])]);
    },
    checkout: (ref) => {
      run(['checkout', '--quiet', ref]);
    },
    merge(ref, { message, ...options } = {}) {
      run(['merge', '--quiet', '--no-ff', '--message', message ?? `merge ${ref}`, ref], dated(options));
      return headOf(dir);
    },
    copy() {
      const target = temporaryFolder();
      cpSync(dir, target, { recursive: true, preserveTimestamps: true, verbatimSymlinks: true });
      return repositoryAt(target, clock);
    },
    clone(...args) {
      const target = temporaryFolder();
      // A path would be cloned by hard links, and a depth ignored; a file URL is fetched as from a host.
      run(['clone', '--quiet', ...args, `file://${dir}`, target]);
      return repositoryAt(target);
    },
    cleanup() {
      rmSync(dir, { recursive: true, force: true, maxRetries: 3 });
      made.delete(dir);
    },
  };
}
