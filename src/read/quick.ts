/**
 * The quick reader: the plain style that estates are written in, from the parser's events straight to values. It reads
 * a text only where nothing about it is in doubt; of any other text it says nothing, and the exact reader decides.
 */
import {
  COLLECTION_STYLE,
  EVENT_ID,
  type Event,
  getScalarValue,
  type MappingEvent,
  parseEvents,
  SCALAR_STYLE,
  type ScalarEvent,
  type SequenceEvent,
} from 'js-yaml';
import { isScalar, type ScalarTag, Schema } from 'yaml';
import type { Outcome } from '../base/problem.ts';
import { readExactly } from './exact.ts';
import { Lines } from './lines.ts';
import { Bare, type Construction, deepest, type Offsets, type PlainValue } from './value.ts';

/** The text's value and where its parts begin; undefined where the exact reader is to decide. */
export function readQuickly(text: string): Construction | undefined {
  if (beyondPlain.test(text)) return undefined;
  try {
    return new EventWalk(text, parseEvents(text, { maxDepth: deepestParse })).construct();
  } catch {
    return undefined;
  }
}

/**
 * What takes a text out of the plain style before it is parsed: a character other than printable ones on lines that
 * end in a line feed, and what could begin an anchor, an alias, a tag or a directive.
 */
