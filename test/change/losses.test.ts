import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Change } from '../../src/change/change.ts';
import { compareEstates } from '../../src/change/compare.ts';
import { destroys, lossOf } from '../../src/change/kinds.ts';
import { lossesOf } from '../../src/change/losses.ts';
import { type Estate, subjectKey } from '../../src/estate/estate.ts';
import { assembled } from '../estate/builder.ts';
import { change, filesOf } from '../estate/random.ts';

/** The volume of main that carries a file system of its own, or a file system on it, as the volume. */
const carried = (base: Estate, each: Change): readonly string[] =>
  (lossOf(each)?.of ?? []).flatMap((of) => {
    const name = of.kind === 'file-system' ? of.on.name : of.name;
    const volume = of.kind === 'volume-group' ? undefined : base.volumes.get(name);
    return volume?.fileSystem === undefined ? [] : [subjectKey(volume)];
  });

describe('what a branch loses', () => {
  it('is counted once for each content, and never not at all', () => {
    let twice = 0;
    fc.assert(
      fc.property(change, ([before, after]) => {
        const [base, head] = [before, after].map((each) => assembled(filesOf(each)));
        fc.pre(base?.ok === true && head?.ok === true);
        if (base?.ok !== true || head?.ok !== true) return;
        const { changes } = compareEstates(base.value, head.value);
        const counted = lossesOf(changes);
        const losing = changes.filter(destroys);
        expect(counted.length > 0).toBe(losing.length > 0);
        const single = counted.filter((each) => lossOf(each)?.of.length === 1);
        const volumes = single.flatMap((each) => carried(base.value, each));
        expect(new Set(volumes).size).toBe(volumes.length);
        const all = losing.flatMap((each) => carried(base.value, each));
        expect(new Set(counted.flatMap((each) => carried(base.value, each)))).toEqual(new Set(all));
        if (new Set(all).size < all.length) twice += 1;
      }),
      { numRuns: 500 },
    );
    expect(twice).toBeGreaterThan(0);
  });
});
