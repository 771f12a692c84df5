/** The commands beneath `ullage policy`: the policy itself. Static and light. */
import type { Command } from 'commander';
import type { PolicyFormat } from '../report/policy.ts';
import { at, oneOf, repo, type Sink, wholeNumber, withCommands } from './command.ts';
import type { PolicyCheckFlags } from './policy.ts';
import type { PolicyFetchFlags } from './policy-fetch.ts';
import type { PolicyHoldFlags } from './policy-hold.ts';

/** A fortnight: long enough to have a waiver signed anew. */
const usualSoon = 14;

const policyCheck = (above: Command, { finish }: Sink): Command =>
  above
    .command('check')
    .summary('what in the policy has no effect, contradicts itself, or is about to expire')
    .description(
      'Check the rule packs and waivers against the estate: unknown rules and parameters, rules that can find nothing, limits that overlap or exclude each other, entries looser than the shipped ones they override, waivers that end soon. Remarks do not affect the exit code.',
    )
    .addOption(repo())
    .addOption(at())
    .option(
      '--soon <days>',
      'how many days ahead the end of a waiver is remarked on',
      wholeNumber(4, 'Write a whole number of days, such as 14.'),
      usualSoon,
    )
    .addOption(
      oneOf<PolicyFormat>('--format <format>', 'what to print', { text: true, json: true }).default('text'),
    )
    .option('--now <date>', 'the day (default: today, in UTC)')
    .addHelpText('after', '\nExamples:\n  ullage policy check\n  ullage policy check --at main --soon 30')
    .action(async (flags: PolicyCheckFlags) =>
      finish(await (await import('./policy.ts')).runPolicyCheck(flags)),
    );

const several = (value: string, before: readonly string[]): readonly string[] => [...before, value];

const policyFetch = (above: Command, { finish }: Sink): Command =>
  above
    .command('fetch')
    .summary('fetch the rule packs that ullage.yaml lists of other repositories')
    .description(
      'Fetch the rule packs that ullage.yaml lists of other repositories, on main and on the branch, so that a judgement finds them at hand. Git goes only to repositories that main lists or --from names; the commits are kept under refs/ullage/.',
    )
    .addOption(repo())
    .option('--base <ref>', 'the main branch (default: found out)')
    .option('--head <ref>', 'the branch (default: the files as they are)')
    .option(
      '--from <url>',
      'a repository that main does not list yet; may be given several times',
      several,
      [],
    )
    .addHelpText(
      'after',
      '\nExit codes: 0 every pack is at hand, 2 one is not.\n\nExamples:\n  ullage policy fetch\n  ullage policy fetch --base origin/main --head HEAD',
    )
    .action(async (flags: PolicyFetchFlags) =>
      finish(await (await import('./policy-fetch.ts')).runPolicyFetch(flags)),
    );

const policyHold = (above: Command, { finish }: Sink): Command =>
  above
    .command('hold')
    .summary('print the lines with which ullage.yaml lists a pack of another repository')
    .description(
      'Fetch a rule pack from another repository, see that it reads, and print the lines with which ullage.yaml lists it: its commit and its digest. Nothing but the fetched commit is written.',
    )
    .argument('<name>', 'the name under which rule packs are to use it')
    .argument('<url>', 'the repository: https://, ssh:// or file:///')
    .argument('<path>', 'the file, from the root of that repository')
    .option('--commit <revision>', 'a commit by its id, a branch or a tag', 'HEAD')
    .addOption(repo())
    .addHelpText(
      'after',
      '\nExample:\n  ullage policy hold fleet https://git.example.org/fleet/storage-policy.git policies/fleet.yaml',
    )
    .action(async (name: string, url: string, path: string, flags: PolicyHoldFlags) =>
      finish(await (await import('./policy-hold.ts')).runPolicyHold({ name, url, path }, flags)),
    );

export const policy = (above: Command, sink: Sink): Command =>
  withCommands(
    above
      .command('policy')
      .summary('check the policy, and fetch packs that are kept elsewhere')
      .description('Check the policy itself, and fetch the packs of it that are kept in other repositories.'),
    [policyCheck, policyFetch, policyHold],
    sink,
  );
