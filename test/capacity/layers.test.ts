import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DeviceAccount, layersOf } from '../../src/capacity/layers.ts';
import { isKnown, usableOf } from '../../src/capacity/overhead.ts';
import type { Reading } from '../../src/capacity/readings.ts';
import { usageFrom } from '../../src/capacity/usage.ts';
import { bytes, unitBytes } from '../../src/estate/size.ts';
import { estateOf } from '../estate/builder.ts';
import { byDefault } from './making-cases.ts';

const { GiB } = unitBytes;

const reading = (figures: Pick<Reading, 'size' | 'used' | 'available'>): Reading => ({
  server: 'plate-scanner',
  mount: '/plates',
  at: '2026-11-20T06:00:00Z',
  ...figures,
});

function account(keys: string, last?: Reading): Extract<DeviceAccount, { kind: 'known' }> {
  const estate = estateOf(
    `volumes:\n  plates-1: { size: 40 GiB, tier: bulk, file-system: { mount: /plates, ${keys} } }\n`,
  );
  const usage = new Map(
    last === undefined ? [] : [['plates-1:/plates', usageFrom({ last, highest: [last] })] as const],
  );
  const device = layersOf(estate, usage)[0]?.devices[0];
  if (device?.kind !== 'known') throw new Error(device?.why);
  return device;
}

describe('where a reading shows the real size of a file system, that counts', () => {
  it('an xfs that turns out to keep a reverse map has less for files', () => {
    const map = usableOf({ type: 'xfs', making: { ...byDefault, reverseMap: true } }, bytes(40n * GiB));
    if (!isKnown(map)) throw new Error(map.unknown);
    // Empty as it is, it shows as used what the running system keeps.
    const shown = reading({ size: map.data, used: map.own, available: map.available });
    const { overhead, forFiles, by } = account('type: xfs', shown);
    expect(by).toEqual({ reading: shown.at });
    expect(overhead + forFiles).toBe(40n * GiB);
    expect(account('type: xfs').by).toEqual({ maker: 'mkfs.xfs 6.1.0' });
  });

  it('an ext4 whose reserve was lowered shows the reserve that it has', () => {
    const low = usableOf({ type: 'ext4', making: { ...byDefault, reserve: 0.01 } }, bytes(40n * GiB));
    if (!isKnown(low)) throw new Error(low.unknown);
    const used = bytes(low.shownAsUsed + 7n * GiB);
    const shown = reading({ size: low.data, used, available: bytes(low.available - 7n * GiB) });
    expect(account('type: ext4', shown)).toMatchObject({
      reserved: low.reserved,
      forFiles: low.available,
      by: { reading: shown.at },
    });
  });

  it('a file system that nobody measured is known by its reading', () => {
    const shown = reading({ size: bytes(40n * GiB), used: bytes(GiB), available: bytes(38n * GiB) });
    expect(account('type: btrfs', shown)).toMatchObject({ overhead: 0n, reserved: GiB, forFiles: 39n * GiB });
    expect(() => account('type: btrfs')).toThrow(/chunks/);
  });

  it('but one of another device than the declared tells nothing of this', () => {
    const old = reading({ size: bytes(20n * GiB), used: bytes(GiB), available: bytes(18n * GiB) });
    expect(account('type: ext4', old)).toEqual({
      ...account('type: ext4'),
      usage: expect.objectContaining({ last: old }),
    });
  });

  it('every byte of the device stands in one column, whatever a reading says', () => {
    const figure = fc.bigInt({ min: -GiB, max: 45n * GiB }).map(bytes);
    fc.assert(
      fc.property(
        fc.constantFrom('ext4', 'xfs', 'btrfs'),
        figure,
        figure,
        figure,
        (type, size, used, available) => {
          const near = bytes(39n * GiB + size / 20n);
          let device: ReturnType<typeof account>;
          try {
            device = account(`type: ${type}`, reading({ size: near, used, available }));
          } catch {
            return;
          }
          for (const part of [device.overhead, device.reserved, device.forFiles])
            expect(part).toBeGreaterThanOrEqual(0n);
          expect(device.overhead + device.reserved + device.forFiles).toBe(40n * GiB);
        },
      ),
    );
  });
});
