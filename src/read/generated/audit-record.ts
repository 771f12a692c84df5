/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * The day it was judged as of: the committer's date, in UTC.
 */
export type Date = string;
/**
 * The verdict.
 */
export type AuditVerdict = 'pass' | 'fail' | 'not judged';
/**
 * The settings.
 */
export type AuditPolicySource = 'main' | 'ancestor' | 'branch';
/**
 * The price lists.
 */
export type AuditPolicySource1 = 'main' | 'ancestor' | 'branch';
/**
 * The rule packs, and the readings they ask for.
 */
export type AuditPolicySource2 = 'main' | 'ancestor' | 'branch';
/**
 * The waivers.
 */
export type AuditPolicySource3 = 'main' | 'ancestor' | 'branch';
/**
 * A level of SARIF 2.1.0.
 */
export type AuditLevel = 'error' | 'warning' | 'note';
/**
 * The first day on which it applies.
 */
export type Date1 = string;
/**
 * The last day on which it applies.
 */
export type Date2 = string;
/**
 * Before the commit.
 */
export type AuditMoney = string;
/**
 * After it.
 */
export type AuditMoney1 = string;
/**
 * Before the commit.
 */
export type AuditMoney2 = string;
/**
 * After it.
 */
export type AuditMoney3 = string;
/**
 * The most that a month may cost.
 */
export type AuditMoney4 = string;
/**
 * What falls under it.
 */
export type AuditMoney5 = string;

/**
 * The judgement of one commit of the main branch, replayed: one line of `ullage audit --format ndjson`. Every key is always there.
 */
export interface AuditRecord {
  /**
   * The version of this format. With the same number keys may be added; none is taken away, and none changes its meaning.
   */
  format: 'ullage-audit-record-1';
  /**
   * The commit.
   */
  commit: string;
  /**
   * Its tree.
   */
  tree: string;
  /**
   * Its first parent, which it was judged against (or its nearest ancestor that can be read, see `unreadMain`); null for the first commit of all.
   */
  base: string | null;
  /**
   * How many parents it has; two or more make it a merge.
   */
  parents: number;
  on: Date;
  /**
   * The committer's date and time, RFC 3339.
   */
  committed: string;
  /**
   * The author's date and time, RFC 3339.
   */
  authored: string;
  author: AuditPerson;
  committer: AuditPerson;
  /**
   * The first line of the message.
   */
  subject: string;
  /**
   * In the order of the message.
   */
  trailers: AuditTrailer[];
  /**
   * Whether a signature is there. Whose it is, and whether it is good, is not known.
   */
  signature: 'present' | 'absent';
  /**
   * What kinds of files it changed.
   */
  touched: ('settings' | 'storage' | 'prices' | 'policies' | 'waivers' | 'procedures')[];
  verdict: AuditVerdict;
  /**
   * Why, one sentence each, the most serious first.
   */
  reasons: string[];
  /**
   * Whose policy applied: the commit's own only where the base had none, or none that can be read; null where nothing was judged.
   */
  policyFrom: 'base' | 'head' | null;
  /**
   * Only where main itself could not be read: what it was compared with instead; null otherwise.
   */
  unreadMain: AuditUnreadMain | null;
  /**
   * The level from which a finding fails.
   */
  failOn: 'error' | 'warning';
  /**
   * What is new, worse or fixed with the commit, the most serious first.
   */
  findings: AuditFinding[];
  /**
   * How many findings are open after it; null where nothing was judged.
   */
  open: AuditCounts | null;
  /**
   * What was new and what was fixed since the record before; null where nothing was judged.
   */
  between: AuditBetween | null;
  /**
   * Findings that continue under other names.
   */
  renamed: AuditRenamed[];
  /**
   * Waivers that were used, or still needed after their date.
   */
  waivers: AuditWaiverUse[];
  /**
   * The monthly cost; null where nothing was judged.
   */
  cost: AuditCost | null;
  /**
   * Every spend limit that held on the day, and what fell under it after the commit, in the currency of `cost.currencyBefore`.
   */
  limits: AuditLimit[];
  /**
   * What the commit changed in the policy.
   */
  policyChanges: AuditPolicyChange[];
  /**
   * The verdict under the policy that it brought; null where it changed none.
   */
  proposed: AuditOpinion | null;
  /**
   * The verdict under the policy that was tried; null where none was.
   */
  tried: AuditOpinion | null;
  /**
   * Why it could not be judged; empty where it was.
   */
  problems: AuditProblem1[];
}
/**
 * Who, as the commit names them.
 */
export interface AuditPerson {
  /**
   * The name.
   */
  name: string;
  /**
   * The address.
   */
  email: string;
}
/**
 * One line at the end of the commit message, such as Reviewed-by.
 */
export interface AuditTrailer {
  /**
   * The text before the colon.
   */
  key: string;
  /**
   * The text after it.
   */
  value: string;
}
/**
 * Main itself could not be read: what it was compared with instead.
 */
