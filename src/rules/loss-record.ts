/** The record that a branch leaves of a loss: its reason, and a recent enough backup. */
import { nearestWord } from '../base/nearest.ts';
import { at } from '../base/problem.ts';
import { counted } from '../base/wording.ts';
import { daysBetween } from '../estate/dates.ts';
import type { Estate, Retired } from '../estate/estate.ts';

/** What keeps a loss from being prepared, and what is still to be done about it. */
export interface Fault {
  readonly says: string;
  /** In a change before this one, so that main has it. */
  readonly before?: string;
  readonly here?: string;
}

interface Recorded {
  readonly base: Estate;
  readonly head: Estate;
  readonly on: string;
  /** The greatest age of a backup, in days; undefined where none is asked for. */
  readonly within: number | undefined;
}

/** What is wrong with the record of a loss, which may be under any of some names. */
export function recordFaults(
  names: readonly string[],
  { base, head, on, within }: Recorded,
): readonly Fault[] {
  const found = names.map((name) => recordOf(name, base, head, on));
  const known = found.find((each) => typeof each === 'object');
  if (known !== undefined) return backupFaults(known, within, on);
  const wrong = found.find((each) => typeof each === 'string');
  return [
    wrong === undefined
      ? unrecorded(names, base, head)
      : {
          says: wrong,
          here: `Have an entry under retired: for this loss, with its day as on:, not in the future and at most ${longestOpen} days ago.`,
        },
  ];
}

/** No entry has any of the names: one that the branch adds for something that main does not have may be meant. */
function unrecorded(names: readonly string[], base: Estate, head: Estate): Fault {
  const strays = [...head.retired.values()]
    .flatMap((records) => records.slice(-1))
    .filter(({ name }) => !(base.retired.has(name) || base.volumes.has(name) || base.fileSystems.has(name)));
  const near = names.flatMap(
    (name) =>
      nearestWord(
        name,
        strays.map((each) => each.name),
      ) ?? [],
  );
  const meant = strays.find(({ name }) => name === near[0]) ?? (strays.length === 1 ? strays[0] : undefined);
  const says = 'no entry under retired: gives a reason';
  return meant === undefined
    ? {
        says,
        here: `Add an entry under retired: for ${names[0]}, with on, reason, backup and backed-up.`,
      }
    : {
        says: `${says}: the one for ${meant.name}, at ${at(meant.place)}, is for nothing that main has`,
        here: `If that entry is meant for ${names[0]}, correct the name in it; otherwise add one, with on, reason, backup and backed-up.`,
      };
}

/**
 * The record of the deletion that a branch makes, or why what is on record is none of it. A name may have been gone and
 * come again: what was on record while the thing was still there, or is dated before the name last went, is of an
 * earlier one.
 */
function recordOf(name: string, base: Estate, head: Estate, on: string): Retired | string | undefined {
  const earlier = base.retired.get(name) ?? [];
  const records = head.retired.get(name) ?? [];
  const gone = earlier.findLast((record) => record.on <= on)?.on ?? '';
  const onThatDay = (list: readonly Retired[]): number => list.filter((record) => record.on === gone).length;
  // A record that is but worded anew is still that of the earlier one.
  const isEdited = onThatDay(records) <= onThatDay(earlier);
  const own = records.filter(
    (record) => !earlier.some((known) => sameRecord(known, record)) && !(record.on === gone && isEdited),
  );
  const last = own.findLast((record) => record.on >= gone && record.on <= on) ?? own.at(-1);
  if (last === undefined) {
    const [old] = records.slice(-1);
    return old === undefined
      ? undefined
      : `its entry under retired: of ${old.on} was on main while ${name} was still there, so it records the deletion of an earlier one`;
  }
  if (last.on > on) return `its entry under retired: is dated ${last.on}, which is in the future`;
  if (last.on < gone)
    return `its entry under retired: is dated ${last.on}, and main has the record of an earlier ${name} that was gone by ${gone}`;
  if (daysBetween(last.on, on) > longestOpen)
    return `its entry under retired: comes with this branch and is dated ${last.on}, which is more than ${longestOpen} days ago, and main still has ${name}`;
  return last;
}

/** So many days may lie between the day written in a branch and the one on which it is judged: ours. */
const longestOpen = 90;

const sameRecord = (a: Retired, b: Retired): boolean =>
  a.on === b.on && a.reason === b.reason && a.backup === b.backup && a.backedUp === b.backedUp;

function backupFaults(record: Retired, within: number | undefined, on: string): readonly Fault[] {
  if (within === undefined) return [];
  if (record.backup === undefined || record.backedUp === undefined) {
    return [
      {
        says: 'its record names no backup',
        here: 'Add backup and backed-up to its entry under retired:.',
      },
    ];
  }
  const age = daysBetween(record.backedUp, on);
  if (age < 0) {
    const says = `its backup is dated ${record.backedUp}, which is in the future`;
    return [{ says, here: 'Correct backed-up in its entry under retired:.' }];
  }
  if (age <= within) return [];
  return [
    {
      says: `its backup is ${counted(age, 'day')} old, and at most ${counted(within, 'day')} ${within === 1 ? 'is' : 'are'} allowed`,
      here: 'Make a new backup, and write it as backup and backed-up in its entry under retired:.',
    },
  ];
}
