/** `id:`, the provider's own identifier: one thing alone of a kind has it. */
import { at, type Problem } from '../base/problem.ts';
import { type Claim, settleClaims } from './claims.ts';
import type { Draft } from './draft.ts';
import { type EstatePart, type Server, subjectKey, type Volume } from './estate.ts';

/** By what an estate finds whoever has an identifier. */
export const idKey = (kind: (Server | Volume)['kind'], id: string): string => subjectKey({ kind, name: id });

export function identify(draft: Draft): readonly Problem[] {
  return [...settleClaims(draft, draft.byId, identified)].flatMap((key) => {
    const [first, ...others] = draft.byId.get(key) ?? [];
    return others.flatMap((each): readonly Problem[] =>
      // One name declared twice is told as that.
      first === undefined || each.name === first.name
        ? []
        : [
            {
              place: each.fields.of('id') ?? each.place,
              message: `the ${each.kind}s ${each.name} and ${first.name} (${at(first.fields.of('id') ?? first.place)}) have the same id, ${each.id}`,
              advice: `The provider gives each ${each.kind} an id of its own; correct one of the two, or take it out.`,
            },
          ],
    );
  });
}

const identified = ({ servers, volumes }: EstatePart): readonly Claim<Server | Volume>[] =>
  [...servers, ...volumes].flatMap((each) =>
    each.id === undefined ? [] : [[idKey(each.kind, each.id), each] as const],
  );
