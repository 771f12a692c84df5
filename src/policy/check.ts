/**
 * A policy held against the estate it is for: what in it can do nothing, contradicts itself, or is about to run out.
 * Pure, and no judgement: a remark fails nothing.
 *
 * In one file, since it is one list of short questions that are asked of the same policy and estate.
 */

import { nearestWord, offer } from '../base/nearest.ts';
import { byPlace, type Place } from '../base/problem.ts';
import { counted } from '../base/wording.ts';
import { daysBetween, holdTogether } from '../estate/dates.ts';
import type { Estate } from '../estate/estate.ts';
import { emptyEstate } from '../estate/estate.ts';
import { compareMoney, type Money, showMoney, subtractMoney, sumMoney } from '../price/money.ts';
import { ruleOf } from '../rules/registry.ts';
import type { ScopedKind } from '../rules/rule.ts';
import type { Scoped } from '../rules/scope.ts';
import { type SpendLimit, spender, spendKey } from '../rules/spend-limit.ts';
import type { PolicyChange } from '../rules/view.ts';
import { comparePolicies } from './direction.ts';
import { lineForName } from './other-writing.ts';
import { gatherRules } from './pack.ts';
import type { Policy, PolicyRule, Waiver } from './policy.ts';
import type { Revision } from './revision.ts';
import { scopeOf } from './scope.ts';
import { waiverUse } from './waiver.ts';
import { withoutEffect } from './waiver-effect.ts';

/** What a remark is about. */
const remarkKinds = [
  'unknown in scope',
  'nothing in scope',
  'over',
  'limits of one scope',
  'limits overlap',
  'limit out of reach',
  'limits add up',
  'no limit',
  'looser than shipped',
  'looser than elsewhere',
  'pack not used',
  'waiver expired',
  'waiver ends soon',
  'waiver without effect',
] as const;

export type RemarkKind = (typeof remarkKinds)[number];

export interface Remark {
  readonly kind: RemarkKind;
  /** The entry, or the rule and subject of the waiver. */
  readonly name: string;
  readonly place: Place;
  readonly message: string;
  readonly advice: string;
}

export interface CheckOptions {
  /** The day, RFC 3339 full-date. */
  readonly on: string;
  /** A waiver that ends within so many days ends soon. */
  readonly soon: number;
}

type Packs = Pick<Revision, 'packs' | 'elsewhere'>;

/**
 * Holds a policy against an estate.
 *
 * @param packs what the policy's rules were gathered from: the repository's own packs, and those that it lists of others
 * @returns remarks in order of place
 */
export function checkPolicy(
  policy: Policy,
  packs: Packs,
  estate: Estate,
  { on, soon }: CheckOptions,
): readonly Remark[] {
  const ground = groundOf(policy, estate);
  // What ships or is kept elsewhere is not for anybody here to mend, and need not fit this estate alone.
  const own = policy.rules.filter(({ origin }) => origin.kind === 'repository');
  return [
    ...own.flatMap((rule) => scopeRemarks(rule, ground)),
    ...own.flatMap((rule) => overRemarks(rule, on)),
    ...limitRemarks(policy, ground, on),
    ...looserRemarks(policy, packs, on),
    ...unusedRemarks(policy, packs),
    ...policy.waivers.flatMap((waiver) => waiverRemarks(waiver, policy, ground, on, soon)),
  ].sort(byPlace);
}

/** One thing as a scope sees it. */
interface Thing {
  readonly kind: ScopedKind;
  readonly belonging: Scoped;
}

function* everything(estate: Estate): Iterable<Thing> {
  for (const belonging of estate.servers.values()) yield { kind: 'server', belonging };
  for (const belonging of estate.volumes.values()) yield { kind: 'volume', belonging };
  for (const belonging of estate.groups.values()) yield { kind: 'volume-group', belonging };
  for (const belonging of estate.fileSystems.values()) yield { kind: 'file-system', belonging };
}

