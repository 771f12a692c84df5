/** What each kind of change to a volume wants. */
import type { ChangeOf } from '../change/change.ts';
import type { Volume, VolumeGroup } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import { volumeThere } from './adoption.ts';
import { attach, detach } from './attachments.ts';
import { checkBackup, checkGroup } from './checks.ts';
import type { Draft } from './draft.ts';
import { growSystem } from './file-systems.ts';
import { deleteVolume, unprotect } from './volume-deletion.ts';
import { ready } from './waits.ts';
import { volumeSubject } from './words.ts';

export function createVolume(draft: Draft, { name, size, tier, site }: Volume): string {
  return draft.want(`create ${name}`, 'create-volume', volumeSubject(name), {
    words: { size: exactSize(size), tier, where: site === undefined ? '' : `, site ${site}` },
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
  const key = draft.want(`grow ${name}`, 'grow-volume', subject, {
    words: { was: exactSize(before.size), size: exactSize(size) },
  });
  const group = sides.head.groupOf.get(name);
  const whole = after.fileSystem;
  const former = before.fileSystem;
  // All that hold it see it grow; one of them, whichever comes first, grows what lies on it.
  for (const server of sides.holdersAfter(name)) {
    const boots = sides.head.servers.get(server)?.boot === name;
    const held = sides.holdersBefore(name).includes(server);
    // A server that starts from it later sees all of it then.
    if (boots && !held && !sides.runsAfter(server)) continue;
    const seen =
      held && sides.runsBefore(server) && sides.runsAfter(server)
        ? draft.want(`see-size ${name} ${server}`, 'see-size', subject, {
            server,
            words: { size: exactSize(size) },
            after: [key],
          })
        : held
          ? key
          : `see ${name} ${server}`;
    const room = boots
      ? [
          draft.want(`partition ${name}`, 'grow-partition', subject, {
            server,
            after: [seen],
          }),
        ]
      : [seen];
    if (group !== undefined) {
      if (sides.groupBefore(name) !== undefined) growMember(draft, name, group, server, room);
    } else if (whole === undefined) {
      draft.want(`inside ${name}`, 'grow-inside', subject, { server, after: room });
    } else if (former?.type === whole.type && whole.fields.of('size') === undefined) {
      draft.wait(growSystem(draft, whole, former), room);
    }
  }
  return key;
}

function growMember(
  draft: Draft,
  volume: string,
  group: VolumeGroup,
  server: string,
  after: readonly string[],
): void {
  const key = draft.want(`grow-member ${volume}`, 'grow-member', volumeSubject(volume), {
    server,
    words: { group: group.name },
    after: [...after, `activate ${group.name} ${server}`, `join ${group.name} ${volume}`],
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
  if (before.protected) unprotect(draft, name);
  const detached = sides.holdersBefore(name).map((server) => detach(draft, name, server));
  const made = draft.want(`copy-across ${name}`, 'copy-across', subject, {
    words: {
      site: after.site ?? 'none',
      was: before.site ?? 'none',
      how: after.size < before.size ? ', file by file, because it is smaller there' : '',
    },
    after: [backup, ...detached],
  });
  const attached = sides.holdersAfter(name).map((server) => attach(draft, name, server));
  const proven = draft.want(`replacement ${name}`, 'check-replacement', subject, {
    words: { old: `the old ${name}` },
    after: [made, ...attached, ...sides.holdersAfter(name).map((server) => `see ${name} ${server}`)],
  });
  return draft.want(`delete-old-site ${name}`, 'delete-old', subject, {
    words: { size: exactSize(before.size) },
    after: [backup, proven, `unprotect ${name}`],
    turn: 'delete',
  });
}

export function volumeEdited(
  draft: Draft,
  { before, after, subject }: ChangeOf<'volume-edited'>,
): string | undefined {
  const { sides } = draft;
  const { name } = after;
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
