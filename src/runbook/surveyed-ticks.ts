/** What surveys show of the steps against what is ticked: told only where it is plain. */
import { type Change, isAttachmentChange } from '../change/change.ts';
import type { SurveyComparison } from '../survey/compare.ts';
import type { Difference } from '../survey/difference.ts';
import type { Step } from './step.ts';

/** A step of which a survey shows otherwise than its tick says. */
export interface SurveyedTick {
  readonly number: number;
  readonly kind: 'ticked and not so' | 'so and not ticked';
  /** What the survey shows beside what is declared. */
  readonly shown: Difference;
}

interface Compared {
  readonly steps: readonly Step[];
  readonly changes: readonly Change[];
  /** The numbers of the steps that are ticked. */
  readonly done: ReadonlySet<number>;
  /** The same surveys beside main before and beside main after. */
  readonly before: Shown;
  readonly after: Shown;
}

type Shown = Pick<SurveyComparison, 'differences' | 'untoldHolders'>;

/**
 * A change is not carried out where what is there differs from main after it alone, and carried out where it differs
 * from main before it alone. What differs from both, or from neither, says nothing; nor does who holds a volume, where
 * the list names a holder whom nothing tells apart from one that is declared.
 */
export function surveyedTicks({ steps, changes, done, before, after }: Compared): readonly SurveyedTick[] {
  return steps.flatMap(({ number, carriesOut }): readonly SurveyedTick[] => {
    const carried = carriesOut.flatMap((index) => changes[index] ?? []);
    if (carried.some((change) => [before, after].some((side) => isUntold(side, change)))) return [];
    const was = carried.flatMap((change) => of(before, change));
    const is = carried.flatMap((change) => of(after, change));
    const [[firstWas], [firstIs]] = [was, is];
    if (done.has(number))
      return firstIs !== undefined && was.length === 0
        ? [{ number, kind: 'ticked and not so', shown: firstIs }]
        : [];
    return firstWas !== undefined && is.length === 0
      ? [{ number, kind: 'so and not ticked', shown: firstWas }]
      : [];
  });
}

const isUntold = ({ untoldHolders }: Shown, change: Change): boolean =>
  isAttachmentChange(change) && (untoldHolders.get(change.volume.name) ?? []).length > 0;

function of({ differences }: Shown, change: Change): readonly Difference[] {
  const names = [change.subject.name, ...('before' in change ? [change.before.name] : [])];
  return differences.filter(
    ({ subject }) => subject.kind === change.subject.kind && names.includes(subject.name),
  );
}