/** What a policy stands on: everything a scope is asked about, and every name it can choose by. */
interface Ground {
  readonly things: readonly Thing[];
  readonly teams: ReadonlySet<string>;
  /** The teams that the settings list; empty where they list none. */
  readonly listedTeams: readonly string[];
  readonly sites: ReadonlySet<string>;
  readonly tiers: ReadonlySet<string>;
  readonly labels: ReadonlyMap<string, ReadonlySet<string>>;
  /** Whatever a finding can be about, by name. */
  readonly subjects: ReadonlySet<string>;
  /** Nothing is declared yet: a policy comes first, and no name in it is wrong for that. */
  readonly isBare: boolean;
}

export const declaresNothing = ({ servers, volumes }: Estate): boolean =>
  servers.size === 0 && volumes.size === 0;

function groundOf({ settings, priceLists, rules }: Policy, estate: Estate): Ground {
  const sites = new Set(settings.sites.keys());
  const teams = new Set<string>();
  const tiers = new Set(priceLists.flatMap((list) => [...list.tiers.keys()]));
  const labels = new Map<string, Set<string>>();
  const things = [
    ...everything(estate),
    ...[...sites].map((site): Thing => ({ kind: 'site', belonging: { team: undefined, site, labels: {} } })),
  ];
  for (const { belonging } of things) {
    if (belonging.team !== undefined) teams.add(belonging.team);
    if (belonging.site !== undefined) sites.add(belonging.site);
    if (belonging.tier !== undefined) tiers.add(belonging.tier);
    for (const [label, value] of Object.entries(belonging.labels)) {
      labels.set(label, (labels.get(label) ?? new Set()).add(value));
    }
  }
  const subjects = new Set([
    'estate',
    'head',
    ...estate.servers.keys(),
    ...estate.volumes.keys(),
    ...estate.groups.keys(),
    ...estate.fileSystems.keys(),
    ...teams,
    ...sites,
    ...[...labels].flatMap(([label, values]) => [...values].map((value) => `${label}=${value}`)),
    ...rules.map(({ name }) => name),
  ]);
  return {
    things,
    teams,
    listedTeams: settings.teams,
    sites,
    tiers,
    labels,
    subjects,
    isBare: declaresNothing(estate),
  };
}

/**
 * What to do about a name that the policy has and the estate has not. Where the two hold names that are nearly alike,
 * nothing tells which of them is misspelt: a policy bent to a slip in the estate would bless it.
 */
function misnamed(what: string, value: string, among: readonly string[]): string {
  const near = nearestWord(value, among);
  return near === undefined
    ? 'Correct the name, or remove it until there is one.'
    : `The estate has the ${what} ${near}: correct whichever of the two is misspelt. Names that ullage.yaml lists are checked against its list.`;
}

function scopeRemarks({ name, entry, place }: PolicyRule, known: Ground): readonly Remark[] {
  const { where } = entry;
  if (where === undefined) return [];
  const remarks: Remark[] = [];
  const unknown = (what: string, value: string, among: Iterable<string>): void => {
    if (known.isBare) return;
    remarks.push({
      kind: 'unknown in scope',
      name,
      place,
      message: `${name} applies to the ${what} ${value}, and the estate has none`,
      advice: misnamed(what, value, [...among].sort()),
    });
  };
  const { listedTeams: teams } = known;
  for (const team of where.teams ?? []) {
    if (teams.length > 0 && !teams.includes(team)) {
      remarks.push({
        kind: 'unknown in scope',
        name,
        place,
        message: `${name} applies to the team ${team}, and ullage.yaml lists no such team`,
        advice: `${offer(team, teams)}Correct the name, or list the team.`,
      });
    } else if (!known.teams.has(team) && teams.length > 0 && !known.isBare) {
      remarks.push({
        kind: 'unknown in scope',
        name,
        place,
        message: `${name} applies to the team ${team}, which ullage.yaml lists, and nothing of the team is declared`,
        advice: 'Leave it where that is still to come; correct the name where another team is meant.',
      });
    } else if (!known.teams.has(team)) unknown('team', team, known.teams);
  }
  for (const site of where.sites ?? []) if (!known.sites.has(site)) unknown('site', site, known.sites);
  for (const tier of where.tiers ?? []) if (!known.tiers.has(tier)) unknown('tier', tier, known.tiers);
  for (const [label, wanted] of Object.entries(where.labels ?? {})) {
    const values = known.labels.get(label);
    if (values === undefined) unknown('label', label, known.labels.keys());
    else {
      for (const value of typeof wanted === 'string' ? [wanted] : wanted) {
        if (!values.has(value)) unknown(`label ${label} with the value`, value, values);
      }
    }
  }
  const kinds = ruleOf(entry).looksAt(entry);
  const scope = scopeOf(entry);
  if (
    remarks.length === 0 &&
    !known.isBare &&
    !known.things.some(({ kind, belonging }) => kinds.includes(kind) && scope.includes(belonging))
  ) {
    remarks.push({
      kind: 'nothing in scope',
      name,
      place,
      message: `${name} can find nothing: no ${kinds.join(', ').replaceAll('-', ' ')} in the estate matches everything in its where`,
      advice: 'Remove keys from where; all keys given must match.',
    });
  }
  return remarks;
}

