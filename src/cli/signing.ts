/**
 * Signs and verifies by the machine's own `ssh-keygen -Y`: no shell, fixed arguments, an environment from an
 * allow-list. Git's settings could name another program to sign with (gpg.ssh.program); they are never asked.
 * The text goes in through standard input, so that what is verified is what was read.
 */
import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { shown } from '../git/tree.ts';
import { reasonOf } from './edge.ts';

/** What the signature is for. A signature made for anything else, such as a commit, does not count. */
export const namespace = 'ullage';

/** Waiting for a passphrase or for a touch of a hardware key is part of signing; waiting for ever is not. */
const longestWait = 120_000;

/** Where programs, homes and the agent's socket are. What could name a program to run or to load is left out. */
const passedOn = ['PATH', 'Path', 'PATHEXT', 'HOME', 'SSH_AUTH_SOCK', 'TMPDIR', 'SystemRoot', 'USERPROFILE'];

interface Run {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

function sshKeygen(args: readonly string[], input: string): Promise<Outcome<Run>> {
  const kept = passedOn.flatMap((name) =>
    process.env[name] === undefined ? [] : [[name, process.env[name]]],
  );
  // UTC, because ssh-keygen takes a time without a zone for local time; C, because what it says is read.
  const env = { ...Object.fromEntries(kept), LC_ALL: 'C', TZ: 'UTC', SSH_ASKPASS_REQUIRE: 'never' };
  return new Promise((done) => {
    const options = { env, encoding: 'utf8' as const, timeout: longestWait, windowsHide: true };
    const child = execFile('ssh-keygen', ['-Y', ...args], options, (error, stdout, stderr) => {
      if (typeof error?.code === 'string') return done(err(cannotRun(error.code)));
      done(ok({ code: error === null ? 0 : (error.code ?? 128), stdout, stderr }));
    });
    child.stdin?.on('error', () => {}); // It may end before it has read its input, as for a key that is not there.
    child.stdin?.end(input);
  });
}

function cannotRun(code: string): Problem {
  const advice = 'Install OpenSSH 8.8 or newer (the package openssh-client, on many systems).';
  return code === 'ENOENT'
    ? { message: 'ssh-keygen is not installed here, or not on PATH', advice }
    : { message: `ssh-keygen cannot be run (${code})`, advice };
}

/** What ssh-keygen said, fit for one line of a message. */
function said(stderr: string): string {
  const line = stderr.split('\n').find((each) => each.trim() !== '' && !each.startsWith('Signing data'));
  return shown((line ?? 'nothing more is known').trim().slice(0, 300));
}

/** Signs a text with a private key, or with the public key of one that an agent holds. Gives the armoured signature. */
export async function sign(text: string, key: string): Promise<Outcome<string>> {
  const run = await sshKeygen(['sign', '-n', namespace, '-f', resolve(key)], text);
  if (!run.ok) return run;
  if (run.value.code === 0 && run.value.stdout.startsWith('-----BEGIN SSH SIGNATURE-----')) {
    return ok(run.value.stdout);
  }
  return err({
    message: `the attestation cannot be signed with ${shown(key)}: ${said(run.value.stderr)}`,
    advice:
      'Name a private SSH key, or the public key of one that ssh-agent holds (`ssh-add -L` lists them).',
  });
}

/** How a signature stands. `signer` is the principal as the allowed-signers file names it. */
export type Verified =
  | { readonly kind: 'good'; readonly signer: string }
  | { readonly kind: 'bad signature'; readonly message: string }
  | { readonly kind: 'bad signer'; readonly message: string };

/** The file of those whose signatures count, in the format of `ssh-keygen`'s ALLOWED SIGNERS. */
export interface AllowedSigners {
  readonly path: string;
}

/** Finds the file before anything is verified: without it every signature would look like a stranger's. */
export async function allowedSigners(path: string): Promise<Outcome<AllowedSigners>> {
  try {
    const text = await readFile(path, 'utf8');
    if (/^\s*[^\s#]/m.test(text)) return ok({ path: resolve(path) });
    return err({ message: `${shown(path)} lists no signer`, advice: allowedAdvice });
  } catch (error) {
    return err({
      message: `the allowed signers ${shown(path)} cannot be read: ${shown(reasonOf(error))}`,
      advice: allowedAdvice,
    });
  }
}

const allowedAdvice =
  'Write one signer a line: `gate@gannet-point.example namespaces="ullage" ssh-ed25519 AAAA...`; `man ssh-keygen` has the format.';

/**
 * Verifies a signature over a text, at the time that the text gives for itself: a key that has run out since was
 * good then. So does Git with a commit's date. A key that was lost must therefore leave the file.
 */
export async function verify(
  text: string,
  { signature, time }: { readonly signature: string; readonly time: string },
  allowed: AllowedSigners,
): Promise<Outcome<Verified>> {
  const at = `-Overify-time=${time.replace(/\.[0-9]+/, '').replace(/[^0-9]/g, '')}`;
  const files = ['-f', allowed.path, '-s', signature, at];
  const principals = await sshKeygen(['find-principals', ...files], '');
  if (!principals.ok) return principals;
  const names = principals.value.stdout.split('\n').filter((name) => name !== '');
  if (principals.value.code !== 0 || names.length === 0) {
    return ok(notFound(principals.value.stderr));
  }
  let last = '';
  for (const name of names) {
    const run = await sshKeygen(['verify', '-n', namespace, '-I', name, ...files], text);
    if (!run.ok) return run;
    if (run.value.code === 0) return ok({ kind: 'good', signer: name });
    last = run.value.stderr;
  }
  return ok(
    /incorrect signature/.test(last)
      ? { kind: 'bad signature', message: 'was altered after it was signed, or the signature was' }
      : /namespace/.test(last)
        ? { kind: 'bad signer', message: `is signed by a key, or for a purpose, other than ${namespace}` }
        : { kind: 'bad signature', message: `has an invalid signature: ${said(last)}` },
  );
}

function notFound(stderr: string): Verified {
  if (/expired|not yet valid/.test(stderr)) {
    return { kind: 'bad signer', message: 'is signed by a key that was not valid at the time' };
  }
  if (/parse signature|armor|incomplete|invalid format/.test(stderr)) {
    return { kind: 'bad signature', message: 'has a signature that cannot be read' };
  }
  return { kind: 'bad signer', message: 'is signed by a key that is not among the allowed signers' };
}
