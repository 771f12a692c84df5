import { fillFrom, fillOf } from '../capacity/group.ts';
import { groupRoom, groupRooms, quotaRooms, type Room, slotRooms } from '../capacity/headroom.ts';
import { measured as amountOf } from '../capacity/measure.ts';
import { measuredSystem } from '../capacity/measured.ts';
import { fileSystemRoom, usageFor } from '../capacity/usage.ts';
import type { Change } from '../change/change.ts';
import { baseName } from '../change/renames.ts';
import { emptySelection } from '../change/touched.ts';
import type { Estate, Volume } from '../estate/estate.ts';
import { bytes, exactSize, noBytes } from '../estate/size.ts';
import { capacityPrice } from '../price/line.ts';
import { showMoney, subtractMoney, sumMoney } from '../price/money.ts';
import { tooSoonFull } from './days-until-full.ts';
import { moreRoom, movingCaution } from './more-room.ts';
import { ratioOf, sizeOf } from './parameter.ts';
import type { EntryFault, EntryOf, StateRule } from './rule.ts';
import type { View } from './view.ts';

type Entry = EntryOf<'minimum-headroom'>;

export const minimumHeadroom: StateRule<'minimum-headroom'> = {
  name: 'minimum-headroom',
  about: 'state',
  level: 'error',
  refuses:
    "Less headroom than required in a site's quota, a server's attachment slots, a volume group or a file system; or a file system that, by its readings, will be full too soon.",
  why: 'The day a file system fills is the wrong day to learn that the group, the slots or the quota are full too.',
  advice:
    'Make headroom at that layer first: grow a member, add one, free attachment slots, or ask the provider for a higher quota.',
  parameters: {
    of: {
      schema: {
        type: 'string',
        enum: ['quota', 'attachment-slots', 'volume-group', 'file-system'],
        description:
          'The layer that must keep headroom. A file system is checked against its readings; without any, its share and size are not checked.',
      },
      looser: 'unknown',
      absent: 'loosest',
    },
    share: {
      schema: {
        type: 'number',
        minimum: 0,
        maximum: 1,
        description: 'The smallest share of the capacity that must be free. Exactly this share is enough.',
      },
      looser: 'lower',
      absent: 'loosest',
    },
    size: {
      schema: {
        $ref: 'common.json#/$defs/size',
        description: 'The smallest size that must be free, at layers measured in bytes.',
      },
      looser: 'lower',
      absent: 'loosest',
    },
    count: {
      schema: {
        type: 'integer',
        minimum: 0,
        description: 'The smallest number of volumes or slots that must be free, at layers that are counted.',
      },
      looser: 'lower',
      absent: 'loosest',
    },
    days: {
      schema: {
        type: 'integer',
        minimum: 1,
        description:
          'The smallest number of days, from the day of the judgement, until a file system may be full by its readings: what counts is the day by which 5 in 100 of the futures drawn from them are full, so that the rule errs early. Exactly this many are enough.',
      },
      looser: 'lower',
      absent: 'loosest',
    },
  },
  scope: ['teams', 'sites', 'labels'],
  measures: {
    size: 'the size that is missing',
    number: 'the volumes, attachment slots or days that are missing',
  },
  needs: ['of'],
  looksAt({ of }) {
    switch (of) {
      case 'quota':
        return ['site'];
      case 'attachment-slots':
        return ['server'];
      case 'volume-group':
      case 'file-system':
        return [of];
    }
  },
  usesReadings: ({ of }) => of === 'file-system',
  usesSurveys: ({ of }) => of === 'volume-group' || of === 'file-system',
  examples: {
    fails: {
      story: 'A file system is declared that does not fit into three volumes of 40 GiB.',
      main: `volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
volume-groups:
  plates:
    extent: 64 MiB
    members: [plates-1, plates-2, plates-3]
    file-systems:
      /plates: { size: 100 GiB, type: xfs }
`,
      branch: `volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
volume-groups:
  plates:
    extent: 64 MiB
    members: [plates-1, plates-2, plates-3]
    file-systems:
      /plates: { size: 130 GiB, type: xfs }
`,
      entry: '{ rule: minimum-headroom, of: volume-group, share: 0.1 }',
    },
    passes: {
      story: 'It grows within its group, and a tenth of the group stays free.',
      main: `volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
volume-groups:
  plates:
    extent: 64 MiB
    members: [plates-1, plates-2, plates-3]
    file-systems:
      /plates: { size: 100 GiB, type: xfs }
`,
      branch: `volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
volume-groups:
  plates:
    extent: 64 MiB
    members: [plates-1, plates-2, plates-3]
    file-systems:
      /plates: { size: 105 GiB, type: xfs }
`,
      entry: '{ rule: minimum-headroom, of: volume-group, share: 0.1 }',
    },
  },
  verify: ({ of, days, size, count }) => [
    ...misplaced('days', days, of, ['file-system']),
    ...misplaced('size', size, of, ['quota', 'volume-group', 'file-system']),
    ...misplaced('count', count, of, ['quota', 'attachment-slots']),
  ],
  dated: ({ of, days }, { fileSystems }) =>
    of === 'file-system' && days !== undefined
      ? { ...emptySelection, fileSystems: [...fileSystems.values()] }
      : undefined,
  check(entry, scope) {
    const { of, days } = entry;
    const wantedOf = wantedBy(entry);
    return function* (view) {
      for (const room of roomsOf(of, view)) {
        const wanted = wantedOf(room);
        if (room.free >= wanted || !scope.includes(room.belonging)) continue;
        const short = wanted - room.free;
        yield {
          subject: room.subject,
          facet: room.measure,
          place: { revision: view.revision, ...room.place },
          message: `${messageFor(room, wanted, short)}${priceOfMore(wantedOf, room, view)}`,
          advice: moreRoom(room.layer),
          excess: short,
          measured: room.measure === 'bytes' ? { size: short } : { number: short },
        };
      }
      if (of !== 'file-system' || days === undefined) return;
      for (const system of view.selection.fileSystems) {
        const violation = scope.includes(system) ? tooSoonFull(system, days, view) : undefined;
        if (violation !== undefined) yield violation;
      }
    };
  },
  /**
   * A striped or mirrored group whose file systems would fit if they were made anew, and do not where they lie on
   * main: what grows goes on from there.
   */
  checkChanges(entry) {
    if (entry.of !== 'volume-group') return () => [];
    const wantedOf = wantedBy(entry);
    return function* ({ base, head, changes, renames }) {
      const moved = new Map(
        changes.flatMap((change) =>
          change.kind === 'file-system-remounted' ? [[change.after.name, change.before.mount]] : [],
        ),
      );
      for (const name of groupsChanged(changes, head.estate)) {
        const group = head.estate.groups.get(name);
        const before = base.estate.groups.get(baseName(renames.groups, name));
        if (group === undefined || before === undefined || group.layout.kind === 'linear') continue;
        const { measured } = head;
        const anew = groupRoom(group, fillOf({ estate: head.estate, group, measured }));
        // Then it is said of the state already.
        if (anew.free < wantedOf(anew)) continue;
        const fill = fillFrom(
          { estate: base.estate, group: before, measured },
          { estate: head.estate, group, measured },
          renames,
          moved,
        );
        if (fill === undefined) continue;
        const room = groupRoom(group, fill);
        const wanted = wantedOf(room);
        if (room.free >= wanted) continue;
        yield {
          subject: room.subject,
          facet: 'placement',
          place: { revision: 'head', ...room.place },
          message: `${messageFor(room, wanted, wanted - room.free)}; its file systems would fit if they were created again, but cannot grow from where they are on main`,
          advice: `Grow every member of the group, or keep the file systems smaller. ${movingCaution}`,
          excess: wanted - room.free,
          measured: { size: wanted - room.free },
        };
      }
    };
  },
};

