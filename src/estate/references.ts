/** References that lead nowhere, told with the name that was most likely meant. */
import { offer } from '../base/nearest.ts';
import type { Problem } from '../base/problem.ts';
import type { Draft, Entries, Missing } from './draft.ts';
import { type Attachment, type Server, unreadName, type Volume } from './estate.ts';

/**
 * So many comparisons of names are made for the offers of one revision; beyond them an offer costs more than it is
 * worth.
 */
const mostCompared = 2_000_000;

export function bothThere(draft: Draft, attachment: Attachment): boolean {
  const { volume, server, boot, place } = attachment;
  const from = boot
    ? `the server ${server} starts from a volume that is not declared: it`
    : `the attachment of ${volume || 'a volume'} to ${server || 'a server'}`;
  const known = { volume: draft.volumes.has(volume), server: draft.servers.has(server) };
  if (!known.volume) draft.missing.push({ place, from, kind: 'volume', name: volume });
  if (!known.server) draft.missing.push({ place, from, kind: 'server', name: server });
  return known.volume && known.server;
}

/** Said when all names are known, each with the nearest; where very many are missing, only the first by name. */
export function danglingProblems(draft: Draft): readonly Problem[] {
  const missing = draft.missing.filter(({ name }) => name !== unreadName);
  const offers = {
    server: offersAmong(draft.servers, 'server'),
    volume: offersAmong(draft.volumes, 'volume'),
  };
  return missing.map(({ place, from, kind, name }) => ({
    place,
    message: `${from} names the ${kind} ${name}, and no ${kind} of that name is declared`,
    advice: `${offers[kind].get(name) ?? ''}Declare the ${kind}, or correct the name.`,
  }));

  function offersAmong(
    entries: Entries<Server> | Entries<Volume>,
    kind: Missing['kind'],
  ): ReadonlyMap<string, string> {
    const asked = new Set(missing.flatMap((each) => (each.kind === kind ? [each.name] : [])));
    if (asked.size === 0) return new Map();
    const known = [...entries.names()].sort();
    const most = Math.floor(mostCompared / Math.max(1, known.length));
    return new Map(
      [...asked]
        .sort()
        .slice(0, most)
        .map((name) => [name, offer(name, known)]),
    );
  }
}
