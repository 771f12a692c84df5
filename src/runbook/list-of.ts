/** Of which main and which branch a check-list is, as it says itself. */

import type { Place, Problem } from '../base/problem.ts';
import { readDocument } from '../read/document.ts';
import { isRecord } from '../read/schema-error.ts';
import { withoutHidden } from './check-list.ts';

export interface ListOf {
  /** Commits, or what stands in a report where there is none. */
  readonly base: string;
  readonly head: string;
  readonly place: Place;
}

/** The line with which a check-list in Markdown says it; each part that was printed alone has its own. */
const saidIn = /^- \*\*List:\*\*.*?`([^`]+)`.*?`([^`]+)`/;

/** Nothing where a list does not say. @param file the path that places name */
export function listsIn(text: string, file: string): readonly ListOf[] {
  if (text.trimStart().startsWith('{')) return listedIn(text, file);
  return withoutHidden(text)
    .split(/\r?\n/)
    .flatMap((line, index) => {
      const [, base, head] = saidIn.exec(line) ?? [];
      return base === undefined || head === undefined
        ? []
        : [{ base, head, place: { file, line: index + 1, column: 1 } }];
    });
}

function listedIn(text: string, file: string): readonly ListOf[] {
  const read = readDocument(text, file);
  if (!read.ok || !isRecord(read.value.value)) return [];
  const { value, placeOfValue } = read.value;
  const [base, head] = [value.base, value.head].map((side) => (isRecord(side) ? side.commit : undefined));
  return typeof base === 'string' && typeof head === 'string'
    ? [{ base, head, place: placeOfValue(['base']) }]
    : [];
}

/** A list of a change that main had before this one began says nothing of this one, whatever its steps are called. */
export const earlierList = ({ head, place }: ListOf, base: string): Problem => ({
  place,
  message: `this list is of an earlier change: main at ${base.slice(0, 12)} has it already (${head.slice(0, 12)})`,
  advice:
    'Print the list of this change with `ullage steps --format markdown`, and tick what is done of it. To go on with the earlier one, name main as it was before with --base.',
});
