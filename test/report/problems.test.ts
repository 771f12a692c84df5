import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { pointedAt } from '../../src/report/excerpt.ts';
import { reportProblems } from '../../src/report/report.ts';
import { hostile } from './hostile.ts';

/** The character that the pointer stands under, told by display columns. */
function pointedCharacter([line, pointer]: readonly [string, string]): string | undefined {
  const at = stringWidth(pointer) - 1;
  let column = 0;
  for (const { segment } of new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(line)) {
    if (column === at) return segment;
    column += stringWidth(segment);
  }
  return undefined;
}

const columnOf = (source: string, character: string): number => source.indexOf(character) + 1;

describe('the pointer stands under the very character', () => {
  it.each([
    ['in a plain line', '  plates-1: { size: 5O GiB }', 'O'],
    ['behind tabs', '\tsize:\t\t5O GiB', 'O'],
    ['behind characters of two columns', 'owner: 測量局 # O', 'O'],
    ['behind one that takes two UTF-16 units', 'reason: 👩‍🚀⚓ O', 'O'],
    ['behind a combining accent', 'owner: ile\u0301 O', 'O'],
    ['behind a hidden character that is spelt out', 'name: \u202e\u200bO', 'O'],
    ['behind an escape', '\u001b[2J O', 'O'],
    ['at the first column', 'O: 1', 'O'],
  ])('%s', (_, source, character) => {
    expect(pointedCharacter(pointedAt(source, columnOf(source, character), 80))).toBe(character);
  });

  it('in a line far wider than the screen, which is cut on both sides', () => {
    const source = `${'a'.repeat(5_000)}O${'b'.repeat(5_000)}`;
    const shown = pointedAt(source, columnOf(source, 'O'), 40);
    expect(pointedCharacter(shown)).toBe('O');
    expect(shown[0]).toMatch(/^…a+Ob+…$/);
    expect(stringWidth(shown[0])).toBeLessThanOrEqual(40);
  });

  it('behind the last character where something is missing there', () => {
    expect(pointedAt('size:', 6, 40)).toEqual(['size:', '     ^']);
    expect(pointedAt('size:', 99, 40)).toEqual(['size:', '     ^']);
    expect(pointedAt('', 1, 40)).toEqual(['', '^']);
  });

  it('within the width, also behind one character that takes many to spell out', () => {
    // A woman astronaut: two emoji and the joiner between them (Unicode Technical Standard 51), spelt out as `\\u{200D}`.
    const before = '\u{1F469}\u{200D}\u{1F680}';
    const [line, pointer] = pointedAt(`${before}☞https://a.example`, before.length + 1, 30);
    expect(stringWidth(line)).toBeLessThanOrEqual(30);
    expect(line[pointer.length - 1]).toBe('☞');
  });

  it('whatever the line holds, within the width and with nothing unseen', () => {
    fc.assert(
      fc.property(hostile, hostile, fc.integer({ min: 30, max: 120 }), (before, after, width) => {
        const [line, pointer] = pointedAt(`${before}☞${after}`, before.length + 1, width);
        expect(line).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u);
        expect(line).not.toContain('::');
        expect(line).not.toContain('##[');
        expect(stringWidth(line)).toBeLessThanOrEqual(width);
        expect(pointer).toMatch(/^ *\^$/);
        expect(stringWidth(pointer)).toBeLessThanOrEqual(width + 1);
      }),
      { numRuns: 500 },
    );
  });
});

describe('problems', () => {
  const problems = [
    {
      place: { file: 'storage/ledger.yaml', line: 7, column: 3 },
      message: 'tire is not a key of a volume',
      advice: 'Did you mean tier?',
      excerpt: '  tire: bulk',
    },
    { message: 'the base main is not there', advice: 'Fetch it with `git fetch origin main`.' },
    {
      place: { file: 'storage/imagery.yaml', line: 12, column: 11 },
      revision: 'base' as const,
      message: '50 has no unit',
      advice: 'Write 50 GiB.',
      excerpt: '    size: 50',
    },
  ];

  it('come file by file, each with place, source line, pointer and advice; those of no file first', () => {
    expect(reportProblems(problems, { width: 80, colour: false })).toBe(`3 problems

Problems
  the base main is not there
    advice  Fetch it with \`git fetch origin main\`.

storage/imagery.yaml
  50 has no unit
    12:     size: 50
                  ^
    at      storage/imagery.yaml:12:11 already on main
    advice  Write 50 GiB.

storage/ledger.yaml
  tire is not a key of a volume
    7:   tire: bulk
         ^
    at      storage/ledger.yaml:7:3
    advice  Did you mean tier?
`);
  });

  it('forge no lines and steer no terminal', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        const place = { file: text, line: 1, column: 2 };
        const shown = reportProblems([{ place, message: text, advice: text, excerpt: text }], {
          width: 60,
          colour: false,
        });
        expect(shown.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u);
        expect(shown).not.toMatch(/^\s*::/m);
      }),
      { numRuns: 300 },
    );
  });
});
