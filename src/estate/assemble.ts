/**
 * What all files declare -> one estate, every reference followed; or everything that does not hold together.
 *
 * There is one way to assemble: over an estate that stands. The first one stands on the empty estate; a later
 * revision stands on the one before it, and only what its differing files declare, and what refers to that, is
 * looked at again.
 */

import { offer } from '../base/nearest.ts';
import { err, type Outcome, ok, type Place, type Problem } from '../base/problem.ts';
import { belongingProblems } from './belonging.ts';
import {
  type Attachment,
  type Estate,
  type EstatePart,
  emptyEstate,
  type FileSystem,
  type Retired,
  type Server,
  type SiteTotal,
  type Volume,
  type VolumeGroup,
} from './estate.ts';
import { layered } from './layered.ts';
import type { Settings } from './settings.ts';
import { bytes, noBytes } from './size.ts';

/**
 * Puts the parts together.
 *
 * @param parts what each file declares
 * @param settings of the same revision; where it lists sites, no other may be named
 * @param previous an estate assembled under the same settings that shares most parts with this one, by identity
 */
export function assemble(
  parts: readonly EstatePart[],
  settings: Settings,
  previous: Estate = emptyEstate,
): Outcome<Estate> {
  const files = new Set(parts.map(({ file }) => file));
  const coming = parts.filter((part) => previous.parts.get(part.file) !== part);
  const leaving = [...previous.parts.keys()].filter((file) => !files.has(file));
  const { estate, problems } = assembleOver(previous, { coming, leaving }, settings);
  return problems.length > 0 ? err(...problems) : ok(estate);
}

/** What one revision's files declare, as they differ from another's. */
export interface PartsEdit {
  /** What files that are new or differ declare. */
  readonly coming: readonly EstatePart[];
  /** Files that are no longer there. */
  readonly leaving: readonly string[];
}

/** What holds together of an estate; where there are problems, it is good only for finding further ones. */
export interface WhatHolds {
  readonly estate: Estate;
  readonly problems: readonly Problem[];
}

/** As `assemble`, told what differs, so that nothing else is looked at. */
export const assembleOver = (previous: Estate, edit: PartsEdit, settings: Settings): WhatHolds =>
  new Assembly(edit, settings, previous).finish();

const at = ({ file, line }: Place): string => `${file}:${line}`;

const isLater = (a: Place, b: Place): boolean =>
  a.file === b.file ? a.line > b.line || (a.line === b.line && a.column > b.column) : a.file > b.file;

/** Beyond so many names, looking for the nearest one costs more than the offer is worth. */
const nearestAmong = 20_000;

/** Old entries that go, new ones that come; what is in neither is taken from the estate before. */
class Entries<V> {
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

  *values(): Iterable<V> {
    for (const [key, value] of this.before) if (!this.deleted.has(key) && !this.set.has(key)) yield value;
    yield* this.set.values();
  }

  finish(): ReadonlyMap<string, V> {
    return this.before.size === 0 ? this.set : layered(this.before, this);
  }
}

type Named = Server | Volume | VolumeGroup;

/** Gathers one revision's estate and its problems. */
class Assembly {
  readonly #settings: Settings;
  readonly #problems: Problem[] = [];
  readonly #leaving: readonly EstatePart[];
  readonly #coming: readonly EstatePart[];
  readonly #parts: Entries<EstatePart>;
  readonly #servers: Entries<Server>;
  readonly #volumes: Entries<Volume>;
  readonly #groups: Entries<VolumeGroup>;
  readonly #fileSystems: Entries<FileSystem>;
  readonly #holders: Entries<readonly Attachment[]>;
  readonly #held: Entries<readonly Attachment[]>;
  readonly #groupOf: Entries<VolumeGroup>;
  readonly #formerly: Entries<Named>;
  readonly #retired: Entries<Retired>;
  readonly #detached: Entries<Volume>;
  readonly #previousTotals: Estate['siteTotals'];

