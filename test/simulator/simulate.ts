/**
 * Plays the runbook of one branch from its base to its end, and says what went wrong: a step that was refused, an end
 * that is not the head, or content lost that no change declares lost.
 */
import type { Change } from '../../src/change/change.ts';
import { type Comparison, compareEstates } from '../../src/change/compare.ts';
import { lossOf } from '../../src/change/kinds.ts';
import { baseName, headName, type Renames } from '../../src/change/renames.ts';
import type { Estate, FileSystem, Layout } from '../../src/estate/estate.ts';
import { type Bytes, bytes } from '../../src/estate/size.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Snag, Step } from '../../src/runbook/step.ts';
import { otherOrders } from './orders.ts';
import { needsGuest, play, systemOn } from './play.ts';
import {
  type Content,
  type Disk,
  type Group,
  type Quota,
  Refused,
  type Server,
  type System,
  World,
} from './world.ts';

/** What there is beyond the most that either end of the branch takes. */
export interface Spare {
  /** Attachment slots of each server. */
  readonly slots: number;
  /** Of each site's quota, or less than none; undefined where there are no quotas. */
  readonly quota: Quota | undefined;
}

export interface Simulated {
  readonly steps: readonly Step[];
  /** What went wrong, one sentence each; nothing where nothing did. */
  readonly faults: readonly string[];
  /** Why the planner says of itself that no order carries the branch out: such a one is not played. */
  readonly snag: Snag | undefined;
}

/** Undefined where the two contradict each other, and are not judged. */
export function simulate(base: Estate, head: Estate, spare: Spare): Simulated | undefined {
  const comparison = compareEstates(base, head);
  if (comparison.contradictions.length > 0) return undefined;
  const steps = runbookOf(comparison, base, head, {
    slots: ({ name }) => slotsOf(base, head, comparison.renames, name, spare.slots),
    quota: (site) => quotaOf(base, head, site, spare.quota),
  });
  const snag = steps.find((step) => step.snag !== undefined)?.snag;
  const faults = playAll(comparison, base, head, steps, spare);
  if (snag === undefined) {
    const others = (faults.length > 0 ? [] : otherOrders(steps)).flatMap((order) =>
      playAll(comparison, base, head, order, spare).map((each) => `in another order: ${each}`),
    );
    return { steps, faults: [...faults, ...others], snag };
  }
  // What is said to be impossible has to be refused.
  const isRefused = faults.length > 0 || snag.kind === 'apart';
  return {
    steps,
    faults: isRefused ? [] : [`it can be carried out, and is said not to be: ${snag.kind}`],
    snag,
  };
}

/** As many as the most that either end of the branch takes, and some to spare. */
function slotsOf(base: Estate, head: Estate, renames: Renames, name: string, spare: number): number {
  const held = (estate: Estate, each: string): number => estate.held.get(each)?.length ?? 0;
  return Math.max(held(base, baseName(renames.servers, name)), held(head, name)) + spare;
}

function larger(one: bigint, other: bigint): bigint {
  return one < other ? other : one;
}

function quotaOf(
  base: Estate,
  head: Estate,
  site: string,
  spare: Quota | undefined,
): { readonly volumes: number; readonly size: Bytes } | undefined {
  if (spare === undefined) return undefined;
  const used = ({ volumes }: Estate): Quota => {
    const there = [...volumes.values()].filter((volume) => volume.site === site);
    return { volumes: there.length, size: there.reduce((sum, { size }) => sum + size, 0n) };
  };
  const [before, after] = [used(base), used(head)];
  const size = larger(before.size, after.size) + spare.size;
  return {
    volumes: Math.max(0, Math.max(before.volumes, after.volumes) + spare.volumes),
    size: bytes(larger(size, 0n)),
  };
}

function playAll(
  { renames, changes }: Comparison,
  base: Estate,
  head: Estate,
  steps: readonly Step[],
  spare: Spare,
): readonly string[] {
  const world = worldOf(base, head, renames, spare);
  const before = world.holdings();
  const later: Step[] = [];
  for (const step of steps) {
    const refused = attempt(world, step, head, later);
    if (refused !== undefined) return [`step ${step.number}, ${step.does} ${refused}`];
  }
  for (const step of later) {
    const refused = whenUp(world, step);
    if (refused !== undefined) return [`when it next runs, ${step.does} ${refused}`];
  }
  const held = world.holdings();
  const mayGo = declaredLost(base, changes);
  return [
    ...[...before].filter((each) => !held.has(each) && !mayGo.has(each)).map((each) => `lost: ${each}`),
    ...differences(world, head),
  ];
}

