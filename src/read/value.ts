/** What a file holds once it is read, whichever reader read it. */

/** How deep values may nest. The deepest format is five levels; a custom rule's schema needs a few more. */
export const deepest = 32;

/** A value of a file. Objects have no prototype, so that `__proto__` is a key like any other. */
export type PlainValue =
  | string
  | number
  | boolean
  | null
  | readonly PlainValue[]
  | { readonly [key: string]: PlainValue };

/** One step of a path into a value: a key, or the index of an item. */
export type Step = string | number;

/** Where each key of a mapping, or each item of a list, begins: offsets into the text, in UTF-16 units. */
export type Offsets = { readonly [step: Step]: number };

/** A text's value, and where its parts begin. */
export interface Construction {
  readonly value: PlainValue;
  /** For every mapping and list that `value` holds. */
  readonly offsets: ReadonlyMap<object, Offsets>;
  /** Where the value at the end of the path begins; undefined where the path leads nowhere. */
  offsetOfValue(path: readonly Step[]): number | undefined;
}

/**
 * An object that inherits nothing, so that `__proto__` and `constructor` are keys like any other. The engine keeps it as
 * quick as a literal, which it does not with what `Object.create(null)` makes.
 */
export class Bare<T> {
  [key: string]: T;
}
Object.setPrototypeOf(Bare.prototype, null);
Reflect.deleteProperty(Bare.prototype, 'constructor');
