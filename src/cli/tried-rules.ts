/** The rules that `--try` names: a pack in a file, or what the main branch had at a revision or on a day. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { commitOn } from '../audit/walk.ts';
import { quoted } from '../base/nearest.ts';
import { err, type Outcome, ok } from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import type { Commit } from '../git/commit.ts';
import { firstParentHistory } from '../git/history.ts';
import type { GitRepository } from '../git/repository.ts';
import { readRulePack } from '../policy/pack.ts';
import type { PolicyRule } from '../policy/policy.ts';
import { readRevision, rulesUsing } from '../policy/reader.ts';
import { readDocument } from '../read/document.ts';
import { decodeText } from '../read/text.ts';
import { reasonOf } from './edge.ts';
import { treeAt } from './repository.ts';

/**
 * @param to the commit up to which days are looked for
 * @param named a file's path, a revision, or a day (RFC 3339); what could be two of them is refused
 */
export async function triedRules(
  repository: GitRepository,
  to: string,
  named: string,
): Promise<Outcome<readonly PolicyRule[]>> {
  const isFile = existsSync(named);
  if (isDay(named)) {
    if (isFile && !named.includes('/')) return ambiguous(named, 'a day and a file');
    const commit = await commitOn(repository, to, named);
    return commit.ok ? rulesAt(repository, commit.value) : commit;
  }
  const id = await repository.resolveCommit(named);
  if (isFile) return id.ok ? ambiguous(named, 'a file and a revision') : rulesIn(named, repository, to);
  if (!id.ok) {
    return err({
      message: `${quoted(named)} is no file, no day and no revision`,
      advice:
        'Name a rule pack with --try FILE, a revision such as v1 or a commit id, or a day such as 2026-03-31.',
    });
  }
  // What a branch has was never the main branch's policy.
  for await (const entry of firstParentHistory(repository, { to })) {
    if (!entry.ok) return entry;
    if (entry.value.commit.id === id.value) return rulesAt(repository, entry.value.commit);
  }
  return err({
    message: `${quoted(named)} is no commit that the main branch has been at`,
    advice: 'Name one of those that `git log --first-parent` lists, or a rule pack with --try FILE.',
  });
}

const ambiguous = (named: string, both: string): Outcome<never> =>
  err({
    message: `${quoted(named)} is both ${both}`,
    advice: `Write ./${named} for the file, or a commit id for the policy that the main branch had.`,
  });

async function rulesAt(
  repository: GitRepository,
  { id, tree }: Commit,
): Promise<Outcome<readonly PolicyRule[]>> {
  const revision = await readRevision(repository.tree(tree, { revision: id, name: id.slice(0, 12) }));
  return revision.ok ? ok(revision.value.rules) : revision;
}

/** The rules of one pack, with those of the packs that it uses: shipped ones, and what a commit of main lists. */
async function rulesIn(
  path: string,
  repository: GitRepository,
  to: string,
): Promise<Outcome<readonly PolicyRule[]>> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(path);
  } catch (error) {
    return err({
      message: `the rule pack ${path} cannot be read: ${reasonOf(error)}`,
      advice: 'Name a file with --try FILE.',
    });
  }
  const text = decodeText(bytes, path);
  if (!text.ok) return text;
  const document = readDocument(text.value, path);
  if (!document.ok) return document;
  const pack = readRulePack(document.value);
  if (!pack.ok) return pack;
  const tree = await treeAt(repository, to);
  return tree.ok ? rulesUsing(pack.value, tree.value) : tree;
}
