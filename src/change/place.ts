/** Places in one of two revisions; what is gone is shown where it last stood. */
import type { Place } from '../base/problem.ts';
import type { Declared } from '../estate/estate.ts';

export interface RevisionPlace extends Place {
  readonly revision: 'base' | 'head';
}

export const onBase = (place: Place): RevisionPlace => ({ revision: 'base', ...place });
export const onHead = (place: Place): RevisionPlace => ({ revision: 'head', ...place });

/** Points at a field of a declaration, or at the declaration where it has no such field. */
export const placed = (
  { place, fields }: Declared,
  revision: 'base' | 'head',
  field?: string,
): RevisionPlace => ({ revision, ...((field === undefined ? undefined : fields.of(field)) ?? place) });
