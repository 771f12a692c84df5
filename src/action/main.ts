/** The CI action: what the host gives comes in here, and the judgement goes out in every form the host has. */
import { randomUUID } from 'node:crypto';
import { lstat, readFile, realpath } from 'node:fs/promises';
import { dirname, isAbsolute, relative, resolve, sep } from 'node:path';
import * as core from '@actions/core';
import { err, type Outcome, ok, ownFault, type Problem } from '../base/problem.ts';
import { clipped, visible } from '../base/visible.ts';
import { reasonOf, writeReport } from '../cli/edge.ts';
import { gateWithPage } from '../cli/gate.ts';
import { endsTooSoon } from '../git/ancestors.ts';
import { lacksHistory } from '../policy/approval.ts';
import { type Judgement, notJudged } from '../policy/judgement.ts';
import { showMoney } from '../price/money.ts';
import { type Besides, report, reportText, summaryLine } from '../report/report.ts';
import { type Level, levels } from '../rules/rule.ts';
import { type Annotation, annotationsOf } from './annotations.ts';
import { depths, fetchHistory, toJudge } from './checkout.ts';
import { type PullRequest, requestOf } from './events.ts';
import { signInOf } from './fetch.ts';
import { type Inputs, readInputs } from './inputs.ts';
import { annotationsOfALevel, commentBytes, summaryBytes } from './limits.ts';
import { packNotes } from './packs.ts';
import { summaryOf } from './summary.ts';

type ExitCode = 0 | 1 | 2;

const exitCodes = { pass: 0, fail: 1, 'not judged': 2 } as const;

/** What the host tells in the environment of every step. */
interface Host {
  readonly environment: NodeJS.ProcessEnv;
  readonly workspace: string;
  readonly event: string;
  readonly eventPath: string;
  readonly sha: string;
  readonly apiUrl: string;
  readonly serverUrl: string;
  /** The page of this run, where the whole summary is. */
  readonly runUrl: string | undefined;
}

function hostOf(environment: NodeJS.ProcessEnv): Host {
  const serverUrl = environment.GITHUB_SERVER_URL || 'https://github.com';
  const { GITHUB_REPOSITORY: repository, GITHUB_RUN_ID: run } = environment;
  return {
    environment,
    workspace: resolve(environment.GITHUB_WORKSPACE || '.'),
    event: environment.GITHUB_EVENT_NAME ?? '',
    eventPath: environment.GITHUB_EVENT_PATH ?? '',
    sha: environment.GITHUB_SHA ?? '',
    apiUrl: (environment.GITHUB_API_URL || 'https://api.github.com').replace(/\/+$/, ''),
    serverUrl,
    runUrl: repository && run ? `${serverUrl}/${repository}/actions/runs/${run}` : undefined,
  };
}

/** A judgement, and what came with it. */
interface Run {
  readonly judgement: Judgement;
  readonly besides?: Besides;
  readonly notes: readonly string[];
  readonly pullRequest: PullRequest | undefined;
}

async function judgeEvent(host: Host, inputs: Inputs): Promise<Run> {
  const payload = await payloadOf(host);
  if (!payload.ok) return { judgement: notJudged(payload.problems, ''), notes: [], pullRequest: undefined };
  const request = requestOf({ name: host.event, payload: payload.value, sha: host.sha }, inputs);
  if (!request.ok) return { judgement: notJudged(request.problems, ''), notes: [], pullRequest: undefined };
  const { pullRequest, ignored, now } = request.value;
  const notes = ignored.map(
    (name) =>
      `The input ${name} has no effect on the event ${host.event}: the event itself says what is judged.`,
  );
  const dir = resolve(host.workspace, inputs.path);
  const remote = { dir, environment: host.environment, token: inputs.token, serverUrl: host.serverUrl };
  const commits = await toJudge(remote, request.value);
  if (!commits.ok) return { judgement: notJudged(commits.problems, ''), notes, pullRequest };
  const { base, head } = commits.value;
  const packs = await packNotes(remote, { base, head });
  const page = inputs.reports.some(({ format }) => format === 'html');
  const options = {
    repo: dir,
    base,
    head,
    failOn: inputs.failOn,
    page,
    ...(now === undefined ? {} : { now }),
  };
  let gated = await gateWithPage(options);
  for (const depth of depths) {
    if (!wantsHistory(gated.judgement) || !(await fetchHistory(remote, { base, head }, depth))) break;
    gated = await gateWithPage(options);
  }
  return { ...gated, notes: [...notes, ...commits.value.notes, ...packs], pullRequest };
}

