/**
 * What stands on either side of a branch, by the names of the head, and of the base for what is gone: who holds what,
 * what runs, and which groups come to be.
 */
import { type Adopted, adoptedIn } from '../change/adoption.ts';
import type { Change, ChangeOf } from '../change/change.ts';
import { stoppedBy } from '../change/kinds.ts';
import { baseName, headName, type Renames } from '../change/renames.ts';
import {
  type Estate,
  type FileSystem,
  type Server,
  subjectKey,
  type Volume,
  type VolumeGroup,
} from '../estate/estate.ts';
import type { Survey } from '../survey/survey.ts';
import { Devices } from './devices.ts';
import { sorted } from './words.ts';

/** A volume or a volume group, as what lies on it names it. */
export type Carrier = FileSystem['on'];

export class Sides {
  readonly base: Estate;
  readonly head: Estate;
  /** As surveys show them. */
  readonly devices: Devices;
  /** Groups that the branch makes. */
  readonly made: ReadonlySet<string>;
  /** What is there already and is only declared. */
  readonly adopted: Adopted;
  /** Servers that run, and stop in this branch if only for a while. */
  readonly stopping: ReadonlySet<string>;
  /** By the volume that another takes the place of: the act that makes the other, as it is declared. */
  readonly madeAnew: ReadonlyMap<string, string>;
  /** By group: the volumes that come into it, and whether each is written over. */
  readonly joined: ReadonlyMap<string, readonly ChangeOf<'member-joined'>[]>;
  readonly #renames: Renames;
  readonly #holders = {
    before: new Map<string, readonly string[]>(),
    after: new Map<string, readonly string[]>(),
  };

  constructor(
    base: Estate,
    head: Estate,
    renames: Renames,
    changes: readonly Change[],
    surveys: readonly Survey[],
  ) {
    this.base = base;
    this.head = head;
    this.#renames = renames;
    this.devices = new Devices(
      base,
      surveys,
      new Set(
        changes.flatMap((change) =>
          change.kind === 'volume-changed-id' || change.kind === 'server-changed-id'
            ? subjectKey(change.before)
            : [],
        ),
      ),
    );
    this.made = new Set(
      changes.flatMap((change) => (change.kind === 'group-created' ? change.after.name : [])),
    );
    this.adopted = adoptedIn(changes);
    this.stopping = new Set(
      changes.flatMap((change) => [...this.#stoppedFor(change), ...this.#installedFor(change)]),
    );
    const shrunk = changes.flatMap(({ kind, subject: { name } }) =>
      kind === 'volume-shrunk' ? [[name, `smaller ${name}`] as const] : [],
    );
    const moved = changes.flatMap(({ kind, subject: { name } }) =>
      kind === 'volume-moved-site' ? [[name, `copy-across ${name}`] as const] : [],
    );
    // Made anew at another site, it is made smaller there.
    this.madeAnew = new Map([...shrunk, ...moved]);
    const joined = new Map<string, ChangeOf<'member-joined'>[]>();
    for (const change of changes) {
      if (change.kind !== 'member-joined') continue;
      const others = joined.get(change.after.name);
      if (others === undefined) joined.set(change.after.name, [change]);
      else others.push(change);
    }
    this.joined = joined;
  }

  /** The server that stops because what it starts from is written over. */
  #installedFor(change: Change): readonly string[] {
    const on = writtenBy(change);
    const server = on === undefined ? undefined : this.bootedFrom(on);
    return server === undefined ? [] : [server];
  }

  #stoppedFor(change: Change): readonly string[] {
    const { name } = change.subject;
    switch (stoppedBy(change)) {
      case 'nothing':
        return [];
      case 'its server':
        return [name];
      case 'the server that starts from it':
        return this.holdersBefore(name).filter((server) => this.bootBefore(server) === name);
    }
  }

  /** In whose guest members are taken out of a group. */
  leavesAt(group: string): string | undefined {
    return this.worksAt({ kind: 'volume-group', name: group });
  }

  /**
   * Where what lies on something is worked on while it is as it was: where it is held by a server that runs, or where
   * it comes to one; with any server otherwise.
   */
  worksAt(carrier: Carrier): string | undefined {
    return (
      this.carrierHoldersBefore(carrier).find((server) => this.runsBefore(server)) ??
      this.carrierHoldersAfter(carrier).find(
        (server) => this.#goesOnRunning(server) && this.#comesWhole(carrier, server),
      ) ??
      this.carrierHoldersBefore(carrier).find((server) => this.#isStartedWith(carrier, server))
    );
  }

  /** Whether a server that stands still is started with what it goes on holding. */
  #isStartedWith(carrier: Carrier, server: string): boolean {
    const after = this.head.servers.get(server);
    return (
      carrier.kind === 'volume-group' &&
      after?.power === 'running' &&
      this.serverBefore(server)?.site === after.site &&
      this.carrierHoldersAfter(carrier).includes(server) &&
      this.membersBefore(carrier.name).every(
        (member) =>
          this.holdersBefore(member).includes(server) &&
          ![after.boot, this.bootBefore(server)].includes(member) &&
          !this.madeAnew.has(member),
      )
    );
  }

  /**
   * Whether all that a group lay on is at a server in the end, with the room that it had, and is not what that starts
   * from.
   */
  #comesWhole({ kind, name }: Carrier, server: string): boolean {
    return (
      kind === 'volume' ||
      this.membersBefore(name).every(
        (member) =>
          this.holdersAfter(member).includes(server) &&
          this.head.servers.get(server)?.boot !== member &&
          !this.#isMadeSmaller(member),
      )
    );
  }

  #isMadeSmaller(volume: string): boolean {
    const [before, after] = [
      this.base.volumes.get(this.baseName('volumes', volume)),
      this.head.volumes.get(volume),
    ];
    return before !== undefined && after !== undefined && after.size < before.size;
  }

  /** Whether a server runs all along, or from when it is created on, at one site. */
  #goesOnRunning(server: string): boolean {
    const before = this.serverBefore(server);
    const after = this.head.servers.get(server);
    if (after?.power !== 'running') return false;
    return before === undefined || (before.power === 'running' && before.site === after.site);
  }

  readonly baseName = (kind: keyof Renames, name: string): string => baseName(this.#renames[kind], name);

  readonly headName = (kind: keyof Renames, name: string): string => headName(this.#renames[kind], name);

  serverBefore(name: string): Server | undefined {
    return this.base.servers.get(this.baseName('servers', name));
  }

  runsBefore(server: string): boolean {
    return this.serverBefore(server)?.power === 'running';
  }

  runsAfter(server: string): boolean {
    return this.head.servers.get(server)?.power === 'running';
  }

  guest(server: string): string {
    return (this.head.servers.get(server) ?? this.serverBefore(server))?.guest ?? 'other';
  }

  holdersBefore(volume: string): readonly string[] {
    const holders = this.base.holders.get(this.baseName('volumes', volume)) ?? [];
    return sorted(holders.map(({ server }) => this.headName('servers', server)));
  }

  holdersAfter(volume: string): readonly string[] {
    return sorted((this.head.holders.get(volume) ?? []).map(({ server }) => server));
  }

  heldBefore(server: string): readonly string[] {
    const held = this.base.held.get(this.baseName('servers', server)) ?? [];
    return sorted(held.map(({ volume }) => this.headName('volumes', volume)));
  }

  bootBefore(server: string): string | undefined {
    const boot = this.serverBefore(server)?.boot;
    return boot === undefined ? undefined : this.headName('volumes', boot);
  }

  /** Whether a server that starts from it has it as its root: made by an image, and in use as long as that runs. */
  isRootBefore({ mount, on }: FileSystem, server: string): boolean {
    return mount === '/' && on.kind === 'volume' && this.bootBefore(server) === this.headCarrierName(on);
  }

  isRootAfter({ mount, on }: FileSystem, server: string): boolean {
    return mount === '/' && on.kind === 'volume' && this.head.servers.get(server)?.boot === on.name;
  }

  groupBefore(volume: string): VolumeGroup | undefined {
    return this.base.groupOf.get(this.baseName('volumes', volume));
  }

  carrierBefore({ kind, name }: Carrier): Volume | VolumeGroup | undefined {
    return kind === 'volume'
      ? this.base.volumes.get(this.baseName('volumes', name))
      : this.base.groups.get(this.baseName('groups', name));
  }

  carrierAfter({ kind, name }: Carrier): Volume | VolumeGroup | undefined {
    return kind === 'volume' ? this.head.volumes.get(name) : this.head.groups.get(name);
  }

  membersBefore(group: string): readonly string[] {
    const members = this.base.groups.get(this.baseName('groups', group))?.members ?? [];
    return sorted(members.map((member) => this.headName('volumes', member)));
  }

  carrierHoldersBefore({ kind, name }: Carrier): readonly string[] {
    return kind === 'volume'
      ? this.holdersBefore(name)
      : once(this.#holders.before, name, () =>
          sorted(this.membersBefore(name).flatMap((volume) => this.holdersBefore(volume))),
        );
  }

  carrierHoldersAfter({ kind, name }: Carrier): readonly string[] {
    return kind === 'volume'
      ? this.holdersAfter(name)
      : once(this.#holders.after, name, () =>
          sorted((this.head.groups.get(name)?.members ?? []).flatMap((volume) => this.holdersAfter(volume))),
        );
  }

  headCarrierName({ kind, name }: Carrier): string {
    return this.headName(kind === 'volume' ? 'volumes' : 'groups', name);
  }

  systemKey({ on, mount }: FileSystem): string {
    return `${on.kind} ${this.headCarrierName(on)} ${mount}`;
  }

  /** Where the head mounts it. */
  headMount({ name, mount }: FileSystem): string {
    const renamed = this.headName('fileSystems', name);
    return renamed === name ? mount : renamed.slice(renamed.indexOf(':') + 1);
  }

  /** The server in whose guest something comes to be: one that runs, if any does; and none where nobody holds it. */
  readonly homeOf = (carrier: Carrier): string | undefined => {
    const holders = this.carrierHoldersAfter(carrier);
    return holders.find((server) => this.runsAfter(server)) ?? holders[0];
  };

  /** The server that starts from a volume, or from a member of a group: its own guest makes nothing of that anew. */
  bootedFrom({ kind, name }: Carrier): string | undefined {
    const volumes = kind === 'volume' ? [name] : (this.head.groups.get(name)?.members ?? []);
    return volumes
      .flatMap((volume) => this.holdersAfter(volume).map((server) => ({ volume, server })))
      .find(({ volume, server }) => this.head.servers.get(server)?.boot === volume)?.server;
  }

  formerOf({ on, mount }: FileSystem): FileSystem | undefined {
    const before = this.carrierBefore(on);
    const systems = before === undefined ? [] : systemsOn(before);
    return systems.find((each) => each.mount === mount);
  }
}

/** What a change may write anew, whatever is on it. */
function writtenBy(change: Change): Carrier | undefined {
  if (change.kind === 'group-created') return { kind: 'volume-group', name: change.after.name };
  if (change.kind === 'member-joined') return { kind: 'volume', name: change.volume };
  const makes = change.kind === 'file-system-created' || change.kind === 'file-system-remade';
  return makes ? change.after.on : undefined;
}

function once<T>(known: Map<string, T>, key: string, make: () => T): T {
  const value = known.get(key) ?? make();
  known.set(key, value);
  return value;
}

export const systemsOn = (carrier: Volume | VolumeGroup): readonly FileSystem[] =>
  carrier.kind === 'volume-group'
    ? carrier.fileSystems
    : carrier.fileSystem === undefined
      ? []
      : [carrier.fileSystem];
