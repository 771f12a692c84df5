/** Bytes of a file -> text, refusing what no editor would have meant to save. */
import { err, type Outcome, ok } from '../base/problem.ts';

const strictUtf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: false });

/** Decodes UTF-8, with or without a byte-order mark. Other encodings and NUL bytes are refused, never guessed. */
export function decodeText(content: Uint8Array, file: string): Outcome<string> {
  const place = { file, line: 1, column: 1 };
  if (content.includes(0)) {
    return err({
      place,
      message: 'the file holds NUL bytes, so it is not UTF-8 text',
      advice: 'Save it as UTF-8 text.',
    });
  }
  try {
    return ok(strictUtf8.decode(content));
  } catch {
    return err({ place, message: 'the file is not valid UTF-8', advice: 'Save it as UTF-8 text.' });
  }
}
