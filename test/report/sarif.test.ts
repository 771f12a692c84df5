import { randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import type { Log, Result, Run } from 'sarif';
import { describe, expect, it } from 'vitest';
import { visible } from '../../src/base/visible.ts';
import type { Finding, Judged } from '../../src/policy/judgement.ts';
import { hostLimits, reportSarif } from '../../src/report/sarif.ts';
import { hostile } from './hostile.ts';
import { mixed, ownLimit, still, unjudgedSample, withHostile, withHostileProblems } from './sample.ts';

/** The OASIS schema, with the one correction of errata 01 that fixtures/README.md tells of. */
function oasisSchema(): Record<string, unknown> {
  const schema = JSON.parse(
    readFileSync(join(import.meta.dirname, 'fixtures/sarif-schema-2.1.0.json'), 'utf8'),
  );
  const { properties } = schema.definitions.suppression;
  properties.status = properties.state;
  delete properties.state;
  return schema;
}

/** RFC 3986, appendix A: the characters of a URI, and a scheme where it is not relative. */
const uriCharacters = "(?:[A-Za-z0-9\\-._~:/?#[\\]@!$&'()*+,;=]|%[0-9A-Fa-f]{2})*";

const ajv = new Ajv({ allErrors: true, strict: false });
ajv.addFormat('uri-reference', new RegExp(`^${uriCharacters}$`));
ajv.addFormat('uri', new RegExp(`^[A-Za-z][A-Za-z0-9+.-]*:${uriCharacters}$`));
ajv.addFormat('date-time', /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?Z$/);
const isSarif = ajv.compile<Log>(oasisSchema());

/** The one run of a report that the OASIS schema accepts. */
function runOf(text: string): Run {
  const value: unknown = JSON.parse(text);
  const valid = isSarif(value);
  expect(isSarif.errors ?? []).toEqual([]);
  if (!valid) throw new Error('not SARIF');
  const [run] = value.runs;
  if (run === undefined || value.runs.length > 1) throw new Error('not one run');
  return run;
}

const resultsOf = (run: Run): readonly Result[] => run.results ?? [];

/** A message as a viewer shows it: doubled braces are one (3.11.5). */
const shownText = (text: string | undefined): string =>
  (text ?? '').replaceAll(/\{\{|\}\}/g, (braces) => braces.charAt(0));

describe('a judgement as SARIF 2.1.0', () => {
  it('holds every finding, with its level, its baseline state and its very place', async () => {
    const judged = await mixed();
    const results = resultsOf(runOf(reportSarif(judged)));
    expect(results).toHaveLength(judged.findings.length);
    expect(new Set(results.map(({ baselineState }) => baselineState))).toEqual(
      new Set(['new', 'unchanged', 'absent']),
    );
    expect(results.find(({ ruleId }) => ruleId === 'no-shrink')).toMatchObject({
      level: 'error',
      baselineState: 'new',
      message: { text: expect.stringContaining('3,687,091,200 bytes') },
      locations: [
        {
          physicalLocation: {
            artifactLocation: { uri: 'storage/imagery.yaml', uriBaseId: '%SRCROOT%' },
            region: { startLine: 8, startColumn: 25 },
          },
        },
      ],
    });
  });

  it('points each result at its rule, with what it refuses, why, and what to do', async () => {
    const run = runOf(reportSarif(await mixed()));
    const rules = run.tool.driver.rules ?? [];
    for (const { ruleId, ruleIndex } of resultsOf(run)) expect(rules[ruleIndex ?? -1]?.id).toBe(ruleId);
    expect(rules.find(({ id }) => id === 'imagery-limit')).toMatchObject({
      name: 'max-monthly-spend',
      defaultConfiguration: { level: 'error' },
      help: { text: expect.stringMatching(/\S/), markdown: expect.stringMatching(/\S/) },
    });
  });

  it('shows a waived finding as suppressed with its reason, and every other as not suppressed', async () => {
    const results = resultsOf(runOf(reportSarif(await mixed())));
    const suppressed = results.filter(({ suppressions = [] }) => suppressions.length > 0);
    expect(suppressed.map(({ ruleId }) => ruleId)).toEqual(['growth-step']);
    expect(suppressed[0]?.suppressions).toMatchObject([
      { kind: 'external', status: 'accepted', justification: 'one-off import of the spring survey' },
    ]);
    expect(results.every(({ suppressions }) => Array.isArray(suppressions))).toBe(true);
  });

  it('says of what is gone that its place is on the base', async () => {
    const results = resultsOf(runOf(reportSarif(await mixed())));
    const gone = results.find(({ ruleId }) => ruleId === 'deletion-prepared');
    expect(gone?.properties?.revision).toBe('base');
    expect(gone?.locations?.[0]?.message?.text).toContain('base');
  });

  it('knows a finding again when lines are added above it, and another subject from it', async () => {
    const judged = await mixed();
    const moved = judged.findings.map(
      (finding): Finding => ({
        ...finding,
        message: `${finding.message}, more or less`,
        place: { ...finding.place, line: finding.place.line + 7 },
      }),
    );
    const prints = (text: string): readonly unknown[] =>
      resultsOf(runOf(text)).map(({ partialFingerprints }) => partialFingerprints);
    const known = prints(reportSarif(judged));
    expect(prints(reportSarif({ ...judged, findings: moved }))).toEqual(known);
    expect(new Set(known.map((print) => JSON.stringify(print))).size).toBe(judged.findings.length);
  });

  it('says that a run that was not judged did not succeed, and what stood in its way', async () => {
    const run = runOf(reportSarif(await unjudgedSample()));
    expect(run.results).toEqual([]);
    expect(run.invocations).toMatchObject([
      {
        executionSuccessful: false,
        toolExecutionNotifications: [
          {
            level: 'error',
            message: { text: expect.stringContaining('plates-2') },
            locations: [{ physicalLocation: { region: { startLine: 10, startColumn: 21 } } }],
          },
          {
            level: 'error',
            message: { text: expect.stringContaining('plates-33') },
            locations: [{ physicalLocation: { region: { startLine: 17, startColumn: 5 } } }],
          },
        ],
      },
    ]);
    expect(runOf(reportSarif(await still())).invocations).toEqual([{ executionSuccessful: true }]);
  });

  it('names the root of the repository where it is told', async () => {
    const judged = await still();
    expect(runOf(reportSarif(judged)).originalUriBaseIds?.['%SRCROOT%']?.uri).toBeUndefined();
    const told = runOf(reportSarif(judged, { repositoryRoot: 'file:///survey/', toolVersion: '9.8.7' }));
    expect(told.originalUriBaseIds?.['%SRCROOT%']?.uri).toBe('file:///survey/');
    expect(told.tool.driver.version).toBe('9.8.7');
  });

  it('is the same bytes twice', async () => {
    for (const sample of [mixed, ownLimit, still, unjudgedSample]) {
      expect(reportSarif(await sample())).toBe(reportSarif(await sample()));
    }
  });

  it('parses to the same findings whatever their names hold, with no link and no placeholder in them', async () => {
    const judged = await mixed();
    const failed = await unjudgedSample();
    const texts = fc.uniqueArray(hostile, { minLength: 1, maxLength: 6, selector: visible });
    fc.assert(
      fc.property(texts, (names) => {
        const judgement = withHostile(judged, names);
        const results = resultsOf(runOf(reportSarif(judgement)));
        expect(
          results.map(({ properties, suppressions = [] }) => ({
            subject: properties?.subject,
            facet: properties?.facet,
            waived: suppressions.length > 0,
          })),
        ).toEqual(
          judgement.findings.map(({ subject, facet, waiver }) => ({
            subject,
            facet,
            waived: waiver !== undefined,
          })),
        );
        for (const [index, { message, locations, ruleId }] of results.entries()) {
          const name = names[index] ?? '';
          const shown = visible(name).replaceAll('](', ']\\u{28}');
          expect(ruleId).toBe(visible(name));
          expect(shownText(message.text)).toBe(`${shown}\n\n${shown}`);
          expect((message.text ?? '').replaceAll(/\{\{|\}\}/g, '')).not.toMatch(/[{}]|\]\(/);
          expect(decodeURIComponent(locations?.[0]?.physicalLocation?.artifactLocation?.uri ?? '')).toBe(
            name.replaceAll(/\p{Cs}/gu, '\ufffd'),
          );
        }
        const [invocation] = runOf(reportSarif(withHostileProblems(failed, names))).invocations ?? [];
        expect(invocation?.toolExecutionNotifications).toHaveLength(names.length);
      }),
      { numRuns: 60 },
    );
  });
});

describe('what a code host takes of an upload', () => {
  const copies = async (count: number, message = ''): Promise<Judged> => {
    const judged = await mixed();
    const [finding] = judged.findings;
    if (finding === undefined) throw new Error('the sample has findings');
    const fixed = { ...finding, fails: false, baselineState: 'absent' as const, message: 'fixed' };
    const failing = Array.from({ length: count }, (_, index) => ({
      ...finding,
      fails: true,
      message: `${index} ${message}${message === '' ? '' : randomBytes(600).toString('base64')}`,
    }));
    return { ...judged, findings: [fixed, ...failing] };
  };

  it('is not exceeded: 25,000 results are kept, the failing first, and what is left out is counted', async () => {
    const judged = await copies(hostLimits.results);
    const run = runOf(reportSarif(judged));
    expect(resultsOf(run)).toHaveLength(25_000);
    expect(resultsOf(run).every(({ baselineState }) => baselineState !== 'absent')).toBe(true);
    expect(run.properties).toMatchObject({ leftOut: 1 });
    const [notice] = run.invocations?.[0]?.toolExecutionNotifications ?? [];
    expect(notice?.message.text).toMatch(/^1 finding is left out here.*25,000 results and 10 MB/);
    expect(run.tool.driver.notifications?.[notice?.descriptor?.index ?? -1]?.id).toBe('findings-left-out');
  });

  it('is not exceeded in bytes either, as gzip makes them', async () => {
    const judged = await copies(20_000, 'random ');
    const text = reportSarif(judged);
    expect(gzipSync(text).byteLength).toBeLessThanOrEqual(10_000_000);
    const run = runOf(text);
    expect(Number(run.properties?.leftOut) + resultsOf(run).length).toBe(20_001);
    expect(resultsOf(run).length).toBeGreaterThan(1_000);
  });

  it('binds nobody who asks for all', async () => {
    const judged = await copies(hostLimits.results);
    expect(resultsOf(runOf(reportSarif(judged, { all: true })))).toHaveLength(25_001);
  });
});
