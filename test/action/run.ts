/** Runs the bundled action as a runner does: a process of its own, with a payload and the files of one step. */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import examples from '@octokit/webhooks-examples';
import { afterAll, beforeAll } from 'vitest';
import { bundleAction } from '../../.ci/bundle.ts';
import {
  copyOf,
  type Files,
  isolatedEnvironment,
  makeRepository,
  removeRepositories,
  type TestRepository,
} from '../repository.ts';

/** Bundles the action to a folder of the tests'. */
async function bundled(): Promise<{ readonly file: string; remove(): void }> {
  const dir = mkdtempSync(join(tmpdir(), 'ullage-action-'));
  const file = join(dir, 'index.mjs');
  await bundleAction(file);
  return { file, remove: () => rmSync(dir, { recursive: true, force: true }) };
}

type More = Partial<Step> & { readonly checkout?: TestRepository };

export interface Action {
  /** One step, as a runner runs it. */
  step(step: Omit<Step, 'action'>): Promise<Ran>;
  /** A pull request's run, in a checkout of depth 1 as the usual checkout step leaves it. */
  onPullRequest(pull: Hosted, more?: More): Promise<Ran>;
}

/** The action, bundled before a file's tests and removed after them. */
export function bundledAction(): Action {
  let action = '';
  let removeBundle: () => void = () => {};
  beforeAll(async () => {
    const { file, remove } = await bundled();
    action = file;
    removeBundle = remove;
  });
  afterAll(() => {
    removeBundle();
    removeRepositories();
  }, 60_000);
  return {
    step: (step) => runStep({ action, ...step }),
    onPullRequest: (pull, { checkout = checkedOut(pull.origin, pull.merge), ...more } = {}) =>
      runStep({
        action,
        workspace: checkout.dir,
        event: 'pull_request',
        payload: pullRequestPayload(pull),
        sha: pull.merge,
        ...more,
      }),
  };
}

export interface Step {
  /** The bundle. */
  readonly action: string;
  readonly workspace: string;
  readonly event: string;
  readonly payload: unknown;
  readonly sha: string;
  readonly inputs?: Readonly<Record<string, string>>;
  readonly environment?: NodeJS.ProcessEnv;
}

export interface Command {
  readonly name: string;
  readonly properties: Readonly<Record<string, string>>;
  readonly message: string;
}

export interface Ran {
  readonly code: number;
  readonly log: string;
  readonly errors: string;
  readonly summary: string;
  readonly outputs: Readonly<Record<string, string>>;
  /** What the host would take for a command, decoded as it decodes it. */
  readonly commands: readonly Command[];
}

async function runStep(step: Step): Promise<Ran> {
  const dir = mkdtempSync(join(tmpdir(), 'ullage-step-'));
  const at = (name: string): string => join(dir, name);
  for (const name of ['summary', 'output', 'env', 'path']) writeFileSync(at(name), '');
  writeFileSync(at('event.json'), JSON.stringify(step.payload));
  const inputs = Object.entries(step.inputs ?? {}).map(([name, text]) => [
    `INPUT_${name.toUpperCase()}`,
    text,
  ]);
  const { GITHUB_TOKEN: _, ...machine } = isolatedEnvironment();
  const child = spawn(process.execPath, [step.action], {
    cwd: step.workspace,
    env: {
      ...machine,
      GITHUB_WORKSPACE: step.workspace,
      GITHUB_EVENT_NAME: step.event,
      GITHUB_EVENT_PATH: at('event.json'),
      GITHUB_SHA: step.sha,
      GITHUB_REPOSITORY: 'gannet-point/storage',
      GITHUB_RUN_ID: '7',
      GITHUB_STEP_SUMMARY: at('summary'),
      GITHUB_OUTPUT: at('output'),
      GITHUB_ENV: at('env'),
      GITHUB_PATH: at('path'),
      ...Object.fromEntries(inputs),
      ...step.environment,
    },
  });
  let log = '';
  let errors = '';
  child.stdout.on('data', (chunk: Buffer) => {
    log += chunk.toString('utf8');
  });
  child.stderr.on('data', (chunk: Buffer) => {
    errors += chunk.toString('utf8');
  });
  const code = await new Promise<number>((ended) => child.on('close', (status) => ended(status ?? -1)));
  const read = (name: string): string => readFileSync(at(name), 'utf8');
  const ran = {
    code,
    log,
    errors,
    summary: read('summary'),
    outputs: outputsIn(read('output')),
    commands: commandsIn(log),
  };
  rmSync(dir, { recursive: true });
  return ran;
}

/** The host's file of outputs: `name<<delimiter`, the lines, the delimiter. */
function outputsIn(text: string): Readonly<Record<string, string>> {
  const outputs: Record<string, string> = {};
  const lines = text.split('\n');
  while (lines.length > 0) {
    const [, name = '', delimiter = ''] = /^(.*?)<<(.*)$/.exec(lines.shift() ?? '') ?? [];
    if (name === '') continue;
    const end = lines.indexOf(delimiter);
    outputs[name] = lines
      .splice(0, end + 1)
      .slice(0, -1)
      .join('\n');
  }
  return outputs;
}

/**
 * The commands in a log, as the runner's documentation describes them (from memory): a line that begins with `::`
 * after white space, and no line from `::stop-commands::token` to `::token::`.
 */
