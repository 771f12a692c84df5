import type { Mends } from '../read/mend.ts';

/** Whether names may have gone with what was taken out of a file: who misses them would be told of what is not wrong. */
export function hidesNames(value: unknown, mends: Mends): boolean {
  if (mends.at([])) return true;
  return held(value).some(
    ([top, of]) =>
      (isContainer(of) && mends.at([top])) ||
      // Put under another key, it is taken for a thing of that name.
      held(of).some(([name]) => (name === 'servers' || name === 'volumes') && mends.in([top, name])),
  );
}

const isContainer = (value: unknown): value is object => typeof value === 'object' && value !== null;

const held = (value: unknown): readonly (readonly [string, unknown])[] =>
  isContainer(value) ? Object.entries(value) : [];
