/**
 * What has been measured of an estate's capacity, where that agrees with what one revision declares: it stands in for
 * what is estimated. Both sides of a comparison go by one and the same measurement, held against the base. What a branch
 * alters keeps what was measured: a member goes on losing to other things what it lost, and a file system goes on
 * keeping the share that it kept. An estimate in its place would be a change of source, told as one of the estate.
 */
import type { Estate, FileSystem, Volume } from '../estate/estate.ts';
import { type Bytes, bytes } from '../estate/size.ts';
import { usableExtents } from './extents.ts';
import { asThen } from './former.ts';

export interface MeasuredMember {
  /** RFC 3339, UTC. */
  readonly at: string;
  /** In bytes, what its group has less of it than is estimated; below nothing where it has more. */
  readonly lost: bigint;
}

export interface MeasuredFileSystem {
  /** RFC 3339, UTC. */
  readonly at: string;
  /** As it is declared where the measurement agrees with that. */
  readonly system: FileSystem;
  /** What `df` gives as its size; undefined where it was not mounted. */
  readonly shown: Bytes | undefined;
  /** What is used and available together, as `df` has them. */
  readonly fillable: Bytes;
  /** What only the superuser may fill, where its superblock was read. */
  readonly reserved: Bytes | undefined;
  /** What other partitions of its volume take. */
  readonly elsewhere: Bytes;
}

export interface MeasuredCapacity {
  /** What it was held against. */
  readonly estate: Estate;
  /** By volume: the members of groups that are there as they are declared. */
  readonly members: ReadonlyMap<string, MeasuredMember>;
  /** By the file system's name. */
  readonly bySystem: ReadonlyMap<string, MeasuredFileSystem>;
}

/** What was measured of a volume, under the name that it had where it was. */
export function measuredMember(
  { name, formerly }: Volume,
  measured: MeasuredCapacity | undefined,
): MeasuredMember | undefined {
  if (measured === undefined) return undefined;
  const { members, estate } = measured;
  return members.get(estate.volumes.has(name) ? name : (formerly ?? name));
}

/** The whole extents that a member gives its group: as estimated for its size, less what is measured to be lost. */
export function memberExtents(
  volume: Volume | undefined,
  extent: Bytes,
  measured: MeasuredCapacity | undefined,
): bigint {
  if (volume === undefined) return 0n;
  const estimated = usableExtents(volume.size, extent);
  const lost = measuredMember(volume, measured)?.lost ?? 0n;
  // A group made anew may have other extents; what is lost is lost in whole ones.
  const gone = lost > 0n ? (lost + extent - 1n) / extent : lost / extent;
  return estimated > gone ? estimated - gone : 0n;
}

/** What was measured of a file system; nothing of one that is made anew, of another type or otherwise. */
export function measuredSystem(
  system: FileSystem,
  estate: Estate,
  measured: MeasuredCapacity | undefined,
): MeasuredFileSystem | undefined {
  const found = measured === undefined ? undefined : asThen(system, estate, measured);
  if (found?.system.type !== system.type) return undefined;
  const [now, then] = [system.making, found.system.making];
  const isMadeAlike =
    now.reserve === then.reserve &&
    now.blockSize === then.blockSize &&
    now.inodeRatio === then.inodeRatio &&
    now.reverseMap === then.reverseMap;
  return isMadeAlike ? found : undefined;
}

/**
 * A part of a measured file system, at another size of it: the same share. What it keeps grows at most so, since its
 * journal and its first tables do not, so that this errs on the careful side of a growth.
 */
export const atSizeOf = (part: Bytes, measured: MeasuredFileSystem, system: FileSystem): Bytes =>
  bytes((part * system.size) / measured.system.size);
