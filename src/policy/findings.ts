/** What rules say -> findings: with a level, a state held against the base, and the waiver that lets one stand. */

import { byText } from '../base/order.ts';
import { headSubject, type Renames } from '../change/renames.ts';
import type { Touched } from '../change/touched.ts';
import { holdsOn } from '../estate/dates.ts';
import { subjectKey } from '../estate/estate.ts';
import { ruleOf } from '../rules/registry.ts';
import { type Amount, type Excess, levels, type Violation } from '../rules/rule.ts';
import { renameRefs } from '../rules/subject-ref.ts';
import type { ChangeView } from '../rules/view.ts';
import { type Evaluation, levelOf, touchedKeys, type ViolationEdit } from './evaluation.ts';
import type { BaselineState, Finding, Held } from './judgement.ts';
import type { Policy, PolicyRule, Waiver } from './policy.ts';
import { changesInScope } from './scope.ts';
import { covers, isFor, isOpen } from './waiver.ts';

/** What turns a violation into a finding. */
export interface FindingTerms {
  /** The level from which a finding fails. */
  readonly failOn: 'error' | 'warning';
  /** The waivers that hold on the day, by the name of the subject. */
  readonly waivers: ReadonlyMap<string, readonly Waiver[]>;
  /** What one without a ceiling is held to, where a finding is new or worse. */
  readonly held: (waiver: Waiver, finding: Unwaived) => Held;
}

type Unwaived = Omit<Finding, 'waiver' | 'outgrown' | 'held' | 'fails'>;

export function findingTerms(
  { waivers }: Policy,
  on: string,
  { failOn, held }: Pick<FindingTerms, 'failOn' | 'held'>,
): FindingTerms {
  return { failOn, waivers: bySubject(waivers.filter((waiver) => holdsOn(waiver, on))), held };
}

export function bySubject(waivers: readonly Waiver[]): FindingTerms['waivers'] {
  const lists = new Map<string, Waiver[]>();
  for (const waiver of waivers) {
    const list = lists.get(waiver.subject);
    if (list === undefined) lists.set(waiver.subject, [waiver]);
    else list.push(waiver);
  }
  return lists;
}

/**
 * What one entry says of the touched, or no longer says.
 *
 * @param byBranch says what is new or worse by what the branch has done
 */
export function editFinding(
  { entry, was, now }: ViolationEdit,
  renames: Renames,
  terms: FindingTerms,
  byBranch: (entry: PolicyRule, now: Violation) => Violation,
): Finding {
  if (now !== undefined) {
    const before = was === undefined ? undefined : carriedOn(was, renames);
    const state = baselineState(entry, before, now);
    const told = state === 'unchanged' ? now : byBranch(entry, now);
    return finding(entry, placedIn('head', told), { state, about: 'state' }, terms);
  }
  if (was === undefined) throw new Error(`${entry.name} finds nothing, before or now`);
  return finding(entry, placedIn('base', was), { state: 'absent', about: 'state' }, terms);
}

/** What an entry says of the changes themselves is new, as they are. */
export function changeFindings(rule: PolicyRule, view: ChangeView, terms: FindingTerms): readonly Finding[] {
  const { entry, checks } = rule;
  if (checks.ofChanges === undefined) return [];
  const said = checks.ofChanges({ ...view, changes: changesInScope(entry, view) });
  return [...said].map((violation) => finding(rule, violation, { state: 'new', about: 'change' }, terms));
}

/** What was said of things that the change did not touch, and is said still. */
export function carriedFindings(
  { policy, entries }: Evaluation,
  touched: Touched,
  terms: FindingTerms,
): readonly Finding[] {
  const gone = new Set(touchedKeys(touched));
  return policy.rules.flatMap((entry) =>
    [...(entries.get(entry.name)?.bySubject ?? [])]
      .filter(([key]) => !gone.has(key))
      .flatMap(([, violations]) => violations.map((violation) => carriedFinding(entry, violation, terms))),
  );
}

/**
 * Those of them that one of the terms' waivers is for. Found from the waivers, which are few, and not from the
 * findings, of which there may be many.
 */
export function waivedAmongCarried(
  { policy, entries }: Evaluation,
  touched: Touched,
  terms: FindingTerms,
): readonly Finding[] {
  if (terms.waivers.size === 0) return [];
  const gone = new Set(touchedKeys(touched));
  return policy.rules.flatMap((entry) => {
    const said = entries.get(entry.name)?.bySubject;
    if (said === undefined || said.size === 0) return [];
    return [...terms.waivers.keys()].flatMap((name) =>
      things.flatMap((kind) => {
        const key = subjectKey({ kind, name });
        const violations = gone.has(key) ? undefined : said.get(key);
        return (violations ?? [])
          .map((violation) => carriedFinding(entry, violation, terms))
          .filter(({ waiver }) => waiver !== undefined);
      }),
    );
  });
}

const things = ['server', 'volume', 'volume-group', 'file-system'] as const;

const carriedFinding = (entry: PolicyRule, violation: Violation, terms: FindingTerms): Finding =>
  finding(entry, placedIn('head', violation), { state: 'unchanged', about: 'state' }, terms);

const placedIn = (revision: 'base' | 'head', violation: Violation): Violation => ({
  ...violation,
  place: { ...violation.place, revision },
});

