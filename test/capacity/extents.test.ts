import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allocatable,
  allocatableExtents,
  extentProblem,
  extentsFor,
  groupCapacity,
  type Layout,
  layoutProblem,
  memberMetadata,
  usableExtents,
} from '../../src/capacity/extents.ts';
import { type Bytes, bytes, parseSize, sumBytes, unitBytes } from '../../src/estate/size.ts';

const { KiB, MiB, GiB, TiB } = unitBytes;

const size = (text: string): Bytes => {
  const read = parseSize(text);
  if (typeof read !== 'bigint') throw new Error(read.why);
  return read;
};

interface Measured {
  readonly groups: readonly (readonly [string, string, number, number])[];
  readonly refusedExtents: readonly string[];
  readonly refusedDevices: readonly (readonly [string, string])[];
  readonly striped: readonly (readonly [readonly number[], number, number])[];
}
// Measured on real groups; the file says with which version and how.
const measured: Measured = JSON.parse(
  readFileSync(new URL('fixtures/lvm2-2.03.16.json', import.meta.url), 'utf8'),
);

describe('a member gives its group less than it cost', () => {
  // Source: sizes the open-source Linux volume manager reports, as the design lists them.
  it.each([
    ['50 GiB', '64 MiB', 799n, 51_136n],
    ['50 GiB', '4 MiB', 12_799n, 51_196n],
    ['100 GiB', '64 MiB', 1_599n, 102_336n],
    ['1 GiB', '4 MiB', 255n, 1_020n],
  ])('%s in extents of %s', (device, extent, extents, mebibytes) => {
    const group = groupCapacity({
      members: [size(device)],
      extent: size(extent),
      layout: { kind: 'linear' },
    });
    expect(group.groupExtents).toBe(extents);
    expect(group.bytes).toBe(mebibytes * MiB);
  });

  it('as LVM 2.03.16 reports it for every device and extent measured', () => {
    expect(measured.groups.length).toBeGreaterThan(100);
    for (const [device, extent, firstExtent, extents] of measured.groups) {
      expect(memberMetadata).toBe(BigInt(firstExtent));
      expect(usableExtents(bytes(BigInt(device)), bytes(BigInt(extent))), `${device} in ${extent}`).toBe(
        BigInt(extents),
      );
    }
  });

  it('nothing at all from a device the volume manager refuses', () => {
    for (const [device, extent] of measured.refusedDevices) {
      expect(usableExtents(bytes(BigInt(device)), bytes(BigInt(extent)))).toBe(0n);
    }
  });
});

describe('an extent size that no group can have', () => {
  it.each(measured.refusedExtents)('%s bytes is refused, as vgcreate refuses it', (extent) => {
    expect(extentProblem(bytes(BigInt(extent)))).toBeTypeOf('string');
  });

  it('while every size that made a group passes', () => {
    for (const [, extent] of measured.groups) expect(extentProblem(bytes(BigInt(extent)))).toBeUndefined();
  });
});

describe('a striped volume asks equal extents of every stripe', () => {
  it.each(measured.striped)(
    'free %j in %i stripes carries %i, as lvcreate allows',
    (free, stripes, extents) => {
      expect(allocatableExtents({ kind: 'striped', stripes }, free.map(BigInt))).toBe(BigInt(extents));
    },
  );

  it('takes whole rows of extents', () => {
    expect(extentsFor(size('10 MiB'), size('4 MiB'), { kind: 'striped', stripes: 2 })).toBe(4n);
    expect(extentsFor(size('20 MiB'), size('4 MiB'), { kind: 'striped', stripes: 3 })).toBe(6n);
  });

  it('has no place in a group with fewer members than stripes', () => {
    expect(allocatableExtents({ kind: 'striped', stripes: 3 }, [10n, 10n])).toBe(0n);
    expect(layoutProblem({ kind: 'striped', stripes: 3 }, 2)).toMatch(/3 stripes need 3 members/);
    expect(layoutProblem({ kind: 'striped', stripes: 0 }, 2)).toMatch(/whole numbers from 1/);
    expect(layoutProblem({ kind: 'linear' }, 0)).toMatch(/at least one member/);
  });
});

describe('a mirrored volume pays for every copy', () => {
  // Worked by hand from lvmraid(7): an image and its metadata on one member, no two images on the same.
  it('two 50 GiB members hold one copy each, less an extent for the mirror itself', () => {
    const group = groupCapacity({
      members: [size('50 GiB'), size('50 GiB')],
      extent: size('64 MiB'),
      layout: { kind: 'mirrored', copies: 2 },
    });
    expect(group.groupExtents).toBe(1_598n);
    expect(group.extents).toBe(798n);
    expect(extentsFor(group.bytes, size('64 MiB'), { kind: 'mirrored', copies: 2 })).toBe(1_598n);
    expect(allocatable(group)).toBe(1_598n);
  });

  it('the smaller member bounds it', () => {
    expect(allocatableExtents({ kind: 'mirrored', copies: 2 }, [10n, 6n])).toBe(5n);
    expect(allocatableExtents({ kind: 'mirrored', copies: 2 }, [10n])).toBe(0n);
  });
});

