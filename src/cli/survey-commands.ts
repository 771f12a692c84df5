/** The commands beneath `ullage survey`: what is really there, beside what is declared. Static and light. */
import type { Command } from 'commander';
import type { SurveyFormat } from '../report/survey.ts';
import { type AddCommand, at, oneOf, repo, type Sink, withCommands } from './command.ts';
import type { SurveyAddFlags } from './survey-add.ts';
import type { SurveyCompareFlags } from './survey-compare.ts';
import type { SurveyDeclareFlags } from './survey-declare.ts';
import type { SurveyProviderFlags } from './survey-provider.ts';

const script: AddCommand = (above, { finish }) =>
  above
    .command('script')
    .summary('print a shell script that surveys a server')
    .description(
      "Print a POSIX shell script to run on a server. It prints, as JSON, what the server's own tools say of its disks, volume groups, file systems and mounts. It installs and writes nothing, and gathers no host name, address, user or process.",
    )
    .addHelpText(
      'after',
      `
Run as the superuser the script sees everything; what it cannot see without, it says. Where sudo asks for a
password, copy the script to the server, and run it there.

Example:
  ullage survey script | ssh plate-scanner sudo sh > plate-scanner.json`,
    )
    .action(async () => finish((await import('./survey-script.ts')).runSurveyScript()));

const add: AddCommand = (above, { finish }) =>
  above
    .command('add')
    .summary('keep what the script printed on a server')
    .description(
      "Keep what matters of what the survey's script printed on a server, in surveys/NAME.json. What df measured there is added to the readings.",
    )
    .argument('[file]', 'what the script printed; - is standard input', '-')
    .requiredOption('--server <name>', 'the server on which the script ran')
    .option('--replace', 'also replace a newer survey, or a file that is no survey')
    .option('--undeclared', 'keep it though the server is not declared, and one of nearly that name is')
    .addOption(repo())
    .addHelpText(
      'after',
      '\nExamples:\n  ullage survey add plate-scanner.json --server plate-scanner\n  ullage survey script | ssh plate-scanner sudo sh | ullage survey add --server plate-scanner',
    )
    .action(async (file: string, flags: SurveyAddFlags) =>
      finish(await (await import('./survey-add.ts')).runSurveyAdd(file, flags)),
    );

const provider: AddCommand = (above, { finish }) =>
  above
    .command('provider')
    .summary("keep the provider's own list of volumes and servers")
    .description(
      "Keep what matters of the provider's list of volumes and servers (CSV, JSON, or a JSON value in each line) in surveys/provider.json. Which field is which is declared in ullage.yaml, under provider-list:.",
    )
    .argument('<file...>', 'the lists')
    .option('--at <time>', 'when they were taken, RFC 3339 (default: now)')
    .addOption(repo())
    .addHelpText('after', '\nExample:\n  ullage survey provider volumes.csv servers.csv')
    .action(async (files: string[], flags: SurveyProviderFlags) =>
      finish(await (await import('./survey-provider.ts')).runSurveyProvider(files, flags)),
    );

const compare: AddCommand = (above, { finish }) =>
  above
    .command('compare')
    .summary('what is there beside what is declared')
    .description(
      'Hold the surveys against what is declared, layer by layer: what is not declared, what is not there, and what is otherwise.',
    )
    .addOption(repo())
    .addOption(at())
    .addOption(
      oneOf<SurveyFormat>('--format <format>', 'what to print', {
        text: true,
        markdown: true,
        json: true,
        html: true,
      }).default('text'),
    )
    .option('--now <date>', 'the day to count ages and prices from (default: today, in UTC)')
    .addHelpText(
      'after',
      `
Exit codes: 0 nothing differs, 1 something does, 2 it could not be told.

Examples:
  ullage survey compare
  ullage survey compare --at main --format json`,
    )
    .action(async (flags: SurveyCompareFlags) =>
      finish(await (await import('./survey-compare.ts')).runSurveyCompare(flags)),
    );

const declare: AddCommand = (above, { finish }) =>
  above
    .command('declare')
    .summary('write what is there and not declared as estate files')
    .description(
      'Write what the surveys show and nobody has declared as estate files, marked as existing: one a server, and one of the volumes that no server holds. What only a person can know is asked for where it belongs.',
    )
    .option(
      '--into <dir>',
      'write the files into a folder of the repository; a file that is there is not touched',
    )
    .addOption(repo())
    .addHelpText('after', '\nExamples:\n  ullage survey declare\n  ullage survey declare --into storage')
    .action(async (flags: SurveyDeclareFlags) =>
      finish(await (await import('./survey-declare.ts')).runSurveyDeclare(flags)),
    );

export const survey = (above: Command, sink: Sink): Command =>
  withCommands(
    above
      .command('survey')
      .summary('what is really there, beside what is declared')
      .description("Survey what is really there: by a server's own tools, and by the provider's list."),
    [script, add, provider, compare, declare],
    sink,
  );
