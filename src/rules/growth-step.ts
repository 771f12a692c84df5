import { type Bytes, differenceOfBytes, exactSize, showSize } from '../estate/size.ts';
import { ExactDecimal, sizeOf } from './parameter.ts';
import type { ChangeRule } from './rule.ts';

export const growthStep: ChangeRule<'growth-step'> = {
  name: 'growth-step',
  about: 'change',
  level: 'error',
  refuses: 'A volume made larger in one change by more than a set factor or a set size.',
  why: 'A typing error in a size (500 for 50, TiB for GiB) costs many times as much every month, and a volume cannot be made smaller again.',
  advice:
    'Check the number and the unit. If the growth is intended, grow in smaller steps, or ask for a waiver.',
  parameters: {
    times: {
      schema: {
        type: 'number',
        minimum: 1,
        description: 'The largest factor by which a volume may grow in one change.',
      },
      looser: 'higher',
      absent: 'loosest',
    },
    by: {
      schema: {
        $ref: 'common.json#/$defs/size',
        description: 'The largest size by which a volume may grow in one change.',
      },
      looser: 'higher',
      absent: 'loosest',
    },
  },
  measures: { size: 'the size by which the volume grows in one change' },
  needs: ['times', 'by'],
  looksAt: () => ['volume'],
  examples: {
    fails: {
      story: 'A digit too many: somebody types 4000 instead of 400.',
      main: `volumes:
  plates-1: { size: 400 GiB, tier: bulk }
`,
      branch: `volumes:
  plates-1: { size: 4000 GiB, tier: bulk }
`,
      entry: '{ rule: growth-step, times: 8 }',
    },
    passes: {
      story: 'The growth that was intended.',
      main: `volumes:
  plates-1: { size: 400 GiB, tier: bulk }
`,
      branch: `volumes:
  plates-1: { size: 500 GiB, tier: bulk }
`,
      entry: '{ rule: growth-step, times: 8 }',
    },
  },
  check({ times, by }) {
    const largestStep = by === undefined ? undefined : sizeOf(by);
    return function* ({ changes }) {
      for (const change of changes) {
        if (change.kind !== 'volume-grown' && change.kind !== 'volume-re-created') continue;
        const { before, after, subject, place } = change;
        if (after.size <= before.size) continue;
        const step = differenceOfBytes(after.size, before.size);
        const tooFar = [
          ...(times !== undefined && isOver(before.size, after.size, times)
            ? [`${grown(before.size, after.size)} times its size, and at most ${times} times is allowed`]
            : []),
          ...(largestStep !== undefined && step > largestStep
            ? [`by ${showSize(step)}, and at most ${by} is allowed`]
            : []),
        ];
        if (tooFar.length === 0) continue;
        yield {
          subject,
          place,
          message: `volume ${after.name} would grow from ${exactSize(before.size)} to ${exactSize(after.size)} in one change: ${tooFar.join('; ')}`,
          excess: step,
          measured: { size: step },
        };
      }
    };
  },
};

const isOver = (before: Bytes, after: Bytes, times: number): boolean =>
  new ExactDecimal(before.toString()).times(times).lt(after.toString());

/** The factor of a growth, rounded up, so that a growth beyond a bound never reads like the bound itself. */
const grown = (before: Bytes, after: Bytes): string =>
  new ExactDecimal(after.toString())
    .div(before.toString())
    .toDecimalPlaces(2, ExactDecimal.ROUND_UP)
    .toString();
