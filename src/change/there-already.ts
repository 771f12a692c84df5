/**
 * What is there before a branch is carried out, as both revisions declare it: all that main has, and what the branch only
 * declares. What the branch makes, attaches, grows or moves is left out.
 */
import type {
  Attachment,
  DeclaredThings,
  FileSystem,
  Server,
  Volume,
  VolumeGroup,
} from '../estate/estate.ts';
import { adoptedIn } from './adoption.ts';
import type { Change } from './change.ts';
import { baseName, type Renames } from './renames.ts';

/** By main's names; of what main does not have, by the branch's. */
export function thereAlready(
  base: DeclaredThings,
  head: DeclaredThings,
  changes: readonly Change[],
  renames: Renames,
): DeclaredThings {
  const adopted = adoptedIn(changes);
  const volumeHere = (name: string): string =>
    adopted.volumes.has(name) ? name : baseName(renames.volumes, name);
  const serverHere = (name: string): string =>
    adopted.servers.has(name) ? name : baseName(renames.servers, name);
  const systemOn = (on: FileSystem['on'], system: FileSystem): FileSystem => ({
    ...system,
    on,
    name: `${on.name}:${system.mount}`,
  });
  const volumes = new Map<string, Volume>(base.volumes);
  const groups = new Map<string, VolumeGroup>(base.groups);
  const servers = new Map<string, Server>(base.servers);
  for (const name of adopted.volumes) {
    const volume = head.volumes.get(name);
    if (volume !== undefined) volumes.set(name, { ...volume, fileSystem: undefined });
  }
  for (const name of adopted.servers) {
    const server = head.servers.get(name);
    if (server === undefined) continue;
    const starts = server.boot !== undefined && adopted.attached.has(`${server.boot} ${name}`);
    servers.set(name, { ...server, boot: starts ? server.boot : undefined });
  }
  for (const name of adopted.groups) {
    const group = head.groups.get(name);
    const members = group?.members.map(volumeHere).filter((member) => volumes.has(member)) ?? [];
    if (group !== undefined) groups.set(name, { ...group, members, fileSystems: [] });
  }
  for (const change of changes) {
    if (change.kind === 'member-adopted') {
      const group = groups.get(baseName(renames.groups, change.after.name));
      if (group !== undefined)
        groups.set(group.name, { ...group, members: [...group.members, volumeHere(change.volume)] });
    } else if (change.kind === 'file-system-adopted') {
      const { on } = change.after;
      if (on.kind === 'volume') {
        const volume = volumes.get(volumeHere(on.name));
        if (volume !== undefined) {
          const fileSystem = systemOn({ kind: 'volume', name: volume.name }, change.after);
          volumes.set(volume.name, { ...volume, fileSystem });
        }
      } else {
        const name = adopted.groups.has(on.name) ? on.name : baseName(renames.groups, on.name);
        const group = groups.get(name);
        if (group !== undefined) {
          const system = systemOn({ kind: 'volume-group', name }, change.after);
          groups.set(name, { ...group, fileSystems: [...group.fileSystems, system] });
        }
      }
    }
  }
  const attachments = [
    ...[...base.holders.values()].flat().filter(({ volume }) => !adopted.volumes.has(volume)),
    ...[...head.holders.values()]
      .flat()
      .filter(({ volume, server }) => adopted.attached.has(`${volume} ${server}`))
      .map((each) => ({ ...each, volume: volumeHere(each.volume), server: serverHere(each.server) })),
  ];
  return {
    servers,
    volumes,
    groups,
    holders: by(attachments, ({ volume }) => volume),
    held: by(attachments, ({ server }) => server),
    groupOf: new Map(
      [...groups.values()].flatMap((group) => group.members.map((member) => [member, group] as const)),
    ),
  };
}

function by(
  attachments: readonly Attachment[],
  keyOf: (attachment: Attachment) => string,
): ReadonlyMap<string, readonly Attachment[]> {
  const found = new Map<string, Attachment[]>();
  for (const each of attachments) {
    const list = found.get(keyOf(each));
    if (list === undefined) found.set(keyOf(each), [each]);
    else list.push(each);
  }
  return found;
}
