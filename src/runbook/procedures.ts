/**
 * The procedures that hold: those that ship, with the estate's own over them, action by action. What each step is
 * called, and how it is done, is looked up here; the order of steps is none of theirs.
 */
import { offer } from '../base/nearest.ts';
import { at, type Problem } from '../base/problem.ts';
import type { Estate } from '../estate/estate.ts';
import type { Settings } from '../estate/settings.ts';
import { type ActionName, actionOf, actions, isAction } from './actions.ts';
import { shippedProcedures } from './generated/shipped.ts';
import type { Command, DeclaredActions, DeclaredProcedures } from './procedure-file.ts';

/** How one action is done. */
export interface Procedure {
  readonly does: string;
  readonly why: string | undefined;
  /** What is to be seen once it is done. */
  readonly seen: string | undefined;
  /** How to step back. */
  readonly back: string | undefined;
  /** Those of the action first, which no procedure takes away. */
  readonly cautions: readonly string[];
  readonly commands: readonly Command[];
}

interface Provider {
  readonly name: string;
  /** Undefined where all of them are. */
  readonly sites: readonly string[] | undefined;
  readonly procedures: ReadonlyMap<ActionName, Procedure>;
}

export interface Procedures {
  /** By the kind of guest: what is done there, and what is made sure of. */
  readonly guests: ReadonlyMap<string, ReadonlyMap<ActionName, Procedure>>;
  /** The estate's own. */
  readonly providers: readonly Provider[];
  /** The files of the estate's own. */
  readonly declared: readonly DeclaredProcedures[];
}

/** Where a step is done. */
export interface Where {
  readonly guest: string | undefined;
  readonly site: string | undefined;
}

const shipped = (of: DeclaredProcedures['of'], name: string): DeclaredProcedures | undefined =>
  shippedProcedures.find((each) => each.of === of && each.name === name);

const names = Object.keys(actions).filter(isAction);
const isOf = (of: DeclaredProcedures['of'], name: ActionName): boolean =>
  (actionOf(name).at === 'provider') === (of === 'provider');

/** The kind of guest that is described in words alone, and on which every other stands. */
const plainGuest = 'other';

/** What a repository's own files come to, over those that ship. */
export function gatherProcedures(declared: readonly DeclaredProcedures[]): {
  readonly value: Procedures;
  readonly problems: readonly Problem[];
} {
  const problems: Problem[] = [];
  const own = new Map<string, DeclaredProcedures>();
  for (const each of declared) {
    const twin = own.get(`${each.of} ${each.name}`);
    if (twin === undefined) own.set(`${each.of} ${each.name}`, each);
    else
      problems.push({
        place: each.place,
        message: `the procedures of ${each.of} ${each.name} are there twice: here and at ${at(twin.place)}`,
        advice: 'Put the two into one file.',
      });
  }
  const ownGuests = [...own.values()].filter(({ of }) => of === 'guest');
  const kinds = [
    ...new Set([...shippedProcedures, ...ownGuests].flatMap(({ of, name }) => (of === 'guest' ? name : []))),
  ];
  const faulty = new Set<DeclaredProcedures>();
  /** What holds for a kind, the nearest first. */
  const layersOf = (kind: string, below: readonly string[] = []): readonly DeclaredActions[] => {
    const [mine, theirs] = [own.get(`guest ${kind}`), shipped('guest', kind)];
    const like = mine?.like ?? theirs?.like ?? (kind === plainGuest ? undefined : plainGuest);
    const layers = [mine, theirs].flatMap((each) => each?.actions ?? []);
    if (like === undefined) return layers;
    const [fault, advice] = !kinds.includes(like)
      ? [
          `there are no procedures for a guest ${like}`,
          `${offer(like, kinds)}There are those of ${kinds.join(', ')}.`,
        ]
      : [kind, ...below].includes(like)
        ? [`guest ${kind} is like ${like}, which is like ${kind}`, 'Let one of them be like another guest.']
        : [];
    if (fault === undefined) return [...layers, ...layersOf(like, [kind, ...below])];
    // Said once, where the estate's own say it, or lead to it.
    const [told] = [kind, ...below].flatMap((each) => own.get(`guest ${each}`) ?? []);
    if (told !== undefined && !faulty.has(told)) {
      faulty.add(told);
      problems.push({ place: told.place, message: fault, advice: advice ?? '' });
    }
    return [...layers, ...(shipped('guest', plainGuest) === undefined ? [] : plainLayers)];
  };
  const plainLayers = [shipped('guest', plainGuest)?.actions ?? {}];
  const guests = new Map(kinds.map((kind) => [kind, resolved('guest', layersOf(kind))]));
  const ownProviders = [...own.values()].filter(({ of }) => of === 'provider');
  const bySite = new Map<string, DeclaredProcedures>();
  for (const each of ownProviders) {
    for (const site of each.sites ?? ['']) {
      const twin = bySite.get(site);
      if (twin === undefined) bySite.set(site, each);
      else
        problems.push({
          place: each.place,
          message: `${site === '' ? 'every site' : `site ${site}`} is of provider ${twin.name} as well, at ${at(twin.place)}`,
          advice: 'List the sites of each provider under sites.',
        });
    }
  }
  return {
    value: {
      guests,
      providers: ownProviders.map(({ name, sites, actions: said }) => ({
        name,
        sites,
        procedures: resolved('provider', [said, plainProvider]),
      })),
      declared,
    },
    problems,
  };
}

