/** Plain values taken apart and put together differently. */

export type Path = readonly (string | number)[];

const isHolder = (value: unknown): value is Readonly<Record<string, unknown>> | readonly unknown[] =>
  typeof value === 'object' && value !== null;

/** The path of every part of a value, the whole first. */
export function pathsIn(value: unknown, path: Path = []): readonly Path[] {
  if (!isHolder(value)) return [path];
  const steps = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return [path, ...steps.flatMap((step) => pathsIn(Reflect.get(value, step), [...path, step]))];
}

export const valueAt = (value: unknown, path: Path): unknown =>
  path.reduce((here: unknown, step) => (isHolder(here) ? Reflect.get(here, step) : undefined), value);

/** The value with one part put in the place of another. */
export function replacedAt(value: unknown, [step, ...rest]: Path, part: unknown): unknown {
  if (step === undefined) return part;
  if (Array.isArray(value))
    return value.map((item, index) => (index === step ? replacedAt(item, rest, part) : item));
  return entriesOf(value, (entries) =>
    entries.map(([key, below]) => [key, key === step ? replacedAt(below, rest, part) : below]),
  );
}

/** The value without one part. */
export function withoutPart(value: unknown, path: Path): unknown {
  const [step] = path.slice(-1);
  const above = path.slice(0, -1);
  const holder = valueAt(value, above);
  const less = Array.isArray(holder)
    ? holder.filter((_, index) => index !== step)
    : entriesOf(holder, (entries) => entries.filter(([key]) => key !== step));
  return replacedAt(value, above, less);
}

/** The value with one part more in one of its mappings or lists. */
export function withPart(value: unknown, path: Path, key: string, part: unknown): unknown {
  const holder = valueAt(value, path);
  if (Array.isArray(holder)) return replacedAt(value, path, [...holder, part]);
  return isHolder(holder)
    ? replacedAt(
        value,
        path,
        entriesOf(holder, (entries) => [...entries, [key, part]]),
      )
    : value;
}

type Entry = readonly [string, unknown];

/** Own properties whatever their name: `__proto__` is a key like any other. */
function entriesOf(value: unknown, change: (entries: readonly Entry[]) => readonly Entry[]): unknown {
  return isHolder(value) ? Object.fromEntries(change(Object.entries(value))) : value;
}
