/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name = string;
export type RuleEntry =
  | MaxMonthlySpendEntry
  | SpendUnderALimitEntry
  | MinimumHeadroomEntry
  | NoShrinkEntry
  | BootVolumeStaysEntry
  | ExclusiveAttachmentEntry
  | GroupTravelsWholeEntry
  | SameSiteEntry
  | GrowthStepEntry
  | DetachedVolumeOwnedEntry
  | DeletionPreparedEntry
  | DestructiveChangesFewEntry
  | SurveyedAsDeclaredEntry
  | OrderOfStepsEntry
  | FreezeEntry
  | GrowthFollowedThroughEntry
  | NamingEntry
  | NoStaleRenameEntry
  | ShapeEntry
  | TierBoundsEntry
  | PolicyApartEntry;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name1 = string;
/**
 * Only what belongs to one of these teams.
 *
 * @minItems 1
 */
export type Names = [Name, ...Name[]];
/**
 * Only what is at one of these sites.
 *
 * @minItems 1
 */
export type Names1 = [Name, ...Name[]];
/**
 * Only volumes of one of these tiers.
 *
 * @minItems 1
 */
export type Names2 = [Name, ...Name[]];
/**
 * The highest total monthly cost of everything in scope. Exactly this amount is allowed.
 */
export type Amount = string;
/**
 * The first day on which the limit applies.
 */
export type Date = string;
/**
 * The last day on which the limit applies.
 */
export type Date1 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name2 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name3 = string;
/**
 * The smallest size that must be free, at layers measured in bytes.
 */
export type Size = string;
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
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name7 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name8 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name9 = string;
/**
 * The largest size by which a volume may grow in one change.
 */
export type Size1 = string;
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
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name13 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name14 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name15 = string;
/**
 * The first day of the freeze.
 */
export type Date2 = string;
/**
 * The last day of the freeze.
 */
export type Date3 = string;
/**
 * Why there is a freeze; shown with each finding.
 */
export type Sentence = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name16 = string;
/**
 * The size that may be unallocated at any one place, for a partition table, a group's metadata or a last extent. Exactly this size is allowed.
 */
export type Size2 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name17 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name18 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name19 = string;
/**
 * The beginning of the message about what does not match.
 */
export type Sentence1 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name20 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name21 = string;

/**
 * A rule pack: rules with their parameters, limits and scope.
 */
export interface RulePackFile {
  /**
   * Packs by name: those that ship with Ullage, and those that `packs` in ullage.yaml lists, which override them by name. What follows adds to them or overrides them.
   */
  use?: Name[];
  /**
   * The rules of this pack.
   */
  rules?: RuleEntry[];
}
/**
 * A team, a site, a label or the whole estate whose monthly cost is over its limit.
 */
