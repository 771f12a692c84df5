/** What the estate costs a month before and after, team by team, against the limits. */
import type { Judged, LimitUse } from '../../policy/judgement.ts';
import type { CauseKind, CostDelta, TeamDelta } from '../../price/delta.ts';
import { compareMoney, type Money, subtractMoney } from '../../price/money.ts';
import { addsUp, roundedNote } from '../../price/shown.ts';
import { showAmount, showDifference } from './amounts.ts';
import { figures, sentence, table, words } from './blocks.ts';
import type { Block, Cell, Section } from './model.ts';
import { subjectWords } from './subjects.ts';

/** The cost in one line: before, after and the difference. */
export function costSentence({ cost, afterAtJudgingPrices, unlimited }: Judged): string {
  const { currency, before, after, difference } = cost;
  const sentences = [
    difference.isZero()
      ? `${showAmount(before, currency)} a month, unchanged by the merge.`
      : `${showAmount(before, currency)} a month on main, ${showAmount(after, currency)} after the merge: ${showDifference(difference, currency)}.`,
  ];
  if (afterAtJudgingPrices !== undefined) {
    sentences.push(
      `This is at the prices that the branch proposes; at the prices on main, which decide the verdict, it would be ${showAmount(afterAtJudgingPrices, currency)}.`,
    );
  }
  if (cost.detached.gt(0)) {
    sentences.push(
      `After the merge, ${showAmount(cost.detached, currency)} a month is for unattached volumes, which are billed until they are deleted.`,
    );
  }
  if (unlimited.after.gt(unlimited.before)) {
    const more = subtractMoney(unlimited.after, unlimited.before);
    sentences.push(
      `No spend limit covers ${showAmount(unlimited.after, currency)} a month of it, ${showAmount(more, currency)} more than on main.`,
    );
  }
  return sentences.join(' ');
}

const causeWords: Readonly<Record<CauseKind, string>> = {
  quantity: 'changes in quantity',
  'tier-move': 'changes of tier or server type',
  'price-change': 'price changes',
};

const columns = [
  figures('On main'),
  figures('After'),
  figures('Difference'),
  figures('Limit'),
  words('Remaining'),
];

export function costSection({ cost, limits, afterAtJudgingPrices }: Judged): readonly Section[] {
  const { currency, teams } = cost;
  if (teams.length === 0 && limits.length === 0) return [];
  const lowestFirst = limits.toSorted((a, b) => compareMoney(a.limit, b.limit));
  const alike = teams.map((team) => lowestFirst.find((limit) => isTeamsOwn(limit, team)));
  const joined = new Set(alike);
  const apart = limits.filter((limit) => !joined.has(limit));
  const noneFor = (team: string): readonly Cell[] =>
    apart.some(({ subject }) => subject.kind === 'team' && subject.name === team)
      ? ['see below', '']
      : ['none', ''];
  const rows = teams.map((team, index) => {
    const limit = alike[index];
    return [
      team.team === '' ? 'no team' : team.team,
      ...amounts(team, currency),
      ...(limit === undefined ? noneFor(team.team) : against(limit, currency)),
    ];
  });
  const total = ['total', ...amounts(cost, currency), '', ''];
  const limitRows = apart.map((limit) => [
    `${limit.entry}: ${subjectWords(limit.subject)}`,
    ...amounts(limit, currency),
    ...against(limit, currency),
  ]);
  return [
    {
      title: 'Monthly cost',
      blocks: [
        ...(teams.length === 0
          ? []
          : [table([words('Team'), ...columns], teams.length > 1 ? [...rows, total] : rows)]),
        ...(apart.length === 0 ? [] : [table([words('Limit for'), ...columns], limitRows)]),
        ...(afterAtJudgingPrices !== undefined && limits.length > 0
          ? [sentence('Limits are checked at the prices on main, which decide the verdict.')]
          : []),
        ...causesSentence(cost),
        ...roundedSentence(cost, limits),
      ],
    },
  ];
}

const amounts = (
  { before, after }: { readonly before: Money; readonly after: Money },
  currency: string,
): readonly Cell[] => [
  { kind: 'amount', amount: before, currency },
  { kind: 'amount', amount: after, currency },
  { kind: 'difference', amount: subtractMoney(after, before), currency },
];

const against = ({ limit, after }: LimitUse, currency: string): readonly Cell[] => [
  { kind: 'amount', amount: limit, currency },
  { kind: 'remaining', limit, spent: after, currency },
];

/** Whether a limit is for just what a team's line sums; one for some of its tiers has a line of its own. */
const isTeamsOwn = ({ subject, before, after }: LimitUse, team: TeamDelta): boolean =>
  subject.kind === 'team' &&
  subject.name === team.team &&
  compareMoney(before, team.before) === 0 &&
  compareMoney(after, team.after) === 0;

const listed = new Intl.ListFormat('en-GB', { type: 'conjunction' });

function causesSentence({ causes, currency }: CostDelta): readonly Block[] {
  const parts = causes
    .filter(({ difference }) => !difference.isZero())
    .map(({ cause, difference }) => `${causeWords[cause]} (${showDifference(difference, currency)})`);
  return parts.length === 0 ? [] : [sentence(`The difference comes from ${listed.format(parts)}.`)];
}

/** Said where what is shown does not add up as it stands: parts to their sums, or a change to its ends. */
function roundedSentence(cost: CostDelta, limits: readonly LimitUse[]): readonly Block[] {
  const { currency, teams, causes, difference } = cost;
  const changes = [cost, ...teams, ...limits].every(({ before, after }) =>
    addsUp([before, subtractMoney(after, before)], after, currency),
  );
  const sums =
    addsUp(
      teams.map(({ before }) => before),
      cost.before,
      currency,
    ) &&
    addsUp(
      teams.map(({ after }) => after),
      cost.after,
      currency,
    ) &&
    addsUp(
      teams.map(({ before, after }) => subtractMoney(after, before)),
      difference,
      currency,
    ) &&
    addsUp(
      causes.map((cause) => cause.difference),
      difference,
      currency,
    );
  return changes && sums ? [] : [sentence(roundedNote(currency))];
}
