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
  refuses: 'Monthly cost that no spend limit covers: of a team, or of no team at all.',
  why: 'A limit applies only to what it names. Otherwise a new team, a misspelt one, or a volume that belongs to nobody costs money without any limit.',
  advice:
    'Give the team a limit in a change of its own, set one for the whole estate, or correct the name of the team.',
  parameters: {},
  scope: [],
  measures: { amount: 'the monthly cost that no limit covers' },
  needs: [],
  looksAt: () => everyDeclaredKind,
  comparesLimits: true,
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
      const { cost, spendLimits, on } = view;
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
    },
};
