/** What a branch changes in the policy, and what the policy that it proposes would have said. */

import { clipped } from '../../base/visible.ts';
import { counted } from '../../base/wording.ts';
import type { Judged, PastChange, Proposed } from '../../policy/judgement.ts';
import type { Money } from '../../price/money.ts';
import type { PolicyChange } from '../../rules/view.ts';
import { showDifference } from './amounts.ts';
import { advice, atRevision, entries, line, sentence } from './blocks.ts';
import type { Block, Entry, Section } from './model.ts';

export function policySection({
  policyChanges,
  proposed,
  policyFrom,
  unreadMain,
}: Judged): readonly Section[] {
  if (policyFrom === 'head') {
    return [
      {
        title: 'Policy',
        blocks: [
          sentence(
            `Main has no policy ${unreadMain === undefined ? 'yet' : 'that can be read'}, so the branch was judged by its own. Once it is merged, the policy on main applies.`,
          ),
        ],
      },
    ];
  }
  if (policyChanges.length === 0) return [];
  return [
    {
      title: `Policy changes (${policyChanges.length})`,
      blocks: [
        entries(policyChanges.map(policyEntry)),
        ...(proposed === undefined ? [] : proposedSentences(proposed)),
      ],
    },
  ];
}

/** A pass is not the last word on a looser policy; what is undetermined counts as looser. Empty where nothing is. */
export function policySentence(changes: readonly PolicyChange[]): string {
  const looser = changes.filter(({ direction }) => direction === 'looser').length;
  const count = looser + changes.filter(({ direction }) => direction === 'unknown').length;
  if (count === 0) return '';
  const loosens = looser === count ? 'loosens' : looser === 0 ? 'may loosen' : 'loosens, or may loosen,';
  return ` It ${loosens} the policy in ${counted(count, 'place')}; that is for whoever is responsible for the policy to decide. See Policy changes.`;
}

function proposedSentences(proposed: Proposed): readonly Block[] {
  const reasons = proposed.reasons.length === 0 ? '' : `: ${proposed.reasons.join('; ')}`;
  return [
    sentence(
      `Under the policy that the branch proposes, the verdict would be ${proposed.verdict}${reasons}.`,
    ),
    sentence('It does not count here: the policy on main applies until the proposed one is merged.'),
    ...pastSentences(proposed),
  ];
}

/** So many past changes are named; the JSON report names all. */
const pastNamed = 5;

/** What the proposed rules would have meant for changes that are on main. */
function pastSentences({ onPast }: Proposed): readonly Block[] {
  if (onPast === undefined) return [];
  const { changes, stopped, letThrough } = onPast;
  return [
    sentence(
      `Tried on the last ${changes === 1 ? 'change' : `${changes} changes`} of main, the proposed rules would have stopped ${orNone(stopped)} that passed, and let through ${orNone(letThrough)} that failed.`,
    ),
    ...(stopped.length === 0 ? [] : [sentence(`Would have been stopped: ${named(stopped)}.`)]),
    ...(letThrough.length === 0 ? [] : [sentence(`Would have passed: ${named(letThrough)}.`)]),
  ];
}

const orNone = ({ length }: readonly PastChange[]): number | 'none' => (length === 0 ? 'none' : length);

function named(past: readonly PastChange[]): string {
  const shown = past
    .slice(0, pastNamed)
    .map(({ commit, on, subject }) => `${commit.slice(0, 12)} of ${on} (${clipped(subject, 60)})`);
  const more = past.length - shown.length;
  return `${shown.join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}

const kinds: Readonly<Record<PolicyChange['of'], string>> = {
  rule: 'rule ',
  waiver: 'waiver ',
  // The name of a list says that it is one.
  'price-list': '',
  settings: 'settings ',
  readings: 'readings of ',
  surveys: 'the survey of ',
  server: 'server ',
  procedures: 'the procedure file of ',
};

function policyEntry({
  direction,
  of,
  name,
  key,
  from,
  to,
  place,
  written,
  monthly,
  remark,
}: PolicyChange): Entry {
  const what = `${kinds[of]}${name}${key === undefined ? '' : `, ${key}`}`;
  return {
    tag: {
      word: directionWord(direction),
      tone: direction === 'looser' || direction === 'unknown' ? 'caution' : 'plain',
    },
    text: `${what} ${alteration(name, from, to)}${monthly === undefined ? '' : `: ${showDifference(monthly.difference, monthly.currency)} a month for the estate on main${limitsMeet(monthly.difference)}`}`,
    fields: [
      ...(place === undefined ? [] : [atRevision(place)]),
      ...(written === undefined ? [] : [line('written', written)]),
      ...(remark === undefined ? [] : [advice('without effect', remark)]),
    ],
  };
}

/** What another price means for limits that stay as they are. */
const limitsMeet = (difference: Money): string =>
  difference.isZero()
    ? ''
    : `, so its spend limits are reached ${difference.isNegative() ? 'later' : 'sooner'}`;

function directionWord(direction: PolicyChange['direction']): string {
  switch (direction) {
    case 'tighter':
    case 'looser':
    case 'neither':
      return direction;
    case 'unknown':
      return 'undetermined';
  }
}

/** A rule that its entry does not rename says its name once. */
function alteration(name: string, from: string | undefined, to: string | undefined): string {
  if (from === undefined && to === undefined) return 'is changed';
  if (from === undefined) return to === name ? 'is new' : `is new: ${to}`;
  if (to === undefined) return from === name ? 'is removed' : `is removed; it was ${from}`;
  return `changes from ${from} to ${to}`;
}
