/**
 * Fetches the rule packs that are kept in other repositories, so that a judgement finds them at hand.
 *
 * Where git goes is never a branch's choice: only to a repository that main lists, or that whoever runs it names.
 */

import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { bareSettings, type ListedPack, type Settings, settingsFile } from '../estate/settings.ts';
import { quietFetch } from '../git/network.ts';
import { isObjectId } from '../git/object-store.ts';
import { type GitRun, gitSaid, shellWord } from '../git/process.ts';
import type { Tree } from '../git/tree.ts';
import { bytesOf, fetchCommand, refOf, wholeAgain } from '../policy/elsewhere.ts';
import { readSettingsOf } from '../policy/reader.ts';
import { withRepository } from './repository.ts';

/** Not `http`, which anybody on the way may answer, nor `ext`, which runs a program. */
export const packProtocols = 'https:ssh:file';

/** Runs git on the network, in the repository that is to hold what is fetched. */
export type OnNetwork = (args: readonly string[]) => Promise<Outcome<GitRun>>;

/** How it stands with one pack after all was done. */
export interface PackFetched {
  readonly listing: ListedPack;
  readonly state:
    | { readonly kind: 'here already' }
    | { readonly kind: 'fetched' }
    | { readonly kind: 'not at hand'; readonly problem: Problem };
}

export interface PacksWanted {
  readonly base: Settings;
  readonly head: Settings;
  /** Repositories that may be asked though main lists them not. */
  readonly from: readonly string[];
  /** Why the settings of either do not read: then they list nothing here. */
  readonly unread: readonly Problem[];
}

/** What two revisions list. */
export async function packsWanted(base: Tree, head: Tree, from: readonly string[]): Promise<PacksWanted> {
  const [before, after] = await Promise.all([readSettingsOf(base), readSettingsOf(head)]);
  const unread = [before, after].flatMap((each) => (each.ok ? [] : each.problems));
  const settings = (each: Outcome<Settings | undefined>): Settings =>
    each.ok ? (each.value ?? bareSettings) : bareSettings;
  const told = new Map(unread.map((problem) => [JSON.stringify([problem.place, problem.message]), problem]));
  return { base: settings(before), head: settings(after), from, unread: [...told.values()] };
}

/** Fetches what is listed and not at hand yet; of main's packs and the branch's, each once. */
export async function fetchPacks(
  dir: string,
  { base, head, from }: Omit<PacksWanted, 'unread'>,
  onNetwork: OnNetwork,
): Promise<Outcome<readonly PackFetched[]>> {
  const listed = [...listedIn(base), ...listedIn(head)];
  const all = [...new Map(listed.map((pack) => [keyOf(pack), pack])).values()];
  const allowed = new Set([...listedIn(base).map(({ repository }) => repository), ...from]);
  const before = await missingOf(dir, all);
  if (!before.ok) return before;
  const said = new Map<string, Problem | undefined>();
  for (const [pack, problem] of before.value) {
    if (said.has(commitOf(pack))) continue;
    const isAllowed = allowed.has(pack.repository);
    said.set(
      commitOf(pack),
      isAllowed ? await fetchPack(pack, onNetwork, moreFor(problem)) : notListed(pack),
    );
  }
  const after = before.value.size === 0 ? before : await missingOf(dir, all);
  if (!after.ok) return after;
  return ok(
    all.map((listing): PackFetched => {
      const problem = after.value.get(listing);
      if (problem === undefined)
        return { listing, state: { kind: before.value.has(listing) ? 'fetched' : 'here already' } };
      return { listing, state: { kind: 'not at hand', problem: said.get(commitOf(listing)) ?? problem } };
    }),
  );
}

/** Git fetches nothing of a commit that it has already, be it without its files: then the advice says so. */
const moreFor = ({ advice }: Problem): readonly string[] =>
  advice.includes(wholeAgain.join(' ')) ? wholeAgain : [];

const listedIn = ({ packs }: Settings): readonly ListedPack[] =>
  [...(packs?.values() ?? [])].flatMap((pack) => pack ?? []);

const commitOf = ({ repository, commit }: ListedPack): string => `${commit} ${repository}`;

const keyOf = ({ name, repository, commit, path, sha256 }: ListedPack): string =>
  [name, repository, commit, path, sha256].join(' ');

/** Why each pack that is not at hand is not. */
const missingOf = (dir: string, packs: readonly ListedPack[]) =>
  withRepository(dir, async (repository) => {
    const missing = new Map<ListedPack, Problem>();
    for (const pack of packs) {
      const bytes = await bytesOf(pack, repository);
      if (!(bytes instanceof Uint8Array)) missing.set(pack, bytes);
    }
    return ok(missing);
  });

/** Fetches one commit with its history, under a ref of its own. */
export async function fetchPack(
  listing: Pick<ListedPack, 'name' | 'repository' | 'commit'>,
  onNetwork: OnNetwork,
  more: readonly string[] = [],
): Promise<Problem | undefined> {
  const { name, repository, commit } = listing;
  const run = await onNetwork([...quietFetch, ...more, '--', repository, `${commit}:${refOf(commit)}`]);
  if (!run.ok) return run.problems[0];
  if (run.value.code === 0) return undefined;
  return {
    message: `the pack ${name} could not be fetched from ${repository}: ${gitSaid(run.value.stderr)}`,
    advice: `Try it by hand: \`${fetchCommand(listing)}\`.`,
  };
}

const notListed = ({ name, repository, place }: ListedPack): Problem => ({
  place,
  message: `the pack ${name} was not fetched, since ${settingsFile} on main lists nothing of ${repository}`,
  advice: `Merge the entry first and use it in a second branch; or, knowing that repository, run \`ullage policy fetch --from ${shellWord(repository)}\`.`,
});

/** The commit that a branch, a tag or HEAD of another repository leads to. */
export async function commitElsewhere(
  repository: string,
  revision: string,
  onNetwork: OnNetwork,
): Promise<Outcome<string>> {
  const names =
    revision === 'HEAD'
      ? ['HEAD']
      : [`refs/heads/${revision}`, `refs/tags/${revision}`, `refs/tags/${revision}^{}`];
  const run = await onNetwork(['ls-remote', '--quiet', '--', repository, ...names]);
  if (!run.ok) return run;
  if (run.value.code !== 0) {
    return err({
      message: `${repository} does not answer: ${gitSaid(run.value.stderr)}`,
      advice: `Try it by hand: \`git ls-remote -- ${shellWord(repository)}\`.`,
    });
  }
  const ids = new Map(
    run.value.stdout
      .toString('utf8')
      .split('\n')
      .map((line) => line.split('\t'))
      .map(([id = '', name = '']) => [name, id] as const),
  );
  const [branch, tag, peeled] = names.map((name) => ids.get(name));
  const tagged = peeled ?? tag;
  if (branch !== undefined && tagged !== undefined && branch !== tagged) {
    return err({
      message: `${revision} is a branch and a tag of ${repository}`,
      advice: 'Name the commit by its id.',
    });
  }
  const commit = branch ?? tagged;
  if (commit !== undefined && isObjectId(commit)) return ok(commit);
  return err({
    message: `${repository} has no branch and no tag ${revision}`,
    advice: 'Name one of those, or a commit by its id, with --commit.',
  });
}
