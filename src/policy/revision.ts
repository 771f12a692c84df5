/** Two revisions as they are held against each other, and the policy that judges. */

import type { Problem } from '../base/problem.ts';
import type { EstateUsage } from '../capacity/usage.ts';
import type { Estate } from '../estate/estate.ts';
import { bareSettings, type Settings, settingsFile, usualPaths } from '../estate/settings.ts';
import type { PriceList } from '../price/price-list.ts';
import { andProcedures, type Procedures } from '../runbook/procedures.ts';
import type { Surveys } from '../survey/compare.ts';
import type { SurveyedCapacity } from '../survey/measured.ts';
import type { RevisionLabel, UnreadMain } from './judgement.ts';
import type { Policy, PolicyRule, Waiver } from './policy.ts';
import type { Elsewhere, RulePack } from './rule-pack.ts';

/** One revision, read whole. Settings, prices and rules may be missing: a first adoption has none on its base. */
export interface Revision {
  readonly label: RevisionLabel;
  readonly settings: Settings | undefined;
  readonly estate: Estate;
  readonly priceLists: readonly PriceList[];
  /** Whether the revision has any price list, be it one that does not read. */
  readonly hasPriceLists: boolean;
  readonly rules: readonly PolicyRule[];
  /** Its own packs, from which the rules were gathered. @internal */
  readonly packs: readonly RulePack[];
  /** Those that it lists and uses of other repositories. @internal */
  readonly elsewhere: Elsewhere;
  /** Whether the revision has any rule pack, be it an empty one. */
  readonly hasPacks: boolean;
  readonly waivers: readonly Waiver[];
  /** @internal */
  readonly procedures: Procedures;
  /** Measured use by the name of the file system; `undefined` where there are no readings, or no rule asks. @internal */
  readonly usage: EstateUsage | undefined;
  /** Undefined where no rule asks. @internal */
  readonly surveys: Surveys | undefined;
  /** What its surveys measure of its own estate. @internal */
  readonly measured: SurveyedCapacity | undefined;
}

/** One side of a comparison: what it declares, and the policy it carries. */
export interface Side {
  readonly label: RevisionLabel;
  readonly estate: Estate;
  /** The policy in the same revision, of which only the judging side's counts. */
  readonly policy: Policy;
}

export interface Sides {
  readonly base: Side;
  readonly head: Side;
  /** What judges. */
  readonly policy: Policy;
  readonly policyFrom: 'base' | 'head';
  /** Only where main itself does not read, and something else stands on its side. */
  readonly unreadMain?: UnreadMain;
}

/** The policy that a revision carries, with what it lacks taken from another. */
export function policyOf(revision: Revision, other: Revision): Policy {
  const settings = revision.settings ?? other.settings ?? bareSettings;
  const priceLists = revision.priceLists.length > 0 ? revision.priceLists : other.priceLists;
  const { rules, waivers, usage, surveys, measured } = revision;
  // Readings and surveys are evidence, and come with the policy: from the base, where the branch cannot bend them.
  return {
    settings,
    priceLists,
    rules,
    waivers,
    // A branch says how to do what main has no procedures for; what main has, it does not rewrite.
    procedures: andProcedures(revision.procedures, other.procedures),
    ...(usage === undefined ? {} : { usage }),
    ...(surveys === undefined ? {} : { surveys }),
    ...(measured === undefined ? {} : { measured }),
  };
}

/**
 * Holds two revisions against each other. The base's policy judges; the head's only where the base has no rule pack at
 * all. Settings and prices that one lacks are the other's.
 *
 * @param base what is there: main
 * @param head what is proposed
 * @returns what `judge` takes
 *
 * @example
 * ```js
 * import { readFiles, sidesOf } from 'ullage';
 *
 * const base = await readFiles({}, 'main');
 * const head = await readFiles({ 'policies/storage.yaml': 'use: [starter]\n' }, 'draft');
 * if (base.ok && head.ok) console.log(sidesOf(base.value, head.value).policyFrom); // head
 * ```
 */
export function sidesOf(base: Revision, head: Revision): Sides {
  const policy = policyOf(base, head);
  // Both sides of either comparison go by the base's measurements: the branch's own surveys help it nowhere.
  const own = policyOf({ ...head, measured: base.measured }, base);
  const same =
    policy.settings === own.settings &&
    policy.priceLists === own.priceLists &&
    policy.rules === own.rules &&
    policy.waivers === own.waivers &&
    base.procedures === head.procedures &&
    policy.usage?.summaries === own.usage?.summaries &&
    policy.surveys === own.surveys;
  return {
    base: { label: base.label, estate: base.estate, policy },
    head: { label: head.label, estate: head.estate, policy: same ? policy : own },
    ...(base.hasPacks ? { policy, policyFrom: 'base' } : { policy: own, policyFrom: 'head' }),
  };
}

/** What two revisions that read well still lack. */
export function nothingToJudgeBy(base: Revision, head: Revision): Problem | undefined {
  if (!base.hasPacks && !head.hasPacks) {
    const folder = (head.settings ?? base.settings)?.paths.policies ?? usualPaths.policies;
    return {
      message: `there is no rule pack in ${folder}/, so there are no rules to judge by`,
      advice: 'Run `ullage new` for a starter layout, or write a pack with `use: [starter]`.',
    };
  }
  if (base.settings === undefined && head.settings === undefined) {
    return {
      message: `there is no ${settingsFile} at the top of the repository`,
      advice: "Write one with the estate's currency, such as `currency: EUR`.",
    };
  }
  // What a branch takes away, main lacks after the merge, and every later change with it.
  if (base.settings !== undefined && head.settings === undefined) {
    return {
      message: `the branch deletes ${settingsFile}, and main could not be judged after the merge`,
      advice: 'Put it back.',
    };
  }
  const { paths } = base.settings ?? bareSettings;
  if (base.priceLists.length > 0 && head.priceLists.length === 0) {
    return {
      message: `the branch deletes the last price list in ${paths.prices}/, and main could not be judged after the merge`,
      advice: 'Keep a price list there.',
    };
  }
  if (base.hasPacks && !head.hasPacks) {
    return {
      message: `the branch deletes the last rule pack in ${paths.policies}/, and main could not be judged after the merge`,
      advice: 'Keep a pack there, even one without rules, so that it is on record that nothing is checked.',
    };
  }
  return undefined;
}
