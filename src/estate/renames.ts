/** `formerly:`, by the old name. Whether a rename is one is told from two revisions, not from one. */
import { type Claim, settleClaims } from './claims.ts';
import type { Draft, Named } from './draft.ts';
import { type EstatePart, subjectKey } from './estate.ts';

export function rename(draft: Draft): void {
  settleClaims(draft, draft.formerly, carriedOn);
}

const carriedOn = ({ servers, volumes, groups }: EstatePart): readonly Claim<Named>[] =>
  [...servers, ...volumes, ...groups].flatMap((each) =>
    each.formerly === undefined
      ? []
      : [[subjectKey({ kind: each.kind, name: each.formerly }), each] as const],
  );
