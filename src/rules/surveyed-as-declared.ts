import { type Change, type ChangeKind, isAttachmentChange } from '../change/change.ts';
import { lossOf } from '../change/kinds.ts';
import { baseName, type Renames } from '../change/renames.ts';
import { daysBetween } from '../estate/dates.ts';
import type { Estate } from '../estate/estate.ts';
import { type Bytes, exactSize } from '../estate/size.ts';
import { compareSurveys, type SurveyComparison, type Surveys } from '../survey/compare.ts';
import type { Difference } from '../survey/difference.ts';
import { match } from '../survey/match.ts';
import type { ChangeRule, Level, Violation } from './rule.ts';
import { levels } from './rule.ts';

export const surveyedAsDeclared: ChangeRule<'surveyed-as-declared'> = {
  name: 'surveyed-as-declared',
  about: 'change',
  level: 'error',
  refuses:
    'A change that destroys, detaches, hands over or grows something which, by the surveys on main, is otherwise than main declares it, or of which the survey is too old or missing; and something declared as existing that a survey does not show.',
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
          "The level of a missing survey, up to the entry's own. Where nothing is surveyed at all it is told of only as an error.",
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
    function* ({ changes, base, head, renames, on }) {
      const { surveys } = base;
      const isSurveyed =
        surveys !== undefined && (surveys.servers.length > 0 || surveys.provider !== undefined);
      if (!isSurveyed && missing !== 'error') return;
      const known = surveys ?? { servers: [], provider: undefined };
      yield* adoptedFaults(changes, head.estate, known);
      const starting = changes.filter(startsFromMain);
      if (starting.length === 0) return;
      const compared = compareSurveys(base.estate, known, base.prices);
      const days = new Map(known.servers.map(({ server, at }) => [server, at.slice(0, 10)]));
      for (const change of starting) {
        const about = touchedBy(change, base.estate, renames);
        if (about.volumes.length === 0) continue;
        const common = { subject: change.subject, place: change.place };
        for (const each of compared.differences) {
          if (!isAbout(each, change, about)) continue;
          const { server, message, meaning, surveyed } = each;
          const by = server === undefined ? 'the provider' : `a survey of ${days.get(server)}`;
          yield {
            ...common,
            facet: `differs ${message}`,
            message: `${said(change)} starts from what main declares, and ${by} shows otherwise: ${message}${shrinks(change, surveyed, compared)}`,
            ...(meaning === undefined
              ? {}
              : { advice: `${meaning} Mend the declaration in a change of its own first.` }),
          };
        }
        // What no server holds need not have been surveyed before it is attached.
        if (change.kind !== 'attached')
          yield* agesOf(change, about.volumes, compared, known, { within, tooOld, missing, on });
      }
    },
};

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

function isAbout({ subject: { kind, name }, about }: Difference, change: Change, touched: About): boolean {
  const { volumes, groups, servers } = touched;
  // An attachment does harm where something else holds the volume already; what is on it stays as it is.
  if (change.kind === 'attached' && about !== 'attachment') return false;
  const on = name.split(':')[0] ?? '';
  switch (kind) {
    case 'volume':
      return volumes.includes(name);
    case 'volume-group':
      return groups.includes(name);
    case 'file-system':
      return volumes.includes(on) || groups.includes(on);
    case 'server':
      // Whether a server runs, and from what, says which of its volumes can be let go of.
      return (about === 'power' || about === 'boot') && servers.includes(name) && takesAway(change);
    case 'estate':
    case 'site':
    case 'team':
    case 'label':
    case 'scope':
    case 'branch':
      return false;
  }
}

const said = ({ kind, subject: { name } }: Change): string => {
  if (growths.has(kind)) return `the growth of ${name}`;
  if (kind === 'attached') return `the attachment of ${name}`;
  return moves.has(kind) ? `the move of ${name}` : `what is done to ${name}`;
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

function* agesOf(
  change: Change,
  volumes: readonly string[],
  { matches }: SurveyComparison,
  surveys: Surveys,
  asked: {
    readonly within: number | undefined;
    readonly tooOld: Level;
    readonly missing: Level;
    readonly on: string;
  },
): Iterable<Violation> {
  const common = { subject: change.subject, place: change.place };
  for (const volume of volumes) {
    const taken = [
      ...(matches.disks.get(volume) ?? []).map(({ survey }) => survey.at),
      ...(matches.rows.has(volume) && surveys.provider !== undefined ? [surveys.provider.at] : []),
    ].sort();
    const newest = taken.at(-1);
    if (newest === undefined) {
      yield {
        ...common,
        facet: `missing ${volume}`,
        message: `no survey shows ${volume}, which ${said(change)} starts from`,
        atMost: asked.missing,
      };
    } else if (daysBetween(asked.on, newest.slice(0, 10)) > 1) {
      // A day is allowed for, since clocks and time zones differ.
      yield {
        ...common,
        facet: `too old ${volume}`,
        message: `the newest survey of ${volume} is dated ${newest.slice(0, 10)}, after the day of the judgement`,
        advice: 'Set the clock of the server, survey it again, and delete that survey.',
        atMost: asked.tooOld,
      };
    } else if (asked.within !== undefined && daysBetween(newest.slice(0, 10), asked.on) > asked.within) {
      yield {
        ...common,
        facet: `too old ${volume}`,
        message: `the newest survey of ${volume} is of ${newest.slice(0, 10)}, ${daysBetween(newest.slice(0, 10), asked.on)} days old, and at most ${asked.within} are allowed`,
        atMost: asked.tooOld,
      };
    }
  }
}

/** What is declared as existing, on a server that is surveyed and shows nothing that it could be. */
function* adoptedFaults(changes: readonly Change[], head: Estate, surveys: Surveys): Iterable<Violation> {
  const adopted = changes.filter((change) => change.kind === 'volume-adopted');
  if (adopted.length === 0) return;
  const { candidates } = match(
    head,
    surveys.servers.filter(({ server }) => head.servers.has(server)),
    surveys.provider,
  );
  for (const { after, subject, place } of adopted) {
    if (candidates.get(after.name)?.length !== 0) continue;
    const [holder] = head.holders.get(after.name) ?? [];
    yield {
      subject,
      place,
      facet: 'not there',
      message: `${after.name} is declared as existing on ${holder?.server}, and its survey shows no disk that it could be`,
      advice: 'Declare it without existing: true if it is still to be created, or survey the server again.',
    };
  }
}
