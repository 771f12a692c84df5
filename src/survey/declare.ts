/**
 * What is there and not declared, as estate files: one a server, and one of the volumes that no server holds. All of it
 * is marked as existing. What only a person can know is asked for where it belongs.
 */
import { Document, YAMLMap } from 'yaml';
import { byText } from '../base/order.ts';
import { visible } from '../base/visible.ts';
import type { Estate } from '../estate/estate.ts';
import { fileSystemTypes } from '../estate/file-system-facts.ts';
import { type Bytes, exactSize } from '../estate/size.ts';
import { unknownTier } from '../price/price-list.ts';
import type { Surveys } from './compare.ts';
import { disksOf, disksUnder, type Matches, systemAt } from './match.ts';
import type { ProviderVolume } from './provider-survey.ts';
import type { Survey, SurveyedDevice, SurveyedFileSystem, SurveyedGroup } from './survey.ts';

export interface EstateText {
  /** The file's name, without a folder. */
  readonly name: string;
  readonly text: string;
}

type Values = Readonly<Record<string, unknown>>;

/** @param matches what of the surveys is declared already */
export function declareSurveys(
  estate: Estate,
  { servers, provider }: Surveys,
  matches: Matches,
): readonly EstateText[] {
  const names = new Names(estate);
  const rows = new Rows(matches.undeclaredRows);
  const serials = onlyOnce(
    servers.flatMap((survey) => disksOf(survey).flatMap(({ serial }) => serial ?? [])),
  );
  const files = [...servers]
    .sort((a, b) => byText(a.server, b.server))
    .flatMap((survey) => {
      const declared = declareServer({ estate, survey, matches, names, rows, serials });
      return declared === undefined
        ? []
        : [{ name: `${survey.server}.yaml`, text: fileText(declared, notesOn(survey, declared)) }];
    });
  const left = provider === undefined ? [] : rows.left();
  if (left.length === 0) return files;
  const volumes = Object.fromEntries(
    left.map((row) => [names.volume(row.name ?? row.id ?? 'volume'), volumeOf(row.size, row)]),
  );
  return [...files, { name: 'unattached.yaml', text: fileText({ volumes }) }];
}

/** The serial numbers that one disk alone shows, and that are not cut off at 20 bytes: as good as identifiers. */
function onlyOnce(serials: readonly string[]): ReadonlySet<string> {
  const once = serials.filter((serial) => serials.filter((each) => each === serial).length === 1);
  return new Set(once.filter((serial) => Buffer.byteLength(serial) < 20));
}

