import { emptySelection } from '../change/touched.ts';
import { holdsOn } from '../estate/dates.ts';
import { nameOf } from '../price/line.ts';
import { type Money, money, noMoney, showMoney, timesMoney } from '../price/money.ts';
import { leastShown, leftOf } from '../price/shown.ts';
import type { EntryOf, StateRule, Violation } from './rule.ts';
import {
  placeOfSum,
  type Spend,
  type SpendLimit,
  spender,
  spendSumming,
  spendsUnder,
} from './spend-limit.ts';
import type { View } from './view.ts';

type Entry = EntryOf<'max-monthly-spend'>;

export const maxMonthlySpend: StateRule<'max-monthly-spend'> = {
  name: 'max-monthly-spend',
  about: 'state',
  level: 'error',
  refuses: 'A team, a site, a label or the whole estate whose monthly cost is over its limit.',
  why: 'Storage is bought in a minute and paid for every month. A limit that is checked before the merge saves the discussion after the bill.',
  advice:
    'Provision less, move to a cheaper tier, delete what nobody needs, or have the limit raised in a change of its own.',
  parameters: {
    limit: {
      schema: {
        $ref: 'common.json#/$defs/amount',
        description: 'The highest total monthly cost of everything in scope. Exactly this amount is allowed.',
      },
      looser: 'higher',
      absent: 'loosest',
    },
    each: {
      schema: {
        type: 'string',
        enum: ['team', 'site'],
        description:
          'Applies the limit to each team, or each site, in scope separately instead of to their total.',
      },
      looser: 'unknown',
      absent: 'loosest',
    },
    'warn-from': {
      schema: {
        type: 'number',
        exclusiveMinimum: 0,
        maximum: 1,
        description: 'The share of the limit from which a warning is given.',
      },
      looser: 'higher',
      absent: 'loosest',
    },
    from: {
      schema: { $ref: 'common.json#/$defs/date', description: 'The first day on which the limit applies.' },
      looser: 'higher',
      absent: 'tightest',
    },
    until: {
      schema: { $ref: 'common.json#/$defs/date', description: 'The last day on which the limit applies.' },
      looser: 'lower',
      absent: 'tightest',
    },
  },
  usesPrices: ['cost'],
  measures: { amount: 'the total monthly cost' },
  needs: ['limit'],
  looksAt: () => ['server', 'volume'],
  lastDay: ({ until }) => until,
  spendLimit: limitOf,
  spends: (entry, scope) => ({
    keyOf: spendSumming(entry, limitOf(entry), scope).keyOf,
    keyFor: ({ name }) => (entry.each === undefined ? '' : name),
    advice: ({ atMost, advice }) => (atMost && advice) ?? maxMonthlySpend.advice,
  }),
  examples: {
    fails: {
      story: 'A second large volume takes the team over its limit.',
      main: `team: imagery
volumes:
  plates-1: { size: 1 TiB, tier: bulk }
`,
      branch: `team: imagery
volumes:
  plates-1: { size: 1 TiB, tier: bulk }
  plates-2: { size: 2 TiB, tier: bulk }
`,
      entry: '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "120.00" }',
    },
    passes: {
      story: 'The same team provisions less, and stays below it.',
      main: `team: imagery
volumes:
  plates-1: { size: 1 TiB, tier: bulk }
`,
      branch: `team: imagery
volumes:
  plates-1: { size: 1 TiB, tier: bulk }
  plates-2: { size: 1 TiB, tier: bulk }
`,
      entry: '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "120.00" }',
    },
  },
  dated: ({ from, until }) => (from === undefined && until === undefined ? undefined : emptySelection),
  check(entry, scope) {
    const limit = limitOf(entry);
    return function* (view) {
      if (!holdsOn(limit, view.on)) return;
      for (const spend of spendsUnder(entry, limit, view.cost, scope)) {
        const violation = violationOf(entry, limit.amount, spend, view);
        if (violation !== undefined) yield violation;
      }
    };
  },
};

/** The schema asks every entry for its limit, so there is always one. */
function limitOf({ limit, each, from, until }: Entry): SpendLimit {
  return { amount: money(limit), each, from, until };
}

function violationOf(
  entry: Entry,
  limit: Money,
  { subject, monthly, dearest }: Spend,
  view: View,
): Violation | undefined {
  const { currency } = view.cost;
  const shown = (amount: Money): string => `${showMoney(amount, currency)} ${currency}`;
  const who = spender(subject);
  const place = placeOfSum(dearest, view);
  if (monthly.gt(limit)) {
    return {
      subject,
      place,
      message: `${who} would cost ${shown(monthly)} a month, ${apart(limit, monthly, currency)} over the limit of ${shown(limit)}`,
      advice: `${dearest === undefined ? '' : `The most expensive is ${nameOf(dearest)} at ${shown(dearest.monthly)}. `}${maxMonthlySpend.advice}`,
      excess: monthly,
      measured: { amount: monthly },
    };
  }
  if (
    entry['warn-from'] !== undefined &&
    monthly.gte(timesMoney(limit, entry['warn-from'])) &&
    monthly.gt(noMoney)
  ) {
    const share = monthly.div(limit).times(100).toDecimalPlaces(1, 1).toString();
    return {
      subject,
      place,
      message: `${who} would cost ${shown(monthly)} a month, ${share} % of the limit of ${shown(limit)}`,
      advice: `${apart(limit, monthly, currency)} a month remains.`,
      excess: monthly,
      measured: { amount: monthly },
      atMost: 'warning',
    };
  }
  return undefined;
}

/** What is left, or over, as it is shown; what rounds to nothing is still something. */
function apart(limit: Money, monthly: Money, currency: string): string {
  const left = leftOf(limit, monthly, currency);
  if (left.kind === 'none') return 'nothing';
  return left.shown === 'under the least'
    ? `less than ${leastShown(currency)}`
    : `${showMoney(left.shown, currency)} ${currency}`;
}
