/**
 * One account of capacity from what is bought to what is used: volumes, the group's extents, the file system's own
 * needs, its reserve, and what files take. Every byte bought stands in exactly one column.
 */
import type { Estate, FileSystem, Volume, VolumeGroup } from '../estate/estate.ts';
import { makerOf } from '../estate/made.ts';
import { addBytes, type Bytes, differenceOfBytes, noBytes, sumBytes } from '../estate/size.ts';
import { fillOf } from './group.ts';
import type { MeasuredCapacity, MeasuredFileSystem } from './measured.ts';
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
      /** The tool whose formulas tell, or the time of the reading or of the survey that shows. */
      readonly by: { readonly maker: string } | { readonly reading: string } | { readonly survey: string };
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
  /** When a group's extents were surveyed; undefined where they are estimated. */
  readonly surveyed: string | undefined;
}

interface Known {
  readonly usage: ReadonlyMap<string, Usage>;
  readonly measured: MeasuredCapacity | undefined;
}

/** The account of every group, and of every volume that carries a file system by itself, in order of name. @param measured of this estate */
export function layersOf(
  estate: Estate,
  usage: ReadonlyMap<string, Usage> = new Map(),
  measured?: MeasuredCapacity,
): readonly LayerAccount[] {
  const known: Known = { usage, measured };
  const groups = [...estate.groups.values()].map((group) => groupAccount(estate, group, known));
  const volumes = [...estate.volumes.values()].flatMap((volume) =>
    volume.fileSystem === undefined ? [] : [volumeAccount(volume, volume.fileSystem, known)],
  );
  const byName = (a: LayerAccount, b: LayerAccount): number => (a.carrier.name < b.carrier.name ? -1 : 1);
  return [...groups.sort(byName), ...volumes.sort(byName)];
}

function groupAccount(estate: Estate, group: VolumeGroup, known: Known): LayerAccount {
  const { bought, devices, left, surveyed } = fillOf({ estate, group, measured: known.measured });
  const given = sumBytes(devices);
  return {
    carrier: group,
    bought,
    kept: differenceOfBytes(bought, addBytes(given, left)),
    given,
    notGiven: left,
    devices: group.fileSystems.map((system, index) =>
      deviceAccount(system, devices[index] ?? noBytes, known),
    ),
    surveyed,
  };
}

function volumeAccount(volume: Volume, system: FileSystem, known: Known): LayerAccount {
  return {
    carrier: volume,
    bought: volume.size,
    kept: noBytes,
    given: system.size,
    notGiven: differenceOfBytes(volume.size, system.size),
    devices: [deviceAccount(system, system.size, known)],
    surveyed: undefined,
  };
}

function deviceAccount(system: FileSystem, device: Bytes, { usage, measured }: Known): DeviceAccount {
  const use = usage.get(system.name);
  const space = usableOf(system, device);
  const surveyed = measured?.bySystem.get(system.name);
  const isOlder = use !== undefined && surveyed !== undefined && surveyed.at < use.last.at;
  const read = use === undefined ? undefined : shownBy(use.last, device, space);
  const shown =
    isOlder && read !== undefined
      ? read
      : surveyed === undefined
        ? read
        : (surveyedTo(surveyed, device, space) ?? read);
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

type Shown = Pick<Extract<DeviceAccount, { kind: 'known' }>, 'overhead' | 'reserved' | 'forFiles' | 'by'>;

/** What a reading shows of a file system, where it is of a device of this size: the real one counts. */
function shownBy(last: Reading, device: Bytes, space: UsableSpace | UnknownSpace): Shown | undefined {
  const expected = isKnown(space) ? space.data : device;
  if (last.size > device || !isOfOneSize(expected, last.size)) return undefined;
  return partsOf({ shown: last.size, fillable: fillableBytes(last) }, device, space, { reading: last.at });
}

/** What a survey shows, which agrees with the declared size: however the file system was made, that counts. */
const surveyedTo = (
  { at, shown, fillable, reserved }: MeasuredFileSystem,
  device: Bytes,
  space: UsableSpace | UnknownSpace,
): Shown | undefined => partsOf({ shown, fillable, reserved }, device, space, { survey: at });

function partsOf(
  {
    shown,
    fillable,
    reserved: told,
  }: {
    readonly shown: Bytes | undefined;
    readonly fillable: Bytes;
    readonly reserved?: Bytes | undefined;
  },
  device: Bytes,
  space: UsableSpace | UnknownSpace,
  by: Shown['by'],
): Shown | undefined {
  const own = isKnown(space) ? space.own : noBytes;
  const shownAsUsed = isKnown(space) ? space.shownAsUsed : noBytes;
  const kept = shown === undefined ? noBytes : differenceOfBytes(shown, fillable);
  const reserved = told ?? differenceOfBytes(kept, differenceOfBytes(own, shownAsUsed));
  // Of a kind of reserve that the formulas do not know: all of what nobody may fill is under it.
  const known = reserved < 0n ? kept : reserved;
  const forFiles = differenceOfBytes(fillable, shownAsUsed);
  const overhead = differenceOfBytes(device, addBytes(known, forFiles));
  if (known < 0n || forFiles < 0n || overhead < 0n) return undefined;
  return { overhead, reserved: known, forFiles, by };
}
