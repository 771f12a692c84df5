/**
 * What a change can have touched: everything that its differing files declare, and what that is tied to. A rule's
 * finding about anything else is the same before and after, so nothing else need be looked at again.
 */
import { apart } from '../estate/apart.ts';
import type {
  Declaration,
  Estate,
  EstatePart,
  FileSystem,
  Server,
  Volume,
  VolumeGroup,
} from '../estate/estate.ts';

/** Names, on either side of the change. */
export interface Touched {
  readonly servers: ReadonlySet<string>;
  readonly volumes: ReadonlySet<string>;
  readonly groups: ReadonlySet<string>;
  readonly fileSystems: ReadonlySet<string>;
}

/** Every subject of one estate that a rule is to look at. */
export interface Selection {
  readonly servers: Iterable<Server>;
  readonly volumes: Iterable<Volume>;
  readonly groups: Iterable<VolumeGroup>;
  readonly fileSystems: Iterable<FileSystem>;
}

/** Those of one kind. */
export function selected(
  kind: Declaration['kind'],
  { servers, volumes, groups, fileSystems }: Selection,
): Iterable<Declaration> {
  switch (kind) {
    case 'server':
      return servers;
    case 'volume':
      return volumes;
    case 'volume-group':
      return groups;
    case 'file-system':
      return fileSystems;
  }
}

/** All of an estate. Each part can be walked more than once. */
export const wholeEstate = ({ servers, volumes, groups, fileSystems }: Estate): Selection => ({
  servers: { [Symbol.iterator]: () => servers.values() },
  volumes: { [Symbol.iterator]: () => volumes.values() },
  groups: { [Symbol.iterator]: () => groups.values() },
  fileSystems: { [Symbol.iterator]: () => fileSystems.values() },
});

/** Nothing: for rules that look at sums alone. */
export const emptySelection: Selection = { servers: [], volumes: [], groups: [], fileSystems: [] };

/** What an estate has of the touched. */
export function selectionOf(estate: Estate, touched: Touched): Selection {
  const those = <T>(names: ReadonlySet<string>, among: ReadonlyMap<string, T>): readonly T[] =>
    [...names].sort().flatMap((name) => among.get(name) ?? []);
  return {
    servers: those(touched.servers, estate.servers),
    volumes: those(touched.volumes, estate.volumes),
    groups: those(touched.groups, estate.groups),
    fileSystems: those(touched.fileSystems, estate.fileSystems),
  };
}

/**
 * Follows the ties out from what the differing files declare: a volume to its group, the group to all its members,
 * and each of them to the servers that hold it; a server to the volumes it holds and their groups.
 *
 * @param files the files whose declarations differ
 */
export function touchedBy(base: Estate, head: Estate, files: readonly string[]): Touched {
  const servers = new Set<string>();
  const volumes = new Set<string>();
  const groups = new Set<string>();
  for (const file of files) {
    const [before, after] = [base.parts.get(file), head.parts.get(file)];
    const parts = before === undefined || after === undefined ? [before, after] : apart(before, after);
    for (const part of parts) if (part !== undefined) declaredIn(part);
  }
  const estates = [base, head];
  // Out to whole neighbourhoods, and no further: what is tied to a neighbour's neighbour did not change with it.
  for (const server of [...servers]) {
    for (const estate of estates) for (const { volume } of estate.held.get(server) ?? []) volumes.add(volume);
  }
  for (const volume of [...volumes]) {
    for (const estate of estates) {
      const group = estate.groupOf.get(volume);
      if (group !== undefined) groups.add(group.name);
    }
  }
  for (const group of groups) {
    for (const estate of estates)
      for (const member of estate.groups.get(group)?.members ?? []) volumes.add(member);
  }
  for (const volume of volumes) {
    for (const estate of estates)
      for (const { server } of estate.holders.get(volume) ?? []) servers.add(server);
  }
  const fileSystems = new Set<string>();
  for (const estate of estates) {
    for (const volume of volumes) {
      const system = estate.volumes.get(volume)?.fileSystem;
      if (system !== undefined) fileSystems.add(system.name);
    }
    for (const group of groups)
      for (const { name } of estate.groups.get(group)?.fileSystems ?? []) fileSystems.add(name);
  }
  return { servers, volumes, groups, fileSystems };

  function declaredIn(part: EstatePart): void {
    // What has come under an old name is tied to what carries that on.
    for (const { name, formerly = name } of part.servers) servers.add(name).add(formerly);
    for (const { name, formerly = name } of part.volumes) volumes.add(name).add(formerly);
    for (const { name, formerly = name } of part.groups) groups.add(name).add(formerly);
    for (const { volume, server } of part.attachments) {
      volumes.add(volume);
      servers.add(server);
    }
  }
}
