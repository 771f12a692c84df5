/** What differs between the waivers of two policies. */
import { onBase, onHead } from '../../change/place.ts';
import type { PolicyChange } from '../../rules/view.ts';
import type { Waiver } from '../policy.ts';
import { allNames, policyChange } from './change.ts';

const waiverKey = ({ rule, subject, kind }: Waiver): string =>
  `${rule} for ${kind === undefined ? '' : `${kind} `}${subject}`;

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
      others.some((other) => span(other) === span(waiver));
    const came = now.filter((waiver) => !kept(waiver, old));
    const left = old.filter((waiver) => !kept(waiver, now));
    const [first] = came;
    const [gone] = left;
    if (first !== undefined && gone !== undefined && came.length === 1 && left.length === 1) {
      const wider = first.from < gone.from || first.until > gone.until;
      const narrower = first.from > gone.from || first.until < gone.until;
      const direction = wider ? 'looser' : narrower ? 'tighter' : 'neither';
      return [
        policyChange({
          direction,
          of: 'waiver',
          name: key,
          key: 'dates',
          from: span(gone),
          to: span(first),
          place: onHead(first.place),
        }),
      ];
    }
    // A waiver that is over before it comes lets nothing through.
    const told = (waiver: Waiver, direction: 'looser' | 'tighter') =>
      ({ of: 'waiver', name: key, direction: waiver.until < on ? 'neither' : direction }) as const;
    return [
      ...came.map((waiver) =>
        policyChange({ ...told(waiver, 'looser'), to: span(waiver), place: onHead(waiver.place) }),
      ),
      ...left.map((waiver) =>
        policyChange({ ...told(waiver, 'tighter'), from: span(waiver), place: onBase(waiver.place) }),
      ),
    ];
  });
}
