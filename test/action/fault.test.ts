/** Ullage itself fails on a runner, and main does not read in the shallow checkout that a runner has. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { bundledAction, checkedOut, hosted, office, plates, type Ran } from './run.ts';

const { onPullRequest } = bundledAction();

/** A pull request's run in a checkout of depth 1, with a fault put in before the action is loaded. */
async function runWith(fault: string): Promise<{ readonly ran: Ran; readonly json: string }> {
  const pull = hosted(plates('52 GiB'));
  const checkout = checkedOut(pull.origin, pull.merge);
  const ran = await onPullRequest(pull, {
    checkout,
    inputs: { reports: 'json=out/gate.json' },
    environment: { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(fault)}` },
  });
  return { ran, json: readFileSync(join(checkout.dir, 'out/gate.json'), 'utf8') };
}

it.each([
  ['while files are listed', "Array.prototype.toSorted = () => { throw new Error('put in') };"],
  [
    'while the summary is written',
    `import { Buffer } from 'node:buffer';
     const real = Array.prototype.join;
     let left = 1;
     Array.prototype.join = function (between) {
       if (left > 0 && between === '\\n\\n' && String(this[0]).startsWith('## pass')) { left -= 1; throw new Error('put in'); }
       return real.call(this, between);
     };`,
  ],
])('a fault %s leaves outputs, a summary and reports that say not judged', async (_, fault) => {
  const { ran, json } = await runWith(fault);
  expect([ran.code, ran.outputs.verdict, ran.outputs.reports]).toEqual([2, 'not judged', 'out/gate.json']);
  expect(ran.summary).toMatch(/^## not judged: Ullage itself failed: put in/);
  expect(JSON.parse(json)).toMatchObject({ verdict: 'not judged' });
  expect(ran.commands.map(({ name }) => name)).toContain('error');
});

it('a main that does not read is gone back on, as far as the remote has history', async () => {
  const main = { ...office, 'storage/imagery.yaml': 'team: imagery\nvolumes: [broken\n' };
  const pull = hosted(office, main);
  const ran = await onPullRequest(pull);
  expect([ran.code, ran.outputs.verdict]).toEqual([0, 'pass']);
  const before = pull.origin.git('rev-parse', 'main~1').slice(0, 12);
  expect(ran.summary).toContain(before);
});

it('what a waiver without a ceiling covers is fetched, as far back as it came', async () => {
  const waived = {
    ...office,
    'policies/storage.yaml': 'rules:\n  - { rule: growth-step, by: 1 GiB }\n',
    'waivers/a.yaml':
      'waivers:\n  - { rule: growth-step, subject: plates-1, reason: survey, approved-by: head of imagery, from: 2020-01-01, until: 2099-12-31 }\n',
  };
  for (const [size, code, verdict] of [
    ['58 GiB', 0, 'pass'],
    ['59 GiB', 1, 'fail'],
  ] as const) {
    // The waiver comes with main's second commit, and its first use with the third; the checkout has neither.
    const pull = hosted(plates(size), waived, plates('54 GiB'), { 'README.md': 'words\n' });
    const ran = await onPullRequest(pull);
    expect([size, ran.code, ran.outputs.verdict]).toEqual([size, code, verdict]);
  }
});
