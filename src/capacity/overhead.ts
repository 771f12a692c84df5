/**
 * From a block device to what a file system makes of it: its data space, what the file system and the
 * superuser keep of that, and what is left for files.
 *
 * The formulas are those of the programs that make the file systems, and hold for the range over which they were
 * measured. Outside it, and for every other type, the answer is `unknown`, never zero.
 */

import type { FileSystem } from '../estate/estate.ts';
import { type Made, madeOf } from '../estate/made.ts';
import { type Bytes, bytes, unitBytes } from '../estate/size.ts';

/** A new, empty file system. `data` is `own`, `reserved` and `available` together. */
export interface UsableSpace {
  readonly device: Bytes;
  /** The size that `df` shows: the device less superblocks, inode tables, bitmaps and journal. */
  readonly data: Bytes;
  /** What the file system keeps of `data` for itself: its first directories and the running kernel's reserves. */
  readonly own: Bytes;
  /** What of `own` a running system shows as used. */
  readonly shownAsUsed: Bytes;
  /** What only the superuser may fill. */
  readonly reserved: Bytes;
  readonly available: Bytes;
}

export interface UnknownSpace {
  /** Why nothing can be said, as a clause: `btrfs hands out ...`. */
  readonly unknown: string;
}

const { MiB, GiB, TiB } = unitBytes;

/** What a file system, made as it is declared, gives on a device of this size. */
export function usableOf(
  { type, making }: Pick<FileSystem, 'type' | 'making'>,
  deviceSize: Bytes,
): UsableSpace | UnknownSpace {
  const made = madeOf(type, deviceSize, making);
  switch (type) {
    case 'ext2':
    case 'ext3':
    case 'ext4':
      return extSpace(type, deviceSize, made);
    case 'xfs':
      return xfsSpace(deviceSize, made);
    case 'swap':
      return swapSpace(deviceSize);
    case 'btrfs':
      return { unknown: 'btrfs hands out its space in chunks as data and metadata arrive' };
    case 'zfs':
      return { unknown: 'zfs lays out its space as data and metadata arrive' };
    case 'ntfs':
    case 'vfat':
    case 'gfs2':
    case 'ocfs2':
      return { unknown: `the overhead of ${type} has not been measured` };
  }
}

export const isKnown = (space: UsableSpace | UnknownSpace): space is UsableSpace => !('unknown' in space);

const spaceOf = (
  device: Bytes,
  blockSize: bigint,
  blocks: {
    readonly data: bigint;
    readonly own: bigint;
    readonly shownAsUsed: bigint;
    readonly reserved: bigint;
  },
): UsableSpace => ({
  device,
  data: bytes(blocks.data * blockSize),
  own: bytes(blocks.own * blockSize),
  shownAsUsed: bytes(blocks.shownAsUsed * blockSize),
  reserved: bytes(blocks.reserved * blockSize),
  available: bytes((blocks.data - blocks.own - blocks.reserved) * blockSize),
});

const outside = (
  type: string,
  device: Bytes,
  from: bigint,
  below: bigint,
  limits: string,
): UnknownSpace | undefined =>
  device >= from && device < below ? undefined : { unknown: `${type} has been measured ${limits} only` };

// --- ext2, ext3, ext4 -------------------------------------------------------------------------------------

type ExtType = 'ext2' | 'ext3' | 'ext4';

const inodeSize = 256n;
const memoryPage = 4096n;
/** The most blocks a file system without the 64-bit feature can number; the room to grow is planned up to it. */
const mostBlocks = 0xffff_ffffn;

interface ExtGeometry {
  readonly blockSize: bigint;
  readonly blocks: bigint;
  readonly groups: bigint;
  readonly descriptorBlocks: bigint;
  readonly reservedDescriptorBlocks: bigint;
  readonly inodeBlocksPerGroup: bigint;
  readonly reserved: bigint;
}

/**
 * mke2fs 1.47.0 with the mke2fs.conf it ships. Equal to the real program at every size tried: ext4 from
 * 64 MiB to just under 16 TiB, ext2 and ext3 from 64 MiB to 100 GiB.
 */
