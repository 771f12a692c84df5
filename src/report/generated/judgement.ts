/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * `fail` where a finding fails, `pass` where none does, `not judged` where that could not be determined.
 */
export type Verdict = 'pass' | 'fail' | 'not judged';
/**
 * A full date as RFC 3339 writes it, such as 2026-11-20.
 */
export type Date = string;
/**
 * The settings.
 */
export type PolicySourceReport = 'main' | 'ancestor' | 'branch';
/**
 * The price lists.
 */
export type PolicySourceReport1 = 'main' | 'ancestor' | 'branch';
/**
 * The rule packs, and the readings they ask for.
 */
export type PolicySourceReport2 = 'main' | 'ancestor' | 'branch';
/**
 * The waivers.
 */
export type PolicySourceReport3 = 'main' | 'ancestor' | 'branch';
/**
 * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
 */
export type Money = string;
/**
 * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
 */
export type ExactMoney = string;
/**
 * Its level.
 */
export type ReportLevel = 'error' | 'warning' | 'note';
/**
 * Its level.
 */
export type ReportLevel1 = 'error' | 'warning' | 'note';
/**
 * What a change is of, told apart by `kind`.
 */
export type ThingReport =
  ServerReport | VolumeReport | AttachmentReport | VolumeGroupReport | FileSystemReport;
/**
 * The verdict it would have given.
 */
export type Verdict1 = 'pass' | 'fail' | 'not judged';
/**
 * Its level.
 */
export type ReportLevel2 = 'error' | 'warning' | 'note';

/**
 * What `ullage gate --format json` prints: one judgement, whole and never cut. Every key is always there. When nothing could be judged, the lists are empty, what is unknown is null, and `problems` says why.
 */
export interface JudgementReport {
  /**
   * The version of this format. With the same number keys may be added; none is taken away, and none changes its meaning.
   */
  format: 'ullage-judgement-1';
  verdict: Verdict;
  /**
   * Why, one sentence each, the most serious first.
   */
  reasons: string[];
  /**
   * The main branch; null where it was not found.
   */
  base: RevisionReport | null;
  /**
   * The main branch as it would be after the merge, or the files of the work tree; null where it was not found.
   */
  head: RevisionReport | null;
  /**
   * The day of the judgement (RFC 3339 full-date); null where the day itself could not be read.
   */
  on: Date | null;
  /**
   * Whose policy applied: the head's only where the base has none at all, or none that can be read; null where nothing was judged.
   */
  policyFrom: 'base' | 'head' | null;
  /**
   * Only where main itself could not be read: what it was compared with instead; null otherwise.
   */
  unreadMain: UnreadMainReport | null;
  /**
   * The level from which a finding fails; null where nothing was judged.
   */
  failOn: 'error' | 'warning' | null;
  /**
   * The monthly cost of the estate, before and after; null where nothing was judged.
   */
  cost: CostReport | null;
  /**
   * What a month costs that no spend limit covers, at the base's prices; null with `not judged`.
   */
  unlimited: UnlimitedReport | null;
  /**
   * Every spend limit in force on the day, and what counts towards it; without `--all`, those whose spend the branch changes.
   */
  limits: LimitReport[];
  /**
   * The findings, worst first: those that fail, then by level and baseline state.
   */
  findings: FindingReport[];
  /**
   * What differs between the base estate and the head estate.
   */
  changes: ChangeReport[];
  /**
   * Where the branch brings many things, or the first estate, and does not say whether they are new or there already: what is asked; null otherwise. It does not decide the verdict.
   */
  question: QuestionReport | null;
  /**
   * The steps that carry the changes out, in order. Where the verdict is not `pass` they are not to be carried out.
   */
  runbook: StepReport[];
  /**
   * The headroom at each layer, before and after; without `--all`, at those that the branch changes.
   */
  headroom: HeadroomReport[];
  /**
   * What the branch changes in the policy. None of it applied to this branch.
   */
  policyChanges: PolicyChangeReport[];
  /**
   * The verdict under the policy that the branch proposes; null where the branch changes no policy, or nothing was judged.
   */
  proposed: ProposedReport | null;
  /**
   * Every waiver of the policy, and whether it was used.
   */
  waivers: WaiverUseReport[];
  /**
   * The rule entries that applied, in order of name.
   */
  rules: RuleInForceReport[];
  /**
   * Files that the branch brings or alters, that look like Ullage's own, and that were not read, for where they lie or how they are named.
   */
  notRead: NotReadReport[];
  unchanged: UnchangedReport;
  /**
   * Why nothing could be judged, and where; empty where there is a judgement.
   */
  problems: ProblemReport1[];
}
/**
 * One revision.
 */
