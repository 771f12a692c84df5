/** What a rule is shown: one revision, or both and what differs. */
import type { EstateUsage } from '../capacity/usage.ts';
import type { Change } from '../change/change.ts';
import type { RevisionPlace } from '../change/place.ts';
import type { Renames } from '../change/renames.ts';
import type { Selection } from '../change/touched.ts';
import type { Estate } from '../estate/estate.ts';
import type { Settings } from '../estate/settings.ts';
import type { EstateCost } from '../price/cost.ts';
import type { MonthlyDifference } from '../price/difference.ts';
import type { PriceList } from '../price/price-list.ts';
import type { Step } from '../runbook/step.ts';
import type { Surveys } from '../survey/compare.ts';
import type { SurveyedCapacity } from '../survey/measured.ts';
import type { SetLimit } from './spend-limit.ts';

/** One revision, as rules about its state see it. */
export interface View {
  readonly estate: Estate;
  readonly settings: Settings;
  /**
   * What the rule is to look at: all of the estate, or what a change touched. A finding's subject is a thing that was
   * looked at, or a sum over the estate (a site, a team, a label, a scope, the estate); a finding about a thing
   * depends on the thing and on what it is tied to, and on nothing further off.
   */
  readonly selection: Selection;
  /** The price list in force on the day, from the policy that judges. */
  readonly prices: PriceList;
  /** What the estate costs at that list. */
  readonly cost: EstateCost;
  /** The day of the judgement, RFC 3339 full-date. */
  readonly on: string;
  readonly revision: 'base' | 'head';
  /** Every spend limit that the policy sets, whatever the day. */
  readonly spendLimits: readonly SetLimit[];
  /** Measured use by the name of the file system, from the policy that judges; left out where there are no readings. */
  readonly usage?: EstateUsage;
  /** What surveys show, from the policy that judges; left out where no rule asks for it. */
  readonly surveys?: Surveys;
  /** What surveys measure, where they agree with the base: for both sides of a change alike. Left out likewise. */
  readonly measured?: SurveyedCapacity;
}

/** Both revisions and what differs, as rules about changes see them. */
export interface ChangeView {
  readonly base: View;
  readonly head: View;
  /** Those that involve anything in the entry's scope, on either side. */
  readonly changes: readonly Change[];
  /** All of the branch's, whoever's they are: what a rule cannot do without to tell what one of those in scope means. */
  readonly allChanges: readonly Change[];
  readonly renames: Renames;
  readonly on: string;
  /** The steps that carry all of the branch's changes out; left out where no rule asks for them. */
  readonly steps?: readonly Step[];
  /** What the branch alters in the policy, told apart by direction. */
  readonly policyChanges: readonly PolicyChange[];
}

/** One alteration of the policy, and whether it lets more through. */
export interface PolicyChange {
  readonly direction: 'tighter' | 'looser' | 'neither' | 'unknown';
  /** What was altered: a rule entry, a waiver, a price list, a setting. */
  readonly of:
    | 'rule'
    | 'waiver'
    | 'price-list'
    | 'settings'
    | 'readings'
    | 'surveys'
    | 'server'
    | 'procedures';
  readonly name: string;
  /** The parameter or key, where one was altered by itself. */
  readonly key: string | undefined;
  readonly from: string | undefined;
  readonly to: string | undefined;
  readonly place: RevisionPlace | undefined;
  /** Where it is written in a pack of another repository, in words. */
  readonly written: string | undefined;
  /** What it comes to a month for the estate on main, where it is a price. */
  readonly monthly: MonthlyDifference | undefined;
  /** Why it cannot have the effect that it is meant to have, and what to do; only where that is so. */
  readonly remark?: string;
}
