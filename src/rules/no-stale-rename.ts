import { offer } from '../base/nearest.ts';
import { at } from '../base/problem.ts';
import { type BringingChange, brings } from '../change/kinds.ts';
import { type Estate, subjectKey } from '../estate/estate.ts';
import type { StateRule } from './rule.ts';
import { subjectRef } from './subject-ref.ts';

export const noStaleRename: StateRule<'no-stale-rename'> = {
  name: 'no-stale-rename',
  about: 'state',
  level: 'warning',
  refuses: 'An old name under formerly: that another thing has taken up since, or that nothing on main has.',
  why: 'A rename is carried out once, and its line is forgotten. When the old name comes to another server, volume or group, whoever reads the line takes the new thing for the old one.',
  advice: 'Delete the formerly line; that rename has been carried out.',
  parameters: {},
  scope: [],
  needs: [],
  looksAt: () => ['server', 'volume', 'volume-group'],
  examples: {
    fails: {
      story: 'A volume was renamed long ago, and another is created under its old name.',
      main: `volumes:
  plates-2: { size: 40 GiB, tier: bulk, formerly: plates-1 }
`,
      branch: `volumes:
  plates-2: { size: 40 GiB, tier: bulk, formerly: plates-1 }
  plates-1: { size: 40 GiB, tier: bulk }
`,
      entry: '{ rule: no-stale-rename }',
    },
    passes: {
      story: 'The line goes as the old name is taken up.',
      main: `volumes:
  plates-2: { size: 40 GiB, tier: bulk, formerly: plates-1 }
`,
      branch: `volumes:
  plates-2: { size: 40 GiB, tier: bulk }
  plates-1: { size: 40 GiB, tier: bulk }
`,
      entry: '{ rule: no-stale-rename }',
    },
  },
  check: () =>
    function* ({ estate, selection, revision }) {
      const { servers, volumes, groups } = selection;
      for (const things of [servers, volumes, groups]) {
        for (const thing of things) {
          const { kind, name } = thing;
          for (const heir of estate.formerly.get(subjectKey(thing)) ?? []) {
            const line = heir.fields.of('formerly') ?? heir.place;
            yield {
              subject: { kind, name },
              facet: subjectRef({ kind, name: heir.name }),
              place: { revision, ...line },
              message: `${kind.replace('-', ' ')} ${name} has the name that ${heir.name} had before it was renamed, and ${heir.name} still has formerly: ${name}`,
              advice: `Delete the line formerly: ${name} of ${heir.name} at ${at(line)}; that rename has been carried out.`,
            };
          }
        }
      }
    },
  checkChanges: () =>
    function* ({ changes, base }) {
      for (const change of changes) {
        if (!brings(change) || change.after.formerly === undefined) continue;
        const { kind, name, formerly, fields, place } = change.after;
        const known = namesOf(base.estate, kind);
        if (known.includes(formerly)) continue;
        yield {
          subject: { kind, name },
          facet: 'nothing of that name',
          place: { revision: 'head', ...(fields.of('formerly') ?? place) },
          message: `${kind.replace('-', ' ')} ${name} says formerly: ${formerly}, and main has no ${kind.replace('-', ' ')} ${formerly}, so that it is taken for a new one`,
          advice: `${offer(formerly, known)}Correct the old name, or delete the line.`,
        };
      }
    },
};

function namesOf(estate: Estate, kind: BringingChange['after']['kind']): readonly string[] {
  switch (kind) {
    case 'server':
      return [...estate.servers.keys()];
    case 'volume':
      return [...estate.volumes.keys()];
    case 'volume-group':
      return [...estate.groups.keys()];
  }
}
