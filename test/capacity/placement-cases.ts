/** Random groups and what becomes of them, by the model and as the volume manager is asked for it. */
import fc from 'fast-check';
import { fillGroup, type Placement, type Run } from '../../src/capacity/placement.ts';
import type { Layout } from '../../src/estate/estate.ts';
import type { GroupCase, GroupResult, Lanes, Step } from './volume-manager.ts';

const extents = fc.oneof(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 60 }));
const names = ['a', 'b', 'c', 'd'];

/**
 * Two to five members, two to four volumes, made one by one; then some are cut, removed, grown, and made again.
 * Sizes are whole rows of stripes, so that both sides count alike.
 */
export const groupCase: fc.Arbitrary<GroupCase> = fc
  .record({
    members: fc.array(extents, { minLength: 2, maxLength: 5 }),
    width: fc.integer({ min: 1, max: 4 }),
    made: fc.array(extents, { minLength: 2, maxLength: 4 }),
    later: fc.array(
      fc.record({ what: fc.constantFrom('grow', 'cut', 'remove'), which: fc.nat(3), by: extents }),
      {
        maxLength: 4,
      },
    ),
  })
  .map(({ members, width, made, later }) => {
    const stripes = Math.min(width, members.length);
    const rows = (count: number): number => Math.ceil(count / stripes) * stripes;
    const sizes = new Map(made.map((each, index) => [names[index] ?? '', rows(each)]));
    const steps: Step[] = [...sizes].map(([make, extents]) => ({ make, extents }));
    for (const { what, which, by } of later) {
      const name = names[which % made.length] ?? '';
      const size = sizes.get(name);
      if (size === undefined) {
        sizes.set(name, rows(by));
        steps.push({ make: name, extents: rows(by) });
      } else if (what === 'grow') {
        sizes.set(name, size + rows(by));
        steps.push({ grow: name, extents: size + rows(by) });
      } else if (what === 'cut' && size > stripes) {
        const smaller = rows(1 + (by % (size - stripes)));
        if (smaller === size) continue;
        sizes.set(name, smaller);
        steps.push({ cut: name, extents: smaller });
      } else if (what === 'remove') {
        sizes.delete(name);
        steps.push({ remove: name });
      }
    }
    return { members, stripes, steps };
  });

/** The same steps by the model, in the words of the volume manager's own answers. */
export function modelled({ members, stripes, steps }: GroupCase): GroupResult {
  const layout: Layout = stripes === 1 ? { kind: 'linear' } : { kind: 'striped', stripes };
  const group = members.map(BigInt);
  let lying = new Map<string, Placement>();
  const fill = (changed: readonly { name: string; extents: bigint }[]) => {
    const others = [...lying].filter(([name]) => changed.every((each) => each.name !== name));
    return fillGroup(group, layout, [
      ...others.map(([name, lies]) => ({ name, extents: extentsOf(lies), lies })),
      ...changed.map((each) => ({ ...each, lies: lying.get(each.name) })),
    ]);
  };
  const refused: Record<string, string> = {};
  for (const [index, step] of steps.entries()) {
    if ('remove' in step) {
      if (!lying.delete(step.remove)) refused[index] = 'there is none';
      continue;
    }
    const name = 'make' in step ? step.make : 'grow' in step ? step.grow : step.cut;
    const there = lying.get(name);
    const size = there === undefined ? 0n : extentsOf(there);
    const possible =
      'make' in step ? size === 0n : size > 0n && ('cut' in step ? size > step.extents : size < step.extents);
    if (!possible) {
      refused[index] = 'not asked for';
      continue;
    }
    const { placed, missing } = fill([{ name, extents: BigInt(step.extents) }]);
    if (missing > 0n) refused[index] = `${missing} more required`;
    else lying = new Map(placed);
  }
  const lanes = Object.fromEntries(
    [...lying].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, each]) => [name, lanesOf(each)]),
  );
  return { lanes, refused, left: Number(fill([]).left) };
}

const extentsOf = ({ lanes }: Placement): bigint =>
  lanes.flat().reduce((sum, { length }) => sum + length, 0n);

const lanesOf = ({ lanes }: Placement): Lanes => {
  const pieces = lanes.map((lane) => lane.map((run): Run => run));
  return joined(pieces).map((lane) =>
    lane.map(({ member, start, length }) => `${member}:${start}-${start + length - 1n}`),
  );
};

/** Pieces that follow one another on every lane are one segment, as the volume manager keeps them. */
function joined(lanes: readonly (readonly Run[])[]): readonly (readonly Run[])[] {
  const result: Run[][] = lanes.map(() => []);
  for (let piece = 0; piece < (lanes[0]?.length ?? 0); piece++) {
    const runs = lanes.map((lane) => lane[piece]);
    const follows = runs.every((run, lane) => {
      const last = result[lane]?.at(-1);
      return run !== undefined && last?.member === run.member && last.start + last.length === run.start;
    });
    for (const [lane, run] of runs.entries()) {
      const of = result[lane] ?? [];
      const last = of.at(-1);
      if (run === undefined) continue;
      if (follows && last !== undefined) of[of.length - 1] = { ...last, length: last.length + run.length };
      else of.push(run);
    }
  }
  return result;
}
