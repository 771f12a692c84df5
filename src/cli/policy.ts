/** `ullage policy check`: a policy held against the estate it is for. */
import { type Command, InvalidArgumentError } from 'commander';
import { err, ok } from '../base/problem.ts';
import { checkPolicy } from '../policy/check.ts';
import type { Policy } from '../policy/policy.ts';
import { type PolicyFormat, policyFormats, reportPolicyCheck } from '../report/policy.ts';
import { reportProblems } from '../report/problems.ts';
import { type Finished, terminal } from './edge.ts';
import { shownOn, withRepository } from './repository.ts';

interface PolicyCheckFlags {
  readonly repo: string;
  readonly at?: string;
  readonly soon: number;
  readonly now?: string;
  readonly format: PolicyFormat;
}

/** A fortnight: long enough to have a waiver signed anew. */
const usualSoon = 14;

export async function runPolicyCheck(flags: PolicyCheckFlags): Promise<Finished> {
  const { repo, soon, format } = flags;
  const checked = await withRepository(repo, async (repository) => {
    const shown = await shownOn(repository, flags);
    if (!shown.ok) return shown;
    const { on, settings, revision } = shown.value;
    const { estate, priceLists, rules, waivers, packs, hasPacks } = revision;
    if (!hasPacks) {
      return err({
        message: `there is no rule pack in ${settings.paths.policies}/`,
        advice: 'Write one with `use: [starter]`; `ullage new` shows how one looks.',
      });
    }
    const policy: Policy = { settings, priceLists, rules, waivers };
    const remarks = checkPolicy(policy, packs, estate, { on, soon });
    return ok({ on, rules: rules.length, waivers: waivers.length, remarks });
  });
  if (!checked.ok) {
    return {
      output: reportProblems(checked.problems, terminal()),
      code: 2,
      reason: 'not judged: the policy cannot be read',
    };
  }
  return { output: reportPolicyCheck(checked.value, format, terminal()), code: 0 };
}

const wholeDays = (text: string): number => {
  if (!/^[0-9]{1,4}$/.test(text)) throw new InvalidArgumentError('Write a whole number of days, such as 14.');
  return Number(text);
};

export const addPolicy = (program: Command, finish: (finished: Finished) => void): Command => {
  const policy = program
    .command('policy')
    .summary('check a pack against the estate')
    .description('Look after the policy itself.');
  policy
    .command('check')
    .summary('what in the policy can do nothing, contradicts itself, or is about to run out')
    .description(
      'Hold the rule packs and waivers against the estate: unknown rules and parameters, rules that can find nothing, limits that overlap or exclude each other, entries looser than the shipped ones they override, waivers that end soon. A remark fails nothing.',
    )
    .option('--repo <dir>', 'the repository', '.')
    .option('--at <ref>', 'a revision (default: the files as they are)')
    .option('--soon <days>', 'a waiver that ends within so many days is remarked on', wholeDays, usualSoon)
    .addOption(
      policy
        .createOption('--format <format>', 'what to print')
        .choices([...policyFormats])
        .default('text'),
    )
    .option('--now <date>', 'the day (default: today, in UTC)')
    .addHelpText('after', '\nExamples:\n  ullage policy check\n  ullage policy check --at main --soon 30')
    .action(async (flags: PolicyCheckFlags) => finish(await runPolicyCheck(flags)));
  return policy;
};
