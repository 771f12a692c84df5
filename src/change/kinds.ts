/**
 * Every kind of change, in the order in which changes of one thing are told: what each destroys, which server it
 * stops, and how it is told. Whatever asks about changes by their kind asks here, so that a new kind is thought of
 * once, and the compiler names what is missing.
 *
 * In one file, since it is one table.
 */
import type { Declaration, FileSystem, Server, Volume, VolumeGroup } from '../estate/estate.ts';
import { fileSystemFacts } from '../estate/file-system-facts.ts';
import { differenceOfBytes, exactSize, showSize } from '../estate/size.ts';
import type { Change, ChangeKind, ChangeOf, Wiped } from './change.ts';
import { differences } from './edited.ts';
import { makingDifferences } from './making.ts';

/** What a change destroys and nobody brings back without a backup, as it was on the base. */
export interface Loss {
  /** Whose content is lost. */
  readonly of: readonly Exclude<Declaration, Server>[];
}

/** A function of a change of one kind that may be kept among those of all kinds. */
type Of<C extends Change, R> = { of(change: C): R }['of'];

interface KindRow<C extends Change> {
  /** What it destroys; `none` where no change of the kind ever destroys anything. */
  readonly loss: 'none' | Of<C, Loss | undefined>;
  /** What cannot run while it is carried out: its server, or the server that starts from its volume. */
  readonly stops: 'nothing' | 'its server' | 'the server that starts from it';
  /** The kind that it is asked about as, too: whoever has a rule for what is created has it for what is only declared. */
  readonly like?: ChangeKind;
  /** It in one sentence without a full stop, in the trade's words. */
  readonly says: Of<C, string>;
}

const harmless = { loss: 'none', stops: 'nothing' } as const;

const lossOfAll = (lost: Volume | VolumeGroup | FileSystem): Loss => ({ of: [lost] });

/** Of a type that cannot grow: it is made anew at the larger size. */
const outgrown = (before: FileSystem, after: FileSystem): Loss | undefined => {
  const { online, offline } = fileSystemFacts(after.type).grow;
  return online || offline ? undefined : lossOfAll(before);
};

/** What fills its volume, and has no size of its own, is to grow with it. */
const outgrownOn = (before: Volume, after: Volume): Loss | undefined =>
  before.fileSystem === undefined ||
  after.fileSystem === undefined ||
  before.fileSystem.type !== after.fileSystem.type ||
  after.fileSystem.fields.of('size') !== undefined
    ? undefined
    : outgrown(before.fileSystem, after.fileSystem);

const overwritten = (wipes: readonly Wiped[]): Loss | undefined =>
  wipes.length === 0 ? undefined : { of: wipes.map(({ before }) => before) };

/** Extents side by side cannot be laid end to end in place, nor the other way round: the group is made anew. */
const restriped = (before: VolumeGroup, after: VolumeGroup): Loss | undefined =>
  (before.layout.kind === 'striped') === (after.layout.kind === 'striped') ? undefined : lossOfAll(before);

const none = 'none';

