/**
 * Something that is smaller than main has it, and that a branch declares as surveys show it: the declaration is brought to
 * what is there, and nothing is done but to make sure of that. What is larger than declared is grown, since what lies on
 * it may still have to follow.
 */
import type { Estate, FileSystem, Subject, Volume, VolumeGroup } from '../estate/estate.ts';
import { type Bytes, bytes } from '../estate/size.ts';
import type { Change } from './change.ts';

/** What surveys show of two estates. */
export interface Shown {
  /** What is there already of a first estate, by `subjectKey`. */
  readonly there: ReadonlySet<string>;
  /** Whether whatever shows the size of something on main shows this one. */
  readonly hasSize: (subject: Subject, size: Bytes) => boolean;
}

export const nothingShown: Shown = { there: new Set(), hasSize: () => false };

/** The base with the sizes that are there, where a branch corrects them: what its steps start from. */
export function withCorrectedSizes(base: Estate, changes: readonly Change[]): Estate {
  const ofVolumes = new Map<string, Bytes>();
  const ofSystems = new Map<string, Bytes>();
  for (const change of changes) {
    if (change.kind === 'file-system-corrected') ofSystems.set(change.before.name, change.after.size);
    if (change.kind !== 'volume-corrected') continue;
    ofVolumes.set(change.before.name, change.after.size);
    // What fills its volume is as large as that.
    const { fileSystem } = change.before;
    if (fileSystem !== undefined && fileSystem.fields.of('size') === undefined)
      ofSystems.set(fileSystem.name, change.after.size);
  }
  if (ofVolumes.size === 0 && ofSystems.size === 0) return base;
  const system = (each: FileSystem): FileSystem => ({ ...each, size: ofSystems.get(each.name) ?? each.size });
  const volumes = new Map<string, Volume>(base.volumes);
  const siteTotals = new Map(base.siteTotals);
  for (const [name, size] of ofVolumes) {
    const volume = base.volumes.get(name);
    if (volume === undefined) continue;
    const { fileSystem } = volume;
    volumes.set(name, { ...volume, size, fileSystem: fileSystem && system(fileSystem) });
    const total = siteTotals.get(volume.site ?? '');
    if (total !== undefined)
      siteTotals.set(volume.site ?? '', { ...total, size: bytes(total.size + size - volume.size) });
  }
  const groups = new Map<string, VolumeGroup>(
    [...base.groups].map(([name, group]) => [name, { ...group, fileSystems: group.fileSystems.map(system) }]),
  );
  return {
    ...base,
    volumes,
    groups,
    siteTotals,
    fileSystems: new Map([...base.fileSystems].map(([name, each]) => [name, system(each)])),
    groupOf: new Map([...base.groupOf].map(([name, group]) => [name, groups.get(group.name) ?? group])),
  };
}
