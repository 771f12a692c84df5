import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { extentsFor, memberMetadata, usableExtents } from '../../src/capacity/extents.ts';
import type { Layout } from '../../src/estate/estate.ts';
import { type Bytes, bytes, parseSize, unitBytes } from '../../src/estate/size.ts';

const { KiB, MiB, GiB, TiB } = unitBytes;

const size = (text: string): Bytes => {
  const read = parseSize(text);
  if (typeof read !== 'bigint') throw new Error(read.why);
  return read;
};

interface Measured {
  readonly groups: readonly (readonly [string, string, number, number])[];
  readonly refusedDevices: readonly (readonly [string, string])[];
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
    const usable = usableExtents(size(device), size(extent));
    expect(usable).toBe(extents);
    expect(usable * size(extent)).toBe(mebibytes * MiB);
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

describe('a striped volume asks equal extents of every stripe', () => {
  it('takes whole rows of extents', () => {
    expect(extentsFor(size('10 MiB'), size('4 MiB'), { kind: 'striped', stripes: 2 })).toBe(4n);
    expect(extentsFor(size('20 MiB'), size('4 MiB'), { kind: 'striped', stripes: 3 })).toBe(6n);
  });
});

describe('a mirrored volume pays for every copy', () => {
  // Worked by hand from lvmraid(7): an image and its metadata on one member, no two images on the same.
  it('and for an extent of metadata with each', () => {
    const two: Layout = { kind: 'mirrored', copies: 2 };
    expect(extentsFor(size('798 GiB'), size('1 GiB'), two)).toBe(1_598n);
    expect(extentsFor(size('1 MiB'), size('4 MiB'), two)).toBe(4n);
  });
});

describe('three 40 GiB volumes carry one file system of 100 GiB, not of 130', () => {
  it('in extents of 64 MiB', () => {
    const extent = size('64 MiB');
    const usable = 3n * usableExtents(size('40 GiB'), extent);
    expect(usable).toBe(1_917n);
    expect(extentsFor(size('100 GiB'), extent)).toBe(1_600n);
    expect(extentsFor(size('130 GiB'), extent) - usable).toBe(163n);
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
  it('a member gives what is left after its metadata, less a tail that fills no extent', () => {
    fc.assert(
      fc.property(device, extentSize, (member, extent) => {
        const given = usableExtents(member, extent) * extent;
        expect(given).toBeGreaterThanOrEqual(0n);
        if (member < 2n * MiB) expect(given).toBe(0n);
        else expect(member - memberMetadata - given).toBeLessThan(extent + 512n);
        if (given > 0n) expect(given).toBeLessThanOrEqual(member - memberMetadata);
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
});
