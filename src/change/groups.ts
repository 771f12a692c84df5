/** What changed about volume groups. */
import type { Estate, Layout, VolumeGroup } from '../estate/estate.ts';
import type { Adoption } from './adoption.ts';
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

/** What a group may take in that was there before. */
interface ThereBefore {
  readonly head: Estate;
  readonly formerVolumes: FormerVolumes;
  readonly adoption: Adoption;
}

export function groupChanges(
  { before, after }: Pair<VolumeGroup>,
  renames: Renames,
  { head, formerVolumes, adoption }: ThereBefore,
): readonly Change[] {
  if (before === undefined) {
    if (after === undefined) return [];
    const where = { after, subject: subjectOf(after), place: placed(after, 'head') };
    // The volume manager writes over whatever is on a volume it takes in, unless the group lies there already.
    return adoption.adopts(after)
      ? [{ kind: 'group-adopted', ...where }]
      : [{ kind: 'group-created', wipes: formerVolumes(after.members), ...where }];
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
    const where = { volume, after, subject, place: placed(after, 'head', 'members') };
    const now = head.volumes.get(volume);
    // A volume that nobody declared before is taken for the member that it may be; one that main has is none yet.
    changes.push(
      now !== undefined && adoption.adopts(now)
        ? { kind: 'member-adopted', ...where }
        : { kind: 'member-joined', wipes: formerVolumes([volume]), ...where },
    );
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
