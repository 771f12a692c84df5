/** What somebody has ticked off, as it is written: in the check-list itself, or as a list of ids in JSON. */

import type { Place, Problem } from '../base/problem.ts';
import { readDocument } from '../read/document.ts';
import { isRecord } from '../read/schema-error.ts';
import { otherFormat } from '../read/validate.ts';

export interface Tick {
  /** Undefined where the line does not say. */
  readonly id: string | undefined;
  /** `unclear` where its box is neither ticked nor empty. */
  readonly box: 'ticked' | 'open' | 'unclear';
  /** The day on which the step was done, as it is written. */
  readonly on: string | undefined;
  readonly place: Place;
}

/** An item of a GFM task list; and what looks like one, and is none. */
const item = /^\s*(?:[-*+]|\d+[.)]) \[([ xX])\] /;
const likeItem = /^\s*(?:[-*+]|\d+[.)])?\s*\[/;

/** Comments and fenced blocks, in which a list is no list; what stands in a code span is no comment. */
const hidden =
  /((?<!`)(`+)(?!`).*?(?<!`)\2(?!`))|<!--[\s\S]*?(?:-->|(?![\s\S]))|^ *(`{3,}|~{3,})[\s\S]*?(?:^ *\3.*$|(?![\s\S]))/gm;

/** A code span (CommonMark 0.31, 6.1), and whether the mark of an id stands before it. */
const codeSpan = /(#?)(?<!`)(`+)(?!`)(.*?)(?<!`)\2(?!`)/g;

const dayBehind = /^\s+([0-9]{4}-[0-9]{2}-[0-9]{2})(?=$|[^0-9-])/;

/** The ticks; or that the list is of another version of the format, or no list at all. */
export const readCheckList = (text: string, file: string): readonly Tick[] | Problem | undefined =>
  text.trimStart().startsWith('{') ? listed(text, file) : ticked(text, file);

/** The lines as they are, with nothing in them that is not shown as a list. */
export const withoutHidden = (text: string): string =>
  text.replace(hidden, (all, code?: string) => code ?? all.replace(/[^\r\n]/g, ' '));

function ticked(text: string, file: string): readonly Tick[] | undefined {
  const items = withoutHidden(text)
    .split(/\r?\n/)
    .flatMap((line, index): readonly Tick[] => {
      const [, mark] = item.exec(line) ?? [];
      const { id, on } = idIn(line);
      const place = { file, line: index + 1, column: line.indexOf('[') + 1 };
      if (mark !== undefined) return [{ box: mark === ' ' ? 'open' : 'ticked', id, on, place }];
      return id !== undefined && likeItem.test(line) ? [{ box: 'unclear', id, on, place }] : [];
    });
  return items.some(({ id }) => id !== undefined) ? items : undefined;
}

/**
 * The id is the first code span with the mark of one: all that is printed before it has such a mark in code alone,
 * however things are named. Behind it there may be the day, and any note.
 */
function idIn(line: string): Pick<Tick, 'id' | 'on'> {
  for (const span of line.matchAll(codeSpan)) {
    const [all, mark, fence, code = ''] = span;
    if (mark === '#' && fence === '`' && /^[0-9a-f]{10}$/.test(code))
      return { id: code, on: dayBehind.exec(line.slice(span.index + all.length))?.[1] };
  }
  return { id: undefined, on: undefined };
}

function listed(text: string, file: string): readonly Tick[] | Problem | undefined {
  const read = readDocument(text, file);
  if (!read.ok || !isRecord(read.value.value)) return undefined;
  const { value, placeOfValue } = read.value;
  const other = otherFormat(value.format, 'ullage-steps-1', placeOfValue(['format']));
  if (other !== undefined) return other;
  const { done, doneOn } = value;
  if (!Array.isArray(done) || !done.every((id) => typeof id === 'string')) return undefined;
  return done.map((id, index) => {
    const on: unknown = isRecord(doneOn) && Object.hasOwn(doneOn, id) ? doneOn[id] : undefined;
    return {
      id,
      box: 'ticked',
      on: on === undefined ? undefined : String(on),
      place: placeOfValue(['done', index]),
    };
  });
}
