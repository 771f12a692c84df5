/** What a page shows beside the judgement: read only where a page is asked for. */
import { layersOf } from '../capacity/layers.ts';
import type { RevisionPair } from '../git/compare.ts';
import { linesAt } from '../policy/excerpts.ts';
import type { Judgement } from '../policy/judgement.ts';
import type { ReadingPair } from '../policy/pair.ts';
import { type Besides, keysOf } from '../report/report.ts';
import { compareSurveys } from '../survey/compare.ts';

/** The estate is that after the merge; readings and surveys are the base's, by which it is judged, too. */
export async function besidesOf(
  judgement: Judgement,
  trees: Pick<RevisionPair, 'base' | 'head'>,
  { base, head }: ReadingPair,
): Promise<Besides> {
  if (judgement.verdict === 'not judged') return {};
  const { estate } = head.revision;
  const { usage, surveys, measured } = base.revision;
  return {
    lineAt: await linesAt(
      judgement.findings.map(({ place }) => place),
      trees,
    ),
    estate: {
      estate,
      accounts: layersOf(estate, usage?.bySystem, measured),
      disputed:
        surveys === undefined
          ? new Set()
          : keysOf(compareSurveys(base.revision.estate, surveys, undefined).differences),
    },
  };
}
