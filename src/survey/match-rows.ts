/** Which row of the provider's list is which volume that is declared. */
import type { DeclaredThings, Volume } from '../estate/estate.ts';
import { onlyPairs, shown } from './only.ts';
import type { ProviderSurvey, ProviderVolume } from './provider-survey.ts';
import type { Survey, SurveyedDevice } from './survey.ts';

/** A disk as one server shows it. */
export interface SurveyedDisk {
  readonly survey: Survey;
  readonly disk: SurveyedDevice;
}

export interface RowMatches {
  /** By volume: its row in the provider's list. */
  readonly rows: ReadonlyMap<string, ProviderVolume>;
  /** Volumes that have their row by what one disk shows, and that the list calls otherwise: which disk that is was inferred. */
  readonly inferred: ReadonlySet<string>;
  /** Rows that are no volume that is declared, or may be one and cannot be told. */
  readonly undeclaredRows: readonly ProviderVolume[];
  /** By volume that has no row: those that it may be, if the provider calls it otherwise. None is left out. */
  readonly rowCandidates: ReadonlyMap<string, readonly ProviderVolume[]>;
}

/**
 * By the identifier, then by the name, then by the identifier that the disk shows of a volume which is declared without.
 * What is left may be the same thing without an identifier and under another name, where its size, tier, site and server
 * are those that are declared.
 */
export function matchRows(
  estate: DeclaredThings,
  provider: ProviderSurvey | undefined,
  {
    disks,
    undeclared,
  }: {
    readonly disks: ReadonlyMap<string, readonly SurveyedDisk[]>;
    readonly undeclared: readonly SurveyedDisk[];
  },
): RowMatches {
  const listed = provider?.volumes ?? [];
  const rows = new Map<string, ProviderVolume>();
  const taken = new Set<ProviderVolume>();
  const take = (volume: string, row: ProviderVolume): void => {
    if (rows.has(volume) || taken.has(row)) return;
    rows.set(volume, row);
    taken.add(row);
  };
  const ids = new Map(
    [...estate.volumes.values()].flatMap(({ id, name }) => (id === undefined ? [] : [[id, name]])),
  );
  for (const [id, row] of onlyPairs(listed, (row) => row.id)) {
    const name = ids.get(id);
    if (name !== undefined) take(name, row);
  }
  const byShownId = new Map(onlyPairs(listed, ({ id }) => (id === undefined ? undefined : shown(id))));
  /** The volume that a row is called by; a name is a mere name where both have identifiers, and they differ. */
  const calledBy = ({ id, name }: ProviderVolume): Volume | undefined => {
    const volume = estate.volumes.get(name ?? '');
    return volume?.id === undefined || id === undefined ? volume : undefined;
  };
  for (const [name, row] of onlyPairs(listed, (row) => row.name))
    if (calledBy(row) !== undefined) take(name, row);
  const inferred = new Set<string>();
  const rowOf = ({ disk }: SurveyedDisk): ProviderVolume | undefined => byShownId.get(disk.serial ?? '');
  for (const [name, those] of disks) {
    const [row, ...others] = new Set(those.flatMap((each) => rowOf(each) ?? []));
    if (row === undefined || others.length > 0 || estate.volumes.get(name)?.id !== undefined) continue;
    // A disk that is told by its size or its place is not one that the list calls by another volume's name.
    if ((calledBy(row)?.name ?? name) !== name) continue;
    take(name, row);
    if (row.name !== name) inferred.add(name);
  }
  const left = listed.filter((row) => !taken.has(row));
  const elsewhere = new Set(undeclared.map(rowOf));
  return {
    rows,
    inferred,
    undeclaredRows: left,
    rowCandidates: candidatesAmong(
      estate,
      left.filter((row) => !elsewhere.has(row)),
      listed.some(({ id: each }) => each !== undefined),
      [...estate.volumes.values()].filter(({ name }) => !rows.has(name)),
      serversOfRows(estate, provider),
    ),
  };
}

/** Undefined where the list does not say. */
export type ServersOf = (row: ProviderVolume) => readonly string[] | undefined;

/** The estate's names of the servers that a row names by their names or their identifiers. */
export function serversOfRows(estate: DeclaredThings, provider: ProviderSurvey | undefined): ServersOf {
  const names = new Map<string, string>();
  for (const { id, name } of [...(provider?.servers ?? []), ...estate.servers.values()])
    if (id !== undefined && name !== undefined) names.set(id, name);
  return ({ servers }) => servers?.map((server) => names.get(server) ?? server);
}

function candidatesAmong(
  estate: DeclaredThings,
  rows: readonly ProviderVolume[],
  namesIds: boolean,
  volumes: readonly Volume[],
  serversOf: ServersOf,
): ReadonlyMap<string, readonly ProviderVolume[]> {
  const bySize = new Map<bigint, ProviderVolume[]>();
  for (const row of rows) bySize.set(row.size, [...(bySize.get(row.size) ?? []), row]);
  // Volumes that are declared alike may be the same rows, which are looked for once.
  const known = new Map<string, readonly ProviderVolume[]>();
  const found = new Map<string, readonly ProviderVolume[]>();
  for (const { name, id, size, tier, site } of volumes) {
    const holders = (estate.holders.get(name) ?? []).map(({ server }) => server);
    const key = JSON.stringify([`${size}`, id === undefined, tier, site, holders]);
    const isHeldSo = (servers: readonly string[] | undefined): boolean =>
      servers === undefined ||
      (servers.length === 0 ? holders.length === 0 : servers.some((each) => holders.includes(each)));
    const those =
      known.get(key) ??
      (bySize.get(size) ?? []).filter(
        (row) =>
          (id === undefined || !namesIds) &&
          (row.tier === undefined || row.tier === tier) &&
          (row.site === undefined || site === undefined || row.site === site) &&
          isHeldSo(serversOf(row)),
      );
    known.set(key, those);
    if (those.length > 0) found.set(name, those);
  }
  return found;
}
