/**
 * Read-only maps that differ little from an older one. A new revision of a large estate changes a few entries; it
 * shares the rest with the one before instead of copying it.
 */

/** What a map holds that an older one does not, and what of the older one it lacks. */
export interface MapEdit<K, V> {
  readonly set: ReadonlyMap<K, V>;
  readonly deleted: ReadonlySet<K>;
}

/**
 * How many times larger each layer is than the one that lies over it. An entry is then copied a few times for each
 * layer that it sinks through, and there are as many layers as the size has digits.
 */
const ratio = 4;

/** The map that an edit makes of another. */
export function layered<K, V>(below: ReadonlyMap<K, V>, { set, deleted }: MapEdit<K, V>): ReadonlyMap<K, V> {
  if (set.size === 0 && deleted.size === 0) return below;
  let next = new LayeredMap(
    below,
    set,
    new Set([...deleted].filter((key) => !set.has(key) && below.has(key))),
  );
  while (next.below instanceof LayeredMap && next.weight * ratio >= next.below.weight)
    next = next.merged(next.below);
  return next.weight * ratio >= next.below.size ? new Map(next) : next;
}

/**
 * The keys under which two maps may hold different values. Of two that lie over one older map, only what lies over it
 * is looked at.
 */
export function* mayDiffer<K, V>(a: ReadonlyMap<K, V>, b: ReadonlyMap<K, V>): Iterable<K> {
  if (a === b) return;
  const beneathA = new Set(chainOf(a));
  const shared = chainOf(b).find((layer) => beneathA.has(layer));
  const seen = new Set<K>();
  for (const map of [a, b]) {
    for (const key of keysOver(map, shared)) {
      if (seen.has(key)) continue;
      seen.add(key);
      yield key;
    }
  }
}

/** A map and all that it lies over. */
function chainOf<K, V>(map: ReadonlyMap<K, V>): readonly ReadonlyMap<K, V>[] {
  const chain = [map];
  for (let top = map; top instanceof LayeredMap; top = top.below) chain.push(top.below);
  return chain;
}

function* keysOver<K, V>(map: ReadonlyMap<K, V>, shared: ReadonlyMap<K, V> | undefined): Iterable<K> {
  let top = map;
  for (; top !== shared && top instanceof LayeredMap; top = top.below) {
    yield* top.over.keys();
    yield* top.gone;
  }
  if (top !== shared) yield* top.keys();
}

class LayeredMap<K, V> implements ReadonlyMap<K, V> {
  readonly below: ReadonlyMap<K, V>;
  readonly over: ReadonlyMap<K, V>;
  /** Keys of `below` that are not here. */
  readonly gone: ReadonlySet<K>;
  readonly size: number;

  constructor(below: ReadonlyMap<K, V>, over: ReadonlyMap<K, V>, gone: ReadonlySet<K>) {
    this.below = below;
    this.over = over;
    this.gone = gone;
    let added = 0;
    for (const key of over.keys()) if (!below.has(key)) added++;
    this.size = below.size - gone.size + added;
  }

  get weight(): number {
    return this.over.size + this.gone.size;
  }

  /** The same map with its two top layers made one. */
  merged({ below, over, gone }: LayeredMap<K, V>): LayeredMap<K, V> {
    const both = new Map(over);
    const lost = new Set(gone);
    for (const key of this.gone) {
      both.delete(key);
      if (below.has(key)) lost.add(key);
    }
    for (const [key, value] of this.over) {
      both.set(key, value);
      lost.delete(key);
    }
    return new LayeredMap(below, both, lost);
  }

  get(key: K): V | undefined {
    if (this.over.has(key)) return this.over.get(key);
    return this.gone.has(key) ? undefined : this.below.get(key);
  }

  has(key: K): boolean {
    return this.over.has(key) || (!this.gone.has(key) && this.below.has(key));
  }

  *entries(): MapIterator<[K, V]> {
    for (const entry of this.below) {
      const [key] = entry;
      if (this.gone.has(key)) continue;
      const over = this.over.get(key);
      if (over === undefined) yield entry;
      else yield [key, over];
    }
    for (const entry of this.over) if (!this.below.has(entry[0])) yield entry;
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
