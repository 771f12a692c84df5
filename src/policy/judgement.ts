/** What a judgement says. Everything in it is plain, immutable and free of the clock. */

import type { Problem } from '../base/problem.ts';
import type { Room } from '../capacity/headroom.ts';
import type { Change } from '../change/change.ts';
import type { RevisionPlace } from '../change/place.ts';
import type { Question } from '../change/question.ts';
import type { Subject } from '../estate/estate.ts';
import type { CostDelta } from '../price/delta.ts';
import type { Money } from '../price/money.ts';
import type { Excess, Level, Measured, RuleName } from '../rules/rule.ts';
import type { PolicyChange } from '../rules/view.ts';
import type { Billing } from '../runbook/billing.ts';
import type { Step } from '../runbook/step.ts';
import type { PolicyRule, Waiver } from './policy.ts';
import type { WaiverUse } from './waiver.ts';

/** What a waiver without a ceiling has covered on main, and where that was first seen. */
export interface Covered {
  readonly entry: string;
  readonly level: Level;
  readonly about: 'state' | 'change';
  readonly subject: Subject;
  readonly facet?: string;
  readonly message: string;
  readonly excess?: Excess;
  readonly measured?: Measured;
  readonly commit: string;
  readonly on: string;
  /** Of the amounts among them. */
  readonly currency: string;
}

/**
 * How a finding stands to what a waiver without a ceiling has covered before: to nothing, to as much or less, or to
 * another fault; `unknown` where history does not tell.
 */
export type Held =
  | { readonly kind: 'nothing yet' | 'unknown' }
  | { readonly kind: 'as much' | 'less' | 'something else'; readonly covered: Covered };

/** SARIF 2.1.0's words for a finding held against the base: `updated` here means made worse. */
export type BaselineState = 'new' | 'unchanged' | 'updated' | 'absent';

export interface Finding {
  readonly rule: RuleName;
  /** The name of the pack's entry; the rule's own where it has none. */
  readonly entry: string;
  readonly level: Level;
  /** Whether it stands until it is mended, or is said of a change alone. */
  readonly about: 'state' | 'change';
  readonly baselineState: BaselineState;
  readonly subject: Subject;
  /** Tells apart several findings of one entry about one subject. */
  readonly facet: string | undefined;
  readonly message: string;
  readonly advice: string;
  readonly place: RevisionPlace;
  /** How far it is beyond its bound, and in its rule's measures, as the rule says it. */
  readonly excess?: Excess;
  readonly measured?: Measured;
  readonly waiver: Waiver | undefined;
  /** A waiver that is for this finding and covers less than it comes to; only where no other covers it. */
  readonly outgrown?: Waiver;
  /** What either was held to, where it has no ceiling and the finding would fail without it. */
  readonly held?: Held;
  /** Whether this finding by itself makes the verdict fail. */
  readonly fails: boolean;
}

/** One room before and after; either is absent where only one revision has it. */
export interface RoomChange {
  readonly before: Room | undefined;
  readonly after: Room | undefined;
}

/** One spend limit and what falls under it. */
export interface LimitUse {
  readonly entry: string;
  readonly subject: Subject;
  readonly limit: Money;
  readonly before: Money;
  readonly after: Money;
}

/** What the policy that the branch proposes would have said. */
export interface Proposed {
  readonly verdict: 'pass' | 'fail' | 'not judged';
  readonly reasons: readonly string[];
  /** The proposed rules tried on past changes of main, where that was asked for and could be done. */
  readonly onPast?: TriedOnPast;
}

export interface TriedOnPast {
  /** How many changes were replayed. */
  readonly changes: number;
  /** How many of them both policies could judge. */
  readonly judged: number;
  /** Those that passed and would have failed. */
  readonly stopped: readonly PastChange[];
  /** Those that failed and would have passed. */
  readonly letThrough: readonly PastChange[];
}

export interface PastChange {
  readonly commit: string;
  readonly on: string;
  /** The first line of the commit's message. */
  readonly subject: string;
}

/** One revision by name: a commit, or the files of the work tree. */
export interface RevisionLabel {
  readonly commit: string;
}

