/** What each kind of change to a file system wants. */

import { listed } from '../base/wording.ts';
import type { ChangeOf } from '../change/change.ts';
import { perCent } from '../change/making.ts';
import type { FileSystem } from '../estate/estate.ts';
import { fileSystemFacts } from '../estate/file-system-facts.ts';
import { madeOf } from '../estate/made.ts';
import { exactSize } from '../estate/size.ts';
import { detach } from './attachments.ts';
import { checkBackup } from './checks.ts';
import type { Draft } from './draft.ts';
import { installOver, systemInWords } from './install.ts';
import { mountSystem, unmountSystem } from './mounts.ts';
import type { Carrier } from './sides.ts';
import { goneWith } from './volume-deletion.ts';
import { cleared, madeRoomIn, present, ready, workplace } from './waits.ts';
import { layoutWords, makingWords, sorted, systemSubject, volumeSubject } from './words.ts';

export function systemCreated(
  draft: Draft,
  { after: system, wipes }: ChangeOf<'file-system-created'>,
): string {
  const { sides } = draft;
  const { on, mount, type } = system;
  const server = sides.homeOf(on);
  const key = sides.systemKey(system);
  const subject = systemSubject(system);
  const carrier = sides.carrierAfter(on);
  const words = {
    mount,
    type,
    on: on.name,
    group: on.name,
    size: exactSize(system.size),
    how: makingWords(system),
  };
  // A guest that starts from it cannot make it: its image or its installer did, before there was a guest.
  const starter = sides.bootedFrom(on);
  if (starter !== undefined && (on.kind === 'volume' || mount === '/' || sides.made.has(on.name))) {
    const checked = draft.want(`mount ${key} ${starter}`, 'check-root', subject, {
      server: starter,
      words,
      after: [...ready(on, starter), `install ${on.name}`],
    });
    return wipes.length === 0
      ? checked
      : installOver(draft, { on, server: starter, what: systemInWords(system) });
  }
  const bed =
    carrier?.kind === 'volume-group'
      ? [
          draft.want(`logical ${key}`, 'make-logical-volume', subject, {
            server,
            cautions: knownElsewhere(draft, on, server),
            words: { ...words, layout: layoutWords(carrier.layout) },
            after: [...ready(on, server), ...madeRoomIn(sides, on)],
          }),
        ]
      : [...ready(on, server), ...cleared(sides, on.name)];
  const made = draft.want(
    `make ${key}`,
    wipes.length > 0 ? 'make-file-system-over' : 'make-file-system',
    subject,
    {
      server,
      words,
      after: [...bed, ...(wipes.length > 0 ? [checkBackup(draft, volumeSubject(on.name), on.name)] : [])],
    },
  );
  return mountEverywhere(draft, system, server, made);
}

/** On every server that holds it; the key of where it is made. */
function mountEverywhere(draft: Draft, system: FileSystem, home: string | undefined, made: string): string {
  const { on } = system;
  for (const server of draft.sides.carrierHoldersAfter(on))
    if (server !== home) mountSystem(draft, system, server, [made, ...ready(on, server)]);
  return mountSystem(draft, system, home, [made]);
}

export function systemDeleted(
  draft: Draft,
  { before: system, subject }: ChangeOf<'file-system-deleted'>,
): string | undefined {
  const { sides } = draft;
  const name = sides.headCarrierName(system.on);
  const carrier: Carrier = { kind: system.on.kind, name };
  const servers = sides.carrierHoldersBefore(carrier);
  const root = servers.find((server) => sides.isRootBefore(system, server));
  // The root of a server is let go of with the server, or goes on being its root.
  if (root !== undefined && sides.carrierAfter(carrier) !== undefined)
    return sides.holdersAfter(name).includes(root) ? undefined : detach(draft, name, root);
  const unmounted = servers.flatMap((server) => unmountSystem(draft, system, server) ?? []);
  const key = `remove ${sides.systemKey(system)}`;
  const after = sides.carrierAfter(carrier);
  if (after === undefined) {
    if (carrier.kind === 'volume') return goneWith(draft, name);
    const members = sides.membersBefore(name);
    const last = members.at(-1);
    return last !== undefined && members.every((member) => !sides.head.volumes.has(member))
      ? goneWith(draft, last)
      : `remove-group ${name}`;
  }
  const words = { mount: system.mount, group: name, volume: name, on: name };
  const inUse = servers.find((server) => sides.runsBefore(server));
  if (carrier.kind === 'volume') {
    // Nobody uses it where nothing runs that holds it.
    if (inUse === undefined) return undefined;
    for (const server of servers) draft.wait(`detach ${name} ${server}`, [key]);
    return draft.want(key, 'give-up-file-system', subject, { server: inUse, words, after: unmounted });
  }
  // Its group is active for as long as something in it is removed.
  for (const server of servers) draft.wait(`deactivate ${name} ${server}`, [key]);
  const { server, comes, there } = workplace(sides, carrier);
  return draft.want(key, 'remove-file-system', subject, {
    server,
    comes,
    words,
    after: [...unmounted, ...there, checkBackup(draft, subject, `${system.mount} on ${name}`)],
  });
}

