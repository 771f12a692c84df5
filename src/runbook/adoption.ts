/**
 * What is there already and is only declared: nothing is done about it but to make sure that it is what is declared, at
 * the provider and in the guest.
 */
import { listed } from '../base/wording.ts';
import { usableExtents } from '../capacity/extents.ts';
import type { ChangeOf } from '../change/change.ts';
import type { FileSystem, Server, Volume, VolumeGroup } from '../estate/estate.ts';
import { exactSize, showSize, timesBytes } from '../estate/size.ts';
import type { Draft } from './draft.ts';
import { inOrder } from './mounts.ts';
import type { Carrier, Sides } from './sides.ts';
import { ready } from './waits.ts';
import { serverSubject, sorted, systemSubject, volumeSubject } from './words.ts';

/** One look at the provider for a server and all that is attached to it. */
export function serverThere(draft: Draft, name: string): string {
  const { sides } = draft;
  const key = `there server ${name}`;
  if (draft.has(key)) return key;
  const server = sides.head.servers.get(name);
  return draft.want(key, 'check-server-there', serverSubject(name), {
    server: name,
    words: { declared: server === undefined ? '' : serverWords(sides, server) },
    turn: 'check',
  });
}

/** With its server, where that is only declared, too. */
export function volumeThere(draft: Draft, name: string): string {
  const { sides } = draft;
  const holders = sides.holdersAfter(name);
  const server = holders.find((each) => sides.adopted.servers.has(each));
  const volume = sides.head.volumes.get(name);
  if (server !== undefined && sides.adopted.volumes.has(name)) return serverThere(draft, server);
  // What is attached by this branch is not looked for before.
  const already = holders.filter((each) => sides.adopted.attached.has(`${name} ${each}`));
  const words = [
    ...(volume === undefined ? [] : [volumeWords(volume)]),
    ...(holders.length === 0 ? ['attached to no server'] : []),
    ...(already.length === 0 ? [] : [`attached to ${listed(already)}`]),
  ];
  return draft.want(`there volume ${name}`, 'check-volume-there', volumeSubject(name), {
    words: { declared: words.join(', ') },
    turn: 'check',
  });
}

/** Main had its size wrongly: what is looked at is that alone. */
export const sizeThere = (draft: Draft, volume: Volume): string =>
  draft.want(`size of volume ${volume.name}`, 'check-volume-there', volumeSubject(volume.name), {
    words: { declared: volumeWords(volume) },
    turn: 'check',
  });

export const systemSizeThere = (draft: Draft, system: FileSystem): string =>
  draft.want(`size of ${draft.sides.systemKey(system)}`, 'check-layers', systemSubject(system), {
    server: draft.sides.worksAt(system.on),
    words: { on: system.on.name, declared: `${systemWords(system)} on ${system.on.name}` },
    early: true,
    turn: 'check',
  });

export function attachmentThere(draft: Draft, { volume, server }: ChangeOf<'attachment-adopted'>): string {
  const { adopted } = draft.sides;
  return adopted.servers.has(server) && !adopted.volumes.has(volume.name)
    ? serverThere(draft, server)
    : volumeThere(draft, volume.name);
}

/**
 * One look in the guest of each server that has it, for all that lies on what the server holds; a group, or a file
 * system, that nobody holds by itself.
 */
export function layersThere(draft: Draft, on: Carrier): string {
  const { sides } = draft;
  const home = sides.homeOf(on);
  for (const server of sides.carrierHoldersAfter(on))
    if (server !== home && isWholeAt(sides, on, server)) layersAt(draft, on, server);
  return layersAt(draft, on, home);
}