/** Whose a part of the policy is, where main does not read. */
export type PolicySource = 'main' | 'ancestor' | 'branch';

/** Main itself does not read, and what it was compared by instead. */
export interface UnreadMain {
  /** The nearest first-parent ancestor that reads; undefined where none does, and the head was judged alone. */
  readonly comparedWith: RevisionLabel | undefined;
  /** How many commits of main do not read: those after that ancestor, or all there are. */
  readonly commits: number;
  /** The first thing that is wrong with main. */
  readonly problem: Problem;
  readonly policy: Readonly<Record<'settings' | 'prices' | 'rules' | 'waivers', PolicySource>>;
  /** Tiers and server types that main declares and no list on main prices: the branch's prices hold for them. */
  readonly pricedByBranch: readonly string[];
}

/**
 * A file that the branch brings or alters, that looks like one of ours, and that was not read, since it lies outside
 * of the folder where such files are, or its name ends otherwise. Settings are read from `ullage.yaml` alone.
 */
export interface NotRead {
  readonly file: string;
  readonly format: 'estate' | 'price-list' | 'rule-pack' | 'waivers' | 'settings';
  /** Where such files are; empty for settings. */
  readonly folder: string;
}

export interface Judged {
  readonly verdict: 'pass' | 'fail';
  /** Why, one sentence each, the gravest first. */
  readonly reasons: readonly string[];
  readonly base: RevisionLabel;
  readonly head: RevisionLabel;
  /** Only where main itself does not read. */
  readonly unreadMain?: UnreadMain;
  /** The day of the judgement. */
  readonly on: string;
  /** Whose policy judged: the head's only where the base has none at all. */
  readonly policyFrom: 'base' | 'head';
  /** The level from which a finding fails. */
  readonly failOn: 'error' | 'warning';
  readonly rules: readonly PolicyRule[];
  readonly cost: CostDelta;
  /** The head's cost at the prices that judged, where the branch alters prices. */
  readonly afterAtJudgingPrices: Money | undefined;
  readonly limits: readonly LimitUse[];
  /** What a month costs that no spend limit covers, at the prices that judge. */
  readonly unlimited: { readonly before: Money; readonly after: Money };
  readonly findings: readonly Finding[];
  readonly changes: readonly Change[];
  /** Only where the branch does not say of much that it brings whether it is new. */
  readonly question?: Question;
  /** The steps that carry the changes out, in order. */
  readonly runbook: readonly Step[];
  /** What billing does from a step on, by its number, at the prices that judge. */
  readonly billing: ReadonlyMap<number, Billing>;
  readonly headroom: readonly RoomChange[];
  readonly policyChanges: readonly PolicyChange[];
  readonly proposed: Proposed | undefined;
  readonly waivers: readonly WaiverUse[];
  /** Only where there are such files. */
  readonly notRead?: readonly NotRead[];
  /** Files that are changed and not committed, of which nothing was judged: told where somebody may take them for judged. */
  readonly uncommitted?: number;
}

export interface NotJudged {
  readonly verdict: 'not judged';
  readonly reasons: readonly string[];
  readonly problems: readonly Problem[];
  readonly base: RevisionLabel | undefined;
  readonly head: RevisionLabel | undefined;
  readonly on: string;
  /** Only where there are such files. */
  readonly notRead?: readonly NotRead[];
  /** Files that are changed and not committed, of which nothing was judged: told where somebody may take them for judged. */
  readonly uncommitted?: number;
}

export type Judgement = Judged | NotJudged;

/** A judgement that could not be made, and everything that stood in its way. */
export function notJudged(
  problems: readonly Problem[],
  on: string,
  labels: { readonly base?: RevisionLabel; readonly head?: RevisionLabel } = {},
): NotJudged {
  const [first] = problems;
  const more = problems.length - 1;
  const where =
    first?.place === undefined ? '' : `${first.place.file}:${first.place.line}:${first.place.column}: `;
  const reason = `${where}${first?.message ?? 'nothing could be read'}${more > 0 ? `, and ${more} more` : ''}`;
  return { verdict: 'not judged', reasons: [reason], problems, base: labels.base, head: labels.head, on };
}
