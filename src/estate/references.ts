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

/** A name that is declared nowhere, and what is said of it. */
export interface Dangling {
  readonly name: string;
  readonly problem: Problem;
}

/** Said when all names are known, each with the nearest; where very many are missing, only the first by name. */
export function danglingReferences(draft: Draft): readonly Dangling[] {
  const missing = draft.missing.filter(({ name }) => name !== unreadName);
  const offers = {
    server: offersAmong(draft.servers, 'server'),
    volume: offersAmong(draft.volumes, 'volume'),
  };
  return missing.map(({ place, from, kind, name }) => ({
    name,
    problem: {
      place,
      message: `${from} names the ${kind} ${name}, and no ${kind} of that name is declared`,
      advice: `${offers[kind].get(name) ?? ''}Declare the ${kind}, or correct the name.`,
    },
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

/**
 * Those that files which do not read cannot explain: a name that stands in one may be declared there, and the file
 * alone is told then, which is the cause.
 */
export function missedBeside(dangling: readonly Dangling[], unread: readonly string[]): readonly Problem[] {
  const words = new Set(unread.flatMap((text) => text.match(/[\p{L}\p{N}][\p{L}\p{N}._-]*/gu) ?? []));
  return dangling.flatMap(({ name, problem }) => (words.has(name) ? [] : [problem]));
}
