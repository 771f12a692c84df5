/** What a site's quota has the steps wait for. */
import { describe, expect, it } from 'vitest';
import { compareEstates } from '../../src/change/compare.ts';
import { bytes } from '../../src/estate/size.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { estateOf } from '../estate/builder.ts';

const GiB = 1n << 30n;

/** At a quota of the one site that there is. */
const runbook = (
  before: string,
  after: string,
  { volumes, gib }: { readonly volumes?: number; readonly gib?: bigint } = {},
): readonly Step[] => {
  const [base, head] = [estateOf(before), estateOf(after)];
  return runbookOf(compareEstates(base, head), base, head, {
    quota: (site) =>
      site === 'north-quay' ? { volumes, size: gib === undefined ? undefined : bytes(gib * GiB) } : undefined,
  });
};

/** Volumes, by size in GiB, that nobody holds. */
const kept = (sizes: Readonly<Record<string, number>>, site = 'north-quay'): string =>
  `volumes:\n${Object.entries(sizes)
    .map(([name, gib]) => `  ${name}: { size: ${gib} GiB, tier: bulk, site: ${site} }\n`)
    .join('')}`;

const keys = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap(({ key, at }) => (at === 'provider' ? key : []));

const snags = (steps: readonly Step[]): readonly (readonly [string, Step['snag']])[] =>
  steps.flatMap(({ key, snag }) => (snag === undefined ? [] : [[key, snag] as const]));

describe('a volume that goes and one that comes, neither for the sake of the other', () => {
  const change = [kept({ drafts: 40, plates: 40 }), kept({ tides: 40, plates: 40 })] as const;

  it('come first and go last where the quota has room for both', () => {
    for (const quota of [{}, { volumes: 3 }, { gib: 120n }, { volumes: 3, gib: 120n }]) {
      const steps = runbook(...change, quota);
      expect(keys(steps)).toEqual(['create tides', 'delete drafts']);
      expect(steps.find(({ key }) => key === 'create tides')?.after).toEqual([]);
    }
  });

  it('go first where it has not, after a check of the backup', () => {
    for (const quota of [{ volumes: 2 }, { gib: 80n }, { volumes: 2, gib: 500n }, { gib: 119n }]) {
      const steps = runbook(...change, quota);
      expect(keys(steps)).toEqual(['delete drafts', 'create tides']);
      expect(steps.map(({ procedure }) => procedure)[0]).toBe('check-backup');
      expect(snags(steps)).toEqual([]);
    }
  });

  it('go first, as many as it takes, where more is there already than there may be, and all could be within', () => {
    const steps = runbook(kept({ a: 50, b: 20, d: 40 }), kept({ a: 50, c: 15, e: 30 }), { gib: 100n });
    const order = keys(steps);
    const used = order.map((_, index) =>
      order.slice(0, index + 1).reduce((sum, key) => {
        const [what, name = ''] = key.split(' ');
        const size = { b: 20, d: 40, c: 15, e: 30 }[name] ?? 0;
        return what === 'create' ? sum + size : sum - size;
      }, 110),
    );
    expect(order).toHaveLength(4);
    expect(snags(steps)).toEqual([]);
    // Whatever is created, there is room for it then.
    for (const [index, key] of order.entries())
      if (key.startsWith('create')) expect(used[index]).toBeLessThanOrEqual(100);
    // And in every other order that the waits allow: c waits for both.
    expect(steps.find(({ key }) => key === 'create c')?.after.length).toBeGreaterThanOrEqual(2);
  });

  it('are refused where more is there already than there may be, and what goes does not bring it within', () => {
    // 80 of 70 GiB: with the drafts gone there is room for as much as 30.
    const last = kept({ tides: 30, plates: 40 });
    expect(snags(runbook(change[0], last, { gib: 70n }))).toEqual([]);
    expect(keys(runbook(change[0], last, { gib: 70n }))).toEqual(['delete drafts', 'create tides']);
    for (const [quota, of] of [
      [{ gib: 69n }, 'size'],
      [{ volumes: 1 }, 'volumes'],
    ] as const)
      expect(snags(runbook(change[0], last, quota))).toEqual([
        ['create tides', { kind: 'no-quota', site: 'north-quay', of, isSure: true }],
      ]);
  });

  it('wait for nothing at another site', () => {
    const two = (name: string) =>
      `${kept({ [name]: 40 })}  plates: { size: 40 GiB, tier: bulk, site: south-quay }\n`;
    const [before, after] = [two('drafts'), two('tides').replaceAll('north-quay', 'south-quay')];
    expect(keys(runbook(before, after, { volumes: 1, gib: 40n }))).toEqual(['create tides', 'delete drafts']);
  });
});

