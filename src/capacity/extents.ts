/**
 * From bytes to extents: what a volume group makes of its members, and what a logical volume takes from it.
 *
 * The layout is that of the open-source Linux volume manager (lvm2) at its defaults: a label and one metadata
 * area at the start of each member, the first extent at 1 MiB. Measured with LVM 2.03.16 on real groups;
 * mirrored layouts could not be made on the measuring machine and follow its documentation.
 */

import {
  type Bytes,
  bytes,
  differenceOfBytes,
  noBytes,
  sumBytes,
  timesBytes,
  unitBytes,
} from '../estate/size.ts';

/** How the extents of a logical volume lie on the members of its group. */
export type Layout =
  | { readonly kind: 'linear' }
  /** Equal extents side by side on `stripes` members. */
  | { readonly kind: 'striped'; readonly stripes: number }
  /** `copies` whole images on distinct members; each takes one more extent for its own metadata (raid1). */
  | { readonly kind: 'mirrored'; readonly copies: number };

/** Where the first extent of a member begins: label and metadata area, aligned to 1 MiB. */
export const memberMetadata: Bytes = bytes(unitBytes.MiB);

/** The volume manager makes no member of a smaller device (its `pv_min_size`). */
export const smallestMember: Bytes = bytes(2n * unitBytes.MiB);

/** The volume manager counts in sectors of 512 bytes; a device's odd tail is lost. */
const sector = 512n;
const extentStep = 128n * unitBytes.KiB;
const extentLimit = 2n * unitBytes.TiB;

/**
 * Says why `extent` can be no extent size, or nothing when it can. Source: vgcreate(8) of lvm2 2.03.16, a
 * power of two of at least one sector, or a multiple of 128 KiB; both limits tried with vgcreate itself.
 */
export function extentProblem(extent: Bytes): string | undefined {
  if (extent < sector) return 'an extent is at least one sector, 512 bytes';
  if (extent >= extentLimit) return 'an extent is smaller than 2 TiB';
  const powerOfTwo = (extent & (extent - 1n)) === 0n;
  return powerOfTwo || extent % extentStep === 0n
    ? undefined
    : 'an extent is a power of two, or a multiple of 128 KiB';
}

/** Says why `layout` does not fit a group of `members` members, or nothing when it does. */
export function layoutProblem(layout: Layout, members: number): string | undefined {
  if (members < 1) return 'a group has at least one member';
  const wanted = membersWanted(layout);
  const what = layout.kind === 'striped' ? 'stripes' : 'copies';
  if (!Number.isInteger(wanted) || wanted < 1) return `${what} are counted in whole numbers from 1`;
  return wanted > members
    ? `${wanted} ${what} need ${wanted} members, and the group has ${members}`
    : undefined;
}

/** The whole extents that a member of this size gives its group. */
export function usableExtents(member: Bytes, extent: Bytes): bigint {
  if (extent <= 0n) throw new RangeError('an extent has at least one byte');
  if (member < smallestMember) return 0n;
  const sectors = member - (member % sector);
  return (sectors - memberMetadata) / extent;
}

/**
 * The extents of the largest logical volume of this layout that the volume manager places in the free extents of
 * the members when it is not told where to put them. Zero when the layout does not fit.
 *
 * It fills the members with most room first, as long as the tightest of them lasts, then chooses again. With
 * three or more stripes on more members than stripes that is neither the best placement nor a steady one: free
 * extents of 7, 7, 6, 6, 6 carry 24 in three stripes, 7, 7, 7, 6, 6 only 21. Both were tried with lvcreate.
 * Mirrored volumes are taken to be placed likewise.
 */
export function allocatableExtents(layout: Layout, freePerMember: readonly bigint[]): bigint {
  if (layoutProblem(layout, freePerMember.length) !== undefined) return 0n;
  switch (layout.kind) {
    case 'linear':
      return freePerMember.reduce((total, free) => total + free, 0n);
    case 'striped':
      return BigInt(layout.stripes) * placedSideBySide(freePerMember, layout.stripes);
    case 'mirrored': {
      const byRoom = mostFirst(freePerMember);
      const afterMetadata = byRoom.map((free, at) => (at < layout.copies && free > 0n ? free - 1n : free));
      return placedSideBySide(afterMetadata, layout.copies);
    }
  }
}

