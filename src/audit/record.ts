/** One replayed commit as plain values: what the audit keeps, prints and asks questions of. */

import type { Problem } from '../base/problem.ts';
import { subjectKey } from '../estate/estate.ts';
import type { Commit } from '../git/commit.ts';
import { heldTo, plainHeld } from '../policy/approval.ts';
import {
  allSaid,
  type Counts,
  type Evaluation,
  levelOf,
  type ViolationEdit,
  violationKey,
} from '../policy/evaluation.ts';
import type { FileKind } from '../policy/files.ts';
import { bySubject, waivedAmongCarried } from '../policy/findings.ts';
import { type ChangeEvaluation, type JudgeOptions, limitUses, propose, verdictOf } from '../policy/judge.ts';
import type { Finding, LimitUse, UnreadMain } from '../policy/judgement.ts';
import { type OtherWriting, otherWriting } from '../policy/other-writing.ts';
import type { Waiver } from '../policy/policy.ts';
import { isFor } from '../policy/waiver.ts';
import { type CostDelta, changeOfCost } from '../price/delta.ts';
import type { Money } from '../price/money.ts';
import type {
  AuditBetween,
  AuditCost,
  AuditFinding,
  AuditPlace,
  AuditRecord,
  AuditRenamed,
  AuditStanding,
  AuditTrailer,
  AuditUnreadMain,
  AuditWaiver,
  AuditWaiverUse,
} from '../read/generated/audit-record.ts';
import type { Violation } from '../rules/rule.ts';
import type { PolicyChange } from '../rules/view.ts';

export type { AuditRecord };

/** The verdict of a policy, and why. */
export interface Opinion {
  readonly verdict: 'pass' | 'fail' | 'not judged';
  readonly reasons: readonly string[];
}

/** What the judgement of one commit came to. */
export interface ChangeJudged {
  readonly verdict: 'pass' | 'fail';
  readonly reasons: readonly string[];
  readonly policyFrom: 'base' | 'head';
  readonly unreadMain: UnreadMain | undefined;
  /** What came, got worse or went; what stands as it stood may be among them and is left out of the record. */
  readonly findings: readonly Finding[];
  readonly standing: Counts;
  readonly renamed: readonly ViolationEdit[];
  readonly between: AuditBetween | undefined;
  readonly waivers: readonly AuditWaiverUse[];
  readonly cost: CostDelta;
  readonly limits: readonly LimitUse[];
  readonly policyChanges: readonly PolicyChange[];
  readonly proposed: Opinion | undefined;
}

export type ChangeOutcome =
  | { readonly kind: 'judged'; readonly judged: ChangeJudged }
  | {
      readonly kind: 'not judged';
      readonly reasons: readonly string[];
      readonly problems: readonly Problem[];
    };

export interface Replayed {
  readonly commit: Commit;
  readonly on: string;
  readonly touched: readonly FileKind[];
  readonly failOn: 'error' | 'warning';
  readonly outcome: ChangeOutcome;
  readonly tried: Opinion | undefined;
}

/** The committer's day in UTC: the clock of the replay. */
export const dayOfCommit = ({ committer }: Commit): string =>
  new Date(committer.date).toISOString().slice(0, 10);

export function recordOf({ commit, on, touched, failOn, outcome, tried }: Replayed): AuditRecord {
  const judged = outcome.kind === 'judged' ? outcome.judged : undefined;
  const { author, committer, message } = commit;
  return {
    format: 'ullage-audit-record-1',
    commit: commit.id,
    tree: commit.tree,
    base: commit.parents[0] ?? null,
    parents: commit.parents.length,
    on,
    committed: committer.date,
    authored: author.date,
    author: { name: author.name, email: author.email },
    committer: { name: committer.name, email: committer.email },
    subject: message.split('\n')[0] ?? '',
    trailers: trailersOf(message),
    signature: commit.signature,
    touched: touched.flatMap((kind) => (kind === 'readings' || kind === 'surveys' ? [] : [kind])),
    verdict: judged?.verdict ?? 'not judged',
    reasons: [...(outcome.kind === 'judged' ? outcome.judged.reasons : outcome.reasons)],
    policyFrom: judged?.policyFrom ?? null,
    unreadMain: judged?.unreadMain === undefined ? null : unreadRecord(judged.unreadMain),
    failOn,
    findings: judged === undefined ? [] : judged.findings.flatMap(findingRecord),
    open: judged === undefined ? null : { ...judged.standing },
    between: judged?.between ?? null,
    renamed: judged?.renamed.flatMap(renamedRecord) ?? [],
    waivers: [...(judged?.waivers ?? [])],
    cost: judged === undefined ? null : costRecord(judged.cost),
    limits: (judged?.limits ?? []).map(({ entry, subject, limit, after }) => ({
      entry,
      subject: { ...subject },
      limit: exact(limit),
      after: exact(after),
    })),
    policyChanges:
      judged?.policyChanges.map(({ direction, of, name, key, from, to, monthly }) => ({
        direction,
        of,
        name,
        key: key ?? null,
        from: from ?? null,
        to: to ?? null,
        monthly:
          monthly === undefined
            ? null
            : { currency: monthly.currency, difference: monthly.difference.toFixed() },
      })) ?? [],
    proposed: opinionRecord(judged?.proposed),
    tried: opinionRecord(tried),
    problems: outcome.kind === 'judged' ? [] : outcome.problems.map(problemRecord),
  };
}

