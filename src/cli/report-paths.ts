/** Where reports go: each to a file of its own, which can be written. */
import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { Problem } from '../base/problem.ts';
import { counted, listed } from '../base/wording.ts';
import { alike } from '../git/tree.ts';
import { reportProblem } from './edge.ts';

/**
 * What stands in the way of writing them all, before the work is done that they are to tell of.
 *
 * @param others files that are written as well, and tell by themselves where they cannot be
 */
export async function pathProblems(
  reports: readonly string[],
  others: readonly string[],
): Promise<readonly Problem[]> {
  const paths = [...reports, ...others];
  const problems = paths.filter((path) => path === '-').map(noFileName);
  if (problems.length > 0) return problems;
  const known = await Promise.all(paths.map(async (path) => ({ path, file: await fileOf(path) })));
  const files = new Set(known.flatMap(({ file }) => file ?? []));
  const shared = [...files].flatMap((file) => {
    const all = known.filter((each) => each.file === file);
    return all.length < 2 ? [] : [sharedBy(all.map(({ path }) => path))];
  });
  if (shared.length > 0) return shared;
  return (await Promise.all(reports.map(reportProblem))).filter((problem) => problem !== undefined);
}

/** The same for all names of one file, also by a link or on a disk without case; undefined for what is no file. */
async function fileOf(path: string): Promise<string | undefined> {
  const there = await stat(path).catch(() => undefined);
  if (there === undefined) return alike(resolve(path));
  return there.isFile() ? `${there.dev} ${there.ino}` : undefined;
}

const noFileName = (path: string): Problem => ({
  message: `${path} names no file to write a report to`,
  advice:
    'Print one report with --format, and name a file for each other, such as --report html=out/gate.html.',
});

const sharedBy = (paths: readonly string[]): Problem => ({
  message:
    new Set(paths).size === 1
      ? `${paths[0]} is given for ${counted(paths.length, 'report')}`
      : `${listed([...new Set(paths)])} are one file, and each is given for a report`,
  advice: 'Name a file for each, since one would be written over the other.',
});
