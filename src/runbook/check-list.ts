/** What somebody has ticked off, as it is written: in the check-list itself, or as a list of ids in JSON. */

import type { Place, Problem } from '../base/problem.ts';
import { readDocument } from '../read/document.ts';
import { isRecord } from '../read/schema-error.ts';
import { otherFormat } from '../read/validate.ts';

export interface Tick {
  /** Undefined where the line does not say. */
  readonly id: string | undefined;
  /** `unclear` where it is neither ticked nor empty; `of several` where it is ticked, and more than one id may be its own. */
  readonly box: 'ticked' | 'open' | 'unclear' | 'of several';
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
  const lines = withoutHidden(text).split(/\r?\n/);
  const isMarked = lines.some((line) => idsIn(line, '#').length > 0);
  const items = lines.flatMap((line, index): readonly Tick[] => {
    const [, mark] = item.exec(line) ?? [];
    const [first, ...others] = idsIn(line, isMarked ? '#' : '');
    const { id, on } = first ?? { id: undefined, on: undefined };
    const place = { file, line: index + 1, column: line.indexOf('[') + 1 };
    const isDoubtful = !isMarked && others.length > 0;
    if (mark === ' ') return [{ box: 'open', id: isDoubtful ? undefined : id, on, place }];
    // Which of several is the id is not to be guessed.
    if (mark !== undefined) return [{ box: isDoubtful ? 'of several' : 'ticked', id, on, place }];
    return id !== undefined && likeItem.test(line) ? [{ box: 'unclear', id, on, place }] : [];
  });
  return items.some(({ id }) => id !== undefined) ? items : undefined;
}

/**
 * The id is the first code span with the mark of one: all that is printed before it has such a mark in code alone,
 * however things are named. Behind it there may be the day, and any note. Lists were printed without marks before; there
 * the id is the one span that looks like it.
 */
const idsIn = (line: string, wanted: '#' | '') =>
  [...line.matchAll(codeSpan)].flatMap(({ 0: all, 1: mark, 2: fence, 3: code = '', index }) =>
    mark === wanted && fence === '`' && /^[0-9a-f]{10}$/.test(code)
      ? [{ id: code, on: dayBehind.exec(line.slice(index + all.length))?.[1] }]
      : [],
  );

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
