/** `ullage gate`: judges a branch against the main branch. */
import { type Command, InvalidArgumentError } from 'commander';
import { type Judgement, notJudged } from '../policy/judgement.ts';
import { judgeTrees, ParsedFiles } from '../policy/revision.ts';
import { whatIsCompared } from '../read/compare.ts';
import { found } from '../read/problem.ts';
import { type ReportFormat, report, reportFormats } from '../report/report.ts';
import { summaryLine } from '../report/text.ts';
import { dayOf, type Finished, terminal, writeReport } from './edge.ts';
import { withRepository } from './repository.ts';

export interface GateOptions {
  readonly repo: string;
  readonly base?: string;
  readonly head?: string;
  readonly worktree?: boolean;
  readonly now?: string;
  readonly failOn: 'error' | 'warning';
}

/** Judges; what stands in the way is in the judgement. The command line and the CI action both come here. */
export async function gate(options: GateOptions): Promise<Judgement> {
  const day = dayOf(options.now);
  if (!day.ok) return notJudged(day.problems, '');
  const on = day.value;
  const judgement = await withRepository(options.repo, async (repository) => {
    const compared = await whatIsCompared(repository, options);
    if (!compared.ok) return compared;
    const { base, head } = compared.value;
    return found(await judgeTrees(base, head, new ParsedFiles(), { on, failOn: options.failOn }));
  });
  return judgement.ok ? judgement.value : notJudged(judgement.problems, on);
}

interface ReportTo {
  readonly format: ReportFormat;
  readonly path: string;
}

interface GateFlags extends GateOptions {
  readonly format: ReportFormat;
  readonly report: readonly ReportTo[];
}

const exitCodes = { pass: 0, fail: 1, 'not judged': 2 } as const;

/** Judges once, writes every report that is asked for, and gives the one to print. */
export async function runGate(flags: GateFlags): Promise<Finished> {
  const judgement = await gate(flags);
  const code = exitCodes[judgement.verdict];
  const failures = (
    await Promise.all(
      flags.report.map(({ format, path }) =>
        writeReport(path, report(format, judgement, { width: 100, colour: false })),
      ),
    )
  ).filter((problem) => problem !== undefined);
  const output = report(flags.format, judgement, terminal());
  const [failure] = failures;
  if (failure !== undefined) return { output, code: 2, reason: `${failure.message}. ${failure.advice}` };
  return code === 0 ? { output, code } : { output, code, reason: summaryLine(judgement) };
}

function reportTo(value: string, before: readonly ReportTo[]): readonly ReportTo[] {
  const [name = '', ...rest] = value.split('=');
  const format = reportFormats.find((known) => known === name);
  const path = rest.join('=');
  if (format === undefined || path === '') {
    throw new InvalidArgumentError(`Write it as FORMAT=PATH, with one of ${reportFormats.join(', ')}.`);
  }
  return [...before, { format, path }];
}

export const addGate = (program: Command, finish: (finished: Finished) => void): Command =>
  program
    .command('gate')
    .summary('judge a branch against the main branch')
    .description(
      'Judge what the main branch would be after a merge: is it safe, does it fit, what does it cost, who is over a limit?',
    )
    .option('--repo <dir>', 'the repository', '.')
    .option('--base <ref>', 'the main branch (default: found out from the remote)')
    .option('--head <ref>', 'the branch to judge (default: HEAD)')
    .option('--worktree', 'judge the uncommitted files instead of a branch')
    .addOption(
      program
        .createOption('--format <format>', 'what to print')
        .choices([...reportFormats])
        .default('text'),
    )
    .option(
      '--report <format=path>',
      'write a report to a file as well; may be given several times',
      reportTo,
      [],
    )
    .addOption(
      program
        .createOption('--fail-on <level>', 'the level from which a finding fails')
        .choices(['error', 'warning'])
        .default('error'),
    )
    .option('--now <date>', 'the day to judge as of (default: today, in UTC)')
    .addHelpText(
      'after',
      `
Exit codes: 0 pass, 1 fail, 2 not judged.

Examples:
  ullage gate --base main --head grow-plates
  ullage gate --worktree
  ullage gate --base origin/main --format markdown --report json=out/gate.json --report sarif=out/gate.sarif`,
    )
    .action(async (flags: GateFlags) => finish(await runGate(flags)));
