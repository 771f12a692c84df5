/**
 * Whether everything that a file declares is somewhere, and somebody's. A limit holds for a site or a team: what names
 * neither, or one that nobody knows, would slip past every limit there is.
 */
import { offer } from '../base/nearest.ts';
import { at, type Place, type Problem } from '../base/problem.ts';
import { counted } from '../base/wording.ts';
import { type EstatePart, type Server, unreadName, type Volume, type VolumeGroup } from './estate.ts';
import type { Settings } from './settings.ts';

type Declaration = Server | Volume | VolumeGroup;

/** The sites and teams of a file, held against those that the settings list; nothing is asked where they list none. */
export function belongingProblems(
  part: EstatePart,
  { sites, teams, listed }: Pick<Settings, 'sites' | 'teams' | 'listed'>,
): readonly Problem[] {
  const { servers, volumes, groups } = part;
  const billed = [...servers.filter(({ type }) => type !== undefined), ...volumes];
  return [
    ...(sites.size === 0
      ? []
      : [
          ...unlisted(part, 'site', [...servers, ...volumes], [...sites.keys()], listed.sites),
          ...unnamed('site', [...servers, ...volumes], 'each with its quota and its attachment slots'),
        ]),
    ...(teams.length === 0
      ? []
      : [
          ...unlisted(part, 'team', [...servers, ...volumes, ...groups], teams, listed.teams),
          ...unnamed('team', billed, 'for which a policy sets spend limits'),
        ]),
  ];
}

type Key = 'site' | 'team';

function unlisted(
  part: EstatePart,
  key: Key,
  things: readonly Declaration[],
  known: readonly string[],
  listed: Place | undefined,
): readonly Problem[] {
  const told = new Set<string>();
  return things.flatMap((thing): readonly Problem[] => {
    const named = thing[key];
    if (named === undefined || named === unreadName || known.includes(named)) return [];
    // A file's own site or team serves all in it: one mistake there is one problem.
    const own = thing.fields.of(key);
    if (own === undefined && told.has(named)) return [];
    told.add(named);
    return [
      {
        place: own ?? part.fields.of(key) ?? thing.place,
        message: `the ${spoken(thing)} ${thing.name} ${own === undefined ? `takes the ${key} ${named} from the file's own ${key}` : `names the ${key} ${named}`}, and ullage.yaml does not list that ${key}`,
        advice: `${offer(named, known)}${listed === undefined ? 'ullage.yaml' : at(listed)} lists ${someOf(known)}: list ${named} there, or correct the name.`,
      },
    ];
  });
}

/** The first few; who has many sites finds the rest where they are listed. */
const someOf = (names: readonly string[]): string =>
  names.length <= mostNamed
    ? names.join(', ')
    : `${names.slice(0, mostNamed).join(', ')} and ${names.length - mostNamed} more`;

const mostNamed = 6;

/** What names none is told once a file: a line at its top mends all of it. */
function unnamed(key: Key, things: readonly Declaration[], limits: string): readonly Problem[] {
  const [first, ...others] = things.filter((thing) => thing[key] === undefined).sort(byLine);
  if (first === undefined) return [];
  const more =
    others.length === 0
      ? `names no ${key}`
      : `and ${counted(others.length, 'other thing')} in this file have no ${key}`;
  return [
    {
      place: first.place,
      message: `the ${spoken(first)} ${first.name} ${more}, and ullage.yaml lists the ${key}s, ${limits}`,
      advice: `Write \`${key}:\` at the top of the file for all that is in it, or on each that needs it.`,
    },
  ];
}

const spoken = ({ kind }: Declaration): string => kind.replace('-', ' ');

const byLine = (a: { readonly place: Place }, b: { readonly place: Place }): number =>
  a.place.line - b.place.line || a.place.column - b.place.column;
