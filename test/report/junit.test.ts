import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { validateXML } from 'xmllint-wasm';
import { reportJunit, xmlText } from '../../src/report/junit.ts';
import { hostile } from './hostile.ts';
import { mixed, ownLimit, still, unjudgedSample, withHostile, withHostileProblems } from './sample.ts';

/** The schema of a CI server's own reader of test reports; fixtures/README.md names its source. */
const schema = readFileSync(join(import.meta.dirname, 'fixtures/junit-10.xsd'), 'utf8');

/** What libxml2 holds against the reports: nothing where they are well formed and as the schema has them. */
async function faults(...reports: readonly string[]): Promise<readonly string[]> {
  const result = await validateXML({
    xml: reports.map((contents, index) => ({ fileName: `report-${index}.xml`, contents })),
    schema: [schema],
  });
  return result.errors.map(({ rawMessage }) => rawMessage);
}

interface Element {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly content: string;
}

/** The five references of XML 1.0 (4.6), and characters by number; each once, so that `&amp;lt;` is `&lt;`. */
const named: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

const decoded = (text: string): string =>
  text.replace(/&(?:([a-z]+)|#x([0-9A-Fa-f]+)|#(\d+));/g, (whole, name = '', hex, number) =>
    hex === undefined && number === undefined
      ? (named[name] ?? whole)
      : String.fromCodePoint(Number.parseInt(hex ?? number, hex === undefined ? 10 : 16)),
  );

/**
 * The elements of one name, none of which lies in another of it. A few expressions will do: that the report is well
 * formed libxml2 says, and the writing library's own reader decodes `&amp;lt;` twice.
 */
function elements(xml: string, tag: string): readonly Element[] {
  const pattern = new RegExp(`<(${tag})((?: [\\w-]+="[^"<]*")*)(?:/>|>([^]*?)</\\1>)`, 'g');
  return [...xml.matchAll(pattern)].map(([, name = '', attributes = '', content = '']) => ({
    tag: name,
    attributes: Object.fromEntries(
      [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key, value = '']) => [key, decoded(value)]),
    ),
    content,
  }));
}

function suiteOf(report: string): Element {
  const [suite] = elements(report, 'testsuite');
  if (suite === undefined) throw new Error('no suite');
  return suite;
}

const casesOf = (report: string): readonly (Element & { readonly children: readonly Element[] })[] =>
  elements(report, 'testcase').map((element) => ({
    ...element,
    children: elements(element.content, 'failure|error|skipped|system-out'),
  }));

const holding = (report: string, tag: string): readonly string[] =>
  casesOf(report)
    .filter(({ children }) => children.some((child) => child.tag === tag))
    .map(({ attributes }) => `${attributes.classname}: ${attributes.name}`);

describe('a judgement as JUnit XML', () => {
  it('is as the schema has it, for every verdict', async () => {
    const samples = [await mixed(), await ownLimit(), await still(), await unjudgedSample()];
    expect(await faults(...samples.map(reportJunit))).toEqual([]);
    // The check itself can fail.
    expect(await faults('<testsuites><testsuite/></testsuites>')).not.toEqual([]);
  });

  it('fails where the gate fails, and only there', async () => {
    const judged = await mixed();
    const report = reportJunit(judged);
    expect(holding(report, 'failure')).toEqual([
      'group-travels-whole: volume-group plates',
      'imagery-limit: team imagery',
      'no-shrink: volume plate-scanner-root',
    ]);
    expect(suiteOf(report).attributes).toMatchObject({
      tests: '8',
      failures: '3',
      errors: '0',
      skipped: '1',
    });
    expect(holding(reportJunit(await still()), 'failure')).toEqual([]);
  });

  it('shows a waived finding as skipped, with who let it stand and why', async () => {
    const report = reportJunit(await mixed());
    expect(holding(report, 'skipped')).toEqual(['growth-step: volume plates-1']);
    const [waived] = casesOf(report).flatMap(({ children }) =>
      children.filter(({ tag }) => tag === 'skipped'),
    );
    expect(waived?.attributes.message).toBe(
      'waived until 2026-12-01, approved by head of imagery: one-off import of the spring survey. The waiver has no ceiling: it covers what this branch does, and no more than that afterwards.',
    );
  });

  it('has a case for a rule that finds nothing, so that nobody takes it for switched off', async () => {
    const silent = casesOf(reportJunit(await mixed())).filter(({ children }) => children.length === 0);
    expect(silent.map(({ attributes }) => attributes.classname)).toEqual(['same-site']);
  });

  it('is an error where nothing was judged, even with no problem named', async () => {
    const failed = await unjudgedSample();
    expect(holding(reportJunit(failed), 'error')).toEqual([
      'not judged: storage/imagery.yaml:10:21',
      'not judged: storage/imagery.yaml:17:5',
    ]);
    const unnamed = reportJunit({ ...failed, problems: [] });
    expect(suiteOf(unnamed).attributes).toMatchObject({ tests: '1', errors: '1' });
    expect(await faults(unnamed)).toEqual([]);
  });

  it('is the same bytes twice', async () => {
    for (const sample of [mixed, ownLimit, still, unjudgedSample]) {
      expect(reportJunit(await sample())).toBe(reportJunit(await sample()));
    }
  });

  it('parses to the same findings whatever their names hold', async () => {
    const judged = await mixed();
    const failed = await unjudgedSample();
    const reports: string[] = [];
    fc.assert(
      fc.property(fc.array(hostile, { minLength: 1, maxLength: 6 }), (names) => {
        const judgement = withHostile(judged, names);
        const report = reportJunit(judgement);
        const found = casesOf(report).filter(({ attributes }) => attributes.name !== 'nothing found');
        expect(
          found.map(({ attributes, children: [first] }) => ({
            classname: attributes.classname,
            name: attributes.name,
            says: first?.tag === 'failure' ? first.attributes.message : undefined,
            waived: first?.tag === 'skipped',
          })),
        ).toEqual(
          judgement.findings.map(({ entry, subject, message, facet, fails, waiver }) => ({
            classname: xmlText(entry),
            name: xmlText(`${subject.kind} ${subject.name}, ${facet}`),
            says: fails ? xmlText(message) : undefined,
            waived: waiver !== undefined,
          })),
        );
        reports.push(report, reportJunit(withHostileProblems(failed, names)));
      }),
      { numRuns: 40 },
    );
    expect(await faults(...reports)).toEqual([]);
  });

  it('keeps a name that looks like a reference, such as &#0; or &lt;', async () => {
    const names = ['&#0;', '&lt;script&gt;', '&volumes;', '&amp;amp;', '&#x26;', ']]>', '<!--', '<![CDATA['];
    const report = reportJunit(withHostile(await mixed(), names));
    expect(await faults(report)).toEqual([]);
    expect(casesOf(report).map(({ attributes }) => attributes.classname)).toEqual(names);
    expect(
      casesOf(report).map(({ children }) => decoded(children.at(-1)?.content ?? '').split('\n')[0]),
    ).toEqual(names);
  });

  it('writes no character that XML has no way of writing', () => {
    // XML 1.0 (fifth edition), production 2: Char.
    const illegal = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/u;
    fc.assert(fc.property(hostile, (text) => !illegal.test(xmlText(text))));
    expect(xmlText('a\u0000\ud800\ufffe\uffff]]>')).toBe('a\\u{0}\\u{D800}\\u{FFFE}\\u{FFFF}]]>');
  });
});
