/** How names on the base carry over to the head: only those that a `formerly` renames. */
import type { Subject } from '../estate/estate.ts';

/** Names of one kind, from either side. */
export interface RenamesOfKind {
  readonly toHead: ReadonlyMap<string, string>;
  readonly toBase: ReadonlyMap<string, string>;
}

export interface Renames {
  readonly servers: RenamesOfKind;
  readonly volumes: RenamesOfKind;
  readonly groups: RenamesOfKind;
  /** Of those that moved to another mount point, or whose volume or group is renamed; by whole names, as in `plates:/plates`. */
  readonly fileSystems: RenamesOfKind;
}

/** @param toHead new names by old ones */
export const renamesOfKind = (toHead: ReadonlyMap<string, string>): RenamesOfKind => ({
  toHead,
  toBase: new Map([...toHead].map(([from, to]) => [to, from])),
});

const none = renamesOfKind(new Map());

export const noRenames: Renames = { servers: none, volumes: none, groups: none, fileSystems: none };

/** The name on the head of what the base calls `name`. */
export const headName = (renames: RenamesOfKind, name: string): string => renames.toHead.get(name) ?? name;

/** The name on the base of what the head calls `name`. */
export const baseName = (renames: RenamesOfKind, name: string): string => renames.toBase.get(name) ?? name;

/** The subject on the head of what the base calls so. */
export const headSubject = (renames: Renames, { kind, name }: Subject): Subject => {
  const ofKind = renamesOf(renames, kind);
  return { kind, name: ofKind === undefined ? name : headName(ofKind, name) };
};

/** The subject on the base of what the head calls so. */
export const baseSubject = (renames: Renames, { kind, name }: Subject): Subject => {
  const ofKind = renamesOf(renames, kind);
  return { kind, name: ofKind === undefined ? name : baseName(ofKind, name) };
};

function renamesOf(renames: Renames, kind: Subject['kind']): RenamesOfKind | undefined {
  switch (kind) {
    case 'server':
      return renames.servers;
    case 'volume':
      return renames.volumes;
    case 'volume-group':
      return renames.groups;
    case 'file-system':
      return renames.fileSystems;
    case 'estate':
    case 'site':
    case 'team':
    case 'label':
    case 'scope':
    case 'branch':
      return undefined;
  }
}
