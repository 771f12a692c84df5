import { cautions, listed } from '../base/wording.ts';
import type { ChangeOf, Wiped } from '../change/change.ts';
import type { LosingChange } from '../change/kinds.ts';
import { lossesOf } from '../change/losses.ts';
import { addDays } from '../estate/dates.ts';
import type { Estate, FileSystem, Volume } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import { type Fault, recordFaults } from './loss-record.ts';
import { calledOtherwise } from './other-name.ts';
import type { ChangeRule } from './rule.ts';

const toPrepare =
  'Detach the volume in an earlier change; in that change, also remove any protection, and bring a retention date that no longer applies forward to the day of that change: it is still a day of keeping, and the deletion may follow from the next day on. Then add an entry under retired: for the volume or the file system, with reason, backup and backed-up.';

/** Only where something is made over what is there: nothing that is deleted is only being declared. */
const toDeclare = 'Mark with existing: true what is already there and is only being declared.';

/** Only what is not done yet. */
function stillToDo(faults: readonly Fault[]): string {
  const before = [...new Set(faults.flatMap((fault) => fault.before ?? []))];
  const here = [...new Set(faults.flatMap((fault) => fault.here ?? []))];
  return [...(before.length === 0 ? [] : [`In an earlier change, ${listed(before)}.`]), ...here].join(' ');
}

export const deletionPrepared: ChangeRule<'deletion-prepared'> = {
  name: 'deletion-prepared',
  about: 'change',
  level: 'error',
  refuses:
    'The deletion of a volume that is attached on main, is protected, is to be kept longer, or leaves no record of its reason and of a recent enough backup; likewise a move to another site, and a file system deleted or reformatted on volumes that stay. Warns when a volume joins a group, or gets its first file system, and may already hold data.',
  why: 'A deleted volume is gone at once, and so is whatever a new file system overwrites. Detaching a volume first, in a change of its own, shows who still needs it while that can still be undone.',
  advice: `${toPrepare} ${toDeclare} ${cautions}`,
  parameters: {
    'backup-within': {
      schema: {
        type: 'integer',
        minimum: 0,
        description:
          'The greatest age, in days, of the backup on record on the day of the judgement; if left out, no backup is required.',
      },
      looser: 'higher',
      absent: 'loosest',
    },
    'attached-allowed': {
      schema: {
        type: 'boolean',
        default: false,
        description: 'Whether a volume that is still attached on main may be deleted.',
      },
      looser: 'true',
      absent: 'default',
    },
  },
  needs: [],
  looksAt: () => ['volume'],
  examples: {
    fails: {
      story: 'A volume is deleted without a record of the reason and the backup.',
      main: `volumes:
  plates-1: { size: 100 GiB, tier: bulk }
  root: { size: 20 GiB, tier: bulk }
`,
      branch: `volumes:
  root: { size: 20 GiB, tier: bulk }
`,
      entry: '{ rule: deletion-prepared, backup-within: 30 }',
    },
    passes: {
      story: 'It was detached earlier, and the reason and the backup are on record.',
      main: `volumes:
  plates-1: { size: 100 GiB, tier: bulk }
  root: { size: 20 GiB, tier: bulk }
`,
      branch: `volumes:
  root: { size: 20 GiB, tier: bulk }
retired:
  - volume: plates-1
    on: 2026-11-20
    reason: superseded by plates-2
    backup: vault/plates-1/2026-11-19
    backed-up: 2026-11-19
`,
      entry: '{ rule: deletion-prepared, backup-within: 30 }',
    },
  },
  check: (entry) =>
    function* ({ changes, base, head, on }) {
      const record: RecordFaults = (...names) =>
        recordFaults(names, { base: base.estate, head: head.estate, on, within: entry['backup-within'] });
      for (const change of changes) {
        if (change.kind !== 'volume-edited') continue;
        const { before, after } = change;
        const sooner = after.retainUntil === undefined || after.retainUntil < (before.retainUntil ?? '');
        if (before.retainUntil === undefined || before.retainUntil < on || !sooner) continue;
        // Nothing is lost yet; but the next branch may delete it, and nobody would see that it was to be kept.
        yield {
          subject: change.subject,
          place: change.place,
          message: `volume ${after.name} was to be kept until ${before.retainUntil}, and would be kept ${after.retainUntil === undefined ? 'without a date' : `until ${after.retainUntil}`}`,
          advice: `Keep the date, or say in the review who no longer needs the volume. ${cautions}`,
          atMost: 'warning',
        };
      }
      for (const change of lossesOf(changes, isNoShrink)) {
        const deletion = deletionOf(change, base.estate, entry['attached-allowed'] ?? false, on, record);
        if (deletion === undefined || deletion.faults.length === 0) continue;
        const {
          what,
          faults,
          atMost,
          advice = [
            `${isOfOneThing(change) ? calledOtherwise(change.before, changes) : ''}${stillToDo(faults)}`,
            ...('wipes' in change ? [toDeclare] : []),
            cautions,
          ].join(' '),
        } = deletion;
        yield {
          subject: change.subject,
          ...(change.kind === 'member-joined' ? { facet: change.volume } : {}),
          place: change.place,
          message: `${what}, and ${faults.map(({ says }) => says).join('; ')}`,
          advice,
          ...(atMost === undefined ? {} : { atMost }),
        };
      }
    },
};

