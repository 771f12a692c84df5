/** What room is left, layer by layer: a site's quota, a server's attachment slots, a volume group. */

import type { Place } from '../base/problem.ts';
import type { Belonging, Estate, Server, Subject, VolumeGroup } from '../estate/estate.ts';
import type { Settings, Site } from '../estate/settings.ts';
import { sumBytes } from '../estate/size.ts';
import { fillOf, type GroupFill } from './group.ts';
import type { MeasuredCapacity } from './measured.ts';

export const layers = ['quota', 'attachment-slots', 'volume-group', 'file-system'] as const;

export type Layer = (typeof layers)[number];

/** Room at one layer. `free` is below nothing where more is taken than there is. */
export interface Room {
  readonly layer: Layer;
  readonly subject: Subject;
  readonly belonging: Belonging;
  readonly place: Place;
  /** What is counted: bytes, or pieces of something. */
  readonly measure: 'bytes' | 'volumes' | 'slots';
  readonly capacity: bigint;
  readonly taken: bigint;
  readonly free: bigint;
  /** When the capacity was surveyed (RFC 3339, UTC); left out where it is declared, read or estimated. */
  readonly surveyed?: string;
}

/** The rooms of one estate, to be carried on to another that shares most of it. */
export interface EstateHeadroom {
  readonly estate: Estate;
  /** In order of layer and name. */
  readonly rooms: readonly Room[];
}

/**
 * Every room that the estate and its settings tell of.
 *
 * @param previous that of an estate which may share servers, groups and volumes with this one, by the same measurements and
 *   settings; their rooms are carried on
 * @param measured what stands in for estimates
 */
export function headroomOf(
  estate: Estate,
  settings: Settings,
  previous?: EstateHeadroom,
  measured?: MeasuredCapacity,
): EstateHeadroom {
  const known = previous === undefined ? noRooms : roomsAt('volume-group', previous);
  const groups = [...estate.groups.values()].sort(byName).map((group) => {
    const room = isShared(group, estate, previous?.estate) ? known.get(group.name) : undefined;
    return room ?? groupRoom(group, fillOf({ estate, group, measured }));
  });
  const knownSlots = previous === undefined ? noRooms : roomsAt('attachment-slots', previous);
  const slots = [...estate.servers.values()].sort(byName).flatMap((server) => {
    const room = holdsTheSame(server, estate, previous?.estate) ? knownSlots.get(server.name) : undefined;
    return room ?? slotRooms(estate, settings, [server]);
  });
  return { estate, rooms: [...quotaRooms(estate, settings), ...slots, ...groups] };
}

const noRooms: ReadonlyMap<string, Room> = new Map();

const roomsAt = (layer: Layer, { rooms }: EstateHeadroom): ReadonlyMap<string, Room> =>
  new Map(rooms.flatMap((each) => (each.layer === layer ? [[each.subject.name, each]] : [])));

/** Whether two estates have the very same server, with the very same volumes on it. */
const holdsTheSame = (server: Server, estate: Estate, other: Estate | undefined): boolean =>
  other !== undefined &&
  other.servers.get(server.name) === server &&
  other.held.get(server.name) === estate.held.get(server.name);

/** Whether two estates hold the very same group on the very same volumes, each of which may be declared elsewhere. */
const isShared = (group: VolumeGroup, estate: Estate, other: Estate | undefined): boolean =>
  other !== undefined &&
  other.groups.get(group.name) === group &&
  group.members.every((name) => other.volumes.get(name) === estate.volumes.get(name));

const byName = (a: { readonly name: string }, b: { readonly name: string }): number =>
  a.name < b.name ? -1 : 1;

const room = (part: Omit<Room, 'free'>): Room => ({ ...part, free: part.capacity - part.taken });

/** What each site's quota leaves. Sites without one have none to speak of. */
export function quotaRooms(estate: Estate, settings: Settings): readonly Room[] {
  const limited = [...settings.sites.values()].filter(
    ({ quota }) => quota.volumes !== undefined || quota.size !== undefined,
  );
  if (limited.length === 0) return [];
  return limited.sort(byName).flatMap((site: Site): readonly Room[] => {
    const total = estate.siteTotals.get(site.name);
    const common = {
      layer: 'quota',
      subject: { kind: 'site', name: site.name },
      belonging: { team: undefined, site: site.name, labels: {} },
      place: site.place,
    } as const;
    const rooms: Room[] = [];
    if (site.quota.volumes !== undefined) {
      rooms.push(
        room({
          ...common,
          measure: 'volumes',
          capacity: BigInt(site.quota.volumes),
          taken: total?.volumes ?? 0n,
        }),
      );
    }
    if (site.quota.size !== undefined) {
      rooms.push(room({ ...common, measure: 'bytes', capacity: site.quota.size, taken: total?.size ?? 0n }));
    }
    return rooms;
  });
}

/** The attachment slots of a server, its own or those of its site; undefined where neither says. */
export const slotsOf = ({ site, attachmentSlots }: Server, settings: Settings): number | undefined =>
  attachmentSlots ?? (site === undefined ? undefined : settings.sites.get(site)?.attachmentSlots);

/** What attachment slots each server has left; the boot volume takes one. */
export const slotRooms = (estate: Estate, settings: Settings, servers: Iterable<Server>): readonly Room[] =>
  [...servers].flatMap((server): readonly Room[] => {
    const slots = slotsOf(server, settings);
    if (slots === undefined) return [];
    return [
      room({
        layer: 'attachment-slots',
        subject: { kind: 'server', name: server.name },
        belonging: server,
        place: server.place,
        measure: 'slots',
        capacity: BigInt(slots),
        taken: BigInt(estate.held.get(server.name)?.length ?? 0),
      }),
    ];
  });

/** What each volume group has left, in the bytes of the file systems it could still hold. */
export const groupRooms = (
  estate: Estate,
  groups: Iterable<VolumeGroup>,
  measured?: MeasuredCapacity,
): readonly Room[] => [...groups].map((group) => groupRoom(group, fillOf({ estate, group, measured })));

/**
 * One group's room: what its file systems take in whole extents, and what one more could have, after each member's
 * metadata and rounding, in the group's layout. Of a mirrored group one image is counted, without its metadata.
 */
export function groupRoom(group: VolumeGroup, { devices, left, surveyed }: GroupFill): Room {
  const taken = sumBytes(devices);
  return room({
    layer: 'volume-group',
    subject: { kind: 'volume-group', name: group.name },
    belonging: group,
    place: group.place,
    measure: 'bytes',
    capacity: taken + left,
    taken,
    ...(surveyed === undefined ? {} : { surveyed }),
  });
}

/** The share of the capacity that is free, as a fraction in tenths of a per mille for showing; 0 where there is none. */
export const freeShare = ({ capacity, free }: Room): number =>
  capacity === 0n ? 0 : Number((free * 10_000n) / capacity) / 10_000;
