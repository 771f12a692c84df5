/** Spend over time: of each team beside its own limit, and of all else that a limit is for beside that. */
import { spendByTeam } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { compareMoney, type Money, money } from '../../price/money.ts';
import type { DaySpan, Picture, SpendRow } from '../model/picture.ts';
import { subjectWords } from '../model/subjects.ts';

type Amounts = SpendRow['limits'][number][];
type Limit = AuditRecord['limits'][number];

/** In the currency that the span ends with; what was in another before begins where it changed. */
export function spendPictures(records: readonly AuditRecord[], span: DaySpan): readonly Picture[] {
  const currency = records.findLast(({ cost }) => cost !== null)?.cost?.currency;
  if (currency === undefined) return [];
  const isOwn = teamsOwn(records);
  const drawn = { kind: 'spend', currency, span } as const;
  const teams = teamRows(records, { currency, span, isOwn });
  const others = limitRows(records, { currency, isOwn });
  return [
    ...(teams.length === 0
      ? []
      : [{ ...drawn, caption: 'Monthly cost', of: 'Team', spent: 'monthly cost', rows: teams } as const]),
    ...(others.length === 0
      ? []
      : [
          {
            ...drawn,
            caption: 'What falls under each limit on anything but the whole of a team, a month',
            ...{ of: 'Limit', spent: 'what falls under it', rows: others },
          } as const,
        ]),
  ];
}

/**
 * Whether a limit is on all that a team costs: what falls under it is that, commit by commit. Limits are checked at the
 * prices before a commit, so that one which changes prices tells nothing.
 */
function teamsOwn(records: readonly AuditRecord[]): (limit: Limit) => boolean {
  const seen = new Map<string, boolean>();
  for (const { cost, limits, touched } of records) {
    if (cost === null || touched.includes('prices')) continue;
    const sums = new Map(cost.teams.map(({ team, after }) => [team, money(after)]));
    for (const { entry, subject, after } of limits) {
      const isAll = subject.kind === 'team' && (sums.get(subject.name) ?? money(0)).eq(money(after));
      const key = keyOf({ entry, subject });
      seen.set(key, isAll && seen.get(key) !== false);
    }
  }
  return (limit) => seen.get(keyOf(limit)) === true;
}

const keyOf = ({ entry, subject }: Pick<Limit, 'entry' | 'subject'>): string =>
  `${entry} ${subject.kind} ${subject.name}`;

interface Drawn {
  readonly currency: string;
  readonly isOwn: (limit: Limit) => boolean;
}

function teamRows(
  records: readonly AuditRecord[],
  { currency, span, isOwn }: Drawn & { readonly span: DaySpan },
): readonly SpendRow[] {
  const rows = new Map<string, { readonly team: string | null; readonly steps: Amounts }>();
  for (const { record, team, before, after, currencyBefore, currency: its } of spendByTeam(records)) {
    if (its !== currency) continue;
    const row = rows.get(team ?? '') ?? { team, steps: [] };
    if (row.steps.length === 0 && currencyBefore === currency && record.on > span.from) {
      row.steps.push({ on: span.from, amount: money(before) });
    }
    row.steps.push({ on: record.on, amount: money(after) });
    rows.set(team ?? '', row);
  }
  const limitsOf = (team: string): Amounts =>
    changesOf(records, currency, ({ limits }) =>
      limits
        .filter((limit) => limit.subject.name === team && isOwn(limit))
        .map(({ limit }) => money(limit))
        .reduce<Money | undefined>(
          (least, each) => (least === undefined || each.lt(least) ? each : least),
          undefined,
        ),
    );
  return dearestFirst(
    [...rows.values()].map(({ team, steps }) => ({
      name: team ?? 'no team',
      steps,
      limits: team === null ? [] : limitsOf(team),
    })),
  );
}

function limitRows(records: readonly AuditRecord[], { currency, isOwn }: Drawn): readonly SpendRow[] {
  const all = new Map(
    records.flatMap(({ limits }) =>
      limits.flatMap((limit) => (isOwn(limit) ? [] : [[keyOf(limit), limit] as const])),
    ),
  );
  return dearestFirst(
    [...all].map(([key, { entry, subject }]) => {
      const of = (amount: (limit: Limit) => string): Amounts =>
        changesOf(records, currency, ({ limits }) => {
          const held = limits.find((limit) => keyOf(limit) === key);
          return held === undefined ? undefined : money(amount(held));
        });
      return {
        name: `${entry}: ${subjectWords(subject)}`,
        steps: of(({ after }) => after),
        limits: of(({ limit }) => limit),
      };
    }),
  ).filter(({ limits }) => limits.length > 0);
}

/** From each day on which an amount became another, or none; what could not be judged leaves it as it was. */
function changesOf(
  records: readonly AuditRecord[],
  currency: string,
  amountOf: (record: AuditRecord) => Money | undefined,
): Amounts {
  const found: Amounts = [];
  for (const record of records) {
    if (record.cost?.currencyBefore !== currency) continue;
    const amount = amountOf(record);
    const last = found.at(-1)?.amount;
    const same = amount === undefined ? last === undefined : last?.eq(amount) === true;
    if (!same) found.push({ on: record.on, amount });
  }
  return found;
}

const dearestFirst = (rows: readonly SpendRow[]): readonly SpendRow[] =>
  rows.toSorted((a, b) =>
    compareMoney(b.steps.at(-1)?.amount ?? money(0), a.steps.at(-1)?.amount ?? money(0)),
  );
