/** A surveyed server's volume groups, their members and what lies in them, each held against its declaration. */
import { extentsFor, usableExtents } from '../capacity/extents.ts';
import type { DeclaredThings, FileSystem, VolumeGroup } from '../estate/estate.ts';
import { type Bytes, exactSize, showSize, timesBytes } from '../estate/size.ts';
import { compareSystem, deviceSize, type Here, partitioning } from './compare-volumes.ts';
import { type Difference, difference } from './difference.ts';
import { disksUnder, systemAt } from './match.ts';
import type { Survey, SurveyedFileSystem, SurveyedGroup } from './survey.ts';

export function compareGroups(estate: DeclaredThings, survey: Survey, here: Here): readonly Difference[] {
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
          about: 'guest',
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
          about: 'guest',
          subject: name === undefined ? subject : { kind: 'volume', name },
          message: `the partition of ${name ?? disk.name} in the volume group ${group.name} has ${showSize(device)} of ${showSize(disk.size)}`,
          meaning:
            spare > partitioning
              ? 'The partition has not grown.'
              : 'Other partitions take the rest: the group has that much less than the declared size gives it.',
        }),
      );
  }
  return [...differences, ...outsideOf(group, there, survey, here), ...compareLogical(group, there, survey)];
}

/** Declared members whose disk is on the server, and in the group it is not. */
function outsideOf(
  { name: group, members }: VolumeGroup,
  there: SurveyedGroup,
  survey: Survey,
  here: Here,
): readonly Difference[] {
  // A member whose device the volume manager does not name may be any of them.
  if (there.members.some(({ device }) => device === undefined)) return [];
  const within = new Set(there.members.flatMap(({ device = '' }) => disksUnder(survey, device)));
  return members.flatMap((name) => {
    const disk = here.get(name);
    return disk === undefined || within.has(disk)
      ? []
      : [
          difference({
            layer: 'physical volume',
            subject: { kind: 'volume', name },
            server: survey.server,
            message: `${name} is declared as a member of the volume group ${group}, and on ${survey.server} it is none`,
            meaning: 'The group has that much less than is declared.',
          }),
        ];
  });
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
