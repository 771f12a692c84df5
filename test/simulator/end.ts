/** What a world that has come to its end shows to be otherwise than the head declares, and what was lost. */
import type { Change } from '../../src/change/change.ts';
import type { Comparison } from '../../src/change/compare.ts';
import { lossOf } from '../../src/change/kinds.ts';
import type { Estate, FileSystem } from '../../src/estate/estate.ts';
import { layoutOf } from './begin.ts';
import { liesOn } from './play.ts';
import type { Server, System, World } from './world.ts';

/** @param before what was held anywhere at the beginning */
export function wrongAtEnd(
  { changes }: Comparison,
  base: Estate,
  head: Estate,
  before: ReadonlySet<string>,
  world: World,
): readonly string[] {
  const held = world.holdings();
  const mayGo = declaredLost(base, changes);
  return [
    ...[...before].filter((each) => !held.has(each) && !mayGo.has(each)).map((each) => `lost: ${each}`),
    ...differences(world, head),
  ];
}

/** What the branch says will be lost. */
function declaredLost(base: Estate, changes: readonly Change[]): ReadonlySet<string> {
  const lost = new Set<string>();
  const systems = (all: readonly FileSystem[]) => {
    for (const { name } of all) lost.add(`file system ${name}`);
  };
  for (const change of changes) {
    for (const declared of lossOf(change)?.of ?? []) {
      switch (declared.kind) {
        case 'volume':
          lost.add(`what is on volume ${declared.name}`);
          if (declared.fileSystem !== undefined) systems([declared.fileSystem]);
          break;
        case 'volume-group':
          systems(declared.fileSystems);
          break;
        case 'file-system':
          systems([declared]);
          break;
      }
    }
  }
  // A group goes with the last of its members.
  for (const group of base.groups.values()) {
    if (group.members.every((member) => lost.has(`what is on volume ${member}`))) systems(group.fileSystems);
  }
  return lost;
}

function differences(world: World, head: Estate): readonly string[] {
  const found: string[] = [];
  const same = (what: string, is: unknown, declared: unknown): void => {
    if (is !== declared) found.push(`${what} is ${String(is)}, and declared ${String(declared)}`);
  };
  const list = (names: Iterable<string>): string => [...names].sort().join(', ');
  same('volumes', list(world.disks.keys()), list(head.volumes.keys()));
  same('servers', list(world.servers.keys()), list(head.servers.keys()));
  same('groups', list(world.groups.keys()), list(head.groups.keys()));
  same('left over', list([...world.old.keys(), ...world.fresh.keys()]), '');
  for (const volume of head.volumes.values()) {
    const disk = world.disks.get(volume.name);
    if (disk === undefined) continue;
    const { name } = volume;
    same(`the size of ${name}`, disk.size, volume.size);
    same(`the tier of ${name}`, disk.tier, volume.tier);
    same(`the site of ${name}`, disk.site, volume.site ?? '');
    same(`shareable of ${name}`, disk.shareable, volume.shareable);
    same(`protected of ${name}`, disk.protected, volume.protected);
    same(
      `who holds ${name}`,
      list(disk.holders),
      list((head.holders.get(name) ?? []).map(({ server }) => server)),
    );
    const group = head.groupOf.get(name);
    if (group !== undefined) {
      same(
        `the group of ${name}`,
        disk.content.kind === 'member' ? disk.content.group.name : 'none',
        group.name,
      );
      if (disk.content.kind === 'member') same(`${name} in its group`, disk.content.size, volume.size);
    } else if (volume.fileSystem !== undefined) {
      const boots = [...head.servers.values()].some(({ boot }) => boot === name);
      if (disk.content.kind !== 'system') same(`what is on ${name}`, disk.content.kind, 'a file system');
      else if (!boots) compareSystem(disk.content.system, volume.fileSystem);
    } else if (disk.content.kind === 'member') same(`the group of ${name}`, disk.content.group.name, 'none');
  }
  function compareSystem(system: System, declared: FileSystem): void {
    same(`the type of ${declared.name}`, system.type, declared.type);
    same(`the size of ${declared.name}`, system.size, declared.size);
  }
  for (const server of head.servers.values()) {
    const is = world.servers.get(server.name);
    if (is === undefined) continue;
    same(`the power of ${server.name}`, is.power, server.power);
    same(`the site of ${server.name}`, is.site, server.site ?? '');
    same(`the type of ${server.name}`, is.type, server.type ?? '');
    same(`the boot volume of ${server.name}`, is.boot, server.boot);
    if (server.power === 'running') compareMounts(is, server.name);
  }
  function compareMounts(server: Server, name: string): void {
    const wanted = new Map<string, string>();
    for (const { volume } of head.held.get(name) ?? []) {
      const declared = head.volumes.get(volume);
      const group = head.groupOf.get(volume);
      const systems = group?.fileSystems ?? (declared?.fileSystem === undefined ? [] : [declared.fileSystem]);
      for (const { mount } of systems) wanted.set(mount, group?.name ?? volume);
    }
    // An undeclared root may be there: an image has one.
    const mounted = [...server.mounts.keys()].filter((mount) => mount !== '/' || wanted.has('/'));
    same(`what is mounted on ${name}`, list(mounted), list(wanted.keys()));
    for (const [mount, on] of wanted) {
      const system = server.mounts.get(mount);
      if (system !== undefined && mount !== '/' && !liesOn(world, on, system))
        same(`what is mounted at ${mount} on ${name}`, 'something else', on);
    }
  }
  for (const group of head.groups.values()) {
    const is = world.groups.get(group.name);
    if (is === undefined) continue;
    same(`the extent of ${group.name}`, is.extent, group.extent);
    if (group.fileSystems.length > 0) same(`the layout of ${group.name}`, is.layout, layoutOf(group.layout));
    same(`exported of ${group.name}`, is.exported, false);
    same(
      `the file systems of ${group.name}`,
      list(is.volumes.keys()),
      list(group.fileSystems.map(({ mount }) => mount)),
    );
    for (const declared of group.fileSystems) {
      const logical = is.volumes.get(declared.mount);
      if (logical === undefined) continue;
      same(`the logical volume of ${declared.name}`, logical.size, declared.size);
      if (logical.system === undefined) same(`what is on ${declared.name}`, 'nothing', 'a file system');
      else compareSystem(logical.system, declared);
    }
  }
  return found;
}
