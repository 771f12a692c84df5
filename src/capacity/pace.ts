/**
 * At what level and what pace use stands, and how sure that is.
 *
 * The use of a day is the level that the day before left, plus the pace, plus a surprise. A share of each surprise
 * stays (`keeps`): 0 is a straight line with noise on it, 1 a sum of changes, and the truth lies between. It is
 * exponential smoothing with drift (R. J. Hyndman and B. Billah, Unmasking the Theta method, International Journal of
 * Forecasting 19 (2003), 287-290). The pace may have changed once, on any of the days that are tried, and use may grow
 * by an amount or by a share. Nobody says which: each case is fitted by least squares and weighs by how well it
 * explains the readings, less a charge for each parameter (G. Schwarz, Estimating the dimension of a model, Annals of
 * Statistics 6 (1978), 461-464).
 */

/** One case, fitted. Amounts are bytes or, where it grows by a share, natural logarithms of bytes. */
export interface Fit {
  readonly growsBy: 'amount' | 'share';
  readonly keeps: number;
  /** The day on which the present pace began. */
  readonly since: number;
  /** The level after the last day, and the pace. */
  readonly level: number;
  readonly pace: number;
  /** How far they may be off: a root of their covariance, [level, pace with level, pace alone]. */
  readonly spread: readonly [number, number, number];
  /** Readings beyond what the parameters took. */
  readonly freedom: number;
  /** How many of the futures go by this case. */
  readonly times: number;
  /** What each day brought beyond what was to be expected; the first day's is not known. */
  surprises(): readonly number[];
}

/** The shares of a surprise that are tried. */
const kept = [0, 0.04, 0.1, 0.2, 0.35, 0.55, 0.75, 1];
/** Days that a new pace must have lasted to be seen, and as many that the old one must have. */
const shortestPace = 6;
/** Starts of a new pace are tried day by day this far back, and then ever farther apart. */
const dayByDay = 30;
const fartherBack = 1.12;
/** How much likelier, before any reading, one pace is than a change of it, and that all of a surprise stays. */
const onePace = Math.log(10);
const allStays = Math.log(2);

interface Columns {
  readonly use: Float64Array;
  readonly level: Float64Array;
  readonly pace: Float64Array;
}

/** What is left of a course when each day is told from the day before: the surprises are linear in the parameters. */
function filtered(course: ArrayLike<number>, passes: number): Float64Array {
  const result = new Float64Array(course.length);
  let before = 0;
  for (let day = 0; day < course.length; day += 1) {
    const now = course[day] ?? 0;
    const change = day === 0 ? now : now - (course[day - 1] ?? 0) + passes * before;
    result[day] = change;
    before = change;
  }
  return result;
}

function dot(one: Float64Array, other: Float64Array, from = 0): number {
  let sum = 0;
  for (let day = from; day < one.length; day += 1) sum += (one[day] ?? 0) * (other[day - from] ?? 0);
  return sum;
}

/**
 * The cases that explain the readings, each for as many of the futures as is its weight.
 *
 * @param use bytes, one a day, five days or more
 * @param finest a deviation below which a fit is no better, bytes: readings are rounded
 * @param futures how many are wanted
 */
export function fitsOf(use: readonly number[], finest: number, futures: number): readonly Fit[] {
  const cases = [...casesOf('amount', use, finest, startsOf(use.length))];
  const smallest = Math.min(...use);
  // A share of next to nothing is no measure.
  if (smallest > 0.02 * Math.max(...use)) {
    const logs = use.map(Math.log);
    const mean = logs.reduce((sum, each) => sum + each, 0) / logs.length;
    // Likelihoods of bytes and of logarithms are compared as those of bytes.
    const units = -(use.length - 2) * mean;
    for (const each of casesOf('share', logs, finest / Math.exp(mean), [0])) {
      cases.push({ ...each, explains: each.explains + units });
    }
  }
  const best = cases.reduce((most, { explains }) => Math.max(most, explains), Number.NEGATIVE_INFINITY);
  const weights = cases.map(({ explains }) => Math.exp(explains - best));
  const together = weights.reduce((sum, each) => sum + each, 0);
  let passed = 0;
  return cases.flatMap(({ fitted }, index) => {
    const before = Math.round((futures * passed) / together);
    passed += weights[index] ?? 0;
    const times = Math.round((futures * passed) / together) - before;
    return times === 0 ? [] : [{ ...fitted(), times }];
  });
}

/** The days on which a new pace may have begun; 0 is that it never changed. */
function startsOf(days: number): readonly number[] {
  const starts = [0];
  let back = shortestPace;
  while (days - 1 - back >= shortestPace) {
    starts.push(days - 1 - Math.round(back));
    back = back < dayByDay ? back + 1 : back * fartherBack;
  }
  return starts;
}

interface Case {
  /** The logarithm of how well it explains the readings. */
  readonly explains: number;
  fitted(): Omit<Fit, 'times'>;
}

