/** A rule pack as read, its places with it. */
import type { Place } from '../base/problem.ts';
import type { RuleEntry } from '../rules/rule.ts';

/** One file of rules. */
export interface RulePack {
  readonly file: string;
  readonly use: readonly { readonly name: string; readonly place: Place }[];
  readonly entries: readonly PackEntry[];
}

export interface PackEntry {
  readonly name: string;
  readonly entry: RuleEntry;
  readonly place: Place;
}
