import { describe, expect, it } from 'vitest';
import { layersOf } from '../../src/capacity/layers.ts';
import { reportHeadroom } from '../../src/report/headroom.ts';
import { estateOf } from '../estate/builder.ts';

const layers = (size: string): string =>
  reportHeadroom(
    {
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
    expect(layers('60 GiB')).toMatch(/plates +40\.00 +0\.00 +over by 20\.00 /);
    expect(layers('60 GiB')).not.toContain('-20');
    expect(layers('30 GiB')).toMatch(/plates +40\.00 +0\.00 +9\.99 /);
  });

  it('draws all of what is bought in one bar, each part with a mark of its own', () => {
    const bar = (text: string): string => /plates +([█▒░?·]{40}(?: over)?)/.exec(text)?.[1] ?? '';
    // 30 of 40 GiB are given, less what xfs keeps; a quarter of the bar is given to nobody.
    expect(bar(layers('30 GiB'))).toMatch(/^█{28,30}░{0,2}·{10}$/);
    expect(bar(layers('60 GiB'))).toMatch(/over$/);
  });
});
