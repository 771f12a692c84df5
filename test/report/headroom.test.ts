import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layersOf } from '../../src/capacity/layers.ts';
import { emptyEstate } from '../../src/estate/estate.ts';
import { reportHeadroom } from '../../src/report/headroom.ts';
import { estateOf } from '../estate/builder.ts';

const layers = (size: string): string =>
  reportHeadroom(
    {
      estate: emptyEstate,
      rooms: [],
      accounts: layersOf(
        estateOf(`volumes:
  plates-1: { size: 40 GiB, tier: bulk }
volume-groups:
  plates: { members: [plates-1], file-systems: { /plates: { size: ${size}, type: xfs } } }
`),
        new Map(),
      ),
      idle: [],
      currency: 'EUR',
      on: '2026-11-25',
    },
    'text',
    { width: 140, colour: false },
  );

describe('the table of layers', () => {
  it('says by how much a group is given more than it has, and shows no negative capacity', () => {
    // 40 GiB in extents of 4 MiB, less one for the group itself: 60 GiB is over by 20 GiB and 4 MiB.
    expect(layers('60 GiB')).toMatch(/plates +40\.00 +0\.00 +60\.00 +over by 20\.00$/m);
    expect(layers('60 GiB')).not.toContain('-20');
    // 9.996 GiB: rounded so that the row adds up.
    expect(layers('30 GiB')).toMatch(/plates +40\.00 +0\.00 +30\.00 +10\.00$/m);
  });

  it('draws all of what is bought in one bar, each part with a mark of its own', () => {
    const bar = (text: string): string => /plates +([█▒░?·]{40}(?: over)?)/.exec(text)?.[1] ?? '';
    // 30 of 40 GiB are given, less what xfs keeps; a quarter of the bar is given to nobody.
    expect(bar(layers('30 GiB'))).toMatch(/^█{28,30}░{0,2}·{10}$/);
    expect(bar(layers('60 GiB'))).toMatch(/over$/);
  });
});

describe('a layer with a limit', () => {
  const row = (capacity: bigint, taken: bigint): string => {
    const room = {
      layer: 'attachment-slots',
      subject: { kind: 'server', name: 'sounder-1' },
      belonging: { team: undefined, site: undefined, labels: {} },
      place: { file: 'storage/soundings.yaml', line: 1, column: 1 },
      measure: 'slots',
      capacity,
      taken,
      free: capacity - taken,
    } as const;
    const overview = {
      estate: emptyEstate,
      rooms: [room],
      accounts: [],
      idle: [],
      currency: 'EUR',
      on: '2026-11-25',
    };
    const text = reportHeadroom(overview, 'text', { width: 140, colour: false });
    return text.split('\n').find((line) => /^ {2}sounder-1 /.test(line)) ?? '';
  };

  const layer = fc
    .bigInt(1n, 1000n)
    .chain((capacity) => fc.tuple(fc.constant(capacity), fc.bigInt(0n, capacity)));

  it('has its share and its bar both of what is used', () => {
    fc.assert(
      fc.property(layer, ([capacity, used]) => {
        const [, share = '', bar = ''] = /([\d.]+) % {2}([█·]+)$/.exec(row(capacity, used)) ?? [];
        expect(bar).toHaveLength(20);
        const drawn = bar.replaceAll('·', '').length * 5;
        // A mark is a twentieth, rounded; the share is rounded to a tenth of a per cent.
        expect(Math.abs(Number(share) - drawn)).toBeLessThanOrEqual(2.5 + 0.1);
        expect(Math.abs(Number(share) - (Number(used) * 100) / Number(capacity))).toBeLessThanOrEqual(0.1);
      }),
    );
  });

  it('of which more is used than there is says so, and by how much', () => {
    expect(row(16n, 18n)).toMatch(/16 slots +2 slots short +18 slots +112\.5 % {2}█{20} over$/);
  });
});