export function systemRemounted(draft: Draft, { before, after }: ChangeOf<'file-system-remounted'>): string {
  const { sides } = draft;
  const home = sides.homeOf(after.on);
  const former = sides.carrierHoldersBefore(after.on);
  const mounted = (server: string | undefined): string => {
    const stays = server !== undefined && former.includes(server);
    const off = stays ? unmountSystem(draft, before, server) : undefined;
    return mountSystem(draft, after, server, [
      ...ready(after.on, server),
      ...(off === undefined ? [] : [off]),
    ]);
  };
  for (const each of sides.carrierHoldersAfter(after.on)) if (each !== home) mounted(each);
  return mounted(home);
}

/**
 * A type that knows of no other server is worked on while none but one has it mounted: the others let go of it until
 * that is done.
 *
 * @param done with which that is done
 * @returns what must be done first
 */
function byOneAlone(
  draft: Draft,
  former: FileSystem,
  system: FileSystem,
  server: string | undefined,
  done: string,
): readonly string[] {
  const { sides } = draft;
  const { on } = system;
  if (fileSystemFacts(former.type).clusterAware) return [];
  const [before, after] = [sides.carrierHoldersBefore(on), sides.carrierHoldersAfter(on)];
  const others = sorted([...before, ...after]).filter((each) => each !== server);
  return others.flatMap((other) => {
    const mounted = `mount ${sides.systemKey(system)} ${other}`;
    draft.wait(mounted, [done]);
    if (!before.includes(other)) return [];
    // It mounts what its fstab has when it starts.
    if (!sides.runsBefore(other)) {
      draft.wait(`start ${other}`, [done]);
      return [];
    }
    const off = unmountSystem(draft, former, other);
    if (after.includes(other)) mountSystem(draft, system, other, [done]);
    return off ?? [];
  });
}

/**
 * A server keeps a logical volume as it was when it activated it, whatever another one does to the group: of lvchange(8),
 * --refresh, where logical volumes are shared by hand; from memory.
 */
function knownElsewhere({ sides }: Draft, on: Carrier, server: string | undefined): readonly string[] {
  const others = sides
    .carrierHoldersAfter(on)
    .filter((each) => each !== server && sides.carrierHoldersBefore(on).includes(each));
  return others.length === 0
    ? []
    : [
        `${listed(others)} ${others.length === 1 ? 'has' : 'have'} volume group ${on.name} as well, with its logical volumes as they were: have them refreshed there before anything in the group is mounted there.`,
      ];
}

/** What takes a growth back. */
function shrinkWords({ mount, type }: FileSystem): string {
  const { shrink } = fileSystemFacts(type);
  if (shrink.online) return 'Make it as small as it was.';
  return shrink.offline
    ? 'Make it as small as it was, while it is unmounted.'
    : `A file system of type ${type} is not made smaller: ${mount} is made as small as it was only as a new one, from its backup.`;
}

export function growSystem(draft: Draft, system: FileSystem, former: FileSystem): string {
  const { sides } = draft;
  const { on, mount, type, size } = system;
  const server = sides.homeOf(on);
  const { grow, caution } = fileSystemFacts(type);
  const key = sides.systemKey(system);
  if (!grow.online && !grow.offline) return makeAnew(draft, system, former, caution);
  const subject = systemSubject(system);
  const words = {
    mount,
    type,
    on: on.name,
    group: on.name,
    was: exactSize(former.size),
    size: exactSize(size),
    back: shrinkWords(system),
  };
  const room =
    on.kind === 'volume'
      ? server === undefined
        ? [`grow ${on.name}`]
        : [`grow ${on.name}`, ...present(on.name, server), `partition ${on.name}`]
      : [
          draft.want(`logical ${key}`, 'extend-logical-volume', subject, {
            server,
            cautions: knownElsewhere(draft, on, server),
            words,
            after: [...ready(on, server), ...madeRoomIn(sides, on)],
          }),
        ];
  const mounted = `mount ${key} ${server ?? ''}`;
  const grown = `grow-system ${key}`;
  const more = { server, words, cautions: [caution] };
  const alone = byOneAlone(draft, former, system, server, grown);
  if (grow.online) {
    return draft.want(grown, 'grow-mounted', subject, {
      ...more,
      after: [...room, mounted, ...alone],
    });
  }
  const stays = server !== undefined && sides.carrierHoldersBefore(on).includes(server);
  const off = stays ? unmountSystem(draft, former, server) : undefined;
  draft.want(grown, 'grow-unmounted', subject, {
    ...more,
    after: [...room, ...alone, ...(off === undefined ? [] : [off])],
  });
  mountSystem(draft, system, server, [grown]);
  return grown;
}

