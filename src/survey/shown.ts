/** What surveys show of declared estates: which servers and volumes are there without doubt, and how large they are. */
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
 * shows less than there is.
 */
export function sizesShownBy(
  estate: DeclaredThings,
  surveys: Surveys,
): (subject: Subject, size: Bytes) => boolean {
  let compared: SurveyComparison | undefined;
  return (subject, size) => {
    compared ??= compareSurveys(estate, surveys, undefined);
    const { matches, differences } = compared;
    const { name } = subject;
    if (subject.kind === 'volume') {
      const row = matches.rows.get(name);
      const sizes = [
        ...(matches.disks.get(name) ?? []).map(({ disk }) => disk.size),
        ...(row === undefined ? [] : [row.size]),
      ];
      return row !== undefined && !matches.inferred.has(name) && sizes.every((each) => each === size);
    }
    const shown = differences.filter(
      (each) => each.layer === 'logical volume' && each.surveyed !== undefined && each.subject.name === name,
    );
    return shown.length > 0 && shown.every(({ surveyed }) => surveyed === exactSize(size));
  };
}
