import fc from 'fast-check';
import { expect, it } from 'vitest';
import { headroomOf } from '../../src/capacity/headroom.ts';
import { assemble } from '../../src/estate/assemble.ts';
import type { EstatePart } from '../../src/estate/estate.ts';
import { type Files, partOf, settingsOf } from '../estate/builder.ts';
import { change, filesOf } from '../estate/random.ts';

const settings = settingsOf('currency: EUR\n');

/** Two revisions as they are read: a file that both hold is one and the same part. */
function estates(...revisions: readonly Files[]) {
  const parts = new Map<string, EstatePart>();
  return revisions.map((files) =>
    assemble(
      Object.entries(files).map(([file, text]) => {
        const key = `${file}\n${text}`;
        const part = parts.get(key) ?? partOf(text, file);
        parts.set(key, part);
        return part;
      }),
      settings,
    ),
  );
}

it('carried on from another revision is what it would be by itself, wherever a group and its volumes are declared', () => {
  fc.assert(
    fc.property(change, ([before, after]) => {
      const [base, head] = estates(filesOf(before), filesOf(after));
      fc.pre(base?.ok === true && head?.ok === true);
      if (!base?.ok || !head?.ok) return;
      const carriedOn = headroomOf(head.value, settings, headroomOf(base.value, settings));
      expect(carriedOn.rooms).toEqual(headroomOf(head.value, settings).rooms);
    }),
    { numRuns: 200 },
  );
});

it('is carried on for a group that is the same, and reckoned anew where only a member in another file grew', () => {
  const group = 'volume-groups:\n  plates: { members: [plates-1] }\n';
  const volume = (size: string): string => `volumes:\n  plates-1: { size: ${size}, tier: bulk }\n`;
  const files = (size: string): Files => ({
    'storage/groups.yaml': group,
    'storage/volumes.yaml': volume(size),
  });
  const [base, same, grown] = estates(files('40 GiB'), files('40 GiB'), files('50 GiB'));
  if (!base?.ok || !same?.ok || !grown?.ok) throw new Error('an estate does not hold together');
  const before = headroomOf(base.value, settings);
  expect(headroomOf(same.value, settings, before).rooms[0]).toBe(before.rooms[0]);
  // An extent of 4 MiB less in each, for the group's own metadata.
  expect(before.rooms[0]?.capacity).toBe((40n * 1024n - 4n) << 20n);
  expect(headroomOf(grown.value, settings, before).rooms[0]?.capacity).toBe((50n * 1024n - 4n) << 20n);
});
