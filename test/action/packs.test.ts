/** Packs of other repositories, fetched by the action before its gate. */
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { type Files, makeRepository, type TestRepository } from '../repository.ts';
import { bundledAction, checkedOut, hosted, office, plates } from './run.ts';

const { onPullRequest } = bundledAction();

const limited = office['policies/storage.yaml'];
const pack = String(limited);

const fleetWith = (text: string): TestRepository =>
  makeRepository({ files: { 'policies/fleet.yaml': text } });

const listing = (fleet: TestRepository, text: string): string => {
  const held = {
    repository: `file://${fleet.dir}`,
    commit: fleet.git('rev-parse', 'HEAD'),
    path: 'policies/fleet.yaml',
    sha256: createHash('sha256').update(text).digest('hex'),
  };
  return `currency: EUR\npacks: { fleet: ${JSON.stringify(held)} }\n`;
};

const mainWith = (settings: string): Files => ({
  ...office,
  'ullage.yaml': settings,
  'policies/storage.yaml': 'use: [fleet]\n',
});

describe('a pull request', () => {
  it('is judged by a pack that main lists of another repository, in a checkout of depth 1', async () => {
    const fleet = fleetWith(pack);
    const ran = await onPullRequest(hosted(plates('60 GiB'), mainWith(listing(fleet, pack))));
    expect([ran.code, ran.outputs.verdict]).toEqual([1, 'fail']);
    expect(ran.summary).toContain('The pack fleet was fetched');
    expect(ran.commands.find(({ name }) => name === 'error')?.message).toMatch(/^fail: imagery-limit/);
  });

  it('that lists another repository is judged by no pack of it, and nothing is asked there', async () => {
    const [fleet, own] = [fleetWith(pack), fleetWith('rules: []\n')];
    const pull = hosted(
      { ...plates('60 GiB'), 'ullage.yaml': listing(own, 'rules: []\n') },
      mainWith(listing(fleet, pack)),
    );
    const checkout = checkedOut(pull.origin, pull.merge);
    const ran = await onPullRequest(pull, { checkout });
    expect([ran.code, ran.outputs.verdict]).toEqual([2, 'not judged']);
    expect(ran.summary).toContain('`ullage.yaml` on main lists nothing of');
    expect(() => checkout.git('cat-file', '-e', own.git('rev-parse', 'HEAD'))).toThrow();
  });

  it('is not judged where the far repository has lost the commit', async () => {
    const fleet = fleetWith(pack);
    const settings = listing(fleet, pack);
    fleet.git('commit', '--quiet', '--amend', '-m', 'rewritten');
    fleet.git('reflog', 'expire', '--expire=now', '--all');
    fleet.git('gc', '--quiet', '--prune=now');
    const ran = await onPullRequest(hosted(plates('60 GiB'), mainWith(settings)));
    expect([ran.code, ran.outputs.verdict]).toEqual([2, 'not judged']);
    expect(ran.summary).toContain('could not be fetched');
  });
});
