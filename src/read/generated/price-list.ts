/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * The first day on which this list applies.
 */
export type Date = string;
/**
 * The currency of every amount in the list (ISO 4217).
 */
export type Currency = string;
/**
 * One tier: its price and its bounds.
 */
export type TierDeclaration = {
  [k: string]: unknown;
} & {
  rate?: Amount;
  /**
   * Graduated prices: each band's rate applies to the capacity inside it. Only the last band may be without up-to.
   *
   * @minItems 1
   */
  bands?: [BandDeclaration, ...BandDeclaration[]];
  /**
   * The unit of capacity that the rate is for.
   */
  per: 'GiB-month' | 'GB-month';
  flat?: Amount2;
  'minimum-billed'?: Size1;
  minimum?: Size2;
  maximum?: Size3;
  step?: Size4;
  /**
   * The IOPS that each GiB provides.
   */
  'iops-per-gib'?: number;
  /**
   * The most IOPS that one volume provides.
   */
  'iops-maximum'?: number;
  /**
   * To how many servers one shareable volume of this tier may be attached at once.
   */
  'servers-a-volume'?: number;
};
/**
 * The price of one unit of capacity for a month.
 */
export type Amount = string;
/**
 * Where the band ends, counted from zero.
 */
export type Size = string;
/**
 * The price of one unit inside the band for a month.
 */
export type Amount1 = string;
/**
 * A fixed monthly fee for each volume, in addition.
 */
export type Amount2 = string;
/**
 * A smaller volume is billed as if it had this size.
 */
export type Size1 = string;
/**
 * The smallest volume the tier offers.
 */
export type Size2 = string;
/**
 * The largest volume the tier offers.
 */
export type Size3 = string;
/**
 * Sizes are whole multiples of this.
 */
export type Size4 = string;
/**
 * The price of an hour while the server runs.
 */
export type Amount3 = string;
/**
 * The price of an hour while it is stopped.
 */
export type Amount4 = string;

/**
 * A price list: what each tier and each server type costs, from a date on. The newest list that has begun applies, and no older one.
 */
export interface PriceListFile {
  from: Date;
  currency: Currency;
  /**
   * The tiers, by name.
   */
  tiers?: {
    [k: string]: TierDeclaration;
  };
  /**
   * The types that servers are billed as, by name.
   */
  'server-types'?: {
    [k: string]: MachineDeclaration;
  };
}
/**
 * One band of capacity.
 */
export interface BandDeclaration {
  'up-to'?: Size;
  rate: Amount1;
}
/**
 * The price of one server type by the hour.
 */
export interface MachineDeclaration {
  running: Amount3;
  stopped?: Amount4;
}
