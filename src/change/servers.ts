/** What changed about servers. */
import type { Server } from '../estate/estate.ts';
import type { Adoption } from './adoption.ts';
import type { Change } from './change.ts';
import { isAnotherById, isMove, isToldSite, type Pair, sameLabels, subjectOf } from './pairs.ts';
import { placed } from './place.ts';
import { headName, type Renames } from './renames.ts';

export function serverChanges(
  { before, after }: Pair<Server>,
  renames: Renames,
  adoption: Adoption,
): readonly Change[] {
  if (before === undefined) {
    if (after === undefined) return [];
    const kind = adoption.adopts(after) ? 'server-adopted' : 'server-created';
    return [{ kind, after, subject: subjectOf(after), place: placed(after, 'head') }];
  }
  if (after === undefined) {
    return [{ kind: 'server-deleted', before, subject: subjectOf(before), place: placed(before, 'base') }];
  }
  const subject = subjectOf(after);
  const both = { before, after, subject };
  const changes: Change[] = [];
  if (before.name !== after.name)
    changes.push({ kind: 'server-renamed', ...both, place: placed(after, 'head', 'formerly') });
  if (isAnotherById(before, after))
    changes.push({ kind: 'server-changed-id', ...both, place: placed(after, 'head', 'id') });
  if (before.power !== after.power) {
    const kind = after.power === 'running' ? 'server-started' : 'server-stopped';
    changes.push({ kind, ...both, place: placed(after, 'head', 'power') });
  }
  if (before.type !== after.type) {
    changes.push({ kind: 'server-changed-type', ...both, place: placed(after, 'head', 'type') });
  }
  if (isMove(before, after))
    changes.push({ kind: 'server-moved-site', ...both, place: placed(after, 'head', 'site') });
  if (before.team !== after.team)
    changes.push({ kind: 'server-changed-team', ...both, place: placed(after, 'head', 'team') });
  const boot = before.boot === undefined ? undefined : headName(renames.volumes, before.boot);
  if (boot !== after.boot)
    changes.push({ kind: 'boot-swapped', ...both, place: placed(after, 'head', 'boot') });
  if (
    before.guest !== after.guest ||
    before.iops !== after.iops ||
    before.attachmentSlots !== after.attachmentSlots ||
    isToldSite(before, after) ||
    !sameLabels(before.labels, after.labels)
  ) {
    changes.push({ kind: 'server-edited', ...both, place: placed(after, 'head') });
  }
  return changes;
}
