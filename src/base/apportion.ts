/**
 * Whole counts of a unit for parts of a whole, which come to the whole's own count: each is cut down, and what is then
 * missing goes one by one to those that lost most (the method of the largest remainder), of equal ones to the last.
 * None is off by a whole unit.
 *
 * @param parts in the same measure as `unit`; they may be below nothing
 * @param count of the whole, in units: within as many units of the sum of the parts as there are parts
 */
export function apportion(parts: readonly bigint[], unit: bigint, count: bigint): readonly bigint[] {
  const cut = parts.map((part) => floorDivide(part, unit));
  const missing = count - cut.reduce((sum, each) => sum + each, 0n);
  const mostLostFirst = parts
    .map((part, index) => ({ index, lost: part - floorDivide(part, unit) * unit }))
    .sort((a, b) => (a.lost > b.lost ? -1 : a.lost < b.lost ? 1 : b.index - a.index));
  const given = new Set(
    mostLostFirst.slice(0, Number(missing > 0n ? missing : 0n)).map(({ index }) => index),
  );
  return cut.map((each, index) => (given.has(index) ? each + 1n : each));
}

/** Units in an amount, rounded half up. */
export const rounded = (amount: bigint, unit: bigint): bigint => floorDivide(2n * amount + unit, 2n * unit);

function floorDivide(amount: bigint, unit: bigint): bigint {
  const quotient = amount / unit;
  return amount % unit < 0n ? quotient - 1n : quotient;
}
