import { cautions } from '../base/wording.ts';
import type { Change, ChangeKind, ChangeOf } from '../change/change.ts';
import { type StoppingChange, stops } from '../change/kinds.ts';
import { baseName, headName } from '../change/renames.ts';
import type { Server } from '../estate/estate.ts';
import { calledOtherwise } from './other-name.ts';
import type { ChangeRule } from './rule.ts';
import { subjectRef } from './subject-ref.ts';

const toStop = `Stop the server first (power: stopped), preferably in a change of its own, then detach or delete the volume. ${cautions}`;

export const bootVolumeStays: ChangeRule<'boot-volume-stays'> = {
  name: 'boot-volume-stays',
  about: 'change',
  level: 'error',
  refuses:
    'A boot volume detached, swapped, moved, deleted, added to a volume group or given a new file system while its server runs.',
  why: 'A running server reads and writes its boot volume all the time. If the volume is detached, the guest hangs and what it had not yet written is lost; providers refuse this or stop the server.',
  advice: toStop,
  parameters: {},
  scope: ['teams', 'sites', 'labels'],
  needs: [],
  looksAt: () => ['server'],
  examples: {
    fails: {
      story: 'The boot volume is detached from a running server.',
      main: `servers:
  plate-scanner: { power: running, boot: root }
volumes:
  root: { size: 50 GiB, tier: steady }
`,
      branch: `servers:
  plate-scanner: { power: running }
volumes:
  root: { size: 50 GiB, tier: steady }
`,
      entry: '{ rule: boot-volume-stays }',
    },
    passes: {
      story: 'The server is stopped in the same change.',
      main: `servers:
  plate-scanner: { power: running, boot: root }
volumes:
  root: { size: 50 GiB, tier: steady }
`,
      branch: `servers:
  plate-scanner: { power: stopped }
volumes:
  root: { size: 50 GiB, tier: steady }
`,
      entry: '{ rule: boot-volume-stays }',
    },
  },
  check: () =>
    function* ({ base, head, changes, renames }) {
      const said = new Set<string>();
      const byGravity = (a: Change, b: Change): number => gravest.indexOf(a.kind) - gravest.indexOf(b.kind);
      for (const change of changes.filter(takes).sort(byGravity)) {
        const verb = takesAway(change);
        if (verb === undefined) continue;
        for (const server of bootedFrom(change)) {
          const after = head.estate.servers.get(headName(renames.servers, server.name));
          // A server that this change stops does not run when its volume is taken. One that it deletes running does.
          if (server.power !== 'running' || after?.power === 'stopped') continue;
          if (said.has(server.name)) continue;
          said.add(server.name);
          yield {
            subject: change.subject,
            facet: subjectRef(server),
            place: change.place,
            message: `${server.name} starts from ${server.boot}, which would be ${verb} while ${server.name} runs${after === undefined ? `, and ${server.name} deleted` : ''}`,
            advice: `${sameUnderAnotherName(change, after === undefined ? server : undefined, changes)}${toStop}`,
          };
        }
      }

      function bootedFrom(change: TakingChange) {
        if (change.kind === 'boot-swapped' || change.kind === 'server-changed-id')
          return change.before.boot === undefined ? [] : [change.before];
        const volumes =
          'wipes' in change
            ? change.wipes.map(({ before }) => before.name)
            : [baseName(renames.volumes, change.subject.name)];
        return volumes
          .flatMap((volume) => base.estate.holders.get(volume) ?? [])
          .filter(({ boot }) => boot)
          .flatMap(({ server }) => base.estate.servers.get(server) ?? []);
      }
    },
};

/** The volume, or the server that goes: to rename either, nothing is stopped. */
function sameUnderAnotherName(
  change: TakingChange,
  gone: Server | undefined,
  changes: readonly Change[],
): string {
  const isDeleted = change.kind === 'volume-deleted' || change.kind === 'volume-re-created';
  return [...(gone === undefined ? [] : [gone]), ...(isDeleted ? [change.before] : [])]
    .map((before) => calledOtherwise(before, changes))
    .join('');
}

/** A change that takes a volume from under its server, or writes over it there. */
type TakingChange = StoppingChange | ChangeOf<'group-created' | 'member-joined' | 'file-system-created'>;

const takes = (change: Change): change is TakingChange => stops(change) || 'wipes' in change;

/** What takes a volume away, the gravest first: a volume that is deleted is detached as well, and its server swaps. */
const gravest: readonly ChangeKind[] = [
  'volume-deleted',
  'volume-re-created',
  'volume-moved-site',
  'volume-changed-id',
  'server-changed-id',
  'handed-over',
  'detached',
  'boot-swapped',
  'group-created',
  'member-joined',
  'file-system-created',
];

/** What a change does, where it takes a volume from under the server that holds it. */
function takesAway(change: TakingChange): string | undefined {
  switch (change.kind) {
    case 'boot-swapped':
      return change.after.boot === undefined
        ? 'no longer its boot volume'
        : `swapped for ${change.after.boot}`;
    case 'detached':
      return 'detached';
    case 'handed-over':
      return `moved to ${change.to}`;
    case 'volume-deleted':
      return 'deleted';
    case 'volume-re-created':
      return `deleted, with ${change.after.name} in its place`;
    case 'volume-moved-site':
      return `moved to site ${change.after.site ?? 'none'}`;
    case 'volume-changed-id':
      return `swapped for the volume with the id ${change.after.id ?? 'none'}`;
    case 'server-changed-id':
      return `on another server, the one with the id ${change.after.id ?? 'none'},`;
    case 'group-created':
      return `overwritten by making the volume group ${change.after.name}`;
    case 'member-joined':
      return `overwritten as it joins the volume group ${change.after.name}`;
    case 'file-system-created':
      return 'overwritten by making a file system on it';
    // A server's own changes leave its volume where it is; one that shrinks is refused for what it loses.
    case 'server-stopped':
    case 'server-deleted':
    case 'server-changed-type':
    case 'server-moved-site':
    case 'volume-shrunk':
      return undefined;
  }
}
