/**
 * What a volume group holds: its file systems one by one, as the volume manager places them, and what is left for
 * one more.
 */
import { baseName, type Renames } from '../change/renames.ts';
import type { Estate, FileSystem, VolumeGroup } from '../estate/estate.ts';
import { type Bytes, bytes, noBytes, sumBytes, timesBytes } from '../estate/size.ts';
import { extentsFor, membersWanted, usableExtents } from './extents.ts';
import { type MeasuredCapacity, measuredMember, memberExtents } from './measured.ts';
import { type FilledGroup, fillGroup, type Placement, type Wanted } from './placement.ts';

export interface GroupFill {
  /** What the members come to before anything is taken for metadata. */
  readonly bought: Bytes;
  /** The device of each file system, in the order of the file: whole extents, in whole rows where it is striped. */
  readonly devices: readonly Bytes[];
  /** The device of the largest file system that could be made besides. Below nothing: what the present ones lack. */
  readonly left: Bytes;
  /** When its members' extents were surveyed; undefined where they are estimated. */
  readonly surveyed: string | undefined;
}

/** A group as one revision declares it. */
export interface GroupAt {
  readonly estate: Estate;
  readonly group: VolumeGroup;
  /** What stands in for estimates, on both sides of a comparison alike. */
  readonly measured?: MeasuredCapacity | undefined;
}

/**
 * The group with its file systems made one after another, in the order of the file. Where they lie in truth nothing
 * declares; of a striped or mirrored group this is one way in which they may have come about.
 */
export function fillOf(at: GroupAt): GroupFill {
  const { group } = at;
  const extents = extentsIn(at, group.members);
  // Laid end to end, file systems fit whenever their extents do; there is no need to place them.
  if (group.layout.kind === 'linear') {
    const wanted = sumOf(group.fileSystems.map(({ size }) => extentsFor(size, group.extent)));
    return filled(at, sumOf(extents) - wanted);
  }
  return filled(at, leftIn(group, placedAnew(group, extents)));
}

/**
 * The group with what the base has kept where it lies: its volumes grow from there, and new ones come after.
 * `undefined` where that cannot be told: the group is laid out anew, or loses a member or part of one.
 *
 * @param moved where the base mounts file systems that the head mounts elsewhere, by their names on the head
 */
export function fillFrom(
  base: GroupAt,
  head: GroupAt,
  renames: Renames,
  moved: ReadonlyMap<string, string>,
): GroupFill | undefined {
  const { group: before } = base;
  const { group: after } = head;
  const sameLayout =
    before.extent === after.extent &&
    before.layout.kind === after.layout.kind &&
    membersWanted(before.layout) === membersWanted(after.layout);
  if (!sameLayout) return undefined;
  const oldNames = before.members;
  const nowNamed = new Map(after.members.map((name) => [baseName(renames.volumes, name), name]));
  const order = [
    ...oldNames.map((name) => nowNamed.get(name)),
    ...after.members.filter((name) => !oldNames.includes(baseName(renames.volumes, name))),
  ];
  const sizes = order.map((name) => (name === undefined ? noBytes : sizeOf(head.estate, name)));
  const oldSizes = oldNames.map((name) => sizeOf(base.estate, name));
  if (oldSizes.some((size, index) => (sizes[index] ?? noBytes) < size)) return undefined;
  const lying = placedAnew(before, extentsIn(base, oldNames));
  // A base that asks for too much was never carried out as it stands.
  if (lying.missing > 0n) return undefined;
  const { missing, left } = fillGroup(
    extentsIn(head, order),
    after.layout,
    after.fileSystems.map((system): Wanted => {
      const mount = moved.get(system.name) ?? system.mount;
      return { ...wantedOf(after, system), lies: lying.placed.get(mount) };
    }),
  );
  return filled(head, leftIn(after, { placed: new Map<string, Placement>(), missing, left }));
}

/** Whether members of these sizes, no others, could hold all that a group holds, in its layout. */
export const couldHold = (group: VolumeGroup, sizes: readonly Bytes[]): boolean =>
  placedAnew(
    group,
    sizes.map((size) => usableExtents(size, group.extent)),
  ).missing === 0n;

const placedAnew = (group: VolumeGroup, extents: readonly bigint[]): FilledGroup =>
  fillGroup(
    extents,
    group.layout,
    group.fileSystems.map((system) => wantedOf(group, system)),
  );

const wantedOf = ({ extent, layout }: VolumeGroup, { mount, size }: FileSystem): Wanted => ({
  name: mount,
  extents: layout.kind === 'mirrored' ? extentsFor(size, extent) : extentsFor(size, extent, layout),
});

/** In extents of one image; below nothing what is missing. */
function leftIn({ layout }: VolumeGroup, { missing, left }: FilledGroup): bigint {
  if (missing === 0n) return left;
  return layout.kind === 'mirrored' ? -missing / BigInt(layout.copies) : -missing;
}

const filled = ({ estate, group, measured }: GroupAt, left: bigint): GroupFill => ({
  bought: sumBytes(group.members.map((name) => sizeOf(estate, name))),
  devices: group.fileSystems.map((system) => timesBytes(group.extent, wantedOf(group, system).extents)),
  left: bytes(left * group.extent),
  surveyed: surveyedAt(estate, group, measured),
});

/** The extents that each member gives the group; a place that no member has any more gives none. */
const extentsIn = (
  { estate, group, measured }: GroupAt,
  members: readonly (string | undefined)[],
): readonly bigint[] =>
  members.map((name) => memberExtents(estate.volumes.get(name ?? ''), group.extent, measured));

/** When the oldest of its members' surveys was taken. */
const surveyedAt = (
  { volumes }: Estate,
  { members }: VolumeGroup,
  measured: MeasuredCapacity | undefined,
): string | undefined =>
  measured === undefined
    ? undefined
    : members
        .flatMap((name) => {
          const volume = volumes.get(name);
          return (volume === undefined ? undefined : measuredMember(volume, measured)?.at) ?? [];
        })
        .sort()[0];

const sizeOf = (estate: Estate, volume: string): Bytes => estate.volumes.get(volume)?.size ?? noBytes;

const sumOf = (amounts: readonly bigint[]): bigint => amounts.reduce((sum, each) => sum + each, 0n);
