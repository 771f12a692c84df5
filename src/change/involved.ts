/**
 * What a change involves: what it was, what becomes of it, what it is made of and what it destroys. A rule that is for
 * some of the estate is for a change that involves any of it, so that nothing is relabelled out of a rule's reach in
 * the branch that changes it.
 */
import type { Declaration, Estate, Server, Subject, Volume } from '../estate/estate.ts';
import { type Change, isAttachmentChange } from './change.ts';
import { lossOf } from './kinds.ts';
import { baseName, type Renames } from './renames.ts';

/** Two estates and how names carry over from one to the other. */
export interface Sides {
  readonly base: Estate;
  readonly head: Estate;
  readonly renames: Renames;
}

export function involvedIn(change: Change, { base, head, renames }: Sides): readonly Declaration[] {
  const volume = (name: string): readonly Volume[] => [
    ...present(base.volumes.get(baseName(renames.volumes, name))),
    ...present(head.volumes.get(name)),
  ];
  const server = (name: string): readonly Server[] => [
    ...present(base.servers.get(baseName(renames.servers, name))),
    ...present(head.servers.get(name)),
  ];
  const lost = lossOf(change)?.of ?? [];
  if (isAttachmentChange(change)) {
    const servers = change.kind === 'handed-over' ? [change.from, change.to] : [change.server];
    return [...volume(change.volume.name), change.volume, ...servers.flatMap(server)];
  }
  return [
    ...('before' in change ? [change.before, ...carriers(change.before, base)] : []),
    ...('after' in change ? [change.after, ...carriers(change.after, head)] : []),
    ...('volume' in change ? volume(change.volume) : []),
    ...lost.flatMap((each) => [each, ...carriers(each, base), ...starters(each, base)]),
    ...('before' in change ? starters(change.before, base) : []),
  ];
}

const present = <T>(value: T | undefined): readonly T[] => (value === undefined ? [] : [value]);

/** A thing and what it lies on and is attached to, in its own estate: what a rule about its state may have gone by. */
export function surroundingsOf(thing: Declaration, estate: Estate): readonly Declaration[] {
  if (thing.kind === 'server') return [thing];
  const below = [thing, ...carriers(thing, estate)];
  const servers = below
    .flatMap(({ kind, name }) => (kind === 'volume' ? (estate.holders.get(name) ?? []) : []))
    .flatMap(({ server }) => present(estate.servers.get(server)));
  return [...below, ...servers];
}

/** What an estate declares as a subject. */
export function declared(estate: Estate, { kind, name }: Subject): Declaration | undefined {
  switch (kind) {
    case 'server':
      return estate.servers.get(name);
    case 'volume':
      return estate.volumes.get(name);
    case 'volume-group':
      return estate.groups.get(name);
    case 'file-system':
      return estate.fileSystems.get(name);
    case 'estate':
    case 'site':
    case 'team':
    case 'label':
    case 'scope':
    case 'branch':
      return undefined;
  }
}

/** What a thing lies on, down to the volumes; a group and a file system have no tier but theirs. */
function carriers(thing: Declaration, estate: Estate): readonly Declaration[] {
  switch (thing.kind) {
    case 'server':
      return thing.boot === undefined ? [] : present(estate.volumes.get(thing.boot));
    case 'volume':
      return [];
    case 'volume-group':
      return thing.members.flatMap((member) => present(estate.volumes.get(member)));
    case 'file-system': {
      if (thing.on.kind === 'volume') return present(estate.volumes.get(thing.on.name));
      const group = estate.groups.get(thing.on.name);
      return group === undefined ? [] : [group, ...carriers(group, estate)];
    }
  }
}

/** The servers that start from a volume: what befalls it befalls them. */
const starters = (thing: Declaration, estate: Estate): readonly Server[] =>
  thing.kind !== 'volume'
    ? []
    : (estate.holders.get(thing.name) ?? [])
        .filter(({ boot }) => boot)
        .flatMap((held) => present(estate.servers.get(held.server)));
