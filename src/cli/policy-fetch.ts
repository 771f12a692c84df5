/** `ullage policy fetch`: fetches the rule packs that are kept in other repositories. */
import { err, ok } from '../base/problem.ts';
import { visible } from '../base/visible.ts';
import { mainBranch } from '../git/compare.ts';
import { runOnNetwork } from '../git/network.ts';
import { emptyTree } from '../git/tree.ts';
import { reportProblems } from '../report/report.ts';
import { type Finished, terminal } from './edge.ts';
import { fetchPacks, type PackFetched, packProtocols, packsWanted } from './fetch-packs.ts';
import { treeAt, withRepository } from './repository.ts';

export interface PolicyFetchFlags {
  readonly repo: string;
  readonly base?: string;
  readonly head?: string;
  readonly from: readonly string[];
}

export async function runPolicyFetch(flags: PolicyFetchFlags): Promise<Finished> {
  const { repo, from } = flags;
  const onNetwork = (args: readonly string[]) =>
    runOnNetwork(args, { dir: repo, environment: process.env, protocols: packProtocols });
  const wanted = await withRepository(repo, async (repository) => {
    const main = flags.base ?? (await mainBranch(repository));
    const base = main === undefined ? ok(emptyTree) : await treeAt(repository, main);
    const head = await treeAt(repository, flags.head);
    if (!base.ok || !head.ok)
      return err(...(base.ok ? [] : base.problems), ...(head.ok ? [] : head.problems));
    return ok(await packsWanted(base.value, head.value, from));
  });
  const fetched = wanted.ok ? await fetchPacks(repo, wanted.value, onNetwork) : wanted;
  const unread = wanted.ok ? wanted.value.unread : [];
  const problems = [...unread, ...(fetched.ok ? fetched.value.flatMap(problemOf) : fetched.problems)];
  const lines = fetched.ok ? textLines(fetched.value.flatMap(lineOf)) : '';
  if (problems.length === 0) {
    const none = fetched.ok && fetched.value.length === 0;
    return {
      output: none ? textLines(['ullage.yaml lists no pack of another repository.']) : lines,
      code: 0,
    };
  }
  return {
    output: `${lines}${reportProblems(problems, terminal(flags))}`,
    code: 2,
    reason: unread.length > 0 ? 'ullage.yaml does not read' : 'not every pack is at hand',
  };
}

const problemOf = ({ state }: PackFetched) => (state.kind === 'not at hand' ? [state.problem] : []);

function lineOf({ listing: { name, path, commit, repository }, state }: PackFetched): readonly string[] {
  const what = `${name}: ${path} in ${commit} of ${repository}`;
  switch (state.kind) {
    case 'here already':
      return [`${what} was at hand already.`];
    case 'fetched':
      return [`${what} was fetched, and has its digest.`];
    case 'not at hand':
      return [];
  }
}

const textLines = (lines: readonly string[]): string => lines.map((line) => `${visible(line)}\n`).join('');
