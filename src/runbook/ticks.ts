/** Which steps somebody has ticked off: in the check-list itself, or as a list of their ids in JSON. */

import { outcomeOf, type PartialOutcome, type Place, type Problem } from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import { readDocument } from '../read/document.ts';
import { isRecord } from '../read/schema-error.ts';
import { otherFormat } from '../read/validate.ts';
import type { Step } from './step.ts';
import { stepId } from './step-id.ts';

/** By the number of a step that is done: the day on which it was, RFC 3339, where its tick says so. */
export type Done = ReadonlyMap<number, string | undefined>;

interface Tick {
  /** Undefined where the line does not say. */
  readonly id: string | undefined;
  readonly isTicked: boolean;
  /** As it is written; what is behind the id may be a note of any other kind, too. */
  readonly on: string | undefined;
  readonly place: Place;
}

/** An item of a GFM task list. */
const item = /^\s*(?:[-*+]|\d+[.)]) \[([ xX])\] /;

/** Where a step's id stands in it, in code; behind it there may be a note. */
const idIn = /`([0-9a-f]{10})`(.*)$/;

const dayIn = /\b[0-9]{4}-[0-9]{2}-[0-9]{2}(?=$|[^0-9-])/;

/**
 * The numbers of the steps that are done. What is ticked and is no step, or waits for one that is not ticked, is a
 * problem at its place: nothing is taken for done that cannot be, beside the problems either.
 *
 * @param steps in order, as `runbookOf` gives them
 * @param file the path that places name
 */
export function readTicks(text: string, file: string, steps: readonly Step[]): PartialOutcome<Done> {
  const ticks = text.trimStart().startsWith('{') ? listed(text, file) : ticked(text, file);
  if (ticks !== undefined && 'message' in ticks) return outcomeOf(new Map(), [ticks]);
  if (ticks === undefined) {
    return outcomeOf(new Map(), [
      {
        place: { file, line: 1, column: 1 },
        message: 'this is neither a check-list of steps nor a list of their ids',
        advice:
          'Give what `ullage steps --format markdown` or `--format json` prints, with what is done ticked or listed under done.',
      },
    ]);
  }
  const known = new Map(steps.map((step) => [stepId(step), step]));
  const done = new Map<number, Tick>();
  const problems: Problem[] = [];
  const open = new Set(ticks.flatMap(({ id, isTicked }) => (isTicked ? [] : id)));
  for (const tick of ticks.filter(({ isTicked }) => isTicked)) {
    const step = known.get(tick.id ?? '');
    if (step === undefined) problems.push(unknownTick(tick));
    else if (open.has(tick.id)) problems.push(bothWays(step, tick));
    else if (tick.on !== undefined && !isDay(tick.on)) problems.push(noDay(tick.on, tick));
    else done.set(step.number, tick);
  }
  for (const { number, after } of steps) {
    const tick = done.get(number);
    const missing = tick === undefined ? [] : after.filter((each) => !done.has(each));
    if (tick === undefined || missing.length === 0) continue;
    problems.push({
      place: tick.place,
      message: `step ${number} is ticked, and ${missing.length === 1 ? 'step' : 'steps'} ${missing.join(', ')}, which must be done first, ${missing.length === 1 ? 'is' : 'are'} not`,
      advice: 'Find out how it stands; tick what is done, and take back the tick of what is not.',
    });
  }
  return outcomeOf(standing(steps, done), problems);
}

/** Of what is ticked, what waits for nothing that is not, near or far. */
function standing(steps: readonly Step[], ticked: ReadonlyMap<number, Tick>): Done {
  const done = new Map<number, string | undefined>();
  for (const { number, after } of steps) {
    const tick = ticked.get(number);
    if (tick !== undefined && after.every((each) => done.has(each))) done.set(number, tick.on);
  }
  return done;
}

const noDay = (on: string, { place }: Tick): Problem => ({
  place,
  message: `${on} is not a day in the calendar`,
  advice: 'Write the day on which the step was done, such as 2026-11-20, or none.',
});

const unknownTick = ({ id, place }: Tick): Problem => ({
  place,
  message:
    id === undefined
      ? 'this tick is of no step: its line has no id'
      : `the step ${id} is none of this change`,
  advice:
    id === undefined
      ? 'Leave the id at the end of the line as it was printed.'
      : 'The change, or main, is another one than when the list was printed: print it again, and tick what is done. Where the change is merged since, name main as it was before with --base, and main with --head.',
});

const bothWays = ({ number }: Step, { place }: Tick): Problem => ({
  place,
  message: `step ${number} is ticked here, and not ticked on another line`,
  advice: 'Find out how it stands, and leave one of the two lines.',
});

/** Outside of code and comments, where a list is no list. */
function ticked(text: string, file: string): readonly Tick[] | undefined {
  const shown = text.replace(
    /<!--[\s\S]*?(?:-->|(?![\s\S]))|^ *(```|~~~)[\s\S]*?(?:^ *\1.*$|(?![\s\S]))/gm,
    (hidden) => hidden.replace(/[^\r\n]/g, ' '),
  );
  const items = shown.split(/\r?\n/).flatMap((line, index) => {
    const [, mark] = item.exec(line) ?? [];
    const [, id, note = ''] = idIn.exec(line) ?? [];
    const place = { file, line: index + 1, column: line.indexOf('[') + 1 };
    return mark === undefined ? [] : [{ isTicked: mark !== ' ', id, on: dayIn.exec(note)?.[0], place }];
  });
  return items.some(({ id }) => id !== undefined) ? items : undefined;
}

/** The ticks; or that the list is of another version of the format, or no list at all. */
function listed(text: string, file: string): readonly Tick[] | Problem | undefined {
  const read = readDocument(text, file);
  if (!read.ok) return undefined;
  const { value, placeOfValue } = read.value;
  const format: unknown =
    typeof value === 'object' && value !== null && 'format' in value ? value.format : undefined;
  const other = otherFormat(format, 'ullage-steps-1', placeOfValue(['format']));
  if (other !== undefined) return other;
  const done: unknown =
    typeof value === 'object' && value !== null && 'done' in value ? value.done : undefined;
  if (!Array.isArray(done)) return undefined;
  if (!done.every((id) => typeof id === 'string')) return undefined;
  const days: unknown =
    typeof value === 'object' && value !== null && 'doneOn' in value ? value.doneOn : undefined;
  return done.map((id, index) => {
    const on: unknown = isRecord(days) && Object.hasOwn(days, id) ? days[id] : undefined;
    return {
      id,
      isTicked: true,
      on: on === undefined ? undefined : String(on),
      place: placeOfValue(['done', index]),
    };
  });
}

/** The steps that are not done, and of them those that nothing holds up. */
export function remaining(steps: readonly Step[], done: Done) {
  const left = steps.filter(({ number }) => !done.has(number));
  return { left, next: left.filter(({ after }) => after.every((each) => done.has(each))) };
}
