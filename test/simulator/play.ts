/** One step of a runbook, done in the world. It reads what a person reads: the procedure, and what it is done with. */
import type { Step } from '../../src/runbook/step.ts';
import { type Disk, type Group, refuse, type Server, type System, type World } from './world.ts';

const units: Readonly<Record<string, bigint>> = {
  B: 1n,
  KiB: 1n << 10n,
  MiB: 1n << 20n,
  GiB: 1n << 30n,
  TiB: 1n << 40n,
};

/** A size as somebody types it in. */
export function typed(text: string | undefined): bigint {
  const [, whole = '', fraction = '', unit = ''] = /^([0-9,]+)(?:\.([0-9]+))? (\w+)$/.exec(text ?? '') ?? [];
  const scale = units[unit] ?? refuse(`nobody can type in the size ${text}`);
  const digits = BigInt(`${whole.replaceAll(',', '')}${fraction}`) * scale;
  const divisor = 10n ** BigInt(fraction.length);
  return digits % divisor === 0n ? digits / divisor : refuse(`${text} is no whole number of bytes`);
}

const names = (text = ''): readonly string[] => text.split(/, | and /).filter((name) => name !== '');

/** Procedures of a guest that are looked at and not done. */
const looks: ReadonlySet<string> = new Set([
  'check-backup',
  'check-layers',
  'check-missed',
  'check-name',
  'check-replacement',
  'check-member-replacement',
  'stop-use',
  'set-reserve',
  'bring-back',
  'bring-over',
]);

/** Whether a step is done in a guest, and can only be done while one runs. */
export const needsGuest = ({ at, procedure }: Step): boolean => at === 'guest' || procedure === 'check-group';

export function play(world: World, step: Step): void {
  const { procedure, words } = step;
  if (looks.has(procedure)) return;
  if (needsGuest(step)) inGuest(world, step, world.server(step.server ?? ''));
  else if (procedure === 'check-fstab') world.servers.get(step.server ?? '')?.fstab.delete(words.mount ?? '');
  else if (procedure === 'check-detached') checkDetached(world, world.group(words.group ?? ''));
  else atProvider(world, step, words.volume ?? '');
}

function checkDetached(world: World, group: Group): void {
  for (const { name, holders } of world.membersOf(group))
    if (holders.size > 0) refuse(`${name} is still attached to ${[...holders].join(', ')}`);
}

function atProvider(world: World, { procedure, words, server: at }: Step, volume: string): void {
  const server = (): Server => world.server(at ?? '');
  switch (procedure) {
    case 'create-volume': {
      if (world.disks.has(volume)) refuse(`there is a volume ${volume}`);
      const site = /^, site ([^,]+)/.exec(words.where ?? '')?.[1] ?? '';
      world.disks.set(volume, world.create({ ...asSaid(volume, words), site }));
      return;
    }
    case 'grow-volume':
      world.grow(world.disk(volume), typed(words.size));
      return;
    case 'move-tier':
      world.disk(volume).tier = words.tier ?? '';
      return;
    case 'create-smaller': {
      const old = world.disk(volume);
      world.fresh.set(volume, world.create({ ...asSaid(volume, words), site: old.site }));
      return;
    }
    case 'attach-smaller':
      world.attach(fresh(world, volume), server());
      return;
    case 'detach-old':
      world.detach(former(world, volume), server());
      return;
    case 'fill-smaller':
      copied(world, volume);
      return;
    case 'copy-across': {
      world.fresh.set(volume, world.create({ ...asSaid(volume, words), site: words.site ?? '' }));
      copied(world, volume);
      return;
    }
    case 'fill-boot':
    case 'install-over': {
      const from = world.disks.get(words.old ?? '') ?? world.old.get(words.old ?? '');
      const holds = from?.content.kind === 'system' ? from.content.system.holds : [];
      const disk = world.disk(volume);
      const user = [...disk.holders].find((name) => world.usedBy(disk, world.server(name)) !== undefined);
      if (user !== undefined) refuse(`${volume} is in use on ${user}`);
      if (disk.content.kind === 'member') refuse(`${volume} is a member of ${disk.content.group.name}`);
      if (disk.content.kind !== 'nothing' && procedure === 'fill-boot') refuse(`something is on ${volume}`);
      disk.content = { kind: 'system', system: image(disk, holds) };
      for (const each of world.servers.values()) if (each.boot === volume) roots(disk, each);
      return;
    }
    case 'unprotect':
      world.disk(volume).protected = false;
      return;
    case 'unprotect-old':
      former(world, volume).protected = false;
      return;
    case 'protect':
      world.disk(volume).protected = true;
      return;
    case 'share':
      world.disk(volume).shareable = true;
      return;
    case 'unshare': {
      const disk = world.disk(volume);
      if (disk.holders.size > 1) refuse(`${volume} is attached to ${[...disk.holders].join(', ')}`);
      disk.shareable = false;
      return;
    }
    case 'attach':
    case 'attach-for-a-while':
    case 'attach-boot':
      world.attach(world.disk(volume), server());
      return;
    case 'detach':
    case 'detach-again':
      world.detach(world.disk(volume), server());
      return;
    case 'delete-volume':
      world.delete(world.disk(volume));
      return;
    case 'delete-old':
      world.delete(former(world, volume));
      return;
    case 'create-server':
      createServer(world, words, at ?? '');
      return;
    case 'delete-server': {
      const gone = server();
      if (gone.power === 'running') refuse(`${gone.name} runs`);
      const held = world.heldBy(gone).map(({ name }) => name);
      if (held.length > 0) refuse(`${gone.name} still has ${held.join(', ')}`);
      world.servers.delete(gone.name);
      return;
    }
    case 'stop-server':
      world.stop(server());
      return;
    case 'start-server':
      world.start(server());
      return;
    case 'change-server-type':
      stopped(server()).type = words.type === 'none' ? '' : (words.type ?? '');
      return;
    case 'move-server': {
      const moved = stopped(server());
      const held = world.heldBy(moved).map(({ name }) => name);
      if (held.length > 0) refuse(`${moved.name} still has ${held.join(', ')}, which stay where they are`);
      moved.site = words.site === 'none' ? '' : (words.site ?? '');
      return;
    }
    case 'set-boot': {
      const starts = stopped(server());
      starts.fstab.delete('/');
      if (volume === 'no declared volume') {
        starts.boot = undefined;
        return;
      }
      const disk = world.disk(volume);
      if (!disk.holders.has(starts.name)) refuse(`${volume} is not attached to ${starts.name}`);
      if (disk.content.kind === 'nothing') disk.content = { kind: 'system', system: image(disk) };
      starts.boot = volume;
      roots(disk, starts);
      return;
    }
    default:
      refuse(`nobody knows how to ${procedure}`);
  }
}

