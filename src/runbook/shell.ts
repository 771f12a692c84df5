/** Arguments as a POSIX shell takes them: each as it is, whatever it holds (POSIX.1-2017, Shell Command Language, 2.2). */

/** Characters that mean nothing to a shell. */
const plain = /^[A-Za-z0-9_/.,:@%+-]+$/;

/** What stands first is a program, never an assignment; further on, an equals sign means nothing. */
const plainLater = /^[A-Za-z0-9_/.,:@%+=-]+$/;

/** One line that a shell takes apart into just these arguments. */
export const shellLine = (args: readonly string[]): string =>
  args
    .map((arg, index) => ((index === 0 ? plain : plainLater).test(arg) ? arg : singleQuoted(arg)))
    .join(' ');

/** Within single quotes nothing has a meaning but the quote itself. */
const singleQuoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;
