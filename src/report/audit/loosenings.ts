/** What made the policy looser, or may have, by whom, and which merged changes passed only by it. */
import { loosenings } from '../../audit/questions.ts';
import type { AuditRecord } from '../../audit/record.ts';
import { canBeUndone, type Loosened, loosenedKey } from '../../audit/undone.ts';
import { counted } from '../../base/wording.ts';
import { type Money, money, sumMoney } from '../../price/money.ts';
import {
  type AuditTable,
  column,
  commitColumn,
  currencyColumn,
  day,
  differenceCell,
  short,
  trailersOf,
  unjudgedNote,
  who,
} from './table.ts';

/** @param passed by `loosenedKey`: the commits that passed only by it */
export function looseningsTable(
  records: readonly AuditRecord[],
  passed: ReadonlyMap<string, readonly string[]>,
): AuditTable {
  const loosened = loosenings(records);
  const byCommit = new Map(records.map((record) => [record.commit, record]));
  const keys = new Set<string>();
  const rows = loosened.map(({ record, change }) => {
    const { of, name, key } = change;
    const one: Loosened = { commit: record.commit, of, name, key };
    const by = (passed.get(loosenedKey(one)) ?? []).flatMap((commit) => byCommit.get(commit) ?? []);
    if (by.length > 0) keys.add(loosenedKey(one));
    const currency = by[0]?.cost?.currency ?? null;
    const cost = currency === null ? null : costOf(by, currency);
    return [
      record.on,
      short(record.commit),
      record.author.name,
      trailersOf(record),
      change.direction,
      of,
      name,
      key,
      change.from,
      change.to,
      canBeUndone(one) ? by.length : null,
      by.map(({ on, commit }) => `${on} ${short(commit)}`).join('; '),
      cost === null || currency === null ? null : differenceCell(cost, currency),
      currency,
    ];
  });
  return {
    headline:
      loosened.length === 0
        ? 'No policy change loosened the policy'
        : `${counted(loosened.length, 'policy change')} loosened the policy, or may have; ${passedWords(loosened.length, keys.size)}`,
    notes: [
      ...unjudgedNote(records),
      'A merged change passed only by a loosening where it would have failed without that one, with all else of the policy as it was. What a commit altered in one rule, waiver, price list or setting is taken together.',
      ...(loosened.some(({ change }) => !canBeUndone(change))
        ? ['Of readings, of attachment slots written on a server and of moved folders it cannot be told.']
        : []),
    ],
    columns: [
      day,
      commitColumn,
      ...who,
      column('direction', 'direction'),
      column('of', 'kind'),
      column('name', 'name'),
      column('key', 'key'),
      column('from', 'from'),
      column('to', 'to'),
      column('passed_only_by_it', 'passed only by it', 'right'),
      column('changes', 'changes'),
      column('difference', 'monthly cost', 'right'),
      currencyColumn(),
    ],
    rows,
  };
}

function passedWords(all: number, passedBy: number): string {
  if (passedBy === 0) return `no merged change passed only by ${all === 1 ? 'it' : 'one of them'}`;
  return `merged changes passed only by ${all === 1 ? 'it' : `${passedBy} of them`}`;
}

/** What they cost more (or less) a month together, in the one currency; undefined where they are in several. */
function costOf(records: readonly AuditRecord[], currency: string): Money | null {
  const amounts = records.flatMap(({ cost }) => (cost?.difference == null ? [] : [cost]));
  if (amounts.some((cost) => cost.currency !== currency)) return null;
  return sumMoney(amounts.map(({ difference }) => money(difference ?? '0')));
}
