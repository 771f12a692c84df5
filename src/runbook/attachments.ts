/** Volumes that come to a server and leave it, with the group and the file systems that lie on them. */
import type { Subject, VolumeGroup } from '../estate/estate.ts';
import type { Draft } from './draft.ts';
import { earlyExchangeOf, exchangeOf, joinedEarly, placeOf } from './exchange.ts';
import { inOrder, mountKept, unmountSystem } from './mounts.ts';
import { restart } from './power.ts';
import type { Carrier, Sides } from './sides.ts';
import { fetched, madeRoomIn, outOfGroup, present } from './waits.ts';
import { seenWords, volumeSubject } from './words.ts';

/**
 * The members of a group that goes to another server are all detached before the first of them is attached; one that
 * is a member no longer is taken out of its group before it goes anywhere.
 */
export function travelsWith(sides: Sides, volume: string, server: string): readonly string[] {
  const before = sides.groupBefore(volume);
  if (before === undefined) return [];
  const after = sides.head.groupOf.get(volume);
  const name = sides.headName('groups', before.name);
  if (name !== after?.name)
    return sides.leavesAt(name) === server ? [`detached ${name}`] : outOfGroup(sides, volume, before);
  if (sides.leavesAt(name) === server) return [`detached ${name}`];
  // What leaves the group, or is made smaller in it, elsewhere, is so while all of it is there.
  const left = sides.membersBefore(name);
  return [
    `detached ${after.name}`,
    ...madeRoomIn(sides, { kind: 'volume-group', name }),
    ...joinedEarly(sides, name),
    ...left.filter((each) => !after.members.includes(each)).map((each) => `leave ${after.name} ${each}`),
  ];
}

/** A volume that has come into its group elsewhere goes along once all else has left that. */
function exchangedWith(sides: Sides, volume: string, server: string): readonly string[] {
  const group = sides.head.groupOf.get(volume)?.name;
  const exchange = group === undefined ? undefined : earlyExchangeOf(sides, group);
  if (group === undefined || exchange === undefined || placeOf(exchange) === server) return [];
  return [
    ...joinedEarly(sides, group),
    `grow-member ${volume}`,
    `detached ${group}`,
    `return ${volume}`,
    ...sides.membersBefore(group).flatMap((each) => [`leave ${group} ${each}`, `replaced ${each}`]),
  ];
}

/**
 * Brings a volume to where its group is exchanged before that goes anywhere, and takes it off there when that is
 * done: at which server, and what must be done before it is taken into the group.
 */
export function bring(
  draft: Draft,
  group: string,
  volume: string,
): { readonly server: string | undefined; readonly after: readonly string[] } | undefined {
  const { sides } = draft;
  const exchange = earlyExchangeOf(sides, group);
  if (exchange === undefined) return undefined;
  const server = placeOf(exchange);
  const before = sides.base.groups.get(sides.baseName('groups', group));
  const carrier: Carrier = { kind: 'volume-group', name: group };
  const homes = sides.carrierHoldersAfter(carrier);
  if (server === undefined) {
    // Where it was nothing runs, and what the group leaves behind there may stay: its file systems do not.
    const left = sides.carrierHoldersBefore(carrier).filter((each) => !homes.includes(each));
    for (const system of before?.fileSystems ?? [])
      for (const each of left) unmountSystem(draft, system, each);
    return {
      server,
      after: [...fetched(sides, volume, ''), ...lentOut(draft, volume), `replaced ${volume}`],
    };
  }
  if (before !== undefined && !homes.includes(server)) takeOut(draft, before, group, server);
  const subject = volumeSubject(volume);
  const size = sides.head.volumes.get(volume)?.size;
  const words = seenWords(size);
  if (sides.holdersBefore(volume).includes(server)) {
    const former = sides.base.volumes.get(sides.baseName('volumes', volume))?.size;
    if (former !== undefined && size !== undefined && former < size)
      draft.want(`see-size ${volume} ${server}`, 'see-size', subject, {
        server,
        words,
        early: true,
        after: [`grow ${volume}`],
      });
    // What a server runs from is free once that stands still, and then nothing is done in its guest.
    const free = sides.bootBefore(server) === volume ? [`stop ${server}`] : [];
    return { server, after: [...present(volume, server), ...free] };
  }
  if (sides.holdersAfter(volume).includes(server)) return { server, after: present(volume, server) };
  const taken = lentOut(draft, volume);
  const lent = draft.want(`lend ${volume}`, 'attach-for-a-while', subject, {
    server,
    words: { group },
    after: [
      ...fetched(sides, volume, server),
      ...taken,
      `replaced ${volume}`,
      ...leftBefore(sides, volume, server),
    ],
  });
  const seen = draft.want(`see-lent ${volume}`, 'see-device', subject, {
    server,
    words,
    early: true,
    after: [lent],
  });
  const returned = draft.want(`return ${volume}`, 'detach-again', subject, {
    server,
    words: { group },
    after: [`join ${group} ${volume}`, `deactivate ${group} ${server}`, `export ${group} ${server}`],
  });
  draft.wait(`detached ${group}`, [returned]);
  for (const each of [`start ${server}`, `move-server ${server}`, `delete-server ${server}`])
    draft.wait(each, [returned]);
  return { server, after: [seen] };
}