/** A volume as a step has it made. */
const asSaid = (name: string, words: Step['words']): Omit<Disk, 'site' | 'holders' | 'content'> => ({
  name,
  size: typed(words.size),
  tier: words.tier ?? '',
  shareable: (words.how ?? '').includes('several servers'),
  protected: (words.how ?? '').includes('protected'),
});

const fresh = (world: World, volume: string): Disk =>
  world.fresh.get(volume) ?? refuse(`there is no smaller ${volume}`);

const former = (world: World, volume: string): Disk =>
  world.old.get(volume) ?? refuse(`there is no old ${volume} that another has taken the place of`);

const stopped = (server: Server): Server =>
  server.power === 'stopped' ? server : refuse(`${server.name} runs`);

/** What an image or an installer puts on a disk: a root of a type of its own. */
const image = ({ size }: Disk, holds: Iterable<string> = []): System => ({
  type: 'image',
  size,
  mount: '/',
  holds: new Set(holds),
});

/** The new disk has what the old one holds, and takes its name. */
function copied(world: World, volume: string): void {
  const [old, made] = [world.disk(volume), fresh(world, volume)];
  if (old.holders.size > 0 && [...old.holders].some((name) => world.server(name).power === 'running'))
    refuse(`${volume} is still in use`);
  const { content } = old;
  switch (content.kind) {
    case 'nothing':
      break;
    case 'undeclared':
      made.content = { kind: 'undeclared', holds: new Set(content.holds) };
      break;
    case 'system':
      made.content = {
        kind: 'system',
        system: { ...content.system, size: made.size, holds: new Set(content.system.holds) },
      };
      for (const { fstab } of world.servers.values())
        for (const [mount, system] of fstab)
          if (system === content.system) fstab.set(mount, made.content.system);
      break;
    case 'member':
      made.content = { kind: 'member', group: content.group, size: made.size };
      old.content = { kind: 'nothing' };
      holdsAll(world, content.group, `the smaller ${volume}`);
      break;
  }
  swapNames(world, volume);
}

function swapNames(world: World, volume: string): void {
  const made = fresh(world, volume);
  world.old.set(volume, world.disk(volume));
  world.disks.set(volume, made);
  world.fresh.delete(volume);
}

/** A server that starts from a disk has what lies there as its root. */
function roots({ content }: Disk, server: Server): void {
  if (content.kind !== 'system') return;
  server.fstab.delete('/');
  for (const [mount, system] of server.fstab) if (system === content.system) server.fstab.delete(mount);
  content.system.mount = '/';
  server.fstab.set('/', content.system);
}