describe('a quota that is full', () => {
  it('has what grows wait for what goes, and only for as much of it as it needs', () => {
    const steps = runbook(kept({ drafts: 40, notes: 40, plates: 40 }), kept({ plates: 70 }), { gib: 120n });
    expect(keys(steps)).toEqual(['delete drafts', 'grow plates', 'delete notes']);
  });

  it('has no room for a smaller copy beside its original, whatever goes elsewhere', () => {
    const steps = runbook(kept({ plates: 40 }), kept({ plates: 30 }), { gib: 60n });
    expect(snags(steps)).toEqual([
      ['smaller plates', { kind: 'no-quota', site: 'north-quay', of: 'size', isSure: true }],
    ]);
    expect(steps.find(({ snag }) => snag !== undefined)?.why).toMatch(
      /goes beyond the quota of north-quay for the size of volumes by then, and not enough can be freed before\. Ask the provider for more quota for the time being, or change it in two merges/,
    );
    expect(snags(runbook(kept({ plates: 40 }), kept({ plates: 30 }), { gib: 70n }))).toEqual([]);
  });

  it('lets one copy be made after the other, each old volume deleted before the next copy', () => {
    const steps = runbook(kept({ plates: 40, tides: 40 }), kept({ plates: 30, tides: 30 }), { gib: 110n });
    expect(snags(steps)).toEqual([]);
    expect(keys(steps).filter((key) => !key.startsWith('fill'))).toEqual([
      'smaller plates',
      'delete-old plates',
      'smaller tides',
      'delete-old tides',
    ]);
  });

  it('keeps the old volume until the new one is proven, and rather says that there is no order', () => {
    const scanner = (member: string) => `servers: { scanner: { site: north-quay } }
${kept({ [member]: 40 })}volume-groups:
  plates: { extent: 64 MiB, members: [${member}], file-systems: { /plates: { size: 30 GiB, type: xfs } } }
attachments: [ { volume: ${member}, server: scanner } ]
`;
    const steps = runbook(scanner('plates-1'), scanner('plates-2'), { volumes: 1 });
    expect(snags(steps)).toEqual([
      ['create plates-2', { kind: 'no-quota', site: 'north-quay', of: 'volumes', isSure: true }],
    ]);
    const numbers = ['leave plates plates-1', 'replacement plates-1', 'delete plates-1'].map(
      (name) => steps.find(({ key }) => key === name)?.number ?? 0,
    );
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  });

  it('counts what is only declared now as there already', () => {
    const there = `${kept({ plates: 40 })}  drafts: { size: 40 GiB, tier: bulk, site: north-quay, existing: true }\n`;
    const quota = { volumes: 2 };
    expect(snags(runbook(kept({ plates: 40 }), there, quota))).toEqual([]);
    const more = `${there}  tides: { size: 1 GiB, tier: bulk, site: north-quay }\n`;
    expect(snags(runbook(kept({ plates: 40 }), more, quota))).toEqual([
      ['create tides', { kind: 'no-quota', site: 'north-quay', of: 'volumes', isSure: true }],
    ]);
  });
});
