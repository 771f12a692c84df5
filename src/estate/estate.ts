/** One typed estate: everything declared at one revision. All of it is immutable. */
import type { Place } from '../base/problem.ts';
import type { FieldPlaces } from '../read/document.ts';
import type { EstateFile } from '../read/generated/estate.ts';
import type { FileSystemType, Making } from './made.ts';
import type { Bytes } from './size.ts';

/** Where a declaration stands: its own name, and each key it writes. */
export interface Declared {
  readonly place: Place;
  readonly fields: FieldPlaces;
}

/** Who answers for a thing, where it is, and how it is labelled: what the scope of a rule chooses by. */
export interface Belonging {
  readonly team: string | undefined;
  readonly site: string | undefined;
  readonly labels: Readonly<Record<string, string>>;
}

/** What a thing is called whose name does not read: like nothing that is declared, so that nothing is said of it. */
export const unreadName = '';

export interface Server extends Declared, Belonging {
  readonly kind: 'server';
  readonly name: string;
  /** The provider's own identifier. */
  readonly id: string | undefined;
  readonly power: 'running' | 'stopped';
  readonly boot: string | undefined;
  readonly guest: string | undefined;
  readonly type: string | undefined;
  /** Operations a second that the server's work needs of its volumes together. */
  readonly iops: number | undefined;
  readonly attachmentSlots: number | undefined;
  /** Whether it, or its file, says that it was there before it was declared: `change/adoption.ts` says what that is worth. */
  readonly existing: boolean;
  readonly formerly: string | undefined;
}

export interface Volume extends Declared, Belonging {
  readonly kind: 'volume';
  readonly name: string;
  /** The provider's own identifier. */
  readonly id: string | undefined;
  readonly size: Bytes;
  readonly tier: string;
  readonly shareable: boolean;
  readonly protected: boolean;
  readonly owner: string | undefined;
  readonly reason: string | undefined;
  /** RFC 3339 full-date. */
  readonly retainUntil: string | undefined;
  /** As of a server. */
  readonly existing: boolean;
  readonly fileSystem: FileSystem | undefined;
  readonly formerly: string | undefined;
}

/** One volume held by one server; a boot volume is held by being named as such. */
export interface Attachment {
  readonly volume: string;
  readonly server: string;
  readonly boot: boolean;
  /** What its own line says; `undefined` where it has none, or says nothing. */
  readonly existing?: boolean | undefined;
  readonly place: Place;
  /** Where a boot volume is listed as attached besides. */
  readonly listed?: Place | undefined;
}

/** How the extents of a group's file systems lie on its members. */
export type Layout =
  | { readonly kind: 'linear' }
  /** Equal extents side by side on `stripes` members. */
  | { readonly kind: 'striped'; readonly stripes: number }
  /** `copies` whole images on distinct members; each takes one more extent for its own metadata (raid1). */
  | { readonly kind: 'mirrored'; readonly copies: number };

export interface VolumeGroup extends Declared, Belonging {
  readonly kind: 'volume-group';
  readonly name: string;
  readonly extent: Bytes;
  readonly members: readonly string[];
  readonly layout: Layout;
  /** As of a server. */
  readonly existing: boolean;
  readonly fileSystems: readonly FileSystem[];
  readonly formerly: string | undefined;
}

export interface FileSystem extends Declared, Belonging {
  readonly kind: 'file-system';
  /** What it lies on and its mount point, as in `plates:/plates`: unique across the estate. */
  readonly name: string;
  readonly mount: string;
  readonly type: FileSystemType;
  /** The size of the device beneath it. */
  readonly size: Bytes;
  /** Likewise, and what it lies on may say so for it. */
  readonly existing: boolean;
  readonly making: Making;
  readonly on:
    | { readonly kind: 'volume-group'; readonly name: string }
    | { readonly kind: 'volume'; readonly name: string };
}

/** The record a deletion leaves behind. */
export interface Retired {
  /** The volume's name, or the file system's, as in `plates:/plates`. */
  readonly name: string;
  readonly on: string;
  readonly reason: string;
  readonly backup: string | undefined;
  readonly backedUp: string | undefined;
  readonly place: Place;
}