/** The groups whose room a change may alter. */
const groupsChanged = (changes: readonly Change[], { groupOf, groups }: Estate): ReadonlySet<string> =>
  new Set(
    changes.flatMap(({ subject: { kind, name } }) => {
      if (kind === 'volume-group') return [name];
      const group = kind === 'volume' ? groupOf.get(name) : groups.get(name.split(':')[0] ?? '');
      return kind === 'volume' || kind === 'file-system' ? (group?.name ?? []) : [];
    }),
  );

/** A parameter that does not count at a layer would promise a check that nobody makes. */
const misplaced = (
  key: string,
  value: unknown,
  of: Entry['of'],
  layers: readonly Entry['of'][],
): readonly EntryFault[] =>
  value === undefined || layers.includes(of)
    ? []
    : [
        {
          path: [key],
          message: `${key} does not apply to the layer ${of}`,
          advice: `Remove it; it applies to ${layers.join(', ')}.`,
        },
      ];

function roomsOf(of: Entry['of'], { estate, settings, selection, usage, measured }: View): readonly Room[] {
  switch (of) {
    case 'quota':
      return quotaRooms(estate, settings);
    case 'attachment-slots':
      return slotRooms(estate, settings, selection.servers);
    case 'volume-group':
      return groupRooms(estate, selection.groups, measured);
    case 'file-system':
      return [...selection.fileSystems].flatMap((system) => {
        const use = usageFor(system, estate, usage);
        return use === undefined
          ? []
          : [fileSystemRoom(system, use, measuredSystem(system, estate, measured))];
      });
  }
}

