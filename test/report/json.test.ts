import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { JudgementReport } from '../../src/report/generated/judgement.ts';
import { judgementReport, reportJson } from '../../src/report/json.ts';
import { hostile } from './hostile.ts';
import { mixed, ownLimit, still, unjudgedSample, withHostile, withHostileProblems } from './sample.ts';

const schemas = join(import.meta.dirname, '../../schema');

const read = (file: string): Record<string, unknown> => JSON.parse(readFileSync(join(schemas, file), 'utf8'));

const judgementSchema = read('judgement.json');

const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true });
ajv.addSchema(read('common.json'));
const isReport = ajv.compile<JudgementReport>(judgementSchema);

/** The printed object, held against the published schema. */
function printed(text: string): JudgementReport {
  const value: unknown = JSON.parse(text);
  const valid = isReport(value);
  expect(isReport.errors ?? []).toEqual([]);
  if (!valid) throw new Error('not as the schema has it');
  return value;
}

/** As wide as the amounts are. */
const Exact = Decimal.clone({ precision: 100 });

const sum = (amounts: readonly string[]): Decimal =>
  amounts.reduce((total, amount) => total.plus(amount), new Exact(0));

describe('what another program reads of a judgement', () => {
  it('has the keys of the design at the top, whether judged or not', async () => {
    const wanted = [
      'verdict',
      'reasons',
      'base',
      'head',
      'cost',
      'findings',
      'changes',
      'headroom',
      'policyChanges',
      'problems',
    ];
    const judgedKeys = Object.keys(printed(reportJson(await mixed())));
    expect(judgedKeys).toEqual(expect.arrayContaining(wanted));
    expect(Object.keys(printed(reportJson(await unjudgedSample())))).toEqual(judgedKeys);
    expect(judgementSchema.required).toEqual(judgedKeys);
  });

  it('gives sizes as strings of whole bytes: 50 GiB rewritten as 50 GB', async () => {
    const { changes } = printed(reportJson(await mixed()));
    expect(changes.find(({ kind }) => kind === 'volume-shrunk')).toMatchObject({
      subject: { kind: 'volume', name: 'plate-scanner-root' },
      before: { kind: 'volume', size: '53687091200' },
      after: { kind: 'volume', size: '50000000000' },
      losesData: true,
      description: expect.stringContaining('shrinks'),
    });
  });

  it('gives both servers of a volume that is handed over, and no after of one that is deleted', async () => {
    const { changes } = printed(reportJson(await mixed()));
    expect(changes.find(({ kind }) => kind === 'handed-over')).toMatchObject({
      before: { kind: 'attachment', volume: 'plates-3', server: 'plate-scanner' },
      after: { kind: 'attachment', volume: 'plates-3', server: 'plate-archive' },
    });
    expect(changes.find(({ kind }) => kind === 'volume-deleted')).toMatchObject({
      before: { name: 'stray-plates', size: '10737418240' },
      after: null,
      place: { revision: 'base' },
    });
  });

  it('rounds amounts to the minor unit, and gives the exact ones, whose parts add up', async () => {
    const { cost } = printed(reportJson(await mixed()));
    if (cost?.difference == null || cost.exact.difference === null) throw new Error('no cost');
    // 50 GB at 0.10 per GiB-month does not come to whole cents.
    expect(cost.difference).toMatch(/^\d+\.\d\d$/);
    expect(cost.exact.difference.length).toBeGreaterThan(cost.difference.length);
    expect(new Decimal(cost.exact.difference).toFixed(2, Decimal.ROUND_HALF_UP)).toBe(cost.difference);
    expect(sum(cost.causes.map(({ exact }) => exact.difference ?? '')).toFixed()).toBe(cost.exact.difference);
    expect(sum(cost.teams.map(({ exact }) => exact.after)).toFixed()).toBe(cost.exact.after);
  });

  it('names the waiver of a waived finding, and what became of every waiver', async () => {
    const { findings, waivers } = printed(reportJson(await mixed()));
    expect(findings.find(({ entry }) => entry === 'growth-step')).toMatchObject({
      fails: false,
      waiver: {
        reason: 'one-off import of the spring survey',
        approvedBy: 'head of imagery',
        until: '2026-12-01',
      },
    });
    expect(waivers.map(({ state }) => state)).toEqual(['used', 'expired']);
  });

  it('says what a branch that raises its own limit would have got from its own policy', async () => {
    const report = printed(reportJson(await ownLimit()));
    expect(report).toMatchObject({
      verdict: 'fail',
      proposed: { verdict: 'pass' },
      policyChanges: [
        { direction: 'looser', name: 'imagery-limit', key: 'limit', from: '60.00', to: '900.00' },
      ],
    });
  });

  it('says what could not be judged, and where; no cost is known then', async () => {
    const report = printed(reportJson(await unjudgedSample()));
    expect(report).toMatchObject({ verdict: 'not judged', cost: null, findings: [], changes: [] });
    expect(report.problems).toMatchObject([
      {
        message: expect.stringContaining('plates-2'),
        place: { revision: 'head', file: 'storage/imagery.yaml', line: 10, column: 21 },
      },
      {
        message: expect.stringContaining('plates-33'),
        place: { revision: 'head', file: 'storage/imagery.yaml', line: 17, column: 5 },
      },
    ]);
  });

  it('is the same bytes twice', async () => {
    for (const sample of [mixed, ownLimit, still, unjudgedSample]) {
      expect(reportJson(await sample())).toBe(reportJson(await sample()));
    }
  });

  it('keeps hostile names to the letter, and shows a terminal nothing that steers it', async () => {
    const judged = await mixed();
    const failed = await unjudgedSample();
    fc.assert(
      fc.property(fc.array(hostile, { minLength: 1, maxLength: 6 }), (texts) => {
        for (const judgement of [withHostile(judged, texts), withHostileProblems(failed, texts)]) {
          const text = reportJson(judgement);
          expect(printed(text)).toEqual(judgementReport(judgement));
          expect(text).not.toMatch(
            /(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Default_Ignorable_Code_Point}]|##\[/u,
          );
          expect(text).not.toMatch(/^\s*::/m);
        }
      }),
      { numRuns: 60 },
    );
    const report = judgementReport(withHostile(judged, ['a\ud800', '__proto__']));
    expect(report.findings.map(({ message }) => message)).toEqual(['a\ud800', '__proto__']);
  });
});

describe('the published schema', () => {
  it('describes every property', () => {
    const bare: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (typeof value !== 'object' || value === null) return;
      for (const [key, child] of Object.entries(value)) {
        if (key === 'properties') {
          for (const [name, property] of Object.entries<Record<string, unknown>>(child)) {
            if (typeof property.description !== 'string') bare.push(`${path}/${name}`);
          }
        }
        walk(child, `${path}/${key}`);
      }
    };
    walk(judgementSchema, '');
    expect(bare).toEqual([]);
  });
});
