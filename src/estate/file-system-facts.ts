/**
 * What each type of file system can do to its own size, and whether several servers may mount it at once:
 * one table, each fact with its source. `memory` marks what was looked up nowhere.
 */

import { type Bytes, bytes, unitBytes } from './size.ts';

export const fileSystemTypes = [
  'ext2',
  'ext3',
  'ext4',
  'xfs',
  'btrfs',
  'zfs',
  'ntfs',
  'vfat',
  'gfs2',
  'ocfs2',
  'swap',
] as const;

export type FileSystemType = (typeof fileSystemTypes)[number];

export interface FactSource {
  /** Which facts it carries. */
  readonly of: string;
  /** A manual page, a documentation page or a kernel change; `memory` when there is none. */
  readonly name: string;
  /** The version read; `undated` for a page that has none. */
  readonly version: string;
}

export interface FileSystemFacts {
  readonly type: FileSystemType;
  /**
   * Whether one may plan on it; what works only within narrow bounds is `false`, and the caution says so.
   * `online`: while mounted. `offline`: while unmounted everywhere.
   */
  readonly grow: { readonly online: boolean; readonly offline: boolean };
  readonly shrink: { readonly online: boolean; readonly offline: boolean };
  /** Safe to mount on several servers at once, with its cluster's locking in place. */
  readonly clusterAware: boolean;
  /** The largest size its sources name; absent when they name none. */
  readonly largest?: Bytes;
  /** What somebody about to resize or share one must know; a sentence. */
  readonly caution: string;
  readonly sources: readonly FactSource[];
}

const { TB, TiB, PiB } = unitBytes;
const notShared: FactSource = { of: 'not cluster-aware', name: 'memory', version: 'undated' };
const resize2fs: FactSource = {
  of: 'growing and shrinking',
  name: 'resize2fs(8)',
  version: 'e2fsprogs 1.47.0',
};
const noSharedShrink =
  'Every server mounts it with the cluster locking on; there is no way back to a smaller size.';
const blockNumbers: FactSource = {
  of: 'largest: 2^32 blocks of 4 KiB without the 64bit feature',
  name: 'ext4(5)',
  version: 'e2fsprogs 1.47.0',
};
const theoreticalLargest: FactSource = {
  of: 'largest, as a theoretical value',
  name: 'Oracle Linux 9, Managing Local File Systems: maximum file and file system sizes',
  version: 'undated',
};
const diskPartShrink: FactSource = {
  of: 'shrinking online: NTFS only',
  name: 'Microsoft Learn, DiskPart shrink',
  version: 'undated',
};

