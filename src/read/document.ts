/**
 * YAML text -> plain values, each key and item with its position.
 *
 * The reader takes the part of YAML 1.2 that declarations need and refuses the rest by name: aliases (a short
 * file can stand for a huge one), tags (they change what a value is), duplicate keys (the last would silently
 * win), keys that are no text, several documents in one file, and nesting beyond `deepest`.
 */
import {
  Composer,
  type CST,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  Lexer,
  Parser,
  type Scalar,
  type Document as YamlDocument,
} from 'yaml';
import { byPlace, err, type Outcome, ok, type Place, type Problem } from '../base/problem.ts';

/** How deep values may nest. The deepest format is five levels; a custom rule's schema needs a few more. */
export const deepest = 32;

/** How deep the syntax may nest before it is composed: a level of values takes two of syntax at the most. */
const deepestSyntax = 2 * deepest + 16;

/** What a file holds once read. Objects have no prototype, so that `__proto__` is a key like any other. */
export type PlainValue =
  | string
  | number
  | boolean
  | null
  | readonly PlainValue[]
  | { readonly [key: string]: PlainValue };

export type Step = string | number;

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
  /** Where each key of an object, or each item of a list, stands. */
  placesIn(container: object): Places;
  /** The source line a place is on. */
  excerpt(place: Place): string;
}

/** How many lines on it is quicker to step than to search. */
const nearby = 8;

/** Line and column of offsets into one text; quickest when asked in rising order. */
class LineIndex {
  readonly #text: string;
  readonly #file: string;
  readonly #starts: number[] = [0];
  #last = 0;

