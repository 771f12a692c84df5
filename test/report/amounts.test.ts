import { describe, expect, it } from 'vitest';
import { bytes } from '../../src/estate/size.ts';
import { money } from '../../src/price/money.ts';
import {
  showAmount,
  showDifference,
  showFreeShare,
  showMeasure,
  showRemaining,
  showUsedShare,
} from '../../src/report/model/amounts.ts';

const room = (capacity: bigint, taken: bigint) =>
  ({
    layer: 'volume-group',
    subject: { kind: 'volume-group', name: 'plates' },
    belonging: { team: undefined, site: undefined, labels: {} },
    place: { file: 'storage/imagery.yaml', line: 1, column: 1 },
    measure: 'bytes',
    capacity,
    taken,
    free: capacity - taken,
  }) as const;

describe('amounts as people read them', () => {
  it('have the decimals of their currency (ISO 4217 minor units)', () => {
    expect(showAmount(money('1234.5'), 'EUR')).toBe('1234.50 EUR');
    expect(showAmount(money('1234.5'), 'JPY')).toBe('1235 JPY');
    expect(showAmount(money('1234.5'), 'KWD')).toBe('1234.500 KWD');
  });

  it('show a difference with its sign, and never call a small one nothing', () => {
    expect(showDifference(money('30'), 'EUR')).toBe('+30.00 EUR');
    expect(showDifference(money('-12.5'), 'EUR')).toBe('-12.50 EUR');
    expect(showDifference(money('0'), 'EUR')).toBe('0.00 EUR');
    expect(showDifference(money('0.004'), 'EUR')).toBe('under 0.01 EUR more');
    expect(showDifference(money('-0.004'), 'EUR')).toBe('under 0.01 EUR less');
    expect(showDifference(money('0.4'), 'JPY')).toBe('under 1 JPY more');
  });

  it('show a limit that is just reached as held, and one broken by less than a minor unit as broken', () => {
    expect(showRemaining(money('120'), money('100'), 'EUR')).toBe('20.00 EUR');
    expect(showRemaining(money('120'), money('120'), 'EUR')).toBe('none');
    expect(showRemaining(money('120'), money('120.001'), 'EUR')).toBe('over by under 0.01 EUR');
    expect(showRemaining(money('120'), money('119.999'), 'EUR')).toBe('under 0.01 EUR');
    expect(showRemaining(money('120'), money('150'), 'EUR')).toBe('over by 30.00 EUR');
  });

  it('show room, and the lack of it', () => {
    expect(showMeasure('bytes', bytes(1536n << 30n))).toBe('1.5 TiB');
    expect(showMeasure('slots', 1n)).toBe('1 slot');
    expect(showMeasure('volumes', -3n)).toBe('3 volumes short');
    expect(showFreeShare(room(1000n, 1n))).toBe('99.9 %');
    expect(showFreeShare(room(10_000n, 1n))).toBe('99.9 %');
    expect(showFreeShare(room(100n, 100n))).toBe('0 %');
    expect(showFreeShare(room(1000n, 1005n))).toBe('-0.5 %');
    expect(showFreeShare(room(80n, 100n))).toBe('-25 %');
    expect(showFreeShare(room(0n, 0n))).toBe('none');
  });

  it('show what is used of a layer as the rest of what is free, a little never as nothing, nearly all never as all', () => {
    expect(showUsedShare(room(1000n, 125n))).toBe('12.5 %');
    expect(showFreeShare(room(1000n, 125n))).toBe('87.5 %');
    expect(showUsedShare(room(1000n, 0n))).toBe('0 %');
    expect(showUsedShare(room(1000n, 1000n))).toBe('100 %');
    expect(showUsedShare(room(100_000n, 1n))).toBe('0.1 %');
    expect(showUsedShare(room(100_000n, 99_999n))).toBe('99.9 %');
    expect(showUsedShare(room(1000n, 1005n))).toBe('100.5 %');
    expect(showUsedShare(room(0n, 0n))).toBe('none');
  });
});