function overRemarks({ name, entry, place }: PolicyRule, on: string): readonly Remark[] {
  const lastDay = ruleOf(entry).lastDay?.(entry);
  return lastDay !== undefined && lastDay < on
    ? [
        {
          kind: 'over',
          name,
          place,
          message: `${name} applied until ${lastDay} and has no effect any more`,
          advice: 'Delete it, or change its dates.',
        },
      ]
    : [];
}

/** One limit, and what counts under it. */
interface Limit {
  readonly name: string;
  readonly place: Place;
  /** The same one for each team or site, where it is one for each. */
  readonly limit: SpendLimit;
  /** By the place of each in the list of everything that costs. */
  readonly counts: ReadonlySet<number>;
}

/** Limits against each other, by what of this estate counts under each: nested, the same, or crossing. */
function limitRemarks({ rules, settings }: Policy, { things }: Ground, on: string): readonly Remark[] {
  const costly = things.filter(({ kind }) => kind === 'server' || kind === 'volume');
  const limits = rules
    .flatMap((rule) => limitsOf(rule, costly))
    .filter(({ limit, counts }) => counts.size > 0 && (limit.until === undefined || limit.until >= on));
  const shown = (amount: Money): string => `${showMoney(amount, settings.currency)} ${settings.currency}`;
  const remarks: Remark[] = [];
  for (const [index, later] of limits.entries()) {
    for (const earlier of limits.slice(0, index)) {
      if (earlier.limit === later.limit || !holdTogether(earlier.limit, later.limit)) continue;
      const remark = pairRemark(earlier, later, shown);
      if (remark !== undefined) remarks.push(remark);
    }
  }
  return [
    ...remarks,
    ...limits.flatMap((limit) => sumRemark(limit, limits, shown)),
    ...uncoveredRemarks(costly, limits),
  ];
}

/** Teams that spend outside every limit; a slip in a team's name makes one. Where nothing is limited nothing is missed. */
function uncoveredRemarks(costly: readonly Thing[], limits: readonly Limit[]): readonly Remark[] {
  const last = limits.at(-1);
  if (last === undefined) return [];
  const outside = new Map<string, number>();
  for (const [index, thing] of costly.entries()) {
    if (limits.some(({ counts }) => counts.has(index))) continue;
    const team = thing.belonging.team ?? '';
    outside.set(team, (outside.get(team) ?? 0) + 1);
  }
  return [...outside]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([team, count]) => ({
      kind: 'no limit',
      name: team,
      place: last.place,
      message: `no limit counts the ${counted(count, 'server or volume', 'servers and volumes')} of ${team === '' ? 'no team' : `team ${team}`}`,
      advice:
        'Give the team a limit, set one for the whole estate, or correct the name of the team where it is misspelt.',
    }));
}

