/** What a branch destroys, counted as the owner of the content would count it. */
import { type Change, destroys } from '../change/change.ts';
import type { Belonging } from '../estate/estate.ts';
import type { Scope } from './view.ts';

/**
 * The changes of a branch that cannot be undone, each loss once: a file system that goes with its volume or its
 * group is lost with it, and so is a group whose members are all deleted.
 */
export function lossesOf(changes: readonly Change[]): readonly Change[] {
  const losses = changes.filter(destroys);
  const lost = new Set(losses.flatMap(carrierLost));
  return losses.filter((change) => {
    switch (change.kind) {
      case 'file-system-deleted':
      case 'file-system-shrunk':
      case 'file-system-remade':
        return !lost.has(`${change.before.on.kind} ${change.before.on.name}`);
      case 'group-deleted':
        return !change.before.members.every((member) => lost.has(`volume ${member}`));
      default:
        return true;
    }
  });
}

/** What goes whole with a change, under its name on the base. */
function carrierLost(change: Change): readonly string[] {
  switch (change.kind) {
    case 'volume-deleted':
    case 'volume-re-created':
    case 'volume-shrunk':
    case 'volume-moved-site':
      return [`volume ${change.before.name}`];
    case 'group-deleted':
      return [`volume-group ${change.before.name}`];
    default:
      return [];
  }
}

/** Whether a change is in scope by what it changes, on either side: moving a thing out of scope is no way out. */
export function changeInScope(change: Change, scope: Scope): boolean {
  if ('volume' in change && typeof change.volume === 'object') {
    return scope.includes(change.volume, change.volume.tier);
  }
  const sides = [
    'before' in change ? change.before : undefined,
    'after' in change ? change.after : undefined,
  ];
  return sides.some((side) => side !== undefined && scope.includes(side, tierOf(side)));
}

const tierOf = (side: Belonging): string | undefined =>
  'tier' in side && typeof side.tier === 'string' ? side.tier : undefined;
