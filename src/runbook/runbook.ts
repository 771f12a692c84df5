/**
 * Changes -> the ordered steps that carry them out. Each kind of change wants its acts, and says what each must wait
 * for by key; a wait for an act that nobody wants is no wait. So a change says "after the group is exported" without
 * asking whether it is.
 *
 * What leaves a server waits only for what else leaves; what comes to one waits for both. That keeps the whole
 * without circles, but for a member of a group that makes room on one that comes.
 */
import { groupCapacity } from '../capacity/extents.ts';
import { factsOf } from '../capacity/file-system-facts.ts';
import type { Change, ChangeOf } from '../change/change.ts';
import type { Comparison, Renames } from '../change/compare.ts';
import type { Estate, FileSystem, Layout, Server, Subject, Volume, VolumeGroup } from '../estate/estate.ts';
import { showSize } from '../estate/size.ts';
import { Plan } from './plan.ts';
import { type Guest, handledBy, laidOut, type ProcedureName, procedureOf } from './procedures.ts';
import type { Example, Step } from './step.ts';

/** The steps in the order in which they are to be done: the same whatever the order of the files. */
export function runbookOf(
  { changes, renames }: Pick<Comparison, 'changes' | 'renames'>,
  base: Estate,
  head: Estate,
): readonly Step[] {
  return changes.length === 0 ? [] : new Runbook(base, head, renames, changes).steps();
}

interface Wanted {
  readonly procedure: ProcedureName;
  readonly subject: Subject;
  readonly server: string | undefined;
  readonly words: Readonly<Record<string, string>>;
  readonly examples: readonly Example[];
  readonly cautions: readonly string[];
}

type Carrier = FileSystem['on'];

const volumeSubject = (name: string): Subject => ({ kind: 'volume', name });
const serverSubject = (name: string): Subject => ({ kind: 'server', name });
const systemSubject = ({ name }: FileSystem): Subject => ({ kind: 'file-system', name });

/** Done where something is, before it goes from there. */
const leaving: ReadonlySet<ProcedureName> = new Set<ProcedureName>([
  'stop-use',
  'unmount',
  'unmount-swap',
  'deactivate',
  'export',
  'leave-group',
  'replace-member',
  'put-smaller-in-place',
  'shrink-mounted',
  'shrink-unmounted',
  'reduce-logical-volume',
  'remove-file-system',
  'give-up-file-system',
  'remove-group',
]);

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const sorted = (names: Iterable<string>): readonly string[] => [...new Set(names)].sort(byText);

