/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * The one currency of the estate (ISO 4217). Price lists in another are refused.
 */
export type Currency = string;
/**
 * Folder of the estate files, searched to any depth.
 */
export type Folder = string;
/**
 * Folder of the price lists.
 */
export type Folder1 = string;
/**
 * Folder of the rule packs.
 */
export type Folder2 = string;
/**
 * Folder of the waivers.
 */
export type Folder3 = string;
/**
 * Folder of the readings of measured use.
 */
export type Folder4 = string;
/**
 * Folder of the surveys of what is really there.
 */
export type Folder5 = string;
/**
 * The total capacity.
 */
export type Size = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name = string;

/**
 * ullage.yaml: where things are, the currency, the month, the sites.
 */
export interface SettingsFile {
  currency: Currency;
  /**
   * How long a month is for prices by the hour: 730 h (8,760 h a year over 12, common practice), or the calendar month of the day of judgement.
   */
  month?: '730 h' | 'calendar';
  paths?: SettingsPaths;
  /**
   * The sites, by name. Once any is listed, every server and volume names one of them.
   */
  sites?: {
    [k: string]: SiteSettings;
  };
  /**
   * The teams, by name. Once they are listed, every team that an estate file names must be one of them, and everything that is billed names one.
   *
   * @minItems 1
   */
  teams?: [Name, ...Name[]];
}
/**
 * Where things are, from the root of the repository; each defaults to the folder of its own name.
 */
export interface SettingsPaths {
  storage?: Folder;
  prices?: Folder1;
  policies?: Folder2;
  waivers?: Folder3;
  readings?: Folder4;
  surveys?: Folder5;
}
/**
 * What one site allows.
 */
export interface SiteSettings {
  quota?: QuotaSettings;
  /**
   * How many volumes can be attached to one server, its boot volume included.
   */
  'attachment-slots'?: number;
}
/**
 * What the provider allows this account at the site.
 */
export interface QuotaSettings {
  /**
   * How many volumes.
   */
  volumes?: number;
  size?: Size;
}
