/** `formerly:`, by the old name. Whether a rename is one is told from two revisions, not from one. */
import { type Draft, isLater, type Named } from './draft.ts';
import { type EstatePart, subjectKey } from './estate.ts';

export function rename(draft: Draft): void {
  const touched = new Set<string>();
  const claims = (part: EstatePart): readonly (readonly [string, Named])[] =>
    [...part.servers, ...part.volumes, ...part.groups].flatMap((each) =>
      each.formerly === undefined
        ? []
        : [[subjectKey({ kind: each.kind, name: each.formerly }), each] as const],
    );
  const gone = new Set<Named>();
  for (const part of draft.leaving) {
    for (const [claim, each] of claims(part)) {
      touched.add(claim);
      gone.add(each);
    }
  }
  const come = new Map<string, Named[]>();
  for (const part of draft.coming) {
    for (const [claim, each] of claims(part)) {
      touched.add(claim);
      const list = come.get(claim);
      if (list === undefined) come.set(claim, [each]);
      else list.push(each);
    }
  }
  for (const claim of touched) {
    const stay = (draft.formerly.get(claim) ?? []).filter((each) => !gone.has(each));
    const now = [...stay, ...(come.get(claim) ?? [])].sort((a, b) => (isLater(a.place, b.place) ? 1 : -1));
    if (now.length === 0) draft.formerly.delete(claim);
    else draft.formerly.put(claim, now);
  }
}
