/**
 * Random branches played in a model of provider and guests that shares no code with the planner: nothing is refused,
 * each ends in exactly what the head declares, and no content is lost that the branch does not declare lost. Of what
 * the planner says has no order, the model refuses every one. The sources of what it refuses are in `world.ts`.
 *
 * 20,000 take about 50 seconds of processor time, so they are a step of `.ci/run`; here it is the first of them.
 */
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { ChangeKind } from '../../src/change/change.ts';
import { compareEstates } from '../../src/change/compare.ts';
import { Plan } from '../../src/runbook/plan.ts';
import { assembled, type Files } from '../estate/builder.ts';
import { pairs } from './estates.ts';
import { playMany } from './many.ts';
import { played } from './played.ts';

const seed = 20261120;

afterEach(() => {
  vi.restoreAllMocks();
});

describe('random branches, played', () => {
  it('are carried out to the end, or told not to be possible, which they then are not', () => {
    const { tried, faults, snags, untold } = playMany({ count: 3_000, seed });
    expect([...faults.values()].map(({ example }) => example)).toEqual([]);
    expect(tried).toBeGreaterThan(2_900);
    const told = (isQuota: boolean): number =>
      [...snags].reduce(
        (sum, [kind, { times }]) => ((kind === 'no-quota') === isQuota ? sum + times : sum),
        0,
      );
    // Nearly all of them on servers without a slot to spare.
    expect(told(false)).toBeLessThan(tried / 50);
    // A copy has no room beside what it is made of, where a site has none to spare; and some ends go beyond.
    expect(told(true)).toBeGreaterThan(tried / 10);
    expect(told(true)).toBeLessThan(tried / 3);
    // Of nearly all of them, every order is refused.
    expect(untold).toBeLessThan(told(true) / 100);
  }, 120_000);

  it('bring about what goes wrong on real estates', () => {
    const kinds = new Map<ChangeKind | 'swap', number>();
    const count = (kind: ChangeKind | 'swap'): unknown => kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
    for (const [before, after] of fc.sample(pairs, { seed, numRuns: 3_000 })) {
      const [base, head] = [assembled(before), assembled(after)];
      if (!base.ok || !head.ok) continue;
      const { changes } = compareEstates(base.value, head.value);
      for (const { kind } of changes) count(kind);
      const handed = changes.flatMap((each) => (each.kind === 'handed-over' ? [each] : []));
      if (handed.some(({ from, to }) => handed.some((other) => other.from === to && other.to === from)))
        count('swap');
    }
    const wanted: readonly (ChangeKind | 'swap')[] = [
      'server-created',
      'server-deleted',
      'server-renamed',
      'server-started',
      'server-stopped',
      'server-changed-type',
      'server-moved-site',
      'boot-swapped',
      'volume-created',
      'volume-deleted',
      'volume-re-created',
      'volume-grown',
      'volume-shrunk',
      'volume-moved-tier',
      'volume-moved-site',
      'volume-renamed',
      'volume-unprotected',
      'volume-edited',
      'attached',
      'detached',
      'handed-over',
      'swap',
      'group-created',
      'group-deleted',
      'group-renamed',
      'group-edited',
      'member-joined',
      'member-left',
      'file-system-created',
      'file-system-deleted',
      'file-system-grown',
      'file-system-shrunk',
      'file-system-remounted',
      'file-system-remade',
    ];
    expect(wanted.filter((kind) => (kinds.get(kind) ?? 0) < 5)).toEqual([]);
  }, 60_000);
});

describe('the simulator', () => {
  /** A planner that forgets every wait of one kind for another. */
  const forgetting = (waits: RegExp, what: RegExp): void => {
    for (const kind of ['wait', 'prefer'] as const) {
      const honest = Plan.prototype[kind];
      vi.spyOn(Plan.prototype, kind).mockImplementation(function (this: Plan<unknown>, key, after) {
        honest.call(this, key, waits.test(key) ? after.filter((each) => !what.test(each)) : after);
      });
    }
  };

  it('finds the order that a planner says there is none of, which has too much wait for room', () => {
    vi.spyOn(Plan.prototype, 'prefer').mockImplementation(function (this: Plan<unknown>, key, after) {
      this.wait(key, after);
    });
    const { faults } = playMany({ count: 2_000, seed });
    expect([...faults.keys()].sort()).toEqual(
      ['circle', 'no-quota', 'no-slot'].map(
        (kind) => `it can be carried out, and is said not to be: ${kind}`,
      ),
    );
  }, 60_000);

  it('refuses a plan that takes into a group what its server runs from', () => {
    const files = (server: object, member: string): Files => ({
      'storage/all.yaml': JSON.stringify({
        servers: { s: { guest: 'linux-lvm', ...server } },
        volumes: { a: { size: '40 GiB', tier: 'bulk' }, root: { size: '40 GiB', tier: 'bulk' } },
        attachments: [{ volume: member, server: 's' }],
        'volume-groups': {
          g: { members: [member], 'file-systems': { '/g': { size: '30 GiB', type: 'xfs' } } },
        },
      }),
    });
    const pair = [
      files({ power: 'running', boot: 'root' }, 'a'),
      files({ power: 'stopped' }, 'root'),
    ] as const;
    const spare = { slots: 2, quota: undefined };
    expect(played(pair, spare)?.snag?.kind).toBe('circle');
    expect(played(pair, spare)?.faults).toEqual([]);
    forgetting(/^join /, /^stop /);
    expect(played(pair, spare)?.faults).toEqual([expect.stringMatching(/root is in use on s$/)]);
  });

  it('refuses a plan that counts neither attachment slots nor quotas', () => {
    const honest = Plan.prototype.inOrder;
    vi.spyOn(Plan.prototype, 'inOrder').mockImplementation(function (this: Plan<unknown>) {
      return honest.call(this);
    });
    const told = [...playMany({ count: 1_000, seed }).faults.values()]
      .map(({ example }) => example)
      .join('\n');
    for (const refused of [
      /and all are taken/,
      /the quota of \S+ is \d+ volumes/,
      /the quota of \S+ is \d+ bytes/,
    ])
      expect(told).toMatch(refused);
  }, 60_000);

  it.each([
    ['detaches what is mounted', /^detach /, /^unmount /, /in use/],
    ['deactivates a group that is mounted', /^deactivate /, /^unmount /, /is mounted/],
    ['moves data off before there is room', /^leave /, /^(join|grow-member) /, /without|last member/],
    ['detaches a boot volume of a server that runs', /^detach /, /^stop /, /starts from/],
    ['attaches a volume that another server has', /^attach /, /^detach /, /not shareable/],
    ['imports half a group', /^import /, /^see /, /does not see/],
    ['starts a server that waits for what is gone', /^start /, /^fstab /, /is in the fstab/],
    ['moves a server with its volumes to another site', /^move-server /, /^detach /, /stay where they are/],
  ])(
    'refuses a plan that %s',
    (_story, waits, what, refused) => {
      forgetting(waits, what);
      const { faults } = playMany({ count: 1_000, seed });
      expect([...faults.values()].some(({ example }) => refused.test(example))).toBe(true);
    },
    60_000,
  );
});
