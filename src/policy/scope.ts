/** Whom a rule is for: by team, site, tier and label. Equality and lists; every key given must match. */
import type { RuleEntry } from '../rules/rule.ts';
import type { Scope } from '../rules/view.ts';

export function scopeOf({ where }: Pick<RuleEntry, 'where'>): Scope {
  if (where === undefined) return everything;
  const { teams, sites, tiers, labels } = where;
  const wanted = Object.entries(labels ?? {}).map(
    ([key, values]) => [key, typeof values === 'string' ? [values] : values] as const,
  );
  return {
    includes: (belonging, tier) =>
      among(teams, belonging.team) &&
      among(sites, belonging.site) &&
      among(tiers, tier) &&
      wanted.every(([key, values]) =>
        among(values, Object.hasOwn(belonging.labels, key) ? belonging.labels[key] : undefined),
      ),
  };
}

const everything: Scope = { includes: () => true };

const among = (wanted: readonly string[] | undefined, value: string | undefined): boolean =>
  wanted === undefined || (value !== undefined && wanted.includes(value));
