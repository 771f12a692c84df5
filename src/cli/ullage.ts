#!/usr/bin/env node
import { main } from './main.ts';

// A reader that stops early (a pager, head) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});
// Should nothing be left to do before a command has ended, it has not judged.
process.once('beforeExit', () => {
  process.exitCode ??= 2;
});
void main(process.argv.slice(2)).then((code) => {
  process.exitCode = code;
});
