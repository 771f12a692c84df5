import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { visible } from '../../src/base/visible.ts';
import { textTable, widthOf, wrapped } from '../../src/report/table.ts';
import { hostile } from './hostile.ts';

describe('text wrapped to a screen', () => {
  it('breaks between words, and within one that is too long', () => {
    expect(wrapped('volume plates-1 grows', 12)).toEqual(['volume', 'plates-1', 'grows']);
    expect(wrapped('volume plates-1 grows', 15)).toEqual(['volume plates-1', 'grows']);
    expect(wrapped('a 0123456789abc', 10)).toEqual(['a', '0123456789', 'abc']);
    expect(wrapped('測量局測量局', 8)).toEqual(['測量局測', '量局']);
    expect(wrapped('', 10)).toEqual(['']);
  });

  it('loses nothing, adds nothing and keeps the width', () => {
    fc.assert(
      fc.property(hostile, fc.integer({ min: 8, max: 60 }), (text, width) => {
        const shown = visible(text);
        const lines = wrapped(shown, width);
        for (const line of lines) expect(stringWidth(line.trimEnd()), line).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(shown.replaceAll(' ', ''));
      }),
      { numRuns: 500 },
    );
  });

  it('measures as string-width does', () => {
    const signs = fc.string({ unit: fc.constantFrom(...'aZ ~≈×·…’█▒░') });
    fc.assert(fc.property(signs, (text) => widthOf(text) === stringWidth(text)));
    fc.assert(fc.property(hostile, (text) => widthOf(visible(text)) === stringWidth(visible(text))));
  });

  // A step that grew with the square of the length took minutes for the first of these.
  it('does not choke on a name as long as a file', () => {
    expect(wrapped('x'.repeat(1_000_000), 100).length).toBe(10_000);
    expect(wrapped('測'.repeat(100_000), 100).length).toBe(2_000);
  });
});

describe('a table', () => {
  const table = {
    columns: [
      { title: 'Team', align: 'left' },
      { title: 'After', align: 'right' },
    ],
    rows: [
      ['imagery', '62.16 EUR'],
      ['測量', '127.63 EUR'],
    ],
  } as const;

  it('lines up its columns, wide characters too', () => {
    expect(textTable(table, 40)).toEqual([
      'Team          After',
      'imagery   62.16 EUR',
      '測量     127.63 EUR',
    ]);
  });

  it('is stacked where it does not fit', () => {
    expect(textTable(table, 18)).toEqual([
      'imagery',
      '  After  62.16 EUR',
      '測量',
      '  After  127.63',
      '         EUR',
    ]);
  });
});
