/** Judges a branch of a repository as `ullage gate` does. */
import { ownFault, type Problem } from '../base/problem.ts';
import { isDay, notADay } from '../estate/dates.ts';
import { resolveRevisions } from '../git/compare.ts';
import { GitRepository } from '../git/repository.ts';
import type { RevisionRequest } from '../git/request.ts';
import type { JudgeOptions } from '../policy/judge.ts';
import { type Judgement, notJudged } from '../policy/judgement.ts';
import { judgeAgainstMain } from './against-main.ts';

/**
 * Judges what a branch of a Git repository would change on its main branch, as `ullage gate` does: main's tip against
 * what main would be after the merge, by main's own policy. It needs the machine's `git`, 2.38 or newer, and reads only.
 *
 * @param folder a folder of the repository, by its path on this machine
 * @param options the day (RFC 3339 full-date, in UTC); `base` and `head` as a branch, a tag or a commit (the main branch
 *   is found out and HEAD taken where they are left out); or `worktree`, to judge the uncommitted files
 * @returns the judgement. Sizes in it are bytes (bigint), amounts a month's cost in the currency of `ullage.yaml`
 *   (decimal.js). Whatever stood in the way (no repository, a conflict, a shallow clone, a file that does not read) is
 *   the verdict `not judged` with its `problems`; it never throws.
 *
 * @example
 * ```js
 * import { judgeRepository, reportMarkdown } from 'ullage';
 *
 * const judgement = await judgeRepository('.', { base: 'main', head: 'smaller-plates', on: '2026-11-20' });
 * console.log(judgement.verdict); // fail
 * console.log(reportMarkdown(judgement).includes('plates-1')); // true
 * ```
 */
export async function judgeRepository(
  folder: string,
  { base, head, worktree, ...options }: RevisionRequest & JudgeOptions,
): Promise<Judgement> {
  const unjudged = (...problems: readonly Problem[]) => notJudged(problems, options.on);
  if (!isDay(options.on)) return unjudged(notADay(options.on));
  try {
    const opened = await GitRepository.open(folder);
    if (!opened.ok) return unjudged(...opened.problems);
    try {
      const compared = await resolveRevisions(opened.value, { base, head, worktree });
      if (!compared.ok) return unjudged(...compared.problems);
      return (await judgeAgainstMain(opened.value, compared.value, options)).judgement;
    } finally {
      await opened.value.close();
    }
  } catch (error) {
    return unjudged(ownFault(error));
  }
}
