/**
 * The table of commands: what the help says of each, and how its line is read. It is static and light; what a command
 * runs is loaded when it is run, so that asking for help, or for one command, never loads the others.
 */
import { Argument, type Command, InvalidArgumentError, Option } from 'commander';
import type { Grouping } from '../price/cost.ts';
import type { AuditFormat, AuditQuestion } from '../report/audit/audit.ts';
import type { CostFormat } from '../report/cost.ts';
import type { HeadroomFormat } from '../report/headroom.ts';
import type { ReportFormat } from '../report/report.ts';
import type { RuleFormat } from '../report/rules.ts';
import type { Doer, StepsFormat } from '../report/steps.ts';
import type { AuditFlags } from './audit.ts';
import { type AddCommand, at, oneOf, repo, type Sink, wholeNumber, withCommands } from './command.ts';
import type { Shell } from './completion.ts';
import type { CostFlags } from './cost.ts';
import type { GateFlags, ReportTo } from './gate.ts';
import type { HeadroomFlags } from './headroom.ts';
import type { NewFlags } from './new.ts';
import { policy } from './policy-commands.ts';
import { reading } from './reading-commands.ts';
import type { RuleFlags } from './rules.ts';
import type { StepsFlags } from './steps.ts';
import { survey } from './survey-commands.ts';

const failOn = (): Option =>
  oneOf<GateFlags['failOn']>('--fail-on <level>', 'the level from which a finding fails', {
    error: true,
    warning: true,
  }).default('error');

const reportFormats: Readonly<Record<ReportFormat, true>> = {
  text: true,
  markdown: true,
  json: true,
  sarif: true,
  junit: true,
  html: true,
};

function reportTo(value: string, before: readonly ReportTo[]): readonly ReportTo[] {
  const [name = '', ...rest] = value.split('=');
  const path = rest.join('=');
  if (!isReportFormat(name) || path === '') {
    const known = Object.keys(reportFormats).join(', ');
    throw new InvalidArgumentError(`Write it as FORMAT=PATH, with one of ${known}.`);
  }
  return [...before, { format: name, path }];
}

const isReportFormat = (name: string): name is ReportFormat => Object.hasOwn(reportFormats, name);

const gate = (above: Command, { finish }: Sink): Command =>
  above
    .command('gate')
    .summary('judge a branch against the main branch')
    .description(
      'Judge what the main branch would be after a merge: is it safe, does it fit, what does it cost, who is over a limit?',
    )
    .addOption(repo())
    .option('--base <ref>', 'the main branch (default: found out from the remote)')
    .option('--head <ref>', 'the branch to judge (default: HEAD)')
    .option('--worktree', 'judge the uncommitted files instead of a branch')
    .addOption(oneOf<ReportFormat>('--format <format>', 'what to print', reportFormats).default('text'))
    .option(
      '--report <format=path>',
      'write a report to a file as well; may be given several times',
      reportTo,
      [],
    )
    .addOption(failOn())
    .option(
      '--back-test <count>',
      'try rules that the branch changes on this many past changes of main (default: 20; 0 for none)',
      wholeNumber(5, 'Write a whole number, such as 50.'),
    )
    .option('--attest <file>', 'write the judgement as an in-toto attestation')
    .option('--sign-with <key>', 'sign the attestation with an SSH key, into FILE.sig')
    .option('--now <date>', 'the day to judge as of (default: today, in UTC)')
    .addHelpText(
      'after',
      `
Exit codes: 0 pass, 1 fail, 2 not judged.

Examples:
  ullage gate --base main --head grow-plates
  ullage gate --worktree
  ullage gate --base origin/main --format markdown --report json=out/gate.json --report sarif=out/gate.sarif
  ullage gate --base origin/main --attest evidence/gate.intoto.json --sign-with ~/.ssh/gate`,
    )
    .action(async (flags: GateFlags) => finish(await (await import('./gate.ts')).runGate(flags)));