const kinds = {
  'server-created': {
    ...harmless,
    says: ({ after }) => `server ${after.name} is created, ${after.power}`,
  },
  'server-adopted': {
    ...harmless,
    like: 'server-created',
    says: ({ after }) => `server ${after.name} is declared as existing, ${after.power}`,
  },
  'server-renamed': {
    ...harmless,
    says: ({ before, after }) => `server ${before.name} is renamed ${after.name}`,
  },
  'server-changed-id': {
    loss: 'none',
    stops: 'its server',
    says: ({ before, after }) =>
      `server ${after.name} changes from the id ${before.id ?? none} to ${after.id ?? none}, which makes it another server`,
  },
  'server-changed-team': {
    ...harmless,
    says: ({ before, after }) =>
      `server ${after.name} changes from team ${before.team ?? none} to ${after.team ?? none}`,
  },
  'server-moved-site': {
    loss: 'none',
    stops: 'its server',
    says: ({ before, after }) =>
      `server ${after.name} moves from site ${before.site ?? none} to ${after.site ?? none}`,
  },
  'server-changed-type': {
    loss: 'none',
    stops: 'its server',
    says: ({ before, after }) =>
      `server ${after.name} changes from server type ${before.type ?? none} to ${after.type ?? none}`,
  },
  'server-started': {
    ...harmless,
    says: ({ after }) => `server ${after.name} is started`,
  },
  'server-stopped': {
    loss: 'none',
    stops: 'its server',
    says: ({ after }) => `server ${after.name} is stopped`,
  },
  'boot-swapped': {
    loss: 'none',
    stops: 'its server',
    says: ({ before, after }) =>
      `server ${after.name} starts from ${after.boot ?? 'no declared volume'} instead of ${before.boot ?? 'no declared volume'}`,
  },
  'server-edited': {
    ...harmless,
    says: ({ before, after }) => `server ${after.name}: ${differences(before, after)}`,
  },
  'server-deleted': {
    loss: 'none',
    stops: 'its server',
    says: ({ before }) => `server ${before.name} is deleted`,
  },
  'volume-created': {
    ...harmless,
    says: ({ after }) => `volume ${after.name} is created: ${exactSize(after.size)}, tier ${after.tier}`,
  },
  'volume-adopted': {
    ...harmless,
    like: 'volume-created',
    says: ({ after }) =>
      `volume ${after.name} is declared as existing: ${exactSize(after.size)}, tier ${after.tier}`,
  },
  'volume-re-created': {
    loss: ({ before }) => lossOfAll(before),
    stops: 'the server that starts from it',
    says: ({ before, after, seat, existing }) =>
      `volume ${before.name} (${exactSize(before.size)}) is deleted and ${after.name} (${exactSize(after.size)}) ${existing ? 'declared as existing' : 'created'} in its place, ${seat}`,
  },
  'volume-renamed': {
    ...harmless,
    says: ({ before, after }) => `volume ${before.name} is renamed ${after.name}`,
  },
  // Whatever lies on the one that main has is not on the other: under its name it is gone.
  'volume-changed-id': {
    loss: ({ before }) => lossOfAll(before),
    stops: 'the server that starts from it',
    says: ({ before, after }) =>
      `volume ${after.name} changes from the id ${before.id ?? none} to ${after.id ?? none}, which makes it another volume`,
  },
  'volume-changed-team': {
    ...harmless,
    says: ({ before, after }) =>
      `volume ${after.name} changes from team ${before.team ?? none} to ${after.team ?? none}`,
  },
  // No provider carries a volume's content across sites for a change of its declaration: it is made anew there.
  'volume-moved-site': {
    loss: ({ before }) => lossOfAll(before),
    stops: 'the server that starts from it',
    says: ({ before, after }) =>
      `volume ${after.name} moves from site ${before.site ?? none} to ${after.site ?? none}`,
  },
  'volume-moved-tier': {
    ...harmless,
    says: ({ before, after }) => `volume ${after.name} moves from tier ${before.tier} to ${after.tier}`,
  },
  'volume-grown': {
    loss: ({ before, after }) => outgrownOn(before, after),
    stops: 'nothing',
    says: ({ before, after }) =>
      `volume ${after.name} grows from ${exactSize(before.size)} to ${exactSize(after.size)}, by ${showSize(differenceOfBytes(after.size, before.size))}`,
  },
  'volume-shrunk': {
    loss: ({ before }) => lossOfAll(before),
    stops: 'the server that starts from it',
    says: ({ before, after }) =>
      `volume ${after.name} shrinks from ${exactSize(before.size)} to ${exactSize(after.size)}, by ${showSize(differenceOfBytes(before.size, after.size))}`,
  },
  'volume-corrected': {
    ...harmless,
    says: ({ before, after }) =>
      `the declared size of volume ${after.name} is corrected from ${exactSize(before.size)} to ${exactSize(after.size)}, as surveys show it`,
  },
  'volume-unprotected': {
    ...harmless,
    says: ({ after }) => `volume ${after.name} loses its protection against deletion`,
  },
  'volume-edited': {
    ...harmless,
    says: ({ before, after }) => `volume ${after.name}: ${differences(before, after)}`,
  },
  'handed-over': {
    loss: 'none',
    stops: 'the server that starts from it',
    says: ({ volume, from, to }) => `volume ${volume.name} is moved from ${from} to ${to}`,
  },
  detached: {
    loss: 'none',
    stops: 'the server that starts from it',
    says: ({ volume, server }) => `volume ${volume.name} is detached from ${server}`,
  },
  attached: {
    ...harmless,
    says: ({ volume, server }) => `volume ${volume.name} is attached to ${server}`,
  },
  'attachment-adopted': {
    ...harmless,
    like: 'attached',
    says: ({ volume, server }) => `volume ${volume.name} is declared as attached to ${server} already`,
  },
  'volume-deleted': {
    loss: ({ before }) => lossOfAll(before),
    stops: 'the server that starts from it',
    says: ({ before }) => `volume ${before.name} is deleted (${exactSize(before.size)})`,
  },
  'group-created': {
    loss: ({ wipes }) => overwritten(wipes),
    stops: 'nothing',
    says: ({ after, wipes }) =>
      `volume group ${after.name} is created on ${after.members.join(', ')}${wipes.length === 0 ? '' : `, and any data on ${wipes.map(({ name }) => name).join(', ')} is overwritten`}`,
  },
  'group-adopted': {
    ...harmless,
    like: 'group-created',
    says: ({ after }) => `volume group ${after.name} is declared as existing on ${after.members.join(', ')}`,
  },
  'group-renamed': {
    ...harmless,
    says: ({ before, after }) => `volume group ${before.name} is renamed ${after.name}`,
  },
  'member-left': {
    ...harmless,
    says: ({ after, volume }) => `volume ${volume} leaves the volume group ${after.name}`,
  },
  'member-joined': {
    loss: ({ wipes }) => overwritten(wipes),
    stops: 'nothing',
    says: ({ after, volume, wipes }) =>
      `volume ${volume} joins the volume group ${after.name}${wipes.length === 0 ? '' : ', and any data on it is overwritten'}`,
  },
  'member-adopted': {
    ...harmless,
    like: 'member-joined',
    says: ({ after, volume }) =>
      `volume ${volume} is declared as a member of the volume group ${after.name} already`,
  },
  'group-edited': {
    loss: ({ before, after }) => restriped(before, after),
    stops: 'nothing',
    says: ({ before, after }) =>
      before.extent !== after.extent
        ? `volume group ${after.name} changes from extents of ${exactSize(before.extent)} to ${exactSize(after.extent)}`
        : before.layout.kind !== after.layout.kind
          ? `volume group ${after.name} changes from a ${before.layout.kind} layout to a ${after.layout.kind} one`
          : `volume group ${after.name} is declared differently`,
  },
  'group-deleted': {
    loss: ({ before }) => lossOfAll(before),
    stops: 'nothing',
    says: ({ before }) => `volume group ${before.name} is dissolved`,
  },
  'file-system-created': {
    loss: ({ wipes }) => overwritten(wipes),
    stops: 'nothing',
    says: ({ after, wipes }) =>
      `file system ${after.mount} on ${after.on.name} is created: ${exactSize(after.size)}, ${after.type}${wipes.length === 0 ? '' : ', and any data on the volume is overwritten'}`,
  },
  'file-system-adopted': {
    ...harmless,
    like: 'file-system-created',
    says: ({ after }) =>
      `file system ${after.mount} on ${after.on.name} is declared as existing: ${exactSize(after.size)}, ${after.type}`,
  },
  'file-system-remounted': {
    ...harmless,
    says: ({ before, after }) =>
      `file system ${before.mount} on ${after.on.name} is remounted at ${after.mount}`,
  },
  'file-system-edited': {
    ...harmless,
    says: ({ before, after }) =>
      `file system ${after.mount} on ${after.on.name}: ${makingDifferences(before, after).join(', ')}`,
  },
  'file-system-remade': {
    loss: ({ before }) => lossOfAll(before),
    stops: 'nothing',
    says: ({ before, after }) =>
      before.type === after.type
        ? `file system ${after.mount} on ${after.on.name} is reformatted: ${makingDifferences(before, after).join(', ')}`
        : `file system ${after.mount} on ${after.on.name} is reformatted from ${before.type} to ${after.type}`,
  },
  'file-system-grown': {
    loss: ({ before, after }) => outgrown(before, after),
    stops: 'nothing',
    says: ({ before, after }) =>
      `file system ${after.mount} on ${after.on.name} grows from ${exactSize(before.size)} to ${exactSize(after.size)}`,
  },
  'file-system-shrunk': {
    loss: ({ before }) => lossOfAll(before),
    stops: 'nothing',
    says: ({ before, after }) =>
      `file system ${after.mount} on ${after.on.name} shrinks from ${exactSize(before.size)} to ${exactSize(after.size)}`,
  },
  'file-system-corrected': {
    ...harmless,
    says: ({ before, after }) =>
      `the declared size of file system ${after.mount} on ${after.on.name} is corrected from ${exactSize(before.size)} to ${exactSize(after.size)}, as surveys show it`,
  },
  'file-system-deleted': {
    loss: ({ before }) => lossOfAll(before),
    stops: 'nothing',
    says: ({ before }) =>
      `file system ${before.mount} on ${before.on.name} is deleted (${exactSize(before.size)})`,
  },
} as const satisfies { readonly [K in ChangeKind]: KindRow<ChangeOf<K>> };

