/**
 * Futures of a file system's use, drawn from its own past, and the day by which so many of them are full.
 *
 * Each future takes a level and a pace that the readings allow, and then week after week of surprises as they came in
 * the past (a block bootstrap: H. R. Künsch, The jackknife and the bootstrap for general stationary observations,
 * Annals of Statistics 17 (1989), 1217-1241); the weeks begin on the weekday on which they are put, so that the weekly
 * wave is kept. Chance has a fixed seed: the same readings give the same futures.
 */
import { type Chance, chanceOf } from './chance.ts';
import type { Step } from './daily-use.ts';
import type { Fit } from './pace.ts';

/** Days until each future is full, from the earliest to the latest; infinite where it never is. */
export type DaysUntilFull = Float64Array;

export const futures = 200;
/** From here on a future goes on at its pace. */
export const farthest = 400;
const week = 7;
/** Better too early than too late: the pace is taken so many of its standard deviations higher than estimated. */
const early = 0.15;

/** Loads that came at once. */
export interface Loads {
  readonly rises: readonly Step[];
  /** Whether they stand out so far that nobody knows whether they ever come again. */
  readonly standOut: boolean;
}

/**
 * @param fits the cases that explain the readings without their sudden loads
 * @param underCeilings what can be filled, bytes, on each day of the week from the day after the last reading on
 * @param unconfirmed by so much the last reading is higher than what others agree on, bytes
 */
export function futuresOf(
  fits: readonly Fit[],
  underCeilings: readonly number[],
  { rises, standOut }: Loads,
  unconfirmed: number,
): DaysUntilFull {
  const chance = chanceOf();
  const days: number[] = [];
  for (const fit of fits) {
    const weeks = weeksOf(fit, rises);
    const none = { ...weeks, loads: new Float64Array(weeks.loads.length) };
    for (let time = 0; time < fit.times; time += 1) {
      const number = days.length;
      const lower = number % unconfirmedIn === 0 ? unconfirmed : 0;
      const ceilings = underCeilings.map((each) => inUnitsOf(fit, each - lower));
      days.push(daysUntilFull(fit, standOut && number % 2 === 1 ? none : weeks, ceilings, chance));
    }
  }
  return Float64Array.from(days).sort();
}

/** In one of so many futures a last reading that no other confirms is right: the earliest day counts it. */
const unconfirmedIn = 8;

/** The past that weeks are drawn from. */
interface Weeks {
  readonly surprises: Float64Array;
  /** What stays of each surprise, and sudden loads, by the day on which they came. */
  readonly staying: Float64Array;
  readonly loads: Float64Array;
  /** The days on which a week of the past may begin: all futures begin on the same weekday. */
  readonly starts: readonly number[];
}

/** With fewer weeks than this to choose from, a week may begin on any day. */
const fewestWeeks = 3;

function weeksOf(fit: Fit, rises: readonly Step[]): Weeks {
  const surprises = fit.surprises();
  const count = surprises.length;
  const any = Array.from({ length: Math.max(1, count - week) }, (_, index) => index + 1);
  const same = any.filter((start) => (count - start) % week === 0);
  const starts = same.length < fewestWeeks ? any : same;
  // What the pace explains is no surprise: the weeks together bring nothing.
  let sum = 0;
  for (const start of starts) {
    for (let day = start; day < start + week; day += 1) sum += surprises[day] ?? 0;
  }
  const mean = sum / (starts.length * week);
  // A fit lies nearer to its own readings than to others; and weeks cut from a short past differ too little.
  const wider = Math.sqrt(count / fit.freedom);
  const apart = fit.keeps / Math.sqrt(1 - Math.min(0.5, week / count));
  const drawn = Float64Array.from(surprises, (each) => (each - mean) * wider);
  const loads = new Float64Array(count);
  for (const { day, height } of rises) loads[day] = height;
  return { surprises: drawn, staying: drawn.map((each) => each * apart), loads, starts };
}

/** Where it grows by a share, logarithms; what is not above nothing is full at once. */
const inUnitsOf = ({ growsBy }: Fit, amount: number): number =>
  growsBy === 'share' ? Math.log(Math.max(1, amount)) : amount;

function daysUntilFull(fit: Fit, weeks: Weeks, ceilings: readonly number[], chance: Chance): number {
  const { growsBy, freedom, spread } = fit;
  // A deviation that is itself only estimated, after E. B. Wilson and M. M. Hilferty's approximation of chi-squared.
  const ninth = 2 / (9 * freedom);
  const scale = Math.max(0.2, 1 - ninth + chance.normal() * Math.sqrt(ninth)) ** -1.5;
  const [one, other] = [chance.normal() * scale, chance.normal() * scale + early];
  const pace = fit.pace + spread[1] * one + spread[2] * other;
  let level = fit.level + spread[0] * one;
  let leftBefore = Math.max(0, (ceilings[week - 1] ?? 0) - level);
  let at = 0;
  for (let day = 1; day <= farthest; day += 1, at += 1) {
    if ((day - 1) % week === 0) at = chance.oneOf(weeks.starts) ?? 0;
    level += pace;
    const load = weeks.loads[at] ?? 0;
    if (load !== 0) level += growsBy === 'share' ? Math.log1p(load / Math.exp(level)) : load;
    const left = (ceilings[(day - 1) % week] ?? 0) - level - (weeks.surprises[at] ?? 0);
    // Between two days it goes evenly.
    if (left <= 0) return leftBefore > 0 ? day - 1 + leftBefore / (leftBefore - left) : day - 1;
    level += weeks.staying[at] ?? 0;
    leftBefore = left;
  }
  return pace > 0 ? farthest + Math.max(0, Math.min(...ceilings) - level) / pace : Number.POSITIVE_INFINITY;
}
