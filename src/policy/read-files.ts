/** Reads the files that a program holds as one revision. */

import { err, type Outcome } from '../base/problem.ts';
import { treeOfFiles } from '../git/given-files.ts';
import type { Files } from '../git/request.ts';
import { readRevision } from './reader.ts';
import type { Revision } from './revision.ts';

/**
 * Reads files as one revision: the estate that they declare, and the policy that they carry. What is not there is
 * missing in it or empty, and no problem here.
 *
 * @param files path -> content, each path from the top with `/` between folders
 * @param name what reports call the revision, such as a commit's id
 * @param packs packs of other repositories that `ullage.yaml` lists: the commit's id, a colon and the path -> content
 * @returns the revision, or every problem in any of the files, each with its place; nothing that files hold makes it
 *   throw
 *
 * @example
 * ```js
 * import { readFiles, showSize } from 'ullage';
 *
 * const read = await readFiles({ 'storage/a.yaml': 'volumes: { plates-1: { size: 40 GiB, tier: bulk } }\n' }, 'draft');
 * if (read.ok) console.log(showSize(read.value.estate.volumes.get('plates-1').size)); // 40 GiB
 *
 * const wrong = await readFiles({ 'storage/a.yaml': 'volumes: { plates-1: { size: 40, tier: bulk } }\n' }, 'draft');
 * if (!wrong.ok) console.log(wrong.problems[0].place.line); // 1
 * ```
 */
export async function readFiles(files: Files, name: string, packs?: Files): Promise<Outcome<Revision>> {
  const tree = treeOfFiles(files, name, packs);
  return tree.ok ? readRevision(tree.value) : err(...tree.problems);
}