describe('three 40 GiB volumes carry one file system of 100 GiB, not of 130', () => {
  it('in extents of 64 MiB', () => {
    const extent = size('64 MiB');
    const forty = size('40 GiB');
    const group = groupCapacity({ members: [forty, forty, forty], extent, layout: { kind: 'linear' } });
    expect(group.extents).toBe(1_917n);
    expect(extentsFor(size('100 GiB'), extent)).toBe(1_600n);
    expect(extentsFor(size('130 GiB'), extent) - group.extents).toBe(163n);
  });
});

const device = fc.bigInt({ min: 0n, max: 16n * TiB }).map(bytes);
const extentSize = fc.oneof(
  fc.integer({ min: 9, max: 34 }).map((power) => bytes(1n << BigInt(power))),
  fc.bigInt({ min: 1n, max: 80_000n }).map((steps) => bytes(steps * 128n * KiB)),
);
const layout: fc.Arbitrary<Layout> = fc.oneof(
  fc.constant<Layout>({ kind: 'linear' }),
  fc.integer({ min: 1, max: 5 }).map((stripes): Layout => ({ kind: 'striped', stripes })),
  fc.integer({ min: 1, max: 4 }).map((copies): Layout => ({ kind: 'mirrored', copies })),
);

describe('no layer gives out more than it received', () => {
  it('every byte of the members is held or lost to a named cause', () => {
    fc.assert(
      fc.property(fc.array(device, { maxLength: 6 }), extentSize, layout, (members, extent, layout) => {
        const group = groupCapacity({ members, extent, layout });
        const parts = [group.bytes, group.lostToMetadata, group.lostToRounding, group.lostToLayout];
        for (const part of parts) expect(part).toBeGreaterThanOrEqual(0n);
        expect(sumBytes(parts)).toBe(sumBytes(members));
        expect(allocatable(group)).toBeGreaterThanOrEqual(group.extents);
        expect(allocatable(group)).toBeLessThanOrEqual(group.groupExtents);
      }),
    );
  });

  it('the largest volume that fits takes no more extents than are free', () => {
    const free = fc.array(fc.bigInt({ min: 0n, max: 40n }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(free, extentSize, layout, (freePerMember, extent, layout) => {
        const extents = allocatableExtents(layout, freePerMember);
        const taken = extentsFor(bytes(extents * extent), extent, layout);
        expect(taken).toBeLessThanOrEqual(freePerMember.reduce((total, each) => total + each, 0n));
      }),
    );
  });

  it('a volume always gets the bytes it asked for', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 0n, max: TiB }).map(bytes),
        extentSize,
        layout,
        (asked, extent, layout) => {
          expect(extentsFor(asked, extent, layout) * extent).toBeGreaterThanOrEqual(asked);
        },
      ),
    );
  });
});

describe('a larger volume never leaves less room', () => {
  it('for a member, in any extent size', () => {
    fc.assert(
      fc.property(device, fc.bigInt({ min: 0n, max: GiB }), extentSize, (member, more, extent) => {
        expect(usableExtents(bytes(member + more), extent)).toBeGreaterThanOrEqual(
          usableExtents(member, extent),
        );
      }),
    );
  });

  it('for a group: linear, in pairs, or as wide as it has members', () => {
    const free = fc.array(fc.bigInt({ min: 0n, max: 40n }), { minLength: 1, maxLength: 6 });
    const steady = (members: number): readonly Layout[] => [
      { kind: 'linear' },
      { kind: 'striped', stripes: 2 },
      { kind: 'striped', stripes: members },
      { kind: 'mirrored', copies: 2 },
      { kind: 'mirrored', copies: members },
    ];
    fc.assert(
      fc.property(free, fc.nat(), fc.bigInt({ min: 0n, max: 20n }), (before, which, more) => {
        const grown = before.map((each, at) => (at === which % before.length ? each + more : each));
        for (const layout of steady(before.length)) {
          expect(allocatableExtents(layout, grown)).toBeGreaterThanOrEqual(
            allocatableExtents(layout, before),
          );
        }
      }),
      { numRuns: 500 },
    );
  });

  it('but three stripes on five members may lose room by growth, as lvcreate shows', () => {
    const threeStripes: Layout = { kind: 'striped', stripes: 3 };
    expect(allocatableExtents(threeStripes, [7n, 7n, 6n, 6n, 6n])).toBe(24n);
    expect(allocatableExtents(threeStripes, [7n, 7n, 7n, 6n, 6n])).toBe(21n);
  });
});
