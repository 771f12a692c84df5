/** All that a survey shows on a disk, whether it can be declared or not: what is written over, or taken away, with it. */
import { reach } from '../base/reach.ts';
import type { DeclaredThings, FileSystem } from '../estate/estate.ts';
import { disksUnder } from './match.ts';
import { mountOf, ownSystem, startsFrom } from './own-system.ts';
import type { Survey, SurveyedDevice, SurveyedFileSystem } from './survey.ts';

type Content =
  | { readonly kind: 'file system'; readonly system: SurveyedFileSystem }
  | { readonly kind: 'volume group'; readonly name: string }
  /** A superblock of anything else, or a device that is made of it. */
  | { readonly kind: 'device'; readonly device: SurveyedDevice };

export function contentsOf(survey: Survey, disk: SurveyedDevice): readonly Content[] {
  const liesOn = (device: string): boolean => disksUnder(survey, device).includes(disk);
  const isOfGroup = (device: string): boolean =>
    survey.groups.some(({ name }) => device.startsWith(`${name}/`));
  const systems = survey.fileSystems.filter(({ device }) => !isOfGroup(device) && liesOn(device));
  const groups = survey.groups.filter(({ members }) =>
    members.some(({ device }) => device !== undefined && liesOn(device)),
  );
  // What a file system or a group lies on is encrypted, mirrored or partitioned for it, and nothing beside it.
  const told = new Set(
    [
      ...systems.map(({ device }) => device),
      ...groups.flatMap(({ members }) => members.flatMap(({ device }) => device ?? [])),
    ].flatMap((device) => beneath(survey, device)),
  );
  const others = survey.devices.filter(
    ({ name, type, content }) =>
      type !== 'lvm' && !told.has(name) && liesOn(name) && (content !== undefined || isMade(type)),
  );
  return [
    ...systems.map((system): Content => ({ kind: 'file system', system })),
    ...groups.map(({ name }): Content => ({ kind: 'volume group', name })),
    ...others.map((device): Content => ({ kind: 'device', device })),
  ];
}

/** A device, and all that it lies on. */
const beneath = (survey: Survey, name: string): readonly string[] => [
  name,
  ...reach((device) => survey.deviceNamed.get(device)?.on ?? [], name),
];

/** Encrypted, or of several: a partition alone holds nothing. */
const isMade = (type: string): boolean => type !== 'disk' && type !== 'part';

/**
 * In words, what a disk holds beside what its volume is declared with. Of what a server starts from nothing is said: no
 * boot loader or swap area has to be declared. Nor is a file system that is told as one to declare.
 */
export function undeclaredContents(
  estate: DeclaredThings,
  survey: Survey,
  volume: string,
  disk: SurveyedDevice,
): readonly string[] {
  if (startsFrom(estate, survey, volume, disk)) return [];
  const declared = estate.volumes.get(volume)?.fileSystem;
  const group = estate.groupOf.get(volume)?.name;
  const own = declared === undefined && group === undefined ? ownSystem(survey, disk, false) : undefined;
  const contents = contentsOf(survey, disk);
  const systems = contents.flatMap((each) => (each.kind === 'file system' ? each.system : []));
  const wordsOf = (content: Content): string | undefined => {
    switch (content.kind) {
      case 'file system': {
        const { system } = content;
        const isOwn = own !== undefined && own.type === system.type && own.mount === mountOf(system);
        return isOwn || (declared !== undefined && isDeclared(declared, system, systems))
          ? undefined
          : `${system.type === 'swap' ? 'swap space' : system.type} ${whereOf(system)} (${system.device})`;
      }
      case 'volume group':
        return content.name === group ? undefined : `a member of the volume group ${content.name}`;
      case 'device': {
        const { name, content: found, type } = content.device;
        const isOwn =
          (found === 'LVM2_member' && group !== undefined) ||
          (found === 'zfs_member' && declared?.type === 'zfs') ||
          (found !== undefined && found === declared?.type && systems.length === 0);
        return isOwn ? undefined : `${found ?? type} (${name})`;
      }
    }
  };
  return contents.flatMap((each) => wordsOf(each) ?? []);
}

/** At its mount point, or the only one there, of that type. */
const isDeclared = (
  { mount, type }: FileSystem,
  there: SurveyedFileSystem,
  all: readonly SurveyedFileSystem[],
): boolean =>
  there.mounts.includes(mount) ||
  (there.mounts.length === 0 && there.inFstab === mount) ||
  (all.length === 1 && there.type === type);

function whereOf({ mounts, inFstab, type }: SurveyedFileSystem): string {
  if (type === 'swap') return mounts.length > 0 || inFstab !== undefined ? 'in use' : 'not in use';
  const [mount] = mounts;
  if (mount !== undefined) return `mounted at ${mount}`;
  return inFstab === undefined ? 'not mounted' : `in fstab for ${inFstab}`;
}
