/** A guest that is declared as less than it is, such as one without volume groups that has one, is shown no commands. */
import { actionOf } from './actions.ts';
import type { Wanted } from './draft.ts';
import type { Placed } from './plan.ts';
import { type Procedures, procedureFor } from './procedures.ts';
import type { Sides } from './sides.ts';

/** By the key of the first step of a server that has no commands, and would have some in a fuller guest: what to declare. */
export function guestHints(
  sides: Sides,
  procedures: Procedures,
  placed: readonly Placed<Wanted>[],
): ReadonlyMap<string, string> {
  const told = new Set<string>();
  return new Map(
    placed.flatMap(({ key, act: { procedure, server } }) => {
      if (server === undefined || told.has(server) || actionOf(procedure).at === 'provider') return [];
      const commandsOf = (guest: string): number =>
        procedureFor(procedures, procedure, { guest, site: undefined }).commands.length;
      const own = sides.guest(server);
      const fuller = [...procedures.guests.keys()].find(
        (guest) => guest.startsWith(`${own}-`) && commandsOf(guest) > 0,
      );
      if (fuller === undefined || commandsOf(own) > 0) return [];
      told.add(server);
      return [
        [
          key,
          `${server} says guest: ${own}, for which there is no command; for guest: ${fuller} there is.`,
        ] as const,
      ];
    }),
  );
}
