import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isKnown, type UsableSpace, usableOf } from '../../src/capacity/overhead.ts';
import { fileSystemTypes } from '../../src/estate/file-system-facts.ts';
import type { FileSystemType, Making } from '../../src/estate/made.ts';
import { bytes, sumBytes, unitBytes } from '../../src/estate/size.ts';
import { type ExtCounts, mke2fsVersion, withImages } from './images.ts';
import { byDefault, extMade, flagsOf, type MadeExt, makingOf } from './making-cases.ts';

const { KiB, MiB, GiB, TiB } = unitBytes;

type ExtType = 'ext2' | 'ext3' | 'ext4';
interface ExtMeasured {
  readonly rows: readonly (readonly [ExtType, string, number, number, number, number, number])[];
  readonly mounted: readonly (readonly [ExtType, string, number, number, number, number])[];
  readonly made: readonly (readonly [MadeExt, number, number, number, number, number])[];
}
interface XfsMeasured {
  readonly rows: readonly (readonly [string, number, number])[];
  readonly reverseMapped: readonly (readonly [string, number, number])[];
}
const fixture = (name: string) =>
  JSON.parse(readFileSync(new URL(`fixtures/${name}`, import.meta.url), 'utf8'));
// Both measured on real images; the files say with which version and how.
const ext: ExtMeasured = fixture('mke2fs-1.47.0.json');
const xfs: XfsMeasured = fixture('mkfs.xfs-6.1.0.json');

const spaceOf = (type: FileSystemType, device: bigint, making: Making = byDefault) =>
  usableOf({ type, making }, bytes(device));

function known(type: FileSystemType, device: bigint, making?: Making): UsableSpace {
  const space = spaceOf(type, device, making);
  if (!isKnown(space)) throw new Error(`${type} in ${device} bytes: ${space.unknown}`);
  return space;
}

/** Against the counts that dumpe2fs prints of it, in blocks. */
function expectCounts(
  type: ExtType,
  space: UsableSpace,
  { blockSize, blocks, overhead, reserved, free }: ExtCounts,
  named: string,
): void {
  const block = BigInt(blockSize);
  expect(space.data, named).toBe(BigInt(blocks - overhead) * block);
  expect(space.reserved, named).toBe(BigInt(reserved) * block);
  // ext4_statfs of the kernel keeps 2 % for late allocation, 4,096 blocks at most, which dumpe2fs does not count.
  const late = type === 'ext4' ? Math.min(Math.floor(blocks / 50), 4096) : 0;
  expect(space.data - space.own, named).toBe(BigInt(free - late) * block);
}

describe('ext4 gives less than its device', () => {
  // Source: what mke2fs 1.47.0 makes of an image, as the design lists it.
  it.each([
    [10n, 10_218_772n],
    [20n, 20_466_256n],
    [40n, 40_973_536n],
    [50n, 51_290_592n],
    [100n, 102_626_232n],
  ])('%i GiB', (gibibytes, kibibytes) => {
    const space = known('ext4', gibibytes * GiB);
    expect(space.data).toBe(kibibytes * KiB);
    expect(space.reserved).toBe(((((gibibytes * GiB) / 4096n) * 5n) / 100n) * 4096n);
  });
});

describe('ext2, ext3 and ext4 as mke2fs 1.47.0 makes them', () => {
  it('to the block, at every size measured', () => {
    expect(ext.rows.length).toBeGreaterThan(250);
    for (const [type, device, blockSize, blocks, overhead, reserved, free] of ext.rows) {
      const counts = { blockSize, blocks, overhead, reserved, free };
      expectCounts(type, known(type, BigInt(device)), counts, `${type} in ${device} bytes`);
    }
  });

  it('and made with another reserve, block or inode ratio', () => {
    expect(ext.made.length).toBeGreaterThan(100);
    // With a block as large as the bytes for each inode, a last group that is given up crowds the others.
    const crowded = ext.made.filter(
      ([made]) => !isKnown(spaceOf(made.type, BigInt(made.device), makingOf(made))),
    );
    expect(crowded.length).toBeLessThan(3);
    for (const [made, blockSize, blocks, overhead, reserved, free] of ext.made) {
      if (crowded.some(([each]) => each === made)) continue;
      const space = known(made.type, BigInt(made.device), makingOf(made));
      expectCounts(made.type, space, { blockSize, blocks, overhead, reserved, free }, JSON.stringify(made));
    }
  });

  it('and as df shows them once mounted', () => {
    for (const [type, device, blockSize, size, , available] of ext.mounted) {
      const space = known(type, BigInt(device));
      expect(space.data).toBe(BigInt(size) * BigInt(blockSize));
      expect(space.available).toBe(BigInt(available) * BigInt(blockSize));
    }
  });
});

