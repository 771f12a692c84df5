/** What there is only so much of on the way: attachment slots, a site's quota, what a volume group can hold. */
import type { Server, Subject } from '../estate/estate.ts';
import type { Site } from '../estate/settings.ts';
import type { ActionName } from './actions.ts';
import { holdsOnTheWay } from './exchange.ts';
import type { Room } from './room-search.ts';
import type { Sides } from './sides.ts';

/** What is shared. */
export type Shared =
  | { readonly kind: 'slots'; readonly server: string }
  | { readonly kind: 'quota'; readonly of: 'volumes' | 'size'; readonly site: string }
  | { readonly kind: 'group'; readonly group: string };

/** How much there is of it at the provider; undefined where that is not known. */
export interface Limits {
  readonly slots: (server: Server) => number | undefined;
  readonly quota: (site: string) => Site['quota'] | undefined;
}

/** What a step does to it: more than nothing where it takes. */
export type Taking = readonly [Shared, bigint];

interface Acting {
  readonly procedure: ActionName;
  readonly subject: Subject;
  readonly server: string | undefined;
  readonly words: Readonly<Record<string, string>>;
}

export function takingOf(sides: Sides, acting: Acting): readonly Taking[] {
  const { procedure, subject, server, words } = acting;
  const before = sides.base.volumes.get(sides.baseName('volumes', subject.name));
  const after = sides.head.volumes.get(subject.name);
  const slot = (amount: bigint): readonly Taking[] =>
    server === undefined ? [] : [[{ kind: 'slots', server }, amount]];
  const quota = (site: string | undefined, volumes: bigint, size: bigint): readonly Taking[] =>
    site === undefined
      ? []
      : [
          [{ kind: 'quota', of: 'volumes', site }, volumes],
          [{ kind: 'quota', of: 'size', site }, size],
        ];
  const inGroup = (name: string | undefined, amount: bigint): readonly Taking[] =>
    name === undefined ? [] : [[{ kind: 'group', group: name }, amount]];
  const made = after === undefined ? [] : quota(after.site, 1n, after.size);
  switch (procedure) {
    case 'attach':
    case 'attach-boot':
    case 'attach-smaller':
    case 'attach-for-a-while':
      return slot(1n);
    case 'create-server':
      return sides.head.servers.get(server ?? '')?.boot === undefined ? [] : slot(1n);
    case 'detach':
    case 'detach-old':
    case 'detach-again':
      return slot(-1n);
    case 'create-volume':
    case 'create-smaller':
      return made;
    case 'copy-across':
      return [...made, ...inGroup(keptIn(sides, subject.name), 1n)];
    case 'grow-volume':
      return quota(after?.site, 0n, (after?.size ?? 0n) - (before?.size ?? 0n));
    case 'delete-volume':
    case 'delete-old':
      return before === undefined ? [] : quota(before.site, -1n, -before.size);
    case 'leave-group':
      return inGroup(words.group, 1n);
    case 'replace-member':
    case 'fill-smaller':
      return inGroup(keptIn(sides, subject.name), 1n);
    case 'join-group':
    case 'join-group-over':
    case 'grow-member':
      return inGroup(words.group, -1n);
    default: // the other actions take and give nothing that is counted
      return [];
  }
}

/** The group that a volume is in on either side. */
function keptIn(sides: Sides, volume: string): string | undefined {
  const [before, after] = [sides.groupBefore(volume), sides.head.groupOf.get(volume)];
  return before !== undefined && sides.headName('groups', before.name) === after?.name
    ? after.name
    : undefined;
}

export function sharedKey(shared: Shared): string {
  switch (shared.kind) {
    case 'slots':
      return `slots ${shared.server}`;
    case 'quota':
      return `${shared.of} ${shared.site}`;
    case 'group':
      return `group ${shared.group}`;
  }
}

/** @param isWanted whether there is an act of this key */
export function roomIn(
  sides: Sides,
  shared: Shared,
  limits: Limits,
  isWanted: (key: string) => boolean,
): Room | undefined {
  switch (shared.kind) {
    case 'slots': {
      const server = sides.head.servers.get(shared.server) ?? sides.serverBefore(shared.server);
      const all = server === undefined ? undefined : limits.slots(server);
      return all === undefined ? undefined : BigInt(all - sides.heldBefore(shared.server).length);
    }
    case 'quota': {
      const quota = limits.quota(shared.site)?.[shared.of];
      return quota === undefined ? undefined : BigInt(quota) - usedBefore(sides, shared.site, shared.of);
    }
    case 'group':
      return (isDone) =>
        holdsOnTheWay(sides, shared.group, (key) =>
          isDone(key) ? 'done' : isWanted(key) ? 'open' : 'unwanted',
        );
  }
}

/** With what is only declared, and there already. */
function usedBefore(sides: Sides, site: string, of: 'volumes' | 'size'): bigint {
  const adopted = [...sides.adopted.volumes].flatMap((name) => sides.head.volumes.get(name) ?? []);
  return adopted.reduce(
    (sum, volume) => (volume.site === site ? sum + (of === 'size' ? volume.size : 1n) : sum),
    sides.base.siteTotals.get(site)?.[of] ?? 0n,
  );
}