const rows: { readonly [K in ChangeKind]: KindRow<ChangeOf<K>> } = kinds;

const rowOf = ({ kind }: Change): KindRow<Change> => rows[kind];

/** Every kind, in the order in which changes of one thing are told. */
export const changeKinds: readonly string[] = Object.keys(kinds);

type KindWhere<Column extends 'loss' | 'stops', No> = {
  [K in ChangeKind]: (typeof kinds)[K][Column] extends No ? never : K;
}[ChangeKind];

/** A change that destroys, or may. */
export type LosingChange = ChangeOf<KindWhere<'loss', 'none'>>;

/** A change for which a server is stopped. */
export type StoppingChange = ChangeOf<KindWhere<'stops', 'nothing'>>;

const bringers = [
  'server-created',
  'server-adopted',
  'volume-created',
  'volume-adopted',
  'group-created',
  'group-adopted',
] as const satisfies readonly ChangeKind[];

/** A server, a volume or a group that main does not have: created, or there already and only declared. */
export type BringingChange = ChangeOf<(typeof bringers)[number]>;

export const brings = (change: Change): change is BringingChange =>
  bringers.some((kind) => kind === change.kind);

export function lossOf(change: Change): Loss | undefined {
  const { loss } = rowOf(change);
  return loss === 'none' ? undefined : loss(change);
}

