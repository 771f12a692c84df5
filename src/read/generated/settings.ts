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
 * Folder of your own procedures, for guests and providers.
 */
export type Folder6 = string;
/**
 * The total capacity.
 */
export type Size = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name = string;
/**
 * The repository's URL: https://, ssh:// or file:///, a host by its name, no password, no space, and only characters that a URL may hold (RFC 3986).
 */
export type RepositoryAddress = string;
/**
 * The commit's id, in full.
 */
export type CommitId = string;
/**
 * The file, from the root of that repository.
 */
export type Folder7 = string;
/**
 * The SHA-256 digest of the file's content (FIPS 180-4), in lower-case hexadecimal.
 */
export type Digest = string;
/**
 * Where the list of volumes is in a JSON document, such as /volumes; the document itself if left out.
 */
export type ListField = string;
/**
 * Its identifier.
 */
export type ListField1 = string;
/**
 * Its name.
 */
export type ListField2 = string;
/**
 * The figure.
 */
export type ListField3 = string;
/**
 * Its tier.
 */
export type ListField4 = string;
/**
 * Its site.
 */
export type ListField5 = string;
/**
 * The identifier or the name of the server that it is attached to; in JSON it may be a list of them.
 */
export type ListField6 = string;
/**
 * Whether that server starts from it: true, yes or 1.
 */
export type ListField7 = string;
/**
 * Where the list of servers is in a JSON document.
 */
export type ListField8 = string;
/**
 * Its identifier.
 */
export type ListField9 = string;
/**
 * Its name.
 */
export type ListField10 = string;
/**
 * Its site.
 */
export type ListField11 = string;
/**
 * Its server type.
 */
export type ListField12 = string;
/**
 * Whether it runs.
 */
export type ListField13 = string;
/**
 * The identifier or the name of the volume that it starts from.
 */
export type ListField14 = string;

/**
 * ullage.yaml: where things are, the currency, the month, the sites.
 */
export interface SettingsFile {
  /**
   * The version of the formats that people write: of this file and of all estate files, price lists, rule packs, waivers, procedures and readings beside it.
   */
  format?: 'ullage-files-1';
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
  /**
   * Rule packs that are kept in other Git repositories, by the names under which `use:` takes them. Only these very bytes are taken: a pack that is not at hand, or has another digest, is not judged by. `ullage policy hold` writes an entry, and `ullage policy fetch` fetches what is listed. At most 50.
   */
  packs?: {
    [k: string]: PackSettings;
  };
  'provider-list'?: ProviderListSettings;
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
  procedures?: Folder6;
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
/**
 * One pack: where it is kept, and which of its versions is meant.
 */
export interface PackSettings {
  repository: RepositoryAddress;
  commit: CommitId;
  path: Folder7;
  sha256: Digest;
}
/**
 * Which field of the provider's list of volumes and servers is which, for `ullage survey provider`: a column's name in CSV, a JSON Pointer (RFC 6901) in JSON and NDJSON.
 */
export interface ProviderListSettings {
  volumes?: ProviderVolumeFields;
  servers?: ProviderServerFields;
  /**
   * The provider's words for tiers, each with yours.
   */
  tiers?: {
    [k: string]: Name;
  };
  /**
   * The provider's words for sites, each with yours.
   */
  sites?: {
    [k: string]: Name;
  };
  /**
   * The provider's words for server types, each with yours.
   */
  types?: {
    [k: string]: Name;
  };
  /**
   * The provider's words for what runs and what is stopped.
   */
  power?: {
    [k: string]: 'running' | 'stopped';
  };
}
/**
 * The fields of a volume.
 */
export interface ProviderVolumeFields {
  rows?: ListField;
  id?: ListField1;
  name?: ListField2;
  size: ProviderSizeField;
  tier?: ListField4;
  site?: ListField5;
  server?: ListField6;
  boot?: ListField7;
}
/**
 * Its size, and the unit of the figure.
 */
export interface ProviderSizeField {
  field: ListField3;
  /**
   * The unit that the figure is in.
   */
  unit: 'B' | 'KiB' | 'MiB' | 'GiB' | 'TiB' | 'kB' | 'MB' | 'GB' | 'TB';
}
/**
 * The fields of a server.
 */
export interface ProviderServerFields {
  rows?: ListField8;
  id?: ListField9;
  name?: ListField10;
  site?: ListField11;
  type?: ListField12;
  power?: ListField13;
  boot?: ListField14;
}
