/** File systems put into use and taken out of it. */

import { byText } from '../base/order.ts';
import { listed } from '../base/wording.ts';
import type { FileSystem, Subject } from '../estate/estate.ts';
import type { ActionName } from './actions.ts';
import type { Draft } from './draft.ts';
import { type Carrier, systemsOn } from './sides.ts';
import { serverSubject, systemSubject } from './words.ts';

/** How a file system is put into use and taken out of it. A pool is mounted by its own properties, not by fstab. */
function mounting(type: FileSystem['type']): readonly [ActionName, ActionName] {
  if (type === 'swap') return ['mount-swap', 'unmount-swap'];
  return type === 'zfs' ? ['import-pool', 'export-pool'] : ['mount', 'unmount'];
}

export function mountSystem(
  draft: Draft,
  system: FileSystem,
  server: string | undefined,
  after: readonly string[],
): string {
  const { sides } = draft;
  const { mount, type } = system;
  const root = server !== undefined && sides.isRootAfter(system, server);
  const procedure = root ? 'check-root' : mounting(type)[0];
  return draft.want(`mount ${sides.systemKey(system)} ${server ?? ''}`, procedure, systemSubject(system), {
    server,
    words: { mount, type, on: sides.headCarrierName(system.on) },
    after: [...after],
  });
}

/** Mounts what was there before; what is made by this branch is mounted when it is made. */
export function mountKept(draft: Draft, system: FileSystem, server: string, after: readonly string[]): void {
  const { sides } = draft;
  const former = sides.formerOf(system);
  if (former === undefined && !sides.adopted.fileSystems.has(system.name)) return;
  mountSystem(draft, system, server, after);
}

/**
 * Nothing is mounted on a server that stands still; and the root of a server stays mounted for as long as it runs, and
 * is let go of by shutting it down.
 */
export function unmountSystem(draft: Draft, system: FileSystem, server: string): string | undefined {
  const { sides } = draft;
  if (sides.isRootBefore(system, server)) return undefined;
  if (!sides.runsBefore(server)) {
    forget(draft, system, server);
    return undefined;
  }
  const subject: Subject = {
    kind: 'file-system',
    name: `${sides.headCarrierName(system.on)}:${system.mount}`,
  };
  const carrier: Carrier = { kind: system.on.kind, name: sides.headCarrierName(system.on) };
  const before = sides.carrierBefore(carrier);
  const systems = before === undefined ? [system] : inOrder(systemsOn(before));
  const quiet = draft.want(`stop-use ${carrier.kind} ${carrier.name} ${server}`, 'stop-use', carrier, {
    server,
    words: { mounts: listed(systems.map(({ mount }) => mount)), on: carrier.name },
  });
  const [, procedure] = mounting(system.type);
  const key = draft.want(`unmount ${sides.systemKey(system)} ${server}`, procedure, subject, {
    server,
    words: { mount: system.mount, on: carrier.name },
    after: [quiet],
  });
  return key;
}

/** A server that stands still has nothing mounted, and mounts what its fstab says when it starts. */
function forget(draft: Draft, system: FileSystem, server: string): void {
  const { sides } = draft;
  if (!sides.head.servers.has(server)) return;
  const words = { mount: system.mount, on: sides.headCarrierName(system.on) };
  const key = `fstab ${sides.systemKey(system)} ${server}`;
  draft.want(key, 'check-fstab', serverSubject(server), { server, words, after: [`move-server ${server}`] });
  draft.wait(`start ${server}`, [key]);
}

export const inOrder = (systems: readonly FileSystem[]): readonly FileSystem[] =>
  [...systems].sort((a, b) => byText(a.mount, b.mount));