/** What must stay free of a room. */
type Wanted = (room: Room) => bigint;

/** The larger of what the share and the size or count ask; more taken than there is is always too little room. */
function wantedBy({ share, size, count = 0 }: Entry): Wanted {
  const ratio = ratioOf(share ?? 0);
  const least = { bytes: size === undefined ? noBytes : sizeOf(size), pieces: BigInt(count) };
  return ({ capacity, measure }) => {
    // Rounded up: 10 % of 7 slots is one slot, not none.
    const byShare = (capacity * ratio.of + ratio.in - 1n) / ratio.in;
    const asked = measure === 'bytes' ? least.bytes : least.pieces;
    return byShare > asked ? byShare : asked;
  };
}

const shown = ({ measure }: Room, amount: bigint): string => amountOf(measure, amount);

function messageFor(room: Room, wanted: bigint, short: bigint): string {
  const who = `${room.subject.kind.replace('-', ' ')} ${room.subject.name}`;
  const source = room.surveyed === undefined ? '' : `, as surveyed on ${room.surveyed.slice(0, 10)}`;
  const bounds = `${shown(room, room.taken)} of ${shown(room, room.capacity)} used${source}`;
  return room.free < 0n
    ? `${who} does not have enough capacity: ${bounds}, ${shown(room, -room.free)} short`
    : `${who} has ${shown(room, room.free)} free (${bounds}), and ${shown(room, wanted)} must stay free: ${shown(room, short)} short`;
}

/**
 * What it costs a month to give a volume group the room it lacks, where all its members are of one tier: the least
 * growth, in the tier's steps, after which the rule has nothing to say. A linear group is mended by its last member;
 * any other needs room on all of them.
 */
function priceOfMore(wantedOf: Wanted, room: Room, { estate, prices, cost, measured }: View): string {
  const group = room.layer === 'volume-group' ? estate.groups.get(room.subject.name) : undefined;
  const members = (group?.members ?? []).flatMap((name) => estate.volumes.get(name) ?? []);
  const last = members.at(-1);
  const tier = last === undefined ? undefined : prices.tiers.get(last.tier);
  if (group === undefined || last === undefined || tier === undefined) return '';
  if (members.some((each) => each.tier !== last.tier)) return '';
  const growing = group.layout.kind === 'linear' ? [last] : members;
  const step = tier.step ?? group.extent;
  const steps = fewestSteps((count) => {
    const grown = growing.map((each): Volume => ({ ...each, size: bytes(each.size + count * step) }));
    const volumes = new Map([...members, ...grown].map((each) => [each.name, each]));
    const after = groupRoom(group, fillOf({ estate: { ...estate, volumes }, group, measured }));
    return after.free >= wantedOf(after);
  });
  if (steps === undefined) return '';
  const more = bytes(steps * step);
  if (growing.some(({ size }) => tier.maximum !== undefined && size + more > tier.maximum)) return '';
  const price = sumMoney(
    growing.map(({ size }) =>
      subtractMoney(capacityPrice(tier, bytes(size + more)), capacityPrice(tier, size)),
    ),
  );
  const what =
    growing.length === 1
      ? `${exactSize(more)} more of the tier ${tier.name}`
      : `${exactSize(more)} more of the tier ${tier.name} on each of its ${growing.length} members`;
  return `; ${what} would be enough, at ${showMoney(price, cost.currency)} ${cost.currency} a month`;
}

/** More steps than this are no advice: a group that keeps all its room free can never be mended. */
const mostSteps = 1n << 24n;

/** The fewest steps that are enough, by doubling and halving. */
function fewestSteps(enough: (steps: bigint) => boolean): bigint | undefined {
  let high = 1n;
  while (!enough(high)) {
    high *= 2n;
    if (high > mostSteps) return undefined;
  }
  let low = high / 2n;
  while (high - low > 1n) {
    const middle = (low + high) / 2n;
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
}
