/** A surveyed server's volumes, groups and file systems, each held against its declaration, layer by layer. */
import { extentsFor, usableExtents } from '../capacity/extents.ts';
import type { Estate, FileSystem, VolumeGroup } from '../estate/estate.ts';
import { type Bytes, exactSize, showSize, timesBytes, unitBytes } from '../estate/size.ts';
import { type Difference, difference } from './difference.ts';
import { disksUnder, type Matches, systemAt } from './match.ts';
import type { Survey, SurveyedDevice, SurveyedFileSystem, SurveyedGroup } from './survey.ts';

/** Volumes that are found on a server, each with its disk. */
type Here = ReadonlyMap<string, SurveyedDevice>;

/**
 * A file system may end so much before its device: resize2fs and mkfs leave out a last block group, of 128 MiB with
 * blocks of 4 KiB (ext4(5)), that is too small to be of use; xfs leaves out less.
 */
const lastGroup = 128n * unitBytes.MiB;

/** A partition table, and what is aligned to whole mebibytes, take so much of a disk at most: common practice. */
export const partitioning = 4n * unitBytes.MiB;

/** @param here the volumes that are found there, each with its disk */
export function compareVolumes(
  estate: Estate,
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

function compareSystem(
  declared: FileSystem,
  there: SurveyedFileSystem | undefined,
  survey: Survey,
): readonly Difference[] {
  const { server, unseen } = survey;
  const subject = { kind: 'file-system', name: declared.name } as const;
  const tell = (told: Partial<Difference> & Pick<Difference, 'layer' | 'message'>): Difference =>
    difference({ subject, server, ...told });
  if (there === undefined) {
    return unseen.includes('mounts') || unseen.includes('devices')
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

export function compareGroups(estate: Estate, survey: Survey, here: Here): readonly Difference[] {
  if (survey.unseen.includes('volume-groups')) return [];
  const held = estate.held.get(survey.server) ?? [];
  const declared = [...new Set(held.flatMap(({ volume }) => estate.groupOf.get(volume) ?? []))];
  return [
    ...declared.flatMap((group) => {
      const there = thereAs(group, survey, here);
      return there === undefined
        ? [
            difference({
              layer: 'volume group',
              kind: 'not there',
              subject: { kind: 'volume-group', name: group.name },
              server: survey.server,
              message: `volume group ${group.name} is declared, and ${survey.server} shows none of that name`,
            }),
          ]
        : compareGroup(group, there, survey, here);
    }),
    ...survey.groups
      .filter((there) => !declared.some((group) => thereAs(group, survey, here) === there))
      .map(({ name }) =>
        difference({
          layer: 'volume group',
          kind: 'not declared',
          subject: { kind: 'volume-group', name },
          server: survey.server,
          message: `volume group ${name} is on ${survey.server}, and not declared there`,
        }),
      ),
  ];
}

/**
 * What a declared group is on a server: the one on the disks of its members, whatever it is called there, for two servers
 * may each have a group of one name; of its own name otherwise.
 */
export function thereAs(group: VolumeGroup, survey: Survey, here: Here): SurveyedGroup | undefined {
  const disks = group.members.flatMap((member) => here.get(member) ?? []);
  const on = survey.groups.find(({ members }) =>
    members.some(
      ({ device }) => device !== undefined && disksUnder(survey, device).some((disk) => disks.includes(disk)),
    ),
  );
  return on ?? survey.groups.find(({ name }) => name === group.name);
}

function compareGroup(
  group: VolumeGroup,
  there: SurveyedGroup,
  survey: Survey,
  here: Here,
): readonly Difference[] {
  const { server } = survey;
  const subject = { kind: 'volume-group', name: group.name } as const;
  const tell = (told: Partial<Difference> & Pick<Difference, 'layer' | 'message'>): Difference =>
    difference({ subject, server, ...told });
  const differences: Difference[] = [];
  if (there.missing > 0)
    differences.push(
      tell({
        layer: 'volume group',
        message: `volume group ${group.name} has lost ${there.missing} of its members`,
        meaning: 'Nothing is to be changed in it before they are back.',
      }),
    );
  if (there.extent !== group.extent)
    differences.push(
      tell({
        layer: 'volume group',
        message: `volume group ${group.name} has extents of ${exactSize(there.extent)}, and is declared with ${exactSize(group.extent)}`,
        declared: exactSize(group.extent),
        surveyed: exactSize(there.extent),
      }),
    );
  for (const member of there.members) {
    const [disk, ...more] = member.device === undefined ? [] : disksUnder(survey, member.device);
    const name = disk === undefined ? undefined : [...here].find(([, each]) => each === disk)?.[0];
    if (disk === undefined || more.length > 0) continue;
    if (name !== undefined && !group.members.includes(name))
      differences.push(
        tell({
          layer: 'physical volume',
          message: `${name} is a member of the volume group ${group.name} on ${server}, and not declared so`,
        }),
      );
    const device = member.deviceSize ?? disk.size;
    const wanted = usableExtents(device, there.extent, member.firstExtent);
    if (wanted > BigInt(member.extents))
      differences.push(
        tell({
          layer: 'physical volume',
          subject: name === undefined ? subject : { kind: 'volume', name },
          message: `${name ?? disk.name} gives the volume group ${group.name} ${member.extents} extents of ${exactSize(there.extent)}, and has room for ${wanted}`,
          meaning: 'The group has not taken up what the member has grown by.',
          declared: `${wanted}`,
          surveyed: `${member.extents}`,
        }),
      );
    // A member in a partition is as large as that.
    const parts = survey.devices.filter(({ type, on }) => type === 'part' && on.includes(disk.name));
    const spare = disk.size - parts.reduce((sum, { size }) => sum + size, 0n);
    if (disk.size - device > partitioning && member.device !== disk.name)
      differences.push(
        tell({
          layer: 'physical volume',
          subject: name === undefined ? subject : { kind: 'volume', name },
          message: `the partition of ${name ?? disk.name} in the volume group ${group.name} has ${showSize(device)} of ${showSize(disk.size)}`,
          meaning:
            spare > partitioning
              ? 'The partition has not grown.'
              : 'Other partitions take the rest: the group has that much less than the declared size gives it.',
        }),
      );
  }
  return [...differences, ...compareLogical(group, there, survey)];
}

/** The logical volume of a declared file system: in whole rows where it is striped; what is mirrored is counted once. */
export function declaredDevice(
  { layout }: VolumeGroup,
  { size }: FileSystem,
  { extent }: Pick<SurveyedGroup, 'extent'>,
): Bytes {
  const rows = layout.kind === 'striped' ? layout : undefined;
  return timesBytes(extent, extentsFor(size, extent, rows));
}

function compareLogical(group: VolumeGroup, there: SurveyedGroup, survey: Survey): readonly Difference[] {
  const { server } = survey;
  const found = new Set<string>();
  const lying = survey.fileSystems.filter(({ device }) => device.startsWith(`${there.name}/`));
  const systemInGroup = (declared: FileSystem, size: bigint): SurveyedFileSystem | undefined => {
    if (declared.type !== 'swap') return lying.find((system) => system === systemAt(survey, declared.mount));
    // Swap areas hold nothing that tells them apart: any of the right size will do.
    const swaps = lying.filter(
      ({ type, device }) => type === 'swap' && !found.has(device.slice(there.name.length + 1)),
    );
    return swaps.find((system) => deviceSize(survey, system) === size) ?? swaps[0];
  };
  const differences = group.fileSystems.flatMap((declared): readonly Difference[] => {
    const wanted = declaredDevice(group, declared, there);
    const system = systemInGroup(declared, wanted);
    const logical = there.logicalVolumes.find(({ name }) => system?.device === `${there.name}/${name}`);
    if (logical === undefined) return compareSystem(declared, undefined, survey);
    found.add(logical.name);
    return [
      ...(logical.size === wanted
        ? []
        : [
            difference({
              layer: 'logical volume',
              subject: { kind: 'file-system', name: declared.name },
              server,
              message: `the logical volume of ${declared.name} is ${exactSize(logical.size)}, and declared ${exactSize(declared.size)}`,
              meaning:
                logical.size > wanted
                  ? 'It is larger than declared: to extend it to less than it is would be a shrink.'
                  : 'It has not been extended yet.',
              declared: exactSize(declared.size),
              surveyed: exactSize(logical.size),
            }),
          ]),
      ...compareSystem(declared, system, survey),
    ];
  });
  const others = there.logicalVolumes.filter(({ name }) => !found.has(name));
  return [
    ...differences,
    ...others.map(({ name, size }) =>
      difference({
        layer: 'logical volume',
        kind: 'not declared',
        subject: { kind: 'volume-group', name: group.name },
        server,
        message: `the logical volume ${name} (${exactSize(size)}) is in the volume group ${group.name}, and nothing declared lies on it`,
        surveyed: exactSize(size),
      }),
    ),
  ];
}
