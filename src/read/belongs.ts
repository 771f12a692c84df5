/** Where a key belongs that does not belong where it stands, and how a mapping is written where something else is. */
import { quoted } from '../base/nearest.ts';
import { shapes } from './generated/shapes.ts';
import { isRecord } from './schema-error.ts';
import type { Mapping, Shape } from './shape.ts';
import type { Step } from './value.ts';

export interface MappingAt {
  readonly path: readonly string[];
  readonly mapping: Mapping;
}

export const isMapping = (shape: Shape): shape is MappingAt => 'mapping' in shape;

export const shapesOf = (format: string): readonly Shape[] => shapes[format] ?? [];

export const stands = (pattern: readonly string[], path: readonly Step[]): boolean =>
  pattern.length === path.length && pattern.every((step, index) => step === '*' || step === `${path[index]}`);

/** `{ size: 50 GiB, tier: bulk }`; undefined where the schema gives no example. */
function written({ keys, required }: Mapping, key?: string): string | undefined {
  const wanted = Object.keys(keys).filter((each) => each === key || required.includes(each));
  const chosen = wanted.length > 0 ? wanted : Object.keys(keys).slice(0, 1);
  return chosen.some((each) => keys[each] === '')
    ? undefined
    : `{ ${chosen.map((each) => `${each}: ${keys[each]}`).join(', ')} }`;
}

/** A value for the place, after its own key or its dash; undefined where none is known. */
export function exampleAt(format: string, path: readonly Step[]): string | undefined {
  const shape = shapesOf(format).find((each) => stands(each.path, path));
  const value = shape === undefined ? undefined : isMapping(shape) ? written(shape.mapping) : shape.example;
  const last = path.at(-1);
  if (value === undefined || last === undefined) return undefined;
  return `\`${typeof last === 'number' || /^[0-9]+$/.test(last) ? '-' : `${last}:`} ${value}\``;
}

/** Whether the format can do without the key at the end of the path. */
export function canBeLeftOut(format: string, path: readonly Step[]): boolean {
  const last = path.at(-1);
  const above = shapesOf(format)
    .filter(isMapping)
    .filter((each) => stands(each.path, path.slice(0, -1)));
  return above.some(
    ({ mapping }) => Object.hasOwn(mapping.keys, `${last}`) && !mapping.required.includes(`${last}`),
  );
}

/** `under file-system:`, `in an entry of attachments:`, from the top of the file or from where one stands. */
export function spot(path: readonly string[]): string {
  const last = path.at(-1);
  if (last === undefined) return 'at the top of the file';
  const above = path.slice(0, last === '*' ? -2 : -1);
  const here = last === '*' ? `in an entry of \`${path.at(-2)}:\`` : `under \`${last}:\``;
  return above.length === 0 ? here : `${here} ${spot(above)}`;
}

/** The mappings that are nearest to a place: those within it, or those with the fewest steps from it. */
function nearest(candidates: readonly MappingAt[], own: readonly string[]): readonly MappingAt[] {
  const steps = ({ path }: MappingAt): number => {
    let shared = 0;
    while (shared < own.length && path[shared] === own[shared]) shared += 1;
    // Within is nearer than anywhere else.
    return (own.length - shared) * 100 + path.length - shared;
  };
  const least = Math.min(...candidates.map(steps));
  return candidates.filter((each) => steps(each) === least);
}

export interface Misplaced {
  readonly format: string;
  /** The path of the mapping that the key stands in. */
  readonly path: readonly Step[];
  readonly key: string;
  readonly value: unknown;
}

/** Where a key belongs. `here`: in the same file, so that nothing else is likely to have been meant. */
export interface Belongs {
  readonly words: string;
  readonly here: boolean;
}

const fileOf: Readonly<Record<string, string>> = {
  estate: 'an estate file',
  'price-list': 'a price list',
  'rule-pack': 'a rule pack',
  settings: '`ullage.yaml`',
  waivers: 'a waivers file',
};

