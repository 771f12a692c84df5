/** The world as a base declares it, with as much to spare of slots and quotas as is wanted. */
import { baseName, headName, type Renames } from '../../src/change/renames.ts';
import type { Estate, FileSystem, Layout } from '../../src/estate/estate.ts';
import { type Bytes, bytes } from '../../src/estate/size.ts';
import { type Content, type Group, type Quota, type System, World } from './world.ts';

/** What there is beyond what the ends of the branch take. */
export interface Spare {
  /** Attachment slots of each server, beyond the most that either takes. */
  readonly slots: number;
  /** Of each site's quota; undefined where there are no quotas. */
  readonly quota: SpareQuota | undefined;
}

/** More, or less, than the most that either end takes; or than the head does, of which the base may have more already. */
export type SpareQuota = Quota & { readonly than: 'either' | 'head' };

/** As many as the most that either end of the branch takes, and some to spare. */
export function slotsOf(base: Estate, head: Estate, renames: Renames, name: string, spare: number): number {
  const held = (estate: Estate, each: string): number => estate.held.get(each)?.length ?? 0;
  return Math.max(held(base, baseName(renames.servers, name)), held(head, name)) + spare;
}

function larger(one: bigint, other: bigint): bigint {
  return one < other ? other : one;
}

export function quotaOf(
  base: Estate,
  head: Estate,
  site: string,
  spare: SpareQuota | undefined,
): { readonly volumes: number; readonly size: Bytes } | undefined {
  if (spare === undefined) return undefined;
  const used = ({ volumes }: Estate): Quota => {
    const there = [...volumes.values()].filter((volume) => volume.site === site);
    return { volumes: there.length, size: there.reduce((sum, { size }) => sum + size, 0n) };
  };
  const after = used(head);
  const before = spare.than === 'head' ? after : used(base);
  const size = larger(before.size, after.size) + spare.size;
  return {
    volumes: Math.max(0, Math.max(before.volumes, after.volumes) + spare.volumes),
    size: bytes(larger(size, 0n)),
  };
}

export function worldOf(base: Estate, head: Estate, renames: Renames, spare: Spare): World {
  const world = new World();
  for (const server of base.servers.values()) {
    const name = headName(renames.servers, server.name);
    world.servers.set(name, {
      name,
      site: server.site ?? '',
      type: server.type ?? '',
      power: server.power,
      boot: server.boot === undefined ? undefined : headName(renames.volumes, server.boot),
      slots: slotsOf(base, head, renames, name, spare.slots),
      seen: new Map(),
      mounts: new Map(),
      fstab: new Map(),
    });
  }
  const groups = new Map<string, Group>();
  for (const group of base.groups.values()) {
    const name = headName(renames.groups, group.name);
    groups.set(group.name, {
      name,
      extent: group.extent,
      layout: layoutOf(group.layout),
      exported: false,
      activeOn: new Set(),
      volumes: new Map(
        group.fileSystems.map((system) => [
          headMount(renames, system),
          { size: system.size, system: systemOf(system) },
        ]),
      ),
    });
  }
  for (const group of groups.values()) world.groups.set(group.name, group);
  const booting = new Set([...base.servers.values()].flatMap(({ boot }) => boot ?? []));
  for (const volume of base.volumes.values()) {
    const name = headName(renames.volumes, volume.name);
    const group = base.groupOf.get(volume.name);
    const inGroup = group === undefined ? undefined : groups.get(group.name);
    const content: Content =
      inGroup !== undefined
        ? { kind: 'member', group: inGroup, size: volume.size }
        : volume.fileSystem !== undefined
          ? { kind: 'system', system: systemOf(volume.fileSystem) }
          : undeclared(volume.name, booting.has(volume.name), volume.size);
    world.disks.set(name, {
      name,
      size: volume.size,
      tier: volume.tier,
      site: volume.site ?? '',
      shareable: volume.shareable,
      protected: volume.protected,
      holders: new Set(
        (base.holders.get(volume.name) ?? []).map(({ server }) => headName(renames.servers, server)),
      ),
      content,
    });
  }
  // More than its quota may be there: it stays, and nothing comes until there is less.
  for (const site of ['north-quay', 'south-quay']) {
    const quota = quotaOf(base, head, site, spare.quota);
    if (quota !== undefined) world.quotas.set(site, quota);
  }
  // What is mounted where, as fstab has it, before anything is done.
  for (const server of world.servers.values()) {
    for (const { content } of world.heldBy(server)) {
      const systems =
        content.kind === 'system'
          ? [content.system]
          : content.kind === 'member'
            ? [...content.group.volumes.values()].flatMap(({ system }) => system ?? [])
            : [];
      for (const system of systems) server.fstab.set(system.mount, system);
    }
    if (server.power === 'stopped') continue;
    server.power = 'stopped';
    world.start(server);
  }
  return world;
}

/** What nobody has declared: of a boot volume, what its server starts from. */
const undeclared = (volume: string, boots: boolean, size: bigint): Content => {
  const holds = new Set([`what is on volume ${volume}`]);
  return boots
    ? { kind: 'system', system: { type: 'image', size, mount: '/', holds } }
    : { kind: 'undeclared', holds };
};

const systemOf = (system: FileSystem): System => ({
  type: system.type,
  size: system.size,
  mount: system.mount,
  holds: new Set([`file system ${system.name}`]),
});

function headMount(renames: Renames, system: FileSystem): string {
  const renamed = headName(renames.fileSystems, system.name);
  return renamed === system.name ? system.mount : renamed.split(':').slice(1).join(':');
}

/** As steps have it: what is on the screen is what is typed. */
export function layoutOf(layout: Layout): string {
  switch (layout.kind) {
    case 'linear':
      return 'end to end';
    case 'striped':
      return `in ${layout.stripes} stripes`;
    case 'mirrored':
      return `in ${layout.copies} copies`;
  }
}
