/** Whom an entry of a pack is for. */
import type { Belonging } from '../estate/estate.ts';

/** What a scope chooses by. Only what has a tier of its own is ever in a scope that asks for one. */
export interface Scoped extends Belonging {
  readonly tier?: string | undefined;
}

/** Tells which of the things that a rule looks at an entry is for. */
export interface Scope {
  includes(thing: Scoped): boolean;
}
