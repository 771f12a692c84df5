/** Text with names in braces, to be filled in: `{volume}`. A brace itself is written twice. */

const pattern = /\{\{|\}\}|\{([^{}]*)\}/g;

/** The names that a text asks for, each as often as it does. */
export const placeholdersIn = (text: string): readonly string[] =>
  [...text.matchAll(pattern)].flatMap(([, name]) => name ?? []);

/** One pass, so that a name with braces in it stays a name; what is not known stays as it is written. */
export const filled = (text: string, words: Readonly<Record<string, string>>): string =>
  filledBy(text, (name) => (Object.hasOwn(words, name) ? words[name] : undefined) ?? `{${name}}`);

export const filledBy = (text: string, fill: (name: string) => string): string =>
  text.replace(pattern, (whole, name: string | undefined) =>
    name === undefined ? whole.charAt(0) : fill(name),
  );

/** Whether every brace is one of a pair. */
export const isClosed = (text: string): boolean => !/[{}]/.test(text.replace(pattern, ''));