const isOfOneThing = (
  change: LosingChange,
): change is ChangeOf<'volume-deleted' | 'volume-re-created' | 'group-deleted'> =>
  change.kind === 'volume-deleted' || change.kind === 'volume-re-created' || change.kind === 'group-deleted';

/** What is made smaller is not deleted, which is refused for itself, and must not stand for what is. */
const isNoShrink = ({ kind }: LosingChange): boolean =>
  kind !== 'volume-shrunk' && kind !== 'file-system-shrunk';

interface Deletion {
  readonly what: string;
  readonly faults: readonly Fault[];
  /** What to do about it, where that is other than for a deletion. */
  readonly advice?: string;
  /** What may have been empty all along is warned of; what surely held something is refused. */
  readonly atMost?: 'warning';
}

type RecordFaults = (...names: readonly string[]) => readonly Fault[];

function deletionOf(
  change: LosingChange,
  base: Estate,
  attachedAllowed: boolean,
  on: string,
  record: RecordFaults,
): Deletion | undefined {
  switch (change.kind) {
    case 'volume-deleted':
    case 'volume-re-created': {
      const { before } = change;
      return {
        what: `volume ${before.name} (${exactSize(before.size)}) would be deleted for good`,
        faults: [
          ...holdersOf(base, before, attachedAllowed),
          ...keptFaults(before, on),
          ...record(before.name),
        ],
      };
    }
    case 'volume-moved-site': {
      const { before, after } = change;
      return {
        what: `volume ${after.name} would be created again at site ${after.site ?? 'none'}, without what it holds at ${before.site ?? 'none'}`,
        faults: [...keptFaults(before, on), ...record(before.name, after.name)],
      };
    }
    case 'volume-changed-id': {
      const { before, after } = change;
      return {
        what: `volume ${after.name} would be another one, with the id ${after.id ?? 'none'}, without what the one with the id ${before.id ?? 'none'} holds`,
        faults: [...keptFaults(before, on), ...record(before.name, after.name)],
        advice: `If the id on main is wrong, take it out in a change of its own, which changes no storage, and write the right one in the next. If it is another volume, declare that under a name of its own. ${cautions}`,
      };
    }
    case 'file-system-deleted':
    case 'file-system-remade': {
      const { before } = change;
      const volumes = carriersOf(base, before);
      return {
        what:
          change.kind === 'file-system-deleted'
            ? `file system ${before.mount} on ${before.on.name} would be deleted with what it holds`
            : `file system ${before.mount} on ${before.on.name} would be reformatted from ${before.type} to ${change.after.type}, without what it holds`,
        faults: [
          ...volumes.flatMap((volume) => keptFaults(volume, on, `its volume ${volume.name}`)),
          ...record(before.name, ...volumes.map(({ name }) => name)),
        ],
      };
    }
    case 'volume-grown':
    case 'file-system-grown': {
      const system = change.kind === 'volume-grown' ? change.before.fileSystem : change.before;
      if (system === undefined) return undefined;
      const volumes = carriersOf(base, system);
      return {
        what: `file system ${system.mount} on ${system.on.name} is ${system.type}, which cannot grow: it would be created again, without what it holds`,
        faults: [
          ...volumes.flatMap((volume) => keptFaults(volume, on, `its volume ${volume.name}`)),
          ...record(system.name, ...volumes.map(({ name }) => name)),
        ],
      };
    }
    case 'group-deleted':
    case 'group-edited': {
      const { before } = change;
      const members = before.members.flatMap((member) => base.volumes.get(member) ?? []);
      const lost = before.fileSystems.map(({ mount }) => mount);
      if (lost.length === 0) return undefined;
      return {
        what: `volume group ${before.name} would be ${change.kind === 'group-deleted' ? 'dissolved' : 'rebuilt with another layout'}, without what ${lost.join(', ')} ${lost.length === 1 ? 'holds' : 'hold'}`,
        faults: [
          ...members.flatMap((volume) => keptFaults(volume, on, `its volume ${volume.name}`)),
          ...eachOnce(before.fileSystems.flatMap(({ name }) => record(name, ...before.members))),
        ],
      };
    }
    case 'group-created':
      return overwritten(change.wipes, `making the volume group ${change.after.name}`, base, on, record);
    case 'member-joined':
      return overwritten(change.wipes, `joining the volume group ${change.after.name}`, base, on, record);
    case 'file-system-created':
      return overwritten(change.wipes, 'making a file system on it', base, on, record);
    case 'volume-shrunk':
    case 'file-system-shrunk':
      return undefined;
  }
}

