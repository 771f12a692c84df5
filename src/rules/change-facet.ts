import { type Change, partOf } from '../change/change.ts';

/** One subject may change in several ways, and in one way with several servers or members. */
export const changeFacet = (change: Change): string =>
  partOf(change) === '' ? change.kind : `${change.kind} ${partOf(change)}`;
