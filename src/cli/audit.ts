/** `ullage audit`: judges the main branch's history, answers questions about it, and tries a policy on it. */
import { SingleBar } from 'cli-progress';
import { type AuditOptions, auditRecords } from '../audit/audit.ts';
import { backTest } from '../audit/back-test.ts';
import { holdAgainstEvidence, type ReplayedVerdict } from '../audit/evidence.ts';
import type { AuditRecord } from '../audit/record.ts';
import { Undone } from '../audit/undone.ts';
import { commitOn, countWalk, pathsInHistory, type Span } from '../audit/walk.ts';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import { mainBranch } from '../git/compare.ts';
import type { GitRepository } from '../git/repository.ts';
import { readRevision } from '../policy/reader.ts';
import {
  type AuditFormat,
  type AuditQuestion,
  type AuditTable,
  answer,
  backTestTable,
  evidenceTable,
  policyTable,
  recordCsv,
  recordLine,
  recordsCsvHead,
  reportAuditPage,
  reportTable,
} from '../report/audit/audit.ts';
import { type Finished, type ReportFlags, terminal } from './edge.ts';
import { readEvidence } from './evidence.ts';
import { notTold } from './not-told.ts';
import { openRecordStore, programId } from './record-store.ts';
import { withRepository } from './repository.ts';
import { triedRules } from './tried-rules.ts';

export interface AuditFlags extends ReportFlags {
  readonly repo: string;
  readonly since?: string;
  readonly until?: string;
  readonly show: AuditQuestion;
  readonly policyOn?: string;
  readonly try?: string;
  readonly cache?: string;
  readonly evidence?: string;
  readonly allowedSigners?: string;
  readonly failOn: 'error' | 'warning';
  readonly format: AuditFormat;
}

/** @param write takes what is printed before the end is known: records as lines, as they come */
export async function runAudit(
  span: string | undefined,
  flags: AuditFlags,
  write: (text: string) => void,
): Promise<Finished> {
  const done = await withRepository(flags.repo, (repository) => audit(repository, span, flags, write));
  if (done.ok) return done.value;
  return notTold(done.problems, flags, 'not judged: the history could not be audited');
}

async function audit(
  repository: GitRepository,
  named: string | undefined,
  flags: AuditFlags,
  write: (text: string) => void,
): Promise<Outcome<Finished>> {
  const misuse = misusesOf(flags);
  if (misuse.length > 0) return err(...misuse);
  const span = await spanOf(repository, named);
  if (!span.ok) return span;
  if (flags.policyOn !== undefined) return policyOn(repository, span.value.to, flags.policyOn, flags.format);
  const tried =
    flags.try === undefined ? ok(undefined) : await triedRules(repository, span.value.to, flags.try);
  const evidence =
    flags.evidence === undefined
      ? ok(undefined)
      : await readEvidence(flags.evidence, { allowedSigners: flags.allowedSigners });
  const store =
    flags.cache === undefined ? ok(undefined) : await openRecordStore(flags.cache, await programId());
  if (!tried.ok || !store.ok || !evidence.ok) {
    return err(...[tried, store, evidence].flatMap((each) => (each.ok ? [] : each.problems)));
  }
  const undone = new Undone();
  const onePage =
    flags.format === 'html' &&
    flags.show === 'records' &&
    flags.try === undefined &&
    flags.evidence === undefined;
  const options: AuditOptions = {
    span: span.value,
    since: flags.since,
    until: flags.until,
    failOn: flags.failOn,
    tried: tried.value,
    store: store.value,
    ...(flags.show === 'loosenings' || onePage ? { undone } : {}),
  };
  const streamed =
    flags.show === 'records' &&
    flags.try === undefined &&
    flags.evidence === undefined &&
    (flags.format === 'ndjson' || flags.format === 'csv');
  const records: AuditRecord[] = [];
  const progress = await progressOn(repository, span.value);
  try {
    if (streamed && flags.format === 'csv') write(recordsCsvHead());
    for await (const record of auditRecords(repository, { ...options, onCommit: progress.step })) {
      if (!record.ok) return record;
      if (!streamed) records.push(record.value);
      else write(flags.format === 'csv' ? recordCsv(record.value) : recordLine(record.value));
    }
  } finally {
    progress.stop();
  }
  if (streamed) return ok({ output: '', code: 0 });
  const printed = (table: AuditTable): string => reportTable(table, flags.format, terminal(flags));
  if (evidence.value !== undefined) {
    const held = holdAgainstEvidence(records.map(verdictOf), evidence.value);
    const output = printed(evidenceTable(held, records.length));
    return ok(
      held.findings.length === 0
        ? { output, code: 0 }
        : { output, code: 1, reason: 'fail: the evidence does not match the history' },
    );
  }
  if (onePage) return ok({ output: reportAuditPage(records, undone.passed), code: 0 });
  const table =
    flags.try === undefined ? answer(flags.show, records, undone.passed) : backTestTable(backTest(records));
  return ok({ output: printed(table), code: 0 });
}

