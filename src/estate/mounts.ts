/**
 * Mount points: one file system at each, on one server; and one name for each file system, which is what it lies on and
 * its mount point.
 */
import { at, type Problem } from '../base/problem.ts';
import { type Draft, isLater } from './draft.ts';
import type { FileSystem } from './estate.ts';

export function mountProblems(draft: Draft): readonly Problem[] {
  return [...namesakes(draft), ...mountedTwice(draft)];
}

/** A volume and a group of one name, each with a file system at one mount point: nothing would tell the two apart. */
function namesakes({ coming, volumes, groups }: Draft): readonly Problem[] {
  const names = new Set<string>();
  for (const part of coming) {
    for (const { name, fileSystem } of part.volumes) if (fileSystem !== undefined) names.add(name);
    for (const { name } of part.groups) names.add(name);
  }
  return [...names].flatMap((name): readonly Problem[] => {
    const own = volumes.get(name)?.fileSystem;
    const twin = groups.get(name)?.fileSystems.find(({ mount }) => mount === own?.mount);
    if (own === undefined || twin === undefined) return [];
    const [first, second] = isLater(own.place, twin.place) ? [twin, own] : [own, twin];
    return [
      {
        place: second.place,
        message: `a volume and a volume group are both called ${name} and have a file system at ${own.mount} (the other is at ${at(first.place)}), so both file systems would be called ${own.name}`,
        advice: 'Rename the volume or the group; with formerly: and its old name, nothing else changes.',
      },
    ];
  });
}

/** Where one server would have two file systems at one place, the second hides what is in the first. */
function mountedTwice(draft: Draft): readonly Problem[] {
  return [...serversTouched(draft)].flatMap((server): readonly Problem[] => {
    const mounted = new Map<string, FileSystem>();
    const systems = new Set(
      (draft.held.get(server) ?? []).flatMap(({ volume }): readonly FileSystem[] => {
        const group = draft.groupOf.get(volume);
        const own = draft.volumes.get(volume)?.fileSystem;
        return [...(own === undefined ? [] : [own]), ...(group?.fileSystems ?? [])];
      }),
    );
    return [...systems].flatMap((system): readonly Problem[] => {
      const twin = mounted.get(system.mount);
      mounted.set(system.mount, twin ?? system);
      // Swap is mounted nowhere; and a root that is lent to another server, to be repaired there, is no root of it.
      const isNoClash = system.mount === '/' || system.type === 'swap' || twin?.type === 'swap';
      if (twin === undefined || isNoClash) return [];
      const [first, second] = isLater(system.place, twin.place) ? [twin, system] : [system, twin];
      return [
        {
          place: second.place,
          message: `two file systems are mounted at ${system.mount} on ${server}: that of ${second.on.name} and that of ${first.on.name} (${at(first.place)})`,
          advice: 'Give one of them another mount point, or attach what it lies on to another server.',
        },
      ];
    });
  });
}

/** The servers whose file systems may differ from those before. */
function serversTouched({ coming, holders, groups }: Draft): ReadonlySet<string> {
  const servers = new Set<string>();
  const holding = (volume: string): void => {
    for (const { server } of holders.get(volume) ?? []) servers.add(server);
  };
  for (const part of coming) {
    for (const { name } of part.servers) servers.add(name);
    for (const { name } of part.volumes) holding(name);
    for (const { server } of part.attachments) servers.add(server);
    for (const { name } of part.groups) for (const member of groups.get(name)?.members ?? []) holding(member);
  }
  return servers;
}
