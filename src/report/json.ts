/** A judgement as the one JSON object that `ullage gate --format json` prints; schema/judgement.json describes it. */

import type { Place, Problem } from '../base/problem.ts';
import type { Room } from '../capacity/headroom.ts';
import type { Question } from '../change/question.ts';
import { plainHeld } from '../policy/approval.ts';
import type {
  Finding,
  Judged,
  Judgement,
  LimitUse,
  NotJudged,
  Proposed,
  RoomChange,
  UnreadMain,
} from '../policy/judgement.ts';
import type { PolicyRule, RuleOrigin, Waiver } from '../policy/policy.ts';
import { type CostDelta, changeOfCost } from '../price/delta.ts';
import { type Money, showMoney } from '../price/money.ts';
import type { PolicyChange } from '../rules/view.ts';
import type { Step } from '../runbook/step.ts';
import type {
  CostReport,
  FindingReport,
  HeadroomReport,
  JudgementReport,
  LayerFiguresReport,
  LimitReport,
  PlaceReport,
  PolicyChangeReport,
  ProblemReport,
  ProposedReport,
  QuestionReport,
  RuleInForceReport,
  StepReport,
  UnlimitedReport,
  UnreadMainReport,
  WaiverReport,
} from './generated/judgement.ts';
import { changeReport, placeReport, subjectReport } from './json-change.ts';
import { jsonText } from './json-text.ts';
import { isTouched } from './model/headroom.ts';
import { questionSentence } from './model/question.ts';

export interface JsonOptions {
  /** Whether what nothing changed is wanted as well: rooms, and the lines of teams and limits. */
  readonly all?: boolean;
}

/**
 * Writes a judgement as JSON, with every finding, change and problem: the object that
 * `ullage/schema/judgement.json` describes. Amounts are decimal strings, sizes integer strings of bytes. The same judgement gives the same bytes.
 *
 * @example
 * ```js
 * import { judgeRepository, reportJson } from 'ullage';
 *
 * const judgement = await judgeRepository('.', { base: 'main', head: 'smaller-plates', on: '2026-11-20' });
 * console.log(JSON.parse(reportJson(judgement)).cost.difference); // -0.45
 * ```
 */
export const reportJson = (judgement: Judgement, options: JsonOptions = {}): string =>
  jsonText(judgementReport(judgement, options));

/** The judgement as plain values. Keys are always there and always in one order. */
export const judgementReport = (judgement: Judgement, { all = false }: JsonOptions = {}): JudgementReport =>
  judgement.verdict === 'not judged' ? notJudgedReport(judgement) : judgedReport(judgement, all);

function notJudgedReport({
  verdict,
  reasons,
  base,
  head,
  on,
  problems,
  notRead = [],
}: NotJudged): JudgementReport {
  return {
    format: 'ullage-judgement-1',
    verdict,
    reasons: [...reasons],
    base: base === undefined ? null : { commit: base.commit },
    head: head === undefined ? null : { commit: head.commit },
    on: on === '' ? null : on,
    policyFrom: null,
    unreadMain: null,
    failOn: null,
    cost: null,
    unlimited: null,
    limits: [],
    findings: [],
    changes: [],
    question: null,
    runbook: [],
    headroom: [],
    policyChanges: [],
    proposed: null,
    waivers: [],
    rules: [],
    problems: problems.map(problemReport),
    notRead: notRead.map((file) => ({ ...file })),
    unchanged: { headroom: 0, teams: 0, limits: 0 },
  };
}