export interface AuditUnreadMain {
  /**
   * The nearest first-parent ancestor of main that can be read, whose estate was compared with; null where there is none, and the head was judged alone, as a first adoption.
   */
  comparedWith: string | null;
  /**
   * How many commits of main do not read: those after that ancestor, or all there are.
   */
  commits: number;
  problem: AuditProblem;
  policy: AuditUnreadPolicy;
  /**
   * Tiers and server types that main declares and no list on main prices, for which the branch's prices hold.
   */
  pricedByBranch: string[];
}
/**
 * The first thing that is wrong with main.
 */
export interface AuditProblem {
  /**
   * Where.
   */
  place: AuditPlace | null;
  /**
   * What is wrong.
   */
  message: string;
  /**
   * What to do.
   */
  advice: string;
}
/**
 * A place in a file of one of the two revisions.
 */
export interface AuditPlace {
  /**
   * The first parent, or the commit itself; null where it is not known which.
   */
  revision: 'base' | 'head' | null;
  /**
   * The path from the top of the repository.
   */
  file: string;
  /**
   * Counts from 1.
   */
  line: number;
  /**
   * Counts from 1, in UTF-16 units.
   */
  column: number;
}
/**
 * Whose each part of the policy was: main's own where that part reads, the ancestor's where it does not, and the branch's where neither has one.
 */
export interface AuditUnreadPolicy {
  settings: AuditPolicySource;
  prices: AuditPolicySource1;
  rules: AuditPolicySource2;
  waivers: AuditPolicySource3;
}
/**
 * What a rule found.
 */
export interface AuditFinding {
  /**
   * The rule.
   */
  rule: string;
  /**
   * The name of the entry in the rule pack.
   */
  entry: string;
  level: AuditLevel;
  /**
   * SARIF 2.1.0: new with the commit, made worse by it, or no longer there.
   */
  baselineState: 'new' | 'updated' | 'absent';
  /**
   * Whether it is about the state, and stays until it is fixed, or about the change alone.
   */
  about: 'state' | 'change';
  subject: AuditSubject;
  /**
   * Tells several findings of one entry about one subject apart.
   */
  facet: string | null;
  /**
   * What is wrong.
   */
  message: string;
  /**
   * Whether it made the verdict fail.
   */
  fails: boolean;
  place: AuditPlace;
  /**
   * The waiver that covers it.
   */
  waiver: AuditWaiver | null;
  /**
   * A waiver that is for it and covers less; null where there is none, or another covers it.
   */
  outgrown: AuditWaiver | null;
  /**
   * What either was held to, where it has no ceiling and the finding would fail without it; null otherwise.
   */
  held: AuditHeld | null;
}
/**
 * What it is about.
 */
export interface AuditSubject {
  /**
   * The kind of thing.
   */
  kind:
    | 'estate'
    | 'site'
    | 'team'
    | 'label'
    | 'scope'
    | 'server'
    | 'volume'
    | 'volume-group'
    | 'file-system'
    | 'branch';
  /**
   * Its name.
   */
  name: string;
}
/**
 * A waiver.
 */
export interface AuditWaiver {
  /**
   * The rule or entry it is for.
   */
  rule: string;
  /**
   * The one entry that is meant; null where any of the rule is.
   */
  name: string | null;
  /**
   * The subject it is for.
   */
  subject: string;
  /**
   * The kind of that subject; null where any of the name is meant.
   */
  kind: string | null;
  /**
   * The most that it covers, as it is written; null where it has no ceiling, and `held` in the finding says what it was held to.
   */
  upTo: string | null;
  /**
   * Why.
   */
  reason: string;
  /**
   * Who approved it.
   */
  approvedBy: string;
  from: Date1;
  until: Date2;
  /**
   * The file it is in.
   */
  file: string;
  /**
   * Its line.
   */
  line: number;
}
/**
 * What a waiver without a ceiling was held to: what it has covered on main before.
 */
export interface AuditHeld {
  /**
   * `nothing yet`: it had covered nothing, and covers this; `as much` as this or more; `less` than this; `something else`; `unknown` where history does not tell. Only the first two cover it.
   */
  kind: 'nothing yet' | 'as much' | 'less' | 'something else' | 'unknown';
  /**
   * What it had covered; null where that is nothing.
   */
  covered: AuditCovered | null;
}
/**
 * What a waiver without a ceiling first covered.
 */
export interface AuditCovered {
  /**
   * The name of the entry.
   */
  entry: string;
  level: AuditLevel;
  subject: AuditSubject;
  /**
   * As in a finding.
   */
  facet: string | null;
  /**
   * What was wrong.
   */
  message: string;
  /**
   * What it came to in bytes, where the rule measures a size; null otherwise.
   */
  size: string | null;
  /**
   * What it came to in money a month, exact, where the rule measures an amount; null otherwise.
   */
  amount: string | null;
  /**
   * What it came to as a number, where the rule measures one; null otherwise.
   */
  number: string | null;
  /**
   * The currency of the amount (ISO 4217).
   */
  currency: string;
  /**
   * The commit of main where it was first seen.
   */
  commit: string;
  /**
   * The day of that (RFC 3339 full-date).
   */
  on: string;
}
/**
 * How many findings are open after the commit, waived ones included.
 */
