import type { Decimal } from 'decimal.js';
import { exact } from '../base/wording.ts';
import { type Idle, idleOf } from '../capacity/idle.ts';
import { type Bytes, showSize } from '../estate/size.ts';
import { showMoney } from '../price/money.ts';
import { ExactDecimal, ratioOf, sizeOf } from './parameter.ts';
import type { Amount, StateRule } from './rule.ts';
import type { View } from './view.ts';

const usualShare = 0.25;
const usualSize = '1 GiB';

export const growthFollowedThrough: StateRule<'growth-followed-through'> = {
  name: 'growth-followed-through',
  about: 'state',
  level: 'warning',
  refuses:
    'Provisioned capacity that is left unallocated: a volume group with too much allocated to no file system, an attached volume in no group and without a file system, a file system smaller than the volume under it.',
  why: 'A volume is grown in a minute and the new size is billed from then on, but nothing can be written to it until the group and the file system have been grown too. Growth that stops half-way is paid for every month without anybody noticing.',
  advice:
    'Complete the growth: rescan in the guest, grow the group, grow the file system, and declare the new sizes; or declare what is already there. A volume cannot be made smaller again, so buy less next time if the capacity is not needed.',
  parameters: {
    'idle-share': {
      schema: {
        type: 'number',
        minimum: 0,
        maximum: 1,
        default: usualShare,
        description:
          'The largest share of the provisioned capacity of a volume group that may be unallocated. Exactly this share is allowed.',
      },
      looser: 'higher',
      absent: 'default',
    },
    'idle-size': {
      schema: {
        $ref: 'common.json#/$defs/size',
        default: usualSize,
        description:
          "The size that may be unallocated at any one place, for a partition table, a group's metadata or a last extent. Exactly this size is allowed.",
      },
      looser: 'higher',
      absent: 'default',
    },
  },
  measures: { size: 'the unallocated size', amount: 'its monthly cost' },
  needs: [],
  usesSurveys: () => true,
  looksAt: () => ['volume', 'volume-group', 'file-system'],
  examples: {
    fails: {
      story: 'A volume is grown, but the file system on it is not.',
      main: `servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 50 GiB, tier: bulk, file-system: { mount: /plates, type: ext4, size: 50 GiB } }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
      branch: `servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 80 GiB, tier: bulk, file-system: { mount: /plates, type: ext4, size: 50 GiB } }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
      entry: '{ rule: growth-followed-through }',
    },
    passes: {
      story: 'The file system is grown with its volume.',
      main: `servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 50 GiB, tier: bulk, file-system: { mount: /plates, type: ext4, size: 50 GiB } }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
      branch: `servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 80 GiB, tier: bulk, file-system: { mount: /plates, type: ext4, size: 80 GiB } }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
      entry: '{ rule: growth-followed-through }',
    },
  },
  check(entry, scope) {
    const letPass = sizeOf(entry['idle-size'] ?? usualSize);
    const { of, in: parts } = ratioOf(entry['idle-share'] ?? usualShare);
    const isTooMuch = ({ layer, bought, idle }: Idle): boolean =>
      idle > letPass &&
      // A group keeps some room on purpose; a volume or a file system of its own has no use for any.
      // Multiplied, not divided: a share holds at equality to the byte.
      (layer !== 'volume-group' || idle * parts > bought * of);
    return function* (view) {
      for (const place of idleOf(view.estate, view.prices, view.selection, view.measured)) {
        if (!isTooMuch(place) || !scope.includes({ ...place.belonging, tier: place.tier })) continue;
        yield {
          subject: place.subject,
          place: { revision: view.revision, ...place.place },
          message: messageFor(place, view),
          ...(place.layer === 'volume' ? { advice: blank } : {}),
          // The same room in a dearer tier is worse.
          excess: new Map<string, Amount>([
            ['unallocated', place.idle],
            ['monthly cost', place.monthly()],
          ]),
          measured: { size: place.idle, amount: place.monthly() },
        };
      }
    };
  },
};

/** It need not have grown: it may be new, or only declared now. */
const blank =
  'Declare what is on it: a file system, or the volume group that it is a member of. Where nothing is, make that, or detach and delete the volume as the rules for deletions require.';

const share = (part: Bytes, whole: Bytes): Decimal => new ExactDecimal(part.toString()).div(whole.toString());

function messageFor(place: Idle, view: View): string {
  const { surveyed } = place;
  return surveyed === undefined
    ? unallocatedAt(place, view)
    : `${unallocatedAt(place, view)}; less what other things take of it, as surveyed on ${surveyed.slice(0, 10)}`;
}

function unallocatedAt({ layer, subject, bought, idle, monthly }: Idle, { cost }: View): string {
  const size = `${showSize(idle)} (${exact(idle)} bytes)`;
  const price = `${showMoney(monthly(), cost.currency)} ${cost.currency} a month`;
  switch (layer) {
    case 'volume-group':
      return `volume group ${subject.name} has ${size} of its ${showSize(bought)} unallocated (${share(idle, bought).times(100).toDecimalPlaces(1).toString()} %), at ${price}`;
    case 'volume':
      return `volume ${subject.name} is attached, but its ${size} are in no volume group and hold no file system, at ${price}`;
    case 'file-system':
      return `file system ${subject.name} leaves ${size} of its volume's ${showSize(bought)} unallocated, at ${price}`;
  }
}