const steps = (above: Command, { finish }: Sink): Command =>
  above
    .command('steps')
    .summary('the steps that carry a change out, ticked off as they are done')
    .description(
      'Show the steps that carry a branch out, or what main took in since a commit: who does each and where, what comes first, what is to be seen then, how to step back, and what billing does from there on.',
    )
    .addOption(repo())
    .option('--base <ref>', 'main before the change (default: found out from the remote)')
    .option('--head <ref>', 'the branch, or main after the change (default: HEAD)')
    .option('--worktree', 'the steps of the uncommitted files instead of a branch')
    .option('--server <name>', 'only what is done on this server, or to it')
    .addOption(
      oneOf<Doer>('--by <who>', 'only what is done at the provider, in a guest, or made sure of by people', {
        provider: true,
        guest: true,
        people: true,
      }),
    )
    .option(
      '--done <file>',
      'what is done: the check-list with its ticks, with the day right behind the id where a survey is older, or the JSON with its list; - is standard input',
    )
    .addOption(
      oneOf<StepsFormat>('--format <format>', 'what to print; markdown is a check-list', {
        text: true,
        markdown: true,
        json: true,
        html: true,
        mermaid: true,
      }).default('text'),
    )
    .option('--now <date>', 'the day to judge as of (default: today, in UTC)')
    .addHelpText(
      'after',
      `
Exit codes: 0 the verdict is pass; 1 it is fail and no step is to be carried out, or a survey shows otherwise than
the ticks; 2 not judged.

Examples:
  ullage steps --base main --head grow-plates
  ullage steps --base main --head grow-plates --format markdown > steps.md
  ullage steps --base main --head grow-plates --done steps.md
  ullage steps --base v12 --head main --server plate-scanner`,
    )
    .action(async (flags: StepsFlags) => finish(await (await import('./steps.ts')).runSteps(flags)));

const cost = (above: Command, { finish }: Sink): Command =>
  above
    .command('cost')
    .summary('what the estate costs a month, and why')
    .description(
      'Price the estate by the price list in force: by team, site, tier, server or volume, each with its calculation.',
    )
    .addOption(repo())
    .addOption(at())
    .addOption(
      oneOf<Grouping>('--by <grouping>', 'what to group by', {
        team: true,
        site: true,
        tier: true,
        server: true,
        volume: true,
      }).default('team'),
    )
    .addOption(
      oneOf<CostFormat>('--format <format>', 'what to print; csv and json list every volume and server', {
        text: true,
        json: true,
        csv: true,
        html: true,
      }).default('text'),
    )
    .option('--now <date>', 'the day whose prices apply (default: today, in UTC)')
    .addHelpText(
      'after',
      '\nExamples:\n  ullage cost\n  ullage cost --by volume --at main\n  ullage cost --now 2027-01-01',
    )
    .action(async (flags: CostFlags) => finish(await (await import('./cost.ts')).runCost(flags)));

const headroom = (above: Command, { finish }: Sink): Command =>
  above
    .command('headroom')
    .summary('what headroom is left, layer by layer')
    .description(
      'Show what is provisioned, allocated, used and free at each layer: site quota, attachment slots, volume groups, file systems.',
    )
    .addOption(repo())
    .addOption(at())
    .addOption(
      oneOf<HeadroomFormat>('--format <format>', 'what to print', {
        text: true,
        json: true,
        html: true,
      }).default('text'),
    )
    .option('--now <date>', 'the day whose prices apply to unallocated capacity (default: today, in UTC)')
    .addHelpText('after', '\nExamples:\n  ullage headroom\n  ullage headroom --at main --format json')
    .action(async (flags: HeadroomFlags) => finish(await (await import('./headroom.ts')).runHeadroom(flags)));

const rules = (above: Command, { finish }: Sink): Command =>
  above
    .command('rules')
    .summary('what each rule refuses, why, and what to do about it')
    .description(
      'List the rules, or explain the ones named: what each refuses, why, its parameters, and what to do about a finding.',
    )
    .argument('[names...]', 'rules to explain in full')
    .option(
      '--pack <name>',
      'what a pack that ships with Ullage holds in place of the rules: starter or strict',
    )
    .addOption(
      oneOf<RuleFormat>('--format <format>', 'what to print', {
        text: true,
        markdown: true,
        json: true,
      }).default('text'),
    )
    .addHelpText(
      'after',
      '\nExamples:\n  ullage rules\n  ullage rules no-shrink growth-step\n  ullage rules --pack starter',
    )
    .action(async (names: readonly string[], flags: RuleFlags) =>
      finish((await import('./rules.ts')).runRules(names, flags)),
    );

const starter = (above: Command, { finish }: Sink): Command =>
  above
    .command('new')
    .summary('write a starter repository layout')
    .description(
      'Write a small, commented starter layout: settings, an estate file, a price list, a rule pack. Of what is there already nothing is overwritten, and what is lacking is written beside it.',
    )
    .addOption(new Option('--repo <dir>', 'where to write it').default('.'))
    .option('--now <date>', 'the day whose year the price list begins in (default: today)')
    .option('--schemas', 'write only .ullage/schema anew, by which editors complete, over what is there')
    .addHelpText('after', '\nExamples:\n  ullage new\n  ullage new --repo estate')
    .action(async (flags: NewFlags) => finish(await (await import('./new.ts')).runNew(flags)));

