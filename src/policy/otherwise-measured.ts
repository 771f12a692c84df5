/** Which of an estate is to be judged again where surveys measure it otherwise than before. */
import { emptySelection, type Selection } from '../change/touched.ts';
import type { Estate } from '../estate/estate.ts';
import type { SurveyedCapacity } from '../survey/measured.ts';

/** What hangs on figures that are no longer what they were, under its own name or the one that it carries on. */
export function otherwiseMeasured(
  estate: Estate,
  was: SurveyedCapacity | undefined,
  now: SurveyedCapacity | undefined,
): Selection | undefined {
  if (was === now) return undefined;
  const names = new Set([
    ...differing(was?.members, now?.members),
    ...[...differing(was?.bySystem, now?.bySystem)].map((name) => name.split(':')[0] ?? ''),
  ]);
  if (names.size === 0) return undefined;
  const isMeant = ({
    name,
    formerly = name,
  }: {
    readonly name: string;
    readonly formerly?: string | undefined;
  }) => names.has(name) || names.has(formerly);
  const volumes = [...estate.volumes.values()].filter(isMeant);
  const groups = new Set([
    ...volumes.flatMap(({ name }) => estate.groupOf.get(name) ?? []),
    ...[...estate.groups.values()].filter(isMeant),
  ]);
  const fileSystems = [
    ...volumes.flatMap(({ fileSystem }) => fileSystem ?? []),
    ...[...groups].flatMap((group) => group.fileSystems),
  ];
  return { ...emptySelection, volumes, groups: [...groups], fileSystems };
}

function* differing<T>(
  was: ReadonlyMap<string, T> = new Map(),
  now: ReadonlyMap<string, T> = new Map(),
): Iterable<string> {
  for (const [name, figure] of was) if (now.get(name) !== figure) yield name;
  for (const name of now.keys()) if (!was.has(name)) yield name;
}
