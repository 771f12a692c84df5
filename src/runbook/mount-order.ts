/**
 * One server has one file system at a mount point, and within it others: what is to be mounted waits for what was mounted
 * there, what lies below another goes first and comes last (umount(8): a file system is busy while another is mounted
 * within it), and what stays below one that is unmounted is unmounted meanwhile.
 */
import type { Estate, FileSystem } from '../estate/estate.ts';
import type { Draft } from './draft.ts';
import { mountSystem, unmountSystem } from './mounts.ts';
import type { Sides } from './sides.ts';

/** Once all else is wanted. */
export function orderMounts(draft: Draft): void {
  const { sides } = draft;
  const servers = new Set([
    ...sides.head.servers.keys(),
    ...[...sides.base.servers.keys()].map((name) => sides.headName('servers', name)),
  ]);
  for (const server of servers) orderAt(draft, server);
}

function orderAt(draft: Draft, server: string): void {
  const { sides } = draft;
  const unmounting = (system: FileSystem): string => `unmount ${sides.systemKey(system)} ${server}`;
  const forgotten = (system: FileSystem): string => `fstab ${sides.systemKey(system)} ${server}`;
  const mounting = (system: FileSystem): string => `mount ${sides.systemKey(system)} ${server}`;
  const was = mountedBefore(sides, server);
  const is = mountedAfter(sides, server);
  if (![...was, ...is].some((each) => draft.has(unmounting(each)) || draft.has(mounting(each)))) return;
  const comes = (system: FileSystem): boolean =>
    draft.has(mounting(system)) && !was.some((each) => sides.systemKey(each) === sides.systemKey(system));
  // From the outside in, so that what lies below one that is unmounted meanwhile is so, too.
  for (const inner of [...was].sort((a, b) => a.mount.length - b.mount.length)) {
    const now = is.find((each) => sides.systemKey(each) === sides.systemKey(inner));
    const isTakenOff = (system: FileSystem): boolean =>
      draft.has(unmounting(system)) || draft.has(forgotten(system));
    if (now === undefined || isTakenOff(inner)) continue;
    const isBelow =
      was.some((outer) => liesBelow(inner, outer) && isTakenOff(outer)) ||
      is.some((outer) => liesBelow(inner, outer) && comes(outer));
    // What stands still, and stays so, mounts in the right order whatever it next starts with.
    if (!isBelow || !(sides.runsBefore(server) || sides.runsAfter(server))) continue;
    const off = unmountSystem(draft, inner, server) ?? forgotten(inner);
    draft.wait(off, [`shrink ${sides.systemKey(inner)}`]);
    mountSystem(draft, now, server, [off]);
  }
  for (const former of was) {
    const gone = [unmounting(former), forgotten(former)];
    for (const other of was) if (liesBelow(former, other)) draft.wait(unmounting(other), gone);
    for (const system of is) {
      const isOther = sides.systemKey(system) !== sides.systemKey(former);
      const isInTheWay =
        system.mount === former.mount || liesBelow(system, former) || liesBelow(former, system);
      if (isOther && isInTheWay) draft.wait(mounting(system), gone);
    }
  }
  for (const inner of is)
    for (const outer of is) if (liesBelow(inner, outer)) draft.wait(mounting(inner), [mounting(outer)]);
}

const liesBelow = (inner: FileSystem, outer: FileSystem): boolean =>
  inner.mount.startsWith(`${outer.mount}/`);

/** Nothing is mounted on a server that stands still, but its fstab says what would be. */
function mountedBefore(sides: Sides, server: string): readonly FileSystem[] {
  const former = sides.serverBefore(server)?.name;
  return former === undefined ? [] : systemsHeld(sides.base, former);
}

const mountedAfter = (sides: Sides, server: string): readonly FileSystem[] => systemsHeld(sides.head, server);

/** A swap area is at no mount point, and everything lies below the root. */
function systemsHeld(estate: Estate, server: string): readonly FileSystem[] {
  const systems = (estate.held.get(server) ?? []).flatMap(({ volume }) => {
    const own = estate.volumes.get(volume)?.fileSystem;
    return [...(own === undefined ? [] : [own]), ...(estate.groupOf.get(volume)?.fileSystems ?? [])];
  });
  return [...new Set(systems)].filter(({ mount, type }) => mount !== '/' && type !== 'swap');
}
