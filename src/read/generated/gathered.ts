/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * When it was taken.
 */
export type SurveyTime = string;

/**
 * What the script of `ullage survey script` prints: what a server's tools said, as they said it.
 */
export interface GatheredFile {
  /**
   * The version of this format.
   */
  format: 'ullage-gathered-1';
  at: SurveyTime;
  /**
   * What was asked for beside the usual: the mounts beneath /home, which are left out otherwise.
   */
  asked?: 'homes'[];
  /**
   * The tools that were asked, each with what it says of its version.
   */
  versions?: {
    [k: string]: string;
  };
  /**
   * lsblk --json --bytes
   */
  lsblk?: {
    blockdevices: {}[];
  };
  /**
   * The disks' serial numbers as the kernel has them in /sys/block, for where lsblk knows none.
   */
  serials?: {
    device: string;
    serial: string;
  }[];
  /**
   * What lies on the devices, as blkid finds it, for where lsblk knows of none.
   */
  contents?: {}[];
  /**
   * The mounts of block devices, as findmnt --list --json has them.
   */
  findmnt?: {
    filesystems: {}[];
  };
  /**
   * df -P
   */
  df?: string;
  /**
   * The devices that are swapped to, one a line.
   */
  swaps?: string;
  pvs?: LvmReport;
  vgs?: LvmReport1;
  lvs?: LvmReport2;
  /**
   * The first three fields of fstab's lines that mount a block device.
   */
  fstab?: string;
  /**
   * Of ext and xfs file systems: the figures that dumpe2fs -h or xfs_db prints, a line each.
   */
  superblocks?: {
    device: string;
    text: string;
  }[];
  /**
   * What could not be seen, and why.
   */
  unseen?: {
    what: 'devices' | 'mounts' | 'use' | 'volume-groups' | 'fstab' | 'superblocks';
    why: string;
  }[];
}
/**
 * pvs --reportformat json
 */
export interface LvmReport {
  report: {}[];
}
/**
 * vgs --reportformat json
 */
export interface LvmReport1 {
  report: {}[];
}
/**
 * lvs --reportformat json
 */
export interface LvmReport2 {
  report: {}[];
}
