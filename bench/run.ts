/**
 * Measures whole commands beside yardsticks in one run, and prints one table of ratios: processor time, children
 * included, and time on the wall. `npm run bench`, or `npm run bench -- --only audit --rounds 3 --before FOLDER`.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { buildSync } from 'esbuild';
import { type Case, casesOf, type Load } from './cases.ts';

const { values: flags } = parseArgs({
  options: {
    only: { type: 'string', default: '' },
    rounds: { type: 'string', default: '5' },
    before: { type: 'string' },
  },
});

// Everything that is built is put into one folder, and goes with it.
const scratch = mkdtempSync(join(tmpdir(), 'ullage-bench-run-'));
process.env.TMPDIR = scratch;
process.once('exit', () => rmSync(scratch, { recursive: true, force: true, maxRetries: 3 }));

const commandIn = (checkout: string): string => {
  const built = ['dist/ullage.cjs', 'dist/ullage.js'].map((name) => join(checkout, name)).find(existsSync);
  if (built === undefined) throw new Error(`${checkout} has no built command: ${readdirSync(checkout)}`);
  return built;
};

const parseOnce = join(scratch, 'parse-once.cjs');
// Bundled as the command is, so that neither pays for loading modules one by one.
buildSync({
  entryPoints: [join(import.meta.dirname, 'parse-once.ts')],
  bundle: true,
  platform: 'node',
  format: 'cjs',
  outfile: parseOnce,
});

interface Cost {
  readonly wallMs: number;
  readonly cpuMs: number;
  /** The most memory that its Node process held, in MiB; 0 of a command without one. */
  readonly memory: number;
}

/** POSIX `times` prints the shell's own time, then its children's, as `0m1.234s 0m0.567s`. */
const script = '"$@"; code=$?; times >&2; exit $code';

function run(command: readonly string[]): Cost {
  const hook = join(import.meta.dirname, 'memory-hook.cjs');
  const [program = '', ...args] = command;
  const hooked = program === process.execPath ? [program, '--require', hook, ...args] : command;
  const begun = process.hrtime.bigint();
  const { status, stderr } = spawnSync('sh', ['-c', script, 'sh', ...hooked], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  const wallMs = Number(process.hrtime.bigint() - begun) / 1e6;
  if (status !== 0 && status !== 1) throw new Error(`${command.join(' ')} ended with ${status}: ${stderr}`);
  const children = stderr.trimEnd().split('\n').at(-1) ?? '';
  const spent = [...children.matchAll(/(\d+)m([\d.]+)s/g)].map(
    ([, minutes, seconds]) => Number(minutes) * 60 + Number(seconds),
  );
  const cpuMs = spent.reduce((sum, seconds) => sum + seconds * 1000, 0);
  return { wallMs, cpuMs, memory: Number(/maxrss ([0-9]+)/.exec(stderr)?.[1] ?? 0) / 1024 };
}

function costOf({ command, without }: Load): Cost {
  const whole = run(command);
  if (without === undefined) return whole;
  const part = run(without);
  return { wallMs: whole.wallMs - part.wallMs, cpuMs: whole.cpuMs - part.cpuMs, memory: whole.memory };
}

const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;

/** Both in turn, so that whatever else the machine does falls on both; the first of each is not counted. */
function measured({ what, loads, aim, memory }: Case): readonly string[] {
  const [load, beside] = loads();
  costOf(load);
  costOf(beside);
  const rounds = Array.from({ length: Number(flags.rounds) }, () => ({
    one: costOf(load),
    other: costOf(beside),
  }));
  const one = (pick: (cost: Cost) => number): number => median(rounds.map((each) => pick(each.one)));
  const other = (pick: (cost: Cost) => number): number => median(rounds.map((each) => pick(each.other)));
  const cpu = one((each) => each.cpuMs) / other((each) => each.cpuMs);
  const wall = one((each) => each.wallMs) / other((each) => each.wallMs);
  const held = one((each) => each.memory);
  const misses = (aim !== undefined && cpu > aim) || (memory !== undefined && held > memory);
  return [
    what,
    beside.name,
    aim === undefined ? '' : `at most ${aim}${memory === undefined ? '' : `, ${memory} MiB`}`,
    `${cpu.toFixed(2)}${misses ? ' (missed)' : ''}`,
    wall.toFixed(2),
    `${one((each) => each.cpuMs).toFixed(0)} / ${other((each) => each.cpuMs).toFixed(0)} ms`,
    held === 0 ? '' : `${held.toFixed(0)} MiB`,
  ];
}

const print = (cells: readonly string[]): void => console.log(`| ${cells.join(' | ')} |`);
console.log(`Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'a processor of no name'}\n`);
print(['what', 'beside', 'aim', 'processor', 'wall', 'processor time', 'memory']);
print(['---', '---', '---', '---', '---', '---', '---']);
const programs = {
  ullage: commandIn(join(import.meta.dirname, '..')),
  parseOnce,
  before: flags.before === undefined ? undefined : commandIn(resolve(flags.before)),
};
for (const each of casesOf(programs)) if (each.what.includes(flags.only)) print(measured(each));
