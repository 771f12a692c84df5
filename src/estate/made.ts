/** How a file system is made, where that decides what it keeps for itself, and the defaults of the tools that make it. */
import { type Bytes, bytes, unitBytes } from './size.ts';

export type FileSystemType =
  | 'ext2'
  | 'ext3'
  | 'ext4'
  | 'xfs'
  | 'btrfs'
  | 'zfs'
  | 'ntfs'
  | 'vfat'
  | 'gfs2'
  | 'ocfs2'
  | 'swap';

/** As declared; `undefined` leaves it to the tool. */
export interface Making {
  /** The share of its blocks that only the superuser may fill (ext2, ext3, ext4). */
  readonly reserve: number | undefined;
  readonly blockSize: Bytes | undefined;
  /** The bytes of device for each inode that is laid out (ext2, ext3, ext4). */
  readonly inodeRatio: Bytes | undefined;
  /** Whether it keeps a tree of what owns each block (xfs). */
  readonly reverseMap: boolean | undefined;
}

export type MakingKey = keyof Making;

/** Which of it each type is made with; the other types have none of it that anybody measured. */
const keysOf: Readonly<Partial<Record<FileSystemType, readonly MakingKey[]>>> = {
  ext2: ['reserve', 'blockSize', 'inodeRatio'],
  ext3: ['reserve', 'blockSize', 'inodeRatio'],
  ext4: ['reserve', 'blockSize', 'inodeRatio'],
  xfs: ['blockSize', 'reverseMap'],
};

export const isMadeWith = (type: FileSystemType, key: MakingKey): boolean =>
  keysOf[type]?.includes(key) ?? false;

export interface Made {
  readonly reserve: number;
  readonly blockSize: Bytes;
  readonly inodeRatio: Bytes;
  readonly reverseMap: boolean;
}

/** The tool whose defaults stand in for what is not declared, and whose figures are reckoned with. */
export function makerOf(type: FileSystemType): string | undefined {
  switch (type) {
    case 'ext2':
    case 'ext3':
    case 'ext4':
      return 'mke2fs 1.47.0';
    case 'xfs':
      return 'mkfs.xfs 6.1.0';
    case 'swap':
      return 'mkswap 2.38.1';
    case 'btrfs':
    case 'zfs':
    case 'ntfs':
    case 'vfat':
    case 'gfs2':
    case 'ocfs2':
      return undefined;
  }
}

const { KiB, MiB, TiB } = unitBytes;

/**
 * What the tool makes of a declaration on a device of this size. mke2fs 1.47.0 by the mke2fs.conf that it ships: below
 * 512 MiB the type `small`, from 4 TiB the type `big`; mkfs.xfs 6.1.0 makes no reverse map unless it is told.
 */
export function madeOf(
  type: FileSystemType,
  device: Bytes,
  { reserve, blockSize, inodeRatio, reverseMap }: Making,
): Made {
  const small = type !== 'xfs' && device < 512n * MiB;
  return {
    reserve: reserve ?? 0.05,
    blockSize: blockSize ?? bytes(small ? KiB : 4n * KiB),
    inodeRatio: inodeRatio ?? bytes(small ? 4n * KiB : device >= 4n * TiB ? 32n * KiB : 16n * KiB),
    reverseMap: reverseMap ?? false,
  };
}
