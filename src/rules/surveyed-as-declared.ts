import { type Change, type ChangeKind, isAttachmentChange } from '../change/change.ts';
import { lossOf } from '../change/kinds.ts';
import { baseName, headSubject, type Renames } from '../change/renames.ts';
import { type Estate, type Subject, subjectKey } from '../estate/estate.ts';
import { type Bytes, exactSize } from '../estate/size.ts';
import { compareSurveys, type SurveyComparison, type Surveys } from '../survey/compare.ts';
import type { Difference } from '../survey/difference.ts';
import { type ChangeRule, levels, type Violation } from './rule.ts';
import {
  type Asked,
  ageInGuest,
  ageOf,
  goneBy,
  isGone,
  newestOf,
  shownIn,
  undeclaredAt,
  undeclaredOn,
  untoldHolders,
} from './survey-evidence.ts';
import { adoptedFaults, correctedFaults } from './surveyed-declaration.ts';
import type { ChangeView } from './view.ts';

export const surveyedAsDeclared: ChangeRule<'surveyed-as-declared'> = {
  name: 'surveyed-as-declared',
  about: 'change',
  level: 'error',
  refuses:
    'A change that destroys, detaches, hands over or grows something which, by the surveys on main, is otherwise than main declares it or holds what main does not declare, or of which the survey is too old or missing; a server that would take along what nobody declared; and something declared as existing that a survey does not show.',
  why: 'A change is right only if what it starts from is. A volume declared with 50 GiB that really has 60 GiB is shrunk by a growth to 55 GiB; a disk that is not the declared one is the wrong one to delete.',
  advice:
    'Survey the server again (`ullage survey script`, `ullage survey add`), see what differs with `ullage survey compare`, and declare what is there in a change of its own.',
  parameters: {
    within: {
      schema: { type: 'integer', minimum: 0, description: 'How many days old a survey may be.' },
      looser: 'higher',
      absent: 'loosest',
    },
    'too-old': {
      schema: {
        enum: [...levels],
        description: "The level of a survey that is too old, up to the entry's own.",
        default: 'warning',
      },
      looser: 'unknown',
      absent: 'default',
    },
    missing: {
      schema: {
        enum: [...levels],
        description:
          "The level of a missing survey, up to the entry's own. As long as main has no survey at all, a missing one is told only where this is `error`.",
        default: 'note',
      },
      looser: 'unknown',
      absent: 'default',
    },
  },
  needs: [],
  usesSurveys: () => true,
  looksAt: () => ['server', 'volume', 'volume-group', 'file-system'],
  examples: {
    fails: {
      story: 'A volume that nobody has surveyed is deleted, where surveys are asked for.',
      main: `volumes:
  plates-1: { size: 50 GiB, tier: bulk }
`,
      branch: 'volumes: {}\n',
      entry: '{ rule: surveyed-as-declared, missing: error }',
    },
    passes: {
      story: 'A new volume has nothing to be otherwise than declared.',
      main: 'volumes: {}\n',
      branch: `volumes:
  plates-1: { size: 50 GiB, tier: bulk }
`,
      entry: '{ rule: surveyed-as-declared, missing: error }',
    },
  },
  check: ({ within, 'too-old': tooOld = 'warning', missing = 'note' }) =>
    function* (view) {
      const { surveys } = view.base;
      const isSurveyed =
        surveys !== undefined && (surveys.servers.length > 0 || surveys.provider !== undefined);
      if (!isSurveyed && missing !== 'error') return;
      const known = surveys ?? { servers: [], provider: undefined };
      const asked = { within, tooOld, missing, on: view.on };
      const { base } = view;
      let compared: SurveyComparison | undefined;
      const ofMain = (): SurveyComparison => {
        compared ??= compareSurveys(base.estate, known, base.prices);
        return compared;
      };
      yield* startingFaults(view, known, asked, ofMain);
      yield* serverFaults(view, ofMain);
      yield* correctedFaults(view, known, asked, ofMain);
      yield* adoptedFaults(view, known, asked);
    },
};

