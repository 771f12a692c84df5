import { Decimal } from 'decimal.js';
import { groupRooms, quotaRooms, type Room, slotRooms } from '../capacity/headroom.ts';
import { bytes, showSize } from '../estate/size.ts';
import { counted, type EntryOf, type StateRule, sizeOf, type View, type Violation } from './rule.ts';

type Entry = EntryOf<'minimum-headroom'>;

export const minimumHeadroom: StateRule<'minimum-headroom'> = {
  name: 'minimum-headroom',
  about: 'state',
  level: 'error',
  refuses: "Less free room than asked, at a site's quota, a server's attachment slots or a volume group.",
  why: 'The day a file system fills is the wrong day to learn that the group, the slots or the quota are full too.',
  advice:
    'Buy or free room at that layer first: grow a member, add one, give slots back, ask the provider for a higher quota.',
  parameters: {
    of: {
      schema: {
        type: 'string',
        enum: ['quota', 'attachment-slots', 'volume-group'],
        description: 'The layer that must keep room.',
      },
      looser: 'unknown',
      absent: 'no-check',
    },
    share: {
      schema: {
        type: 'number',
        minimum: 0,
        maximum: 1,
        description: 'The least share of the capacity that must be free. It holds at equality.',
      },
      looser: 'lower',
      absent: 'no-check',
    },
    size: {
      schema: {
        $ref: 'common.json#/$defs/size',
        description: 'The least size that must be free, where sizes are counted.',
      },
      looser: 'lower',
      absent: 'no-check',
    },
    count: {
      schema: {
        type: 'integer',
        minimum: 0,
        description: 'The least number of volumes or slots that must be free, where pieces are counted.',
      },
      looser: 'lower',
      absent: 'no-check',
    },
  },
  needs: ['of'],
  *check(entry, view, scope) {
    for (const room of roomsOf(entry, view)) {
      if (!scope.includes(room.belonging)) continue;
      const wanted = wantedRoom(entry, room);
      if (wanted === undefined || room.free >= wanted) continue;
      const short = wanted - room.free;
      yield {
        subject: room.subject,
        place: { revision: view.revision, ...room.place },
        message: messageFor(room, wanted, short),
        excess: short,
      } satisfies Violation;
    }
  },
};

function roomsOf({ of }: Entry, { estate, settings }: View): readonly Room[] {
  switch (of) {
    case 'quota':
      return quotaRooms(estate, settings);
    case 'attachment-slots':
      return slotRooms(estate, settings);
    case 'volume-group':
      return groupRooms(estate);
    case undefined:
      return [];
  }
}

/** The larger of what the share and the size or count ask; more taken than there is is always too little room. */
function wantedRoom({ share, size, count }: Entry, room: Room): bigint | undefined {
  const asked: bigint[] = [0n];
  if (share !== undefined) {
    // Rounded up: 10 % of 7 slots is one slot, not none.
    asked.push(BigInt(new Decimal(room.capacity.toString()).times(share).ceil().toFixed(0)));
  }
  if (size !== undefined && room.measure === 'bytes') asked.push(sizeOf(size));
  if (count !== undefined && room.measure !== 'bytes') asked.push(BigInt(count));
  return asked.reduce((most, each) => (each > most ? each : most));
}

const shown = (room: Room, amount: bigint): string => {
  switch (room.measure) {
    case 'bytes':
      return showSize(bytes(amount));
    case 'volumes':
      return counted(amount, 'volume');
    case 'slots':
      return counted(amount, 'slot');
  }
};

function messageFor(room: Room, wanted: bigint, short: bigint): string {
  const who = `${room.subject.kind.replace('-', ' ')} ${room.subject.name}`;
  const bounds = `${shown(room, room.taken)} of ${shown(room, room.capacity)} taken`;
  return room.free < 0n
    ? `${who} is asked for more than it has: ${bounds}, ${shown(room, -room.free)} missing`
    : `${who} has ${shown(room, room.free)} free (${bounds}), where ${shown(room, wanted)} must stay free: ${shown(room, short)} short`;
}
