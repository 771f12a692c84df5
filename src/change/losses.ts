/**
 * The losses of a branch, each content once. A file system goes with its volume or its group, and a group with its
 * members; what is deleted first and written over then, or is moved away and made smaller, is lost once.
 */
import { type Subject, subjectKey, type Volume, type VolumeGroup } from '../estate/estate.ts';
import type { Change } from './change.ts';
import { destroys, type LosingChange, lossOf } from './kinds.ts';

/** What stands for a loss, where several changes lose one content: whoever deletes it, before whoever writes over it. */
const order = ['volume', 'volume-group', 'file-system', 'overwriting'] as const;

/** @param among the changes that a loss may be counted by; all that destroy anything, where left out */
export function lossesOf(
  changes: readonly Change[],
  among: (change: LosingChange) => boolean = () => true,
): readonly LosingChange[] {
  const losing = changes.filter(destroys).filter(among);
  const groups = groupsBefore(changes);
  const came = new Set(
    changes.flatMap((change) =>
      change.kind === 'volume-adopted' || change.kind === 'volume-re-created' ? [change.after] : [],
    ),
  );
  const lost = new Set<string>();
  const isLost = (subject: Pick<Subject, 'kind' | 'name'>): boolean => lost.has(subjectKey(subject));
  const isGone = (group: VolumeGroup): boolean =>
    isLost(group) || group.members.every((name) => isLost({ kind: 'volume', name }));
  const lieIn = (volume: Volume): VolumeGroup | undefined =>
    groups.find(({ members }) => members.includes(volume.name));
  const isKnown = (content: LosingChange, of: LossContent): boolean => {
    switch (of.kind) {
      case 'volume': {
        // What was there undeclared is nothing of what main declares, whatever it is called.
        if (came.has(of)) return false;
        if (isLost(of)) return true;
        if (!('wipes' in content)) return false;
        if (of.fileSystem !== undefined) return isLost(of.fileSystem);
        const group = lieIn(of);
        if (group === undefined) return false;
        return isGone(group) || (group.fileSystems.length > 0 && group.fileSystems.every(isLost));
      }
      case 'volume-group':
        return isGone(of);
      case 'file-system': {
        if (isLost(of) || isLost(of.on)) return true;
        const group = of.on.kind === 'volume' ? undefined : groups.find(({ name }) => name === of.on.name);
        return group !== undefined && isGone(group);
      }
    }
  };
  const counted = new Set<LosingChange>();
  for (const rank of order) {
    for (const change of losing) {
      const of = lossOf(change)?.of ?? [];
      if (('wipes' in change ? 'overwriting' : of[0]?.kind) !== rank) continue;
      if (of.every((content) => isKnown(change, content))) continue;
      counted.add(change);
      for (const content of of)
        if (content.kind !== 'volume' || !came.has(content)) lost.add(subjectKey(content));
    }
  }
  return losing.filter((change) => counted.has(change));
}

type LossContent = NonNullable<ReturnType<typeof lossOf>>['of'][number];

/** Groups as they were on the base, as far as any change tells of them. */
function groupsBefore(changes: readonly Change[]): readonly VolumeGroup[] {
  const befores = changes.flatMap((change) => ('before' in change ? [change.before] : []));
  return [...new Set(befores)].flatMap((before) => (before.kind === 'volume-group' ? [before] : []));
}
