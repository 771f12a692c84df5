/** Of which format a file seems to be that nobody has said one of. */
import { shapes } from './generated/shapes.ts';
import { isRecord } from './schema-error.ts';
import type { PlainValue } from './value.ts';

/** The formats that lie in folders of their own. */
const formats = ['estate', 'price-list', 'rule-pack', 'waivers'] as const;

export type LooksLike = (typeof formats)[number];

/**
 * The format of which every key at the top is one, and that has at least one entry beneath them with a key that its
 * entries have (one that they need, where they need any). Other programs' files have keys like ours, but not these
 * alone.
 */
export const looksLike = (value: PlainValue): LooksLike | undefined =>
  formats.find((format) => isOf(format, value));

function isOf(format: LooksLike, value: PlainValue): boolean {
  const own = shapes[format] ?? [];
  const keysAt = (...path: readonly string[]): readonly string[] =>
    own.flatMap((shape) => {
      if (!('mapping' in shape) || shape.path.join('/') !== path.join('/')) return [];
      const { required, keys } = shape.mapping;
      return path.length > 0 && required.length > 0 ? required : Object.keys(keys);
    });
  if (!isRecord(value)) return false;
  const top = keysAt();
  return (
    Object.keys(value).every((key) => top.includes(key)) &&
    Object.entries(value).some(([key, below]) => {
      const wanted = keysAt(key, '*');
      return entriesOf(below).some(
        (entry) => isRecord(entry) && wanted.some((each) => Object.hasOwn(entry, each)),
      );
    })
  );
}

const entriesOf = (below: unknown): readonly unknown[] =>
  typeof below === 'object' && below !== null ? Object.values(below) : [];

/** Whether a text can be of one of them at all; it is asked before a text is read. */
export const mayLookLike = (text: string): boolean => beginsAKey.test(text);

const beginsAKey = new RegExp(
  `(?:^|[\\s{,"'])(?:${[
    ...new Set(
      formats.flatMap((format) => (shapes[format] ?? []).flatMap(({ path: [first] }) => first ?? [])),
    ),
  ].join('|')})["']?\\s*:`,
);
