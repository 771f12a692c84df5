/** Keys that stand one level too far to the left or to the right: what they are taken for there, and where they belong. */
import { quoted } from '../base/nearest.ts';
import { pointerOf, stepsOfPointer } from '../base/pointer.ts';
import { isMapping, type MappingAt, namesKey, shapesOf, spot, stands } from './belongs.ts';
import type { ReadDocument } from './document.ts';
import type { SchemaError } from './format.ts';
import { choicesOf, isRecord, parameterOf } from './schema-error.ts';
import type { Slip } from './slip.ts';
import type { Step } from './value.ts';

/** @param here how a mapping is called, by its path */
export function misindented(
  errors: readonly SchemaError[],
  document: ReadDocument,
  format: string,
  here: (path: readonly Step[]) => string,
): readonly Slip[] {
  const mappings = shapesOf(format).filter(isMapping);
  const found = new Map<string, Slip>();
  for (const error of errors) {
    const path = pathOfKey(error);
    for (let length = 1; length <= path.length; length++) {
      const key = path.slice(0, length);
      const isUnknown = length === path.length && isOfKey(error);
      const told =
        amongNames(key, document, mappings) ??
        (isUnknown
          ? (belowEmpty(key, document, mappings, here) ?? tooDeep(key, document, mappings, here))
          : undefined);
      if (told === undefined) continue;
      found.set(pointerOf(key), told);
      break;
    }
  }
  return [...found.values()];
}

/** About a key, not about what stands behind it. */
const isOfKey = ({ keyword }: SchemaError): boolean =>
  keyword === 'additionalProperties' || keyword === 'unevaluatedProperties' || keyword === 'propertyNames';

const pathOfKey = (error: SchemaError): readonly Step[] => {
  const path = stepsOfPointer(error.instancePath);
  return isOfKey(error) ? [...path, parameterOf(error)] : path;
};

const at = (value: unknown, path: readonly Step[]): unknown =>
  path.reduce<unknown>(
    (within, step) => (isRecord(within) || Array.isArray(within) ? Reflect.get(within, step) : undefined),
    value,
  );

const isAbove = (above: readonly Step[], path: readonly Step[]): boolean =>
  above.length < path.length && above.every((step, index) => `${step}` === `${path[index]}`);

const isWithin = (path: readonly Step[], error: SchemaError): boolean => {
  const own = pathOfKey(error);
  return isAbove(path, own) || pointerOf(path) === pointerOf(own);
};

const lacks = (key: Step | undefined, error: SchemaError): boolean =>
  (error.keyword === 'required' && parameterOf(error) === `${key}`) ||
  (error.keyword === 'oneOf' && choicesOf(error.parentSchema ?? {}).includes(`${key}`));

const atPath = (path: readonly Step[], error: SchemaError): boolean =>
  error.instancePath === pointerOf(path) && !isOfKey(error);

/** The mappings around a place that know a key, the nearest first. */
const around = (mappings: readonly MappingAt[], path: readonly Step[], key: string): readonly MappingAt[] =>
  mappings
    .filter(
      ({ path: pattern, mapping }) =>
        Object.hasOwn(mapping.keys, key) &&
        pattern.length < path.length &&
        stands(pattern, path.slice(0, pattern.length)),
    )
    .sort((a, b) => b.path.length - a.path.length);

/** A key where names stand, and with it what it is taken for. */
function amongNames(
  path: readonly Step[],
  document: ReadDocument,
  mappings: readonly MappingAt[],
): Slip | undefined {
  const name = path.at(-1);
  const above = path.slice(0, -1);
  const entry = mappings.find(
    ({ path: pattern, mapping }) => mapping.namedBy !== undefined && stands(pattern, path),
  );
  if (entry === undefined || typeof name !== 'string' || above.length === 0) return undefined;
  const value = at(document.value, path);
  // Whoever calls a volume so has written what a volume has.
  if (isRecord(value) && Object.keys(value).some((key) => Object.hasOwn(entry.mapping.keys, key)))
    return undefined;
  const [outer] = around(mappings, above, name);
  const isOfEntry = Object.hasOwn(entry.mapping.keys, name);
  if (outer === undefined && !isOfEntry) return undefined;
  const nest = `${above.at(-1)}`;
  const left = outer === undefined ? [] : [spot(outer.path)];
  const right = isOfEntry ? [spot(entry.path)] : [];
  const isOnItsOwnLine = ownLine(document, path);
  const how = !isOnItsOwnLine
    ? 'is'
    : right.length === 0
      ? 'is indented too deep, and is'
      : left.length === 0
        ? 'is not indented deep enough, and is'
        : 'is';
  const before = siblingBefore(document, path);
  return {
    place: document.placeOfKey(path),
    message: `${quoted(name)} ${how} taken for a name under ${nest}`,
    advice: whereTo(name, left, right, isOnItsOwnLine),
    explains: (error) =>
      isWithin(path, error) ||
      (isOfEntry &&
        before !== undefined &&
        isWithin(before, error) &&
        (lacks(name, error) || (atPath(before, error) && at(document.value, before) === null))) ||
      (outer !== undefined && lacks(name, error) && isAbove(stepsOfPointer(error.instancePath), path)),
  };
}