describe('xfs as mkfs.xfs 6.1.0 makes it and Linux 6.18 mounts it', () => {
  it('to the block, at every size measured', () => {
    expect(xfs.rows.length).toBeGreaterThan(80);
    for (const [device, size, available] of xfs.rows) {
      const space = known('xfs', BigInt(device));
      expect(space.data, `${device} bytes`).toBe(BigInt(size) * 4096n);
      expect(space.available, `${device} bytes`).toBe(BigInt(available) * 4096n);
    }
  });

  it('and with a reverse map, which costs more than a hundredth of the room', () => {
    expect(xfs.reverseMapped.length).toBeGreaterThan(30);
    for (const [device, size, available] of xfs.reverseMapped) {
      const space = known('xfs', BigInt(device), { ...byDefault, reverseMap: true });
      expect(space.data, `${device} bytes`).toBe(BigInt(size) * 4096n);
      expect(space.available, `${device} bytes`).toBe(BigInt(available) * 4096n);
    }
  });
});

describe('a swap area loses its header', () => {
  // Source: what mkswap of util-linux 2.38.1 printed for each.
  it.each([
    [200n * MiB, 209_711_104n],
    [GiB, 1_073_737_728n],
    [50n * GiB, 53_687_087_104n],
    [500_000_000_000n, 499_999_993_856n],
    [40_960n, 36_864n],
  ])('%i bytes', (device, data) => {
    expect(known('swap', device).available).toBe(data);
  });

  it('and below 10 pages there is none', () => {
    expect(isKnown(spaceOf('swap', 36_864n))).toBe(false);
  });
});

describe('what was not measured is unknown, never nothing', () => {
  it.each(['btrfs', 'zfs', 'ntfs', 'vfat', 'gfs2', 'ocfs2'] as const)('%s', (type) => {
    expect(spaceOf(type, 50n * GiB)).toEqual({ unknown: expect.stringContaining(type) });
  });

  it.each([
    ['ext4', 64n * MiB - 1n],
    ['ext4', 16n * TiB],
    ['ext3', 101n * GiB],
    ['xfs', 300n * MiB - 1n],
    ['xfs', 16n * TiB],
  ] as const)('%s in %i bytes', (type, device) => {
    expect(spaceOf(type, device)).toEqual({ unknown: expect.stringContaining('has been measured') });
  });
});

describe('what was not measured is unknown however it was made', () => {
  it.each([
    ['ext4', 10n, { blockSize: bytes(65_536n) }, 'blocks up to 4 KiB'],
    ['ext4', 10n, { inodeRatio: bytes(2_048n) }, 'so many inodes in a group'],
    ['ext4', 200n, { blockSize: bytes(1_024n) }, 'to 100 GiB'],
    ['xfs', 10n, { blockSize: bytes(1_024n) }, 'blocks of 4 KiB'],
  ] as const)('%s in %i GiB', (type, gibibytes, made, why) => {
    expect(spaceOf(type, gibibytes * GiB, { ...byDefault, ...made })).toEqual({
      unknown: expect.stringContaining(why),
    });
  });
});

const making: fc.Arbitrary<Making> = fc.record({
  reserve: fc.option(fc.double({ min: 0, max: 0.5, noNaN: true }), { nil: undefined }),
  blockSize: fc.option(fc.constantFrom(1024n, 2048n, 4096n, 65_536n).map(bytes), { nil: undefined }),
  inodeRatio: fc.option(fc.bigInt({ min: 1024n, max: 64n * MiB }).map(bytes), { nil: undefined }),
  reverseMap: fc.option(fc.boolean(), { nil: undefined }),
});

describe('no file system gives out more than its device', () => {
  it('own, reserved and available are its data space, and fit the device', () => {
    const device = fc.oneof(
      fc.bigInt({ min: 0n, max: GiB }),
      fc.bigInt({ min: 0n, max: 200n * GiB }),
      fc.bigInt({ min: 0n, max: 17n * TiB }),
    );
    fc.assert(
      fc.property(fc.constantFrom(...fileSystemTypes), device, making, (type, size, making) => {
        const space = spaceOf(type, size, making);
        if (!isKnown(space)) {
          expect(space.unknown).not.toBe('');
          return;
        }
        for (const part of [space.own, space.reserved, space.available])
          expect(part).toBeGreaterThanOrEqual(0n);
        expect(sumBytes([space.own, space.reserved, space.available])).toBe(space.data);
        expect(space.data).toBeLessThanOrEqual(space.device);
      }),
      { numRuns: 300 },
    );
  });
});

const live = mke2fsVersion().startsWith('mke2fs 1.47.0');

describe('against the mke2fs of this machine', () => {
  if (!live) console.info('File systems are not made here: e2fsprogs 1.47.0 is not installed.');
  it.skipIf(!live)(
    'at sizes, and made in ways, that are drawn anew each time',
    () => {
      withImages((images) => {
        for (const made of fc.sample(extMade, 4)) {
          if (!isKnown(spaceOf(made.type, BigInt(made.device), makingOf(made)))) continue;
          const counts = images.ext(made.type, BigInt(made.device), flagsOf(made));
          const space = known(made.type, BigInt(made.device), makingOf(made));
          expectCounts(made.type, space, counts, JSON.stringify(made));
        }
      });
    },
    120_000,
  );
});
