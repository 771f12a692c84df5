/**
 * New, or there already? It is asked where a branch brings servers and volumes without a word on that, and taking the
 * one for the other would be grave: whoever follows steps that create would make a second one of what there is, or a
 * file system over it.
 */
import type { Estate, Server, Volume } from '../estate/estate.ts';
import { own } from './adoption.ts';
import type { Change } from './change.ts';

export interface Question {
  /** Whether main declares no server and no volume yet. */
  readonly first: boolean;
  /** Those that are created and of which nothing is said, by name. */
  readonly servers: readonly string[];
  readonly volumes: readonly string[];
  /** Files that say `existing: true` as on main already, and now bring something else. */
  readonly spent: readonly string[];
}

/**
 * A server with its boot volume and a group of three is what people add by hand in one branch, and there is no doubt
 * that it is new. More than that at once is most often an estate that is being written down. Common practice, no source.
 */
const usualAtOnce = 5;

export function questionOf(base: Estate, head: Estate, changes: readonly Change[]): Question | undefined {
  const unsaid = changes.flatMap((change) =>
    (change.kind === 'server-created' || change.kind === 'volume-created') && isUnsaid(change.after, head)
      ? [change.after]
      : [],
  );
  const first = base.servers.size === 0 && base.volumes.size === 0;
  const files = new Set(unsaid.map(({ place }) => place.file));
  const spent = [...files].filter((file) => head.parts.get(file)?.defaults.existing === true).sort();
  if (unsaid.length === 0 || (!first && spent.length === 0 && unsaid.length <= usualAtOnce)) return undefined;
  const named = (kind: 'server' | 'volume'): readonly string[] =>
    unsaid.flatMap((thing) => (thing.kind === kind ? thing.name : []));
  return { first, servers: named('server'), volumes: named('volume'), spent };
}

/** Neither it nor its file says that it is new. */
const isUnsaid = (thing: Server | Volume, head: Estate): boolean =>
  own(thing) === undefined && head.parts.get(thing.place.file)?.defaults.existing !== false;
