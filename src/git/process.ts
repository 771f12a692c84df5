/**
 * Runs the machine's own git: no shell, an environment from an allow-list, and settings under which neither the
 * repository nor the environment can make git run another program, ask a question or go to the network.
 */
import { type ChildProcessWithoutNullStreams, execFile, spawn } from 'node:child_process';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';

/** The oldest version that does; `git merge-tree --write-tree` came with it. */
const oldestGit = '2.38';

export type Environment = Readonly<Record<string, string | undefined>>;

/** How git ended. `code` is what it exited with; a signal counts as 128. */
export interface GitRun {
  readonly code: number;
  readonly stdout: Buffer;
  readonly stderr: string;
}

/**
 * What git needs of the machine: where programs and homes are (a home's settings say which directories are safe,
 * and may only be written by their owner), and who called sudo. Everything else, above all each GIT_* variable,
 * could point git at another repository, another index, other settings or a program.
 */
const passedOn = [
  'PATH',
  'HOME',
  'XDG_CONFIG_HOME',
  'SUDO_UID',
  'TMPDIR',
  'LD_LIBRARY_PATH',
  'DYLD_LIBRARY_PATH',
  // What Windows needs to start any program, and where its home is.
  'Path',
  'PATHEXT',
  'SYSTEMROOT',
  'SystemRoot',
  'TEMP',
  'TMP',
  'USERPROFILE',
  'HOMEDRIVE',
  'HOMEPATH',
  'APPDATA',
  'LOCALAPPDATA',
  'PROGRAMDATA',
  'ProgramData',
];

/** The environment git runs in, made from the machine's. */
export function hardenedEnvironment(machine: Environment): NodeJS.ProcessEnv {
  const kept = passedOn.flatMap((name) => (machine[name] === undefined ? [] : [[name, machine[name]]]));
  return {
    ...Object.fromEntries(kept),
    LC_ALL: 'C',
    GIT_TERMINAL_PROMPT: '0',
    GIT_OPTIONAL_LOCKS: '0',
    GIT_NO_REPLACE_OBJECTS: '1',
    GIT_GRAFT_FILE: '/dev/null',
    GIT_ATTR_NOSYSTEM: '1',
    GIT_LITERAL_PATHSPECS: '1',
    // A partial clone would fetch what it lacks behind the user's back. Git before 2.44 does not know the first;
    // the second allows it no way to fetch at all.
    GIT_NO_LAZY_FETCH: '1',
    GIT_ALLOW_PROTOCOL: '',
    // Nothing below asks git for a page, an editor or a password; should it want one, it gets nothing.
    GIT_PAGER: 'cat',
    GIT_EDITOR: ':',
    GIT_ASKPASS: '',
    SSH_ASKPASS: '',
  };
}

/** As above, and deaf to the settings of the machine and of the person too. */
export function settingsFree(environment: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  return { ...environment, GIT_CONFIG_NOSYSTEM: '1', GIT_CONFIG_GLOBAL: '/dev/null' };
}

/** Settings given with each call, which outrank those in any file. */
const settings = [
  '--no-pager',
  '--no-replace-objects',
  ...[
    'core.fsmonitor=false',
    'core.hooksPath=/dev/null',
    'core.attributesFile=/dev/null',
    // A commit graph repeats what the commits say; a wrong one would change what is an ancestor of what.
    'core.commitGraph=false',
    'log.showSignature=false',
    'diff.ignoreSubmodules=none',
    'protocol.allow=never',
    'gc.auto=0',
    'maintenance.auto=false',
  ].flatMap((setting) => ['-c', setting]),
];

/** Where a call runs and what it sees. */
export interface GitCall {
  readonly cwd: string;
  readonly environment: NodeJS.ProcessEnv;
}

/** More than any listing of an estate; a listing beyond it is refused, not cut. */
const longestOutput = 512 * 1024 * 1024;

