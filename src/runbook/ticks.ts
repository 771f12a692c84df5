/** Which steps somebody has ticked off: in the check-list itself, or as a list of their ids in JSON. */
import { outcomeOf, type PartialOutcome, type Place, type Problem } from '../base/problem.ts';
import { readDocument } from '../read/document.ts';
import type { Step } from './step.ts';
import { stepId } from './step-id.ts';

interface Tick {
  readonly id: string;
  readonly place: Place;
}

/** An item of a GFM task list; the id stands in code at the end of its line. */
const item = /^\s*[-*+] \[([ xX])\] .*`([0-9a-f]{10})`\s*$/;

/**
 * The numbers of the steps that are done. What is ticked and is no step, or waits for one that is not ticked, is a
 * problem at its place: nothing is taken for done that cannot be.
 *
 * @param steps in order, as `runbookOf` gives them
 * @param file the path that places name
 */
export function readTicks(
  text: string,
  file: string,
  steps: readonly Step[],
): PartialOutcome<ReadonlySet<number>> {
  const ticks = text.trimStart().startsWith('{') ? listed(text, file) : ticked(text, file);
  if (ticks === undefined) {
    return outcomeOf(new Set(), [
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
  for (const tick of ticks) {
    const step = known.get(tick.id);
    if (step !== undefined) done.set(step.number, tick);
    else problems.push(unknownTick(tick));
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
  return outcomeOf(new Set(done.keys()), problems);
}

const unknownTick = ({ id, place }: Tick): Problem => ({
  place,
  message: `the step ${id} is none of this change`,
  advice:
    'The change, or main, is another one than when the list was printed: print it again, and tick what is done.',
});

function ticked(text: string, file: string): readonly Tick[] | undefined {
  const items = text.split(/\r?\n/).flatMap((line, index) => {
    const [, mark, id] = item.exec(line) ?? [];
    const place = { file, line: index + 1, column: line.indexOf('[') + 1 };
    return mark === undefined || id === undefined ? [] : [{ mark, id, place }];
  });
  return items.length === 0 ? undefined : items.flatMap(({ mark, ...tick }) => (mark === ' ' ? [] : [tick]));
}

function listed(text: string, file: string): readonly Tick[] | undefined {
  const read = readDocument(text, file);
  if (!read.ok) return undefined;
  const { value, placeOfValue } = read.value;
  const done: unknown =
    typeof value === 'object' && value !== null && 'done' in value ? value.done : undefined;
  if (!Array.isArray(done)) return undefined;
  return done.map((id, index) => ({ id: String(id), place: placeOfValue(['done', index]) }));
}

/** The steps that are not done, and of them those that nothing holds up. */
export function remaining(steps: readonly Step[], done: ReadonlySet<number>) {
  const left = steps.filter(({ number }) => !done.has(number));
  return { left, next: left.filter(({ after }) => after.every((each) => done.has(each))) };
}