  constructor({ coming, leaving }: PartsEdit, settings: Settings, previous: Estate) {
    this.#settings = settings;
    this.#parts = new Entries(previous.parts);
    this.#servers = new Entries(previous.servers);
    this.#volumes = new Entries(previous.volumes);
    this.#groups = new Entries(previous.groups);
    this.#fileSystems = new Entries(previous.fileSystems);
    this.#holders = new Entries(previous.holders);
    this.#held = new Entries(previous.held);
    this.#groupOf = new Entries(previous.groupOf);
    this.#formerly = new Entries(previous.formerly);
    this.#retired = new Entries(previous.retired);
    this.#detached = new Entries(previous.detached);
    this.#previousTotals = previous.siteTotals;
    this.#coming = coming;
    this.#leaving = [...coming.map(({ file }) => file), ...leaving].flatMap(
      (file) => previous.parts.get(file) ?? [],
    );
    for (const file of leaving) this.#parts.delete(file);
    for (const part of coming) this.#parts.put(part.file, part);
  }

  finish(): WhatHolds {
    this.#declare();
    this.#retire();
    this.#attach();
    this.#group();
    this.#leftBehind();
    this.#rename();
    for (const part of this.#coming) this.#problems.push(...belongingProblems(part, this.#settings));
    const estate: Estate = {
      parts: this.#parts.finish(),
      servers: this.#servers.finish(),
      volumes: this.#volumes.finish(),
      groups: this.#groups.finish(),
      fileSystems: this.#fileSystems.finish(),
      holders: this.#holders.finish(),
      held: this.#held.finish(),
      groupOf: this.#groupOf.finish(),
      formerly: this.#formerly.finish(),
      retired: this.#retired.finish(),
      siteTotals: this.#siteTotals(),
      detached: this.#detached.finish(),
    };
    return { estate, problems: this.#problems };
  }

  #siteTotals(): ReadonlyMap<string, SiteTotal> {
    const totals = new Map(this.#previousTotals);
    const count = ({ site, size }: Volume, sign: 1n | -1n): void => {
      if (site === undefined) return;
      const total = totals.get(site) ?? { volumes: 0n, size: noBytes };
      totals.set(site, { volumes: total.volumes + sign, size: bytes(total.size + sign * size) });
    };
    for (const part of this.#leaving) for (const volume of part.volumes) count(volume, -1n);
    for (const part of this.#coming) for (const volume of part.volumes) count(volume, 1n);
    for (const [site, { volumes }] of totals) if (volumes === 0n) totals.delete(site);
    return totals;
  }

  #declare(): void {
    for (const part of this.#leaving) {
      for (const { name } of part.servers) this.#servers.delete(name);
      for (const { name, fileSystem } of part.volumes) {
        this.#volumes.delete(name);
        if (fileSystem !== undefined) this.#fileSystems.delete(fileSystem.name);
      }
      for (const { name, fileSystems, members } of part.groups) {
        this.#groups.delete(name);
        for (const system of fileSystems) this.#fileSystems.delete(system.name);
        for (const member of members) this.#groupOf.delete(member);
      }
    }
    for (const part of this.#coming) {
      for (const server of part.servers) this.#once(this.#servers, server);
      for (const volume of part.volumes) {
        this.#once(this.#volumes, volume);
        if (volume.fileSystem !== undefined) this.#fileSystems.put(volume.fileSystem.name, volume.fileSystem);
      }
      for (const group of part.groups) {
        this.#once(this.#groups, group);
        for (const system of group.fileSystems) this.#fileSystems.put(system.name, system);
      }
    }
  }

  /** A name may be used and retired more than once, in any file: the latest record is the one that counts. */
  #retire(): void {
    const touched = new Set(
      [...this.#leaving, ...this.#coming].flatMap(({ retired }) => retired.map(({ name }) => name)),
    );
    if (touched.size === 0) return;
    for (const name of touched) this.#retired.delete(name);
    for (const { retired } of this.#parts.values()) {
      for (const record of retired) {
        if (!touched.has(record.name)) continue;
        const other = this.#retired.get(record.name);
        const later =
          other === undefined ||
          record.on > other.on ||
          (record.on === other.on && isLater(record.place, other.place));
        if (later) this.#retired.put(record.name, record);
      }
    }
  }

  #once<T extends Named>(entries: Entries<T>, declared: T): void {
    const twin = entries.get(declared.name);
    if (twin === undefined) {
      entries.put(declared.name, declared);
      return;
    }
    const kind = declared.kind.replace('-', ' ');
    const [first, second] = isLater(declared.place, twin.place) ? [twin, declared] : [declared, twin];
    this.#problems.push({
      place: second.place,
      message: `the ${kind} ${declared.name} is declared twice: here and at ${at(first.place)}`,
      advice: `Names are unique across the estate; keep one of the two, or give this ${kind} its own name.`,
    });
  }

  #attach(): void {
    const bootOf = ({ name, boot, fields, place }: Server): readonly Attachment[] =>
      boot === undefined
        ? []
        : [{ volume: boot, server: name, boot: true, place: fields.of('boot') ?? place }];
    const changed = { volumes: new Set<string>(), servers: new Set<string>() };
    const note = ({ volume, server }: Attachment): void => {
      changed.volumes.add(volume);
      changed.servers.add(server);
    };
    for (const part of this.#leaving) {
      for (const server of part.servers) bootOf(server).forEach(note);
      part.attachments.forEach(note);
    }
    const leaving = new Set(this.#leaving.map(({ file }) => file));
    const byVolume = new Map<string, Attachment[]>();
    const byServer = new Map<string, Attachment[]>();
    const standing = (lists: Entries<readonly Attachment[]>, key: string): Attachment[] =>
      (lists.before.get(key) ?? []).flatMap((attachment) => staying(attachment, leaving));
    const ofVolume = (name: string): Attachment[] =>
      listAt(byVolume, name, () => standing(this.#holders, name));
    const ofServer = (name: string): Attachment[] => listAt(byServer, name, () => standing(this.#held, name));
    for (const name of changed.volumes) ofVolume(name);
    for (const name of changed.servers) ofServer(name);
    const coming = [
      ...this.#coming.flatMap(({ servers }) => servers.flatMap(bootOf)),
      ...this.#coming.flatMap(({ attachments }) => attachments),
    ];
    for (const attachment of coming) {
      if (!this.#bothThere(attachment)) continue;
      const held = ofServer(attachment.server);
      const twin = held.find(({ volume }) => volume === attachment.volume);
      if (twin === undefined) {
        held.push(attachment);
        ofVolume(attachment.volume).push(attachment);
        continue;
      }
      const boot = twin.boot ? twin : attachment;
      if (twin.boot !== attachment.boot && boot.listed === undefined) {
        // A boot volume may be listed as attached, too: it is one attachment, and the boot says more.
        const both = { ...boot, listed: (twin.boot ? attachment : twin).place };
        replace(held, both);
        replace(ofVolume(attachment.volume), both);
      } else {
        const other = twin.boot === attachment.boot ? twin.place : (twin.listed ?? twin.place);
        const [first, second] = isLater(attachment.place, other)
          ? [other, attachment.place]
          : [attachment.place, other];
        this.#problems.push({
          place: second,
          message: `the attachment of ${attachment.volume} to ${attachment.server} is declared twice: here and at ${at(first)}`,
          advice: 'Keep one of the two.',
        });
      }
    }
    settle(this.#holders, byVolume, ({ server }) => server);
    this.#detach(byVolume.keys());
    settle(this.#held, byServer, ({ volume }) => volume);
  }

  /** Whether each volume that came, left, or whose holders changed is held by any server. */
  #detach(held: Iterable<string>): void {
    const names = new Set(held);
    for (const part of [...this.#leaving, ...this.#coming])
      for (const { name } of part.volumes) names.add(name);
    for (const name of names) {
      const volume = this.#holders.has(name) ? undefined : this.#volumes.get(name);
      if (volume === undefined) this.#detached.delete(name);
      else this.#detached.put(name, volume);
    }
  }

  #bothThere(attachment: Attachment): boolean {
    const { volume, server, boot, place } = attachment;
    const from = boot
      ? `the server ${server} starts from a volume that is not there: it`
      : `the attachment of ${volume} to ${server}`;
    const known = { volume: this.#volumes.has(volume), server: this.#servers.has(server) };
    if (!known.volume) this.#dangling(place, from, 'volume', volume, this.#volumes);
    if (!known.server) this.#dangling(place, from, 'server', server, this.#servers);
    return known.volume && known.server;
  }

  #group(): void {
    const came = new Set(this.#coming.flatMap(({ groups }) => groups));
    for (const part of this.#coming) {
      for (const group of part.groups) {
        // A second declaration of the same name is a problem already, and claims no members.
        if (this.#groups.get(group.name) !== group) continue;
        for (const member of group.members) this.#join(group, member);
      }
      // A volume that comes with a file system of its own may be a member of a group that stayed.
      for (const volume of part.volumes) {
        const group = this.#groupOf.get(volume.name);
        if (group !== undefined && !came.has(group)) this.#notBoth(volume, group);
      }
    }
  }

  #join(group: VolumeGroup, member: string): void {
    const place = group.fields.of('members') ?? group.place;
    const volume = this.#volumes.get(member);
    if (volume === undefined) {
      this.#dangling(
        place,
        `the volume group ${group.name} counts a member that is not there: it`,
        'volume',
        member,
        this.#volumes,
      );
      return;
    }
    const other = this.#groupOf.get(member);
    if (other !== undefined && other !== group) {
      const [first, second] = isLater(group.place, other.place) ? [other, group] : [group, other];
      this.#problems.push({
        place: second.fields.of('members') ?? second.place,
        message: `${member} is a member of two volume groups: ${second.name} and ${first.name} (${at(first.place)})`,
        advice: 'A volume belongs to one group; take it out of the other.',
      });
      return;
    }
    this.#groupOf.put(member, group);
    this.#notBoth(volume, group);
  }

  #notBoth(volume: Volume, group: VolumeGroup): void {
    if (volume.fileSystem === undefined) return;
    this.#problems.push({
      place: volume.fileSystem.place,
      message: `${volume.name} carries a file system of its own and is a member of the volume group ${group.name} (${at(group.place)})`,
      advice: 'A member of a group is given to the group whole; declare the file system in the group.',
    });
  }

  /** What stayed and refers to something that left. */
  #leftBehind(): void {
    for (const part of this.#leaving) {
      for (const { name } of part.volumes) {
        if (this.#volumes.has(name)) continue;
        for (const attachment of this.#holders.get(name) ?? []) this.#bothThere(attachment);
        const group = this.#groupOf.get(name);
        if (group !== undefined && this.#groups.get(group.name) === group) this.#join(group, name);
      }
      for (const { name } of part.servers) {
        if (this.#servers.has(name)) continue;
        for (const attachment of this.#held.get(name) ?? []) {
          if (this.#volumes.has(attachment.volume)) this.#bothThere(attachment);
        }
      }
    }
  }

  #rename(): void {
    const claim = ({ kind }: Named, name: string): string => `${kind} ${name}`;
    const declared = (part: EstatePart): readonly Named[] => [
      ...part.servers,
      ...part.volumes,
      ...part.groups,
    ];
    for (const part of this.#leaving) {
      for (const each of declared(part))
        if (each.formerly !== undefined) this.#formerly.delete(claim(each, each.formerly));
    }
    for (const part of this.#coming) {
      for (const each of declared(part)) {
        if (each.formerly === undefined) continue;
        const rival = this.#formerly.get(claim(each, each.formerly));
        if (rival === undefined) this.#formerly.put(claim(each, each.formerly), each);
        else if (rival !== each) {
          const [first, second] = isLater(each.place, rival.place) ? [rival, each] : [each, rival];
          this.#problems.push({
            place: second.fields.of('formerly') ?? second.place,
            message: `${second.name} and ${first.name} (${at(first.place)}) both say they were formerly ${each.formerly}`,
            advice: 'Only one can carry on the old name; delete the other formerly line.',
          });
        }
      }
    }
    const said = new Set<Named>();
    for (const part of this.#coming) {
      for (const each of declared(part)) {
        const renamed = each.formerly === undefined ? this.#formerly.get(claim(each, each.name)) : each;
        if (renamed?.formerly === undefined || said.has(renamed)) continue;
        const still = this.#namesakes(renamed).get(renamed.formerly);
        if (still === undefined) continue;
        said.add(renamed);
        this.#problems.push({
          place: renamed.fields.of('formerly') ?? renamed.place,
          message: `${renamed.name} says it was formerly ${renamed.formerly}, and ${renamed.formerly} is still declared at ${at(still.place)}`,
          advice: 'A rename leaves one of the two; delete the old declaration, or the formerly line.',
        });
      }
    }
  }

  #namesakes({ kind }: Named): Entries<Server> | Entries<Volume> | Entries<VolumeGroup> {
    switch (kind) {
      case 'server':
        return this.#servers;
      case 'volume':
        return this.#volumes;
      case 'volume-group':
        return this.#groups;
    }
  }

  #dangling(
    place: Place,
    from: string,
    kind: 'server' | 'volume',
    name: string,
    known: Entries<Server> | Entries<Volume>,
  ): void {
    const names =
      known.before.size + known.set.size > nearestAmong ? [] : [...known.set.keys(), ...known.before.keys()];
    this.#problems.push({
      place,
      message: `${from} names the ${kind} ${name}, and no ${kind} of that name is declared`,
      advice: `${offer(
        name,
        names.filter((each) => known.has(each)),
      )}Declare the ${kind}, or put the name right.`,
    });
  }
}

