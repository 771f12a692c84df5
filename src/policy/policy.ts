/** A policy: everything that a judgement goes by. The gate takes it from the base. */

import type { Decimal } from 'decimal.js';
import { at, type Place, type Problem } from '../base/problem.ts';
import type { EstateUsage } from '../capacity/usage.ts';
import type { Settings } from '../estate/settings.ts';
import type { PriceList } from '../price/price-list.ts';
import { type EntryChecks, ruleOf } from '../rules/registry.ts';
import type { Level, Measure, RuleEntry } from '../rules/rule.ts';
import type { Procedures } from '../runbook/procedures.ts';
import type { Surveys } from '../survey/compare.ts';
import type { SurveyedCapacity } from '../survey/measured.ts';

/** Which pack a rule comes from: one of the repository's own, one that ships, or one that is kept elsewhere. */
export type RuleOrigin =
  | { readonly kind: 'repository' }
  | { readonly kind: 'shipped'; readonly pack: string }
  | {
      readonly kind: 'elsewhere';
      /** The name under which `ullage.yaml` lists it. */
      readonly pack: string;
      readonly repository: string;
      readonly commit: string;
      /** Where it is written, in that commit. */
      readonly at: Place;
    };

/** Where a rule of a pack that is kept elsewhere is written: `policies/fleet.yaml:3 in 8f3c1d2ab9e0 of https://…`. */
export const writtenElsewhere = (origin: RuleOrigin): string | undefined =>
  origin.kind === 'elsewhere'
    ? `${at(origin.at)} in ${origin.commit.slice(0, 12)} of ${origin.repository}`
    : undefined;

/** One rule as a pack sets it. */
export interface PolicyRule {
  /** The entry's own name, or the rule's: what waivers and other packs refer to. */
  readonly name: string;
  /** @internal */
  readonly entry: RuleEntry;
  /** What it asks; made from the entry when its pack is read. @internal */
  readonly checks: EntryChecks;
  readonly level: Level;
  /** Where this repository has it: the entry itself, or the line that lists a pack which is kept elsewhere. */
  readonly place: Place;
  readonly origin: RuleOrigin;
}

/** The most that a waiver covers: a figure in one of a rule's measures, and as it is written. */
export interface Ceiling {
  readonly measure: Measure;
  readonly amount: Decimal;
  readonly written: string;
}

/** A dated, reasoned, signed-for exception to one rule for one subject. */
export interface Waiver {
  readonly rule: string;
  readonly subject: string;
  readonly kind: string | undefined;
  /** The one entry that is meant, by its name; any of the rule's where left out. */
  readonly name?: string;
  /** The most that it covers, as the rule measures it; all of it where left out. */
  readonly upTo?: Ceiling;
  readonly reason: string;
  readonly approvedBy: string;
  /** First and last day on which it holds, RFC 3339 full-dates. */
  readonly from: string;
  readonly until: string;
  readonly place: Place;
}

export interface Policy {
  readonly settings: Settings;
  /** Newest first. */
  readonly priceLists: readonly PriceList[];
  /** In order of name. */
  readonly rules: readonly PolicyRule[];
  readonly waivers: readonly Waiver[];
  /** How steps are carried out. @internal */
  readonly procedures: Procedures;
  /** Measured use by the name of the file system; left out where no rule asks for it, or there are no readings. @internal */
  readonly usage?: EstateUsage;
  /** What is surveyed; left out where no rule asks for it. @internal */
  readonly surveys?: Surveys;
  /** What the surveys measure of the base's capacity, whichever policy judges; left out likewise. @internal */
  readonly measured?: SurveyedCapacity;
}

/** The rules that say something of a revision by itself, and not of changes alone. */
export const stateRules = ({ rules }: Policy): readonly PolicyRule[] =>
  rules.filter(({ checks }) => checks.ofState !== undefined);

/** Whether an entry goes by measured use. */
export const usesReadings = (entry: RuleEntry): boolean => ruleOf(entry).usesReadings?.(entry) === true;

/** Whether an entry goes by what surveys show. */
export const usesSurveys = (entry: RuleEntry): boolean => ruleOf(entry).usesSurveys?.(entry) === true;

/** What is said where a policy has no prices for a day. */
export function noPriceList({ priceLists, settings }: Policy, on: string): Problem {
  const next = priceLists.at(-1);
  return next === undefined
    ? {
        message: `there is no price list in ${settings.paths.prices}/`,
        advice: 'Write one; `ullage new` gives an example.',
      }
    : {
        place: next.place,
        message: `no price list is in force on ${on}; the earliest applies from ${next.from}`,
        advice: 'Add the list that was in force on that day, or judge as of a later one with --now.',
      };
}
