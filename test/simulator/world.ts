/**
 * A model of what a provider and the guests of its servers do, and refuse: what the simulator plays runbooks against.
 * It knows nothing of how runbooks are planned.
 *
 * What the provider refuses is common practice, without one source. What a guest refuses is as the manual pages of
 * lvm2 2.03.16 have it (vgexport(8): the group must be inactive; vgimport(8); vgreduce(8): a member must be empty;
 * lvextend(8), lvreduce(8)) and umount(8), mount(8) of util-linux 2.38.1. That a guest keeps the size it saw until it
 * looks again is common practice for SCSI devices.
 */

/** What lies on a disk or a logical volume. */
export interface System {
  type: string;
  size: bigint;
  /** Where fstab has it, by the servers that know it. */
  mount: string;
  /** What it holds, by name: copied, moved, or lost. */
  holds: Set<string>;
}

export interface Group {
  name: string;
  extent: bigint;
  layout: string;
  exported: boolean;
  readonly activeOn: Set<string>;
  readonly volumes: Map<string, { size: bigint; system: System | undefined }>;
}

export type Content =
  | { kind: 'nothing' }
  /** Whatever it is: nobody has declared it. */
  | { kind: 'undeclared'; holds: Set<string> }
  | { kind: 'system'; system: System }
  | { kind: 'member'; group: Group; size: bigint };

export interface Disk {
  name: string;
  size: bigint;
  tier: string;
  site: string;
  shareable: boolean;
  protected: boolean;
  readonly holders: Set<string>;
  content: Content;
}

export interface Server {
  name: string;
  site: string;
  type: string;
  power: 'running' | 'stopped';
  boot: string | undefined;
  /** The most volumes that it takes, its boot volume included. */
  slots: number;
  /** The size that its guest sees of each of its disks. */
  readonly seen: Map<Disk, bigint>;
  readonly mounts: Map<string, System>;
  readonly fstab: Map<string, System>;
}

/** How much a provider lets an account have at a site. */
export interface Quota {
  readonly volumes: number;
  readonly size: bigint;
}

/** What the provider or a guest refuses; the message says why. */
export class Refused extends Error {}

export function refuse(why: string): never {
  throw new Refused(why);
}

export const MiB = 1n << 20n;

/** What is mounted below a mount point; a swap area is no directory. */
function within({ mounts }: Server, mount: string): string | undefined {
  return [...mounts].find(([at, { type }]) => type !== 'swap' && at.startsWith(`${mount}/`))?.[0];
}

export class World {
  readonly disks = new Map<string, Disk>();
  /** Disks whose name another has taken, until they are deleted. */
  readonly old = new Map<string, Disk>();
  /** Disks made to take the place of another. */
  readonly fresh = new Map<string, Disk>();
  readonly servers = new Map<string, Server>();
  readonly groups = new Map<string, Group>();
  /** By site; one that is not here gives whatever is asked for. */
  readonly quotas = new Map<string, Quota>();

  disk(name: string): Disk {
    return this.disks.get(name) ?? refuse(`there is no volume ${name}`);
  }

  server(name: string): Server {
    return this.servers.get(name) ?? refuse(`there is no server ${name}`);
  }

  group(name: string): Group {
    return this.groups.get(name) ?? refuse(`there is no volume group ${name}`);
  }

  /** The same by itself, whatever is done in the one. */
  copy(): World {
    return Object.assign(new World(), structuredClone({ ...this }));
  }

  all(): readonly Disk[] {
    return [...this.disks.values(), ...this.old.values(), ...this.fresh.values()];
  }

  membersOf(group: Group): readonly Disk[] {
    return this.all().filter(({ content }) => content.kind === 'member' && content.group === group);
  }

  /** The extents that a group has: a physical volume's first is 1 MiB into its device, pvcreate(8). */
  extentsOf(group: Group, members = this.membersOf(group)): bigint {
    return members.reduce((sum, { content }) => {
      const size = content.kind === 'member' ? content.size : 0n;
      return sum + (size <= MiB ? 0n : (size - MiB) / group.extent);
    }, 0n);
  }

  takenOf({ extent, volumes }: Group): bigint {
    return [...volumes.values()].reduce((sum, { size }) => sum + (size + extent - 1n) / extent, 0n);
  }

