#!/usr/bin/env node
import { writeSync } from 'node:fs';
import { visible } from '../base/visible.ts';
import { reasonOf } from './edge.ts';
import { main } from './main.ts';

/** Ends at once, and as no verdict: Node's own exit code for what nobody caught is that of a failing branch. */
function endNotJudged(why: string): never {
  try {
    writeSync(2, `not judged: ${visible(why)}\n`);
  } catch {
    // With standard error gone as well, the exit code says it.
  }
  process.exit(2);
}

// A disk that is full, or a reader that has gone: what was printed is no whole answer. A standard output that was
// closed from the start is the null device by the time this runs; Node opens it in its place.
process.stdout.on('error', (error) =>
  endNotJudged(`standard output cannot be written to: ${reasonOf(error)}`),
);
process.stderr.on('error', () => {});
process.on('uncaughtException', (error) =>
  endNotJudged(`Ullage itself failed: ${reasonOf(error)}. Please report it with the command you ran.`),
);
// Should nothing be left to do before a command has ended, it has not judged.
process.once('beforeExit', () => {
  process.exitCode ??= 2;
});
void main(process.argv.slice(2)).then((code) => {
  process.exitCode = code;
});
