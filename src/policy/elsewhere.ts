/**
 * Rule packs that are kept in other repositories. Which bytes are meant is held in `ullage.yaml`, by digest; they are
 * read from where this repository's own objects lie, and nothing here goes to the network. Bytes that are not at hand
 * are no fault of any revision: then nothing is judged, and no older policy stands in.
 */

import { createHash } from 'node:crypto';
import { type PartialOutcome, type Problem, whatHolds } from '../base/problem.ts';
import type { ListedPack, Settings } from '../estate/settings.ts';
import { isMissing } from '../git/object-store.ts';
import { shown, type Tree } from '../git/tree.ts';
import { shellLine } from '../runbook/shell.ts';
import { readContent } from './files.ts';
import { readRulePack, shippedPack } from './pack.ts';
import type { Elsewhere, PackElsewhere, RulePack } from './rule-pack.ts';

/** What was read of the packs that a revision lists and uses. */
export interface ElsewhereRead {
  /** `unread` where the settings do not say which are listed: then no name is known, or unknown. */
  readonly value: Elsewhere | 'unread';
  /** All that is wrong, those among them that are not at hand. */
  readonly problems: readonly Problem[];
  readonly notAtHand: readonly Problem[];
  /** Names what was asked for. */
  readonly key: string;
  /** What each file was read as, by its digest and its path. */
  readonly contents: ReadonlyMap<string, PartialOutcome<RulePack>>;
}

export const nothingElsewhere: ElsewhereRead = {
  value: new Map(),
  problems: [],
  notAtHand: [],
  key: '',
  contents: new Map(),
};

/** Where the pack's repository is fetched to: a ref of its own keeps its objects from being collected. */
export const refOf = (commit: string): string => `refs/ullage/${commit.slice(0, 16)}`;

export async function elsewhereAfter(
  before: ElsewhereRead,
  packs: readonly RulePack[],
  {
    value: settings,
    problems,
  }: { readonly value: Settings | undefined; readonly problems: readonly Problem[] },
  tree: Pick<Tree, 'fileAt'>,
): Promise<ElsewhereRead> {
  const listed = settings?.packs ?? new Map<string, ListedPack | undefined>();
  const isUnread = settings === undefined ? problems.length > 0 : settings.packs === undefined;
  const used = new Set(packs.flatMap(({ use }) => use.map(({ name }) => name)));
  const key = JSON.stringify([
    isUnread,
    [...listed].map(([name, pack]) => [name, pack ?? null, used.has(name)]),
  ]);
  if (key === before.key && before.notAtHand.length === 0) return before;
  const asShipped = [...listed.values()].flatMap((pack) =>
    pack === undefined || shippedPack(pack.name) === undefined ? [] : [shadows(pack)],
  );
  const read = await Promise.all(
    [...listed].map(async ([name, pack]) => {
      const isWanted = pack !== undefined && used.has(name) && shippedPack(name) === undefined;
      return [name, isWanted ? await packRead(pack, tree, before.contents) : undefined] as const;
    }),
  );
  const wanted = read.flatMap(([, each]) => each ?? []);
  const notAtHand = wanted.flatMap(({ notAtHand }) => notAtHand ?? []);
  return {
    value: isUnread ? 'unread' : new Map(read.map(([name, each]) => [name, each?.pack])),
    problems: [...asShipped, ...notAtHand, ...wanted.flatMap((each) => each.problems)],
    notAtHand,
    key,
    contents: new Map(wanted.flatMap(({ content }) => (content === undefined ? [] : [content]))),
  };
}

interface PackRead {
  readonly pack: PackElsewhere | undefined;
  readonly notAtHand: Problem | undefined;
  readonly problems: readonly Problem[];
  readonly content: readonly [string, PartialOutcome<RulePack>] | undefined;
}