/** Where a key belongs that its mapping does not know; undefined where nobody can say. */
export function whereItBelongs({ format, path, key, value }: Misplaced): Belongs | undefined {
  if (shapes[format] === undefined) return undefined;
  const mappings = shapesOf(format).filter(isMapping);
  const ownShape = mappings.find((each) => stands(each.path, path));
  const own = ownShape?.path ?? path.map(String);
  const inThisFile = (words: string): Belongs => ({ words, here: true });
  const byKey = namedByItsKey(mappings, own, key, path.at(-1));
  if (byKey !== undefined) return inThisFile(byKey);
  const knows = ({ mapping }: MappingAt): boolean => Object.hasOwn(mapping.keys, key);
  const known = nearest(mappings.filter(knows), own);
  const [first] = known;
  if (first !== undefined) {
    const rules = known.flatMap(({ mapping }) => mapping.rule ?? []);
    if (first.path.join('/') === own.join('/')) {
      return inThisFile(`${key} is a parameter of ${rules.slice(0, 4).join(', ')}.`);
    }
    const places = [...new Set(known.map((each) => fromHere(each, own)))].slice(0, 2);
    return inThisFile(`${key} belongs ${places.join(', or ')}${shown(format, first, key)}.`);
  }
  const elsewhere = Object.keys(shapes)
    .filter((other) => other !== format)
    .flatMap((other) =>
      shapesOf(other)
        .filter(isMapping)
        .filter(knows)
        .map((at) => ({ other, at })),
    );
  const shallowest = Math.min(...elsewhere.map(({ at }) => at.path.length));
  const likeliest = elsewhere.filter(({ at }) => at.path.length === shallowest);
  if (likeliest.length > 0) {
    const files = likeliest.map(
      ({ other, at }) => `${fileOf[other] ?? other}, ${spot(at.path)}${shown(other, at, key)}`,
    );
    return { words: `${key} is a key of ${[...new Set(files)].slice(0, 2).join('; or of ')}.`, here: false };
  }
  const likely = mappings.find(
    ({ path: at, mapping }) => at.length === 2 && at[1] === '*' && fits(value, mapping),
  );
  return likely === undefined
    ? undefined
    : inThisFile(`It looks like an entry of \`${likely.path[0]}:\`; write it under that key.`);
}

/** A name or a mount point is written before the colon, and never as a key of its own. */
function namedByItsKey(
  mappings: readonly MappingAt[],
  own: readonly string[],
  key: string,
  name: Step | undefined,
): string | undefined {
  const { namedBy } = mappings.find(({ path }) => path.join('/') === own.join('/'))?.mapping ?? {};
  if (namedBy === 'Name' && key === 'name')
    return `The name is the key before the colon, here ${quoted(name)}.`;
  if (key !== 'mount') return undefined;
  if (namedBy === 'MountPoint') {
    return `Where it is mounted is the key before the colon, here ${quoted(name)}.`;
  }
  const within = mappings.find(
    ({ path, mapping }) =>
      own.length > 0 && mapping.namedBy === 'MountPoint' && own.every((step, index) => path[index] === step),
  );
  return within === undefined
    ? undefined
    : `Where a file system is mounted is its own key under \`${within.path.at(-2)}:\`, as in \`/plates: ${written(within.mapping)}\`.`;
}

/** Whether a key can be one of the names under which such mappings stand. */
export const namesKey = (mapping: Mapping, key: string, value: unknown): boolean =>
  mapping.namedBy === 'MountPoint'
    ? key.startsWith('/')
    : mapping.namedBy !== undefined && fits(value, mapping);

const fits = (value: unknown, { keys, required }: Mapping): boolean =>
  isRecord(value) &&
  Object.keys(value).length > 0 &&
  Object.keys(value).every((key) => Object.hasOwn(keys, key)) &&
  required.every((key) => Object.hasOwn(value, key));

const fromHere = ({ path }: MappingAt, own: readonly string[]): string =>
  spot(own.length > 0 && own.every((step, index) => path[index] === step) ? path.slice(own.length) : path);

/** `, as in ...`: the mapping as it is written there, with the key. */
function shown(format: string, { path, mapping }: MappingAt, key: string): string {
  const value = written(mapping, key);
  const last = path.at(-1);
  if (value === undefined || last === undefined) return '';
  if (last !== '*') return `, as in \`${last}: ${value}\``;
  const nest = shapesOf(format).find((each) => each.path.join('/') === path.slice(0, -1).join('/'));
  const name = nest === undefined || isMapping(nest) ? undefined : /^\{ ([^:]+):/.exec(nest.example)?.[1];
  return `, as in \`${name === undefined ? '-' : `${name}:`} ${value}\``;
}
