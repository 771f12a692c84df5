/** Patterns that users write. They run on RE2, whose time grows with the text alone: none can stall the gate. */
import { RE2JS, RE2JSException } from 're2js';

export interface Pattern {
  /** Whether it matches the text from end to end. */
  matchesWhole(text: string): boolean;
  /** Whether it matches anywhere in the text. */
  matches(text: string): boolean;
}

/** A longer pattern is no pattern for names; and the time to match grows with the pattern, too. */
const longest = 1_000;

const compiled = new Map<string, Pattern>();

/** Compiles a pattern, or says why it is none. What RE2 leaves out (look-around, back references) is none. */
export function compilePattern(source: string): Pattern | { readonly why: string } {
  const known = compiled.get(source);
  if (known !== undefined) return known;
  if (source.length > longest) return { why: `it is longer than ${longest} characters` };
  try {
    const expression = RE2JS.compile(source);
    const pattern: Pattern = {
      matchesWhole: (text) => expression.testExact(text),
      matches: (text) => expression.test(text),
    };
    compiled.set(source, pattern);
    return pattern;
  } catch (error) {
    if (error instanceof RE2JSException) return { why: error.message.replace('error parsing regexp: ', '') };
    throw error;
  }
}

/** What a pattern that does not compile is told. */
export const patternAdvice =
  'Patterns are RE2: letters, classes such as [a-z0-9], groups and repeats; no look-ahead, look-behind or back reference.';
