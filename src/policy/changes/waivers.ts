/** What differs between the waivers of two policies. */
import { onBase, onHead } from '../../change/place.ts';
import type { PolicyChange } from '../../rules/view.ts';
import type { Ceiling, Waiver } from '../policy.ts';
import { allNames, type Direction, policyChange } from './change.ts';

const waiverKey = ({ rule, name, subject, kind }: Waiver): string =>
  `${rule}${name === undefined ? '' : ` (${name})`} for ${kind === undefined ? '' : `${kind} `}${subject}`;

/** Which way a ceiling went: a higher one and none at all let more through; two measures cannot be compared. */
function ceilingDirection(was: Ceiling | undefined, is: Ceiling | undefined): Direction {
  if (is === undefined) return was === undefined ? 'neither' : 'looser';
  if (was === undefined) return 'tighter';
  if (was.measure !== is.measure) return 'unknown';
  return is.amount.gt(was.amount) ? 'looser' : is.amount.lt(was.amount) ? 'tighter' : 'neither';
}

/** What it lets through, until when, why and on whose word. */
const termsOf = ({ from, until, upTo, reason, approvedBy }: Waiver): string =>
  `${from} to ${until}${upTo === undefined ? '' : `, up to ${upTo.written}`}, approved by ${approvedBy}: ${reason}`;

export function waiverChanges(
  base: readonly Waiver[],
  head: readonly Waiver[],
  on: string,
): readonly PolicyChange[] {
  const grouped = (waivers: readonly Waiver[]): ReadonlyMap<string, readonly Waiver[]> => {
    const groups = new Map<string, Waiver[]>();
    for (const waiver of waivers)
      groups.set(waiverKey(waiver), [...(groups.get(waiverKey(waiver)) ?? []), waiver]);
    return groups;
  };
  const before = grouped(base);
  const after = grouped(head);
  const span = ({ from, until }: Waiver): string => `${from} to ${until}`;
  return allNames(before, after).flatMap((key): readonly PolicyChange[] => {
    const old = before.get(key) ?? [];
    const now = after.get(key) ?? [];
    const kept = (waiver: Waiver, others: readonly Waiver[]): boolean =>
      others.some(
        (other) => span(other) === span(waiver) && ceilingDirection(other.upTo, waiver.upTo) === 'neither',
      );
    const came = now.filter((waiver) => !kept(waiver, old));
    const left = old.filter((waiver) => !kept(waiver, now));
    const [first] = came;
    const [gone] = left;
    if (first !== undefined && gone !== undefined && came.length === 1 && left.length === 1) {
      const wider = first.from < gone.from || first.until > gone.until;
      const narrower = first.from > gone.from || first.until < gone.until;
      const direction = wider ? 'looser' : narrower ? 'tighter' : 'neither';
      const common = { of: 'waiver', name: key, place: onHead(first.place) } as const;
      const raised = ceilingDirection(gone.upTo, first.upTo);
      return [
        ...(span(gone) === span(first)
          ? []
          : [policyChange({ ...common, direction, key: 'dates', from: span(gone), to: span(first) })]),
        ...(raised === 'neither'
          ? []
          : [
              policyChange({
                ...common,
                direction: raised,
                key: 'up-to',
                from: gone.upTo?.written,
                to: first.upTo?.written,
              }),
            ]),
      ];
    }
    // A waiver that is over before it comes lets nothing through.
    const told = (waiver: Waiver, direction: 'looser' | 'tighter') =>
      ({ of: 'waiver', name: key, direction: waiver.until < on ? 'neither' : direction }) as const;
    return [
      ...came.map((waiver) =>
        policyChange({ ...told(waiver, 'looser'), to: termsOf(waiver), place: onHead(waiver.place) }),
      ),
      ...left.map((waiver) =>
        policyChange({ ...told(waiver, 'tighter'), from: termsOf(waiver), place: onBase(waiver.place) }),
      ),
    ];
  });
}
