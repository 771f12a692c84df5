/**
 * Sizes: exact bytes. A size in a file always carries its unit, because 50 GB and 50 GiB differ by more
 * than 3 GiB and the difference is a shrink.
 *
 * Units: IEC 80000-13 binary prefixes and SI decimal prefixes.
 */

declare const bytesBrand: unique symbol;

/** A whole number of bytes; zero or more, except as the result of `difference`. */
export type Bytes = bigint & { readonly [bytesBrand]: 'bytes' };

/** The units a file may use, each with the bytes it stands for. */
export const unitBytes = {
  KiB: 1n << 10n,
  MiB: 1n << 20n,
  GiB: 1n << 30n,
  TiB: 1n << 40n,
  PiB: 1n << 50n,
  kB: 10n ** 3n,
  MB: 10n ** 6n,
  GB: 10n ** 9n,
  TB: 10n ** 12n,
  PB: 10n ** 15n,
} as const satisfies Record<string, bigint>;

export type Unit = keyof typeof unitBytes;

/** Marks a whole number as a count of bytes. */
export const bytes = (count: bigint): Bytes => count as Bytes;

export const noBytes: Bytes = bytes(0n);

export const addBytes = (a: Bytes, b: Bytes): Bytes => bytes(a + b);

export const sumBytes = (sizes: Iterable<Bytes>): Bytes => {
  let total = 0n;
  for (const size of sizes) total += size;
  return bytes(total);
};

/** `a - b`; negative when `b` is the larger. */
export const differenceOfBytes = (a: Bytes, b: Bytes): Bytes => bytes(a - b);

export const timesBytes = (size: Bytes, count: bigint): Bytes => bytes(size * count);

const writtenSize = /^([0-9]{1,15})(?:\.([0-9]{1,15}))? ?(KiB|MiB|GiB|TiB|PiB|kB|MB|GB|TB|PB)$/;

const isUnit = (text: string): text is Unit => Object.hasOwn(unitBytes, text);

/**
 * Reads a size such as `50 GiB`, `1.5 TiB` or `500 GB`.
 *
 * @returns the exact bytes, or a sentence that says why the text is no size. A fraction that does not come
 *   to a whole number of bytes is refused rather than rounded.
 */
export function parseSize(text: string): Bytes | { readonly why: string } {
  const match = writtenSize.exec(text);
  if (match === null) return { why: whyNoSize(text) };
  const [, whole = '', fraction = '', unit = ''] = match;
  if (!isUnit(unit)) return { why: whyNoSize(text) };
  const scale = 10n ** BigInt(fraction.length);
  const scaled = BigInt(whole + fraction) * unitBytes[unit];
  if (scaled % scale !== 0n) return { why: `${text} is not a whole number of bytes` };
  return bytes(scaled / scale);
}

function whyNoSize(text: string): string {
  if (/^[0-9.]+$/.test(text)) {
    return `${text} has no unit; ${text} GiB and ${text} GB are different sizes`;
  }
  const unit = /^[0-9.]+ ?([A-Za-z]+)$/.exec(text)?.[1];
  if (unit !== undefined) {
    const meant = Object.keys(unitBytes).find((known) => known.toLowerCase() === unit.toLowerCase());
    return meant === undefined
      ? `${unit} is not a unit of size; the units are ${Object.keys(unitBytes).join(', ')}`
      : `${unit} is not a unit of size; ${meant} is`;
  }
  return `${text} is not a size such as 50 GiB or 50 GB`;
}

const binaryUnits = ['PiB', 'TiB', 'GiB', 'MiB', 'KiB'] as const;

/**
 * Shows a size in the largest binary unit that leaves at least 1, with at most `digits` decimals. A size that
 * the decimals cannot carry exactly is marked with `≈`, so that nobody takes a rounded figure for the bytes.
 */
export function showSize(size: Bytes, digits = 2): string {
  if (size < 0n) return `-${showSize(bytes(-size), digits)}`;
  const unit = binaryUnits.find((each) => size >= unitBytes[each]);
  if (unit === undefined) return `${size} B`;
  const scale = 10n ** BigInt(digits);
  const scaled = size * scale;
  const rounded = (scaled + unitBytes[unit] / 2n) / unitBytes[unit];
  const exact = rounded * unitBytes[unit] === scaled;
  const whole = rounded / scale;
  const fraction = (rounded % scale).toString().padStart(digits, '0').replace(/0+$/, '');
  return `${exact ? '' : '≈'}${whole}${fraction === '' ? '' : `.${fraction}`} ${unit}`;
}
