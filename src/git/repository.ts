/**
 * One Git repository, read and never written.
 *
 * Objects are read from a scratch repository in a temporary folder, which borrows the objects of the real one
 * and has none of its settings. So whatever the real one configures (merge drivers, external diffs, hooks,
 * replaced or grafted commits, a remote to fetch missing objects from) is not there to run, and the merge result
 * is written to the scratch repository: a read-only checkout will do, and nothing is left behind in it.
 * The real repository is asked only for what objects cannot tell: what a ref points at, and what lies in the
 * work tree.
 */
import { rmSync } from 'node:fs';
import { mkdtemp, readFile, realpath, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative, sep } from 'node:path';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { type Commit, parseCommit } from './commit.ts';
import { isObjectId, largestFile, ObjectStore } from './object-store.ts';
import {
  type Environment,
  type GitRun,
  gitFailed,
  gitProblem,
  gitSaid,
  hardenedEnvironment,
  runGit,
  settingsFree,
  shellWord,
  startGit,
} from './process.ts';
import { RevisionTree } from './revision-tree.ts';
import { shown, type Tree, type TreeLabel } from './tree.ts';
import { WorkTree } from './worktree.ts';

export interface OpenOptions {
  /** The machine's environment; what git needs of it is passed on, and nothing else. */
  readonly environment?: Environment;
  /** The largest file read, in bytes. */
  readonly largestFile?: number;
}

interface Parts {
  readonly dir: string;
  readonly scratch: string;
  readonly environment: NodeJS.ProcessEnv;
  readonly objectFormat: ObjectFormat;
  readonly bare: boolean;
  readonly shallow: ReadonlySet<string>;
  readonly largestFile: number;
}

export type ObjectFormat = 'sha1' | 'sha256';

export class GitRepository {
  /** Where it was opened: the top of the work tree or a folder in it. */
  readonly dir: string;
  readonly objectFormat: ObjectFormat;
  /** Commits whose parents this clone does not hold; empty in a clone with its whole history. */
  readonly shallow: ReadonlySet<string>;
  readonly #parts: Parts;
  readonly #objects: ObjectStore;
  readonly #removeScratch: () => void;

