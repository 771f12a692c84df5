import { describe, expect, it } from 'vitest';
import { readRulePack } from '../../src/policy/pack.ts';
import { readDocument } from '../../src/read/document.ts';
import { underRule } from '../estate/builder.ts';

function problems(entry: string): readonly string[] {
  const document = readDocument(`rules:\n  - ${entry}\n`, 'policies/storage.yaml');
  if (!document.ok) throw new Error('the test does not parse');
  const pack = readRulePack(document.value);
  return pack.ok
    ? []
    : pack.problems.map(({ place, message }) => `${place?.line}:${place?.column} ${message}`);
}

describe('whom a rule is for', () => {
  it('cannot be said in a way that matches nobody: the rule would be off, and nobody told', () => {
    expect(problems('{ rule: boot-volume-stays, where: { tiers: [brisk] } }')).toEqual([
      expect.stringMatching(/^2:\d+ the rule boot-volume-stays cannot be narrowed by tiers$/),
    ]);
    expect(problems('{ rule: policy-apart, where: { teams: [ledger] } }')).toHaveLength(1);
  });

  it('can be said by what the rule knows of its subjects', () => {
    expect(problems('{ rule: boot-volume-stays, where: { teams: [ledger] } }')).toEqual([]);
    expect(problems('{ rule: growth-step, times: 4, where: { tiers: [brisk] } }')).toEqual([]);
  });
});

describe('a change is in scope by what it was, what it becomes and what it destroys', () => {
  const volume = (size: string, more: string, rest = ''): string =>
    `volumes:\n  plates-1: { size: ${size}, tier: ${more} }\n${rest}`;
  const booted = (rest: string, more = ''): string =>
    `servers:\n  scanner: { boot: root, team: imagery }\nvolumes:\n  root: { size: 20 GiB, tier: bulk, team: ledger${more} }\n${rest}`;
  const group = (team: string, size: string): string =>
    `team: imagery\nvolumes:\n  a: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a], team: ${team}, file-systems: { /plates: { size: ${size}, type: ext4 } } }\n`;

  it.each([
    [
      'a volume grown a hundredfold under another team',
      'rule: growth-step, times: 4, where: { teams: [imagery] }',
      volume('10 GiB', 'bulk, team: imagery'),
      volume('1000 GiB', 'bulk, team: ledger'),
    ],
    [
      'a volume grown a hundredfold in another tier',
      'rule: growth-step, times: 4, where: { tiers: [bulk] }',
      volume('10 GiB', 'bulk'),
      volume('1000 GiB', 'steady'),
    ],
    [
      'a volume grown a hundredfold under another label',
      'rule: growth-step, times: 4, where: { labels: { grade: a } }',
      volume('10 GiB', 'bulk, labels: { grade: a }'),
      volume('1000 GiB', 'bulk, labels: { grade: b }'),
    ],
    [
      'a file system shrunk while its group passes to another team',
      'rule: no-shrink, where: { teams: [imagery] }',
      group('imagery', '90 GiB'),
      group('ledger', '50 GiB'),
    ],
    [
      'a file system shrunk on volumes of the tier',
      'rule: no-shrink, where: { tiers: [bulk] }',
      group('imagery', '90 GiB'),
      group('imagery', '50 GiB'),
    ],
    [
      'a volume written over by the group of another team',
      'rule: freeze, from: 2026-11-01, until: 2026-12-01, where: { teams: [imagery] }',
      volume('10 GiB', 'bulk, team: imagery'),
      volume(
        '10 GiB',
        'bulk, team: ledger',
        'volume-groups:\n  taken: { members: [plates-1], team: ledger }\n',
      ),
    ],
    [
      'the boot volume, of another team, that a group writes over under a running server',
      'rule: boot-volume-stays, where: { teams: [imagery] }',
      booted(''),
      booted('volume-groups:\n  taken: { members: [root], team: ledger }\n'),
    ],
    [
      'the boot volume, of another team, that a file system is made on under a running server',
      'rule: boot-volume-stays, where: { teams: [imagery] }',
      booted(''),
      booted('', ', file-system: { mount: /srv, type: ext4 }'),
    ],
    [
      'a volume detached and handed to another team at once',
      'rule: shape, of: change, kinds: [detached], schema: false-schema, where: { teams: [imagery] }',
      volume(
        '10 GiB',
        'bulk, team: imagery',
        'servers:\n  s: {}\nattachments: [ { volume: plates-1, server: s } ]\n',
      ),
      volume('10 GiB', 'bulk, team: ledger', 'servers:\n  s: {}\n'),
    ],
  ])('%s', async (_what, entry, before, after) => {
    const judgement = await underRule(entry.replace('false-schema', '{ required: [never] }'), before, after);
    expect(judgement.verdict).toBe('fail');
  });

  it('and in no other: what has never been in it is let pass', async () => {
    const rule = 'rule: growth-step, times: 4, where: { teams: [imagery] }';
    const other = await underRule(
      rule,
      volume('10 GiB', 'bulk, team: ledger'),
      volume('1000 GiB', 'bulk, team: ledger'),
    );
    expect(other.verdict).toBe('pass');
  });
});

