/** Changes as rules about them ask of each: whether it is in scope, and what tells it from others of its subject. */
import { type Change, partOf } from '../change/change.ts';
import type { Belonging } from '../estate/estate.ts';
import type { Scope } from './view.ts';

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

/** One subject may change in several ways, and in one way with several servers or members. */
export const changeFacet = (change: Change): string =>
  partOf(change) === '' ? change.kind : `${change.kind} ${partOf(change)}`;
