/**
 * YAML text -> plain values, each key and item with its position.
 *
 * The part of YAML 1.2 that declarations need is read, and the rest is refused by name: aliases (a short file can
 * stand for a huge one), tags (they change what a value is), duplicate keys (the last would silently win), keys that
 * are no text, several documents in one file, and nesting beyond `deepest`.
 *
 * Two readers do it. The quick one knows the plain style that estates are written in, and says nothing of any other
 * text; the exact one then decides, and words what is wrong. `test/read/readers.test.ts` holds the two together.
 */
import { type Outcome, ok, type Place } from '../base/problem.ts';
import { readExactly } from './exact.ts';
import { Lines } from './lines.ts';
import { readQuickly } from './quick.ts';
import type { Construction, Offsets, PlainValue, Step } from './value.ts';

export { deepest, type PlainValue, type Step } from './value.ts';

/** One file, read: its value, and where each part of it stands. */
export interface ReadDocument {
  readonly file: string;
  readonly value: PlainValue;
  /** Where the key (or the item) at the end of the path stands; the nearest part above it that exists otherwise. */
  placeOfKey(path: readonly Step[]): Place;
  /** Where the value at the end of the path stands. */
  placeOfValue(path: readonly Step[]): Place;
  /** Where a key of an object, or an item of a list, stands; the object is one that `value` holds. */
  placeIn(container: object, step: Step): Place;
  /** Where the keys of an object, or the items of a list, stand. */
  fieldsIn(container: object): FieldPlaces;
  /** The source line a place is on. */
  excerpt(place: Place): string;
}

/** Where the fields of one declaration stand; a place is worked out when it is asked for. */
export class FieldPlaces {
  readonly #offsets: Offsets | undefined;
  readonly #lines: Lines | undefined;

  /** @internal */
  constructor(offsets?: Offsets, lines?: Lines) {
    this.#offsets = offsets;
    this.#lines = lines;
  }

  /** Undefined where the declaration does not have that field. */
  of(field: string): Place | undefined {
    const offset = this.#offsets?.[field];
    return offset === undefined ? undefined : this.#lines?.place(offset);
  }
}

/**
 * Reads one YAML text.
 *
 * @param text the decoded file, without a byte-order mark
 * @param file the path that places name
 */
export function readDocument(text: string, file: string): Outcome<ReadDocument> {
  const lines = new Lines(text, file);
  const quick = readQuickly(text);
  if (quick !== undefined) return ok(located(quick, lines));
  const exact = readExactly(text, lines);
  return exact.ok ? ok(located(exact.value, lines)) : exact;
}

/**
 * Reads some lines of a text as a document of their own, in which everything is where it is in the whole text.
 *
 * @param numbers of the lines that are read, in their order
 * @returns undefined where only the exact reader could tell what they say
 */
export function readLines(
  lines: readonly string[],
  numbers: readonly number[],
  file: string,
): ReadDocument | undefined {
  const text = numbers.map((number) => lines[number - 1] ?? '').join('\n');
  const quick = readQuickly(text);
  return quick === undefined ? undefined : located(quick, new Lines(text, file, numbers));
}

function located({ value, offsets, offsetOfValue }: Construction, lines: Lines): ReadDocument {
  const top: Place = { file: lines.file, line: 1, column: 1 };
  const placeOfKey = (path: readonly Step[]): Place => {
    let at: number | undefined;
    let here: PlainValue | undefined = value;
    for (const step of path) {
      if (typeof here !== 'object' || here === null) break;
      const next: number | undefined = offsets.get(here)?.[step];
      if (next === undefined) break;
      at = next;
      here = Reflect.get(here, step);
    }
    return at === undefined ? top : lines.place(at);
  };
  return {
    file: lines.file,
    value,
    placeOfKey,
    placeOfValue: (path) => {
      const offset = offsetOfValue(path);
      return offset === undefined ? placeOfKey(path) : lines.place(offset);
    },
    placeIn: (container, step) => {
      const offset = offsets.get(container)?.[step];
      return offset === undefined ? top : lines.place(offset);
    },
    fieldsIn: (container) => new FieldPlaces(offsets.get(container), lines),
    excerpt: (place) => lines.line(place.line),
  };
}
