/** `ullage gate`: judges a branch against the main branch. */
import { judgeAgainstMain } from '../audit/against-main.ts';
import type { JudgedRevisions } from '../audit/attest.ts';
import { ok, ownFault } from '../base/problem.ts';
import { settingsFile } from '../estate/settings.ts';
import { type RevisionPair, resolveRevisions, uncommittedFiles } from '../git/compare.ts';
import type { GitRepository } from '../git/repository.ts';
import { type Judgement, notJudged } from '../policy/judgement.ts';
import type { ReadingPair } from '../policy/pair.ts';
import { pathsOf } from '../policy/reader.ts';
import {
  type Besides,
  type ReportFormat,
  report,
  reportJson,
  summaryLine,
  unreadSentence,
} from '../report/report.ts';
import type { AttestFlags } from './attestation.ts';
import { dayOf, type Finished, type ReportFlags, terminal, writeReport } from './edge.ts';
import { staleSchemas } from './editor-schemas.ts';
import { notPushedRemark } from './not-pushed.ts';
import { pathProblems } from './report-paths.ts';
import { treeAt, withRepository } from './repository.ts';

export interface GateOptions {
  readonly repo: string;
  readonly base?: string;
  readonly head?: string;
  readonly worktree?: boolean;
  readonly now?: string;
  readonly failOn: 'error' | 'warning';
  /** On how many past changes to try rules that the branch alters; on 20 where left out. */
  readonly backTest?: number;
  /** Whether what a page shows beside the judgement is wanted. */
  readonly page?: boolean;
}

/** Judges; what stands in the way is in the judgement. The command line and the CI action both come here. */
export async function gate(options: GateOptions): Promise<Judgement> {
  return (await gateToAttest(options, new Date())).judgement;
}

/** As `gate`, with what a page shows beside the judgement, where one is wanted. */
export async function gateWithPage(
  options: GateOptions,
): Promise<{ readonly judgement: Judgement; readonly besides?: Besides }> {
  return gateToAttest(options, new Date());
}

interface Gated {
  readonly judgement: Judgement;
  /** What was judged; only where an attestation is asked for, and there were two revisions to judge. */
  readonly revisions: JudgedRevisions | undefined;
  /** What somebody who named nothing to judge may take for judged, and is not. */
  readonly remarks: readonly string[];
  /** How many files are changed and not committed: for the report on the screen, and no other, which is of the revisions. */
  readonly uncommitted?: number;
  readonly besides?: Besides;
}

type Options = GateOptions & AttestFlags & { readonly format?: ReportFormat };

/** Whatever fails, there is a judgement: a report that is left from an earlier run must not stand for this one. */
async function gateToAttest(options: Options, clock: Date): Promise<Gated> {
  try {
    return await gateAsTold(options, clock);
  } catch (error) {
    const day = dayOf(options.now, () => clock);
    return unjudged(notJudged([ownFault(error)], day.ok ? day.value : ''));
  }
}

async function gateAsTold(options: Options, clock: Date): Promise<Gated> {
  const day = dayOf(options.now, () => clock);
  const on = day.ok ? day.value : '';
  const attests =
    options.attest !== undefined || options.signWith !== undefined ? await attesting() : undefined;
  const misuse = attests?.attestMisuse(options);
  const problems = [...(day.ok ? [] : day.problems), ...(misuse === undefined ? [] : [misuse])];
  if (problems.length > 0) return unjudged(notJudged(problems, on));
  const gated = await withRepository(options.repo, async (repository) => {
    const compared = await resolveRevisions(repository, options);
    if (!compared.ok) return compared;
    const judged = await judgeAgainstMain(repository, compared.value, {
      on,
      failOn: options.failOn,
      ...(options.backTest === undefined ? {} : { backTest: options.backTest }),
    });
    const { judgement, readings, untried } = judged;
    const revisions =
      attests === undefined
        ? undefined
        : await attests.judgedRevisions(compared.value, judgement, readings, (commit) =>
            treeAt(repository, commit),
          );
    const unnamed = options.head === undefined && options.worktree !== true && options.format === 'text';
    const remarks = unnamed ? await remarksOn(repository, compared.value) : [];
    const uncommitted = unnamed ? await notCommitted(repository, compared.value, readings) : 0;
    const { unreadMain } = judgement.verdict === 'not judged' ? {} : judgement;
    const unread = unreadMain === undefined ? [] : [unreadSentence(unreadMain)];
    const besides =
      options.page === true
        ? await (await import('./besides.ts')).besidesOf(judgement, compared.value, readings)
        : undefined;
    const unproved =
      untried === undefined ? [] : [`The proposed rules could not be tried on past changes: ${untried}.`];
    return ok({
      judgement,
      revisions,
      remarks: [...unread, ...notPushedRemark(compared.value), ...remarks, ...unproved],
      ...(uncommitted === 0 ? {} : { uncommitted }),
      ...(besides === undefined ? {} : { besides }),
    });
  });
  return gated.ok ? gated.value : unjudged(notJudged(gated.problems, on));
}

