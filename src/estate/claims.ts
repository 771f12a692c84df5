/** What declarations lay claim to by a key of theirs: an old name, a provider's identifier. */
import { type Draft, type Entries, isLater, type Named } from './draft.ts';
import type { EstatePart } from './estate.ts';

export type Claim<T extends Named> = readonly [key: string, of: T];

/**
 * Brings a list of claimants up to date, each list in order of place.
 *
 * @returns the keys whose claimants may differ from before
 */
export function settleClaims<T extends Named>(
  draft: Draft,
  entries: Entries<readonly T[]>,
  claimsOf: (part: EstatePart) => readonly Claim<T>[],
): ReadonlySet<string> {
  const touched = new Set<string>();
  const gone = new Set<T>();
  for (const part of draft.leaving) {
    for (const [key, each] of claimsOf(part)) {
      touched.add(key);
      gone.add(each);
    }
  }
  const come = new Map<string, T[]>();
  for (const part of draft.coming) {
    for (const [key, each] of claimsOf(part)) {
      touched.add(key);
      const list = come.get(key);
      if (list === undefined) come.set(key, [each]);
      else list.push(each);
    }
  }
  for (const key of touched) {
    const stay = (entries.get(key) ?? []).filter((each) => !gone.has(each));
    const now = [...stay, ...(come.get(key) ?? [])].sort((a, b) => (isLater(a.place, b.place) ? 1 : -1));
    if (now.length === 0) entries.delete(key);
    else entries.put(key, now);
  }
  return touched;
}