/** A member is taken out of its former group while all of that is in one place, unless that is where it goes. */
function leftBefore(sides: Sides, volume: string, server: string): readonly string[] {
  const group = sides.groupBefore(volume);
  if (group === undefined || sides.leavesAt(sides.headName('groups', group.name)) === server) return [];
  return outOfGroup(sides, volume, group);
}

/** What stays with a server goes from there to where its group is, and comes back. */
function lentOut(draft: Draft, volume: string): readonly string[] {
  const { sides } = draft;
  const holders = sides.holdersBefore(volume).filter((each) => sides.holdersAfter(volume).includes(each));
  const taken = holders.map((each) => detach(draft, volume, each));
  for (const each of holders) draft.wait(`see-size ${volume} ${each}`, [attach(draft, volume, each)]);
  return taken;
}

export function attach(draft: Draft, volume: string, server: string): string {
  const { sides } = draft;
  const after = sides.head.servers.get(server);
  const boots = after?.boot === volume;
  // A server is created with the volume it starts from.
  if (boots && sides.serverBefore(server) === undefined && !sides.adopted.servers.has(server))
    return `create-server ${server}`;
  const subject = volumeSubject(volume);
  const old = sides.bootBefore(server);
  const key = draft.want(`attach ${volume} ${server}`, boots ? 'attach-boot' : 'attach', subject, {
    server,
    after: [
      ...fetched(sides, volume, server),
      ...travelsWith(sides, volume, server),
      ...exchangedWith(sides, volume, server),
      `create-server ${server}`,
      `move-server ${server}`,
      ...(boots ? [`stop ${server}`, ...(old === undefined ? [] : [`detach ${old} ${server}`])] : []),
    ],
  });
  if (boots) {
    restart(draft, server);
    return key;
  }
  const group = sides.head.groupOf.get(volume)?.name ?? '';
  const exchange = earlyExchangeOf(sides, group);
  // A server that mounts it as it starts has to find all of it.
  if (exchange !== undefined && !sides.runsBefore(server)) draft.wait(`start ${server}`, [key]);
  const size = sides.head.volumes.get(volume)?.size;
  draft.want(`see ${volume} ${server}`, 'see-device', subject, {
    server,
    early: exchange !== undefined && placeOf(exchange) === server,
    words: seenWords(size),
    after: [key],
  });
  takeIn(draft, volume, server);
  return key;
}

