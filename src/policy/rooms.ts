/** What room is left at each layer, before a change and after it. */
import type { Room } from '../capacity/headroom.ts';
import { headSubject, type Renames } from '../change/renames.ts';
import { subjectKey } from '../estate/estate.ts';
import type { RoomChange } from './judgement.ts';

/** Under the names of the head: what is renamed is one room, before and after. */
export function roomChanges(
  before: readonly Room[],
  after: readonly Room[],
  renames: Renames,
): readonly RoomChange[] {
  const same = (a: Room, b: Room | undefined): boolean =>
    a.layer === b?.layer &&
    a.measure === b.measure &&
    a.subject.name === headSubject(renames, b.subject).name;
  // Most changes neither add rooms nor take any away: then the two lists, in one order, pair off as they stand.
  if (before.length === after.length && after.every((room, index) => same(room, before[index]))) {
    return after.map((room, index) => ({ before: before[index], after: room }));
  }
  const key = ({ layer, subject, measure }: Room): string => `${layer} ${subjectKey(subject)} ${measure}`;
  const carried = (room: Room): string => key({ ...room, subject: headSubject(renames, room.subject) });
  const old = new Map(before.map((room) => [carried(room), room]));
  const now = new Set(after.map(key));
  return [
    ...after.map((room) => ({ before: old.get(key(room)), after: room })),
    ...before.filter((room) => !now.has(carried(room))).map((room) => ({ before: room, after: undefined })),
  ];
}
