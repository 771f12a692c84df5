/**
 * Two policies -> what differs, and whether each difference is tighter or looser. A difference is called tighter
 * where every change of an estate that keeps to both policies is refused by the new one if the old one refuses it.
 * Where main breaks the new policy already, what it breaks stands, and a change that makes it no worse passes: a
 * tighter rule does not reach back.
 *
 * In one file, since it is one table of what a policy is made of, and which way each part loosens.
 */

import { Decimal } from 'decimal.js';
import { onBase, onHead } from '../change/place.ts';
import type { Settings, Site } from '../estate/settings.ts';
import { bytes, exactSize, parseSize } from '../estate/size.ts';
import type { PriceList, ServerType, Tier } from '../price/price-list.ts';
import { ruleOf } from '../rules/registry.ts';
import { levels, type Parameter } from '../rules/rule.ts';
import type { PolicyChange } from '../rules/view.ts';
import type { Policy, PolicyRule, Waiver } from './policy.ts';

type Direction = PolicyChange['direction'];

export function comparePolicies(base: Policy, head: Policy, on: string): readonly PolicyChange[] {
  return [
    ...ruleChanges(base.rules, head.rules),
    ...waiverChanges(base.waivers, head.waivers, on),
    ...priceListChanges(base.priceLists, head.priceLists),
    ...settingsChanges(base.settings, head.settings),
  ];
}

const shown = (value: unknown): string | undefined =>
  value === undefined ? undefined : typeof value === 'string' ? value : JSON.stringify(value);

const byName = <T extends { readonly name: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.name, item]));

const allNames = (a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): readonly string[] =>
  [...new Set([...a.keys(), ...b.keys()])].sort();

function ruleChanges(base: readonly PolicyRule[], head: readonly PolicyRule[]): readonly PolicyChange[] {
  const before = byName(base);
  const after = byName(head);
  return allNames(before, after).flatMap((name): readonly PolicyChange[] => {
    const old = before.get(name);
    const now = after.get(name);
    if (old === undefined) {
      if (now === undefined) return [];
      return [change('tighter', 'rule', name, undefined, undefined, now.entry.rule, onHead(now.place))];
    }
    if (now === undefined)
      return [change('looser', 'rule', name, undefined, old.entry.rule, undefined, onBase(old.place))];
    if (old.entry.rule !== now.entry.rule) {
      return [change('unknown', 'rule', name, 'rule', old.entry.rule, now.entry.rule, onHead(now.place))];
    }
    return entryChanges(old, now);
  });
}

const change = (
  direction: Direction,
  of: PolicyChange['of'],
  name: string,
  key: string | undefined,
  from: string | undefined,
  to: string | undefined,
  place: PolicyChange['place'],
): PolicyChange => ({ direction, of, name, key, from, to, place });

