/** Changes: what differs between the base estate and the head estate, as one union. */

import type { FileSystem, Server, Subject, Volume, VolumeGroup } from '../estate/estate.ts';
import type { RevisionPlace } from './place.ts';

/** Both ends of one thing. */
interface Both<T> {
  readonly before: T;
  readonly after: T;
}

type ServerChange =
  | { readonly kind: 'server-created'; readonly after: Server }
  | { readonly kind: 'server-deleted'; readonly before: Server }
  | ({ readonly kind: 'server-renamed' } & Both<Server>)
  | ({ readonly kind: 'server-started' } & Both<Server>)
  | ({ readonly kind: 'server-stopped' } & Both<Server>)
  | ({ readonly kind: 'server-changed-type' } & Both<Server>)
  | ({ readonly kind: 'server-moved-site' } & Both<Server>)
  | ({ readonly kind: 'server-changed-team' } & Both<Server>)
  | ({ readonly kind: 'boot-swapped' } & Both<Server>)
  | ({ readonly kind: 'server-edited' } & Both<Server>);

type VolumeChange =
  | { readonly kind: 'volume-created'; readonly after: Volume }
  | { readonly kind: 'volume-deleted'; readonly before: Volume }
  /** Deleted, and another volume created in its place: the same seat in a group, boot or mount point. */
  | ({ readonly kind: 'volume-re-created'; readonly seat: string } & Both<Volume>)
  | ({ readonly kind: 'volume-renamed' } & Both<Volume>)
  | ({ readonly kind: 'volume-grown' } & Both<Volume>)
  | ({ readonly kind: 'volume-shrunk' } & Both<Volume>)
  | ({ readonly kind: 'volume-moved-tier' } & Both<Volume>)
  | ({ readonly kind: 'volume-moved-site' } & Both<Volume>)
  | ({ readonly kind: 'volume-changed-team' } & Both<Volume>)
  | ({ readonly kind: 'volume-unprotected' } & Both<Volume>)
  | ({ readonly kind: 'volume-edited' } & Both<Volume>);

type AttachmentChange =
  | { readonly kind: 'attached'; readonly volume: Volume; readonly server: string }
  | { readonly kind: 'detached'; readonly volume: Volume; readonly server: string }
  | { readonly kind: 'handed-over'; readonly volume: Volume; readonly from: string; readonly to: string };

type GroupChange =
  /** `wipes`: members that were there before, whatever lay on them. */
  | { readonly kind: 'group-created'; readonly wipes: readonly string[]; readonly after: VolumeGroup }
  | { readonly kind: 'group-deleted'; readonly before: VolumeGroup }
  | ({ readonly kind: 'group-renamed' } & Both<VolumeGroup>)
  /** `wipes`: the volume was there before, and the group takes it over with whatever lay on it. */
  | {
      readonly kind: 'member-joined';
      readonly volume: string;
      readonly wipes: boolean;
      readonly after: VolumeGroup;
    }
  | ({ readonly kind: 'member-left'; readonly volume: string } & Both<VolumeGroup>)
  | ({ readonly kind: 'group-edited' } & Both<VolumeGroup>);

type FileSystemChange =
  /** `wipes`: it is made on a volume that was there before, over whatever lay on it. */
  | { readonly kind: 'file-system-created'; readonly wipes: boolean; readonly after: FileSystem }
  | { readonly kind: 'file-system-deleted'; readonly before: FileSystem }
  /** The same file system at another mount point. */
  | ({ readonly kind: 'file-system-remounted' } & Both<FileSystem>)
  | ({ readonly kind: 'file-system-grown' } & Both<FileSystem>)
  | ({ readonly kind: 'file-system-shrunk' } & Both<FileSystem>)
  /** Another type at the same mount point: the old one is made over, and what it held is gone. */
  | ({ readonly kind: 'file-system-remade' } & Both<FileSystem>);

export type Change = (ServerChange | VolumeChange | AttachmentChange | GroupChange | FileSystemChange) & {
  readonly subject: Subject;
  readonly place: RevisionPlace;
};

export type ChangeKind = Change['kind'];

export type ChangeOf<K extends ChangeKind> = Extract<Change, { kind: K }>;

/** Every kind, in the order in which changes of one thing are told. */
export const changeKinds = [
  'server-created',
  'server-renamed',
  'server-changed-team',
  'server-moved-site',
  'server-changed-type',
  'server-started',
  'server-stopped',
  'boot-swapped',
  'server-edited',
  'server-deleted',
  'volume-created',
  'volume-re-created',
  'volume-renamed',
  'volume-changed-team',
  'volume-moved-site',
  'volume-moved-tier',
  'volume-grown',
  'volume-shrunk',
  'volume-unprotected',
  'volume-edited',
  'handed-over',
  'detached',
  'attached',
  'volume-deleted',
  'group-created',
  'group-renamed',
  'member-left',
  'member-joined',
  'group-edited',
  'group-deleted',
  'file-system-created',
  'file-system-remounted',
  'file-system-remade',
  'file-system-grown',
  'file-system-shrunk',
  'file-system-deleted',
] as const satisfies readonly ChangeKind[];

/** Whether the step destroys what cannot be brought back without a backup. */
export function destroys(change: Change): boolean {
  switch (change.kind) {
    case 'volume-deleted':
    case 'volume-re-created':
    case 'volume-shrunk':
    // No provider carries a volume's content across sites for a change of its declaration: it is made anew there.
    case 'volume-moved-site':
    case 'group-deleted':
    case 'file-system-deleted':
    case 'file-system-shrunk':
    case 'file-system-remade':
      return true;
    case 'server-created':
    case 'server-deleted':
    case 'server-renamed':
    case 'server-started':
    case 'server-stopped':
    case 'server-changed-type':
    case 'server-moved-site':
    case 'server-changed-team':
    case 'boot-swapped':
    case 'server-edited':
    case 'volume-created':
    case 'volume-renamed':
    case 'volume-grown':
    case 'volume-moved-tier':
    case 'volume-changed-team':
    case 'volume-unprotected':
    case 'volume-edited':
    case 'attached':
    case 'detached':
    case 'handed-over':
    case 'group-renamed':
    case 'member-left':
    case 'file-system-remounted':
    case 'file-system-grown':
      return false;
    case 'group-created':
      return change.wipes.length > 0;
    case 'member-joined':
    case 'file-system-created':
      return change.wipes;
    // Extents side by side cannot be laid end to end in place, nor the other way round: the group is made anew.
    case 'group-edited':
      return (change.before.layout.kind === 'striped') !== (change.after.layout.kind === 'striped');
  }
}
