/**
 * What is there and not declared, as estate files: one a server, and one of the volumes that only the provider lists. All of it
 * is marked as existing. What only a person can know is asked for where it belongs.
 */

import { Document, YAMLMap } from 'yaml';
import { byText } from '../base/order.ts';
import { visible } from '../base/visible.ts';
import { listed } from '../base/wording.ts';
import type { Estate, Volume } from '../estate/estate.ts';
import { type Bytes, exactSize } from '../estate/size.ts';
import { unknownTier } from '../price/price-list.ts';
import type { Surveys } from './compare.ts';
import { bySurvey, disksOf, disksUnder, isKnownType, type Matches, systemAt } from './match.ts';
import { type ServersOf, serversOfRows } from './match-rows.ts';
import { onlyPairs, shown, shownOfId } from './only.ts';
import { mountOf, type OwnSystem, ownSystem, undeclaredSystems } from './own-system.ts';
import type { ProviderVolume } from './provider-survey.ts';
import { sharedDisks } from './shared-disks.ts';
import type { Survey, SurveyedDevice, SurveyedGroup } from './survey.ts';

export interface EstateText {
  /** The file's name, without a folder. */
  readonly name: string;
  readonly text: string;
}

type Values = Readonly<Record<string, unknown>>;

export interface Declaration {
  readonly files: readonly EstateText[];
  /** Rows of the provider's list of which nothing is made: they may be something that is declared, or is told in a file. */
  readonly leftOut: readonly ProviderVolume[];
  /** Volumes that are declared already, without the file system that is on them. */
  readonly without: readonly { readonly volume: Volume; readonly system: OwnSystem }[];
}

/** @param matches what of the surveys is declared already: of every server, declared or not */
export function declareSurveys(estate: Estate, surveys: Surveys, matches: Matches): Declaration {
  const names = new Names(estate);
  const serversOf = serversOfRows(estate, surveys.provider);
  const shared = sharedDisks(matches);
  const rows = new Map(rowsOfDisks(matches, serversOf));
  for (const [disk, first] of shared) {
    const row = rows.get(disk) ?? rows.get(first);
    if (row !== undefined) rows.set(first, row);
  }
  const serials = ownSerials(surveys.servers, shared);
  const known = bySurvey(matches);
  const called = new Map<SurveyedDevice, string>();
  const files = [...surveys.servers]
    .sort((a, b) => byText(a.server, b.server))
    .flatMap((survey) => {
      const here = known.get(survey) ?? new Map();
      const text = declareServer({ estate, survey, here, matches, names, rows, serials, shared, called });
      return text === undefined ? [] : [{ name: `${survey.server}.yaml`, text }];
    });
  const hasRow = (disk: SurveyedDevice): boolean => rows.has(disk) || rows.has(shared.get(disk) ?? disk);
  const isTold = toldAlready(estate, surveys, matches, hasRow, serversOf);
  const given = new Set(rows.values());
  const left = matches.undeclaredRows.filter((row) => !given.has(row));
  const leftOut = left.filter(isTold);
  const listedOnly = left.filter((row) => !isTold(row));
  const without = withoutSystem(estate, known);
  if (listedOnly.length === 0) return { files, leftOut, without };
  const more = { name: 'not-surveyed.yaml', text: declareRows(estate, listedOnly, names, serversOf) };
  return { files: [...files, more], leftOut, without };
}

/** Volumes that only the provider lists. One that is held by a server must not read as one that nobody needs. */
function declareRows(
  estate: Estate,
  rows: readonly ProviderVolume[],
  names: Names,
  serversOf: ServersOf,
): string {
  const named = rows.map((row) => ({ name: names.volume(row.name ?? row.id ?? 'volume'), row }));
  const held = named.flatMap(({ name, row }) =>
    (serversOf(row) ?? []).map((server) => ({ volume: name, server, boot: row.boot === true })),
  );
  const canBeSaid = ({ server, boot }: (typeof held)[number]) => estate.servers.has(server) && !boot;
  const attachments = held.filter(canBeSaid).map(({ volume, server }) => ({ volume, server }));
  return fileText(
    {
      volumes: Object.fromEntries(named.map(({ name, row }) => [name, volumeOf(row.size, row)])),
      ...(attachments.length === 0 ? {} : { attachments }),
    },
    held
      .filter((each) => !canBeSaid(each))
      .map(
        ({ volume, server, boot }) =>
          `${server} ${boot ? 'starts from' : 'holds'} ${volume} at the provider: ${estate.servers.has(server) ? 'say so there (boot:).' : 'declare that server, and that it does.'}`,
      ),
  );
}