/** A key behind one that is empty, and belongs under it. */
function belowEmpty(
  path: readonly Step[],
  document: ReadDocument,
  mappings: readonly MappingAt[],
  here: (path: readonly Step[]) => string,
): Slip | undefined {
  const key = path.at(-1);
  if (typeof key !== 'string') return undefined;
  const mapping = mappings.filter(({ path: pattern }) => stands(pattern, path.slice(0, -1)));
  const before = siblingBefore(document, path, (each) =>
    mapping.some(({ mapping: { keys } }) => Object.hasOwn(keys, each)),
  );
  if (before === undefined || at(document.value, before) !== null) return undefined;
  const value = at(document.value, path);
  const belongs = mappings.some(
    ({ path: pattern, mapping: within }) =>
      (stands(pattern, before) && Object.hasOwn(within.keys, key)) ||
      (pattern.at(-1) === '*' && stands(pattern.slice(0, -1), before) && namesKey(within, key, value)),
  );
  if (!belongs) return undefined;
  return {
    place: document.placeOfKey(path),
    message: `${quoted(key)} is not a key of ${here(path.slice(0, -1))}, and nothing stands under ${before.at(-1)}`,
    advice: `${quoted(key)} belongs under \`${before.at(-1)}:\`${ownLine(document, path) ? '; move it to the right' : ''}.`,
    explains: (error) => isWithin(path, error) || atPath(before, error),
  };
}

/** A key that a mapping around its own knows. */
function tooDeep(
  path: readonly Step[],
  document: ReadDocument,
  mappings: readonly MappingAt[],
  here: (path: readonly Step[]) => string,
): Slip | undefined {
  const key = path.at(-1);
  const above = path.slice(0, -1);
  if (typeof key !== 'string' || !ownLine(document, path)) return undefined;
  // What stands deeper in the same mapping is nearer.
  const isDeeper = mappings.some(
    ({ path: pattern, mapping }) =>
      pattern.length > above.length &&
      stands(pattern.slice(0, above.length), above) &&
      Object.hasOwn(mapping.keys, key),
  );
  const [outer] = isDeeper ? [] : around(mappings, above, key);
  return outer === undefined
    ? undefined
    : {
        place: document.placeOfKey(path),
        message: `${quoted(key)} is not a key of ${here(above)}`,
        advice: whereTo(key, [spot(outer.path)], [], true),
        explains: (error) =>
          isWithin(path, error) || (lacks(key, error) && isAbove(stepsOfPointer(error.instancePath), path)),
      };
}

function whereTo(
  key: string,
  left: readonly string[],
  right: readonly string[],
  isOnItsOwnLine: boolean,
): string {
  const places = [...left, ...right];
  const words = `${quoted(key)} belongs ${places.join(', or ')}`;
  if (!isOnItsOwnLine) return `${words}.`;
  return left.length > 0 && right.length > 0
    ? `${words}; move it to the left or to the right.`
    : `${words}; move it to the ${left.length > 0 ? 'left' : 'right'}.`;
}

/** Whether it can be indented otherwise: within brackets on one line it cannot. */
const ownLine = (document: ReadDocument, path: readonly Step[]): boolean =>
  document.placeOfKey(path).line !== document.placeOfKey(path.slice(0, -1)).line;

/** The key that stands before one, of those that are asked for. */
function siblingBefore(
  document: ReadDocument,
  path: readonly Step[],
  isAsked: (key: string) => boolean = () => true,
): readonly Step[] | undefined {
  const above = path.slice(0, -1);
  const container = at(document.value, above);
  if (!isRecord(container)) return undefined;
  const keys = Object.keys(container);
  const before = keys.slice(0, keys.indexOf(`${path.at(-1)}`)).findLast(isAsked);
  return before === undefined ? undefined : [...above, before];
}
