/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * The team that everything in this file belongs to, unless it names its own.
 */
export type Name = string;
/**
 * The site that everything in this file is at, unless it names its own.
 */
export type Name1 = string;
/**
 * The provider's own identifier of the server, by which surveys and bills know it; no two servers have the same. In quotes where it looks like a number.
 */
export type Identifier = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name2 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name3 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name4 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name5 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name6 = string;
/**
 * The provider's own identifier of the volume, by which surveys and bills know it; no two volumes have the same. In quotes where it looks like a number.
 */
export type Identifier1 = string;
/**
 * The provisioned size: a number with its unit, such as 50 GiB.
 */
export type Size = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name7 = string;
/**
 * The person or role that is responsible for an unattached volume; the team if none is named.
 */
export type Sentence = string;
/**
 * Why an unattached volume is kept.
 */
export type Sentence1 = string;
/**
 * The day until which an unattached volume is kept.
 */
export type Date = string;
/**
 * Where the guest mounts it: an absolute path, a drive letter such as D:, or swap.
 */
export type MountPoint = string;
/**
 * The file system's type, which decides whether it can shrink and whether two servers may mount it.
 */
export type FileSystemType =
  'ext2' | 'ext3' | 'ext4' | 'xfs' | 'btrfs' | 'zfs' | 'ntfs' | 'vfat' | 'gfs2' | 'ocfs2' | 'swap';
/**
 * The size it was created with or grown to; the whole volume if left out.
 */
export type Size1 = string;
/**
 * ext2, ext3, ext4 and xfs: its block size. mke2fs 1.47.0 uses 1 KiB below 512 MiB, and 4 KiB above; mkfs.xfs 6.1.0 uses 4 KiB.
 */
export type Size2 = string;
/**
 * ext2, ext3 and ext4: how much of the device there is for each inode. mke2fs 1.47.0 uses 4 KiB below 512 MiB, 32 KiB from 4 TiB, and 16 KiB between.
 */
export type Size3 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name8 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name9 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name10 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name11 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name12 = string;
/**
 * The size of the group's extents, in which it allocates capacity.
 */
export type Size4 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name13 = string;
/**
 * The size of its logical volume.
 */
export type Size5 = string;
/**
 * ext2, ext3, ext4 and xfs: its block size. mke2fs 1.47.0 uses 1 KiB below 512 MiB, and 4 KiB above; mkfs.xfs 6.1.0 uses 4 KiB.
 */
export type Size6 = string;
/**
 * ext2, ext3 and ext4: how much of the device there is for each inode. mke2fs 1.47.0 uses 4 KiB below 512 MiB, 32 KiB from 4 TiB, and 16 KiB between.
 */
export type Size7 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name14 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name15 = string;
/**
 * One deletion, put on record.
 */
export type RetiredDeclaration = {
  [k: string]: unknown;
} & {
  volume?: Name16;
  'file-system'?: Sentence2;
  on: Date1;
  reason: Sentence3;
  backup?: Sentence4;
  'backed-up'?: Date2;
};
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name16 = string;
/**
 * The file system that was deleted while its volumes stay: what it was on and its mount point, as in plates:/plates.
 */
export type Sentence2 = string;
/**
 * The day of the deletion.
 */
export type Date1 = string;
/**
 * Why it is no longer needed.
 */
export type Sentence3 = string;
/**
 * Where the last backup is.
 */
export type Sentence4 = string;
/**
 * The day of that backup.
 */
export type Date2 = string;

/**
 * An estate file: servers, volumes, attachments, volume groups, file systems, retired volumes.
 */
export interface EstateFile {
  team?: Name;
  site?: Name1;
  labels?: Labels;
  /**
   * true means that everything that comes with this line and says nothing of its own is already there and is only being declared: nothing is created, attached or formatted. Once main has the line, it says nothing of what is added to the file later.
   */
  existing?: boolean;
  /**
   * The servers, by name.
   */
  servers?: {
    [k: string]: ServerDeclaration;
  };
  /**
   * The volumes, by name.
   */
  volumes?: {
    [k: string]: VolumeDeclaration;
  };
  /**
   * Which volume is attached to which server. A boot volume needs no entry.
   */
  attachments?: AttachmentDeclaration[];
  /**
   * The volume groups, by name.
   */
  'volume-groups'?: {
    [k: string]: VolumeGroupDeclaration;
  };
  /**
   * Volumes and file systems that were deleted, each with its reason and its backup.
   */
  retired?: RetiredDeclaration[];
}
/**
 * Labels that everything in this file carries, unless it sets the same label itself.
 */
export interface Labels {
  [k: string]: string;
}
/**
 * One server.
 */
