/** Valid documents with parts of them changed: by what the formats hold elsewhere, by other kinds, by hostile text. */
import { parse } from 'yaml';
import { samples } from './samples.ts';
import { pick } from './slips.ts';
import { pathsIn, replacedAt, valueAt, withoutPart, withPart } from './values.ts';

type Below = (count: number) => number;

/** Text that means something to a terminal, a page, a log, a spreadsheet or a parser. */
const hostileTexts: readonly string[] = [
  '\u001b[2Jgone',
  '\u009b31m',
  '::error::all is well',
  '##[add-mask]x',
  '<script>alert(1)</script>',
  '<!-- -->',
  '[x](https://a.example)',
  '![x](https://a.example/x.png)',
  '@imagery #12',
  'https://a.example',
  '| a | b |\n| - | - |',
  '# a heading\n\n- a list',
  '`code',
  '```\nfence',
  '=HYPERLINK("https://a.example")',
  'a\r\nb',
  'fdp\u202eexe',
  'plates\u200b-1',
  '\u2028',
  '\ud800',
  ']]>',
  '&lt;b&gt;',
  '__proto__',
  'constructor',
  '%zz',
  'x'.repeat(300),
  '',
];

const oddValues: readonly unknown[] = [
  {},
  [],
  [{}],
  { value: '40 GiB' },
  JSON.parse('{ "__proto__": { "size": "1 GiB" } }'),
  null,
  true,
  0,
  -1,
  1.5,
  1e300,
  '0 GiB',
  '-1 GiB',
  '999999999999999 PiB',
  '1.0000000001 kB',
  '2026-02-30',
];

const sizes: readonly string[] = [
  '1 GiB',
  '20 GiB',
  '40 GiB',
  '41 GiB',
  '60 GiB',
  '100 GiB',
  '100 GB',
  '1 TiB',
  '4000 GiB',
];

/** Keys whose value is free text, where hostile text is a value like any other. */
const freeText = new Set(['reason', 'owner', 'approved-by', 'backup', 'purpose', 'room', 'kept', 'message']);

const values: readonly unknown[] = samples.map(({ text }): unknown => parse(text));

/** What stands under each key anywhere in the samples. */
const vocabulary: ReadonlyMap<string, readonly unknown[]> = values
  .flatMap((value) => pathsIn(value).map((path) => [path.at(-1), valueAt(value, path)] as const))
  .reduce((words, [key, value]) => {
    if (typeof key !== 'string') return words;
    return words.set(key, [...(words.get(key) ?? []), value]);
  }, new Map<string, readonly unknown[]>());

const everyValue = [...vocabulary.values()].flat();
const everyKey = [...vocabulary.keys()];

/** A change that an administrator might make: most of them leave a file that reads. */
export function edited(value: unknown, below: Below): unknown {
  const paths = pathsIn(value).filter((path) => path.length > 0);
  if (paths.length === 0) return value;
  const path = pick(paths, below);
  const key = path.at(-1);
  const now = valueAt(value, path);
  if (typeof key === 'string' && freeText.has(key)) return replacedAt(value, path, pick(hostileTexts, below));
  if (typeof now === 'string' && /^[0-9.]+ [KMGTP]i?B$/.test(now))
    return replacedAt(value, path, pick(sizes, below));
  const words = typeof key === 'string' ? (vocabulary.get(key) ?? []) : [];
  const alike = words.filter(
    (word) => typeof word === typeof now && (typeof word !== 'object' || below(4) === 0),
  );
  if (alike.length > 0 && below(4) > 0) return replacedAt(value, path, pick(alike, below));
  return below(3) === 0 ? withoutPart(value, path) : added(value, below);
}

/** One thing more: a volume, a server or an attachment, or a label that says something hostile. */
function added(value: unknown, below: Below): unknown {
  const name = `new-${below(50)}`;
  switch (below(5)) {
    case 0:
      return withPart(value, ['volumes'], name, {
        size: pick(sizes, below),
        tier: pick(['bulk', 'steady', 'brisk'], below),
      });
    case 1:
      return withPart(value, ['servers'], name, { power: pick(['running', 'stopped'], below) });
    case 2:
      return withPart(value, ['volumes'], name, {
        size: '30 GiB',
        tier: 'bulk',
        reason: pick(hostileTexts, below) || 'kept',
        labels: { note: pick(hostileTexts, below) },
      });
    case 3:
      return withPart(value, ['volume-groups', 'plates', 'file-systems'], `/${pick(hostileTexts, below)}`, {
        size: '1 GiB',
        type: pick(['ext4', 'xfs'], below),
      });
    default:
      return withPart(value, ['labels'], `label-${below(9)}`, pick(hostileTexts, below));
  }
}

/** A change that nobody means: another kind, a part moved or renamed, something of another format, hostile text. */
export function broken(value: unknown, below: Below): unknown {
  const paths = pathsIn(value);
  const path = pick(paths, below);
  switch (below(7)) {
    case 0:
      return replacedAt(value, path, pick(oddValues, below));
    case 1:
      return replacedAt(value, path, pick(hostileTexts, below));
    case 2:
      return replacedAt(value, path, pick(everyValue, below));
    case 3:
      return path.length === 0 ? value : withoutPart(value, path);
    case 4:
      return withPart(
        value,
        path,
        pick(below(2) === 0 ? everyKey : hostileTexts, below),
        pick(everyValue, below),
      );
    case 5: {
      // A part moved to another place.
      const moved = valueAt(value, path);
      const left = path.length === 0 ? value : withoutPart(value, path);
      return withPart(left, pick(pathsIn(left), below), pick(everyKey, below), moved);
    }
    default: {
      const other = pick(paths, below);
      return replacedAt(replacedAt(value, path, valueAt(value, other)), other, valueAt(value, path));
    }
  }
}

/** One to three changes, of which most are such as an administrator might make. */
export function mutated(value: unknown, below: Below, oneInBroken: number): unknown {
  let now = value;
  for (let changes = 1 + below(3); changes > 0; changes--) {
    now = below(oneInBroken) === 0 ? broken(now, below) : edited(now, below);
  }
  return now;
}
