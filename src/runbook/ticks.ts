/** Which steps are done, by what somebody has ticked off. */

import { outcomeOf, type PartialOutcome, type Problem } from '../base/problem.ts';
import { isDay } from '../estate/dates.ts';
import { readCheckList, type Tick } from './check-list.ts';
import type { Step } from './step.ts';

/** By the number of a step that is done: the day on which it was, RFC 3339, where its tick says so. */
export type Done = ReadonlyMap<number, string | undefined>;

/**
 * The numbers of the steps that are done. What is ticked and is no step, or waits for one that is not ticked, is a
 * problem at its place: nothing is taken for done that cannot be, beside the problems either.
 *
 * @param steps in order, as `runbookOf` gives them
 * @param file the path that places name
 * @param today RFC 3339: on no later day can a step have been done
 */
export function readTicks(
  text: string,
  file: string,
  steps: readonly Step[],
  today: string,
): PartialOutcome<Done> {
  const ticks = readCheckList(text, file);
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
  const known = new Map(steps.map((step) => [step.id, step]));
  const done = new Map<number, Tick>();
  const problems: Problem[] = [];
  const open = new Set(ticks.flatMap(({ id, box }) => (box === 'open' ? id : [])));
  for (const tick of ticks.filter(({ box }) => box !== 'open')) {
    const step = known.get(tick.id ?? '');
    if (tick.box === 'unclear') problems.push(unclearBox(tick));
    else if (tick.box === 'of several') problems.push(severalIds(tick));
    else if (step === undefined) problems.push(unknownTick(tick));
    else if (open.has(tick.id)) problems.push(bothWays(step, tick));
    else if (tick.on !== undefined && !isDay(tick.on)) problems.push(noDay(tick.on, tick));
    else if (tick.on !== undefined && tick.on > today) problems.push(toCome(tick.on, today, tick));
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

const toCome = (on: string, today: string, { place }: Tick): Problem => ({
  place,
  message: `${on} is still to come: the day of the judgement is ${today} (UTC)`,
  advice:
    'Write behind the id the day on which the step was done; any other day belongs further on in the line.',
});

const unclearBox = ({ place }: Tick): Problem => ({
  place,
  message: 'the box of this step is neither ticked nor empty',
  advice: 'Write [x] where the step is done, and [ ] where it is not, with a space on either side.',
});

const severalIds = ({ place }: Tick): Problem => ({
  place,
  message: 'this line has more than one word that may be the id of its step',
  advice: 'Print the list again, which marks the id with #, and tick what is done.',
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

/** The steps that are not done, and of them those that nothing holds up. */
export function remaining(steps: readonly Step[], done: Done) {
  const left = steps.filter(({ number }) => !done.has(number));
  return { left, next: left.filter(({ after }) => after.every((each) => done.has(each))) };
}
