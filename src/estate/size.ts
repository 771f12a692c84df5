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

/**
 * Marks a whole number as a count of bytes.
 *
 * @param count of bytes, not of any larger unit
 *
 * @example
 * ```js
 * import { bytes, showSize } from 'ullage';
 *
 * console.log(showSize(bytes(50n * 2n ** 30n))); // 50 GiB
 * ```
 */
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
 * Reads a size such as `50 GiB`, `1.5 TiB` or `500 GB`: KiB to PiB as IEC 80000-13 has them, kB to PB as SI has.
 *
 * @returns the exact bytes, or a sentence that says why the text is no size. A fraction that does not come
 *   to a whole number of bytes is refused rather than rounded.
 *
 * @example
 * ```js
 * import { parseSize } from 'ullage';
 *
 * console.log(parseSize('50 GiB')); // 53687091200n
 * console.log(typeof parseSize('50').why); // string
 * ```
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
const decimalUnits = ['PB', 'TB', 'GB', 'MB', 'kB'] as const;

/** The number before the unit has at most so many digits, wherever there is a choice of unit. */
const readableBelow = 10_000n;

/**
 * Shows a size for reading: exactly, as somebody would have written it, in the largest unit that takes it with at most
 * two decimals and four digits before them; binary units are tried before decimal ones, so 1100 GiB stays 1100 GiB and
 * 50 GB stays 50 GB. A size that no unit takes so is rounded and marked with `≈`, so that nobody takes a rounded figure
 * for the bytes.
 *
 * @param digits the decimals of a rounded size
 *
 * @example
 * ```js
 * import { bytes, showSize } from 'ullage';
 *
 * console.log(showSize(bytes(50_000_000_000n))); // 50 GB
 * console.log(showSize(bytes(53_687_091_201n))); // ≈50 GiB
 * ```
 */
export function showSize(size: Bytes, digits = 2): string {
  if (size < 0n) return `-${showSize(bytes(-size), digits)}`;
  const largest = binaryUnits.find((unit) => size >= unitBytes[unit]);
  if (largest === undefined) return `${size} B`;
  for (const unit of [...binaryUnits, ...decimalUnits]) {
    const within = size >= unitBytes[unit] && size < readableBelow * unitBytes[unit];
    if (within && (size * 100n) % unitBytes[unit] === 0n) return inUnit(size, unit);
  }
  const scale = 10n ** BigInt(digits);
  const rounded = (size * scale + unitBytes[largest] / 2n) / unitBytes[largest];
  return `≈${withPoint(rounded, digits)} ${largest}`;
}

/**
 * Writes a size as a file may have it, never rounded: what somebody is to type in, or to compare. `parseSize` reads it
 * back as the same bytes.
 */
export function exactSize(size: Bytes): string {
  if (size < 0n) return `-${exactSize(bytes(-size))}`;
  const shown = showSize(size);
  if (!shown.startsWith('≈') && !shown.endsWith(' B')) return shown;
  const whole = [...binaryUnits, ...decimalUnits].find((unit) => size > 0n && size % unitBytes[unit] === 0n);
  return inUnit(size, whole ?? 'kB');
}

/** A size in a unit that takes it exactly. */
function inUnit(size: Bytes, unit: Unit): string {
  for (let digits = 0; ; digits++) {
    const scaled = size * 10n ** BigInt(digits);
    if (scaled % unitBytes[unit] === 0n) return `${withPoint(scaled / unitBytes[unit], digits)} ${unit}`;
  }
}

/** A number of so many decimals, without zeros at its end. */
function withPoint(scaled: bigint, digits: number): string {
  const scale = 10n ** BigInt(digits);
  const fraction = (scaled % scale).toString().padStart(digits, '0').replace(/0+$/, '');
  return `${scaled / scale}${digits === 0 || fraction === '' ? '' : `.${fraction}`}`;
}