describe('what leaves the scope of a rule about a state is judged by it in the branch in which it leaves', () => {
  const volume = (more: string): string => `volumes:\n  plates-1: { size: 40 GiB, ${more} }\n`;
  const held = (more: string, server = 'scanner'): string =>
    `servers:\n  scanner: { site: north-quay, iops: 100 }\n  archive: { site: south-quay }\nvolumes:\n  plates-1: { size: 40 GiB, ${more} }\nattachments: [ { volume: plates-1, server: ${server} } ]\n`;
  const group = (team: string, size: string): string =>
    `team: imagery\nvolumes:\n  a: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a], team: ${team}, file-systems: { /plates: { size: ${size}, type: ext4 } } }\n`;

  it.each([
    [
      'a shape',
      'rule: shape, of: volume, schema: { properties: { size-gib: { maximum: 50 } } }, where: { teams: [imagery] }',
      volume('tier: bulk, team: imagery'),
      volume('tier: bulk, team: ledger').replace('40', '400'),
    ],
    [
      'a detached volume without a reason',
      'rule: detached-volume-owned, where: { tiers: [bulk] }',
      held('tier: bulk, team: imagery'),
      volume('tier: steady, team: imagery'),
    ],
    [
      'an attachment across sites',
      'rule: same-site, where: { teams: [imagery] }',
      held('tier: bulk, site: north-quay, team: imagery'),
      held('tier: bulk, site: north-quay, team: ledger', 'archive'),
    ],
    [
      'the headroom of a group',
      'rule: minimum-headroom, of: volume-group, size: 10 GiB, where: { teams: [imagery] }',
      group('imagery', '50 GiB'),
      group('ledger', '99 GiB'),
    ],
    [
      'a name',
      "rule: naming, volume: '[a-z0-9-]+', where: { labels: { grade: a } }",
      volume('tier: bulk, labels: { grade: a }'),
      volume('tier: bulk, labels: { grade: b }, formerly: plates-1').replace('plates-1:', 'PLATES:'),
    ],
    [
      'a volume in the seat of another',
      'rule: shape, of: volume, schema: { properties: { size-gib: { maximum: 150 } } }, where: { teams: [imagery] }',
      group('imagery', '50 GiB'),
      'team: ledger\nvolumes:\n  b: { size: 400 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [b], team: ledger, file-systems: { /plates: { size: 50 GiB, type: ext4 } } }\n',
    ],
  ])('%s', async (_what, entry, before, after) => {
    const judgement = await underRule(entry, before, after);
    expect(judgement.verdict).toBe('fail');
    expect(judgement.reasons.join()).toContain(
      'on main it is in the scope of this rule, which the branch takes it out of',
    );
  });

  it('and what was as wrong on main does not fail for leaving', async () => {
    const entry = 'rule: detached-volume-owned, where: { teams: [imagery] }';
    const { verdict } = await underRule(
      entry,
      volume('tier: bulk, team: imagery'),
      volume('tier: bulk, team: ledger'),
    );
    expect(verdict).toBe('pass');
  });

  it('nor does what has never been in scope', async () => {
    const entry = 'rule: detached-volume-owned, where: { teams: [imagery] }';
    const { verdict } = await underRule(
      entry,
      held('tier: bulk, team: soundings'),
      volume('tier: bulk, team: ledger'),
    );
    expect(verdict).toBe('pass');
  });
});
