/** What differs between the rules of two policies. */
import { Decimal } from 'decimal.js';
import { onBase, onHead } from '../../change/place.ts';
import { parseSize } from '../../estate/size.ts';
import { ruleOf } from '../../rules/registry.ts';
import { levels, type Parameter } from '../../rules/rule.ts';
import type { PolicyChange } from '../../rules/view.ts';
import { type PolicyRule, writtenElsewhere } from '../policy.ts';
import { allNames, type Direction, policyChange } from './change.ts';

const shown = (value: unknown): string | undefined =>
  value === undefined ? undefined : typeof value === 'string' ? value : JSON.stringify(value);

const byName = <T extends { readonly name: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.name, item]));

export function ruleChanges(
  base: readonly PolicyRule[],
  head: readonly PolicyRule[],
): readonly PolicyChange[] {
  const before = byName(base);
  const after = byName(head);
  return allNames(before, after).flatMap((name): readonly PolicyChange[] => {
    const old = before.get(name);
    const now = after.get(name);
    if (old === undefined) {
      if (now === undefined) return [];
      return [
        policyChange({
          direction: 'tighter',
          of: 'rule',
          name,
          to: now.entry.rule,
          ...atHead(now),
        }),
      ];
    }
    if (now === undefined)
      return [
        policyChange({
          direction: 'looser',
          of: 'rule',
          name,
          from: old.entry.rule,
          place: onBase(old.place),
          written: writtenElsewhere(old.origin),
        }),
      ];
    if (old.entry.rule !== now.entry.rule) {
      return [
        policyChange({
          direction: 'unknown',
          of: 'rule',
          name,
          key: 'rule',
          from: old.entry.rule,
          to: now.entry.rule,
          ...atHead(now),
        }),
      ];
    }
    return entryChanges(old, now);
  });
}

const atHead = ({ place, origin }: PolicyRule) => ({
  place: onHead(place),
  written: writtenElsewhere(origin),
});

function entryChanges(old: PolicyRule, now: PolicyRule): readonly PolicyChange[] {
  const common = { of: 'rule', name: now.name, ...atHead(now) } as const;
  const changes: PolicyChange[] = [];
  if (old.level !== now.level) {
    const direction = levels.indexOf(now.level) > levels.indexOf(old.level) ? 'looser' : 'tighter';
    changes.push(policyChange({ ...common, direction, key: 'level', from: old.level, to: now.level }));
  }
  for (const { key, ...told } of scopeChanges(old.entry.where ?? {}, now.entry.where ?? {}))
    changes.push(policyChange({ ...common, ...told, key: `where.${key}` }));
  const before: ReadonlyMap<string, unknown> = new Map(Object.entries(old.entry));
  const after: ReadonlyMap<string, unknown> = new Map(Object.entries(now.entry));
  for (const [key, parameter] of Object.entries(ruleOf(now.entry).parameters)) {
    const [from, to] = [before.get(key), after.get(key)];
    if (JSON.stringify(from) === JSON.stringify(to)) continue;
    const direction = parameterDirection(parameter, from, to);
    if (direction !== 'same')
      changes.push(policyChange({ ...common, direction, key, from: shown(from), to: shown(to) }));
  }
  return changes;
}

interface ScopeChange {
  readonly key: string;
  readonly direction: Direction;
  readonly from: string | undefined;
  readonly to: string | undefined;
}

type Where = NonNullable<PolicyRule['entry']['where']>;

/** Fewer subjects in scope is looser, whatever the rule: less is looked at, and a sum over less is smaller. */
function scopeChanges(before: Where, after: Where): readonly ScopeChange[] {
  const flat = ({ teams, sites, tiers, labels }: Where): ReadonlyMap<string, readonly string[]> => {
    const keys = new Map<string, readonly string[]>();
    if (teams !== undefined) keys.set('teams', teams);
    if (sites !== undefined) keys.set('sites', sites);
    if (tiers !== undefined) keys.set('tiers', tiers);
    for (const [label, values] of Object.entries(labels ?? {})) {
      keys.set(`labels.${label}`, typeof values === 'string' ? [values] : values);
    }
    return keys;
  };
  const old = flat(before);
  const now = flat(after);
  return allNames(old, now).flatMap((key): readonly ScopeChange[] => {
    const from = old.get(key);
    const to = now.get(key);
    const direction = listDirection(from, to);
    return direction === 'same' ? [] : [{ key, direction, from: from?.join(', '), to: to?.join(', ') }];
  });
}

/** Lists of what is chosen, left out meaning all. */
function listDirection(
  from: readonly string[] | undefined,
  to: readonly string[] | undefined,
): Direction | 'same' {
  if (from === undefined) return to === undefined ? 'same' : 'looser';
  if (to === undefined) return 'tighter';
  const lost = from.some((each) => !to.includes(each));
  const gained = to.some((each) => !from.includes(each));
  if (lost && gained) return 'unknown';
  return lost ? 'looser' : gained ? 'tighter' : 'same';
}

/** Which way one parameter went. `same` where two ways of writing mean one value. */
export function parameterDirection(parameter: Parameter, from: unknown, to: unknown): Direction | 'same' {
  const { looser, absent, schema } = parameter;
  if (looser === 'neither') return 'neither';
  if (looser === 'unknown') return 'unknown';
  const before = from ?? (absent === 'default' ? schema.default : undefined);
  const after = to ?? (absent === 'default' ? schema.default : undefined);
  if (before === undefined || after === undefined) {
    if (before === undefined && after === undefined) return 'same';
    const given = before === undefined;
    // From absent to a value leaves the loosest (or the tightest) end; to absent goes there.
    return (absent === 'loosest') === given ? 'tighter' : 'looser';
  }
  switch (looser) {
    case 'higher':
    case 'lower': {
      const order = compareValues(before, after);
      if (order === undefined) return 'unknown';
      if (order === 0) return 'same';
      return order < 0 === (looser === 'higher') ? 'looser' : 'tighter';
    }
    case 'true':
    case 'false':
      return before === after ? 'same' : String(after) === looser ? 'looser' : 'tighter';
    case 'longer':
    case 'shorter': {
      const direction = listDirection(asList(before), asList(after));
      if (direction !== 'tighter' && direction !== 'looser') return direction;
      return (direction === 'tighter') === (looser === 'shorter') ? 'tighter' : 'looser';
    }
  }
}

const asList = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.map(String) : [String(value)];

/** Numbers, amounts and sizes by their worth, days as text. Negative where `a` is the lower. */
function compareValues(a: unknown, b: unknown): number | undefined {
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  if (typeof a !== 'string' || typeof b !== 'string') return undefined;
  const [first, second] = [parseSize(a), parseSize(b)];
  if (typeof first === 'bigint' && typeof second === 'bigint')
    return first < second ? -1 : first > second ? 1 : 0;
  const plain = /^[0-9]+(\.[0-9]+)?$/;
  if (plain.test(a) && plain.test(b)) return new Decimal(a).comparedTo(b);
  return a < b ? -1 : a > b ? 1 : 0;
}
