/**
 * Read-only maps that differ little from an older one. A new revision of a large estate changes a few entries; it
 * shares the rest with the one before instead of copying it.
 */

/** What a map holds that an older one does not, and what of the older one it lacks. */
export interface MapEdit<K, V> {
  readonly set: ReadonlyMap<K, V>;
  readonly deleted: ReadonlySet<K>;
}

/** The map that an edit makes of another. Where the edit is large, it is copied whole. */
export function layered<K, V>(below: ReadonlyMap<K, V>, { set, deleted }: MapEdit<K, V>): ReadonlyMap<K, V> {
  if (set.size === 0 && deleted.size === 0) return below;
  const [bottom, over, gone] = layersOf(below);
  const nextOver = new Map(over);
  const nextGone = new Set(gone);
  for (const key of deleted) {
    nextOver.delete(key);
    if (bottom.has(key)) nextGone.add(key);
  }
  for (const [key, value] of set) {
    nextOver.set(key, value);
    nextGone.delete(key);
  }
  const next = new LayeredMap(bottom, nextOver, nextGone);
  // Copying the edits costs their number each time, copying the whole costs its size once in a while; the root of
  // the size keeps both small.
  return nextOver.size + nextGone.size > 4 * Math.sqrt(bottom.size) + 16 ? new Map(next) : next;
}

/**
 * The keys under which two maps may hold different values. Of two that lie over one older map, only what lies over it
 * is looked at.
 */
export function* mayDiffer<K, V>(a: ReadonlyMap<K, V>, b: ReadonlyMap<K, V>): Iterable<K> {
  if (a === b) return;
  const [[bottomA, overA, goneA], [bottomB, overB, goneB]] = [layersOf(a), layersOf(b)];
  const keys = bottomA === bottomB ? [overA.keys(), goneA, overB.keys(), goneB] : [a.keys(), b.keys()];
  const seen = new Set<K>();
  for (const some of keys) {
    for (const key of some) {
      if (seen.has(key)) continue;
      seen.add(key);
      yield key;
    }
  }
}

type Layers<K, V> = readonly [ReadonlyMap<K, V>, ReadonlyMap<K, V>, ReadonlySet<K>];

const layersOf = <K, V>(map: ReadonlyMap<K, V>): Layers<K, V> =>
  map instanceof LayeredMap ? map.layers() : [map, new Map<K, V>(), new Set<K>()];

class LayeredMap<K, V> implements ReadonlyMap<K, V> {
  readonly #bottom: ReadonlyMap<K, V>;
  readonly #over: ReadonlyMap<K, V>;
  readonly #gone: ReadonlySet<K>;
  readonly size: number;

  constructor(bottom: ReadonlyMap<K, V>, over: ReadonlyMap<K, V>, gone: ReadonlySet<K>) {
    this.#bottom = bottom;
    this.#over = over;
    this.#gone = gone;
    let added = 0;
    for (const key of over.keys()) if (!bottom.has(key)) added++;
    this.size = bottom.size - gone.size + added;
  }

  layers(): Layers<K, V> {
    return [this.#bottom, this.#over, this.#gone];
  }

  get(key: K): V | undefined {
    if (this.#over.has(key)) return this.#over.get(key);
    return this.#gone.has(key) ? undefined : this.#bottom.get(key);
  }

  has(key: K): boolean {
    return this.#over.has(key) || (!this.#gone.has(key) && this.#bottom.has(key));
  }

  *entries(): MapIterator<[K, V]> {
    for (const entry of this.#bottom) {
      const [key] = entry;
      if (this.#gone.has(key)) continue;
      const over = this.#over.get(key);
      if (over === undefined) yield entry;
      else yield [key, over];
    }
    for (const entry of this.#over) if (!this.#bottom.has(entry[0])) yield entry;
  }

  *keys(): MapIterator<K> {
    for (const [key] of this.entries()) yield key;
  }

  *values(): MapIterator<V> {
    for (const [, value] of this.entries()) yield value;
  }

  [Symbol.iterator](): MapIterator<[K, V]> {
    return this.entries();
  }

  forEach(visit: (value: V, key: K, map: ReadonlyMap<K, V>) => void): void {
    for (const [key, value] of this.entries()) visit(value, key, this);
  }
}
