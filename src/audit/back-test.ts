/** A proposed policy tried on past changes: what it would have stopped, and what it would have let through. */
import { addMoney, type Money, money, noMoney } from '../price/money.ts';
import type { AuditRecord } from './record.ts';

export interface BackTest {
  /** How many changes both policies could judge, and how many at least one could not. */
  readonly judged: number;
  readonly notJudged: number;
  /** Changes that passed and would have failed. */
  readonly stopped: readonly AuditRecord[];
  /** Changes that failed and would have passed. */
  readonly letThrough: readonly AuditRecord[];
  /** How many fail under both. */
  readonly failBoth: number;
  readonly currency: string | undefined;
  /** What the stopped changes made each team pay more (or less) a month; `null` for what belongs to none. */
  readonly teams: ReadonlyMap<string | null, Money>;
}

/** @param records replayed with a policy to try */
export function backTest(records: readonly AuditRecord[]): BackTest {
  const judged = records.filter(
    ({ verdict, tried }) => verdict !== 'not judged' && tried !== null && tried.verdict !== 'not judged',
  );
  const stopped = judged.filter(({ verdict, tried }) => verdict === 'pass' && tried?.verdict === 'fail');
  const teams = new Map<string | null, Money>();
  for (const { cost } of stopped) {
    for (const { team, difference } of cost?.teams ?? []) {
      teams.set(team, addMoney(teams.get(team) ?? noMoney, money(difference)));
    }
  }
  return {
    judged: judged.length,
    notJudged: records.length - judged.length,
    stopped,
    letThrough: judged.filter(({ verdict, tried }) => verdict === 'fail' && tried?.verdict === 'pass'),
    failBoth: judged.filter(({ verdict, tried }) => verdict === 'fail' && tried?.verdict === 'fail').length,
    currency: stopped.find(({ cost }) => cost !== null)?.cost?.currency,
    teams: new Map([...teams].filter(([, difference]) => !difference.isZero())),
  };
}
