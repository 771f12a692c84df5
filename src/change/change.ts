/** Changes: what differs between the base estate and the head estate, as one union. */

import type { FileSystem, Server, Subject, Volume, VolumeGroup } from '../estate/estate.ts';
import type { RevisionPlace } from './place.ts';

/** Both ends of one thing. */
export interface Both<T> {
  readonly before: T;
  readonly after: T;
}

export type ServerChange =
  | { readonly kind: 'server-created'; readonly after: Server }
  /** There already, and only declared now; likewise each kind of the same ending. */
  | { readonly kind: 'server-adopted'; readonly after: Server }
  | { readonly kind: 'server-deleted'; readonly before: Server }
  | ({ readonly kind: 'server-renamed' } & Both<Server>)
  | ({ readonly kind: 'server-started' } & Both<Server>)
  | ({ readonly kind: 'server-stopped' } & Both<Server>)
  | ({ readonly kind: 'server-changed-type' } & Both<Server>)
  | ({ readonly kind: 'server-moved-site' } & Both<Server>)
  | ({ readonly kind: 'server-changed-team' } & Both<Server>)
  /** Both sides have an identifier, and not the same: another server under the name. */
  | ({ readonly kind: 'server-changed-id' } & Both<Server>)
  | ({ readonly kind: 'boot-swapped' } & Both<Server>)
  | ({ readonly kind: 'server-edited' } & Both<Server>);

export type VolumeChange =
  | { readonly kind: 'volume-created'; readonly after: Volume }
  | { readonly kind: 'volume-adopted'; readonly after: Volume }
  | { readonly kind: 'volume-deleted'; readonly before: Volume }
  /**
   * Deleted, and another volume in its place: the same seat in a group, boot or mount point. The other is created, or
   * is there already and only declared.
   */
  | ({ readonly kind: 'volume-re-created'; readonly seat: string; readonly existing: boolean } & Both<Volume>)
  | ({ readonly kind: 'volume-renamed' } & Both<Volume>)
  | ({ readonly kind: 'volume-grown' } & Both<Volume>)
  | ({ readonly kind: 'volume-shrunk' } & Both<Volume>)
  /** Main had its size wrongly: nothing is done about it. */
  | ({ readonly kind: 'volume-corrected' } & Both<Volume>)
  | ({ readonly kind: 'volume-moved-tier' } & Both<Volume>)
  | ({ readonly kind: 'volume-moved-site' } & Both<Volume>)
  | ({ readonly kind: 'volume-changed-team' } & Both<Volume>)
  /** Both sides have an identifier, and not the same: another volume under the name. */
  | ({ readonly kind: 'volume-changed-id' } & Both<Volume>)
  | ({ readonly kind: 'volume-unprotected' } & Both<Volume>)
  | ({ readonly kind: 'volume-edited' } & Both<Volume>);

export type AttachmentChange =
  | { readonly kind: 'attached'; readonly volume: Volume; readonly server: string }
  | { readonly kind: 'attachment-adopted'; readonly volume: Volume; readonly server: string }
  | { readonly kind: 'detached'; readonly volume: Volume; readonly server: string }
  | { readonly kind: 'handed-over'; readonly volume: Volume; readonly from: string; readonly to: string };

/**
 * A volume that is written over, whatever lies on it: its name on the head, and as it was on the base, or is on the head
 * where it was there before it was declared.
 */
export interface Wiped {
  readonly name: string;
  readonly before: Volume;
}

/** What a change writes over; nothing where all that it takes is new, or lies there already. */
export interface Wiping {
  readonly wipes: readonly Wiped[];
}

export type GroupChange =
  | ({ readonly kind: 'group-created'; readonly after: VolumeGroup } & Wiping)
  | { readonly kind: 'group-adopted'; readonly after: VolumeGroup }
  | { readonly kind: 'group-deleted'; readonly before: VolumeGroup }
  | ({ readonly kind: 'group-renamed' } & Both<VolumeGroup>)
  | ({ readonly kind: 'member-joined'; readonly volume: string; readonly after: VolumeGroup } & Wiping)
  | { readonly kind: 'member-adopted'; readonly volume: string; readonly after: VolumeGroup }
  | ({ readonly kind: 'member-left'; readonly volume: string } & Both<VolumeGroup>)
  | ({ readonly kind: 'group-edited' } & Both<VolumeGroup>);

export type FileSystemChange =
  | ({ readonly kind: 'file-system-created'; readonly after: FileSystem } & Wiping)
  | { readonly kind: 'file-system-adopted'; readonly after: FileSystem }
  | { readonly kind: 'file-system-deleted'; readonly before: FileSystem }
  /** The same file system at another mount point. */
  | ({ readonly kind: 'file-system-remounted' } & Both<FileSystem>)
  | ({ readonly kind: 'file-system-grown' } & Both<FileSystem>)
  | ({ readonly kind: 'file-system-shrunk' } & Both<FileSystem>)
  | ({ readonly kind: 'file-system-corrected' } & Both<FileSystem>)
  /** What can be set on it as it lies: the share that only the superuser may fill. */
  | ({ readonly kind: 'file-system-edited' } & Both<FileSystem>)
  /**
   * Another type at the same mount point, or the same with another block, inode ratio or map: the old one is made
   * over, and what it held is gone.
   */
  | ({ readonly kind: 'file-system-remade' } & Both<FileSystem>);

export type Change = (ServerChange | VolumeChange | AttachmentChange | GroupChange | FileSystemChange) & {
  readonly subject: Subject;
  readonly place: RevisionPlace;
};

export type ChangeKind = Change['kind'];

export type ChangeOf<K extends ChangeKind> = Extract<Change, { kind: K }>;

/** Whether it is about who holds a volume; any other has its subject before, or after, or both. */
export const isAttachmentChange = (change: Change): change is ChangeOf<AttachmentChange['kind']> =>
  'volume' in change && typeof change.volume === 'object';

/** What tells changes of one kind to one subject apart: the server, or the member. */
export function partOf(change: Change): string {
  if ('server' in change) return change.server;
  return 'volume' in change && typeof change.volume === 'string' ? change.volume : '';
}
