/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * The server, as the estate names it.
 */
export type Name = string;
/**
 * When it was taken.
 */
export type SurveyTime = string;
/**
 * Its name under /dev, such as vdb, vda1 or mapper/plates-scans.
 */
export type SurveyText = string;
/**
 * As lsblk says it: disk, part, lvm, crypt, raid1 and the like.
 */
export type SurveyText1 = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText2 = string;
/**
 * Its size.
 */
export type ByteCount = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText3 = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText4 = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText5 = string;
/**
 * The size of an extent.
 */
export type ByteCount1 = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText6 = string;
/**
 * The physical volume's size, as the group has taken it up.
 */
export type ByteCount2 = string;
/**
 * The size of the device beneath it.
 */
export type ByteCount3 = string;
/**
 * Where on the device its first extent begins.
 */
export type ByteCount4 = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText7 = string;
/**
 * Its size.
 */
export type ByteCount5 = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText8 = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText9 = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText10 = string;
/**
 * Its own size by its superblock: blocks times block size.
 */
export type ByteCount6 = string;
/**
 * Its block size.
 */
export type ByteCount7 = string;
/**
 * What it keeps for itself of that.
 */
export type ByteCount8 = string;
/**
 * What only the superuser may fill.
 */
export type ByteCount9 = string;
/**
 * What df gives as its size.
 */
export type ByteCount10 = string;
/**
 * What df gives as used.
 */
export type ByteCount11 = string;

/**
 * What a server's own tools show to be there, at one time: what `ullage survey add` keeps of it in surveys/SERVER.json.
 */
export interface SurveyFile {
  /**
   * The version of this format.
   */
  format: 'ullage-survey-1';
  server: Name;
  at: SurveyTime;
  tools: SurveyTools;
  /**
   * What could not be seen, for want of a tool or of a privilege. Of these nothing is said to be missing.
   */
  unseen: ('devices' | 'mounts' | 'use' | 'volume-groups' | 'fstab' | 'superblocks')[];
  /**
   * The disks, and the partitions and other block devices on them, by name.
   */
  devices: SurveyedDevice[];
  /**
   * The volume groups, by name.
   */
  'volume-groups': SurveyedVolumeGroup[];
  /**
   * The file systems and swap areas, by device.
   */
  'file-systems': SurveyedFileSystem[];
}
/**
 * The tools that were asked, each with its version, where it says one.
 */
export interface SurveyTools {
  [k: string]: string;
}
/**
 * One block device.
 */
export interface SurveyedDevice {
  name: SurveyText;
  type: SurveyText1;
  /**
   * The devices it lies on, by name; none for a disk.
   *
   * @minItems 1
   */
  on?: [SurveyText2, ...SurveyText2[]];
  size: ByteCount;
  serial?: SurveyText3;
  content?: SurveyText4;
}
/**
 * One volume group.
 */
export interface SurveyedVolumeGroup {
  name: SurveyText5;
  extent: ByteCount1;
  /**
   * How many extents it has.
   */
  extents: number;
  /**
   * How many of them belong to no logical volume.
   */
  free: number;
  /**
   * How many of its physical volumes are missing.
   */
  missing: number;
  /**
   * Its physical volumes, by device.
   */
  members: SurveyedMember[];
  /**
   * Its logical volumes, by name.
   */
  'logical-volumes': SurveyedLogicalVolume[];
}
/**
 * One physical volume.
 */
export interface SurveyedMember {
  device?: SurveyText6;
  size?: ByteCount2;
  'device-size'?: ByteCount3;
  'first-extent'?: ByteCount4;
  /**
   * How many extents it gives the group.
   */
  extents: number;
  /**
   * How many of them are free.
   */
  free: number;
}
/**
 * One logical volume.
 */
export interface SurveyedLogicalVolume {
  name: SurveyText7;
  size: ByteCount5;
  /**
   * How its extents lie.
   */
  layout: 'linear' | 'striped' | 'mirrored' | 'other';
  /**
   * Of a striped one: on how many members.
   */
  stripes?: number;
  /**
   * Of a mirrored one: how many images.
   */
  copies?: number;
  /**
   * Whether it is active.
   */
  active?: boolean;
}
/**
 * One file system or swap area.
 */
export interface SurveyedFileSystem {
  device: SurveyText8;
  type: SurveyText9;
  id?: SurveyText10;
  /**
   * Where it is mounted now; the first is the one it is known by.
   */
  mounts?: string[];
  /**
   * Where fstab mounts it.
   */
  'in-fstab'?: string;
  size?: ByteCount6;
  'block-size'?: ByteCount7;
  metadata?: ByteCount8;
  reserved?: ByteCount9;
  usable?: ByteCount10;
  used?: ByteCount11;
  /**
   * What df gives as available.
   */
  available?: string;
}
