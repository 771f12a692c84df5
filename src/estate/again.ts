/**
 * A file read again by what differs. Most of a large file is, line for line, what it was: of that only as much is read
 * as shows that the rest still stands where it stood, and the rest is what was read before, the very same objects. A
 * text that is not plain, or has anything wrong in it, is left to be read whole.
 */
import type { Place } from '../base/problem.ts';
import { readLines } from '../read/document.ts';
import type { EstatePart } from './estate.ts';
import { readEstatePart } from './part.ts';

/** A text and what it declares, with nothing wrong in it. */
export interface ReadBefore {
  readonly text: string;
  readonly part: EstatePart;
}

/** What stands in a section: a declaration by its name, or an item of a list, which has no kind. */
interface Entry {
  readonly place: Place;
  readonly kind?: string;
  readonly name?: string;
}

/** What the text declares; undefined where it has to be read whole. */
export function readAgain({ text: earlier, part: before }: ReadBefore, text: string): EstatePart | undefined {
  const lines = text.split('\n');
  const common = commonLines(earlier.split('\n'), lines);
  const begins = sectionsOf(before)
    .flatMap((entries) => entries.map(({ place }) => place.line))
    .sort((a, b) => a - b);
  const shared = new Shared(common, begins);
  const leftOut = new Set<number>();
  for (const entries of sectionsOf(before))
    for (const [from, to] of shared.spared(entries, lines))
      for (let line = from; line < to; line++) leftOut.add(line);
  // Where most is to be read again, all of it is, once.
  if (leftOut.size * 4 < lines.length) return undefined;
  const kept = lines.flatMap((_line, index) => (leftOut.has(index + 1) ? [] : [index + 1]));
  const document = readLines(lines, kept, before.file);
  const read = document === undefined ? undefined : readEstatePart(document);
  if (read?.ok !== true || !sameDefaults(before, read.value)) return undefined;
  const now = read.value;
  const joined = <T extends Entry>(was: readonly T[], is: readonly T[]): readonly T[] | undefined =>
    together(was, is, ({ place }) => (leftOut.has(place.line) ? 'left out' : shared.standing(place)));
  const servers = joined(before.servers, now.servers);
  const volumes = joined(before.volumes, now.volumes);
  const attachments = joined(before.attachments, now.attachments);
  const groups = joined(before.groups, now.groups);
  const retired = joined(before.retired, now.retired);
  return servers && volumes && attachments && groups && retired
    ? { ...now, servers, volumes, attachments, groups, retired }
    : undefined;
}

const sectionsOf = (part: EstatePart): readonly (readonly Entry[])[] => [
  part.servers,
  part.volumes,
  part.attachments,
  part.groups,
  part.retired,
];

/** Everything takes what it does not say from its file. */
const sameDefaults = ({ defaults: a }: EstatePart, { defaults: b }: EstatePart): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

/** Which lines of two texts are the same, where they stand at the same number. */
interface Common {
  /** The first that is not, from the beginning on. */
  readonly until: number;
  /** The first from which on all are. */
  readonly from: number;
}

function commonLines(was: readonly string[], now: readonly string[]): Common {
  const least = Math.min(was.length, now.length);
  let until = 0;
  while (until < least && was[until] === now[until]) until++;
  let from = now.length;
  // With a line more or less before it, nothing stands where it stood.
  if (was.length === now.length) while (from > until && was[from - 1] === now[from - 1]) from--;
  return { until: until + 1, from: from + 1 };
}

type Standing = 'left out' | 'shared' | 'differs';

/** Which entries of the earlier text are, with all their lines, in lines that are the same. */
class Shared {
  readonly #common: Common;
  readonly #next = new Map<number, number>();

  /** @param begins the lines on which entries begin, in their order */
  constructor(common: Common, begins: readonly number[]) {
    this.#common = common;
    for (const [index, line] of begins.entries()) this.#next.set(line, begins[index + 1] ?? Infinity);
  }

  /** An entry has ended where the next begins, in whatever section. */
  standing({ line }: Place): Standing {
    const { until, from } = this.#common;
    return line >= from || (this.#next.get(line) ?? Infinity) < until ? 'shared' : 'differs';
  }

  /**
   * The lines of entries that need not be read: each from where it begins up to the next of its section. Both begin a
   * line, as all its entries do, so that without them the section reads on. The first of a section is read, since
   * nothing may be empty, and so is the last, and the first behind what differs: it shows where its like stand.
   */
  *spared(entries: readonly Entry[], lines: readonly string[]): Iterable<readonly [number, number]> {
    if (!isInOrder(entries)) return;
    for (let index = 1; index < entries.length - 1; index++) {
      const [above, entry, below] = [entries[index - 1], entries[index], entries[index + 1]];
      if (above === undefined || entry === undefined || below === undefined) return;
      const isPlain = beginsLine(entry, lines) && beginsLine(below, lines);
      if (!isPlain || this.standing(entry.place) !== 'shared') continue;
      const isBehind = entry.place.line >= this.#common.from;
      if (isBehind ? above.place.line >= this.#common.from : below.place.line < this.#common.until)
        yield [entry.place.line, below.place.line];
    }
  }
}

/** The engine puts keys that are numbers before others; a section on one line has nothing that could be left out. */
const isInOrder = (entries: readonly Entry[]): boolean =>
  entries.every(({ place }, index) => index === 0 || (entries[index - 1]?.place.line ?? 0) < place.line);

function beginsLine({ place, kind }: Entry, lines: readonly string[]): boolean {
  const indent = lines[place.line - 1]?.slice(0, place.column - 1);
  return indent !== undefined && (kind === undefined ? /^ *- +$/ : /^ +$/).test(indent);
}

/**
 * One section as it is now: what was left out is what it was, and so is what is shared where it was read again, on the
 * same line. Undefined where something is not there any more, or is there twice.
 */
function together<T extends Entry>(
  was: readonly T[],
  is: readonly T[],
  standing: (entry: T) => Standing,
): readonly T[] | undefined {
  if (!isInOrder(is)) return undefined;
  const all: T[] = [];
  const fresh = new Set<string>();
  const old: T[] = [];
  let next = 0;
  const takeUpTo = (line: number): void => {
    for (let each = is[next]; each !== undefined && each.place.line < line; each = is[++next]) {
      all.push(each);
      if (each.kind !== undefined) fresh.add(each.name ?? '');
    }
  };
  for (const entry of was) {
    const stands = standing(entry);
    if (stands === 'differs') continue;
    takeUpTo(entry.place.line);
    if (stands === 'shared' && !isSame(is[next++], entry)) return undefined;
    all.push(entry);
    old.push(entry);
  }
  takeUpTo(Infinity);
  return old.some(({ kind, name = '' }) => kind !== undefined && fresh.has(name)) ? undefined : all;
}

const isSame = (a: Entry | undefined, b: Entry): boolean =>
  a !== undefined && a.name === b.name && a.place.line === b.place.line && a.place.column === b.place.column;
