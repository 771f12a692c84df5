/** Opens the repository a command works on, and one revision of it. */
import { GitRepository } from '../read/git.ts';
import { found, type Outcome } from '../read/problem.ts';
import type { Tree } from '../read/tree.ts';

/** Runs some work on an open repository, and closes it whatever comes. */
export async function withRepository<T>(
  dir: string,
  work: (repository: GitRepository) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  const opened = await GitRepository.open(dir);
  if (!opened.ok) return opened;
  try {
    return await work(opened.value);
  } finally {
    await opened.value.close();
  }
}

/** A revision by name, or the files on the disk where none is named. */
export async function treeAt(repository: GitRepository, ref: string | undefined): Promise<Outcome<Tree>> {
  if (ref === undefined) return repository.workTree();
  const id = await repository.resolveCommit(ref);
  if (!id.ok) return id;
  const commit = await repository.commit(id.value);
  if (!commit.ok) return commit;
  return found(repository.tree(commit.value.tree, { revision: id.value, name: ref }));
}
