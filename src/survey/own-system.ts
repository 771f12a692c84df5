/** The one file system of a disk that can be declared on its volume. */
import type { DeclaredThings, Volume } from '../estate/estate.ts';
import { disksUnder, isKnownType, systemAt } from './match.ts';
import type { Survey, SurveyedDevice, SurveyedFileSystem } from './survey.ts';

export interface OwnSystem {
  readonly mount: string;
  readonly type: string;
}

/** Where people see it: where it is mounted, or is to be. */
export const mountOf = ({ mounts, inFstab, type }: SurveyedFileSystem): string | undefined =>
  mounts[0] ?? inFstab ?? (type === 'swap' ? 'swap' : undefined);

/** A disk's own file system: of several on a boot volume its root, and of any other the largest. */
export function ownSystem(survey: Survey, disk: SurveyedDevice, boots: boolean): OwnSystem | undefined {
  const on = survey.fileSystems.filter((system) => {
    const [only, ...others] = disksUnder(survey, system.device);
    return only === disk && others.length === 0 && mountOf(system) !== undefined && isKnownType(system.type);
  });
  const sizeOf = ({ size, device }: SurveyedFileSystem): bigint =>
    size ?? survey.deviceNamed.get(device)?.size ?? 0n;
  const root = boots ? on.find((system) => mountOf(system) === '/') : undefined;
  const chosen = root ?? [...on].sort((a, b) => (sizeOf(a) < sizeOf(b) ? 1 : -1))[0];
  const mount = chosen === undefined ? undefined : mountOf(chosen);
  return chosen === undefined || mount === undefined || (chosen.type === 'swap' && !mount.startsWith('/'))
    ? undefined
    : { mount, type: chosen.type };
}

/**
 * As it is written on a volume that main has already: without the mark it would be made over what is there. A mount point
 * that is no plain word stays one in YAML.
 */
export const asWritten = ({ mount, type }: OwnSystem): string =>
  `file-system: { existing: true, mount: ${/^[A-Za-z0-9/._-]+$/.test(mount) ? mount : JSON.stringify(mount)}, type: ${type} }`;

/** By the declaration, or where the root lies on that disk alone: another member of its group is no boot volume. */
export function startsFrom(
  estate: DeclaredThings,
  survey: Survey,
  volume: string,
  disk: SurveyedDevice,
): boolean {
  const root = systemAt(survey, '/');
  const [under, ...others] = root === undefined ? [] : disksUnder(survey, root.device);
  return estate.servers.get(survey.server)?.boot === volume || (under === disk && others.length === 0);
}

/**
 * What is on volumes that are declared blank. A boot volume may be declared without what it starts from, and what lies
 * in a group belongs to that.
 *
 * @param here the declared volumes that are found there, each with its disk
 */
export function undeclaredSystems(
  estate: DeclaredThings,
  survey: Survey,
  here: ReadonlyMap<string, SurveyedDevice>,
): readonly { readonly volume: Volume; readonly system: OwnSystem }[] {
  const grouped = new Set(
    survey.groups.flatMap(({ members }) =>
      members.flatMap(({ device }) => (device === undefined ? [] : disksUnder(survey, device))),
    ),
  );
  return [...here].flatMap(([name, disk]) => {
    const volume = estate.volumes.get(name);
    const isBlank = volume?.fileSystem === undefined && !estate.groupOf.has(name);
    if (volume === undefined || !isBlank || grouped.has(disk)) return [];
    if (startsFrom(estate, survey, name, disk)) return [];
    const system = ownSystem(survey, disk, false);
    return system === undefined ? [] : [{ volume, system }];
  });
}
