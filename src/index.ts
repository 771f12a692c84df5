/**
 * Ullage as a library: from files or a repository to a judgement, and from a judgement to a report. Beneath that, the
 * same in steps, as pure functions over immutable values: `readFiles`, `sidesOf`, `judge`; `compareEstates`,
 * `priceEstate`.
 *
 * Sizes are `Bytes` (bigint), amounts `Money` (decimal.js) in one currency of ISO 4217, days RFC 3339 full-dates.
 *
 * @packageDocumentation
 */

export { judgeRepository } from './audit/judge-repository.ts';
export type { Outcome, Place, Problem } from './base/problem.ts';
export type { Layer, Room } from './capacity/headroom.ts';
export type {
  AttachmentChange,
  Both,
  Change,
  ChangeKind,
  ChangeOf,
  FileSystemChange,
  GroupChange,
  ServerChange,
  VolumeChange,
  Wiped,
  Wiping,
} from './change/change.ts';
export { type Comparison, compareEstates } from './change/compare.ts';
export type { Shown } from './change/corrected.ts';
export { describeChange, destroys } from './change/kinds.ts';
export type { RevisionPlace } from './change/place.ts';
export type { Question } from './change/question.ts';
export type { Renames, RenamesOfKind } from './change/renames.ts';
export type {
  Attachment,
  Belonging,
  Declared,
  Estate,
  FileSystem,
  Layout,
  Retired,
  Server,
  Subject,
  Volume,
  VolumeGroup,
} from './estate/estate.ts';
export type { FileSystemType, Making } from './estate/made.ts';
export type { ListedPack, Paths, Settings, Site } from './estate/settings.ts';
export { type Bytes, bytes, parseSize, showSize } from './estate/size.ts';
export type { Files, RevisionRequest } from './git/request.ts';
export { type JudgeOptions, judge } from './policy/judge.ts';
export { type JudgeFilesOptions, judgeFiles } from './policy/judge-files.ts';
export type {
  BaselineState,
  Covered,
  Finding,
  Held,
  Judged,
  Judgement,
  LimitUse,
  NotJudged,
  NotRead,
  PastChange,
  PolicySource,
  Proposed,
  RevisionLabel,
  RoomChange,
  TriedOnPast,
  UnreadMain,
} from './policy/judgement.ts';
export type { Ceiling, Policy, PolicyRule, RuleOrigin, Waiver } from './policy/policy.ts';
export { readFiles } from './policy/read-files.ts';
export { type Revision, type Side, type Sides, sidesOf } from './policy/revision.ts';
export type { WaiverUse } from './policy/waiver.ts';
export { type EstateCost, priceEstate } from './price/cost.ts';
export type { Cause, CauseKind, CostDelta, TeamDelta } from './price/delta.ts';
export type { MonthlyDifference } from './price/difference.ts';
export type { CostLine } from './price/line.ts';
export { type Money, money, showMoney } from './price/money.ts';
export { type Band, listInForce, type PriceList, type ServerType, type Tier } from './price/price-list.ts';
export type { FieldPlaces } from './read/document.ts';
export type { Screen } from './report/draw.ts';
export { type JsonOptions, reportJson } from './report/json.ts';
export { reportJunit } from './report/junit.ts';
export { type MarkdownOptions, reportMarkdown } from './report/markdown.ts';
export type { LineAt } from './report/model/findings.ts';
export { judgementPage as reportHtml } from './report/page/judgement.ts';
export { reportSarif, type SarifOptions } from './report/sarif.ts';
export { reportText } from './report/text.ts';
export type { Amount, Excess, Level, Measure, Measured, RuleName } from './rules/rule.ts';
export type { PolicyChange } from './rules/view.ts';
export type { Billing } from './runbook/billing.ts';
export { type Course, courseOf, type Standstill } from './runbook/course.ts';
export type { Example, Snag, Step } from './runbook/step.ts';
