/** A volume made smaller: never where it lies, but by another that takes its place. */
import type { ChangeOf } from '../change/change.ts';
import { exactSize } from '../estate/size.ts';
import { attach, detach } from './attachments.ts';
import { checkBackup, checkGroup } from './checks.ts';
import type { Draft } from './draft.ts';
import { exchangeOf } from './exchange.ts';
import { restart } from './power.ts';
import { deleteOld } from './volume-deletion.ts';
import { volumeMovedSite } from './volumes.ts';
import { boughtFor, madeRoomIn, outOfGroup, putIntoUse } from './waits.ts';
import { settingsWords } from './words.ts';

export function volumeShrunk(draft: Draft, { before, after, subject }: ChangeOf<'volume-shrunk'>): string {
  const { sides } = draft;
  const { name } = after;
  // Made anew at another site, it is made smaller there.
  if (before.site !== after.site) return volumeMovedSite(draft, { before, after, subject });
  const words = { size: exactSize(after.size), tier: after.tier, how: settingsWords(after) };
  const backup = checkBackup(draft, subject, name);
  const made = draft.want(`smaller ${name}`, 'create-smaller', subject, { words, turn: 'ahead' });
  const [server, ...others] = sides.holdersBefore(name);
  const boots = server !== undefined && sides.bootBefore(server) === name;
  const group = sides.groupBefore(name);
  const stillIn = sides.head.groupOf.get(name);
  const grouped =
    group !== undefined && stillIn !== undefined && sides.headName('groups', group.name) === stillIn.name;
  const out: string[] = [];
  // What several servers have at once is taken from all of them first.
  if (server !== undefined && others.length === 0 && !boots && sides.runsBefore(server)) {
    const beside = draft.want(`attach-smaller ${name}`, 'attach-smaller', subject, {
      server,
      after: [made],
    });
    const swapped = draft.want(
      `replaced ${name}`,
      grouped ? 'replace-member' : 'put-smaller-in-place',
      subject,
      {
        server,
        words: { group: sides.headName('groups', group?.name ?? '') },
        apart: grouped && exchangeOf(sides, stillIn.name)?.place === 'apart',
        // A member that leaves its group for good has nothing on it then.
        after: [
          beside,
          backup,
          ...(group === undefined
            ? []
            : grouped
              ? madeRoomIn(sides, { kind: 'volume-group', name: stillIn.name })
              : outOfGroup(sides, name, group)),
        ],
        preferred: grouped ? boughtFor(sides, stillIn) : [],
      },
    );
    if (grouped)
      checkGroup(draft, stillIn, sides.homeOf({ kind: 'volume-group', name: stillIn.name }), [swapped]);
    const own = before.fileSystem;
    const gone = own === undefined ? [] : [`unmount ${sides.systemKey(own)} ${server}`];
    // The smaller one is mounted in its place, and is what is unmounted.
    for (const each of gone) if (!grouped) draft.wait(each, [swapped]);
    const idle = group === undefined ? [] : [`deactivate ${sides.headName('groups', group.name)} ${server}`];
    out.push(
      draft.want(`detach-old ${name}`, 'detach-old', subject, {
        server,
        after: [swapped, ...gone, ...idle],
      }),
    );
    // Two of one name do not go along, nor are they there when a guest starts, and no server goes with one of them.
    for (const each of [`move-server ${server}`, `start ${server}`, `delete-server ${server}`])
      draft.wait(each, [`detach-old ${name}`]);
  } else {
    if (server !== undefined && boots) restart(draft, server);
    const holders = sides.holdersBefore(name);
    const detached = holders.map((holder) => detach(draft, name, holder));
    const isLate = grouped && exchangeOf(sides, stillIn.name)?.place === 'late';
    const room =
      group === undefined
        ? []
        : !grouped
          ? outOfGroup(sides, name, group)
          : isLate
            ? []
            : madeRoomIn(sides, { kind: 'volume-group', name: stillIn.name });
    draft.want(`fill ${name}`, 'fill-smaller', subject, {
      after: [made, backup, ...detached, ...room],
      preferred: grouped && !isLate ? boughtFor(sides, stillIn) : [],
      apart: grouped && exchangeOf(sides, stillIn.name)?.place === 'apart',
    });
    out.push(`fill ${name}`);
    for (const holder of holders) {
      if (sides.holdersAfter(name).includes(holder)) out.push(attach(draft, name, holder));
    }
  }
  // Moved off within the group, the old one holds nothing that could be gone back to.
  const vacated = out.includes(`detach-old ${name}`) && grouped;
  const proven = draft.want(
    `replacement ${name}`,
    vacated ? 'check-member-replacement' : 'check-replacement',
    subject,
    {
      ...(vacated ? { server } : {}),
      words: { old: `the old ${name}`, group: sides.headName('groups', group?.name ?? '') },
      after: [
        ...out,
        ...sides.holdersAfter(name).flatMap((holder) => [`start ${holder}`, `see ${name} ${holder}`]),
        ...putIntoUse(sides, name),
      ],
    },
  );
  return deleteOld(draft, before, name, [backup, proven, ...out]);
}