/**
 * Whether a change destroys what cannot be brought back without a backup.
 *
 * @param change one of `compareEstates` or of a judgement
 *
 * @example
 * ```js
 * import { judgeRepository, destroys } from 'ullage';
 *
 * const judgement = await judgeRepository('.', { base: 'main', head: 'smaller-plates', on: '2026-11-20' });
 * console.log(judgement.changes.filter(destroys).length); // 1
 * ```
 */
export const destroys = (change: Change): change is LosingChange => lossOf(change) !== undefined;

export const stoppedBy = (change: Change): KindRow<Change>['stops'] => rowOf(change).stops;

export const stops = (change: Change): change is StoppingChange => stoppedBy(change) !== 'nothing';

/** Whether a change is of one of some kinds, or is asked about as one of them. */
export function isOfKinds(change: Change, asked: readonly string[]): boolean {
  const { like } = rowOf(change);
  return asked.includes(change.kind) || (like !== undefined && asked.includes(like));
}

/**
 * One sentence without a full stop, such as `volume plates-1 grows from 40 GiB to 60 GiB, by 20 GiB`. Names stand in it as they
 * are declared: whoever prints it elsewhere escapes it.
 *
 * @param change one of `compareEstates` or of a judgement
 *
 * @example
 * ```js
 * import { judgeRepository, describeChange } from 'ullage';
 *
 * const judgement = await judgeRepository('.', { base: 'main', head: 'smaller-plates', on: '2026-11-20' });
 * console.log(describeChange(judgement.changes[0])); // volume plates-1 shrinks from 50 GiB to 40 GiB, by 10 GiB
 * ```
 */
export const describeChange = (change: Change): string => rowOf(change).says(change);