/** A volume may have been declared by the provider's list alone, which does not say what is on it. */
const withoutSystem = (estate: Estate, known: ReturnType<typeof bySurvey>): Declaration['without'] =>
  [...known].flatMap(([survey, here]) =>
    undeclaredSystems(estate, survey, here).map(({ volume, system }) => ({ volume, system })),
  );

/** The serial numbers that one volume alone shows, and that are not cut off: as good as identifiers. */
const ownSerials = (
  servers: readonly Survey[],
  shared: ReadonlyMap<SurveyedDevice, SurveyedDevice>,
): ReadonlySet<string> =>
  new Set(
    onlyPairs(
      servers.flatMap(disksOf).filter((disk) => !shared.has(disk)),
      ({ serial }) => serial,
    )
      .map(([serial]) => serial)
      .filter((serial) => Buffer.byteLength(serial) < shownOfId),
  );

/** Rows of the provider's list that nobody declared, each with the one disk that it can only be. */
function rowsOfDisks(
  { undeclared, undecided, undeclaredRows }: Matches,
  serversOf: ServersOf,
): ReadonlyMap<SurveyedDevice, ProviderVolume> {
  const rows = new Map<SurveyedDevice, ProviderVolume>();
  const left = new Set(undeclaredRows);
  const take = (disk: SurveyedDevice, row: ProviderVolume | undefined): void => {
    if (row !== undefined && !rows.has(disk) && left.delete(row)) rows.set(disk, row);
  };
  const shownBy = ({ id }: ProviderVolume) => (id === undefined ? undefined : shown(id));
  const byId = new Map(onlyPairs(undeclaredRows, shownBy));
  for (const { disk } of undeclared) take(disk, byId.get(disk.serial ?? ''));
  const ids = new Set(undeclaredRows.map(shownBy));
  // One of several holders would be a guess.
  const holderOf = (row: ProviderVolume): string | undefined => {
    const [holder, another] = serversOf(row) ?? [];
    return another === undefined ? holder : undefined;
  };
  const bySize = new Map(onlyPairs([...left], (row) => `${row.size} ${holderOf(row)}`));
  const open = new Set(undeclared.map(({ disk }) => disk));
  for (const [size, { disk }] of onlyPairs(
    [...undeclared, ...undecided],
    ({ disk, survey }) => `${disk.size} ${survey.server}`,
  ))
    if (open.has(disk) && (disk.serial === undefined || !ids.has(disk.serial))) take(disk, bySize.get(size));
  return rows;
}

/**
 * Whether a row that is no disk's for certain may be something that stands in the estate or in a file already: a disk of
 * its server, or of its size. Declared beside it, one volume would be two, and one of them be deleted in good faith.
 */
function toldAlready(
  estate: Estate,
  { servers }: Surveys,
  { undeclared, undecided, rows: declared }: Matches,
  hasRow: (disk: SurveyedDevice) => boolean,
  serversOf: ServersOf,
): (row: ProviderVolume) => boolean {
  const surveyed = new Set(servers.map(({ server }) => server));
  const sizes = new Set([...undeclared, ...undecided].flatMap(({ disk }) => (hasRow(disk) ? [] : disk.size)));
  const volumes = [...estate.volumes.values()].filter(({ name }) => !declared.has(name));
  return (row) =>
    serversOf(row)?.some((server) => surveyed.has(server)) ||
    sizes.has(row.size) ||
    volumes.some(({ size, id }) => size === row.size && (id === undefined || row.id === undefined));
}

/** A group that the estate does not have, as it is on a server. */
interface NewGroup {
  readonly there: SurveyedGroup;
  readonly name: string;
  readonly members: readonly string[];
}