export interface RevisionReport {
  /**
   * The commit's id, or the tree's where the merge has no commit yet, or the name given to the files of the work tree; `nothing` for a main branch without any commit.
   */
  commit: string;
}
/**
 * Main itself could not be read: what it was compared with instead.
 */
export interface UnreadMainReport {
  /**
   * The nearest first-parent ancestor of main that can be read, whose estate was compared with; null where there is none, and the head was judged alone, as a first adoption.
   */
  comparedWith: string | null;
  /**
   * How many commits of main do not read: those after that ancestor, or all there are.
   */
  commits: number;
  problem: ProblemReport;
  policy: UnreadPolicyReport;
  /**
   * Tiers and server types that main declares and no list on main prices, for which the branch's prices hold.
   */
  pricedByBranch: string[];
}
/**
 * The first thing that is wrong with main.
 */
export interface ProblemReport {
  /**
   * What is wrong.
   */
  message: string;
  /**
   * What to do.
   */
  advice: string;
  /**
   * Where; null where the whole revision is meant.
   */
  place: PlaceReport | null;
  /**
   * The source line; null where there is none.
   */
  excerpt: string | null;
}
/**
 * A place in a file of a revision.
 */
export interface PlaceReport {
  /**
   * Which revision the file is of; null where that is not known. What the head no longer has is shown at its place on the base.
   */
  revision: 'base' | 'head' | null;
  /**
   * The file, from the root of the repository, with `/`.
   */
  file: string;
  /**
   * The line, from 1.
   */
  line: number;
  /**
   * The column in UTF-16 units, from 1.
   */
  column: number;
}
/**
 * Whose each part of the policy was: main's own where that part reads, the ancestor's where it does not, and the branch's where neither has one.
 */
export interface UnreadPolicyReport {
  settings: PolicySourceReport;
  prices: PolicySourceReport1;
  rules: PolicySourceReport2;
  waivers: PolicySourceReport3;
}
/**
 * The monthly cost of the estate.
 */
export interface CostReport {
  /**
   * The currency of `before`, and of the limits (ISO 4217).
   */
  currencyBefore: string;
  /**
   * The currency of `after` (ISO 4217).
   */
  currency: string;
  /**
   * The base, at the prices in force on the base.
   */
  before: string;
  /**
   * The head, at its own prices where the branch changes any.
   */
  after: string;
  /**
   * After less before; null where before and after are in two currencies.
   */
  difference: Money | null;
  exact: ExactCostReport;
  /**
   * Why it differs. The exact differences add up to the exact difference.
   */
  causes: CauseReport[];
  /**
   * By team, in order of name; without `--all`, those whose cost the branch changes.
   */
  teams: TeamCostReport[];
  /**
   * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
   */
  alreadyPaid: string;
  /**
   * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
   */
  unattached: string;
  /**
   * The head at the base's prices, which limits are checked at; null where the branch changes no prices.
   */
  afterAtBasePrices: Money | null;
}
/**
 * The same amounts, exact.
 */
export interface ExactCostReport {
  /**
   * The base.
   */
  before: string;
  /**
   * The head.
   */
  after: string;
  /**
   * After less before; null where before and after are in two currencies.
   */
  difference: ExactMoney | null;
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  alreadyPaid: string;
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  unattached: string;
  /**
   * The head at the base's prices, which limits are checked at; null where the branch changes no prices.
   */
  afterAtBasePrices: ExactMoney | null;
}
/**
 * One cause of the difference.
 */
export interface CauseReport {
  /**
   * More or less of something, something that is there already and is only declared now, another tier or server type, another price for the same, another length of the month, or another currency.
   */
  cause: 'quantity' | 'adoption' | 'tier-move' | 'price-change' | 'month-change' | 'currency-change';
  /**
   * What it adds a month, negative where it saves; null where before and after are in two currencies.
   */
  difference: Money | null;
  exact: ExactCauseReport;
}
/**
 * The same amount, exact.
 */
export interface ExactCauseReport {
  /**
   * What it adds a month; null where before and after are in two currencies.
   */
  difference: ExactMoney | null;
}
/**
 * The monthly cost of one team.
 */
