/** What each kind of change to a volume group wants. */
import { listed } from '../base/wording.ts';
import type { ChangeOf } from '../change/change.ts';
import { exactSize } from '../estate/size.ts';
import { bring, takeOut } from './attachments.ts';
import { checkBackup, checkGroup } from './checks.ts';
import type { Draft } from './draft.ts';
import { exchangeOf } from './exchange.ts';
import { installOver } from './install.ts';
import type { Carrier } from './sides.ts';
import { goneWith } from './volume-deletion.ts';
import { boughtFor, cleared, madeRoomIn, ready, workplace } from './waits.ts';
import { layoutWords, sorted, volumeSubject } from './words.ts';

export function makeGroup(draft: Draft, { after: group, wipes }: ChangeOf<'group-created'>): string {
  const { sides } = draft;
  const { name, extent } = group;
  const server = sides.homeOf({ kind: 'volume-group', name });
  const members = sorted(group.members);
  const over = sorted(wipes.map((wiped) => wiped.name));
  const carrier: Carrier = { kind: 'volume-group', name };
  const starter = sides.bootedFrom(carrier);
  if (starter !== undefined) {
    const what = `volume group ${name} on ${listed(members)}, with extents of ${exactSize(extent)}`;
    const made = over.length === 0 ? [] : [installOver(draft, { on: carrier, server: starter, what })];
    const checked = checkGroup(draft, group, starter, made);
    return made[0] ?? checked;
  }
  const key = draft.want(
    `make-group ${name}`,
    over.length > 0 ? 'make-group-over' : 'make-group',
    { kind: 'volume-group', name },
    {
      server,
      words: { group: name, members: listed(members), extent: exactSize(extent) },
      after: [
        ...members.flatMap((member) => ready({ kind: 'volume', name: member }, server)),
        ...members.flatMap((member) => cleared(sides, member)),
        ...over.map((volume) => checkBackup(draft, volumeSubject(volume), volume)),
      ],
    },
  );
  checkGroup(draft, group, server, [key]);
  return key;
}

export function groupDeleted(draft: Draft, { before, subject }: ChangeOf<'group-deleted'>): string {
  const { sides } = draft;
  const { name } = before;
  const members = sides.membersBefore(name);
  const lastGone = members.every((member) => !sides.head.volumes.has(member)) ? members.at(-1) : undefined;
  // The group goes with its volumes, and can be had back until the last of them is deleted.
  if (lastGone !== undefined) return goneWith(draft, lastGone);
  const server = sides.worksAt({ kind: 'volume-group', name });
  for (const holder of sides.carrierHoldersBefore({ kind: 'volume-group', name }))
    takeOut(draft, before, name, holder);
  return draft.want(`remove-group ${name}`, 'remove-group', subject, {
    server,
    words: { group: name, on: name },
    after: [
      checkBackup(draft, subject, `volume group ${name}`),
      ...sides
        .carrierHoldersBefore({ kind: 'volume-group', name })
        .map((holder) => `deactivate ${name} ${holder}`),
    ],
  });
}

export function groupRenamed(draft: Draft, { before, after, subject }: ChangeOf<'group-renamed'>): string {
  const { sides } = draft;
  const server = sides.homeOf({ kind: 'volume-group', name: after.name });
  return draft.want(`rename-group ${after.name}`, 'rename-group', subject, {
    server,
    words: { old: before.name, group: after.name, on: after.name },
    after: [`activate ${after.name} ${server ?? ''}`],
  });
}

export function memberJoined(
  draft: Draft,
  { volume, wipes, after, subject }: ChangeOf<'member-joined'>,
): string {
  const { sides } = draft;
  const { name } = after;
  const starter = sides.bootedFrom({ kind: 'volume', name: volume });
  if (starter !== undefined) {
    const on: Carrier = { kind: 'volume', name: volume };
    const what = `a member of volume group ${name}`;
    const installed = wipes.length === 0 ? [] : [installOver(draft, { on, server: starter, what })];
    const checked = checkGroup(draft, after, starter, installed);
    return installed[0] ?? checked;
  }
  const early = bring(draft, name, volume);
  const home = sides.homeOf({ kind: 'volume-group', name });
  const server = early === undefined ? home : early.server;
  const key = draft.want(
    `join ${name} ${volume}`,
    wipes.length > 0 ? 'join-group-over' : 'join-group',
    subject,
    {
      server,
      early: early !== undefined,
      words: { volume, group: name, on: name },
      after: [
        ...cleared(sides, volume),
        ...(early === undefined
          ? [
              ...ready({ kind: 'volume', name: volume }, home),
              ...after.members.map((each) => `copy-across ${each}`),
              `activate ${name} ${home ?? ''}`,
              `rename-group ${name}`,
            ]
          : early.after),
        ...(wipes.length > 0 ? [checkBackup(draft, volumeSubject(volume), volume)] : []),
      ],
    },
  );
  checkGroup(draft, after, home, [key, `activate ${name} ${home ?? ''}`]);
  return key;
}

export function memberLeft(draft: Draft, { volume, after, subject }: ChangeOf<'member-left'>): string {
  const { sides } = draft;
  const { name } = after;
  const carrier: Carrier = { kind: 'volume-group', name };
  const holders = sides.carrierHoldersBefore(carrier);
  const { server, comes, there } = workplace(sides, carrier);
  const exchange = exchangeOf(sides, name);
  const key = draft.want(`leave ${name} ${volume}`, 'leave-group', subject, {
    server,
    comes: comes || exchange?.place === 'late',
    apart: exchange?.place === 'apart',
    words: { volume, group: name, on: name },
    after: [
      ...holders.flatMap((holder) => (holder === server ? [] : [`deactivate ${name} ${holder}`])),
      ...madeRoomIn(sides, carrier),
      ...there,
    ],
    preferred: boughtFor(sides, after),
  });
  checkGroup(draft, after, sides.homeOf(carrier), [key]);
  return key;
}

export function groupEdited(
  draft: Draft,
  { before, after, subject }: ChangeOf<'group-edited'>,
): string | undefined {
  const { sides } = draft;
  const { name } = after;
  const server = sides.homeOf({ kind: 'volume-group', name });
  const layouts = { was: layoutWords(before.layout), layout: layoutWords(after.layout) };
  const active = [`activate ${name} ${server ?? ''}`, `rename-group ${name}`];
  const extent =
    before.extent === after.extent
      ? undefined
      : draft.want(`re-extent ${name}`, 're-extent', subject, {
          server,
          words: { group: name, was: exactSize(before.extent), extent: exactSize(after.extent), on: name },
          after: active,
        });
  if (extent !== undefined) draft.wait(`check-group ${name}`, [extent]);
  if (layouts.was === layouts.layout) return extent;
  const anew = (before.layout.kind === 'striped') !== (after.layout.kind === 'striped');
  const words = { group: name, on: name, ...layouts };
  const first = [...active, ...(extent === undefined ? [] : [extent])];
  const starter = anew ? sides.bootedFrom({ kind: 'volume-group', name }) : undefined;
  if (starter !== undefined) {
    const what = `volume group ${name} with its logical volumes ${layouts.layout}`;
    return installOver(draft, { on: { kind: 'volume-group', name }, server: starter, what });
  }
  return anew
    ? draft.want(`lay-out ${name}`, 'lay-out-anew', subject, {
        server,
        words,
        after: [...first, checkBackup(draft, subject, `what is in volume group ${name}`)],
      })
    : draft.want(`lay-out ${name}`, 'convert-layout', subject, { server, words, after: first });
}
