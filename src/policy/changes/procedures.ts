/**
 * Procedures that a branch brings, alters or takes away. Its own steps go by main's, where main has them; but whoever
 * merges it is told, since the next branch's steps go by these.
 */
import { onBase, onHead } from '../../change/place.ts';
import type { PolicyChange } from '../../rules/view.ts';
import type { DeclaredProcedures } from '../../runbook/procedure-file.ts';
import type { Procedures } from '../../runbook/procedures.ts';
import { allNames, policyChange } from './change.ts';

const byName = ({ declared }: Procedures): ReadonlyMap<string, DeclaredProcedures> =>
  new Map(declared.map((each) => [`${each.of} ${each.name}`, each]));

export function procedureChanges(base: Procedures, head: Procedures): readonly PolicyChange[] {
  if (base.declared === head.declared) return [];
  const [before, after] = [byName(base), byName(head)];
  return allNames(before, after).flatMap((name): readonly PolicyChange[] => {
    const [was, now] = [before.get(name), after.get(name)];
    const place = now === undefined ? was && onBase(was.place) : onHead(now.place);
    const told = { direction: 'neither', of: 'procedures', name, place } as const;
    if (was === undefined || now === undefined)
      return [policyChange({ ...told, ...(was === undefined ? { to: name } : { from: name }) })];
    const [from, to] = [saidOf(was), saidOf(now)];
    return allNames(from, to)
      .filter((key) => from.get(key) !== to.get(key))
      .map((key) => policyChange({ ...told, key }));
  });
}

/** What a file says, piece by piece, wherever it stands. */
const saidOf = ({ actions, like, sites }: DeclaredProcedures): ReadonlyMap<string, string> =>
  new Map(
    Object.entries({ ...actions, like, sites }).map(([key, said]) => [key, JSON.stringify(said) ?? '']),
  );