export interface TeamCostReport {
  /**
   * The team; null for what belongs to none.
   */
  team: string | null;
  /**
   * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
   */
  before: string;
  /**
   * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
   */
  after: string;
  /**
   * After less before; null where before and after are in two currencies.
   */
  difference: Money | null;
  exact: ExactSpanReport;
}
/**
 * The same amounts, exact.
 */
export interface ExactSpanReport {
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  before: string;
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  after: string;
  /**
   * After less before; null where before and after are in two currencies.
   */
  difference: ExactMoney | null;
}
/**
 * What no spend limit covers.
 */
export interface UnlimitedReport {
  /**
   * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
   */
  before: string;
  /**
   * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
   */
  after: string;
  exact: ExactUnlimitedReport;
}
/**
 * The same amounts, exact.
 */
export interface ExactUnlimitedReport {
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  before: string;
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  after: string;
}
/**
 * One spend limit and what counts towards it.
 */
export interface LimitReport {
  /**
   * The rule entry that sets it.
   */
  entry: string;
  subject: SubjectReport;
  /**
   * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
   */
  limit: string;
  /**
   * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
   */
  before: string;
  /**
   * An amount in the currency, rounded half up to its minor unit (ISO 4217), such as "130.00". Amounts are rounded one by one, so rounded parts may differ from their rounded sum by a minor unit; the exact amounts are under `exact`.
   */
  after: string;
  exact: ExactLimitReport;
}
/**
 * Who or what is limited.
 */