  /** Everything held anywhere. */
  holdings(): ReadonlySet<string> {
    const held = new Set<string>();
    const take = (holds: ReadonlySet<string>) => {
      for (const each of holds) held.add(each);
    };
    const groups = new Set<Group>();
    for (const { content } of this.all()) {
      if (content.kind === 'undeclared') take(content.holds);
      else if (content.kind === 'system') take(content.system.holds);
      else if (content.kind === 'member') groups.add(content.group);
    }
    for (const { volumes } of groups)
      for (const { system } of volumes.values()) if (system) take(system.holds);
    return held;
  }

  // At the provider

  create(disk: Omit<Disk, 'holders' | 'content'>): Disk {
    this.allow(disk.site, 1, disk.size);
    return { ...disk, holders: new Set(), content: { kind: 'nothing' } };
  }

  grow(disk: Disk, size: bigint): void {
    if (size <= disk.size) refuse(`${disk.name} has ${disk.size} bytes, and a volume only grows`);
    this.allow(disk.site, 0, size - disk.size);
    disk.size = size;
  }

  used(site: string): Quota {
    const there = this.all().filter((disk) => disk.site === site);
    return { volumes: there.length, size: there.reduce((sum, { size }) => sum + size, 0n) };
  }

  /** As much more at a site, which may have more than its quota already. */
  allow(site: string, volumes: number, size: bigint): void {
    const [quota, used] = [this.quotas.get(site), this.used(site)];
    if (quota === undefined) return;
    if (volumes > 0 && used.volumes + volumes > quota.volumes)
      refuse(`the quota of ${site} is ${quota.volumes} volumes`);
    if (size > 0n && used.size + size > quota.size) refuse(`the quota of ${site} is ${quota.size} bytes`);
  }

  attach(disk: Disk, server: Server): void {
    if (disk.site !== server.site)
      refuse(`${disk.name} is at ${disk.site} and ${server.name} at ${server.site}`);
    if (disk.holders.has(server.name)) refuse(`${disk.name} is attached to ${server.name} already`);
    if (disk.holders.size > 0 && !disk.shareable)
      refuse(`${disk.name} is attached to ${[...disk.holders].join(', ')} and not shareable`);
    if (this.heldBy(server).length >= server.slots)
      refuse(`${server.name} has ${server.slots} attachment slots and all are taken`);
    disk.holders.add(server.name);
    if (server.power === 'running') server.seen.set(disk, disk.size);
  }

  detach(disk: Disk, server: Server): void {
    if (!disk.holders.has(server.name)) refuse(`${disk.name} is not attached to ${server.name}`);
    if (server.power === 'running') {
      if (server.boot === disk.name) refuse(`${server.name} runs, and starts from ${disk.name}`);
      const used = this.usedBy(disk, server);
      if (used !== undefined) refuse(`${disk.name} is in use on ${server.name}: ${used}`);
    }
    disk.holders.delete(server.name);
    server.seen.delete(disk);
  }

  heldBy(server: Server): readonly Disk[] {
    return this.all().filter(({ holders }) => holders.has(server.name));
  }

  usedBy({ content }: Disk, server: Server): string | undefined {
    if (content.kind === 'system')
      return [...server.mounts].find(([, system]) => system === content.system)?.[0];
    if (content.kind === 'member' && content.group.activeOn.has(server.name))
      return `volume group ${content.group.name} is active`;
    return undefined;
  }

  stop(server: Server): void {
    if (server.power === 'stopped') refuse(`${server.name} is stopped already`);
    server.power = 'stopped';
    server.mounts.clear();
    server.seen.clear();
    for (const group of this.groups.values()) group.activeOn.delete(server.name);
  }

  start(server: Server): void {
    if (server.power === 'running') refuse(`${server.name} runs already`);
    if (server.boot !== undefined) {
      const boot = this.disk(server.boot);
      if (!boot.holders.has(server.name)) refuse(`${boot.name}, its boot volume, is not attached`);
      if (boot.content.kind === 'nothing') refuse(`there is nothing on ${boot.name} to start from`);
    }
    server.power = 'running';
    const held = this.heldBy(server);
    for (const disk of held) server.seen.set(disk, disk.size);
    // A guest activates every whole group that is not exported, and mounts what fstab has.
    for (const group of this.groups.values()) {
      const members = this.membersOf(group);
      const whole = members.length > 0 && members.every((disk) => held.includes(disk));
      if (whole && !group.exported && group.activeOn.size === 0) group.activeOn.add(server.name);
    }
    for (const [mount, system] of server.fstab) {
      if (this.within(server, system)) server.mounts.set(mount, system);
      else refuse(`${mount} is in the fstab of ${server.name}, and what it lies on is not there`);
    }
  }

