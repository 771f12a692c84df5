/**
 * JSON that this program wrote -> plain values, some fifty times sooner than as the YAML that it is as well. Only text
 * that would be written in the very same way again is read so: then no key is in it twice, and nothing is lost. Any
 * other text goes the usual way.
 */
import { type Outcome, ok, type Place } from '../base/problem.ts';
import { FieldPlaces, type PlainValue, type ReadDocument, readDocument } from './document.ts';
import { Lines } from './lines.ts';

/** As a file of JSON is written: one value a line, and the same for the same value. */
export const jsonText = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

export function readJson(text: string, file: string): Outcome<ReadDocument> {
  const value = written(text);
  if (value === undefined) return readDocument(text, file);
  const top: Place = { file, line: 1, column: 1 };
  // Places are asked for where something is wrong, and then of one file.
  let exact: Outcome<ReadDocument> | undefined;
  const placed = (ask: (document: ReadDocument) => Place): Place => {
    exact ??= readDocument(text, file);
    return exact.ok ? ask(exact.value) : top;
  };
  return ok({
    file,
    value,
    placeOfKey: (path) => (path.length === 0 ? top : placed((document) => document.placeOfKey(path))),
    placeOfValue: (path) => (path.length === 0 ? top : placed((document) => document.placeOfValue(path))),
    placeIn: () => top,
    fieldsIn: () => new FieldPlaces(),
    excerpt: ({ line }) => new Lines(text, file).line(line),
  });
}

function written(text: string): PlainValue | undefined {
  try {
    const value: PlainValue = JSON.parse(text);
    return jsonText(value) === text ? value : undefined;
  } catch {
    return undefined;
  }
}
