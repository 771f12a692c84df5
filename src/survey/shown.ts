/** What surveys show of declared estates: which servers and volumes are there without doubt, and how large they are. */
import { daysBetween, isToCome } from '../estate/dates.ts';
import { type DeclaredThings, type Estate, type Subject, subjectKey } from '../estate/estate.ts';
import { type Bytes, exactSize } from '../estate/size.ts';
import { compareSurveys, type SurveyComparison, type Surveys } from './compare.ts';
import { match } from './match.ts';

/** By `subjectKey`. */
export function shownBy(estate: Estate, { servers, provider }: Surveys): ReadonlySet<string> {
  const known = servers.filter(({ server }) => estate.servers.has(server));
  const { disks, rows } = match(estate, known, provider);
  const listed = [...estate.servers.values()].filter((server) =>
    provider?.servers.some(({ id, name }) => (id !== undefined && id === server.id) || name === server.name),
  );
  return new Set([
    ...known.map(({ server }) => subjectKey({ kind: 'server', name: server })),
    ...listed.map(({ name }) => subjectKey({ kind: 'server', name })),
    ...[...disks.keys(), ...rows.keys()].map((name) => subjectKey({ kind: 'volume', name })),
  ]);
}

/**
 * Whether all that shows the size of a volume, or of a logical volume by its file system, shows this one: a declaration
 * that says otherwise is wrong. Of a volume the provider's list has to show it, since a guest that has not looked again
 * shows less than there is; and what is older than a fortnight may show what there was before it grew.
 *
 * @param on the day of the judgement
 */
export function sizesShownBy(
  estate: DeclaredThings,
  surveys: Surveys,
  on: string,
): (subject: Subject, size: Bytes) => boolean {
  let compared: SurveyComparison | undefined;
  const isNew = (at: string | undefined): boolean => {
    const day = at?.slice(0, 10);
    return day !== undefined && daysBetween(day, on) <= 14 && !isToCome(day, on);
  };
  return (subject, size) => {
    compared ??= compareSurveys(estate, surveys, undefined);
    const { matches, differences } = compared;
    const { name } = subject;
    if (subject.kind === 'volume') {
      const seen = matches.disks.get(name) ?? [];
      // A disk that nothing tells apart may be it, and of another size.
      const isSure = !matches.inferred.has(name) && (matches.candidates.get(name) ?? []).length === 0;
      return (
        isSure &&
        isNew(surveys.provider?.at) &&
        matches.rows.get(name)?.size === size &&
        seen.every(({ survey, disk }) => disk.size === size && isNew(survey.at))
      );
    }
    const shown = differences.filter(
      (each) => each.layer === 'logical volume' && each.surveyed !== undefined && each.subject.name === name,
    );
    const atOf = (server: string | undefined): string | undefined =>
      surveys.servers.find((each) => each.server === server)?.at;
    return (
      shown.length > 0 &&
      shown.every(({ surveyed, server }) => surveyed === exactSize(size) && isNew(atOf(server)))
    );
  };
}
