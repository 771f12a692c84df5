/** One alteration of a policy, as it is put together. */
import type { PolicyChange } from '../../rules/view.ts';

export type Direction = PolicyChange['direction'];

type Told = Pick<PolicyChange, 'direction' | 'of' | 'name'> & Partial<PolicyChange>;

export const policyChange = (told: Told): PolicyChange => ({
  key: undefined,
  from: undefined,
  to: undefined,
  place: undefined,
  written: undefined,
  monthly: undefined,
  ...told,
});

export const allNames = (
  a: ReadonlyMap<string, unknown>,
  b: ReadonlyMap<string, unknown>,
): readonly string[] => [...new Set([...a.keys(), ...b.keys()])].sort();