function createServer(world: World, words: Step['words'], name: string): void {
  if (world.servers.has(name)) refuse(`there is a server ${name}`);
  const boot = /^, to start from ([^,]+)/.exec(words.boot ?? '')?.[1];
  const site = /, site ([^,]+)/.exec(words.where ?? '')?.[1] ?? '';
  const type = /, server type ([^,]+)/.exec(words.where ?? '')?.[1] ?? '';
  const server: Server = {
    name,
    site,
    type,
    power: 'stopped',
    boot,
    slots: Number.POSITIVE_INFINITY,
    seen: new Map(),
    mounts: new Map(),
    fstab: new Map(),
  };
  world.servers.set(name, server);
  if (boot !== undefined) {
    const disk = world.disk(boot);
    if (disk.content.kind === 'nothing') disk.content = { kind: 'system', system: image(disk) };
    world.attach(disk, server);
    roots(disk, server);
  }
  if (words.power === 'running') world.start(server);
}

function inGuest(world: World, { procedure, words, subject }: Step, guest: Server): void {
  const { volume = '', mount = '' } = words;
  const group = (): Group => world.group(words.group ?? '');
  const active = (it = group()): Group => {
    return it.activeOn.has(guest.name) ? it : refuse(`${it.name} is not active on ${guest.name}`);
  };
  /** A disk as the guest sees it, at the size it has. */
  const seen = (name: string): Disk => {
    const disk = world.disk(name);
    const size = guest.seen.get(disk) ?? refuse(`${guest.name} does not see ${name}`);
    return size === disk.size ? disk : refuse(`${guest.name} still sees ${size} bytes of ${name}`);
  };
  const idle = (disk: Disk): Disk => {
    const user = [...disk.holders].find((name) => world.usedBy(disk, world.server(name)) !== undefined);
    return user === undefined ? disk : refuse(`${disk.name} is in use on ${user}`);
  };
  switch (procedure) {
    case 'check-group': {
      const extents = world.extentsOf(group());
      if (`${extents}` !== words.extents)
        refuse(`${group().name} shows ${extents} extents, not ${words.extents}`);
      return;
    }
    case 'check-root': {
      const { content } = world.disk(words.on ?? '');
      if (content.kind !== 'system') refuse(`there is no root on ${words.on}`);
      if (content.system.type !== 'image' && content.system.type !== words.type)
        refuse(`the root on ${words.on} is ${content.system.type}`);
      content.system.type = words.type ?? '';
      return;
    }
    case 'see-device':
      if (typed(words.size) !== seen(volume).size) refuse(`${volume} has ${seen(volume).size} bytes`);
      return;
    case 'see-size': {
      const disk = world.disk(volume);
      if (!guest.seen.has(disk)) refuse(`${guest.name} does not see ${volume}`);
      guest.seen.set(disk, disk.size);
      if (typed(words.size) !== disk.size) refuse(`${volume} has ${disk.size} bytes`);
      return;
    }
    case 'grow-partition':
    case 'grow-inside':
      seen(volume);
      return;
    case 'grow-member': {
      const { content } = seen(volume);
      if (content.kind !== 'member' || content.group !== active()) refuse(`${volume} is no member`);
      content.size = world.disk(volume).size;
      return;
    }
    case 'make-group':
    case 'make-group-over': {
      const name = words.group ?? '';
      if (world.groups.has(name)) refuse(`there is a group ${name}`);
      const made: Group = {
        name,
        extent: typed(words.extent),
        layout: '',
        exported: false,
        activeOn: new Set([guest.name]),
        volumes: new Map(),
      };
      // All or nothing.
      const members = names(words.members).map(seen);
      for (const member of members) {
        free(member, procedure === 'make-group-over');
        idle(member);
      }
      const [site, ...others] = new Set(members.map((member) => member.site));
      if (others.length > 0) refuse(`its members are at ${[site, ...others].join(' and ')}`);
      for (const member of members) join(world, member, made, true);
      world.groups.set(name, made);
      return;
    }
    case 'join-group':
    case 'join-group-over':
      join(world, idle(seen(volume)), active(), procedure === 'join-group-over');
      return;
    case 'leave-group':
      leave(world, world.disk(volume), active());
      return;
    case 'replace-member': {
      const made = fresh(world, volume);
      if (!guest.seen.has(made)) refuse(`${guest.name} does not see the smaller ${volume}`);
      const old = world.disk(volume);
      join(world, made, active(), false);
      leave(world, old, active());
      swapNames(world, volume);
      return;
    }
    case 'remove-group': {
      const gone = group();
      const systems = [...gone.volumes.values()].flatMap(({ system }) => system ?? []);
      if (systems.some((system) => world.isMounted(system))) refuse(`something in ${gone.name} is mounted`);
      for (const disk of world.membersOf(gone)) disk.content = { kind: 'nothing' };
      world.groups.delete(gone.name);
      return;
    }
    case 'rename-group':
      group();
      return;
    case 're-extent':
      active().extent = typed(words.extent);
      return;
    case 'convert-layout':
      active().layout = words.layout ?? '';
      return;
    case 'lay-out-anew': {
      const anew = active();
      anew.layout = words.layout ?? '';
      for (const { system } of anew.volumes.values())
        if (system !== undefined && world.isMounted(system)) refuse(`${system.mount} is mounted`);
      return;
    }
    case 'deactivate':
      world.deactivate(group(), guest);
      return;
    case 'export': {
      const away = group();
      if (away.activeOn.size > 0) refuse(`${away.name} is active on ${[...away.activeOn].join(', ')}`);
      away.exported = true;
      return;
    }
    case 'import': {
      const come = group();
      if (!come.exported) refuse(`${come.name} is not exported`);
      for (const disk of world.membersOf(come)) seen(disk.name);
      come.exported = false;
      return;
    }
    case 'activate':
      world.activate(group(), guest);
      return;
    case 'unmount':
    case 'unmount-swap':
    case 'export-pool':
      world.unmount(guest, mount, (system) => liesOn(world, words.on ?? '', system));
      return;
    case 'mount':
    case 'mount-swap':
    case 'import-pool': {
      const system = systemOn(world, subject.name);
      world.mount(guest, mount, system);
      system.mount = mount;
      return;
    }
    case 'make-logical-volume': {
      const on = active();
      if (on.volumes.has(mount)) refuse(`${on.name} has a logical volume for ${mount}`);
      on.layout ||= words.layout ?? '';
      on.volumes.set(mount, { size: typed(words.size), system: undefined });
      if (world.takenOf(on) <= world.extentsOf(on)) return;
      on.volumes.delete(mount);
      refuse(`${on.name} has ${world.extentsOf(on)} extents, and more are wanted for ${mount}`);
      return;
    }
    case 'extend-logical-volume': {
      const logical = logicalIn(active(), mount);
      if (typed(words.size) <= logical.size) refuse(`${mount} has ${logical.size} bytes already`);
      const was = logical.size;
      logical.size = typed(words.size);
      if (world.takenOf(active()) <= world.extentsOf(active())) return;
      logical.size = was;
      refuse(`${active().name} has ${world.extentsOf(active())} extents, and more are wanted for ${mount}`);
      return;
    }
    case 'reduce-logical-volume': {
      const logical = logicalIn(active(), mount);
      if (logical.system !== undefined && logical.system.size > typed(words.size))
        refuse(`the file system of ${mount} has ${logical.system.size} bytes`);
      logical.size = typed(words.size);
      return;
    }
    case 'cut-logical-volume': {
      const logical = logicalIn(active(), mount);
      if (logical.system !== undefined && world.isMounted(logical.system)) refuse(`${mount} is mounted`);
      logical.size = typed(words.size);
      return;
    }
    case 'remove-file-system': {
      const { system } = logicalIn(active(), mount);
      if (system !== undefined && world.isMounted(system)) refuse(`${mount} is mounted`);
      active().volumes.delete(mount);
      return;
    }
    case 'give-up-file-system': {
      const disk = world.disk(words.volume ?? '');
      if (disk.content.kind !== 'system') refuse(`there is no file system on ${disk.name}`);
      if (world.isMounted(disk.content.system)) refuse(`${disk.content.system.mount} is mounted`);
      disk.content = { kind: 'undeclared', holds: disk.content.system.holds };
      return;
    }
    case 'make-file-system':
    case 'make-file-system-over':
    case 'make-anew': {
      const over = procedure !== 'make-file-system';
      if (mount === '/' && guest.boot === words.on) refuse(`${guest.name} runs from the root of ${words.on}`);
      const system = { type: words.type ?? '', mount, holds: new Set<string>() };
      const on = world.groups.get(words.on ?? '');
      if (on === undefined) {
        const disk = idle(seen(words.on ?? ''));
        if (disk.content.kind !== 'nothing' && !over) refuse(`something is on ${disk.name}`);
        if (disk.content.kind === 'member') refuse(`${disk.name} is a member of ${disk.content.group.name}`);
        disk.content = { kind: 'system', system: { ...system, size: disk.size } };
        return;
      }
      const logical = logicalIn(active(on), mount);
      if (logical.system !== undefined && world.isMounted(logical.system)) refuse(`${mount} is mounted`);
      if (logical.system !== undefined && !over) refuse(`something is on ${mount}`);
      logical.system = { ...system, size: logical.size };
      return;
    }
    case 'grow-mounted':
    case 'grow-unmounted': {
      const system = systemOn(world, subject.name);
      const mounted = guest.mounts.get(mount) === system;
      if (procedure === 'grow-mounted' && !mounted) refuse(`${mount} is not mounted on ${guest.name}`);
      if (procedure === 'grow-unmounted' && world.isMounted(system)) refuse(`${mount} is mounted`);
      const on = world.groups.get(words.on ?? '');
      const device = on === undefined ? seen(words.on ?? '').size : logicalIn(on, mount).size;
      if (device < system.size) refuse(`the device of ${mount} has only ${device} bytes`);
      system.size = device;
      return;
    }
    case 'shrink-mounted':
    case 'shrink-unmounted': {
      const system = systemOn(world, subject.name);
      if (procedure === 'shrink-unmounted' && world.isMounted(system)) refuse(`${mount} is mounted`);
      system.size = typed(words.size);
      return;
    }
    case 'put-smaller-in-place': {
      const [old, made] = [world.disk(volume), fresh(world, volume)];
      if (!guest.seen.has(made)) refuse(`${guest.name} does not see the smaller ${volume}`);
      const { content } = old;
      if (content.kind === 'member') refuse(`${volume} is a member of ${content.group.name}`);
      if (content.kind === 'undeclared') made.content = { kind: 'undeclared', holds: new Set(content.holds) };
      if (content.kind === 'system') {
        const system = { ...content.system, size: made.size, holds: new Set(content.system.holds) };
        made.content = { kind: 'system', system };
        // It is mounted in the place of the old one, whether that was mounted or not.
        for (const map of [guest.mounts, guest.fstab]) map.set(content.system.mount, system);
      }
      swapNames(world, volume);
      return;
    }
    default:
      refuse(`nobody knows how to ${procedure}`);
  }
}

