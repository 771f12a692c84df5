/** A step tried where it can be done: in a guest that runs, now or when its server next does. */
import type { Estate } from '../../src/estate/estate.ts';
import type { Step } from '../../src/runbook/step.ts';
import { needsGuest, play, systemOn } from './play.ts';
import { type Disk, Refused, type Server, type World } from './world.ts';

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
export function whenUp(world: World, step: Step): string | undefined {
  const own = step.server === undefined ? undefined : world.servers.get(step.server);
  // It is mounted when somebody holds it.
  if (own === undefined && step.procedure.startsWith('mount')) return undefined;
  // One server gets at what is at one site.
  const { group: name = '', volume = '', on = '' } = step.words;
  const group = world.groups.get(name) ?? world.groups.get(on);
  const disks = [
    ...(group === undefined ? [] : world.membersOf(group)),
    ...[volume, on].flatMap((each) => world.disks.get(each) ?? []),
  ];
  const [site, ...others] = new Set(disks.map((disk) => disk.site));
  if (own === undefined && others.length > 0)
    return `what it is about is at ${[site, ...others].join(' and ')}`;
  const idle = world
    .all()
    .filter((disk) => disk.site === (site ?? disk.site))
    .filter(({ holders }) => [...holders].every((each) => world.server(each).power === 'stopped'));
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
  const { mount = '' } = step.words;
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
