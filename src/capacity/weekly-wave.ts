/** The wave that comes back each week, such as a backup on Sundays. */

const week = 7;
const half = 3;
/** Weeks from which on a wave can be told from chance. */
const fewestWeeks = 4;
/** The part of how days differ from the week around them that weekdays must explain. Common practice, no source. */
const partExplained = 0.6;

/**
 * How far each day of the week lies above or below the week around it, in bytes; the last day's first, then that of the
 * day before it. All 0 where there is no such wave. Together they are 0.
 *
 * @param use bytes, one a day
 */
export function weeklyWave(use: readonly number[]): readonly number[] {
  const still = new Array<number>(week).fill(0);
  if (use.length < fewestWeeks * week) return still;
  const byWeekday: number[][] = still.map(() => []);
  for (let day = half; day < use.length - half; day += 1) {
    const around = use.slice(day - half, day + half + 1);
    const mean = around.reduce((sum, each) => sum + each, 0) / week;
    byWeekday[(use.length - 1 - day) % week]?.push((use[day] ?? 0) - mean);
  }
  const wave = byWeekday.map((days) => days.reduce((sum, each) => sum + each, 0) / days.length);
  const whole = byWeekday.flat().reduce((sum, each) => sum + each ** 2, 0);
  const explained = byWeekday.reduce((sum, { length }, index) => sum + length * (wave[index] ?? 0) ** 2, 0);
  if (explained <= partExplained * whole) return still;
  const mean = wave.reduce((sum, each) => sum + each, 0) / week;
  return wave.map((each) => each - mean);
}

/** The use without its wave. */
export const withoutWave = (use: readonly number[], wave: readonly number[]): readonly number[] =>
  use.map((each, day) => each - (wave[(use.length - 1 - day) % week] ?? 0));

/** What can be filled on each day of the week to come, from the day after the last on. */
export const ceilingsUnder = (capacity: number, wave: readonly number[]): readonly number[] =>
  Array.from({ length: week }, (_, ahead) => capacity - (wave[week - 1 - ahead] ?? 0));