function entryChanges(old: PolicyRule, now: PolicyRule): readonly PolicyChange[] {
  const place = onHead(now.place);
  const changes: PolicyChange[] = [];
  if (old.level !== now.level) {
    const direction = levels.indexOf(now.level) > levels.indexOf(old.level) ? 'looser' : 'tighter';
    changes.push(change(direction, 'rule', now.name, 'level', old.level, now.level, place));
  }
  for (const { key, direction, from, to } of scopeChanges(old.entry.where ?? {}, now.entry.where ?? {})) {
    changes.push(change(direction, 'rule', now.name, `where.${key}`, from, to, place));
  }
  const rule = ruleOf(now.entry);
  const before: ReadonlyMap<string, unknown> = new Map(Object.entries(old.entry));
  const after: ReadonlyMap<string, unknown> = new Map(Object.entries(now.entry));
  for (const [key, parameter] of Object.entries(rule.parameters)) {
    const from = before.get(key);
    const to = after.get(key);
    if (JSON.stringify(from) === JSON.stringify(to)) continue;
    const direction = parameterDirection(parameter, from, to);
    if (direction !== 'same')
      changes.push(change(direction, 'rule', now.name, key, shown(from), shown(to), place));
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

const waiverKey = ({ rule, subject, kind }: Waiver): string =>
  `${rule} for ${kind === undefined ? '' : `${kind} `}${subject}`;

function waiverChanges(
  base: readonly Waiver[],
  head: readonly Waiver[],
  on: string,
): readonly PolicyChange[] {
  const grouped = (waivers: readonly Waiver[]): ReadonlyMap<string, readonly Waiver[]> => {
    const groups = new Map<string, Waiver[]>();
    for (const waiver of waivers)
      groups.set(waiverKey(waiver), [...(groups.get(waiverKey(waiver)) ?? []), waiver]);
    return groups;
  };
  const before = grouped(base);
  const after = grouped(head);
  const span = ({ from, until }: Waiver): string => `${from} to ${until}`;
  return allNames(before, after).flatMap((key): readonly PolicyChange[] => {
    const old = before.get(key) ?? [];
    const now = after.get(key) ?? [];
    const kept = (waiver: Waiver, others: readonly Waiver[]): boolean =>
      others.some((other) => span(other) === span(waiver));
    const came = now.filter((waiver) => !kept(waiver, old));
    const left = old.filter((waiver) => !kept(waiver, now));
    const [first] = came;
    const [gone] = left;
    if (first !== undefined && gone !== undefined && came.length === 1 && left.length === 1) {
      const wider = first.from < gone.from || first.until > gone.until;
      const narrower = first.from > gone.from || first.until < gone.until;
      const direction = wider ? 'looser' : narrower ? 'tighter' : 'neither';
      return [change(direction, 'waiver', key, 'dates', span(gone), span(first), onHead(first.place))];
    }
    return [
      // A waiver that is over before it comes lets nothing through.
      ...came.map((waiver) =>
        change(
          waiver.until < on ? 'neither' : 'looser',
          'waiver',
          key,
          undefined,
          undefined,
          span(waiver),
          onHead(waiver.place),
        ),
      ),
      ...left.map((waiver) =>
        change(
          waiver.until < on ? 'neither' : 'tighter',
          'waiver',
          key,
          undefined,
          span(waiver),
          undefined,
          onBase(waiver.place),
        ),
      ),
    ];
  });
}

/** Prices are facts of the provider's, not rules: they make nothing tighter or looser, and are listed. */
function priceListChanges(base: readonly PriceList[], head: readonly PriceList[]): readonly PolicyChange[] {
  const before = new Map(base.map((list) => [list.from, list]));
  const after = new Map(head.map((list) => [list.from, list]));
  return allNames(before, after).flatMap((from): readonly PolicyChange[] => {
    const old = before.get(from);
    const now = after.get(from);
    if (old === now) return [];
    const name = `prices from ${from}`;
    if (old === undefined)
      return now === undefined
        ? []
        : [change('neither', 'price-list', name, undefined, undefined, now.place.file, onHead(now.place))];
    if (now === undefined)
      return [change('neither', 'price-list', name, undefined, old.place.file, undefined, onBase(old.place))];
    return priceKeys(old, now).map(({ key, from: was, to, place }) =>
      change('neither', 'price-list', name, key, was, to, place),
    );
  });
}

interface PriceKey {
  readonly key: string;
  readonly from: string | undefined;
  readonly to: string | undefined;
  readonly place: PolicyChange['place'];
}

/** What differs between two lists, key by key; a tier or a server type that one of them has not is one line. */
function priceKeys(old: PriceList, now: PriceList): readonly PriceKey[] {
  const keys: PriceKey[] = [];
  const differ = (
    what: string,
    before: ReadonlyMap<string, string> | undefined,
    after: ReadonlyMap<string, string> | undefined,
    place: PolicyChange['place'],
  ): void => {
    if (before === undefined || after === undefined) {
      keys.push({ key: what, from: onOneLine(before), to: onOneLine(after), place });
      return;
    }
    for (const key of new Set([...before.keys(), ...after.keys()])) {
      const [from, to] = [before.get(key), after.get(key)];
      if (from !== to) keys.push({ key: `${what}, ${key}`, from, to, place });
    }
  };
  for (const name of allNames(old.serverTypes, now.serverTypes)) {
    const [before, after] = [old.serverTypes.get(name), now.serverTypes.get(name)];
    const place = after === undefined ? onBase(old.place) : onHead(now.place);
    differ(`server type ${name}`, before && serverTypeKeys(before), after && serverTypeKeys(after), place);
  }
  for (const name of allNames(old.tiers, now.tiers)) {
    const [before, after] = [old.tiers.get(name), now.tiers.get(name)];
    const place = after === undefined ? before && onBase(before.place) : onHead(after.place);
    differ(`tier ${name}`, before && tierKeys(before), after && tierKeys(after), place);
  }
  return keys;
}

const onOneLine = (keys: ReadonlyMap<string, string> | undefined): string | undefined =>
  keys && [...keys].map(([key, value]) => `${key} ${value}`).join(', ');

const serverTypeKeys = ({ running, stopped }: ServerType): ReadonlyMap<string, string> =>
  new Map([
    ['running', running.toFixed()],
    ['stopped', stopped.toFixed()],
  ]);

/** A tier by the keys of its file; amounts in plain figures, however small. */
function tierKeys(tier: Tier): ReadonlyMap<string, string> {
  const [first, ...others] = tier.bands;
  const single = others.length === 0 && first !== undefined && first.upTo === undefined;
  const bands = tier.bands.map(
    ({ upTo, rate }) => `${rate.toFixed()}${upTo === undefined ? '' : ` up to ${exactSize(upTo)}`}`,
  );
  const bounds: readonly (readonly [string, bigint | number | undefined])[] = [
    ['minimum-billed', tier.minimumBilled],
    ['minimum', tier.minimum],
    ['maximum', tier.maximum],
    ['step', tier.step],
    ['iops-per-gib', tier.iopsPerGib],
    ['iops-maximum', tier.iopsMaximum],
    ['servers-a-volume', tier.serversAVolume],
  ];
  return new Map([
    single ? ['rate', first.rate.toFixed()] : ['bands', bands.join(', then ')],
    ['per', tier.unitName],
    ...(tier.flat.isZero() ? [] : [['flat', tier.flat.toFixed()] as const]),
    ...bounds.flatMap(([key, value]) => {
      const shownAs = showLimit(value);
      return shownAs === undefined ? [] : [[key, shownAs] as const];
    }),
  ]);
}

function settingsChanges(base: Settings, head: Settings): readonly PolicyChange[] {
  if (base === head) return [];
  const place = onHead(head.place);
  const changes: PolicyChange[] = [];
  const differ = (
    direction: Direction,
    key: string,
    from: string | undefined,
    to: string | undefined,
    where: PolicyChange['place'] = place,
  ): void => {
    if (from !== to) changes.push(change(direction, 'settings', 'ullage.yaml', key, from, to, where));
  };
  differ('unknown', 'currency', base.currency, head.currency);
  differ('unknown', 'month', base.month, head.month);
  for (const key of ['storage', 'prices', 'policies', 'waivers', 'readings'] as const) {
    differ('unknown', `paths.${key}`, base.paths[key], head.paths[key]);
  }
  const teams = namesDirection(base.teams, head.teams);
  if (teams !== 'same') differ(teams, 'teams', shownNames(base.teams), shownNames(head.teams));
  const [before, after] = [[...base.sites.keys()], [...head.sites.keys()]];
  if ((before.length === 0) !== (after.length === 0)) {
    differ(before.length === 0 ? 'tighter' : 'looser', 'sites', shownNames(before), shownNames(after));
  }
  for (const name of allNames(base.sites, head.sites)) {
    const old = base.sites.get(name);
    const now = head.sites.get(name);
    const where = now === undefined ? old && onBase(old.place) : onHead(now.place);
    if (before.length > 0 && after.length > 0 && (old === undefined || now === undefined)) {
      // Nothing could be placed at a site that was not listed; and the policy that judges has no limit for it.
      differ(old === undefined ? 'looser' : 'tighter', `sites.${name}`, limitsOf(old), limitsOf(now), where);
      continue;
    }
    for (const [key, read] of siteLimits) {
      const [from, to] = [read(old), read(now)];
      if (from === to) continue;
      // No limit is the loosest limit.
      const looser = to === undefined || (from !== undefined && to > from);
      differ(looser ? 'looser' : 'tighter', `sites.${name}.${key}`, showLimit(from), showLimit(to), where);
    }
  }
  return changes;
}

/** A site's limits on one line, those it has not among them. */
const limitsOf = (site: Site | undefined): string | undefined =>
  site && siteLimits.map(([key, read]) => `${key} ${showLimit(read(site)) ?? 'unlimited'}`).join(', ');

const shownNames = (names: readonly string[]): string | undefined =>
  names.length === 0 ? undefined : names.join(', ');

/** Which way a list of names that may be used went. No list lets any name through, or none at all. */
function namesDirection(before: readonly string[], after: readonly string[]): Direction | 'same' {
  const came = after.some((name) => !before.includes(name));
  const left = before.some((name) => !after.includes(name));
  if (!came && !left) return 'same';
  if (before.length === 0) return 'tighter';
  return after.length === 0 || came ? 'looser' : 'tighter';
}

const showLimit = (limit: bigint | number | undefined): string | undefined =>
  typeof limit === 'bigint' ? exactSize(bytes(limit)) : limit?.toString();

const siteLimits: readonly (readonly [string, (site: Site | undefined) => bigint | number | undefined])[] = [
  ['quota.volumes', (site) => site?.quota.volumes],
  ['quota.size', (site) => site?.quota.size],
  ['attachment-slots', (site) => site?.attachmentSlots],
];