/** What a change starts from, and is otherwise. */
function* startingFaults(
  view: ChangeView,
  surveys: Surveys,
  asked: Asked,
  ofMain: () => SurveyComparison,
): Iterable<Violation> {
  const { changes, base, renames } = view;
  const starting = changes.filter(startsFromMain);
  if (starting.length === 0) return;
  const compared = ofMain();
  const isMended = mendedBy(view, surveys);
  const nearby = nearbyOf(compared.differences);
  for (const change of starting) {
    const about = touchedBy(change, base.estate, renames);
    if (about.volumes.length === 0) continue;
    const gone = isGone(change, base.estate, compared, surveys);
    for (const each of gone ? [] : nearby(about)) {
      if (!matters(each, change) || isMended(change, each)) continue;
      const { message, meaning, surveyed } = each;
      yield {
        subject: change.subject,
        place: change.place,
        facet: `differs ${message}`,
        message: `${said(change)} starts from what main declares, and ${shownIn(each, surveys)} shows otherwise: ${message}${shrinks(change, surveyed, compared)}`,
        ...(meaning === undefined
          ? {}
          : { advice: `${meaning} Mend the declaration in a change of its own first.` }),
      };
    }
    // What no server holds need not have been surveyed before it is attached.
    if (change.kind === 'attached') continue;
    const which = `which ${said(change)} starts from`;
    for (const volume of about.volumes) {
      // What is gone is surveyed by a list that has it no more.
      const newest = gone ? surveys.provider?.at : newestOf(volume, compared, surveys);
      if (startsInGuest(change, volume, base.estate))
        yield* ageInGuest(change, volume, which, compared, asked);
      else yield* ageOf(change, volume, which, newest, asked);
      if (gone && newest !== undefined) yield goneBy(change, volume, newest);
    }
    if (!takesAway(change) || gone) continue;
    yield* untoldHolders(change, about.volumes, said(change), compared, asked);
    for (const volume of about.volumes)
      yield* undeclaredOn(change, volume, said(change), base.estate, compared);
  }
}

/** What a server takes along that nobody has declared, as it goes. */
function* serverFaults({ changes }: ChangeView, ofMain: () => SurveyComparison): Iterable<Violation> {
  for (const change of changes)
    if (change.kind === 'server-deleted' || change.kind === 'server-moved-site')
      yield* undeclaredAt(change, change.before.name, ofMain());
}

const moves: ReadonlySet<ChangeKind> = new Set<ChangeKind>([
  'detached',
  'handed-over',
  'member-left',
  'boot-swapped',
]);
const growths: ReadonlySet<ChangeKind> = new Set<ChangeKind>(['volume-grown', 'file-system-grown']);

/** What is there before the branch, and is lost, moves, grows or is attached by it. */
const startsFromMain = (change: Change): boolean =>
  takesAway(change) || growths.has(change.kind) || change.kind === 'attached';

const takesAway = (change: Change): boolean => lossOf(change) !== undefined || moves.has(change.kind);

/**
 * Whether it starts from what is on a volume. What no server holds cannot be surveyed by one, and may go by the list
 * alone; what is written over has to be seen first, wherever it is.
 */
const startsInGuest = (change: Change, volume: string, base: Estate): boolean =>
  'wipes' in change
    ? change.wipes.some(({ before }) => before.name === volume)
    : (change.subject.kind === 'file-system' || change.subject.kind === 'volume-group') &&
      (base.holders.get(volume) ?? []).length > 0;

interface About {
  readonly volumes: readonly string[];
  readonly groups: readonly string[];
  /** Those that hold or start from one of the volumes. */
  readonly servers: readonly string[];
}

/** What main has of what a change touches, by main's names, with the group whose member it is. */
function touchedBy(change: Change, base: Estate, renames: Renames): About {
  const names = new Set<string>();
  const groups = new Set<string>();
  const take = (volume: string): void => {
    if (base.volumes.has(volume)) names.add(volume);
    const group = base.groupOf.get(volume);
    if (group !== undefined) groups.add(group.name);
  };
  const takeGroup = (name: string): void => {
    groups.add(name);
    for (const member of base.groups.get(name)?.members ?? []) names.add(member);
  };
  if (isAttachmentChange(change)) take(baseName(renames.volumes, change.volume.name));
  else if ('before' in change) {
    const { before } = change;
    if (before.kind === 'volume') take(before.name);
    else if (before.kind === 'volume-group') takeGroup(before.name);
    else if (before.kind === 'file-system') (before.on.kind === 'volume' ? take : takeGroup)(before.on.name);
    else if (before.boot !== undefined) take(before.boot);
  }
  if ('wipes' in change) for (const { before } of change.wipes) take(before.name);
  const servers = new Set(
    [...names].flatMap((name) => (base.holders.get(name) ?? []).map(({ server }) => server)),
  );
  return { volumes: [...names].sort(), groups: [...groups].sort(), servers: [...servers].sort() };
}