function judgedReport(judged: Judged, all: boolean): JudgementReport {
  const { policyFrom, proposed, notRead = [] } = judged;
  const headroom = judged.headroom.filter((room) => all || isTouched(room));
  const limits = judged.limits.filter(({ before, after }) => all || !before.equals(after));
  const teams = judged.cost.teams.filter((team) => all || changeOfCost(judged.cost, team)?.isZero() !== true);
  // Limits, and what counts towards them, are in the money of the prices that judge.
  const { currencyBefore: currency } = judged.cost;
  return {
    format: 'ullage-judgement-1',
    verdict: judged.verdict,
    reasons: [...judged.reasons],
    base: { commit: judged.base.commit },
    head: { commit: judged.head.commit },
    on: judged.on,
    policyFrom,
    unreadMain: judged.unreadMain === undefined ? null : unreadReport(judged.unreadMain),
    failOn: judged.failOn,
    cost: costReport({ ...judged.cost, teams }, judged.afterAtJudgingPrices),
    unlimited: unlimitedReport(judged.unlimited, currency),
    limits: limits.map((limit) => limitReport(limit, currency)),
    findings: judged.findings.map((finding) => findingReport(finding, policyFrom)),
    changes: judged.changes.map(changeReport),
    question: judged.question === undefined ? null : questionReport(judged.question),
    runbook: judged.runbook.map(stepReport),
    headroom: headroom.flatMap(headroomReport),
    policyChanges: judged.policyChanges.map(policyChangeReport),
    proposed: proposed === undefined ? null : proposedReport(proposed),
    waivers: judged.waivers.map(({ waiver, state, written }) => ({
      state,
      waiver: waiverReport(waiver, policyFrom),
      writeInstead: written?.line ?? null,
    })),
    rules: judged.rules.map((rule) => ruleReport(rule, policyFrom)),
    problems: [],
    notRead: notRead.map((file) => ({ ...file })),
    unchanged: {
      headroom: judged.headroom.length - headroom.length,
      teams: judged.cost.teams.length - teams.length,
      limits: judged.limits.length - limits.length,
    },
  };
}

const questionReport = (question: Question): QuestionReport => ({
  firstEstate: question.first,
  servers: [...question.servers],
  volumes: [...question.volumes],
  text: questionSentence(question),
});

const unreadReport = (unread: UnreadMain): UnreadMainReport => ({
  comparedWith: unread.comparedWith?.commit ?? null,
  commits: unread.commits,
  problem: problemReport({ ...unread.problem, revision: 'base' }),
  policy: { ...unread.policy },
  pricedByBranch: [...unread.pricedByBranch],
});

const exact = (amount: Money): string => amount.toFixed();

function costReport(cost: CostDelta, atJudgingPrices: Money | undefined): CostReport {
  const { currency } = cost;
  const { currencyBefore, difference: changed } = cost;
  const shown = (amount: Money, unit = currency): string => showMoney(amount, unit);
  const differenceReport = (difference: Money | undefined) => ({
    shown: difference === undefined ? null : shown(difference),
    exact: difference === undefined ? null : exact(difference),
  });
  return {
    currencyBefore,
    currency,
    before: shown(cost.before, currencyBefore),
    after: shown(cost.after),
    difference: differenceReport(changed).shown,
    exact: {
      before: exact(cost.before),
      after: exact(cost.after),
      difference: differenceReport(changed).exact,
      alreadyPaid: exact(cost.adopted),
      unattached: exact(cost.detached),
      afterAtBasePrices: atJudgingPrices === undefined ? null : exact(atJudgingPrices),
    },
    causes: cost.causes.map(({ cause, difference }) => ({
      cause,
      difference: differenceReport(difference).shown,
      exact: { difference: differenceReport(difference).exact },
    })),
    teams: cost.teams.map(({ team, before, after }) => {
      const difference = differenceReport(changeOfCost(cost, { before, after }));
      return {
        team: team === '' ? null : team,
        before: shown(before, currencyBefore),
        after: shown(after),
        difference: difference.shown,
        exact: { before: exact(before), after: exact(after), difference: difference.exact },
      };
    }),
    alreadyPaid: shown(cost.adopted),
    unattached: shown(cost.detached),
    afterAtBasePrices: atJudgingPrices === undefined ? null : shown(atJudgingPrices, currencyBefore),
  };
}

const unlimitedReport = ({ before, after }: Judged['unlimited'], currency: string): UnlimitedReport => ({
  before: showMoney(before, currency),
  after: showMoney(after, currency),
  exact: { before: exact(before), after: exact(after) },
});

const limitReport = ({ entry, subject, limit, before, after }: LimitUse, currency: string): LimitReport => ({
  entry,
  subject: subjectReport(subject),
  limit: showMoney(limit, currency),
  before: showMoney(before, currency),
  after: showMoney(after, currency),
  exact: { limit: exact(limit), before: exact(before), after: exact(after) },
});

