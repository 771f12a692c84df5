/**
 * What surveys measure of an estate's capacity: of a volume group the extents that each member really gives it, of a file
 * system what it really keeps. It counts only while the survey agrees with what is declared for that thing: a group with
 * the declared members, of the declared sizes and all taken up, with the declared extent; a file system of the declared
 * type, on a device of the declared size, to whose end it has grown. The newest survey that shows a thing decides.
 */
import { smallestMember, usableExtents } from '../capacity/extents.ts';
import type { MeasuredCapacity, MeasuredFileSystem, MeasuredMember } from '../capacity/measured.ts';
import { isKnown, usableOf } from '../capacity/overhead.ts';
import type { Estate, FileSystem, Volume, VolumeGroup } from '../estate/estate.ts';
import { type Bytes, bytes, differenceOfBytes, noBytes, sumBytes } from '../estate/size.ts';
import type { Surveys } from './compare.ts';
import { declaredDevice, thereAs } from './compare-groups.ts';
import { deviceSize, isShort, partitioning, systemOnDisk, systemsByDisk } from './compare-volumes.ts';
import { disksUnder, matchServer, systemAt, volumesByShownId } from './match.ts';
import type { Survey, SurveyedDevice, SurveyedFileSystem } from './survey.ts';

/** A figure, or none where the survey shows the thing otherwise than it is declared. */
type Found<T> = ReadonlyMap<string, { readonly at: string; readonly figure: T | undefined }>;

interface OfServer {
  /** All of the estate that it was told from. */
  readonly from: readonly unknown[];
  readonly members: Found<MeasuredMember>;
  readonly systems: Found<MeasuredFileSystem>;
}

/** With what each survey tells by itself, to be carried on to an estate that shares most of it. */
export interface SurveyedCapacity extends MeasuredCapacity {
  readonly surveys: Surveys;
  readonly bySurvey: ReadonlyMap<Survey, OfServer>;
}

/** @param previous of an estate, and of surveys, which may share things with these */
export function capacityIn(
  estate: Estate,
  surveys: Surveys | undefined,
  previous?: SurveyedCapacity,
): SurveyedCapacity | undefined {
  if (surveys === undefined || surveys.servers.length === 0) return undefined;
  if (previous?.estate === estate && previous.surveys === surveys) return previous;
  const byId = volumesByShownId(estate, surveys.servers, surveys.provider);
  const bySurvey = new Map(
    surveys.servers.flatMap((survey): readonly (readonly [Survey, OfServer])[] => {
      if (!estate.servers.has(survey.server)) return [];
      const from = toldFrom(estate, survey, byId);
      const known = previous?.bySurvey.get(survey);
      const isSame =
        known?.from.length === from.length && known.from.every((each, index) => each === from[index]);
      return [[survey, isSame ? known : ofServer(estate, survey, byId, from)]];
    }),
  );
  const all = [...bySurvey.values()];
  return {
    estate,
    surveys,
    bySurvey,
    members: newest(all.map(({ members }) => members)),
    bySystem: newest(all.map(({ systems }) => systems)),
  };
}

/** Everything of the estate on which a survey's figures hang. */
function toldFrom(estate: Estate, survey: Survey, byId: ReadonlyMap<string, string>): readonly unknown[] {
  const { server, devices, groups } = survey;
  const held = (estate.held.get(server) ?? []).map(({ volume }) => volume);
  const shown = devices.flatMap(({ serial }) => byId.get(serial ?? '') ?? []);
  const named = groups.map(({ name }) => estate.groups.get(name));
  return [
    estate.servers.get(server),
    ...[...held, ...shown].flatMap((name) => [estate.volumes.get(name), estate.groupOf.get(name)]),
    ...named,
  ];
}

function newest<T>(found: readonly Found<T>[]): ReadonlyMap<string, T> {
  const latest = new Map<string, { readonly at: string; readonly figure: T | undefined }>();
  for (const each of found) {
    for (const [name, told] of each) {
      const known = latest.get(name);
      if (known === undefined || known.at < told.at) latest.set(name, told);
    }
  }
  return new Map(
    [...latest].flatMap(([name, { figure }]) => (figure === undefined ? [] : [[name, figure] as const])),
  );
}

function ofServer(
  estate: Estate,
  survey: Survey,
  byId: ReadonlyMap<string, string>,
  from: readonly unknown[],
): OfServer {
  const { at } = survey;
  const here = matchServer(estate, survey, byId).matched;
  const held = (estate.held.get(survey.server) ?? []).flatMap(
    ({ volume }) => estate.volumes.get(volume) ?? [],
  );
  const groups = new Set(held.flatMap(({ name }) => estate.groupOf.get(name) ?? []));
  const members = new Map<string, { at: string; figure: MeasuredMember | undefined }>();
  const systems = new Map<string, { at: string; figure: MeasuredFileSystem | undefined }>();
  const tell = (system: FileSystem, figure: MeasuredFileSystem | undefined): void => {
    systems.set(system.name, { at, figure });
  };
  for (const group of groups) {
    const lost = lostIn(estate, group, survey, here);
    for (const name of group.members) {
      const figure = lost?.get(name);
      members.set(name, { at, figure: figure === undefined ? undefined : { at, lost: figure } });
    }
    const there = thereAs(group, survey, here);
    for (const system of group.fileSystems) {
      const found = systemAt(survey, system.mount);
      const isHere = there !== undefined && found?.device.startsWith(`${there.name}/`) === true;
      const wanted = there === undefined ? noBytes : declaredDevice(group, system, there);
      tell(
        system,
        isHere && deviceSize(survey, found) === wanted
          ? measuredOn(system, found, survey, wanted, noBytes)
          : undefined,
      );
    }
  }
  const byDisk = systemsByDisk(survey);
  for (const volume of held) {
    const { fileSystem: system } = volume;
    if (system !== undefined) tell(system, onVolume(volume, system, survey, byDisk, here.get(volume.name)));
  }
  return { from, members, systems };
}

