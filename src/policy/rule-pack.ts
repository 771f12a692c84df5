/** A rule pack as read, its places with it. */
import type { Place } from '../base/problem.ts';
import type { ListedPack } from '../estate/settings.ts';
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

/** A pack that is kept in another repository, and where the settings list it. */
export interface PackElsewhere {
  readonly listing: ListedPack;
  readonly pack: RulePack;
}

/** By the names that the settings list; undefined where a pack is not used, or not to be had, which is told elsewhere. */
export type Elsewhere = ReadonlyMap<string, PackElsewhere | undefined>;