/** Whether the checkout holds too little of main's history: to go back to where it reads, or to where a waiver came. */
const wantsHistory = (judgement: Judgement): boolean =>
  judgement.verdict === 'not judged' &&
  judgement.problems.some((problem) => problem.message === endsTooSoon.message || lacksHistory(problem));

async function payloadOf({ eventPath }: Host): Promise<Outcome<unknown>> {
  try {
    const payload: unknown = JSON.parse(await readFile(eventPath, 'utf8'));
    return ok(payload);
  } catch (error) {
    return err({
      message: `the event's payload cannot be read: ${clipped(reasonOf(error), 200)}`,
      advice:
        'Run the action from a workflow of the CI host, which writes GITHUB_EVENT_PATH; elsewhere, run `ullage gate`.',
    });
  }
}

/** Writes every report that was asked for; the paths, and what could not be written. */
async function writeReports({ workspace }: Host, inputs: Inputs, judgement: Judgement, besides?: Besides) {
  const paths: string[] = [];
  const pages: string[] = [];
  const problems: Problem[] = [];
  for (const { format, path } of inputs.reports) {
    const target = resolve(workspace, path);
    const problem =
      (await leadsElsewhere(workspace, path, target)) ??
      (await writeReport(target, () => report(format, judgement, { width: 100, colour: false }, besides)));
    if (problem === undefined && format === 'html') pages.push(path);
    if (problem === undefined) paths.push(path);
    else problems.push(problem);
  }
  return { paths, pages, problems };
}

/** The workspace holds what the branch brought: a link in it could lead a report over a file of the runner. */
async function leadsElsewhere(workspace: string, path: string, target: string): Promise<Problem | undefined> {
  if (isAbsolute(path)) return undefined;
  const top = await realpath(workspace);
  let here = target;
  let status = await lstat(here).catch(() => undefined);
  while (status === undefined && here !== dirname(here)) {
    here = dirname(here);
    status = await lstat(here).catch(() => undefined);
  }
  const real = status?.isSymbolicLink() ? undefined : await realpath(here).catch(() => undefined);
  const below = real === undefined ? '..' : relative(top, real);
  if (below !== '..' && !below.startsWith(`..${sep}`) && !isAbsolute(below)) return undefined;
  return {
    message: `the report ${path} would be written outside of the workspace, or through a symbolic link`,
    advice: 'Name a path in a folder of the workspace that the repository does not hold.',
  };
}

function print(judgement: Judgement): void {
  // No line of the report is a command of the host's (base/visible.ts sees to that); this holds should one be overlooked.
  const token = randomUUID();
  process.stdout.write(`::stop-commands::${token}\n`);
  process.stdout.write(reportText(judgement, { width: 100, colour: false }));
  process.stdout.write(`\n::${token}::\n`);
}

function annotate({ level, title, message, place }: Annotation): void {
  const properties = {
    title,
    ...(place === undefined ? {} : { file: place.file, startLine: place.line, startColumn: place.column }),
  };
  switch (level) {
    case 'error':
      core.error(message, properties);
      return;
    case 'warning':
      core.warning(message, properties);
      return;
    case 'notice':
      core.notice(message, properties);
      return;
  }
}

function setOutputs(judgement: Judgement, paths: readonly string[]): void {
  core.setOutput('verdict', judgement.verdict);
  core.setOutput('reports', paths.join('\n'));
  if (judgement.verdict === 'not judged') return;
  const { cost, findings } = judgement;
  core.setOutput('before', showMoney(cost.before, cost.currencyBefore));
  core.setOutput('after', showMoney(cost.after, cost.currency));
  // Between two currencies there is none to tell.
  core.setOutput(
    'difference',
    cost.difference === undefined ? '' : showMoney(cost.difference, cost.currency),
  );
  core.setOutput('currency', cost.currency);
  const standing = findings.filter(
    ({ baselineState, waiver }) => baselineState !== 'absent' && waiver === undefined,
  );
  const count = (level: Level): string => String(standing.filter((each) => each.level === level).length);
  for (const level of levels) core.setOutput(`${level}s`, count(level));
}

/** Writes the comment where one is asked for; what the reader should know of it. */
async function comment(host: Host, inputs: Inputs, run: Run): Promise<readonly string[]> {
  if (!inputs.comment) return [];
  const { pullRequest } = run;
  const instead = 'This summary stands in for the comment on the pull request:';
  if (pullRequest === undefined) return [`${instead} the event ${host.event} is not about one.`];
  if (inputs.token === undefined) return [`${instead} the action was given no token.`];
  const api = { url: host.apiUrl, token: inputs.token, author: inputs.commentAuthor };
  const body = summaryOf(run.judgement, {
    // The marker's line comes on top.
    limit: commentBytes - 100,
    notes: run.notes,
    fullReport: host.runUrl,
  });
  try {
    // Few runs write one; the others need not load the host's client.
    const { writeComment } = await import('./comment.ts');
    const outcome = await writeComment(api, pullRequest, body);
    if (outcome.kind === 'not written') return [`${instead} ${outcome.why}.`];
    return outcome.kind === 'created' && outcome.caution !== undefined ? [outcome.caution] : [];
  } catch (error) {
    return [`${instead} writing it failed (${clipped(reasonOf(error), 200)}).`];
  }
}

