/** Rule packs: reading one file, and putting the packs of a repository together with those that ship. */

import { offer } from '../base/nearest.ts';
import {
  err,
  type Outcome,
  ok,
  outcomeOf,
  type PartialOutcome,
  type Place,
  type Problem,
} from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import type { ListedPack } from '../estate/settings.ts';
import { parseSize } from '../estate/size.ts';
import type { ReadDocument, Step } from '../read/document.ts';
import { validate } from '../read/validate.ts';
import { checksOf, ruleOf } from '../rules/registry.ts';
import type { RuleEntry } from '../rules/rule.ts';
import { shippedPacks } from './generated/shipped.ts';
import type { PolicyRule, RuleOrigin } from './policy.ts';
import type { Elsewhere, PackElsewhere, PackEntry, RulePack } from './rule-pack.ts';
import { scopeOf } from './scope.ts';

export function readRulePack(text: ReadDocument): PartialOutcome<RulePack> {
  const valid = validate('rule-pack', text);
  if (!valid.ok) return valid;
  const { document, mends } = valid.value;
  const { use = [], rules = [] } = valid.value.value;
  const problems = [...valid.value.problems];
  // An entry that cannot be used is told of, and is no entry: nothing may be made of it.
  const entries = [...rules.entries()].filter(([index, entry]) => {
    if (mends.in(['rules', index])) return false;
    const found = parameterProblems(entry, ['rules', index], document);
    problems.push(...found);
    return found.length === 0;
  });
  const pack: RulePack = {
    file: document.file,
    use: use
      .map((name, index) => ({ name, place: document.placeIn(use, index) }))
      .filter((_, index) => !mends.at(['use', index])),
    entries: entries.map(([index, entry]) => ({
      name: entry.name ?? entry.rule,
      entry,
      place: document.placeIn(rules, index),
    })),
  };
  return outcomeOf(pack, problems);
}

/** What the schema lets through and cannot mean anything: an impossible day, a fraction of a byte. */
function parameterProblems(
  entry: RuleEntry,
  path: readonly Step[],
  document: ReadDocument,
): readonly Problem[] {
  const rule = ruleOf(entry);
  const given: ReadonlyMap<string, unknown> = new Map(Object.entries(entry));
  const refuse = (key: string, message: string, advice: string): Problem => refuseAt([key], message, advice);
  const refuseAt = (steps: readonly Step[], message: string, advice: string): Problem => {
    const place = document.placeOfValue([...path, ...steps]);
    return { place, message, advice, excerpt: document.excerpt(place) };
  };
  const problems = Object.entries(rule.parameters).flatMap(([key, { schema }]): readonly Problem[] => {
    const value = given.get(key);
    if (typeof value !== 'string') return [];
    if (schema.$ref === 'common.json#/$defs/size') {
      const size = parseSize(value);
      return typeof size === 'bigint'
        ? []
        : [refuse(key, size.why, 'Write a whole number of bytes in a unit, such as 50 GiB.')];
    }
    if (schema.$ref === 'common.json#/$defs/date' && !isDay(value)) {
      return [refuse(key, `${value} is not a day in the calendar`, 'Write a full date such as 2026-11-20.')];
    }
    return [];
  });
  if (problems.length === 0) {
    for (const fault of rule.verify?.(entry) ?? [])
      problems.push(refuseAt(fault.path, fault.message, fault.advice));
  }
  for (const key of Object.keys(entry.where ?? {})) {
    const known: readonly string[] = rule.scope ?? [key];
    if (known.includes(key)) continue;
    // Nothing would match, and the rule would hold for nobody without anybody being told.
    problems.push(
      refuseAt(
        ['where', key],
        `the rule ${rule.name} cannot be narrowed by ${key}`,
        known.length === 0
          ? 'It applies to the whole branch; remove where.'
          : `It can be by ${known.join(', ')}.`,
      ),
    );
  }
  const [only] = rule.needs;
  if (only !== undefined && !rule.needs.some((need) => given.has(need)) && entry.enabled !== false) {
    problems.push(
      refuse(
        'rule',
        `the rule ${rule.name} has none of the parameters it needs`,
        `Give it ${rule.needs.join(' or ')}; \`ullage rules ${rule.name}\` explains them.`,
      ),
    );
  }
  return problems;
}

/** The names of the packs that ship. */
export const shippedNames: readonly string[] = Object.keys(shippedPacks);