const beyondPlain =
  /[^\n\x20-\x7e\u00a1-\u2027\u202a-\ud7ff\ue000-\ufefe\uff00-\ufffd]|(?:^|[\s,[{:?-])[&*!]|^%|^\.\.\./m;

/** A line that opens the document is alone on its line, after comments at the most. */
const plainStart = /^(?:(?:#.*)?\n)*---\n/;

/** Thrown where a text leaves the plain style. */
class BeyondPlain extends Error {}

/** A key, and brackets that might have been one, are a level of their own for the parser. */
const deepestParse = deepest + 4;

/** Longer keys are refused by the exact reader; from half of that on they are left to it. */
const longestKey = 512;

/** Walks the events of one document once. */
class EventWalk {
  readonly #text: string;
  readonly #events: readonly Event[];
  readonly #offsets = new Map<object, Offsets>();
  readonly #schema = new Schema({ schema: 'core', resolveKnownTags: true });
  #next = 0;
  #inFlow = false;
  /** Where the last scalar ends, or the last collection begins, and how many collections closed since. */
  #end = 0;
  #closed = 0;

  constructor(text: string, events: readonly Event[]) {
    this.#text = text;
    this.#events = events;
  }

  construct(): Construction {
    const document = this.#take();
    if (document.type !== EVENT_ID.DOCUMENT || document.explicitEnd || document.directives.length > 0)
      throw new BeyondPlain();
    if (document.explicitStart && !plainStart.test(this.#text)) throw new BeyondPlain();
    const value = this.#node(this.#take(), 0);
    this.#close();
    if (this.#next < this.#events.length) throw new BeyondPlain();
    const text = this.#text;
    // Asked for only where a value is wrong, and then the exact reader reads the text once.
    let exact: Outcome<Construction> | undefined;
    return {
      value,
      offsets: this.#offsets,
      offsetOfValue: (path) => {
        exact ??= readExactly(text, new Lines(text, ''));
        return exact.ok ? exact.value.offsetOfValue(path) : undefined;
      },
    };
  }

  #take(): Event {
    const event = this.#events[this.#next++];
    if (event === undefined) throw new BeyondPlain();
    return event;
  }

  #close(): void {
    if (this.#take().type !== EVENT_ID.POP) throw new BeyondPlain();
  }

  #node(event: Event, depth: number): PlainValue {
    if (depth > deepest) throw new BeyondPlain();
    switch (event.type) {
      case EVENT_ID.SCALAR:
        return this.#scalar(event);
      case EVENT_ID.MAPPING:
      case EVENT_ID.SEQUENCE:
        return event.style === COLLECTION_STYLE.FLOW && !this.#inFlow
          ? this.#flow(event, depth)
          : this.#collection(event, depth);
      case EVENT_ID.DOCUMENT:
      case EVENT_ID.ALIAS:
      case EVENT_ID.POP:
        throw new BeyondPlain();
    }
  }

  /** A collection in brackets is read where it begins and ends on one line; the two libraries differ on others. */
  #flow(event: SequenceEvent | MappingEvent, depth: number): PlainValue {
    this.#inFlow = true;
    const value = this.#collection(event, depth);
    this.#inFlow = false;
    const lineEnd = this.#text.indexOf('\n', event.start);
    // The events do not say where a bracket closes: it is looked for behind the last thing in the brackets.
    let open = this.#closed;
    let at = this.#end;
    for (; open > 0 && at !== lineEnd; at++) {
      const character = this.#text[at];
      if (character === ']' || character === '}') open--;
      else if (character === undefined || character === '#') break;
    }
    if (open > 0 || (lineEnd !== -1 && this.#end > lineEnd)) throw new BeyondPlain();
    this.#endLine(at);
    return value;
  }

  #collection(event: SequenceEvent | MappingEvent, depth: number): PlainValue {
    this.#end = event.start + 1;
    this.#closed = 0;
    const value = event.type === EVENT_ID.MAPPING ? this.#mapping(depth) : this.#sequence(depth);
    this.#closed++;
    return value;
  }

  #mapping(depth: number): PlainValue {
    const object = new Bare<PlainValue>();
    const offsets = new Bare<number>();
    for (let event = this.#take(); event.type !== EVENT_ID.POP; event = this.#take()) {
      if (event.type !== EVENT_ID.SCALAR) throw new BeyondPlain();
      const key = this.#written(event);
      if (key === '' || key.length > longestKey || key in offsets) throw new BeyondPlain();
      this.#colon(event);
      offsets[key] = startOf(event);
      object[key] = this.#node(this.#take(), depth + 1);
    }
    this.#offsets.set(object, offsets);
    return object;
  }

  /** A key has its colon next to it. */
  #colon({ valueEnd, style }: ScalarEvent): void {
    const end = style === SCALAR_STYLE.PLAIN ? valueEnd : valueEnd + 1;
    if (this.#text[end] !== ':') throw new BeyondPlain();
  }

  #sequence(depth: number): PlainValue {
    const list: PlainValue[] = [];
    const offsets = new Bare<number>();
    for (let event = this.#take(); event.type !== EVENT_ID.POP; event = this.#take()) {
      offsets[list.length] = startOf(event);
      list.push(this.#node(event, depth + 1));
    }
    this.#offsets.set(list, offsets);
    return list;
  }

  #scalar(event: ScalarEvent): PlainValue {
    if (event.valueStart === -1) return null;
    const text = this.#written(event);
    if (event.style === SCALAR_STYLE.PLAIN) return mayBeNoText.test(text) ? this.#resolve(text) : text;
    if (!this.#inFlow) this.#endLine(event.valueEnd + 1);
    return text;
  }

  /** Behind what ends with a mark of its own there is nothing on its line but a comment; the parser lets more pass. */
  #endLine(from: number): void {
    let at = from;
    while (this.#text[at] === ' ') at++;
    const next = this.#text[at];
    if (next !== undefined && next !== '\n' && !(next === '#' && at > from)) throw new BeyondPlain();
  }

  /** A scalar that is the very text between its offsets, on one line and without escapes. */
  #written(event: ScalarEvent): string {
    if (!event.fast) throw new BeyondPlain();
    this.#end = event.valueEnd;
    this.#closed = 0;
    return getScalarValue(this.#text, event);
  }

  /** By the tags of the exact reader's own schema, so that the two cannot take one scalar for different things. */
  #resolve(text: string): PlainValue {
    const tag = this.#schema.tags.find(
      (each) => isScalarTag(each) && each.default === true && each.test?.test(text),
    );
    if (tag === undefined || !isScalarTag(tag)) return text;
    const resolved = tag.resolve(text, refuse, {});
    const value = isScalar(resolved) ? resolved.value : resolved;
    if (typeof value === 'boolean' || value === null) return value;
    if (typeof value === 'number') return Number.isFinite(value) ? value : text;
    throw new BeyondPlain();
  }
}

const isScalarTag = (tag: Schema['tags'][number]): tag is ScalarTag => tag.collection === undefined;

const refuse = (): never => {
  throw new BeyondPlain();
};

/** Plain text that the core schema may take for something else: a number, a truth or nothing. */
const mayBeNoText = /^(?:[-+.0-9][-+.0-9A-Za-z]*|~|[nNtT][A-Za-z]{3}|[fF][A-Za-z]{4})$/;

/** Where a node begins in the exact reader's eyes: at its first character, a quotation mark included. */
function startOf(event: Event): number {
  switch (event.type) {
    case EVENT_ID.MAPPING:
    case EVENT_ID.SEQUENCE:
      return event.start;
    case EVENT_ID.SCALAR:
      if (event.valueStart === -1) throw new BeyondPlain();
      switch (event.style) {
        case SCALAR_STYLE.PLAIN:
          return event.valueStart;
        case SCALAR_STYLE.SINGLE_QUOTED:
        case SCALAR_STYLE.DOUBLE_QUOTED:
          return event.valueStart - 1;
        case SCALAR_STYLE.LITERAL_BLOCK:
        case SCALAR_STYLE.FOLDED_BLOCK:
          throw new BeyondPlain();
      }
      break;
    case EVENT_ID.DOCUMENT:
    case EVENT_ID.ALIAS:
    case EVENT_ID.POP:
      throw new BeyondPlain();
  }
}
