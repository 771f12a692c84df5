/** `ullage steps`: the steps of a change alone, and what of them is done. */
import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { nearestWord } from '../base/nearest.ts';
import { err, type Outcome, ok } from '../base/problem.ts';
import { bareSettings } from '../estate/settings.ts';
import { resolveRevisions } from '../git/compare.ts';
import type { Judged } from '../policy/judgement.ts';
import { readPair } from '../policy/pair.ts';
import { readSurveys } from '../policy/surveys.ts';
import { listInForce } from '../price/price-list.ts';
import { report, reportProblems, summaryLine } from '../report/report.ts';
import { type Doer, reportSteps, type StepsFormat } from '../report/steps.ts';
import type { Step } from '../runbook/step.ts';
import { type SurveyedTick, surveyedTicks } from '../runbook/surveyed-ticks.ts';
import { readTicks } from '../runbook/ticks.ts';
import { compareSurveys } from '../survey/compare.ts';
import { type Finished, type ReportFlags, reasonOf, terminal } from './edge.ts';
import { gate } from './gate.ts';
import { withRepository } from './repository.ts';

export interface StepsFlags extends ReportFlags {
  readonly repo: string;
  readonly base?: string;
  readonly head?: string;
  readonly worktree?: boolean;
  readonly server?: string;
  readonly by?: Doer;
  readonly done?: string;
  readonly now?: string;
  readonly format: StepsFormat;
}

export async function runSteps(flags: StepsFlags): Promise<Finished> {
  const { format, server, by, done: file, ...options } = flags;
  const judged = await gate({ ...options, failOn: 'error' });
  if (judged.verdict === 'not judged') {
    const form = format === 'mermaid' ? 'text' : format;
    return { output: await report(form, judged, terminal(flags)), code: 2, reason: summaryLine(judged) };
  }
  const done = file === undefined ? ok(new Set<number>()) : await ticksIn(file, judged.runbook);
  const asked = server === undefined ? ok(undefined) : serverOf(server, judged.runbook);
  const problems = [...(done.ok ? [] : done.problems), ...(asked.ok ? [] : asked.problems)];
  if (!done.ok || !asked.ok)
    return { output: reportProblems(problems, terminal(flags)), code: 2, reason: 'nothing was told' };
  const surveyed = file === undefined ? ok([]) : await surveyedAgainst(flags, judged, done.value);
  if (!surveyed.ok)
    return {
      output: reportProblems(surveyed.problems, terminal(flags)),
      code: 2,
      reason: 'a survey cannot be read',
    };
  const overview = {
    judged,
    done: done.value,
    surveyed: surveyed.value,
    ...(server === undefined ? {} : { server }),
    ...(by === undefined ? {} : { by }),
  };
  const output = reportSteps(overview, format, terminal(flags));
  if (judged.verdict === 'fail') return { output, code: 1, reason: summaryLine(judged) };
  return surveyed.value.length === 0
    ? { output, code: 0 }
    : { output, code: 1, reason: 'a survey shows otherwise than the ticks' };
}

/** The head's surveys, whoever brought them: they judge nothing here, and only tell how it stands. */
const surveyedAgainst = (
  flags: StepsFlags,
  { runbook, changes, on }: Judged,
  done: ReadonlySet<number>,
): Promise<Outcome<readonly SurveyedTick[]>> =>
  withRepository(flags.repo, async (repository) => {
    const compared = await resolveRevisions(repository, flags);
    if (!compared.ok) return compared;
    const { base, head } = await readPair(compared.value.base, compared.value.head);
    const { settings, priceLists } = head.revision;
    const surveys = await readSurveys(compared.value.head, (settings ?? bareSettings).paths.surveys);
    if (!surveys.ok) return surveys;
    const list = listInForce(priceLists, on);
    const [before, after] = [base, head].map(({ revision }) =>
      compareSurveys(revision.estate, surveys.value, list),
    );
    return ok(
      before === undefined || after === undefined
        ? []
        : surveyedTicks({ steps: runbook, changes, done, before, after }),
    );
  });

async function ticksIn(file: string, steps: readonly Step[]): Promise<Outcome<ReadonlySet<number>>> {
  try {
    return readTicks(file === '-' ? await text(process.stdin) : await readFile(file, 'utf8'), file, steps);
  } catch (error) {
    return err({
      message: `${file} cannot be read: ${reasonOf(error)}`,
      advice: 'Name the file that `ullage steps --format markdown` or `--format json` was kept in.',
    });
  }
}

/** A name with a slip in it would show a server without any step. */
function serverOf(server: string, steps: readonly Step[]): Outcome<undefined> {
  const named = [...new Set(steps.flatMap((step) => step.server ?? []))].sort();
  if (named.includes(server)) return ok(undefined);
  const near = nearestWord(server, named);
  return err({
    message: `no step is about a server ${server}`,
    advice: `${near === undefined ? '' : `Did you mean ${near}? `}${named.length === 0 ? 'No step is about a server.' : `There are steps for ${named.join(', ')}.`}`,
  });
}
