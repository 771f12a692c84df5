/** References that lead nowhere, told with the name that was most likely meant. */
import { offer } from '../base/nearest.ts';
import type { Place } from '../base/problem.ts';
import type { Draft, Entries } from './draft.ts';
import type { Attachment, Server, Volume } from './estate.ts';

/** Beyond so many names, looking for the nearest one costs more than the offer is worth. */
const nearestAmong = 20_000;

export function bothThere(draft: Draft, attachment: Attachment): boolean {
  const { volume, server, boot, place } = attachment;
  const from = boot
    ? `the server ${server} starts from a volume that is not there: it`
    : `the attachment of ${volume} to ${server}`;
  const known = { volume: draft.volumes.has(volume), server: draft.servers.has(server) };
  if (!known.volume) dangling(draft, place, from, 'volume', volume, draft.volumes);
  if (!known.server) dangling(draft, place, from, 'server', server, draft.servers);
  return known.volume && known.server;
}

export function dangling(
  draft: Draft,
  place: Place,
  from: string,
  kind: 'server' | 'volume',
  name: string,
  known: Entries<Server> | Entries<Volume>,
): void {
  const names =
    known.before.size + known.set.size > nearestAmong ? [] : [...known.set.keys(), ...known.before.keys()];
  draft.problems.push({
    place,
    message: `${from} names the ${kind} ${name}, and no ${kind} of that name is declared`,
    advice: `${offer(
      name,
      names.filter((each) => known.has(each)),
    )}Declare the ${kind}, or correct the name.`,
  });
}
