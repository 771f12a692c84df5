/** Every rule there is, by name. A new rule is a file beside this one and a line below. */
import { bootVolumeStays } from './boot-volume-stays.ts';
import { deletionPrepared } from './deletion-prepared.ts';
import { detachedVolumeOwned } from './detached-volume-owned.ts';
import { exclusiveAttachment } from './exclusive-attachment.ts';
import { groupTravelsWhole } from './group-travels-whole.ts';
import { growthStep } from './growth-step.ts';
import { maxMonthlySpend } from './max-monthly-spend.ts';
import { minimumHeadroom } from './minimum-headroom.ts';
import { noShrink } from './no-shrink.ts';
import { policyApart } from './policy-apart.ts';
import type { Rule, RuleName } from './rule.ts';
import { sameSite } from './same-site.ts';

export const rules: { readonly [N in RuleName]: Rule<N> } = {
  'max-monthly-spend': maxMonthlySpend,
  'minimum-headroom': minimumHeadroom,
  'no-shrink': noShrink,
  'boot-volume-stays': bootVolumeStays,
  'exclusive-attachment': exclusiveAttachment,
  'group-travels-whole': groupTravelsWhole,
  'same-site': sameSite,
  'growth-step': growthStep,
  'detached-volume-owned': detachedVolumeOwned,
  'deletion-prepared': deletionPrepared,
  'policy-apart': policyApart,
};

export const ruleNames: readonly string[] = Object.keys(rules);
