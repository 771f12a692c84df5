/**
 * Measures the audit: so many commits over two sizes of estate, beside `git log --first-parent --raw` and beside the
 * sum of single runs of the gate (sampled). `npx tsx bench/audit.ts [COMMITS]`, after `npm run build`.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { auditRecords } from '../src/audit/audit.ts';
import { GitRepository } from '../src/git/repository.ts';
import { buildHistory } from './history.ts';

const commits = Number(process.argv[2] ?? 2000);
const gateRuns = Number(process.argv[3] ?? 5);
const ullage = join(import.meta.dirname, '../dist/ullage.cjs');

const milliseconds = (begun: bigint): number => Number(process.hrtime.bigint() - begun) / 1e6;

interface Audited {
  readonly first: number;
  readonly rest: number;
  /** Processor time for all but the first record: what else the machine does falls less on it. */
  readonly cpu: number;
  readonly records: number;
  readonly fails: number;
}

/** Milliseconds until the first record, which parses the whole estate, and for all further ones. */
async function audit(folder: string): Promise<Audited> {
  const opened = await GitRepository.open(folder);
  if (!opened.ok) throw new Error(opened.problems[0]?.message);
  const to = execFileSync('git', ['rev-parse', 'main'], { cwd: folder, encoding: 'utf8' }).trim();
  let begun = process.hrtime.bigint();
  let used = process.cpuUsage();
  let first = 0;
  let records = 0;
  let fails = 0;
  for await (const record of auditRecords(opened.value, { span: { to }, failOn: 'error' })) {
    if (!record.ok) throw new Error(record.problems[0]?.message);
    if (record.value.verdict === 'not judged') throw new Error(record.value.reasons.join('; '));
    if (record.value.verdict === 'fail') fails++;
    records++;
    if (records > 1) continue;
    first = milliseconds(begun);
    begun = process.hrtime.bigint();
    used = process.cpuUsage();
  }
  const rest = milliseconds(begun);
  const { user, system } = process.cpuUsage(used);
  const cpu = (user + system) / 1000;
  await opened.value.close();
  return { first, rest, cpu, records, fails };
}

function gate(folder: string, commit: string): number {
  const begun = process.hrtime.bigint();
  const args = [
    ullage,
    'gate',
    '--repo',
    folder,
    '--base',
    `${commit}^`,
    '--head',
    commit,
    '--now',
    '2026-11-20',
  ];
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8', maxBuffer: 1 << 28 });
  if (status === 2 || status === null) throw new Error(stderr);
  return milliseconds(begun);
}

const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;

const perCommit: { readonly time: number; readonly cpu: number }[] = [];
for (const { volumes, files } of [
  { volumes: 10_000, files: 200 },
  { volumes: 20_000, files: 400 },
]) {
  const folder = buildHistory({ volumes, files, commits, changing: 200 });
  const begun = process.hrtime.bigint();
  execFileSync('git', ['log', '--first-parent', '--raw', 'main'], { cwd: folder, maxBuffer: 1 << 28 });
  const log = milliseconds(begun);
  const { first, rest, cpu, records, fails } = await audit(folder);
  perCommit.push({ time: rest / (records - 1), cpu: cpu / (records - 1) });
  const sample = Array.from({ length: gateRuns }, (_each, index) =>
    gate(folder, `main~${Math.floor(((index + 0.5) * commits) / gateRuns)}`),
  );
  const gates = median(sample) * commits;
  console.log(
    `${volumes} volumes in ${files} files, ${records} records (${fails} fail): ${first.toFixed(0)} ms to the first, ${rest.toFixed(0)} ms for the others, ${(rest / (records - 1)).toFixed(2)} ms each. git log --first-parent --raw: ${log.toFixed(0)} ms. As single gate runs: about ${(gates / 1000).toFixed(0)} s (median of ${gateRuns}: ${median(sample).toFixed(0)} ms), ${(gates / (first + rest)).toFixed(0)} times as long`,
  );
  rmSync(folder, { recursive: true });
}
const [small, large] = perCommit;
if (small !== undefined && large !== undefined) {
  console.log(
    `Twice the estate takes ${(large.time / small.time).toFixed(2)} times as long a commit beyond the first parse, and ${(large.cpu / small.cpu).toFixed(2)} times the processor time (${small.cpu.toFixed(2)} and ${large.cpu.toFixed(2)} ms)`,
  );
}
