import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layered, mayDiffer } from '../../src/estate/layered.ts';

const key = fc.nat({ max: 300 });
const edit = fc.record({
  set: fc.dictionary(key.map(String), fc.nat({ max: 9 }), { maxKeys: 12 }),
  deleted: fc.array(key.map(String), { maxLength: 6 }),
});

it('a map edited again and again holds what a copy would, and knows where it may differ from what it was', () => {
  fc.assert(
    fc.property(fc.nat({ max: 300 }), fc.array(edit, { maxLength: 60 }), (size, edits) => {
      let plain = new Map(Array.from({ length: size }, (_each, index) => [String(index), 0]));
      let map: ReadonlyMap<string, number> = plain;
      const versions = [{ map, plain }];
      for (const { set, deleted } of edits) {
        map = layered(map, { set: new Map(Object.entries(set)), deleted: new Set(deleted) });
        plain = new Map(plain);
        for (const gone of deleted) plain.delete(gone);
        for (const [name, value] of Object.entries(set)) plain.set(name, value);
        versions.push({ map, plain });
      }
      const sorted = (entries: Iterable<[string, number]>) =>
        [...entries].sort(([a], [b]) => (a < b ? -1 : 1));
      for (const { map: each, plain: copy } of versions) {
        expect(each.size).toBe(copy.size);
        expect(sorted(each)).toEqual(sorted(copy));
        for (let name = 0; name <= 300; name += 7) {
          expect(each.get(String(name))).toBe(copy.get(String(name)));
          expect(each.has(String(name))).toBe(copy.has(String(name)));
        }
      }
      for (const [index, { map: later, plain: now }] of versions.entries()) {
        for (const { map: earlier, plain: was } of [versions[index - 1], versions[0]].flatMap(
          (each) => each ?? [],
        )) {
          const told = new Set(mayDiffer(earlier, later));
          const differing = [...new Set([...was.keys(), ...now.keys()])].filter(
            (name) => was.get(name) !== now.get(name),
          );
          expect(differing.filter((name) => !told.has(name))).toEqual([]);
        }
      }
    }),
    { numRuns: 60 },
  );
});

it('looks at a few keys of a large map that a small edit made', () => {
  const below = new Map(Array.from({ length: 20_000 }, (_each, index) => [index, index]));
  const edited = layered(below, { set: new Map([[5, 6]]), deleted: new Set([7]) });
  expect([...mayDiffer(below, edited)].sort()).toEqual([5, 7]);
});
