/** What leaves a volume group waits for as much room as it needs there, and the server has slots for. */
import { describe, expect, it } from 'vitest';
import { compareEstates } from '../../src/change/compare.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { estateOf } from '../estate/builder.ts';

interface Plates {
  readonly held: string;
  readonly members: string;
  /** Of the file system in the group, and of volume a, in GiB. */
  readonly full: number;
  readonly a?: number;
}

const estate = ({ held, members, full, a = 40 }: Plates, slots: number): string => `
servers: { s: { power: running, guest: linux-lvm, attachment-slots: ${slots} } }
volumes:
  a: { size: ${a} GiB, tier: bulk }
${['b', 'c', 'd'].map((name) => `  ${name}: { size: 40 GiB, tier: bulk }\n`).join('')}attachments: [${held
  .split(', ')
  .map((volume) => `{ volume: ${volume}, server: s }`)
  .join(', ')}]
volume-groups: { g: { members: [${members}], file-systems: { /g: { size: ${full} GiB, type: xfs } } } }
`;

const steps = (before: Plates, after: Plates, slots: number): readonly Step[] => {
  const [base, head] = [estateOf(estate(before, slots)), estateOf(estate(after, slots))];
  return runbookOf(compareEstates(base, head), base, head);
};

const snags = (all: readonly Step[]) => all.flatMap(({ snag }) => snag ?? []);

describe('a full group that has two members changed for two others', () => {
  const moved = (slots: number): readonly Step[] =>
    steps({ held: 'a, b', members: 'a, b', full: 70 }, { held: 'c, d', members: 'c, d', full: 70 }, slots);
  const keys = (all: readonly Step[]): readonly string[] =>
    all.flatMap(({ key }) => (/^(join|leave) /.test(key) ? key.replace(' g ', ' ') : []));

  it('is extended over both where there is a slot for each, and has the data moved to both', () => {
    expect(keys(moved(4))).toEqual(['join c', 'join d', 'leave a', 'leave b']);
  });

  it('changes one after the other where there is a slot for one', () => {
    const all = moved(3);
    expect(keys(all)).toEqual(['join c', 'leave a', 'join d', 'leave b']);
    expect(snags(all)).toEqual([]);
  });

  it('has no order where there is none', () => {
    expect(snags(moved(2))).toContainEqual({ kind: 'no-slot', server: 's', isSure: true });
  });
});

describe('a member that grows', () => {
  const before = { held: 'a, b', members: 'a, b', full: 50, a: 20 };

  it('is room for what another leaves to it', () => {
    const all = steps(before, { held: 'a, c', members: 'a, c', full: 50, a: 60 }, 2);
    expect(snags(all)).toEqual([]);
    const at = (name: string): number => all.find(({ key }) => key === name)?.number ?? 0;
    const order = ['grow-member a', 'leave g b', 'detach b s', 'attach c s', 'join g c'].map(at);
    expect(order).toEqual([...order].sort((one, other) => one - other));
  });

  it('is none once it has left the group itself', () => {
    const all = steps(before, { held: 'a, c, d', members: 'c, d', full: 50, a: 60 }, 3);
    const held = all
      .filter(({ key }) => /^(leave|join) /.test(key))
      .map(({ key }) => key.replace(' g ', ' '));
    expect(held).toEqual(['join c', 'leave b', 'join d', 'leave a']);
    expect(snags(steps(before, { held: 'a, c', members: 'c', full: 35, a: 60 }, 2))).toContainEqual({
      kind: 'no-slot',
      isSure: true,
      server: 's',
    });
  });
});