/** What one file declares. Two revisions that hold the same file hold the same `EstatePart`, by identity. */
export interface EstatePart {
  readonly file: string;
  /** What the file says of all in it that does not say otherwise. */
  readonly defaults: {
    readonly [K in 'team' | 'site' | 'labels' | 'existing']: EstateFile[K] | undefined;
  };
  /** Where the keys of the file itself stand. */
  readonly fields: FieldPlaces;
  readonly servers: readonly Server[];
  readonly volumes: readonly Volume[];
  readonly attachments: readonly Attachment[];
  readonly groups: readonly VolumeGroup[];
  readonly retired: readonly Retired[];
}

/** What one site holds. */
export interface SiteTotal {
  readonly volumes: bigint;
  readonly size: Bytes;
}

/** Anything that is declared under a name of its own. */
export type Declaration = Server | Volume | VolumeGroup | FileSystem;

export interface Estate {
  /** @internal */
  readonly parts: ReadonlyMap<string, EstatePart>;
  readonly servers: ReadonlyMap<string, Server>;
  readonly volumes: ReadonlyMap<string, Volume>;
  readonly groups: ReadonlyMap<string, VolumeGroup>;
  readonly fileSystems: ReadonlyMap<string, FileSystem>;
  /** By volume: every server that holds it. More than one is for a rule to judge, not for the reader. */
  readonly holders: ReadonlyMap<string, readonly Attachment[]>;
  /** By server: every volume it holds, its boot volume among them. @internal */
  readonly held: ReadonlyMap<string, readonly Attachment[]>;
  /** By volume: the group it is a member of. */
  readonly groupOf: ReadonlyMap<string, VolumeGroup>;
  /** Who says it carries on an old name, by kind and that name, as in `volume plates-0`; in order of place. */
  readonly formerly: ReadonlyMap<string, readonly (Server | Volume | VolumeGroup)[]>;
  /** Who has a provider's identifier, by kind and that identifier, as in `volume 6f1c2b0e`: one alone, where all is well. */
  readonly byId: ReadonlyMap<string, readonly (Server | Volume)[]>;
  /** By the name of what is gone: a record for each time that it went, the oldest first. */
  readonly retired: ReadonlyMap<string, readonly Retired[]>;
  /** By site: the volumes there. @internal */
  readonly siteTotals: ReadonlyMap<string, SiteTotal>;
  /** The volumes that no server holds: few, and the only things about which a day alone can change what is said. */
  readonly detached: ReadonlyMap<string, Volume>;
}

/** The things themselves, as a survey is held against them. */
export type DeclaredThings = Pick<Estate, 'servers' | 'volumes' | 'groups' | 'holders' | 'held' | 'groupOf'>;

export const emptyEstate: Estate = {
  parts: new Map(),
  servers: new Map(),
  volumes: new Map(),
  groups: new Map(),
  fileSystems: new Map(),
  holders: new Map(),
  held: new Map(),
  groupOf: new Map(),
  formerly: new Map(),
  byId: new Map(),
  retired: new Map(),
  siteTotals: new Map(),
  detached: new Map(),
};

/** What a finding or a change is about. */
export interface Subject {
  readonly kind:
    | 'estate'
    | 'site'
    | 'team'
    | 'label'
    | 'scope'
    | 'server'
    | 'volume'
    | 'volume-group'
    | 'file-system'
    | 'branch';
  readonly name: string;
}

export const subjectKey = ({ kind, name }: Subject): string => `${kind} ${name}`;

export const isDetached = (estate: Estate, volume: Volume): boolean => !estate.holders.has(volume.name);

/** The servers that hold any member of a group, in order of name. */
export function serversOfGroup(estate: Estate, group: VolumeGroup): readonly string[] {
  const names = new Set(
    group.members.flatMap((member) => (estate.holders.get(member) ?? []).map(({ server }) => server)),
  );
  return [...names].sort();
}

/** The servers that hold what a file system lies on, in order of name. */
export function serversOfFileSystem(estate: Estate, { on }: FileSystem): readonly string[] {
  if (on.kind === 'volume') return (estate.holders.get(on.name) ?? []).map(({ server }) => server).sort();
  const group = estate.groups.get(on.name);
  return group === undefined ? [] : serversOfGroup(estate, group);
}
