/** The only way by which git is let onto the network. What it fetches it checks against its own ids. */

import type { Outcome } from '../base/problem.ts';
import { type Environment, type GitRun, hardenedEnvironment, runGit } from './process.ts';

/** What a network of a company needs, on top of what git is given everywhere. */
const passedOn = [
  'http_proxy',
  'https_proxy',
  'no_proxy',
  'HTTP_PROXY',
  'HTTPS_PROXY',
  'NO_PROXY',
  'ALL_PROXY',
  'all_proxy',
  'SSL_CERT_FILE',
  'SSL_CERT_DIR',
  'SSH_AUTH_SOCK',
];

/** A server that says nothing for so many seconds is given up. */
const patience = ['-c', 'http.lowSpeedLimit=1', '-c', 'http.lowSpeedTime=60'];

export interface NetworkCall {
  /** The repository. */
  readonly dir: string;
  /** The machine's. */
  readonly environment: Environment;
  /** Those over which git may go, as `GIT_ALLOW_PROTOCOL` lists them. */
  readonly protocols: string;
  /** Variables besides, such as those that sign in. */
  readonly more?: NodeJS.ProcessEnv;
}

export const runOnNetwork = (
  args: readonly string[],
  { dir, environment, protocols, more = {} }: NetworkCall,
): Promise<Outcome<GitRun>> =>
  runGit([...patience, ...args], {
    cwd: dir,
    environment: {
      ...hardenedEnvironment(environment),
      ...Object.fromEntries(
        passedOn.flatMap((name) => (environment[name] === undefined ? [] : [[name, environment[name]]])),
      ),
      GIT_ALLOW_PROTOCOL: protocols,
      ...more,
    },
  });

/** Fetches without moving a ref of the checkout, tags, `FETCH_HEAD` and submodules among them. */
export const quietFetch: readonly string[] = [
  'fetch',
  '--quiet',
  '--no-tags',
  '--no-recurse-submodules',
  '--no-write-fetch-head',
  '--no-prune',
  '--refmap=',
];
