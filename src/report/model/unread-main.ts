/** What is said first where main itself does not read. */

import { counted } from '../../base/wording.ts';
import type { PolicySource, UnreadMain } from '../../policy/judgement.ts';
import { shortCommit } from './subjects.ts';

const partWords = {
  settings: 'settings',
  prices: 'price lists',
  rules: 'rule packs',
  waivers: 'waivers',
} as const;

const parts = ['settings', 'prices', 'rules', 'waivers'] as const;

/** By how many commits main does not read, what it was compared with instead, and whose policy applied. */
export function unreadSentence({
  comparedWith,
  commits,
  problem,
  policy,
  pricedByBranch,
}: UnreadMain): string {
  const { place, message } = problem;
  const why = place === undefined ? message : `${place.file}:${place.line}:${place.column}: ${message}`;
  const since = commits === 1 ? 'its last commit' : `its last ${commits} commits`;
  const from = (source: PolicySource): string =>
    listed(parts.filter((part) => policy[part] === source).map((part) => partWords[part]));
  const ancestor = from('ancestor');
  const branch = from('branch');
  return [
    comparedWith === undefined
      ? `Main cannot be read (${why}), nor can any of its ${counted(commits, 'commit')}: the branch is judged alone, as a first adoption.`
      : `Main cannot be read (${why}). The branch is compared with main as it was at ${shortCommit(comparedWith.commit)}, before ${since}, and everything since is judged as one change.`,
    ...(ancestor === '' || comparedWith === undefined
      ? []
      : [`The ${ancestor} are those of that commit, too.`]),
    ...(branch === '' ? [] : [`The ${branch} are the branch's own, because main has none that can be used.`]),
    ...(pricedByBranch.length === 0
      ? []
      : [`No list on main prices ${listed(pricedByBranch)}: the branch's prices hold for that.`]),
  ].join(' ');
}

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
