/** Words for a value in a message, and the nearest known word for an unknown one. */
import { closest, distance } from 'fastest-levenshtein';

/** A value as it may be shown in a message: short, on one line. */
export function quoted(value: unknown): string {
  if (value === null || value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a mapping';
  const text = String(value).replace(/\s+/gu, ' ');
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/** The known word that was most likely meant; of several as near, the first. Undefined where none is near. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (known.length === 0) return undefined;
  const short = word.slice(0, 80);
  const nearest = closest(short, [...known]);
  // Two letters that changed places, the commonest slip, count as two.
  const near = Math.max(nearest.length > 3 ? 2 : 1, Math.floor(nearest.length / 3));
  return distance(short, nearest) <= near ? nearest : undefined;
}

/** The known words that are nearest, the nearest first. */
export function nearestWords(word: string, known: readonly string[], count: number): readonly string[] {
  const short = word.slice(0, 80);
  const far = new Map(known.map((each) => [each, distance(short, each)]));
  return [...known].sort((a, b) => (far.get(a) ?? 0) - (far.get(b) ?? 0)).slice(0, count);
}

/** `Did you mean size? `, or nothing where no known word is near. */
export function offer(word: string, known: readonly string[]): string {
  const nearest = nearestWord(word, known);
  return nearest === undefined ? '' : `Did you mean ${nearest}? `;
}
