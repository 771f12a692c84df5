/** Fetches what a shallow checkout lacks, through the remote and the credentials that the checkout step left. */

import { err, type Outcome, ok } from '../base/problem.ts';
import { quietFetch, runOnNetwork } from '../git/network.ts';
import { isObjectId } from '../git/object-store.ts';
import { type Environment, type GitRun, gitSaid } from '../git/process.ts';

export interface Remote {
  /** The checkout. */
  readonly dir: string;
  readonly environment: Environment;
  /** Tried where the checkout's own credentials will not do. */
  readonly token: string | undefined;
  /** The only server the token is sent to. */
  readonly serverUrl: string;
}

/** The settings by which git signs in with a token: in the environment, so that no list of processes shows them. */
function signIn({ serverUrl, token }: Pick<Remote, 'serverUrl' | 'token'>): NodeJS.ProcessEnv | undefined {
  if (token === undefined || !/^https?:\/\//.test(serverUrl)) return undefined;
  const key = `http.${serverUrl.replace(/\/+$/, '')}/.extraheader`;
  return {
    GIT_CONFIG_COUNT: '2',
    // An empty value drops the header that the checkout left: the host refuses a request with two.
    GIT_CONFIG_KEY_0: key,
    GIT_CONFIG_VALUE_0: '',
    GIT_CONFIG_KEY_1: key,
    GIT_CONFIG_VALUE_1: `AUTHORIZATION: basic ${signInOf(token)}`,
  };
}

/** The token as git sends it; a log has to mask this form too. */
export const signInOf = (token: string): string => Buffer.from(`x-access-token:${token}`).toString('base64');

/** Runs git on the network; where the checkout's own credentials will not do, once more with the token. */
export async function runSignedIn(
  { dir, environment, ...signing }: Remote,
  args: readonly string[],
  protocols: string,
): Promise<Outcome<GitRun>> {
  const call = { dir, environment, protocols };
  const first = await runOnNetwork(args, call);
  const credentials = signIn(signing);
  if (!first.ok || first.value.code === 0 || credentials === undefined) return first;
  return runOnNetwork(args, { ...call, more: credentials });
}

async function onNetwork(remote: Remote, args: readonly string[]): Promise<Outcome<string>> {
  const second = await runSignedIn(remote, args, 'https:http:ssh:git:file');
  if (!second.ok) return second;
  if (second.value.code === 0) return ok(second.value.stdout.toString('utf8'));
  return err({
    message: `the remote does not provide what is missing: ${gitSaid(second.value.stderr)}`,
    advice: wholeHistory,
  });
}

export const wholeHistory =
  'Set `fetch-depth: 0` on the checkout step, so that the whole history is there; in a private repository, leave its credentials in place or give the action a `token`.';

/** How much history comes along: whatever the checkout lacks, so many commits, or all of it. */
export type Depth = number | 'all' | 'what is missing';

/** Fetches commits or refs into the object store. No ref of the checkout moves, and no FETCH_HEAD is written. */
export async function fetchInto(
  remote: Remote,
  wanted: readonly string[],
  depth: Depth,
): Promise<Outcome<string>> {
  const deep = depth === 'what is missing' ? [] : depth === 'all' ? ['--unshallow'] : [`--depth=${depth}`];
  return onNetwork(remote, [...quietFetch, ...deep, 'origin', ...wanted]);
}

/** The commit at a ref of the remote; undefined where there is none, or the remote does not say. */
export async function remoteTip(remote: Remote, ref: string): Promise<string | undefined> {
  const said = await onNetwork(remote, ['ls-remote', '--quiet', 'origin', ref]);
  if (!said.ok) return undefined;
  for (const line of said.value.split('\n')) {
    const [id = '', name] = line.split('\t');
    if (name === ref && isObjectId(id)) return id;
  }
  return undefined;
}