const plainProvider = shipped('provider', 'any')?.actions ?? {};

function resolved(
  of: DeclaredProcedures['of'],
  layers: readonly DeclaredActions[],
): ReadonlyMap<ActionName, Procedure> {
  const commandsOf = (name: ActionName): readonly Command[] => {
    const { as } = actionOf(name);
    const own = layers.find((layer) => layer[name]?.commands !== undefined)?.[name]?.commands;
    return own ?? (as === undefined ? [] : commandsOf(as));
  };
  return new Map(
    names.flatMap((name) => {
      if (!isOf(of, name)) return [];
      const said = layers.flatMap((layer) => layer[name] ?? []);
      const does = said.find((each) => each.does !== undefined)?.does;
      if (does === undefined) throw new Error(`no shipped procedure says what ${name} is`);
      return [
        [
          name,
          {
            does,
            why: said.find(({ why }) => why !== undefined)?.why,
            seen: said.find(({ seen }) => seen !== undefined)?.seen,
            back: said.find(({ back }) => back !== undefined)?.back,
            cautions: [...(actionOf(name).cautions ?? []), ...said.flatMap(({ cautions = [] }) => cautions)],
            commands: commandsOf(name),
          },
        ] as const,
      ];
    }),
  );
}

/** Procedures, with those of others where they have none: guest by guest, and providers where there is none at all. */
export function andProcedures(procedures: Procedures, others: Procedures): Procedures {
  if (procedures === others || others.declared.length === 0) return procedures;
  const guests = new Map([...others.guests, ...procedures.guests]);
  const providers = procedures.providers.length > 0 ? procedures.providers : others.providers;
  return { guests, providers, declared: procedures.declared };
}

/** Servers of a kind of guest for which there are no procedures. */
export const guestProblems = ({ servers }: Estate, { guests }: Procedures): readonly Problem[] =>
  [...servers.values()].flatMap(({ name, guest, place, fields }): readonly Problem[] =>
    guest === undefined || guests.has(guest)
      ? []
      : [
          {
            place: fields.of('guest') ?? place,
            message: `there are no procedures for the guest ${guest} of server ${name}`,
            advice: `${offer(guest, [...guests.keys()])}There are those of ${[...guests.keys()].join(', ')}; your own are kept in procedures/.`,
          },
        ],
  );

/** Sites of a provider that the settings do not list: its procedures would be for none of what is there. */
export const siteProblems = ({ sites, listed }: Settings, { declared }: Procedures): readonly Problem[] =>
  declared.flatMap(({ name, place, sites: own = [], sitePlaces = [] }) =>
    own.flatMap((site, index): readonly Problem[] => {
      if (sites.size === 0 || sites.has(site)) return [];
      const known = [...sites.keys()];
      return [
        {
          place: sitePlaces[index] ?? place,
          message: `the provider ${name} has the site ${site}, and ullage.yaml does not list that site`,
          advice: `${offer(site, known)}${listed.sites === undefined ? 'ullage.yaml' : at(listed.sites)} lists ${known.join(', ')}: list ${site} there, or correct the name.`,
        },
      ];
    }),
  );

/** Those that ship, where a repository has none of its own. */
export const plainProcedures: Procedures = gatherProcedures([]).value;

const ofAnyProvider = resolved('provider', [plainProvider]);

/** How an action is done where it is done. */
export function procedureFor(
  { guests, providers }: Procedures,
  name: ActionName,
  { guest, site }: Where,
): Procedure {
  const table =
    actionOf(name).at === 'provider'
      ? ((
          providers.find(({ sites }) => site !== undefined && sites?.includes(site) === true) ??
          providers.find(({ sites }) => sites === undefined)
        )?.procedures ?? ofAnyProvider)
      : (guests.get(guest ?? plainGuest) ?? guests.get(plainGuest));
  const procedure = table?.get(name);
  if (procedure === undefined) throw new Error(`no shipped procedure says what ${name} is`);
  return procedure;
}
