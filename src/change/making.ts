/** How a file system is made, before and after. */
import type { FileSystem } from '../estate/estate.ts';
import { type Made, type MakingKey, madeOf } from '../estate/made.ts';
import { exactSize } from '../estate/size.ts';
import { own } from './adoption.ts';

/** What differs between the two, and whether it can be set without making the file system anew. */
export type MakingChange = 'none' | 'in place' | 'anew';

/** `1.5` for 0.015. */
export const perCent = (share: number): string => `${Number((share * 100).toPrecision(12))}`;

const words: { readonly [K in MakingKey]: (made: Made) => string } = {
  reserve: ({ reserve }) => `a reserve of ${perCent(reserve)} %`,
  blockSize: ({ blockSize }) => `blocks of ${exactSize(blockSize)}`,
  inodeRatio: ({ inodeRatio }) => `an inode for each ${exactSize(inodeRatio)}`,
  reverseMap: ({ reverseMap }) => (reverseMap ? 'a reverse map' : 'no reverse map'),
};

const keys: readonly MakingKey[] = ['reserve', 'blockSize', 'inodeRatio', 'reverseMap'];

/** What is declared of how it is made, such as `a reserve of 1 %`; nothing where all of it is left to the tool. */
export const declaredMaking = ({ type, size, making }: FileSystem): readonly string[] =>
  keys.filter((key) => making[key] !== undefined).map((key) => words[key](madeOf(type, size, making)));

/** It was made at its old size, so what was left to the tool is what the tool made of that. */
function differing(before: FileSystem, after: FileSystem): readonly MakingKey[] {
  const was = madeOf(before.type, before.size, before.making);
  const is = madeOf(after.type, before.size, after.making);
  return keys.filter((key) => was[key] !== is[key]);
}

/** Such as `a reserve of 5 % becomes a reserve of 1 %`. */
export const makingDifferences = (before: FileSystem, after: FileSystem): readonly string[] =>
  differing(before, after).map((key) => {
    const was = madeOf(before.type, before.size, before.making);
    const is = madeOf(after.type, before.size, after.making);
    return `${words[key](was)} becomes ${words[key](is)}`;
  });

/** Between two of one type. One that is only declared as it lies is made no differently by being described better. */
export function makingChange(before: FileSystem, after: FileSystem): MakingChange {
  const keysChanged = differing(before, after);
  if (keysChanged.length === 0) return 'none';
  return own(after) === true || keysChanged.every((key) => key === 'reserve') ? 'in place' : 'anew';
}