export interface MaxMonthlySpendEntry {
  /**
   * A team, a site, a label or the whole estate whose monthly cost is over its limit.
   */
  rule: 'max-monthly-spend';
  name?: Name1;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration;
  limit: Amount;
  /**
   * Applies the limit to each team, or each site, in scope separately instead of to their total.
   */
  each?: 'team' | 'site';
  /**
   * The share of the limit from which a warning is given.
   */
  'warn-from'?: number;
  from?: Date;
  until?: Date1;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * Monthly cost that no spend limit covers: of a team, or of no team at all; and a server that names no type where the price list has server types, since its cost is then counted nowhere.
 */
export interface SpendUnderALimitEntry {
  /**
   * Monthly cost that no spend limit covers: of a team, or of no team at all; and a server that names no type where the price list has server types, since its cost is then counted nowhere.
   */
  rule: 'spend-under-a-limit';
  name?: Name2;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration1;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration1 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * Less headroom than required in a site's quota, a server's attachment slots, a volume group or a file system; or a file system that, by its readings, will be full too soon.
 */
export interface MinimumHeadroomEntry {
  /**
   * Less headroom than required in a site's quota, a server's attachment slots, a volume group or a file system; or a file system that, by its readings, will be full too soon.
   */
  rule: 'minimum-headroom';
  name?: Name3;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration2;
  /**
   * The layer that must keep headroom. A file system is checked against its readings; without any, its share and size are not checked.
   */
  of: 'quota' | 'attachment-slots' | 'volume-group' | 'file-system';
  /**
   * The smallest share of the capacity that must be free. Exactly this share is enough.
   */
  share?: number;
  size?: Size;
  /**
   * The smallest number of volumes or slots that must be free, at layers that are counted.
   */
  count?: number;
  /**
   * The smallest number of days, from the day of the judgement, until a file system may be full by its readings: what counts is the day by which 5 in 100 of the futures drawn from them are full, so that the rule errs early. Exactly this many are enough.
   */
  days?: number;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration2 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place.
 */
export interface NoShrinkEntry {
  /**
   * A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place.
   */
  rule: 'no-shrink';
  name?: Name4;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration3;
  /**
   * The types of file system that may be made smaller, among those whose own tools can do it.
   */
  'allow-file-systems'?: ('ext2' | 'ext3' | 'ext4' | 'btrfs' | 'ntfs' | 'swap')[];
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration3 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A boot volume detached, swapped, moved, deleted, added to a volume group or given a new file system while its server runs.
 */
export interface BootVolumeStaysEntry {
  /**
   * A boot volume detached, swapped, moved, deleted, added to a volume group or given a new file system while its server runs.
   */
  rule: 'boot-volume-stays';
  name?: Name5;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration4;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration4 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * One volume attached to several servers, unless it is shareable, within its tier's limit, and holds a cluster-aware file system.
 */
export interface ExclusiveAttachmentEntry {
  /**
   * One volume attached to several servers, unless it is shareable, within its tier's limit, and holds a cluster-aware file system.
   */
  rule: 'exclusive-attachment';
  name?: Name6;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration5;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration5 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A volume group with members on different servers, or with some members attached and some not.
 */
export interface GroupTravelsWholeEntry {
  /**
   * A volume group with members on different servers, or with some members attached and some not.
   */
  rule: 'group-travels-whole';
  name?: Name7;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration6;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration6 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A volume attached to a server at another site.
 */
export interface SameSiteEntry {
  /**
   * A volume attached to a server at another site.
   */
  rule: 'same-site';
  name?: Name8;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration7;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration7 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A volume made larger in one change by more than a set factor or a set size.
 */
export interface GrowthStepEntry {
  /**
   * A volume made larger in one change by more than a set factor or a set size.
   */
  rule: 'growth-step';
  name?: Name9;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration8;
  /**
   * The largest factor by which a volume may grow in one change.
   */
  times?: number;
  by?: Size1;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration8 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A volume that no server uses and that is still billed, unattached or attached only to stopped servers that cost nothing, without an owner, a reason or a retention date, or kept past that date.
 */
export interface DetachedVolumeOwnedEntry {
  /**
   * A volume that no server uses and that is still billed, unattached or attached only to stopped servers that cost nothing, without an owner, a reason or a retention date, or kept past that date.
   */
  rule: 'detached-volume-owned';
  name?: Name10;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration9;
  /**
   * How many days ahead a retention date may be at most.
   */
  'at-most'?: number;
  /**
   * How many days past the retention date are tolerated.
   */
  grace?: number;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration9 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * The deletion of a volume that is attached on main, is protected, is to be kept longer, or leaves no record of its reason and of a recent enough backup; likewise a move to another site, and a file system deleted or reformatted on volumes that stay. Warns when a volume joins a group, or gets its first file system, and may already hold data.
 */
export interface DeletionPreparedEntry {
  /**
   * The deletion of a volume that is attached on main, is protected, is to be kept longer, or leaves no record of its reason and of a recent enough backup; likewise a move to another site, and a file system deleted or reformatted on volumes that stay. Warns when a volume joins a group, or gets its first file system, and may already hold data.
   */
  rule: 'deletion-prepared';
  name?: Name11;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration10;
  /**
   * The greatest age, in days, of the backup on record on the day of the judgement; if left out, no backup is required.
   */
  'backup-within'?: number;
  /**
   * Whether a volume that is still attached on main may be deleted.
   */
  'attached-allowed'?: boolean;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration10 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * More than a set number of changes in one branch that cannot be undone.
 */
export interface DestructiveChangesFewEntry {
  /**
   * More than a set number of changes in one branch that cannot be undone.
   */
  rule: 'destructive-changes-few';
  name?: Name12;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration11;
  /**
   * How many volumes, groups and file systems one branch may delete, shrink or reformat. Exactly this many are allowed; what is lost together with its volume or group counts once.
   */
  'at-most': number;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration11 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A change that destroys, detaches, hands over or grows something which, by the surveys on main, is otherwise than main declares it or holds what main does not declare, or of which the survey is too old or missing; a server that would take along what nobody declared; and something declared as existing that a survey does not show.
 */
export interface SurveyedAsDeclaredEntry {
  /**
   * A change that destroys, detaches, hands over or grows something which, by the surveys on main, is otherwise than main declares it or holds what main does not declare, or of which the survey is too old or missing; a server that would take along what nobody declared; and something declared as existing that a survey does not show.
   */
  rule: 'surveyed-as-declared';
  name?: Name13;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration12;
  /**
   * How many days old a survey may be.
   */
  within?: number;
  /**
   * The level of a survey that is too old, up to the entry's own.
   */
  'too-old'?: 'error' | 'warning' | 'note';
  /**
   * The level of a missing survey, up to the entry's own. As long as main has no survey at all, a missing one is told only where this is `error`.
   */
  missing?: 'error' | 'warning' | 'note';
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration12 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * Changes that no order of steps carries out: steps that wait for one another in a circle, an attachment for which no slot is free on the way, a site's quota exceeded on the way, the contents of a volume group that would have to be moved between sites.
 */
export interface OrderOfStepsEntry {
  /**
   * Changes that no order of steps carries out: steps that wait for one another in a circle, an attachment for which no slot is free on the way, a site's quota exceeded on the way, the contents of a volume group that would have to be moved between sites.
   */
  rule: 'order-of-steps';
  name?: Name14;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration13;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration13 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * Changes that cannot be undone, or any changes, within a freeze period.
 */
export interface FreezeEntry {
  /**
   * Changes that cannot be undone, or any changes, within a freeze period.
   */
  rule: 'freeze';
  name?: Name15;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration14;
  from?: Date2;
  until?: Date3;
  /**
   * Whether every change of storage is refused, not only those that cannot be undone.
   */
  'all-changes'?: boolean;
  reason?: Sentence;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration14 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * Provisioned capacity that is left unallocated: a volume group with too much allocated to no file system, an attached volume in no group and without a file system, a file system smaller than the volume under it.
 */
export interface GrowthFollowedThroughEntry {
  /**
   * Provisioned capacity that is left unallocated: a volume group with too much allocated to no file system, an attached volume in no group and without a file system, a file system smaller than the volume under it.
   */
  rule: 'growth-followed-through';
  name?: Name16;
  /**
   * The level of a finding; warning if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration15;
  /**
   * The largest share of the provisioned capacity of a volume group that may be unallocated. Exactly this share is allowed.
   */
  'idle-share'?: number;
  'idle-size'?: Size2;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration15 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A name of a server, a volume, a volume group or a mount point that breaks the estate's pattern.
 */
export interface NamingEntry {
  /**
   * A name of a server, a volume, a volume group or a mount point that breaks the estate's pattern.
   */
  rule: 'naming';
  name?: Name17;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration16;
  /**
   * The pattern (RE2) that a server's name must match from end to end.
   */
  server?: string;
  /**
   * The pattern (RE2) that a volume's name must match from end to end.
   */
  volume?: string;
  /**
   * The pattern (RE2) that a volume group's name must match from end to end.
   */
  'volume-group'?: string;
  /**
   * The pattern (RE2) that the mount point of a file system must match from end to end.
   */
  mount?: string;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration16 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * An old name under formerly: that another thing has taken up since, or that nothing on main has.
 */
export interface NoStaleRenameEntry {
  /**
   * An old name under formerly: that another thing has taken up since, or that nothing on main has.
   */
  rule: 'no-stale-rename';
  name?: Name18;
  /**
   * The level of a finding; warning if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration17;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration17 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * Whatever does not match a JSON Schema of your own: a rule without code, for one kind of thing or for changes.
 */
export interface ShapeEntry {
  /**
   * Whatever does not match a JSON Schema of your own: a rule without code, for one kind of thing or for changes.
   */
  rule: 'shape';
  name?: Name19;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration18;
  /**
   * What is checked against the schema, each by itself.
   */
  of: 'server' | 'volume' | 'volume-group' | 'file-system' | 'change';
  /**
   * Only changes of these kinds; all kinds if left out. What is only declared as existing counts as created, attached or joined, too. Only with of: change.
   *
   * @minItems 1
   */
  kinds?: [
    (
      | 'server-created'
      | 'server-adopted'
      | 'server-renamed'
      | 'server-changed-id'
      | 'server-changed-team'
      | 'server-moved-site'
      | 'server-changed-type'
      | 'server-started'
      | 'server-stopped'
      | 'boot-swapped'
      | 'server-edited'
      | 'server-deleted'
      | 'volume-created'
      | 'volume-adopted'
      | 'volume-re-created'
      | 'volume-renamed'
      | 'volume-changed-id'
      | 'volume-changed-team'
      | 'volume-moved-site'
      | 'volume-moved-tier'
      | 'volume-grown'
      | 'volume-shrunk'
      | 'volume-corrected'
      | 'volume-unprotected'
      | 'volume-edited'
      | 'handed-over'
      | 'detached'
      | 'attached'
      | 'attachment-adopted'
      | 'volume-deleted'
      | 'group-created'
      | 'group-adopted'
      | 'group-renamed'
      | 'member-left'
      | 'member-joined'
      | 'member-adopted'
      | 'group-edited'
      | 'group-deleted'
      | 'file-system-created'
      | 'file-system-adopted'
      | 'file-system-remounted'
      | 'file-system-edited'
      | 'file-system-remade'
      | 'file-system-grown'
      | 'file-system-shrunk'
      | 'file-system-corrected'
      | 'file-system-deleted'
    ),
    ...(
      | 'server-created'
      | 'server-adopted'
      | 'server-renamed'
      | 'server-changed-id'
      | 'server-changed-team'
      | 'server-moved-site'
      | 'server-changed-type'
      | 'server-started'
      | 'server-stopped'
      | 'boot-swapped'
      | 'server-edited'
      | 'server-deleted'
      | 'volume-created'
      | 'volume-adopted'
      | 'volume-re-created'
      | 'volume-renamed'
      | 'volume-changed-id'
      | 'volume-changed-team'
      | 'volume-moved-site'
      | 'volume-moved-tier'
      | 'volume-grown'
      | 'volume-shrunk'
      | 'volume-corrected'
      | 'volume-unprotected'
      | 'volume-edited'
      | 'handed-over'
      | 'detached'
      | 'attached'
      | 'attachment-adopted'
      | 'volume-deleted'
      | 'group-created'
      | 'group-adopted'
      | 'group-renamed'
      | 'member-left'
      | 'member-joined'
      | 'member-adopted'
      | 'group-edited'
      | 'group-deleted'
      | 'file-system-created'
      | 'file-system-adopted'
      | 'file-system-remounted'
      | 'file-system-edited'
      | 'file-system-remade'
      | 'file-system-grown'
      | 'file-system-shrunk'
      | 'file-system-corrected'
      | 'file-system-deleted'
    )[]
  ];
  /**
   * A JSON Schema (2020-12) that each must satisfy. It sees the keys of the estate files, sizes as numbers under size-gib, and servers, volumes or volume-group for what it is attached to or part of; for a change: change, subject, before and after. Patterns are RE2; $ref stays within the schema.
   */
  schema: {};
  message?: Sentence1;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration18 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A volume whose size its tier does not offer, or a server that needs more IOPS than its volumes' tiers provide.
 */
export interface TierBoundsEntry {
  /**
   * A volume whose size its tier does not offer, or a server that needs more IOPS than its volumes' tiers provide.
   */
  rule: 'tier-bounds';
  name?: Name20;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration19;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration19 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
/**
 * A looser policy and a change of storage in one branch.
 */
export interface PolicyApartEntry {
  /**
   * A looser policy and a change of storage in one branch.
   */
  rule: 'policy-apart';
  name?: Name21;
  /**
   * The level of a finding; error if left out. Only error fails.
   */
  level?: 'error' | 'warning' | 'note';
  /**
   * false switches off the entry of the same name in a pack listed under use.
   */
  enabled?: boolean;
  where?: ScopeDeclaration20;
}
/**
 * What the rule applies to; everything if left out.
 */
export interface ScopeDeclaration20 {
  teams?: Names;
  sites?: Names1;
  tiers?: Names2;
  /**
   * Only what has each of these labels, with the value or one of the values.
   */
  labels?: {
    /**
     * @minItems 1
     */
    [k: string]: string | [string, ...string[]];
  };
}
