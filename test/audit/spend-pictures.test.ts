import { describe, expect, it } from 'vitest';
import type { AuditRecord } from '../../src/audit/record.ts';
import { isAuditRecord } from '../../src/read/validate.ts';
import { spendPictures } from '../../src/report/audit/spend-pictures.ts';
import type { SpendRow } from '../../src/report/model/picture.ts';
import { ullage } from '../cli/run.ts';
import { years } from '../page/office.ts';

async function audited(): Promise<readonly AuditRecord[]> {
  const { out } = await ullage('audit', '--repo', years().dir, '--format', 'ndjson');
  return out
    .trimEnd()
    .split('\n')
    .map((line): unknown => JSON.parse(line))
    .map((record) => {
      if (!isAuditRecord(record)) throw new Error('not a record');
      return record;
    });
}

/** What is drawn of a day: the last step up to it. */
const drawnOn = (day: string, steps: SpendRow['limits']): string | undefined =>
  steps.findLast(({ on }) => on <= day)?.amount?.toFixed();

describe('spend over time', () => {
  it('is drawn beside the limits of teams, sites and the estate as every record has them', async () => {
    const records = await audited();
    const span = { from: records[0]?.on ?? '', until: records.at(-1)?.on ?? '' };
    const pictures = spendPictures(records, span);
    const [teams, others] = pictures.map((picture) => (picture.kind === 'spend' ? picture.rows : []));
    expect(teams?.map(({ name }) => name)).toEqual(['soundings', 'imagery', 'ledger']);
    expect(others?.map(({ name }) => name).toSorted()).toEqual([
      'brisk-limit: everything in scope',
      'site-limit: site north-quay',
      'site-limit: site south-quay',
      'whole-limit: the estate',
    ]);
    const rowOf = (entry: string, name: string): SpendRow | undefined => {
      const rows = others?.filter((row) => row.name.startsWith(`${entry}: `)) ?? [];
      return (
        (rows.length === 1 ? rows[0] : rows.find((row) => row.name.endsWith(name))) ??
        teams?.find((row) => row.name === name)
      );
    };
    for (const { on, limits } of records) {
      for (const { entry, subject, limit, after } of limits) {
        const row = rowOf(entry, subject.name);
        expect([entry, on, drawnOn(on, row?.limits ?? []), drawnOn(on, row?.steps ?? [])]).toEqual([
          ...[entry, on, limit, after],
        ]);
      }
    }
    // Before it was declared, nothing is drawn of a limit.
    expect(drawnOn('2026-04-02', rowOf('whole-limit', 'estate')?.limits ?? [])).toBeUndefined();
  });

  it('ends a limit where the policy gave it up', async () => {
    const records = await audited();
    const last = records.at(-1);
    if (last === undefined) throw new Error('no records');
    const without = { ...last, on: '2026-12-01', limits: [] };
    const pictures = spendPictures([...records, without], { from: '2026-01-12', until: '2026-12-01' });
    for (const picture of pictures) {
      for (const { limits } of picture.kind === 'spend' ? picture.rows : []) {
        expect(limits.at(-1)).toEqual({ on: '2026-12-01', amount: undefined });
      }
    }
  });
});