/** By member: in bytes, what the group has less of it than is estimated; undefined where the group is not as declared. */
function lostIn(
  estate: Estate,
  group: VolumeGroup,
  survey: Survey,
  here: ReadonlyMap<string, SurveyedDevice>,
): ReadonlyMap<string, bigint> | undefined {
  const there = thereAs(group, survey, here);
  if (there === undefined || survey.unseen.includes('volume-groups')) return undefined;
  if (there.missing > 0 || there.extent !== group.extent) return undefined;
  const names = new Map([...here].map(([name, disk]) => [disk, name]));
  const given = new Map<string, bigint>();
  for (const { device = '', deviceSize: size, firstExtent, extents } of there.members) {
    const [disk, ...more] = disksUnder(survey, device);
    const name = disk === undefined || more.length > 0 ? undefined : names.get(disk);
    if (disk === undefined || name === undefined || !group.members.includes(name)) return undefined;
    if (disk.size !== estate.volumes.get(name)?.size) return undefined;
    const lies = size ?? survey.deviceNamed.get(device)?.size ?? noBytes;
    const taken = BigInt(extents);
    const isWhole = device === disk.name || isPartitionToTheEnd(survey, device, disk);
    if (!isWhole || lies < smallestMember || lies > disk.size) return undefined;
    // What it has grown by and the group has not taken up is still to come; more than it has, nothing gives.
    const room = usableExtents(lies, group.extent, firstExtent);
    if (room > taken || taken * group.extent > lies) return undefined;
    given.set(name, (given.get(name) ?? 0n) + taken);
  }
  const all = [...given.values()].reduce((sum, each) => sum + each, 0n);
  if (given.size !== group.members.length || all !== BigInt(there.extents)) return undefined;
  return new Map(
    [...given].map(([name, extents]) => {
      const estimated = usableExtents(estate.volumes.get(name)?.size ?? noBytes, group.extent);
      return [name, (estimated - extents) * group.extent];
    }),
  );
}

/** Whether a device is a partition of a disk of which no more is to be had. */
function isPartitionToTheEnd(survey: Survey, device: string, disk: SurveyedDevice): boolean {
  const found = survey.deviceNamed.get(device);
  return (
    found?.type === 'part' &&
    found.on.includes(disk.name) &&
    disk.size - sumBytes(partitionsOf(survey, disk).map(({ size }) => size)) <= partitioning
  );
}

const partitionsOf = ({ devices }: Survey, { name }: SurveyedDevice): readonly SurveyedDevice[] =>
  devices.filter(({ type, on }) => type === 'part' && on.includes(name));

/** A volume's own file system, on the disk itself or in a partition of it. */
function onVolume(
  volume: Volume,
  system: FileSystem,
  survey: Survey,
  byDisk: ReturnType<typeof systemsByDisk>,
  disk: SurveyedDevice | undefined,
): MeasuredFileSystem | undefined {
  if (disk === undefined || disk.size !== volume.size) return undefined;
  const found = systemOnDisk(byDisk, disk.name, system);
  const size = found === undefined ? undefined : deviceSize(survey, found);
  if (found === undefined || size === undefined) return undefined;
  const isPart = survey.deviceNamed.get(found.device)?.type === 'part';
  const others = isPart ? partitionsOf(survey, disk).filter(({ name }) => name !== found.device) : [];
  const elsewhere = sumBytes(others.map((each) => each.size));
  // One that is declared as large as its volume has what other partitions leave it of that.
  const missing = system.size - size - (system.size === volume.size ? elsewhere : 0n);
  if (missing < 0n || missing > partitioning) return undefined;
  return measuredOn(system, found, survey, system.size, elsewhere);
}

function measuredOn(
  system: FileSystem,
  there: SurveyedFileSystem,
  survey: Survey,
  device: Bytes,
  elsewhere: Bytes,
): MeasuredFileSystem | undefined {
  if (there.type !== system.type || isShort(survey, there)) return undefined;
  const { reserved } = there;
  const common = { at: survey.at, system, reserved, elsewhere };
  if (there.usable !== undefined && there.used !== undefined && there.available !== undefined) {
    const fillable = sumBytes([there.used, there.available]);
    if (there.usable > device || fillable > there.usable) return undefined;
    return { ...common, shown: there.usable, fillable };
  }
  // Not mounted: its superblock tells all but what the running kernel keeps, which is as for any other of its size.
  if (there.size === undefined || there.metadata === undefined) return undefined;
  const space = usableOf(system, device);
  const running = isKnown(space) ? differenceOfBytes(space.own, space.shownAsUsed) : noBytes;
  const fillable = there.size - there.metadata - (reserved ?? 0n) - running;
  if (fillable < 0n || there.size > device) return undefined;
  return { ...common, shown: undefined, fillable: bytes(fillable) };
}
