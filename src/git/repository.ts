/**
 * One Git repository, read and never written.
 *
 * Objects are read from a scratch repository in a temporary folder, which borrows the objects of the real one
 * and has none of its settings. So whatever the real one configures (merge drivers, external diffs, hooks,
 * replaced or grafted commits, a remote to fetch missing objects from) is not there to run, and the merge result
 * is written to the scratch repository: a read-only checkout will do, and nothing is left behind in it.
 * The real repository is asked only for what objects cannot tell: what a ref points at, and what lies in the
 * work tree. Each question costs a process, so they are asked together where they can be.
 */
import { readFile, realpath, stat } from 'node:fs/promises';
import { dirname, relative, resolve, sep } from 'node:path';
import { offer } from '../base/nearest.ts';
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
import { listRefs, noRefs, parseCommitName, type Refs, refsIn, spellings } from './refs.ts';
import { fileIn, RevisionTree } from './revision-tree.ts';
import { makeScratch, type ObjectFormat, removeScratch } from './scratch.ts';
import { type FileAt, shown, type Tree, type TreeLabel } from './tree.ts';

export interface OpenOptions {
  /** The machine's environment; what git needs of it is passed on, and nothing else. */
  readonly environment?: Environment;
  /** The largest file read, in bytes. */
  readonly largestFile?: number;
}

export interface Head {
  readonly commit: string;
  /** Whether it stands on a commit itself. What git does not say for sure counts as standing on a branch. */
  readonly on: 'branch' | 'commit';
}

interface Parts {
  readonly dir: string;
  readonly scratch: string;
  readonly environment: NodeJS.ProcessEnv;
  readonly layout: Layout;
  readonly shallow: ReadonlySet<string>;
  readonly largestFile: number;
}

export class GitRepository {
  /** Where it was opened: the top of the work tree or a folder in it. */
  readonly dir: string;
  readonly objectFormat: ObjectFormat;
  /** Commits whose parents this clone does not hold; empty in a clone with its whole history. */
  readonly shallow: ReadonlySet<string>;
  /** As it stood when the repository was opened; undefined before the first commit. */
  readonly head: Head | undefined;
  readonly #parts: Parts;
  readonly #objects: ObjectStore;
  readonly #removeScratch: () => void;

  private constructor(parts: Parts) {
    this.dir = parts.dir;
    this.objectFormat = parts.layout.objectFormat;
    this.shallow = parts.shallow;
    this.head = parts.layout.head;
    this.#parts = parts;
    this.#objects = new ObjectStore(
      {
        start: (args) => this.startInObjects(args),
        gitProblem: () => gitProblem(this.#objectCall()),
      },
      parts.largestFile,
    );
    this.#removeScratch = () => removeScratch(parts.scratch);
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
    const asked = await runGit(askLayout, call);
    if (!asked.ok) return asked;
    const layout =
      asked.value.code === 0 ? parseLayout(asked.value.stdout) : err(cannotOpen(dir, asked.value));
    if (!layout.ok) {
      const tooOld = await gitProblem(call);
      return tooOld === undefined ? layout : err(tooOld);
    }
    const { objects, shallowFile, objectFormat } = layout.value;
    const shallowText =
      shallowFile === undefined ? '' : await readFile(shallowFile, 'latin1').catch(() => '');
    const scratch = await makeScratch({ objects, objectFormat, shallowText });
    if (!scratch.ok) return scratch;
    return ok(
      new GitRepository({
        dir,
        scratch: scratch.value,
        environment,
        layout: layout.value,
        shallow: new Set(shallowText.split('\n').filter(isObjectId)),
        largestFile: options.largestFile ?? largestFile,
      }),
    );
  }

