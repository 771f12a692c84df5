/** Keys of what has to be done first: each is no wait where nobody wants it. */
import type { VolumeGroup } from '../estate/estate.ts';
import { exchangeOf, isApart } from './exchange.ts';
import { type Carrier, type Sides, systemsOn } from './sides.ts';

export const comesUp = (server: string): readonly string[] => [`create-server ${server}`, `start ${server}`];

export const present = (volume: string, server: string): readonly string[] => [
  `see ${volume} ${server}`,
  `see-size ${volume} ${server}`,
  `replaced ${volume}`,
];

/** All that makes a carrier ready at a server. */
export function ready(carrier: Carrier, server: string | undefined): readonly string[] {
  if (carrier.kind === 'volume')
    return server === undefined
      ? ['create', 'grow', 'fill', 'copy-across'].map((kind) => `${kind} ${carrier.name}`)
      : [`create ${carrier.name}`, ...present(carrier.name, server)];
  return [
    `make-group ${carrier.name}`,
    `activate ${carrier.name} ${server ?? ''}`,
    `rename-group ${carrier.name}`,
    `re-extent ${carrier.name}`,
    `lay-out ${carrier.name}`,
    `check-group ${carrier.name}`,
  ];
}

export interface Workplace {
  readonly server: string | undefined;
  /** Whether it only comes there with this branch. */
  readonly comes: boolean;
  /** What must be done first. */
  readonly there: readonly string[];
}

/** Where what lies on it is worked on, and what must be done first where that is only where it comes to. */
export function workplace(sides: Sides, carrier: Carrier): Workplace {
  const server = sides.worksAt(carrier);
  const comes = server !== undefined && !sides.carrierHoldersBefore(carrier).includes(server);
  return {
    server,
    comes,
    there: comes
      ? carrier.kind === 'volume'
        ? present(carrier.name, server)
        : [`activate ${carrier.name} ${server}`]
      : [],
  };
}

/** What puts into use what lies on a volume, or in its group, where it is in the end. */
export function putIntoUse(sides: Sides, volume: string): readonly string[] {
  const on = sides.head.groupOf.get(volume) ?? sides.head.volumes.get(volume);
  if (on === undefined) return [];
  const holders = sides.carrierHoldersAfter({ kind: on.kind, name: on.name });
  return systemsOn(on).flatMap((system) =>
    holders.map((server) => `mount ${sides.systemKey(system)} ${server}`),
  );
}

/** What must be so before a server can have a volume. */
export function fetched(sides: Sides, volume: string, server: string): readonly string[] {
  const after = sides.holdersAfter(volume);
  const left = sides.holdersBefore(volume).filter((holder) => holder === server || !after.includes(holder));
  return [
    `create ${volume}`,
    `grow ${volume}`,
    `fill ${volume}`,
    `replaced ${volume}`,
    `detach-old ${volume}`,
    `install ${volume}`,
    `copy-across ${volume}`,
    `share ${volume}`,
    ...left.map((holder) => `detach ${volume} ${holder}`),
  ];
}

/** What takes a volume out of its group for good. */
export function outOfGroup(sides: Sides, volume: string, { name }: VolumeGroup): readonly string[] {
  const group = sides.headName('groups', name);
  return [`leave ${group} ${volume}`, `remove-group ${group}`];
}

/** What must be off a volume before something else is made on it. */
export function cleared(sides: Sides, volume: string): readonly string[] {
  const own = sides.base.volumes.get(sides.baseName('volumes', volume))?.fileSystem;
  const group = sides.groupBefore(volume);
  // Whoever starts from it runs from it until it stands still.
  const starters = sides.holdersBefore(volume).filter((server) => sides.bootBefore(server) === volume);
  return [
    ...(own === undefined ? [] : [`remove ${sides.systemKey(own)}`]),
    ...(group === undefined ? [] : outOfGroup(sides, volume, group)),
    ...starters.map((server) => `stop ${server}`),
  ];
}

/** What gives room back to a group. */
export function madeRoomIn(sides: Sides, on: Carrier): readonly string[] {
  const before = sides.carrierBefore(on);
  if (before === undefined) return [];
  return systemsOn(before).flatMap((system) => [
    `remove ${sides.systemKey(system)}`,
    `shrunk ${sides.systemKey(system)}`,
    // Remounted, too, it is made smaller by the name of its new mount point.
    `shrunk ${on.kind} ${on.name} ${sides.headMount(system)}`,
  ]);
}

/** Whether a carrier is where it was, and is worked on there. */
export function staysPut(sides: Sides, carrier: Carrier): boolean {
  const [before, after] = [sides.carrierHoldersBefore(carrier), sides.carrierHoldersAfter(carrier)];
  const [here] = before;
  return (
    before.length < 2 &&
    after.length === before.length &&
    after[0] === here &&
    sides.worksAt(carrier) === here
  );
}

/** What makes a group larger where it is: members that come to it, and members that grow. */
export function boughtFor(sides: Sides, group: VolumeGroup): readonly string[] {
  const { name, members } = group;
  const carrier: Carrier = { kind: 'volume-group', name };
  // What comes to where the group goes, or once its server is up again, is no room where it is.
  const isPut = staysPut(sides, carrier) && !sides.stopping.has(sides.worksAt(carrier) ?? '');
  if (isApart(sides, group) || (!isPut && exchangeOf(sides, name) === undefined)) return [];
  return [
    ...(sides.joined.get(name) ?? []).map(({ volume }) => `join ${name} ${volume}`),
    ...members.map((volume) => `grow-member ${volume}`),
  ];
}
