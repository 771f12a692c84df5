/**
 * Futures of use that is cleaned up as a habit, such as a weekly or a monthly rotation. What is drawn from the past are
 * whole rounds, from one clean-up to the next, as long and as high as they were.
 */
import { type Chance, chanceOf } from './chance.ts';
import type { Step } from './daily-use.ts';
import { type DaysUntilFull, farthest, futures } from './futures.ts';

/** The changes of use from a clean-up to the day before the next, bytes a day. */
type Round = readonly number[];

export interface Rotation {
  /** Whether the rounds are about as long as one another. */
  readonly regular: boolean;
  readonly rounds: readonly Round[];
  /** Days since the last clean-up. */
  readonly since: number;
  /** What a day brings over whole rounds, bytes. */
  readonly pace: number;
  readonly level: number;
}

/** So many times the longest round without a clean-up, and it is a habit no longer. */
const overdue = 1.5;
/** Only so many of the latest rounds count: a quarter's of a weekly rotation. */
const latestRounds = 13;
/** Rounds that differ from the usual by no more than this part of it are alike. Common practice, with no source. */
const aboutAsLong = 0.3;

/** The rotation that the clean-ups make, or undefined where the last is so long ago that the habit has ended. */
export function rotationOf(use: readonly number[], falls: readonly Step[]): Rotation | undefined {
  const changes = use.map((each, day) => each - (use[day - 1] ?? each));
  const rounds = falls
    .slice(1)
    .map(({ day }, index) => changes.slice(falls[index]?.day ?? 0, day))
    .slice(-latestRounds);
  const since = use.length - 1 - (falls.at(-1)?.day ?? 0);
  const longest = rounds.reduce((most, { length }) => Math.max(most, length), 0);
  if (rounds.length < 2 || since > overdue * longest) return undefined;
  const days = rounds.flat();
  const usual = days.length / rounds.length;
  const alike = rounds.filter(({ length }) => Math.abs(length - usual) <= aboutAsLong * usual);
  return {
    regular: alike.length * 4 >= rounds.length * 3,
    rounds,
    since,
    pace: days.reduce((sum, each) => sum + each, 0) / days.length,
    level: use.at(-1) ?? 0,
  };
}

export function rotationFutures(rotation: Rotation, capacity: number): DaysUntilFull {
  const chance = chanceOf();
  return Float64Array.from({ length: futures }, () => daysUntilFull(rotation, capacity, chance)).sort();
}

function daysUntilFull({ rounds, since, pace, level }: Rotation, capacity: number, chance: Chance): number {
  // The pace is known as well as the rounds agree on it.
  const others = rounds.flatMap(() => chance.oneOf(rounds) ?? []);
  const apart = others.reduce((sum, each) => sum + each, 0) / others.length - pace;
  const aside = apart * Math.sqrt(rounds.length / (rounds.length - 1));
  let round = chance.oneOf(rounds.filter(({ length }) => length > since + 1)) ?? [];
  let at = since + 1;
  let use = level;
  for (let day = 1; day <= farthest; day += 1) {
    if (at >= round.length) {
      round = chance.oneOf(rounds) ?? [];
      at = 0;
    }
    const change = (round[at] ?? 0) + aside;
    at += 1;
    if (use + change >= capacity) return day - (use + change - capacity) / Math.max(change, 1);
    use += change;
  }
  const growth = pace + aside;
  return growth > 0 ? farthest + (capacity - use) / growth : Number.POSITIVE_INFINITY;
}