const unreadRecord = ({
  comparedWith,
  commits,
  problem,
  policy,
  pricedByBranch,
}: UnreadMain): AuditUnreadMain => ({
  comparedWith: comparedWith?.commit ?? null,
  commits,
  problem: problemRecord({ ...problem, revision: 'base' }),
  policy: { ...policy },
  pricedByBranch: [...pricedByBranch],
});

const opinionRecord = (opinion: Opinion | undefined): AuditRecord['tried'] =>
  opinion === undefined ? null : { verdict: opinion.verdict, reasons: [...opinion.reasons] };

function findingRecord(finding: Finding): readonly AuditFinding[] {
  const { baselineState } = finding;
  if (baselineState === 'unchanged') return [];
  return [
    {
      rule: finding.rule,
      entry: finding.entry,
      level: finding.level,
      baselineState,
      about: finding.about,
      subject: { ...finding.subject },
      facet: finding.facet ?? null,
      message: finding.message,
      fails: finding.fails,
      place: placeRecord(finding.place),
      waiver: finding.waiver === undefined ? null : waiverRecord(finding.waiver),
      outgrown: finding.outgrown === undefined ? null : waiverRecord(finding.outgrown),
      held: plainHeld(finding.held),
    },
  ];
}

const placeRecord = ({
  file,
  line,
  column,
  revision,
}: {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly revision?: 'base' | 'head' | undefined;
}): AuditPlace => ({ revision: revision ?? null, file, line, column });

const problemRecord = ({ place, revision, message, advice }: Problem): AuditRecord['problems'][number] => ({
  place: place === undefined ? null : placeRecord({ ...place, revision }),
  message,
  advice,
});

const waiverRecord = ({
  rule,
  name,
  subject,
  kind,
  upTo,
  reason,
  approvedBy,
  from,
  until,
  place,
}: Waiver): AuditWaiver => ({
  rule,
  name: name ?? null,
  subject,
  kind: kind ?? null,
  upTo: upTo?.written ?? null,
  reason,
  approvedBy,
  from,
  until,
  file: place.file,
  line: place.line,
});

const exact = (amount: Money): string => amount.toFixed();

const costRecord = (cost: CostDelta): AuditCost => ({
  currency: cost.currency,
  before: exact(cost.before),
  after: exact(cost.after),
  difference: cost.difference === undefined ? null : exact(cost.difference),
  currencyBefore: cost.currencyBefore,
  teams: cost.teams.map((ends) => {
    const difference = changeOfCost(cost, ends);
    return {
      team: ends.team === '' ? null : ends.team,
      before: exact(ends.before),
      after: exact(ends.after),
      difference: difference === undefined ? null : exact(difference),
    };
  }),
});

const named = ({ subject, facet }: Violation) => ({ subject: { ...subject }, facet: facet ?? null });

function renamedRecord({ entry, was, now }: ViolationEdit): readonly AuditRenamed[] {
  return was === undefined || now === undefined
    ? []
    : [{ entry: entry.name, from: named(was), to: named(now) }];
}

function betweenRecord(place: 'first' | 'next', edits: readonly ViolationEdit[]): AuditBetween {
  const brief = ({ entry }: ViolationEdit, violation: Violation | undefined): readonly AuditStanding[] =>
    violation === undefined
      ? []
      : [
          {
            rule: entry.entry.rule,
            entry: entry.name,
            level: levelOf(entry, violation),
            ...named(violation),
            message: violation.message,
          },
        ];
  return {
    began: place === 'first',
    new: edits.flatMap((edit) => brief(edit, edit.now)),
    fixed: edits.flatMap((edit) => brief(edit, edit.was)),
  };
}

