/**
 * What can only be one thing.
 *
 * A virtual disk shows at most the first 20 bytes of its identifier as its serial number: VIRTIO_BLK_ID_BYTES of the
 * Virtual I/O Device (VIRTIO) specification, version 1.2, 5.2.6.1.
 */

/** The bytes of an identifier that a disk shows. */
export const shownOfId = 20;

/** What a disk shows of its identifier. */
export const shown = (id: string): string => Buffer.from(id).subarray(0, shownOfId).toString();

/** What has one key alone on either side. */
export function onlyPairs<T>(
  items: readonly T[],
  keyOf: (item: T) => string | undefined,
): readonly (readonly [string, T])[] {
  const byKey = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    if (key !== undefined && key !== '') byKey.set(key, [...(byKey.get(key) ?? []), item]);
  }
  return [...byKey].flatMap(([key, [only, ...others]]) =>
    only === undefined || others.length > 0 ? [] : [[key, only] as const],
  );
}
