/**
 * One account of capacity from what is bought to what is used: volumes, the group's extents, the file system's own
 * needs, its reserve, and what files take. Every byte bought stands in exactly one column.
 */
import type { Estate, FileSystem, Volume, VolumeGroup } from '../estate/estate.ts';
import { makerOf } from '../estate/made.ts';
import { addBytes, type Bytes, differenceOfBytes, noBytes, sumBytes } from '../estate/size.ts';
import { fillOf } from './group.ts';
import { isKnown, type UnknownSpace, type UsableSpace, usableOf } from './overhead.ts';
import { fillableBytes, type Reading } from './readings.ts';
import { isOfOneSize, type Usage } from './usage.ts';

/** What carries file systems: a group, or a volume by itself. */
export type Carrier = VolumeGroup | Volume;

/** What becomes of one file system's device. */
export type DeviceAccount =
  | {
      readonly kind: 'known';
      readonly system: FileSystem;
      readonly device: Bytes;
      /** Superblocks, inode tables, bitmaps, journal, and what the running system keeps for itself. */
      readonly overhead: Bytes;
      /** What only the superuser may fill. */
      readonly reserved: Bytes;
      readonly forFiles: Bytes;
      /** The tool whose formulas tell, or the time of the reading that shows. */
      readonly by: { readonly maker: string } | { readonly reading: string };
      readonly usage: Usage | undefined;
    }
  /** No documented formula or measured table says what it keeps; all of the device is under `device`. */
  | {
      readonly kind: 'unknown';
      readonly system: FileSystem;
      readonly device: Bytes;
      readonly why: string;
      readonly usage: Usage | undefined;
    };

export interface LayerAccount {
  readonly carrier: Carrier;
  readonly bought: Bytes;
  /** What the volume manager keeps: each member's metadata and rounding, copies, and what no stripe can reach. */
  readonly kept: Bytes;
  /** In whole extents, copies not counted; more than there is where file systems ask for too much. */
  readonly given: Bytes;
  /** Bought, and given to no file system. Below nothing where more is asked for than there is. */
  readonly notGiven: Bytes;
  readonly devices: readonly DeviceAccount[];
}

/** The account of every group, and of every volume that carries a file system by itself, in order of name. */
export function layersOf(
  estate: Estate,
  usage: ReadonlyMap<string, Usage> = new Map(),
): readonly LayerAccount[] {
  const groups = [...estate.groups.values()].map((group) => groupAccount(estate, group, usage));
  const volumes = [...estate.volumes.values()].flatMap((volume) =>
    volume.fileSystem === undefined ? [] : [volumeAccount(volume, volume.fileSystem, usage)],
  );
  const byName = (a: LayerAccount, b: LayerAccount): number => (a.carrier.name < b.carrier.name ? -1 : 1);
  return [...groups.sort(byName), ...volumes.sort(byName)];
}

function groupAccount(estate: Estate, group: VolumeGroup, usage: ReadonlyMap<string, Usage>): LayerAccount {
  const { bought, devices, left } = fillOf({ estate, group });
  const given = sumBytes(devices);
  return {
    carrier: group,
    bought,
    kept: differenceOfBytes(bought, addBytes(given, left)),
    given,
    notGiven: left,
    devices: group.fileSystems.map((system, index) =>
      deviceAccount(system, devices[index] ?? noBytes, usage),
    ),
  };
}

function volumeAccount(volume: Volume, system: FileSystem, usage: ReadonlyMap<string, Usage>): LayerAccount {
  return {
    carrier: volume,
    bought: volume.size,
    kept: noBytes,
    given: system.size,
    notGiven: differenceOfBytes(volume.size, system.size),
    devices: [deviceAccount(system, system.size, usage)],
  };
}

function deviceAccount(system: FileSystem, device: Bytes, usage: ReadonlyMap<string, Usage>): DeviceAccount {
  const use = usage.get(system.name);
  const space = usableOf(system, device);
  const shown = use === undefined ? undefined : shownBy(use.last, device, space);
  const common = { system, device, usage: use };
  if (shown !== undefined) return { kind: 'known', ...common, ...shown };
  if (!isKnown(space)) return { kind: 'unknown', ...common, why: space.unknown };
  return {
    kind: 'known',
    ...common,
    overhead: addBytes(differenceOfBytes(device, space.data), space.own),
    reserved: space.reserved,
    forFiles: space.available,
    by: { maker: makerOf(system.type) ?? system.type },
  };
}

/** What a reading shows of a file system, where it is of a device of this size: the real one counts. */
function shownBy(
  last: Reading,
  device: Bytes,
  space: UsableSpace | UnknownSpace,
): Pick<Extract<DeviceAccount, { kind: 'known' }>, 'overhead' | 'reserved' | 'forFiles' | 'by'> | undefined {
  const expected = isKnown(space) ? space.data : device;
  if (last.size > device || !isOfOneSize(expected, last.size)) return undefined;
  const own = isKnown(space) ? space.own : noBytes;
  const shownAsUsed = isKnown(space) ? space.shownAsUsed : noBytes;
  const kept = differenceOfBytes(last.size, fillableBytes(last));
  const reserved = differenceOfBytes(kept, differenceOfBytes(own, shownAsUsed));
  // Of a kind of reserve that the formulas do not know: all of what nobody may fill is under it.
  const known = reserved < 0n ? kept : reserved;
  const forFiles = differenceOfBytes(fillableBytes(last), shownAsUsed);
  if (known < 0n || forFiles < 0n) return undefined;
  return {
    overhead: differenceOfBytes(device, addBytes(known, forFiles)),
    reserved: known,
    forFiles,
    by: { reading: last.at },
  };
}
