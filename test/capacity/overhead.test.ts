import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileSystemTypes } from '../../src/capacity/file-system-facts.ts';
import { isKnown, type UsableSpace, usableOf } from '../../src/capacity/overhead.ts';
import { bytes, sumBytes, unitBytes } from '../../src/estate/size.ts';

const { KiB, MiB, GiB, TiB } = unitBytes;

type ExtType = 'ext2' | 'ext3' | 'ext4';
interface ExtMeasured {
  readonly rows: readonly (readonly [ExtType, string, number, number, number, number, number])[];
  readonly mounted: readonly (readonly [ExtType, string, number, number, number, number])[];
}
interface XfsMeasured {
  readonly rows: readonly (readonly [string, number, number, number, number, number, number])[];
}
const fixture = (name: string) =>
  JSON.parse(readFileSync(new URL(`fixtures/${name}`, import.meta.url), 'utf8'));
// Both measured on real images; the files say with which version and how.
const ext: ExtMeasured = fixture('mke2fs-1.47.0.json');
const xfs: XfsMeasured = fixture('mkfs.xfs-6.1.0.json');

function known(...of: Parameters<typeof usableOf>): UsableSpace {
  const space = usableOf(...of);
  if (!isKnown(space)) throw new Error(`${of[0]} in ${of[1]} bytes: ${space.unknown}`);
  return space;
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
    const space = known('ext4', bytes(gibibytes * GiB));
    expect(space.data).toBe(kibibytes * KiB);
    expect(space.reserved).toBe(((((gibibytes * GiB) / 4096n) * 5n) / 100n) * 4096n);
  });
});

describe('ext2, ext3 and ext4 as mke2fs 1.47.0 makes them', () => {
  it('to the block, at every size measured', () => {
    expect(ext.rows.length).toBeGreaterThan(250);
    for (const [type, device, blockSize, blocks, overhead, reserved, free] of ext.rows) {
      const space = known(type, bytes(BigInt(device)));
      const block = BigInt(blockSize);
      const named = `${type} in ${device} bytes`;
      expect(space.data, named).toBe(BigInt(blocks - overhead) * block);
      expect(space.reserved, named).toBe(BigInt(reserved) * block);
      const late = type === 'ext4' ? Math.min(Math.floor(blocks / 50), 4096) : 0;
      expect(space.data - space.own, named).toBe(BigInt(free - late) * block);
    }
  });

  it('and as df shows them once mounted', () => {
    for (const [type, device, blockSize, size, , available] of ext.mounted) {
      const space = known(type, bytes(BigInt(device)));
      expect(space.data).toBe(BigInt(size) * BigInt(blockSize));
      expect(space.available).toBe(BigInt(available) * BigInt(blockSize));
    }
  });
});

describe('xfs as mkfs.xfs 6.1.0 makes it and Linux 6.18 mounts it', () => {
  it('to the block, at every size measured', () => {
    expect(xfs.rows.length).toBeGreaterThan(80);
    for (const [device, , , , size, , available] of xfs.rows) {
      const space = known('xfs', bytes(BigInt(device)));
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
    expect(known('swap', bytes(device)).available).toBe(data);
  });

  it('and below 10 pages there is none', () => {
    expect(isKnown(usableOf('swap', bytes(36_864n)))).toBe(false);
  });
});

describe('what was not measured is unknown, never nothing', () => {
  it.each(['btrfs', 'ntfs', 'vfat', 'gfs2', 'ocfs2'] as const)('%s', (type) => {
    expect(usableOf(type, bytes(50n * GiB))).toEqual({ unknown: expect.stringContaining(type) });
  });

  it.each([
    ['ext4', 64n * MiB - 1n],
    ['ext4', 16n * TiB],
    ['ext3', 101n * GiB],
    ['xfs', 300n * MiB - 1n],
    ['xfs', 16n * TiB],
  ] as const)('%s in %i bytes', (type, device) => {
    expect(usableOf(type, bytes(device))).toEqual({ unknown: expect.stringContaining('has been measured') });
  });
});

describe('no file system gives out more than its device', () => {
  it('own, reserved and available are its data space, and fit the device', () => {
    const device = fc.oneof(
      fc.bigInt({ min: 0n, max: GiB }),
      fc.bigInt({ min: 0n, max: 200n * GiB }),
      fc.bigInt({ min: 0n, max: 17n * TiB }),
    );
    fc.assert(
      fc.property(fc.constantFrom(...fileSystemTypes), device, (type, size) => {
        const space = usableOf(type, bytes(size));
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

const installed = spawnSync('mke2fs', ['-V'], { encoding: 'utf8' }).stderr ?? '';
const live = /mke2fs 1\.47\.0/.test(installed);

describe('against the mke2fs of this machine', () => {
  // Sparse images of at most 20 GiB with their inode tables left unwritten: a few MiB on disk each.
  it.skipIf(!live)('ext4 at sizes drawn anew each time', () => {
    const dir = mkdtempSync(join(tmpdir(), 'ullage-mke2fs-'));
    try {
      const image = join(dir, 'image');
      const sizes = fc.sample(fc.bigInt({ min: 64n * MiB, max: 20n * GiB }), 6);
      for (const size of sizes) {
        writeFileSync(image, '');
        truncateSync(image, Number(size));
        const lazy = 'lazy_itable_init=1,lazy_journal_init=1,nodiscard';
        const made = spawnSync('mke2fs', ['-t', 'ext4', '-F', '-q', '-E', lazy, image], { encoding: 'utf8' });
        expect(made.status, made.stderr).toBe(0);
        const printed = spawnSync('dumpe2fs', ['-h', image], { encoding: 'utf8' }).stdout;
        const count = (label: string): bigint =>
          BigInt(new RegExp(`^${label}:\\s+(\\d+)$`, 'm').exec(printed)?.[1] ?? '-1');
        const block = count('Block size');
        const space = known('ext4', bytes(size));
        expect(space.data, `${size} bytes`).toBe((count('Block count') - count('Overhead clusters')) * block);
        expect(space.reserved, `${size} bytes`).toBe(count('Reserved block count') * block);
      }
    } finally {
      rmSync(dir, { recursive: true, force: true });
    }
  });
});