/** What somebody who reads the file must know that its keys cannot say. */
function notesOn(survey: Survey, declared: Values): readonly string[] {
  const groups = declared['volume-groups'];
  const called = typeof groups === 'object' && groups !== null ? Object.keys(groups) : [];
  const encrypted = survey.devices.filter(({ type }) => type === 'crypt').map(({ name }) => name);
  const parted = disksOf(survey).filter(
    (disk) => survey.devices.filter(({ type, on }) => type === 'part' && on.includes(disk.name)).length > 1,
  );
  return [
    ...survey.groups
      .filter(({ name }) => !called.includes(name) && called.length > 0)
      .map(
        ({ name }) =>
          `The server calls a volume group ${name}; here it has another name, since each name is one group's.`,
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
  readonly matches: Matches;
  readonly names: Names;
  readonly rows: Rows;
  readonly serials: ReadonlySet<string>;
}

function declareServer({ estate, survey, matches, names, rows, serials }: Ground): Values | undefined {
  const { server } = survey;
  const known = new Map(
    [...matches.disks].flatMap(([volume, found]) =>
      found.filter((each) => each.survey === survey).map(({ disk }) => [disk.name, volume] as const),
    ),
  );
  const isDeclared = estate.servers.has(server);
  const undeclared = new Set(
    isDeclared
      ? matches.undeclared.flatMap((each) => (each.survey === survey ? each.disk : []))
      : disksOf(survey),
  );
  const called = new Map<string, string>(known);
  for (const disk of undeclared) {
    const row = rows.of(survey, disk);
    called.set(disk.name, names.volume(row?.name ?? `${server}-${disk.name}`));
  }
  const grouped = new Set(survey.groups.flatMap((group) => memberDisks(survey, group)));
  const root = systemAt(survey, '/');
  const [boot, ...more] = root === undefined ? [] : disksUnder(survey, root.device);
  const volumes = Object.fromEntries(
    [...undeclared].map((disk) => [
      called.get(disk.name) ?? disk.name,
      {
        ...(disk.serial !== undefined && serials.has(disk.serial) ? { id: disk.serial } : {}),
        ...volumeOf(disk.size, rows.of(survey, disk)),
        ...(grouped.has(disk) ? {} : systemsOf(survey, disk, boot === disk)),
      },
    ]),
  );
  const bootName = more.length > 0 || boot === undefined ? undefined : called.get(boot.name);
  const attachments = [...undeclared]
    .filter((disk) => disk !== boot || bootName === undefined || isDeclared)
    .map((disk) => ({ volume: called.get(disk.name), server }));
  const groups = Object.fromEntries(
    survey.groups
      .filter(({ name }) => !estate.groups.has(name))
      .flatMap((group) => {
        const members = memberDisks(survey, group).flatMap((disk) => called.get(disk.name) ?? []);
        return members.length === 0 ? [] : [[names.group(group.name), groupOf(survey, group, members)]];
      }),
  );
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
    ...(undeclared.size === 0 ? {} : { volumes }),
    ...(attachments.length === 0 ? {} : { attachments }),
    ...(Object.keys(groups).length === 0 ? {} : { 'volume-groups': groups }),
  };
  return Object.keys(declared).length === 0 ? undefined : declared;
}

const volumeOf = (size: Bytes, row: ProviderVolume | undefined): Values => ({
  size: exactSize(size),
  tier: row?.tier ?? unknownTier,
  ...(row?.site === undefined ? {} : { site: row.site }),
  ...(row?.id === undefined ? {} : { id: row.id }),
});

const memberDisks = (survey: Survey, { members }: SurveyedGroup): readonly SurveyedDevice[] => [
  ...new Set(members.flatMap(({ device }) => (device === undefined ? [] : disksUnder(survey, device)))),
];

const isKnownType = (type: string): boolean => fileSystemTypes.some((known) => known === type);

/** Where people see it: where it is mounted, or is to be. */
const mountOf = ({ mounts, inFstab, type }: SurveyedFileSystem): string | undefined =>
  mounts[0] ?? inFstab ?? (type === 'swap' ? 'swap' : undefined);

/** A disk's own file system: of several on a boot volume its root, and of any other the largest. */
function systemsOf(survey: Survey, disk: SurveyedDevice, boots: boolean): Values {
  const on = survey.fileSystems.filter((system) => {
    const [only, ...others] = disksUnder(survey, system.device);
    return only === disk && others.length === 0 && mountOf(system) !== undefined && isKnownType(system.type);
  });
  const sizeOf = ({ size, device }: SurveyedFileSystem): bigint =>
    size ?? survey.devices.find(({ name }) => name === device)?.size ?? 0n;
  const root = boots ? on.find((system) => mountOf(system) === '/') : undefined;
  const chosen = root ?? [...on].sort((a, b) => (sizeOf(a) < sizeOf(b) ? 1 : -1))[0];
  const mount = chosen === undefined ? undefined : mountOf(chosen);
  return chosen === undefined || mount === undefined || (chosen.type === 'swap' && !mount.startsWith('/'))
    ? {}
    : { 'file-system': { mount, type: chosen.type } };
}

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

/** Rows of the provider's list that nobody declared, each given to the one disk that it can only be. */
class Rows {
  readonly #left: Set<ProviderVolume>;
  readonly #given = new Map<SurveyedDevice, ProviderVolume>();

  constructor(rows: readonly ProviderVolume[]) {
    this.#left = new Set(rows);
  }

  of(survey: Survey, disk: SurveyedDevice): ProviderVolume | undefined {
    const known = this.#given.get(disk);
    if (known !== undefined) return known;
    const bySerial = [...this.#left].filter(
      ({ id }) => id !== undefined && disk.serial !== undefined && disk.serial === id.slice(0, 20),
    );
    const here = [...this.#left].filter((row) => row.server === survey.server && row.size === disk.size);
    const alike = disksOf(survey).filter(({ size }) => size === disk.size);
    const [row, ...more] = bySerial.length > 0 ? bySerial : alike.length === 1 ? here : [];
    if (row === undefined || more.length > 0) return undefined;
    this.#left.delete(row);
    this.#given.set(disk, row);
    return row;
  }

  left(): readonly ProviderVolume[] {
    return [...this.#left];
  }
}

/** Written by the library, so that no name leaves its place. */
function fileText(values: Values, notes: readonly string[] = []): string {
  const document = new Document({ existing: true, ...values });
  const asked =
    'What a survey shows to be there. Say whose it is (team:), at which site it is (site:), and of which tier each\nvolume is, and review the rest.';
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
