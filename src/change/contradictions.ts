/**
 * Names and identifiers that contradict each other: an old name that is still there, that two carry on, or that one
 * carries on which main has beside it; an identifier that main gives to another thing. It takes both revisions to tell: a
 * `formerly` that main has carried out renames nothing, and its old name is free for another thing.
 */
import { at, type Problem } from '../base/problem.ts';
import type { Estate, EstatePart, Server, Volume, VolumeGroup } from '../estate/estate.ts';
import { idKey } from '../estate/ids.ts';
import type { DifferingPart } from './pairs.ts';

type Named = Server | Volume | VolumeGroup;

export function contradictions(
  base: Estate,
  head: Estate,
  differing: readonly DifferingPart[],
): readonly Problem[] {
  const problems: Problem[] = [];
  const heirs = new Map<string, Named>();
  for (const { after } of differing) {
    for (const each of after === undefined ? [] : declaredIn(after)) {
      const { kind, name, formerly } = each;
      const before = namesakes(base, kind);
      const ofOwn = before.get(name);
      // A line that main has, too, on the same thing has been carried out.
      const isNew = formerly !== name && ofOwn?.formerly !== formerly;
      const carriesOn = isNew && formerly !== undefined && before.has(formerly);
      const taken = takenId(base, each);
      if (taken !== undefined && !(carriesOn && taken.other.name === formerly)) problems.push(taken.problem);
      if (!carriesOn) continue;
      const refuse = (message: string, advice: string): void => {
        problems.push({ place: each.fields.of('formerly') ?? each.place, message, advice, revision: 'head' });
      };
      // One of the two goes, and by the line it is not the one that its name says: none of both may be deleted for it.
      if (ofOwn !== undefined) {
        refuse(
          `${name} has formerly: ${formerly}, but main has a ${words(kind)} ${name} beside ${formerly}, so that it cannot be told which of the two this is`,
          `If it is what main calls ${name}, delete the formerly line. If it is what main calls ${formerly}, give it a name that main does not have; the name ${name} is free once main has nothing of that name.`,
        );
        continue;
      }
      const still = namesakes(head, kind).get(formerly);
      if (still !== undefined) {
        refuse(
          `${name} has formerly: ${formerly}, but ${formerly} is still declared at ${at(still.place)}`,
          'A rename leaves one of the two; delete the old declaration, or the formerly line.',
        );
      }
      const rival = heirs.get(`${kind} ${formerly}`);
      if (rival !== undefined) {
        refuse(
          `${name} and ${rival.name} (${at(rival.place)}) both have formerly: ${formerly}`,
          'Only one can carry on the old name; delete the other formerly line.',
        );
      } else heirs.set(`${kind} ${formerly}`, each);
    }
  }
  return problems;
}

/** One disk under two names: the steps for the one would be carried out on the other. */
function takenId(
  base: Estate,
  each: Named,
): { readonly other: Named; readonly problem: Problem } | undefined {
  if (each.kind === 'volume-group' || each.id === undefined) return undefined;
  const { kind, name, formerly = name, id } = each;
  const [other] = base.byId.get(idKey(kind, id)) ?? [];
  const before = namesakes(base, kind).has(name) ? name : formerly;
  if (other === undefined || other.name === before) return undefined;
  const problem: Problem = {
    place: each.fields.of('id') ?? each.place,
    message: `the ${kind} ${name} has the id ${id}, which on main is that of ${other.name} (${at(other.place)})`,
    advice: `If it is the same ${kind} under another name, write formerly: ${other.name}. If main has the id in the wrong place, take it out there first, in a change of its own.`,
    revision: 'head',
  };
  return { other, problem };
}

const words = (kind: Named['kind']): string => kind.replace('-', ' ');

const declaredIn = ({ servers, volumes, groups }: EstatePart): readonly Named[] => [
  ...servers,
  ...volumes,
  ...groups,
];

function namesakes(estate: Estate, kind: Named['kind']): ReadonlyMap<string, Named> {
  switch (kind) {
    case 'server':
      return estate.servers;
    case 'volume':
      return estate.volumes;
    case 'volume-group':
      return estate.groups;
  }
}
