import type { RevisionPlace } from '../change/change.ts';
import { emptySelection } from '../change/touched.ts';
import type { Subject } from '../estate/estate.ts';
import { type CostLine, nameOf, ownerOf, sumsBy } from '../price/cost.ts';
import {
  type Money,
  minorUnit,
  money,
  noMoney,
  showMoney,
  subtractMoney,
  timesMoney,
} from '../price/money.ts';
import type { EntryOf, Scope, StateRule, View, Violation } from './rule.ts';

type Entry = EntryOf<'max-monthly-spend'>;

export const maxMonthlySpend: StateRule<'max-monthly-spend'> = {
  name: 'max-monthly-spend',
  about: 'state',
  level: 'error',
  refuses: 'A team, a site, a label or the whole estate that costs more a month than its limit.',
  why: 'Storage is bought in a minute and paid for every month. A limit that is met before the merge needs no argument after the bill.',
  advice:
    'Take less, move to a cheaper tier, delete what nobody needs, or have the limit raised in a change of its own.',
  parameters: {
    limit: {
      schema: {
        $ref: 'common.json#/$defs/amount',
        description:
          'The most that all in scope may cost a month together. It holds at equality and is broken above.',
      },
      looser: 'higher',
      absent: 'loosest',
    },
    each: {
      schema: {
        type: 'string',
        enum: ['team', 'site'],
        description:
          'Makes the limit one for each team, or each site, in scope instead of one for all together.',
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
      schema: { $ref: 'common.json#/$defs/date', description: 'The first day on which the limit holds.' },
      looser: 'higher',
      absent: 'tightest',
    },
    until: {
      schema: { $ref: 'common.json#/$defs/date', description: 'The last day on which the limit holds.' },
      looser: 'lower',
      absent: 'tightest',
    },
  },
  needs: ['limit'],
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
      story: 'The same team buys less, and stays below it.',
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
  *check(entry, view, scope) {
    if (entry.limit === undefined || !limitHoldsOn(entry, view.on)) return;
    const limit = money(entry.limit);
    for (const spend of spends(entry, view, scope)) {
      const violation = judge(entry, limit, spend, view);
      if (violation !== undefined) yield violation;
    }
  },
};

/** Whether a limit holds on a day; both ends count. */
export const limitHoldsOn = ({ from, until }: Pick<Entry, 'from' | 'until'>, on: string): boolean =>
  (from === undefined || from <= on) && (until === undefined || on <= until);

/** What one limit is held against. */
export interface Spend {
  readonly subject: Subject;
  readonly monthly: Money;
  readonly dearest: CostLine | undefined;
}

/** What falls under an entry's limit: one sum for its whole scope, or one for each team or site in it. */
export function spends(entry: Entry, view: Pick<View, 'cost'>, scope: Scope): readonly Spend[] {
  const { each, where = {} } = entry;
  const sums = sumsBy(view.cost, `spend ${each ?? ''} ${JSON.stringify(where)}`, (line) => {
    const owner = ownerOf(line);
    if (!scope.includes(owner, line.kind === 'volume' ? line.tier : undefined)) return undefined;
    return each === undefined ? '' : owner[each];
  });
  if (each === undefined) {
    const sum = sums.get('');
    return [{ subject: subjectOf(entry), monthly: sum?.monthly ?? noMoney, dearest: sum?.dearest }];
  }
  return [...sums]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, { monthly, dearest }]) => ({ subject: { kind: each, name }, monthly, dearest }));
}

/** The one thing that the entry's scope names, or the estate, or the scope as a whole. */
export function subjectOf({ where, name, rule }: Entry): Subject {
  const { teams = [], sites = [], tiers = [], labels = {} } = where ?? {};
  const chosen = [
    ...teams.map((team): Subject => ({ kind: 'team', name: team })),
    ...sites.map((site): Subject => ({ kind: 'site', name: site })),
    ...Object.entries(labels).map(
      ([label, value]): Subject => ({
        kind: 'label',
        name: `${label}=${typeof value === 'string' ? value : value.join('|')}`,
      }),
    ),
  ];
  const [only] = chosen;
  if (only === undefined && tiers.length === 0) return { kind: 'estate', name: 'estate' };
  return chosen.length === 1 && only !== undefined && tiers.length === 0
    ? only
    : { kind: 'scope', name: name ?? rule };
}

function judge(
  entry: Entry,
  limit: Money,
  { subject, monthly, dearest }: Spend,
  view: View,
): Violation | undefined {
  const { currency } = view.cost;
  const shown = (amount: Money): string => `${showMoney(amount, currency)} ${currency}`;
  const who = subject.kind === 'estate' ? 'the estate' : `${subject.kind} ${subject.name}`;
  const place = placeOf(dearest, view);
  if (monthly.gt(limit)) {
    return {
      subject,
      place,
      message: `${who} would cost ${shown(monthly)} a month, ${over(subtractMoney(monthly, limit), currency)} over the limit of ${shown(limit)}`,
      advice: `${dearest === undefined ? '' : `The dearest is ${nameOf(dearest)} at ${shown(dearest.monthly)}. `}${maxMonthlySpend.advice}`,
      excess: monthly,
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
      advice: `${shown(subtractMoney(limit, monthly))} a month are left.`,
      excess: monthly,
      atMost: 'warning',
    };
  }
  return undefined;
}

/** An excess as it is shown; one that rounds to nothing is still one. */
function over(excess: Money, currency: string): string {
  const least = `${showMoney(money(`1e-${minorUnit(currency)}`), currency)} ${currency}`;
  return excess.lt(money(`1e-${minorUnit(currency)}`))
    ? `less than ${least}`
    : `${showMoney(excess, currency)} ${currency}`;
}

/** A sum has no line of its own; its dearest part is where somebody would begin to save. */
function placeOf(dearest: CostLine | undefined, { revision, settings }: View): RevisionPlace {
  if (dearest === undefined) return { revision, ...settings.place };
  const declared = dearest.kind === 'volume' ? dearest.volume : dearest.server;
  return { revision, ...declared.place };
}