export function systemShrunk(
  draft: Draft,
  { before, after: system, subject }: ChangeOf<'file-system-shrunk'>,
): string {
  const { sides } = draft;
  const { on, mount, type, size } = system;
  const { shrink, caution } = fileSystemFacts(type);
  if (!shrink.online && !shrink.offline) return makeAnew(draft, system, before, caution);
  const key = sides.systemKey(system);
  const { server, comes, there } = workplace(sides, on);
  const words = { mount, type, on: on.name, group: on.name, size: exactSize(size) };
  const backup = checkBackup(draft, subject, `${mount} on ${on.name}`);
  const off =
    !shrink.online && server !== undefined && !comes ? unmountSystem(draft, before, server) : undefined;
  const shrunk = draft.want(`shrink ${key}`, shrink.online ? 'shrink-mounted' : 'shrink-unmounted', subject, {
    server,
    comes,
    words,
    cautions: [caution],
    after: [
      backup,
      ...there,
      ...byOneAlone(
        draft,
        before,
        system,
        server,
        on.kind === 'volume-group' ? `shrunk ${key}` : `shrink ${key}`,
      ),
      ...(off === undefined ? [] : [off]),
    ],
  });
  const done =
    on.kind === 'volume-group'
      ? draft.want(`shrunk ${key}`, 'reduce-logical-volume', subject, {
          server,
          cautions: knownElsewhere(draft, on, server),
          comes,
          words,
          after: [shrunk, backup],
        })
      : shrunk;
  for (const holder of sides.carrierHoldersBefore(on)) draft.wait(`deactivate ${on.name} ${holder}`, [done]);
  if (!shrink.online) mountSystem(draft, system, sides.homeOf(on), [done]);
  return done;
}

/** Over what was there, and filled from its backup. */
export function makeAnew(draft: Draft, system: FileSystem, former: FileSystem, reason: string): string {
  const { sides } = draft;
  const { on, mount, type, size } = system;
  const key = sides.systemKey(system);
  const server = sides.homeOf(on);
  const subject = systemSubject(system);
  const words = { mount, type, on: on.name, size: exactSize(size), how: makingWords(system), reason };
  const starter = on.kind === 'volume' || mount === '/' ? sides.bootedFrom(on) : undefined;
  if (starter !== undefined) {
    const installed = installOver(draft, { on, server: starter, what: systemInWords(system) });
    draft.want(`bring-back ${key}`, 'bring-back', subject, { server: starter, words, after: [installed] });
    return installed;
  }
  const backup = checkBackup(draft, subject, `${mount} on ${on.name}`);
  const off = sides.carrierHoldersBefore(on).flatMap((each) => unmountSystem(draft, former, each) ?? []);
  const first = [backup, ...off, ...ready(on, server)];
  const sized =
    on.kind === 'volume' ? [`grow ${on.name}`] : resizeFor(draft, system, former, [backup, ...off]);
  const made = draft.want(`make ${key}`, 'make-anew', subject, {
    server,
    words,
    after: [...first, ...sized],
  });
  const mounted = mountEverywhere(draft, system, server, made);
  if (type !== 'swap' && former.type !== 'swap') {
    draft.want(`bring-back ${key}`, 'bring-back', subject, { server, words, after: [mounted] });
  }
  return made;
}

/** A logical volume brought to the size of what is made anew on it; what one gives back is there for others. */
function resizeFor(
  draft: Draft,
  system: FileSystem,
  former: FileSystem,
  after: readonly string[],
): readonly string[] {
  const { sides } = draft;
  const { on, mount, size } = system;
  if (size === former.size) return [];
  const key = sides.systemKey(system);
  const subject = systemSubject(system);
  const words = { mount, group: on.name, on: on.name, was: exactSize(former.size), size: exactSize(size) };
  if (size > former.size) {
    const server = sides.homeOf(on);
    const first = [...after, ...ready(on, server), ...madeRoomIn(sides, on)];
    return [
      draft.want(`logical ${key}`, 'extend-logical-volume', subject, {
        server,
        cautions: knownElsewhere(draft, on, server),
        words,
        after: first,
      }),
    ];
  }
  const { server, comes, there } = workplace(sides, on);
  const cut = draft.want(`shrunk ${key}`, 'cut-logical-volume', subject, {
    server,
    cautions: knownElsewhere(draft, on, server),
    comes,
    words,
    after: [...after, ...there],
  });
  for (const holder of sides.carrierHoldersBefore(on)) draft.wait(`deactivate ${on.name} ${holder}`, [cut]);
  return [cut];
}

/** The share that only the superuser may fill, which is set on it as it lies. */
export function setReserve(draft: Draft, { before, after, subject }: ChangeOf<'file-system-edited'>): string {
  const { sides } = draft;
  const { mount, type, on, size, making } = after;
  const server = sides.homeOf(on);
  const { reserve } = madeOf(type, size, making);
  const key = `reserve ${sides.systemKey(after)}`;
  return draft.want(key, 'set-reserve', subject, {
    server,
    words: { mount, type, reserve: perCent(reserve) },
    after: [...ready(on, server), ...byOneAlone(draft, before, after, server, key)],
  });
}
