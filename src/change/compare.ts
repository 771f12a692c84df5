/**
 * Two estates -> the changes between them, in a stable order.
 *
 * A file that both revisions hold is the same `EstatePart` object, and all in it is passed over unread: the
 * cost grows with what changed, not with the estate.
 */

import { byText } from '../base/order.ts';
import type {
  Attachment,
  Belonging,
  Estate,
  EstatePart,
  FileSystem,
  Layout,
  Server,
  Subject,
  Volume,
  VolumeGroup,
} from '../estate/estate.ts';
import { mayDiffer } from '../estate/layered.ts';
import { type Change, changeKinds } from './change.ts';
import { onBase, onHead, placed } from './place.ts';

/** How names on the base carry over to the head, by kind: only those that a `formerly` renames. */
export interface Renames {
  readonly servers: ReadonlyMap<string, string>;
  readonly volumes: ReadonlyMap<string, string>;
  readonly groups: ReadonlyMap<string, string>;
}

export interface Comparison {
  readonly changes: readonly Change[];
  readonly renames: Renames;
  /** Files whose declarations differ, or that only one side has. */
  readonly files: readonly string[];
}

export function compareEstates(base: Estate, head: Estate): Comparison {
  const differing = differingParts(base, head);
  const servers = pair<Server>(differing, (part) => part.servers, base.servers, head.servers);
  const volumes = pair<Volume>(differing, (part) => part.volumes, base.volumes, head.volumes);
  const groups = pair<VolumeGroup>(differing, (part) => part.groups, base.groups, head.groups);
  const renames: Renames = { servers: servers.renames, volumes: volumes.renames, groups: groups.renames };
  const replacements = pairReplacements(base, head, volumes, renames);
  const wasThere = (volume: string): boolean => base.volumes.has(formerName(renames.volumes, volume));
  const changes = [
    ...servers.pairs.flatMap((each) => serverChanges(each, renames)),
    ...volumeChanges(volumes, replacements),
    ...attachmentChanges(base, head, differing, renames, servers, volumes),
    ...groups.pairs.flatMap((each) => groupChanges(each, renames, wasThere)),
    ...fileSystemChanges(volumes, groups, wasThere),
  ];
  return {
    changes: changes.sort(inOrder),
    renames,
    files: differing.map(({ file }) => file),
  };
}

interface DifferingPart {
  readonly file: string;
  readonly before: EstatePart | undefined;
  readonly after: EstatePart | undefined;
}

function differingParts(base: Estate, head: Estate): readonly DifferingPart[] {
  const differing: DifferingPart[] = [];
  for (const file of mayDiffer(base.parts, head.parts)) {
    const before = base.parts.get(file);
    const after = head.parts.get(file);
    if (after !== before) differing.push({ file, before, after });
  }
  return differing.sort((a, b) => (a.file < b.file ? -1 : 1));
}

interface Pair<T> {
  readonly before: T | undefined;
  readonly after: T | undefined;
}

interface Pairs<T> {
  readonly pairs: readonly Pair<T>[];
  readonly renames: ReadonlyMap<string, string>;
}

interface Renamable {
  readonly name: string;
  readonly formerly: string | undefined;
}

/** Pairs what the differing files declare: by name, and by `formerly` where the old name is gone. */
function pair<T extends Renamable>(
  differing: readonly DifferingPart[],
  declared: (part: EstatePart) => readonly T[],
  base: ReadonlyMap<string, T>,
  head: ReadonlyMap<string, T>,
): Pairs<T> {
  const names = new Set<string>();
  for (const { before, after } of differing) {
    for (const { name } of before === undefined ? [] : declared(before)) names.add(name);
    for (const { name } of after === undefined ? [] : declared(after)) names.add(name);
  }
  const renames = new Map<string, string>();
  for (const name of names) {
    const formerly = head.get(name)?.formerly;
    // A formerly that main has carried out already (the old name is gone there too) renames nothing now.
    if (formerly !== undefined && base.has(formerly) && !base.has(name)) renames.set(formerly, name);
  }
  const pairs: Pair<T>[] = [];
  const renamedTo = new Set(renames.values());
  for (const name of [...names].sort()) {
    if (renamedTo.has(name)) continue;
    const before = base.get(name);
    const after = head.get(renames.get(name) ?? name);
    if (before !== after) pairs.push({ before, after });
  }
  return { pairs, renames };
}

