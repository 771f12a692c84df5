/** Any kind of value in any place of any format: a problem with its place, or a value that the schema allows. */
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readDocument } from '../../src/read/document.ts';
import { problemsOf, valueIn } from '../estate/builder.ts';
import { type Sample, samples } from '../fuzz/samples.ts';
import { allowedBySchema } from '../fuzz/schemas.ts';
import { pathsIn, replacedAt } from '../fuzz/values.ts';

const kinds: readonly unknown[] = [
  {},
  [],
  [{}],
  JSON.parse('{ "__proto__": {} }'),
  null,
  true,
  -1,
  '',
  '0 GiB',
  '1.0000000001 kB',
  '2026-02-30',
  '%zz',
];

const variants = function* ({ text }: Sample): Iterable<readonly [string, unknown]> {
  const whole: unknown = parse(text);
  for (const path of pathsIn(whole)) {
    for (const kind of kinds)
      yield [`/${path.join('/')} = ${JSON.stringify(kind)}`, replacedAt(whole, path, kind)];
  }
};

describe('whatever stands where something else is wanted', () => {
  it.each(samples)('the sample of a file of format $format is valid', (sample) => {
    expect(problemsOf(sample.read(valueIn(readDocument(sample.text, sample.path))))).toEqual([]);
  });

  it.each(samples)('in a file of format $format is told with its place, and told once', (sample) => {
    const wrong: string[] = [];
    let tried = 0;
    for (const [what, value] of variants(sample)) {
      tried++;
      // JSON is YAML, and is quicker made.
      const document = readDocument(JSON.stringify(value), sample.path);
      const read = document.ok ? sample.read(document.value) : document;
      const told = problemsOf(read).map(({ place, message }) => `${place?.line}:${place?.column} ${message}`);
      if (read.ok && !allowedBySchema(sample.format, value)) wrong.push(`${what}: passed`);
      if (!read.ok && told.length === 0) wrong.push(`${what}: nothing is told`);
      if (new Set(told).size < told.length) wrong.push(`${what}: told twice: ${told}`);
      if (problemsOf(read).some(({ place }) => place === undefined)) wrong.push(`${what}: no place`);
    }
    expect(wrong).toEqual([]);
    expect(tried).toBeGreaterThan(200);
  });
});
