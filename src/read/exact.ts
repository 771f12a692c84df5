/**
 * The exact reader: YAML text -> values, by the library that tells every error apart. What declarations do not need
 * is refused here, each in its own words.
 */
import { isAlias, isMap, isScalar, isSeq, type Scalar, type Document as YamlDocument } from 'yaml';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { compose, flatten, leaveTagOut, tooDeep } from './compose.ts';
import type { Lines } from './lines.ts';
import { Bare, type Construction, deepest, type Offsets, type PlainValue, type Step } from './value.ts';

/** Reads a text, or says everything that is wrong with it. */
export function readExactly(text: string, lines: Lines): Outcome<Construction> {
  const composed = compose(text, lines);
  if (!composed.ok) return composed;
  const walk = new ConstructionWalk(lines);
  const value = walk.value(composed.value.contents, 0, 0);
  if (walk.problems.length > 0) return err(...walk.problems);
  return ok({ value, offsets: walk.offsets, offsetOfValue: (path) => offsetOfValue(composed.value, path) });
}

/** Walks the representation graph once: plain values, the offset of every key, and what is refused. */
class ConstructionWalk {
  readonly problems: Problem[] = [];
  readonly offsets = new Map<object, Offsets>();
  readonly #lines: Lines;

  constructor(lines: Lines) {
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
        `the alias *${node.source} is not supported`,
        'Write the value out in full.',
      );
    }
    if (isMap(node)) {
      if (this.#refusesTag(node.tag, node.range?.[0] ?? offset, 'tag:yaml.org,2002:map')) return null;
      const object = new Bare<PlainValue>();
      const offsets = new Bare<number>();
      for (const pair of node.items) {
        const at = isScalar(pair.key) ? (pair.key.range?.[0] ?? offset) : (node.range?.[0] ?? offset);
        const key = this.#key(pair.key, at);
        if (key === undefined) continue;
        const first = offsets[key];
        if (first !== undefined) {
          this.refuse(
            at,
            `the key ${key} is there twice (first on line ${this.#lines.place(first).line})`,
            'Keep one of the two.',
          );
          continue;
        }
        offsets[key] = at;
        object[key] = this.value(pair.value, depth + 1, at);
      }
      this.offsets.set(object, offsets);
      return object;
    }
    if (isSeq(node)) {
      if (this.#refusesTag(node.tag, node.range?.[0] ?? offset, 'tag:yaml.org,2002:seq')) return null;
      const offsets: Record<number, number> = {};
      const list = node.items.map((item, index) => {
        const at = rangeStart(item) ?? offset;
        offsets[index] = at;
        return this.value(item, depth + 1, at);
      });
      this.offsets.set(list, offsets);
      return list;
    }
    return this.refuse(
      offset,
      'this is not a value that can be read',
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
      'this is not a value that can be read',
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
    this.refuse(offset, `the tag ${tag} is not supported`, leaveTagOut);
    return true;
  }
}

const rangeStart = (node: unknown): number | undefined =>
  isScalar(node) || isMap(node) || isSeq(node) || isAlias(node) ? node.range?.[0] : undefined;

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
