/**
 * A document that its schema refuses, with something valid in the place of what is wrong: good for nothing but finding
 * what else is wrong in the same run. Whatever was put in or taken out is marked, and nothing is said of it again.
 */
import { pointerOf, stepsOfPointer } from '../base/pointer.ts';
import type { ReadDocument } from './document.ts';
import type { SchemaError } from './format.ts';
import { choicesOf, isRecord, parameterOf } from './schema-error.ts';
import { Bare, type PlainValue, type Step } from './value.ts';

/** What of a document was put in by mending it. Nothing, where it is as it was read. */
export class Mends {
  readonly #pointers: ReadonlySet<string>;

  constructor(pointers: ReadonlySet<string> = new Set()) {
    this.#pointers = pointers;
  }

  /** Whether the value at the path was put in or taken out. */
  at(path: readonly Step[], ...further: readonly Step[]): boolean {
    return this.#pointers.size > 0 && this.#pointers.has(pointerOf([...path, ...further]));
  }

  /** Whether the value at the path, or anything in it, was put in or taken out. */
  in(path: readonly Step[]): boolean {
    if (this.#pointers.size === 0) return false;
    const above = pointerOf(path);
    return [...this.#pointers].some((each) => each === above || each.startsWith(`${above}/`));
  }
}

export interface Mended {
  readonly document: ReadDocument;
  readonly mends: Mends;
}

/** Each round mends what the one before brought to light: a mapping first, then its keys, then what they hold. */
const mostRounds = 8;

/**
 * Mends a document until its schema takes it; undefined where that leads nowhere.
 *
 * @param check the errors of a value, none where it is valid
 */
export function mended(
  document: ReadDocument,
  check: (value: PlainValue) => readonly SchemaError[],
): Mended | undefined {
  const mending = new Mending(document);
  for (let round = 0; round < mostRounds; round++) {
    const errors = check(mending.value);
    if (errors.length === 0) return mending.finish();
    if (!mending.mend(errors)) return undefined;
  }
  return undefined;
}

/** Holds the value between two rounds, and which of its mappings and lists stand for which of the document's. */
class Mending {
  value: PlainValue;
  readonly #document: ReadDocument;
  readonly #marks = new Set<string>();
  readonly #origins = new Map<object, object>();

  constructor(document: ReadDocument) {
    this.#document = document;
    this.value = document.value;
  }

  /** Whether anything could be done. */
  mend(errors: readonly SchemaError[]): boolean {
    const before = this.value;
    // The error about a value's kind says what to put there; what is said of its inside is then of no more account.
    const done = new Set<string>();
    for (const error of errors) {
      if (error.propertyName !== undefined && error.keyword !== 'propertyNames') continue;
      const key = `${error.instancePath} ${isOfKey(error) ? parameterOf(error) : ''}`;
      if (done.has(key)) continue;
      done.add(key);
      this.#mendOne(error);
    }
    return this.value !== before;
  }

  #mendOne(error: SchemaError): void {
    const path = stepsOfPointer(error.instancePath);
    const schema = error.parentSchema ?? {};
    switch (error.keyword) {
      case 'additionalProperties':
      case 'unevaluatedProperties':
      case 'propertyNames':
        this.#put([...path, parameterOf(error)], undefined);
        break;
      case 'required':
        // What kind of value is wanted there is what the next round is told.
        this.#put([...path, parameterOf(error)], null);
        break;
      case 'minItems':
        if (Array.isArray(error.data)) this.#put([...path, error.data.length], null);
        break;
      case 'oneOf': {
        const choices = choicesOf(schema);
        const [first, ...others] = choices.filter((key) => isRecord(error.data) && key in error.data);
        if (first === undefined && choices[0] !== undefined) this.#put([...path, choices[0]], null);
        for (const other of others) this.#put([...path, other], undefined);
        break;
      }
      default: {
        // Every other keyword is about the value itself.
        const standIn = standInFor(schema);
        if (standIn !== undefined) this.#put(path, standIn);
      }
    }
  }

  #put(path: readonly Step[], part: PlainValue | undefined): void {
    this.#marks.add(pointerOf(path));
    this.value = this.#with(this.value, path, part) ?? null;
  }

  /** A value with one part of it replaced, or taken out of its mapping where there is none. */
  #with(
    value: PlainValue | undefined,
    path: readonly Step[],
    part: PlainValue | undefined,
  ): PlainValue | undefined {
    const [step, ...rest] = path;
    if (step === undefined) return part;
    if (isList(value)) {
      const list = [...value];
      const below = this.#with(value[Number(step)], rest, part);
      if (below !== undefined) list[Number(step)] = below;
      return this.#standing(list, value);
    }
    if (typeof value !== 'object' || value === null) return value;
    const object = new Bare<PlainValue>();
    for (const [key, below] of Object.entries(value)) object[key] = below;
    const below = this.#with(object[step], rest, part);
    if (below === undefined) delete object[step];
    else object[step] = below;
    return this.#standing(object, value);
  }

  #standing<T extends object>(copy: T, original: object): T {
    this.#origins.set(copy, this.#origins.get(original) ?? original);
    return copy;
  }

  finish(): Mended {
    const document = this.#document;
    const origin = (container: object): object => this.#origins.get(container) ?? container;
    return {
      document: {
        ...document,
        value: this.value,
        placeIn: (container, step) => document.placeIn(origin(container), step),
        fieldsIn: (container) => document.fieldsIn(origin(container)),
      },
      mends: new Mends(this.#marks),
    };
  }
}

const isList = (value: PlainValue | undefined): value is readonly PlainValue[] => Array.isArray(value);

const isOfKey = ({ keyword }: SchemaError): boolean =>
  ['additionalProperties', 'unevaluatedProperties', 'propertyNames', 'required'].includes(keyword);

/** Some value that a schema takes, or that brings to light what it wants inside; undefined where none is known. */
function standInFor(schema: Readonly<Record<string, unknown>>): PlainValue | undefined {
  // The keys of a mapping are put in one by one, so that each is marked.
  const [example] = Array.isArray(schema.examples) && !isRecord(schema.properties) ? schema.examples : [];
  if (example !== undefined) return example;
  const [word] = Array.isArray(schema.enum) ? schema.enum : [];
  if (word !== undefined) return word;
  switch (schema.type) {
    case 'object':
      return new Bare<PlainValue>();
    case 'array':
      return [];
    case 'boolean':
      return false;
    case 'integer':
    case 'number':
      if (typeof schema.exclusiveMinimum === 'number') return schema.exclusiveMinimum + 1;
      return typeof schema.minimum === 'number' ? schema.minimum : 0;
    case 'string':
      return '';
    default:
      // Several kinds are allowed, or none is named.
      return undefined;
  }
}
