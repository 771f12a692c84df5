/** The steps that carry a change out, and what billing does on the way. */
import { slotsOf } from '../capacity/headroom.ts';
import type { Comparison } from '../change/compare.ts';
import type { EstateCost } from '../price/cost.ts';
import { billingOf } from '../runbook/billing.ts';
import { runbookOf } from '../runbook/runbook.ts';
import type { Step } from '../runbook/step.ts';
import type { Judged } from './judgement.ts';
import type { Sides } from './revision.ts';

export const runbookIn = ({ base, head, policy }: Sides, comparison: Comparison): readonly Step[] =>
  runbookOf(comparison, base.estate, head.estate, {
    procedures: policy.procedures,
    surveys: policy.surveys?.servers ?? [],
    slots: (server) => slotsOf(server, policy.settings),
    quota: (site) => policy.settings.sites.get(site)?.quota,
  });

/**
 * @param steps those of the same sides, where they are known already
 * @param costs of the base and of the head, at the prices that judge
 */
export function stepsOf(
  sides: Sides,
  { comparison, steps }: { readonly comparison: Comparison; readonly steps: readonly Step[] | undefined },
  costs: { readonly before: EstateCost; readonly after: EstateCost },
): Pick<Judged, 'runbook' | 'billing'> {
  const { head } = sides;
  const runbook = steps ?? runbookIn(sides, comparison);
  const billing = billingOf(runbook, { head: head.estate, renames: comparison.renames, ...costs });
  return { runbook, billing };
}
