/** Which server holds which volume: boot volumes and attachments of all files together, each told once. */
import { at, type Place } from '../base/problem.ts';
import { type Draft, type Entries, isLater } from './draft.ts';
import type { Attachment, Server } from './estate.ts';
import { bothThere } from './references.ts';

export function attach(draft: Draft): void {
  const bootOf = ({ name, boot, fields, place }: Server): readonly Attachment[] =>
    boot === undefined ? [] : [{ volume: boot, server: name, boot: true, place: fields.of('boot') ?? place }];
  const changed = { volumes: new Set<string>(), servers: new Set<string>() };
  const note = ({ volume, server }: Attachment): void => {
    changed.volumes.add(volume);
    changed.servers.add(server);
  };
  for (const part of draft.leaving) {
    for (const server of part.servers) bootOf(server).forEach(note);
    part.attachments.forEach(note);
  }
  const leaving = new Set(
    draft.leaving.flatMap(({ servers, attachments }) =>
      [...servers.flatMap(bootOf), ...attachments].map(({ place }) => placeKey(place)),
    ),
  );
  const byVolume = new Map<string, Attachment[]>();
  const byServer = new Map<string, Attachment[]>();
  const standing = (lists: Entries<readonly Attachment[]>, key: string): Attachment[] =>
    (lists.before.get(key) ?? []).flatMap((attachment) => staying(attachment, leaving));
  const ofVolume = (name: string): Attachment[] =>
    listAt(byVolume, name, () => standing(draft.holders, name));
  const ofServer = (name: string): Attachment[] => listAt(byServer, name, () => standing(draft.held, name));
  for (const name of changed.volumes) ofVolume(name);
  for (const name of changed.servers) ofServer(name);
  const coming = [
    ...draft.coming.flatMap(({ servers }) => servers.flatMap(bootOf)),
    ...draft.coming.flatMap(({ attachments }) => attachments),
  ];
  for (const attachment of coming) {
    if (!bothThere(draft, attachment)) continue;
    const held = ofServer(attachment.server);
    const twin = held.find(({ volume }) => volume === attachment.volume);
    if (twin === undefined) {
      held.push(attachment);
      ofVolume(attachment.volume).push(attachment);
      continue;
    }
    const boot = twin.boot ? twin : attachment;
    if (twin.boot !== attachment.boot && boot.listed === undefined) {
      // A boot volume may be listed as attached, too: it is one attachment, and the boot says more.
      const both = { ...boot, listed: (twin.boot ? attachment : twin).place };
      replace(held, both);
      replace(ofVolume(attachment.volume), both);
    } else {
      const other = twin.boot === attachment.boot ? twin.place : (twin.listed ?? twin.place);
      const [first, second] = isLater(attachment.place, other)
        ? [other, attachment.place]
        : [attachment.place, other];
      draft.problems.push({
        place: second,
        message: `the attachment of ${attachment.volume} to ${attachment.server} is declared twice: here and at ${at(first)}`,
        advice: 'Keep one of the two.',
      });
    }
  }
  settle(draft.holders, byVolume, ({ server }) => server);
  detach(draft, byVolume.keys());
  settle(draft.held, byServer, ({ volume }) => volume);
}

/** Whether each volume that came, left, or whose holders changed is held by any server. */
function detach(draft: Draft, held: Iterable<string>): void {
  const names = new Set(held);
  for (const part of [...draft.leaving, ...draft.coming])
    for (const { name } of part.volumes) names.add(name);
  for (const name of names) {
    const volume = draft.holders.has(name) ? undefined : draft.volumes.get(name);
    if (volume === undefined) draft.detached.delete(name);
    else draft.detached.put(name, volume);
  }
}

function listAt(lists: Map<string, Attachment[]>, key: string, first: () => Attachment[]): Attachment[] {
  const known = lists.get(key);
  if (known !== undefined) return known;
  const list = first();
  lists.set(key, list);
  return list;
}

/** Puts an attachment in the place of the one of the same two ends. */
const replace = (list: Attachment[], now: Attachment): void => {
  const index = list.findIndex(({ volume, server }) => volume === now.volume && server === now.server);
  if (index !== -1) list[index] = now;
};

const placeKey = ({ file, line, column }: Place): string => `${line}:${column}:${file}`;

/** What is left of an attachment when some places go: a boot volume may be listed in another one besides. */
function staying(attachment: Attachment, leaving: ReadonlySet<string>): readonly Attachment[] {
  const { place, listed } = attachment;
  const kept = listed === undefined || leaving.has(placeKey(listed)) ? undefined : listed;
  if (!leaving.has(placeKey(place)))
    return [kept === listed ? attachment : { ...attachment, listed: undefined }];
  return kept === undefined ? [] : [{ ...attachment, boot: false, place: kept, listed: undefined }];
}

/** Puts finished lists among the entries, each in one order whatever the order of the files. */
function settle(
  entries: Entries<readonly Attachment[]>,
  lists: ReadonlyMap<string, Attachment[]>,
  name: (attachment: Attachment) => string,
): void {
  const order = (a: Attachment, b: Attachment): number =>
    Number(b.boot) - Number(a.boot) || (name(a) < name(b) ? -1 : name(a) > name(b) ? 1 : 0);
  for (const [key, list] of lists) {
    if (list.length === 0) entries.delete(key);
    else entries.put(key, list.length === 1 ? list : list.sort(order));
  }
}