/** What lay on a volume, or on its group, before it came to a server, is put into use there. */
function takeIn(draft: Draft, volume: string, server: string): void {
  const { sides } = draft;
  const group = sides.head.groupOf.get(volume);
  const system = sides.head.volumes.get(volume)?.fileSystem;
  if (system !== undefined) mountKept(draft, system, server, [`see ${volume} ${server}`]);
  const former = sides.groupBefore(volume);
  // A group is activated whole, with what is to leave it there.
  const left = former === undefined ? undefined : sides.headName('groups', former.name);
  if (left !== undefined && sides.leavesAt(left) === server)
    draft.wait(`activate ${left} ${server}`, [`see ${volume} ${server}`]);
  const whole = left === undefined ? undefined : sides.head.groups.get(left);
  if (whole !== undefined && exchangeOf(sides, whole.name)?.place === 'there')
    activate(draft, whole, server, sides.membersBefore(whole.name), [`see ${volume} ${server}`]);
  if (group === undefined || sides.made.has(group.name)) return;
  // A member that only joins comes to a group that is there already, but where it has been taken into it before.
  const was = sides.headName('groups', sides.groupBefore(volume)?.name ?? '') === group.name;
  const exchange = earlyExchangeOf(sides, group.name);
  const exchanged = exchange !== undefined && placeOf(exchange) !== server;
  const isGroups = was || exchanged;
  if (!isGroups && !sides.adopted.groups.has(group.name)) return;
  const members = was && !exchanged ? sides.membersBefore(group.name) : group.members;
  activate(draft, group, server, members, [`see ${volume} ${server}`]);
}

/** @param seen what shows one of its members there */
function activate(
  draft: Draft,
  group: VolumeGroup,
  server: string,
  members: readonly string[],
  seen: readonly string[],
): void {
  const { sides } = draft;
  const carrier: Carrier = { kind: 'volume-group', name: group.name };
  const key = `activate ${group.name} ${server}`;
  if (draft.has(key)) {
    draft.wait(draft.has(`import ${group.name} ${server}`) ? `import ${group.name} ${server}` : key, seen);
    return;
  }
  const exported = sides
    .carrierHoldersBefore(carrier)
    .some((holder) => sides.runsBefore(holder) && !sides.carrierHoldersAfter(carrier).includes(holder));
  const subject: Subject = { kind: 'volume-group', name: group.name };
  const words = { group: group.name, count: members.length.toString() };
  const taken = exported
    ? [
        draft.want(`import ${group.name} ${server}`, 'import', subject, {
          server,
          words,
          after: [...seen],
        }),
      ]
    : seen;
  draft.want(key, 'activate', subject, { server, words, after: [...taken] });
  for (const each of inOrder(group.fileSystems)) mountKept(draft, each, server, [key]);
}

/** What is taken into a group where both are goes from there with it. */
function joinedBefore(sides: Sides, volume: string, server: string): readonly string[] {
  const group = sides.head.groupOf.get(volume)?.name;
  const exchange = group === undefined ? undefined : earlyExchangeOf(sides, group);
  if (exchange === undefined || placeOf(exchange) !== server || sides.holdersAfter(volume).includes(server))
    return [];
  return [`join ${group} ${volume}`, `deactivate ${group} ${server}`, `export ${group} ${server}`];
}