export interface ServerDeclaration {
  id?: Identifier;
  /**
   * Whether the server runs. A stopped server may still be billed.
   */
  power?: 'running' | 'stopped';
  boot?: Name2;
  /**
   * What runs inside the server, which decides the steps in the guest: linux-lvm, linux, windows, other, or one of your own procedures.
   */
  guest?: string;
  type?: Name3;
  /**
   * The IOPS (input and output operations a second) that this server needs from all its volumes together.
   */
  iops?: number;
  /**
   * How many volumes can be attached to this server, if other than at its site in general.
   */
  'attachment-slots'?: number;
  team?: Name4;
  site?: Name5;
  labels?: Labels1;
  /**
   * true means that the server and the volume it starts from are already there and are only being declared: nothing is created or attached. Only while the server is new to main.
   */
  existing?: boolean;
  formerly?: Name6;
}
/**
 * Labels of your own, name to text; limits and rules can select by them.
 */
export interface Labels1 {
  [k: string]: string;
}
/**
 * One volume.
 */
export interface VolumeDeclaration {
  id?: Identifier1;
  size: Size;
  tier: Name7;
  /**
   * Whether the provider allows it to be attached to several servers at once.
   */
  shareable?: boolean;
  /**
   * A protected volume cannot be deleted before its protection is removed in a change of its own.
   */
  protected?: boolean;
  owner?: Sentence;
  reason?: Sentence1;
  'retain-until'?: Date;
  'file-system'?: WholeVolumeFileSystemDeclaration;
  team?: Name8;
  site?: Name9;
  labels?: Labels1;
  /**
   * true means that the volume, what is on it and its attachments are already there and are only being declared: nothing is created, attached or formatted. Only while the volume is new to main.
   */
  existing?: boolean;
  formerly?: Name10;
}
/**
 * The file system on this volume itself, outside any group.
 */
export interface WholeVolumeFileSystemDeclaration {
  mount: MountPoint;
  type: FileSystemType;
  size?: Size1;
  /**
   * true means that it is already there and is only being declared: nothing is created, and nothing is overwritten. If left out, that of its volume; only while the file system is new to main.
   */
  existing?: boolean;
  /**
   * ext2, ext3 and ext4: the share of it that only the superuser may fill, such as 0.01. mke2fs 1.47.0 keeps 0.05.
   */
  reserve?: number;
  'block-size'?: Size2;
  'inode-ratio'?: Size3;
  /**
   * xfs: whether it keeps a map from each block to what owns it, which takes more than a hundredth of its capacity. mkfs.xfs 6.1.0 does not unless told to; later versions may.
   */
  'reverse-map'?: boolean;
}
/**
 * One volume on one server.
 */
export interface AttachmentDeclaration {
  volume: Name11;
  server: Name12;
  /**
   * true means that it is attached already and that is only being declared. If left out, so is a volume that is itself only being declared.
   */
  existing?: boolean;
}
/**
 * Volumes that are used as one. All of them are moved together.
 */
export interface VolumeGroupDeclaration {
  extent?: Size4;
  /**
   * The volumes in the group.
   *
   * @minItems 1
   */
  members: [Name13, ...Name13[]];
  /**
   * How the group's file systems are laid out on its members.
   */
  layout?: 'linear' | 'striped' | 'mirrored';
  /**
   * Over how many members a striped layout spreads; all of them if left out.
   */
  stripes?: number;
  /**
   * How many whole copies a mirrored layout keeps.
   */
  copies?: number;
  /**
   * The file systems in the group, by mount point.
   */
  'file-systems'?: {
    [k: string]: FileSystemDeclaration;
  };
  team?: Name14;
  labels?: Labels1;
  formerly?: Name15;
  /**
   * true means that the group, its members and its file systems are already there and are only being declared: nothing is created, and nothing is overwritten. Only while the group is new to main.
   */
  existing?: boolean;
}
/**
 * One file system on its own logical volume.
 */
export interface FileSystemDeclaration {
  size: Size5;
  type: FileSystemType;
  /**
   * true means that it is already there and is only being declared: nothing is created, and nothing is overwritten. If left out, that of its group; only while the file system is new to main.
   */
  existing?: boolean;
  /**
   * ext2, ext3 and ext4: the share of it that only the superuser may fill, such as 0.01. mke2fs 1.47.0 keeps 0.05.
   */
  reserve?: number;
  'block-size'?: Size6;
  'inode-ratio'?: Size7;
  /**
   * xfs: whether it keeps a map from each block to what owns it, which takes more than a hundredth of its capacity. mkfs.xfs 6.1.0 does not unless told to; later versions may.
   */
  'reverse-map'?: boolean;
}
