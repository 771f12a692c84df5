/**
 * Groups whose remaining members cannot hold what they keep: what is new in them has to be there before anything
 * leaves. Volumes are carried to where the old members are, the group is extended over them, the extents are moved
 * off the old ones, and only then does the group go where it goes.
 */
import { couldHold } from '../capacity/group.ts';
import type { VolumeGroup } from '../estate/estate.ts';
import { type Bytes, noBytes } from '../estate/size.ts';
import type { Carrier, Sides } from './sides.ts';

export type Exchange =
  /** At a server that has it and runs, before it goes from there or that server stops. */
  | { readonly place: 'here'; readonly server: string }
  /** At a server that has it, once that is up: a volume that comes into it is only free when it has stopped. */
  | { readonly place: 'late'; readonly server: string }
  /** Where it comes to, with all that it had. */
  | { readonly place: 'there'; readonly server: string }
  /** With a server that runs, to which it is lent for as long as that takes. */
  | { readonly place: 'lent' }
  /** Nowhere: what comes into it is at another site than what leaves it. */
  | { readonly place: 'apart' };

/** None where the members that stay can hold what stays, or where nothing leaves. */
export function exchangeOf(sides: Sides, name: string): Exchange | undefined {
  const after = sides.head.groups.get(name);
  if (after === undefined || holdsWithout(sides, name)) return undefined;
  const carrier: Carrier = { kind: 'volume-group', name };
  if (isApart(sides, after)) return { place: 'apart' };
  const [server, homes] = [sides.worksAt(carrier), sides.carrierHoldersAfter(carrier)];
  if (server === undefined) return { place: 'lent' };
  const here = sides.carrierHoldersBefore(carrier).includes(server);
  if (!here) return { place: 'there', server };
  const boot = sides.bootBefore(server);
  const comesFromBoot = (sides.joined.get(name) ?? []).some(({ volume }) => volume === boot);
  const late = !sides.runsBefore(server) || comesFromBoot;
  return { place: late && homes.includes(server) && sides.runsAfter(server) ? 'late' : 'here', server };
}

/** Extents are moved within a site: a volume at another is not attached where the group is worked on. */
export function isApart(sides: Sides, { name, members }: VolumeGroup): boolean {
  const carrier: Carrier = { kind: 'volume-group', name };
  const server = sides.worksAt(carrier);
  const comesWhole = server !== undefined && !sides.carrierHoldersBefore(carrier).includes(server);
  const after = (member: string): string | undefined => sides.head.volumes.get(member)?.site;
  const was = sides.membersBefore(name).flatMap((member) => {
    const before = sides.base.volumes.get(sides.baseName('volumes', member));
    return before === undefined ? [] : [comesWhole ? after(member) : before.site];
  });
  return members.some((member) => !was.includes(after(member)));
}

/** An exchange that is done before the group goes anywhere. */
export type EarlyExchange = Extract<Exchange, { readonly place: 'here' | 'lent' }>;

export function earlyExchangeOf(sides: Sides, group: string): EarlyExchange | undefined {
  const exchange = exchangeOf(sides, group);
  return exchange?.place === 'here' || exchange?.place === 'lent' ? exchange : undefined;
}

/** What comes into a group before that goes anywhere: each key of one that does. */
export const joinedEarly = (sides: Sides, group: string): readonly string[] =>
  earlyExchangeOf(sides, group) === undefined
    ? []
    : (sides.joined.get(group) ?? []).map(({ volume }) => `join ${group} ${volume}`);

/** The server at which it is done, where that is known. */
export const placeOf = (exchange: EarlyExchange | undefined): string | undefined =>
  exchange?.place === 'here' ? exchange.server : undefined;

/** Whether the members that stay in a group can hold all that stays in it; also where nothing leaves. */
export function holdsWithout(sides: Sides, name: string): boolean {
  const before = sides.carrierBefore({ kind: 'volume-group', name });
  const after = sides.head.groups.get(name);
  if (before?.kind !== 'volume-group' || after === undefined) return true;
  const members = sides.membersBefore(name);
  const staying = members.filter((member) => after.members.includes(member));
  if (staying.length === members.length && !staying.some((member) => sides.madeAnew.has(member))) return true;
  const sizes = staying.map((member) => leastSize(sides, member));
  return canKeep(sides, before, after, sizes);
}

/** Whether an act is done; one that nobody wants is not. */
export type ActState = 'unwanted' | 'open' | 'done';

/** Whether a group can hold all that stays in it, with the members that it has by then. */
export function holdsOnTheWay(sides: Sides, name: string, stateOf: (key: string) => ActState): boolean {
  const before = sides.carrierBefore({ kind: 'volume-group', name });
  const after = sides.head.groups.get(name);
  if (before?.kind !== 'volume-group' || after === undefined) return true;
  const isOpen = (key: string): boolean => stateOf(key) === 'open';
  const sizeOf = (member: string): Bytes => {
    const was = sides.base.volumes.get(sides.baseName('volumes', member))?.size ?? noBytes;
    const is = sides.head.volumes.get(member)?.size;
    if (is === undefined || !after.members.includes(member)) return was;
    const isChanged =
      is < was
        ? !['replaced', 'fill', 'copy-across'].some((kind) => isOpen(`${kind} ${member}`))
        : ['grow-member', 'copy-across'].some((kind) => stateOf(`${kind} ${member}`) === 'done');
    return isChanged ? is : was;
  };
  const staying = sides
    .membersBefore(name)
    .filter((member) => after.members.includes(member) || isOpen(`leave ${name} ${member}`));
  const joined = (sides.joined.get(name) ?? []).flatMap(({ volume }) =>
    isOpen(`join ${name} ${volume}`) ? [] : (sides.head.volumes.get(volume)?.size ?? noBytes),
  );
  return canKeep(sides, before, after, [...staying.map(sizeOf), ...joined]);
}

function canKeep(sides: Sides, before: VolumeGroup, after: VolumeGroup, sizes: readonly Bytes[]): boolean {
  const kept = before.fileSystems.flatMap((system) => {
    const renamed = sides.headName('fileSystems', system.name);
    const now = after.fileSystems.find((each) => each.name === renamed || each.mount === system.mount);
    return now === undefined ? [] : [{ ...system, size: smaller(now.size, system.size) }];
  });
  return sizes.length > 0 && couldHold({ ...before, fileSystems: kept }, sizes);
}

const smaller = (one: Bytes, other: Bytes): Bytes => (other < one ? other : one);

/** What a member has at the least on the way. */
function leastSize(sides: Sides, member: string): Bytes {
  const before = sides.base.volumes.get(sides.baseName('volumes', member))?.size;
  const after = sides.head.volumes.get(member)?.size;
  if (before === undefined || after === undefined) return before ?? after ?? noBytes;
  return smaller(before, after);
}