/** Adds to the job's summary. */
async function summarise(text: string): Promise<void> {
  try {
    await core.summary.addRaw(text).write();
  } catch (error) {
    core.info(visible(`The summary cannot be written: ${reasonOf(error)}`));
  }
}

const wholeSummary = (judgement: Judgement, notes: readonly string[], paths: readonly string[]): string =>
  summaryOf(judgement, { limit: summaryBytes, notes, fullReport: paths[0] });

async function main(environment: NodeJS.ProcessEnv): Promise<ExitCode> {
  const inputs = readInputs((name) => core.getInput(name));
  if (!inputs.ok) {
    const judgement = notJudged(inputs.problems, '');
    for (const each of annotationsOf(judgement, annotationsOfALevel).shown) annotate(each);
    setOutputs(judgement, []);
    await summarise(wholeSummary(judgement, [], []));
    return exitCodes[judgement.verdict];
  }
  const host = hostOf(environment);
  const { token } = inputs.value;
  if (token !== undefined) for (const secret of [token, signInOf(token)]) core.setSecret(secret);
  try {
    return await tell(host, inputs.value, await judgeEvent(host, inputs.value));
  } catch (error) {
    return tellOfFault(error, host, inputs.value);
  }
}

/** Ullage itself failed: what was said before, if anything, is taken back in every place that a workflow reads. */
async function tellOfFault(error: unknown, host?: Host, inputs?: Inputs): Promise<ExitCode> {
  const judgement = notJudged([ownFault(error)], '');
  core.error(visible(summaryLine(judgement)));
  core.setOutput('verdict', judgement.verdict);
  core.setOutput('reports', '');
  await summarise(summaryOfFault(judgement));
  if (host !== undefined && inputs !== undefined) {
    const { paths } = await writeReports(host, inputs, judgement);
    core.setOutput('reports', paths.join('\n'));
  }
  return exitCodes[judgement.verdict];
}

/** What failed may be the report itself. */
function summaryOfFault(judgement: Judgement): string {
  try {
    return wholeSummary(judgement, [], []);
  } catch {
    return `## ${judgement.verdict}\n\nUllage itself failed.\n`;
  }
}

/** Says what was judged, in every form the host has. */
async function tell(host: Host, inputs: Inputs, run: Run): Promise<ExitCode> {
  const { judgement, besides } = run;
  print(judgement);
  const { paths, pages, problems } = await writeReports(host, inputs, judgement, besides);
  setOutputs(judgement, paths);
  const notes = [
    ...run.notes,
    ...pages.map(
      (path) =>
        `The page ${path} draws this judgement. Keep it as an artefact of the run, and open it in a browser; it loads nothing.`,
    ),
    ...(await comment(host, inputs, run)),
    ...problems.map(({ message, advice }) => `${message}. ${advice}`),
  ];
  for (const note of notes) core.info(visible(note));
  await summarise(wholeSummary(judgement, notes, paths));
  // A report that is missing is an error of the run, not of the change; it takes the place of one annotation.
  if (problems.length > 0) {
    core.error(problems.map(({ message, advice }) => visible(`${message}. ${advice}`)).join('\n'));
  }
  const room = Math.max(0, inputs.annotations - (problems.length > 0 ? 1 : 0));
  for (const each of annotationsOf(judgement, room).shown) annotate(each);
  if (problems.length > 0) return 2;
  if (judgement.verdict === 'pass') core.info(summaryLine(judgement));
  return exitCodes[judgement.verdict];
}

// Should the process end before it has said anything, it has not judged.
process.exitCode = 2;
// Nobody reads a log that cannot be written; no run passes on one.
let isLogLost = false;
process.stdout.on('error', () => {
  isLogLost = true;
  process.exitCode = 2;
});
process.on('uncaughtException', (error) => {
  void tellOfFault(error).finally(() => process.exit(2));
});
let code: ExitCode = 2;
try {
  code = await main(process.env);
} catch (error) {
  code = await tellOfFault(error);
}
if (isLogLost) core.setOutput('verdict', 'not judged');
process.exitCode = isLogLost ? 2 : code;
