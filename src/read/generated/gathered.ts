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
   * findmnt --json --bytes
   */
  findmnt?: {
    filesystems: {}[];
  };
  /**
   * df -P
   */
  df?: string;
  pvs?: LvmReport;
  vgs?: LvmReport1;
  lvs?: LvmReport2;
  /**
   * The first three fields of fstab's lines that mount a block device.
   */
  fstab?: string;
  /**
   * Of ext and xfs file systems: what dumpe2fs -h or xfs_info prints.
   */
  superblocks?: {
    device: string;
    text: string;
  }[];
  /**
   * What could not be seen, and why.
   */
  unseen?: {
    what: string;
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