const findingReport = (finding: Finding, policyFrom: 'base' | 'head'): FindingReport => ({
  rule: finding.rule,
  entry: finding.entry,
  level: finding.level,
  baselineState: finding.baselineState,
  fails: finding.fails,
  subject: subjectReport(finding.subject),
  facet: finding.facet ?? null,
  message: finding.message,
  advice: finding.advice,
  place: placeReport(finding.place),
  waiver: finding.waiver === undefined ? null : waiverReport(finding.waiver, policyFrom),
  outgrown: finding.outgrown === undefined ? null : waiverReport(finding.outgrown, policyFrom),
  held: plainHeld(finding.held),
});

const placedIn = (place: Place, revision: 'base' | 'head'): PlaceReport =>
  placeReport({ ...place, revision });

const waiverReport = (waiver: Waiver, policyFrom: 'base' | 'head'): WaiverReport => ({
  rule: waiver.rule,
  subject: waiver.subject,
  kind: waiver.kind ?? null,
  name: waiver.name ?? null,
  upTo: waiver.upTo?.written ?? null,
  reason: waiver.reason,
  approvedBy: waiver.approvedBy,
  from: waiver.from,
  until: waiver.until,
  place: placedIn(waiver.place, policyFrom),
});

export const stepReport = (step: Step): StepReport => ({
  number: step.number,
  id: step.id,
  at: step.at,
  server: step.server ?? null,
  subject: subjectReport(step.subject),
  instruction: step.does,
  why: step.why ?? null,
  seen: step.seen ?? null,
  stepBack: step.back ?? null,
  losesData: step.destroys,
  cautions: [...step.cautions],
  examples: step.examples.map(({ command, source }) => ({ command, source })),
  after: [...step.after],
  carriesOut: [...step.carriesOut],
});

function headroomReport({ before, after }: RoomChange): readonly HeadroomReport[] {
  const room = after ?? before;
  if (room === undefined) return [];
  const { layer, subject, measure } = room;
  return [
    {
      layer,
      subject: subjectReport(subject),
      measure,
      before: before === undefined ? null : roomReport(before),
      after: after === undefined ? null : roomReport(after),
    },
  ];
}

const roomReport = ({ capacity, taken, free, surveyed }: Room): LayerFiguresReport => ({
  capacity: capacity.toString(),
  used: taken.toString(),
  free: free.toString(),
  ...(surveyed === undefined ? {} : { surveyed }),
});

const policyChangeReport = (change: PolicyChange): PolicyChangeReport => ({
  direction: change.direction,
  of: change.of,
  name: change.name,
  key: change.key ?? null,
  from: change.from ?? null,
  to: change.to ?? null,
  place: change.place === undefined ? null : placeReport(change.place),
  written: change.written ?? null,
  monthly:
    change.monthly === undefined
      ? null
      : { currency: change.monthly.currency, difference: exact(change.monthly.difference) },
});

const elsewhereReport = ({ pack, repository, commit, at }: Extract<RuleOrigin, { kind: 'elsewhere' }>) => ({
  pack,
  repository,
  commit,
  file: at.file,
  line: at.line,
  column: at.column,
});

const ruleReport = (
  { name, entry, level, place, origin }: PolicyRule,
  policyFrom: 'base' | 'head',
): RuleInForceReport => ({
  name,
  rule: entry.rule,
  level,
  shippedIn: origin.kind === 'shipped' ? origin.pack : null,
  elsewhere: origin.kind === 'elsewhere' ? elsewhereReport(origin) : null,
  // A shipped pack is inside the program: there is no file to point at.
  place: origin.kind === 'shipped' ? null : placedIn(place, policyFrom),
});

export const problemReport = ({ message, advice, place, revision, excerpt }: Problem): ProblemReport => ({
  message,
  advice,
  place:
    place === undefined
      ? null
      : { revision: revision ?? null, file: place.file, line: place.line, column: place.column },
  excerpt: excerpt ?? null,
});

const proposedReport = ({ verdict, reasons, onPast }: Proposed): ProposedReport => ({
  verdict,
  reasons: [...reasons],
  backTest:
    onPast === undefined
      ? null
      : {
          changes: onPast.changes,
          judged: onPast.judged,
          stopped: onPast.stopped.map((past) => ({ ...past })),
          letThrough: onPast.letThrough.map((past) => ({ ...past })),
        },
});