/** A violation of the base under the names that its subject, and what that is tied to, have on the head. */
export function carriedOn<T extends Pick<Violation, 'subject' | 'facet' | 'excess'>>(
  violation: T,
  renames: Renames,
): T {
  const { subject, facet, excess } = violation;
  const follow = (text: string): string => renameRefs(text, (each) => headSubject(renames, each));
  return {
    ...violation,
    subject: headSubject(renames, subject),
    ...(facet === undefined ? {} : { facet: follow(facet) }),
    ...(excess === undefined ? {} : { excess: followed(excess, follow) }),
  };
}

function followed(excess: Excess, follow: (text: string) => string): Excess {
  if (isSet(excess)) return new Set([...excess].map(follow));
  if (isMap(excess)) return new Map([...excess].map(([measure, amount]) => [follow(measure), amount]));
  return excess;
}

export function baselineState(rule: PolicyRule, was: Violation | undefined, now: Violation): BaselineState {
  if (was === undefined) return 'new';
  // A warning that becomes an error was not on main as an error.
  if (levels.indexOf(levelOf(rule, now)) < levels.indexOf(levelOf(rule, was))) return 'new';
  return isWorse(was.excess, now.excess) ? 'updated' : 'unchanged';
}

const isSet = (excess: Excess): excess is ReadonlySet<string> => excess instanceof Set;

const isMap = (excess: Excess): excess is ReadonlyMap<string, Amount> => excess instanceof Map;

/** Whether an excess is beyond another of the same rule. Two that cannot be compared are two faults. */
export function isWorse(was: Excess | undefined, now: Excess | undefined): boolean {
  if (now === undefined) return false;
  if (was === undefined) return true;
  if (isSet(now)) return !isSet(was) || [...now].some((each) => !was.has(each));
  if (isMap(now)) {
    return (
      !isMap(was) ||
      [...now].some(([measure, amount]) => {
        const before = was.get(measure);
        return before === undefined || isMore(before, amount);
      })
    );
  }
  return isSet(was) || isMap(was) || isMore(was, now);
}

const isMore = (was: Amount, now: Amount): boolean => {
  if (typeof now === 'bigint') return typeof was !== 'bigint' || now > was;
  return typeof was === 'bigint' || now.gt(was);
};

type Leave = Pick<Finding, 'waiver' | 'outgrown' | 'held'>;

/** The waiver that lets a finding stand; where none does, one that is for it and covers less. */
function leaveFor(rule: PolicyRule, finding: Unwaived, terms: FindingTerms): Leave {
  const { subject } = finding;
  const meant = terms.waivers.get(subject.name)?.filter((waiver) => isFor(waiver, rule, subject)) ?? [];
  let outgrown: Leave | undefined;
  for (const waiver of meant) {
    const held = isOpen(waiver) && isAtStake(finding, terms) ? terms.held(waiver, finding) : undefined;
    const told = held === undefined ? {} : { held };
    if (held === undefined ? covers(waiver, finding) : isEnough(held)) return { waiver, ...told };
    // What history may still tell stands before what is told already.
    if (outgrown === undefined || held?.kind === 'unknown')
      outgrown = { waiver: undefined, outgrown: waiver, ...told };
  }
  return outgrown ?? { waiver: undefined };
}

/** Whether a finding fails unless it is waived. */
const isAtStake = ({ baselineState, level }: Unwaived, { failOn }: FindingTerms): boolean =>
  (baselineState === 'new' || baselineState === 'updated') && levels.indexOf(level) <= levels.indexOf(failOn);

function isEnough({ kind }: Held): boolean {
  switch (kind) {
    case 'nothing yet':
    case 'as much':
      return true;
    case 'less':
    case 'something else':
    case 'unknown':
      return false;
  }
}

/** A finding of a rule about a state that is said of the branch alone. */
export const branchFinding = (
  rule: PolicyRule,
  violation: Violation,
  state: BaselineState,
  terms: FindingTerms,
): Finding => finding(rule, placedIn('head', violation), { state, about: 'change' }, terms);

function finding(
  rule: PolicyRule,
  violation: Violation,
  { state, about }: { readonly state: BaselineState; readonly about: Finding['about'] },
  terms: FindingTerms,
): Finding {
  const { name, entry } = rule;
  const { subject, facet, message, place, excess, measured } = violation;
  const unwaived: Unwaived = {
    rule: entry.rule,
    entry: name,
    level: levelOf(rule, violation),
    about,
    baselineState: state,
    subject,
    facet,
    message,
    advice: violation.advice ?? ruleOf(entry).advice,
    place,
    ...(excess === undefined ? {} : { excess }),
    ...(measured === undefined ? {} : { measured }),
  };
  // What is no longer said needs no waiver.
  const leave = state === 'absent' ? { waiver: undefined } : leaveFor(rule, unwaived, terms);
  return { ...unwaived, ...leave, fails: leave.waiver === undefined && isAtStake(unwaived, terms) };
}

const stateOrder: readonly BaselineState[] = ['new', 'updated', 'unchanged', 'absent'];

/** Those that fail first, then by level, state, rule and subject. */
export const worstFirst = (a: Finding, b: Finding): number =>
  Number(b.fails) - Number(a.fails) ||
  Number(a.baselineState === 'absent') - Number(b.baselineState === 'absent') ||
  levels.indexOf(a.level) - levels.indexOf(b.level) ||
  stateOrder.indexOf(a.baselineState) - stateOrder.indexOf(b.baselineState) ||
  byText(a.entry, b.entry) ||
  byText(subjectKey(a.subject), subjectKey(b.subject)) ||
  byText(a.facet ?? '', b.facet ?? '');