/** By a subject's name, as in `plates:/plates`. */
export function systemOn(world: World, name: string): System {
  const [on = '', ...rest] = name.split(':');
  const mount = rest.join(':');
  const group = world.groups.get(on);
  const content = group === undefined ? world.disk(on).content : undefined;
  const system = content?.kind === 'system' ? content.system : group?.volumes.get(mount)?.system;
  return system ?? refuse(`there is no file system ${name}`);
}

/** Whether a file system lies on a volume or in a group. */
export function liesOn(world: World, on: string, system: System): boolean {
  const content = world.disks.get(on)?.content;
  if (content?.kind === 'system' && content.system === system) return true;
  return [...(world.groups.get(on)?.volumes.values() ?? [])].some((each) => each.system === system);
}

const logicalIn = (group: Group, mount: string) =>
  group.volumes.get(mount) ?? refuse(`${group.name} has no logical volume for ${mount}`);

function free({ name, content }: Disk, over: boolean): void {
  if (content.kind === 'member') refuse(`${name} is a member of ${content.group.name}`);
  if (content.kind !== 'nothing' && !over) refuse(`something is on ${name}`);
}

function join(world: World, disk: Disk, group: Group, over: boolean): void {
  free(disk, over);
  const far = world.membersOf(group).find(({ site }) => site !== disk.site);
  if (far !== undefined)
    refuse(`${disk.name} is at ${disk.site}, and ${far.name} in ${group.name} at ${far.site}`);
  disk.content = { kind: 'member', group, size: disk.size };
}

/** Extents that lie nowhere any more are lost. */
function holdsAll(world: World, group: Group, by: string): void {
  const [has, needs] = [world.extentsOf(group), world.takenOf(group)];
  if (has < needs) refuse(`${group.name} needs ${needs} extents, and with ${by} has ${has}`);
}

function leave(world: World, disk: Disk, group: Group): void {
  if (disk.content.kind !== 'member' || disk.content.group !== group)
    refuse(`${disk.name} is no member of ${group.name}`);
  const others = world.membersOf(group).filter((each) => each !== disk);
  if (others.length === 0) refuse(`${disk.name} is the last member of ${group.name}`);
  if (world.extentsOf(group, others) < world.takenOf(group))
    refuse(
      `${group.name} needs ${world.takenOf(group)} extents, and without ${disk.name} has ${world.extentsOf(group, others)}`,
    );
  disk.content = { kind: 'nothing' };
}
