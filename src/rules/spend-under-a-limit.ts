import { emptySelection } from '../change/touched.ts';
import { sumsBy } from '../price/cost.ts';
import { nameOf } from '../price/line.ts';
import { showMoney } from '../price/money.ts';
import { everyDeclaredKind, type StateRule } from './rule.ts';
import { placeOfSum, spender, unlimitedSpends, unlimitedSumming } from './spend-limit.ts';

export const spendUnderALimit: StateRule<'spend-under-a-limit'> = {
  name: 'spend-under-a-limit',
  about: 'state',
  level: 'error',
  refuses:
    'Monthly cost that no spend limit covers: of a team, or of no team at all; and a server that names no type where the price list has server types, since its cost is then counted nowhere.',
  why: 'A limit applies only to what it names, and to what has a price. Otherwise a new team, a misspelt one, a volume that belongs to nobody, or a server whose type was left out costs money without any limit.',
  advice:
    'Give the team a limit in a change of its own, set one for the whole estate, or correct the name of the team.',
  parameters: {},
  scope: [],
  measures: { amount: 'the monthly cost that no limit covers' },
  needs: [],
  looksAt: () => everyDeclaredKind,
  comparesLimits: true,
  spends: (_, __, { spendLimits, on }) => ({
    keyOf: unlimitedSumming(spendLimits, on).keyOf,
    keyFor: ({ kind, name }) => (kind === 'team' ? name : undefined),
    advice: () => spendUnderALimit.advice,
  }),
  examples: {
    fails: {
      story: 'A slip in the name of the team takes a volume out of every limit.',
      main: `volumes:
  plates-1: { size: 40 GiB, tier: bulk, team: imagery }
`,
      branch: `volumes:
  plates-1: { size: 40 GiB, tier: bulk, team: imagery }
  plates-2: { size: 40 GiB, tier: bulk, team: imagry }
`,
      entry: '{ rule: spend-under-a-limit }',
      altered: {
        main: '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "120.00" }',
        branch: '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "120.00" }',
      },
    },
    passes: {
      story: 'Everything belongs to a team that has a limit.',
      main: `volumes:
  plates-1: { size: 40 GiB, tier: bulk, team: imagery }
`,
      branch: `volumes:
  plates-1: { size: 40 GiB, tier: bulk, team: imagery }
  plates-2: { size: 40 GiB, tier: bulk, team: imagery }
`,
      entry: '{ rule: spend-under-a-limit }',
      altered: {
        main: '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "120.00" }',
        branch: '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "120.00" }',
      },
    },
  },
  // A limit may begin or end on a day.
  dated: () => emptySelection,
  check: () =>
    function* (view) {
      const { cost, spendLimits, on, prices, selection, revision } = view;
      for (const { subject, monthly, dearest } of unlimitedSpends(
        sumsBy(cost, unlimitedSumming(spendLimits, on)),
      )) {
        yield {
          subject,
          place: placeOfSum(dearest, view),
          message: `${spender(subject)} would cost ${showMoney(monthly, cost.currency)} ${cost.currency} a month that no spend limit covers, ${nameOf(dearest)} among it`,
          excess: monthly,
          measured: { amount: monthly },
        };
      }
      if (prices.serverTypes.size === 0) return;
      for (const { name, type, place } of selection.servers) {
        if (type !== undefined) continue;
        yield {
          subject: { kind: 'server', name },
          facet: 'no type',
          place: { revision, ...place },
          message: `server ${name} names no type, so that what it costs is not known and counts towards no limit`,
          advice: `Write its type: ${[...prices.serverTypes.keys()].join(', ')}. For a server that is not billed, have a type in the price list that costs nothing.`,
        };
      }
    },
};
