/** Volumes deleted: for their own sake, for what goes with them, or for what took their place. */
import type { Volume } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import { detach } from './attachments.ts';
import { checkBackup } from './checks.ts';
import type { Draft } from './draft.ts';
import { outOfGroup } from './waits.ts';
import { volumeSubject } from './words.ts';

export function unprotect(draft: Draft, name: string): string {
  return draft.want(`unprotect ${name}`, 'unprotect', volumeSubject(name));
}

/** Deletes what another has taken the place and the name of, once the other is proven. */
export function deleteOld(
  draft: Draft,
  { size, protected: kept }: Volume,
  name: string,
  after: readonly string[],
): string {
  const subject = volumeSubject(name);
  const freed = kept ? [draft.want(`unprotect-old ${name}`, 'unprotect-old', subject, { after })] : [];
  return draft.want(`delete-old ${name}`, 'delete-old', subject, {
    words: { size: exactSize(size) },
    after: [...after, ...freed],
    turn: 'delete',
  });
}

export function deleteVolume(draft: Draft, { name, size, protected: kept }: Volume): string {
  const { sides } = draft;
  const key = `delete ${name}`;
  if (draft.has(key)) return key;
  const holders = sides.holdersBefore(name);
  const group = sides.groupBefore(name);
  if (kept) unprotect(draft, name);
  const detached = holders.map((server) => detach(draft, name, server));
  const missed =
    detached.length === 0
      ? []
      : [draft.want(`missed ${name}`, 'check-missed', volumeSubject(name), { after: detached })];
  return draft.want(key, 'delete-volume', volumeSubject(name), {
    words: { size: exactSize(size) },
    after: [
      checkBackup(draft, volumeSubject(name), name),
      ...missed,
      `unprotect ${name}`,
      `replacement ${name}`,
      ...holders.map((server) => `delete-server ${server}`),
      ...(group === undefined ? [] : outOfGroup(sides, name, group)),
      // A group that goes with its volumes is let go of whole before any of it is deleted.
      ...(group === undefined || sides.head.groups.has(sides.headName('groups', group.name))
        ? []
        : sides
            .membersBefore(sides.headName('groups', group.name))
            .flatMap((member) => sides.holdersBefore(member).map((holder) => `detach ${member} ${holder}`))),
    ],
    turn: 'delete',
  });
}

export function goneWith(draft: Draft, volume: string): string {
  const { sides } = draft;
  const gone = sides.base.volumes.get(volume);
  return gone === undefined ? `delete ${volume}` : deleteVolume(draft, gone);
}