async function packRead(
  listing: ListedPack,
  tree: Pick<Tree, 'fileAt'>,
  known: ElsewhereRead['contents'],
): Promise<PackRead> {
  const key = `${listing.sha256} ${listing.commit} ${listing.path}`;
  let content = known.get(key);
  if (content === undefined) {
    const bytes = await bytesOf(listing, tree);
    if (!(bytes instanceof Uint8Array))
      return { pack: undefined, notAtHand: bytes, problems: [], content: undefined };
    content = readContent(bytes, listing.path, readRulePack);
  }
  const pack = whatHolds(content);
  return {
    pack: pack && { listing, pack },
    notAtHand: undefined,
    problems: content.ok ? [] : content.problems.map((problem) => withinPack(listing, problem)),
    content: [key, content],
  };
}

/** The bytes that are meant, or why they are not at hand: whatever else is found in their place is not they. */
export async function bytesOf(
  listing: ListedPack,
  tree: Pick<Tree, 'fileAt'>,
): Promise<Uint8Array | Problem> {
  const { name, commit, path, sha256, place } = listing;
  const found = (await tree.fileAt?.(commit, path)) ?? { kind: 'missing', what: 'commit' };
  switch (found.kind) {
    case 'missing':
      return {
        place,
        message: `the pack ${name} is not at hand: ${commitOf(listing)} is not in this clone${found.what === 'part' ? ' with all of its objects' : ''}`,
        advice: `Fetch it with \`${fetchCommand(listing, found.what === 'part' ? wholeAgain : [])}\`; ${neverFetched}`,
      };
    case 'no file':
      return {
        place,
        message: `the pack ${name} is not at hand: in ${commitOf(listing)}, ${found.why}`,
        advice: `Correct commit or path; \`ullage policy hold\` writes such an entry. ${capital(neverFetched)}`,
      };
    case 'found': {
      const digest = createHash('sha256').update(found.content).digest('hex');
      if (digest === sha256) return found.content;
      return {
        place,
        message: `the pack ${name} is not at hand: ${shown(path)} in ${commitOf(listing)} has the digest ${digest}, and another is held`,
        advice: `Read it with \`${shellLine(['git', 'cat-file', 'blob', `${commit}:${path}`])}\`, and hold its digest only if it is what you mean. ${capital(neverFetched)}`,
      };
    }
  }
}

const neverFetched = 'a judgement fetches nothing itself, and without the pack there is none.';

const capital = (sentence: string): string => `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}`;

/** Whether a pack that is kept elsewhere was not at hand, which another run may find otherwise. */
const isNotAtHand = ({ advice }: Pick<Problem, 'advice'>): boolean =>
  advice.toLowerCase().endsWith(neverFetched);

/** Whether this clone lacks what another may hold: that is no fault of the revision, and nothing may stand in for it. */
export const isOfThisClone = (problem: Pick<Problem, 'advice'>): boolean =>
  isMissing(problem) || isNotAtHand(problem);

const commitOf = ({ commit, repository }: ListedPack): string => `the commit ${commit} of ${repository}`;

/** Without these, git fetches nothing of a commit that it has, though it was fetched with a filter. */
export const wholeAgain: readonly string[] = ['--refetch', '--no-filter'];

/** Quoted for a POSIX shell. */
export const fetchCommand = (
  { repository, commit }: Pick<ListedPack, 'repository' | 'commit'>,
  more: readonly string[] = [],
): string =>
  shellLine(['git', 'fetch', ...more, '--no-tags', '--', repository, `${commit}:${refOf(commit)}`]);

/** What is wrong in a pack is told where it is listed, since its own file is none of this repository's. */
function withinPack(listing: ListedPack, { place, message, advice }: Problem): Problem {
  const { line = 1, column = 1 } = place ?? {};
  return {
    place: listing.place,
    message: `the pack ${listing.name} does not read, at ${shown(listing.path)}:${line}:${column} in ${commitOf(listing)}: ${message}`,
    advice: `${advice} It is to be corrected there; then hold the new commit here.`,
  };
}

const shadows = ({ name, place }: ListedPack): Problem => ({
  place,
  message: `a pack named ${name} ships with Ullage, so no other can have that name`,
  advice: 'Give it another name, here and under use.',
});