function limitsOf({ name, entry, place }: PolicyRule, costly: readonly Thing[]): readonly Limit[] {
  const limit = ruleOf(entry).spendLimit?.(entry);
  if (limit === undefined) return [];
  const scope = scopeOf(entry);
  const { each } = limit;
  const byKey = new Map<string, Set<number>>();
  for (const [index, { belonging }] of costly.entries()) {
    const key = spendKey(limit, scope, belonging);
    if (key === undefined) continue;
    const counts = byKey.get(key) ?? new Set();
    byKey.set(key, counts.add(index));
  }
  return [...byKey].map(([key, counts]) => ({
    name: each === undefined ? name : `${name} (${spender({ kind: each, name: key })})`,
    place,
    limit,
    counts,
  }));
}

const isWithin = (inner: Limit, outer: Limit): boolean =>
  inner.counts.size <= outer.counts.size && [...inner.counts].every((each) => outer.counts.has(each));

const areApart = (a: Limit, b: Limit): boolean => ![...a.counts].some((each) => b.counts.has(each));

function pairRemark(a: Limit, b: Limit, shown: (amount: Money) => string): Remark | undefined {
  if (areApart(a, b)) return undefined;
  const [aInB, bInA] = [isWithin(a, b), isWithin(b, a)];
  if (aInB && bInA) {
    const [lower, higher] = compareMoney(a.limit.amount, b.limit.amount) <= 0 ? [a, b] : [b, a];
    return {
      kind: 'limits of one scope',
      name: higher.name,
      place: higher.place,
      message: `${higher.name} (${shown(higher.limit.amount)}) covers exactly what ${lower.name} covers, whose limit is ${shown(lower.limit.amount)}; only the lower one can ever be exceeded`,
      advice: 'Keep one of the two.',
    };
  }
  if (!aInB && !bInA) {
    const both = [...a.counts].filter((each) => b.counts.has(each)).length;
    return {
      kind: 'limits overlap',
      name: b.name,
      place: b.place,
      message: `${b.name} and ${a.name} both cover ${counted(both, 'thing')}, and each covers others as well: cost there counts towards both limits`,
      advice: 'Separate the two scopes, or put one inside the other.',
    };
  }
  const [inner, outer] = aInB ? [a, b] : [b, a];
  return compareMoney(inner.limit.amount, outer.limit.amount) > 0
    ? {
        kind: 'limit out of reach',
        name: inner.name,
        place: inner.place,
        message: `${inner.name} allows ${shown(inner.limit.amount)}, but ${outer.name}, which covers all of it and more, only ${shown(outer.limit.amount)}`,
        advice: 'Lower the inner limit, or raise the outer one.',
      }
    : undefined;
}

/** Whether the limits within one, each as wide as can be and apart from the others, together allow more than it. */
function sumRemark(
  outer: Limit,
  limits: readonly Limit[],
  shown: (amount: Money) => string,
): readonly Remark[] {
  const inside = limits.filter(
    (each) =>
      each !== outer &&
      each.counts.size < outer.counts.size &&
      holdTogether(each.limit, outer.limit) &&
      isWithin(each, outer),
  );
  const widest = inside.filter(
    (each) => !inside.some((other) => other.counts.size > each.counts.size && isWithin(each, other)),
  );
  const apart = widest.every((each, index) => widest.slice(0, index).every((other) => areApart(each, other)));
  const sum = sumMoney(widest.map(({ limit }) => limit.amount));
  if (widest.length < 2 || !apart || compareMoney(sum, outer.limit.amount) <= 0) return [];
  return [
    {
      kind: 'limits add up',
      name: outer.name,
      place: outer.place,
      message: `the limits within ${outer.name} (${widest.map(({ name }) => name).join(', ')}) allow ${shown(sum)} together, ${shown(subtractMoney(sum, outer.limit.amount))} more than it does: ${outer.name} can be exceeded while each of them is kept`,
      advice: 'Lower them, or raise it; or leave it, if they will not all be used in full.',
    },
  ];
}

