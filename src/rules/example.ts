/**
 * Examples: for each rule one small branch that it refuses and one that it lets pass. They are shown by
 * `ullage rules` and on the rule pages, and each is judged in a test, so that none can go stale.
 */

export interface Example {
  /** What goes on, one sentence. */
  readonly story: string;
  /** One estate file as it is on main; nothing is declared there where left out. */
  readonly main?: string;
  /** The same file as the branch has it. */
  readonly branch: string;
  /** The rule's entry in a pack. */
  readonly entry: string;
  /** Another entry of the pack, where the branch alters one. */
  readonly altered?: { readonly main: string; readonly branch: string };
  /** Files of readings, for what goes by measured use. */
  readonly readings?: string;
}

export interface Examples {
  readonly fails: Example;
  readonly passes: Example;
}

/** The day on which every example is judged. */
export const exampleDay = '2026-11-20';

/** The settings that every example goes by. */
export const exampleSettings = 'currency: EUR\n';

/** The price list that every example goes by; it is invented. */
export const examplePrices = `from: 2026-01-01
currency: EUR
tiers:
  bulk:   { rate: "0.045", per: GiB-month, minimum: 1 GiB, maximum: 16 TiB, step: 1 GiB, iops-per-gib: 3 }
  steady: { rate: "0.10", per: GiB-month, iops-per-gib: 10, iops-maximum: 5000 }
  brisk:  { per: GiB-month, flat: "1.50", bands: [ { up-to: 1 TiB, rate: "0.25" }, { rate: "0.22" } ] }
server-types:
  small: { running: "0.031", stopped: "0.004" }
`;