const sameLabels = (a: Readonly<Record<string, string>>, b: Readonly<Record<string, string>>): boolean => {
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => a[key] === b[key]);
};

function serverChanges({ before, after }: Pair<Server>, renames: Renames): readonly Change[] {
  if (before === undefined) {
    if (after === undefined) return [];
    return [{ kind: 'server-created', after, subject: subjectOf(after), place: placed(after, 'head') }];
  }
  if (after === undefined) {
    return [{ kind: 'server-deleted', before, subject: subjectOf(before), place: placed(before, 'base') }];
  }
  const subject = subjectOf(after);
  const both = { before, after, subject };
  const changes: Change[] = [];
  if (before.name !== after.name)
    changes.push({ kind: 'server-renamed', ...both, place: placed(after, 'head', 'formerly') });
  if (before.power !== after.power) {
    const kind = after.power === 'running' ? 'server-started' : 'server-stopped';
    changes.push({ kind, ...both, place: placed(after, 'head', 'power') });
  }
  if (before.type !== after.type) {
    changes.push({ kind: 'server-changed-type', ...both, place: placed(after, 'head', 'type') });
  }
  if (isMove(before, after))
    changes.push({ kind: 'server-moved-site', ...both, place: placed(after, 'head', 'site') });
  if (before.team !== after.team)
    changes.push({ kind: 'server-changed-team', ...both, place: placed(after, 'head', 'team') });
  const boot = before.boot === undefined ? undefined : (renames.volumes.get(before.boot) ?? before.boot);
  if (boot !== after.boot)
    changes.push({ kind: 'boot-swapped', ...both, place: placed(after, 'head', 'boot') });
  if (
    before.guest !== after.guest ||
    before.iops !== after.iops ||
    before.attachmentSlots !== after.attachmentSlots ||
    isToldSite(before, after) ||
    !sameLabels(before.labels, after.labels)
  ) {
    changes.push({ kind: 'server-edited', ...both, place: placed(after, 'head') });
  }
  return changes;
}

/** Saying where a thing is, where nothing said so before, moves nothing. */
const isToldSite = (before: Belonging, after: Belonging): boolean =>
  before.site === undefined && after.site !== undefined;

const isMove = (before: Belonging, after: Belonging): boolean =>
  before.site !== after.site && !isToldSite(before, after);

const subjectOf = ({ kind, name }: Subject): Subject => ({ kind, name });

function volumeChanges(
  { pairs }: Pairs<Volume>,
  replacements: ReadonlyMap<string, Replacement>,
): readonly Change[] {
  const replacing = new Set([...replacements.values()].map(({ after }) => after.name));
  return pairs.flatMap(({ before, after }): readonly Change[] => {
    if (before === undefined) {
      if (after === undefined || replacing.has(after.name)) return [];
      return [{ kind: 'volume-created', after, subject: subjectOf(after), place: placed(after, 'head') }];
    }
    if (after === undefined) {
      const replacement = replacements.get(before.name);
      const subject = subjectOf(before);
      return replacement === undefined
        ? [{ kind: 'volume-deleted', before, subject, place: placed(before, 'base') }]
        : [
            {
              kind: 'volume-re-created',
              before,
              after: replacement.after,
              seat: replacement.seat,
              subject,
              place: placed(before, 'base'),
            },
          ];
    }
    const subject = subjectOf(after);
    const both = { before, after, subject };
    const changes: Change[] = [];
    if (before.name !== after.name)
      changes.push({ kind: 'volume-renamed', ...both, place: placed(after, 'head', 'formerly') });
    if (after.size > before.size)
      changes.push({ kind: 'volume-grown', ...both, place: placed(after, 'head', 'size') });
    if (after.size < before.size)
      changes.push({ kind: 'volume-shrunk', ...both, place: placed(after, 'head', 'size') });
    if (before.tier !== after.tier)
      changes.push({ kind: 'volume-moved-tier', ...both, place: placed(after, 'head', 'tier') });
    if (isMove(before, after))
      changes.push({ kind: 'volume-moved-site', ...both, place: placed(after, 'head', 'site') });
    if (before.team !== after.team)
      changes.push({ kind: 'volume-changed-team', ...both, place: placed(after, 'head', 'team') });
    if (before.protected && !after.protected) {
      changes.push({ kind: 'volume-unprotected', ...both, place: placed(after, 'head', 'protected') });
    }
    if (
      before.shareable !== after.shareable ||
      (!before.protected && after.protected) ||
      before.owner !== after.owner ||
      before.reason !== after.reason ||
      before.retainUntil !== after.retainUntil ||
      isToldSite(before, after) ||
      !sameLabels(before.labels, after.labels)
    ) {
      changes.push({ kind: 'volume-edited', ...both, place: placed(after, 'head') });
    }
    return changes;
  });
}

