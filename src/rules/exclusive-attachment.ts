import { listed } from '../base/wording.ts';
import { placed } from '../change/place.ts';
import type { Estate, FileSystem, Volume } from '../estate/estate.ts';
import { fileSystemFacts } from '../estate/file-system-facts.ts';
import type { Tier } from '../price/price-list.ts';
import type { StateRule } from './rule.ts';
import { subjectRef } from './subject-ref.ts';

export const exclusiveAttachment: StateRule<'exclusive-attachment'> = {
  name: 'exclusive-attachment',
  about: 'state',
  level: 'error',
  refuses:
    "One volume attached to several servers, unless it is shareable, within its tier's limit, and holds a cluster-aware file system.",
  why: 'Two servers that mount one ordinary file system at the same time overwrite what the other has written. That corrupts the file system, often unnoticed for days.',
  advice:
    'Detach the volume from all servers but one. To share it, declare it shareable and give it a cluster-aware file system (gfs2, ocfs2).',
  parameters: {},
  usesPrices: ['servers'],
  needs: [],
  looksAt: () => ['volume'],
  examples: {
    fails: {
      story: 'Two servers would mount one ordinary file system at the same time.',
      branch: `servers:
  plate-scanner: {}
  plate-archive: {}
volumes:
  plates-1: { size: 50 GiB, tier: steady, file-system: { mount: /plates, type: xfs } }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-1, server: plate-archive }
`,
      entry: '{ rule: exclusive-attachment }',
    },
    passes: {
      story: 'The volume is shareable, and its file system is cluster-aware.',
      branch: `servers:
  plate-scanner: {}
  plate-archive: {}
volumes:
  plates-1: { size: 50 GiB, tier: steady, shareable: true, file-system: { mount: /plates, type: gfs2 } }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-1, server: plate-archive }
`,
      entry: '{ rule: exclusive-attachment }',
    },
  },
  check: (_entry, scope) =>
    function* ({ estate, selection, prices, revision }) {
      for (const volume of selection.volumes) {
        const { name } = volume;
        const holders = estate.holders.get(name) ?? [];
        if (holders.length < 2 || !scope.includes(volume)) continue;
        const faults = faultsOf(estate, volume, holders.length, prices.tiers.get(volume.tier));
        const [fault] = faults;
        if (fault === undefined) continue;
        const servers = holders.map(({ server }) => server).sort();
        yield {
          subject: { kind: 'volume', name },
          place: { revision, ...(holders.at(-1)?.place ?? placed(volume, revision)) },
          message: `volume ${name} is attached to ${holders.length} servers at once (${servers.join(', ')}), and ${fault.why}`,
          advice: `To share it, ${listed(faults.map(({ toShare }) => toShare))}; otherwise detach it from all servers but one, where nothing on it is mounted any more.`,
          // One server more is worse, and so is one safeguard less on the same servers.
          excess: new Set([
            ...servers.map((server) => subjectRef({ kind: 'server', name: server })),
            ...faults.map(({ kind }) => kind),
          ]),
        };
      }
    },
};

interface Fault {
  readonly kind: 'not shareable' | 'too many servers' | 'ordinary file system' | 'no file system';
  readonly why: string;
  /** What is left to do for it to be shared, after "to". */
  readonly toShare: string;
}

/** Everything that keeps a volume from being shared, the plainest first. */
function faultsOf(estate: Estate, volume: Volume, servers: number, tier: Tier | undefined): readonly Fault[] {
  const faults: Fault[] = [];
  if (!volume.shareable)
    faults.push({ kind: 'not shareable', why: 'it is not shareable', toShare: 'declare it shareable' });
  const limit = tier?.serversAVolume;
  if (limit !== undefined && servers > limit)
    faults.push({
      kind: 'too many servers',
      why: `its tier ${volume.tier} allows ${limit}`,
      toShare: `attach it to ${limit} at most`,
    });
  const systems = fileSystemsOn(estate, volume);
  const ordinary = systems.find(({ type }) => !fileSystemFacts(type).clusterAware);
  if (ordinary !== undefined) {
    const why = `its file system ${ordinary.mount} (${ordinary.type}) is not cluster-aware`;
    faults.push({
      kind: 'ordinary file system',
      why,
      toShare: 'give it a cluster-aware file system (gfs2, ocfs2)',
    });
  } else if (systems.length === 0) {
    faults.push({
      kind: 'no file system',
      why: 'no cluster-aware file system is declared on it',
      toShare: 'declare the cluster-aware file system (gfs2, ocfs2) that is on it',
    });
  }
  return faults;
}

function fileSystemsOn(estate: Estate, volume: Volume): readonly FileSystem[] {
  if (volume.fileSystem !== undefined) return [volume.fileSystem];
  return estate.groupOf.get(volume.name)?.fileSystems ?? [];
}
