/** What is only called otherwise: a branch that leaves out `formerly` has it deleted, and something new in its place. */
import { nearestWords } from '../base/nearest.ts';
import type { Change } from '../change/change.ts';
import { type BringingChange, brings } from '../change/kinds.ts';
import type { Server, Volume, VolumeGroup } from '../estate/estate.ts';

/** Told before anything that readies the deletion: it is the same disk, and running. Nothing where it is likely none. */
export function calledOtherwise(before: Server | Volume | VolumeGroup, changes: readonly Change[]): string {
  const inItsPlace = changes.flatMap((change) =>
    change.kind === 'volume-re-created' && change.before === before && change.after.size >= before.size
      ? [change.after.name]
      : [],
  );
  const alike = changes.flatMap((change) =>
    brings(change) && isLike(before, change.after) ? [change.after.name] : [],
  );
  const [heir] = inItsPlace.length > 0 ? inItsPlace : nearestWords(before.name, alike, 1);
  return heir === undefined
    ? ''
    : `If ${heir} is the same ${before.kind.replace('-', ' ')} under another name, write formerly: ${before.name} on it; nothing is ${before.kind === 'server' ? 'stopped, detached or deleted' : 'deleted'} then. `;
}

/** As large, of the same type, or on as many members: it may well be the same. */
function isLike(before: Server | Volume | VolumeGroup, after: BringingChange['after']): boolean {
  switch (before.kind) {
    case 'server':
      return after.kind === 'server' && after.type === before.type && after.site === before.site;
    case 'volume':
      return after.kind === 'volume' && after.size === before.size;
    case 'volume-group':
      return after.kind === 'volume-group' && after.members.length === before.members.length;
  }
}