interface Replacement {
  readonly after: Volume;
  readonly seat: string;
}

/**
 * Deletions with a creation in their place. A seat is a member's place in a group, a server's boot, or a mount
 * point on a server: whoever sits there is expected to hold what sat there before. An attachment alone is no
 * seat, since servers hold unrelated volumes side by side.
 */
function pairReplacements(
  base: Estate,
  head: Estate,
  { pairs }: Pairs<Volume>,
  renames: Renames,
): ReadonlyMap<string, Replacement> {
  const gone = pairs.flatMap(({ before, after }) =>
    before !== undefined && after === undefined ? [before] : [],
  );
  const come = pairs.flatMap(({ before, after }) =>
    before === undefined && after !== undefined ? [after] : [],
  );
  if (gone.length === 0 || come.length === 0) return new Map();
  const seatsFilled = new Map<string, Volume[]>();
  for (const volume of come) {
    for (const seat of seatsOf(head, volume)) {
      const list = seatsFilled.get(seat);
      if (list === undefined) seatsFilled.set(seat, [volume]);
      else list.push(volume);
    }
  }
  const taken = new Set<string>();
  const replacements = new Map<string, Replacement>();
  for (const volume of gone) {
    for (const seat of seatsOf(base, volume, renames)) {
      const after = seatsFilled.get(seat)?.find(({ name }) => !taken.has(name));
      if (after === undefined) continue;
      taken.add(after.name);
      replacements.set(volume.name, { after, seat });
      break;
    }
  }
  return replacements;
}

const noRenames: Renames = { servers: new Map(), volumes: new Map(), groups: new Map() };

function seatsOf(
  estate: Estate,
  volume: Volume,
  { servers, groups }: Renames = noRenames,
): readonly string[] {
  const seats: string[] = [];
  const group = estate.groupOf.get(volume.name);
  if (group !== undefined)
    seats.push(`as a member of the volume group ${groups.get(group.name) ?? group.name}`);
  for (const { server, boot } of estate.holders.get(volume.name) ?? []) {
    const name = servers.get(server) ?? server;
    if (boot) seats.push(`as the boot volume of ${name}`);
    if (volume.fileSystem !== undefined) seats.push(`at ${volume.fileSystem.mount} on ${name}`);
  }
  return seats;
}

function attachmentChanges(
  base: Estate,
  head: Estate,
  differing: readonly DifferingPart[],
  renames: Renames,
  servers: Pairs<Server>,
  volumes: Pairs<Volume>,
): readonly Change[] {
  // Boot volumes are held by their servers' declarations, the rest by the lists; both sit in differing files.
  const touched = new Set<string>();
  for (const { before, after } of differing) {
    for (const { volume } of before?.attachments ?? []) touched.add(renames.volumes.get(volume) ?? volume);
    for (const { volume } of after?.attachments ?? []) touched.add(volume);
  }
  for (const { before, after } of servers.pairs) {
    if (before?.boot !== undefined) touched.add(renames.volumes.get(before.boot) ?? before.boot);
    if (after?.boot !== undefined) touched.add(after.boot);
  }
  for (const { before, after } of volumes.pairs) {
    if (after !== undefined) touched.add(after.name);
    else if (before !== undefined) touched.add(before.name);
  }
  const formerName = new Map([...renames.volumes].map(([from, to]) => [to, from]));
  return [...touched].sort().flatMap((name): readonly Change[] => {
    const before = (base.holders.get(formerName.get(name) ?? name) ?? []).map((held) => ({
      ...held,
      server: renames.servers.get(held.server) ?? held.server,
    }));
    const after = head.holders.get(name) ?? [];
    const left = before.filter((held) => !after.some(({ server }) => server === held.server));
    const came = after.filter((held) => !before.some(({ server }) => server === held.server));
    const volume = head.volumes.get(name) ?? base.volumes.get(formerName.get(name) ?? name);
    if (volume === undefined) return [];
    return holdersChanged(volume, left, came);
  });
}

