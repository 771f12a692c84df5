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

/** Compiles a pattern, or says why it is none. What RE2 leaves out (look-around, back references) is none. */
export function compilePattern(source: string): Pattern | { readonly why: string } {
  if (source.length > longest) return { why: `it is longer than ${longest} characters` };
  try {
    const expression = RE2JS.compile(source);
    return {
      matchesWhole: (text) => expression.testExact(text),
      matches: (text) => expression.test(text),
    };
  } catch (error) {
    if (error instanceof RE2JSException) return { why: error.message.replace('error parsing regexp: ', '') };
    throw error;
  }
}

/** Compiles a pattern of a pack, which is refused when it is read for one that does not compile. */
export function patternOf(source: string): Pattern {
  const pattern = compilePattern(source);
  if ('why' in pattern) throw new Error(`${source} is not a valid pattern: ${pattern.why}`);
  return pattern;
}

/** What a pattern that does not compile is told. */
export const patternAdvice =
  'Patterns are RE2: letters, classes such as [a-z0-9], groups and repetition, without look-ahead, look-behind or back-references.';