/** Those whose subject is one of what is touched, or lies on it; in order. */
function nearbyOf(differences: readonly Difference[]): (touched: About) => readonly Difference[] {
  const byKey = new Map<string, number[]>();
  for (const [index, { subject }] of differences.entries()) {
    const key = subject.kind === 'file-system' ? `on ${subject.name.split(':')[0]}` : subjectKey(subject);
    const known = byKey.get(key);
    if (known === undefined) byKey.set(key, [index]);
    else known.push(index);
  }
  return ({ volumes, groups, servers }) => {
    const keys = [
      ...volumes.flatMap((name) => [`volume ${name}`, `on ${name}`]),
      ...groups.flatMap((name) => [`volume-group ${name}`, `on ${name}`]),
      ...servers.map((name) => `server ${name}`),
    ];
    const found = new Set(keys.flatMap((key) => byKey.get(key) ?? []));
    return [...found].sort((a, b) => a - b).flatMap((index) => differences[index] ?? []);
  };
}

/** An attachment does harm where something else holds the volume already; what is on it stays as it is. */
function matters({ subject, about }: Difference, change: Change): boolean {
  if (change.kind === 'attached') return about === 'attachment';
  // Whether a server runs, and from what, says which of its volumes can be let go of.
  return subject.kind !== 'server' || ((about === 'power' || about === 'boot') && takesAway(change));
}

const said = ({ kind, subject: { name } }: Change): string => {
  if (growths.has(kind)) return `the growth of ${name}`;
  if (kind === 'attached') return `the attachment of ${name}`;
  if (moves.has(kind)) return `the move of ${name}`;
  return kind.endsWith('-deleted') ? `the deletion of ${name}` : `the change of ${name}`;
};

/** A growth to less than there is would cut something off. */
function shrinks(change: Change, surveyed: string | undefined, { matches }: SurveyComparison): string {
  if (change.kind !== 'volume-grown' || surveyed === undefined) return '';
  const sizes = [
    ...(matches.disks.get(change.before.name) ?? []).map(({ disk }) => disk.size),
    ...[matches.rows.get(change.before.name)].flatMap((row) => row?.size ?? []),
  ];
  const largest = sizes.reduce<Bytes | undefined>(
    (most, size) => (most === undefined || size > most ? size : most),
    undefined,
  );
  return largest !== undefined && largest > change.after.size
    ? `; at ${exactSize(largest)}, to bring it to ${exactSize(change.after.size)} is a shrink`
    : '';
}

/**
 * Whether a branch brings a declaration to what is there: it declares the very size that is shown, or as holders those
 * that are, or takes a volume from a server that has it no more. Nothing is lost by that.
 */
function mendedBy(
  { head, renames }: ChangeView,
  surveys: Surveys,
): (change: Change, each: Difference) => boolean {
  let left: ReadonlySet<string> | undefined;
  const isHeldOtherwise = (subject: Subject): boolean => {
    left ??= new Set(
      compareSurveys(head.estate, surveys, head.prices)
        .differences.filter(({ about }) => about === 'attachment')
        .map((each) => subjectKey(each.subject)),
    );
    return left.has(subjectKey(headSubject(renames, subject)));
  };
  return (change, each) => {
    const { kind, about, subject, surveyed, server } = each;
    const isMove = change.kind === 'detached' || change.kind === 'handed-over' || change.kind === 'attached';
    if (!isMove && !growths.has(change.kind)) return false;
    if (surveyed !== undefined && surveyed === sizeDeclared(head.estate, headSubject(renames, subject)))
      return true;
    if (!isMove) return false;
    if (about === 'attachment') return !isHeldOtherwise(subject);
    const leaves = change.kind === 'handed-over' ? change.from : change.server;
    return kind === 'not there' && subject.kind === 'volume' && server === baseName(renames.servers, leaves);
  };
}

/** As it is typed in; undefined for what has none, or is not declared. */
function sizeDeclared({ volumes, fileSystems }: Estate, { kind, name }: Subject): string | undefined {
  const thing =
    kind === 'volume' ? volumes.get(name) : kind === 'file-system' ? fileSystems.get(name) : undefined;
  return thing === undefined ? undefined : exactSize(thing.size);
}
