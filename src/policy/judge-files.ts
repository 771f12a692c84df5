/** Judges files that a program holds, without a repository. */

import { isDay, notADay } from '../estate/dates.ts';
import { treeOfFiles } from '../git/given-files.ts';
import type { Files } from '../git/request.ts';
import type { JudgeOptions } from './judge.ts';
import { type Judgement, notJudged } from './judgement.ts';
import { judgePair, readPair } from './pair.ts';

export interface JudgeFilesOptions extends JudgeOptions {
  /**
   * The packs of other repositories that `ullage.yaml` lists: the commit's id, a colon and the path -> content, such as
   * `8f3c1d2ab9e04c5f6a7b8091c2d3e4f5a6b7c8d9:policies/fleet.yaml`. Each is held against the digest that is listed.
   */
  readonly packs?: Files;
}

/**
 * Judges the files after a change against the files before it: estate files, price lists, rule packs, waivers, readings
 * and `ullage.yaml`, wherever that says they are. The policy before the change judges, as in a repository; the one
 * after it where there is none before.
 *
 * There is no history here: the waivers are taken to have come with the files before, and files before that do not
 * read are not judged (`judgeRepository` looks further back).
 *
 * @param before path -> content, each path from the top with `/` between folders; empty for a first adoption
 * @param after the same, whole: a file that is left out is deleted
 * @param options the day of the judgement (RFC 3339 full-date, in UTC), the level that fails, and packs of other
 *   repositories
 * @returns the judgement. Sizes in it are bytes (bigint), amounts a month's cost in the currency of `ullage.yaml`
 *   (decimal.js). Whatever stood in the way (a file that does not read, a path that is none, no day) is the verdict
 *   `not judged` with its `problems`; nothing that files hold makes it throw.
 *
 * @example
 * ```js
 * import { judgeFiles, reportText } from 'ullage';
 *
 * const files = (size) => ({
 *   'ullage.yaml': 'currency: EUR\n',
 *   'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers: { bulk: { rate: "0.045", per: GiB-month } }\n',
 *   'policies/storage.yaml': 'use: [starter]\n',
 *   'storage/imagery.yaml': `volumes: { plates-1: { size: ${size}, tier: bulk, retain-until: 2027-03-31, reason: kept } }\n`,
 * });
 * const judgement = await judgeFiles(files('50 GiB'), files('40 GiB'), { on: '2026-11-20' });
 * console.log(judgement.verdict); // fail
 * console.log(judgement.reasons[0]); // no-shrink: volume plates-1 would shrink from 50 GiB to 40 GiB: 10,737,418,240 bytes fewer
 * console.log(reportText(judgement).includes('plates-1')); // true
 * ```
 */
export async function judgeFiles(
  before: Files,
  after: Files,
  { packs, ...options }: JudgeFilesOptions,
): Promise<Judgement> {
  const base = treeOfFiles(before, 'before', packs);
  const head = treeOfFiles(after, 'after', packs);
  const problems = [
    ...(isDay(options.on) ? [] : [notADay(options.on)]),
    ...(base.ok ? [] : base.problems),
    ...(head.ok ? [] : head.problems),
  ];
  return base.ok && head.ok && problems.length === 0
    ? judgePair(await readPair(base.value, head.value), options)
    : notJudged(problems, options.on);
}
