/** The steps that carry a change out, and what billing does on the way. */
import { slotsOf } from '../capacity/headroom.ts';
import type { Comparison } from '../change/compare.ts';
import type { EstateCost } from '../price/cost.ts';
import { billingOf } from '../runbook/billing.ts';
import { runbookOf } from '../runbook/runbook.ts';
import type { Judged } from './judgement.ts';
import type { Sides } from './revision.ts';

/** @param costs of the base and of the head, at the prices that judge */
export function stepsOf(
  { base, head, policy }: Sides,
  comparison: Comparison,
  costs: { readonly before: EstateCost; readonly after: EstateCost },
): Pick<Judged, 'runbook' | 'billing'> {
  const runbook = runbookOf(comparison, base.estate, head.estate, {
    procedures: policy.procedures,
    surveys: policy.surveys?.servers ?? [],
    slots: (server) => slotsOf(server, policy.settings),
  });
  const billing = billingOf(runbook, { head: head.estate, renames: comparison.renames, ...costs });
  return { runbook, billing };
}