function extSpace(type: ExtType, device: Bytes, made: Made): UsableSpace | UnknownSpace {
  if (made.blockSize > 4096n) return { unknown: `${type} has been measured with blocks up to 4 KiB only` };
  const beyond =
    type === 'ext4' && made.blockSize === 4096n
      ? outside(type, device, 64n * MiB, 16n * TiB, 'from 64 MiB to below 16 TiB')
      : outside(type, device, 64n * MiB, 100n * GiB + 1n, 'from 64 MiB to 100 GiB');
  if (beyond !== undefined) return beyond;
  const geometry = extGeometry(type, device, made);
  const { blockSize, blocks, groups } = geometry;
  // A group has one block to mark its inodes in; with more of them mke2fs makes groups smaller.
  if (geometry.inodeBlocksPerGroup * (blockSize / inodeSize) > 8n * blockSize)
    return { unknown: `${type} has not been measured with so many inodes in a group` };
  const journal = type === 'ext2' ? 0n : journalBlocks(blocks);
  const backedUp = 1n + geometry.descriptorBlocks + geometry.reservedDescriptorBlocks;
  const overhead =
    groupsWithSuperblock(groups) * backedUp +
    groups * (2n + geometry.inodeBlocksPerGroup) +
    journal +
    firstBlock(blockSize);
  // The kernel keeps 2 % of the blocks, 4,096 at most, for late allocation where files are mapped by extents:
  // ext4_statfs takes them off what it calls available. Seen on mounted images, Linux 6.18.
  const lateAllocation = type === 'ext4' ? smaller(blocks / 50n, 4096n) : 0n;
  const shownAsUsed = firstFiles(blockSize) + journalMap(type, journal, blockSize);
  return spaceOf(device, blockSize, {
    data: blocks - overhead,
    own: shownAsUsed + lateAllocation,
    shownAsUsed,
    reserved: geometry.reserved,
  });
}

function extGeometry(type: ExtType, device: Bytes, made: Made): ExtGeometry {
  const { blockSize, inodeRatio, reserve } = made;
  const groupBlocks = 8n * blockSize;
  const descriptorsPerBlock = blockSize / (type === 'ext4' ? 64n : 32n);
  const deviceBlocks = (device - (device % memoryPage)) / blockSize;
  const inodes = (deviceBlocks * blockSize) / inodeRatio;
  const first = firstBlock(blockSize);

  const laidOut = (blocks: bigint): ExtGeometry => {
    const groups = ceiling(blocks - first, groupBlocks);
    const descriptorBlocks = ceiling(groups, descriptorsPerBlock);
    const room = blocks < mostBlocks / 1024n ? blocks * 1024n : mostBlocks;
    const descriptorsForRoom = ceiling(ceiling(room - first, groupBlocks), descriptorsPerBlock);
    const inodesPerBlock = blockSize / inodeSize;
    const filled = ceiling(ceiling(inodes, groups), inodesPerBlock) * inodesPerBlock;
    const inodesPerGroup = filled - (filled % 8n);
    return {
      blockSize,
      blocks,
      groups,
      descriptorBlocks,
      reservedDescriptorBlocks: smaller(descriptorsForRoom - descriptorBlocks, blockSize / 4n),
      inodeBlocksPerGroup: ceiling(inodesPerGroup, inodesPerBlock),
      // A share of the device's blocks; cut in proportion when the last group is given up.
      reserved: (shareOf(deviceBlocks, reserve) * blocks) / deviceBlocks,
    };
  };

  // A last group too short for its own tables and 50 blocks more is given up, and the rest is laid out again.
  let geometry = laidOut(deviceBlocks);
  for (;;) {
    const tail = (geometry.blocks - first) % groupBlocks;
    const tables =
      2n +
      geometry.inodeBlocksPerGroup +
      (hasSuperblock(geometry.groups - 1n)
        ? 1n + geometry.descriptorBlocks + geometry.reservedDescriptorBlocks
        : 0n);
    if (tail === 0n || tail >= tables + 50n) return geometry;
    geometry = laidOut(geometry.blocks - tail);
  }
}

/** Reckoned in per cent and in floating point, as mke2fs does. */
const shareOf = (blocks: bigint, share: number): bigint =>
  BigInt(Math.floor((Number((share * 100).toPrecision(12)) * Number(blocks)) / 100));

/** With blocks of 1 KiB the boot sector fills block 0 and the file system begins at block 1. */
const firstBlock = (blockSize: bigint): bigint => (blockSize === 1024n ? 1n : 0n);

const backupBases = [3n, 5n, 7n] as const;

/** Superblock copies lie in groups 0 and 1 and in the powers of 3, 5 and 7 (the feature `sparse_super`). */
function groupsWithSuperblock(groups: bigint): bigint {
  let count = smaller(groups, 2n);
  for (const base of backupBases) for (let power = base; power < groups; power *= base) count += 1n;
  return count;
}

const hasSuperblock = (group: bigint): boolean =>
  groupsWithSuperblock(group + 1n) > groupsWithSuperblock(group);

/** The journal mke2fs makes: [below this many blocks, this many journal blocks]. */
const journalSteps: readonly (readonly [bigint, bigint])[] = [
  [32_768n, 1024n],
  [262_144n, 4096n],
  [524_288n, 8192n],
  [4_194_304n, 16_384n],
  [8_388_608n, 32_768n],
  [16_777_216n, 65_536n],
  [33_554_432n, 131_072n],
];

const journalBlocks = (blocks: bigint): bigint =>
  journalSteps.find(([below]) => blocks < below)?.[1] ?? 262_144n;

/** The root directory, `lost+found` (16 KiB; 12 blocks of 1 KiB) and the map of the room to grow. */
const firstFiles = (blockSize: bigint): bigint => 2n + smaller((16n * 1024n) / blockSize, 12n);

