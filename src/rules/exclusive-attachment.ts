import { factsOf } from '../capacity/file-system-facts.ts';
import type { Estate, FileSystem, Volume } from '../estate/estate.ts';
import type { Tier } from '../price/price-list.ts';
import { placed, type StateRule } from './rule.ts';

export const exclusiveAttachment: StateRule<'exclusive-attachment'> = {
  name: 'exclusive-attachment',
  about: 'state',
  level: 'error',
  refuses:
    "One volume on two servers, unless it is shareable, within its tier's limit, and holds a file system made for several servers at once.",
  why: 'Two servers that mount one ordinary file system at once each write over what the other believes is there. It destroys the file system, often unnoticed for days.',
  advice:
    'Detach the volume from all servers but one. To share it, declare it shareable and give it a cluster-aware file system (gfs2, ocfs2).',
  parameters: {},
  needs: [],
  *check(_entry, { estate, prices, revision }, scope) {
    for (const [name, holders] of estate.holders) {
      if (holders.length < 2) continue;
      const volume = estate.volumes.get(name);
      if (volume === undefined || !scope.includes(volume, volume.tier)) continue;
      const why = whyNotShared(estate, volume, holders.length, prices.tiers.get(volume.tier));
      if (why === undefined) continue;
      const servers = holders.map(({ server }) => server).sort();
      yield {
        subject: { kind: 'volume', name },
        place: { revision, ...(holders.at(-1)?.place ?? placed(volume, revision)) },
        message: `volume ${name} is attached to ${holders.length} servers at once (${servers.join(', ')}), and ${why}`,
        excess: BigInt(holders.length),
      };
    }
  },
};

function whyNotShared(
  estate: Estate,
  volume: Volume,
  servers: number,
  tier: Tier | undefined,
): string | undefined {
  if (!volume.shareable) return 'it is not shareable';
  const limit = tier?.serversAVolume;
  if (limit !== undefined && servers > limit) return `its tier ${volume.tier} allows ${limit}`;
  const systems = fileSystemsOn(estate, volume);
  const ordinary = systems.find(({ type }) => !factsOf(type).clusterAware);
  if (ordinary !== undefined)
    return `its file system ${ordinary.mount} (${ordinary.type}) is not made for several servers`;
  if (systems.length === 0) return 'no file system made for several servers is declared on it';
  return undefined;
}

function fileSystemsOn(estate: Estate, volume: Volume): readonly FileSystem[] {
  if (volume.fileSystem !== undefined) return [volume.fileSystem];
  return estate.groupOf.get(volume.name)?.fileSystems ?? [];
}