/** Gathers the acts of one branch. Names are those of the head, and of the base for what is gone. */
class Runbook {
  readonly #base: Estate;
  readonly #head: Estate;
  readonly #renames: Renames;
  readonly #changes: readonly Change[];
  readonly #former: Readonly<Record<keyof Renames, ReadonlyMap<string, string>>>;
  readonly #plan = new Plan<Wanted>();
  readonly #carriesOut = new Map<string, number[]>();
  readonly #made: ReadonlySet<string>;
  /** Servers that run, and stop in this branch if only for a while. */
  readonly #stopping: ReadonlySet<string>;
  /** By group: the volumes that come into it, and whether each is written over. */
  readonly #joined = new Map<string, ChangeOf<'member-joined'>[]>();
  readonly #holders = {
    before: new Map<string, readonly string[]>(),
    after: new Map<string, readonly string[]>(),
  };

  constructor(base: Estate, head: Estate, renames: Renames, changes: readonly Change[]) {
    const turned = (names: ReadonlyMap<string, string>): ReadonlyMap<string, string> =>
      new Map([...names].map(([from, to]) => [to, from]));
    this.#base = base;
    this.#head = head;
    this.#renames = renames;
    this.#changes = changes;
    this.#former = {
      servers: turned(renames.servers),
      volumes: turned(renames.volumes),
      groups: turned(renames.groups),
    };
    this.#made = new Set(
      changes.flatMap((change) => (change.kind === 'group-created' ? change.after.name : [])),
    );
    this.#stopping = new Set(changes.flatMap((change) => this.#stoppedFor(change)));
    for (const change of changes) {
      if (change.kind !== 'member-joined') continue;
      const joined = this.#joined.get(change.after.name);
      if (joined === undefined) this.#joined.set(change.after.name, [change]);
      else joined.push(change);
    }
  }

  #stoppedFor(change: Change): readonly string[] {
    switch (change.kind) {
      case 'server-stopped':
      case 'server-deleted':
      case 'server-changed-machine':
      case 'server-moved-site':
      case 'boot-swapped':
        return [change.subject.name];
      case 'detached':
      case 'handed-over':
      case 'volume-shrunk':
      case 'volume-moved-site': {
        const { name } = change.subject;
        return this.#holdersBefore(name).filter((server) => this.#bootBefore(server) === name);
      }
      default:
        return [];
    }
  }

  steps(): readonly Step[] {
    this.#changes.forEach((change, index) => {
      const key = this.#carryOut(change);
      if (key === undefined) return;
      const carried = this.#carriesOut.get(key);
      if (carried === undefined) this.#carriesOut.set(key, [index]);
      else carried.push(index);
    });
    const placed = this.#plan.inOrder();
    const numbers = new Map(placed.map(({ key }, index) => [key, index + 1]));
    const numbered = (keys: readonly string[]): readonly number[] =>
      keys.flatMap((key) => numbers.get(key) ?? []).sort((a, b) => a - b);
    return placed.map(({ key, act, after, atOdds }, index) =>
      this.#step(act, index + 1, numbered(after), numbered(atOdds), this.#carriesOut.get(key) ?? []),
    );
  }

  #step(
    { procedure: name, subject, server, words, examples, cautions: more }: Wanted,
    number: number,
    after: readonly number[],
    atOdds: readonly number[],
    carriesOut: readonly number[],
  ): Step {
    const procedure = procedureOf(name);
    const guest = server === undefined ? undefined : this.#guest(server);
    const does = filled((guest === undefined ? undefined : procedure.in?.[guest]) ?? procedure.does, words);
    const why = procedure.why === undefined ? undefined : filled(procedure.why, words);
    const odds =
      atOdds.length === 0
        ? undefined
        : `It should wait for step ${atOdds.join(', ')}, which waits for this one: settle by hand which goes first.`;
    return {
      number,
      at: procedure.at,
      server,
      subject,
      does: procedure.at === 'guest' ? this.#whenUp(name, server, words.on ?? subject.name, does) : does,
      why: odds === undefined ? why : why === undefined ? odds : `${why} ${odds}`,
      destroys: procedure.destroys ?? false,
      cautions: [...(procedure.cautions ?? []), ...more],
      examples: procedure.at === 'provider' ? [] : examplesFor(procedure, guest, examples),
      after,
      carriesOut,
    };
  }

  /** A guest can only be worked in while it runs. */
  #whenUp(procedure: ProcedureName, server: string | undefined, what: string, does: string): string {
    const later = `${does.charAt(0).toLowerCase()}${does.slice(1)}`;
    if (server === undefined) return `Once a server holds ${what}: ${later}`;
    // What a stopped server is to give up can be got at where one runs.
    if (leaving.has(procedure)) {
      return this.#runsBefore(server) ? does : `With a server that runs and holds ${what}: ${later}`;
    }
    return this.#runsAfter(server) ? does : `When ${server} next starts: ${later}`;
  }

  #want(
    key: string,
    procedure: ProcedureName,
    subject: Subject,
    more: {
      readonly server?: string | undefined;
      readonly words?: Readonly<Record<string, string>>;
      readonly after?: readonly string[];
      readonly examples?: readonly Example[];
      readonly cautions?: readonly string[];
      readonly turn?: 'check' | 'ahead' | 'act' | 'delete';
    } = {},
  ): string {
    const { server, words = {}, after = [], examples = [], cautions: own = [], turn = 'act' } = more;
    const all = { volume: subject.name, server: server ?? 'its server', ...words };
    const act = { procedure, subject, server, words: all, examples, cautions: own };
    if (procedureOf(procedure).at === 'guest' && server !== undefined)
      this.#whileItRuns(key, procedure, server);
    return this.#plan.want(key, act, after, turn);
  }

  /** What leaves is done before a server stops, and what comes once it is up. */
  #whileItRuns(key: string, procedure: ProcedureName, server: string): void {
    if (!leaving.has(procedure)) this.#plan.wait(key, this.#comesUp(server));
    else if (this.#runsBefore(server)) this.#plan.wait(`stop ${server}`, [key]);
  }

  // What stands on either side, by the names of the head

  readonly #baseName = (kind: keyof Renames, name: string): string => this.#former[kind].get(name) ?? name;
  readonly #headName = (kind: keyof Renames, name: string): string => this.#renames[kind].get(name) ?? name;

  #serverBefore(name: string): Server | undefined {
    return this.#base.servers.get(this.#baseName('servers', name));
  }

  #runsBefore(server: string): boolean {
    return this.#serverBefore(server)?.power === 'running';
  }

  #runsAfter(server: string): boolean {
    return this.#head.servers.get(server)?.power === 'running';
  }

  #guest(server: string): Guest {
    return (this.#head.servers.get(server) ?? this.#serverBefore(server))?.guest ?? 'other';
  }

  #holdersBefore(volume: string): readonly string[] {
    const holders = this.#base.holders.get(this.#baseName('volumes', volume)) ?? [];
    return sorted(holders.map(({ server }) => this.#headName('servers', server)));
  }

  #holdersAfter(volume: string): readonly string[] {
    return sorted((this.#head.holders.get(volume) ?? []).map(({ server }) => server));
  }

  #bootBefore(server: string): string | undefined {
    const boot = this.#serverBefore(server)?.boot;
    return boot === undefined ? undefined : this.#headName('volumes', boot);
  }

  #groupBefore(volume: string): VolumeGroup | undefined {
    return this.#base.groupOf.get(this.#baseName('volumes', volume));
  }

  #carrierBefore({ kind, name }: Carrier): Volume | VolumeGroup | undefined {
    return kind === 'volume'
      ? this.#base.volumes.get(this.#baseName('volumes', name))
      : this.#base.groups.get(this.#baseName('groups', name));
  }

  #carrierAfter({ kind, name }: Carrier): Volume | VolumeGroup | undefined {
    return kind === 'volume' ? this.#head.volumes.get(name) : this.#head.groups.get(name);
  }

  #membersBefore(group: string): readonly string[] {
    const members = this.#base.groups.get(this.#baseName('groups', group))?.members ?? [];
    return sorted(members.map((member) => this.#headName('volumes', member)));
  }

  #carrierHoldersBefore({ kind, name }: Carrier): readonly string[] {
    return kind === 'volume'
      ? this.#holdersBefore(name)
      : once(this.#holders.before, name, () =>
          sorted(this.#membersBefore(name).flatMap((volume) => this.#holdersBefore(volume))),
        );
  }

  #carrierHoldersAfter({ kind, name }: Carrier): readonly string[] {
    return kind === 'volume'
      ? this.#holdersAfter(name)
      : once(this.#holders.after, name, () =>
          sorted(
            (this.#head.groups.get(name)?.members ?? []).flatMap((volume) => this.#holdersAfter(volume)),
          ),
        );
  }

  #headCarrierName({ kind, name }: Carrier): string {
    return this.#headName(kind === 'volume' ? 'volumes' : 'groups', name);
  }

  // Keys. A file system is known by what it lies on now and where it is mounted.

  #systemKey({ on, mount }: FileSystem): string {
    return `${on.kind} ${this.#headCarrierName(on)} ${mount}`;
  }

  readonly #comesUp = (server: string): readonly string[] => [`create-server ${server}`, `start ${server}`];

  /** The server in whose guest something comes to be, and none where nobody holds it. */
  readonly #homeOf = (carrier: Carrier): string | undefined => this.#carrierHoldersAfter(carrier)[0];

  readonly #present = (volume: string, server: string): readonly string[] => [
    `see ${volume} ${server}`,
    `see-size ${volume} ${server}`,
    `replaced ${volume}`,
  ];

  /** All that makes a carrier ready at a server. */
  #ready(carrier: Carrier, server: string | undefined): readonly string[] {
    if (carrier.kind === 'volume')
      return server === undefined
        ? [`create ${carrier.name}`]
        : [`create ${carrier.name}`, ...this.#present(carrier.name, server)];
    return [
      `make-group ${carrier.name}`,
      `activate ${carrier.name} ${server ?? ''}`,
      `rename-group ${carrier.name}`,
      `re-extent ${carrier.name}`,
      `lay-out ${carrier.name}`,
      `check-group ${carrier.name}`,
    ];
  }

  // One change

  /** Wants what carries a change out; the key of the act with which it is done, or nothing where it needs no hands. */
  #carryOut(change: Change): string | undefined {
    switch (change.kind) {
      case 'server-created':
        return this.#serverCreated(change);
      case 'server-deleted':
        return this.#serverDeleted(change);
      case 'server-renamed':
      case 'volume-renamed':
        return this.#want(
          `rename ${change.subject.kind} ${change.after.name}`,
          'check-name',
          change.subject,
          {
            words: { old: change.before.name, name: change.after.name },
          },
        );
      case 'server-started':
        return this.#start(change.after.name);
      case 'server-stopped':
        return this.#stop(change.after.name);
      case 'server-changed-machine':
        return this.#whileStopped(change.after.name, 'change-machine', {
          was: change.before.machine ?? 'none',
          machine: change.after.machine ?? 'none',
        });
      case 'server-moved-site':
        return this.#whileStopped(change.after.name, 'move-server', {
          was: change.before.site ?? 'none',
          site: change.after.site ?? 'none',
        });
      case 'boot-swapped':
        return this.#bootSwapped(change);
      case 'volume-created':
        return this.#createVolume(change.after);
      case 'volume-deleted':
        return this.#deleteVolume(change.before);
      case 'volume-re-created':
        return this.#reCreated(change);
      case 'volume-grown':
        return this.#volumeGrown(change);
      case 'volume-shrunk':
        return this.#volumeShrunk(change);
      case 'volume-moved-tier':
        return this.#want(`tier ${change.after.name}`, 'move-tier', change.subject, {
          words: { was: change.before.tier, tier: change.after.tier },
        });
      case 'volume-moved-site':
        return this.#volumeMovedSite(change);
      case 'volume-unprotected':
        return this.#unprotect(change.after.name);
      case 'volume-edited':
        return this.#volumeEdited(change);
      case 'attached':
        return this.#attach(change.volume.name, change.server);
      case 'detached':
        return this.#detach(change.volume.name, change.server);
      case 'handed-over':
        this.#detach(change.volume.name, change.from);
        return this.#attach(change.volume.name, change.to);
      case 'group-created':
        return change.after.existing ? undefined : this.#makeGroup(change.after);
      case 'group-deleted':
        return this.#groupDeleted(change);
      case 'group-renamed':
        return this.#groupRenamed(change);
      case 'member-joined':
        return this.#memberJoined(change);
      case 'member-left':
        return this.#memberLeft(change);
      case 'group-edited':
        return this.#groupEdited(change);
      case 'file-system-created':
        return change.after.existing ? undefined : this.#systemCreated(change);
      case 'file-system-deleted':
        return this.#systemDeleted(change);
      case 'file-system-remounted':
        return this.#systemRemounted(change);
      case 'file-system-grown':
        return this.#growSystem(change.after, change.before);
      case 'file-system-shrunk':
        return this.#systemShrunk(change);
      case 'file-system-remade':
        return this.#makeAnew(
          change.after,
          change.before,
          `It goes from ${change.before.type} to ${change.after.type}.`,
        );
      case 'server-changed-team':
      case 'server-edited':
      case 'volume-changed-team':
        return undefined;
    }
  }

  // Servers

  #serverCreated({ after, subject }: ChangeOf<'server-created'>): string {
    const { name, boot, power } = after;
    const ready = boot === undefined ? [] : this.#fetched(boot, name);
    return this.#want(`create-server ${name}`, 'create-server', subject, {
      server: name,
      words: { boot: boot === undefined ? '' : `, to start from ${boot}`, power },
      after: ready,
    });
  }

  #serverDeleted({ before, subject }: ChangeOf<'server-deleted'>): string {
    const { name } = before;
    if (before.power === 'running') this.#stop(name);
    const held = (this.#base.held.get(name) ?? []).map(({ volume }) => this.#headName('volumes', volume));
    return this.#want(`delete-server ${name}`, 'delete-server', subject, {
      server: name,
      after: [`stop ${name}`, ...sorted(held).map((volume) => `detach ${volume} ${name}`)],
      turn: 'delete',
    });
  }

  #stop(server: string): string {
    return this.#want(`stop ${server}`, 'stop-server', serverSubject(server), { server });
  }

  #start(server: string): string {
    const boot = this.#head.servers.get(server)?.boot;
    return this.#want(`start ${server}`, 'start-server', serverSubject(server), {
      server,
      after: [
        `stop ${server}`,
        `set-boot ${server}`,
        ...(boot === undefined ? [] : [`attach ${boot} ${server}`, `grow ${boot}`]),
      ],
    });
  }

  /** Stopped, and started again where it is to go on running. */
  #restart(server: string): void {
    if (!this.#runsBefore(server)) return;
    this.#stop(server);
    if (this.#runsAfter(server)) this.#start(server);
  }

  #whileStopped(
    server: string,
    procedure: 'change-machine' | 'move-server',
    words: Readonly<Record<string, string>>,
  ): string {
    this.#restart(server);
    const key = this.#want(`${procedure} ${server}`, procedure, serverSubject(server), {
      server,
      words,
      after: [`stop ${server}`],
    });
    if (this.#head.servers.get(server) !== undefined) this.#plan.wait(`start ${server}`, [key]);
    return key;
  }

  #bootSwapped({ before, after, subject }: ChangeOf<'boot-swapped'>): string {
    const { name } = after;
    this.#restart(name);
    const old = before.boot === undefined ? [] : [`detach ${this.#headName('volumes', before.boot)} ${name}`];
    return this.#want(`set-boot ${name}`, 'set-boot', subject, {
      server: name,
      words: { volume: after.boot ?? 'no declared volume' },
      after: [
        `stop ${name}`,
        ...old,
        ...(after.boot === undefined ? [] : [`attach ${after.boot} ${name}`, `fill ${after.boot}`]),
      ],
    });
  }

  // Volumes

  #createVolume({ name, size, tier, site }: Volume): string {
    return this.#want(`create ${name}`, 'create-volume', volumeSubject(name), {
      words: { size: showSize(size), tier, where: site === undefined ? '' : `, site ${site}` },
      turn: 'ahead',
    });
  }

  #unprotect(name: string): string {
    return this.#want(`unprotect ${name}`, 'unprotect', volumeSubject(name));
  }

  /** @param what the content, as its owner would name it */
  #checkBackup(subject: Subject, what: string): string {
    return this.#want(`backup ${subject.kind} ${subject.name}`, 'check-backup', subject, {
      words: { what },
      turn: 'check',
    });
  }

  #deleteVolume({ name, size, protected: kept }: Volume): string {
    const key = `delete ${name}`;
    if (this.#plan.has(key)) return key;
    const holders = this.#holdersBefore(name);
    const group = this.#groupBefore(name);
    if (kept) this.#unprotect(name);
    const detached = holders.map((server) => this.#detach(name, server));
    const missed =
      detached.length === 0
        ? []
        : [this.#want(`missed ${name}`, 'check-missed', volumeSubject(name), { after: detached })];
    return this.#want(key, 'delete-volume', volumeSubject(name), {
      words: { size: showSize(size) },
      after: [
        this.#checkBackup(volumeSubject(name), name),
        ...missed,
        `unprotect ${name}`,
        `replacement ${name}`,
        ...holders.map((server) => `delete-server ${server}`),
        ...(group === undefined ? [] : this.#outOfGroup(name, group)),
      ],
      turn: 'delete',
    });
  }

  /** What takes a volume out of its group for good. */
  #outOfGroup(volume: string, { name }: VolumeGroup): readonly string[] {
    const group = this.#headName('groups', name);
    return [`leave ${group} ${volume}`, `remove-group ${group}`];
  }

  #reCreated({ before, after, subject }: ChangeOf<'volume-re-created'>): string {
    this.#createVolume(after);
    const done = this.#deleteVolume(before);
    const [holder] = this.#holdersAfter(after.name);
    const boots = holder !== undefined && this.#head.servers.get(holder)?.boot === after.name;
    const system = after.fileSystem;
    const inGroup = this.#head.groupOf.get(after.name);
    const filled =
      inGroup !== undefined
        ? [
            `leave ${inGroup.name} ${before.name}`,
            `join ${inGroup.name} ${after.name}`,
            `make-group ${inGroup.name}`,
          ]
        : boots
          ? [
              this.#want(`fill ${after.name}`, 'fill-boot', volumeSubject(after.name), {
                words: { server: holder, old: before.name },
                after: [`create ${after.name}`, `stop ${holder}`, `backup volume ${before.name}`],
              }),
              `start ${holder}`,
              `create-server ${holder}`,
            ]
          : [
              this.#want(`bring-over ${after.name}`, 'bring-over', volumeSubject(after.name), {
                server: holder,
                words: { old: before.name },
                after: [
                  ...this.#ready({ kind: 'volume', name: after.name }, holder),
                  `backup volume ${before.name}`,
                  ...(system === undefined
                    ? []
                    : [
                        `make ${this.#systemKey(system)}`,
                        `mount ${this.#systemKey(system)} ${holder ?? ''}`,
                      ]),
                ],
              }),
            ];
    this.#want(`replacement ${before.name}`, 'check-replacement', subject, {
      words: { volume: after.name, old: before.name },
      after: filled,
    });
    return done;
  }

  #volumeGrown({ before, after, subject }: ChangeOf<'volume-grown'>): string {
    const { name, size } = after;
    const key = this.#want(`grow ${name}`, 'grow-volume', subject, {
      words: { was: showSize(before.size), size: showSize(size) },
    });
    const group = this.#head.groupOf.get(name);
    const whole = after.fileSystem;
    const former = before.fileSystem;
    // All that hold it see it grow; one of them, whichever comes first, grows what lies on it.
    for (const server of this.#holdersAfter(name)) {
      const boots = this.#head.servers.get(server)?.boot === name;
      const held = this.#holdersBefore(name).includes(server);
      // A server that starts from it later sees all of it then.
      if (boots && !held && !this.#runsAfter(server)) continue;
      const seen =
        held && this.#runsBefore(server) && this.#runsAfter(server)
          ? this.#want(`see-size ${name} ${server}`, 'see-size', subject, {
              server,
              words: { size: showSize(size) },
              after: [key],
            })
          : held
            ? key
            : `see ${name} ${server}`;
      const room = boots
        ? [
            this.#want(`partition ${name}`, 'grow-partition', subject, {
              server,
              after: [seen],
            }),
          ]
        : [seen];
      if (group !== undefined) {
        if (this.#groupBefore(name) !== undefined) this.#growMember(name, group, server, room);
      } else if (whole === undefined) {
        this.#want(`inside ${name}`, 'grow-inside', subject, { server, after: room });
      } else if (former?.type === whole.type && whole.fields.size === undefined) {
        this.#plan.wait(this.#growSystem(whole, former), room);
      }
    }
    return key;
  }

  #growMember(volume: string, group: VolumeGroup, server: string, after: readonly string[]): void {
    const key = this.#want(`grow-member ${volume}`, 'grow-member', volumeSubject(volume), {
      server,
      words: { group: group.name },
      after: [...after, `activate ${group.name} ${server}`, `join ${group.name} ${volume}`],
    });
    this.#checkGroup(group, server, [key]);
  }

  /** What the group must show once all its members are as large as they are to be. */
  #checkGroup(group: VolumeGroup, server: string | undefined, after: readonly string[]): string {
    const key = `check-group ${group.name}`;
    if (!this.#plan.has(key)) {
      const members = group.members.flatMap((member) => this.#head.volumes.get(member)?.size ?? []);
      const { groupExtents, groupBytes } = groupCapacity({ ...group, members });
      const words = {
        group: group.name,
        extents: groupExtents.toString(),
        extent: showSize(group.extent),
        size: showSize(groupBytes),
      };
      this.#want(key, 'check-group', { kind: 'volume-group', name: group.name }, { server, words });
    }
    this.#plan.wait(key, after);
    return key;
  }

  #volumeShrunk({ before, after, subject }: ChangeOf<'volume-shrunk'>): string {
    const { name } = after;
    // Made anew at another site, it is made smaller there.
    if (before.site !== after.site) return this.#volumeMovedSite({ before, after, subject });
    const words = { size: showSize(after.size) };
    const backup = this.#checkBackup(subject, name);
    if (before.protected) this.#unprotect(name);
    const made = this.#want(`smaller ${name}`, 'create-smaller', subject, { words, turn: 'ahead' });
    const [server] = this.#holdersBefore(name);
    const boots = server !== undefined && this.#bootBefore(server) === name;
    const group = this.#groupBefore(name);
    const stillIn = this.#head.groupOf.get(name);
    const grouped = group !== undefined && stillIn !== undefined && !this.#made.has(stillIn.name);
    const out: string[] = [];
    if (server !== undefined && !boots && this.#runsBefore(server)) {
      const beside = this.#want(`attach-smaller ${name}`, 'attach-smaller', subject, {
        server,
        after: [made],
      });
      const swapped = this.#want(
        `replaced ${name}`,
        grouped ? 'replace-member' : 'put-smaller-in-place',
        subject,
        { server, words: { group: this.#headName('groups', group?.name ?? '') }, after: [beside, backup] },
      );
      if (grouped) this.#checkGroup(stillIn, server, [swapped]);
      const own = before.fileSystem;
      const gone = own === undefined ? [] : [`unmount ${this.#systemKey(own)} ${server}`];
      const moved = after.fileSystem === undefined ? [] : [`remount ${this.#systemKey(after.fileSystem)}`];
      const idle =
        group === undefined ? [] : [`deactivate ${this.#headName('groups', group.name)} ${server}`];
      out.push(
        this.#want(`detach-old ${name}`, 'detach-old', subject, {
          server,
          after: [swapped, ...gone, ...moved, ...idle],
        }),
      );
    } else {
      if (server !== undefined && boots) this.#restart(server);
      const holders = this.#holdersBefore(name);
      const detached = holders.map((holder) => this.#detach(name, holder));
      this.#want(`fill ${name}`, 'fill-smaller', subject, { after: [made, backup, ...detached] });
      out.push(`fill ${name}`);
      for (const holder of holders) {
        if (this.#holdersAfter(name).includes(holder)) out.push(this.#attach(name, holder));
      }
    }
    const proven = this.#want(`replacement ${name}`, 'check-replacement', subject, {
      words: { old: `the old ${name}` },
      after: [
        ...out,
        ...this.#holdersAfter(name).flatMap((holder) => [`start ${holder}`, `see ${name} ${holder}`]),
      ],
    });
    return this.#want(`delete-old ${name}`, 'delete-old', subject, {
      words: { size: showSize(before.size) },
      after: [backup, proven, `unprotect ${name}`, ...out],
      turn: 'delete',
    });
  }

  #volumeMovedSite({
    before,
    after,
    subject,
  }: Pick<ChangeOf<'volume-moved-site'>, 'before' | 'after' | 'subject'>): string {
    const { name } = after;
    const backup = this.#checkBackup(subject, name);
    if (before.protected) this.#unprotect(name);
    const detached = this.#holdersBefore(name).map((server) => this.#detach(name, server));
    const made = this.#want(`copy-across ${name}`, 'copy-across', subject, {
      words: {
        site: after.site ?? 'none',
        was: before.site ?? 'none',
        how: after.size < before.size ? ', file by file, because it is smaller there' : '',
      },
      after: [backup, ...detached],
    });
    const attached = this.#holdersAfter(name).map((server) => this.#attach(name, server));
    const proven = this.#want(`replacement ${name}`, 'check-replacement', subject, {
      words: { old: `the old ${name}` },
      after: [made, ...attached, ...this.#holdersAfter(name).map((server) => `see ${name} ${server}`)],
    });
    return this.#want(`delete-old-site ${name}`, 'delete-old', subject, {
      words: { size: showSize(before.size) },
      after: [backup, proven, `unprotect ${name}`],
      turn: 'delete',
    });
  }

  #volumeEdited({ before, after, subject }: ChangeOf<'volume-edited'>): string | undefined {
    const { name } = after;
    const protects =
      !before.protected && after.protected
        ? this.#want(`protect ${name}`, 'protect', subject, { after: [`create ${name}`] })
        : undefined;
    if (before.shareable === after.shareable) return protects;
    const key = `share ${name}`;
    if (after.shareable)
      return this.#want(key, 'share', subject, { after: protects === undefined ? [] : [protects] });
    const left = this.#holdersBefore(name).map((server) => `detach ${name} ${server}`);
    return this.#want(key, 'unshare', subject, {
      after: [...left, ...(protects === undefined ? [] : [protects])],
    });
  }

  // Attachments

  /** What must be so before a server can have a volume. */
  #fetched(volume: string, server: string): readonly string[] {
    const after = this.#holdersAfter(volume);
    const left = this.#holdersBefore(volume).filter((holder) => holder === server || !after.includes(holder));
    return [
      `create ${volume}`,
      `grow ${volume}`,
      `fill ${volume}`,
      `copy-across ${volume}`,
      `share ${volume}`,
      ...left.map((holder) => `detach ${volume} ${holder}`),
    ];
  }

  /** The members of a group that goes to another server are all detached before the first of them is attached. */
  #travelsWith(volume: string): readonly string[] {
    const before = this.#groupBefore(volume);
    const after = this.#head.groupOf.get(volume);
    const same = before !== undefined && this.#headName('groups', before.name) === after?.name;
    return same ? [`detached ${after.name}`] : [];
  }

  #attach(volume: string, server: string): string {
    const after = this.#head.servers.get(server);
    const boots = after?.boot === volume;
    // A server is created with the volume it starts from.
    if (boots && this.#serverBefore(server) === undefined) return `create-server ${server}`;
    const subject = volumeSubject(volume);
    const old = this.#bootBefore(server);
    const key = this.#want(`attach ${volume} ${server}`, boots ? 'attach-boot' : 'attach', subject, {
      server,
      after: [
        ...this.#fetched(volume, server),
        ...this.#travelsWith(volume),
        `create-server ${server}`,
        `move-server ${server}`,
        ...(boots ? [`stop ${server}`, ...(old === undefined ? [] : [`detach ${old} ${server}`])] : []),
      ],
    });
    if (boots) {
      this.#restart(server);
      return key;
    }
    const size = this.#head.volumes.get(volume)?.size;
    this.#want(`see ${volume} ${server}`, 'see-device', subject, {
      server,
      words: { size: size === undefined ? 'its size' : showSize(size) },
      after: [key],
    });
    this.#takeIn(volume, server);
    return key;
  }

  /** What lay on a volume, or on its group, before it came to a server, is put into use there. */
  #takeIn(volume: string, server: string): void {
    const group = this.#head.groupOf.get(volume);
    const system = this.#head.volumes.get(volume)?.fileSystem;
    if (system !== undefined) this.#mountKept(system, server, [`see ${volume} ${server}`]);
    if (group === undefined || this.#made.has(group.name)) return;
    // A member that only joins comes to a group that is there already.
    if (this.#headName('groups', this.#groupBefore(volume)?.name ?? '') !== group.name) return;
    const carrier: Carrier = { kind: 'volume-group', name: group.name };
    const key = `activate ${group.name} ${server}`;
    const seen = [`see ${volume} ${server}`];
    if (this.#plan.has(key)) {
      this.#plan.wait(
        this.#plan.has(`import ${group.name} ${server}`) ? `import ${group.name} ${server}` : key,
        seen,
      );
      return;
    }
    const exported = this.#carrierHoldersBefore(carrier).some(
      (holder) => this.#runsBefore(holder) && !this.#carrierHoldersAfter(carrier).includes(holder),
    );
    const subject: Subject = { kind: 'volume-group', name: group.name };
    const words = { group: group.name, count: this.#membersBefore(group.name).length.toString() };
    const taken = exported
      ? [
          this.#want(`import ${group.name} ${server}`, 'import', subject, {
            server,
            words,
            after: [...seen],
          }),
        ]
      : seen;
    this.#want(key, 'activate', subject, { server, words, after: [...taken] });
    for (const each of this.#inOrder(group.fileSystems)) this.#mountKept(each, server, [key]);
  }

  readonly #inOrder = (systems: readonly FileSystem[]): readonly FileSystem[] =>
    [...systems].sort((a, b) => byText(a.mount, b.mount));

  /** Mounts what was there before; what is made by this branch is mounted when it is made. */
  #mountKept(system: FileSystem, server: string, after: readonly string[]): void {
    const former = this.#formerOf(system);
    if (former === undefined && !system.existing) return;
    this.#mount(system, server, after);
  }

  #formerOf({ on, mount }: FileSystem): FileSystem | undefined {
    const before = this.#carrierBefore(on);
    const systems = before === undefined ? [] : systemsOn(before);
    return systems.find((each) => each.mount === mount);
  }

  #mount(system: FileSystem, server: string | undefined, after: readonly string[]): string {
    const procedure = system.type === 'swap' ? 'mount-swap' : 'mount';
    return this.#want(`mount ${this.#systemKey(system)} ${server ?? ''}`, procedure, systemSubject(system), {
      server,
      words: { mount: system.mount, on: this.#headCarrierName(system.on) },
      after: [...after],
    });
  }

  #detach(volume: string, server: string): string {
    const subject = volumeSubject(volume);
    const group = this.#groupBefore(volume);
    const name = group === undefined ? undefined : this.#headName('groups', group.name);
    const key = `detach ${volume} ${server}`;
    if (this.#plan.has(key)) return key;
    const before = this.#base.volumes.get(this.#baseName('volumes', volume));
    const own = before?.fileSystem;
    const boots = this.#bootBefore(server) === volume;
    this.#want(key, 'detach', subject, {
      server,
      after: [
        ...(boots ? [`stop ${server}`] : []),
        ...(own === undefined ? [] : [`unmount ${this.#systemKey(own)} ${server}`]),
        ...(name === undefined
          ? []
          : [
              `leave ${name} ${volume}`,
              `remove-group ${name}`,
              `deactivate ${name} ${server}`,
              `export ${name} ${server}`,
            ]),
        `replaced ${volume}`,
      ],
    });
    if (boots) this.#restart(server);
    if (own !== undefined) this.#unmount(own, server);
    const stays =
      group !== undefined &&
      this.#head.groupOf.get(volume)?.name !== name &&
      this.#head.groups.has(name ?? '');
    // A member that leaves its group first goes by itself; any other takes the group out of use, and so does one
    // that several servers hold at once, on all of them but the one where it leaves.
    if (group !== undefined && name !== undefined && (!stays || this.#leavesAt(name) !== server)) {
      this.#takeOut(group, name, server);
      if (!stays) this.#plan.wait(`detached ${name}`, [key]);
    }
    return key;
  }

  /** Of the servers that hold a group, the one in whose guest members are taken out of it. */
  #leavesAt(group: string): string | undefined {
    const holders = this.#carrierHoldersBefore({ kind: 'volume-group', name: group });
    return holders.find((server) => this.#runsBefore(server)) ?? holders[0];
  }

  #takeOut(group: VolumeGroup, name: string, server: string): void {
    const subject: Subject = { kind: 'volume-group', name };
    const carrier: Carrier = { kind: 'volume-group', name };
    const elsewhere = this.#carrierHoldersAfter(carrier);
    const travels = elsewhere.length > 0 && !elsewhere.includes(server);
    if (travels && !this.#plan.has(`detached ${name}`)) {
      const count = this.#membersBefore(name).length.toString();
      this.#want(`detached ${name}`, 'check-detached', subject, { words: { group: name, count } });
    }
    if (!this.#runsBefore(server) || this.#plan.has(`deactivate ${name} ${server}`)) return;
    const unmounted = this.#inOrder(group.fileSystems).map((system) => this.#unmount(system, server));
    const off = this.#want(`deactivate ${name} ${server}`, 'deactivate', subject, {
      server,
      words: { group: name },
      after: [
        ...unmounted.flatMap((each) => each ?? []),
        ...(this.#leavesAt(name) === server
          ? this.#membersBefore(name).flatMap((member) => [`leave ${name} ${member}`, `replaced ${member}`])
          : []),
      ],
    });
    if (travels) {
      this.#want(`export ${name} ${server}`, 'export', subject, {
        server,
        words: { group: name },
        after: [off],
      });
    }
  }

  /** Nothing is mounted on a server that stands still. */
  #unmount(system: FileSystem, server: string): string | undefined {
    if (!this.#runsBefore(server)) return undefined;
    const subject: Subject = {
      kind: 'file-system',
      name: `${this.#headCarrierName(system.on)}:${system.mount}`,
    };
    const carrier: Carrier = { kind: system.on.kind, name: this.#headCarrierName(system.on) };
    const before = this.#carrierBefore(carrier);
    const systems = before === undefined ? [system] : this.#inOrder(systemsOn(before));
    const quiet = this.#want(`stop-use ${carrier.kind} ${carrier.name} ${server}`, 'stop-use', carrier, {
      server,
      words: { mounts: listed(systems.map(({ mount }) => mount)), on: carrier.name },
    });
    const procedure = system.type === 'swap' ? 'unmount-swap' : 'unmount';
    const key = this.#want(`unmount ${this.#systemKey(system)} ${server}`, procedure, subject, {
      server,
      words: { mount: system.mount, on: carrier.name },
      after: [quiet],
    });
    return key;
  }

  // Volume groups

  #makeGroup(group: VolumeGroup): string {
    const { name, extent } = group;
    const server = this.#homeOf({ kind: 'volume-group', name });
    const members = sorted(group.members);
    const over = (this.#joined.get(name) ?? []).flatMap(({ wipes, volume }) => (wipes ? volume : []));
    const key = this.#want(
      `make-group ${name}`,
      over.length > 0 ? 'make-group-over' : 'make-group',
      { kind: 'volume-group', name },
      {
        server,
        words: { group: name, members: listed(members), extent: showSize(extent) },
        after: [
          ...members.flatMap((member) => this.#ready({ kind: 'volume', name: member }, server)),
          ...members.flatMap((member) => this.#cleared(member)),
          ...sorted(over).map((volume) => this.#checkBackup(volumeSubject(volume), volume)),
        ],
      },
    );
    this.#checkGroup(group, server, [key]);
    return key;
  }

  /** What must be off a volume before something else is made on it. */
  #cleared(volume: string): readonly string[] {
    const own = this.#base.volumes.get(this.#baseName('volumes', volume))?.fileSystem;
    const group = this.#groupBefore(volume);
    return [
      ...(own === undefined ? [] : [`remove ${this.#systemKey(own)}`]),
      ...(group === undefined ? [] : this.#outOfGroup(volume, group)),
    ];
  }

  #groupDeleted({ before, subject }: ChangeOf<'group-deleted'>): string {
    const { name } = before;
    const members = this.#membersBefore(name);
    const lastGone = members.every((member) => !this.#head.volumes.has(member)) ? members.at(-1) : undefined;
    // The group goes with its volumes, and can be had back until the last of them is deleted.
    if (lastGone !== undefined) return this.#goneWith(lastGone);
    const server = this.#carrierHoldersBefore({ kind: 'volume-group', name })[0];
    if (server !== undefined) this.#takeOut(before, name, server);
    return this.#want(`remove-group ${name}`, 'remove-group', subject, {
      server,
      words: { group: name, on: name },
      after: [this.#checkBackup(subject, `volume group ${name}`), `deactivate ${name} ${server ?? ''}`],
    });
  }

  #goneWith(volume: string): string {
    const gone = this.#base.volumes.get(volume);
    return gone === undefined ? `delete ${volume}` : this.#deleteVolume(gone);
  }

  #groupRenamed({ before, after, subject }: ChangeOf<'group-renamed'>): string {
    const server = this.#homeOf({ kind: 'volume-group', name: after.name });
    return this.#want(`rename-group ${after.name}`, 'rename-group', subject, {
      server,
      words: { old: before.name, group: after.name, on: after.name },
      after: [`activate ${after.name} ${server ?? ''}`],
    });
  }

  #memberJoined({ volume, wipes, after, subject }: ChangeOf<'member-joined'>): string | undefined {
    const { name } = after;
    if (this.#made.has(name)) return after.existing ? undefined : `make-group ${name}`;
    const server = this.#homeOf({ kind: 'volume-group', name });
    const key = this.#want(`join ${name} ${volume}`, wipes ? 'join-group-over' : 'join-group', subject, {
      server,
      words: { volume, group: name, on: name },
      after: [
        ...this.#ready({ kind: 'volume', name: volume }, server),
        ...this.#cleared(volume),
        `activate ${name} ${server ?? ''}`,
        `rename-group ${name}`,
        ...(wipes ? [this.#checkBackup(volumeSubject(volume), volume)] : []),
      ],
    });
    this.#checkGroup(after, server, [key]);
    return key;
  }

  #memberLeft({ volume, before, after, subject }: ChangeOf<'member-left'>): string {
    const { name } = after;
    const carrier: Carrier = { kind: 'volume-group', name };
    const holders = this.#carrierHoldersBefore(carrier);
    const server = this.#leavesAt(name);
    const homes = this.#carrierHoldersAfter(carrier);
    const stays = holders.length === 1 && homes.length === 1 && holders[0] === homes[0];
    const bought = (this.#joined.get(name) ?? []).filter(({ wipes }) => !wipes);
    const key = this.#want(`leave ${name} ${volume}`, 'leave-group', subject, {
      server,
      words: { volume, group: name, on: name },
      after: [
        ...holders.flatMap((holder) => (holder === server ? [] : [`deactivate ${name} ${holder}`])),
        // What comes makes room for what goes, unless it comes to where the group goes, or once its server is up again.
        ...(!stays || this.#stopping.has(server ?? '')
          ? []
          : bought.map((each) => `join ${name} ${each.volume}`)),
        ...before.fileSystems.flatMap((system) => [
          `remove ${this.#systemKey(system)}`,
          `shrunk ${this.#systemKey(system)}`,
        ]),
      ],
    });
    this.#checkGroup(after, this.#homeOf(carrier), stays ? [key] : []);
    return key;
  }

  #groupEdited({ before, after, subject }: ChangeOf<'group-edited'>): string | undefined {
    const { name } = after;
    const server = this.#homeOf({ kind: 'volume-group', name });
    const layouts = { was: layoutWords(before.layout), layout: layoutWords(after.layout) };
    const active = [`activate ${name} ${server ?? ''}`, `rename-group ${name}`];
    const extent =
      before.extent === after.extent
        ? undefined
        : this.#want(`re-extent ${name}`, 're-extent', subject, {
            server,
            words: { group: name, was: showSize(before.extent), extent: showSize(after.extent), on: name },
            after: active,
          });
    if (layouts.was === layouts.layout) return extent;
    const anew = (before.layout.kind === 'striped') !== (after.layout.kind === 'striped');
    const words = { group: name, on: name, ...layouts };
    const first = [...active, ...(extent === undefined ? [] : [extent])];
    return anew
      ? this.#want(`lay-out ${name}`, 'lay-out-anew', subject, {
          server,
          words,
          after: [...first, this.#checkBackup(subject, `what lies in volume group ${name}`)],
        })
      : this.#want(`lay-out ${name}`, 'convert-layout', subject, { server, words, after: first });
  }

  // File systems

  #systemCreated({ after: system, wipes }: ChangeOf<'file-system-created'>): string {
    const { on, mount, type } = system;
    const server = this.#homeOf(on);
    const key = this.#systemKey(system);
    const subject = systemSubject(system);
    const carrier = this.#carrierAfter(on);
    const words = { mount, type, on: on.name, group: on.name, size: showSize(system.size) };
    const bed =
      carrier?.kind === 'volume-group'
        ? [
            this.#want(`logical ${key}`, 'make-logical-volume', subject, {
              server,
              words: { ...words, layout: layoutWords(carrier.layout) },
              examples:
                server !== undefined && this.#guest(server) === 'linux-lvm' ? laidOut(carrier.layout) : [],
              after: [...this.#ready(on, server), ...this.#madeRoomIn(on)],
            }),
          ]
        : [...this.#ready(on, server), ...this.#cleared(on.name)];
    const made = this.#want(`make ${key}`, wipes ? 'make-file-system-over' : 'make-file-system', subject, {
      server,
      words,
      examples: handledBy(type, 'make'),
      after: [...bed, ...(wipes ? [this.#checkBackup(volumeSubject(on.name), on.name)] : [])],
    });
    return this.#mount(system, server, [made]);
  }

  /** What gives room back to a group. */
  #madeRoomIn(on: Carrier): readonly string[] {
    const before = this.#carrierBefore(on);
    if (before === undefined) return [];
    return systemsOn(before).flatMap((system) => [
      `remove ${this.#systemKey(system)}`,
      `shrunk ${this.#systemKey(system)}`,
    ]);
  }

  #systemDeleted({ before: system, subject }: ChangeOf<'file-system-deleted'>): string {
    const name = this.#headCarrierName(system.on);
    const carrier: Carrier = { kind: system.on.kind, name };
    const servers = this.#carrierHoldersBefore(carrier);
    const unmounted = servers.flatMap((server) => this.#unmount(system, server) ?? []);
    const key = `remove ${this.#systemKey(system)}`;
    const after = this.#carrierAfter(carrier);
    if (after === undefined) {
      if (carrier.kind === 'volume') return this.#goneWith(name);
      const members = this.#membersBefore(name);
      const last = members.at(-1);
      return last !== undefined && members.every((member) => !this.#head.volumes.has(member))
        ? this.#goneWith(last)
        : `remove-group ${name}`;
    }
    const words = { mount: system.mount, group: name, volume: name, on: name };
    return carrier.kind === 'volume'
      ? this.#want(key, 'give-up-file-system', subject, { server: servers[0], words, after: unmounted })
      : this.#want(key, 'remove-file-system', subject, {
          server: servers[0],
          words,
          after: [...unmounted, this.#checkBackup(subject, `${system.mount} on ${name}`)],
        });
  }

  #systemRemounted({ before, after, subject }: ChangeOf<'file-system-remounted'>): string {
    const server = this.#homeOf(after.on);
    const [former] = this.#carrierHoldersBefore(after.on);
    const mounted = server !== undefined && server === former && this.#runsBefore(server);
    // Where it is not mounted, or is unmounted anyhow, it is only mounted where it is to be.
    if (!mounted || this.#plan.has(`unmount ${this.#systemKey(before)} ${server}`)) {
      return this.#mount(after, server, this.#ready(after.on, server));
    }
    return this.#want(`remount ${this.#systemKey(after)}`, 'remount', subject, {
      server,
      words: { was: before.mount, mount: after.mount, on: after.on.name },
      after: this.#ready(after.on, server),
    });
  }

  #growSystem(system: FileSystem, former: FileSystem): string {
    const { on, mount, type, size } = system;
    const server = this.#homeOf(on);
    const { grow, caution } = factsOf(type);
    const key = this.#systemKey(system);
    if (!grow.online && !grow.offline) return this.#makeAnew(system, former, caution);
    const subject = systemSubject(system);
    const words = {
      mount,
      type,
      on: on.name,
      group: on.name,
      was: showSize(former.size),
      size: showSize(size),
    };
    const room =
      on.kind === 'volume'
        ? server === undefined
          ? [`grow ${on.name}`]
          : [`grow ${on.name}`, ...this.#present(on.name, server), `partition ${on.name}`]
        : [
            this.#want(`logical ${key}`, 'extend-logical-volume', subject, {
              server,
              words,
              after: [...this.#ready(on, server), ...this.#madeRoomIn(on)],
            }),
          ];
    const mounted = `mount ${key} ${server ?? ''}`;
    const grown = `grow-system ${key}`;
    const more = { server, words, examples: handledBy(type, 'grow'), cautions: [caution] };
    if (grow.online) {
      return this.#want(grown, 'grow-mounted', subject, {
        ...more,
        after: [...room, mounted, `remount ${key}`],
      });
    }
    const stays =
      server !== undefined && this.#runsBefore(server) && this.#carrierHoldersBefore(on).includes(server);
    const off = stays ? this.#unmount(former, server) : undefined;
    this.#want(grown, 'grow-unmounted', subject, {
      ...more,
      after: [...room, ...(off === undefined ? [] : [off])],
    });
    this.#mount(system, server, [grown]);
    return grown;
  }

  #systemShrunk({ before, after: system, subject }: ChangeOf<'file-system-shrunk'>): string {
    const { on, mount, type, size } = system;
    const { shrink, caution } = factsOf(type);
    if (!shrink.online && !shrink.offline) return this.#makeAnew(system, before, caution);
    const key = this.#systemKey(system);
    const server = this.#carrierHoldersBefore(on)[0];
    const words = { mount, type, on: on.name, group: on.name, size: showSize(size) };
    const backup = this.#checkBackup(subject, `${mount} on ${on.name}`);
    const off = !shrink.online && server !== undefined ? this.#unmount(before, server) : undefined;
    const shrunk = this.#want(
      `shrink ${key}`,
      shrink.online ? 'shrink-mounted' : 'shrink-unmounted',
      subject,
      {
        server,
        words,
        examples: handledBy(type, 'shrink'),
        cautions: [caution],
        after: [backup, ...(off === undefined ? [] : [off])],
      },
    );
    const done =
      on.kind === 'volume-group'
        ? this.#want(`shrunk ${key}`, 'reduce-logical-volume', subject, {
            server,
            words,
            after: [shrunk, backup],
          })
        : shrunk;
    if (server !== undefined) this.#plan.wait(`deactivate ${on.name} ${server}`, [done]);
    if (!shrink.online) this.#mount(system, this.#homeOf(on), [done]);
    return done;
  }

  /** Over what was there, and filled from its backup. */
  #makeAnew(system: FileSystem, former: FileSystem, reason: string): string {
    const { on, mount, type, size } = system;
    const key = this.#systemKey(system);
    const server = this.#homeOf(on);
    const subject = systemSubject(system);
    const words = { mount, type, on: on.name, size: showSize(size), reason };
    const backup = this.#checkBackup(subject, `${mount} on ${on.name}`);
    const off = this.#carrierHoldersBefore(on).flatMap((each) => this.#unmount(former, each) ?? []);
    const made = this.#want(`make ${key}`, 'make-anew', subject, {
      server,
      words,
      examples: handledBy(type, 'make'),
      after: [backup, ...off, ...this.#ready(on, server)],
    });
    const mounted = this.#mount(system, server, [made]);
    if (type !== 'swap' && former.type !== 'swap') {
      this.#want(`bring-back ${key}`, 'bring-back', subject, { server, words, after: [mounted] });
    }
    return made;
  }
}

