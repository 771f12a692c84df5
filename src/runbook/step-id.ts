/** What a step is ticked off by: the same as long as the same is to be done, whatever its number. */
import { createHash } from 'node:crypto';

interface Nameable {
  /** Of one step alone. */
  readonly key: string;
  readonly does: string;
}

/**
 * Ten hexadecimal digits each, of SHA-256 over what names the step and what is to be done. Steps of one change that come
 * to the same are all told apart by a further round, so that no tick counts for two: what they came to first is nobody's
 * then, since it was each one's alone in a list of fewer steps.
 */
export function withIds<T extends Nameable>(
  steps: readonly T[],
  round = 0,
  taken: ReadonlySet<string> = new Set(),
): readonly (T & { readonly id: string })[] {
  const named = steps.map((step) => ({ ...step, id: idOf(step, round) }));
  const seen = new Map<string, number>();
  for (const { id } of named) seen.set(id, (seen.get(id) ?? 0) + 1);
  const alike = named.filter(({ id }) => taken.has(id) || seen.get(id) !== 1);
  if (alike.length === 0) return named;
  const further = withIds(alike, round + 1, new Set([...taken, ...seen.keys()]));
  const byKey = new Map(further.map((step) => [step.key, step]));
  return named.map((step) => byKey.get(step.key) ?? step);
}

const idOf = ({ key, does }: Nameable, round: number): string =>
  createHash('sha256')
    .update(JSON.stringify([key, does, ...(round === 0 ? [] : [round])]))
    .digest('hex')
    .slice(0, 10);
