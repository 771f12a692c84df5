/** Words that every floor says alike: counts, long numbers, and the cautions before what destroys. */

/** `1 volume`, `3 volumes`. */
export const counted = (count: number | bigint, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 || count === 1n ? one : many}`;

/** As the beginning of a sentence: `No volume`, `1 volume`, `3 volumes`. */
export const countedOrNo = (count: number, one: string, many = `${one}s`): string =>
  count === 0 ? `No ${one}` : counted(count, one, many);

/** `a`, `a and b`, `a, b and c`. */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** A whole number with its thousands set apart, as byte counts are easier to read. */
export const exact = (count: bigint): string => count.toString().replace(/\B(?=(\d{3})+$)/g, ',');

/** The cautions that go with every step that destroys. */
export const cautions =
  "Before you do this: have a backup that you have restored from, make sure that it is the right volume (check its name, size and server twice), and that it is unmounted and quiesced. Your own change control and the provider's documentation take precedence.";