/** A pack that ships with Ullage. */
export const shippedPack = (name: string): RulePack | undefined =>
  Object.hasOwn(shippedPacks, name) ? shippedPacks[name] : undefined;

/**
 * Packs with what they use: shipped entries first, overridden whole by those of the same name from elsewhere, and these
 * by the repository's own.
 *
 * @param elsewhere `unread` where it is not known which packs are listed
 */
export function gatherRules(
  packs: readonly RulePack[],
  elsewhere: Elsewhere | 'unread' = new Map(),
): Outcome<readonly PolicyRule[]> {
  const problems: Problem[] = [];
  const gathered = new Map<string, PolicyRule>();
  const set = ({ name, entry }: PackEntry, place: Place, origin: RuleOrigin): void => {
    if (entry.enabled === false) gathered.delete(name);
    else {
      const checks = checksOf(entry, scopeOf(entry));
      const level = entry.level ?? ruleOf(entry).level;
      gathered.set(name, { name, entry, checks, level, place, origin });
    }
  };
  // Once only: a pack named again would put its entries over those of the packs that build on it.
  const used = new Set<string>();
  const useShipped = (name: string, { use, entries }: RulePack): void => {
    if (used.has(name)) return;
    used.add(name);
    for (const inner of use) {
      const pack = shippedPack(inner.name);
      if (pack !== undefined) useShipped(inner.name, pack);
    }
    for (const entry of entries) set(entry, entry.place, { kind: 'shipped', pack: name });
  };
  const fromElsewhere = new Map<string, PackElsewhere>();
  for (const { name, place } of packs.flatMap(({ use }) => use)) {
    const pack = shippedPack(name);
    const other = elsewhere === 'unread' ? undefined : elsewhere.get(name);
    if (pack !== undefined) useShipped(name, pack);
    else if (other !== undefined) fromElsewhere.set(name, other);
    else if (elsewhere !== 'unread' && !elsewhere.has(name))
      problems.push(unknownPack(name, place, elsewhere));
  }
  for (const { listing, pack } of fromElsewhere.values()) {
    for (const { name, place } of pack.use) {
      const shipped = shippedPack(name);
      if (shipped !== undefined) useShipped(name, shipped);
      else problems.push(usesMore(listing, name, place));
    }
  }
  for (const { listing, pack } of fromElsewhere.values()) {
    const { name, repository, commit, place } = listing;
    const taken = new Set<string>();
    for (const entry of pack.entries) {
      if (taken.has(entry.name)) problems.push(twiceElsewhere(listing, entry));
      taken.add(entry.name);
      set(entry, place, { kind: 'elsewhere', pack: name, repository, commit, at: entry.place });
    }
  }
  const own = new Map<string, PackEntry>();
  for (const entry of packs.flatMap(({ entries }) => entries)) {
    const twin = own.get(entry.name);
    if (twin !== undefined) {
      problems.push({
        place: entry.place,
        message: `the rule entry ${entry.name} is there twice: here and at ${twin.place.file}:${twin.place.line}`,
        advice: 'Give one of the two a name: of its own.',
      });
      continue;
    }
    own.set(entry.name, entry);
    set(entry, entry.place, { kind: 'repository' });
  }
  if (problems.length > 0) return err(...problems);
  return ok([...gathered.values()].sort((a, b) => (a.name < b.name ? -1 : 1)));
}

function unknownPack(name: string, place: Place, elsewhere: Elsewhere): Problem {
  const known = [...shippedNames, ...elsewhere.keys()];
  return {
    place,
    message: `no pack named ${name} ships with Ullage or is listed in ullage.yaml`,
    advice: `${offer(name, known)}The packs are ${known.join(', ')}.`,
  };
}

/** A name in it would mean whatever the repository that takes it lists under that name. */
const usesMore = ({ name, place }: ListedPack, used: string, at: Place): Problem => ({
  place,
  message: `the pack ${name} uses ${used} (${at.file}:${at.line} in it), which does not ship with Ullage`,
  advice: `A pack that is kept elsewhere can use those alone that ship: ${shippedNames.join(', ')}. List the other one here, too.`,
});

const twiceElsewhere = ({ name, place }: ListedPack, entry: PackEntry): Problem => ({
  place,
  message: `the pack ${name} has the rule entry ${entry.name} twice, the second time at ${entry.place.file}:${entry.place.line} in it`,
  advice: 'Give one of the two a name: of its own there, and hold the new commit here.',
});