  async close(): Promise<void> {
    this.#objects.close();
    process.removeListener('exit', this.#removeScratch);
    this.#removeScratch();
  }

  /**
   * What refs point at; those that are not there are left out.
   *
   * @param patterns full names, or patterns with `*`
   */
  async refs(patterns: readonly string[]): Promise<Outcome<Refs>> {
    const run = await this.inRepository(listRefs(patterns));
    if (!run.ok) return run;
    if (run.value.code !== 0) return err(gitFailed('tell what the refs point at', run.value));
    return ok(refsIn(run.value.stdout));
  }

  /**
   * The id of the commit that a branch, a tag or an id names, as a person writes it.
   *
   * @param known what the refs that it can stand for point at, where they have been asked for
   */
  async resolveCommit(ref: string, known?: Refs): Promise<Outcome<string>> {
    const name = parseCommitName(ref);
    if (!name.ok) return name;
    const { start, steps } = name.value;
    if (start === 'HEAD' || start === '@') return this.#fromStart(this.head?.commit, steps, ref);
    if (isObjectId(start)) return this.#fromStart(start, steps, ref);
    // FETCH_HEAD and its like are no refs of any folder.
    const canBe = /^[A-Z_]*HEAD$/.test(start) ? [] : spellings(start);
    const refs = known === undefined && canBe.length > 0 ? await this.refs(canBe) : ok(known ?? noRefs);
    if (!refs.ok) return refs;
    const meanings = canBe.flatMap((spelling) => {
      const found = refs.value.get(spelling);
      return found === undefined ? [] : [{ spelling, id: found.id }];
    });
    const [first] = meanings;
    if (first === undefined) {
      // A full name is nothing but itself. Git knows other short ones: part of an id, what `git describe` says.
      const found = start.startsWith('refs/') ? undefined : await this.#asGitReadsIt(ref);
      return found === undefined ? err(this.#noCommit(ref, await this.#offerFor(start))) : ok(found);
    }
    // Git takes a tag before a branch, so whoever may push a tag `main` could choose what is judged against.
    const commits = await Promise.all(meanings.map(({ id }) => this.#objects.commitAt(id)));
    if (
      new Set(commits.map((commit, index) => (commit.ok && commit.value) || meanings[index]?.id)).size > 1
    ) {
      return err({
        message: `${shown(ref)} is ambiguous here`,
        advice: `Say which one is meant: ${meanings.map(({ spelling }) => shown(spelling)).join(' or ')}.`,
      });
    }
    return this.#fromStart(first.id, steps, ref);
  }

  /** The commit that a ref, given by its full name, leads to; undefined where there is none. */
  async commitAt(ref: string): Promise<string | undefined> {
    const commit = await this.resolveCommit(ref);
    return commit.ok ? commit.value : undefined;
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

  /** The file at a path of a commit, be it of another repository's history. */
  fileAt(commit: string, path: string): Promise<FileAt> {
    return fileIn(this.#objects, commit, path);
  }

  /** The files of a tree object. */
  tree(tree: string, label: TreeLabel): Tree {
    return new RevisionTree(tree, label, this.#objects);
  }

  /** The top of the files on the disk, as a real path; a problem in a bare repository. */
  async top(): Promise<Outcome<string>> {
    const { workTree, insideWorkTree } = this.#parts.layout;
    const path = workTree === undefined ? undefined : resolve(this.dir, workTree);
    const [real, here] = await Promise.all([
      path === undefined ? '' : realpath(path).catch(() => ''),
      realpath(this.dir),
    ]);
    const below = relative(real, here);
    // The setting core.worktree can name any folder of the machine.
    if (path !== undefined && (real === '' || below === '..' || below.startsWith(`..${sep}`))) {
      return err({
        message: `the repository keeps its work tree elsewhere, in ${shown(path)}`,
        advice: 'Run this in that folder.',
      });
    }
    if (path === undefined || !insideWorkTree) {
      return err({
        message: 'there is no work tree here, so there are no uncommitted files',
        advice: 'Run this in a checkout, or name a branch with --head.',
      });
    }
    return ok(real);
  }

  /** The files on the disk; a problem in a bare repository. */
  async workTree(): Promise<Outcome<Tree>> {
    const top = await this.top();
    if (!top.ok) return top;
    // Most judgements are of revisions, and need not load it.
    const { WorkTree } = await import('./worktree.ts');
    return ok(
      new WorkTree(
        top.value,
        this.objectFormat,
        this.#parts.largestFile,
        (args) => runGit(args, { cwd: top.value, environment: this.#parts.environment }),
        (commit, path) => this.fileAt(commit, path),
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

  async #fromStart(id: string | undefined, steps: string, ref: string): Promise<Outcome<string>> {
    const commit = id === undefined ? ok(undefined) : await this.#objects.commitAt(id, steps);
    if (!commit.ok) return commit;
    return commit.value === undefined ? err(this.#noCommit(ref)) : ok(commit.value);
  }

  async #asGitReadsIt(ref: string): Promise<string | undefined> {
    const args = ['rev-parse', '--verify', '--quiet', '--end-of-options', `${ref}^{commit}`];
    const run = await this.inRepository(args);
    const id = run.ok && run.value.code === 0 ? run.value.stdout.toString('latin1').trim() : '';
    return isObjectId(id) ? id : undefined;
  }

  #objectCall() {
    const { scratch, environment } = this.#parts;
    return { cwd: scratch, environment: { ...settingsFree(environment), GIT_DIR: scratch } };
  }

  /** The nearest of all branches and tags. */
  async #offerFor(name: string): Promise<string> {
    const refs = await this.refs(['refs/heads/', 'refs/remotes/', 'refs/tags/']);
    const known = refs.ok ? [...refs.value.keys()] : [];
    return offer(
      name,
      known.map((each) => shown(each.replace(/^refs\/(?:heads|remotes|tags)\//, ''))),
    );
  }

  #noCommit(ref: string, offered = ''): Problem {
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
        ? `Check that the commit exists; ${this.shallow.size > 0 ? 'this clone is shallow, and `git fetch --unshallow origin` fetches the rest' : '`git log` shows them'}.`
        : `${offered}Check the name; where only the remote has it, fetch it with \`${fetch.join(' ')}\`. In CI, check out with fetch depth 0.`,
    };
  }
}

/** What git says of how a repository is laid out, and where HEAD stands. */
interface Layout {
  readonly objectFormat: ObjectFormat;
  /** The folder of its objects. */
  readonly objects: string;
  /** The file that says where history ends, in a clone that does not hold all of it. */
  readonly shallowFile: string | undefined;
  readonly insideWorkTree: boolean;
  /** The top of the work tree, from where it was asked; undefined in a bare repository. */
  readonly workTree: string | undefined;
  readonly head: Head | undefined;
}

/** With --revs-only, a HEAD that points at no commit yet says nothing, and fails nothing. */
const askLayout: readonly string[] = [
  'rev-parse',
  '--path-format=absolute',
  '--show-object-format',
  '--is-shallow-repository',
  '--is-inside-work-tree',
  '--git-path',
  'objects',
  '--git-path',
  'shallow',
  '--show-cdup',
  '--revs-only',
  'HEAD^{commit}',
  '--symbolic-full-name',
  'HEAD',
];

function parseLayout(output: Buffer): Outcome<Layout> {
  const lines = output
    .toString('utf8')
    .replace(/\r?\n$/, '')
    .split(/\r?\n/);
  const [objectFormat, isShallow, isInside, objects = '', shallow = '', ...more] = lines;
  const at = more.findIndex(isObjectId);
  const [workTree, ...rest] = at === -1 ? more : more.slice(0, at);
  const [commit, name, ...beyond] = at === -1 ? [] : more.slice(at);
  if (lines.length < 5 || dirname(objects) !== dirname(shallow) || rest.length > 0 || beyond.length > 0) {
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
  return ok({
    objectFormat,
    objects,
    shallowFile: isShallow === 'true' ? shallow : undefined,
    insideWorkTree: isInside === 'true',
    workTree,
    head: commit === undefined ? undefined : { commit, on: name === 'HEAD' ? 'commit' : 'branch' },
  });
}

function cannotOpen(dir: string, { stderr }: GitRun): Problem {
  if (/dubious ownership|unsafe repository/.test(stderr)) {
    return {
      message: `the repository in ${shown(dir)} belongs to another user, and git refuses to use it`,
      advice: `If you trust that user, tell git so with \`git config --global --add safe.directory ${shellWord(shown(dir))}\`.`,
    };
  }
  if (/not a git repository/.test(stderr)) {
    return {
      message: `${shown(dir)} is not in a Git repository`,
      advice: 'Run this in a checkout of the storage repository, or name it with --repo DIR.',
    };
  }
  return {
    message: `git cannot read the repository in ${shown(dir)}: ${gitSaid(stderr)}`,
    advice: 'Repair what git reports, or clone again.',
  };
}
