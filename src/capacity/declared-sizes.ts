/** When the declared size of a file system, or of the group beneath it, became another, by a history of estates. */
import { type Estate, emptyEstate, type FileSystem } from '../estate/estate.ts';
import { type Bytes, sumBytes } from '../estate/size.ts';
import { asThen } from './former.ts';

/** What a commit made of the estate, and its day. */
export interface EstateChange {
  readonly on: string;
  readonly before: Estate;
  readonly after: Estate;
}

export interface DeclaredSize {
  readonly on: string;
  readonly of: 'file system' | 'volume group';
  readonly from: Bytes;
  readonly to: Bytes;
}

/**
 * Oldest first. A file system is followed back under the names and mount points that it had.
 *
 * @param estate the one that declares `system`; it may go beyond the last change, as files on the disk do
 * @param changes oldest first
 */
export function declaredSizes(
  system: FileSystem,
  estate: Estate,
  changes: readonly EstateChange[],
): readonly DeclaredSize[] {
  const found: DeclaredSize[] = [];
  const last = changes.at(-1)?.after ?? emptyEstate;
  let now = asThen(system, estate, { estate: last, bySystem: last.fileSystems });
  for (const { on, before, after } of changes.toReversed()) {
    if (now === undefined) break;
    const then: FileSystem | undefined = asThen(now, after, { estate: before, bySystem: before.fileSystems });
    if (then === undefined) break; // It begins here.
    const [from, to] = [groupSize(then, before), groupSize(now, after)];
    if (from !== undefined && to !== undefined && from !== to)
      found.push({ on, of: 'volume group', from, to });
    if (then.size !== now.size) found.push({ on, of: 'file system', from: then.size, to: now.size });
    now = then;
  }
  return found.reverse();
}

/** What the members of the group beneath a file system come to; undefined where it lies on a volume. */
function groupSize({ on }: FileSystem, { groups, volumes }: Estate): Bytes | undefined {
  const group = on.kind === 'volume-group' ? groups.get(on.name) : undefined;
  return group === undefined
    ? undefined
    : sumBytes(group.members.flatMap((member) => volumes.get(member)?.size ?? []));
}
