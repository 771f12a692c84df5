import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Composer, Parser } from 'yaml';
import { readDocument } from '../../src/read/document.ts';
import { problemsOf } from '../estate/builder.ts';
import { fixtures, suiteTexts } from './texts.ts';

const told = (text: string): readonly string[] =>
  problemsOf(readDocument(text, 'a.yaml')).map(
    ({ place, message }) =>
      `${place?.line}:${place?.column} ${message.replace('the YAML is not valid here: ', '')}`,
  );

describe('a slip in YAML is told in plain words, where it is mended', () => {
  it.each([
    ['volumes:\n\tplates-1: 1\n', '2:1 a tab indents this line'],
    ['team imagery\nvolumes:\n  a: 1\n', '1:1 a colon and a space are missing after a key: team imagery'],
    ['team:imagery\nvolumes:\n  a: 1\n', '1:1 a space is missing after the colon: team:imagery'],
    ['volumes:\n  a: 1\nteam imagery\n', '3:1 a colon and a space are missing after a key: team imagery'],
    ['volumes:\n  plates-1\n    size: 1 GiB\n', '2:3 a colon and a space are missing after a key: plates-1'],
    ['servers:\n  press { boot: root, type: small }\n', '2:3 a colon is missing behind press'],
    ['servers:\n  press [ boot: root, type: small ]\n', '2:3 a colon is missing behind press'],
    ['reason: kept: for the audit\n', '1:9 a second colon stands on this line: kept: for the audit'],
    ['a:\n  reason: "kept\n  b: 2\n', '2:11 the quote " that begins here is not closed'],
    ["a:\n  reason: 'kept\n  b: 2\n", "2:11 the quote ' that begins here is not closed"],
    ["reason: 'it's kept'\n", "1:13 s kept' stands after the end of a value"],
    ['size: "50" GiB\n', '1:12 GiB stands after the end of a value'],
    ['volumes:\n  a: { size: 1 GiB\n  b: { size: 1 GiB }\n', '2:6 the { that begins here is not closed'],
    ['use: [starter\nrules:\n  - { rule: x }\n', '1:6 the [ that begins here is not closed'],
    ['a: { b: [c }\n', '1:9 the [ that begins here is not closed'],
    ['use: [starter]]\nrules: []\n', '1:15 this ] closes nothing that is open'],
    ['a: { b: 1 c: 2 }\n', '1:9 a comma is missing between two entries in brackets'],
    ['a: { b: 1,, c: 2 }\n', '1:11 there is nothing before this comma'],
    ['a: [\n  - b\n]\n', '2:3 an item begins with a dash within brackets'],
    ['owner: @imagery\n', '1:8 text cannot begin with @'],
    ['owner: `imagery`\n', '1:8 text cannot begin with `'],
    ['reason: %x\n', '1:9 text cannot begin with %'],
    ['volumes:\n  a: 1\n   b: 2\n', '2:6 the next line is indented deeper, and 1 is a value already'],
    ['volumes:\n   a: 1\n  b: 2\n', '3:1 this line is indented otherwise than those it belongs with'],
    ['a:\n  - 1\n - 2\n', '3:1 an item of a list stands among keys'],
    ['a:\n  - b: 1\n   c: 2\n', '3:1 this line is no item of the list above it'],
    ['members: - a\n', '1:10 a list begins on the line of its key'],
    ['reason: | kept\n', '1:11 text stands on the line of the | or > that begins it'],
    ['size: "50"# GiB\n', '1:11 a space is missing before the #'],
    ['path: "C:\\data"\n', '1:10 a backslash in double quotes does not go with what follows it'],
    ['reason: * kept\n', '1:9 anchors (&), aliases (*) and tags (!) are not supported'],
    ['%HOUSE\n---\na: 1\n', '1:1 a line that begins with % is not supported'],
    ['%YAML 1.2\na: 1\n', '2:1 a line --- is missing after the lines that begin with %'],
  ])('%j', (text, first) => {
    expect(told(text)[0]).toBe(first);
  });
});

/** What the library itself says of a text. */
function ofTheLibrary(text: string): readonly string[] {
  const composer = new Composer({ version: '1.2', schema: 'core', uniqueKeys: false, prettyErrors: false });
  return [...composer.compose(new Parser().parse(text), true, text.length)].flatMap(({ errors, warnings }) =>
    [...errors, ...warnings].map(({ message }) => message),
  );
}

function expectOwnWords(text: string): void {
  const problems = problemsOf(readDocument(text, 'a.yaml'));
  const theirs = problems.length === 0 ? [] : ofTheLibrary(text);
  const lines = text.split('\n');
  for (const { place, message, advice } of problems) {
    for (const each of theirs) expect(message + advice).not.toContain(each.replace(/\s+/g, ' '));
    expect(message + advice).not.toMatch(/undefined|token|scalar|implicit|flow|node|block/i);
    expect(advice).toMatch(/\.$/);
    expect(place?.line ?? 0).toBeLessThanOrEqual(lines.length);
  }
}

describe('no message is the library’s own', () => {
  it('for the texts of the YAML test suite', () => {
    let refused = 0;
    for (const text of suiteTexts) {
      // What a text says of itself may be any of these words.
      const problems = problemsOf(readDocument(text, 'a.yaml'));
      refused += problems.length > 0 ? 1 : 0;
      for (const each of ofTheLibrary(text))
        for (const { message, advice } of problems)
          expect(message + advice).not.toContain(each.replace(/\s+/g, ' '));
    }
    expect(refused).toBeGreaterThan(50);
  });

  it('for a file in which something was put in or left out', () => {
    const slip = fc.constantFrom(...'[]{}:,-#&*!|>\'"%@`\t \n?x', '\n  ', ': ', '- ', '');
    const short = fixtures.filter(
      (text) => text.length < 4_000 && !/token|scalar|flow|node|block/i.test(text),
    );
    expect(short.length).toBeGreaterThan(10);
    fc.assert(
      fc.property(fc.constantFrom(...short), fc.nat(), fc.nat(3), slip, (text, at, less, put) => {
        const where = at % text.length;
        expectOwnWords(text.slice(0, where) + put + text.slice(where + less));
      }),
      { numRuns: 2_000 },
    );
  });
});