export interface SubjectReport {
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
 * The same amounts, exact; a limit holds at equality of these.
 */
export interface ExactLimitReport {
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  limit: string;
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  before: string;
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  after: string;
}
/**
 * What a rule found about one subject.
 */
export interface FindingReport {
  /**
   * The rule.
   */
  rule: string;
  /**
   * The rule pack's entry for it: its own name, or the rule's.
   */
  entry: string;
  level: ReportLevel;
  /**
   * Compared with the base, in SARIF 2.1.0's words: `new`, `unchanged`, `updated` (made worse) or `absent` (no longer so).
   */
  baselineState: 'new' | 'unchanged' | 'updated' | 'absent';
  /**
   * Whether it alone makes the verdict `fail`.
   */
  fails: boolean;
  subject: SubjectReport1;
  /**
   * Tells apart several findings of one entry about one subject; null where there is only one.
   */
  facet: string | null;
  /**
   * What is wrong, with the figures.
   */
  message: string;
  /**
   * What to do.
   */
  advice: string;
  place: PlaceReport1;
  /**
   * The waiver that covers it; null where none does.
   */
  waiver: WaiverReport | null;
  /**
   * A waiver that is for it and covers less; null where there is none, or another covers it.
   */
  outgrown: WaiverReport | null;
  /**
   * What either was held to, where it has no ceiling and the finding would fail without it; null otherwise.
   */
  held: HeldReport | null;
}
/**
 * What it is about.
 */
export interface SubjectReport1 {
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
 * A place in a file of a revision.
 */
export interface PlaceReport1 {
  /**
   * Which revision the file is of; null where that is not known. What the head no longer has is shown at its place on the base.
   */
  revision: 'base' | 'head' | null;
  /**
   * The file, from the root of the repository, with `/`.
   */
  file: string;
  /**
   * The line, from 1.
   */
  line: number;
  /**
   * The column in UTF-16 units, from 1.
   */
  column: number;
}
/**
 * An exception with a reason, an approver and dates.
 */
export interface WaiverReport {
  /**
   * The rule or the entry it is for.
   */
  rule: string;
  /**
   * The name of the subject it is for.
   */
  subject: string;
  /**
   * The kind of that subject; null where any of the name is meant.
   */
  kind: string | null;
  /**
   * The one entry that is meant; null where any of the rule is.
   */
  name: string | null;
  /**
   * The most that it covers, as it is written; null where it has no ceiling.
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
  /**
   * The first day on which it applies (RFC 3339 full-date).
   */
  from: string;
  /**
   * The last day on which it applies (RFC 3339 full-date).
   */
  until: string;
  place: PlaceReport2;
}
/**
 * A place in a file of a revision.
 */
export interface PlaceReport2 {
  /**
   * Which revision the file is of; null where that is not known. What the head no longer has is shown at its place on the base.
   */
  revision: 'base' | 'head' | null;
  /**
   * The file, from the root of the repository, with `/`.
   */
  file: string;
  /**
   * The line, from 1.
   */
  line: number;
  /**
   * The column in UTF-16 units, from 1.
   */
  column: number;
}
/**
 * What a waiver without a ceiling was held to: what it has covered on main before.
 */
export interface HeldReport {
  /**
   * `nothing yet`: it had covered nothing, and covers this; `as much` as this or more; `less` than this; `something else`; `unknown` where history does not tell. Only the first two cover it.
   */
  kind: 'nothing yet' | 'as much' | 'less' | 'something else' | 'unknown';
  /**
   * What it had covered; null where that is nothing.
   */
  covered: CoveredReport | null;
}
/**
 * What a waiver without a ceiling first covered.
 */
export interface CoveredReport {
  /**
   * The name of the entry.
   */
  entry: string;
  level: ReportLevel1;
  subject: SubjectReport2;
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
 * What it was about.
 */
export interface SubjectReport2 {
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
 * One difference between the two estates.
 */
export interface ChangeReport {
  /**
   * The kind of change, such as `volume-grown`.
   */
  kind: string;
  subject: SubjectReport3;
  place: PlaceReport3;
  /**
   * The change in one sentence.
   */
  description: string;
  /**
   * Whether carrying it out loses data that only a backup can restore.
   */
  losesData: boolean;
  /**
   * What it was; null for what is created or attached.
   */
  before: ThingReport | null;
  /**
   * What it becomes; null for what is deleted or detached.
   */
  after: ThingReport | null;
}
/**
 * What changes.
 */
export interface SubjectReport3 {
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
 * A place in a file of a revision.
 */
export interface PlaceReport3 {
  /**
   * Which revision the file is of; null where that is not known. What the head no longer has is shown at its place on the base.
   */
  revision: 'base' | 'head' | null;
  /**
   * The file, from the root of the repository, with `/`.
   */
  file: string;
  /**
   * The line, from 1.
   */
  line: number;
  /**
   * The column in UTF-16 units, from 1.
   */
  column: number;
}
/**
 * A server.
 */
export interface ServerReport {
  /**
   * A server.
   */
  kind: 'server';
  /**
   * Its name.
   */
  name: string;
  /**
   * The provider's own identifier; null where none is declared.
   */
  id: string | null;
  /**
   * Whether it runs.
   */
  power: 'running' | 'stopped';
  /**
   * Its boot volume; null where none is declared.
   */
  boot: string | null;
  /**
   * The type it is billed as; null where none is named.
   */
  type: string | null;
  /**
   * Its site.
   */
  site: string | null;
  /**
   * Its team.
   */
  team: string | null;
}
/**
 * A volume.
 */
export interface VolumeReport {
  /**
   * A volume.
   */
  kind: 'volume';
  /**
   * Its name.
   */
  name: string;
  /**
   * The provider's own identifier; null where none is declared.
   */
  id: string | null;
  /**
   * Its size in bytes.
   */
  size: string;
  /**
   * Its tier.
   */
  tier: string;
  /**
   * Whether it is protected against deletion.
   */
  protected: boolean;
  /**
   * Its site.
   */
  site: string | null;
  /**
   * Its team.
   */
  team: string | null;
  /**
   * Until when it is kept (RFC 3339 full-date); null where that is not said.
   */
  retainUntil: string | null;
}
/**
 * A volume attached to a server.
 */
export interface AttachmentReport {
  /**
   * An attachment.
   */
  kind: 'attachment';
  /**
   * The volume.
   */
  volume: string;
  /**
   * The server.
   */
  server: string;
}
/**
 * A volume group.
 */
export interface VolumeGroupReport {
  /**
   * A volume group.
   */
  kind: 'volume-group';
  /**
   * Its name.
   */
  name: string;
  /**
   * The size of an extent in bytes.
   */
  extent: string;
  /**
   * Its member volumes.
   */
  members: string[];
  /**
   * How its file systems lie on its members.
   */
  layout: 'linear' | 'striped' | 'mirrored';
  /**
   * Its site.
   */
  site: string | null;
  /**
   * Its team.
   */
  team: string | null;
}
/**
 * A file system.
 */
export interface FileSystemReport {
  /**
   * A file system.
   */
  kind: 'file-system';
  /**
   * What it lies on and its mount point, as in `plates:/plates`.
   */
  name: string;
  /**
   * Its mount point.
   */
  mount: string;
  /**
   * Its type, such as `xfs`.
   */
  type: string;
  /**
   * The size in bytes of the device beneath it.
   */
  size: string;
}
/**
 * Whether what a branch brings is new, or there already.
 */
export interface QuestionReport {
  /**
   * Whether the base declares no server and no volume.
   */
  firstEstate: boolean;
  /**
   * The servers that are taken for new.
   */
  servers: string[];
  /**
   * The volumes that are taken for new.
   */
  volumes: string[];
  /**
   * The question, and what to write.
   */
  text: string;
}
/**
 * One step of the runbook.
 */
export interface StepReport {
  /**
   * Its place in the order, from 1.
   */
  number: number;
  /**
   * What it is ticked off by: the same as long as the same is to be done, whatever its number.
   */
  id: string;
  /**
   * Where it is done: at the provider, inside the server's guest, or by making sure of something.
   */
  at: 'provider' | 'guest' | 'check';
  /**
   * The server that it is about, or in whose guest it is done; null where there is none.
   */
  server: string | null;
  subject: SubjectReport4;
  /**
   * What to do.
   */
  instruction: string;
  /**
   * Why it is needed; null where that goes without saying.
   */
  why: string | null;
  /**
   * What is to be seen once it is done; null where nothing is.
   */
  seen: string | null;
  /**
   * How to step back; null where there is nothing to take back.
   */
  stepBack: string | null;
  /**
   * Whether the step loses data that only a backup can restore.
   */
  losesData: boolean;
  /**
   * What to make sure of first; never empty where the step loses data.
   */
  cautions: string[];
  /**
   * How it is done from a command line, as examples: names that are known are filled in and quoted for a POSIX shell, and what is in capitals has to be replaced. Check each before it is run.
   */
  examples: ExampleReport[];
  /**
   * The numbers of the steps that must be done first.
   */
  after: number[];
  /**
   * Which of `changes`, counted from 0, are carried out once this step is done.
   */
  carriesOut: number[];
}
/**
 * What it is done to.
 */
export interface SubjectReport4 {
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
 * A command, as an example.
 */
export interface ExampleReport {
  /**
   * The command.
   */
  command: string;
  /**
   * Where it comes from, such as a manual page and its version; `memory` where it was not looked up.
   */
  source: string;
}
/**
 * The headroom at one layer, before and after.
 */
export interface HeadroomReport {
  /**
   * The layer.
   */
  layer: 'quota' | 'attachment-slots' | 'volume-group' | 'file-system';
  subject: SubjectReport5;
  /**
   * What is counted.
   */
  measure: 'bytes' | 'volumes' | 'slots';
  /**
   * The headroom on the base; null where the base does not have this.
   */
  before: LayerFiguresReport | null;
  /**
   * The headroom on the head; null where the head does not have this.
   */
  after: LayerFiguresReport | null;
}
/**
 * What has the headroom.
 */
export interface SubjectReport5 {
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
 * Capacity, used and free, in whole numbers of the measure.
 */
export interface LayerFiguresReport {
  /**
   * What there is.
   */
  capacity: string;
  /**
   * What is used, or in a volume group allocated.
   */
  used: string;
  /**
   * What is free; negative where more is used than there is.
   */
  free: string;
  /**
   * When the capacity was surveyed, RFC 3339 in UTC; left out where it is declared or estimated.
   */
  surveyed?: string;
}
/**
 * One change of the policy.
 */
export interface PolicyChangeReport {
  /**
   * Whether it lets more through. `unknown` is treated as looser where it matters.
   */
  direction: 'tighter' | 'looser' | 'neither' | 'unknown';
  /**
   * What another price comes to a month for the estate on the base; null where it is no price, or comes to nothing.
   */
  monthly: MonthlyReport | null;
  /**
   * What is changed.
   */
  of: 'rule' | 'waiver' | 'price-list' | 'settings' | 'readings' | 'surveys' | 'server' | 'procedures';
  /**
   * Its name.
   */
  name: string;
  /**
   * The parameter or key, where only that changes.
   */
  key: string | null;
  /**
   * What it was; null where it was not there.
   */
  from: string | null;
  /**
   * What it becomes; null where it is removed.
   */
  to: string | null;
  /**
   * Where it is written in a pack of another repository, in words; null anywhere else.
   */
  written: string | null;
  /**
   * Where; null where there is no one place.
   */
  place: PlaceReport | null;
}
/**
 * An amount a month.
 */
export interface MonthlyReport {
  /**
   * The currency (ISO 4217).
   */
  currency: string;
  /**
   * An amount in the currency, exact to the last decimal; exact parts add up to their exact sum.
   */
  difference: string;
}
/**
 * The verdict under the policy that the branch proposes.
 */
export interface ProposedReport {
  verdict: Verdict1;
  /**
   * Why, one sentence each.
   */
  reasons: string[];
  /**
   * The proposed rules tried on past changes of main; null where they were not.
   */
  backTest: BackTestReport | null;
}
/**
 * The verdicts of past changes under the proposed rules.
 */
export interface BackTestReport {
  /**
   * How many changes were replayed.
   */
  changes: number;
  /**
   * How many of them both policies could judge.
   */
  judged: number;
  /**
   * Changes that passed and would have failed.
   */
  stopped: PastChangeReport[];
  /**
   * Changes that failed and would have passed.
   */
  letThrough: PastChangeReport[];
}
/**
 * One change of main's history.
 */
export interface PastChangeReport {
  /**
   * The commit.
   */
  commit: string;
  /**
   * The day, by its committer's clock, in UTC.
   */
  on: string;
  /**
   * The first line of its message.
   */
  subject: string;
}
/**
 * A waiver, and whether it was used.
 */
export interface WaiverUseReport {
  /**
   * `used` by a finding, `outgrown` by one that is beyond what it covers, `waiting` for its change while it covers nothing here, `unused` where it covers nothing here and ends within 14 days, `expired`, `not yet` in force, or for an `unknown rule`.
   */
  state: 'used' | 'outgrown' | 'waiting' | 'unused' | 'expired' | 'not yet' | 'unknown rule';
  waiver: WaiverReport1;
  /**
   * The waiver's line as it would have to be written to be for a finding of this judgement, where only the writing of its subject keeps it from that; null otherwise.
   */
  writeInstead: string | null;
}
/**
 * An exception with a reason, an approver and dates.
 */
export interface WaiverReport1 {
  /**
   * The rule or the entry it is for.
   */
  rule: string;
  /**
   * The name of the subject it is for.
   */
  subject: string;
  /**
   * The kind of that subject; null where any of the name is meant.
   */
  kind: string | null;
  /**
   * The one entry that is meant; null where any of the rule is.
   */
  name: string | null;
  /**
   * The most that it covers, as it is written; null where it has no ceiling.
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
  /**
   * The first day on which it applies (RFC 3339 full-date).
   */
  from: string;
  /**
   * The last day on which it applies (RFC 3339 full-date).
   */
  until: string;
  place: PlaceReport2;
}
/**
 * One rule entry that applied.
 */
export interface RuleInForceReport {
  /**
   * The entry's name.
   */
  name: string;
  /**
   * Its rule.
   */
  rule: string;
  level: ReportLevel2;
  /**
   * The shipped pack it comes from; null for any other.
   */
  shippedIn: string | null;
  /**
   * The pack of another repository it comes from, and where in that it is written; null for any other.
   */
  elsewhere: ElsewhereReport | null;
  /**
   * Where this repository has it: where its own is written, or where ullage.yaml lists the pack; null for one that is shipped.
   */
  place: PlaceReport | null;
}
export interface ElsewhereReport {
  /**
   * The name under which ullage.yaml lists the pack.
   */
  pack: string;
  /**
   * The repository it is kept in.
   */
  repository: string;
  /**
   * The commit that is meant.
   */
  commit: string;
  /**
   * The file in that commit.
   */
  file: string;
  /**
   * Its line.
   */
  line: number;
  /**
   * Its column.
   */
  column: number;
}
export interface NotReadReport {
  /**
   * Its path from the top of the repository.
   */
  file: string;
  /**
   * What it looks like.
   */
  format: 'estate' | 'price-list' | 'rule-pack' | 'waivers' | 'settings';
  /**
   * The folder whose `.yaml` and `.yml` files are read as that; empty for settings, which are in `ullage.yaml`.
   */
  folder: string;
}
/**
 * How many are left out, since the branch changes nothing of them; all 0 with `--all`.
 */
export interface UnchangedReport {
  /**
   * Layers.
   */
  headroom: number;
  /**
   * Teams, in the cost.
   */
  teams: number;
  /**
   * Spend limits.
   */
  limits: number;
}
/**
 * One problem.
 */
export interface ProblemReport1 {
  /**
   * What is wrong.
   */
  message: string;
  /**
   * What to do.
   */
  advice: string;
  /**
   * Where; null where the whole revision is meant.
   */
  place: PlaceReport | null;
  /**
   * The source line; null where there is none.
   */
  excerpt: string | null;
}
