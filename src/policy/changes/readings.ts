/**
 * Measured use that a branch takes away or alters. Readings are evidence: a forecast is as good as they are, and rows
 * that are added take nothing away.
 */

import { counted } from '../../base/wording.ts';
import type { UseSummary } from '../../capacity/use-summary.ts';
import type { PolicyChange } from '../../rules/view.ts';
import { policyChange } from './change.ts';

type Uses = ReadonlyMap<string, UseSummary>;

export function readingChanges(base: Uses, head: Uses): readonly PolicyChange[] {
  if (base === head) return [];
  return [...base].flatMap(([key, before]): readonly PolicyChange[] => {
    const after = head.get(key);
    if (after === before) return [];
    const days = new Map(after?.highest.map((reading) => [reading.at, reading.used]));
    const altered = before.highest.filter(({ at, used }) => days.get(at) !== used);
    if (altered.length === 0) return [];
    const lower = altered.some(({ at, used }) => (days.get(at) ?? -1n) < used);
    return [
      policyChange({
        direction: lower ? 'looser' : 'tighter',
        of: 'readings',
        name: `${before.mount} on ${before.server}`,
        from: counted(before.highest.length, 'day'),
        to: `${counted(before.highest.length - altered.length, 'of them', 'of them')} as they were`,
      }),
    ];
  });
}