export function commandsIn(log: string): readonly Command[] {
  const commands: Command[] = [];
  let stopped: string | undefined;
  for (const line of log.split(/\r\n|\r|\n/)) {
    const trimmed = line.trimStart();
    if (stopped !== undefined) {
      if (trimmed === `::${stopped}::`) stopped = undefined;
      continue;
    }
    const [, name, properties = '', message = ''] = /^::([^ :]+)(?: (.*?))?::(.*)$/.exec(trimmed) ?? [];
    if (name === undefined) continue;
    if (name === 'stop-commands') stopped = message;
    else commands.push({ name, properties: propertiesIn(properties), message: decoded(message) });
  }
  return commands;
}

const propertiesIn = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    text
      .split(',')
      .filter((each) => each !== '')
      .map((each) => [each.slice(0, each.indexOf('=')), decoded(each.slice(each.indexOf('=') + 1))]),
  );

const decoded = (text: string): string =>
  text
    .replaceAll('%3A', ':')
    .replaceAll('%2C', ',')
    .replaceAll('%0D', '\r')
    .replaceAll('%0A', '\n')
    .replaceAll('%25', '%');

type Json = { [key: string]: unknown };

const isJson = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A published example payload of the CI host, with what a test needs written over it. */
export function payloadOf(
  event: string,
  edits: Json = {},
  which: (example: Json) => boolean = () => true,
): Json {
  // Its types call it a module; what is imported is the list.
  const all: unknown = examples;
  const definition = (Array.isArray(all) ? all : []).filter(isJson).find(({ name }) => name === event);
  const published = Array.isArray(definition?.examples) ? definition.examples : [];
  const example = published.filter(isJson).find(which);
  if (example === undefined) throw new Error(`there is no published example of ${event}`);
  return over(structuredClone(example), edits);
}

function over(value: Json, edits: Json): Json {
  for (const [key, edit] of Object.entries(edits)) {
    const old = value[key];
    value[key] = isJson(edit) && isJson(old) ? over(old, edit) : edit;
  }
  return value;
}

export const office: Files = {
  'ullage.yaml': 'currency: EUR\n',
  'storage/imagery.yaml': `team: imagery
site: north-quay
servers:
  plate-scanner: { power: running, boot: plate-scanner-root, guest: linux-lvm }
volumes:
  plate-scanner-root: { size: 20 GiB, tier: steady }
  plates-1: { size: 50 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
  'prices/2026.yaml':
    'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n  steady: { rate: "0.10", per: GiB-month }\n',
  'policies/storage.yaml':
    'rules:\n  - { name: imagery-limit, rule: max-monthly-spend, where: { teams: [imagery] }, limit: "4.50" }\n  - { rule: no-shrink }\n',
};

const estate = office['storage/imagery.yaml'];

/** The estate with one volume at another size. */
export const plates = (size: string): Files => ({
  'storage/imagery.yaml': String(estate).replace('plates-1: { size: 50 GiB', `plates-1: { size: ${size}`),
});

/** A pull request as the host has it: the branch, and the merge commit of it under a ref of its own. */
export interface Hosted {
  readonly origin: TestRepository;
  readonly base: string;
  readonly head: string;
  readonly merge: string;
}

export const pullRequestNumber = 2;

export function hosted(files: Files, main: Files = office, ...since: readonly Files[]): Hosted {
  const origin = copyOf(['a pull request', main, since, files], () => {
    const told = makeRepository({
      files: { 'README.md': 'The storage of Gannet Point.\n' },
      message: 'the repository',
    });
    told.write(main);
    let base = told.commit('the estate');
    for (const each of since) {
      told.write(each);
      base = told.commit('main goes on');
    }
    told.branch('proposal');
    told.write(files);
    mergedBy(told, base, told.commit('the proposal'));
    return told;
  });
  const refs = ['main', 'proposal', `refs/pull/${pullRequestNumber}/merge`];
  const [base = '', head = '', merge = ''] = origin.git('rev-parse', ...refs).split('\n');
  return { origin, base, head, merge };
}

/** The host merges the pull request into main, as it does again and again while main moves on. */
export function mergedBy(origin: TestRepository, base: string, head: string): string {
  origin.git('checkout', '--quiet', '--detach', base);
  const merge = origin.merge(head);
  origin.git('update-ref', `refs/pull/${pullRequestNumber}/merge`, merge);
  origin.git('update-ref', `refs/pull/${pullRequestNumber}/head`, head);
  origin.checkout('main');
  return merge;
}

/** What the usual checkout step leaves of one commit: detached, under a remote-tracking ref of its own. */
export function checkedOut(
  origin: TestRepository,
  commit: string,
  {
    ref = `pull/${pullRequestNumber}/merge`,
    depth = 1,
  }: { readonly ref?: string; readonly depth?: number } = {},
): TestRepository {
  const checkout = makeRepository();
  checkout.git('remote', 'add', 'origin', `file://${origin.dir}`);
  const deep = depth === 0 ? [] : [`--depth=${depth}`];
  const all = depth === 0 ? ['+refs/heads/*:refs/remotes/origin/*'] : [];
  checkout.git('fetch', '--quiet', '--no-tags', ...deep, 'origin', ...all, `+${commit}:refs/remotes/${ref}`);
  checkout.git('checkout', '--quiet', '--detach', commit);
  return checkout;
}

export const pullRequestPayload = ({ base, head }: Pick<Hosted, 'base' | 'head'>, edits: Json = {}): Json =>
  over(
    payloadOf(
      'pull_request',
      { pull_request: { base: { sha: base, ref: 'main' }, head: { sha: head } } },
      ({ action }) => action === 'synchronize',
    ),
    edits,
  );
