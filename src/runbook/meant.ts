/**
 * Which of two things of one name a step is about, where another takes the place and the name of what is there: the
 * old one, or what is made anew. The two have each its own identifier, its own site and so its own provider; a command
 * with the other's would be carried out on the other.
 */
import { isAnotherById } from '../change/pairs.ts';
import type { Server, Volume } from '../estate/estate.ts';
import type { ActionName } from './actions.ts';
import type { Wanted } from './draft.ts';
import type { Sequence } from './sequence.ts';
import type { Sides } from './sides.ts';

export interface Meant {
  /** Undefined where nobody can know it: what is made anew has its own once it is there. */
  readonly id: string | undefined;
  readonly site: string | undefined;
}

/** Those that say which of two volumes they are about. */
const saying: Partial<Readonly<Record<ActionName, 'old' | 'anew'>>> = {
  'detach-old': 'old',
  'unprotect-old': 'old',
  'delete-old': 'old',
  'replace-member': 'old',
  'put-smaller-in-place': 'old',
  'create-smaller': 'anew',
  'attach-smaller': 'anew',
  'fill-smaller': 'anew',
  'copy-across': 'anew',
};

/** An act, among all that are wanted. */
export interface Doing {
  readonly key: string;
  readonly wanted: Wanted;
  readonly sequence: Sequence;
}

/** With what another takes the place of a volume, which from then on is known by its name. */
export const takesPlace = (volume: string): readonly string[] => [
  `copy-across ${volume}`,
  `replaced ${volume}`,
  `fill ${volume}`,
];

export function volumeMeant(sides: Sides, doing: Doing, name: string): Meant {
  const { key, wanted, sequence } = doing;
  const turn = takesPlace(name).find((each) => sides.madeAnew.has(name) && sequence.has(each));
  return meant(
    sides.base.volumes.get(sides.baseName('volumes', name)),
    sides.head.volumes.get(name),
    turn === undefined ? 'one' : (saying[wanted.procedure] ?? sideOf(sequence, key, turn)),
  );
}

/** A server that moves to another site may be created again there. */
export function serverMeant(sides: Sides, { key, sequence }: Doing, name: string): Meant {
  const turn = `move-server ${name}`;
  return meant(
    sides.serverBefore(name),
    sides.head.servers.get(name),
    !sequence.has(turn) ? 'one' : key === turn ? 'old' : sideOf(sequence, key, turn),
  );
}

type Which = 'one' | 'old' | 'anew' | 'untold';

const sideOf = (sequence: Sequence, key: string, turn: string): Which =>
  sequence.isBefore(key, turn) ? 'old' : sequence.waits(key, turn) ? 'anew' : 'untold';

function meant(before: Server | Volume | undefined, after: Server | Volume | undefined, which: Which): Meant {
  if (before === undefined || after === undefined)
    return { id: (after ?? before)?.id, site: (after ?? before)?.site };
  const isAnother = isAnotherById(before, after);
  switch (which) {
    // Which of two identifiers it has is found out first.
    case 'one':
      return { id: isAnother ? undefined : (after.id ?? before.id), site: after.site };
    case 'old':
      return { id: before.id, site: before.site };
    case 'anew':
      return { id: isAnother ? after.id : undefined, site: after.site };
    case 'untold':
      return { id: undefined, site: after.site };
  }
}

/** At whose site a step is done: that of the volume that it is about, or else that of its server. */
export function siteMeant(sides: Sides, doing: Doing): string | undefined {
  const { subject, server, words } = doing.wanted;
  const ofServer = server === undefined ? undefined : serverMeant(sides, doing, server).site;
  return subject.kind === 'server'
    ? ofServer
    : (volumeMeant(sides, doing, words.volume ?? subject.name).site ?? ofServer);
}
