/** Within brackets a comma parts two entries and a colon wants a space: what that makes of a slip in writing one value. */
import { quoted } from '../base/nearest.ts';
import { pointerOf, stepsOfPointer } from '../base/pointer.ts';
import { exampleAt } from './belongs.ts';
import type { ReadDocument } from './document.ts';
import type { SchemaError } from './format.ts';
import { asList } from './how-to-write.ts';
import { isRecord, parameterOf, propertiesOf } from './schema-error.ts';
import type { Slip } from './slip.ts';
import type { Step } from './value.ts';

/** @param here how a mapping is called, by its path */
export function runTogether(
  errors: readonly SchemaError[],
  document: ReadDocument,
  format: string,
  here: (path: readonly Step[]) => string,
): readonly Slip[] {
  return errors.flatMap((error): readonly Slip[] => {
    if (error.keyword === 'type') return unbracketed(error, errors, document, format, here);
    if (error.keyword !== 'additionalProperties' && error.keyword !== 'unevaluatedProperties') return [];
    const { data } = error;
    const key = parameterOf(error);
    if (!isRecord(data) || data[key] !== null) return [];
    const path = stepsOfPointer(error.instancePath);
    const known = Object.keys(propertiesOf(error.parentSchema ?? {}));
    return [...noSpace(error, key, known, document, path), ...apart(error, key, data, document, path, here)];
  });
}

/** `{ size:50 GiB }` has the key `size:50 GiB`. */
function noSpace(
  { instancePath }: SchemaError,
  key: string,
  known: readonly string[],
  document: ReadDocument,
  path: readonly Step[],
): readonly Slip[] {
  const [, name, value] = /^([^:\s]+):(\S.*)$/u.exec(key) ?? [];
  if (name === undefined || value === undefined || !known.includes(name)) return [];
  return [
    {
      place: document.placeOfKey([...path, key]),
      message: `a space is missing after the colon: ${quoted(key)}`,
      advice: `Write \`${name}: ${value}\`.`,
      explains: (other) =>
        other.instancePath === instancePath &&
        (parameterOf(other) === key || (other.keyword === 'required' && parameterOf(other) === name)),
    },
  ];
}

/** `{ members: db-1, db-2 }` has the members db-1, which is no list, and the key `db-2`. */
function unbracketed(
  error: SchemaError,
  all: readonly SchemaError[],
  document: ReadDocument,
  format: string,
  here: (path: readonly Step[]) => string,
): readonly Slip[] {
  const path = stepsOfPointer(error.instancePath);
  const example = exampleAt(format, path);
  const place = document.placeOfValue(path);
  if (error.params.type !== 'array' || typeof error.data !== 'string' || example === undefined) return [];
  const above = pointerOf(path.slice(0, -1));
  const more = all.flatMap((each) => {
    const key = parameterOf(each);
    const isBeside = each.instancePath === above && /^additional|^unevaluated/.test(each.keyword);
    if (!isBeside || !isRecord(each.data) || each.data[key] !== null) return [];
    const at = document.placeOfKey([...path.slice(0, -1), key]);
    return at.line === place.line && at.column > place.column ? [key] : [];
  });
  const advice = more.length === 0 ? undefined : asList([error.data, ...more].join(','), example);
  return advice === undefined
    ? []
    : [
        {
          place,
          message: `${here(path)} is written ${[error.data, ...more].join(', ')}, and a list stands in brackets of its own`,
          advice,
          explains: (other) =>
            other === error || (other.instancePath === above && more.includes(parameterOf(other))),
        },
      ];
}

/** `{ size: 1,000 GB }` has the size 1, and the key `000 GB`. */
function apart(
  { instancePath }: SchemaError,
  key: string,
  data: Readonly<Record<string, unknown>>,
  document: ReadDocument,
  path: readonly Step[],
  here: (path: readonly Step[]) => string,
): readonly Slip[] {
  if (!/^[0-9]{3}(?:\s*[A-Za-z]{1,3})?$/.test(key)) return [];
  const valuePlace = document.placeOfKey([...path, key]);
  // Keys that are digits alone come first in a mapping, whatever stands first in the file.
  const before = Object.keys(data)
    .filter((each) => each !== key && typeof data[each] === 'number')
    .map((each) => ({ each, place: document.placeOfValue([...path, each]) }))
    .filter(({ place }) => place.line === valuePlace.line && place.column < valuePlace.column)
    .sort((a, b) => b.place.column - a.place.column)[0];
  const digits = before === undefined ? undefined : `${data[before.each]}`;
  if (before === undefined || digits === undefined || !/^[0-9]{1,3}$/.test(digits)) return [];
  const value = [...path, before.each];
  return [
    {
      place: before.place,
      message: `${here(value)} is written ${digits},${key}, and a comma ends a value within brackets`,
      advice: `Write ${digits}${key}, without a comma.`,
      explains: (other) =>
        (other.instancePath === instancePath && parameterOf(other) === key) ||
        other.instancePath === `${instancePath}/${before.each}`,
    },
  ];
}
