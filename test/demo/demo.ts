/**
 * Builds the demo repository and judges each branch with the built command. With `--check` it prints one line a
 * branch and fails where a verdict is not the known one.
 */
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { buildDemo, demoDay, type Proposal, proposals } from './gannet-point.ts';

const command = join(import.meta.dirname, '../../dist/ullage.cjs');
const exitCodes = { pass: 0, fail: 1, 'not judged': 2 } as const;
const checking = process.argv.includes('--check');

function gate(repository: string, { branch }: Proposal, ...more: readonly string[]) {
  const args = ['gate', '--repo', repository, '--base', 'main', '--head', branch, '--now', demoDay, ...more];
  return spawnSync(process.execPath, [command, ...args], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  });
}

function show(repository: string): void {
  for (const proposal of proposals) {
    const title = `Branch ${proposal.branch}: ${proposal.says}`;
    console.log(`\n${title}\n${'='.repeat(title.length)}\n`);
    const { stdout, stderr } = gate(repository, proposal);
    console.log(stdout || stderr);
  }
  console.log(`The repository is at ${repository}. To try things in it:`);
  console.log(`  cd ${repository}`);
  console.log(`  node ${command} gate --base main --head half-a-group`);
  console.log(`  node ${command} cost --by team`);
  console.log(`  node ${command} headroom`);
}

/** The rule entries that fail a branch, as the JSON report says. */
function failing(json: string): readonly string[] {
  const { findings } = JSON.parse(json) as { findings: { entry: string; fails: boolean }[] };
  return [...new Set(findings.filter(({ fails }) => fails).map(({ entry }) => entry))].sort();
}

function check(repository: string): void {
  for (const proposal of proposals) {
    const run = gate(repository, proposal, '--format', 'json');
    const refusedBy = run.status === 2 ? ['not judged'] : failing(run.stdout);
    const asKnown =
      run.status === exitCodes[proposal.verdict] &&
      refusedBy.join() === [...proposal.refusedBy].sort().join();
    console.log(
      `${proposal.branch}: exit code ${run.status}, refused by ${refusedBy.join(', ') || 'none'}: ${asKnown ? 'as known' : 'NOT as known'}`,
    );
    if (!asKnown) {
      console.log(run.stderr);
      process.exitCode = 1;
    }
  }
  rmSync(repository, { recursive: true });
}

const repository = buildDemo();
if (checking) check(repository);
else show(repository);
