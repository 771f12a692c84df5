/** `ullage cost`: what the estate costs a month, and why. */
import { err, ok } from '../base/problem.ts';
import { withExcerpts } from '../policy/excerpts.ts';
import { costBy, type Grouping, priceEstate } from '../price/cost.ts';
import { listInForce } from '../price/price-list.ts';
import { type CostFormat, reportCost } from '../report/cost.ts';
import { type Finished, type ReportFlags, terminal } from './edge.ts';
import { notTold } from './not-told.ts';
import { readFromHere, shownOn, withRepository } from './repository.ts';

export interface CostFlags extends ReportFlags {
  readonly repo: string;
  readonly at?: string;
  readonly by: Grouping;
  readonly now?: string;
  readonly format: CostFormat;
}

export async function runCost(flags: CostFlags): Promise<Finished> {
  const { repo, by, format } = flags;
  const priced = await withRepository(repo, async (repository) => {
    const shown = await shownOn(repository, flags);
    if (!shown.ok) return shown;
    const { on, tree, settings, revision } = shown.value;
    const { estate, priceLists } = revision;
    const list = listInForce(priceLists, on);
    if (list === undefined) {
      return err({
        message: `no price list is in force on ${on}`,
        advice: `Add one to ${settings.paths.prices}/.`,
      });
    }
    const cost = priceEstate(estate, list, settings, on);
    return cost.ok
      ? ok({
          on,
          list,
          estate,
          settings,
          cost: cost.value,
          by,
          sums: costBy(cost.value, estate, by),
        })
      : err(...(await withExcerpts(cost.problems, () => tree)));
  });
  if (!priced.ok) return notTold(priced.problems, flags, 'not judged: the estate cannot be priced');
  const output = reportCost(priced.value, format, terminal(flags));
  return { output, code: 0, remarks: readFromHere(flags.at) };
}
