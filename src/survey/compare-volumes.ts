/** A surveyed server's volumes, and the file systems on them, each held against its declaration. */
import type { DeclaredThings, FileSystem } from '../estate/estate.ts';
import { type Bytes, exactSize, showSize, unitBytes } from '../estate/size.ts';
import { type Difference, difference } from './difference.ts';
import { disksUnder, type Matches } from './match.ts';
import type { Survey, SurveyedDevice, SurveyedFileSystem } from './survey.ts';

/** Volumes that are found on a server, each with its disk. */
export type Here = ReadonlyMap<string, SurveyedDevice>;

/**
 * A file system may end so much before its device: resize2fs and mkfs leave out a last block group, of 128 MiB with
 * blocks of 4 KiB (ext4(5)), that is too small to be of use; xfs leaves out less.
 */
const lastGroup = 128n * unitBytes.MiB;

/** A partition table, and what is aligned to whole mebibytes, take so much of a disk at most: common practice. */
export const partitioning = 4n * unitBytes.MiB;

/** @param here the volumes that are found there, each with its disk */
export function compareVolumes(
  estate: DeclaredThings,
  survey: Survey,
  here: Here,
  rows: Matches['rows'],
): readonly Difference[] {
  const { server } = survey;
  const held = (estate.held.get(server) ?? []).map(({ volume }) => volume);
  const byDisk = systemsByDisk(survey);
  return [...here].flatMap(([name, disk]): readonly Difference[] => {
    const volume = estate.volumes.get(name);
    if (volume === undefined) return [];
    const subject = { kind: 'volume', name } as const;
    const row = rows.get(name);
    const lags = row !== undefined && row.size > disk.size;
    return [
      ...(held.includes(name)
        ? []
        : [
            difference({
              layer: 'device',
              about: 'attachment',
              subject,
              server,
              message: `${name} is attached to ${server}, and not declared so`,
              declared:
                (estate.holders.get(name) ?? []).map(({ server: holder }) => holder).join(', ') ||
                'unattached',
              surveyed: server,
            }),
          ]),
      ...(disk.size === volume.size
        ? []
        : [
            difference({
              layer: 'device',
              about: lags && row.size === volume.size ? 'guest' : undefined,
              subject,
              server,
              message: `${name} is ${exactSize(disk.size)} on ${server} (${disk.name}), and declared ${exactSize(volume.size)}`,
              meaning: lags
                ? `It is ${exactSize(row.size)} at the provider: it has grown there, and the guest has not looked again.`
                : disk.size > volume.size
                  ? 'It is larger than declared: to grow it to less than it is would be a shrink. Declare what it is.'
                  : 'It is smaller than declared: it has not grown yet, or the guest has not looked again.',
              declared: exactSize(volume.size),
              surveyed: exactSize(disk.size),
            }),
          ]),
      ...(volume.fileSystem === undefined || !held.includes(name)
        ? []
        : compareSystem(volume.fileSystem, systemOnDisk(byDisk, disk.name, volume.fileSystem), survey)),
    ];
  });
}

/** The file systems that lie on one disk alone, by its name. */
export function systemsByDisk(survey: Survey): ReadonlyMap<string, readonly SurveyedFileSystem[]> {
  const byDisk = new Map<string, SurveyedFileSystem[]>();
  for (const system of survey.fileSystems) {
    const [only, ...more] = disksUnder(survey, system.device);
    if (only !== undefined && more.length === 0)
      byDisk.set(only.name, [...(byDisk.get(only.name) ?? []), system]);
  }
  return byDisk;
}

/** What a volume's own file system is: the one at its mount point, or the only one that lies on the disk. */
export function systemOnDisk(
  byDisk: ReturnType<typeof systemsByDisk>,
  disk: string,
  declared: FileSystem,
): SurveyedFileSystem | undefined {
  const all = byDisk.get(disk) ?? [];
  const [only, ...others] = all;
  return (
    all.find(({ mounts }) => mounts.includes(declared.mount)) ?? (others.length === 0 ? only : undefined)
  );
}

export function compareSystem(
  declared: FileSystem,
  there: SurveyedFileSystem | undefined,
  survey: Survey,
): readonly Difference[] {
  const { server, unseen } = survey;
  const subject = { kind: 'file-system', name: declared.name } as const;
  const tell = (told: Partial<Difference> & Pick<Difference, 'layer' | 'message'>): Difference =>
    difference({ subject, server, ...told });
  if (there === undefined) {
    // A pool is mounted by its name, and on no device that a survey shows.
    return unseen.includes('mounts') || unseen.includes('devices') || declared.type === 'zfs'
      ? []
      : [
          tell({
            layer: 'file system',
            kind: 'not there',
            message: `${declared.name} is declared, and ${server} shows no such file system`,
          }),
        ];
  }
  const device = deviceSize(survey, there);
  const [mount] = there.mounts;
  const mounts = unseen.includes('mounts') ? [] : mountDifferences(declared, there, survey);
  return [
    ...(there.type === declared.type
      ? []
      : [
          tell({
            layer: 'file system',
            message: `${declared.name} is ${there.type}, and declared ${declared.type}`,
            declared: declared.type,
            surveyed: there.type,
          }),
        ]),
    ...(isShort(survey, there) && device !== undefined && there.size !== undefined
      ? [
          tell({
            layer: 'file system',
            about: 'guest',
            message: `${declared.name} has ${showSize(there.size)}, and its device ${showSize(device)}`,
            meaning: 'The file system has not grown to the end of its device.',
            declared: exactSize(declared.size),
            surveyed: exactSize(there.size),
          }),
        ]
      : []),
    ...(mount === undefined || mount === declared.mount || declared.type === 'swap'
      ? []
      : [
          tell({
            layer: 'mount',
            message: `${declared.name} is mounted at ${mount} on ${server}`,
            declared: declared.mount,
            surveyed: mount,
          }),
        ]),
    ...mounts,
  ];
}

/** Whether a file system ends well before its device. */
export function isShort(survey: Survey, there: SurveyedFileSystem): boolean {
  const device = deviceSize(survey, there);
  return there.size !== undefined && device !== undefined && device - there.size > lastGroup;
}

function mountDifferences(
  declared: FileSystem,
  { mounts, inFstab }: SurveyedFileSystem,
  { server, unseen }: Survey,
): readonly Difference[] {
  const subject = { kind: 'file-system', name: declared.name } as const;
  // A root is mounted by what starts the guest, whatever fstab says.
  if (unseen.includes('fstab') || declared.mount === '/') return [];
  if (mounts.length > 0 && inFstab === undefined)
    return [
      difference({
        layer: 'mount',
        about: 'guest',
        subject,
        server,
        message: `${declared.name} is in use on ${server}, and not in its fstab`,
        meaning: 'After the next start it is not mounted.',
      }),
    ];
  if (mounts.length === 0 && inFstab !== undefined)
    return [
      difference({
        layer: 'mount',
        about: 'guest',
        subject,
        server,
        message: `${declared.name} is in the fstab of ${server}, and not mounted`,
        meaning: 'Whatever is written beneath it now goes to the file system above.',
      }),
    ];
  return [];
}

/** The size of the device that a file system lies on. */
export function deviceSize(
  survey: Survey,
  { device }: Pick<SurveyedFileSystem, 'device'>,
): Bytes | undefined {
  const [group = '', ...rest] = device.split('/');
  const logical = survey.groups
    .find(({ name }) => name === group)
    ?.logicalVolumes.find(({ name }) => name === rest.join('/'));
  return logical?.size ?? survey.deviceNamed.get(device)?.size;
}