function once<T>(known: Map<string, T>, key: string, make: () => T): T {
  const value = known.get(key) ?? make();
  known.set(key, value);
  return value;
}

const systemsOn = (carrier: Volume | VolumeGroup): readonly FileSystem[] =>
  carrier.kind === 'volume-group'
    ? carrier.fileSystems
    : carrier.fileSystem === undefined
      ? []
      : [carrier.fileSystem];

/** `a`, `a and b`, `a, b and c`. */
const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

function layoutWords(layout: Layout): string {
  switch (layout.kind) {
    case 'linear':
      return 'end to end';
    case 'striped':
      return `in ${layout.stripes} stripes`;
    case 'mirrored':
      return `in ${layout.copies} copies`;
  }
}

/** One pass, so that a name with braces in it stays a name. */
const filled = (text: string, words: Readonly<Record<string, string>>): string =>
  text.replace(/\{(\w+)\}/g, (whole, name: string) =>
    Object.hasOwn(words, name) ? (words[name] ?? '') : whole,
  );

function examplesFor(
  { linux = [], lvm = [] }: { readonly linux?: readonly Example[]; readonly lvm?: readonly Example[] },
  guest: Guest | undefined,
  more: readonly Example[],
): readonly Example[] {
  switch (guest) {
    case 'linux-lvm':
      return [...lvm, ...linux, ...more];
    case 'linux':
      return [...linux, ...more];
    case 'windows':
    case 'other':
    case undefined:
      return [];
  }
}
