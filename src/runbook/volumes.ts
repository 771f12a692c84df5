/** What each kind of change to a volume wants. */
import type { ChangeOf } from '../change/change.ts';
import type { Volume, VolumeGroup } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import { volumeThere } from './adoption.ts';
import { attach, detach } from './attachments.ts';
import { checkBackup, checkGroup } from './checks.ts';
import type { Draft } from './draft.ts';
import { earlyExchangeOf, exchangeOf, joinedEarly, placeOf } from './exchange.ts';
import { growSystem } from './file-systems.ts';
import type { Sides } from './sides.ts';
import { deleteOld, deleteVolume } from './volume-deletion.ts';
import { madeRoomIn, putIntoUse, ready } from './waits.ts';
import { seenWords, settingsWords, volumeSubject } from './words.ts';

export function createVolume(draft: Draft, volume: Volume): string {
  const { name, size, tier, site } = volume;
  return draft.want(`create ${name}`, 'create-volume', volumeSubject(name), {
    words: {
      size: exactSize(size),
      tier,
      where: site === undefined ? '' : `, site ${site}`,
      how: settingsWords(volume),
    },
    turn: 'ahead',
  });
}

export function reCreated(
  draft: Draft,
  { before, after, subject, existing }: ChangeOf<'volume-re-created'>,
): string {
  const { sides } = draft;
  if (existing) {
    // What is there already has what it is to hold: nothing is put on it from the old one.
    const done = deleteVolume(draft, before);
    draft.want(`replacement ${before.name}`, 'check-replacement', subject, {
      words: { volume: after.name, old: before.name },
      after: [volumeThere(draft, after.name)],
    });
    return done;
  }
  createVolume(draft, after);
  const done = deleteVolume(draft, before);
  const [holder] = sides.holdersAfter(after.name);
  const boots = holder !== undefined && sides.head.servers.get(holder)?.boot === after.name;
  const system = after.fileSystem;
  const inGroup = sides.head.groupOf.get(after.name);
  const filled =
    inGroup !== undefined
      ? [
          `leave ${inGroup.name} ${before.name}`,
          `join ${inGroup.name} ${after.name}`,
          `make-group ${inGroup.name}`,
        ]
      : boots
        ? [
            draft.want(`fill ${after.name}`, 'fill-boot', volumeSubject(after.name), {
              words: { server: holder, old: before.name },
              after: [`create ${after.name}`, `stop ${holder}`, `backup volume ${before.name}`],
            }),
            `start ${holder}`,
            `create-server ${holder}`,
          ]
        : [
            draft.want(`bring-over ${after.name}`, 'bring-over', volumeSubject(after.name), {
              server: holder,
              words: { old: before.name },
              after: [
                ...ready({ kind: 'volume', name: after.name }, holder),
                `backup volume ${before.name}`,
                ...(system === undefined
                  ? []
                  : [`make ${sides.systemKey(system)}`, `mount ${sides.systemKey(system)} ${holder ?? ''}`]),
              ],
            }),
          ];
  draft.want(`replacement ${before.name}`, 'check-replacement', subject, {
    words: { volume: after.name, old: before.name },
    after: filled,
  });
  return done;
}

export function volumeGrown(draft: Draft, { before, after, subject }: ChangeOf<'volume-grown'>): string {
  const { sides } = draft;
  const { name, size } = after;
  const anew = sides.madeAnew.get(name);
  if (anew !== undefined) return anew;
  const key = draft.want(`grow ${name}`, 'grow-volume', subject, {
    words: { was: exactSize(before.size), size: exactSize(size) },
  });
  const group = sides.head.groupOf.get(name);
  const exchange = group === undefined ? undefined : earlyExchangeOf(sides, group.name);
  const place = placeOf(exchange);
  if (group !== undefined && exchange !== undefined && wasIn(sides, name, group))
    growEarly(draft, { name, size }, group, place);
  // All that hold it see it grow; one of them, whichever comes first, grows what lies on it.
  const holders = sides.holdersAfter(name);
  for (const server of holders) {
    const boots = sides.head.servers.get(server)?.boot === name;
    // Lent to another for a while, it is seen as it then is when it is back.
    const isLent = exchange !== undefined && place !== undefined && place !== server;
    const held = sides.holdersBefore(name).includes(server) && !isLent;
    // A server that starts from it later sees all of it then.
    if (boots && !held && !sides.runsAfter(server)) continue;
    // A guest that starts sees it as it then is.
    if (held && !sides.runsBefore(server)) draft.wait(`start ${server}`, [key]);
    const seen =
      held && sides.runsBefore(server) && sides.runsAfter(server)
        ? draft.want(`see-size ${name} ${server}`, 'see-size', subject, {
            server,
            words: seenWords(size),
            after: [key],
            early: place === server,
          })
        : held
          ? key
          : `see ${name} ${server}`;
    // A boot volume has partitions; any other has what a survey shows.
    const room =
      boots || sides.devices.isLayered(server, sides.baseName('volumes', name))
        ? [
            draft.want(`partition ${name}`, 'grow-partition', subject, {
              server,
              after: [seen],
            }),
          ]
        : [seen];
    if (group !== undefined) {
      if (wasIn(sides, name, group)) growMember(draft, name, group, server, room);
    } else growOnIt(draft, { before, after, subject }, server, room);
  }
  // What nobody holds is grown inside once somebody does.
  if (holders.length === 0) {
    if (group === undefined) growOnIt(draft, { before, after, subject }, undefined, [key]);
    else if (wasIn(sides, name, group)) growMember(draft, name, group, undefined, [key]);
  }
  return key;
}

