/** What all files declare -> one estate, every reference followed; or everything that does not hold together. */

import { offer } from '../read/nearest.ts';
import { found, type Outcome, type Place, type Problem, refused } from '../read/problem.ts';
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
import type { Settings } from './settings.ts';

const at = ({ file, line }: Place): string => `${file}:${line}`;

/** Every name once, and a problem for each that comes again. */
class Names<T extends { readonly name: string; readonly kind: string; readonly place: Place }> extends Map<
  string,
  T
> {
  readonly #problems: Problem[];

  constructor(problems: Problem[]) {
    super();
    this.#problems = problems;
  }

  add(declared: T): void {
    const first = this.get(declared.name);
    if (first === undefined) {
      this.set(declared.name, declared);
      return;
    }
    const kind = declared.kind.replace('-', ' ');
    this.#problems.push({
      place: declared.place,
      message: `the ${kind} ${declared.name} is declared twice: here and at ${at(first.place)}`,
      advice: `Names are unique across the estate; keep one of the two, or give this ${kind} its own name.`,
    });
  }
}

const push = <K, V>(map: Map<K, V[]>, key: K, value: V): void => {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
};

/**
 * Puts the parts together.
 *
 * @param parts what each file declares, by file
 * @param settings of the same revision; where it lists sites, no other may be named
 */
export function assemble(parts: readonly EstatePart[], settings: Settings): Outcome<Estate> {
  const problems: Problem[] = [];
  const servers = new Names<Server>(problems);
  const volumes = new Names<Volume>(problems);
  const groups = new Names<VolumeGroup>(problems);
  const fileSystems = new Map<string, FileSystem>();
  const retired = new Map<string, Retired>();
  for (const part of parts) {
    for (const server of part.servers) servers.add(server);
    for (const volume of part.volumes) volumes.add(volume);
    for (const group of part.groups) groups.add(group);
    for (const record of part.retired) retired.set(record.volume, record);
  }

  const dangling = (
    place: Place,
    from: string,
    kind: 'server' | 'volume' | 'site',
    name: string,
    known: ReadonlyMap<string, unknown>,
  ): void => {
    const near = known.size > nearestAmong ? '' : offer(name, [...known.keys()]);
    const where = kind === 'site' ? 'ullage.yaml lists no such site' : `no ${kind} of that name is declared`;
    problems.push({
      place,
      message: `${from} names the ${kind} ${name}, and ${where}`,
      advice: `${near}${kind === 'site' ? 'List the site in ullage.yaml' : `Declare the ${kind}`}, or put the name right.`,
    });
  };

  const holders = new Map<string, Attachment[]>();
  const held = new Map<string, Attachment[]>();
  const attach = (attachment: Attachment): void => {
    push(holders, attachment.volume, attachment);
    push(held, attachment.server, attachment);
  };
  for (const server of servers.values()) {
    if (server.boot === undefined) continue;
    const place = server.fields.boot ?? server.place;
    if (volumes.has(server.boot)) attach({ volume: server.boot, server: server.name, boot: true, place });
    else
      dangling(
        place,
        `the server ${server.name} starts from a volume that is not there: it`,
        'volume',
        server.boot,
        volumes,
      );
  }
  for (const part of parts) {
    for (const attachment of part.attachments) {
      const from = `the attachment of ${attachment.volume} to ${attachment.server}`;
      const known = { volume: volumes.has(attachment.volume), server: servers.has(attachment.server) };
      if (!known.volume) dangling(attachment.place, from, 'volume', attachment.volume, volumes);
      if (!known.server) dangling(attachment.place, from, 'server', attachment.server, servers);
      if (!known.volume || !known.server) continue;
      const twin = held.get(attachment.server)?.find(({ volume }) => volume === attachment.volume);
      if (twin === undefined) attach(attachment);
      else if (!twin.boot) {
        problems.push({
          place: attachment.place,
          message: `${from} is declared twice: here and at ${at(twin.place)}`,
          advice: 'Keep one of the two.',
        });
      }
    }
  }

  const groupOf = new Map<string, VolumeGroup>();
  for (const group of groups.values()) {
    const place = group.fields.members ?? group.place;
    for (const member of group.members) {
      const volume = volumes.get(member);
      if (volume === undefined) {
        dangling(
          place,
          `the volume group ${group.name} counts a member that is not there: it`,
          'volume',
          member,
          volumes,
        );
        continue;
      }
      const other = groupOf.get(member);
      if (other !== undefined) {
        problems.push({
          place,
          message: `${member} is a member of two volume groups: ${group.name} and ${other.name} (${at(other.place)})`,
          advice: 'A volume belongs to one group; take it out of the other.',
        });
        continue;
      }
      groupOf.set(member, group);
      if (volume.fileSystem !== undefined) {
        problems.push({
          place: volume.fileSystem.place,
          message: `${member} carries a file system of its own and is a member of the volume group ${group.name} (${at(group.place)})`,
          advice: 'A member of a group is given to the group whole; declare the file system in the group.',
        });
      }
    }
    for (const system of group.fileSystems) fileSystems.set(system.name, system);
  }

  const formerly = {
    server: new Map<string, Server>(),
    volume: new Map<string, Volume>(),
    'volume-group': new Map<string, VolumeGroup>(),
  };
  for (const volume of volumes.values()) {
    if (volume.fileSystem !== undefined) fileSystems.set(volume.fileSystem.name, volume.fileSystem);
    renamed(volume, volumes, formerly.volume, problems);
  }
  for (const server of servers.values()) renamed(server, servers, formerly.server, problems);
  for (const group of groups.values()) renamed(group, groups, formerly['volume-group'], problems);

  if (settings.sites.size > 0) {
    const unknown = new Set<string>();
    for (const thing of [...servers.values(), ...volumes.values()]) {
      if (thing.site === undefined || settings.sites.has(thing.site)) continue;
      // A file's own site serves all in it: one mistake there is one problem.
      const key = `${thing.place.file} ${thing.site}`;
      if (unknown.has(key) && thing.fields.site === undefined) continue;
      unknown.add(key);
      dangling(
        thing.fields.site ?? thing.place,
        `the ${thing.kind} ${thing.name}`,
        'site',
        thing.site,
        settings.sites,
      );
    }
  }

  if (problems.length > 0) return refused(...problems);
  return found({
    parts: new Map(parts.map((part) => [part.file, part])),
    servers,
    volumes,
    groups,
    fileSystems,
    holders,
    held,
    groupOf,
    retired,
  });
}

/** Beyond so many names, looking for the nearest one costs more than the offer is worth. */
const nearestAmong = 20_000;

function renamed<T extends Server | Volume | VolumeGroup>(
  declared: T,
  all: ReadonlyMap<string, T>,
  claims: Map<string, T>,
  problems: Problem[],
): void {
  const { formerly } = declared;
  if (formerly === undefined) return;
  const place = declared.fields.formerly ?? declared.place;
  const still = all.get(formerly);
  const rival = claims.get(formerly);
  if (still !== undefined) {
    problems.push({
      place,
      message: `${declared.name} says it was formerly ${formerly}, and ${formerly} is still declared at ${at(still.place)}`,
      advice: 'A rename leaves one of the two; delete the old declaration, or the formerly line.',
    });
  } else if (rival !== undefined) {
    problems.push({
      place,
      message: `${declared.name} and ${rival.name} (${at(rival.place)}) both say they were formerly ${formerly}`,
      advice: 'Only one can carry on the old name; delete the other formerly line.',
    });
  } else claims.set(formerly, declared);
}
