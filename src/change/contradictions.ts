/**
 * Renames that contradict each other: the old name is still there, or two carry it on. It takes both revisions to tell:
 * a `formerly` that main has carried out renames nothing, and its old name is free for another thing.
 */
import { at, type Problem } from '../base/problem.ts';
import type { Estate, EstatePart, Server, Volume, VolumeGroup } from '../estate/estate.ts';
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
      if (formerly === undefined || !before.has(formerly) || before.has(name)) continue;
      const refuse = (message: string, advice: string): void => {
        problems.push({ place: each.fields.of('formerly') ?? each.place, message, advice, revision: 'head' });
      };
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
