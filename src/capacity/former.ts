/** What is known of file systems under the names that they had in another revision. */
import type { Estate, FileSystem, Volume, VolumeGroup } from '../estate/estate.ts';

/** Something known of file systems, by the names that one revision gives them. */
export interface KnownThen<T> {
  readonly estate: Estate;
  readonly bySystem: ReadonlyMap<string, T>;
}

/**
 * What is known of a file system as a revision declares it: also under the name that what it lies on had then, and under
 * another mount point if the file system only moved to it.
 */
export function asThen<T>(
  system: FileSystem,
  { groups, volumes }: Estate,
  { estate, bySystem }: KnownThen<T>,
): T | undefined {
  const own = bySystem.get(system.name);
  if (own !== undefined) return own;
  const { on, mount } = system;
  const isVolume = on.kind === 'volume';
  const carrier = isVolume ? volumes.get(on.name) : groups.get(on.name);
  const then = isVolume ? estate.volumes : estate.groups;
  const former = then.get(on.name) ?? then.get(carrier?.formerly ?? '');
  if (carrier === undefined || former === undefined) return undefined;
  const renamed = bySystem.get(`${former.name}:${mount}`);
  if (renamed !== undefined) return renamed;
  const [now, before] = [systemsOn(carrier), systemsOn(former)];
  const came = now.filter((each) => before.every((other) => other.mount !== each.mount));
  const [left, ...others] = before.filter((each) => now.every((other) => other.mount !== each.mount));
  const moved = came.length === 1 && came[0]?.mount === mount && others.length === 0;
  return moved && left?.type === system.type ? bySystem.get(left.name) : undefined;
}

const systemsOn = (carrier: Volume | VolumeGroup): readonly FileSystem[] =>
  carrier.kind === 'volume-group'
    ? carrier.fileSystems
    : carrier.fileSystem === undefined
      ? []
      : [carrier.fileSystem];
