/**
 * What two estates declare, paired thing by thing.
 *
 * A file that both revisions hold is the same `EstatePart` object, and all in it is passed over unread: the
 * cost grows with what changed, not with the estate.
 */
import { apart } from '../estate/apart.ts';
import type { Belonging, Estate, EstatePart, Subject } from '../estate/estate.ts';
import { mayDiffer } from '../estate/layered.ts';
import type { Wiped } from './change.ts';
import { type RenamesOfKind, renamesOfKind } from './renames.ts';

/** A file whose declarations differ, or that only one side has: what the two sides do not share of it. */
export interface DifferingPart {
  readonly file: string;
  readonly before: EstatePart | undefined;
  readonly after: EstatePart | undefined;
}

export function differingParts(base: Estate, head: Estate): readonly DifferingPart[] {
  const differing: DifferingPart[] = [];
  for (const file of mayDiffer(base.parts, head.parts)) {
    const before = base.parts.get(file);
    const after = head.parts.get(file);
    if (after === before) continue;
    const [was, is] = before === undefined || after === undefined ? [before, after] : apart(before, after);
    differing.push({ file, before: was, after: is });
  }
  return differing.sort((a, b) => (a.file < b.file ? -1 : 1));
}

/** One thing on both sides; absent from one where it came or went. */
export interface Pair<T> {
  readonly before: T | undefined;
  readonly after: T | undefined;
}

export interface Pairs<T> {
  readonly pairs: readonly Pair<T>[];
  readonly renames: RenamesOfKind;
}

interface Renamable {
  readonly name: string;
  readonly formerly: string | undefined;
}

/** Pairs what the differing files declare: by name, and by `formerly` where the old name is gone. */
export function pair<T extends Renamable>(
  differing: readonly DifferingPart[],
  declared: (part: EstatePart) => readonly T[],
  base: ReadonlyMap<string, T>,
  head: ReadonlyMap<string, T>,
): Pairs<T> {
  const names = new Set<string>();
  for (const { before, after } of differing) {
    for (const { name } of before === undefined ? [] : declared(before)) names.add(name);
    for (const { name } of after === undefined ? [] : declared(after)) names.add(name);
  }
  const renames = new Map<string, string>();
  for (const name of names) {
    const formerly = head.get(name)?.formerly;
    // A formerly that main has carried out already (the old name is gone there too) renames nothing now.
    if (formerly !== undefined && base.has(formerly) && !base.has(name)) renames.set(formerly, name);
  }
  const pairs: Pair<T>[] = [];
  const renamedTo = new Set(renames.values());
  for (const name of [...names].sort()) {
    if (renamedTo.has(name)) continue;
    const before = base.get(name);
    const after = head.get(renames.get(name) ?? name);
    if (before !== after) pairs.push({ before, after });
  }
  return { pairs, renames: renamesOfKind(renames) };
}

export const sameLabels = (
  a: Readonly<Record<string, string>>,
  b: Readonly<Record<string, string>>,
): boolean => {
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => a[key] === b[key]);
};

/** Saying where a thing is, where nothing said so before, moves nothing. */
export const isToldSite = (before: Belonging, after: Belonging): boolean =>
  before.site === undefined && after.site !== undefined;

/** A thing that has told its identifier on both sides is another where the two differ; told once, it is what it was. */
export const isAnotherById = (before: Identified, after: Identified): boolean =>
  before.id !== undefined && after.id !== undefined && before.id !== after.id;

interface Identified {
  readonly id: string | undefined;
}

export const isMove = (before: Belonging, after: Belonging): boolean =>
  before.site !== after.site && !isToldSite(before, after);

export const subjectOf = ({ kind, name }: Subject): Subject => ({ kind, name });

/** Of volumes by their names on the head: those that were there before, as `Wiped` has them. */
export type FormerVolumes = (names: readonly string[]) => readonly Wiped[];
