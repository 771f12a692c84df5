/** Whom a rule is for: by team, site, tier and label. Equality and lists; every key given must match. */
import type { Change } from '../change/change.ts';
import { involvedIn } from '../change/involved.ts';
import type { RuleEntry } from '../rules/rule.ts';
import type { Scope } from '../rules/scope.ts';
import type { ChangeView } from '../rules/view.ts';

export function scopeOf({ where }: Pick<RuleEntry, 'where'>): Scope {
  if (where === undefined) return everything;
  const { teams, sites, tiers, labels } = where;
  const wanted = Object.entries(labels ?? {}).map(
    ([key, values]) => [key, typeof values === 'string' ? [values] : values] as const,
  );
  return {
    includes: ({ team, site, tier, labels: own }) =>
      among(teams, team) &&
      among(sites, site) &&
      among(tiers, tier) &&
      wanted.every(([key, values]) => among(values, Object.hasOwn(own, key) ? own[key] : undefined)),
  };
}

/** For an entry that is asked about whatever it is shown. */
export const everything: Scope = { includes: () => true };

const among = (wanted: readonly string[] | undefined, value: string | undefined): boolean =>
  wanted === undefined || (value !== undefined && wanted.includes(value));

/** The changes that an entry is for: those that involve anything in its scope, whatever it is called after them. */
export function changesInScope(entry: RuleEntry, view: ChangeView): readonly Change[] {
  if (entry.where === undefined) return view.changes;
  const scope = scopeOf(entry);
  const sides = { base: view.base.estate, head: view.head.estate, renames: view.renames };
  return view.changes.filter((change) => involvedIn(change, sides).some((thing) => scope.includes(thing)));
}
