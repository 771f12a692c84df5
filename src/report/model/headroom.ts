/** Headroom at the layers that a change touches, or that are nearly full. */
import { counted } from '../../base/wording.ts';
import { freeShare, type Room } from '../../capacity/headroom.ts';
import type { RoomChange } from '../../policy/judgement.ts';
import { figures, sentence, table, words } from './blocks.ts';
import type { Block, Cell, Section } from './model.ts';
import { layerWords, surveyedOn } from './subjects.ts';

/** A layer with a smaller share free is shown, changed or not. */
const tight = 0.1;

export const isTouched = ({ before, after }: RoomChange): boolean =>
  before === undefined ||
  after === undefined ||
  before.capacity !== after.capacity ||
  before.taken !== after.taken;

const isTight = ({ after }: RoomChange): boolean => after !== undefined && freeShare(after) < tight;

const columns = [
  words('Layer'),
  figures('Capacity'),
  figures('Used'),
  figures('Free'),
  figures('Free share'),
  figures('Free on main'),
];

export function headroomSection(rooms: readonly RoomChange[]): readonly Section[] {
  if (rooms.length === 0) return [];
  const shown = rooms.filter((room) => isTouched(room) || isTight(room));
  const rest = rooms.length - shown.length;
  const other = shown.length === 0 ? 'layer' : 'other layer';
  const isSurveyed = shown.some((room) => sourceOf(room) !== '');
  const rows = shown.flatMap((room) =>
    roomRow(room).map((row) => (isSurveyed ? [...row, sourceOf(room)] : row)),
  );
  return [
    {
      title: 'Headroom',
      blocks: [
        ...(shown.length === 0
          ? []
          : [table(isSurveyed ? [...columns, words('Source')] : columns, rows), picture(shown)]),
        ...(rest === 0
          ? []
          : [
              sentence(
                `${counted(rest, `${other} is`, `${other}s are`)} unchanged, with at least a tenth free.`,
              ),
            ]),
      ],
    },
  ];
}

const picture = (rooms: readonly RoomChange[]): Block => ({
  kind: 'picture',
  picture: {
    kind: 'rooms',
    rows: rooms.flatMap(({ before, after }) => {
      const room = after ?? before;
      return room === undefined ? [] : [{ name: layerWords(room), before, after }];
    }),
  },
});

/** Both sides go by one and the same survey. */
function sourceOf({ before, after }: RoomChange): string {
  const at = (after ?? before)?.surveyed;
  return at === undefined ? '' : surveyedOn(at);
}

function roomRow({ before, after }: RoomChange): readonly (readonly Cell[])[] {
  const room = after ?? before;
  if (room === undefined) return [];
  const measure = (amount: bigint): Cell => ({ kind: 'measure', measure: room.measure, amount });
  const main = before === undefined ? 'new' : measure(before.free);
  const name = layerWords(room);
  return [
    after === undefined ? [name, 'removed', '', '', '', main] : [name, ...figuresOf(after, measure), main],
  ];
}

const figuresOf = (room: Room, measure: (amount: bigint) => Cell): readonly Cell[] => [
  measure(room.capacity),
  measure(room.taken),
  measure(room.free),
  { kind: 'free share', of: room },
];