function holdersChanged(
  volume: Volume,
  left: readonly Attachment[],
  came: readonly Attachment[],
): readonly Change[] {
  const subject = subjectOf(volume);
  const [from] = left;
  const [to] = came;
  if (from !== undefined && to !== undefined && left.length === 1 && came.length === 1) {
    return [
      { kind: 'handed-over', volume, from: from.server, to: to.server, subject, place: onHead(to.place) },
    ];
  }
  return [
    ...left.map(
      ({ server, place }): Change => ({ kind: 'detached', volume, server, subject, place: onBase(place) }),
    ),
    ...came.map(
      ({ server, place }): Change => ({ kind: 'attached', volume, server, subject, place: onHead(place) }),
    ),
  ];
}

const layoutText = (layout: Layout): string => {
  switch (layout.kind) {
    case 'linear':
      return 'linear';
    case 'striped':
      return `striped ${layout.stripes}`;
    case 'mirrored':
      return `mirrored ${layout.copies}`;
  }
};

/** Whether the base has a volume, by the name it has on the head. */
type WasThere = (volume: string) => boolean;

/** The volume manager writes over whatever is on a volume it takes in, unless the group says that it lies there already. */
const wipedBy =
  (group: VolumeGroup, wasThere: WasThere): WasThere =>
  (volume) =>
    wasThere(volume) && !group.existing;

function groupChanges(
  { before, after }: Pair<VolumeGroup>,
  renames: Renames,
  wasThere: WasThere,
): readonly Change[] {
  if (before === undefined) {
    if (after === undefined) return [];
    const wipes = after.members.filter(wipedBy(after, wasThere));
    return [{ kind: 'group-created', wipes, after, subject: subjectOf(after), place: placed(after, 'head') }];
  }
  if (after === undefined) {
    return [{ kind: 'group-deleted', before, subject: subjectOf(before), place: placed(before, 'base') }];
  }
  const subject = subjectOf(after);
  const both = { before, after, subject };
  const changes: Change[] = [];
  if (before.name !== after.name)
    changes.push({ kind: 'group-renamed', ...both, place: placed(after, 'head', 'formerly') });
  const membersBefore = new Set(before.members.map((member) => renames.volumes.get(member) ?? member));
  const membersAfter = new Set(after.members);
  for (const volume of [...membersBefore].sort()) {
    if (!membersAfter.has(volume))
      changes.push({ kind: 'member-left', volume, ...both, place: placed(after, 'head', 'members') });
  }
  for (const volume of [...membersAfter].sort()) {
    if (membersBefore.has(volume)) continue;
    // That a group lies there already says nothing of a volume that comes to it now.
    const wipes = wasThere(volume);
    changes.push({
      kind: 'member-joined',
      volume,
      wipes,
      after,
      subject,
      place: placed(after, 'head', 'members'),
    });
  }
  if (before.extent !== after.extent || layoutText(before.layout) !== layoutText(after.layout)) {
    changes.push({
      kind: 'group-edited',
      ...both,
      place: placed(after, 'head', before.extent === after.extent ? 'layout' : 'extent'),
    });
  } else if (before.team !== after.team || !sameLabels(before.labels, after.labels)) {
    changes.push({ kind: 'group-edited', ...both, place: placed(after, 'head') });
  }
  return changes;
}

