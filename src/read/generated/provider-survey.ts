/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * When it was taken.
 */
export type SurveyTime = string;
/**
 * The provider's own identifier.
 */
export type SurveyText = string;
/**
 * Its name there.
 */
export type SurveyText1 = string;
/**
 * What is provisioned, and billed.
 */
export type ByteCount = string;
/**
 * Its tier, by your name for it where the settings tell it.
 */
export type SurveyText2 = string;
/**
 * Its site, likewise.
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
 * A name as the server has it, without control characters.
 */
export type SurveyText6 = string;
/**
 * A name as the server has it, without control characters.
 */
export type SurveyText7 = string;
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
 * What the provider's list shows to be there, at one time: what `ullage survey provider` keeps of it in surveys/provider.json.
 */
export interface ProviderSurveyFile {
  /**
   * The version of this format.
   */
  format: 'ullage-provider-survey-1';
  at: SurveyTime;
  /**
   * What the list lists: of what it does not list nothing is said to be missing.
   */
  lists: ('volumes' | 'servers')[];
  /**
   * The volumes, by id, then by name.
   */
  volumes: ProviderVolume[];
  /**
   * The servers, by id, then by name.
   */
  servers: ProviderServer[];
}
/**
 * One volume.
 */
export interface ProviderVolume {
  id?: SurveyText;
  name?: SurveyText1;
  size: ByteCount;
  tier?: SurveyText2;
  site?: SurveyText3;
  /**
   * The ids or names of the servers that it is attached to; empty where it is attached to none, left out where the list does not say.
   */
  servers?: SurveyText4[];
  server?: SurveyText5;
  /**
   * Whether a server starts from it.
   */
  boot?: boolean;
}
/**
 * One server.
 */
export interface ProviderServer {
  id?: SurveyText6;
  name?: SurveyText7;
  site?: SurveyText8;
  type?: SurveyText9;
  /**
   * Whether it runs.
   */
  power?: 'running' | 'stopped';
  boot?: SurveyText10;
}
