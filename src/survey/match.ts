/**
 * Which thing that a survey shows is which volume that is declared: by its identifier, then by what can only be one
 * thing. What cannot be told is said with its candidates, and never guessed.
 */
import type { DeclaredThings, Volume } from '../estate/estate.ts';
import { type FileSystemType, fileSystemTypes } from '../estate/file-system-facts.ts';
import { matchRows, type RowMatches, type SurveyedDisk } from './match-rows.ts';
import { onlyPairs, shown } from './only.ts';
import type { ProviderSurvey } from './provider-survey.ts';
import type { Survey, SurveyedDevice, SurveyedFileSystem } from './survey.ts';

export interface Matches extends RowMatches {
  /** By volume: the disks that it is, one a server at most. */
  readonly disks: ReadonlyMap<string, readonly SurveyedDisk[]>;
  /** By volume that a surveyed server holds and that cannot be told: the disks that it may be. None where it is not there. */
  readonly candidates: ReadonlyMap<string, readonly SurveyedDisk[]>;
  /** Disks that are no volume that is declared. */
  readonly undeclared: readonly SurveyedDisk[];
  /** Disks of which it cannot be told. */
  readonly undecided: readonly SurveyedDisk[];
}

export function match(
  estate: DeclaredThings,
  surveys: readonly Survey[],
  provider: ProviderSurvey | undefined,
): Matches {
  const disks = new Map<string, SurveyedDisk[]>();
  const candidates = new Map<string, readonly SurveyedDisk[]>();
  const undeclared: SurveyedDisk[] = [];
  const undecided: SurveyedDisk[] = [];
  const byId = volumesByShownId(estate, surveys, provider);
  for (const survey of surveys) {
    const found = matchServer(estate, survey, byId);
    for (const [volume, disk] of found.matched)
      disks.set(volume, [...(disks.get(volume) ?? []), { survey, disk }]);
    const left = found.left.map((disk) => ({ survey, disk }));
    const maybe = new Set<SurveyedDisk>();
    for (const volume of found.missing) {
      const those = left.filter(({ disk }) => couldBe(estate, survey, volume, disk));
      candidates.set(volume, those);
      for (const each of those) maybe.add(each);
    }
    for (const each of left) (maybe.has(each) ? undecided : undeclared).push(each);
  }
  return { disks, candidates, undeclared, undecided, ...matchRows(estate, provider, { disks, undeclared }) };
}

interface OnServer {
  readonly matched: ReadonlyMap<string, SurveyedDevice>;
  /** Disks that are left over, and volumes that are. */
  readonly left: readonly SurveyedDevice[];
  readonly missing: readonly string[];
}

/** Which disks of one server are which volumes. */
export function matchServer(
  estate: DeclaredThings,
  survey: Survey,
  byId: ReadonlyMap<string, string>,
): OnServer {
  const matched = new Map<string, SurveyedDevice>();
  const all = disksOf(survey);
  const free = new Set(all);
  const take = (volume: string, disk: SurveyedDevice): void => {
    if (!free.has(disk) || matched.has(volume)) return;
    free.delete(disk);
    matched.set(volume, disk);
  };
  const isOpen = (volume: string): boolean => !matched.has(volume);
  const isFree = (disk: SurveyedDevice): boolean => free.has(disk);
  for (const [volume, disk] of onlyPairs(all, ({ serial }) => serial && byId.get(serial))) take(volume, disk);
  const held = (estate.held.get(survey.server) ?? []).map(({ volume }) => volume);
  const boot = estate.servers.get(survey.server)?.boot;
  const root = systemAt(survey, '/');
  if (boot !== undefined && root !== undefined) {
    const [disk, ...more] = disksUnder(survey, root.device);
    if (disk !== undefined && more.length === 0) take(boot, disk);
  }
  for (const group of survey.groups) {
    const declared = estate.groups.get(group.name);
    if (declared === undefined) continue;
    const beneath = group.members.flatMap(({ device }) =>
      device === undefined ? [] : disksUnder(survey, device),
    );
    const members = declared.members.filter((member) => held.includes(member));
    const wholly = pairLeft(estate, members.filter(isOpen), beneath.filter(isFree));
    for (const [volume, disk] of wholly) take(volume, disk);
    const [volume, ...others] = members.filter(isOpen);
    const [disk, ...more] = beneath.filter(isFree);
    // The last of either, whatever their sizes: a group has no other members.
    if (volume !== undefined && disk !== undefined && others.length + more.length === 0) take(volume, disk);
  }
  for (const name of held) {
    const system = estate.volumes.get(name)?.fileSystem;
    const there = system === undefined ? undefined : systemAt(survey, system.mount);
    const [disk, ...more] = there === undefined ? [] : disksUnder(survey, there.device);
    if (disk !== undefined && more.length === 0) take(name, disk);
  }
  for (const [volume, disk] of pairLeft(estate, held.filter(isOpen), all.filter(isFree))) take(volume, disk);
  return {
    matched,
    left: all.filter((disk) => free.has(disk)),
    missing: survey.unseen.includes('devices') ? [] : held.filter((volume) => !matched.has(volume)),
  };
}

