/** A proposed policy tried on past changes: what it would have stopped, and what it would have let through. */

import { type Outcome, ok } from '../base/problem.ts';
import { firstParentHistory } from '../git/history.ts';
import type { GitRepository } from '../git/repository.ts';
import type { PolicyRule } from '../policy/policy.ts';
import { addMoney, type Money, money, noMoney } from '../price/money.ts';
import { auditRecords } from './audit.ts';
import type { AuditRecord } from './record.ts';
import { foldersOf, pathsInHistory, type Span } from './walk.ts';

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
      if (difference === null) continue;
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

export interface LastChanges {
  /** The commit of the main branch that they end with, by id. */
  readonly to: string;
  /** How many. */
  readonly count: number;
  readonly rules: readonly PolicyRule[];
  readonly failOn: 'error' | 'warning';
}

/** Tries rules on the last changes of the main branch. */
export async function backTestLast(
  repository: GitRepository,
  { to, count, rules, failOn }: LastChanges,
): Promise<Outcome<BackTest>> {
  const span = await lastSpan(repository, to, count);
  if (!span.ok) return span;
  const records: AuditRecord[] = [];
  for await (const record of auditRecords(repository, { span: span.value, failOn, tried: rules })) {
    if (!record.ok) return record;
    records.push(record.value);
  }
  return ok(backTest(records));
}

/** The span of the last so many commits that changed anything in the folders. */
async function lastSpan(repository: GitRepository, to: string, count: number): Promise<Outcome<Span>> {
  const choices = await pathsInHistory(repository, to);
  if (!choices.ok) return choices;
  let left = count;
  for await (const entry of firstParentHistory(repository, { to, folders: foldersOf(choices.value) })) {
    if (!entry.ok) return entry;
    left--;
    if (left > 0) continue;
    const [from] = entry.value.cutShort ? [] : entry.value.commit.parents;
    return ok({ to, from });
  }
  return ok({ to });
}