/** Runs git to its end. Only a git that cannot be run at all, or says too much, is a problem; the rest is for the caller. */
export function runGit(args: readonly string[], { cwd, environment }: GitCall): Promise<Outcome<GitRun>> {
  return new Promise((resolve) => {
    const options = {
      cwd,
      env: environment,
      encoding: 'buffer' as const,
      maxBuffer: longestOutput,
      windowsHide: true,
    };
    const child = execFile('git', [...settings, ...args], options, (error, stdout, stderr) => {
      const code = error === null ? 0 : error.code;
      if (typeof code === 'string') return resolve(err(cannotRun(code)));
      resolve(ok({ code: code ?? 128, stdout, stderr: stderr.toString('utf8') }));
    });
    child.stdin?.end();
  });
}

/** Starts git and leaves it running. The caller listens for `error`. */
export function startGit(
  args: readonly string[],
  { cwd, environment }: GitCall,
): ChildProcessWithoutNullStreams {
  return spawn('git', [...settings, ...args], { cwd, env: environment, windowsHide: true, stdio: 'pipe' });
}

export const tooManyFiles: Problem = {
  message: 'git lists more files than can be judged',
  advice: 'Keep the storage files in folders of their own, and name those in ullage.yaml.',
};

export function cannotRun(code: string): Problem {
  if (code === 'ENOENT') {
    return {
      message: 'git is not installed here, or not on PATH',
      advice: `Install Git ${oldestGit} or newer.`,
    };
  }
  if (code === 'ERR_CHILD_PROCESS_STDIO_MAXBUFFER') {
    return tooManyFiles;
  }
  return {
    message: `git cannot be run (${code})`,
    advice: `Install Git ${oldestGit} or newer, and check that it can be run.`,
  };
}

/** What git itself said went wrong: its first line that says so, fit for one line of a message. */
export function gitSaid(stderr: string): string {
  const lines = stderr.split('\n').filter((line) => line.trim() !== '');
  const line = lines.find((each) => /^(fatal|error):/.test(each)) ?? lines[0] ?? 'nothing more is known';
  const plain = line.replace(/^(fatal|error): /, '').replace(/\p{C}/gu, '?');
  return plain.length > 300 ? `${plain.slice(0, 297)}...` : plain;
}

/** A ref or a path as one word of a command that a person may copy into a shell. */
export const shellWord = (word: string): string =>
  /^[\w./@:=,+-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`;

export const gitFailed = (doing: string, { stderr }: GitRun): Problem => ({
  message: `git could not ${doing}: ${gitSaid(stderr)}`,
  advice: 'Run `git fsck` in the repository and repair what it reports, or clone again.',
});

const atLeast = (version: readonly [number, number], oldest: string): boolean => {
  const [major = 0, minor = 0] = oldest.split('.').map(Number);
  return version[0] > major || (version[0] === major && version[1] >= minor);
};

/** Undefined when the Git that says this of itself will do. Vendors add words and numbers after the version. */
export function gitVersionProblem(said: string): Problem | undefined {
  const version = /^git version (\d+)\.(\d+)/.exec(said.trim());
  if (version === null) {
    return {
      message: `git did not report its version but ${JSON.stringify(said.trim().slice(0, 80))}`,
      advice: `Put Git ${oldestGit} or newer first on PATH.`,
    };
  }
  if (atLeast([Number(version[1]), Number(version[2])], oldestGit)) return undefined;
  return {
    message: `this is Git ${version[1]}.${version[2]}, and Git ${oldestGit} or newer is needed`,
    advice: `Install Git ${oldestGit} or newer.`,
  };
}

/** Undefined when the git on PATH will do. */
export async function gitProblem(call: GitCall): Promise<Problem | undefined> {
  const run = await runGit(['version'], call);
  if (!run.ok) return run.problems[0];
  return gitVersionProblem(run.value.stdout.toString('utf8'));
}
