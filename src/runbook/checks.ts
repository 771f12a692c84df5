/** What somebody makes sure of before the next step, wanted by several kinds of change. */
import { usableExtents } from '../capacity/extents.ts';
import type { Subject, VolumeGroup } from '../estate/estate.ts';
import { exactSize, showSize, timesBytes } from '../estate/size.ts';
import type { Draft } from './draft.ts';
import { comesUp } from './waits.ts';

/** @param what the content, as its owner would name it */
export function checkBackup(draft: Draft, subject: Subject, what: string): string {
  return draft.want(`backup ${subject.kind} ${subject.name}`, 'check-backup', subject, {
    words: { what },
    turn: 'check',
  });
}

/** What the group must show once all its members are as large as they are to be. */
export function checkGroup(
  draft: Draft,
  group: VolumeGroup,
  server: string | undefined,
  after: readonly string[],
): string {
  const { sides } = draft;
  const key = `check-group ${group.name}`;
  if (!draft.has(key)) {
    const members = group.members.flatMap((member) => sides.head.volumes.get(member)?.size ?? []);
    const extents = members.reduce((sum, size) => sum + usableExtents(size, group.extent), 0n);
    const words = {
      group: group.name,
      extents: extents.toString(),
      extent: exactSize(group.extent),
      size: showSize(timesBytes(group.extent, extents)),
    };
    draft.want(
      key,
      'check-group',
      { kind: 'volume-group', name: group.name },
      {
        server,
        words,
        after: [
          ...(server === undefined ? [] : [...comesUp(server), `activate ${group.name} ${server}`]),
          ...group.members.flatMap((each) => [`fill ${each}`, `replaced ${each}`, `copy-across ${each}`]),
        ],
      },
    );
  }
  draft.wait(key, after);
  return key;
}
