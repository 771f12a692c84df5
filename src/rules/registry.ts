/** Every rule there is, by name. A new rule is a file beside this one and a line below. */
import { bootVolumeStays } from './boot-volume-stays.ts';
import { deletionPrepared } from './deletion-prepared.ts';
import { destructiveChangesFew } from './destructive-changes-few.ts';
import { detachedVolumeOwned } from './detached-volume-owned.ts';
import { exclusiveAttachment } from './exclusive-attachment.ts';
import { freeze } from './freeze.ts';
import { groupTravelsWhole } from './group-travels-whole.ts';
import { growthFollowedThrough } from './growth-followed-through.ts';
import { growthStep } from './growth-step.ts';
import { maxMonthlySpend } from './max-monthly-spend.ts';
import { minimumHeadroom } from './minimum-headroom.ts';
import { naming } from './naming.ts';
import { noShrink } from './no-shrink.ts';
import { noStaleRename } from './no-stale-rename.ts';
import { orderOfSteps } from './order-of-steps.ts';
import { policyApart } from './policy-apart.ts';
import type { Check, Rule, RuleEntry, RuleName } from './rule.ts';
import { sameSite } from './same-site.ts';
import type { Scope } from './scope.ts';
import { shape } from './shape.ts';
import { spendUnderALimit } from './spend-under-a-limit.ts';
import { surveyedAsDeclared } from './surveyed-as-declared.ts';
import { tierBounds } from './tier-bounds.ts';
import type { ChangeView, View } from './view.ts';

export const rules: { readonly [N in RuleName]: Rule<N> } = {
  'max-monthly-spend': maxMonthlySpend,
  'spend-under-a-limit': spendUnderALimit,
  'minimum-headroom': minimumHeadroom,
  'no-shrink': noShrink,
  'boot-volume-stays': bootVolumeStays,
  'exclusive-attachment': exclusiveAttachment,
  'group-travels-whole': groupTravelsWhole,
  'same-site': sameSite,
  'growth-step': growthStep,
  'detached-volume-owned': detachedVolumeOwned,
  'deletion-prepared': deletionPrepared,
  'destructive-changes-few': destructiveChangesFew,
  'surveyed-as-declared': surveyedAsDeclared,
  'order-of-steps': orderOfSteps,
  freeze,
  'growth-followed-through': growthFollowedThrough,
  naming,
  'no-stale-rename': noStaleRename,
  shape,
  'tier-bounds': tierBounds,
  'policy-apart': policyApart,
};

/** The rule that an entry of a pack asks for. */
export const ruleOf = (entry: RuleEntry): Rule => rules[entry.rule];

/** What an entry of a pack asks, of a revision and of a change; absent where it has nothing to ask of one. */
export interface EntryChecks {
  readonly ofState: Check<View> | undefined;
  readonly ofChanges: Check<ChangeView> | undefined;
}

export function checksOf(entry: RuleEntry, scope: Scope): EntryChecks {
  const rule = ruleOf(entry);
  return rule.about === 'state'
    ? { ofState: rule.check(entry, scope), ofChanges: rule.checkChanges?.(entry) }
    : { ofState: undefined, ofChanges: rule.check(entry) };
}

export const ruleNames: readonly string[] = Object.keys(rules);