/** What became of the waivers, from every finding on the head that any of them is for. */
export function waiverUses(
  waivers: readonly Waiver[],
  findings: readonly Finding[],
  on: string,
  writtenAs: (waiver: Waiver) => OtherWriting | undefined,
): readonly AuditWaiverUse[] {
  const standing = findings.filter(({ baselineState }) => baselineState !== 'absent');
  return waivers.flatMap((waiver): readonly AuditWaiverUse[] => {
    const used = standing.filter((finding) => finding.waiver === waiver).length;
    const beyond = standing.filter(({ outgrown }) => outgrown === waiver).length;
    if (used > 0 || beyond > 0) {
      return (['used', 'outgrown'] as const).flatMap((state) => {
        const findings = state === 'used' ? used : beyond;
        return findings === 0 ? [] : [{ state, waiver: waiverRecord(waiver), findings, writeInstead: null }];
      });
    }
    const written = writtenAs(waiver);
    if (written !== undefined) {
      return [
        { state: 'written otherwise', waiver: waiverRecord(waiver), findings: 1, writeInstead: written.line },
      ];
    }
    if (on <= waiver.until) return [];
    const lapsed = standing.filter(
      ({ rule, entry, subject, waiver: other }) =>
        other === undefined && isFor(waiver, { name: entry, entry: { rule } }, subject),
    ).length;
    return lapsed === 0
      ? []
      : [{ state: 'expired', waiver: waiverRecord(waiver), findings: lapsed, writeInstead: null }];
  });
}

/** Everything that an evaluation says, as if it had come at once. */
const allOf = (evaluation: Evaluation): readonly ViolationEdit[] =>
  allSaid(evaluation).map(({ entry, violation }) => ({ entry, was: undefined, now: violation }));

/** @param place whether the change is the first that was evaluated, or follows one that was */
export function judgedOf(
  change: ChangeEvaluation,
  options: Required<JudgeOptions>,
  place: 'first' | 'next',
): ChangeJudged {
  const { sides, before, between, edits, findings, carried, touched, policyChanges, cost } = change;
  const { policy, policyFrom, unreadMain } = sides;
  const standing = { ...carried.counts };
  for (const finding of findings) {
    if (finding.baselineState !== 'absent' && finding.about === 'state') standing[finding.level]++;
  }
  const { on, failOn } = options;
  const lapsed = policy.waivers.filter(({ until }) => until < on);
  const key = ({ entry, subject, facet }: Finding): string =>
    `${entry} ${subjectKey(subject)} ${facet ?? ''}`;
  const waived = new Set(carried.waived.map(key));
  const wanted = waivedAmongCarried(before, touched, {
    failOn,
    waivers: bySubject(lapsed),
    held: heldTo(change.approvals, before.view.prices.currency),
  })
    .filter((finding) => !waived.has(key(finding)))
    .map((finding) => ({ ...finding, waiver: undefined }));
  const refused = findings.filter(({ fails, baselineState }) => fails && baselineState !== 'absent');
  return {
    ...verdictOf(change),
    policyFrom,
    unreadMain,
    findings,
    standing,
    renamed: edits.filter(
      ({ was, now }) => was !== undefined && now !== undefined && violationKey(was) !== violationKey(now),
    ),
    between: betweenRecord(place, place === 'first' ? allOf(before) : between),
    waivers: waiverUses(policy.waivers, [...findings, ...carried.waived, ...wanted], on, (waiver) =>
      otherWriting(waiver, refused, change.comparison.renames),
    ),
    cost,
    limits: limitUses(policy, before.view, change.after.view),
    policyChanges,
    proposed: propose(change, options),
  };
}

/**
 * The trailers of a commit message: `Key: value` lines in its last paragraph, where that holds nothing else. What
 * goes on in an indented line is part of the line above.
 */
export function trailersOf(message: string): AuditTrailer[] {
  const paragraphs = message.trimEnd().split(/\n[ \t]*\n/);
  const last = paragraphs.length > 1 ? (paragraphs.at(-1) ?? '') : '';
  const trailers: AuditTrailer[] = [];
  for (const line of last.split('\n')) {
    const open = trailers.at(-1);
    const [, key, value = ''] = /^([A-Za-z0-9][A-Za-z0-9-]*)[ \t]*:[ \t]*(.*)$/.exec(line) ?? [];
    if (key !== undefined) trailers.push({ key, value: value.trim() });
    else if (/^[ \t]+\S/.test(line) && open !== undefined) open.value = `${open.value} ${line.trim()}`;
    else if (!line.startsWith('(cherry picked from commit ')) return [];
  }
  return trailers;
}
