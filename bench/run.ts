/** Measures whole commands side by side in one run, and prints their ratios. `npm run bench`. */
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { buildEstate } from './estate.ts';

const rounds = 5;
const ullage = join(import.meta.dirname, '../dist/ullage.cjs');
const parseOnce = join(tmpdir(), `ullage-parse-once-${process.pid}.cjs`);
// Bundled as the command is, so that neither pays for loading modules one by one.
buildSync({
  entryPoints: [join(import.meta.dirname, 'parse-once.ts')],
  bundle: true,
  platform: 'node',
  format: 'cjs',
  outfile: parseOnce,
});

/** Wall-clock milliseconds of one process, and the most memory it held, in MiB. */
function run(args: readonly string[]): { milliseconds: number; mebibytes: number } {
  const begun = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, ['--require', memoryHook, ...args], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  const milliseconds = Number(process.hrtime.bigint() - begun) / 1e6;
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}: ${stderr}`);
  const mebibytes = Number(/maxrss ([0-9]+)/.exec(stderr)?.[1] ?? 0) / 1024;
  return { milliseconds, mebibytes };
}

const memoryHook = join(import.meta.dirname, 'memory-hook.cjs');

const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;

/** Runs two commands in turn, so that whatever else the machine does falls on both. */
function besides(one: readonly string[], other: readonly string[]) {
  run(one);
  run(other);
  const runs = Array.from({ length: rounds }, () => ({ one: run(one), other: run(other) }));
  const of = (pick: (each: (typeof runs)[number]) => number): number => median(runs.map(pick));
  return {
    time: of((each) => each.one.milliseconds) / of((each) => each.other.milliseconds),
    memory: of((each) => each.one.mebibytes) / of((each) => each.other.mebibytes),
    one: of((each) => each.one.milliseconds),
    other: of((each) => each.other.milliseconds),
  };
}

const rounded = (number: number): string => number.toFixed(2);

for (const size of [
  { volumes: 10_000, files: 200 },
  { volumes: 20_000, files: 400 },
]) {
  const repository = buildEstate(size);
  const gate = [
    ullage,
    'gate',
    '--repo',
    repository,
    '--base',
    'main',
    '--head',
    'branch',
    '--now',
    '2026-11-20',
  ];
  const { time, memory, one, other } = besides(gate, [parseOnce, join(repository, 'storage')]);
  console.log(
    `${size.volumes} volumes in ${size.files} files, 3 changed: gate takes ${rounded(time)} times the time and ${rounded(memory)} times the memory of parsing the files once (${one.toFixed(0)} ms, ${other.toFixed(0)} ms)`,
  );
  rmSync(repository, { recursive: true });
}
rmSync(parseOnce);