/** Whether what lies on a disk is what is declared to lie on a volume; nothing is no file system, and no member. */
function couldBe(estate: DeclaredThings, survey: Survey, volume: string, disk: SurveyedDevice): boolean {
  const group = survey.groups.find(({ members }) =>
    members.some(({ device }) => device !== undefined && disksUnder(survey, device).includes(disk)),
  );
  const declared = estate.groupOf.get(volume);
  if (survey.unseen.includes('volume-groups') && (group ?? declared) !== undefined) return true;
  // A group that nobody declared may well have been made on a volume that was declared blank.
  if (group !== undefined && declared === undefined)
    return estate.volumes.get(volume)?.fileSystem === undefined && !estate.groups.has(group.name);
  if (declared !== undefined)
    return (
      group !== undefined &&
      (group.name === declared.name || !survey.groups.some(({ name }) => name === declared.name))
    );
  const holds = survey.fileSystems.some(
    (system) => isDeclarable(system) && disksUnder(survey, system.device).includes(disk),
  );
  return survey.unseen.includes('mounts') || !holds || estate.volumes.get(volume)?.fileSystem !== undefined;
}

/** What is swapped to, mounted nowhere or of a type that Ullage does not know may well be left out of a declaration. */
const isDeclarable = ({ type, mounts, inFstab }: SurveyedFileSystem): boolean =>
  type !== 'swap' && (mounts.length > 0 || inFstab !== undefined) && isKnownType(type);

/** Whether a file system of that type can be declared. */
export const isKnownType = (type: string): type is FileSystemType =>
  fileSystemTypes.some((known) => known === type);

/** Pairs of what is left whose size occurs once on either side. */
function pairLeft(
  estate: DeclaredThings,
  volumes: readonly string[],
  disks: readonly SurveyedDevice[],
): readonly (readonly [string, SurveyedDevice])[] {
  const bySize = new Map(onlyPairs(disks, ({ size }) => `${size}`));
  return onlyPairs(volumes, (volume) => `${estate.volumes.get(volume)?.size}`).flatMap(([size, volume]) => {
    const disk = bySize.get(size);
    return disk === undefined || showsAnother(disk, estate.volumes.get(volume))
      ? []
      : [[volume, disk] as const];
  });
}

/** A serial number of the kind of the volume's identifier, and not that: it is a disk of the same size. */
const showsAnother = ({ serial }: SurveyedDevice, volume: Volume | undefined): boolean =>
  serial !== undefined &&
  volume?.id !== undefined &&
  !lettered(volume.id).startsWith(lettered(serial)) &&
  !lettered(serial).startsWith(lettered(volume.id)) &&
  kindOfId(serial) !== undefined &&
  kindOfId(serial) === kindOfId(volume.id);

/** Disks show identifiers cut short, and some without their hyphens. */
const lettered = (id: string): string => id.toLowerCase().replaceAll(/[^a-z0-9]/g, '');

/** How identifiers of one kind begin, or what they are made of. */
function kindOfId(id: string): string | undefined {
  const plain = id.toLowerCase();
  if (/^[0-9]+$/.test(plain)) return `${plain.length} digits`;
  if (/^[0-9a-f]{8}-[0-9a-f]{4}-/.test(plain)) return 'UUID';
  return /^[a-z]{2,}(?=[-_]?[0-9])/.exec(plain)?.[0];
}

/**
 * Volumes by what a disk shows of their identifiers, where that is one volume's alone. Some hosts number the disks of every
 * server alike: what several servers show tells nothing, unless the volume may be attached to several, or the provider
 * lists it by that identifier.
 */
export function volumesByShownId(
  { volumes }: DeclaredThings,
  surveys: readonly Survey[],
  provider: ProviderSurvey | undefined,
): ReadonlyMap<string, string> {
  const listed = new Set(provider?.volumes.flatMap(({ id }) => (id === undefined ? [] : shown(id))));
  const once = new Set<string>();
  const alike = new Set<string>();
  for (const survey of surveys)
    for (const serial of new Set(disksOf(survey).flatMap((disk) => disk.serial ?? [])))
      (once.has(serial) ? alike : once).add(serial);
  return new Map(
    onlyPairs([...volumes.values()], ({ id }) => (id === undefined ? undefined : shown(id))).flatMap(
      ([key, { name, shareable }]) =>
        alike.has(key) && !shareable && !listed.has(key) ? [] : [[key, name] as const],
    ),
  );
}

/** By survey: the volumes that are found there, each with its disk. */
export function bySurvey({ disks }: Matches): ReadonlyMap<Survey, ReadonlyMap<string, SurveyedDevice>> {
  const found = new Map<Survey, Map<string, SurveyedDevice>>();
  for (const [volume, on] of disks) {
    for (const { survey, disk } of on) {
      const here = found.get(survey);
      if (here === undefined) found.set(survey, new Map([[volume, disk]]));
      else here.set(volume, disk);
    }
  }
  return found;
}

/** The disks of a server, by name. */
export const disksOf = ({ devices }: Survey): readonly SurveyedDevice[] =>
  devices.filter(({ type }) => type === 'disk');

/** The disks that a device, or a group's logical volume, lies on. */
export function disksUnder(survey: Survey, name: string): readonly SurveyedDevice[] {
  const found = new Set<SurveyedDevice>();
  const seen = new Set<string>();
  const follow = (at: string): void => {
    if (seen.has(at)) return;
    seen.add(at);
    const device = survey.deviceNamed.get(at);
    if (device?.type === 'disk') found.add(device);
    for (const below of device?.on ?? []) follow(below);
    const [group] = at.split('/');
    if (device === undefined)
      for (const member of survey.groups.find((each) => each.name === group)?.members ?? [])
        if (member.device !== undefined) follow(member.device);
  };
  follow(name);
  return [...found];
}

/** What is mounted at a place, or is to be by fstab. */
export const systemAt = (survey: Survey, mount: string) =>
  survey.fileSystems.find(({ mounts }) => mounts[0] === mount) ??
  survey.fileSystems.find(({ mounts, inFstab }) => mounts.length === 0 && inFstab === mount);