/** Few gates attest; the others need not load what it takes. */
const attesting = () => import('./attestation.ts');

const unjudged = (judgement: Judgement): Gated => ({ judgement, revisions: undefined, remarks: [] });

/** About HEAD, judged because nothing else was named. */
async function remarksOn(
  repository: GitRepository,
  { how, headCommit, baseCommit, baseRef }: RevisionPair,
): Promise<readonly string[]> {
  const top = await repository.top();
  return [
    ...(top.ok ? await staleSchemas(top.value) : []),
    ...(how !== 'same'
      ? []
      : [
          headCommit === baseCommit
            ? `HEAD is the same as ${baseRef}; there is nothing to judge.`
            : `HEAD adds nothing to ${baseRef}; there is nothing to judge.`,
        ]),
  ];
}

/** Readings are left out: a branch's own are never judged by. */
function notCommitted(
  repository: GitRepository,
  { headCommit }: RevisionPair,
  { head }: ReadingPair,
): Promise<number> {
  const { storage, prices, policies, waivers } = pathsOf(head);
  return uncommittedFiles(repository, headCommit, [settingsFile, storage, prices, policies, waivers]);
}

export interface ReportTo {
  readonly format: ReportFormat;
  readonly path: string;
}

export interface GateFlags extends GateOptions, AttestFlags, ReportFlags {
  readonly format: ReportFormat;
  readonly report: readonly ReportTo[];
}

/** Writes the attestation that is asked for; where nothing could be compared there is nothing to attest. */
async function attestTo(flags: GateFlags, { judgement, revisions }: Gated, clock: Date) {
  if (flags.attest === undefined || revisions === undefined) return undefined;
  const { timeOf, writeAttestation } = await attesting();
  return writeAttestation(judgement, revisions, {
    path: flags.attest,
    signWith: flags.signWith,
    time: timeOf(flags.now, clock),
    report: {
      text: reportJson(judgement, flags),
      path: flags.report.find(({ format }) => format === 'json')?.path,
    },
  });
}

const exitCodes = { pass: 0, fail: 1, 'not judged': 2 } as const;

/** Judges once, writes every report that is asked for, and gives the one to print. */
export async function runGate(flags: GateFlags): Promise<Finished> {
  const clock = new Date();
  const inTheWay = await pathProblems(
    flags.report.map(({ path }) => path),
    flags.attest === undefined ? [] : [flags.attest],
  );
  if (inTheWay.length > 0) {
    const judgement = notJudged(inTheWay, '');
    return {
      output: await report(flags.format, judgement, terminal(flags)),
      code: 2,
      reason: summaryLine(judgement),
    };
  }
  const page = flags.format === 'html' || flags.report.some(({ format }) => format === 'html');
  const gated = await gateToAttest({ ...flags, page }, clock);
  const { judgement, remarks, uncommitted, besides } = gated;
  const code = exitCodes[judgement.verdict];
  const failures = (
    await Promise.all([
      ...flags.report.map(({ format, path }) =>
        writeReport(path, () =>
          report(format, judgement, { width: 100, colour: false, all: flags.all ?? false }, besides),
        ),
      ),
      attestTo(flags, gated, clock),
    ])
  ).filter((problem) => problem !== undefined);
  const onScreen = uncommitted === undefined ? judgement : { ...judgement, uncommitted };
  const output = await report(flags.format, onScreen, terminal(flags), besides);
  const [failure] = failures;
  if (failure !== undefined)
    return { output, code: 2, remarks, reason: `${failure.message}. ${failure.advice}` };
  if (code === 0) return { output, code, remarks };
  const unattested = flags.attest !== undefined && gated.revisions === undefined;
  return {
    output,
    code,
    remarks,
    reason: `${summaryLine(judgement)}${unattested ? '; no attestation was written' : ''}`,
  };
}
