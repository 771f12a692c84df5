/** What is filled into the commands of a step: names and figures as programs take them, where somebody knows them. */
import { perCent } from '../change/making.ts';
import type { FileSystem, Layout } from '../estate/estate.ts';
import { type Bytes, parseSize, unitBytes } from '../estate/size.ts';
import type { Fills } from './commands.ts';
import { devicePath, type ShownDisk } from './devices.ts';
import type { Wanted } from './draft.ts';
import { formerSystem } from './former.ts';
import { type Doing, serverMeant, siteMeant, takesPlace, volumeMeant } from './meant.ts';
import { inOrder } from './mounts.ts';
import { type Sides, systemsOn } from './sides.ts';
import { sorted } from './words.ts';

export interface Filled {
  readonly fills: Fills;
  /** The disks whose names are among them. */
  readonly shown: readonly ShownDisk[];
}

export function fillsOf(sides: Sides, doing: Doing): Filled {
  const { wanted } = doing;
  const { words, server, subject } = wanted;
  const shown = new Map<string, ShownDisk>();
  const disk = (volume: string): ShownDisk | undefined => {
    const found = server === undefined ? undefined : knownDisk(sides, doing, server, volume);
    if (found !== undefined) shown.set(volume, found);
    return found;
  };
  const system = systemOf(sides, wanted);
  const volume = words.volume ?? '';
  const at =
    system === undefined ? ofVolume(sides, wanted, volume, disk) : ofSystem(sides, wanted, system, disk);
  const group = words.group === undefined ? undefined : sides.head.groups.get(words.group);
  const members = subject.kind === 'volume-group' ? sorted(group?.members ?? []) : [];
  const { making } = system ?? {};
  return {
    fills: {
      ...words,
      ...sized('size', words.size),
      ...sized('extent', words.extent),
      server,
      'server-id': server === undefined ? undefined : serverMeant(sides, doing, server).id,
      'volume-id': volumeMeant(sides, doing, volume).id,
      site: words.site ?? siteMeant(sides, doing),
      ...layoutFills(group?.layout),
      'logical-volume': words.group === undefined ? undefined : `/dev/${words.group}/LOGICAL_VOLUME`,
      'block-size': making?.blockSize?.toString(),
      'inode-ratio': making?.inodeRatio?.toString(),
      'reverse-map': making?.reverseMap === undefined ? undefined : making.reverseMap ? '1' : '0',
      reserve: words.reserve ?? (making?.reserve === undefined ? undefined : perCent(making.reserve)),
      mounts: subject.kind === 'file-system' ? undefined : mountsOn(sides, wanted),
      devices: members.map((member) => {
        const found = disk(member);
        return found !== undefined && sides.devices.isBlank(found) ? devicePath(found.disk.name) : 'DEVICE';
      }),
      ...at,
    },
    shown: [...shown.values()],
  };
}

/**
 * A disk by the name it had when it was surveyed, where it still has that: on a server that has run since, and before
 * that is stopped, the disk is detached or another takes its place.
 */
function knownDisk(
  sides: Sides,
  { key, sequence }: Doing,
  server: string,
  volume: string,
): ShownDisk | undefined {
  if (!sides.runsBefore(server) || !sides.holdersBefore(volume).includes(server)) return undefined;
  const ends = [
    `stop ${server}`,
    `detach ${volume} ${server}`,
    ...(sides.madeAnew.has(volume) ? takesPlace(volume) : []),
  ].filter((each) => sequence.has(each));
  return ends.every((end) => end === key || sequence.isBefore(key, end))
    ? sides.devices.disk(sides.baseName('servers', server), sides.baseName('volumes', volume))
    : undefined;
}

type FindDisk = (volume: string) => ShownDisk | undefined;

function ofVolume(sides: Sides, { server, words }: Wanted, volume: string, disk: FindDisk): Fills {
  const found = disk(volume);
  if (found === undefined || server === undefined) return {};
  const only = sides.devices.onlySystem(found);
  const group = sides.groupBefore(volume);
  const member =
    group === undefined
      ? undefined
      : sides.devices.member(sides.baseName('servers', server), group.name, found.volume);
  const inGroup = group !== undefined && words.group === sides.headName('groups', group.name);
  return {
    device: inGroup
      ? member && devicePath(member)
      : words.group === undefined || sides.devices.isBlank(found)
        ? devicePath(found.disk.name)
        : undefined,
    'device-name': found.disk.name,
    'file-system-device': only && devicePath(only.device),
    mount: only?.mounts[0],
  };
}

function ofSystem(sides: Sides, wanted: Wanted, system: FileSystem, disk: FindDisk): Fills {
  const { on, mount } = system;
  const { server, words } = wanted;
  const group = words.group ?? on.name;
  const former = formerSystem(sides, wanted, mount);
  const there =
    server === undefined || former === undefined
      ? undefined
      : sides.devices.system(sides.baseName('servers', server), former);
  if (on.kind === 'volume-group') {
    // A logical volume keeps its name wherever its group goes.
    const logical = there?.split('/')[1];
    return {
      'logical-volume-name': logical,
      'logical-volume': `/dev/${group}/${logical ?? 'LOGICAL_VOLUME'}`,
      device: `/dev/${group}/${logical ?? 'LOGICAL_VOLUME'}`,
    };
  }
  const found = disk(on.name);
  if (found === undefined) return {};
  const blank = former === undefined && sides.devices.isBlank(found);
  return {
    device: there === undefined ? (blank ? devicePath(found.disk.name) : undefined) : devicePath(there),
  };
}

/** The file system that a step is about, as it is to be, or as it was where it goes. */
function systemOf(sides: Sides, wanted: Wanted): FileSystem | undefined {
  const { subject } = wanted;
  if (subject.kind !== 'file-system') return undefined;
  const mount = wanted.words.mount;
  return (
    sides.head.fileSystems.get(subject.name) ??
    (mount === undefined ? undefined : formerSystem(sides, wanted, mount))
  );
}

function mountsOn(sides: Sides, { subject }: Wanted): readonly string[] | undefined {
  const { kind, name } = subject;
  if (kind !== 'volume' && kind !== 'volume-group') return undefined;
  const carrier = sides.carrierBefore({ kind, name });
  return carrier === undefined
    ? undefined
    : inOrder(systemsOn(carrier)).flatMap(({ mount, type }) => (type === 'swap' ? [] : mount));
}

function layoutFills(layout: Layout | undefined): Fills {
  switch (layout?.kind) {
    case undefined:
      return {};
    case 'linear':
      return { 'layout-type': 'linear' };
    case 'striped':
      return { stripes: layout.stripes.toString() };
    case 'mirrored':
      return { mirrors: (layout.copies - 1).toString(), 'layout-type': 'raid1' };
  }
}

/** As the words have it, exactly: in the largest unit that it is a whole number of, in bytes, and in GiB. */
function sized(name: string, words: string | undefined): Fills {
  const size = words === undefined ? undefined : parseSize(words);
  if (typeof size !== 'bigint') return { [name]: undefined };
  return {
    [name]: toolSize(size),
    [`${name}-bytes`]: size.toString(),
    [`${name}-gib`]: size % unitBytes.GiB === 0n ? (size / unitBytes.GiB).toString() : undefined,
  };
}

/** `100G`: how the open-source volume manager, resize2fs and btrfs take a size, 1024-based. */
function toolSize(size: Bytes): string {
  for (const unit of ['TiB', 'GiB', 'MiB', 'KiB'] as const)
    if (size > 0n && size % unitBytes[unit] === 0n) return `${size / unitBytes[unit]}${unit.charAt(0)}`;
  return `${size}B`;
}
