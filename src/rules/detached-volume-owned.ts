import { daysBetween } from '../estate/dates.ts';
import { isDetached, type Volume } from '../estate/estate.ts';
import { showMoney } from '../price/money.ts';
import { counted, placed, type StateRule } from './rule.ts';

export const detachedVolumeOwned: StateRule<'detached-volume-owned'> = {
  name: 'detached-volume-owned',
  about: 'state',
  level: 'error',
  refuses:
    'A detached volume, still billed, with no owner, no reason or no retention date, or kept past that date.',
  why: 'A detached volume is billed until it is deleted. Without a name, a reason and a date, nobody dares to delete it and everybody pays.',
  advice:
    'Write reason and retain-until on the volume, and a team or an owner; or attach it; or delete it by the rules for deletion.',
  parameters: {
    'at-most': {
      schema: {
        type: 'integer',
        minimum: 1,
        description: 'The most days ahead that a retention date may lie.',
      },
      looser: 'higher',
      absent: 'no-check',
    },
    grace: {
      schema: {
        type: 'integer',
        minimum: 0,
        default: 0,
        description: 'Days past the retention date that are let pass.',
      },
      looser: 'higher',
      absent: 'default',
    },
  },
  needs: [],
  *check(entry, { estate, cost, on, revision }, scope) {
    for (const volume of estate.volumes.values()) {
      if (!isDetached(estate, volume) || !scope.includes(volume, volume.tier)) continue;
      const faults = faultsOf(volume, on, entry.grace ?? 0, entry['at-most']);
      if (faults.length === 0) continue;
      const monthly = cost.volumes.get(volume.name)?.monthly;
      const price =
        monthly === undefined ? '' : `, at ${showMoney(monthly, cost.currency)} ${cost.currency} a month`;
      yield {
        subject: { kind: 'volume', name: volume.name },
        place: placed(volume, revision, volume.retainUntil === undefined ? undefined : 'retain-until'),
        message: `volume ${volume.name} is detached and still billed${price}, and ${faults.join(' and ')}`,
        excess: BigInt(faults.length),
      };
    }
  },
};

function faultsOf(volume: Volume, on: string, grace: number, atMost: number | undefined): readonly string[] {
  const faults: string[] = [];
  if (volume.owner === undefined && volume.team === undefined) faults.push('has no team or owner');
  if (volume.reason === undefined) faults.push('gives no reason');
  if (volume.retainUntil === undefined) faults.push('has no retention date');
  else {
    // The retention date itself is still a day of keeping.
    const past = daysBetween(volume.retainUntil, on);
    if (past > grace)
      faults.push(`is kept ${counted(past, 'day')} past its retention date ${volume.retainUntil}`);
    if (atMost !== undefined && -past > atMost) {
      faults.push(`is to be kept ${counted(-past, 'day')}, where ${counted(atMost, 'day')} are allowed`);
    }
  }
  return faults;
}
