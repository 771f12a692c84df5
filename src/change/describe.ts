/** A change in one sentence, in the trade's words. */
import type { Server, Volume } from '../estate/estate.ts';
import { differenceOfBytes, exactSize, showSize } from '../estate/size.ts';
import type { Change } from './change.ts';

const none = 'none';

const layoutWords = (layout: { readonly kind: string }): string => layout.kind;

/** One sentence without a full stop, such as `plates-1 grows from 40 GiB to 60 GiB, by 20 GiB`. */
export function describeChange(change: Change): string {
  switch (change.kind) {
    case 'server-created':
      return `server ${change.after.name} is created, ${change.after.power}`;
    case 'server-deleted':
      return `server ${change.before.name} is deleted`;
    case 'server-renamed':
      return `server ${change.before.name} is renamed ${change.after.name}`;
    case 'server-started':
      return `server ${change.after.name} is started`;
    case 'server-stopped':
      return `server ${change.after.name} is stopped`;
    case 'server-changed-type':
      return `server ${change.after.name} goes from server type ${change.before.type ?? none} to ${change.after.type ?? none}`;
    case 'server-moved-site':
      return `server ${change.after.name} moves from site ${change.before.site ?? none} to ${change.after.site ?? none}`;
    case 'server-changed-team':
      return `server ${change.after.name} passes from team ${change.before.team ?? none} to ${change.after.team ?? none}`;
    case 'boot-swapped':
      return `server ${change.after.name} starts from ${change.after.boot ?? 'no declared volume'} instead of ${change.before.boot ?? 'no declared volume'}`;
    case 'server-edited':
      return `server ${change.after.name}: ${differences(change.before, change.after)}`;
    case 'volume-created':
      return `volume ${change.after.name} is created: ${exactSize(change.after.size)}, tier ${change.after.tier}`;
    case 'volume-deleted':
      return `volume ${change.before.name} is deleted, with its ${exactSize(change.before.size)}`;
    case 'volume-re-created':
      return `volume ${change.before.name} (${exactSize(change.before.size)}) is deleted and ${change.after.name} (${exactSize(change.after.size)}) created in its place, ${change.seat}`;
    case 'volume-renamed':
      return `volume ${change.before.name} is renamed ${change.after.name}`;
    case 'volume-grown':
      return `volume ${change.after.name} grows from ${exactSize(change.before.size)} to ${exactSize(change.after.size)}, by ${showSize(differenceOfBytes(change.after.size, change.before.size))}`;
    case 'volume-shrunk':
      return `volume ${change.after.name} shrinks from ${exactSize(change.before.size)} to ${exactSize(change.after.size)}, by ${showSize(differenceOfBytes(change.before.size, change.after.size))}`;
    case 'volume-moved-tier':
      return `volume ${change.after.name} moves from tier ${change.before.tier} to ${change.after.tier}`;
    case 'volume-moved-site':
      return `volume ${change.after.name} moves from site ${change.before.site ?? none} to ${change.after.site ?? none}`;
    case 'volume-changed-team':
      return `volume ${change.after.name} passes from team ${change.before.team ?? none} to ${change.after.team ?? none}`;
    case 'volume-unprotected':
      return `volume ${change.after.name} loses its protection against deletion`;
    case 'volume-edited':
      return `volume ${change.after.name}: ${differences(change.before, change.after)}`;
    case 'attached':
      return `volume ${change.volume.name} is attached to ${change.server}`;
    case 'detached':
      return `volume ${change.volume.name} is detached from ${change.server}`;
    case 'handed-over':
      return `volume ${change.volume.name} is handed over from ${change.from} to ${change.to}`;
    case 'group-created':
      return `volume group ${change.after.name} is ${change.after.existing ? 'declared as it is' : 'created'} on ${change.after.members.join(', ')}${change.wipes.length === 0 ? '' : `, and what lies on ${change.wipes.join(', ')} is overwritten`}`;
    case 'group-deleted':
      return `volume group ${change.before.name} is dissolved`;
    case 'group-renamed':
      return `volume group ${change.before.name} is renamed ${change.after.name}`;
    case 'member-joined':
      return `volume ${change.volume} joins the volume group ${change.after.name}${change.wipes ? ', and what lies on it is overwritten' : ''}`;
    case 'member-left':
      return `volume ${change.volume} leaves the volume group ${change.after.name}`;
    case 'group-edited':
      return change.before.extent !== change.after.extent
        ? `volume group ${change.after.name} goes from extents of ${exactSize(change.before.extent)} to ${exactSize(change.after.extent)}`
        : layoutWords(change.before.layout) !== layoutWords(change.after.layout)
          ? `volume group ${change.after.name} goes from a ${layoutWords(change.before.layout)} layout to a ${layoutWords(change.after.layout)} one`
          : `volume group ${change.after.name} is described differently`;
    case 'file-system-created': {
      const { after, wipes } = change;
      const what = `${exactSize(after.size)}, ${after.type}`;
      return after.existing
        ? `file system ${after.mount} on ${after.on.name} is declared as it lies there: ${what}`
        : `file system ${after.mount} on ${after.on.name} is made: ${what}${wipes ? ', over what lies on the volume' : ''}`;
    }
    case 'file-system-remounted':
      return `file system ${change.before.mount} on ${change.after.on.name} is mounted at ${change.after.mount} instead`;
    case 'file-system-deleted':
      return `file system ${change.before.mount} on ${change.before.on.name} is deleted, with its ${exactSize(change.before.size)}`;
    case 'file-system-grown':
      return `file system ${change.after.mount} on ${change.after.on.name} grows from ${exactSize(change.before.size)} to ${exactSize(change.after.size)}`;
    case 'file-system-shrunk':
      return `file system ${change.after.mount} on ${change.after.on.name} shrinks from ${exactSize(change.before.size)} to ${exactSize(change.after.size)}`;
    case 'file-system-remade':
      return `file system ${change.after.mount} on ${change.after.on.name} is made over from ${change.before.type} to ${change.after.type}`;
  }
}

/** Keys that no kind of change of its own tells of, as files write them. */
const edited = [
  ['guest', 'guest'],
  ['iops', 'IOPS'],
  ['attachmentSlots', 'attachment-slots'],
  ['shareable', 'shareable'],
  ['protected', 'protected'],
  ['owner', 'owner'],
  ['reason', 'reason'],
  ['retainUntil', 'retain-until'],
  ['site', 'site'],
  ['labels', 'labels'],
] as const;

/** Such as `retain-until goes from 2027-03-31 to none`. */
function differences(before: Server | Volume, after: Server | Volume): string {
  const shown = (declared: object, key: string): string => {
    const value: unknown = Reflect.get(declared, key);
    if (value === undefined) return none;
    return typeof value === 'object' ? JSON.stringify(value) : String(value);
  };
  return edited
    .filter(([key]) => shown(before, key) !== shown(after, key))
    .map(([key, written]) => `${written} goes from ${shown(before, key)} to ${shown(after, key)}`)
    .join(', ');
}