/** What is done with a group that is lent to some server, while all its members are at one site. */
function whileAtOneSite(sides: Sides, volume: string): readonly string[] {
  const before = sides.groupBefore(volume);
  if (before === undefined) return [];
  const name = sides.headName('groups', before.name);
  if (sides.leavesAt(name) !== undefined) return [];
  // What is no member any more goes anywhere.
  if (sides.head.groupOf.get(volume)?.name !== name)
    return [`remove-group ${name}`, `leave ${name} ${volume}`, `replaced ${volume}`];
  return [
    `remove-group ${name}`,
    ...madeRoomIn(sides, { kind: 'volume-group', name }),
    ...joinedEarly(sides, name),
    ...sides.membersBefore(name).flatMap((each) => [`leave ${name} ${each}`, `replaced ${each}`]),
  ];
}

const wasIn = (sides: Sides, volume: string, { name }: VolumeGroup): boolean => {
  const before = sides.groupBefore(volume);
  return before !== undefined && sides.headName('groups', before.name) === name;
};

function growOnIt(
  draft: Draft,
  { before, after, subject }: Pick<ChangeOf<'volume-grown'>, 'before' | 'after' | 'subject'>,
  server: string | undefined,
  room: readonly string[],
): void {
  const [former, whole] = [before.fileSystem, after.fileSystem];
  if (whole === undefined) {
    draft.want(`inside ${after.name}`, 'grow-inside', subject, { server, after: room });
  } else if (former?.type === whole.type && whole.fields.of('size') === undefined) {
    draft.wait(growSystem(draft, whole, former), room);
  }
}

/** Room that a group needs before anything leaves it. */
function growEarly(
  draft: Draft,
  { name, size }: Pick<Volume, 'name' | 'size'>,
  group: VolumeGroup,
  server: string | undefined,
): void {
  const subject = volumeSubject(name);
  const seen =
    server === undefined
      ? `grow ${name}`
      : draft.want(`see-size ${name} ${server}`, 'see-size', subject, {
          server,
          words: seenWords(size),
          after: [`grow ${name}`],
          early: true,
        });
  const key = draft.want(`grow-member ${name}`, 'grow-member', subject, {
    server,
    words: { group: group.name, on: group.name },
    early: true,
    after: [seen],
  });
  draft.wait(`deactivate ${group.name} ${server ?? ''}`, [key]);
  checkGroup(draft, group, draft.sides.homeOf({ kind: 'volume-group', name: group.name }), [key]);
}

function growMember(
  draft: Draft,
  volume: string,
  group: VolumeGroup,
  server: string | undefined,
  after: readonly string[],
): void {
  if (earlyExchangeOf(draft.sides, group.name) !== undefined) return;
  const key = draft.want(`grow-member ${volume}`, 'grow-member', volumeSubject(volume), {
    server,
    words: { group: group.name },
    after: [...after, `activate ${group.name} ${server ?? ''}`, `join ${group.name} ${volume}`],
  });
  checkGroup(draft, group, server, [key]);
}

export function volumeMovedSite(
  draft: Draft,
  { before, after, subject }: Pick<ChangeOf<'volume-moved-site'>, 'before' | 'after' | 'subject'>,
): string {
  const { sides } = draft;
  const { name } = after;
  const backup = checkBackup(draft, subject, name);
  const detached = sides.holdersBefore(name).map((server) => detach(draft, name, server));
  const group = sides.head.groupOf.get(name);
  // Extents that find no room on a smaller one need others of the group where they are.
  const isShort = after.size < before.size && group !== undefined && wasIn(sides, name, group);
  const made = draft.want(`copy-across ${name}`, 'copy-across', subject, {
    apart: isShort && exchangeOf(sides, group.name)?.place === 'apart',
    words: {
      ...(isShort ? { group: group.name } : {}),
      site: after.site ?? 'none',
      was: before.site ?? 'none',
      size: exactSize(after.size),
      tier: after.tier,
      how: settingsWords(after),
      copied: after.size < before.size ? ', file by file, because it is smaller there' : '',
    },
    after: [backup, ...detached, ...whileAtOneSite(sides, name)],
  });
  const attached = sides.holdersAfter(name).map((server) => attach(draft, name, server));
  const proven = draft.want(`replacement ${name}`, 'check-replacement', subject, {
    words: { old: `the old ${name}` },
    after: [
      made,
      ...attached,
      ...sides.holdersAfter(name).map((server) => `see ${name} ${server}`),
      ...putIntoUse(sides, name),
    ],
  });
  return deleteOld(draft, before, name, [backup, proven]);
}

export function volumeMovedTier(
  draft: Draft,
  { before, after, subject }: ChangeOf<'volume-moved-tier'>,
): string {
  const words = { was: before.tier, tier: after.tier };
  return (
    draft.sides.madeAnew.get(after.name) ?? draft.want(`tier ${after.name}`, 'move-tier', subject, { words })
  );
}

export function volumeEdited(
  draft: Draft,
  { before, after, subject }: ChangeOf<'volume-edited'>,
): string | undefined {
  const { sides } = draft;
  const { name } = after;
  const anew = sides.madeAnew.get(name);
  const sets = before.shareable !== after.shareable || (!before.protected && after.protected);
  if (anew !== undefined) return sets ? anew : undefined;
  const protects =
    !before.protected && after.protected
      ? draft.want(`protect ${name}`, 'protect', subject, { after: [`create ${name}`] })
      : undefined;
  if (before.shareable === after.shareable) return protects;
  const key = `share ${name}`;
  if (after.shareable)
    return draft.want(key, 'share', subject, { after: protects === undefined ? [] : [protects] });
  const left = sides.holdersBefore(name).map((server) => `detach ${name} ${server}`);
  return draft.want(key, 'unshare', subject, {
    after: [...left, ...(protects === undefined ? [] : [protects])],
  });
}