/** The blocks that say where the journal lies: an extent tree in ext4, indirect blocks in ext3. */
function journalMap(type: ExtType, journal: bigint, blockSize: bigint): bigint {
  if (type === 'ext2') return 0n;
  if (type === 'ext4') {
    // The inode itself holds four extents of at most 32,768 blocks; more need a block of their own. One that is as
    // long as sixteen groups meets their tables on the way, and is in a piece more.
    const pieces = ceiling(journal, 32_768n) + (journal >= 16n * 8n * blockSize ? 1n : 0n);
    return pieces > 4n ? 1n : 0n;
  }
  // Twelve blocks are named in the inode; then each block of numbers names so many, in up to three steps.
  const named = blockSize / 4n;
  const first = ceiling(journal - 12n, named);
  if (first <= 1n) return first;
  const third = ceiling(first - 1n - named, named);
  return first + 1n + (third > 0n ? 1n + third : 0n);
}

// --- xfs --------------------------------------------------------------------------------------------------

const xfsBlock = 4096n;
/** The most blocks in one allocation group: 1 TiB less one block. */
const xfsLargestGroup = 268_435_455n;
const xfsSmallestGroup = (16n * MiB) / xfsBlock;
const xfsSmallestLog = (64n * MiB) / xfsBlock;
/** 2 GiB less 10 MiB. */
const xfsLargestLog = (2n * GiB - 10n * MiB) / xfsBlock;

/**
 * mkfs.xfs 6.1.0 on one plain device (no stripe unit), 300 MiB to below 16 TiB: equal at every size tried.
 * `own` is what Linux 6.18 keeps back on a mounted one, for its reverse maps and its reserve; another kernel
 * or another mkfs.xfs may differ (expect within 1 %: from memory, not measured).
 */
function xfsSpace(device: Bytes, { blockSize, reverseMap }: Made): UsableSpace | UnknownSpace {
  if (blockSize !== xfsBlock) return { unknown: 'xfs has been measured with blocks of 4 KiB only' };
  const beyond = outside('xfs', device, 300n * MiB, 16n * TiB, 'from 300 MiB to below 16 TiB');
  if (beyond !== undefined) return beyond;
  const deviceBlocks = device / xfsBlock;
  const groupBlocks = smaller(ceiling(deviceBlocks, 4n), xfsLargestGroup);
  const tail = deviceBlocks % groupBlocks;
  const blocks = tail !== 0n && tail < xfsSmallestGroup ? deviceBlocks - tail : deviceBlocks;
  const groups = ceiling(blocks, groupBlocks);
  const log = smaller(larger(blocks / 2048n, xfsSmallestLog), xfsLargestLog);

  // Each group: its header and five B-tree roots, and one more where it maps owners; a chunk of inodes in the first.
  const used = (reverseMap ? 7n : 6n) * groups + 8n;
  let kept = smaller(blocks / 20n, 8192n) + 8n * groups;
  for (let group = 0n; group < groups; group += 1n) {
    const whole = group < groups - 1n ? groupBlocks : blocks - (groups - 1n) * groupBlocks;
    const free = group === groups / 2n ? whole - log : whole;
    kept += groupReserve(free) + (reverseMap ? mapReserve(free) : 0n);
  }
  const own = used + kept;
  return spaceOf(device, xfsBlock, { data: blocks - log, own, shownAsUsed: own, reserved: 0n });
}

/** Room for the largest reference-count and free-inode trees of one group, less the roots they have. */
const groupReserve = (blocks: bigint): bigint =>
  treeBlocks(blocks, 168n, 252n) + treeBlocks((blocks * 8n) / 64n, 126n, 252n) - 2n;

/** Room for the largest tree of owners of one group; a hundredth of it at least, which the tree always is. */
const mapReserve = (blocks: bigint): bigint => treeBlocks(blocks, 84n, 45n);

/** The blocks of a B-tree of `records`, every leaf and node half full. */
function treeBlocks(records: bigint, perLeaf: bigint, perNode: bigint): bigint {
  let level = ceiling(records, perLeaf);
  let total = level;
  while (level > 1n) {
    level = ceiling(level, perNode);
    total += level;
  }
  return total;
}

// --- swap -------------------------------------------------------------------------------------------------

/** mkswap (util-linux 2.38.1): whole pages of 4 KiB, the first of them the header. */
function swapSpace(device: Bytes): UsableSpace | UnknownSpace {
  const pages = device / memoryPage;
  // mkswap(8) and the kernel want ten pages at least.
  if (pages < 10n) return { unknown: 'a swap area has at least 10 pages of 4 KiB' };
  return spaceOf(device, memoryPage, { data: pages - 1n, own: 0n, shownAsUsed: 0n, reserved: 0n });
}

const ceiling = (amount: bigint, step: bigint): bigint => (amount + step - 1n) / step;
const smaller = (a: bigint, b: bigint): bigint => (a < b ? a : b);
const larger = (a: bigint, b: bigint): bigint => (a > b ? a : b);
