/** Offsets into one text as lines and columns, found when a message needs them. */
import { LineCounter } from 'yaml';
import type { Place } from '../base/problem.ts';

export class Lines {
  readonly file: string;
  readonly #text: string;
  readonly #numbers: readonly number[] | undefined;
  readonly #counter = new LineCounter();

  /** @param numbers what the lines are numbered, where the text is some lines of a larger one */
  constructor(text: string, file: string, numbers?: readonly number[]) {
    this.#text = text;
    this.file = file;
    this.#numbers = numbers;
  }

  /** Only a line feed ends a line, as in the editors that the places are for; a carriage return is part of its line. */
  #counted(): LineCounter {
    if (this.#counter.lineStarts.length === 0) {
      this.#counter.addNewLine(0);
      for (let at = this.#text.indexOf('\n'); at !== -1; at = this.#text.indexOf('\n', at + 1))
        this.#counter.addNewLine(at + 1);
    }
    return this.#counter;
  }

  place(offset: number): Place {
    // The end of a line is the same place, whichever way the line is ended.
    const isInEnd = this.#text[offset] === '\n' && this.#text[offset - 1] === '\r';
    const { line, col } = this.#counted().linePos(isInEnd ? offset - 1 : offset);
    return { file: this.file, line: this.#numbers?.[line - 1] ?? line, column: col };
  }

  /** The line of that number, without its end; empty where the text has no such line. */
  line(number: number): string {
    const { lineStarts } = this.#counted();
    const index = this.#numbers === undefined ? number - 1 : this.#numbers.indexOf(number);
    const start = lineStarts[index];
    if (start === undefined) return '';
    const next = lineStarts[index + 1];
    return this.#text.slice(start, next === undefined ? undefined : next - 1).replace(/\r$/, '');
  }
}
