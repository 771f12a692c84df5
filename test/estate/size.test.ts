import fc from 'fast-check';
import { unit as libraryUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { bytes, exactSize, parseSize, showSize, type Unit, unitBytes } from '../../src/estate/size.ts';

const size = (text: string): bigint => {
  const parsed = parseSize(text);
  if (typeof parsed !== 'bigint') throw new Error(parsed.why);
  return parsed;
};

const why = (text: string): string => {
  const parsed = parseSize(text);
  return typeof parsed === 'bigint' ? `read as ${parsed}` : parsed.why;
};

const units = Object.keys(unitBytes) as Unit[];

describe('units', () => {
  /** Source: mathjs 15, a general-purpose units library, which counts in bits; it knows all ten prefixes. */
  it.each(units)('%s is what a general-purpose units library says it is', (unit) => {
    expect(Number(unitBytes[unit])).toBe(libraryUnit(1, unit).toNumber('b') / 8);
  });

  /** Source: IEC 80000-13:2008, table of binary prefixes; SI brochure, 9th edition, table 7. Both from memory. */
  it('are powers of 1024 by IEC 80000-13 and of 1000 by the SI', () => {
    expect(['KiB', 'MiB', 'GiB', 'TiB', 'PiB'].map((unit) => size(`1 ${unit}`))).toEqual(
      [1n, 2n, 3n, 4n, 5n].map((power) => 1024n ** power),
    );
    expect(['kB', 'MB', 'GB', 'TB', 'PB'].map((unit) => size(`1 ${unit}`))).toEqual(
      [1n, 2n, 3n, 4n, 5n].map((power) => 1000n ** power),
    );
  });

  it('50 GB are 3,687,091,200 bytes fewer than 50 GiB', () => {
    expect(size('50 GiB') - size('50 GB')).toBe(3_687_091_200n);
  });
});

describe('reading a size', () => {
  it('takes a fraction only where it comes to whole bytes', () => {
    expect(size('1.5 TiB')).toBe(1_649_267_441_664n);
    expect(size('0.5 kB')).toBe(500n);
    expect(why('0.3 KiB')).toBe('0.3 KiB is not a whole number of bytes');
  });

  it('says of a bare number that the two units it may mean are different sizes', () => {
    expect(why('50')).toBe('50 has no unit; 50 GiB and 50 GB are different sizes');
  });

  it('offers the unit that was meant where only its letters are in the wrong case', () => {
    expect(why('50 gib')).toBe('gib is not a unit of size; GiB is');
    expect(why('50 KB')).toBe('KB is not a unit of size; kB is');
    expect(why('50 G')).toContain('the units are KiB, MiB');
  });

  it('never reads a bare number, nor anything with another sign, exponent or separator', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.integer().map(String), fc.float().map(String), fc.bigInt().map(String)),
        (text) => {
          expect(typeof parseSize(text)).toBe('object');
        },
      ),
    );
    for (const text of [
      '',
      ' ',
      'GiB',
      '1,000 GiB',
      '1_000 GiB',
      '+5 GiB',
      '5 GiB ',
      '٥ GiB',
      '1e3 GiB',
      '5\nGiB',
      '0x5 GiB',
      '1. GiB',
    ]) {
      expect(typeof parseSize(text)).toBe('object');
    }
  });

  it('reads what it can write in every unit, exactly', () => {
    fc.assert(
      fc.property(fc.bigInt(0n, 10n ** 15n - 1n), fc.constantFrom(...units), (count, unit) => {
        expect(size(`${count} ${unit}`)).toBe(count * unitBytes[unit]);
        expect(size(`${count}${unit}`)).toBe(count * unitBytes[unit]);
      }),
    );
  });
});

describe('showing a size', () => {
  it('is as somebody would have written it, and rounded only where no unit takes it', () => {
    for (const text of ['50 GiB', '50 GB', '1.5 TiB', '1100 GiB', '0.5 kB', '2.25 MiB', '1 TB'])
      expect(showSize(bytes(size(text)))).toBe(text === '0.5 kB' ? '500 B' : text);
    expect(showSize(bytes(size('51136 MiB')))).toBe('≈49.94 GiB');
    expect(showSize(bytes(size('50 GiB') - size('50 GB')))).toBe('≈3.43 GiB');
    expect(showSize(bytes(1000n))).toBe('1000 B');
    expect(showSize(bytes(-(1n << 30n)))).toBe('-1 GiB');
  });

  it('that is to be typed in is exact, whatever it is', () => {
    expect(exactSize(bytes(size('51136 MiB')))).toBe('51136 MiB');
    expect(exactSize(bytes(size('1100 GiB')))).toBe('1100 GiB');
    expect(exactSize(bytes(1n))).toBe('0.001 kB');
    fc.assert(
      // An odd number of bytes beyond an exabyte has more digits than a file may write.
      fc.property(fc.oneof(fc.bigInt(0n, 10n ** 18n - 1n), fc.bigInt(0n, 1n << 14n)), (count) => {
        expect(size(exactSize(bytes(count)))).toBe(count);
      }),
    );
  });

  it('what is shown without ≈ is read back to the very bytes, and what is not is within half its last digit', () => {
    fc.assert(
      fc.property(fc.bigInt(1024n, 1n << 60n), (count) => {
        const shown = showSize(bytes(count));
        const [, number = '', unit = ''] = /^≈?([0-9.]+) (.*)$/.exec(shown) ?? [];
        if (!shown.startsWith('≈')) expect(size(shown)).toBe(count);
        else {
          const perUnit = Number(unitBytes[unit as Unit]);
          expect(Math.abs(Number(number) * perUnit - Number(count)) / perUnit).toBeLessThan(0.0051);
        }
      }),
    );
  });
});