  private constructor(parts: Parts) {
    this.dir = parts.dir;
    this.objectFormat = parts.objectFormat;
    this.shallow = parts.shallow;
    this.#parts = parts;
    this.#objects = new ObjectStore(
      () => startGit(['cat-file', '--batch-command', '--buffer'], this.#objectCall()),
      parts.largestFile,
    );
    this.#removeScratch = () => rmSync(parts.scratch, { recursive: true, force: true });
    process.once('exit', this.#removeScratch);
  }

  /** Opens the repository that a folder is in. Close it when done: it keeps a git running and a temporary folder. */
  static async open(dir: string, options: OpenOptions = {}): Promise<Outcome<GitRepository>> {
    const environment = hardenedEnvironment(options.environment ?? process.env);
    const place = await stat(dir).catch(() => undefined);
    if (!place?.isDirectory()) {
      return err({
        message: `there is no folder ${shown(dir)}`,
        advice: 'Name the repository with --repo DIR.',
      });
    }
    const call = { cwd: dir, environment };
    const [tooOld, asked] = await Promise.all([
      gitProblem(call),
      runGit(
        [
          'rev-parse',
          '--path-format=absolute',
          '--show-object-format',
          '--is-shallow-repository',
          '--is-bare-repository',
          '--git-path',
          'objects',
          '--git-path',
          'shallow',
        ],
        call,
      ),
    ]);
    if (tooOld !== undefined) return err(tooOld);
    if (!asked.ok) return asked;
    if (asked.value.code !== 0) return err(cannotOpen(dir, asked.value));
    const lines = asked.value.stdout
      .toString('utf8')
      .replace(/\r?\n$/, '')
      .split(/\r?\n/);
    const [objectFormat, isShallow, isBare, objects, shallowFile] = lines;
    if (lines.length !== 5 || objects === undefined || shallowFile === undefined) {
      return err({
        message: 'the path of the repository holds a line feed',
        advice: 'Clone it into a folder with a plain name.',
      });
    }
    if (objectFormat !== 'sha1' && objectFormat !== 'sha256') {
      return err({
        message: `the repository's object format ${shown(objectFormat ?? '')} is not known`,
        advice: 'sha1 and sha256 are.',
      });
    }
    const shallowText = isShallow === 'true' ? await readFile(shallowFile, 'latin1').catch(() => '') : '';
    const scratch = await makeScratch({ objects, objectFormat, shallowText, environment });
    if (!scratch.ok) return scratch;
    return ok(
      new GitRepository({
        dir,
        scratch: scratch.value,
        environment,
        objectFormat,
        bare: isBare === 'true',
        shallow: new Set(shallowText.split('\n').filter(isObjectId)),
        largestFile: options.largestFile ?? largestFile,
      }),
    );
  }

  async close(): Promise<void> {
    this.#objects.close();
    process.removeListener('exit', this.#removeScratch);
    // A handful of small files: quicker gone at once than by way of the thread pool.
    rmSync(this.#parts.scratch, { recursive: true, force: true, maxRetries: 3 });
  }

  /** The id of the commit that a branch, a tag or an id names, as a person writes it. */
  async resolveCommit(ref: string): Promise<Outcome<string>> {
    const bad = badRef(ref);
    if (bad !== undefined) return err(bad);
    const [plain, meanings] = await Promise.all([
      this.commitAt(ref),
      this.#meanings(ref.replace(/[~^].*$/, '')),
    ]);
    // Git takes a tag before a branch, so whoever may push a tag `main` could choose what is judged against.
    if (!meanings.ok) return meanings;
    if (new Set(meanings.value.values()).size > 1) {
      return err({
        message: `${shown(ref)} has more than one meaning here`,
        advice: `Say which one is meant: ${[...meanings.value.keys()].map(shown).join(' or ')}.`,
      });
    }
    return plain === undefined ? err(this.#noCommit(ref)) : ok(plain);
  }

  /** As `resolveCommit`, for a ref that is known to be well formed; undefined where there is none. */
  async commitAt(ref: string): Promise<string | undefined> {
    const run = await this.inRepository([
      'rev-parse',
      '--verify',
      '--quiet',
      '--end-of-options',
      `${ref}^{commit}`,
    ]);
    const id = run.ok && run.value.code === 0 ? run.value.stdout.toString('latin1').trim() : '';
    return isObjectId(id) ? id : undefined;
  }

  /** A commit's own words; a problem when this clone does not hold it. */
  async commit(id: string): Promise<Outcome<Commit>> {
    const content = await this.#objects.read(id, 'commit', `the commit ${id}`);
    return content.ok ? parseCommit(id, content.value) : content;
  }

  /** Whether this clone holds an object. */
  async holds(id: string): Promise<boolean> {
    const header = await this.#objects.header(id);
    return header.ok && header.value.kind === 'present';
  }

  /** The files of a tree object. */
  tree(tree: string, label: TreeLabel): Tree {
    return new RevisionTree(tree, label, this.#objects, (args) => this.inObjects(args));
  }

  /** The files on the disk; a problem in a bare repository. */
  async workTree(): Promise<Outcome<Tree>> {
    const top = this.#parts.bare ? undefined : await this.inRepository(['rev-parse', '--show-toplevel']);
    if (top !== undefined && !top.ok) return top;
    if (top === undefined || top.value.code !== 0) {
      return err({
        message: 'there is no work tree here, so there are no uncommitted files',
        advice: 'Run this in a checkout, or name a branch with --head.',
      });
    }
    const path = top.value.stdout.toString('utf8').replace(/\r?\n$/, '');
    const [real, here] = await Promise.all([realpath(path).catch(() => ''), realpath(this.dir)]);
    const below = relative(real, here);
    // The setting core.worktree can name any folder of the machine.
    if (real === '' || below === '..' || below.startsWith(`..${sep}`)) {
      return err({
        message: `the repository keeps its work tree elsewhere, in ${shown(path)}`,
        advice: 'Run this in that folder.',
      });
    }
    return ok(
      new WorkTree(real, this.objectFormat, this.#parts.largestFile, (args) =>
        runGit(args, { cwd: real, environment: this.#parts.environment }),
      ),
    );
  }

  /** Runs git on the real repository; only for refs, the index and the work tree. */
  inRepository(args: readonly string[]): Promise<Outcome<GitRun>> {
    return runGit(args, { cwd: this.dir, environment: this.#parts.environment });
  }

  /** Runs git on the objects, where no setting of the repository, the person or the machine is seen. */
  inObjects(args: readonly string[]): Promise<Outcome<GitRun>> {
    return runGit(args, this.#objectCall());
  }

  /** As `inObjects`, left running. */
  startInObjects(args: readonly string[]) {
    return startGit(args, this.#objectCall());
  }

  /** The refs that a short name can stand for, and the commit or other object each leads to. */
  async #meanings(name: string): Promise<Outcome<ReadonlyMap<string, string>>> {
    const meanings = new Map<string, string>();
    if (/^[A-Z_]*HEAD$/.test(name) || name.startsWith('refs/') || isObjectId(name)) return ok(meanings);
    const full = ['refs/', 'refs/tags/', 'refs/heads/', 'refs/remotes/'].map((place) => `${place}${name}`);
    const run = await this.inRepository([
      'for-each-ref',
      '--format=%(refname) %(objectname) %(*objectname)',
      ...full,
    ]);
    if (!run.ok) return run;
    if (run.value.code !== 0) return err(gitFailed(`tell what ${shown(name)} means`, run.value));
    for (const line of run.value.stdout.toString('utf8').split('\n')) {
      const [ref = '', id = '', peeled] = line.split(' ');
      if (full.includes(ref)) meanings.set(ref, peeled || id);
    }
    return ok(meanings);
  }

  #objectCall() {
    const { scratch, environment } = this.#parts;
    return { cwd: scratch, environment: { ...settingsFree(environment), GIT_DIR: scratch } };
  }

  #noCommit(ref: string): Problem {
    const remote = /^(?:refs\/remotes\/)?origin\/(.+)$/.exec(ref)?.[1];
    const local = ref.replace(/^refs\/heads\//, '');
    const source = isObjectId(ref)
      ? ref
      : remote === undefined
        ? `${local}:${local}`
        : `${remote}:refs/remotes/origin/${remote}`;
    const fetch = [
      'git fetch',
      ...(this.shallow.size > 0 ? ['--unshallow'] : []),
      'origin',
      shellWord(shown(source)),
    ];
    return {
      message: `there is no commit ${shown(ref)} in this clone`,
      advice: /[~^]|HEAD$/.test(ref)
        ? `See that there is such a commit; ${this.shallow.size > 0 ? 'this clone is shallow, and `git fetch --unshallow origin` fetches the rest' : '`git log` shows them'}.`
        : `See that the name is right, and fetch it with \`${fetch.join(' ')}\`; in CI, check out with fetch depth 0.`,
    };
  }
}

interface ScratchOf {
  readonly objects: string;
  readonly objectFormat: ObjectFormat;
  readonly shallowText: string;
  readonly environment: NodeJS.ProcessEnv;
}

async function makeScratch({
  objects,
  objectFormat,
  shallowText,
  environment,
}: ScratchOf): Promise<Outcome<string>> {
  let scratch: string;
  try {
    scratch = await mkdtemp(join(tmpdir(), 'ullage-'));
  } catch (error) {
    return err({
      message: `no temporary folder can be made in ${tmpdir()} (${error instanceof Error ? error.message : error})`,
      advice: 'Make room there, or point TMPDIR at a folder that can be written to.',
    });
  }
  const made = await runGit(
    ['init', '--quiet', '--bare', '--template=', `--object-format=${objectFormat}`, scratch],
    { cwd: scratch, environment: settingsFree(environment) },
  );
  if (!made.ok || made.value.code !== 0) {
    rmSync(scratch, { recursive: true, force: true });
    return made.ok ? err(gitFailed('make a temporary repository', made.value)) : made;
  }
  // Quoted, because a bare path may not begin with a number sign or a quote.
  const quoted = `"${objects.replace(/["\\]/g, '\\$&')}"\n`;
  await writeFile(join(scratch, 'objects', 'info', 'alternates'), quoted);
  if (shallowText !== '') await writeFile(join(scratch, 'shallow'), shallowText, 'latin1');
  return ok(scratch);
}

function cannotOpen(dir: string, { stderr }: GitRun): Problem {
  if (/dubious ownership|unsafe repository/.test(stderr)) {
    return {
      message: `the repository in ${shown(dir)} belongs to another user, and git does not trust it`,
      advice: `If you trust it, say so with \`git config --global --add safe.directory ${shellWord(shown(dir))}\`.`,
    };
  }
  if (/not a git repository/.test(stderr)) {
    return {
      message: `${shown(dir)} is in no Git repository`,
      advice: 'Run this in a checkout of the storage repository, or name it with --repo DIR.',
    };
  }
  return {
    message: `git cannot read the repository in ${shown(dir)}: ${gitSaid(stderr)}`,
    advice: 'Put right what git says, or clone afresh.',
  };
}

/** What of Git's revision syntax could be an option, a range, a search, or a file in place of a commit. */
function badRef(ref: string): Problem | undefined {
  const why =
    ref === ''
      ? 'is empty'
      : ref.startsWith('-')
        ? 'begins with -'
        : ref.startsWith('^')
          ? 'begins with ^'
          : /\s|\p{C}/u.test(ref)
            ? 'holds a space or a control character'
            : ['..', '@{', ':', '^{', '^@', '^!', '^-', '*', '?', '[', '\\'].find((part) =>
                ref.includes(part),
              );
  if (why === undefined) return undefined;
  return {
    message: `${ref === '' ? 'a ref' : shown(ref)} ${/^[a-z]/.test(why) ? why : `holds ${why}`}, so it names no single commit`,
    advice: 'Name a branch, a tag or a commit id, such as main or origin/main.',
  };
}