const audit = (above: Command, { finish, write }: Sink): Command =>
  above
    .command('audit')
    .summary('judge history; try a policy on it')
    .description(
      "Judge each commit of the main branch as the gate would have judged it then: against its first parent, by that parent's policy, on the committer's day.",
    )
    .argument('[span]', 'FROM..TO, or one ref for all history up to it (default: the main branch)')
    .addOption(repo())
    .option('--since <day>', 'only commits of this day and later')
    .option('--until <day>', 'only commits of this day and earlier')
    .addOption(
      oneOf<AuditQuestion>('--show <question>', 'what to answer', {
        records: true,
        'merged-anyway': true,
        loosenings: true,
        spend: true,
        open: true,
        waivers: true,
      }).default('records'),
    )
    .option('--policy-on <day>', 'show the policy as it was on a day, and judge nothing')
    .option(
      '--try <policy>',
      'rules to judge by in place of those of the time: a file, or what the main branch had at a revision or on a day',
    )
    .option('--evidence <folder>', 'compare the attestations in a folder with the replay')
    .option('--allowed-signers <file>', 'whose signatures on the evidence are accepted')
    .option('--cache <dir>', 'a folder to keep records in, so that an interrupted run can continue')
    .addOption(failOn())
    .addOption(
      oneOf<AuditFormat>('--format <format>', 'what to print', {
        text: true,
        ndjson: true,
        csv: true,
        markdown: true,
        html: true,
      }).default('text'),
    )
    .addHelpText(
      'after',
      `
Questions:
  records        every commit, its verdict and its cost
  merged-anyway  failing changes that were merged
  loosenings     every loosening of a rule, with from, to and by whom
  spend          the monthly cost of each team's storage, change by change
  open           how long each violation was open
  waivers        which waivers were used, and which were still needed after their date

Exit codes: 0 done, 1 the evidence does not match the history, 2 not judged. A commit that cannot be judged is
in the records, with the reason.

Examples:
  ullage audit
  ullage audit v1..main --format ndjson
  ullage audit --since 2026-01-01 --show open
  ullage audit --policy-on 2026-03-31
  ullage audit --evidence evidence --allowed-signers allowed_signers
  ullage audit --try policies/proposed.yaml --cache ~/.cache/ullage
  ullage audit --try 2026-03-31`,
    )
    .action(async (span: string | undefined, flags: AuditFlags) =>
      finish(await (await import('./audit.ts')).runAudit(span, flags, write)),
    );

const completion = (above: Command, { finish }: Sink): Command =>
  above
    .command('completion')
    .summary('print a script with which a shell completes command lines')
    .description(
      'Print a script with which a shell completes commands, options, their values and the names of rules.',
    )
    .addArgument(new Argument('<shell>', 'the shell').choices(['bash', 'zsh', 'fish']))
    .addHelpText(
      'after',
      `
Examples:
  bash  with the package bash-completion, in a folder that mkdir -p makes:
        ullage completion bash > ~/.local/share/bash-completion/completions/ullage
        without it, in ~/.bashrc: source <(ullage completion bash)
  zsh   in ~/.zshrc, after compinit: source <(ullage completion zsh)
  fish  ullage completion fish > ~/.config/fish/completions/ullage.fish`,
    )
    .action(async (shell: Shell) => finish((await import('./completion.ts')).runCompletion(shell)));

/** What the printed script asks at every press of the key. */
const complete = (above: Command, { finish }: Sink): Command =>
  above
    .command('complete', { hidden: true })
    .argument('[words...]')
    .action(async (words: readonly string[]) =>
      finish(await (await import('./completion.ts')).runComplete(words, addWorkCommands)),
    );

const addWorkCommands: AddCommand = (program, sink) =>
  withAll(
    withCommands(
      program,
      [gate, steps, cost, headroom, rules, starter, reading, policy, audit, survey],
      sink,
    ),
  );

/** Adds every command, in the order in which the help lists them. */
export const addCommands: AddCommand = (program, sink) =>
  withCommands(addWorkCommands(program, sink), [completion, complete], sink);

/** Whatever reads a repository may have more to say than fits a screen. */
function withAll(program: Command): Command {
  for (const command of program.commands) {
    withAll(command);
    if (command.options.some(({ long }) => long === '--repo') && command.name() !== 'new') {
      const sarif = command.name() === 'gate' ? '; SARIF whole, though a host may refuse it' : '';
      command.option(
        '--all',
        `show every problem and finding, and in JSON what is unchanged as well${sarif}`,
      );
    }
  }
  return program;
}
