import { cautions, counted } from '../base/wording.ts';
import { describeChange } from '../change/kinds.ts';
import { lossesOf } from '../change/losses.ts';
import { type ChangeRule, everyDeclaredKind } from './rule.ts';

/** So many are named; the rest is counted. */
const named = 5;

export const destructiveChangesFew: ChangeRule<'destructive-changes-few'> = {
  name: 'destructive-changes-few',
  about: 'change',
  level: 'error',
  refuses: 'More than a set number of changes in one branch that cannot be undone.',
  why: 'A reviewer checks one deletion carefully, but not the twentieth in a list. A dozen deletions in one branch often come from a moved folder or a lost file, not from a decision.',
  advice: `Split the branch into several with a few deletions each, and have each reviewed separately. ${cautions}`,
  parameters: {
    'at-most': {
      schema: {
        type: 'integer',
        minimum: 0,
        description:
          'How many volumes, groups and file systems one branch may delete, shrink or reformat. Exactly this many are allowed; what is lost together with its volume or group counts once.',
      },
      looser: 'higher',
      absent: 'loosest',
    },
  },
  measures: { number: 'how many changes of the branch cannot be undone' },
  needs: ['at-most'],
  looksAt: () => everyDeclaredKind,
  examples: {
    fails: {
      story: 'One branch deletes three volumes.',
      main: `volumes:
  root: { size: 20 GiB, tier: bulk }
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
`,
      branch: `volumes:
  root: { size: 20 GiB, tier: bulk }
`,
      entry: '{ rule: destructive-changes-few, at-most: 2 }',
    },
    passes: {
      story: 'It deletes two of them and leaves the third for another branch.',
      main: `volumes:
  root: { size: 20 GiB, tier: bulk }
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
`,
      branch: `volumes:
  root: { size: 20 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
`,
      entry: '{ rule: destructive-changes-few, at-most: 2 }',
    },
  },
  check: (entry) =>
    function* ({ changes }) {
      const most = entry['at-most'];
      const losses = lossesOf(changes);
      const [first] = losses;
      if (first === undefined || losses.length <= most) return;
      const more = losses.length - named;
      yield {
        subject: { kind: 'branch', name: 'head' },
        place: first.place,
        measured: { number: BigInt(losses.length) },
        message: `the branch makes ${counted(losses.length, 'change')} that cannot be undone, and at most ${most} ${most === 1 ? 'is' : 'are'} allowed: ${losses.slice(0, named).map(describeChange).join('; ')}${more > 0 ? `; and ${more} more` : ''}`,
      };
    },
};