/** What somebody who reads the file must know that its keys cannot say. */
function notesOn(
  survey: Survey,
  groups: readonly NewGroup[],
  untold: readonly string[],
  bySerial: readonly string[],
): readonly string[] {
  const encrypted = survey.devices.filter(({ type }) => type === 'crypt').map(({ name }) => name);
  const parted = disksOf(survey).filter(
    (disk) => survey.devices.filter(({ type, on }) => type === 'part' && on.includes(disk.name)).length > 1,
  );
  return [
    ...(bySerial.length === 0
      ? []
      : [
          `The id of ${listed(bySerial)} is the serial number that its disk shows: where the provider has another identifier, write that.`,
        ]),
    ...groups
      .filter(({ name, there }) => name !== there.name)
      .map(
        ({ there }) =>
          `The server calls a volume group ${there.name}; here it has another name, since each name is one group's.`,
      ),
    ...untold.map(
      (name) =>
        `The volume group ${name} is left out: which declared volumes some of its members are cannot be told.`,
    ),
    ...(encrypted.length === 0
      ? []
      : [
          `Encrypted: ${encrypted.join(', ')}. Growing what lies on it takes a step of its own, which Ullage does not tell.`,
        ]),
    ...parted.map(
      ({ name }) =>
        `${name} has several partitions; only one of its file systems can be declared, and a group on it has less than all of it.`,
    ),
  ];
}

interface Ground {
  readonly estate: Estate;
  readonly survey: Survey;
  /** The declared volumes that are found there, each with its disk. */
  readonly here: ReadonlyMap<string, SurveyedDevice>;
  readonly matches: Matches;
  readonly names: Names;
  readonly rows: ReadonlyMap<SurveyedDevice, ProviderVolume>;
  readonly serials: ReadonlySet<string>;
  readonly shared: ReadonlyMap<SurveyedDevice, SurveyedDevice>;
  /** What each disk is called that a server before this one has; this one adds its own. */
  readonly called: Map<SurveyedDevice, string>;
}

function declareServer(ground: Ground): string | undefined {
  const { estate, survey, here, matches, names, rows, serials, shared, called } = ground;
  const { server } = survey;
  const isDeclared = estate.servers.has(server);
  const undeclared = new Set(matches.undeclared.flatMap((each) => (each.survey === survey ? each.disk : [])));
  for (const [volume, disk] of here) called.set(disk, volume);
  const holdsToo = new Set(shared.values());
  for (const disk of undeclared) {
    const first = shared.get(disk);
    called.set(
      disk,
      (first === undefined ? undefined : called.get(first)) ??
        names.volume(rows.get(disk)?.name ?? `${server}-${disk.name}`),
    );
  }
  const own = [...undeclared].filter((disk) => !shared.has(disk));
  const grouped = new Set(survey.groups.flatMap((group) => memberDisks(survey, group)));
  const root = systemAt(survey, '/');
  const [boot, ...more] = root === undefined ? [] : disksUnder(survey, root.device);
  const isNumbered = ({ serial }: SurveyedDevice): boolean => serial !== undefined && serials.has(serial);
  const bySerial = own.flatMap((disk) =>
    isNumbered(disk) && rows.get(disk)?.id === undefined ? (called.get(disk) ?? disk.name) : [],
  );
  const volumes = Object.fromEntries(
    own.map((disk) => [
      called.get(disk) ?? disk.name,
      {
        ...(isNumbered(disk) ? { id: disk.serial } : {}),
        ...volumeOf(disk.size, rows.get(disk)),
        ...(holdsToo.has(disk) ? { shareable: true } : {}),
        ...(grouped.has(disk) ? {} : declaredAs(ownSystem(survey, disk, boot === disk))),
      },
    ]),
  );
  const bootName = more.length > 0 || boot === undefined ? undefined : called.get(boot);
  // A volume that is declared already, and is on a server that is not, is held by it all the same.
  const attachments = [...(isDeclared ? [] : here.values()), ...undeclared]
    .filter((disk) => disk !== boot || bootName === undefined || isDeclared)
    .map((disk) => ({ volume: called.get(disk), server }));
  const groups: NewGroup[] = [];
  const untold: string[] = [];
  for (const there of survey.groups) {
    const disks = memberDisks(survey, there);
    const members = disks.flatMap((disk) => called.get(disk) ?? []);
    // A group on volumes that a server before this one has is declared with that.
    if (disks.length === 0 || disks.some((disk) => shared.has(disk))) continue;
    if (isDeclaredGroup(estate, survey, there, members)) continue;
    if (members.length < disks.length) untold.push(there.name);
    else groups.push({ there, name: names.group(there.name), members });
  }
  const declared = {
    ...(isDeclared
      ? {}
      : {
          servers: {
            [server]: {
              power: 'running',
              guest: survey.groups.length > 0 ? 'linux-lvm' : 'linux',
              ...(bootName === undefined ? {} : { boot: bootName }),
            },
          },
        }),
    ...(own.length === 0 ? {} : { volumes }),
    ...(attachments.length === 0 ? {} : { attachments }),
    ...(groups.length === 0
      ? {}
      : {
          'volume-groups': Object.fromEntries(
            groups.map(({ there, name, members }) => [name, groupOf(survey, there, members)]),
          ),
        }),
  };
  return Object.keys(declared).length === 0
    ? undefined
    : fileText(declared, notesOn(survey, groups, untold, bySerial));
}

