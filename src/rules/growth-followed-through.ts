import type { Decimal } from 'decimal.js';
import { exact } from '../base/wording.ts';
import { type Idle, idleOf } from '../capacity/idle.ts';
import { type Bytes, showSize } from '../estate/size.ts';
import { showMoney } from '../price/money.ts';
import { ExactDecimal, ratioOf, sizeOf } from './parameter.ts';
import type { StateRule } from './rule.ts';
import type { View } from './view.ts';

const usualShare = 0.25;
const usualSize = '1 GiB';

export const growthFollowedThrough: StateRule<'growth-followed-through'> = {
  name: 'growth-followed-through',
  about: 'state',
  level: 'warning',
  refuses:
    'Capacity bought and not passed on: a volume group with much given to no file system, an attached volume that nothing lies on, a file system smaller than the volume it has to itself.',
  why: 'A volume grows in a minute and is billed from then on; nobody can write to the growth until the group and the file system have grown, too. Growth that stopped half-way is paid for month after month and noticed by nobody.',
  advice:
    'Follow it through: rescan in the guest, grow the group, grow the file system, and declare the new sizes; or declare what already lies there. What nobody needs cannot be shrunk away, only not bought the next time.',
  parameters: {
    'idle-share': {
      schema: {
        type: 'number',
        minimum: 0,
        maximum: 1,
        default: usualShare,
        description:
          'The largest share of what a volume group has bought that may be given to no file system. It holds at equality.',
      },
      looser: 'higher',
      absent: 'default',
    },
    'idle-size': {
      schema: {
        $ref: 'common.json#/$defs/size',
        default: usualSize,
        description:
          "What may lie idle at any one place without a word, for a partition table, a group's metadata or a last extent. It holds at equality.",
      },
      looser: 'higher',
      absent: 'default',
    },
  },
  needs: [],
  looksAt: () => ['volume', 'volume-group', 'file-system'],
  examples: {
    fails: {
      story: 'A volume is grown, and the file system on it is not.',
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
      story: 'The file system grows with its volume.',
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
      for (const place of idleOf(view.estate, view.prices, view.selection)) {
        if (!isTooMuch(place) || !scope.includes(place.belonging, place.tier)) continue;
        yield {
          subject: place.subject,
          place: { revision: view.revision, ...place.place },
          message: messageFor(place, view),
          excess: place.idle,
        };
      }
    };
  },
};

const share = (part: Bytes, whole: Bytes): Decimal => new ExactDecimal(part.toString()).div(whole.toString());

function messageFor({ layer, subject, bought, idle, monthly }: Idle, { cost }: View): string {
  const size = `${showSize(idle)} (${exact(idle)} bytes)`;
  const price = `${showMoney(monthly(), cost.currency)} ${cost.currency} a month`;
  switch (layer) {
    case 'volume-group':
      return `volume group ${subject.name} has bought ${showSize(bought)} and given ${size} of it, ${share(idle, bought).times(100).toDecimalPlaces(1).toString()} %, to no file system, at ${price}`;
    case 'volume':
      return `volume ${subject.name} is attached, and its ${size} are in no group and carry no file system, at ${price}`;
    case 'file-system':
      return `file system ${subject.name} leaves ${size} of its volume's ${showSize(bought)} unused, at ${price}`;
  }
}
