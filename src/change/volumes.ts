/** What changed about volumes, and which of them took the place of which. */
import type { Estate, Volume } from '../estate/estate.ts';
import type { Adoption } from './adoption.ts';
import type { Change } from './change.ts';
import type { Shown } from './corrected.ts';
import { isAnotherById, isMove, isToldSite, type Pairs, sameLabels, subjectOf } from './pairs.ts';
import { placed } from './place.ts';
import { headName, noRenames, type Renames } from './renames.ts';

export function volumeChanges(
  { pairs }: Pairs<Volume>,
  replacements: ReadonlyMap<string, Replacement>,
  { adoption, shown }: { readonly adoption: Adoption; readonly shown: Shown },
): readonly Change[] {
  const replacing = new Set([...replacements.values()].map(({ after }) => after.name));
  return pairs.flatMap(({ before, after }): readonly Change[] => {
    if (before === undefined) {
      if (after === undefined || replacing.has(after.name)) return [];
      const kind = adoption.adopts(after) ? 'volume-adopted' : 'volume-created';
      return [{ kind, after, subject: subjectOf(after), place: placed(after, 'head') }];
    }
    if (after === undefined) {
      const replacement = replacements.get(before.name);
      const subject = subjectOf(before);
      return replacement === undefined
        ? [{ kind: 'volume-deleted', before, subject, place: placed(before, 'base') }]
        : [
            {
              kind: 'volume-re-created',
              before,
              after: replacement.after,
              seat: replacement.seat,
              existing: adoption.adopts(replacement.after),
              subject,
              place: placed(before, 'base'),
            },
          ];
    }
    const subject = subjectOf(after);
    const both = { before, after, subject };
    const changes: Change[] = [];
    if (before.name !== after.name)
      changes.push({ kind: 'volume-renamed', ...both, place: placed(after, 'head', 'formerly') });
    if (isAnotherById(before, after))
      changes.push({ kind: 'volume-changed-id', ...both, place: placed(after, 'head', 'id') });
    if (after.size > before.size)
      changes.push({ kind: 'volume-grown', ...both, place: placed(after, 'head', 'size') });
    if (after.size < before.size) {
      const isThere = !isAnotherById(before, after) && !isMove(before, after);
      const isCorrected = isThere && shown.hasSize({ kind: 'volume', name: before.name }, after.size);
      const kind = isCorrected ? 'volume-corrected' : 'volume-shrunk';
      changes.push({ kind, ...both, place: placed(after, 'head', 'size') });
    }
    if (before.tier !== after.tier)
      changes.push({ kind: 'volume-moved-tier', ...both, place: placed(after, 'head', 'tier') });
    if (isMove(before, after))
      changes.push({ kind: 'volume-moved-site', ...both, place: placed(after, 'head', 'site') });
    if (before.team !== after.team)
      changes.push({ kind: 'volume-changed-team', ...both, place: placed(after, 'head', 'team') });
    if (before.protected && !after.protected) {
      changes.push({ kind: 'volume-unprotected', ...both, place: placed(after, 'head', 'protected') });
    }
    if (
      before.shareable !== after.shareable ||
      (!before.protected && after.protected) ||
      before.owner !== after.owner ||
      before.reason !== after.reason ||
      before.retainUntil !== after.retainUntil ||
      isToldSite(before, after) ||
      !sameLabels(before.labels, after.labels)
    ) {
      changes.push({ kind: 'volume-edited', ...both, place: placed(after, 'head') });
    }
    return changes;
  });
}

interface Replacement {
  readonly after: Volume;
  readonly seat: string;
}

/**
 * Deletions with a creation in their place. A seat is a member's place in a group, a server's boot, or a mount
 * point on a server: whoever sits there is expected to hold what sat there before. An attachment alone is no
 * seat, since servers hold unrelated volumes side by side.
 */
export function pairReplacements(
  base: Estate,
  head: Estate,
  { pairs }: Pairs<Volume>,
  renames: Renames,
): ReadonlyMap<string, Replacement> {
  const gone = pairs.flatMap(({ before, after }) =>
    before !== undefined && after === undefined ? [before] : [],
  );
  const come = pairs.flatMap(({ before, after }) =>
    before === undefined && after !== undefined ? [after] : [],
  );
  if (gone.length === 0 || come.length === 0) return new Map();
  const seatsFilled = new Map<string, Volume[]>();
  for (const volume of come) {
    for (const seat of seatsOf(head, volume, noRenames)) {
      const list = seatsFilled.get(seat);
      if (list === undefined) seatsFilled.set(seat, [volume]);
      else list.push(volume);
    }
  }
  const taken = new Set<string>();
  const replacements = new Map<string, Replacement>();
  for (const volume of gone) {
    for (const seat of seatsOf(base, volume, renames)) {
      const after = seatsFilled.get(seat)?.find(({ name }) => !taken.has(name));
      if (after === undefined) continue;
      taken.add(after.name);
      replacements.set(volume.name, { after, seat });
      break;
    }
  }
  return replacements;
}

function seatsOf(estate: Estate, volume: Volume, { servers, groups }: Renames): readonly string[] {
  const seats: string[] = [];
  const group = estate.groupOf.get(volume.name);
  if (group !== undefined) seats.push(`as a member of the volume group ${headName(groups, group.name)}`);
  for (const { server, boot } of estate.holders.get(volume.name) ?? []) {
    const name = headName(servers, server);
    if (boot) seats.push(`as the boot volume of ${name}`);
    if (volume.fileSystem !== undefined) seats.push(`at ${volume.fileSystem.mount} on ${name}`);
  }
  return seats;
}