export function detach(draft: Draft, volume: string, server: string): string {
  const { sides } = draft;
  const subject = volumeSubject(volume);
  const group = sides.groupBefore(volume);
  const name = group === undefined ? undefined : sides.headName('groups', group.name);
  const key = `detach ${volume} ${server}`;
  if (draft.has(key)) return key;
  const before = sides.base.volumes.get(sides.baseName('volumes', volume));
  const own = before?.fileSystem;
  const boots = sides.bootBefore(server) === volume;
  const along = joinedBefore(sides, volume, server);
  if (along.length > 0) draft.wait(`detached ${sides.head.groupOf.get(volume)?.name}`, [key]);
  draft.want(key, 'detach', subject, {
    server,
    after: [
      ...(boots ? [`stop ${server}`] : []),
      ...(own === undefined ? [] : [`unmount ${sides.systemKey(own)} ${server}`]),
      ...(name === undefined
        ? []
        : [
            ...([undefined, server].includes(sides.leavesAt(name)) ? [`leave ${name} ${volume}`] : []),
            `remove-group ${name}`,
            `deactivate ${name} ${server}`,
            `export ${name} ${server}`,
          ]),
      `replaced ${volume}`,
      ...along,
    ],
  });
  if (boots) restart(draft, server);
  if (own !== undefined) unmountSystem(draft, own, server);
  const stays =
    group !== undefined && sides.head.groupOf.get(volume)?.name !== name && sides.head.groups.has(name ?? '');
  // A guest that starts with it would take it into use; but what leaves its group there does so once it is up.
  const leavesThere = stays && name !== undefined && sides.leavesAt(name) === server;
  const late = name !== undefined && exchangeOf(sides, name)?.place === 'late';
  if (!leavesThere || (sides.runsBefore(server) && !late)) draft.wait(`start ${server}`, [key]);
  // A member that leaves its group first goes by itself; any other takes the group out of use, and so does one
  // that several servers hold at once, on all of them but the one where it leaves.
  if (group !== undefined && name !== undefined && (!stays || sides.leavesAt(name) !== server)) {
    takeOut(draft, group, name, server);
    if (!stays) draft.wait(`detached ${name}`, [key]);
  }
  return key;
}

/** Whether a server holds all along what stays of a group, and anything does. */
function keeps(sides: Sides, group: string, server: string): boolean {
  const staying = sides
    .membersBefore(group)
    .filter((member) => sides.head.groupOf.get(member)?.name === group);
  return (
    staying.length > 0 &&
    staying.every((member) => sides.holdersAfter(member).includes(server) && !sides.madeAnew.has(member))
  );
}

export function takeOut(draft: Draft, group: VolumeGroup, name: string, server: string): void {
  const { sides } = draft;
  const subject: Subject = { kind: 'volume-group', name };
  const carrier: Carrier = { kind: 'volume-group', name };
  const elsewhere = sides.carrierHoldersAfter(carrier);
  const travels = elsewhere.length > 0 && !elsewhere.includes(server);
  if (travels && !draft.has(`detached ${name}`)) {
    const count = sides.membersBefore(name).length.toString();
    const left = sides.leavesAt(name);
    const leaving = sides.membersBefore(name).filter((each) => sides.head.groupOf.get(each)?.name !== name);
    draft.want(`detached ${name}`, 'check-detached', subject, {
      words: { group: name, count },
      after: leaving.map((each) =>
        left !== undefined && elsewhere.includes(left) ? `detach ${each} ${server}` : `leave ${name} ${each}`,
      ),
    });
    // What leaves the group where that goes, and is to be here as well, comes back once it is out of it.
    for (const each of leaving) {
      const stays = sides.holdersBefore(each).includes(server) && sides.holdersAfter(each).includes(server);
      if (!stays || left === server) continue;
      draft.wait(`detached ${name}`, [detach(draft, each, server)]);
      attach(draft, each, server);
    }
  }
  if (draft.has(`deactivate ${name} ${server}`)) return;
  // A server that stands still, and goes on holding the group, has nothing to let go of.
  if (!sides.runsBefore(server) && keeps(sides, name, server)) return;
  const unmounted = inOrder(group.fileSystems).map((system) => unmountSystem(draft, system, server));
  if (!sides.runsBefore(server)) return;
  const off = draft.want(`deactivate ${name} ${server}`, 'deactivate', subject, {
    server,
    words: { group: name },
    after: [
      ...unmounted.flatMap((each) => each ?? []),
      ...(placeOf(earlyExchangeOf(sides, name)) === server ? joinedEarly(sides, name) : []),
      ...(sides.leavesAt(name) === server
        ? sides
            .membersBefore(name)
            .flatMap((member) => [
              `leave ${name} ${member}`,
              ...(sides.head.groupOf.get(member)?.name === name ? [`replaced ${member}`] : []),
            ])
        : []),
    ],
  });
  if (travels) {
    draft.want(`export ${name} ${server}`, 'export', subject, {
      server,
      words: { group: name },
      after: [off],
    });
  }
}
