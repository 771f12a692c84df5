/**
 * What two readings of one file do not have in common. Read again by what differs, a file has most of its declarations
 * as the very objects that they were, and what is the same object is passed over as if it stood in a file of its own.
 */
import type { EstatePart } from './estate.ts';

export function apart(before: EstatePart, after: EstatePart): readonly [EstatePart, EstatePart] {
  const servers = trimmed(before.servers, after.servers);
  const volumes = trimmed(before.volumes, after.volumes);
  const attachments = trimmed(before.attachments, after.attachments);
  const groups = trimmed(before.groups, after.groups);
  const retired = trimmed(before.retired, after.retired);
  const side = (part: EstatePart, index: 0 | 1): EstatePart => ({
    ...part,
    servers: servers[index],
    volumes: volumes[index],
    attachments: attachments[index],
    groups: groups[index],
    retired: retired[index],
  });
  return [side(before, 0), side(after, 1)];
}

/** Two lists without what they have in common at their beginnings and at their ends. */
function trimmed<T>(a: readonly T[], b: readonly T[]): readonly [readonly T[], readonly T[]] {
  const least = Math.min(a.length, b.length);
  let from = 0;
  while (from < least && a[from] === b[from]) from++;
  let cut = 0;
  while (cut < least - from && a[a.length - 1 - cut] === b[b.length - 1 - cut]) cut++;
  return [a.slice(from, a.length - cut), b.slice(from, b.length - cut)];
}
