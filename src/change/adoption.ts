/**
 * What a branch only declares: it is there already, and the branch makes nothing of it. `existing: true` says so.
 *
 * Of the first estate of all, what surveys show to be there needs no word.
 *
 * The word counts for what comes to main with it, and for what hangs together with that: a server and the volume that
 * it starts from; a volume, what is on it and where it is attached; a group, its members and its file systems. Once main
 * has what says it, it is spent: it says nothing of what comes to that later. Nothing is believed that main's own
 * declarations deny: a volume on which main has a file system, or a group, has no other one there already.
 */
import { at, type Problem } from '../base/problem.ts';
import {
  type Attachment,
  type Declaration,
  type Estate,
  type FileSystem,
  type Server,
  subjectKey,
  type Volume,
  type VolumeGroup,
} from '../estate/estate.ts';
import type { Change } from './change.ts';
import { type DifferingPart, isMove } from './pairs.ts';
import { baseName, type Renames } from './renames.ts';

type Named = Server | Volume | VolumeGroup;

export class Adoption {
  readonly #base: Estate;
  readonly #head: Estate;
  readonly #renames: Omit<Renames, 'fileSystems'>;
  readonly #shown: ReadonlySet<string>;
  readonly #known = new Map<Declaration, boolean>();

  /** @param shown what surveys show to be there of what the head declares, by `subjectKey` */
  constructor(base: Estate, head: Estate, renames: Omit<Renames, 'fileSystems'>, shown: ReadonlySet<string>) {
    this.#shown = base.servers.size === 0 && base.volumes.size === 0 ? shown : new Set();
    this.#base = base;
    this.#head = head;
    this.#renames = renames;
  }

  /** Whether something that main does not have is there already. Of a file system it is asked only where it is new. */
  adopts(thing: Declaration): boolean {
    const known = this.#known.get(thing) ?? this.#find(thing);
    this.#known.set(thing, known);
    return known;
  }