/** A record as the evidence is held against it. */
const verdictOf = ({ commit, tree, base, verdict, on, failOn }: AuditRecord): ReplayedVerdict => ({
  commit,
  tree,
  base: base ?? undefined,
  verdict,
  on,
  failOn,
});

function misusesOf(flags: AuditFlags): readonly Problem[] {
  const { since, until, policyOn: day, show, try: tried, evidence } = flags;
  const days = { '--since': since, '--until': until, '--policy-on': day };
  const problems = Object.entries(days).flatMap(([option, value]): readonly Problem[] =>
    value === undefined || isDay(value)
      ? []
      : [
          {
            message: `${option} ${value} is not a day in the calendar`,
            advice: 'Write a date such as 2026-11-20.',
          },
        ],
  );
  if (tried !== undefined && show !== 'records') {
    problems.push({
      message: `--try and --show ${show} were both given`,
      advice: 'Give only one of them: --try has an answer of its own.',
    });
  }
  if (evidence !== undefined && (tried !== undefined || show !== 'records')) {
    problems.push({
      message: '--evidence was given with another question',
      advice: 'Give only one of --evidence, --try and --show.',
    });
  }
  if (evidence === undefined && flags.allowedSigners !== undefined) {
    problems.push({
      message: '--allowed-signers was given, and there is no evidence to check',
      advice: 'Name its folder with --evidence FOLDER.',
    });
  }
  return problems;
}

/** `FROM..TO`, or one ref for all history up to it; the main branch where nothing is named. */
export async function spanOf(repository: GitRepository, named: string | undefined): Promise<Outcome<Span>> {
  const [from, to, ...more] = named === undefined ? [] : named.split('..');
  if (more.length > 0 || named?.includes('...')) {
    return err({
      message: `${named} is not a range of commits`,
      advice: 'Write FROM..TO with two refs, such as v1..main, or one ref for all history up to it.',
    });
  }
  const end = (to === undefined ? from : to) || ((await mainBranch(repository)) ?? 'HEAD');
  const last = await repository.resolveCommit(end);
  if (!last.ok && end === 'HEAD') {
    return err({
      message: 'the repository has no commit yet, and so no history to audit',
      advice: 'Commit something on the main branch first.',
    });
  }
  const first =
    to === undefined || from === undefined || from === '' ? undefined : await repository.resolveCommit(from);
  if (!last.ok || first?.ok === false) {
    return err(...(last.ok ? [] : last.problems), ...(first === undefined || first.ok ? [] : first.problems));
  }
  return ok({ to: last.value, ...(first === undefined ? {} : { from: first.value }) });
}

async function policyOn(
  repository: GitRepository,
  to: string,
  day: string,
  format: AuditFormat,
): Promise<Outcome<Finished>> {
  const commit = await commitOn(repository, to, day);
  if (!commit.ok) return commit;
  const { id, tree } = commit.value;
  const revision = await readRevision(repository.tree(tree, { revision: id, name: id.slice(0, 12) }));
  return revision.ok
    ? ok({ output: reportTable(policyTable(revision.value, id, day), format, terminal()), code: 0 })
    : revision;
}

interface Progress {
  readonly step: () => void;
  readonly stop: () => void;
}

/** A bar with the rate and the time left on a terminal; nothing elsewhere. */
export async function progressOn(
  repository: GitRepository,
  span: Span,
  stream: NodeJS.WritableStream & { readonly isTTY?: boolean } = process.stderr,
): Promise<Progress> {
  const quiet: Progress = { step: () => {}, stop: () => {} };
  if (!stream.isTTY) return quiet;
  const choices = await pathsInHistory(repository, span.to);
  const total = choices.ok ? await countWalk(repository, span, choices.value) : undefined;
  if (total === undefined || total === 0) return quiet;
  const bar = new SingleBar({
    format: '{bar} {value} of {total} commits, {rate} a second, {eta_formatted} left',
    stream,
    clearOnComplete: true,
    hideCursor: true,
    etaBuffer: 100,
  });
  const begun = Date.now();
  let done = 0;
  bar.start(total, 0, { rate: '0' });
  return {
    step: () => {
      done++;
      const seconds = (Date.now() - begun) / 1000;
      bar.increment(1, { rate: seconds > 0 ? (done / seconds).toFixed(0) : '0' });
    },
    stop: () => bar.stop(),
  };
}
