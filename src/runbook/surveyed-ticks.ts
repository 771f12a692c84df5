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
  /** With what it is created with, which no other step alters. */
  | { readonly kind: 'presence'; readonly values: readonly (string | undefined)[] }
  | { readonly kind: 'holder' | 'whole' | 'nothing' };

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
      const third = thirdOf(asked, isAlone(change, changes), was, is);
      // That a new thing is there tells its creation, and neither with what it is nor who holds it.
      const isThere = asked.kind === 'presence' || asked.kind === 'holder';
      const plain = was.every(({ kind }) => isThere && kind === 'not declared') ? is : third;
      return { was, is, third, plain };
    });
    const tell = (kind: SurveyedTick['kind'], shown: Difference | undefined): readonly SurveyedTick[] =>
      shown === undefined ? [] : [{ number, kind, shown, on: dayOf(shown) }];
    if (done.has(number)) {
      const tickedOn = done.get(number);
      return tell(
        'ticked and not so',
        each.flatMap(({ plain }) => plain).find((told) => tickedOn === undefined || dayOf(told) >= tickedOn),
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
  told: Difference,
  { subject }: Change,
  names: readonly string[],
  asked: Asked,
  side: 'was' | 'is',
): boolean {
  if (told.subject.kind !== subject.kind || !names.includes(told.subject.name)) return false;
  switch (asked.kind) {
    case 'value':
      return isValue(told, [asked[side]]);
    case 'holder':
      return told.about === 'attachment' || told.kind !== 'other';
    case 'presence':
      return told.kind !== 'other' || (side === 'is' && isValue(told, asked.values));
    case 'whole':
      return true;
    case 'nothing':
      return false;
  }
}

/** A guest that has not looked again says nothing of what the provider has grown. */
const isValue = (
  { kind, about, subject, declared }: Difference,
  values: readonly (string | undefined)[],
): boolean =>
  kind === 'other' &&
  declared !== undefined &&
  values.includes(declared) &&
  !(subject.kind === 'volume' && about === 'guest');

/** What one survey shows of a thing as it is declared neither before nor after. */
function thirdOf(
  asked: Asked,
  isAlone: boolean,
  was: readonly Difference[],
  is: readonly Difference[],
): readonly Difference[] {
  switch (asked.kind) {
    case 'holder':
      // On its way from one server to another a volume is on none.
      return isAlone ? alike(was, is).filter(({ surveyed }) => surveyed !== 'unattached') : [];
    case 'value':
      return alike(was, is);
    case 'presence':
      return was.length > 0 ? is.filter(({ kind }) => kind === 'other') : [];
    case 'whole':
    case 'nothing':
      return [];
  }
}

const alike = (was: readonly Difference[], is: readonly Difference[]): readonly Difference[] =>
  is.filter(
    ({ about, layer, server, surveyed }) =>
      about !== 'guest' &&
      surveyed !== undefined &&
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
      return { kind: 'presence', values: [change.after.type, change.after.site] };
    case 'volume-created':
    case 'volume-adopted':
      return {
        kind: 'presence',
        values: [exactSize(change.after.size), change.after.tier, change.after.site],
      };
    case 'server-deleted':
    case 'server-renamed':
    case 'server-changed-id':
    case 'volume-deleted':
    case 'volume-re-created':
    case 'volume-renamed':
    case 'volume-changed-id':
      return { kind: 'presence', values: [] };
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
