import { cautions } from '../base/wording.ts';
import { describeChange } from '../change/kinds.ts';
import { lossesOf } from '../change/losses.ts';
import { holdsOn, type Span } from '../estate/dates.ts';
import { changeFacet } from './change-facet.ts';
import { type ChangeRule, everyDeclaredKind } from './rule.ts';

export const freeze: ChangeRule<'freeze'> = {
  name: 'freeze',
  about: 'change',
  level: 'error',
  refuses: 'Changes that cannot be undone, or any changes, within a freeze period.',
  why: 'At the end of a year, during a survey or a holiday, there is nobody to restore what a mistake destroys, and no time to lose over it.',
  advice: `Wait for the end of the freeze, or ask for a waiver. ${cautions}`,
  parameters: {
    from: {
      schema: { $ref: 'common.json#/$defs/date', description: 'The first day of the freeze.' },
      looser: 'higher',
      absent: 'tightest',
    },
    until: {
      schema: { $ref: 'common.json#/$defs/date', description: 'The last day of the freeze.' },
      looser: 'lower',
      absent: 'tightest',
    },
    'all-changes': {
      schema: {
        type: 'boolean',
        default: false,
        description: 'Whether every change of storage is refused, not only those that cannot be undone.',
      },
      looser: 'false',
      absent: 'default',
    },
    reason: {
      schema: {
        $ref: 'common.json#/$defs/sentence',
        description: 'Why there is a freeze; shown with each finding.',
      },
      looser: 'neither',
      absent: 'default',
    },
  },
  needs: ['from', 'until'],
  looksAt: () => everyDeclaredKind,
  lastDay: ({ until }) => until,
  examples: {
    fails: {
      story: 'A volume is deleted while the survey is at sea.',
      main: `volumes:
  root: { size: 20 GiB, tier: bulk }
  plates-1: { size: 40 GiB, tier: bulk }
`,
      branch: `volumes:
  root: { size: 20 GiB, tier: bulk }
`,
      entry: '{ rule: freeze, from: 2026-11-16, until: 2026-11-27, reason: the autumn survey is at sea }',
    },
    passes: {
      story: 'A volume is grown during the freeze.',
      main: `volumes:
  root: { size: 20 GiB, tier: bulk }
  plates-1: { size: 40 GiB, tier: bulk }
`,
      branch: `volumes:
  root: { size: 20 GiB, tier: bulk }
  plates-1: { size: 50 GiB, tier: bulk }
`,
      entry: '{ rule: freeze, from: 2026-11-16, until: 2026-11-27, reason: the autumn survey is at sea }',
    },
  },
  verify({ from, until }) {
    return from !== undefined && until !== undefined && until < from
      ? [
          {
            path: ['until'],
            message: `the freeze ends on ${until}, before it begins on ${from}`,
            advice: 'Correct the two dates.',
          },
        ]
      : [];
  },
  check: (entry) =>
    function* ({ changes, on }) {
      if (!holdsOn(entry, on)) return;
      for (const change of entry['all-changes'] === true ? changes : lossesOf(changes)) {
        yield {
          subject: change.subject,
          facet: changeFacet(change),
          place: change.place,
          message: `${describeChange(change)} during the freeze ${spanOf(entry)}${entry.reason === undefined ? '' : ` (${entry.reason})`}`,
        };
      }
    },
};

function spanOf({ from, until }: Span): string {
  if (from === undefined) return `until ${until}`;
  return until === undefined ? `from ${from} on` : `from ${from} to ${until}`;
}
