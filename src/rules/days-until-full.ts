/** What `minimum-headroom` says of a file system that its readings fill too soon. */
import { counted } from '../base/wording.ts';
import { type Forecast, wholeDays } from '../capacity/forecast.ts';
import { measuredSystem } from '../capacity/measured.ts';
import { fileSystemRoom, usageFor } from '../capacity/usage.ts';
import { placed } from '../change/place.ts';
import { daysBetween } from '../estate/dates.ts';
import type { FileSystem } from '../estate/estate.ts';
import { bytes, showSize } from '../estate/size.ts';
import type { Violation } from './rule.ts';
import type { View } from './view.ts';

/** A file system that its trend fills before the days are over; a note where there is no telling. */
export function tooSoonFull(system: FileSystem, wanted: number, view: View): Violation | undefined {
  const common = {
    subject: { kind: 'file-system', name: system.name },
    facet: 'days',
    place: placed(system, view.revision, 'size'),
  } as const;
  const who = `file system ${system.name}`;
  const usage = usageFor(system, view.estate, view.usage);
  if (usage === undefined) {
    return {
      ...common,
      message: `${who} has no readings, so when it will be full is undetermined`,
      advice: 'Add readings of it; a trend needs at least a week of them, one a day.',
      atMost: 'note',
    };
  }
  const room = fileSystemRoom(system, usage, measuredSystem(system, view.estate, view.measured));
  const capacity = bytes(room.capacity);
  const source =
    room.surveyed === undefined ? '' : `; its capacity is as surveyed on ${room.surveyed.slice(0, 10)}`;
  // Counted from the day of the judgement: a forecast of ten days, made nine days ago, leaves one.
  const gone = daysBetween(usage.last.at.slice(0, 10), view.on);
  if (usage.isFarFromFull(capacity, wanted + Math.max(0, gone))) return undefined;
  const outlook = usage.forecastFor(capacity);
  switch (outlook.kind) {
    case 'too few':
      return {
        ...common,
        message: `${who} does not have enough readings to determine when it will be full: ${outlook.why}`,
        advice: 'Keep adding readings, one a day.',
        atMost: 'note',
      };
    case 'full':
      return {
        ...common,
        message: `${who} was full at its reading of ${outlook.from}, and ${counted(wanted, 'day')} must remain${source}`,
        excess: BigInt(wanted),
        measured: { number: BigInt(wanted) },
      };
    case 'steady or shrinking':
    case 'fills': {
      // The earliest day counts: the gate errs early.
      const { earliest } = outlook.interval;
      const left = earliest === null ? wanted : wholeDays(earliest) - gone;
      if (left >= wanted) return undefined;
      // To a whole KiB: no pace is known better.
      const pace = BigInt(Math.round(outlook.pacePerDay / 1024)) * 1024n;
      const growth = `${pace < 0n ? '-' : ''}${showSize(bytes(pace < 0n ? -pace : pace))}`;
      return {
        ...common,
        message: `${who} ${whenFull(outlook, gone)}, if it goes on as in ${counted(outlook.readings, 'reading')} up to ${outlook.from}, by ${growth} a day; ${counted(wanted, 'day')} must remain${source}`,
        excess: BigInt(wanted - left),
        measured: { number: BigInt(wanted - left) },
      };
    }
  }
}

/** Such as `will be full in 40 days, or between 29 and 70 days (9 in 10 of its futures)`. */
function whenFull(
  outlook: Extract<Forecast, { kind: 'fills' | 'steady or shrinking' }>,
  gone: number,
): string {
  const left = (days: number): number => wholeDays(days) - gone;
  const { earliest, latest } = outlook.interval;
  const first = left(earliest ?? 0);
  if (outlook.kind === 'steady or shrinking') {
    return `may be full ${first < 0 ? 'by now' : `in ${counted(first, 'day')}`}, though most of its futures never fill it`;
  }
  const middle = left(outlook.daysUntilFull);
  const when = middle < 0 ? 'will be full by now' : `will be full in ${counted(middle, 'day')}`;
  const last = latest === null ? undefined : left(latest);
  if (first === middle && last === middle) return when;
  const sure = `${Math.round(outlook.confidence * 10)} in 10 of its futures`;
  return last === undefined
    ? `${when}, at the earliest ${first < 0 ? 'by now' : `in ${counted(first, 'day')}`} (${sure}; some never fill it)`
    : `${when}, or between ${Math.max(0, first)} and ${counted(Math.max(0, last), 'day')} (${sure})`;
}
