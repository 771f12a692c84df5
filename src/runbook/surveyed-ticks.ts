/** What surveys show of the steps against what is ticked: told only where it is plain. */
import { type Change, isAttachmentChange } from '../change/change.ts';
import type { SurveyComparison } from '../survey/compare.ts';
import type { Difference } from '../survey/difference.ts';
import type { Step } from './step.ts';
import type { Done } from './ticks.ts';

/** A step of which a survey shows otherwise than its tick says. */
export interface SurveyedTick {
  readonly number: number;
  readonly kind: 'ticked and not so' | 'so and not ticked';
  /** What the survey shows beside what is declared. */
  readonly shown: Difference;
  /** The day on which it was taken, RFC 3339. */
  readonly on: string;
}

interface Compared {
  readonly steps: readonly Step[];
  readonly changes: readonly Change[];
  readonly done: Done;
  /** When each survey was taken, RFC 3339, by its server; of the provider's list by nothing. */
  readonly taken: ReadonlyMap<string | undefined, string>;
  /** The same surveys beside main before and beside main after. */
  readonly before: Shown;
  readonly after: Shown;
}

type Shown = Pick<SurveyComparison, 'differences' | 'untoldHolders'>;

/**
 * A change is not carried out where what is there differs from main after it alone, and carried out where it differs
 * from main before it alone. What differs from both, or from neither, says nothing; nor does who holds a volume, where
 * the list names a holder whom nothing tells apart from one that is declared. A survey that was taken before the day of
 * a tick shows nothing of that step.
 */
export function surveyedTicks({
  steps,
  changes,
  done,
  taken,
  before,
  after,
}: Compared): readonly SurveyedTick[] {
  return steps.flatMap(({ number, carriesOut }): readonly SurveyedTick[] => {
    const carried = carriesOut.flatMap((index) => changes[index] ?? []);
    if (carried.some((change) => [before, after].some((side) => isUntold(side, change)))) return [];
    const was = carried.flatMap((change) => of(before, change));
    const is = carried.flatMap((change) => of(after, change));
    const dayOf = ({ server }: Difference): string => (taken.get(server) ?? '').slice(0, 10);
    const [tickedOn, firstWas] = [done.get(number), was[0]];
    const firstIs = is.find((each) => tickedOn === undefined || dayOf(each) >= tickedOn);
    if (done.has(number))
      return firstIs !== undefined && was.length === 0
        ? [{ number, kind: 'ticked and not so', shown: firstIs, on: dayOf(firstIs) }]
        : [];
    return firstWas !== undefined && is.length === 0
      ? [{ number, kind: 'so and not ticked', shown: firstWas, on: dayOf(firstWas) }]
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
