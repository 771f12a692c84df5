/** The commands beneath `ullage survey`: what is really there, beside what is declared. Static and light. */
import type { Command } from 'commander';
import { type AddCommand, type Sink, withCommands } from './command.ts';

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
Run as the superuser the script sees everything; what it cannot see without, it says.

Example:
  ullage survey script | ssh plate-scanner sudo sh > plate-scanner.json`,
    )
    .action(async () => finish((await import('./survey-script.ts')).runSurveyScript()));

export const survey = (above: Command, sink: Sink): Command =>
  withCommands(
    above
      .command('survey')
      .summary('what is really there, beside what is declared')
      .description("Survey what is really there: by a server's own tools, and by the provider's list."),
    [script],
    sink,
  );
