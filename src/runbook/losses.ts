/**
 * What a step destroys, by name, size and server as main declares it, and by device and serial number where a survey
 * shows it. No procedure words this, and none can leave it out.
 */
import { listed } from '../base/wording.ts';
import type { FileSystem, Volume, VolumeGroup } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import { actionOf } from './actions.ts';
import { devicePath } from './devices.ts';
import type { Wanted } from './draft.ts';
import { formerSystem } from './former.ts';
import { inOrder } from './mounts.ts';
import type { Sides } from './sides.ts';
import { sorted } from './words.ts';

/** One caution, or none where nothing is destroyed. */
export function lossCautions(sides: Sides, wanted: Wanted): readonly string[] {
  const { destroys } = actionOf(wanted.procedure);
  const lost = destroys === undefined ? [] : lossesOf(sides, wanted, destroys);
  return lost.length === 0 ? [] : [`It destroys ${lost.join('; ')}.`];
}

function lossesOf(
  sides: Sides,
  wanted: Wanted,
  destroys: NonNullable<ReturnType<typeof actionOf>['destroys']>,
): readonly string[] {
  const { words, subject } = wanted;
  const group = sides.base.groups.get(sides.baseName('groups', words.group ?? ''));
  switch (destroys) {
    case 'volume':
      return volumesIn(sides, [words.volume ?? subject.name]);
    case 'volume-beneath':
      return volumesIn(sides, [words.on ?? subject.name]);
    case 'members': {
      const members = sides.head.groups.get(words.group ?? '')?.members ?? [];
      return volumesIn(sides, sorted(members));
    }
    case 'group':
      return group === undefined ? [] : [groupWords(sides, group)];
    case 'file-system': {
      const system = words.mount === undefined ? undefined : formerSystem(sides, wanted, words.mount);
      if (system === undefined) return [];
      const now = system.mount === words.mount ? '' : `${words.mount}, until now `;
      return [`${now}${systemWords(system)} on ${carrierWords(sides, system)}`];
    }
  }
}

/** Those of them that are there. */
const volumesIn = (sides: Sides, names: readonly string[]): readonly string[] =>
  names.flatMap((name) => {
    const volume = sides.base.volumes.get(sides.baseName('volumes', name));
    return volume === undefined ? [] : [volumeWords(sides, volume)];
  });

function volumeWords(sides: Sides, volume: Volume): string {
  const name = sides.headName('volumes', volume.name);
  const group = sides.base.groupOf.get(volume.name);
  const holds =
    volume.fileSystem === undefined
      ? group === undefined
        ? ''
        : `, a member of volume group ${sides.headName('groups', group.name)}`
      : `, with ${systemWords(volume.fileSystem)}`;
  return `volume ${name}, ${exactSize(volume.size)}${holds}, ${holdersWords(sides, name)}`;
}

/** `on plate-scanner (/dev/sdb, serial number vol-0b1c, by the survey of 2026-11-20)`. */
function holdersWords(sides: Sides, volume: string): string {
  const holders = sides.holdersBefore(volume);
  if (holders.length === 0) return 'attached to no server';
  const shown = holders.map((server) => {
    const found = sides.devices.disk(sides.baseName('servers', server), sides.baseName('volumes', volume));
    if (found === undefined) return server;
    const { disk, survey } = found;
    const serial = disk.serial === undefined ? '' : `, serial number ${disk.serial}`;
    return `${server} (${devicePath(disk.name)}${serial}, by the survey of ${survey.at.slice(0, 10)})`;
  });
  return `on ${listed(shown)}`;
}

const systemWords = ({ mount, type, size }: FileSystem): string => `${mount} (${type}, ${exactSize(size)})`;

function carrierWords(sides: Sides, { on }: FileSystem): string {
  if (on.kind === 'volume') return volumesIn(sides, [sides.headName('volumes', on.name)]).join('');
  const group = sides.base.groups.get(on.name);
  return group === undefined ? on.name : membersWords(sides, group);
}

const groupWords = (sides: Sides, group: VolumeGroup): string => {
  const systems = inOrder(group.fileSystems).map(systemWords);
  return `${systems.length === 0 ? '' : `${listed(systems)} on `}${membersWords(sides, group)}`;
};

const membersWords = (sides: Sides, { name, members }: VolumeGroup): string => {
  const each = sorted(members.map((member) => sides.headName('volumes', member))).map((member) => {
    const size = sides.base.volumes.get(sides.baseName('volumes', member))?.size;
    return `${member}, ${size === undefined ? '' : `${exactSize(size)}, `}${holdersWords(sides, member)}`;
  });
  return `volume group ${sides.headName('groups', name)} with ${each.length === 1 ? 'the member' : 'the members'} ${each.join('; ')}`;
};
