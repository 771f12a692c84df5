/** `formerly:`, held against what is declared: a rename leaves one name, and one thing takes it up. */
import { at, type Draft, type Entries, isLater, type Named } from './draft.ts';
import type { EstatePart, Server, Volume, VolumeGroup } from './estate.ts';

export function rename(draft: Draft): void {
  const claim = ({ kind }: Named, name: string): string => `${kind} ${name}`;
  const declared = (part: EstatePart): readonly Named[] => [...part.servers, ...part.volumes, ...part.groups];
  for (const part of draft.leaving) {
    for (const each of declared(part))
      if (each.formerly !== undefined) draft.formerly.delete(claim(each, each.formerly));
  }
  for (const part of draft.coming) {
    for (const each of declared(part)) {
      if (each.formerly === undefined) continue;
      const rival = draft.formerly.get(claim(each, each.formerly));
      if (rival === undefined) draft.formerly.put(claim(each, each.formerly), each);
      else if (rival !== each) {
        const [first, second] = isLater(each.place, rival.place) ? [rival, each] : [each, rival];
        draft.problems.push({
          place: second.fields.of('formerly') ?? second.place,
          message: `${second.name} and ${first.name} (${at(first.place)}) both have formerly: ${each.formerly}`,
          advice: `Only one can be the former ${each.formerly}; delete the other formerly line.`,
        });
      }
    }
  }
  const said = new Set<Named>();
  for (const part of draft.coming) {
    for (const each of declared(part)) {
      const renamed = each.formerly === undefined ? draft.formerly.get(claim(each, each.name)) : each;
      if (renamed?.formerly === undefined || said.has(renamed)) continue;
      const still = namesakes(draft, renamed).get(renamed.formerly);
      if (still === undefined) continue;
      said.add(renamed);
      draft.problems.push({
        place: renamed.fields.of('formerly') ?? renamed.place,
        message: `${renamed.name} has formerly: ${renamed.formerly}, but ${renamed.formerly} is still declared at ${at(still.place)}`,
        advice:
          'After a rename only one of the two exists; delete the old declaration, or the formerly line.',
      });
    }
  }
}

function namesakes(draft: Draft, { kind }: Named): Entries<Server> | Entries<Volume> | Entries<VolumeGroup> {
  switch (kind) {
    case 'server':
      return draft.servers;
    case 'volume':
      return draft.volumes;
    case 'volume-group':
      return draft.groups;
  }
}
