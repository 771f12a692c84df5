/** The command line: parses the arguments, runs one command, and turns whatever comes into one of three exit codes. */
import { Command, CommanderError } from 'commander';
import { visible } from '../base/visible.ts';
import { version } from '../version.ts';
import { addCommands } from './commands.ts';
import { type Finished, reasonOf, stillWorking } from './edge.ts';
import { nodeVersionProblem } from './node-version.ts';

/** Where the command line writes to. */
export interface Streams {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

const standardStreams: Streams = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
};

const programFor = ({ out, err }: Streams, finish: (finished: Finished) => void): Command =>
  addCommands(
    new Command('ullage')
      .description(
        'Judges each proposed change to rented storage against the main branch before it is merged.',
      )
      .version(version, '--version', 'print the version')
      .helpOption('-h, --help', 'print this help')
      .helpCommand('help [command]', 'print the help of a command')
      .showSuggestionAfterError()
      .configureOutput({ writeOut: out, writeErr: err })
      .exitOverride(),
    { finish, write: out },
  );

/** Runs one command line; the exit code is 0 pass or done, 1 fail, 2 not judged (bad input or usage among it). */
export async function main(args: readonly string[], streams: Streams = standardStreams): Promise<number> {
  let code = 0;
  // The audit has a bar of its own, and completing a word is done before a second is over.
  const isShown = !['audit', 'complete', 'completion'].includes(args[0] ?? '');
  const working = isShown ? stillWorking(`ullage ${visible(args[0] ?? '')}`) : undefined;
  const finish = (finished: Finished): void => {
    working?.stop();
    streams.out(finished.output);
    for (const remark of finished.remarks ?? []) streams.err(`${visible(remark)}\n`);
    if (finished.reason !== undefined) streams.err(`${visible(finished.reason)}\n`);
    code = finished.code;
  };
  const tooOld = nodeVersionProblem(process.versions.node);
  if (tooOld !== undefined) {
    streams.err(`not judged: ${tooOld.message}. ${tooOld.advice}\n`);
    return 2;
  }
  try {
    await programFor(streams, finish).parseAsync([...args], { from: 'user' });
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    // A fault of Ullage's own must never look like a pass, nor bury the reader in a stack.
    streams.err(
      `not judged: Ullage itself failed: ${visible(reasonOf(error))}. Please report it with the command you ran.\n`,
    );
    return 2;
  } finally {
    working?.stop();
  }
  return code;
}
