import { type Bytes, bytes, unitBytes } from './size.ts';

/** The volume manager counts in sectors of 512 bytes. */
const sector = 512n;
const extentStep = 128n * unitBytes.KiB;
const extentLimit = 2n * unitBytes.TiB;

/** The extent of the open-source Linux volume manager where a group names none. */
export const usualExtent: Bytes = bytes(4n * unitBytes.MiB);

/**
 * Says why `extent` can be no extent size, or nothing when it can. Source: vgcreate(8) of lvm2 2.03.16, a power of
 * two of at least one sector, or a multiple of 128 KiB; each bound tried with vgcreate itself.
 */
export function extentProblem(extent: Bytes): string | undefined {
  if (extent < sector) return 'an extent is at least one sector, 512 bytes';
  if (extent >= extentLimit) return 'an extent must be smaller than 2 TiB';
  const powerOfTwo = (extent & (extent - 1n)) === 0n;
  return powerOfTwo || extent % extentStep === 0n
    ? undefined
    : 'an extent is a power of two, or a multiple of 128 KiB';
}
