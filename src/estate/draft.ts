/** An estate while it is put together: what is kept of the one before, what leaves, what comes, and what is wrong. */
import type { Place, Problem } from '../base/problem.ts';
import { apart } from './apart.ts';
import type {
  Attachment,
  Estate,
  EstatePart,
  FileSystem,
  Retired,
  Server,
  Volume,
  VolumeGroup,
} from './estate.ts';
import { layered } from './layered.ts';

/** Old entries that go, new ones that come; what is in neither is taken from the estate before. */
export class Entries<V> {
  readonly before: ReadonlyMap<string, V>;
  readonly set = new Map<string, V>();
  readonly deleted = new Set<string>();

  constructor(before: ReadonlyMap<string, V>) {
    this.before = before;
  }

  get(key: string): V | undefined {
    return this.set.get(key) ?? (this.deleted.has(key) ? undefined : this.before.get(key));
  }

  has(key: string): boolean {
    return this.get(key) !== undefined;
  }

  put(key: string, value: V): void {
    this.set.set(key, value);
    this.deleted.delete(key);
  }

  delete(key: string): void {
    this.set.delete(key);
    this.deleted.add(key);
  }

  *names(): Iterable<string> {
    for (const key of this.before.keys()) if (!this.deleted.has(key) && !this.set.has(key)) yield key;
    yield* this.set.keys();
  }

  *values(): Iterable<V> {
    for (const [key, value] of this.before) if (!this.deleted.has(key) && !this.set.has(key)) yield value;
    yield* this.set.values();
  }

  finish(): ReadonlyMap<string, V> {
    return this.before.size === 0 ? this.set : layered(this.before, this);
  }
}

export type Named = Server | Volume | VolumeGroup;

/** What one revision's files declare, as they differ from another's. */
export interface PartsEdit {
  /** What files that are new or differ declare. */
  readonly coming: readonly EstatePart[];
  /** Files that are no longer there. */
  readonly leaving: readonly string[];
}

/** A reference that leads nowhere. */
export interface Missing {
  readonly place: Place;
  /** What refers, as the beginning of a sentence. */
  readonly from: string;
  readonly kind: 'server' | 'volume';
  readonly name: string;
}

/** Each index of the estate under its own name; see `Estate` for what they hold. */
export interface Draft {
  readonly problems: Problem[];
  readonly missing: Missing[];
  /** What goes of the estate before, and what comes: of a file that changed, what its two readings do not share. */
  readonly leaving: readonly EstatePart[];
  readonly coming: readonly EstatePart[];
  readonly parts: Entries<EstatePart>;
  readonly servers: Entries<Server>;
  readonly volumes: Entries<Volume>;
  readonly groups: Entries<VolumeGroup>;
  readonly fileSystems: Entries<FileSystem>;
  readonly holders: Entries<readonly Attachment[]>;
  readonly held: Entries<readonly Attachment[]>;
  readonly groupOf: Entries<VolumeGroup>;
  readonly formerly: Entries<readonly Named[]>;
  readonly byId: Entries<readonly (Server | Volume)[]>;
  readonly retired: Entries<readonly Retired[]>;
  readonly detached: Entries<Volume>;
  readonly previousTotals: Estate['siteTotals'];
}

/** An edit laid over an estate that stands. */
export function draftOver(previous: Estate, { coming, leaving }: PartsEdit): Draft {
  const parts = new Entries(previous.parts);
  for (const file of leaving) parts.delete(file);
  for (const part of coming) parts.put(part.file, part);
  const gone = leaving.flatMap((file) => previous.parts.get(file) ?? []);
  const changed = coming.map((part): readonly [EstatePart | undefined, EstatePart] => {
    const before = previous.parts.get(part.file);
    return before === undefined ? [undefined, part] : apart(before, part);
  });
  return {
    problems: [],
    missing: [],
    coming: changed.map(([, after]) => after),
    leaving: [...changed.flatMap(([before]) => before ?? []), ...gone],
    parts,
    servers: new Entries(previous.servers),
    volumes: new Entries(previous.volumes),
    groups: new Entries(previous.groups),
    fileSystems: new Entries(previous.fileSystems),
    holders: new Entries(previous.holders),
    held: new Entries(previous.held),
    groupOf: new Entries(previous.groupOf),
    formerly: new Entries<readonly Named[]>(previous.formerly),
    byId: new Entries<readonly (Server | Volume)[]>(previous.byId),
    retired: new Entries(previous.retired),
    detached: new Entries(previous.detached),
    previousTotals: previous.siteTotals,
  };
}

export const isLater = (a: Place, b: Place): boolean =>
  a.file === b.file ? a.line > b.line || (a.line === b.line && a.column > b.column) : a.file > b.file;
