import type { StateRule } from './rule.ts';
import { subjectRef } from './subject-ref.ts';

export const sameSite: StateRule<'same-site'> = {
  name: 'same-site',
  about: 'state',
  level: 'error',
  refuses: 'A volume attached to a server at another site.',
  why: 'Block storage can only be used within one site; the provider refuses an attachment across sites, half-way through the change.',
  advice: 'Attach it to a server at its own site, or copy its content to a volume at the other site.',
  parameters: {},
  needs: [],
  looksAt: () => ['server', 'volume'],
  examples: {
    fails: {
      story: 'A volume at one site is attached to a server at another.',
      branch: `servers:
  plate-scanner: { site: north-quay }
volumes:
  plates-1: { size: 40 GiB, tier: bulk, site: south-quay }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
      entry: '{ rule: same-site }',
    },
    passes: {
      story: 'Both are at the same site.',
      branch: `servers:
  plate-scanner: { site: north-quay }
volumes:
  plates-1: { size: 40 GiB, tier: bulk, site: north-quay }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
      entry: '{ rule: same-site }',
    },
  },
  check: (_entry, scope) =>
    function* ({ estate, selection, revision }) {
      for (const volume of selection.volumes) {
        const { name } = volume;
        for (const { server: holder, place } of estate.holders.get(name) ?? []) {
          const server = estate.servers.get(holder);
          if (volume.site === undefined || server?.site === undefined || volume.site === server.site)
            continue;
          if (!scope.includes(volume) && !scope.includes(server)) continue;
          yield {
            subject: { kind: 'volume', name },
            facet: subjectRef(server),
            place: { revision, ...place },
            // From another site, or to another, it is another attachment across sites.
            excess: new Set([`from ${volume.site} to ${server.site}`]),
            message: `volume ${name} is at ${volume.site} and attached to ${holder}, which is at ${server.site}`,
          };
        }
      }
    },
};
