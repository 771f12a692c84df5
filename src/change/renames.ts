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
  /** Of those that moved to another mount point, by whole names, as in `plates:/plates`. */
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
export function headSubject(
  { servers, volumes, groups, fileSystems }: Renames,
  { kind, name }: Subject,
): Subject {
  switch (kind) {
    case 'server':
      return { kind, name: headName(servers, name) };
    case 'volume':
      return { kind, name: headName(volumes, name) };
    case 'volume-group':
      return { kind, name: headName(groups, name) };
    case 'file-system': {
      const remounted = fileSystems.toHead.get(name);
      if (remounted !== undefined) return { kind, name: remounted };
      const [on = '', ...mount] = name.split(':');
      return { kind, name: [groups.toHead.get(on) ?? headName(volumes, on), ...mount].join(':') };
    }
    case 'estate':
    case 'site':
    case 'team':
    case 'label':
    case 'scope':
    case 'branch':
      return { kind, name };
  }
}
