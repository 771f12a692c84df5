/** What changed about volume groups. */
import type { Layout, VolumeGroup } from '../estate/estate.ts';
import type { Change } from './change.ts';
import { type FormerVolumes, type Pair, sameLabels, subjectOf } from './pairs.ts';
import { placed } from './place.ts';
import { headName, type Renames } from './renames.ts';

const layoutText = (layout: Layout): string => {
  switch (layout.kind) {
    case 'linear':
      return 'linear';
    case 'striped':
      return `striped ${layout.stripes}`;
    case 'mirrored':
      return `mirrored ${layout.copies}`;
  }
};

export function groupChanges(
  { before, after }: Pair<VolumeGroup>,
  renames: Renames,
  formerVolumes: FormerVolumes,
): readonly Change[] {
  if (before === undefined) {
    if (after === undefined) return [];
    // The volume manager writes over whatever is on a volume it takes in, unless the group lies there already.
    const wipes = after.existing ? [] : formerVolumes(after.members);
    return [{ kind: 'group-created', wipes, after, subject: subjectOf(after), place: placed(after, 'head') }];
  }
  if (after === undefined) {
    return [{ kind: 'group-deleted', before, subject: subjectOf(before), place: placed(before, 'base') }];
  }
  const subject = subjectOf(after);
  const both = { before, after, subject };
  const changes: Change[] = [];
  if (before.name !== after.name)
    changes.push({ kind: 'group-renamed', ...both, place: placed(after, 'head', 'formerly') });
  const membersBefore = new Set(before.members.map((member) => headName(renames.volumes, member)));
  const membersAfter = new Set(after.members);
  for (const volume of [...membersBefore].sort()) {
    if (!membersAfter.has(volume))
      changes.push({ kind: 'member-left', volume, ...both, place: placed(after, 'head', 'members') });
  }
  for (const volume of [...membersAfter].sort()) {
    if (membersBefore.has(volume)) continue;
    // That a group lies there already says nothing of a volume that comes to it now.
    const wipes = formerVolumes([volume]);
    changes.push({
      kind: 'member-joined',
      volume,
      wipes,
      after,
      subject,
      place: placed(after, 'head', 'members'),
    });
  }
  if (before.extent !== after.extent || layoutText(before.layout) !== layoutText(after.layout)) {
    changes.push({
      kind: 'group-edited',
      ...both,
      place: placed(after, 'head', before.extent === after.extent ? 'layout' : 'extent'),
    });
  } else if (before.team !== after.team || !sameLabels(before.labels, after.labels)) {
    changes.push({ kind: 'group-edited', ...both, place: placed(after, 'head') });
  }
  return changes;
}
