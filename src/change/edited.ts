/** What is told of a server or a volume key by key. */
import type { Server, Volume } from '../estate/estate.ts';

/** Keys that no kind of change of its own tells of, as files write them. */
const edited = [
  ['guest', 'guest'],
  ['iops', 'IOPS'],
  ['attachmentSlots', 'attachment-slots'],
  ['shareable', 'shareable'],
  ['protected', 'protected'],
  ['owner', 'owner'],
  ['reason', 'reason'],
  ['retainUntil', 'retain-until'],
  ['site', 'site'],
  ['labels', 'labels'],
] as const;

/** Such as `retain-until goes from 2027-03-31 to none`. */
export function differences(before: Server | Volume, after: Server | Volume): string {
  const shown = (declared: object, key: string): string => {
    const value: unknown = Reflect.get(declared, key);
    if (value === undefined) return 'none';
    return typeof value === 'object' ? JSON.stringify(value) : String(value);
  };
  return edited
    .filter(([key]) => shown(before, key) !== shown(after, key))
    .map(([key, written]) => `${written} changes from ${shown(before, key)} to ${shown(after, key)}`)
    .join(', ');
}
