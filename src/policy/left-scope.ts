/**
 * What a branch takes out of a rule's scope. A rule about a state is asked about what is in its scope, and a branch that
 * gives a thing another team, site, tier or label could do to it what the rule refuses. So whatever leaves a scope is
 * judged once more by the rule that it leaves, in the branch in which it leaves: what is new, or worse, is told, and
 * what is as bad as before is told as that, and not as mended.
 *
 * It is said of the branch alone, and kept in no evaluation: on main the thing is out of scope from then on. Sums are
 * none of it: what passes to another team counts under that team's limit.
 */
import type { Comparison } from '../change/compare.ts';
import { declared, surroundingsOf } from '../change/involved.ts';
import { baseSubject, headSubject } from '../change/renames.ts';
import { emptySelection, type Selection, selectionOf, type Touched } from '../change/touched.ts';
import { type Declaration, subjectKey } from '../estate/estate.ts';
import { checksOf, ruleOf } from '../rules/registry.ts';
import type { Violation } from '../rules/rule.ts';
import { type Evaluation, violationKey } from './evaluation.ts';
import { baselineState, branchFinding, carriedOn, type FindingTerms } from './findings.ts';
import type { Finding } from './judgement.ts';
import { type PolicyRule, stateRules } from './policy.ts';
import { everything, scopeOf } from './scope.ts';

export interface Leaving {
  /** Both sides under the judging policy. */
  readonly before: Evaluation;
  readonly after: Evaluation;
  readonly comparison: Comparison;
  readonly touched: Touched;
  readonly terms: FindingTerms;
}

/** One thing as it was on the base and is on the head. */
interface Pair {
  readonly was: Declaration;
  readonly is: Declaration;
}

export function leftScopeFindings(leaving: Leaving): readonly Finding[] {
  const scoped = stateRules(leaving.after.policy).filter(({ entry }) => entry.where !== undefined);
  if (scoped.length === 0) return [];
  const pairs = pairsOf(leaving);
  return pairs.length === 0 ? [] : scoped.flatMap((rule) => findingsOf(rule, pairs, leaving));
}

/** What the change touched and both sides have, also where the one took the other's place. */
function pairsOf({ before, after, comparison, touched }: Leaving): readonly Pair[] {
  const { renames, changes } = comparison;
  const replaced = new Map(
    changes.flatMap((change) =>
      change.kind === 'volume-re-created' ? [[change.after.name, change.before.name]] : [],
    ),
  );
  const estate = before.view.estate;
  const inItsPlace = (is: Declaration): Declaration | undefined => {
    if (is.kind === 'volume') return estate.volumes.get(replaced.get(is.name) ?? '');
    if (is.kind !== 'file-system' || is.on.kind !== 'volume') return undefined;
    return estate.volumes.get(replaced.get(is.on.name) ?? '')?.fileSystem;
  };
  const { servers, volumes, groups, fileSystems } = selectionOf(after.view.estate, touched);
  return [...servers, ...volumes, ...groups, ...fileSystems].flatMap((is) => {
    const was = declared(estate, baseSubject(renames, is)) ?? inItsPlace(is);
    return was === undefined ? [] : [{ was, is }];
  });
}

function findingsOf(rule: PolicyRule, pairs: readonly Pair[], leaving: Leaving): readonly Finding[] {
  const { before, after, comparison, terms } = leaving;
  const left = pairs.filter((pair) => leaves(rule, pair, leaving));
  if (left.length === 0) return [];
  const check = checksOf(rule.entry, everything).ofState;
  if (check === undefined) return [];
  const was = new Map<string, Violation>();
  for (const violation of check({ ...before.view, selection: among(left.map((pair) => pair.was)) })) {
    const carried = carriedOn(violation, comparison.renames);
    was.set(violationKey(carried), carried);
  }
  const known = after.entries.get(rule.name)?.bySubject;
  const keys = new Set(left.map(({ is }) => subjectKey(is)));
  const now = [...check({ ...after.view, selection: among(left.map(({ is }) => is)) })];
  return now.flatMap((violation) => {
    const key = subjectKey(violation.subject);
    // What is in scope still, by something else of it, is said already.
    const isSaid = known?.get(key)?.some((said) => violationKey(said) === violationKey(violation)) === true;
    if (!keys.has(key) || isSaid) return [];
    const state = baselineState(rule, was.get(violationKey(violation)), violation);
    const message = `${violation.message}; on main it is in the scope of this rule, which the branch takes it out of`;
    return [branchFinding(rule, { ...violation, message }, state, terms)];
  });
}

/** Whether anything by which a rule had a thing in its scope is out of it on the head, or no longer the thing's. */
function leaves({ entry }: PolicyRule, { was, is }: Pair, { before, after, comparison }: Leaving): boolean {
  const looksAt: readonly string[] = ruleOf(entry).looksAt(entry);
  if (!looksAt.includes(is.kind)) return false;
  const scope = scopeOf(entry);
  const now = new Set(surroundingsOf(is, after.view.estate).filter(scope.includes).map(subjectKey));
  return surroundingsOf(was, before.view.estate).some(
    (each) =>
      looksAt.includes(each.kind) &&
      scope.includes(each) &&
      !now.has(subjectKey(each === was ? is : headSubject(comparison.renames, each))),
  );
}

function among(things: readonly Declaration[]): Selection {
  return {
    ...emptySelection,
    servers: things.filter((thing) => thing.kind === 'server'),
    volumes: things.filter((thing) => thing.kind === 'volume'),
    groups: things.filter((thing) => thing.kind === 'volume-group'),
    fileSystems: things.filter((thing) => thing.kind === 'file-system'),
  };
}
