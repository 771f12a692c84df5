/** Declared beside surveyed: every difference, in one order whatever the files' order, and what could not be told. */
import { byText } from '../base/order.ts';
import type { DeclaredThings } from '../estate/estate.ts';
import { fileSystemFacts } from '../estate/file-system-facts.ts';
import { exactSize } from '../estate/size.ts';
import type { PriceList } from '../price/price-list.ts';
import { compareGroups } from './compare-groups.ts';
import { compareProvider } from './compare-rows.ts';
import { compareVolumes } from './compare-volumes.ts';
import { type Difference, difference } from './difference.ts';
import { bySurvey, disksUnder, type Matches, match, systemAt } from './match.ts';
import type { SurveyedDisk } from './match-rows.ts';
import { asWritten, undeclaredSystems } from './own-system.ts';
import type { ProviderSurvey, ProviderVolume } from './provider-survey.ts';
import type { Survey, SurveyedDevice } from './survey.ts';

export interface Surveys {
  readonly servers: readonly Survey[];
  readonly provider: ProviderSurvey | undefined;
}

/**
 * A volume that is declared and cannot be told among the disks, or the provider's volumes, that it may be; or of which
 * the list names holders who may be those that are declared, or not.
 */
export interface Untold {
  readonly volume: string;
  readonly candidates: readonly SurveyedDisk[];
  /** Rows of the provider's list, likewise. */
  readonly rows: readonly ProviderVolume[];
  /** As the list names them. */
  readonly holders: readonly string[];
}

export interface SurveyComparison {
  readonly differences: readonly Difference[];
  readonly untold: readonly Untold[];
  /**
   * By volume: the holders that the provider's list names, where nothing tells whether they are those that are declared;
   * none where the list says nothing of them.
   */
  readonly untoldHolders: ReadonlyMap<string, readonly string[]>;
  /** Servers that are declared to run, and have no survey. */
  readonly notSurveyed: readonly string[];
  readonly matches: Matches;
}

const layers: readonly Difference['layer'][] = [
  'provider',
  'device',
  'physical volume',
  'volume group',
  'logical volume',
  'file system',
  'mount',
];

/** @param list the prices by which what is not declared is said to cost; undefined where there are none */
export function compareSurveys(
  estate: DeclaredThings,
  { servers, provider }: Surveys,
  list: PriceList | undefined,
): SurveyComparison {
  const known = servers.filter(({ server }) => estate.servers.has(server));
  const matches = match(estate, known, provider);
  const found = bySurvey(matches);
  const listed = compareProvider(estate, provider, matches, list);
  const { untoldHolders } = listed;
  const unsure = [matches.candidates, matches.rowCandidates, untoldHolders].flatMap((each) => [
    ...each.keys(),
  ]);
  const untold = [...new Set(unsure)].flatMap((volume): readonly Untold[] => {
    const candidates = matches.candidates.get(volume) ?? [];
    const rows = matches.rowCandidates.get(volume) ?? [];
    const holders = untoldHolders.get(volume) ?? [];
    return candidates.length + rows.length + holders.length === 0
      ? []
      : [{ volume, candidates, rows, holders }];
  });
  const differences = [
    ...servers.filter(({ server }) => !estate.servers.has(server)).map(undeclaredServer),
    ...listed.differences,
    ...[...matches.candidates].flatMap(([volume, candidates]) =>
      candidates.length === 0 ? [notThere(estate, volume)] : [],
    ),
    ...matches.undeclared.map((each) => undeclaredDisk(each)),
    ...known.flatMap((survey) => {
      const here = found.get(survey) ?? new Map();
      return [
        ...compareBoot(estate, survey, here),
        ...compareVolumes(estate, survey, here, matches.rows),
        ...compareGroups(estate, survey, here),
        ...undeclaredSystems(estate, survey, here).map((each) => undeclaredSystem(survey, each)),
      ];
    }),
    ...mountedTwice(servers),
  ];
  return {
    differences: differences.sort(inOrder),
    untold: untold.sort((a, b) => byText(a.volume, b.volume)),
    untoldHolders,
    notSurveyed: [...estate.servers.values()]
      .filter(({ name, power }) => power === 'running' && !servers.some(({ server }) => server === name))
      .map(({ name }) => name)
      .sort(byText),
    matches,
  };
}