/**
 * By the members, since two servers may each have a group of one name, and people rename them; by the name as well where
 * a volume that the server holds in it cannot be told among its disks.
 */
const isDeclaredGroup = (
  estate: Estate,
  { server }: Survey,
  { name }: SurveyedGroup,
  members: readonly string[],
): boolean =>
  members.some((member) => estate.groupOf.has(member)) ||
  (estate.held.get(server) ?? []).some(({ volume }) => estate.groupOf.get(volume)?.name === name);

const volumeOf = (size: Bytes, row: ProviderVolume | undefined): Values => ({
  size: exactSize(size),
  tier: row?.tier ?? unknownTier,
  ...(row?.site === undefined ? {} : { site: row.site }),
  ...(row?.id === undefined ? {} : { id: row.id }),
});

const memberDisks = (survey: Survey, { members }: SurveyedGroup): readonly SurveyedDevice[] => [
  ...new Set(members.flatMap(({ device }) => (device === undefined ? [] : disksUnder(survey, device)))),
];

function groupOf(survey: Survey, group: SurveyedGroup, members: readonly string[]): Values {
  const taken = new Set<string>();
  const systems = survey.fileSystems.flatMap((system) => {
    const logical = group.logicalVolumes.find(({ name }) => system.device === `${group.name}/${name}`);
    const mount = mountOf(system);
    if (mount === undefined || !isKnownType(system.type) || logical === undefined) return [];
    // A group may hold several swap areas, and a name is one's alone: each further one is called by its device.
    const place = taken.has(mount) ? `/dev/${group.name}/${logical.name}` : mount;
    taken.add(place);
    return [[place, { size: exactSize(logical.size), type: system.type }] as const];
  });
  const layouts = new Set(group.logicalVolumes.map(({ layout }) => layout));
  const [first] = group.logicalVolumes;
  const layout =
    layouts.size === 1 && first?.layout === 'striped' && first.stripes !== undefined
      ? { layout: 'striped', stripes: first.stripes }
      : layouts.size === 1 && first?.layout === 'mirrored' && first.copies !== undefined
        ? { layout: 'mirrored', copies: first.copies }
        : {};
  return { extent: exactSize(group.extent), ...layout, members, 'file-systems': Object.fromEntries(systems) };
}

const declaredAs = (system: OwnSystem | undefined): Values =>
  system === undefined ? {} : { 'file-system': { mount: system.mount, type: system.type } };

/** Names that the estate has not yet, and takes. */
class Names {
  readonly #taken: Record<'volume' | 'group', Set<string>>;

  constructor({ volumes, groups }: Estate) {
    this.#taken = { volume: new Set(volumes.keys()), group: new Set(groups.keys()) };
  }

  readonly volume = (wanted: string): string => this.#take('volume', wanted);
  readonly group = (wanted: string): string => this.#take('group', wanted);

  #take(kind: 'volume' | 'group', wanted: string): string {
    const plain = wanted
      .replaceAll(/[^A-Za-z0-9._-]+/g, '-')
      .replace(/^[^A-Za-z0-9]+/, '')
      .slice(0, 120);
    const name = plain === '' ? kind : plain;
    const taken = this.#taken[kind];
    for (let number = 1; ; number++) {
      const free = number === 1 ? name : `${name}-${number}`;
      if (taken.has(free)) continue;
      taken.add(free);
      return free;
    }
  }
}

/** Written by the library, so that no name leaves its place. */
function fileText(values: Values, notes: readonly string[] = []): string {
  const document = new Document({ existing: true, ...values });
  const asked =
    'What a survey shows to be there. Say whose it is (team:), at which site it is (site:), of which tier each volume\nis, of which type each server is where it is billed (type:), and review the rest.';
  document.commentBefore = [asked, ...notes.map(visible)]
    .join('\n')
    .split('\n')
    .map((each) => ` ${each}`)
    .join('\n');
  for (const key of ['volumes', 'attachments']) {
    const map = document.get(key, true);
    if (map instanceof YAMLMap)
      for (const { value } of map.items) if (value instanceof YAMLMap) value.flow = true;
  }
  return document.toString({ lineWidth: 0 });
}
