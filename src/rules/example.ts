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