function layersAt(draft: Draft, on: Carrier, server: string | undefined): string {
  const { sides } = draft;
  const key = server === undefined ? `there on ${on.kind} ${on.name}` : `there in ${server}`;
  if (draft.has(key)) return key;
  const carriers = server === undefined ? [on] : carriersAt(sides, server);
  return draft.want(key, 'check-layers', server === undefined ? on : serverSubject(server), {
    server,
    // What this branch brings to the server is looked at once it is there.
    after: carriers.flatMap((each) => ready(each, server)),
    words: { on: on.name, declared: carriers.flatMap((each) => layerWords(sides, each) ?? []).join('; ') },
    turn: 'check',
  });
}

/** What a server holds, and can be looked at in its guest. */
export function carriersAt(sides: Sides, server: string): readonly Carrier[] {
  const held = (sides.head.held.get(server) ?? []).map(({ volume }) => volume);
  const groups = sorted(held.flatMap((name) => sides.head.groupOf.get(name)?.name ?? []));
  return [
    ...sorted(held).map((name): Carrier => ({ kind: 'volume', name })),
    ...groups.map((name): Carrier => ({ kind: 'volume-group', name })),
  ].filter((carrier) => sides.homeOf(carrier) === server || isWholeAt(sides, carrier, server));
}

/** Of a group, whether a server has all its members. */
const isWholeAt = (sides: Sides, { kind, name }: Carrier, server: string): boolean =>
  (kind === 'volume' ? [name] : (sides.head.groups.get(name)?.members ?? [])).every((volume) =>
    sides.holdersAfter(volume).includes(server),
  );

function serverWords(sides: Sides, { name, id, power, site, type, boot }: Server): string {
  const volume = (each: string): string => {
    const declared = sides.head.volumes.get(each);
    return declared === undefined ? each : `${each} (${volumeWords(declared)})`;
  };
  const already = (held: string): boolean => sides.adopted.attached.has(`${held} ${name}`);
  const others = sorted(
    (sides.head.held.get(name) ?? []).flatMap((held) =>
      held.boot || !already(held.volume) ? [] : held.volume,
    ),
  );
  return [
    ...(id === undefined ? [] : [`id ${id}`]),
    power,
    ...(type === undefined ? [] : [`server type ${type}`]),
    ...(site === undefined ? [] : [`at site ${site}`]),
    ...(boot === undefined || !already(boot) ? [] : [`starting from ${volume(boot)}`]),
    ...(others.length === 0 ? [] : [`with ${listed(others.map(volume))} attached`]),
  ].join(', ');
}

const volumeWords = ({ id, size, tier }: Volume): string =>
  [...(id === undefined ? [] : [`id ${id}`]), exactSize(size), `tier ${tier}`].join(', ');

/** What is only declared of what lies on a carrier; nothing where nothing is. */
function layerWords(sides: Sides, on: Carrier): string | undefined {
  const carrier = sides.carrierAfter(on);
  if (carrier === undefined) return undefined;
  if (carrier.kind === 'volume') {
    const system = carrier.fileSystem;
    return system === undefined || !sides.adopted.fileSystems.has(system.name)
      ? undefined
      : `${systemWords(system)} on ${carrier.name}`;
  }
  const systems = inOrder(carrier.fileSystems.filter(({ name }) => sides.adopted.fileSystems.has(name)));
  const adopted = sides.adopted.groups.has(carrier.name) || sides.adopted.joined.has(carrier.name);
  if (systems.length === 0 && !adopted) return undefined;
  const within = systems.length === 0 ? '' : `, with ${listed(systems.map(systemWords))}`;
  return `${adopted ? groupWords(sides, carrier) : `volume group ${carrier.name}`}${within}`;
}

const systemWords = ({ mount, type, size }: FileSystem): string => `${mount} (${type}, ${exactSize(size)})`;

function groupWords(sides: Sides, { name, members, extent }: VolumeGroup): string {
  const extents = members.reduce(
    (sum, member) =>
      sum + usableExtents(sides.head.volumes.get(member)?.size ?? timesBytes(extent, 0n), extent),
    0n,
  );
  return `volume group ${name} on ${listed(sorted(members))} (${extents} extents of ${exactSize(extent)}, ${showSize(timesBytes(extent, extents))} in all)`;
}