function listAt(lists: Map<string, Attachment[]>, key: string, first: () => Attachment[]): Attachment[] {
  const known = lists.get(key);
  if (known !== undefined) return known;
  const list = first();
  lists.set(key, list);
  return list;
}

/** Puts an attachment in the place of the one of the same two ends. */
const replace = (list: Attachment[], now: Attachment): void => {
  const index = list.findIndex(({ volume, server }) => volume === now.volume && server === now.server);
  if (index !== -1) list[index] = now;
};

/** What is left of an attachment when some files go: a boot volume may be listed in another file besides. */
function staying(attachment: Attachment, leaving: ReadonlySet<string>): readonly Attachment[] {
  const { place, listed } = attachment;
  const kept = listed === undefined || leaving.has(listed.file) ? undefined : listed;
  if (!leaving.has(place.file)) return [kept === listed ? attachment : { ...attachment, listed: undefined }];
  return kept === undefined ? [] : [{ ...attachment, boot: false, place: kept, listed: undefined }];
}

/** Puts finished lists among the entries, each in one order whatever the order of the files. */
function settle(
  entries: Entries<readonly Attachment[]>,
  lists: ReadonlyMap<string, Attachment[]>,
  name: (attachment: Attachment) => string,
): void {
  const order = (a: Attachment, b: Attachment): number =>
    Number(b.boot) - Number(a.boot) || (name(a) < name(b) ? -1 : name(a) > name(b) ? 1 : 0);
  for (const [key, list] of lists) {
    if (list.length === 0) entries.delete(key);
    else entries.put(key, list.length === 1 ? list : list.sort(order));
  }
}