export function attempt(world: World, step: Step, head: Estate, later: Step[]): string | undefined {
  if (needsGuest(step)) {
    const server = step.server === undefined ? undefined : world.servers.get(step.server);
    if (server?.power !== 'running') {
      if (step.does.startsWith('With a server that runs and holds ')) return whenUp(world, step);
      // Now, if that can be and nothing that it waits for is left, and whenever somebody holds it otherwise.
      const isFree = !later.some(({ number }) => step.after.includes(number));
      if (step.server === undefined && isFree && whenUp(world, step) === undefined) return undefined;
      if (step.server !== undefined && head.servers.get(step.server)?.power === 'running')
        return `${step.server} does not run`;
      later.push(step);
      return undefined;
    }
  }
  return refusal(() => play(world, step));
}

function refusal(act: () => void): string | undefined {
  try {
    act();
    return undefined;
  } catch (error) {
    if (error instanceof Refused) return error.message;
    throw error;
  }
}

/** Done on a server that runs for as long as it takes: its own, or one that what it is about is lent to. */
function whenUp(world: World, step: Step): string | undefined {
  const own = step.server === undefined ? undefined : world.servers.get(step.server);
  // It is mounted when somebody holds it.
  if (own === undefined && step.procedure.startsWith('mount')) return undefined;
  const idle = [...world.disks.values(), ...world.old.values()].filter(({ holders }) =>
    [...holders].every((name) => world.server(name).power === 'stopped'),
  );
  // One server gets at what is at one site.
  const group = world.groups.get(step.words.group ?? '');
  const sites = new Set(group === undefined ? [] : world.membersOf(group).map(({ site }) => site));
  if (own === undefined && sites.size > 1)
    return `members of ${step.words.group} are at ${[...sites].join(' and ')}`;
  const holders = idle.map((disk) => [...disk.holders]);
  const server = own ?? lent(world, idle);
  server.power = 'running';
  for (const disk of world.heldBy(server)) server.seen.set(disk, disk.size);
  for (const group of world.groups.values()) {
    const members = world.membersOf(group);
    if (members.length > 0 && members.every(({ holders }) => holders.has(server.name)) && !group.exported)
      group.activeOn.add(server.name);
  }
  // Nothing is in use there but what the step needs mounted.
  const { on = '', mount = '' } = step.words;
  const needsMount = step.procedure === 'grow-mounted' || step.procedure === 'shrink-mounted';
  const refused = refusal(() => {
    if (needsMount || step.procedure.startsWith('unmount')) {
      const system = server.fstab.get(mount) ?? systemOn(world, `${on}:${mount}`);
      if (world.within(server, system)) server.mounts.set(mount, system);
    }
    play(world, { ...step, server: server.name });
  });
  server.mounts.clear();
  server.seen.clear();
  for (const group of world.groups.values()) group.activeOn.delete(server.name);
  server.power = 'stopped';
  if (own === undefined) {
    idle.forEach((disk, index) => {
      disk.holders.clear();
      for (const name of holders[index] ?? []) disk.holders.add(name);
    });
    world.servers.delete(server.name);
  }
  return refused;
}

/** A server with everything that no server which runs holds, to do on it what no other guest can. */
function lent(world: World, idle: readonly Disk[]): Server {
  const server: Server = {
    name: 'lent',
    site: '',
    type: '',
    power: 'stopped',
    boot: undefined,
    slots: Number.POSITIVE_INFINITY,
    seen: new Map(),
    mounts: new Map(),
    fstab: new Map(),
  };
  world.servers.set(server.name, server);
  for (const disk of idle) {
    disk.holders.clear();
    disk.holders.add(server.name);
  }
  return server;
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
  // More than its quota may be there, which is no more than that it stays.
  for (const site of ['north-quay', 'south-quay']) {
    const [quota, used] = [quotaOf(base, head, site, spare.quota), world.used(site)];
    if (quota === undefined) continue;
    world.quotas.set(site, {
      volumes: Math.max(quota.volumes, used.volumes),
      size: larger(quota.size, used.size),
    });
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
function layoutOf(layout: Layout): string {
  switch (layout.kind) {
    case 'linear':
      return 'end to end';
    case 'striped':
      return `in ${layout.stripes} stripes`;
    case 'mirrored':
      return `in ${layout.copies} copies`;
  }
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
      for (const { mount } of systems) wanted.set(mount, volume);
    }
    // An undeclared root may be there: an image has one.
    const mounted = [...server.mounts.keys()].filter((mount) => mount !== '/' || wanted.has('/'));
    same(`what is mounted on ${name}`, list(mounted), list(wanted.keys()));
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