function casesOf(
  growsBy: Fit['growsBy'],
  course: readonly number[],
  finest: number,
  starts: readonly number[],
): readonly Case[] {
  const days = course.length;
  const origin = course.at(-1) ?? 0;
  const centred = course.map((each) => each - origin);
  const ramp = Float64Array.from({ length: days }, (_, day) => day);
  const ones = new Float64Array(days).fill(1);
  return kept.flatMap((keeps) => {
    const passes = 1 - keeps;
    const columns: Columns = {
      use: filtered(centred, passes),
      level: filtered(ones, passes),
      pace: filtered(ramp, passes),
    };
    const gram: Gram = {
      ll: dot(columns.level, columns.level),
      lp: dot(columns.level, columns.pace),
      pp: dot(columns.pace, columns.pace),
      lu: dot(columns.level, columns.use),
      pu: dot(columns.pace, columns.use),
    };
    const { ll, lp, pp, lu, pu } = gram;
    const determinant = ll * pp - lp * lp;
    const onLevel = (l: number, p: number): number => (pp * l - lp * p) / determinant;
    const onPace = (l: number, p: number): number => (ll * p - lp * l) / determinant;
    const ofOnePace = dot(columns.use, columns.use) - lu * onLevel(lu, pu) - pu * onPace(lu, pu);
    const common = -0.5 * Math.log(determinant) + (keeps === 1 ? allStays : 0);
    return starts.map((since): Case => {
      const newPace = since === 0 ? undefined : newPaceOf(columns, since);
      let squares = ofOnePace;
      let charge = 0;
      if (newPace !== undefined) {
        // What the third column explains of what the first two leave.
        const { nn, ln, pn, un } = newPace;
        const alone = nn - ln * onLevel(ln, pn) - pn * onPace(ln, pn);
        squares -= (un - lu * onLevel(ln, pn) - pu * onPace(ln, pn)) ** 2 / alone;
        charge = 0.5 * Math.log(days) + Math.log(starts.length - 1) + onePace;
      }
      squares = Math.max(squares, days * finest ** 2);
      return {
        explains: common - 0.5 * (days - 2) * Math.log(squares) - charge,
        fitted: () =>
          fitOf({ growsBy, keeps, since, origin, columns, solved: solved(gram, newPace), squares }),
      };
    });
  });
}

/** Products of the columns: l the level's, p the pace's, u the use. */
interface Gram {
  readonly ll: number;
  readonly lp: number;
  readonly pp: number;
  readonly lu: number;
  readonly pu: number;
}

/** The products of a column n, of a pace that begins later; told from the day before it is the pace's own, later. */
function newPaceOf({ use, level, pace }: Columns, since: number) {
  let nn = 0;
  for (let day = 0; day < pace.length - since; day += 1) nn += (pace[day] ?? 0) ** 2;
  return { nn, ln: dot(level, pace, since), pn: dot(pace, pace, since), un: dot(use, pace, since) };
}

interface Solved {
  readonly solution: readonly number[];
  readonly inverse: readonly (readonly number[])[];
}

function solved({ ll, lp, pp, lu, pu }: Gram, newPace: ReturnType<typeof newPaceOf> | undefined): Solved {
  if (newPace === undefined) {
    return solve(
      [
        [ll, lp],
        [lp, pp],
      ],
      [lu, pu],
    );
  }
  const { nn, ln, pn, un } = newPace;
  return solve(
    [
      [ll, lp, ln],
      [lp, pp, pn],
      [ln, pn, nn],
    ],
    [lu, pu, un],
  );
}

/** Solves symmetric equations of two or three unknowns by Gauss and Jordan, which gives the inverse with it. */
function solve(matrix: readonly (readonly number[])[], rightHand: readonly number[]): Solved {
  const size = rightHand.length;
  const rows = matrix.map((row, index) => [
    ...row,
    ...Array.from({ length: size }, (_, column) => (column === index ? 1 : 0)),
  ]);
  for (let pivot = 0; pivot < size; pivot += 1) {
    const top = rows[pivot] ?? [];
    const by = top[pivot] ?? 1;
    for (let column = 0; column < top.length; column += 1) top[column] = (top[column] ?? 0) / by;
    for (const [index, row] of rows.entries()) {
      const times = row[pivot] ?? 0;
      if (index === pivot || times === 0) continue;
      for (let column = 0; column < row.length; column += 1) {
        row[column] = (row[column] ?? 0) - times * (top[column] ?? 0);
      }
    }
  }
  const inverse = rows.map((row) => row.slice(size));
  return { inverse, solution: inverse.map((row) => product(row, rightHand)) };
}

const product = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, each, index) => sum + each * (other[index] ?? 0), 0);

function fitOf(of: {
  readonly growsBy: Fit['growsBy'];
  readonly keeps: number;
  readonly since: number;
  readonly origin: number;
  readonly columns: Columns;
  readonly solved: Solved;
  readonly squares: number;
}): Omit<Fit, 'times'> {
  const { growsBy, keeps, since, origin, columns, solved, squares } = of;
  const days = columns.use.length;
  const last = days - 1;
  const { solution, inverse } = solved;
  const newest = since === 0 ? [] : [columns.pace[last - since] ?? 0];
  const ends = [columns.level[last] ?? 0, columns.pace[last] ?? 0, ...newest];
  const passes = 1 - keeps;
  const surprise = (columns.use[last] ?? 0) - product(ends, solution);
  const toLevel = ends.map((each) => each * passes);
  const toPace = solution.map((_, index) => (index === 0 ? 0 : 1));
  const freedom = days - solution.length;
  const variance = squares / freedom;
  const covariance = (one: readonly number[], other: readonly number[]): number =>
    variance *
    product(
      one,
      inverse.map((row) => product(row, other)),
    );
  const levelSpread = Math.sqrt(Math.max(0, covariance(toLevel, toLevel)));
  const together = levelSpread === 0 ? 0 : covariance(toLevel, toPace) / levelSpread;
  return {
    growsBy,
    keeps,
    since,
    level: origin - passes * surprise,
    pace: product(toPace, solution),
    spread: [levelSpread, together, Math.sqrt(Math.max(0, covariance(toPace, toPace) - together ** 2))],
    freedom,
    surprises: () =>
      Array.from(columns.use, (each, day) => {
        const newPace = day < since ? 0 : (columns.pace[day - since] ?? 0);
        const row = [columns.level[day] ?? 0, columns.pace[day] ?? 0, newPace];
        return each - product(solution, row);
      }),
  };
}
