/** What each kind of change to a server wants. */
import type { ChangeOf } from '../change/change.ts';
import { volumeThere } from './adoption.ts';
import { travelsWith } from './attachments.ts';
import type { Draft } from './draft.ts';
import { restart, stop } from './power.ts';
import { cleared, fetched } from './waits.ts';
import { serverSubject } from './words.ts';

export function serverCreated(draft: Draft, { after, subject }: ChangeOf<'server-created'>): string {
  const { sides } = draft;
  const { name, boot, power, type, site } = after;
  const ready = boot === undefined ? [] : [...fetched(sides, boot, name), ...travelsWith(sides, boot, name)];
  return draft.want(`create-server ${name}`, 'create-server', subject, {
    server: name,
    words: {
      where: `${type === undefined ? '' : `, server type ${type}`}${site === undefined ? '' : `, site ${site}`}`,
      boot: boot === undefined ? '' : `, to start from ${boot}`,
      power,
    },
    after: ready,
  });
}

export function serverDeleted(draft: Draft, { before, subject }: ChangeOf<'server-deleted'>): string {
  const { sides } = draft;
  const { name } = before;
  if (before.power === 'running') stop(draft, name);
  return draft.want(`delete-server ${name}`, 'delete-server', subject, {
    server: name,
    after: [`stop ${name}`, ...sides.heldBefore(name).map((volume) => `detach ${volume} ${name}`)],
    turn: 'delete',
  });
}

export function whileStopped(
  draft: Draft,
  server: string,
  procedure: 'change-server-type' | 'move-server',
  words: Readonly<Record<string, string>>,
): string {
  const { sides } = draft;
  restart(draft, server);
  const moves = procedure === 'move-server';
  const key = draft.want(`${procedure} ${server}`, procedure, serverSubject(server), {
    server,
    words,
    // Its volumes stay where they are; those that go along are made again there.
    after: [
      `stop ${server}`,
      // Where it is created again at the other site, it is that one that is changed.
      ...(moves ? [] : [`move-server ${server}`]),
      ...(moves ? sides.heldBefore(server).map((volume) => `detach ${volume} ${server}`) : []),
    ],
  });
  if (sides.head.servers.get(server) !== undefined) draft.wait(`start ${server}`, [key]);
  return key;
}

export function bootSwapped(draft: Draft, { before, after, subject }: ChangeOf<'boot-swapped'>): string {
  const { sides } = draft;
  const { name } = after;
  // A boot volume that is there already, on a server of which main says none, is only declared.
  if (
    before.boot === undefined &&
    after.boot !== undefined &&
    sides.adopted.attached.has(`${after.boot} ${name}`)
  )
    return volumeThere(draft, after.boot);
  restart(draft, name);
  const old = before.boot === undefined ? [] : [`detach ${sides.headName('volumes', before.boot)} ${name}`];
  return draft.want(`set-boot ${name}`, 'set-boot', subject, {
    server: name,
    words: { volume: after.boot ?? 'no declared volume' },
    after: [
      `stop ${name}`,
      `move-server ${name}`,
      ...old,
      ...(after.boot === undefined
        ? []
        : [
            `attach ${after.boot} ${name}`,
            `fill ${after.boot}`,
            `install ${after.boot}`,
            ...cleared(sides, after.boot),
          ]),
    ],
  });
}
