/** What the estate costs a month before and after, team by team, against the limits. */
import { listed } from '../../base/wording.ts';
import type { Judged, LimitUse } from '../../policy/judgement.ts';
import { type CostDelta, changeOfCost, type TeamDelta } from '../../price/delta.ts';
import { compareMoney, type Money, subtractMoney } from '../../price/money.ts';
import { addsUp, roundedNote } from '../../price/shown.ts';
import { showAmount, showDifference } from './amounts.ts';
import { figures, sentence, table, words } from './blocks.ts';
import { causeWords, costPictures } from './cost-pictures.ts';
import type { Block, Cell, Section } from './model.ts';
import { subjectWords } from './subjects.ts';

/** The cost in one line: before, after and the difference. */
export function costSentence({ cost, afterAtJudgingPrices, unlimited }: Judged): string {
  const { currencyBefore, currency, before, after, difference } = cost;
  const sentences = [
    difference === undefined
      ? `${showAmount(before, currencyBefore)} a month on main, ${showAmount(after, currency)} after the merge; the two currencies are not compared.`
      : difference.isZero()
        ? `${showAmount(before, currency)} a month, unchanged by the merge.`
        : `${showAmount(before, currency)} a month on main, ${showAmount(after, currency)} after the merge: ${showDifference(difference, currency)}.`,
  ];
  if (afterAtJudgingPrices !== undefined) {
    sentences.push(
      `This is at the prices that the branch proposes; at the prices on main, which decide the verdict, it would be ${showAmount(afterAtJudgingPrices, currencyBefore)}.`,
    );
  }
  if (cost.adopted.gt(0)) {
    sentences.push(
      `Of this, ${showAmount(cost.adopted, currency)} a month is already being paid, for what is there and is only declared now.`,
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
      `No spend limit covers ${showAmount(unlimited.after, currencyBefore)} a month of it, ${showAmount(more, currencyBefore)} more than on main.`,
    );
  }
  return sentences.join(' ');
}

const columns = [
  figures('On main'),
  figures('After'),
  figures('Difference'),
  figures('Limit'),
  figures('Remaining'),
];

export function costSection({ cost, limits, afterAtJudgingPrices }: Judged): readonly Section[] {
  const { currencyBefore, teams } = cost;
  // Limits, and what counts towards them, are in the money of the prices that judge.
  const judging = { currencyBefore, currency: currencyBefore };
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
      nameOfTeam(team),
      ...amounts(team, cost),
      ...(limit === undefined ? noneFor(team.team) : against(limit, currencyBefore)),
    ];
  });
  const total = ['total', ...amounts(cost, cost), '', ''];
  const limitRows = apart.map((limit) => [
    nameOfLimit(limit),
    ...amounts(limit, judging),
    ...against(limit, currencyBefore),
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
        ...costPictures(cost, [
          ...teams.map((team, index) => ({ ...team, name: nameOfTeam(team), limit: alike[index]?.limit })),
          ...apart.map((limit) => ({ ...limit, name: nameOfLimit(limit) })),
        ]),
        ...roundedSentence(cost, limits),
      ],
    },
  ];
}

const nameOfTeam = ({ team }: TeamDelta): string => (team === '' ? 'no team' : team);

const nameOfLimit = ({ entry, subject }: LimitUse): string => `${entry}: ${subjectWords(subject)}`;

function amounts(
  ends: { readonly before: Money; readonly after: Money },
  currencies: Pick<CostDelta, 'currencyBefore' | 'currency'>,
): readonly Cell[] {
  const { currencyBefore, currency } = currencies;
  const difference = changeOfCost(currencies, ends);
  return [
    { kind: 'amount', amount: ends.before, currency: currencyBefore },
    { kind: 'amount', amount: ends.after, currency },
    difference === undefined ? '' : { kind: 'difference', amount: difference, currency },
  ];
}

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

function causesSentence({ causes, currency }: CostDelta): readonly Block[] {
  const parts = causes.flatMap(({ cause, difference }) =>
    difference === undefined || difference.isZero()
      ? []
      : [`${causeWords[cause]} (${showDifference(difference, currency)})`],
  );
  return parts.length === 0 ? [] : [sentence(`The difference comes from ${listed(parts)}.`)];
}

/** Said where what is shown does not add up as it stands: parts to their sums, or a change to its ends. */
function roundedSentence(cost: CostDelta, limits: readonly LimitUse[]): readonly Block[] {
  const { currency, teams, causes, difference } = cost;
  if (difference === undefined) return [];
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
      causes.flatMap((cause) => cause.difference ?? []),
      difference,
      currency,
    );
  return changes && sums ? [] : [sentence(roundedNote(currency))];
}