  constructor(text: string, file: string) {
    this.#text = text;
    this.#file = file;
    for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) this.#starts.push(at + 1);
  }

  place(offset: number): Place {
    // Places are asked for in rising order, a few on each line: most are on the line last found, or the next.
    const starts = this.#starts;
    let line = (starts[this.#last] ?? 0) <= offset ? this.#last : this.#search(offset);
    while ((starts[line + 1] ?? Number.POSITIVE_INFINITY) <= offset) {
      line = line + 1 - this.#last > nearby ? this.#search(offset) : line + 1;
    }
    this.#last = line;
    return { file: this.#file, line: line + 1, column: offset - (starts[line] ?? 0) + 1 };
  }

  #search(offset: number): number {
    let low = 0;
    let high = this.#starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.#starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  line(number: number): string {
    const start = this.#starts[number - 1];
    if (start === undefined) return '';
    const next = this.#starts[number];
    return this.#text.slice(start, next === undefined ? undefined : next - 1).replace(/\r$/, '');
  }
}

/** Where each key of a mapping, or each item of a list, stands. */
export type Places = { readonly [step: Step]: Place };

/**
 * An object that inherits nothing, so that `__proto__` and `constructor` are keys like any other. The engine keeps it as
 * quick as a literal, which it does not with what `Object.create(null)` makes.
 */
class Bare<T> {
  [key: string]: T;
}
Object.setPrototypeOf(Bare.prototype, null);
Reflect.deleteProperty(Bare.prototype, 'constructor');

/** Walks the YAML tree once: plain values, the place of every key, and what is refused. */
class PlainWalk {
  readonly problems: Problem[] = [];
  readonly places = new Map<object, Places>();
  readonly #lines: LineIndex;

  constructor(lines: LineIndex) {
    this.#lines = lines;
  }

  refuse(offset: number, message: string, advice: string): null {
    const place = this.#lines.place(offset);
    this.problems.push({ place, message, advice, excerpt: this.#lines.line(place.line) });
    return null;
  }

  value(node: unknown, depth: number, offset: number): PlainValue {
    if (node === null || node === undefined) return null;
    if (depth > deepest) return this.refuse(offset, tooDeep, flatten);
    if (isScalar(node)) return this.#scalar(node, offset);
    if (isAlias(node)) {
      return this.refuse(
        node.range?.[0] ?? offset,
        `the alias *${node.source} is not read`,
        'Write the value out in full.',
      );
    }
    if (isMap(node)) {
      if (this.#refusesTag(node.tag, node.range?.[0] ?? offset, 'tag:yaml.org,2002:map')) return null;
      const object = new Bare<PlainValue>();
      const places = new Bare<Place>();
      for (const pair of node.items) {
        const at = isScalar(pair.key) ? (pair.key.range?.[0] ?? offset) : (node.range?.[0] ?? offset);
        const key = this.#key(pair.key, at);
        if (key === undefined) continue;
        if (key in object) {
          this.refuse(
            at,
            `the key ${key} stands twice in one place (first on line ${places[key]?.line})`,
            'Keep one of the two.',
          );
          continue;
        }
        places[key] = this.#lines.place(at);
        object[key] = this.value(pair.value, depth + 1, at);
      }
      this.places.set(object, places);
      return object;
    }
    if (isSeq(node)) {
      if (this.#refusesTag(node.tag, node.range?.[0] ?? offset, 'tag:yaml.org,2002:seq')) return null;
      const places: Record<number, Place> = {};
      const list = node.items.map((item, index) => {
        const at = rangeStart(item) ?? offset;
        places[index] = this.#lines.place(at);
        return this.value(item, depth + 1, at);
      });
      this.places.set(list, places);
      return list;
    }
    return this.refuse(
      offset,
      'this is no value that can be read',
      'Write text, a number, a list or a mapping.',
    );
  }

  #scalar(node: Scalar, offset: number): PlainValue {
    if (this.#refusesTag(node.tag, node.range?.[0] ?? offset, undefined)) return null;
    const value = node.value;
    if (typeof value === 'string' || typeof value === 'boolean' || value === null) return value;
    // An infinity or a not-a-number has no place in JSON Schema, so it is left as the text it was written as.
    if (typeof value === 'number') return Number.isFinite(value) ? value : (node.source ?? String(value));
    return this.refuse(
      node.range?.[0] ?? offset,
      'this is no value that can be read',
      'Write text, a number, true or false.',
    );
  }

  /** A key as it is written: `1e3` and `yes` are names, not a number and a truth. */
  #key(key: unknown, offset: number): string | undefined {
    if (isScalar(key)) {
      this.#refusesTag(key.tag, offset, undefined);
      return key.source ?? String(key.value);
    }
    if (typeof key === 'string') return key;
    this.refuse(offset, 'a key here is not text', 'Write each key as plain text followed by a colon.');
    return undefined;
  }

  #refusesTag(tag: string | undefined, offset: number, usual: string | undefined): boolean {
    if (tag === undefined || tag === usual) return false;
    this.refuse(offset, `the tag ${tag} is not read`, leaveTagOut);
    return true;
  }
}

const rangeStart = (node: unknown): number | undefined =>
  isScalar(node) || isMap(node) || isSeq(node) || isAlias(node) ? node.range?.[0] : undefined;

/**
 * Reads one YAML text.
 *
 * @param text the decoded file, without a byte-order mark
 * @param file the path that places name
 */
export function readDocument(text: string, file: string): Outcome<ReadDocument> {
  const lines = new LineIndex(text, file);
  const problemAt = (offset: number, message: string, advice: string): Problem => {
    const place = lines.place(Math.min(offset, Math.max(0, text.length - 1)));
    return { place, message, advice, excerpt: lines.line(place.line) };
  };
  let documents: readonly YamlDocument.Parsed[];
  try {
    documents = composed(text);
  } catch (error) {
    if (error instanceof Refusal) return err(problemAt(error.offset, error.message, error.advice));
    return err(
      error instanceof RangeError
        ? problemAt(0, tooDeep, flatten)
        : problemAt(0, 'the file cannot be read as YAML', 'Check the file with a YAML linter.'),
    );
  }
  const [yaml, second] = documents;
  const errors = [...(yaml?.errors ?? []), ...(yaml?.warnings ?? [])];
  const broken = errors.filter(({ code }) => code !== 'TAG_RESOLVE_FAILED');
  const marker = broken.length === 0 ? null : conflictMarker.exec(text);
  if (marker !== null) {
    const { line } = lines.place(marker.index);
    return err(problemAt(marker.index, `line ${line} is a merge conflict marker`, settleConflict));
  }
  const problems = [
    ...brokenPlaces(broken, problemAt),
    ...errors
      .filter(({ code }) => code === 'TAG_RESOLVE_FAILED')
      .map(({ pos }) => problemAt(pos[0], `the tag ${text.slice(...pos)} is not read`, leaveTagOut)),
  ].sort(byPlace);
  if (second !== undefined) {
    problems.push(
      problemAt(
        second.range[0],
        'a second document begins here, and a file holds one',
        'Move it to a file of its own, and leave out the lines --- and ... between them.',
      ),
    );
  }
  if (problems.length > 0 || yaml === undefined) return err(...problems);
  const walk = new PlainWalk(lines);
  const value = walk.value(yaml.contents, 0, 0);
  if (walk.problems.length > 0) return err(...walk.problems);
  return ok(located(file, value, walk.places, lines, yaml));
}

/** A line that git writes around the two sides of a conflict. */
const conflictMarker = /^(?:<{7}|={7}|>{7})(?=[ \r\n]|$)/m;

const settleConflict =
  'Settle the conflict: keep what is meant of both sides, and take the lines <<<<<<<, ======= and >>>>>>> out.';

/** The most places that are named in one file whose YAML is broken; what follows is most often their consequence. */
const brokenAtMost = 3;

/** The first thing that is wrong in each line, at the first few lines; the rest is counted. */
function brokenPlaces(
  errors: YamlDocument.Parsed['errors'],
  problemAt: (offset: number, message: string, advice: string) => Problem,
): readonly Problem[] {
  // Where a tab indents, whatever else is wrong comes of it.
  const tabs = errors.filter(({ code }) => code === 'TAB_AS_INDENT');
  const inOrder = (tabs.length > 0 ? tabs : errors)
    .toSorted((a, b) => a.pos[0] - b.pos[0])
    .map(({ pos, message }) =>
      problemAt(
        pos[0],
        `the YAML is broken here: ${message.replace(/\s+/g, ' ')}`,
        'Put the YAML right; indentation, quotes and colons are the usual causes.',
      ),
    );
  const firsts = inOrder.filter(({ place }, index) => place?.line !== inOrder[index - 1]?.place?.line);
  const more = firsts.length - brokenAtMost;
  return firsts.slice(0, brokenAtMost).map((problem, index) =>
    more > 0 && index === brokenAtMost - 1
      ? {
          ...problem,
          advice: `${problem.advice} ${more} more ${more === 1 ? 'line' : 'lines'} below may be broken only because of these.`,
        }
      : problem,
  );
}

const tooDeep = `values nest more than ${deepest} levels deep`;
const flatten = 'Flatten the file; no format needs so many levels.';
const leaveTagOut = 'Leave the tag out; text in quotes is always text.';

/** What is refused before the text is composed. */
class Refusal extends Error {
  readonly offset: number;
  readonly advice: string;

  constructor(offset: number, message: string, advice: string) {
    super(message);
    this.offset = offset;
    this.advice = advice;
  }
}

/**
 * The first two documents of a text, as the library's `parseDocument` makes them. The composer recurses, and deep
 * enough it takes the whole process down with it, so the depth is looked at while the syntax is read.
 */
function composed(text: string): readonly YamlDocument.Parsed[] {
  // The library's own check for duplicate keys compares every key of a map with every other; the walk over the
  // values finds the same duplicates with one look-up a key.
  const composer = new Composer({ version: '1.2', schema: 'core', uniqueKeys: false, prettyErrors: false });
  const documents: YamlDocument.Parsed[] = [];
  for (const document of composer.compose(shallowTokens(text), true, text.length)) {
    documents.push(document);
    if (documents.length === 2) break;
  }
  return documents;
}

function* shallowTokens(text: string): Generator<CST.Token> {
  const parser = new Parser();
  let versions = 0;
  for (const lexeme of new Lexer().lex(text)) {
    for (const token of parser.next(lexeme)) {
      // The library lets a second one pass, and the last would silently win.
      if (token.type === 'directive' && token.source.startsWith('%YAML') && ++versions === 2)
        throw new Refusal(token.offset, 'the YAML version is given twice', 'Leave the %YAML lines out.');
      yield token;
    }
    if (parser.stack.length > deepestSyntax) throw new Refusal(parser.offset, tooDeep, flatten);
  }
  yield* parser.end();
}

function located(
  file: string,
  value: PlainValue,
  places: ReadonlyMap<object, Places>,
  lines: LineIndex,
  yaml: YamlDocument.Parsed,
): ReadDocument {
  const top: Place = { file, line: 1, column: 1 };
  const placeOfKey = (path: readonly Step[]): Place => {
    let at = top;
    let here: PlainValue = value;
    for (const step of path) {
      if (typeof here !== 'object' || here === null) break;
      const next: Place | undefined = places.get(here)?.[step];
      if (next === undefined) break;
      at = next;
      here = Array.isArray(here)
        ? here[Number(step)]
        : (here as { readonly [key: string]: PlainValue })[step];
    }
    return at;
  };
  return {
    file,
    value,
    placeOfKey,
    placeOfValue: (path) => {
      const offset = offsetOfValue(yaml, path);
      return offset === undefined ? placeOfKey(path) : lines.place(offset);
    },
    placeIn: (container, step) => places.get(container)?.[step] ?? top,
    placesIn: (container) => places.get(container) ?? {},
    excerpt: (place) => lines.line(place.line),
  };
}

/** Only asked for when something is wrong, so it walks the tree from the top. */
function offsetOfValue(yaml: YamlDocument.Parsed, path: readonly Step[]): number | undefined {
  let node: unknown = yaml.contents;
  for (const step of path) {
    if (isMap(node)) {
      const pair = node.items.find(
        ({ key }) => isScalar(key) && (key.source ?? String(key.value)) === String(step),
      );
      node = pair?.value;
    } else if (isSeq(node)) node = node.items[Number(step)];
    else return undefined;
  }
  return rangeStart(node);
}
