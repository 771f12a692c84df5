/** Mutated files of every format, each read by its format's reader. */
import { parse } from 'yaml';
import { readDocument } from '../../src/read/document.ts';
import { broken, mutated } from './mutate.ts';
import { type Sample, samples } from './samples.ts';
import { allowedBySchema } from './schemas.ts';
import { pick, random, slipped } from './slips.ts';

export interface Tally {
  readonly tried: number;
  readonly accepted: number;
  /** What must not be: each with what it takes to see it again. */
  readonly faults: readonly string[];
}

const texts = samples.map(({ text }) => text);
const parsed: ReadonlyMap<Sample, unknown> = new Map(
  samples.map((sample) => [sample, parse(sample.text)] as const),
);

/**
 * Reads mutated documents, and some that are random slips of text. Nothing throws, whatever is wrong is told with a
 * place, and nothing is accepted that the published schema refuses.
 */
export function fuzzDocuments(count: number, seed: number): Tally {
  const below = random(seed);
  const faults: string[] = [];
  let accepted = 0;
  for (let tried = 0; tried < count; tried++) {
    const sample = pick(samples, below);
    const whole = parsed.get(sample);
    const value = below(2) === 0 ? mutated(whole, below, 4) : broken(whole, below);
    const text = below(4) === 0 ? slipped(sample.text, texts, below) : JSON.stringify(value ?? null);
    try {
      const document = readDocument(text, sample.path);
      const read = document.ok ? sample.read(document.value) : document;
      if (read.ok) {
        accepted++;
        const held = document.ok ? JSON.parse(JSON.stringify(document.value.value)) : undefined;
        if (!allowedBySchema(sample.format, held))
          faults.push(`accepted, and the schema refuses it: ${text}`);
      } else if (read.problems.length === 0 || read.problems.some(({ place }) => place === undefined)) {
        faults.push(`refused without a place: ${text}`);
      } else if (new Set(read.problems.map(keyOf)).size < read.problems.length) {
        faults.push(`one problem is told twice: ${text}`);
      }
    } catch (error) {
      faults.push(`${error instanceof Error ? error.stack : error}: ${text}`);
    }
  }
  return { tried: count, accepted, faults };
}

const keyOf = ({ place, message }: { readonly place?: unknown; readonly message: string }): string =>
  `${JSON.stringify(place)} ${message}`;
