/** `ullage steps`: the steps of a change alone, and what of them is done. */
import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { nearestWord } from '../base/nearest.ts';
import { err, type Outcome, ok } from '../base/problem.ts';
import { report, reportProblems, summaryLine } from '../report/report.ts';
import { type Doer, reportSteps, type StepsFormat } from '../report/steps.ts';
import type { Step } from '../runbook/step.ts';
import { readTicks } from '../runbook/ticks.ts';
import { type Finished, type ReportFlags, reasonOf, terminal } from './edge.ts';
import { gate } from './gate.ts';

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
  const overview = {
    judged,
    done: done.value,
    ...(server === undefined ? {} : { server }),
    ...(by === undefined ? {} : { by }),
  };
  const output = reportSteps(overview, format, terminal(flags));
  return judged.verdict === 'pass' ? { output, code: 0 } : { output, code: 1, reason: summaryLine(judged) };
}

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
