/**
 * What could not be read or understood, said to the person at the keyboard: where it is, what is wrong
 * in their words, and what to do about it. Several are gathered and reported together.
 */

/** A position in a file of a revision. Line and column count from 1; the column counts UTF-16 units. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** `storage/imagery.yaml:12`, for a place that a message mentions beside its own. */
export const at = ({ file, line }: Place): string => `${file}:${line}`;

export interface Problem {
  /** Where; absent when the whole revision is meant, such as a missing base. */
  readonly place?: Place | undefined;
  /** Which revision the place is in; absent where only one is read, or none. A base's problem is main's own. */
  readonly revision?: 'base' | 'head' | undefined;
  /** What is wrong, one sentence. */
  readonly message: string;
  /** What to do, one sentence; a command where one mends it. */
  readonly advice: string;
  /** The source line at `place`, so that a report can put a pointer under the very character. */
  readonly excerpt?: string | undefined;
}

/** Either a value, or every problem that stood in its way; never both, never neither. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** As an outcome, with what can be made of it all the same: good only for finding what else is wrong. */
export type PartialOutcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly holds?: T | undefined };

export const ok = <T>(value: T): Outcome<T> => ({ ok: true, value });

export const err = (...problems: readonly Problem[]): Outcome<never> => ({ ok: false, problems });

/** A value, if nothing stood in its way; otherwise what holds of it beside the problems. */
export const outcomeOf = <T>(value: T, problems: readonly Problem[]): PartialOutcome<T> =>
  problems.length === 0 ? ok(value) : { ok: false, problems, holds: value };

/** The value, or what holds of it all the same. */
export const whatHolds = <T>(outcome: PartialOutcome<T>): T | undefined =>
  outcome.ok ? outcome.value : outcome.holds;

/** A fault of Ullage's own, as what stands in the way of a judgement. */
export const ownFault = (error: unknown): Problem => ({
  message: `Ullage itself failed: ${error instanceof Error ? error.message : String(error)}`,
  advice: 'Please report it with the command you ran; what is not judged does not pass.',
});

/** What tells one problem from another: where it is, and what is wrong there. */
export const problemKey = ({ place, message }: Problem): string =>
  `${place?.file}:${place?.line}:${place?.column} ${message}`;

/** Orders problems by file, then line, then column, so that a report is the same twice. */
export function byPlace(a: Problem, b: Problem): number {
  if (a.place === undefined || b.place === undefined) {
    return Number(a.place !== undefined) - Number(b.place !== undefined);
  }
  return (
    (a.place.file < b.place.file ? -1 : a.place.file > b.place.file ? 1 : 0) ||
    a.place.line - b.place.line ||
    a.place.column - b.place.column
  );
}