/** Volumes that were there before and are written over: with what, only their owners know, unless main says it. */
function overwritten(
  wipes: readonly Wiped[],
  by: string,
  base: Estate,
  on: string,
  record: RecordFaults,
): Deletion {
  const names = wipes.map(({ name }) => name);
  const held = wipes.flatMap(({ name, before }) => contentFaults(base, before, name));
  const kept = wipes.flatMap(({ name, before }) => keptFaults(before, on, name));
  const recorded = eachOnce(
    wipes.flatMap(({ name, before }) =>
      record(name, ...systemsOn(base, before).map((system) => system.name)),
    ),
  );
  return {
    what: `${names.join(', ')} ${names.length === 1 ? 'was' : 'were'} there before, and ${by} would overwrite any data on ${names.length === 1 ? 'it' : 'them'}`,
    // What surely holds something is released by a record of its backup; an attachment alone is no such sign.
    faults: [...kept, ...(recorded.length === 0 ? [] : held), ...recorded],
    ...(kept.length === 0 && held.length === 0 ? { atMost: 'warning' } : {}),
  };
}

const systemsOn = (base: Estate, volume: Volume): readonly FileSystem[] =>
  volume.fileSystem === undefined ? (base.groupOf.get(volume.name)?.fileSystems ?? []) : [volume.fileSystem];

const eachOnce = (faults: readonly Fault[]): readonly Fault[] => [
  ...new Map(faults.map((fault) => [`${fault.says} ${fault.here}`, fault])).values(),
];

/** What main itself says that a volume holds. */
function contentFaults(base: Estate, volume: Volume, name: string): readonly Fault[] {
  const group = base.groupOf.get(volume.name);
  const starting = (base.holders.get(volume.name) ?? []).filter(({ boot }) => boot);
  return [
    ...starting.map(({ server }) => ({ says: `${server} starts from ${name}` })),
    ...(volume.fileSystem === undefined
      ? []
      : [{ says: `${name} holds the file system ${volume.fileSystem.mount}` }]),
    ...(group === undefined || group.fileSystems.length === 0
      ? []
      : [
          {
            says: `${name} is a member of the volume group ${group.name} and holds part of ${group.fileSystems.map(({ mount }) => mount).join(', ')}`,
          },
        ]),
  ];
}

/** What a volume's own declaration says against losing what it holds. The retention date is still a day of keeping. */
function keptFaults(volume: Volume, on: string, who = 'it'): readonly Fault[] {
  return [
    ...(volume.protected
      ? [{ says: `${who} is protected`, before: `remove the protection of ${volume.name}` }]
      : []),
    ...(volume.retainUntil !== undefined && volume.retainUntil >= on
      ? [keptUntil(volume.name, volume.retainUntil, on, who)]
      : []),
  ];
}

/** A date is brought forward, not removed: an unattached volume without one is refused for that. */
const keptUntil = (name: string, until: string, on: string, who: string): Fault => ({
  says: `${who} is to be kept until ${until}`,
  ...(until === on
    ? { here: `That day is still a day of keeping: merge the deletion from ${addDays(until, 1)} on.` }
    : {
        before: `bring the retention date of ${name} forward to the day of that change, if it need not be kept until ${until}`,
        here: 'That day is still a day of keeping: the deletion may follow from the next day on.',
      }),
});

function carriersOf(estate: Estate, { on }: FileSystem): readonly Volume[] {
  const names = on.kind === 'volume' ? [on.name] : (estate.groups.get(on.name)?.members ?? []);
  return names.flatMap((name) => estate.volumes.get(name) ?? []);
}

function holdersOf(base: Estate, volume: Volume, allowed: boolean): readonly Fault[] {
  const holders = base.holders.get(volume.name) ?? [];
  if (allowed || holders.length === 0) return [];
  const servers = holders.map(({ server }) => server).sort();
  return [
    {
      says: `main still attaches it to ${servers.join(', ')}`,
      before: `detach ${volume.name} from ${listed(servers)}`,
    },
  ];
}