const facts: Readonly<Record<FileSystemType, FileSystemFacts>> = {
  ext2: {
    type: 'ext2',
    grow: { online: false, offline: true },
    shrink: { online: false, offline: true },
    clusterAware: false,
    largest: bytes(16n * TiB),
    caution:
      'It is checked with e2fsck and resized unmounted; the manual promises online growth from ext3 on.',
    sources: [resize2fs, blockNumbers, notShared],
  },
  ext3: {
    type: 'ext3',
    grow: { online: true, offline: true },
    shrink: { online: false, offline: true },
    clusterAware: false,
    largest: bytes(16n * TiB),
    caution: 'Online growth needs the feature resize_inode; shrinking needs it unmounted and checked first.',
    sources: [resize2fs, blockNumbers, notShared],
  },
  ext4: {
    type: 'ext4',
    grow: { online: true, offline: true },
    shrink: { online: false, offline: true },
    clusterAware: false,
    largest: bytes(1024n * PiB),
    caution:
      'Shrinking needs it unmounted and checked first, and the file system made smaller before its device.',
    sources: [resize2fs, theoreticalLargest, notShared],
  },
  xfs: {
    type: 'xfs',
    grow: { online: true, offline: false },
    shrink: { online: false, offline: false },
    clusterAware: false,
    largest: bytes(8192n * PiB),
    caution:
      'It can only give up the unused end of its last allocation group, which Linux 6.18 calls experimental; plan as if it could not shrink.',
    sources: [
      { of: 'growing: mounted only; shrinking', name: 'xfs_growfs(8)', version: 'xfsprogs 6.1.0' },
      {
        of: 'shrinking tried: 288 blocks off the last group went, a whole group was refused',
        name: 'xfs_growfs -D on a mounted image',
        version: 'xfsprogs 6.1.0, Linux 6.18',
      },
      theoreticalLargest,
      notShared,
    ],
  },
  btrfs: {
    type: 'btrfs',
    grow: { online: true, offline: false },
    shrink: { online: true, offline: false },
    clusterAware: false,
    largest: bytes(8192n * PiB),
    caution:
      'Shrinking moves what is beyond the new end and may take long; the device is made smaller afterwards.',
    sources: [
      { of: 'growing and shrinking: mounted only', name: 'btrfs-filesystem(8)', version: 'btrfs-progs 6.2' },
      theoreticalLargest,
      notShared,
    ],
  },
  zfs: {
    type: 'zfs',
    grow: { online: true, offline: false },
    shrink: { online: false, offline: false },
    clusterAware: false,
    caution:
      'It is a pool of its own on this one device. A device of a pool can be expanded and never made smaller; plan for a new pool and a copy. Only one server may have the pool imported at a time.',
    sources: [
      {
        of: 'growing: a device of an imported pool is expanded; nothing makes one smaller',
        name: 'zpool-online(8), zpool-replace(8)',
        version: 'OpenZFS 2.2.2, 2.1.5',
      },
      {
        of: 'not cluster-aware: a pool that another host has imported cannot be imported with multihost on',
        name: 'zpoolprops(7), multihost',
        version: 'OpenZFS 2.1',
      },
    ],
  },
  ntfs: {
    type: 'ntfs',
    grow: { online: true, offline: true },
    shrink: { online: true, offline: true },
    clusterAware: false,
    caution: 'Files that cannot be moved limit how far it shrinks.',
    sources: [
      { of: 'growing online', name: 'Microsoft Learn, FSCTL_EXTEND_VOLUME', version: 'undated' },
      diskPartShrink,
      { of: 'growing and shrinking offline', name: 'ntfsresize(8)', version: 'ntfs-3g 2022.10.3' },
      { of: 'immovable files', name: 'memory', version: 'undated' },
      notShared,
    ],
  },
  vfat: {
    type: 'vfat',
    grow: { online: false, offline: false },
    shrink: { online: false, offline: false },
    clusterAware: false,
    caution: 'Its own tools cannot resize it; plan for a new file system and a copy.',
    sources: [
      diskPartShrink,
      { of: 'growing, and shrinking offline', name: 'memory', version: 'undated' },
      notShared,
    ],
  },
  gfs2: {
    type: 'gfs2',
    grow: { online: true, offline: false },
    shrink: { online: false, offline: false },
    clusterAware: true,
    largest: bytes(100n * TB),
    caution: `${noSharedShrink} Created with lock_nolock it can be used by one server only.`,
    sources: [
      { of: 'growing: mounted only; no shrinking', name: 'gfs2_grow(8)', version: 'gfs2-utils 3.5.0' },
      { of: 'cluster-aware, lock_dlm and lock_nolock', name: 'gfs2(5)', version: 'gfs2-utils 3.5.0' },
      {
        of: 'largest, as supported',
        name: 'Red Hat Enterprise Linux 7, Storage Administration Guide, Global File System 2',
        version: '7',
      },
    ],
  },
  ocfs2: {
    type: 'ocfs2',
    grow: { online: true, offline: true },
    shrink: { online: false, offline: false },
    clusterAware: true,
    caution: noSharedShrink,
    sources: [
      { of: 'growing; its manual knows no shrinking', name: 'tunefs.ocfs2(8)', version: 'ocfs2-tools 1.8.7' },
      {
        of: 'growing online',
        name: 'Linux change d659072f7368, ocfs2: Add group extend for online resize',
        version: 'd659072f7368',
      },
      { of: 'cluster-aware', name: 'ocfs2(7)', version: 'ocfs2-tools 1.8.7' },
    ],
  },
  swap: {
    type: 'swap',
    grow: { online: false, offline: true },
    shrink: { online: false, offline: true },
    clusterAware: false,
    caution: 'It is created again at the new size while not in use: swapoff, mkswap, swapon.',
    sources: [
      { of: 'the whole device is initialized anew', name: 'mkswap(8)', version: 'util-linux 2.38.1' },
      { of: 'taken out of use first', name: 'memory', version: 'undated' },
      notShared,
    ],
  },
};

export const fileSystemFacts = (type: FileSystemType): FileSystemFacts => facts[type];
