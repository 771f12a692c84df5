/** Which volume is a member of which group: of one at the most, and then of nothing else. */
import { at } from '../base/problem.ts';
import { type Draft, isLater } from './draft.ts';
import type { Volume, VolumeGroup } from './estate.ts';

export function joinGroups(draft: Draft): void {
  const came = new Set(draft.coming.flatMap(({ groups }) => groups));
  for (const part of draft.coming) {
    for (const group of part.groups) {
      // A second declaration of the same name is a problem already, and claims no members.
      if (draft.groups.get(group.name) !== group) continue;
      for (const member of group.members) join(draft, group, member);
    }
    // A volume that comes with a file system of its own may be a member of a group that stayed.
    for (const volume of part.volumes) {
      const group = draft.groupOf.get(volume.name);
      if (group !== undefined && !came.has(group)) notBoth(draft, volume, group);
    }
  }
}

export function join(draft: Draft, group: VolumeGroup, member: string): void {
  const place = group.fields.of('members') ?? group.place;
  const volume = draft.volumes.get(member);
  if (volume === undefined) {
    const from = `the volume group ${group.name} has a member that is not declared: it`;
    draft.missing.push({ place, from, kind: 'volume', name: member });
    return;
  }
  const other = draft.groupOf.get(member);
  if (other !== undefined && other !== group) {
    const [first, second] = isLater(group.place, other.place) ? [other, group] : [group, other];
    draft.problems.push({
      place: second.fields.of('members') ?? second.place,
      message: `${member} is a member of two volume groups: ${second.name} and ${first.name} (${at(first.place)})`,
      advice: 'A volume belongs to one group; remove it from the other.',
    });
    return;
  }
  draft.groupOf.put(member, group);
  notBoth(draft, volume, group);
}

function notBoth(draft: Draft, volume: Volume, group: VolumeGroup): void {
  if (volume.fileSystem === undefined) return;
  draft.problems.push({
    place: volume.fileSystem.place,
    message: `${volume.name} has a file system of its own and is a member of the volume group ${group.name} (${at(group.place)})`,
    advice: 'A group uses the whole of each member; declare the file system in the group.',
  });
}