  #find(thing: Declaration): boolean {
    switch (thing.kind) {
      case 'server':
        return this.#isNew(thing) && (this.#said(thing) ?? false);
      case 'volume': {
        const group = this.#head.groupOf.get(thing.name);
        if (!this.#isNew(thing)) return false;
        return this.#said(thing) ?? (this.#byItself(thing) || (group !== undefined && this.adopts(group)));
      }
      case 'volume-group': {
        const members = thing.members.flatMap((member) => this.#head.volumes.get(member) ?? []);
        if (!this.#isNew(thing) || members.some((member) => this.#holdsOnMain(member))) return false;
        return (
          this.#said(thing) ??
          (thing.fileSystems.some((system) => own(system) === true) ||
            members.every((member) => this.#byItself(member)))
        );
      }
      case 'file-system': {
        const carrier = this.#carrierOf(thing);
        if (carrier === undefined || !this.#isThere(carrier)) return false;
        if (carrier.kind === 'volume' && this.#holdsOnMain(carrier)) return false;
        return own(thing) ?? (this.#isNew(carrier) ? this.adopts(carrier) : this.#comesWith(thing));
      }
    }
  }

  /** Whether an attachment that main does not have is there already. */
  attaches(attachment: Attachment): boolean {
    const server = this.#head.servers.get(attachment.server);
    const volume = this.#head.volumes.get(attachment.volume);
    if (server === undefined || volume === undefined || !this.#isThere(server) || !this.#isThere(volume))
      return false;
    const before = this.#base.servers.get(baseName(this.#renames.servers, server.name));
    // A server that main starts from another volume does not start from this one yet.
    if (attachment.boot && before?.boot !== undefined) return false;
    // Neither is a volume attached yet where it is only now made anew.
    const held = this.#base.volumes.get(baseName(this.#renames.volumes, volume.name));
    if (held !== undefined && isMove(held, volume)) return false;
    return (
      attachment.existing ??
      (this.adopts(volume) || (attachment.boot && this.adopts(server)) || this.#comesWith(attachment))
    );
  }

  /** What says of itself that it is new, and cannot be, because of what is said to be there already. */
  contradictions(differing: readonly DifferingPart[]): readonly Problem[] {
    return differing.flatMap(({ after }) =>
      after === undefined
        ? []
        : [
            ...after.volumes.flatMap((volume) => this.#deniedVolume(volume)),
            ...after.groups.flatMap((group) => this.#deniedGroup(group)),
            ...after.attachments.flatMap((attachment) => this.#deniedAttachment(attachment)),
          ],
    );
  }

  #deniedVolume(volume: Volume): readonly Problem[] {
    if (!this.#isNew(volume) || own(volume) !== false) return [];
    const group = this.#head.groupOf.get(volume.name);
    const starts = this.#startedBy(volume);
    const lying = [
      ...(volume.fileSystem !== undefined && own(volume.fileSystem) === true
        ? [`its file system ${volume.fileSystem.mount} is marked existing: true`]
        : []),
      ...(starts === undefined
        ? []
        : [`the server ${starts.name} (${at(starts.place)}), which is there already, starts from it`]),
      ...(group !== undefined && this.adopts(group)
        ? [`the volume group ${group.name} (${at(group.place)}), which is there already, has it as a member`]
        : []),
    ];
    return lying.slice(0, 1).map((why) => denied(volume, why));
  }

  #deniedGroup(group: VolumeGroup): readonly Problem[] {
    const system = group.fileSystems.find((each) => own(each) === true);
    if (!this.#isNew(group) || own(group) !== false || system === undefined) return [];
    return [denied(group, `its file system ${system.mount} is marked existing: true`)];
  }

  #deniedAttachment({ volume: of, server: to, existing, place }: Attachment): readonly Problem[] {
    const ends = [this.#head.volumes.get(of), this.#head.servers.get(to)];
    const made = ends.find((end) => end !== undefined && !this.#isThere(end));
    if (existing !== true || made === undefined) return [];
    return [
      {
        place,
        message: `the attachment of ${of} to ${to} is marked existing: true, and the ${made.kind} ${made.name} (${at(made.place)}) is to be created`,
        advice: `Mark the ${made.kind} existing: true as well if it is there already, or take the mark off the attachment.`,
        revision: 'head',
      },
    ];
  }

  #isThere(thing: Named): boolean {
    return !this.#isNew(thing) || this.adopts(thing);
  }

  #isNew({ kind, name }: Named): boolean {
    switch (kind) {
      case 'server':
        return !this.#base.servers.has(baseName(this.#renames.servers, name));
      case 'volume':
        return !this.#base.volumes.has(baseName(this.#renames.volumes, name));
      case 'volume-group':
        return !this.#base.groups.has(baseName(this.#renames.groups, name));
    }
  }

  /** Whether main says of a volume what is on it. */
  #holdsOnMain({ name }: Volume): boolean {
    const before = this.#base.volumes.get(baseName(this.#renames.volumes, name));
    return before !== undefined && (before.fileSystem !== undefined || this.#base.groupOf.has(before.name));
  }

  /** A volume that is there whatever its group is: it says so, or a server or a file system does. */
  #byItself(volume: Volume): boolean {
    if (!this.#isNew(volume)) return false;
    const { fileSystem } = volume;
    return (
      this.#said(volume) ??
      (this.#startedBy(volume) !== undefined || (fileSystem !== undefined && own(fileSystem) === true))
    );
  }

  /** The server that is there already and starts from a volume. */
  #startedBy({ name }: Volume): Server | undefined {
    return (this.#head.holders.get(name) ?? [])
      .filter(({ boot }) => boot)
      .flatMap(({ server }) => this.#head.servers.get(server) ?? [])
      .find((server) => this.adopts(server));
  }

  #carrierOf({ on }: FileSystem): Volume | VolumeGroup | undefined {
    return on.kind === 'volume' ? this.#head.volumes.get(on.name) : this.#head.groups.get(on.name);
  }

  /** What a thing says, or its file of all that comes to it, or a survey. */
  #said(thing: Declaration): boolean | undefined {
    const shown = this.#comesWith(thing) || this.#shown.has(subjectKey(thing));
    return own(thing) ?? (shown ? true : undefined);
  }

  /** Whether its file says so of all in it, and main's does not yet. */
  #comesWith({ place: { file } }: Pick<Declaration, 'place'>): boolean {
    return (
      this.#head.parts.get(file)?.defaults.existing === true &&
      this.#base.parts.get(file)?.defaults.existing !== true
    );
  }
}

/** What a thing's own declaration says. */
export const own = ({ fields, existing }: Declaration): boolean | undefined =>
  fields.of('existing') === undefined ? undefined : existing;

const denied = (thing: Named, why: string): Problem => ({
  place: thing.fields.of('existing') ?? thing.place,
  message: `the ${thing.kind.replace('-', ' ')} ${thing.name} is marked existing: false, and ${why}`,
  advice: 'Take out one of the two marks; what is to be created can come in a change of its own.',
  revision: 'head',
});

/** The names of what a branch only declares. */
export interface Adopted {
  readonly servers: ReadonlySet<string>;
  readonly volumes: ReadonlySet<string>;
  readonly groups: ReadonlySet<string>;
  readonly fileSystems: ReadonlySet<string>;
  /** Groups that main has, and that a volume which is only declared now is a member of already. */
  readonly joined: ReadonlySet<string>;
  /** The volume and the server of each attachment. */
  readonly attached: ReadonlySet<string>;
  /** Volumes that main has, in another size than they are there. */
  readonly corrected: ReadonlySet<string>;
}

export function adoptedIn(changes: readonly Change[]): Adopted {
  const servers = new Set<string>();
  const volumes = new Set<string>();
  const groups = new Set<string>();
  const fileSystems = new Set<string>();
  const joined = new Set<string>();
  const attached = new Set<string>();
  const corrected = new Set<string>();
  for (const change of changes) {
    if (change.kind === 'server-adopted') servers.add(change.after.name);
    else if (change.kind === 'volume-adopted') volumes.add(change.after.name);
    else if (change.kind === 'volume-re-created' && change.existing) volumes.add(change.after.name);
    else if (change.kind === 'volume-corrected') corrected.add(change.after.name);
    else if (change.kind === 'group-adopted') groups.add(change.after.name);
    else if (change.kind === 'attachment-adopted') attached.add(`${change.volume.name} ${change.server}`);
    else if (change.kind === 'member-adopted') joined.add(change.after.name);
    else if (change.kind === 'file-system-adopted') fileSystems.add(change.after.name);
  }
  return { servers, volumes, groups, fileSystems, joined, attached, corrected };
}
