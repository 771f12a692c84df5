/** Which server holds which volume now. */
import type { Attachment, Estate, Server, Volume } from '../estate/estate.ts';
import type { Adoption } from './adoption.ts';
import type { Change } from './change.ts';
import { type DifferingPart, type Pairs, subjectOf } from './pairs.ts';
import { onBase, onHead } from './place.ts';
import { baseName, headName, type Renames } from './renames.ts';

export interface Holding {
  readonly base: Estate;
  readonly head: Estate;
  readonly differing: readonly DifferingPart[];
  readonly renames: Renames;
  readonly servers: Pairs<Server>;
  readonly volumes: Pairs<Volume>;
  readonly adoption: Adoption;
}

export function attachmentChanges(holding: Holding): readonly Change[] {
  const { base, head, differing, renames, servers, volumes, adoption } = holding;
  // Boot volumes are held by their servers' declarations, the rest by the lists; both sit in differing files.
  const touched = new Set<string>();
  for (const { before, after } of differing) {
    for (const { volume } of before?.attachments ?? []) touched.add(headName(renames.volumes, volume));
    for (const { volume } of after?.attachments ?? []) touched.add(volume);
  }
  for (const { before, after } of servers.pairs) {
    if (before?.boot !== undefined) touched.add(headName(renames.volumes, before.boot));
    if (after?.boot !== undefined) touched.add(after.boot);
  }
  for (const { before, after } of volumes.pairs) {
    if (after !== undefined) touched.add(after.name);
    else if (before !== undefined) touched.add(before.name);
  }
  return [...touched].sort().flatMap((name): readonly Change[] => {
    const before = (base.holders.get(baseName(renames.volumes, name)) ?? []).map((held) => ({
      ...held,
      server: headName(renames.servers, held.server),
    }));
    const after = head.holders.get(name) ?? [];
    const left = before.filter((held) => !after.some(({ server }) => server === held.server));
    const came = after.filter((held) => !before.some(({ server }) => server === held.server));
    const volume = head.volumes.get(name) ?? base.volumes.get(baseName(renames.volumes, name));
    if (volume === undefined) return [];
    return holdersChanged(volume, left, came, adoption);
  });
}

function holdersChanged(
  volume: Volume,
  left: readonly Attachment[],
  came: readonly Attachment[],
  adoption: Adoption,
): readonly Change[] {
  const subject = subjectOf(volume);
  const [from] = left;
  const [to] = came;
  if (from !== undefined && to !== undefined && left.length === 1 && came.length === 1) {
    return [
      { kind: 'handed-over', volume, from: from.server, to: to.server, subject, place: onHead(to.place) },
    ];
  }
  return [
    ...left.map(
      ({ server, place }): Change => ({ kind: 'detached', volume, server, subject, place: onBase(place) }),
    ),
    ...came.map((attachment): Change => {
      const kind = adoption.attaches(attachment) ? 'attachment-adopted' : 'attached';
      const { server, place } = attachment;
      return { kind, volume, server, subject, place: onHead(place) };
    }),
  ];
}