export interface AuditCounts {
  /**
   * Errors.
   */
  error: number;
  /**
   * Warnings.
   */
  warning: number;
  /**
   * Notes.
   */
  note: number;
}
/**
 * What was new and what was fixed on the base since the record before, without a change of storage: because of the date, the policy, the prices or the readings.
 */
export interface AuditBetween {
  /**
   * Whether the replay began here; `new` is then all that was open at the beginning.
   */
  began: boolean;
  /**
   * Findings that were not there before.
   */
  new: AuditStanding[];
  /**
   * Findings that are no longer there.
   */
  fixed: AuditStanding[];
}
/**
 * A finding that was there without a change of storage.
 */
export interface AuditStanding {
  /**
   * The rule.
   */
  rule: string;
  /**
   * The name of the entry.
   */
  entry: string;
  level: AuditLevel;
  subject: AuditSubject;
  /**
   * As in a finding.
   */
  facet: string | null;
  /**
   * What is wrong.
   */
  message: string;
}
/**
 * A finding that continues under another name.
 */
export interface AuditRenamed {
  /**
   * The name of the entry.
   */
  entry: string;
  from: AuditNamed;
  to: AuditNamed;
}
/**
 * What identifies a finding.
 */
export interface AuditNamed {
  subject: AuditSubject;
  /**
   * As in a finding.
   */
  facet: string | null;
}
/**
 * How a waiver was used in this judgement.
 */
export interface AuditWaiverUse {
  /**
   * `used`: it waived a finding; `outgrown`: a finding that it was for was beyond what it covers; `expired`: its date was over, and there still was a finding that it was for; `written otherwise`: only the writing of its subject kept it from a finding.
   */
  state: 'used' | 'outgrown' | 'expired' | 'written otherwise';
  waiver: AuditWaiver;
  /**
   * How many findings.
   */
  findings: number;
  /**
   * The waiver's line as it would have to be written to be for a finding of this judgement, where only the writing of its subject keeps it from that; null otherwise.
   */
  writeInstead: string | null;
}
/**
 * What the estate costs a month.
 */
export interface AuditCost {
  /**
   * The currency of what it cost before (ISO 4217).
   */
  currencyBefore: string;
  /**
   * ISO 4217.
   */
  currency: string;
  before: AuditMoney;
  after: AuditMoney1;
  /**
   * The difference; null where before and after are in two currencies.
   */
  difference: string | null;
  /**
   * By team, in order of name.
   */
  teams: AuditTeam[];
}
/**
 * The monthly cost of a team's storage.
 */
export interface AuditTeam {
  /**
   * The team; null for what belongs to none.
   */
  team: string | null;
  before: AuditMoney2;
  after: AuditMoney3;
  /**
   * The difference; null where before and after are in two currencies.
   */
  difference: string | null;
}
/**
 * One spend limit.
 */
export interface AuditLimit {
  /**
   * The entry of the rule pack.
   */
  entry: string;
  subject: AuditSubject1;
  limit: AuditMoney4;
  after: AuditMoney5;
}
/**
 * What it is about.
 */
export interface AuditSubject1 {
  /**
   * The kind of thing.
   */
  kind:
    | 'estate'
    | 'site'
    | 'team'
    | 'label'
    | 'scope'
    | 'server'
    | 'volume'
    | 'volume-group'
    | 'file-system'
    | 'branch';
  /**
   * Its name.
   */
  name: string;
}
/**
 * One alteration of the policy.
 */
export interface AuditPolicyChange {
  /**
   * Whether it lets more through.
   */
  direction: 'tighter' | 'looser' | 'neither' | 'unknown';
  /**
   * What another price comes to a month for the estate on the base; null where it is no price, or comes to nothing.
   */
  monthly: AuditMonthly | null;
  /**
   * What was altered.
   */
  of: 'rule' | 'waiver' | 'price-list' | 'settings' | 'readings' | 'surveys' | 'server' | 'procedures';
  /**
   * Its name.
   */
  name: string;
  /**
   * The parameter or key.
   */
  key: string | null;
  /**
   * What it was.
   */
  from: string | null;
  /**
   * What it is.
   */
  to: string | null;
}
/**
 * An amount a month.
 */
export interface AuditMonthly {
  /**
   * The currency (ISO 4217).
   */
  currency: string;
  /**
   * The difference, exact.
   */
  difference: string;
}
/**
 * What another policy would have said.
 */
export interface AuditOpinion {
  verdict: AuditVerdict;
  /**
   * Why.
   */
  reasons: string[];
}
/**
 * One problem.
 */
export interface AuditProblem1 {
  /**
   * Where.
   */
  place: AuditPlace | null;
  /**
   * What is wrong.
   */
  message: string;
  /**
   * What to do.
   */
  advice: string;
}
