/**
 * Ullage as a library: pure functions from declared estates and a policy to a judgement, and from the changes between
 * two estates to the steps that carry them out, in order (`runbookOf`, also a judgement's `runbook`).
 */

export type { Outcome, Place, Problem } from './base/problem.ts';
export type { Change, ChangeKind } from './change/change.ts';
export { type Comparison, compareEstates } from './change/compare.ts';
export { describeChange, destroys } from './change/kinds.ts';
export { assemble } from './estate/assemble.ts';
export type {
  Estate,
  EstatePart,
  FileSystem,
  Server,
  Subject,
  Volume,
  VolumeGroup,
} from './estate/estate.ts';
export { readEstatePart } from './estate/part.ts';
export { readSettings, type Settings } from './estate/settings.ts';
export { type Bytes, bytes, parseSize, showSize } from './estate/size.ts';
export { type JudgeOptions, judge } from './policy/judge.ts';
export type { Finding, Judged, Judgement, NotJudged } from './policy/judgement.ts';
export { gatherRules, readRulePack, shippedPack } from './policy/pack.ts';
export type { Policy, PolicyRule, Waiver } from './policy/policy.ts';
export type { Side, Sides } from './policy/revision.ts';
export { readWaivers } from './policy/waiver.ts';
export { type EstateCost, priceEstate } from './price/cost.ts';
export { type Money, money, showMoney } from './price/money.ts';
export { gatherPriceLists, type PriceList, readPriceList } from './price/price-list.ts';
export { readDocument } from './read/document.ts';
export { rules } from './rules/registry.ts';
export { type Course, courseOf, type Standstill } from './runbook/course.ts';
export { runbookOf } from './runbook/runbook.ts';
export type { Example, Step } from './runbook/step.ts';
