/** What surveys show of the steps against what is ticked: told only where it is plain. */
import { type Change, isAttachmentChange } from '../change/change.ts';
import { exactSize } from '../estate/size.ts';
import type { SurveyComparison } from '../survey/compare.ts';
import type { Difference } from '../survey/difference.ts';
import type { Step } from './step.ts';
import type { Done } from './ticks.ts';

/** A step of which a survey shows otherwise than its tick says. */
export interface SurveyedTick {
  readonly number: number;
  readonly kind: 'ticked and not so' | 'so and not ticked' | 'neither as before nor as after';
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
 * What a change alters, of all that a survey shows of its subject: one value that goes from this to that, who holds it,
 * whether it is there, what lies in it as a whole, or nothing that a survey shows.
 */
type Asked =
  | { readonly kind: 'value'; readonly was: string | undefined; readonly is: string | undefined }
  | { readonly kind: 'holder' | 'presence' | 'whole' | 'nothing' };

/**
 * A change is not carried out where what it alters differs from main after it alone, and carried out where that differs
 * from main before it alone. What differs from both alike is a third state, that no step of this change begins or ends
 * with; what differs from both otherwise, or from neither, says nothing. Nor does who holds a volume, where the list
 * names a holder whom nothing tells apart from one that is declared. A survey that was taken before the day of a tick
 * shows nothing of that step.
 */
export function surveyedTicks({
  steps,
  changes,
  done,
  taken,
  before,
  after,
}: Compared): readonly SurveyedTick[] {
  const dayOf = ({ server }: Difference): string => (taken.get(server) ?? '').slice(0, 10);
  return steps.flatMap(({ number, carriesOut }): readonly SurveyedTick[] => {
    const carried = carriesOut.flatMap((index) => changes[index] ?? []);
    if (carried.some((change) => [before, after].some((side) => isUntold(side, change)))) return [];
    const each = carried.map((change) => {
      const asked = askedBy(change);
      const names = namesOf(change, changes);
      const was = before.differences.filter((told) => isOf(told, change, names, asked, 'was'));
      const is = after.differences.filter((told) => isOf(told, change, names, asked, 'is'));
      const third = asked.kind === 'value' || isAlone(change, changes) ? alike(was, is) : [];
      return { was, is, third };
    });
    const tell = (kind: SurveyedTick['kind'], shown: Difference | undefined): readonly SurveyedTick[] =>
      shown === undefined ? [] : [{ number, kind, shown, on: dayOf(shown) }];
    if (done.has(number)) {
      const tickedOn = done.get(number);
      const plain = each.flatMap(({ was, is, third }) => (was.length === 0 ? is : third));
      return tell(
        'ticked and not so',
        plain.find((told) => tickedOn === undefined || dayOf(told) >= tickedOn),
      );
    }
    // What was there before anybody declared it is not carried out by its being there.
    if (carried.some(({ kind }) => kind.endsWith('-adopted') || kind.endsWith('-corrected'))) return [];
    const [third] = each.flatMap((told) => told.third);
    return third === undefined
      ? tell(
          'so and not ticked',
          each.some(({ is }) => is.length > 0) ? undefined : each.flatMap(({ was }) => was)[0],
        )
      : tell('neither as before nor as after', third);
  });
}

const isUntold = ({ untoldHolders }: Shown, change: Change): boolean =>
  isAttachmentChange(change) && (untoldHolders.get(change.volume.name) ?? []).length > 0;

/**
 * Whether who holds a volume goes from one server to one other, and that is all: what is copied, or shared, is held by
 * others on the way.
 */
const isAlone = (change: Change, changes: readonly Change[]): boolean =>
  isAttachmentChange(change) &&
  changes.every(
    (each) =>
      each === change ||
      (isAttachmentChange(each)
        ? each.volume.name !== change.volume.name
        : each.subject.kind !== 'volume' ||
          each.subject.name !== change.volume.name ||
          !copied.has(each.kind)),
  );

/** A volume is another one in the end. */
const copied: ReadonlySet<Change['kind']> = new Set<Change['kind']>([
  'volume-shrunk',
  'volume-moved-site',
  'volume-re-created',
  'volume-changed-id',
]);

/** What main before and main after have it called. */
function namesOf({ subject }: Change, changes: readonly Change[]): readonly string[] {
  const former = changes.flatMap((each) =>
    'before' in each && each.subject.kind === subject.kind && each.subject.name === subject.name
      ? [each.before.name]
      : [],
  );
  return [...new Set([subject.name, ...former])];
}

function isOf(
  { subject, about, kind, declared }: Difference,
  change: Change,
  names: readonly string[],
  asked: Asked,
  side: 'was' | 'is',
): boolean {
  if (subject.kind !== change.subject.kind || !names.includes(subject.name)) return false;
  switch (asked.kind) {
    case 'value':
      // A guest that has not looked again says nothing of what the provider has grown.
      return (
        kind === 'other' && declared === asked[side] && !(subject.kind === 'volume' && about === 'guest')
      );
    case 'holder':
      return about === 'attachment' || kind !== 'other';
    case 'presence':
      return kind !== 'other';
    case 'whole':
      return true;
    case 'nothing':
      return false;
  }
}

/** What one survey shows of a thing as it is declared neither before nor after. */
const alike = (was: readonly Difference[], is: readonly Difference[]): readonly Difference[] =>
  is.filter(
    ({ about, layer, server, surveyed }) =>
      about !== 'guest' &&
      surveyed !== undefined &&
      surveyed !== 'unattached' &&
      was.some((told) => told.layer === layer && told.server === server && told.surveyed === surveyed),
  );

function askedBy(change: Change): Asked {
  switch (change.kind) {
    case 'attached':
    case 'attachment-adopted':
    case 'detached':
    case 'handed-over':
      return { kind: 'holder' };
    case 'volume-grown':
    case 'volume-shrunk':
    case 'volume-corrected':
    case 'file-system-grown':
    case 'file-system-shrunk':
    case 'file-system-corrected':
      return { kind: 'value', was: exactSize(change.before.size), is: exactSize(change.after.size) };
    case 'volume-moved-tier':
      return { kind: 'value', was: change.before.tier, is: change.after.tier };
    case 'volume-moved-site':
    case 'server-moved-site':
      return { kind: 'value', was: change.before.site, is: change.after.site };
    case 'server-changed-type':
      return { kind: 'value', was: change.before.type, is: change.after.type };
    case 'server-started':
    case 'server-stopped':
      return { kind: 'value', was: change.before.power, is: change.after.power };
    case 'boot-swapped':
      return { kind: 'value', was: change.before.boot, is: change.after.boot };
    case 'server-created':
    case 'server-adopted':
    case 'server-deleted':
    case 'server-renamed':
    case 'server-changed-id':
    case 'volume-created':
    case 'volume-adopted':
    case 'volume-deleted':
    case 'volume-re-created':
    case 'volume-renamed':
    case 'volume-changed-id':
      return { kind: 'presence' };
    case 'group-created':
    case 'group-adopted':
    case 'group-deleted':
    case 'group-renamed':
    case 'member-joined':
    case 'member-adopted':
    case 'member-left':
    case 'group-edited':
    case 'file-system-created':
    case 'file-system-adopted':
    case 'file-system-deleted':
    case 'file-system-remounted':
    case 'file-system-remade':
      return { kind: 'whole' };
    case 'server-changed-team':
    case 'server-edited':
    case 'volume-changed-team':
    case 'volume-unprotected':
    case 'volume-edited':
    case 'file-system-edited':
      return { kind: 'nothing' };
  }
}