const inOrder = (a: Difference, b: Difference): number =>
  byText(a.server ?? '', b.server ?? '') ||
  byText(a.subject.name, b.subject.name) ||
  layers.indexOf(a.layer) - layers.indexOf(b.layer) ||
  byText(a.message, b.message);

const undeclaredServer = ({ server, place }: Survey): Difference =>
  difference({
    layer: 'device',
    kind: 'not declared',
    subject: { kind: 'server', name: server },
    server,
    message: `server ${server} is surveyed (${place.file}), and not declared`,
  });

const notThere = (estate: DeclaredThings, volume: string): Difference => {
  const [holder] = estate.holders.get(volume) ?? [];
  return difference({
    layer: 'device',
    kind: 'not there',
    subject: { kind: 'volume', name: volume },
    server: holder?.server,
    message: `${volume} is declared as attached to ${holder?.server}, and that shows no disk that it could be`,
  });
};

const undeclaredDisk = ({ survey: { server }, disk }: SurveyedDisk): Difference =>
  difference({
    layer: 'device',
    kind: 'not declared',
    subject: { kind: 'volume', name: disk.name },
    server,
    message: `${server} has a disk ${disk.name} of ${exactSize(disk.size)}, and no such volume is declared`,
    surveyed: exactSize(disk.size),
  });

const undeclaredSystem = (
  { server }: Survey,
  { volume: { name }, system }: ReturnType<typeof undeclaredSystems>[number],
): Difference =>
  difference({
    layer: 'file system',
    kind: 'not declared',
    subject: { kind: 'file-system', name: `${name}:${system.mount}` },
    server,
    message: `${name} has a file system (${system.type}, at ${system.mount} on ${server}), and is declared without one`,
    meaning: `What is on it is not known to any rule: write ${asWritten(system)} on the volume.`,
    surveyed: system.type,
  });

function compareBoot(
  estate: DeclaredThings,
  survey: Survey,
  here: ReadonlyMap<string, SurveyedDevice>,
): readonly Difference[] {
  const root = systemAt(survey, '/');
  const declared = estate.servers.get(survey.server)?.boot;
  if (root === undefined || declared === undefined) return [];
  const roots = disksUnder(survey, root.device);
  const [name] = [...here].find(([, disk]) => roots.includes(disk)) ?? [];
  return name === undefined || name === declared
    ? []
    : [
        difference({
          layer: 'device',
          about: 'boot',
          subject: { kind: 'server', name: survey.server },
          server: survey.server,
          message: `${survey.server} runs from ${name}, and is declared to start from ${declared}`,
          declared,
          surveyed: name,
        }),
      ];
}

/** An ordinary file system that two servers have mounted at once is being destroyed. */
function mountedTwice(servers: readonly Survey[]): readonly Difference[] {
  const byId = new Map<
    string,
    { readonly server: string; readonly mount: string; readonly type: string }[]
  >();
  for (const { server, fileSystems } of servers) {
    for (const { id, mounts, type } of fileSystems) {
      const [mount] = mounts;
      if (id === undefined || mount === undefined || type === 'swap') continue;
      byId.set(id, [...(byId.get(id) ?? []), { server, mount, type }]);
    }
  }
  return [...byId.values()].flatMap((uses): readonly Difference[] => {
    const [first, second] = uses;
    if (first === undefined || second === undefined || first.server === second.server) return [];
    if (isShared(first.type)) return [];
    return [
      difference({
        layer: 'mount',
        subject: { kind: 'file-system', name: first.mount },
        server: first.server,
        message: `one ${first.type} file system is mounted at ${first.mount} on ${first.server} and at ${second.mount} on ${second.server}`,
        meaning:
          'Two servers that write to an ordinary file system destroy it. Unmount it on one of them now.',
      }),
    ];
  });
}

const isShared = (type: string): boolean =>
  (type === 'gfs2' || type === 'ocfs2') && fileSystemFacts(type).clusterAware;
