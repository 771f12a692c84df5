/**
 * How much a survey tells, whatever it tells: which of its parts were seen, and which facts it has of each thing. One that
 * was taken without a privilege, or of a list with fewer columns, shows fewer differences, and not because there are fewer.
 */
import type { ProviderSurvey } from './provider-survey.ts';
import { type Survey, unseeable } from './survey.ts';

export interface Coverage {
  readonly parts: ReadonlySet<string>;
  /** By thing, and for all things of a kind together: the facts that are told. */
  readonly facts: ReadonlyMap<string, ReadonlySet<string>>;
}

export const coverageOf = (survey: Survey | ProviderSurvey): Coverage =>
  'lists' in survey ? ofProvider(survey) : ofServer(survey);

/** Whether a newer survey tells of everything of which an older one did, as far as both have it. */
export function isCovered(older: Coverage, newer: Coverage): boolean {
  return (
    isWithin(older.parts, newer.parts) &&
    [...older.facts].every(([thing, facts]) => isWithin(facts, newer.facts.get(thing) ?? facts))
  );
}

const isWithin = (some: ReadonlySet<string>, all: ReadonlySet<string>): boolean =>
  [...some].every((each) => all.has(each));

function ofServer({ unseen, devices }: Survey): Coverage {
  const disks = devices.filter(({ type }) => type === 'disk');
  return {
    parts: new Set(unseeable.filter((part) => !unseen.some((each) => each === part))),
    facts: factsOf('disk', disks, ({ name }) => [name], ['serial']),
  };
}

const ofProvider = ({ lists, volumes, servers }: ProviderSurvey): Coverage => ({
  parts: new Set(lists),
  facts: new Map([
    ...factsOf('volume', volumes, keysOf, ['id', 'name', 'tier', 'site', 'servers', 'boot']),
    ...factsOf('server', servers, keysOf, ['id', 'name', 'site', 'type', 'power', 'boot']),
  ]),
});

const keysOf = ({ id, name }: Named): readonly string[] =>
  [id === undefined ? [] : `id ${id}`, name === undefined ? [] : `name ${name}`].flat();

interface Named {
  readonly id: string | undefined;
  readonly name: string | undefined;
}

/** By each of a thing's keys, since the newer survey may know it by one of them; and what is told of any of its kind. */
function factsOf<T>(
  kind: string,
  things: readonly T[],
  keysOfThing: (thing: T) => readonly string[],
  facts: readonly (keyof T & string)[],
): ReadonlyMap<string, ReadonlySet<string>> {
  const told = (thing: T): readonly string[] => facts.filter((fact) => thing[fact] !== undefined);
  return new Map([
    ...things.flatMap((thing) =>
      keysOfThing(thing).map((key) => [`${kind} ${key}`, new Set(told(thing))] as const),
    ),
    ...(things.length === 0 ? [] : [[`${kind}s`, new Set(things.flatMap(told))] as const]),
  ]);
}
