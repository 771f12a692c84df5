/** The commands beneath `ullage reading`: measured use. Static and light. */
import type { Command } from 'commander';
import { repo, type Sink, withCommands } from './command.ts';
import type { AddFlags, SummaryFlags } from './reading.ts';

const readingAdd = (above: Command, { finish }: Sink): Command =>
  above
    .command('add')
    .description(
      'Add what `df -P` printed on one server to the readings. Either all of it is added or nothing.',
    )
    .argument('[file]', 'what df printed; - is standard input', '-')
    .requiredOption('--server <name>', 'the server on which df ran')
    .option('--at <time>', 'when df ran, RFC 3339 (default: now)')
    .option('--mount <path...>', 'only these mount points (default: every declared one)')
    .option('--any-size', 'also accept a size that is far from the declared one')
    .addOption(repo())
    .addHelpText(
      'after',
      '\nExamples:\n  df -P | ullage reading add --server plate-scanner\n  ullage reading add df.txt --server plate-scanner --at 2026-11-20T06:00:00Z',
    )
    .action(async (file: string, flags: AddFlags) =>
      finish(await (await import('./reading.ts')).runReadingAdd(file, flags)),
    );

const readingSummary = (above: Command, { finish }: Sink): Command =>
  above
    .command('summary')
    .description(
      'Summarise the readings: how many there are, their first and last date, what is used, and when it will be full.',
    )
    .addOption(repo())
    .addHelpText('after', '\nExample:\n  ullage reading summary')
    .action(async (flags: SummaryFlags) =>
      finish(await (await import('./reading.ts')).runReadingSummary(flags)),
    );

export const reading = (above: Command, sink: Sink): Command =>
  withCommands(
    above
      .command('reading')
      .summary('keep readings of measured use')
      .description('Keep readings of measured use, from which headroom and forecasts are calculated.'),
    [readingAdd, readingSummary],
    sink,
  );