/** A file system is told by what it lies on and its mount point, so it follows a rename of either. */
function fileSystemChanges(
  volumes: Pairs<Volume>,
  groups: Pairs<VolumeGroup>,
  wasThere: WasThere,
): readonly Change[] {
  const systemsOf = (carrier: Volume | VolumeGroup | undefined): readonly FileSystem[] =>
    carrier === undefined
      ? []
      : carrier.kind === 'volume-group'
        ? carrier.fileSystems
        : carrier.fileSystem === undefined
          ? []
          : [carrier.fileSystem];
  return [...volumes.pairs, ...groups.pairs].flatMap(({ before, after }): readonly Change[] => {
    const old = systemsOf(before);
    const current = systemsOf(after);
    const left = old.filter(({ mount }) => !current.some((system) => system.mount === mount));
    const came = current.filter(({ mount }) => !old.some((system) => system.mount === mount));
    const remounts = pairRemounts(left, came);
    const gone = left
      .filter((system) => !remounts.some(([former]) => former === system))
      .map(
        (system): Change => ({
          kind: 'file-system-deleted',
          before: system,
          subject: subjectOf(system),
          place: placed(system, 'base'),
        }),
      );
    const others = current.flatMap((system): readonly Change[] => {
      const subject = subjectOf(system);
      const former =
        old.find(({ mount }) => mount === system.mount) ?? remounts.find(([, now]) => now === system)?.[0];
      if (former === undefined) {
        const wipes = after?.kind === 'volume' && wasThere(after.name) && !system.existing;
        return [
          { kind: 'file-system-created', wipes, after: system, subject, place: placed(system, 'head') },
        ];
      }
      if (former.mount !== system.mount) {
        const place = placed(system, 'head');
        return [
          { kind: 'file-system-remounted', before: former, after: system, subject, place },
          ...resized(former, system),
        ];
      }
      if (former.type !== system.type) {
        const place = placed(system, 'head', 'type');
        return [{ kind: 'file-system-remade', before: former, after: system, subject, place }];
      }
      return resized(former, system);
    });
    return [...gone, ...others];
  });
}

/**
 * File systems that only moved to another mount point: of one type on one carrier, the only one that left and the only
 * one that came. Among several nothing tells which is which, and a loss must not be taken for a move.
 */
function pairRemounts(
  left: readonly FileSystem[],
  came: readonly FileSystem[],
): readonly (readonly [FileSystem, FileSystem])[] {
  const [former, ...others] = left;
  const [now, ...more] = came;
  const only = others.length === 0 && more.length === 0;
  return only && former !== undefined && now !== undefined && former.type === now.type ? [[former, now]] : [];
}

function resized(former: FileSystem, system: FileSystem): readonly Change[] {
  // A file system without a size of its own fills its volume, and grows and shrinks in the volume's name.
  if (system.fields.size === undefined && former.fields.size === undefined) return [];
  const both = {
    before: former,
    after: system,
    subject: subjectOf(system),
    place: placed(system, 'head', 'size'),
  };
  if (system.size > former.size) return [{ kind: 'file-system-grown', ...both }];
  if (system.size < former.size) return [{ kind: 'file-system-shrunk', ...both }];
  return [];
}

const kindOrder: readonly Subject['kind'][] = ['server', 'volume', 'volume-group', 'file-system'];

/** By kind of subject, then its name, then as things come about: the same order whatever the files' order. */
const inOrder = (a: Change, b: Change): number =>
  kindOrder.indexOf(a.subject.kind) - kindOrder.indexOf(b.subject.kind) ||
  byText(a.subject.name, b.subject.name) ||
  changeKinds.indexOf(a.kind) - changeKinds.indexOf(b.kind) ||
  byText(detail(a), detail(b));

function detail(change: Change): string {
  switch (change.kind) {
    case 'attached':
    case 'detached':
      return change.server;
    case 'member-joined':
    case 'member-left':
      return change.volume;
    default:
      return '';
  }
}

/** The name on the base of what the head calls `name`. */
export function formerName(renames: ReadonlyMap<string, string>, name: string): string {
  for (const [from, to] of renames) if (to === name) return from;
  return name;
}
