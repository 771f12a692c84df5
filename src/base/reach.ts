/** All that is reached by one link after another, without where it began unless a circle leads back there. */
export function reach(linksOf: (key: string) => Iterable<string>, from: string): ReadonlySet<string> {
  const found = new Set<string>();
  const open = [...linksOf(from)];
  for (let key = open.pop(); key !== undefined; key = open.pop()) {
    if (found.has(key)) continue;
    found.add(key);
    open.push(...linksOf(key));
  }
  return found;
}