/** Packs that are listed and bring nothing. */
const unusedRemarks = ({ settings }: Policy, { packs }: Packs): readonly Remark[] =>
  [...(settings.packs?.values() ?? [])].flatMap((pack): readonly Remark[] =>
    pack === undefined || packs.some(({ use }) => use.some(({ name }) => name === pack.name))
      ? []
      : [
          {
            kind: 'pack not used',
            name: pack.name,
            place: pack.place,
            message: `the pack ${pack.name} is listed, and no rule pack uses it`,
            advice: `Use it, with \`use: [${pack.name}]\` in a rule pack, or take it off the list.`,
          },
        ],
  );

/** Entries that override one of the same name in a pack that is used, and let more through. */
function looserRemarks(policy: Policy, { packs, elsewhere }: Packs, on: string): readonly Remark[] {
  const used = gatherRules(
    packs.map((pack) => ({ ...pack, entries: [] })),
    elsewhere,
  );
  if (!used.ok) return [];
  const origins = new Map(used.value.map(({ name, origin }) => [name, origin.kind]));
  const own = new Map(
    packs.flatMap(({ entries }) => entries.map((entry) => [entry.name, entry.place] as const)),
  );
  return comparePolicies({ ...policy, rules: used.value }, policy, on, emptyEstate).flatMap(
    (change): readonly Remark[] => {
      const place = own.get(change.name);
      const origin = origins.get(change.name);
      if (change.of !== 'rule' || place === undefined || origin === undefined) return [];
      if (change.direction !== 'looser' && change.direction !== 'unknown') return [];
      return [
        {
          kind: origin === 'elsewhere' ? 'looser than elsewhere' : 'looser than shipped',
          name: change.name,
          place,
          message: `${change.name} ${looserWords(change)}`,
          advice: 'Leave it if that is intended, with a comment that says why.',
        },
      ];
    },
  );
}

function looserWords({ direction, key, from, to }: PolicyChange): string {
  if (key === undefined) return 'is switched off, and a pack listed under use contains it';
  const compared =
    direction === 'looser'
      ? 'is looser than'
      : 'differs, and whether it is tighter or looser is undetermined, from';
  return `${compared} the entry that it overrides: ${key} changes from ${from ?? 'nothing'} to ${to ?? 'nothing'}`;
}

function waiverRemarks(
  waiver: Waiver,
  policy: Policy,
  { subjects, isBare }: Ground,
  on: string,
  soon: number,
): readonly Remark[] {
  const { rule, subject, until, place } = waiver;
  const name = `${rule} for ${subject}`;
  const remark = (kind: RemarkKind, message: string, advice: string): Remark => ({
    kind,
    name,
    place,
    message,
    advice,
  });
  const { state } = waiverUse(waiver, policy.rules, { used: new Set(), outgrown: new Set() }, on);
  if (state === 'unknown rule') {
    const names = policy.rules.flatMap((each) => [each.name, each.entry.rule]);
    return [
      remark(
        'waiver without effect',
        `the waiver is for ${rule}, which is not a rule or an entry`,
        `${offer(rule, names)}Correct the name.`,
      ),
    ];
  }
  const remarks: Remark[] = [];
  const otherwise = lineForName(waiver, subjects);
  const left = daysBetween(on, until);
  if (state === 'expired')
    remarks.push(
      remark(
        'waiver expired',
        `the waiver of ${name} expired on ${until}`,
        'Delete it; the Git history keeps it.',
      ),
    );
  else if (left <= soon) {
    remarks.push(
      remark(
        'waiver ends soon',
        `the waiver of ${name} ends on ${until}, ${left === 0 ? 'which is today' : `in ${counted(left, 'day')}`}`,
        'Fix what it waives, or have it approved again.',
      ),
    );
  }
  for (const { message, advice } of withoutEffect(waiver, policy.rules))
    remarks.push(remark('waiver without effect', message, advice));
  if (!subjects.has(subject) && !isBare) {
    remarks.push(
      remark(
        'waiver without effect',
        `the waiver is for ${subject}, which is not in the estate`,
        otherwise === undefined
          ? `${offer(subject, [...subjects])}Correct the name, or delete the waiver, unless it is for what is still to be declared.`
          : `Write it so: ${otherwise}`,
      ),
    );
  }
  return remarks;
}
