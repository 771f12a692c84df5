/**
 * How the open-source tools of a Linux guest do it, as examples, each with the page it was read in.
 *
 * Manual pages read: lvm2 2.03.16, util-linux 2.38.1, xfsprogs 6.1.0, e2fsprogs 1.47.0, psmisc 23.6, btrfs-progs 6.2 and ntfs-3g
 * 2022.10.3. What the examples do not say where it comes from is common practice, from memory.
 */
import type { FileSystem, VolumeGroup } from '../estate/estate.ts';
import type { FileSystemType } from '../estate/made.ts';
import type { Example } from './step.ts';

const from =
  (pack: string) =>
  (page: string, command: string): Example => ({ command, source: `${page}(8), ${pack}` });

export const lvm2 = from('lvm2 2.03.16');
export const utilLinux = from('util-linux 2.38.1');
export const xfsprogs = from('xfsprogs 6.1.0');
export const e2fsprogs = from('e2fsprogs 1.47.0');
const btrfsProgs = from('btrfs-progs 6.2');
export const memory = (command: string): Example => ({ command, source: 'memory' });

export const rescan: Example = {
  command: 'echo 1 > /sys/class/block/DEVICE/device/rescan',
  source:
    'Red Hat Enterprise Linux 6, Virtualization Administration Guide, blockresize: SCSI devices are rescanned by hand, virtio-blk devices need it not; the path under /sys/class/block from memory',
};

export const look = utilLinux('lsblk', 'lsblk --output NAME,SIZE,TYPE,MOUNTPOINTS');

type Handling = 'make' | 'grow' | 'shrink';

const extFamily: Readonly<Partial<Record<Handling, readonly Example[]>>> = {
  grow: [e2fsprogs('resize2fs', 'resize2fs DEVICE_OR_LOGICAL_VOLUME')],
  shrink: [
    e2fsprogs('e2fsck', 'e2fsck -f DEVICE_OR_LOGICAL_VOLUME'),
    e2fsprogs('resize2fs', 'resize2fs DEVICE_OR_LOGICAL_VOLUME SIZE'),
  ],
};

const swapAnew = [
  utilLinux('swapoff', 'swapoff DEVICE'),
  utilLinux('mkswap', 'mkswap DEVICE'),
  utilLinux('swapon', 'swapon DEVICE'),
];

/** How a Linux guest's own tools handle each type; nothing where they do not, or where nobody looked. */
const byType: Readonly<Record<FileSystemType, Partial<Readonly<Record<Handling, readonly Example[]>>>>> = {
  ext2: extFamily,
  ext3: extFamily,
  ext4: extFamily,
  xfs: {
    grow: [xfsprogs('xfs_growfs', 'xfs_growfs MOUNT_POINT')],
  },
  btrfs: {
    make: [btrfsProgs('mkfs.btrfs', 'mkfs.btrfs DEVICE_OR_LOGICAL_VOLUME')],
    grow: [btrfsProgs('btrfs-filesystem', 'btrfs filesystem resize max MOUNT_POINT')],
    shrink: [btrfsProgs('btrfs-filesystem', 'btrfs filesystem resize SIZE MOUNT_POINT')],
  },
  ntfs: {
    grow: [{ command: 'ntfsresize DEVICE', source: 'ntfsresize(8), ntfs-3g 2022.10.3' }],
    shrink: [{ command: 'ntfsresize --size SIZE DEVICE', source: 'ntfsresize(8), ntfs-3g 2022.10.3' }],
  },
  vfat: {},
  gfs2: { grow: [{ command: 'gfs2_grow MOUNT_POINT', source: 'gfs2_grow(8), gfs2-utils 3.5.0' }] },
  ocfs2: { grow: [memory('tunefs.ocfs2 --volume-size DEVICE')] },
  swap: { make: [utilLinux('mkswap', 'mkswap DEVICE')], grow: swapAnew, shrink: swapAnew },
};

export const handledBy = (type: FileSystemType, handling: Exclude<Handling, 'make'>): readonly Example[] =>
  byType[type][handling] ?? [];

/** How it is made as it is declared; what is left out is left to the tool. */
export function madeBy({ type, making }: Pick<FileSystem, 'type' | 'making'>): readonly Example[] {
  const { reserve, blockSize, inodeRatio, reverseMap } = making;
  switch (type) {
    case 'ext2':
    case 'ext3':
    case 'ext4': {
      const flags = [
        ...(reserve === undefined ? [] : ['-m RESERVE_PER_CENT']),
        ...(blockSize === undefined ? [] : ['-b BLOCK_BYTES']),
        ...(inodeRatio === undefined ? [] : ['-i BYTES_PER_INODE']),
      ];
      return [e2fsprogs('mke2fs', ['mke2fs -t TYPE', ...flags, 'DEVICE_OR_LOGICAL_VOLUME'].join(' '))];
    }
    case 'xfs': {
      const flags = [
        ...(blockSize === undefined ? [] : ['-b size=BLOCK_BYTES']),
        ...(reverseMap === undefined ? [] : [`-m rmapbt=${reverseMap ? 1 : 0}`]),
      ];
      return [xfsprogs('mkfs.xfs', ['mkfs.xfs', ...flags, 'DEVICE_OR_LOGICAL_VOLUME'].join(' '))];
    }
    case 'btrfs':
    case 'ntfs':
    case 'vfat':
    case 'gfs2':
    case 'ocfs2':
    case 'swap':
      return byType[type].make ?? [];
  }
}

/** How a logical volume is made in each layout. */
export function laidOut({ kind }: VolumeGroup['layout']): readonly Example[] {
  switch (kind) {
    case 'linear':
      return [lvm2('lvcreate', 'lvcreate --size SIZE --name LOGICAL_VOLUME GROUP')];
    case 'striped':
      return [lvm2('lvcreate', 'lvcreate --stripes STRIPES --size SIZE --name LOGICAL_VOLUME GROUP')];
    case 'mirrored':
      return [
        lvm2(
          'lvcreate',
          'lvcreate --type raid1 --mirrors COPIES_BESIDE_THE_FIRST --size SIZE --name LOGICAL_VOLUME GROUP',
        ),
      ];
  }
}