  /** Whether a guest that runs can get at a file system. */
  within(server: Server, system: System): boolean {
    for (const { content } of this.heldBy(server)) {
      if (content.kind === 'system' && content.system === system) return true;
      if (content.kind !== 'member' || !content.group.activeOn.has(server.name)) continue;
      if ([...content.group.volumes.values()].some((each) => each.system === system)) return true;
    }
    return false;
  }

  delete(disk: Disk): void {
    if (disk.holders.size > 0) refuse(`${disk.name} is attached to ${[...disk.holders].join(', ')}`);
    if (disk.protected) refuse(`${disk.name} is protected`);
    const { content } = disk;
    if (content.kind === 'member' && this.membersOf(content.group).length > 1) {
      const others = this.membersOf(content.group).filter((each) => each !== disk);
      if (others.some(({ holders }) => holders.size > 0))
        refuse(`${disk.name} is a member of ${content.group.name}, which is in use`);
    }
    for (const [where, held] of [this.disks, this.old, this.fresh].flatMap((map) =>
      [...map].map((entry) => [map, entry] as const),
    )) {
      if (held[1] === disk) where.delete(held[0]);
    }
    if (content.kind !== 'member') return;
    // Without a member a group is broken; without the last it is gone.
    const left = this.membersOf(content.group);
    for (const other of left) other.content = { kind: 'undeclared', holds: new Set() };
    this.groups.delete(content.group.name);
  }

  // In a guest

  mount(server: Server, mount: string, system: System): void {
    if (server.mounts.get(mount) === system) return;
    if (server.mounts.has(mount)) refuse(`something else is mounted at ${mount} on ${server.name}`);
    // It would be hidden by what is mounted over its mount point.
    const below = within(server, mount);
    if (below !== undefined && system.type !== 'swap')
      refuse(`${below} is mounted on ${server.name}, below ${mount}`);
    const elsewhere = [...this.servers.values()].find(
      (each) => each !== server && [...each.mounts.values()].includes(system),
    );
    if (elsewhere !== undefined && system.type !== 'gfs2' && system.type !== 'ocfs2')
      refuse(`${mount} is mounted on ${elsewhere.name}, too, and is an ordinary file system`);
    if (!this.within(server, system)) refuse(`${server.name} does not see what ${mount} lies on`);
    server.mounts.set(mount, system);
    server.fstab.set(mount, system);
  }

  /** @param of what it is that is unmounted: whatever is at the mount point goes */
  unmount(server: Server, mount: string, of: (system: System) => boolean): void {
    const system = server.mounts.get(mount) ?? refuse(`nothing is mounted at ${mount} on ${server.name}`);
    if (mount === '/') refuse(`${server.name} runs from ${mount}`);
    if (!of(system)) refuse(`something else is mounted at ${mount} on ${server.name}`);
    // umount(8): a file system is busy while another is mounted within it.
    const below = within(server, mount);
    if (below !== undefined && system.type !== 'swap')
      refuse(`${mount} is busy: ${below} is mounted below it`);
    server.mounts.delete(mount);
    server.fstab.delete(mount);
  }

  isMounted(system: System): boolean {
    return [...this.servers.values()].some(({ mounts }) => [...mounts.values()].includes(system));
  }

  deactivate(group: Group, server: Server): void {
    const mounted = [...group.volumes].find(
      ([, { system }]) => system !== undefined && [...server.mounts.values()].includes(system),
    );
    if (mounted !== undefined) refuse(`${mounted[0]} in ${group.name} is mounted`);
    group.activeOn.delete(server.name);
  }

  activate(group: Group, server: Server): void {
    if (group.exported) refuse(`${group.name} is exported`);
    for (const disk of this.membersOf(group)) {
      if (!disk.holders.has(server.name))
        refuse(`${disk.name}, a member of ${group.name}, is not at ${server.name}`);
    }
    const elsewhere = [...group.activeOn].find((each) => each !== server.name);
    if (elsewhere !== undefined) refuse(`${group.name} is active on ${elsewhere}`);
    group.activeOn.add(server.name);
  }
}