/** The extents that a logical volume of `size` takes from its group, copies and their metadata included. */
export function extentsFor(size: Bytes, extent: Bytes, layout: Layout = { kind: 'linear' }): bigint {
  const whole = roundedUp(size, extent);
  switch (layout.kind) {
    case 'linear':
      return whole;
    case 'striped': {
      const stripes = BigInt(layout.stripes);
      return roundedUp(whole, stripes) * stripes;
    }
    case 'mirrored':
      return whole === 0n ? 0n : BigInt(layout.copies) * (whole + 1n);
  }
}

export interface MemberCapacity {
  readonly size: Bytes;
  readonly extents: bigint;
  readonly metadata: Bytes;
  /** The tail that fills no whole extent. */
  readonly rounding: Bytes;
}

/** Where every byte of the members goes: their sum is `bytes` and the three losses. */
export interface GroupCapacity {
  /** The extents of all members together, as the volume manager reports the group. */
  readonly groupExtents: bigint;
  readonly groupBytes: Bytes;
  /** The extents of the largest logical volume of the layout. */
  readonly extents: bigint;
  readonly bytes: Bytes;
  /** The group's extents which that volume takes, copies and their metadata included: see `extentsFor`. */
  readonly taken: bigint;
  readonly perMember: readonly MemberCapacity[];
  readonly lostToMetadata: Bytes;
  readonly lostToRounding: Bytes;
  /** Copies, their metadata, and extents that no stripe or image can reach. */
  readonly lostToLayout: Bytes;
}

/** What a group of these members holds, empty. */
export function groupCapacity(group: {
  readonly members: readonly Bytes[];
  readonly extent: Bytes;
  readonly layout: Layout;
}): GroupCapacity {
  const perMember = group.members.map((size) => memberCapacity(size, group.extent));
  const groupExtents = perMember.reduce((total, member) => total + member.extents, 0n);
  const groupBytes = timesBytes(group.extent, groupExtents);
  const extents = allocatableExtents(
    group.layout,
    perMember.map((member) => member.extents),
  );
  const held = timesBytes(group.extent, extents);
  return {
    groupExtents,
    groupBytes,
    extents,
    bytes: held,
    taken: extentsFor(held, group.extent, group.layout),
    perMember,
    lostToMetadata: sumBytes(perMember.map((member) => member.metadata)),
    lostToRounding: sumBytes(perMember.map((member) => member.rounding)),
    lostToLayout: differenceOfBytes(groupBytes, held),
  };
}

/** The extents of a group that its layout can reach, in the measure of `extentsFor`: copies count. */
export const allocatable = (group: GroupCapacity): bigint => group.taken;

function memberCapacity(size: Bytes, extent: Bytes): MemberCapacity {
  const extents = usableExtents(size, extent);
  const metadata = size < memberMetadata ? size : memberMetadata;
  return { size, extents, metadata, rounding: bytes(size - metadata - extents * extent) };
}

function membersWanted(layout: Layout): number {
  switch (layout.kind) {
    case 'linear':
      return 1;
    case 'striped':
      return layout.stripes;
    case 'mirrored':
      return layout.copies;
  }
}

/** The length of the longest run that lies side by side on `width` members at every point. */
function placedSideBySide(freePerMember: readonly bigint[], width: number): bigint {
  let left = mostFirst(freePerMember);
  let placed = 0n;
  for (;;) {
    const tightest = left[width - 1] ?? noBytes;
    if (tightest <= 0n) return placed;
    placed += tightest;
    left = mostFirst(left.map((free, at) => (at < width ? free - tightest : free)));
  }
}

const mostFirst = (freePerMember: readonly bigint[]): readonly bigint[] =>
  [...freePerMember].sort((a, b) => (a > b ? -1 : a < b ? 1 : 0));

const roundedUp = (amount: bigint, step: bigint): bigint => (amount + step - 1n) / step;
