/** The shape of a format, as its schema has it: what may stand where. */

/** A mapping whose keys are fixed. */
export interface Mapping {
  /** Its keys, each with an example of its value in YAML; empty where the schema gives none. */
  readonly keys: Readonly<Record<string, string>>;
  readonly required: readonly string[];
  /** What its own key is, where it is one of many: a Name, a MountPoint. */
  readonly namedBy?: string;
  /** The one rule that it is an entry of. */
  readonly rule?: string;
}

/** What stands at a path, in which `*` is any name or item: a mapping, or a nest of them with an example in YAML. */
export type Shape =
  | { readonly path: readonly string[]; readonly mapping: Mapping }
  | { readonly path: readonly string[]; readonly example: string };
