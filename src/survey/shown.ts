/** What of a declared estate surveys show to be there: servers, and volumes that are told without doubt. */
import { type Estate, subjectKey } from '../estate/estate.ts';
import type { Surveys } from './compare.ts';
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
